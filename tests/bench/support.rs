//! What the benchmarks share.

use nightbank::forecast::MonthlyClimate;
use nightbank::model::{Draw, Load, Setup, SolarArray, Usage};
use nightbank::units::{Celsius, Watts};
use std::time::Instant;

/// Forty like loads and a panel for two weeks.
pub fn forty_loads() -> Setup {
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
    setup.trip.nights = 14;
    setup
}

/// The same sky and air all year round.
pub fn climate() -> MonthlyClimate {
    MonthlyClimate {
        clearness_frac: [0.42; 12],
        air: [Celsius(14.0); 12],
        half_range_k: [5.0; 12],
        error_frac: 0.0,
    }
}

/// The shortest time of some runs [s].
pub fn best_of(times: usize, mut work: impl FnMut()) -> f64 {
    (0..times)
        .map(|_| {
            let start = Instant::now();
            work();
            start.elapsed().as_secs_f64()
        })
        .fold(f64::INFINITY, f64::min)
}
