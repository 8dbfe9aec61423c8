//! A ranked list with bars.

use leptos::prelude::*;

/// One row.
#[derive(Clone, Debug, PartialEq)]
pub struct Bar {
    /// What it is.
    pub label: String,
    /// How much, with its unit.
    pub value: String,
    /// Length of the bar, 0..1 of the longest.
    pub length_frac: f64,
    /// Something to add in small print.
    pub note: Option<String>,
}

/// The rows, longest first as given; the words carry everything, the bars only show.
#[must_use]
pub fn bars(rows: Vec<Bar>) -> AnyView {
    let rows: Vec<AnyView> = rows
        .into_iter()
        .map(|row| {
            let width = format!("{:.1}%", row.length_frac.clamp(0.0, 1.0) * 100.0);
            let note = row.note.map(|note| view! { <small>{note}</small> });
            view! {
                <li class="bar">
                    <span class="bar-label">{row.label}{note}</span>
                    <span class="bar-value">{row.value}</span>
                    <span class="bar-track" aria-hidden="true">
                        <span class="bar-fill" style:width=width></span>
                    </span>
                </li>
            }
            .into_any()
        })
        .collect();
    view! { <ol class="bars">{rows}</ol> }.into_any()
}
