//! A list of derived figures, one under the other like a bill.

use leptos::prelude::*;

/// A figure that follows from what was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    /// What it is.
    pub name: String,
    /// The figure with its unit.
    pub value: String,
}

impl Fact {
    /// A figure.
    #[must_use]
    pub fn new(name: String, value: String) -> Self {
        Self { name, value }
    }
}

/// The figures.
#[must_use]
pub fn facts(rows: Vec<Fact>) -> AnyView {
    let rows: Vec<AnyView> = rows
        .into_iter()
        .map(|row| {
            view! {
                <div class="ledger-row">
                    <dt>{row.name}</dt>
                    <dd>{row.value}</dd>
                </div>
            }
            .into_any()
        })
        .collect();
    view! { <dl class="ledger">{rows}</dl> }.into_any()
}
