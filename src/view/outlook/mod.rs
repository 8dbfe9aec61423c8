//! From the setup to the answer, following every edit.
//!
//! ```text
//! setup -> sun of the trip (only when trip or panels change) -> plan -> average course at once
//!                                                                   \-> odds, in short slices
//! ```
//!
//! The average course is there before the next frame. The odds follow with the part that brings
//! them ([`play`]).

pub mod detail;
mod facts;
mod flow;
pub mod hours;
mod origins;
pub(super) mod picture;
pub mod play;
pub mod verdict;
mod wish;
pub mod words;

use super::answer::{AnswerSignal, AnswerView};
use super::arc_ptr_eq::ArcPtrEq;
use super::state::AppState;
use super::tasks::Task;
use crate::forecast::plan::TripSun;
use crate::forecast::{MonthlyClimate, Odds, Outlook, TripPlan};
use crate::model::climate::Climate;
use crate::model::example::example_climate;
use crate::model::{Setup, SolarArray, SystemVoltage, Trip};
use facts::{Facts, nights_past};
use leptos::prelude::*;
pub(super) use origins::climate_source;

/// What the sun of a trip depends on.
#[derive(Clone, PartialEq)]
struct SkyKey {
    trip: Trip,
    solar: Vec<SolarArray>,
    system: SystemVoltage,
}

/// Looks up the climate of a trip.
pub type ClimateOf = fn(&Trip) -> Climate;

/// The calculation behind the page; copies share it.
#[derive(Clone, Copy)]
pub struct Calculation {
    /// The page it follows.
    pub app: AppState,
    /// Climate of the place.
    pub climate: Memo<Option<Climate>>,
    /// Sun of the trip.
    pub sun: Memo<Option<ArcPtrEq<TripSun>>>,
    /// Plan of the trip; `None` while there is nothing to answer.
    pub plan: Memo<Option<ArcPtrEq<TripPlan>>>,
    /// The average course.
    pub outlook: Memo<Option<ArcPtrEq<Outlook>>>,
    /// The odds of the plan on screen, as far as they are played.
    pub odds: RwSignal<Option<Odds>>,
    /// The same for the chart, a task later: to show all at once would hold up a slow phone.
    odds_in_chart: RwSignal<Option<Odds>>,
    /// The same for what stands below the answer, another task later.
    odds_below: RwSignal<Option<Odds>>,
}

impl Calculation {
    /// Follows the setup of the page. `climate_of` looks a climate up in the tables, once they are
    /// here; the example needs none.
    #[must_use]
    pub fn follow(app: AppState, climate_of: Signal<Option<ClimateOf>>) -> Self {
        let key = Memo::new(move |_| {
            app.setup.with(|setup| SkyKey {
                trip: setup.trip.clone(),
                solar: setup.solar.clone(),
                system: setup.bank.system,
            })
        });
        let climate = Memo::new(move |_| {
            let climate_of = climate_of.get();
            key.with(|key| {
                example_climate(&key.trip).or_else(|| climate_of.map(|of| of(&key.trip)))
            })
        });
        let sun = Memo::new(move |_| {
            let climate = climate.get()?;
            key.with(|key| {
                let setup = Setup {
                    trip: key.trip.clone(),
                    solar: key.solar.clone(),
                    bank: crate::model::Bank { system: key.system, ..Default::default() },
                    ..Setup::default()
                };
                TripSun::build(&setup, &MonthlyClimate::from(&climate)).ok().map(ArcPtrEq::new)
            })
        });
        let plan = Memo::new(move |_| {
            let sun = sun.get()?;
            app.setup.with(|setup| {
                let answers = setup.enabled_loads().next().is_some();
                answers.then(|| ArcPtrEq::new(TripPlan::build(setup, sun.0)))
            })
        });
        let outlook = Memo::new(move |_| {
            let plan = plan.get()?;
            // The plan was made from this very setup.
            let outlook = app.setup.with_untracked(|setup| Outlook::of(setup, &plan.0));
            Some(ArcPtrEq::new(outlook))
        });
        let [odds, odds_in_chart, odds_below] = [(); 3].map(|()| RwSignal::new(None));
        Self { app, climate, sun, plan, outlook, odds, odds_in_chart, odds_below }
    }

    /// The first calculation, in tasks short enough for a slow phone to stay alive.
    #[must_use]
    pub fn first_tasks(self) -> Vec<Task> {
        // Each is kept once it is worked out; here the value itself is not wanted.
        let climate = move || _ = self.climate.try_with_untracked(|_| ());
        let sun = move || _ = self.sun.try_with_untracked(|_| ());
        let plan = move || _ = self.plan.try_with_untracked(|_| ());
        let outlook = move || _ = self.outlook.try_with_untracked(|_| ());
        vec![Box::new(climate), Box::new(sun), Box::new(plan), Box::new(outlook)]
    }

    /// There is nothing to play.
    fn forget_odds(self) {
        for odds in [self.odds, self.odds_in_chart, self.odds_below] {
            odds.try_set(None);
        }
    }

    /// As [`Self::of_facts`], told from arrival even where the stay is under way: for what others read.
    pub(super) fn of_whole_stay<T>(
        self,
        app: AppState,
        make: impl Fn(&Facts<'_>) -> T,
    ) -> Option<T> {
        let mut made = None;
        self.with_facts(Some(self.odds), app, &mut |facts| {
            made = Some(make(&Facts { nights_past: 0, from_arrival: true, ..*facts }));
        });
        made
    }

    /// Applies `make` to the current facts and tracks them; `None` where there is no answer.
    pub(super) fn of_facts<T>(self, app: AppState, make: fn(&Facts<'_>) -> T) -> Option<T> {
        self.of_facts_with(Some(self.odds), app, make)
    }

    /// The same with `odds`, which may be a task behind; none for what they do not change.
    fn of_facts_with<T>(
        self,
        odds: Option<RwSignal<Option<Odds>>>,
        app: AppState,
        make: fn(&Facts<'_>) -> T,
    ) -> Option<T> {
        let mut made = None;
        self.with_facts(odds, app, &mut |facts| made = Some(make(facts)));
        made
    }

    /// What is known now, given to `tell`; followed where it is called.
    fn with_facts(
        self,
        odds: Option<RwSignal<Option<Odds>>>,
        app: AppState,
        tell: &mut dyn FnMut(&Facts<'_>),
    ) {
        app.lang.track();
        let (plan, outlook) = (self.plan.get(), self.outlook.get());
        let (Some(plan), Some(outlook), Some(climate)) = (plan, outlook, self.climate.get()) else {
            return;
        };
        let (plan, outlook) = (&*plan.0, &*outlook.0);
        let mut tell_with = |odds: Option<&Odds>| {
            // Odds of an earlier plan still stand in the signal for a moment; they fit if they look
            // as far.
            let odds = odds.filter(|odds| odds.lasting_frac.len() == plan.mornings.len());
            app.setup.with_untracked(|setup| {
                let nights_past = nights_past(setup, plan);
                let from_arrival = false;
                tell(&Facts {
                    setup,
                    plan,
                    outlook,
                    odds,
                    climate: &climate,
                    nights_past,
                    from_arrival,
                });
            });
        };
        match odds {
            Some(odds) => odds.with(|odds| tell_with(odds.as_ref())),
            None => tell_with(None),
        }
    }
}

/// The answer to the setup on screen.
#[must_use]
pub fn answer(app: AppState, calculation: Calculation) -> AnswerSignal {
    let view: Memo<Option<AnswerView>> =
        Memo::new(move |_| calculation.of_facts(app, words::answer_view));
    Signal::derive_local(move || view.get())
}
