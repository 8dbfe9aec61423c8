//! Chunks of the program, fetched when they are first needed.
//!
//! The build splits the program at the functions of `split`; the first load brings the answer and
//! no more. The service worker keeps all files, so offline every part is there.
//!
//! The part `Storage` keeps the setups: it is fetched before the start where there is something to read, and
//! else right behind it. All others wait for it, so nothing can be changed before it is here.
//!
//! A part is fetched once; the page tells while it is on its way, and offers to try again
//! where it did not come. Nothing else of the page waits for it.

mod split;

use super::lang::t;
use super::offline::Offline;
use super::outlook::Calculation;
use super::setups::Setups;
use super::setups::storage_module::StorageModule;
use super::share::Outcome;
use super::tasks::{Task, run_as_tasks};
use super::widgets::Sheet;
use super::working::Working;
use leptos::prelude::*;
use leptos::task::spawn_local;
pub use split::fetch_storage_module;
use split::{
    Change, Forms, More, Outlook, fetch_change, fetch_forms, fetch_more, fetch_outlook, now,
    split_change, split_forms, split_more, split_outlook,
};
use std::sync::Arc;

/// A part of the program that travels in files of its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Chunk {
    /// Reading and writing setups, files and links.
    Storage,
    /// The odds, the course of the battery as a picture, and what stands below the answer.
    Outlook,
    /// Forms: loads, power, trip, a start of one's own.
    Forms,
    /// What to change, and the tools.
    Change,
    /// Setups and sharing, look, glossary, paper.
    More,
}

impl Chunk {
    const ALL: [Self; 5] = [Self::Storage, Self::Outlook, Self::Forms, Self::Change, Self::More];
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum State {
    Away,
    Coming,
    Here,
    Failed,
}

/// Which parts are here; copies share it.
#[derive(Clone, Copy)]
pub struct Parts {
    setups: Setups,
    calculation: Calculation,
    offline: Offline,
    /// The chunk that saves setups, once it is attached.
    module: RwSignal<Option<&'static StorageModule>>,
    /// What parts follow lives as long as this.
    owner: StoredValue<Owner>,
    storage: RwSignal<State>,
    outlook: RwSignal<State>,
    forms: RwSignal<State>,
    change: RwSignal<State>,
    more: RwSignal<State>,
}

impl Parts {
    /// No chunk is loaded yet, except storage if startup waited for it (`early`). `module` is set when
    /// the storage chunk is attached.
    #[must_use]
    pub fn new(
        setups: Setups,
        calculation: Calculation,
        module: RwSignal<Option<&'static StorageModule>>,
        early: Option<&'static StorageModule>,
    ) -> Self {
        let offline = Offline::default();
        let away = || RwSignal::new(State::Away);
        let owner = StoredValue::new(Owner::current().unwrap_or_default());
        let storage = away();
        if let Some(early) = early {
            early.steps.iter().for_each(|step| step(setups, offline));
            module.set(Some(early));
            storage.set(State::Here);
        }
        Self {
            setups,
            calculation,
            offline,
            module,
            owner,
            storage,
            outlook: away(),
            forms: away(),
            change: away(),
            more: away(),
        }
    }

    fn state(self, part: Chunk) -> RwSignal<State> {
        match part {
            Chunk::Storage => self.storage,
            Chunk::Outlook => self.outlook,
            Chunk::Forms => self.forms,
            Chunk::Change => self.change,
            Chunk::More => self.more,
        }
    }

    /// Fetches a part, unless it is here or on its way.
    fn fetch(self, part: Chunk) {
        let state = self.state(part);
        if !matches!(state.try_get_untracked(), Some(State::Away | State::Failed)) {
            return;
        }
        state.try_set(State::Coming);
        let working = Working::begin();
        spawn_local(async move {
            let _working = working;
            let came = match part {
                Chunk::Storage => {
                    fetch_storage_module().await.map(|module| self.attach_as_tasks(module))
                }
                Chunk::Outlook => fetch_outlook().await,
                Chunk::Forms => fetch_forms().await,
                Chunk::Change => fetch_change().await,
                Chunk::More => fetch_more().await,
            };
            if part == Chunk::Outlook {
                // What is seen comes first.
                self.fetch(Chunk::Storage);
            }
            match came {
                Ok(()) if part == Chunk::Outlook => self.outlook_as_tasks(),
                Ok(()) if part == Chunk::Storage => {}
                Ok(()) => _ = state.try_set(State::Here),
                Err(_) => _ = state.try_set(State::Failed),
            }
        });
    }

    /// Chart and what stands below the answer first, then the odds.
    fn outlook_as_tasks(self) {
        let owner = self.owner;
        let odds = move || {
            if let Some(owner) = owner.try_get_value() {
                owner.with(|| now(split_outlook(Outlook::Odds(self.calculation))));
            }
        };
        // The next step is a part of the answer too.
        let change = move || self.fetch(Chunk::Change);
        run_as_tasks(vec![
            Box::new(move || _ = self.outlook.try_set(State::Here)),
            Box::new(odds),
            Box::new(change),
        ]);
    }

    /// Attaches the chunk that saves setups, step by step; with the last task it is here.
    fn attach_as_tasks(self, module: &'static StorageModule) {
        let Self { setups, offline, owner, storage, module: attached, .. } = self;
        let step = |step: fn(Setups, Offline)| -> Task {
            Box::new(move || {
                _ = owner.try_get_value().map(|owner| owner.with(|| step(setups, offline)))
            })
        };
        let mut tasks: Vec<Task> = module.steps.into_iter().map(step).collect();
        tasks.push(Box::new(move || {
            attached.try_set(Some(module));
            storage.try_set(State::Here);
        }));
        run_as_tasks(tasks);
    }

    /// The state of a part: one that can change setups is here once what keeps them is here too.
    fn ready(self, part: Chunk) -> State {
        // What only shows waits for nothing but itself.
        let storage = if part == Chunk::Outlook { State::Here } else { self.storage.get() };
        match (storage, self.state(part).get()) {
            (State::Here, own) => own,
            (State::Failed, _) | (_, State::Failed) => State::Failed,
            _ => State::Coming,
        }
    }

    /// What the reader has to know of storage and links; that the part with it did not come, if so.
    #[must_use]
    pub fn notices(self) -> AnyView {
        let inside = move || match self.module.get() {
            Some(module) => (module.notices)(self.setups, self.offline),
            None if self.storage.get() == State::Failed => self.failed(Chunk::Storage),
            None => ().into_any(),
        };
        view! { {inside} }.into_any()
    }

    /// The place where messages appear.
    #[must_use]
    pub fn toasts(self) -> AnyView {
        let inside = move || self.module.get().map(|module| (module.toasts)(self.setups.app));
        view! { {inside} }.into_any()
    }

    fn failed(self, part: Chunk) -> AnyView {
        let again = move |_| {
            self.fetch(Chunk::Storage);
            self.fetch(part);
        };
        view! {
            <p class="notice" role="alert">
                {t("part-failed")} " "
                <button type="button" class="in-text" on:click=again>
                    {t("part-again")}
                </button>
            </p>
        }
        .into_any()
    }

    /// Fetches all parts, so that none is missed later on.
    pub fn fetch_all(self) {
        Chunk::ALL.into_iter().for_each(|part| self.fetch(part));
    }

    /// A view of a part: `view` once the part is here.
    fn show(self, part: Chunk, view: impl Fn() -> AnyView + Send + 'static) -> AnyView {
        if part != Chunk::Outlook {
            self.fetch(Chunk::Storage);
        }
        self.fetch(part);
        self.boxed(part, Box::new(view))
    }

    fn boxed(self, part: Chunk, view: Box<dyn Fn() -> AnyView + Send>) -> AnyView {
        let inside = move || match self.ready(part) {
            State::Here => view(),
            State::Away | State::Coming => {
                view! { <p class="working" role="status">{t("part-coming")}</p> }.into_any()
            }
            State::Failed => self.failed(part),
        };
        view! { {inside} }.into_any()
    }

    /// The verdict and the course of the battery.
    #[must_use]
    pub fn course(self) -> AnyView {
        let (app, calculation) = (self.setups.app, self.calculation);
        let answers = Memo::new(move |_| calculation.plan.with(Option::is_some));
        let inside = move || {
            answers.get().then(|| {
                self.show(Chunk::Outlook, move || {
                    now(split_outlook(Outlook::Course(
                        app,
                        calculation,
                        Arc::new(move || self.next_step()),
                    )))
                })
            })
        };
        view! { {inside} }.into_any()
    }

    /// What stands below the answer.
    #[must_use]
    pub fn details(self) -> AnyView {
        let (app, calculation) = (self.setups.app, self.calculation);
        self.show(Chunk::Outlook, move || {
            now(split_outlook(Outlook::Details(
                app,
                calculation,
                Arc::new(move || self.below_the_answer()),
            )))
        })
    }

    /// The part "Loads".
    #[must_use]
    pub fn loads(self) -> AnyView {
        self.forms(Forms::Loads)
    }

    /// The part "Power".
    #[must_use]
    pub fn power(self) -> AnyView {
        self.forms(Forms::Power)
    }

    /// The part "Trip".
    #[must_use]
    pub fn trip(self) -> AnyView {
        self.forms(Forms::Trip)
    }

    /// The three questions of a start of one's own.
    #[must_use]
    pub fn start(self, sheet: Sheet) -> AnyView {
        self.forms(Forms::Start(sheet))
    }

    fn forms(self, what: Forms) -> AnyView {
        let (app, calculation) = (self.setups.app, self.calculation);
        self.show(Chunk::Forms, move || now(split_forms(what, app, calculation)))
    }

    /// The change to try first, once its part is here.
    #[must_use]
    pub fn next_step(self) -> AnyView {
        let (app, calculation) = (self.setups.app, self.calculation);
        let here = move || match self.ready(Chunk::Change) {
            State::Here => now(split_change(Change::NextStep(app, calculation), self.owner)),
            State::Away | State::Coming | State::Failed => {
                view! { <div class="next-step"><p class="working">{t("answer-working")}</p></div> }
                    .into_any()
            }
        };
        view! { {here} }.into_any()
    }

    /// The part "Change".
    #[must_use]
    pub fn change(self) -> AnyView {
        self.show(Chunk::Change, move || {
            now(split_change(Change::Screens(self.setups.app), self.owner))
        })
    }

    /// The course hour by hour in figures, and how far figures that nobody measured could move the
    /// answer. They follow once their part is here, as nobody waits for them.
    #[must_use]
    pub fn below_the_answer(self) -> AnyView {
        let (app, calculation) = (self.setups.app, self.calculation);
        let here = move || {
            (self.ready(Chunk::Change) == State::Here)
                .then(|| now(split_change(Change::BelowTheAnswer(app, calculation), self.owner)))
        };
        view! { {here} }.into_any()
    }

    /// The part "More".
    #[must_use]
    pub fn more(self) -> AnyView {
        self.show(Chunk::More, move || now(split_more(More { setups: self.setups, paper: None })))
    }

    /// The answer on paper; nothing where the part is not here yet, as paper does not wait.
    #[must_use]
    pub fn paper(self) -> AnyView {
        if untrack(|| self.ready(Chunk::More)) != State::Here {
            return ().into_any();
        }
        let outcome = Outcome { app: self.setups.app, calculation: self.calculation };
        now(split_more(More { setups: self.setups, paper: Some(outcome) }))
    }
}
