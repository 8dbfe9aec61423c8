//! Figures that tell on tap where they come from.

use leptos::ev::Event;
use leptos::prelude::*;
use std::collections::BTreeSet;

/// A figure, and where it comes from.
#[derive(Clone, Debug, PartialEq)]
pub struct ExplainedFigure {
    /// Tells it from the others of its list, whatever the figures are.
    pub key: String,
    /// What it is.
    pub name: String,
    /// The figure with its unit.
    pub value: String,
    /// Where it comes from.
    pub from: Vec<String>,
    /// A bar under it.
    pub bar: Option<FigureBar>,
    /// It sums up those before it.
    pub total: bool,
}

/// The bar of a figure.
#[derive(Clone, Debug, PartialEq)]
pub struct FigureBar {
    /// Length, 0..1 of the longest.
    pub length_frac: f64,
    /// Small print beside the bar, such as the share of the usable charge.
    pub note: String,
}

/// Which figures stand open. It outlives the list, which is built anew with every answer.
#[derive(Clone, Copy)]
pub struct OpenDetails(StoredValue<BTreeSet<String>>);

impl Default for OpenDetails {
    fn default() -> Self {
        Self(StoredValue::new(BTreeSet::new()))
    }
}

impl OpenDetails {
    fn has(self, key: &str) -> bool {
        self.0.try_with_value(|opened| opened.contains(key)) == Some(true)
    }

    fn set(self, key: &str, open: bool) {
        let _ = self.0.try_update_value(|opened| {
            if open { opened.insert(key.to_owned()) } else { opened.remove(key) }
        });
    }
}

/// The figures, one under the other; those opened before stay so.
#[must_use]
pub fn explained_list(rows: Vec<ExplainedFigure>, opened: OpenDetails) -> AnyView {
    let rows: Vec<AnyView> = rows.into_iter().map(|row| told(row, opened)).collect();
    view! { <ul class="told-list" data-testid="figure-list">{rows}</ul> }.into_any()
}

fn told(row: ExplainedFigure, opened: OpenDetails) -> AnyView {
    let ExplainedFigure { key, name, value, from, bar, total } = row;
    let open = opened.has(&key);
    let toggled = move |event: Event| {
        opened.set(&key, event_target::<web_sys::Element>(&event).has_attribute("open"));
    };
    let from: Vec<AnyView> =
        from.into_iter().map(|text| view! { <p>{text}</p> }.into_any()).collect();
    let (note, track) = bar.map_or((None, None), |bar| {
        let width = format!("{:.1}%", bar.length_frac.clamp(0.0, 1.0) * 100.0);
        let track = view! {
            <span class="bar-track" aria-hidden="true">
                <span class="bar-fill" style:width=width></span>
            </span>
        };
        (Some(view! { <small>{bar.note}</small> }), Some(track))
    });
    view! {
        <li>
            <details class="told" data-testid="figure" class:told-total=total open=open on:toggle=toggled>
                <summary>
                    <span class="bar-label" data-testid="figure-name">{name}{note}</span>
                    <span class="bar-value" data-testid="figure-value">{value}</span>
                    {track}
                </summary>
                <div class="told-from" data-testid="figure-origin">{from}</div>
            </details>
        </li>
    }
    .into_any()
}
