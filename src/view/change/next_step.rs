//! The next step: the one change to try first, with what it does to the nights wanted. One tap tries it, one
//! takes it back.

use super::improvements::{self, ImprovementsSearch};
use crate::advice::changes::Change;
use crate::advice::changes::cost::Hazard;
use crate::advice::changes::improvement::Improvement;
use crate::advice::changes::wish::Advice;
use crate::forecast::odds::reaches;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::certainty::sure_frac;
use crate::view::icons::{Icon, icon};
use crate::view::jobs::Stage;
use crate::view::lang::{key, percent, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::state::{AppState, Screen};
use crate::view::widgets::quiet_button;
use crate::view::words::changes::{cautions_on_tap, change_words, cost_words};
use crate::view::words::names::count;
use leptos::prelude::*;

/// Where the focus goes when the step is taken or taken back.
const STEP_ID: &str = "next-step";

/// What is tried at the moment.
#[derive(Clone, PartialEq)]
struct Tried {
    before: Setup,
    after: Setup,
    words: String,
}

/// What the step is about, as far as it is known.
#[derive(Clone, PartialEq)]
enum Step {
    /// The search goes on.
    Looking,
    /// The nights wanted are sure.
    Sure {
        nights: usize,
    },
    /// No single change moves the chance.
    None {
        nights: usize,
    },
    Try(Box<Offer>),
}

#[derive(Clone, PartialEq)]
struct Offer {
    setup: Setup,
    change: Change,
    hazards: &'static [Hazard],
    words: String,
    gain: String,
    cost: String,
}

/// The step for the setup on screen, found while the answer is in sight.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, search: ImprovementsSearch) -> AnyView {
    improvements::follow(app, calculation, search);
    let step = Memo::new(move |_| step(app, calculation, search));
    let tried = RwSignal::new(None::<Tried>);
    // Once something else is changed there is nothing left to take back here.
    let is_tried = Memo::new(move |_| {
        app.setup.with(|setup| tried.with(|t| t.as_ref().is_some_and(|t| t.after == *setup)))
    });
    view! {
        <div class="next-step" id=STEP_ID tabindex="-1" data-testid="next-step">
            {move || is_tried.get().then(|| tried.get().map(|it| taken(app, tried, it)))}
            {move || match step.get() {
                Step::Looking => view! { <p class="working">{t("next-looking")}</p> }.into_any(),
                Step::Sure { nights } => {
                    let n = Arg::Count(count(nights));
                    view! { <p>{t_args("next-sure", &[("n", n)])}</p> }.into_any()
                }
                Step::None { nights } => ways(app, nights),
                Step::Try(offer) => button(app, tried, *offer),
            }}
        </div>
    }
    .into_any()
}

fn step(app: AppState, calculation: Calculation, search: ImprovementsSearch) -> Step {
    app.lang.track();
    let nights = app.setup.with(|setup| usize::from(setup.trip.nights));
    let before = calculation.odds.with(|odds| odds.as_ref().map(|odds| odds.chance_of(nights)));
    let Some(before) = before else { return Step::Looking };
    search.result.with(|result| {
        let done = result.as_ref().filter(|r| r.0.stage == Stage::Done);
        app.setup.with(|setup| {
            let Some(result) = done.filter(|r| r.0.query == *setup) else { return Step::Looking };
            let found = &result.0.found;
            if reaches(before, sure_frac()) {
                return Step::Sure { nights };
            }
            let advice = Advice::of(&found.improvements, nights, sure_frac());
            advice.next_step().map_or(Step::None { nights }, |help| {
                Step::Try(Box::new(Offer {
                    setup: setup.clone(),
                    change: help.change,
                    hazards: help.hazards,
                    words: change_words(setup, &help.change),
                    gain: gain_words(help, advice.nights),
                    cost: cost_words(setup, help.cost),
                }))
            })
        })
    })
}

/// What it does to the chance of the nights; played as often as the answer, which says the same after the tap.
fn gain_words(help: &Improvement, nights: usize) -> String {
    let (from, to) = help.chances(nights);
    let (from, to) = (percent(from), percent(to));
    let n = ("n", Arg::Count(count(nights)));
    t_args("next-gain", &[n, ("from", Arg::Text(&from)), ("to", Arg::Text(&to))])
}

fn button(app: AppState, tried: RwSignal<Option<Tried>>, offer: Offer) -> AnyView {
    let Offer { setup, change, hazards, words, gain, cost } = offer;
    let told = words.clone();
    let press = move |_| {
        let after = change.apply(&setup);
        tried.try_set(Some(Tried {
            before: setup.clone(),
            after: after.clone(),
            words: told.clone(),
        }));
        app.edit_apart(|setup| *setup = after);
        crate::view::focus::to(STEP_ID);
    };
    view! {
        <button type="button" class="step-button" data-testid="step-button" on:click=press>
            {icon(Icon::Try)}
            <span class="step-words">
                <strong>{words}</strong>
                <span class="step-gain" data-testid="step-gain">
                    {gain} " · " {cost}
                </span>
            </span>
        </button>
        {cautions_on_tap(hazards)}
    }
    .into_any()
}

fn taken(app: AppState, tried: RwSignal<Option<Tried>>, it: Tried) -> AnyView {
    let words = t_args("next-tried", &[("change", Arg::Text(&it.words))]);
    let back = move || {
        app.edit_apart(|setup| *setup = it.before.clone());
        tried.try_set(None);
        crate::view::focus::to(STEP_ID);
    };
    view! {
        <div class="step-tried" data-testid="step-tried">
            <p role="status">{words}</p>
            {quiet_button(Some(Icon::Undo), t("next-back"), back)}
        </div>
    }
    .into_any()
}

fn ways(app: AppState, nights: usize) -> AnyView {
    let n = [("n", Arg::Count(count(nights)))];
    let told = t_args(key!("next-none"), &n);
    let press = move || app.open(Screen::Ways);
    view! {
        <p>{told}</p>
        {quiet_button(None, t_args(key!("next-ways"), &n), press)}
    }
    .into_any()
}
