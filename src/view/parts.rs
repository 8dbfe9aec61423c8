//! Parts of the program that are fetched when they are first needed.
//!
//! The build splits the program at the functions marked here: what only they reach, texts and
//! tables included, travels in files of its own, and the first load brings the answer and no more.
//! The service worker keeps all files, so offline every part is there.
//!
//! A part is fetched once; the page tells while it is on its way, and offers to try again
//! where it did not come. Nothing else of the page waits for it.

// The glue that `wasm_split` makes of a marked function declares imports and exports.
#![allow(unsafe_code)]

use super::change;
use super::lang::{self, t};
use super::needs::Needs;
use super::outlook::{Calculation, hours};
use super::share::{self, Outcome, Setups};
use super::state::AppState;
use super::tools::measure;
use super::widgets::Sheet;
use super::{loads, more, power, start, trip};
use crate::i18n::texts::ENGLISH_REST;
use leptos::prelude::*;
use leptos::task::spawn_local;
use std::future::Future;
use std::pin::pin;
use std::task::{Context, Poll, Waker};
use wasm_split_helpers::{SplitLoaderError, wasm_split};

/// A part that travels in files of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Part {
    /// Forms: loads, power, trip, a start of one's own.
    Edit,
    /// What to change, and the tools.
    Decide,
    /// Setups and sharing, look, glossary, paper.
    More,
}

impl Part {
    const ALL: [Self; 3] = [Self::Edit, Self::Decide, Self::More];
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum State {
    Away,
    Coming,
    Here,
    Failed,
}

type Split = Result<AnyView, SplitLoaderError>;

// One function for each part, as each keeps for itself whether its files are here.

enum Edit {
    Loads(AppState, Memo<Needs>),
    Power(AppState),
    Trip(AppState, Calculation),
    Start(AppState, Sheet),
}

#[wasm_split(edit, fallible, preload(fetch_edit))]
fn split_edit(what: Edit) -> Split {
    lang::add_rest(ENGLISH_REST);
    Ok(match what {
        Edit::Loads(app, needs) => loads::view(app, needs),
        Edit::Power(app) => power::view(app),
        Edit::Trip(app, calculation) => trip::view(app, calculation),
        Edit::Start(app, sheet) => start::questions(app, sheet),
    })
}

enum Decide {
    Change(AppState),
    BelowTheAnswer(AppState, Calculation),
}

#[wasm_split(decide, fallible, preload(fetch_decide))]
fn split_decide(what: Decide) -> Split {
    lang::add_rest(ENGLISH_REST);
    Ok(match what {
        Decide::Change(app) => change::view(app),
        Decide::BelowTheAnswer(app, calculation) => view! {
            {hours::view(calculation)}
            {measure::in_the_outlook(app, calculation)}
        }
        .into_any(),
    })
}

enum More {
    All(Setups),
    Paper(Setups, Outcome),
}

#[wasm_split(more, fallible, preload(fetch_more))]
fn split_more(what: More) -> Split {
    lang::add_rest(ENGLISH_REST);
    Ok(match what {
        More::All(setups) => more::view(setups),
        More::Paper(setups, outcome) => share::paper(setups, outcome),
    })
}

/// What a part that is here shows. Its files have come, so the first poll is the last.
fn now(view: impl Future<Output = Split>) -> AnyView {
    match pin!(view).poll(&mut Context::from_waker(Waker::noop())) {
        Poll::Ready(Ok(view)) => view,
        // Only asked for once the part is here.
        Poll::Ready(Err(_)) | Poll::Pending => ().into_any(),
    }
}

/// Which parts are here; copies share it.
#[derive(Clone, Copy)]
pub struct Parts {
    edit: RwSignal<State>,
    decide: RwSignal<State>,
    more: RwSignal<State>,
}

impl Default for Parts {
    fn default() -> Self {
        let away = || RwSignal::new(State::Away);
        Self { edit: away(), decide: away(), more: away() }
    }
}

impl Parts {
    fn state(self, part: Part) -> RwSignal<State> {
        match part {
            Part::Edit => self.edit,
            Part::Decide => self.decide,
            Part::More => self.more,
        }
    }

    /// Fetches a part, unless it is here or on its way.
    fn fetch(self, part: Part) {
        let state = self.state(part);
        if !matches!(state.try_get_untracked(), Some(State::Away | State::Failed)) {
            return;
        }
        state.try_set(State::Coming);
        spawn_local(async move {
            let came = match part {
                Part::Edit => fetch_edit().await,
                Part::Decide => fetch_decide().await,
                Part::More => fetch_more().await,
            };
            state.try_set(if came.is_ok() { State::Here } else { State::Failed });
        });
    }

    /// Fetches all parts, so that none is missed later on.
    pub fn fetch_all(self) {
        Part::ALL.into_iter().for_each(|part| self.fetch(part));
    }

    /// A view of a part: `view` once the part is here.
    fn show(self, part: Part, view: impl Fn() -> AnyView + Send + 'static) -> AnyView {
        self.fetch(part);
        self.boxed(part, Box::new(view))
    }

    fn boxed(self, part: Part, view: Box<dyn Fn() -> AnyView + Send>) -> AnyView {
        let state = self.state(part);
        let inside = move || match state.get() {
            State::Here => view(),
            State::Away | State::Coming => {
                view! { <p class="working" role="status">{t("part-coming")}</p> }.into_any()
            }
            State::Failed => view! {
                <p class="notice" role="alert">
                    {t("part-failed")} " "
                    <button type="button" class="in-text" on:click=move |_| self.fetch(part)>
                        {t("part-again")}
                    </button>
                </p>
            }
            .into_any(),
        };
        view! { {inside} }.into_any()
    }

    /// The part "Loads".
    #[must_use]
    pub fn loads(self, app: AppState, needs: Memo<Needs>) -> AnyView {
        self.show(Part::Edit, move || now(split_edit(Edit::Loads(app, needs))))
    }

    /// The part "Power".
    #[must_use]
    pub fn power(self, app: AppState) -> AnyView {
        self.show(Part::Edit, move || now(split_edit(Edit::Power(app))))
    }

    /// The part "Trip".
    #[must_use]
    pub fn trip(self, app: AppState, calculation: Calculation) -> AnyView {
        self.show(Part::Edit, move || now(split_edit(Edit::Trip(app, calculation))))
    }

    /// The three questions of a start of one's own.
    #[must_use]
    pub fn start(self, app: AppState, sheet: Sheet) -> AnyView {
        self.show(Part::Edit, move || now(split_edit(Edit::Start(app, sheet))))
    }

    /// The part "Change".
    #[must_use]
    pub fn change(self, app: AppState) -> AnyView {
        self.show(Part::Decide, move || now(split_decide(Decide::Change(app))))
    }

    /// The course hour by hour in figures, and how far figures that nobody measured could move the
    /// answer. They follow once their part is here, as nobody waits for them.
    #[must_use]
    pub fn below_the_answer(self, app: AppState, calculation: Calculation) -> AnyView {
        let here = move || {
            (self.decide.get() == State::Here)
                .then(|| now(split_decide(Decide::BelowTheAnswer(app, calculation))))
        };
        view! { {here} }.into_any()
    }

    /// The part "More".
    #[must_use]
    pub fn more(self, setups: Setups) -> AnyView {
        self.show(Part::More, move || now(split_more(More::All(setups))))
    }

    /// The answer on paper; nothing where the part is not here yet, as paper does not wait.
    #[must_use]
    pub fn paper(self, setups: Setups, outcome: Outcome) -> AnyView {
        if self.more.get_untracked() != State::Here {
            return ().into_any();
        }
        now(split_more(More::Paper(setups, outcome)))
    }
}
