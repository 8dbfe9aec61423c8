//! The battery, the inverter, and everything that charges.

mod bank;
mod bank_figures;
mod driving;
mod every;
mod fitted;
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
        {inverter::view(app)}
        {driving::view(app)}
        {hook_up::view(app)}
        <section class="card">{other::view(app)}</section>
        {parked::view(app)}
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
