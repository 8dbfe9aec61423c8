//! How fast trips are played: simulated hours a second, and the time of the odds of two weeks.
//!
//! What is compared is played in turns, piece by piece, and of each the quickest pieces count: so other
//! work on the machine disturbs the ratios little.
//!
//! Run with `cargo bench --bench odds`. Prints figures; nothing here can fail on a slow machine.

#[path = "support.rs"]
mod support;

use nightbank::forecast::odds::SEQUENCES;
use nightbank::forecast::{OddsRun, Outlook, TripPlan, plan::TripSun};
use std::hint::black_box;
use std::sync::Arc;
use support::{best_of, climate, forty_loads};

/// Plain sequences that were played before for the same error of a chance.
const PLAIN: usize = 2000;
/// Sequences of a piece.
const PIECE: usize = 128;
/// Goes of which the quickest counts.
const ROUNDS: usize = 40;

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
    // Each piece of the odds in its quickest go; the first makes the maps.
    let pieces = SEQUENCES.div_ceil(PIECE);
    let mut odds_by_piece_s = vec![f64::INFINITY; pieces + 1];
    let mut known_by_piece_s = odds_by_piece_s.clone();
    let Ok(steady) = OddsRun::new(plan.clone(), usize::MAX) else { return };
    let (mut mapped, mut stepped) = (steady.clone(), steady.step_by_step());
    let (mut piece_s, mut stepped_s) = (f64::INFINITY, f64::INFINITY);
    for _ in 0..ROUNDS {
        let Ok(mut run) = OddsRun::new(plan.clone(), SEQUENCES) else { return };
        let play = |run: &mut OddsRun, by_piece_s: &mut Vec<f64>| {
            for best_s in by_piece_s {
                *best_s = best_s.min(best_of(1, || {
                    if !run.advance(PIECE) {
                        black_box(run.odds());
                    }
                }));
            }
        };
        play(&mut run, &mut odds_by_piece_s);
        let cache = run.cache();
        let Ok(mut known) = OddsRun::with_cache(plan.clone(), SEQUENCES, &cache) else {
            return;
        };
        play(&mut known, &mut known_by_piece_s);
        piece_s = piece_s.min(best_of(2, || _ = mapped.advance(PIECE)));
        stepped_s = stepped_s.min(best_of(1, || _ = stepped.advance(PIECE)));
    }
    let odds_s: f64 = odds_by_piece_s.iter().sum();
    let known_s: f64 = known_by_piece_s.iter().sum();
    let of_plain_s = stepped_s * PLAIN as f64 / PIECE as f64;
    let hours = (PIECE * plan.hours.len()) as f64;
    println!("sun table, 14 nights:             {:8.2} ms", sun_s * 1e3);
    println!("edit to answer, 40 loads:         {:8.2} ms", answer_s * 1e3);
    println!("odds, {SEQUENCES} sequences, 14 nights:   {:8.2} ms", odds_s * 1e3);
    println!("    after the battery is known:   {:8.2} ms", known_s * 1e3);
    println!("{PLAIN} plain ones step by step:     {:8.2} ms", of_plain_s * 1e3);
    println!("    step by step over mapped:     {:8.1} times", of_plain_s / odds_s);
    println!("    after the battery is known:   {:8.1} times", of_plain_s / known_s);
    println!("    of it, an hour of one:        {:8.1} times", stepped_s / piece_s);
    println!("simulated hours a second:         {:8.2} million", hours / piece_s / 1e6);
    println!("odds over one answer:             {:8.1} times", odds_s / answer_s);
    growth();
}

/// How the odds grow with nights, sequences and loads, maps of the battery and weather made anew.
fn growth() {
    println!("nights  sequences  loads    plan [ms]   odds [ms]  an hour of one [ns]");
    for (nights, sequences, loads) in [
        (14, 512, 40),
        (30, 512, 40),
        (60, 512, 40),
        (120, 512, 40),
        // The page takes 60 nights at most; a number of nights, a byte, could be 255.
        (255, 512, 40),
        (14, 128, 40),
        (14, 2048, 40),
        (14, 512, 1),
        (14, 512, 10),
    ] {
        let mut setup = forty_loads();
        setup.loads.truncate(loads);
        setup.trip.nights = nights;
        let Ok(sun) = TripSun::build(&setup, &climate()) else { return };
        let sun = Arc::new(sun);
        let plan_s = best_of(10, || {
            black_box(TripPlan::build(&setup, sun.clone()));
        });
        let plan = Arc::new(TripPlan::build(&setup, sun));
        let hours = (plan.hours.len() * sequences) as f64;
        let odds_s = best_of(12, || {
            if let Ok(mut run) = OddsRun::new(plan.clone(), sequences) {
                while run.advance(PIECE) {}
                black_box(run.odds());
            }
        });
        println!(
            "{nights:6} {sequences:10} {loads:6} {:12.2} {:11.2} {:11.1}",
            plan_s * 1e3,
            odds_s * 1e3,
            odds_s * 1e9 / hours
        );
    }
}
