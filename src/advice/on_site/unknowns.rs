//! How far the loads nobody has measured could move the answer.
//!
//! Each load's draw is off by some share `e` of its energy a day `E` (its likely error, one
//! standard deviation), independently of the others. Together they are off by
//!
//! ```text
//! D = sqrt(sum (e E)^2)
//! ```
//!
//! and the likeliest way for all of them to be off by that much is each by its part,
//! `e^2 E / D` of its energy. The whole trip is played with every load so much higher, and so much
//! lower. The part of one load in the uncertainty is `(e E)^2 / D^2`; the largest is the one to
//! measure first.

use crate::advice::trial::{Outcome, SUN_UNITS, Trial};
use crate::forecast::MonthlyClimate;
use crate::forecast::demand::LoadDay;
use crate::forecast::plan::DayAir;
use crate::forecast::plan::TripSun;
use crate::forecast::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use crate::forecast::weather::WeatherError;
use crate::model::{Draw, DrawSource, Load, Setup, Usage};
use crate::units::WattHours;
use std::sync::Arc;

/// Sequences for each of the three trips.
const SEQUENCES: usize = 128;

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

/// A load that really draws `factor` of what was entered: running, standby, and where the use
/// fixes the energy itself, that too.
#[must_use]
pub fn off_by(load: &Load, factor: f64) -> Load {
    let mut load = load.clone();
    match &mut load.draw {
        Draw::Power { watts } => *watts = *watts * factor,
        Draw::Current { amps, .. } => *amps = *amps * factor,
    }
    load.standby = load.standby * factor;
    match &mut load.usage {
        Usage::Charges { cell, .. } => *cell = *cell * factor,
        Usage::Energy { per_day } => *per_day = *per_day * factor,
        Usage::Daily { .. }
        | Usage::AlwaysOn
        | Usage::Duty { .. }
        | Usage::Litres { .. }
        | Usage::Uses { .. }
        | Usage::WhileDriving => {}
    }
    load
}

/// What is not known, in the making.
#[derive(Clone, Debug)]
pub struct UnknownsJob {
    unknowns: Vec<Unknown>,
    likely_error: WattHours,
    open: Vec<Setup>,
    climate: MonthlyClimate,
    sun: Option<Arc<TripSun>>,
    trials: Vec<Trial>,
}

impl UnknownsJob {
    /// Ready to play; the ranking of loads is there at once. `air` of the climate decides what a
    /// fridge draws.
    #[must_use]
    pub fn new(setup: &Setup, climate: &MonthlyClimate) -> Self {
        let air = DayAir::of_first_whole_day(&setup.trip, climate).by_hour();
        let around = Surroundings::on_day(setup, FIRST_WHOLE_DAY, air);
        let mut unknowns: Vec<Unknown> = setup
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
        let square: f64 = unknowns.iter().map(|u| u.likely_error.0 * u.likely_error.0).sum();
        let likely_error = WattHours(square.sqrt());
        for unknown in &mut unknowns {
            if square > 0.0 {
                unknown.part_frac = unknown.likely_error.0 * unknown.likely_error.0 / square;
            }
        }
        unknowns.sort_by(|a, b| b.part_frac.total_cmp(&a.part_frac));
        let all_off = |sign: f64| {
            let mut off = setup.clone();
            for load in &mut off.loads {
                let error_frac = load.likely_error_frac();
                let unknown = unknowns.iter().find(|unknown| unknown.load == load.id);
                if let Some(unknown) = unknown
                    && likely_error.0 > 0.0
                {
                    let part = unknown.likely_error / likely_error;
                    *load = off_by(load, (1.0 + sign * error_frac * part).max(0.0));
                }
            }
            off
        };
        Self {
            open: vec![all_off(1.0), setup.clone(), all_off(-1.0)],
            unknowns,
            likely_error,
            climate: *climate,
            sun: None,
            trials: Vec::new(),
        }
    }

    /// Loads by their part in the uncertainty, the one to measure first at the front.
    #[must_use]
    pub fn ranking(&self) -> &[Unknown] {
        &self.unknowns
    }

    /// Likely error of the energy of a day, all loads together, one standard deviation.
    #[must_use]
    pub fn likely_error(&self) -> WattHours {
        self.likely_error
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let mut left = units.max(1);
        while left > 0 {
            if let Some(trial) = self.trials.iter_mut().find(|trial| !trial.is_finished()) {
                trial.advance(&mut left);
            } else if let Some(setup) = self.open.get(self.trials.len()) {
                let sun = if let Some(sun) = &self.sun {
                    sun.clone()
                } else {
                    left = left.saturating_sub(SUN_UNITS);
                    Arc::new(TripSun::build(setup, &self.climate)?)
                };
                self.sun = Some(sun.clone());
                let trial = Trial::new(setup, sun, SEQUENCES)?;
                left = left.saturating_sub(trial.set_up_units());
                self.trials.push(trial);
            } else {
                return Ok(false);
            }
        }
        Ok(true)
    }

    /// The trip with all loads likely higher, as entered, and likely lower; as far as known.
    #[must_use]
    pub fn outcomes(&self) -> Vec<Outcome> {
        self.trials.iter().map(Trial::outcome).collect()
    }
}
