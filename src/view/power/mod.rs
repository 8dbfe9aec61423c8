//! The battery, the inverter, and everything that charges.

mod bank;
mod bank_figures;
mod driving;
mod every;
mod hook_up;
mod inverter;
mod inverter_figures;
mod other;
mod parked;
mod place_climate;
mod rows;
mod solar;
mod stages;

use super::lang::t;
use super::state::AppState;
use leptos::prelude::*;

/// The part "Power".
#[must_use]
pub fn view(app: AppState) -> AnyView {
    view! {
        <h1>{t("power-title")}</h1>
        {section(t("bank-title"), bank::view(app))}
        {section(t("solar-title"), solar::view(app))}
        {section(t("inverter-title"), inverter::view(app))}
        {section(t("driving-title"), driving::view(app))}
        {section(t("hook-up-title"), hook_up::view(app))}
        {section(t("other-title"), other::view(app))}
        {section(t("parked-title"), parked::view(app))}
    }
    .into_any()
}

fn section(title: String, inside: AnyView) -> AnyView {
    view! {
        <section class="card">
            <h2>{title}</h2>
            {inside}
        </section>
    }
    .into_any()
}
