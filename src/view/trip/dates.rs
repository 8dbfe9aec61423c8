//! Arrival, nights, and the camp clock.

use crate::model::limits::{NIGHTS, UTC_OFFSET_MIN};
use crate::model::{Setup, Trip};
use crate::view::lang::{clock, full_date, t};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, date_field, select_field};
use leptos::prelude::*;
use time::Date;

fn start(setup: &Setup) -> Date {
    setup.trip.start()
}

fn set_start(setup: &mut Setup, date: Date) {
    let trip: &mut Trip = &mut setup.trip;
    trip.year = u16::try_from(date.year()).unwrap_or(trip.year);
    trip.month = u8::from(date.month());
    trip.day = date.day();
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
    let words = move || app.setup.with(|setup| full_date(start(setup)));
    view! {
        <p class="quiet">{words}</p>
        <div class="fields">
            {fields(app)} {select_field(app, t("dates-hour"), hours, hour)}
            {NumberField { scale: 1.0 / 60.0, ..offset }
                .step(1.0)
                .hint(t("dates-offset-hint"))
                .view(app)}
        </div>
    }
    .into_any()
}
