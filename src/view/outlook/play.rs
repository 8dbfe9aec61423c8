//! The odds, played in slices of a few milliseconds between which the page can take input, and
//! shown as they firm up.

use super::Calculation;
use crate::forecast::odds::SEQUENCES;
use crate::forecast::{Odds, OddsRun};
use crate::view::turns::{self, in_turns};
use leptos::prelude::*;
use std::time::Duration;

/// Pause after the last edit before the odds are played [ms].
const ODDS_AFTER_MS: u64 = 150;
/// Longest slice of playing [ms].
const SLICE_MS: f64 = 12.0;
/// Sequences after which the odds are first shown; the next time they are all played.
const FIRST_SHOWN: usize = 250;

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
            calculation.forget_odds();
            return;
        };
        // What is shown belongs to the plan before until this one has been played.
        let _ = calculation.odds.try_update(|odds| {
            if let Some(odds) = odds {
                odds.played = 0;
            }
        });
        let Ok(run) = OddsRun::new(plan.0, SEQUENCES) else {
            calculation.forget_odds();
            return;
        };
        // The first answer need not wait for typing to pause.
        let pause = if before.is_some() { ODDS_AFTER_MS } else { 0 };
        let turn = Turn { current, number };
        set_timeout(
            move || play_slice(calculation, run, turn, FIRST_SHOWN),
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

fn play_slice(calculation: Calculation, mut run: OddsRun, turn: Turn, show_at: usize) {
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
        show(calculation, run.odds(), turn);
        next = usize::MAX;
    }
    if more {
        set_timeout(move || play_slice(calculation, run, turn, next), Duration::ZERO);
    }
}

/// Shows odds in the answer, in the chart and below, each in a turn of its own.
fn show(calculation: Calculation, odds: Odds, turn: Turn) {
    let Calculation { odds: answer, odds_in_chart, odds_below, .. } = calculation;
    let places = [answer, odds_in_chart, odds_below].into_iter();
    let set = |place: RwSignal<Option<Odds>>| {
        let odds = odds.clone();
        Box::new(move || {
            if !turn.is_over() {
                place.try_set(Some(odds));
            }
        })
    };
    in_turns(places.map(|place| set(place) as turns::Turn).collect());
}

/// Milliseconds of a clock that does not jump; wall time where the browser has none.
fn now_ms() -> f64 {
    window().performance().map_or_else(js_sys::Date::now, |clock| clock.now())
}
