//! Which load to measure first: how far the unmeasured ones could move the answer, on the bench and
//! beside the answer.

use super::Bench;
use crate::advice::on_site::unknowns::{Unknown, UnknownsJob};
use crate::advice::trial::Outcome;
use crate::forecast::Odds;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::units::WattHours;
use crate::view::change::helps::nights;
use crate::view::change::stay::essence;
use crate::view::change::words::name_of;
use crate::view::change::work::{Stage, Turns, play_after, to_search};
use crate::view::change::{Deciding, Part};
use crate::view::lang::{percent, t, t_args, watt_hours};
use crate::view::loads::learned_name;
use crate::view::outlook::{Calculation, Made};
use crate::view::state::AppState;
use crate::view::widgets::quiet_button;
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last edit [ms].
const PAUSE_MS: u64 = 400;
/// Loads listed.
const FIRST: usize = 5;
/// Parts smaller than this are not worth measuring.
const WORTH_FRAC: f64 = 0.02;

/// What is known of what is not.
#[derive(Clone, Debug)]
pub struct Found {
    essence: Setup,
    ranking: Vec<Unknown>,
    likely_error: WattHours,
    /// Higher, as entered, lower; as far as played.
    outcomes: Vec<Outcome>,
    stage: Stage,
}

/// What is known, kept while other parts of the page are shown.
pub type Kept = RwSignal<Option<Made<Found>>>;

/// Plays it for every setup, once `ready`.
fn follow(app: AppState, calculation: Calculation, kept: Kept, ready: Signal<bool>) {
    let turns = Turns::default();
    let about = Memo::new(move |_| app.setup.with(essence));
    Effect::new(move |before: Option<()>| {
        let setup = about.get();
        let turn = turns.begin();
        if !ready.get() {
            return;
        }
        let sky = to_search(&setup, calculation, kept, |found| {
            found.stage == Stage::Done && found.essence == setup
        });
        let Some(sky) = sky else { return };
        let essence = setup.clone();
        play_after(
            if before.is_some() { PAUSE_MS } else { 0 },
            turn,
            move || Ok(UnknownsJob::new(&setup, &sky)),
            move |job, stage| {
                kept.try_set(job.filter(|_| stage != Stage::Failed).map(|job| {
                    Made(Arc::new(Found {
                        essence: essence.clone(),
                        ranking: job.ranking().to_vec(),
                        likely_error: job.likely_error(),
                        outcomes: job.outcomes(),
                        stage,
                    }))
                }));
            },
        );
    });
}

/// The section; empty where everything is known well enough.
pub(super) fn view(app: AppState, calculation: Calculation, bench: Bench) -> AnyView {
    let kept = bench.unknown;
    follow(app, calculation, kept, Signal::stored(true));
    view! { {move || kept.get().and_then(|found| section(bench, &found.0))} }.into_any()
}

/// How far the figures nobody has measured could move the answer, beside the answer; empty while
/// it is not known and where everything is known well enough.
#[must_use]
pub fn in_the_outlook(app: AppState, calculation: Calculation) -> AnyView {
    let Some(deciding) = use_context::<Deciding>() else { return ().into_any() };
    let kept = deciding.bench.unknown;
    // The odds of the answer itself come first.
    let settled = Memo::new(move |_| {
        calculation.odds.with(|odds| odds.as_ref().is_some_and(Odds::is_complete))
    });
    follow(app, calculation, kept, settled.into());
    let about = Memo::new(move |_| app.setup.with(essence));
    let shown = move || {
        // What was found for the setup before an edit would stand beside another answer.
        let found = kept.get().filter(|found| about.with(|about| *about == found.0.essence))?;
        let moves = moves(&found.0).filter(|_| !worth_measuring(&found.0).is_empty())?;
        Some(view! {
            <section class="card" aria-labelledby="unknown-outlook-title">
                <h2 id="unknown-outlook-title">{t("unknown-outlook-title")}</h2>
                <p>{moves}</p>
                {quiet_button(None, t("unknown-outlook-measure"), move || {
                    deciding.show(app, Part::Measure);
                })}
            </section>
        })
    };
    view! { {shown} }.into_any()
}

fn worth_measuring(found: &Found) -> Vec<&Unknown> {
    found.ranking.iter().filter(|unknown| unknown.part_frac >= WORTH_FRAC).collect()
}

/// Between how many nights the answer could lie, in words; `None` until all of it is played.
fn moves(found: &Found) -> Option<String> {
    let ([higher, _, lower], Stage::Done) = (found.outcomes.as_slice(), found.stage) else {
        return None;
    };
    let all = watt_hours(found.likely_error);
    let horizon = higher.lasting_frac.len();
    let (few, many) = (nights(higher.nights_sure, horizon), nights(lower.nights_sure, horizon));
    Some(if few == many {
        t_args("unknown-same", &[("error", Arg::Text(&all)), ("nights", few.arg())])
    } else {
        t_args(
            "unknown-moves",
            &[("error", Arg::Text(&all)), ("few", few.arg()), ("many", many.arg())],
        )
    })
}

fn section(bench: Bench, found: &Found) -> Option<AnyView> {
    let worth = worth_measuring(found);
    if worth.is_empty() {
        return None;
    }
    let rows: Vec<AnyView> =
        worth.into_iter().take(FIRST).map(|unknown| row(bench, found, unknown)).collect();
    Some(
        view! {
            <section class="card" aria-labelledby="unknown-title">
                <h2 id="unknown-title">{t("unknown-title")}</h2>
                {moves(found).map_or_else(
                    || view! { <p class="working">{t("change-working")}</p> }.into_any(),
                    |moves| view! { <p>{moves}</p> }.into_any(),
                )}
                <ol class="unknowns">{rows}</ol>
            </section>
        }
        .into_any(),
    )
}

fn row(bench: Bench, found: &Found, unknown: &Unknown) -> AnyView {
    let id = unknown.load;
    let name = name_of(&found.essence, id);
    let (energy, error) = (watt_hours(unknown.per_day), watt_hours(unknown.likely_error));
    let part = percent(unknown.part_frac);
    let how = learned_name(unknown.learned);
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
        bench.for_load(id);
        crate::view::focus::to("method-title");
    };
    view! {
        <li class="help">
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
