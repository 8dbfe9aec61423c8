//! Filled by the editors.
use super::state::AppState;
use leptos::prelude::*;

/// The part.
#[must_use]
pub fn view(_app: AppState) -> AnyView {
    ().into_any()
}
