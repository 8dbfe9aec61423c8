//! Ways to a wanted number of nights at a wanted chance, each with its steps and its bill.

use super::helps::nights;
use super::stay::Stay;
use super::words::{bill_words, cautions, change_words, count};
use super::work::{Stage, Turns, failure, nothing_yet, play_after, to_search};
use crate::advice::changes::Change;
use crate::advice::changes::cost::Hazard;
use crate::advice::changes::ways::{Aim, Way, WayKind, WaysJob};
use crate::advice::trial::Outcome;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::icons::Icon;
use crate::view::lang::{key, percent, t, t_args};
use crate::view::outlook::{Calculation, Made};
use crate::view::state::AppState;
use crate::view::widgets::button;
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 400;
/// What is known of the ways.
#[derive(Clone, Debug)]
pub struct Found {
    setup: Setup,
    aim: Aim,
    baseline: Option<Outcome>,
    reached_already: bool,
    ways: Vec<Way>,
    stage: Stage,
}

/// What is wanted and what is known, kept while other parts of the page are shown.
#[derive(Clone, Copy, Default)]
pub struct Kept {
    stay: Stay,
    found: RwSignal<Option<Made<Found>>>,
}

/// The part.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, kept: Kept) -> AnyView {
    let fields = kept.stay.fields(app, calculation);
    let failed = RwSignal::new(false);
    search(app, calculation, kept, failed);
    view! {
        <section class="card" aria-labelledby="ways-title">
            <h2 id="ways-title" tabindex="-1">{t("ways-title")}</h2>
            <p>{t("ways-told")}</p>
            {fields}
            {failure(failed)}
            {move || match kept.found.get() {
                None => nothing_yet(app),
                Some(found) => list(app, &found.0),
            }}
        </section>
    }
    .into_any()
}

fn search(app: AppState, calculation: Calculation, kept: Kept, failed: RwSignal<bool>) {
    let turns = Turns::default();
    let aim = Memo::new(move |_| Aim {
        nights: kept.stay.nights(),
        chance_frac: kept.stay.chance_frac(),
    });
    Effect::new(move |before: Option<()>| {
        let (setup, aim) = (app.setup.get(), aim.get());
        let turn = turns.begin();
        failed.try_set(false);
        let sky = to_search(&setup, calculation, kept.found, |found| {
            found.stage == Stage::Done && found.aim == aim && found.setup == setup
        });
        let Some(sky) = sky else { return };
        // Ways to another aim or of another setup are not to be taken for these.
        kept.found.try_set(None);
        let about = setup.clone();
        play_after(
            if before.is_some() { PAUSE_MS } else { 0 },
            turn,
            move || WaysJob::new(&setup, &sky, aim),
            move |job, stage| match job {
                Some(job) => {
                    kept.found.try_set(Some(Made(Arc::new(Found {
                        setup: about.clone(),
                        aim,
                        baseline: job.baseline().cloned(),
                        reached_already: job.is_reached_already(),
                        ways: job.ways().to_vec(),
                        stage,
                    }))));
                }
                None => {
                    failed.try_set(true);
                }
            },
        );
    });
}

fn list(app: AppState, found: &Found) -> AnyView {
    let working = found.stage == Stage::Working;
    let wanted = Arg::Count(count(found.aim.nights));
    let chance = percent(found.aim.chance_frac);
    let now = found.baseline.as_ref().map(|baseline| {
        let reached = percent(baseline.chance_of(found.aim.nights));
        t_args("ways-now", &[("n", wanted.clone()), ("chance", Arg::Text(&reached))])
    });
    let head = if found.reached_already {
        Some(t_args("ways-reached", &[("n", wanted), ("chance", Arg::Text(&chance))]))
    } else if !working && found.ways.is_empty() {
        Some(t("ways-none"))
    } else {
        None
    };
    let ways: Vec<AnyView> = found.ways.iter().map(|way| card(app, found, way)).collect();
    view! {
        {now.map(|now| view! { <p>{now}</p> })}
        {head.map(|head| view! { <p class="ways-head"><strong>{head}</strong></p> })}
        {working.then(|| view! { <p class="working">{t("change-working")}</p> })}
        <div class="ways" aria-busy=if working { "true" } else { "false" }>{ways}</div>
    }
    .into_any()
}

fn kind_title(kind: WayKind) -> String {
    t(match kind {
        WayKind::Habits => key!("way-habits"),
        WayKind::OnTheMove => key!("way-on-the-move"),
        WayKind::Purchase => key!("way-purchase"),
    })
}

fn card(app: AppState, found: &Found, way: &Way) -> AnyView {
    let (aim, outcome) = (found.aim, &way.outcome);
    let chance = percent(outcome.chance_of(aim.nights));
    let verdict = if way.reaches {
        let n = Arg::Count(count(aim.nights));
        t_args("way-reaches", &[("n", n), ("chance", Arg::Text(&chance))])
    } else {
        let far = outcome.nights_at(aim.chance_frac);
        let wanted = percent(aim.chance_frac);
        t_args(
            "way-falls-short",
            &[
                ("n", Arg::Count(count(far))),
                ("chance", Arg::Text(&wanted)),
                ("reached", Arg::Text(&chance)),
            ],
        )
    };
    let horizon = outcome.lasting_frac.len();
    let (sure, even) = (nights(outcome.nights_sure, horizon), nights(outcome.nights_even, horizon));
    let lowest = percent(outcome.lowest_frac);
    let facts = t_args(
        "way-facts",
        &[("sure", sure.arg()), ("even", even.arg()), ("lowest", Arg::Text(&lowest))],
    );
    // Each step is told for the setup as the steps before it leave it.
    let mut setup = found.setup.clone();
    let mut hazards: Vec<Hazard> = Vec::new();
    let mut steps: Vec<AnyView> = Vec::new();
    for step in &way.steps {
        let words = change_words(&setup, step);
        hazards.extend(step.hazards(&setup));
        steps.push(view! { <li>{words}</li> }.into_any());
        setup = step.apply(&setup);
    }
    let bill: Vec<AnyView> = bill_words(&found.setup, &way.bill)
        .into_iter()
        .map(|line| view! { <li>{line}</li> }.into_any())
        .collect();
    let title = kind_title(way.kind);
    let told = title.clone();
    let steps_to_make: Vec<Change> = way.steps.clone();
    let wanted = u8::try_from(aim.nights).unwrap_or(u8::MAX);
    let apply = move || {
        let told = t_args("toast-way", &[("way", Arg::Text(&told))]);
        app.edit_with_undo(told, |setup| {
            *setup = crate::advice::changes::ways::apply_all(setup, &steps_to_make);
            setup.trip.nights = setup.trip.nights.max(wanted);
        });
        crate::view::focus::to("ways-title");
    };
    let longer = (usize::from(found.setup.trip.nights) < aim.nights).then(|| {
        let n = Arg::Count(count(aim.nights));
        view! { <p><small>{t_args("way-longer", &[("n", n)])}</small></p> }
    });
    view! {
        <article class="way">
            <h3>{title}</h3>
            <p class="way-verdict">
                {crate::view::widgets::lantern(crate::view::widgets::LanternLevel::of_chance(
                    outcome.chance_of(aim.nights),
                ))}
                <span>{verdict}</span>
            </p>
            <ol class="way-steps">{steps}</ol>
            <p class="way-price">{t("way-price")}</p>
            <ul class="help-facts">{bill}</ul>
            <p><small>{facts}</small></p>
            {cautions(hazards)}
            {longer}
            {button(Some(Icon::Done), t("way-apply"), apply)}
        </article>
    }
    .into_any()
}
