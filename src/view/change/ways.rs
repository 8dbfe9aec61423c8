//! Ways to a wanted number of nights at a wanted chance, each with its steps and its bill; below them prices, and
//! all sizes of battery and panels that do.

use super::stay::Stay;
use super::{prices, sizes};
use crate::advice::changes::Change;
use crate::advice::changes::cost::Hazard;
use crate::advice::changes::ways::{Aim, Way, WayKind, WaysJob};
use crate::advice::trial::Outcome;
use crate::forecast::MonthlyClimate;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::certainty::sure_frac;
use crate::view::icons::Icon;
use crate::view::jobs::Stage;
use crate::view::lang::{key, percent, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult};
use crate::view::state::AppState;
use crate::view::widgets::button;
use crate::view::words::changes::nights;
use crate::view::words::changes::{bill_words, cautions, change_words};
use crate::view::words::names::count;
use leptos::prelude::*;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 400;

/// What is known of the ways.
pub struct FoundWays {
    baseline: Option<Outcome>,
    reached_already: bool,
    ways: Vec<Way>,
}

type Searched = SearchResult<(Setup, Aim), FoundWays>;

/// What is wanted and what is known, kept while other screens are shown.
#[derive(Clone, Copy, Default)]
pub struct WaysState {
    stay: Stay,
    search: Search<(Setup, Aim), FoundWays>,
    sizes: sizes::SizesState,
}

/// The screen.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, state: WaysState) -> AnyView {
    let WaysState { stay, search, sizes } = state;
    let fields = stay.fields(app, calculation);
    let plan = Plan {
        pause_ms: PAUSE_MS,
        forget: true,
        start: |(setup, aim): &(Setup, Aim), sky: &MonthlyClimate| WaysJob::new(setup, sky, *aim),
        read: |job: &WaysJob| FoundWays {
            baseline: job.baseline().cloned(),
            reached_already: job.is_reached_already(),
            ways: job.ways(),
        },
    };
    let aim = Memo::new(move |_| Aim { nights: stay.nights(), chance_frac: sure_frac() });
    search.follow(calculation, plan, move || Some((app.setup.get(), aim.get())));
    view! {
        <section class="card" aria-labelledby="ways-title">
            <h2 id="ways-title" tabindex="-1">{t("ways-title")}</h2>
            <p>{t("ways-told")}</p>
            {fields}
            {search.view(app, move |result| list(app, result))}
            {prices::form(app)}
            {sizes::view(app, calculation, stay, sizes)}
        </section>
    }
    .into_any()
}

fn list(app: AppState, result: &Searched) -> AnyView {
    let SearchResult { query: (setup, aim), found, stage } = result;
    let working = *stage == Stage::Working;
    let wanted = Arg::Count(count(aim.nights));
    let chance = percent(aim.chance_frac);
    let now = found.baseline.as_ref().map(|baseline| {
        let reached = percent(baseline.chance_of(aim.nights));
        t_args("ways-now", &[("n", wanted.clone()), ("chance", Arg::Text(&reached))])
    });
    let head = if found.reached_already {
        Some(t_args("ways-reached", &[("n", wanted), ("chance", Arg::Text(&chance))]))
    } else if !working && found.ways.is_empty() {
        Some(t("ways-none"))
    } else {
        None
    };
    // Which is the cheapest is known at the end.
    let known = found.ways.iter().filter(|_| !working).enumerate();
    let ways: Vec<AnyView> =
        known.map(|(place, way)| card(app, setup, *aim, (place, way))).collect();
    view! {
        {now.map(|now| view! { <p>{now}</p> })}
        {head.map(|head| view! { <p class="ways-head"><strong>{head}</strong></p> })}
        {working.then(|| view! { <p class="working">{t("change-working")}</p> })}
        <div class="ways" data-testid="ways" aria-busy=if working { "true" } else { "false" }>{ways}</div>
    }
    .into_any()
}

/// By price and by means: the first of those that reach the nights is the cheapest.
fn title(place: usize, way: &Way) -> String {
    let first = (place == 0)
        .then(|| t(if way.reaches { key!("way-cheapest") } else { key!("way-nearest") }));
    let kind = if way.kinds.contains(&WayKind::NothingBought) {
        Some(t(key!("way-nothing-bought")))
    } else if way.kinds.contains(&WayKind::OnlyBought) {
        Some(t(key!("way-only-bought")))
    } else {
        None
    };
    first.into_iter().chain(kind).collect::<Vec<_>>().join(" · ")
}

fn card(app: AppState, whole: &Setup, aim: Aim, (place, way): (usize, &Way)) -> AnyView {
    let outcome = &way.outcome;
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
    let (sure, even) =
        (nights(outcome.nights_at(sure_frac()), horizon), nights(outcome.nights_even, horizon));
    let lowest = percent(outcome.lowest_frac);
    let facts = t_args(
        "way-facts",
        &[("sure", sure.arg()), ("even", even.arg()), ("lowest", Arg::Text(&lowest))],
    );
    // Each step is told for the setup as the steps before it leave it.
    let mut setup = whole.clone();
    let mut hazards: Vec<Hazard> = Vec::new();
    let mut steps: Vec<AnyView> = Vec::new();
    for step in &way.steps {
        let words = change_words(&setup, step);
        hazards.extend(step.hazards(&setup));
        steps.push(view! { <li>{words}</li> }.into_any());
        setup = step.apply(&setup);
    }
    let bill: Vec<AnyView> = bill_words(whole, &way.bill)
        .into_iter()
        .map(|line| view! { <li>{line}</li> }.into_any())
        .collect();
    let title = title(place, way);
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
    let longer = (usize::from(whole.trip.nights) < aim.nights).then(|| {
        let n = Arg::Count(count(aim.nights));
        view! { <p><small>{t_args("way-longer", &[("n", n)])}</small></p> }
    });
    view! {
        <article class="way" data-testid="way">
            <h3>{title}</h3>
            <p class="way-verdict">
                {crate::view::widgets::lantern(crate::view::widgets::LanternLevel::of_chance(
                    outcome.chance_of(aim.nights),
                ))}
                <span>{verdict}</span>
            </p>
            <ol class="way-steps" data-testid="way-steps">{steps}</ol>
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
