//! A part that opens on tap.

use leptos::prelude::*;

/// A heading that opens what belongs to it; the browser's own element, so it works by keyboard
/// and can be found by searching in the page.
#[must_use]
pub fn disclosure(title: String, open: bool, inside: AnyView) -> AnyView {
    view! {
        <details class="disclosure" open=open>
            <summary><span>{title}</span></summary>
            <div class="disclosure-inside">{inside}</div>
        </details>
    }
    .into_any()
}
