//! How long advice takes, as multiples of one answer; forty loads, two weeks.
//!
//! "What helps most" is to be known within [`AIM_S`] for forty loads. It is printed against that
//! aim and against every change played in full, for forty loads of one kind and for forty different
//! ones of the catalogue.
//!
//! Run with `cargo bench --bench advice`. Prints figures; nothing here can fail on a slow machine.

#[path = "../advice_common/mod.rs"]
mod advice_common;
#[path = "support.rs"]
mod support;

use nightbank::advice::changes::candidates::candidates;
use nightbank::advice::changes::improvements::{ImprovementsJob, ROUNDS};
use nightbank::advice::changes::ways::{Aim, WaysJob};
use nightbank::advice::season::YearStripJob;
use nightbank::advice::sizing::{SizingAim, SizingJob};
use nightbank::advice::trial::Trial;
use nightbank::forecast::odds::SURE_FRAC;
use nightbank::forecast::{MonthlyClimate, Outlook, TripPlan, plan::TripSun};
use nightbank::model::{Setup, SystemVoltage};
use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;
use support::{best_of, climate, forty_loads};

/// What helps most is to be known within this.
const AIM_S: f64 = 0.3;

/// Forty different appliances of the catalogue.
fn varied() -> Setup {
    let mut setup = advice_common::everything(SystemVoltage::V12, 20);
    setup.loads.truncate(40);
    setup.trip.nights = 14;
    setup
}

fn main() {
    let mut setup = forty_loads();
    setup.driving.fitted = true;
    setup.hook_up.fitted = true;
    let climate = climate();
    let Ok(sun) = TripSun::build(&setup, &climate) else { return };
    let sun = Arc::new(sun);
    let answer_s = best_of(20, || {
        let plan = TripPlan::build(&setup, sun.clone());
        black_box(Outlook::of(&setup, &plan));
    });
    let ways = timed(2, || {
        let mut job = WaysJob::new(&setup, &climate, Aim { nights: 8, chance_frac: 0.9 }).ok()?;
        Some(move || job.advance(100).unwrap_or(false))
    });
    let sizing = timed(1, || {
        let aim = SizingAim::usual(&setup, 7, 0.9, vec![5, 6, 7, 8, 9]);
        let mut job = SizingJob::new(&setup, &climate, aim);
        Some(move || job.advance(100).unwrap_or(false))
    });
    let year = timed(2, || {
        let mut job = YearStripJob::new(&setup, &climate);
        Some(move || job.advance(100).unwrap_or(false))
    });
    println!("one answer, 40 loads:  {:8.2} ms", answer_s * 1e3);
    what_helps("like loads", &setup, &climate, answer_s);
    what_helps("different loads", &varied(), &climate, answer_s);
    for (what, (all_s, portion_s)) in
        [("three ways", ways), ("sizing", sizing), ("year strip", year)]
    {
        println!(
            "{what:22} {:8.2} ms, {:7.1} answers; longest portion {:6.2} ms",
            all_s * 1e3,
            all_s / answer_s,
            portion_s * 1e3
        );
    }
}

/// Prints how long the search for what helps takes.
fn what_helps(of: &str, setup: &Setup, climate: &MonthlyClimate, answer_s: f64) {
    let (all_s, portion_s) = timed(5, || {
        let mut job = ImprovementsJob::new(setup, climate, SURE_FRAC).ok()?;
        Some(move || job.advance(10).unwrap_or(false))
    });
    // Until a first list of all changes stands, still to be refined.
    let Ok(mut job) = ImprovementsJob::new(setup, climate, SURE_FRAC) else { return };
    let start = Instant::now();
    while job.progress_frac() < 1.0 && job.screened_frac() < 1.0 && job.advance(10).unwrap_or(false)
    {
    }
    let first_s = start.elapsed().as_secs_f64();
    let in_full_s = best_of(1, || {
        for change in candidates(setup, job.baseline()) {
            let most = ROUNDS[ROUNDS.len() - 1].0;
            let trial = Trial::with_climate(&change.apply(setup), climate, most);
            black_box(trial.map(Trial::finished).ok());
        }
    });
    println!(
        "what helps, 40 {of}: {:.1} ms for {} changes = {:.2} of the aim of {:.0} ms = {:.0} answers",
        all_s * 1e3,
        job.candidate_count(),
        all_s / AIM_S,
        AIM_S * 1e3,
        all_s / answer_s,
    );
    println!(
        "    first list after {:.1} ms; longest portion {:.2} ms; every change in full {:.0} ms, \
         {:.1} times as long",
        first_s * 1e3,
        portion_s * 1e3,
        in_full_s * 1e3,
        in_full_s / all_s,
    );
}

/// Best time of a whole job and the longest of its portions in that run.
fn timed<J: FnMut() -> bool>(times: usize, mut job: impl FnMut() -> Option<J>) -> (f64, f64) {
    let mut best = (f64::INFINITY, 0.0);
    for _ in 0..times {
        let Some(mut advance) = job() else { return best };
        let start = Instant::now();
        let mut longest: f64 = 0.0;
        loop {
            let portion = Instant::now();
            let more = advance();
            longest = longest.max(portion.elapsed().as_secs_f64());
            if !more {
                break;
            }
        }
        let all = start.elapsed().as_secs_f64();
        if all < best.0 {
            best = (all, longest);
        }
    }
    best
}
