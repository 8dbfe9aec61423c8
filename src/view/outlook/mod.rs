//! From the setup to the answer, following every edit.
//!
//! ```text
//! setup -> sun of the trip (only when trip or panels change) -> plan -> average course at once
//!                                                                   \-> odds, in short slices
//! ```
//!
//! The average course is there before the next frame. The odds are played in slices of a few
//! milliseconds between which the page can take input, and shown as they firm up.

mod flow;
pub mod hours;
mod picture;
pub mod words;

use super::answer::{Answer, AnswerView};
use super::state::AppState;
use crate::forecast::odds::SEQUENCES;
use crate::forecast::plan::TripSun;
use crate::forecast::{Odds, OddsRun, Outlook, SkyAndAir, TripPlan, climate_of};
use crate::model::climate::Climate;
use crate::model::{Setup, SolarArray, SystemVoltage, Trip};
use leptos::prelude::*;
use std::sync::Arc;
use std::time::Duration;

/// Pause after the last edit before the odds are played [ms].
const ODDS_AFTER_MS: u64 = 150;
/// Longest slice of playing [ms].
const SLICE_MS: f64 = 12.0;
/// Sequences after which the odds are first shown, and at every doubling from then.
const FIRST_SHOWN: usize = 125;

/// What the sun of a trip depends on.
#[derive(Clone, PartialEq)]
struct SkyKey {
    trip: Trip,
    solar: Vec<SolarArray>,
    system: SystemVoltage,
}

/// A value that is compared by identity: made anew means changed.
#[derive(Clone)]
pub struct Made<T>(pub Arc<T>);

impl<T> PartialEq for Made<T> {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

/// The calculation behind the page; copies share it.
#[derive(Clone, Copy)]
pub struct Calculation {
    /// Climate of the place.
    pub climate: Memo<Option<Climate>>,
    /// Sun of the trip.
    pub sun: Memo<Option<Made<TripSun>>>,
    /// Plan of the trip; `None` while there is nothing to answer.
    pub plan: Memo<Option<Made<TripPlan>>>,
    /// The average course.
    pub outlook: Memo<Option<Made<Outlook>>>,
    /// The odds of the plan on screen, as far as they are played.
    pub odds: RwSignal<Option<Odds>>,
}

impl Calculation {
    /// Follows the setup of the page.
    #[must_use]
    pub fn follow(app: AppState) -> Self {
        let key = Memo::new(move |_| {
            app.setup.with(|setup| SkyKey {
                trip: setup.trip.clone(),
                solar: setup.solar.clone(),
                system: setup.bank.system,
            })
        });
        let climate = Memo::new(move |_| key.with(|key| Some(climate_of(&key.trip))));
        let sun = Memo::new(move |_| {
            let climate = climate.get()?;
            key.with(|key| {
                let setup = Setup {
                    trip: key.trip.clone(),
                    solar: key.solar.clone(),
                    bank: crate::model::Bank { system: key.system, ..Default::default() },
                    ..Setup::default()
                };
                TripSun::build(&setup, &SkyAndAir::from(&climate))
                    .ok()
                    .map(|sun| Made(Arc::new(sun)))
            })
        });
        let plan = Memo::new(move |_| {
            let sun = sun.get()?;
            app.setup.with(|setup| {
                let answers = setup.enabled_loads().next().is_some();
                answers.then(|| Made(Arc::new(TripPlan::build(setup, sun.0))))
            })
        });
        let outlook = Memo::new(move |_| {
            let plan = plan.get()?;
            // The plan was made from this very setup.
            let outlook = app.setup.with_untracked(|setup| Outlook::of(setup, &plan.0));
            Some(Made(Arc::new(outlook)))
        });
        let odds = RwSignal::new(None);
        let calculation = Self { climate, sun, plan, outlook, odds };
        calculation.play_odds_of_each_plan();
        calculation
    }

    fn play_odds_of_each_plan(self) {
        let current = StoredValue::new(0_u32);
        Effect::new(move |before: Option<()>| {
            let plan = self.plan.get();
            let number = current
                .try_update_value(|number| {
                    *number = number.wrapping_add(1);
                    *number
                })
                .unwrap_or(0);
            let Some(plan) = plan else {
                self.odds.try_set(None);
                return;
            };
            // What is shown belongs to the plan before until this one has been played.
            let _ = self.odds.try_update(|odds| {
                if let Some(odds) = odds {
                    odds.played = 0;
                }
            });
            let Ok(run) = OddsRun::new(plan.0, SEQUENCES) else {
                self.odds.try_set(None);
                return;
            };
            // The first answer need not wait for typing to pause.
            let pause = if before.is_some() { ODDS_AFTER_MS } else { 0 };
            let turn = Turn { current, number };
            set_timeout(
                move || play_slice(self.odds, run, turn, FIRST_SHOWN),
                Duration::from_millis(pause),
            );
        });
    }
}

/// Tells a slice whether its plan is still the one on screen.
#[derive(Clone, Copy)]
struct Turn {
    current: StoredValue<u32>,
    number: u32,
}

impl Turn {
    fn is_over(self) -> bool {
        self.current.try_get_value() != Some(self.number)
    }
}

fn play_slice(shown: RwSignal<Option<Odds>>, mut run: OddsRun, turn: Turn, show_at: usize) {
    if turn.is_over() {
        return;
    }
    let start = now_ms();
    let mut more = true;
    while more && now_ms() - start < SLICE_MS {
        more = run.advance(10);
    }
    let played = run.played();
    let mut next = show_at;
    if !more || played >= show_at {
        shown.try_set(Some(run.odds()));
        next = played * 2;
    }
    if more {
        set_timeout(move || play_slice(shown, run, turn, next), Duration::ZERO);
    }
}

/// Milliseconds of a clock that does not jump; wall time where the browser has none.
fn now_ms() -> f64 {
    window().performance().map_or_else(js_sys::Date::now, |clock| clock.now())
}

/// The answer to the setup on screen.
#[must_use]
pub fn answer(app: AppState, calculation: Calculation) -> Answer {
    let view: Memo<Option<AnswerView>> = Memo::new(move |_| {
        app.lang.track();
        let plan = calculation.plan.get()?;
        let outlook = calculation.outlook.get()?;
        let climate = calculation.climate.get()?;
        let odds = calculation.odds.get();
        // Odds of an earlier plan still stand in the signal for a moment; they fit if they look as
        // far.
        let odds = odds.filter(|odds| odds.lasting_frac.len() == plan.0.mornings.len());
        app.setup.with_untracked(|setup| {
            let facts = words::Facts {
                setup,
                plan: &plan.0,
                outlook: &outlook.0,
                odds: odds.as_ref(),
                climate: &climate,
            };
            Some(words::answer_view(&facts))
        })
    });
    Signal::derive_local(move || view.get())
}
