//! The forecast in words and figures ready to be shown.

use super::facts::{Facts, days_of, largest_shares, moment};
use super::origins::{balance_rows, climate_source};
use crate::forecast::Odds;
use crate::forecast::full_charge::days_full_a_week;
use crate::forecast::odds::EVEN_FRAC;
use crate::forecast::outlook::Drawer;
use crate::i18n::Arg;
use crate::model::Feed;
use crate::units::{Volts, WattHours};
use crate::view::answer::{AnswerDetail, AnswerView, Drain};
use crate::view::certainty::sure_frac;
use crate::view::lang::{
    Shown, duration, percent, short_date, t, t_args, volts, volume, watt_hours, weekday,
};
use crate::view::today::since_arrival_now;
use crate::view::widgets::{DataTable, LanternLevel, LanternNight};
use crate::view::words::names::drawer_name;
use time::Date;

/// Everything the page shows.
#[must_use]
pub fn answer_view(facts: &Facts<'_>) -> AnswerView {
    let Facts { plan, outlook, odds, .. } = facts;
    let wanted = plan.nights_wanted;
    let horizon = plan.mornings.len();
    // Until there are odds the average course stands in for them.
    let average = outlook.nights.max(facts.nights_past);
    let sure = facts.nights_at(sure_frac()).unwrap_or(average);
    let likely = facts.nights_at(EVEN_FRAC).unwrap_or(average);
    let whole = |nights: usize| u16::try_from(nights).unwrap_or(u16::MAX);
    AnswerView {
        sure_nights: whole(sure - facts.nights_past),
        likely_nights: whole(likely - facts.nights_past),
        from_now: !facts.from_arrival && is_under_way(facts),
        asked_nights: whole(wanted),
        open_ended: sure >= horizon,
        chance_frac: facts.chance_of(wanted),
        first_low: odds
            .map_or(outlook.course.first_low, |odds| odds.first_low_at(sure_frac()))
            .map(|hour| moment(facts, hour + 1)),
        lowest_soc_frac: odds.map_or(outlook.course.lowest.0, |odds| odds.lowest_at(sure_frac())),
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

/// Today lies within the stay.
fn is_under_way(facts: &Facts<'_>) -> bool {
    let end = facts.plan.nights_wanted.checked_sub(1).and_then(|at| facts.plan.mornings.get(at));
    since_arrival_now(&facts.setup.trip).zip(end).is_some_and(|(since, end)| since.0 < *end as f64)
}

/// Chance of lasting through night `night` (from 1): the odds, or all or nothing on average.
fn chance(facts: &Facts<'_>, night: usize) -> f64 {
    facts.chance_of(night).unwrap_or(if facts.outlook.nights >= night { 1.0 } else { 0.0 })
}

fn lanterns(facts: &Facts<'_>) -> Vec<LanternNight> {
    (1..=facts.plan.nights_wanted)
        .map(|night| {
            let chance = chance(facts, night);
            let date = facts.plan.sun.dates.get(night - 1);
            let past = night <= facts.nights_past;
            LanternNight {
                level: if past { LanternLevel::Past } else { LanternLevel::of_chance(chance) },
                label: date.map_or_else(|| night.to_string(), |date| weekday(*date)),
                chance: if past { String::new() } else { percent(chance) },
            }
        })
        .collect()
}

/// What comes and goes on an average day, in words, in Wh a day; use is negative.
fn balance(facts: &Facts<'_>) -> Vec<(String, WattHours)> {
    balance_rows(facts).map(|(row, a_day)| (row.label(), a_day)).collect()
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

/// What is known of one night and the day before it, in average weather but for its chance.
pub(super) struct NightFigures {
    /// The day it begins on.
    pub evening: Option<Date>,
    /// Chance of lasting through it, 0..1.
    pub chance_frac: f64,
    /// Lowest charge since the morning before, 0..1.
    pub lowest_frac: f64,
    /// Lowest voltage, where it can be told.
    pub sag: Option<Volts>,
    /// Brought in by the sun.
    pub sun: WattHours,
    /// Used.
    pub used: WattHours,
}

/// Each night of the stay.
pub(super) fn night_figures(facts: &Facts<'_>) -> Vec<NightFigures> {
    let course = &facts.outlook.course;
    let mut from = 0;
    let nights = facts.plan.mornings.iter().enumerate().take(facts.plan.nights_wanted);
    nights
        .map(|(index, morning)| {
            let hours = course.hours.get(from..*morning).unwrap_or(&[]);
            from = *morning;
            let sag = hours.iter().map(|hour| hour.sag_volts.0).fold(f64::INFINITY, f64::min);
            NightFigures {
                evening: facts.plan.sun.dates.get(index).copied(),
                chance_frac: chance(facts, index + 1),
                lowest_frac: hours.iter().map(|hour| hour.soc_frac).fold(1.0, f64::min),
                sag: sag.is_finite().then_some(Volts(sag)),
                sun: hours.iter().map(|hour| hour.ledger.sun).sum(),
                used: hours.iter().map(|hour| hour.ledger.consumption()).sum(),
            }
        })
        .collect()
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
    let row = |night: NightFigures| {
        vec![
            night.evening.map_or_else(String::new, short_date),
            percent(night.chance_frac),
            percent(night.lowest_frac),
            night.sag.map_or_else(String::new, volts),
            watt_hours(night.sun),
            watt_hours(night.used),
        ]
    };
    let rows = night_figures(facts).into_iter().map(row).collect();
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
    let own_cable = |id| setup.load(id).is_some_and(|load| load.feed == Feed::Dc);
    if outlook.cut_outs.iter().filter_map(|event| event.load_id).any(own_cable) {
        notes.push(t("note-cut-out-cable"));
    }
    if course.ledger.cold_locked.0 > 0.0 {
        let hours = duration(course.ledger.cold_locked);
        notes.push(t_args("note-cold-lock", &[("hours", Arg::Text(&hours))]));
    }
    let coldest = course.hours.iter().map(|hour| 1.0 - hour.empty_frac).fold(1.0, f64::min);
    if coldest < 0.97 {
        notes.push(t_args("note-cold-capacity", &[("share", Arg::Text(&percent(coldest)))]));
    }
    notes.extend(lead_gets_full(facts));
    if let Some(hour) = course.first_unmet {
        notes.push(t_args("note-unmet", &[("when", Arg::Text(&moment(facts, hour)))]));
    }
    let unused = course.ledger.unused_sun;
    if unused.0 > 0.2 * (unused + course.ledger.sun).0 && unused.0 > 50.0 {
        let a_day = watt_hours(unused / days_of(facts));
        notes.push(t_args("note-unused-sun", &[("amount", Arg::Text(&a_day))]));
    }
    let needs_inverter = setup.enabled_loads().any(|load| load.feed == Feed::Inverter);
    if needs_inverter && !setup.inverter.fitted {
        notes.push(t("note-no-inverter"));
    }
    if course.ledger.fuel.0 > 0.0 {
        let fuel = volume(course.ledger.fuel);
        notes.push(t_args("note-fuel", &[("fuel", Arg::Text(&fuel))]));
    }
    notes
}

/// On how many days a week a lead battery gets full, and what to do where it hardly does.
fn lead_gets_full(facts: &Facts<'_>) -> Option<String> {
    // Weather that cannot be drawn is told where the odds are.
    let a_week = days_full_a_week(facts.plan).ok().flatten()?;
    let days = Shown::new(a_week, 0);
    Some(if a_week < 0.5 {
        t("note-lead-hardly-full")
    } else if a_week < 6.5 {
        t_args("note-lead-full", &[("days", days.arg())])
    } else {
        t("note-lead-full-daily")
    })
}

/// How sure the answer is and what it rests on, one paragraph each.
pub(super) fn certainty(facts: &Facts<'_>) -> Vec<String> {
    let source = climate_source(facts.climate);
    vec![t("sure-odds"), source, t("sure-average"), t("sure-limits")]
}
