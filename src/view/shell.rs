//! The frame of the page: title, navigation, answer bar, the part on screen, messages.

use super::answer::{self, AnswerSignal};
use super::focus;
use super::icons::{Icon, icon};
use super::lang::t;
use super::outlook;
use super::outlook::Calculation;
use super::parts::Parts;
use super::setups::Setups;
use super::setups::storage_module::StorageModule;
use super::share::{self, Outcome};
use super::state::{AppState, Tab};
use super::tasks::run_as_tasks;
use super::widgets::{LanternLevel, Sheet, icon_button, lantern, lantern_sprite, sheet};
use crate::i18n::Lang;
use crate::model::example::example_setup;
use leptos::html::Main;
use leptos::prelude::*;
use std::time::Duration;

/// What of the page may stand: at the start one after the other, in a task each.
#[derive(Clone, Copy)]
struct Stages {
    /// The frame, behind what stands there until the answer does.
    frame: RwSignal<bool>,
    /// The answer.
    answer: RwSignal<bool>,
    /// The part that is open.
    part: RwSignal<bool>,
    /// What shows only when something happens, or on paper.
    rest: RwSignal<bool>,
}

/// The whole page; `early` is the chunk that saves setups, if the start waited for it. `shown` is called
/// when the answer takes the place of what stood there until then, `ready` when all of the page stands.
#[must_use]
pub fn app(
    early: Option<&'static StorageModule>,
    shown: impl FnOnce() + 'static,
    ready: impl FnOnce() + 'static,
) -> AnyView {
    let setups = Setups::begin(example_setup);
    provide_context(setups);
    let app = setups.app;
    provide_context(app);
    let module: RwSignal<Option<&'static StorageModule>> = RwSignal::new(None);
    let climate_of = Signal::derive(move || module.get().map(|module| module.climate));
    let calculation = Calculation::follow(app, climate_of);
    provide_context(calculation);
    let answer = outlook::answer(app, calculation);
    provide_context(Outcome { app, calculation });
    let parts = Parts::new(setups, calculation, module, early);
    focus::keep();
    let starting = AppState::starting_lang();
    if starting != Lang::En {
        app.choose_lang(starting);
    }
    let [frame, answered, part, rest] = [(); 4].map(|()| RwSignal::new(false));
    let stages = Stages { frame, answer: answered, part, rest };
    let mut tasks = calculation.first_tasks();
    tasks.push(Box::new(move || _ = answer.try_with_untracked(|_| ())));
    tasks.push(Box::new(move || _ = stages.frame.try_set(true)));
    tasks.push(Box::new(move || {
        stages.answer.try_set(true);
        shown();
    }));
    tasks.push(Box::new(move || _ = stages.part.try_set(true)));
    tasks.push(Box::new(move || {
        stages.rest.try_set(true);
        ready();
        fetch_the_rest(parts);
    }));
    run_as_tasks(tasks);
    let whole = move || {
        app.lang.track();
        stages.frame.get().then(|| page(setups, answer, parts, stages))
    };
    view! { {whole} }.into_any()
}

/// Pause after the start before the parts not shown yet are fetched.
const REST_AFTER: Duration = Duration::from_secs(5);

/// Everything is wanted in the end: for the next tap, for paper, and for a place without a network.
fn fetch_the_rest(parts: Parts) {
    set_timeout(move || parts.fetch_all(), REST_AFTER);
}

fn page(setups: Setups, answer: AnswerSignal, parts: Parts, stages: Stages) -> AnyView {
    let app = setups.app;
    let starting = Sheet::default();
    let main: NodeRef<Main> = NodeRef::new();
    // A link would put "#main" where the address carries a shared setup.
    let skip = move |_| {
        if app.tab.get_untracked() == Tab::Nights {
            focus::to(answer::ANSWER_ID);
        } else if let Some(main) = main.get_untracked() {
            // Fails only for an element that is gone.
            let _ = main.focus();
        }
    };
    view! {
        <button type="button" class="skip" on:click=skip>{t("skip-to-main")}</button>
        {lantern_sprite()}
        <div class="frame" data-tab=move || tab_word(app.tab.get())>
            <header class="top">
                <p class="brand">{lantern(LanternLevel::Lit)}<span>{t("page-title")}</span></p>
                {move || {
                    (app.undo_depth.get() > 0)
                        .then(|| icon_button(Icon::Undo, t("undo-last"), move || app.undo()))
                }}
            </header>
            {navigation(app)}
            {notices(setups, parts, starting)}
            {answer::answer_bar(app, answer)}
            <aside class="answer-side">
                {move || stages.answer.get().then(|| answer::summary(app, answer, parts.course()))}
            </aside>
            <main node_ref=main tabindex="-1">
                {move || stages.part.get().then(|| open_part(app, parts))}
            </main>
            {move || {
                stages
                    .rest
                    .get()
                    .then(|| {
                        view! {
                            {sheet(starting, t("start-title"), move || parts.start(starting))}
                            {answer::spoken(answer)}
                            {parts.toasts()}
                            {share::print_page(setups, move || parts.paper())}
                        }
                    })
            }}
        </div>
    }
    .into_any()
}

fn open_part(app: AppState, parts: Parts) -> AnyView {
    match app.tab.get() {
        Tab::Nights => view! {
            <h1 class="unseen">{t("answer-name")}</h1>
            {parts.details()}
        }
        .into_any(),
        Tab::Loads => parts.loads(),
        Tab::Power => parts.power(),
        Tab::Trip => parts.trip(),
        Tab::Change => parts.change(),
        Tab::More => parts.more(),
    }
}

fn tab_word(tab: Tab) -> &'static str {
    match tab {
        Tab::Nights => "nights",
        Tab::Loads => "loads",
        Tab::Power => "power",
        Tab::Trip => "trip",
        Tab::Change => "change",
        Tab::More => "more",
    }
}

fn tab_face(tab: Tab) -> (Icon, String) {
    match tab {
        Tab::Nights => (Icon::Nights, t("tab-nights")),
        Tab::Loads => (Icon::Loads, t("tab-loads")),
        Tab::Power => (Icon::Power, t("tab-power")),
        Tab::Trip => (Icon::Trip, t("tab-trip")),
        Tab::Change => (Icon::Change, t("tab-change")),
        Tab::More => (Icon::More, t("tab-more")),
    }
}

fn navigation(app: AppState) -> AnyView {
    let tabs: Vec<AnyView> = Tab::ALL
        .into_iter()
        .map(|tab| {
            let (picture, word) = tab_face(tab);
            view! {
                <button
                    type="button"
                    class="nav-tab"
                    data-testid="tab"
                    aria-current=move || (app.tab.get() == tab).then_some("page")
                    on:click=move |_| app.go(tab)
                >
                    {icon(picture)}
                    <span>{word}</span>
                </button>
            }
            .into_any()
        })
        .collect();
    view! { <nav class="nav" aria-label=t("nav-name")>{tabs}</nav> }.into_any()
}

/// What the reader has to know about storage and about the example.
fn notices(setups: Setups, parts: Parts, starting: Sheet) -> AnyView {
    let app = setups.app;
    let example = Memo::new(move |_| {
        setups.preview.with(Option::is_none) && app.setup.with(|setup| setup.example)
    });
    view! {
        <section class="notices" data-testid="notices" aria-label=t("notices-name")>
            {parts.notices()}
            {move || {
                example
                    .get()
                    .then(|| {
                        view! {
                            <p class="notice notice-example">
                                {t("example-told")} " "
                                <button type="button" class="in-text" on:click=move |_| starting.show()>
                                    {t("example-clear")}
                                </button>
                            </p>
                        }
                    })
            }}
        </section>
    }
    .into_any()
}
