//! The forecast in words and figures ready to be shown.

use super::origins::{Row, days_of};
use crate::forecast::outlook::{Drawer, LoadShare};
use crate::forecast::{Odds, Outlook, TripPlan};
use crate::i18n::Arg;
use crate::model::Setup;
use crate::model::climate::{Climate, ClimateSource};
use crate::units::{Volts, WattHours};
use crate::view::answer::{AnswerDetail, AnswerView, Drain};
use crate::view::lang::{
    self, duration, number, percent, short_date, t, t_args, volts, watt_hours, weekday,
};
use crate::view::loads::name_of;
use crate::view::widgets::{DataTable, LanternLevel, LanternNight};

/// Drains listed.
const DRAINS: usize = 8;

/// All the words are made from.
pub struct Facts<'a> {
    /// Setup.
    pub setup: &'a Setup,
    /// Its plan.
    pub plan: &'a TripPlan,
    /// The average course.
    pub outlook: &'a Outlook,
    /// The odds, once there are some.
    pub odds: Option<&'a Odds>,
    /// Climate of the place.
    pub climate: &'a Climate,
}

/// Name of whoever draws.
#[must_use]
pub fn drawer_name(setup: &Setup, drawer: Drawer) -> String {
    match drawer {
        Drawer::Load(id) => name_of(setup, id),
        Drawer::InverterIdle => t("drawer-inverter-idle"),
        Drawer::Electronics => t("drawer-electronics"),
    }
}

/// Day and time of an hour from arrival, such as "Tue 16 Jun 04:00".
#[must_use]
pub fn moment(facts: &Facts<'_>, hour: usize) -> String {
    let Some(planned) = facts.plan.hours.get(hour) else { return String::new() };
    let Some(date) = facts.plan.sun.dates.get(planned.day) else { return String::new() };
    lang::moment(*date, u16::try_from(planned.hour_of_day * 60).unwrap_or(0))
}

/// Everything the page shows.
#[must_use]
pub fn answer_view(facts: &Facts<'_>) -> AnswerView {
    let Facts { plan, outlook, odds, .. } = facts;
    let wanted = plan.nights_wanted;
    let horizon = plan.mornings.len();
    // Until there are odds the average course stands in for them.
    let sure = odds.map_or(outlook.nights, |odds| odds.nights_at(0.9));
    let likely = odds.map_or(outlook.nights, |odds| odds.nights_at(0.5));
    let whole = |nights: usize| u16::try_from(nights).unwrap_or(u16::MAX);
    AnswerView {
        sure_nights: whole(sure),
        likely_nights: whole(likely),
        asked_nights: whole(wanted),
        open_ended: sure >= horizon,
        chance_frac: odds.map(|odds| odds.chance_of(wanted)),
        first_low: outlook.course.first_low.map(|hour| moment(facts, hour)),
        lowest_soc_frac: outlook.course.lowest.0,
        lanterns: lanterns(facts),
        working: !odds.is_some_and(Odds::is_complete),
    }
}

/// What stands below the answer.
#[must_use]
pub fn answer_detail(facts: &Facts<'_>) -> AnswerDetail {
    AnswerDetail {
        flow: super::flow::average_day(facts),
        balance: balance(facts),
        drains: drains(facts),
        by_night: by_night(facts),
        notes: notes(facts),
        certainty: certainty(facts),
    }
}

/// Chance of lasting through night `night` (from 1): the odds, or all or nothing on average.
fn chance(facts: &Facts<'_>, night: usize) -> f64 {
    facts.odds.map_or_else(
        || if facts.outlook.nights >= night { 1.0 } else { 0.0 },
        |odds| odds.chance_of(night),
    )
}

fn lanterns(facts: &Facts<'_>) -> Vec<LanternNight> {
    (1..=facts.plan.nights_wanted)
        .map(|night| {
            let chance = chance(facts, night);
            let date = facts.plan.sun.dates.get(night - 1);
            LanternNight {
                level: LanternLevel::of_chance(chance),
                label: date.map_or_else(|| night.to_string(), |date| weekday(*date)),
                chance: percent(chance),
            }
        })
        .collect()
}

/// What comes and goes on an average day, in words, in Wh a day; use is negative.
fn balance(facts: &Facts<'_>) -> Vec<(String, WattHours)> {
    balance_rows(facts).map(|(row, a_day)| (row.label(), a_day)).collect()
}

/// The rows of the balance worth showing, in Wh a day.
pub(super) fn balance_rows(facts: &Facts<'_>) -> impl Iterator<Item = (Row, WattHours)> {
    let ledger = &facts.outlook.course.ledger;
    let days = days_of(facts);
    Row::ALL
        .into_iter()
        .map(move |row| (row, row.sum(ledger) / days))
        .filter(|(_, a_day)| a_day.0.abs() >= 0.5)
}

/// What takes most, largest first.
fn drains(facts: &Facts<'_>) -> Vec<Drain> {
    largest_shares(facts)
        .map(|share| Drain {
            name: drawer_name(facts.setup, share.drawer),
            per_day: share.per_day,
            usable_frac: share.of_usable_frac,
        })
        .collect()
}

/// Whoever takes most, as many as are shown, largest first.
pub(super) fn largest_shares<'a>(facts: &Facts<'a>) -> impl Iterator<Item = &'a LoadShare> {
    facts.outlook.shares.iter().filter(|share| share.per_day.0 > 0.0).take(DRAINS)
}

/// Figures night by night.
pub(super) fn by_night(facts: &Facts<'_>) -> DataTable {
    let heads = vec![
        t("night-head-night"),
        t("night-head-chance"),
        t("night-head-lowest"),
        t("night-head-volts"),
        t("night-head-sun"),
        t("night-head-use"),
    ];
    let course = &facts.outlook.course;
    let mut from = 0;
    let rows = facts
        .plan
        .mornings
        .iter()
        .enumerate()
        .take(facts.plan.nights_wanted)
        .map(|(index, morning)| {
            let hours = course.hours.get(from..*morning).unwrap_or(&[]);
            from = *morning;
            let lowest = hours.iter().map(|hour| hour.soc_frac).fold(1.0, f64::min);
            let sag = hours.iter().map(|hour| hour.sag_volts.0).fold(f64::INFINITY, f64::min);
            let sun: WattHours = hours.iter().map(|hour| hour.ledger.sun).sum();
            let used: WattHours = hours.iter().map(|hour| hour.ledger.consumption()).sum();
            let date = facts.plan.sun.dates.get(index);
            vec![
                date.map_or_else(String::new, |date| short_date(*date)),
                percent(chance(facts, index + 1)),
                percent(lowest),
                if sag.is_finite() { volts(Volts(sag)) } else { String::new() },
                watt_hours(sun),
                watt_hours(used),
            ]
        })
        .collect();
    DataTable { caption: t("night-caption"), heads, rows }
}

/// What an expert would point out about this trip.
pub(super) fn notes(facts: &Facts<'_>) -> Vec<String> {
    let Facts { setup, outlook, .. } = facts;
    let course = &outlook.course;
    let mut notes = Vec::new();
    for event in &outlook.cut_outs {
        let name = event
            .load_id
            .map_or_else(|| t("drawer-inverter"), |id| drawer_name(setup, Drawer::Load(id)));
        notes.push(t_args(
            "note-cut-out",
            &[
                ("name", Arg::Text(&name)),
                ("when", Arg::Text(&moment(facts, event.first_hour))),
                ("volts", Arg::Text(&volts(event.volts))),
                ("soc", Arg::Text(&percent(event.soc_frac))),
            ],
        ));
    }
    if course.ledger.cold_locked.0 > 0.0 {
        let hours = duration(course.ledger.cold_locked);
        notes.push(t_args("note-cold-lock", &[("hours", Arg::Text(&hours))]));
    }
    let coldest = course.hours.iter().map(|hour| 1.0 - hour.empty_frac).fold(1.0, f64::min);
    if coldest < 0.97 {
        notes.push(t_args("note-cold-capacity", &[("share", Arg::Text(&percent(coldest)))]));
    }
    if let Some(hour) = course.first_unmet {
        notes.push(t_args("note-unmet", &[("when", Arg::Text(&moment(facts, hour)))]));
    }
    let unused = course.ledger.unused_sun;
    if unused.0 > 0.2 * (unused + course.ledger.sun).0 && unused.0 > 50.0 {
        let a_day = watt_hours(unused / days_of(facts));
        notes.push(t_args("note-unused-sun", &[("amount", Arg::Text(&a_day))]));
    }
    let needs_inverter =
        setup.enabled_loads().any(|load| load.feed == crate::model::Feed::Inverter);
    if needs_inverter && !setup.inverter.fitted {
        notes.push(t("note-no-inverter"));
    }
    if course.ledger.fuel.0 > 0.0 {
        let litres = number(course.ledger.fuel.0, 1);
        notes.push(t_args("note-fuel", &[("litres", Arg::Text(&litres))]));
    }
    notes
}

/// Where the climate comes from and how good it is.
#[must_use]
pub fn climate_source(climate: &Climate) -> String {
    let accuracy = percent(climate.accuracy_frac);
    let accuracy = ("accuracy", Arg::Text(&accuracy));
    match climate.source {
        ClimateSource::OwnSun { .. } => t_args("sure-own", &[accuracy]),
        ClimateSource::Grid => t_args(
            "sure-grid",
            &[accuracy, ("credit", Arg::Text(crate::model::climate::GRID_CREDIT))],
        ),
        ClimateSource::Region { name, distance_km } => t_args(
            "sure-region",
            &[
                accuracy,
                ("name", Arg::Text(name)),
                ("distance", Arg::Text(&number(distance_km, 0))),
            ],
        ),
        ClimateSource::Latitude => t_args("sure-latitude", &[accuracy]),
    }
}

/// How sure the answer is and what it rests on, one paragraph each.
pub(super) fn certainty(facts: &Facts<'_>) -> Vec<String> {
    let source = climate_source(facts.climate);
    let certain = facts.odds.is_some_and(|odds| odds.certain);
    let odds = if certain { t("sure-no-chance") } else { t("sure-odds") };
    vec![odds, source, t("sure-average"), t("sure-limits")]
}
