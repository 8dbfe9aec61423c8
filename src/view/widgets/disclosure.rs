//! Disclosures (`<details>`), filled at once or when they are first opened.

use super::data_table::{DataTable, data_table};
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

/// A heading that opens a table, made only while it is open; it follows then.
#[must_use]
pub fn table_disclosure(title: Signal<String>, table: Signal<DataTable>) -> AnyView {
    made_when_open(title, move || data_table(table.get()))
}

/// A heading that opens what `inside` makes, only while it is open: for pictures and long tables,
/// which would hold up a slow phone for nothing.
#[must_use]
pub fn made_when_open(
    title: Signal<String>,
    inside: impl Fn() -> AnyView + Send + 'static,
) -> AnyView {
    made_while_open(title, false, inside)
}

/// The same, open from the start where `open` says so.
#[must_use]
pub fn made_while_open(
    title: Signal<String>,
    open: bool,
    inside: impl Fn() -> AnyView + Send + 'static,
) -> AnyView {
    let at_first = open;
    let open = RwSignal::new(open);
    let toggled = move |event: leptos::ev::Event| {
        open.set(event_target::<web_sys::Element>(&event).has_attribute("open"));
    };
    view! {
        <details class="disclosure" open=at_first on:toggle=toggled>
            <summary><span>{move || title.get()}</span></summary>
            <div class="disclosure-inside">
                {move || open.get().then(&inside)}
            </div>
        </details>
    }
    .into_any()
}
