//! Readings on site: what was read, what explains it, and the forecast from there on.

mod form;
mod learned;
mod log;

pub use form::Draft;
pub use learned::Kept;

use crate::view::lang::t;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use leptos::prelude::*;

/// The tool.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, draft: Draft, kept: Kept) -> AnyView {
    view! {
        <p>{t("site-told")}</p>
        {form::view(app, draft)}
        {log::view(app, calculation)}
        {learned::view(app, calculation, kept)}
    }
    .into_any()
}
