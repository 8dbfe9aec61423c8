//! Loads and days as tables for a spreadsheet.

use crate::export::csv::{
    CsvError, DayHeaders, DayRow, Dialect, LoadHeaders, LoadRow, days_csv, loads_csv,
};
use crate::export::forum_table::ForumTable;
use crate::forecast::outlook::Drawer;
use crate::forecast::{Outlook, TripPlan};
use crate::i18n::Arg;
use crate::import::appliances::{NO_APPLIANCE, code_of};
use crate::model::{DrawSource, Feed, Group, Load, Setup, Weather};
use crate::units::{Hours, Measure, WattHours};
use crate::view::lang::{field_number, number, pair, t, t_args};
use crate::view::reader;
use crate::view::words::loads::usage_words;
use crate::view::words::names::{draw_source_name, drawer_name, group_name, load_name};

/// The marks of the reader's language.
#[must_use]
pub fn dialect() -> Dialect {
    if field_number(1.5).contains(',') { Dialect::Comma } else { Dialect::Point }
}

fn load_headers() -> LoadHeaders {
    [
        t("csv-name"),
        t("csv-group"),
        t("csv-quantity"),
        t("csv-draw"),
        t("csv-current"),
        t("csv-feed"),
        t("csv-usage"),
        t("csv-per-day"),
        t("csv-standby"),
        t("csv-of-need"),
        t("csv-enabled"),
        t("csv-code"),
    ]
}

fn day_headers() -> DayHeaders {
    [
        t("csv-date"),
        t("csv-weather"),
        t_args("csv-air", &[("unit", Arg::Text(Measure::Temperature.unit(reader::system())))]),
        t("csv-used"),
        t("csv-sun"),
        t("csv-driving"),
        t("csv-hook-up"),
        t("csv-other"),
        t("csv-soc-low"),
        t("csv-soc-end"),
    ]
}

/// The loads, those that do not count included, then what inverter and electronics take.
///
/// # Errors
///
/// [`CsvError`].
pub fn loads_table(setup: &Setup, outlook: &Outlook) -> Result<String, CsvError> {
    let nominal = setup.bank.system.nominal();
    let share = |drawer| outlook.shares.iter().find(|share| share.drawer == drawer);
    let loads = setup.loads.iter().map(|load| {
        let share = share(Drawer::Load(load.id));
        let draw = load.draw.watts();
        LoadRow {
            name: load_name(load),
            group: group_name(load.group),
            quantity: load.quantity,
            draw,
            current: draw / nominal,
            feed: feed_word(load.feed),
            usage: usage_words(&load.usage),
            per_day: share.map_or(WattHours::ZERO, |share| share.per_day),
            standby_per_day: share.map_or(WattHours::ZERO, |share| share.standby),
            of_need_frac: share.map_or(0.0, |share| share.of_need_frac),
            enabled: load.enabled,
            code: code_of(load),
        }
    });
    let others = [Drawer::InverterIdle, Drawer::Electronics].into_iter().filter_map(|drawer| {
        let share = share(drawer)?;
        let draw = share.per_day / Hours(24.0);
        Some(LoadRow {
            name: drawer_name(setup, drawer),
            group: group_name(Group::Standby),
            quantity: 1,
            draw,
            current: draw / nominal,
            feed: feed_word(Feed::Dc),
            usage: t("csv-mean"),
            per_day: share.per_day,
            standby_per_day: share.standby,
            of_need_frac: share.of_need_frac,
            enabled: true,
            code: NO_APPLIANCE.to_owned(),
        })
    });
    let rows: Vec<LoadRow> = loads.chain(others).collect();
    loads_csv(&load_headers(), &rows, dialect())
}

/// The loads that count as a table to post, each with how its draw is known; only those that were measured, if
/// that is asked.
#[must_use]
pub fn posted_loads(
    setup: &Setup,
    outlook: Option<&Outlook>,
    measured_only: bool,
    link: String,
) -> ForumTable {
    let rows =
        setup.enabled_loads().filter(|load| !measured_only || is_measured(load)).map(|load| {
            let drawer = Drawer::Load(load.id);
            let share =
                outlook.and_then(|outlook| outlook.shares.iter().find(|s| s.drawer == drawer));
            vec![
                load_name(load),
                load.quantity.to_string(),
                number(load.draw.watts().0, 2),
                feed_word(load.feed),
                usage_words(&load.usage),
                share.map_or_else(String::new, |share| number(share.per_day.0, 0)),
                draw_source_name(load.draw_source),
            ]
        });
    let headings = [
        t("csv-name"),
        t("csv-quantity"),
        t("csv-draw"),
        t("csv-feed"),
        t("csv-usage"),
        t("csv-per-day"),
        t("load-learned"),
    ];
    ForumTable {
        headings: headings.to_vec(),
        rows: rows.collect(),
        between: pair("", ""),
        link_label: t("post-link"),
        link,
    }
}

/// Whether the draw of a load was measured.
#[must_use]
pub fn is_measured(load: &Load) -> bool {
    load.draw_source == DrawSource::Meter
}

/// The days of the stay in average weather, midnight to midnight; the first and the last are cut by
/// arrival and departure.
///
/// # Errors
///
/// [`CsvError`].
pub fn days_table(setup: &Setup, plan: &TripPlan, outlook: &Outlook) -> Result<String, CsvError> {
    let hours = outlook.course.hours.get(..plan.stay_hours()).unwrap_or(&outlook.course.hours);
    let rows: Vec<DayRow> = hours
        .chunk_by(|a, b| a.day == b.day)
        .filter_map(|hours| {
            let (first, last) = (hours.first()?, hours.last()?);
            let sum = |part: fn(&crate::forecast::Ledger) -> WattHours| -> WattHours {
                hours.iter().map(|hour| part(&hour.ledger)).sum()
            };
            let air = hours.iter().map(|hour| hour.air.0).sum::<f64>() / hours.len() as f64;
            let date = plan.sun.dates.get(first.day)?;
            Some(DayRow {
                date: format!("{:04}-{:02}-{:02}", date.year(), u8::from(date.month()), date.day()),
                weather: weather_word(setup.trip.day_plan(first.day).weather),
                air: Measure::Temperature.shown(reader::system(), air),
                used: sum(|ledger| ledger.consumption()),
                sun: sum(|ledger| ledger.sun),
                driving: sum(|ledger| ledger.driving),
                hook_up: sum(|ledger| ledger.hook_up),
                other: sum(|ledger| ledger.other),
                soc_low_frac: hours.iter().map(|hour| hour.soc_frac).fold(1.0, f64::min),
                soc_end_frac: last.soc_frac,
            })
        })
        .collect();
    days_csv(&day_headers(), &rows, dialect())
}

fn feed_word(feed: Feed) -> String {
    match feed {
        Feed::Dc => t("csv-feed-battery"),
        Feed::Inverter => t("csv-feed-inverter"),
    }
}

fn weather_word(weather: Weather) -> String {
    match weather {
        Weather::Unknown => t("sky-unknown"),
        Weather::Typical => t("sky-typical"),
        Weather::Clear => t("sky-clear"),
        Weather::Mixed => t("sky-mixed"),
        Weather::Dull => t("sky-dull"),
        Weather::Sun { .. } => t("sky-sun"),
    }
}
