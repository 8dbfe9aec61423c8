//! How fast trips are played: simulated hours a second, and the time of the odds of two weeks.
//!
//! Run with `cargo bench --bench odds`. Prints figures; nothing here can fail on a slow machine.

#[path = "support.rs"]
mod support;

use nightbank::forecast::{OddsRun, Outlook, TripPlan, plan::TripSun};
use std::hint::black_box;
use std::sync::Arc;
use support::{best_of, climate, forty_loads};

fn main() {
    let setup = forty_loads();
    let climate = climate();
    let Ok(sun) = TripSun::build(&setup, &climate) else { return };
    let sun = Arc::new(sun);
    let plan = Arc::new(TripPlan::build(&setup, sun.clone()));
    let sun_s = best_of(10, || {
        black_box(TripSun::build(&setup, &climate).is_ok());
    });
    let answer_s = best_of(20, || {
        let plan = TripPlan::build(&setup, sun.clone());
        black_box(Outlook::of(&setup, &plan));
    });
    let sequences = 2000;
    let odds_s = best_of(5, || {
        if let Ok(mut run) = OddsRun::new(plan.clone(), sequences) {
            while run.advance(100) {}
            black_box(run.odds());
        }
    });
    let hours = (sequences * plan.hours.len()) as f64;
    println!("sun table, 14 nights:             {:8.2} ms", sun_s * 1e3);
    println!("edit to answer, 40 loads:         {:8.2} ms", answer_s * 1e3);
    println!("odds, {sequences} sequences, 14 nights:  {:8.2} ms", odds_s * 1e3);
    println!("simulated hours a second:         {:8.2} million", hours / odds_s / 1e6);
    println!("odds over one answer:             {:8.1} times", odds_s / answer_s);
}
