//! Which loads nobody has measured, and which to measure first.
//!
//! Each load's draw is off by some share `e` of its energy a day `E` (its likely error, one
//! standard deviation), independently of the others. Together they are off by
//!
//! ```text
//! D = sqrt(sum (e E)^2)
//! ```
//!
//! The odds draw it with the weather (`forecast::air_response`), so nothing is played for it here.
//! The part of one load in the uncertainty is `(e E)^2 / D^2`; the largest is the one to measure
//! first.

use crate::forecast::MonthlyClimate;
use crate::forecast::demand::LoadDay;
use crate::forecast::plan::DayAir;
use crate::forecast::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use crate::model::{DrawSource, Setup};
use crate::units::WattHours;

/// One load's part in the uncertainty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unknown {
    /// The load.
    pub load: u32,
    /// How its draw is known.
    pub draw_source: DrawSource,
    /// Energy a day at the battery.
    pub per_day: WattHours,
    /// Likely error of it, one standard deviation either way.
    pub likely_error: WattHours,
    /// Part of the whole uncertainty, 0..1; all parts sum to 1.
    pub part_frac: f64,
}

/// What nobody has measured.
#[derive(Clone, Debug, PartialEq)]
pub struct Unknowns {
    /// Loads by their part in the uncertainty, the one to measure first at the front.
    pub ranking: Vec<Unknown>,
    /// Likely error of the energy of a day, all loads together, one standard deviation.
    pub likely_error: WattHours,
}

impl Unknowns {
    /// Of the enabled loads of a setup. `air` of the climate decides what a fridge draws.
    #[must_use]
    pub fn of(setup: &Setup, climate: &MonthlyClimate) -> Self {
        let air = DayAir::of_first_whole_day(&setup.trip, climate).by_hour();
        let around = Surroundings::on_day(setup, FIRST_WHOLE_DAY, air);
        let mut ranking: Vec<Unknown> = setup
            .enabled_loads()
            .map(|load| {
                let per_day = LoadDay::of(load, &around).energy_at_battery(load, setup);
                Unknown {
                    load: load.id,
                    draw_source: load.draw_source,
                    per_day,
                    likely_error: per_day * load.likely_error_frac(),
                    part_frac: 0.0,
                }
            })
            .collect();
        let square: f64 = ranking.iter().map(|u| u.likely_error.0 * u.likely_error.0).sum();
        for unknown in &mut ranking {
            if square > 0.0 {
                unknown.part_frac = unknown.likely_error.0 * unknown.likely_error.0 / square;
            }
        }
        ranking.sort_by(|a, b| b.part_frac.total_cmp(&a.part_frac));
        Self { ranking, likely_error: WattHours(square.sqrt()) }
    }
}
