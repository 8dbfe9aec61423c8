//! Loads and days as tables for a spreadsheet.

use crate::export::csv::{
    CsvError, DayHeaders, DayRow, Dialect, LoadHeaders, LoadRow, days_csv, loads_csv,
};
use crate::forecast::outlook::Drawer;
use crate::forecast::{Outlook, TripPlan};
use crate::import::appliances::{NO_APPLIANCE, code_of};
use crate::model::{Feed, Group, Setup, Weather};
use crate::units::{Celsius, Hours, WattHours};
use crate::view::lang::{field_number, t};
use crate::view::words::loads::usage_words;
use crate::view::words::names::{drawer_name, group_name, load_name};

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
        t("csv-air"),
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
                air: Celsius(air),
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
