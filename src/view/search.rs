//! Searches that follow the setup: what each asks, starts and shows. One rule for the screens that
//! search.

use super::arc_ptr_eq::ArcPtrEq;
use super::jobs::{Generation, Generations, Job, Stage, now_ms, play_after};
use super::lang::t;
use super::outlook::Calculation;
use super::state::AppState;
use crate::forecast::MonthlyClimate;
use crate::forecast::weather::WeatherError;
use crate::model::Setup;
use leptos::prelude::*;

/// Pause between two looks at what is found so far [ms].
const SHOW_EVERY_MS: f64 = 300.0;

/// What a search is about: the same query has the same result.
pub trait Query: Clone + PartialEq + Send + Sync + 'static {
    /// The setup on screen, which the search plays.
    fn setup(&self) -> &Setup;
}

impl Query for Setup {
    fn setup(&self) -> &Setup {
        self
    }
}

/// A setup and what is wanted of it.
impl<A: Clone + PartialEq + Send + Sync + 'static> Query for (Setup, A) {
    fn setup(&self) -> &Setup {
        &self.0
    }
}

/// What a search has found.
pub struct SearchResult<Q, R> {
    /// What it is about.
    pub query: Q,
    /// What was found so far.
    pub found: R,
    /// How far the search has come.
    pub stage: Stage,
}

/// The result of a search and whether it failed, kept while other screens are shown; copies share it.
pub struct Search<Q: 'static, R: 'static> {
    /// The result, as far as it is known.
    pub result: RwSignal<Option<ArcPtrEq<SearchResult<Q, R>>>>,
    failed: RwSignal<bool>,
}

impl<Q, R> Clone for Search<Q, R> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<Q, R> Copy for Search<Q, R> {}

impl<Q: Send + Sync + 'static, R: Send + Sync + 'static> Default for Search<Q, R> {
    fn default() -> Self {
        Self { result: RwSignal::new(None), failed: RwSignal::new(false) }
    }
}

/// How a search is done.
pub struct Plan<Q, J, R> {
    /// Pause after something was typed before it starts [ms].
    pub pause_ms: u64,
    /// Whether the result of another query goes at once, lest it be taken for this one's.
    pub forget: bool,
    /// Makes the job that answers the query.
    pub start: fn(&Q, &MonthlyClimate) -> Result<J, WeatherError>,
    /// Reads what the job has found so far.
    pub read: fn(&J) -> R,
}

impl<Q: Query, R: Send + Sync + 'static> Search<Q, R> {
    /// Searches anew whenever `query` changes, for as long as the screen is shown; `None` starts
    /// nothing.
    pub fn follow<J: Job>(
        self,
        calculation: Calculation,
        plan: Plan<Q, J, R>,
        query: impl Fn() -> Option<Q> + Send + Sync + 'static,
    ) {
        let Plan { pause_ms, forget, start, read } = plan;
        let generations = Generations::default();
        Effect::new(move |_| {
            let query = query();
            let generation = generations.begin();
            self.failed.try_set(false);
            let (Some(query), Some(climate)) = (query, calculation.climate.get()) else { return };
            if query.setup().enabled_loads().next().is_none() {
                self.result.try_set(None);
                return;
            }
            if self.knows(&query) {
                return;
            }
            if forget {
                self.result.try_set(None);
            }
            let sky = MonthlyClimate::from(&climate);
            let asked = query.clone();
            let pause_ms = calculation.app.pause_after_typing(pause_ms);
            self.begin(pause_ms, generation, query, move || start(&asked, &sky), read);
        });
    }
}

impl<Q: Clone + PartialEq + Send + Sync + 'static, R: Send + Sync + 'static> Search<Q, R> {
    /// All that can be found for this query is found.
    #[must_use]
    pub fn knows(self, query: &Q) -> bool {
        self.result.with_untracked(|result| {
            result.as_ref().is_some_and(|r| r.0.stage == Stage::Done && r.0.query == *query)
        })
    }

    /// Starts a job for `query` after a pause and follows what it finds.
    pub fn begin<J: Job>(
        self,
        pause_ms: u64,
        generation: Generation,
        query: Q,
        make: impl FnOnce() -> Result<J, WeatherError> + 'static,
        read: fn(&J) -> R,
    ) {
        let mut shown_at_ms = now_ms();
        play_after(pause_ms, generation, make, move |job, stage| {
            let now = now_ms();
            if stage == Stage::Working && now - shown_at_ms < SHOW_EVERY_MS {
                return;
            }
            shown_at_ms = now;
            match job.filter(|_| stage != Stage::Failed) {
                Some(job) => {
                    let result = SearchResult { query: query.clone(), found: read(job), stage };
                    self.result.try_set(Some(ArcPtrEq::new(result)));
                }
                None => {
                    self.failed.try_set(true);
                }
            }
        });
    }

    /// Says so where the search has failed.
    #[must_use]
    pub fn failure(self) -> AnyView {
        let told = move || {
            let text = self.failed.get().then(|| t("change-failed"))?;
            Some(view! { <p class="notice" role="alert">{text}</p> })
        };
        view! { {told} }.into_any()
    }

    /// What was found, in words or pictures by `show`; before, that the search is on its way, or that
    /// there is nothing to search; and that it failed.
    #[must_use]
    pub fn view(
        self,
        app: AppState,
        show: impl Fn(&SearchResult<Q, R>) -> AnyView + Send + 'static,
    ) -> AnyView {
        view! {
            {self.failure()}
            {move || match self.result.get() {
                None => nothing_yet(app),
                Some(result) => show(&result.0),
            }}
        }
        .into_any()
    }
}

/// In the place of what is not found yet.
fn nothing_yet(app: AppState) -> AnyView {
    let empty = app.setup.with(|setup| setup.enabled_loads().next().is_none());
    if empty {
        view! { <p>{t("answer-none")}</p> }.into_any()
    } else {
        view! { <p class="working">{t("change-working")}</p> }.into_any()
    }
}

/// The setup without what no search depends on: names, cables, readings already learned from, and
/// prices.
#[must_use]
pub fn search_key(setup: &Setup) -> Setup {
    Setup {
        name: String::new(),
        example: false,
        prices: Default::default(),
        readings: Vec::new(),
        cables: Vec::new(),
        ..setup.clone()
    }
}
