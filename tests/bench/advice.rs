//! How long advice takes, as multiples of one answer; forty loads, two weeks.
//!
//! Run with `cargo bench --bench advice`. Prints figures; nothing here can fail on a slow machine.

use nightbank::advice::helps::HelpsJob;
use nightbank::advice::season::YearStripJob;
use nightbank::advice::sizing::{SizingAim, SizingJob};
use nightbank::advice::ways::{Aim, WaysJob};
use nightbank::forecast::{Outlook, SkyAndAir, TripPlan, plan::TripSun};
use nightbank::model::{Draw, Load, Setup, SolarArray, Usage};
use nightbank::units::{Celsius, Watts};
use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;

fn setup() -> Setup {
    let mut setup = Setup::default();
    for id in 1..=40 {
        setup.loads.push(Load {
            id,
            draw: Draw::Power { watts: Watts(5.0 + f64::from(id)) },
            usage: Usage::Daily { minutes: 20.0 },
            ..Load::default()
        });
    }
    setup.solar.push(SolarArray { peak: Watts(150.0), ..SolarArray::default() });
    setup.driving.fitted = true;
    setup.hook_up.fitted = true;
    setup.trip.nights = 14;
    setup
}

fn best_of(times: usize, mut work: impl FnMut()) -> f64 {
    (0..times)
        .map(|_| {
            let start = Instant::now();
            work();
            start.elapsed().as_secs_f64()
        })
        .fold(f64::INFINITY, f64::min)
}

fn main() {
    let setup = setup();
    let climate =
        SkyAndAir { clearness_frac: [0.42; 12], air: [Celsius(14.0); 12], half_range_k: [5.0; 12] };
    let Ok(sun) = TripSun::build(&setup, &climate) else { return };
    let sun = Arc::new(sun);
    let answer_s = best_of(20, || {
        let plan = TripPlan::build(&setup, sun.clone());
        black_box(Outlook::of(&setup, &plan));
    });
    let helps = timed(3, || {
        let mut job = HelpsJob::new(&setup, &climate).ok()?;
        Some(move || job.advance(100).unwrap_or(false))
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
    for (what, (all_s, portion_s)) in
        [("what helps", helps), ("three ways", ways), ("sizing", sizing), ("year strip", year)]
    {
        println!(
            "{what:22} {:8.2} ms, {:7.1} answers; longest portion {:6.2} ms",
            all_s * 1e3,
            all_s / answer_s,
            portion_s * 1e3
        );
    }
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
