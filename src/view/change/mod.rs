//! What to change: what helps, ways to more nights, what to buy, setups side by side, the year;
//! and the tools for on site and the workshop, which open in the same place.

pub mod buy;
pub mod compare;
pub mod compare_words;
pub mod copies;
pub mod helps;
pub mod prices;
pub mod stay;
pub mod ways;
pub mod words;
pub mod work;
pub mod year;

use super::focus;
use super::icons::Icon;
use super::lang::{key, t};
use super::outlook::Calculation;
use super::state::{AppState, Tab};
use super::tools::{self, inverter, measure, on_site, wiring};
use super::widgets::quiet_button;
use leptos::prelude::*;

/// A part of "Change".
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Part {
    /// Ranked changes.
    #[default]
    Helps,
    /// Ways to a number of nights.
    Ways,
    /// What to buy.
    Buy,
    /// Setups side by side.
    Compare,
    /// Nights by month.
    Year,
    /// Tool: readings on site.
    OnSite,
    /// Tool: measuring bench.
    Measure,
    /// Tool: wiring check.
    Wiring,
    /// Tool: inverter check.
    Inverter,
}

impl Part {
    /// What is decided with, in the order it is offered.
    pub const DECISIONS: [Self; 5] =
        [Self::Helps, Self::Ways, Self::Buy, Self::Compare, Self::Year];
    /// Tools, in the order they are offered.
    pub const TOOLS: [Self; 4] = [Self::OnSite, Self::Measure, Self::Wiring, Self::Inverter];

    /// Its name on the page.
    #[must_use]
    pub fn title(self) -> String {
        t(match self {
            Self::Helps => key!("part-helps"),
            Self::Ways => key!("part-ways"),
            Self::Buy => key!("part-buy"),
            Self::Compare => key!("part-compare"),
            Self::Year => key!("part-year"),
            Self::OnSite => key!("part-on-site"),
            Self::Measure => key!("part-measure"),
            Self::Wiring => key!("part-wiring"),
            Self::Inverter => key!("part-inverter"),
        })
    }

    /// Its name in the markup.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Helps => "helps",
            Self::Ways => "ways",
            Self::Buy => "buy",
            Self::Compare => "compare",
            Self::Year => "year",
            Self::OnSite => "on-site",
            Self::Measure => "measure",
            Self::Wiring => "wiring",
            Self::Inverter => "inverter",
        }
    }

    fn is_tool(self) -> bool {
        Self::TOOLS.contains(&self)
    }
}

/// What the parts of "Change" keep while others are shown; copies share it.
#[derive(Clone, Copy)]
pub struct Deciding {
    /// Part shown.
    pub part: RwSignal<Part>,
    helps: helps::Kept,
    ways: ways::Kept,
    buy: buy::Kept,
    compare: compare::Kept,
    year: year::Kept,
    reading: on_site::Draft,
    learned: on_site::Kept,
    /// The measuring bench.
    pub bench: measure::Bench,
    place: wiring::Kept,
    together: inverter::Kept,
}

impl Default for Deciding {
    fn default() -> Self {
        Self {
            part: RwSignal::new(Part::default()),
            helps: RwSignal::new(None),
            ways: ways::Kept::default(),
            buy: buy::Kept::default(),
            compare: compare::Kept::default(),
            year: RwSignal::new(None),
            reading: on_site::Draft::default(),
            learned: RwSignal::new(None),
            bench: measure::Bench::default(),
            place: RwSignal::new(Default::default()),
            together: RwSignal::new(Vec::new()),
        }
    }
}

impl Deciding {
    /// Shows a part, from wherever the page is.
    pub fn show(self, app: AppState, part: Part) {
        self.part.try_set(part);
        app.go(Tab::Change);
        focus::to("change-title");
    }
}

/// The part of the page.
#[must_use]
pub fn view(app: AppState) -> AnyView {
    let (Some(calculation), Some(deciding)) =
        (use_context::<Calculation>(), use_context::<Deciding>())
    else {
        // Both are provided where the page is made.
        return ().into_any();
    };
    let part = deciding.part;
    let tool = Memo::new(move |_| part.get().is_tool());
    view! {
        {move || if tool.get() { tool_head(app, deciding) } else { choices(part) }}
        {move || match part.get() {
            Part::Helps => helps::view(app, calculation, deciding.helps),
            Part::Ways => ways::view(app, calculation, deciding.ways),
            Part::Buy => buy::view(app, calculation, deciding.buy),
            Part::Compare => compare::view(app, deciding.compare),
            Part::Year => year::view(app, calculation, deciding.year),
            Part::OnSite => on_site::view(app, calculation, deciding.reading, deciding.learned),
            Part::Measure => measure::view(app, calculation, deciding.bench),
            Part::Wiring => wiring::view(app, deciding.place),
            Part::Inverter => inverter::view(app, deciding.place, deciding.together),
        }}
        {move || (!tool.get()).then(|| tools::links(app))}
    }
    .into_any()
}

fn choices(shown: RwSignal<Part>) -> AnyView {
    let parts: Vec<AnyView> = Part::DECISIONS
        .into_iter()
        .map(|part| {
            view! {
                <button
                    type="button"
                    class="part"
                    data-part=part.word()
                    aria-current=move || (shown.get() == part).then_some("true")
                    on:click=move |_| {
                        shown.try_set(part);
                    }
                >
                    {part.title()}
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

fn tool_head(app: AppState, deciding: Deciding) -> AnyView {
    let back = move || deciding.show(app, Part::default());
    view! {
        <div class="tool-head">
            {quiet_button(Some(Icon::Back), t("tools-back"), back)}
            <h1 id="change-title" tabindex="-1">{move || deciding.part.get().title()}</h1>
        </div>
    }
    .into_any()
}
