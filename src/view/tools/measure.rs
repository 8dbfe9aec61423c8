//! The measuring bench: readings become a load's draw with its uncertainty.

mod bench;
mod fields;
mod method;
mod readings;
mod result;
mod unknown;

pub use bench::Bench;
pub use unknown::in_the_outlook;

use crate::view::lang::t;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::widgets::radios;
use leptos::prelude::*;
use method::Method;

/// The tool.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, bench: Bench) -> AnyView {
    let titles = Method::ALL.into_iter().map(Method::title).collect();
    let chosen =
        Signal::derive(move || Method::ALL.iter().position(|method| *method == bench.method.get()));
    let choose = move |index: usize| {
        if let Some(method) = Method::ALL.get(index) {
            bench.method.try_set(*method);
        }
    };
    view! {
        <p>{t("measure-told")}</p>
        {unknown::view(app, calculation, bench.target)}
        {radios(t("measure-method"), titles, chosen, choose)}
        {move || {
            let method = bench.method.get();
            view! {
                <section class="card" aria-labelledby="method-title">
                    <h2 id="method-title" tabindex="-1">{method.title()}</h2>
                    <p>{method.told()}</p>
                    {fields::cautions(method)}
                    {fields::view(app, bench.readings, method)}
                </section>
            }
        }}
        <section class="card" aria-labelledby="measured-title">
            <h2 id="measured-title" tabindex="-1">{t("measured-title")}</h2>
            {result::view(app, bench)}
            <p><small>{t("measured-kept")}</small></p>
        </section>
    }
    .into_any()
}
