//! The forecast held against a log: the same setup played over the days logged, and what the two differ by.
//!
//! The trip is moved to the log: it begins at the first full hour with a state of charge, with that charge, in
//! the average weather of its dates. What the user said of a day's weather or driving stays with its date. At
//! most the last [`MOST_NIGHTS`] are played: a forecast that nobody corrects for longer tells little.

use super::series::{DAY_S, HOUR_S, Series, date_of, seconds_at};
use crate::advice::on_site::fit::{Fit, fit};
use crate::advice::on_site::soc_at;
use crate::forecast::demand::{LoadDay, at_battery};
use crate::forecast::plan::TripSun;
use crate::forecast::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use crate::forecast::weather::WeatherError;
use crate::forecast::{Course, MonthlyClimate, TripPlan};
use crate::model::{Correction, Reading, ReadingKind, Setup};
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, Hours, Watts};
use std::sync::Arc;

/// Most nights of a log that are played.
pub const MOST_NIGHTS: u8 = 14;
/// Fewest hours to compare.
const FEWEST_HOURS: usize = 12;
/// Most readings handed to the fit.
const MOST_READINGS: usize = 48;
/// States of charge are averaged over so much either side of the hour [s].
const AROUND_S: f64 = 600.0;
/// Hours of the night whose steady draw is compared with the floor.
const QUIET_HOURS: std::ops::Range<usize> = 0..5;
/// A load that runs for more of the hour than this is steady.
const STEADY_FRAC: f64 = 0.98;

/// The setup moved to the days of the log.
#[derive(Clone, Debug)]
pub struct LogTrip {
    /// The setup, its trip beginning with the log.
    pub setup: Setup,
    /// Sky and air of those days.
    pub sun: Arc<TripSun>,
    /// The hours laid out.
    pub plan: TripPlan,
    /// Begin of the trip [s].
    pub from_s: f64,
    /// The log has states of charge to compare with.
    pub has_soc: bool,
}

/// What forecast and log differ by.
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    /// Mean of forecast less log, in shares of the charge.
    pub mean_frac: f64,
    /// Root mean square of the same.
    pub rms_frac: f64,
    /// Hours compared.
    pub hours: usize,
}

impl LogTrip {
    /// Moves the trip of `setup` to the log; `None` for a log without a time.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate makes no sense.
    pub fn of(
        series: &Series,
        setup: &Setup,
        climate: &MonthlyClimate,
    ) -> Result<Option<Self>, WeatherError> {
        let with_soc = |sample: &&crate::model::Sample| sample.soc_frac.is_some();
        let has_soc = series.samples.iter().filter(with_soc).count() >= FEWEST_HOURS;
        let first =
            if has_soc { series.samples.iter().find(with_soc) } else { series.samples.first() };
        let (Some(first), Some(last)) = (first, series.samples.last()) else { return Ok(None) };
        let earliest = last.at_s - f64::from(MOST_NIGHTS) * DAY_S;
        let mut from_s = (first.at_s.max(earliest) / HOUR_S).ceil() * HOUR_S;
        let mut start = series.mean_soc(from_s, AROUND_S);
        // A gap may begin here: the next hour that has a state of charge.
        while has_soc && start.is_none() && from_s < last.at_s {
            from_s += HOUR_S;
            start = series.mean_soc(from_s, AROUND_S);
        }
        let Some((date, second)) = date_of(from_s) else { return Ok(None) };
        let mut moved = setup.clone();
        let trip = &mut moved.trip;
        let nights = ((last.at_s - from_s) / DAY_S).ceil().clamp(1.0, f64::from(MOST_NIGHTS));
        trip.nights = nights as u8;
        trip.year = u16::try_from(date.year()).unwrap_or(trip.year);
        (trip.month, trip.day) = (u8::from(date.month()), date.day());
        trip.arrival_hour = (second / HOUR_S) as u8;
        let days_of = setup.trip.start();
        trip.days = (0..=usize::from(trip.nights))
            .map(|day| {
                let here = i64::from(date.to_julian_day() - days_of.to_julian_day()) + day as i64;
                usize::try_from(here)
                    .map_or_else(|_| Default::default(), |d| setup.trip.day_plan(d))
            })
            .collect();
        moved.bank.soc_start_frac = start.unwrap_or(setup.bank.soc_start_frac).clamp(0.0, 1.0);
        moved.correction.restart = None;
        moved.readings.clear();
        let sun = Arc::new(TripSun::build(&moved, climate)?);
        let plan = TripPlan::build(&moved, Arc::clone(&sun));
        Ok(Some(Self { setup: moved, sun, plan, from_s, has_soc }))
    }

    /// States of charge of the log at the full hours of the trip, with the time since its begin.
    fn by_hour(&self, series: &Series) -> Vec<(Hours, f64)> {
        (1..self.plan.hours.len())
            .map(|hour| hour as f64)
            .filter_map(|hour| {
                let at_s = self.from_s + hour * HOUR_S;
                let soc = series.soc_at(at_s)?;
                Some((Hours(hour), series.mean_soc(at_s, AROUND_S).unwrap_or(soc)))
            })
            .collect()
    }

    /// Holds the forecast against the log; `None` with fewer than twelve hours to compare.
    #[must_use]
    pub fn held(&self, series: &Series) -> Option<Held> {
        let course = Course::average(&self.plan);
        let off: Vec<f64> = self
            .by_hour(series)
            .into_iter()
            .filter_map(|(at, soc)| Some(soc_at(&self.plan, &course, at)? - soc))
            .collect();
        if !self.has_soc || off.len() < FEWEST_HOURS {
            return None;
        }
        let count = off.len() as f64;
        Some(Held {
            mean_frac: off.iter().sum::<f64>() / count,
            rms_frac: (off.iter().map(|off| off * off).sum::<f64>() / count).sqrt(),
            hours: off.len(),
        })
    }

    /// Consumption and sun fitted to the log, as they are to readings on site.
    #[must_use]
    pub fn fitted(&self, series: &Series) -> Option<Fit> {
        let hours = self.by_hour(series);
        if !self.has_soc || hours.len() < FEWEST_HOURS {
            return None;
        }
        let every = hours.len().div_ceil(MOST_READINGS);
        // The last hour is among them.
        let readings = hours.iter().rev().step_by(every).rev();
        let mut setup = self.setup.clone();
        setup.readings = readings
            .map(|(at, soc)| Reading {
                at: *at,
                kind: ReadingKind::StateOfCharge { soc_frac: soc.clamp(0.0, 1.0) },
            })
            .collect();
        fit(&setup, Arc::clone(&self.sun))
    }

    /// A correction learned here as the user's own trip takes it: the forecast starts again at the end of
    /// the log only if that lies within the trip.
    #[must_use]
    pub fn correction_for(&self, learned: &Correction, setup: &Setup) -> Correction {
        let begins_s = seconds_at(setup.trip.start(), setup.trip.arrival_hour);
        let restart = learned.restart.and_then(|(at, soc_frac)| {
            let at_h = (self.from_s - begins_s) / HOUR_S + at.0;
            let within = (0.0..=24.0 * f64::from(setup.trip.nights)).contains(&at_h);
            within.then_some((Hours(at_h), soc_frac))
        });
        Correction { restart, ..learned.clone() }
    }

    /// What of the setup never stops at night, at the battery: loads that are always on, what draws between
    /// uses, the inverter with nothing connected, solar controllers and the battery's management.
    #[must_use]
    pub fn steady_at_night(&self) -> Watts {
        let setup = &self.setup;
        let around = Surroundings::on_day(setup, FIRST_WHOLE_DAY, self.sun.first_whole_day_air());
        let curve = InverterCurve::of(&setup.inverter);
        let hours = QUIET_HOURS.len() as f64;
        let loads: Watts = setup
            .enabled_loads()
            .map(|load| {
                let day = LoadDay::of(load, &around);
                let quiet: Watts = day.hours[QUIET_HOURS]
                    .iter()
                    .map(|hour| {
                        let steady = hour.running >= hour.momentary * STEADY_FRAC;
                        let running = if steady { hour.running } else { Watts::ZERO };
                        at_battery(
                            load,
                            crate::forecast::demand::LoadHour { running, ..*hour },
                            &curve,
                        )
                    })
                    .sum();
                quiet / hours
            })
            .sum();
        let quiet = self.plan.hours.iter().filter(|hour| QUIET_HOURS.contains(&hour.hour_of_day));
        let (idle, count) = quiet.fold((Watts::ZERO, 0_u32), |(sum, count), hour| {
            (sum + hour.demand.inverter_idle + hour.electronics, count + 1)
        });
        loads * setup.correction.use_factor + idle / f64::from(count.max(1))
    }

    /// Mean air around an appliance over the hours of the day in which it was watched.
    #[must_use]
    pub fn air_watched(
        &self,
        by_hour: &[Option<f64>; 24],
        place: crate::model::LoadPlace,
    ) -> Celsius {
        let around = Surroundings::at_rest(&self.setup, self.sun.first_whole_day_air());
        let watched: Vec<f64> = (0..24)
            .filter(|hour| by_hour[*hour].is_some())
            .map(|hour| around.air(place, hour).0)
            .collect();
        Celsius(watched.iter().sum::<f64>() / watched.len().max(1) as f64)
    }
}
