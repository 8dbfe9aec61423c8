//! Fields for a time of day and for a date, with the browser's own pickers.

use super::fresh_id;
use crate::view::lang::t;
use crate::view::lens::Lens;
use crate::view::state::AppState;
use leptos::ev::Event;
use leptos::prelude::*;
use time::{Date, Month};

/// A time of day [min after midnight]. A half-typed time leaves the last one in force.
#[must_use]
pub fn time_field(app: AppState, label: String, lens: Lens<u16>) -> AnyView {
    let shown = {
        let lens = lens.clone();
        Memo::new(move |_| iso_time(lens.read(app).unwrap_or(0)))
    };
    native(label, "time", shown.into(), move |text| match minutes(text) {
        Some(minutes) => {
            lens.write(app, minutes);
            true
        }
        None => false,
    })
}

/// A date.
#[must_use]
pub fn date_field(app: AppState, label: String, lens: Lens<Date>) -> AnyView {
    let shown = {
        let lens = lens.clone();
        Memo::new(move |_| lens.read(app).map(iso).unwrap_or_default())
    };
    native(label, "date", shown.into(), move |text| match date(text) {
        Some(date) if (2000..=2099).contains(&date.year()) => {
            lens.write(app, date);
            true
        }
        _ => false,
    })
}

fn native(
    label: String,
    kind: &'static str,
    shown: Signal<String>,
    take: impl Fn(&str) -> bool + 'static,
) -> AnyView {
    let id = fresh_id("d");
    let fault_id = format!("{id}-f");
    let faulty = RwSignal::new(false);
    view! {
        <div class="field" class:field-faulty=move || faulty.get()>
            <div class="field-head"><label for=id.clone()>{label}</label></div>
            <div class="field-box">
                <input
                    id=id
                    type=kind
                    aria-describedby=fault_id.clone()
                    aria-invalid=move || if faulty.get() { "true" } else { "false" }
                    prop:value=move || shown.get()
                    on:change=move |event: Event| {
                        faulty.set(!take(&event_target_value(&event)));
                    }
                />
            </div>
            <p class="field-fault" id=fault_id aria-live="polite">
                {move || faulty.get().then(|| t("fault-date-or-time"))}
            </p>
        </div>
    }
    .into_any()
}

/// Minutes after midnight of `HH:MM`, as every browser gives it.
fn minutes(text: &str) -> Option<u16> {
    let (hours, rest) = text.split_once(':')?;
    let hours: u16 = hours.parse().ok()?;
    let minutes: u16 = rest.get(..2)?.parse().ok()?;
    (hours < 24 && minutes < 60).then_some(hours * 60 + minutes)
}

/// Minutes after midnight as every browser takes them; it shows the clock of the reader.
fn iso_time(minutes: u16) -> String {
    format!("{:02}:{:02}", minutes / 60 % 24, minutes % 60)
}

fn iso(date: Date) -> String {
    format!("{:04}-{:02}-{:02}", date.year(), u8::from(date.month()), date.day())
}

/// The date of `YYYY-MM-DD`.
fn date(text: &str) -> Option<Date> {
    let mut parts = text.splitn(3, '-');
    let year = parts.next()?.parse().ok()?;
    let month = Month::try_from(parts.next()?.parse::<u8>().ok()?).ok()?;
    Date::from_calendar_date(year, month, parts.next()?.parse().ok()?).ok()
}
