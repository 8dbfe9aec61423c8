//! What to change: what helps, ways to more nights with what to buy, setups side by side, the year;
//! and the tools for on site and the workshop, which open in the same place.

pub mod alternatives;
pub mod compare;
pub mod compare_words;
pub mod copies;
pub mod improvements;
pub mod next_step;
pub mod prices;
pub mod sizes;
pub mod stay;
pub mod ways;
pub mod year;

use super::arc_ptr_eq::ArcPtrEq;
use super::icons::Icon;
use super::lang::t;
use super::outlook::Calculation;
use super::state::{AppState, Screen};
use super::tools::{self, inverter, log, measure, on_site, wiring};
use super::widgets::quiet_button;
use super::words::names::screen_title;
use crate::advice::changes::Change;
use crate::advice::changes::wish::Advice;
use crate::advice::on_site::fit::Fit;
use crate::advice::trial::Outcome;
use crate::model::Setup;
use crate::physics::ampacity::Surroundings;
use crate::view::certainty::sure_frac;
use crate::view::search::Search;
use crate::view::words::changes::change_words;
use leptos::prelude::*;

/// What is decided with, in the order it is offered.
const DECISIONS: [Screen; 4] = [Screen::Improvements, Screen::Ways, Screen::Compare, Screen::Year];

/// The state of each screen of "Change", kept while others are shown; copies share it.
#[derive(Clone, Copy, Default)]
pub struct ChangeScreens {
    /// What helps, for the next step too.
    pub improvements: improvements::ImprovementsSearch,
    ways: ways::WaysState,
    alternatives: alternatives::AlternativesSearch,
    compare: compare::CompareState,
    year: Search<Setup, Vec<Outcome>>,
    reading: on_site::Draft,
    learned: RwSignal<Option<ArcPtrEq<Fit>>>,
    log: log::LogState,
    bench: measure::Bench,
    surroundings: RwSignal<Surroundings>,
    together: RwSignal<Vec<u32>>,
}

impl ChangeScreens {
    /// Makes those of the page, where there are none yet. To be called for the owner of the page: they last as long.
    pub fn provide() {
        if use_context::<Self>().is_none() {
            provide_context(Self::default());
        }
    }

    /// The change that helps `setup` most, in words, where a search has found it already.
    #[must_use]
    pub fn helps_most(self, setup: &Setup) -> Option<String> {
        self.improvements.result.with(|result| {
            let result = result.as_ref().filter(|r| r.0.query == *setup)?;
            let nights = usize::from(setup.trip.nights);
            let found = &result.0.found.improvements;
            let advice = Advice::of(found, nights, sure_frac());
            let help = advice.next_step()?;
            Some(change_words(setup, &help.change))
        })
    }

    /// What stands in the answer itself: the next step and, on the day, what the battery shows.
    #[must_use]
    pub fn in_the_answer(self, app: AppState, calculation: Calculation) -> AnyView {
        let today = on_site::today::Today { draft: self.reading, learned: self.learned };
        let search = self.improvements;
        let off_tonight = Signal::derive(move || {
            search.result.with(|result| {
                let found = &result.as_ref()?.0.found.improvements;
                found.iter().map(|help| help.change).find(Change::is_off_at_night)
            })
        });
        view! {
            {next_step::view(app, calculation, search)}
            {on_site::today::view(app, calculation, today, off_tonight)}
        }
        .into_any()
    }
}

/// The part of the page.
#[must_use]
pub fn view(app: AppState) -> AnyView {
    let (Some(calculation), Some(screens)) =
        (use_context::<Calculation>(), use_context::<ChangeScreens>())
    else {
        // Only where the page is gone.
        return ().into_any();
    };
    let screen = app.screen;
    let tool = Memo::new(move |_| screen.get().is_tool());
    view! {
        {move || if tool.get() { tool_head(app) } else { choices(screen) }}
        {move || match screen.get() {
            Screen::Improvements => improvements::view(app, calculation, screens.improvements),
            Screen::Ways => ways::view(app, calculation, screens.ways),
            Screen::Compare => view! {
                {alternatives::view(app, calculation, screens.alternatives)}
                {compare::view(app, screens.compare)}
            }
            .into_any(),
            Screen::Year => year::view(app, calculation, screens.year),
            Screen::OnSite => on_site::view(app, calculation, screens.reading, screens.learned),
            Screen::Log => log::view(app, calculation, screens.log),
            Screen::Measure => measure::view(app, calculation, screens.bench),
            Screen::Wiring => wiring::view(app, screens.surroundings),
            Screen::Inverter => inverter::view(app, screens.surroundings, screens.together),
        }}
        {move || (!tool.get()).then(|| tools::links(app))}
    }
    .into_any()
}

fn choices(shown: RwSignal<Screen>) -> AnyView {
    let parts: Vec<AnyView> = DECISIONS
        .into_iter()
        .map(|screen| {
            view! {
                <button
                    type="button"
                    class="part"
                    data-part=screen.word()
                    aria-current=move || (shown.get() == screen).then_some("true")
                    on:click=move |_| {
                        shown.try_set(screen);
                    }
                >
                    {screen_title(screen)}
                </button>
            }
            .into_any()
        })
        .collect();
    view! {
        <h1 id="change-title" tabindex="-1">{t("change-title")}</h1>
        <nav class="parts" aria-label=t("change-parts")>{parts}</nav>
    }
    .into_any()
}

fn tool_head(app: AppState) -> AnyView {
    let back = move || match app.opened_from.try_get_untracked().flatten() {
        Some(tab) => {
            app.screen.try_set(Screen::default());
            app.go(tab);
        }
        None => app.open(Screen::default()),
    };
    view! {
        <div class="tool-head" data-testid="way-back">
            {quiet_button(Some(Icon::Back), t("tools-back"), back)}
            <h1 id="change-title" tabindex="-1">{move || screen_title(app.screen.get())}</h1>
        </div>
    }
    .into_any()
}
