//! Tools for on site and the workshop: readings, the measuring bench, wiring and inverter checks.

pub mod inverter;
pub mod measure;
pub mod on_site;
pub mod wiring;

use crate::view::change::{Deciding, Part};
use crate::view::lang::{key, t};
use crate::view::state::AppState;
use leptos::prelude::*;

/// The tools as a list to choose from.
#[must_use]
pub fn links(app: AppState) -> AnyView {
    let Some(deciding) = use_context::<Deciding>() else { return ().into_any() };
    let tools: Vec<AnyView> = Part::TOOLS
        .into_iter()
        .map(|part| {
            view! {
                <li>
                    <button
                        type="button"
                        class="tool"
                        data-part=part.word()
                        on:click=move |_| deciding.show(app, part)
                    >
                        <strong>{part.title()}</strong>
                        <span>{told(part)}</span>
                    </button>
                </li>
            }
            .into_any()
        })
        .collect();
    view! {
        <section class="card" aria-labelledby="tools-title">
            <h2 id="tools-title">{t("tools-title")}</h2>
            <ul class="tools">{tools}</ul>
        </section>
    }
    .into_any()
}

/// What a tool is for.
fn told(part: Part) -> String {
    match part {
        Part::OnSite => t(key!("tool-on-site-told")),
        Part::Measure => t(key!("tool-measure-told")),
        Part::Wiring => t(key!("tool-wiring-told")),
        Part::Inverter => t(key!("tool-inverter-told")),
        _ => String::new(),
    }
}
