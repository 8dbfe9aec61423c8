//! The odds, played in slices of a few milliseconds between which the page can take input, and
//! shown as they firm up.

use super::Calculation;
use crate::forecast::odds::SEQUENCES;
use crate::forecast::{Odds, OddsRun};
use leptos::prelude::*;
use std::time::Duration;

/// Pause after the last edit before the odds are played [ms].
const ODDS_AFTER_MS: u64 = 150;
/// Longest slice of playing [ms].
const SLICE_MS: f64 = 12.0;
/// Sequences after which the odds are first shown, and at every doubling from then.
const FIRST_SHOWN: usize = 125;

/// Plays the odds of each plan of the calculation from here on.
pub fn follow(calculation: Calculation) {
    let current = StoredValue::new(0_u32);
    Effect::new(move |before: Option<()>| {
        let plan = calculation.plan.get();
        let number = current
            .try_update_value(|number| {
                *number = number.wrapping_add(1);
                *number
            })
            .unwrap_or(0);
        let Some(plan) = plan else {
            calculation.odds.try_set(None);
            return;
        };
        // What is shown belongs to the plan before until this one has been played.
        let _ = calculation.odds.try_update(|odds| {
            if let Some(odds) = odds {
                odds.played = 0;
            }
        });
        let Ok(run) = OddsRun::new(plan.0, SEQUENCES) else {
            calculation.odds.try_set(None);
            return;
        };
        // The first answer need not wait for typing to pause.
        let pause = if before.is_some() { ODDS_AFTER_MS } else { 0 };
        let turn = Turn { current, number };
        set_timeout(
            move || play_slice(calculation.odds, run, turn, FIRST_SHOWN),
            Duration::from_millis(pause),
        );
    });
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
