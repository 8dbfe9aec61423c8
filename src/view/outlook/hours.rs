//! The course of the stay hour by hour in figures: charge, voltage, temperature. A table for each day, made
//! when it is opened.

use super::Calculation;
use crate::i18n::Arg;
use crate::physics::battery::ChargeStage;
use crate::view::lang::{
    clock, key, percent, short_date, t, t_args, temperature, volts, watt_hours,
};
use crate::view::widgets::{DataTable, disclosure, table_disclosure};
use leptos::prelude::*;

/// Hours of the stay asked for; the course looks further ahead.
fn stay_hours(calculation: Calculation) -> usize {
    calculation.plan.get().map_or(0, |plan| plan.0.stay_hours())
}

/// A day for each of the stay.
#[must_use]
pub fn view(calculation: Calculation) -> AnyView {
    let count = Memo::new(move |_| {
        let outlook = calculation.outlook.get();
        let last = stay_hours(calculation).saturating_sub(1);
        outlook.and_then(|outlook| outlook.0.course.hours.get(last).map(|hour| hour.day + 1))
    });
    let days = move || {
        let days: Vec<AnyView> =
            (0..count.get().unwrap_or(0)).map(|index| day(calculation, index)).collect();
        view! { {days} }.into_any()
    };
    let inside = view! {
        <p class="field-hint">{t("hours-told")}</p>
        {days}
    }
    .into_any();
    disclosure(t("hours-title"), false, inside)
}

fn day(calculation: Calculation, index: usize) -> AnyView {
    table_disclosure(
        Signal::derive(move || day_name(calculation, index)),
        Signal::derive(move || table(calculation, index)),
    )
}

fn day_name(calculation: Calculation, index: usize) -> String {
    let plan = calculation.plan.get();
    let date = plan.and_then(|plan| plan.0.sun.dates.get(index).copied());
    date.map_or_else(String::new, short_date)
}

fn stage_name(stage: ChargeStage) -> String {
    t(match stage {
        ChargeStage::Bulk => key!("stage-bulk"),
        ChargeStage::Absorption => key!("stage-absorption"),
        ChargeStage::Float => key!("stage-float"),
    })
}

fn table(calculation: Calculation, index: usize) -> DataTable {
    let outlook = calculation.outlook.get();
    let hours = outlook
        .iter()
        .flat_map(|outlook| outlook.0.course.hours.iter().take(stay_hours(calculation)));
    let rows = hours
        .filter(|hour| hour.day == index)
        .map(|hour| {
            let from = u16::try_from(hour.hour_of_day * 60).unwrap_or(0);
            let books = &hour.ledger;
            vec![
                clock(from),
                percent(hour.soc_frac),
                watt_hours(books.sun + books.driving + books.hook_up + books.other),
                watt_hours(books.consumption()),
                volts(hour.volts),
                volts(hour.sag_volts),
                temperature(hour.battery),
                hour.stage.map_or_else(String::new, stage_name),
            ]
        })
        .collect();
    let day = day_name(calculation, index);
    DataTable {
        caption: t_args("hours-caption", &[("day", Arg::Text(&day))]),
        heads: vec![
            t("hours-head-time"),
            t("hours-head-soc"),
            t("hours-head-in"),
            t("hours-head-out"),
            t("hours-head-volts"),
            t("hours-head-sag"),
            t("hours-head-battery"),
            t("hours-head-stage"),
        ],
        rows,
    }
}
