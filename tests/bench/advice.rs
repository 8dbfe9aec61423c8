//! How long advice takes, as multiples of one answer; forty loads, two weeks.
//!
//! Run with `cargo bench --bench advice`. Prints figures; nothing here can fail on a slow machine.

use nightbank::advice::helps::HelpsJob;
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
    let mut changes = 0;
    let mut longest_portion_s: f64 = 0.0;
    let helps_s = best_of(3, || {
        longest_portion_s = 0.0;
        if let Ok(mut job) = HelpsJob::new(&setup, &climate) {
            loop {
                let start = Instant::now();
                let more = job.advance(100).unwrap_or(false);
                longest_portion_s = longest_portion_s.max(start.elapsed().as_secs_f64());
                if !more {
                    break;
                }
            }
            changes = job.candidate_count();
            black_box(job.helps());
        }
    });
    println!("one answer, 40 loads:              {:8.2} ms", answer_s * 1e3);
    println!("what helps, {changes:3} changes:            {:8.2} ms", helps_s * 1e3);
    println!("longest portion of 100 units:      {:8.2} ms", longest_portion_s * 1e3);
    println!("what helps over one answer:        {:8.1} times", helps_s / answer_s);
}
