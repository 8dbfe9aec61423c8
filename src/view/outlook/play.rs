//! The odds, played in slices between which the page can take input, and shown as they firm up.

use super::Calculation;
use crate::forecast::odds::{OddsCache, SEQUENCES};
use crate::forecast::{Odds, OddsRun};
use crate::view::jobs::{Generation, Generations, Stage, now_ms, play_after};
use crate::view::tasks::{Task, run_as_tasks};
use leptos::prelude::*;

/// Sequences after which the odds are first shown, where all would take longer than [`SHOWN_AFTER_MS`]; the
/// next time they are all played.
const FIRST_SHOWN: usize = 128;
/// To show odds takes a slow phone about as long as to play them: what is whole by then is shown once [ms].
const SHOWN_AFTER_MS: f64 = 100.0;

/// Plays the odds of each plan of the calculation from here on.
pub fn follow(calculation: Calculation) {
    let generations = Generations::default();
    // From edit to edit battery or weather mostly stay the same, and what is known of them.
    let cache = StoredValue::new(None::<OddsCache>);
    Effect::new(move |_| {
        let plan = calculation.plan.get();
        let generation = generations.begin();
        let Some(plan) = plan else {
            calculation.forget_odds();
            return;
        };
        // What is shown belongs to the plan before until this one has been played.
        let _ = calculation.odds.try_update(|odds| {
            if let Some(odds) = odds {
                odds.played = 0;
            }
        });
        let mut shown = false;
        let begun_ms = now_ms();
        // In slices that the next edit ends: nothing is gained by waiting for typing to pause.
        play_after(
            0,
            generation,
            move || {
                let run = match cache.try_get_value().flatten() {
                    Some(cache) => OddsRun::with_cache(plan.0, SEQUENCES, &cache)?,
                    None => OddsRun::new(plan.0, SEQUENCES)?,
                };
                cache.try_set_value(Some(run.cache()));
                Ok(run)
            },
            move |run: Option<&OddsRun>, stage| match run.filter(|_| stage != Stage::Failed) {
                None => calculation.forget_odds(),
                Some(run)
                    if stage == Stage::Done
                        || !shown
                            && run.played() >= FIRST_SHOWN
                            && now_ms() - begun_ms > SHOWN_AFTER_MS =>
                {
                    shown = true;
                    show(calculation, run.odds(), generation);
                }
                Some(_) => {}
            },
        );
    });
}

/// Shows odds in the answer, in the chart and below, each in a task of its own.
fn show(calculation: Calculation, odds: Odds, generation: Generation) {
    let Calculation { odds: answer, odds_in_chart, odds_below, .. } = calculation;
    let set = |place: RwSignal<Option<Odds>>| -> Task {
        let odds = odds.clone();
        Box::new(move || {
            if !generation.is_over() {
                place.try_set(Some(odds));
            }
        })
    };
    run_as_tasks([answer, odds_in_chart, odds_below].map(set).into());
}
