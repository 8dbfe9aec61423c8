//! Whether answer and forms stand side by side, as `frame.css` lays them out.

use leptos::prelude::window;

/// There is room for two columns.
#[must_use]
pub fn is_wide() -> bool {
    window().match_media("(min-width: 1000px)").ok().flatten().is_some_and(|query| query.matches())
}
