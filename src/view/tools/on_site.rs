//! Readings on site: what was read, what explains it, and the forecast from there on.

mod form;
mod learned;
mod log;
pub mod today;

pub use form::Draft;
pub(super) use learned::fit_words;

use crate::advice::on_site::fit::Fit;
use crate::view::arc_ptr_eq::ArcPtrEq;
use crate::view::lang::t;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use leptos::prelude::*;

/// The tool.
#[must_use]
pub fn view(
    app: AppState,
    calculation: Calculation,
    draft: Draft,
    learned: RwSignal<Option<ArcPtrEq<Fit>>>,
) -> AnyView {
    view! {
        <p>{t("site-told")}</p>
        {form::view(app, draft)}
        {log::view(app, calculation)}
        {learned::view(app, calculation, learned)}
    }
    .into_any()
}
