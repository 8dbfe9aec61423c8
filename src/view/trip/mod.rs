//! The part "Trip": place, date, nights, climate, and what differs day by day.

mod climate;
mod clock;
mod dates;
mod day_rows;
mod locate;
mod own_sun;
pub(super) mod place;

pub(super) use dates::fields as date_fields;

use super::lang::t;
use super::outlook::Calculation;
use super::state::AppState;
use super::widgets::disclosure;
use leptos::prelude::*;

/// The part "Trip".
#[must_use]
pub fn view(app: AppState, calculation: Calculation) -> AnyView {
    let more = view! {
        {climate::air_and_ground(app, calculation)}
        <div>
            {disclosure(t("climate-from"), false, climate::source(calculation))}
            {disclosure(t("climate-months"), false, climate::months(app, calculation))}
            {disclosure(t("climate-own-sun"), false, own_sun::view(app))}
        </div>
    }
    .into_any();
    view! {
        <h1>{t("trip-title")}</h1>
        <section class="card">
            <h2>{t("place-title")}</h2>
            {place::view(app)}
        </section>
        <section class="card">
            <h2>{t("dates-title")}</h2>
            {dates::view(app)}
        </section>
        <section class="card">
            <h2>{t("days-title")}</h2>
            {day_rows::view(app, calculation)}
        </section>
        <section class="card">
            <h2>{t("climate-title")}</h2>
            {climate::notices(calculation)}
            {climate::vehicle(app)}
            {disclosure(t("load-more"), false, more)}
        </section>
    }
    .into_any()
}
