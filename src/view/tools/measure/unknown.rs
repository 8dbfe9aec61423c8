//! Which load to measure first, on the bench and beside the answer.

use crate::advice::on_site::unknowns::{Unknown, Unknowns};
use crate::forecast::MonthlyClimate;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::lang::{percent, t, t_args, watt_hours};
use crate::view::outlook::Calculation;
use crate::view::state::{AppState, Screen};
use crate::view::widgets::quiet_button;
use crate::view::words::names::{draw_source_name, load_name_by_id};
use leptos::prelude::*;

/// Loads listed.
const FIRST: usize = 5;
/// Parts smaller than this are not worth measuring.
const WORTH_FRAC: f64 = 0.02;

/// What nobody has measured and is worth it; `None` where everything is known well enough.
fn worth_measuring(app: AppState, calculation: Calculation) -> Option<Unknowns> {
    let climate = calculation.climate.get()?;
    let mut unknowns = app.setup.with(|setup| Unknowns::of(setup, &MonthlyClimate::from(&climate)));
    unknowns.ranking.retain(|unknown| unknown.part_frac >= WORTH_FRAC);
    (!unknowns.ranking.is_empty()).then_some(unknowns)
}

/// By how much the user's own figures are likely off, and that the odds know it.
fn off_by(unknowns: &Unknowns) -> String {
    let error = watt_hours(unknowns.likely_error);
    t_args("unknown-off", &[("error", Arg::Text(&error))])
}

/// The section; empty where everything is known well enough. `target` is the load on the bench.
pub(super) fn view(
    app: AppState,
    calculation: Calculation,
    target: RwSignal<Option<u32>>,
) -> AnyView {
    let unknowns = Memo::new(move |_| worth_measuring(app, calculation));
    let shown = move || {
        let unknowns = unknowns.get()?;
        let setup = app.setup.get_untracked();
        let first = unknowns.ranking.iter().take(FIRST);
        let rows: Vec<AnyView> = first.map(|unknown| row(target, &setup, unknown)).collect();
        Some(view! {
            <section class="card" aria-labelledby="unknown-title">
                <h2 id="unknown-title">{t("unknown-title")}</h2>
                <p>{off_by(&unknowns)}</p>
                <ol class="unknowns">{rows}</ol>
            </section>
        })
    };
    view! { {shown} }.into_any()
}

/// That some figures are guesses, in one line beside the answer; empty where everything is known
/// well enough.
#[must_use]
pub fn in_the_outlook(app: AppState, calculation: Calculation) -> AnyView {
    let told =
        Memo::new(move |_| worth_measuring(app, calculation).map(|unknowns| off_by(&unknowns)));
    let shown = move || {
        Some(view! {
            <section class="card" aria-label=t("unknown-title")>
                <p>{told.get()?}</p>
                {quiet_button(None, t("unknown-outlook-measure"), move || app.open(Screen::Measure))}
            </section>
        })
    };
    view! { {shown} }.into_any()
}

fn row(target: RwSignal<Option<u32>>, setup: &Setup, unknown: &Unknown) -> AnyView {
    let id = unknown.load;
    let name = load_name_by_id(setup, id);
    let (energy, error) = (watt_hours(unknown.per_day), watt_hours(unknown.likely_error));
    let part = percent(unknown.part_frac);
    let how = draw_source_name(unknown.draw_source);
    let told = t_args(
        "unknown-row",
        &[
            ("energy", Arg::Text(&energy)),
            ("error", Arg::Text(&error)),
            ("part", Arg::Text(&part)),
            ("how", Arg::Text(&how)),
        ],
    );
    let width = format!("{:.1}%", unknown.part_frac.clamp(0.0, 1.0) * 100.0);
    let label = t_args("unknown-measure-name", &[("name", Arg::Text(&name))]);
    let measure = move || {
        target.try_set(Some(id));
        crate::view::focus::to("method-title");
    };
    view! {
        <li class="help" data-testid="unknown-load">
            <h3>{name}</h3>
            <span class="bar-track" aria-hidden="true">
                <span class="bar-fill" style:width=width></span>
            </span>
            <p class="help-facts">{told}</p>
            <div role="group" aria-label=label>
                {quiet_button(None, t("unknown-measure"), measure)}
            </div>
        </li>
    }
    .into_any()
}
