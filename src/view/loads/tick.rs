//! A box to tick.

use leptos::ev::Event;
use leptos::prelude::*;

/// A box to tick, with its words.
pub(super) fn tick(
    words: AnyView,
    ticked: impl Fn() -> bool + Send + 'static,
    set: impl Fn(bool) + 'static,
) -> AnyView {
    let change = move |event: Event| set(event_target_checked(&event));
    view! {
        <label class="bring-keep">
            <input type="checkbox" prop:checked=ticked on:change=change />
            <span>{words}</span>
        </label>
    }
    .into_any()
}
