//! Arrival, nights, and the camp clock.

use super::clock::{by_longitude, keep_suggested, of_device, suggested, utc};
use crate::i18n::Arg;
use crate::model::limits::{NIGHTS, UTC_OFFSET_MIN};
use crate::model::{Setup, Trip};
use crate::view::lang::{clock, short_date, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, date_field, disclosure, quiet_button, select_field};
use leptos::prelude::*;
use time::{Date, Duration};

fn start(setup: &Setup) -> Date {
    setup.trip.start()
}

fn set_start(setup: &mut Setup, date: Date) {
    keep_suggested(&mut setup.trip, |trip: &mut Trip| {
        trip.year = u16::try_from(date.year()).unwrap_or(trip.year);
        trip.month = u8::from(date.month());
        trip.day = date.day();
    });
}

/// Date of arrival and nights.
#[must_use]
pub fn fields(app: AppState) -> AnyView {
    view! {
        {date_field(app, t("dates-arrival"), Lens::of(start, set_start))}
        {NumberField::new(
                t("dates-nights"),
                "",
                NIGHTS,
                Lens::of(|s| f64::from(s.trip.nights), |s, v| s.trip.nights = v.round() as u8),
            )
            .step(1.0)
            .view(app)}
    }
    .into_any()
}

pub(super) fn view(app: AppState) -> AnyView {
    let hours = (0..24).map(|hour| clock(hour * 60)).collect();
    let hour = Lens::of(
        |s| usize::from(s.trip.arrival_hour),
        |s, hour| s.trip.arrival_hour = u8::try_from(hour).unwrap_or(16).min(23),
    );
    let offset = NumberField::new(
        t("dates-offset"),
        "h",
        UTC_OFFSET_MIN,
        Lens::of(
            |s| f64::from(s.trip.utc_offset_min),
            |s, v| s.trip.utc_offset_min = v.round() as i16,
        ),
    );
    let more = view! {
        <div class="fields">
            {select_field(app, t("dates-hour"), hours, hour)}
            {NumberField { scale: 1.0 / 60.0, ..offset }
                .step(1.0)
                .hint(t("dates-offset-hint"))
                .view(app)}
        </div>
        {clocks(app)}
    }
    .into_any();
    view! {
        <div class="fields">{fields(app)}</div>
        <p class="quiet">{move || app.setup.with(from_to)}</p>
        {disclosure(t("load-more"), false, more)}
    }
    .into_any()
}

/// Arrival and departure in words.
fn from_to(setup: &Setup) -> String {
    let arrival = start(setup);
    let departure = arrival.saturating_add(Duration::days(i64::from(setup.trip.nights)));
    let (arrival, departure) = (short_date(arrival), short_date(departure));
    t_args("dates-from-to", &[("from", Arg::Text(&arrival)), ("to", Arg::Text(&departure))])
}

/// The clocks there are to choose from, where another than the suggested one is in force.
fn clocks(app: AppState) -> AnyView {
    let choices = Memo::new(move |_| {
        app.setup.with(|setup| {
            let trip = &setup.trip;
            let now = trip.utc_offset_min;
            let choices = (of_device(trip.start()), by_longitude(trip.place.longitude), now);
            (now != suggested(trip)).then_some(choices)
        })
    });
    let buttons = move || {
        let (device, longitude, now) = choices.get()?;
        let set = move |minutes: i16| app.edit_apart(|s| s.trip.utc_offset_min = minutes);
        let device_button = (device != now).then(|| {
            let text = t_args("dates-clock-device", &[("utc", Arg::Text(&utc(device)))]);
            quiet_button(None, text, move || set(device))
        });
        let longitude_button = (longitude != now && longitude != device).then(|| {
            let text = t_args("dates-clock-longitude", &[("utc", Arg::Text(&utc(longitude)))]);
            quiet_button(None, text, move || set(longitude))
        });
        Some(view! { {device_button} {longitude_button} })
    };
    view! { <div class="button-row">{buttons}</div> }.into_any()
}
