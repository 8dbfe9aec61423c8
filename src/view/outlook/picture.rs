//! The forecast as figures for the chart of the battery's course.

use super::facts::Facts;
use crate::advice::on_site;
use crate::forecast::outlook::Drawer;
use crate::model::Weather;
use crate::physics::solar::SunTimes;
use crate::view::chart::{
    ChartEvent, ChartMark, ChartReading, EventKind, MiddleLine, SocBand, SocChart, SocHour, Span,
};
use crate::view::lang::t;
use crate::view::words::names::drawer_name;

/// Longest pause that still counts as the same event [h].
const SAME_EVENT_H: f64 = 0.01;

/// The chart of the stay asked for; `None` where there are no hours.
#[must_use]
pub fn course_chart(facts: &Facts<'_>) -> Option<SocChart> {
    let stay = facts.plan.stay_hours();
    let first_day = *facts.plan.sun.dates.first()?;
    let start_hour = facts.plan.hours.first()?.hour_of_day as f64;
    let band = facts.odds.map(|odds| odds.band.as_slice());
    let hours: Vec<SocHour> = facts
        .outlook
        .course
        .hours
        .iter()
        .take(stay)
        .enumerate()
        .map(|(index, hour)| SocHour {
            soc_frac: hour.soc_frac,
            low_frac: hour.low_frac,
            empty_frac: hour.empty_frac,
            band: band
                .and_then(|band| band.get(index))
                .map(|at| SocBand { p10_frac: at.p10_frac, p90_frac: at.p90_frac }),
        })
        .collect();
    Some(SocChart {
        first_day,
        start_hour_of_day: start_hour,
        start_soc_frac: facts.plan.start_soc_frac,
        limit_frac: facts.setup.bank.soc_min_frac,
        line: MiddleLine::Average,
        hours,
        nights: nights(facts, start_hour, stay),
        events: events(facts, stay),
        readings: on_site::points(facts.setup)
            .iter()
            .map(|point| ChartReading {
                hour: point.at.0,
                soc_frac: point.likely_frac,
                error_frac: 0.5 * (point.high_frac - point.low_frac),
            })
            .collect(),
        marks: facts
            .plan
            .restart
            .map(|(hour, _)| ChartMark { hour: hour as f64, label: t("chart-mark-restart") })
            .into_iter()
            .collect(),
    })
}

/// Sunset to sunrise, from the evening before the first day to the morning after the last.
fn nights(facts: &Facts<'_>, start_hour: f64, stay: usize) -> Vec<Span> {
    let place = &facts.setup.trip.place;
    let offset = f64::from(facts.setup.trip.utc_offset_min);
    let mut spans = Vec::new();
    let mut dark_from = -start_hour;
    for (day, date) in facts.plan.sun.dates.iter().enumerate() {
        let midnight = day as f64 * 24.0 - start_hour;
        match SunTimes::on(*date, place.latitude, place.longitude, offset) {
            SunTimes::RisesAndSets { rise, set, .. } => {
                push_span(&mut spans, dark_from, midnight + rise.0);
                dark_from = midnight + set.0;
            }
            SunTimes::PolarDay { .. } => {
                push_span(&mut spans, dark_from, midnight);
                dark_from = midnight + 24.0;
            }
            SunTimes::PolarNight { .. } => {}
        }
    }
    push_span(&mut spans, dark_from, stay as f64);
    spans.retain(|span| span.from_hour < stay as f64 && span.to_hour > 0.0);
    spans
}

fn push_span(spans: &mut Vec<Span>, from_hour: f64, to_hour: f64) {
    if to_hour > from_hour {
        spans.push(Span { from_hour, to_hour });
    }
}

fn events(facts: &Facts<'_>, stay: usize) -> Vec<ChartEvent> {
    let mut events: Vec<ChartEvent> = Vec::new();
    let mut add = |kind: EventKind, from_hour: f64, to_hour: f64, label: String| {
        let same = events.iter_mut().rev().find(|event| {
            event.kind == kind
                && event.label == label
                && (event.span.to_hour - from_hour).abs() < SAME_EVENT_H
        });
        match same {
            Some(event) => event.span.to_hour = to_hour,
            None => events.push(ChartEvent { kind, span: Span { from_hour, to_hour }, label }),
        }
    };
    for (index, hour) in facts.outlook.course.hours.iter().take(stay).enumerate() {
        let (from, to) = (index as f64, index as f64 + 1.0);
        if hour.driving_share > 0.0 {
            add(EventKind::Driving, from, to, String::new());
        }
        if hour.hook_up_share > 0.0 {
            add(EventKind::HookUp, from, to, String::new());
        }
        if hour.ledger.cold_locked.0 > 0.0 {
            add(EventKind::ColdLock, from, to, String::new());
        }
        let noon = hour.hour_of_day == 12;
        let sky = match facts.setup.trip.day_plan(hour.day).weather {
            Weather::Clear => Some(EventKind::ClearDay),
            Weather::Mixed => Some(EventKind::MixedDay),
            Weather::Dull => Some(EventKind::DullDay),
            Weather::Unknown | Weather::Typical | Weather::Sun { .. } => None,
        };
        if let (true, Some(kind)) = (noon, sky) {
            add(kind, from - 4.0, to + 3.0, String::new());
        }
    }
    for cut_out in &facts.outlook.cut_outs {
        let name = cut_out
            .load_id
            .map_or_else(|| t("drawer-inverter"), |id| drawer_name(facts.setup, Drawer::Load(id)));
        let from = cut_out.first_hour as f64;
        add(EventKind::CutOut, from, from + 1.0, name);
    }
    events.sort_by(|a, b| a.span.from_hour.total_cmp(&b.span.from_hour));
    events
}
