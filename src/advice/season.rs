//! The same setup at another time of year, and what becomes of it month by month.

use super::trial::{Outcome, SUN_UNITS, Trial, TrialCache};
use crate::forecast::MonthlyClimate;
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::model::trip::Weather;
use crate::model::{Setup, limits};
use std::sync::Arc;

/// Sequences for each month of the strip.
const SEQUENCES: usize = 128;

/// The setup with its stay of `nights` nights around the middle of a month (1..12), whatever
/// weather was entered for its own days forgotten. Driving and hook-up stay as planned; a mean
/// temperature of the user's own stays in its own month only; readings and restart belong to the
/// real trip and are left out, the factors they taught are kept.
#[must_use]
pub fn in_month(setup: &Setup, month: u8, nights: usize) -> Setup {
    let mut setup = setup.clone();
    let most = limits::NIGHTS.max as u8;
    setup.trip.nights = u8::try_from(nights).unwrap_or(most).clamp(1, most);
    let month = month.clamp(1, 12);
    if setup.trip.month != month {
        setup.trip.own_air = None;
    }
    setup.trip.month = month;
    setup.trip.day = 15_u8.saturating_sub(setup.trip.nights / 2).max(1);
    for day in &mut setup.trip.days {
        day.weather = Weather::Unknown;
    }
    setup.correction.restart = None;
    setup.readings.clear();
    setup
}

/// Months of a season from its first to its last, over the new year where the last comes first.
#[must_use]
pub fn months(first: u8, last: u8) -> Vec<u8> {
    let (first, last) = (first.clamp(1, 12), last.clamp(1, 12));
    let count = (last + 12 - first) % 12 + 1;
    (0..count).map(|step| (first - 1 + step) % 12 + 1).collect()
}

/// What becomes of a setup in each month of the year, in portions.
#[derive(Clone, Debug)]
pub struct YearStripJob {
    setup: Setup,
    climate: MonthlyClimate,
    months: Vec<Outcome>,
    playing: Option<Trial>,
    /// Of the month before.
    cache: Option<TrialCache>,
}

impl YearStripJob {
    /// Ready to play the months, each with the nights of the setup's own trip.
    #[must_use]
    pub fn new(setup: &Setup, climate: &MonthlyClimate) -> Self {
        Self {
            setup: setup.clone(),
            climate: *climate,
            months: Vec::new(),
            playing: None,
            cache: None,
        }
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate is not a number in range.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let mut left = units.max(1);
        while left > 0 && self.months.len() < 12 {
            if let Some(mut trial) = self.playing.take() {
                if trial.advance(&mut left) {
                    self.playing = Some(trial);
                } else {
                    self.months.push(trial.outcome());
                }
            } else {
                let month = self.months.len() as u8 + 1;
                let nights = usize::from(self.setup.trip.nights);
                let setup = in_month(&self.setup, month, nights);
                let sun = Arc::new(TripSun::build(&setup, &self.climate)?);
                let trial = Trial::new(&setup, sun, SEQUENCES, self.cache.as_ref())?;
                self.cache = Some(trial.cache());
                left = left.saturating_sub(SUN_UNITS + trial.set_up_units());
                self.playing = Some(trial);
            }
        }
        Ok(self.months.len() < 12)
    }

    /// Months known so far, January first: nights in average weather, at nine in ten
    /// (`nights_sure`) and at an even chance (`nights_even`).
    #[must_use]
    pub fn months(&self) -> &[Outcome] {
        &self.months
    }
}
