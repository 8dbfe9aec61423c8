//! The odds, played in slices between which the page can take input, and shown as they firm up.

use super::Calculation;
use crate::forecast::odds::{SEQUENCES, SharedMaps};
use crate::forecast::{Odds, OddsRun};
use crate::view::jobs::{Generation, Generations, Stage, play_after};
use crate::view::tasks::{Task, run_as_tasks};
use leptos::prelude::*;

/// Pause after the last edit before the odds are played [ms].
const ODDS_AFTER_MS: u64 = 150;
/// Sequences after which the odds are first shown; the next time they are all played.
const FIRST_SHOWN: usize = 128;

/// Plays the odds of each plan of the calculation from here on.
pub fn follow(calculation: Calculation) {
    let generations = Generations::default();
    // The battery mostly stays the same from edit to edit, and its maps with it.
    let maps = StoredValue::new(None::<SharedMaps>);
    Effect::new(move |before: Option<()>| {
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
        // The first answer need not wait for typing to pause.
        let pause_ms = if before.is_some() { ODDS_AFTER_MS } else { 0 };
        let mut shown = false;
        play_after(
            pause_ms,
            generation,
            move || {
                let run = OddsRun::new(plan.0, SEQUENCES)?;
                let run = match maps.try_get_value().flatten() {
                    Some(before) => run.reading(&before),
                    None => run,
                };
                maps.try_set_value(run.maps().cloned());
                Ok(run)
            },
            move |run: Option<&OddsRun>, stage| match run.filter(|_| stage != Stage::Failed) {
                None => calculation.forget_odds(),
                Some(run) if stage == Stage::Done || !shown && run.played() >= FIRST_SHOWN => {
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
