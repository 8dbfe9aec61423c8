//! The tool for a log of readings: bring it, say what its columns are, take over what it shows.

mod bring;
mod columns;
mod findings;
mod state;

pub use state::LogState;

use crate::view::lang::t;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use leptos::prelude::*;

/// The tool.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, state: LogState) -> AnyView {
    // A file that was dropped anywhere on the page.
    Effect::new(move |_| {
        if let Some(text) = app.dropped_log.get() {
            app.dropped_log.set(None);
            state.take_in(text);
        }
    });
    state.follow_choices(app);
    state.follow_setup(app, calculation);
    view! {
        <p>{t("log-told")}</p>
        {bring::view(state)}
        {columns::view(app, state)}
        {findings::view(app, state)}
    }
    .into_any()
}
