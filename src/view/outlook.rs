//! From the setup to the answer: the seam between the page and the forecast.

use super::answer::Answer;
use super::state::AppState;
use leptos::prelude::*;

/// The answer to the setup on screen, following every edit.
#[must_use]
pub fn follow(app: AppState) -> Answer {
    let _ = app;
    Signal::derive_local(|| None)
}
