//! Tools for on site and the workshop: readings, logs of them, the measuring bench, wiring and inverter checks.

pub mod inverter;
pub mod log;
pub mod measure;
pub mod on_site;
pub mod wiring;

use crate::view::lang::{key, t};
use crate::view::state::{AppState, Screen};
use crate::view::words::names::screen_title;
use leptos::prelude::*;

/// The tools in the order they are offered, with the key of what each is for.
const TOOLS: [(Screen, &str); 5] = [
    (Screen::OnSite, key!("tool-on-site-told")),
    (Screen::Log, key!("tool-log-told")),
    (Screen::Measure, key!("tool-measure-told")),
    (Screen::Wiring, key!("tool-wiring-told")),
    (Screen::Inverter, key!("tool-inverter-told")),
];

/// The tools as a list to choose from.
#[must_use]
pub fn links(app: AppState) -> AnyView {
    let tools: Vec<AnyView> = TOOLS
        .into_iter()
        .map(|(screen, told)| {
            view! {
                <li>
                    <button
                        type="button"
                        class="tool"
                        data-part=screen.word()
                        on:click=move |_| app.open(screen)
                    >
                        <strong>{screen_title(screen)}</strong>
                        <span>{t(told)}</span>
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
