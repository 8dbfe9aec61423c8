//! What to change: what helps, ways to more nights, what to buy, setups side by side, the year,
//! and the tools for on site and the workshop.

pub mod helps;
pub mod ways;
pub mod words;
pub mod work;

use super::lang::{key, t};
use super::outlook::Calculation;
use super::state::{AppState, Tab};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// A part of "Change".
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Part {
    /// Ranked changes.
    #[default]
    Helps,
    /// Ways to a number of nights.
    Ways,
}

impl Part {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 2] = [Self::Helps, Self::Ways];

    fn title(self) -> String {
        t(match self {
            Self::Helps => key!("part-helps"),
            Self::Ways => key!("part-ways"),
        })
    }

    fn word(self) -> &'static str {
        match self {
            Self::Helps => "helps",
            Self::Ways => "ways",
        }
    }
}

/// What the parts of "Change" keep while others are shown; copies share it.
#[derive(Clone, Copy)]
pub struct Deciding {
    /// Part shown.
    pub part: RwSignal<Part>,
    helps: helps::Kept,
    ways: ways::Kept,
}

impl Default for Deciding {
    fn default() -> Self {
        Self {
            part: RwSignal::new(Part::default()),
            helps: RwSignal::new(None),
            ways: ways::Kept::default(),
        }
    }
}

impl Deciding {
    /// Shows a part, from wherever the page is.
    pub fn show(self, app: AppState, part: Part) {
        self.part.try_set(part);
        app.go(Tab::Change);
    }
}

/// The part of the page.
#[must_use]
pub fn view(app: AppState) -> AnyView {
    let (Some(calculation), Some(deciding)) =
        (use_context::<Calculation>(), use_context::<Deciding>())
    else {
        // Both are provided where the page is made.
        return ().into_any();
    };
    let parts: Vec<AnyView> = Part::ALL
        .into_iter()
        .map(|part| {
            view! {
                <button
                    type="button"
                    class="part"
                    data-part=part.word()
                    aria-current=move || (deciding.part.get() == part).then_some("true")
                    on:click=move |_| {
                        deciding.part.try_set(part);
                    }
                >
                    {part.title()}
                </button>
            }
            .into_any()
        })
        .collect();
    view! {
        <h1>{t("change-title")}</h1>
        <nav class="parts" aria-label=t("change-parts")>{parts}</nav>
        {move || match deciding.part.get() {
            Part::Helps => helps::view(app, calculation, deciding.helps),
            Part::Ways => ways::view(app, calculation, deciding.ways),
        }}
    }
    .into_any()
}

/// Moves the focus to the element with this id, where what had it is about to go.
fn focus(id: &str) {
    let element = document().get_element_by_id(id);
    if let Some(element) = element.and_then(|e| e.dyn_into::<web_sys::HtmlElement>().ok()) {
        // Fails only for an element that cannot take the focus; then it stays where it is.
        let _ = element.focus();
    }
}
