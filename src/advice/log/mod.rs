//! What a log of readings tells: a table of time with state of charge, voltage, current or power, as monitors
//! and controllers keep it.
//!
//! [`series`] puts the rows in order and says where the draw of the appliances is seen; [`steps`] finds what
//! switches; [`use_by_hour`] the draw by hour, what never stops and what comes in; [`capacity`] the capacity in
//! use; [`held`] plays the forecast over the same days. [`take_over`] puts single findings into a setup. The log
//! itself is kept by nobody.

pub mod capacity;
pub mod held;
pub mod series;
pub mod steps;
pub mod take_over;
pub mod use_by_hour;

use crate::advice::on_site::fit::Fit;
use crate::forecast::MonthlyClimate;
use crate::forecast::weather::WeatherError;
use crate::model::{Sample, Setup};
use crate::units::{Hours, Watts};
use capacity::{CapacityFound, CapacityMissing, capacity};
use held::{Held, LogTrip};
use series::Series;
use steps::{Appliance, COARSEST_S, Levels, appliances, levels};
use use_by_hour::{Floor, HourUse, Income, floor, income, use_by_hour};

/// Shortest log from which anything is told of the days [h].
const SHORTEST: Hours = Hours(6.0);
/// A log with less of its time covered has too many gaps to be trusted.
const COVERED_FRAC: f64 = 0.5;

/// What a log lacks, in the order in which it matters.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Lacking {
    /// It covers so little time.
    TooShort(Hours),
    /// So much of its time is gaps, 0..1.
    Gaps(f64),
    /// Neither current nor power.
    NoPower,
    /// No state of charge.
    NoSoc,
    /// Rows so far apart that switching does not show [h].
    TooCoarse(Hours),
    /// Nothing seen of the draw: the battery was charged or the sun shone all the time.
    NeverDark,
}

/// What a log told.
#[derive(Clone, Debug)]
pub struct Learned {
    /// Rows used.
    pub rows: usize,
    /// First row to last.
    pub span: Hours,
    /// Time covered by rows.
    pub covered: Hours,
    /// The draw was seen by day too.
    pub whole_day: bool,
    /// Mean draw by hour of the day.
    pub by_hour: [Option<HourUse>; 24],
    /// What never stops at night.
    pub floor: Option<Floor>,
    /// What of it the list explains.
    pub explained: Option<Watts>,
    /// What comes in.
    pub income: Option<Income>,
    /// Capacity in use.
    pub capacity: Result<CapacityFound, CapacityMissing>,
    /// What switches, the one that takes most first.
    pub appliances: Vec<Appliance>,
    /// The forecast against the log.
    pub held: Option<Held>,
    /// Consumption and sun fitted to it.
    pub fit: Option<Fit>,
    /// The days of the log, for taking things over.
    pub trip: Option<LogTrip>,
    /// What is missing.
    pub lacking: Vec<Lacking>,
}

impl Learned {
    fn of(series: &Series) -> Self {
        Self {
            rows: series.samples.len(),
            span: series.span(),
            covered: series.covered(),
            whole_day: false,
            by_hour: [None; 24],
            floor: None,
            explained: None,
            income: None,
            capacity: Err(CapacityMissing::NoCurrent),
            appliances: Vec::new(),
            held: None,
            fit: None,
            trip: None,
            lacking: Vec::new(),
        }
    }

    /// What never stops and the list does not explain, where that is more than its own error.
    #[must_use]
    pub fn unexplained(&self) -> Option<Watts> {
        let floor = self.floor.filter(|floor| floor.seen_between_runs)?;
        let left = floor.power - self.explained?;
        (left > floor.sd * 2.0).then_some(left)
    }
}

/// The work on a log, in steps short enough for a slow phone.
pub struct LogJob {
    series: Series,
    setup: Setup,
    climate: MonthlyClimate,
    levels: Levels,
    learned: Learned,
    step: usize,
}

impl LogJob {
    /// On the rows of a log, in any order, for the owner's setup at a place with this climate.
    #[must_use]
    pub fn new(samples: Vec<Sample>, setup: Setup, climate: MonthlyClimate) -> Self {
        let series = Series::new(samples, &setup);
        let learned = Learned::of(&series);
        Self { series, setup, climate, levels: Levels::default(), learned, step: 0 }
    }

    /// Works on by one step; false once all is known.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate of the place makes no sense.
    pub fn advance(&mut self) -> Result<bool, WeatherError> {
        let Self { series, setup, learned, levels: found, .. } = self;
        match self.step {
            0 => {
                series.find_drawn(setup);
                learned.whole_day = series.whole_day;
            }
            1 => *found = levels(series),
            2 => {
                learned.by_hour = use_by_hour(series);
                learned.floor = floor(series, found, &learned.by_hour);
                learned.income = income(series, learned.floor);
            }
            3 => {
                let floor = learned.floor.map_or(Watts::ZERO, |floor| floor.power);
                learned.appliances = appliances(series, found, floor);
                learned.capacity = capacity(series, setup);
            }
            4 => {
                learned.trip = LogTrip::of(series, setup, &self.climate)?;
                learned.explained = learned.trip.as_ref().map(LogTrip::steady_at_night);
            }
            5 => learned.held = learned.trip.as_ref().and_then(|trip| trip.held(series)),
            6 => {
                learned.fit = learned.trip.as_ref().and_then(|trip| trip.fitted(series));
                learned.lacking = lacking(series, learned);
            }
            _ => return Ok(false),
        }
        self.step += 1;
        Ok(self.step <= 6)
    }

    /// What is known so far.
    #[must_use]
    pub fn learned(&self) -> &Learned {
        &self.learned
    }
}

fn lacking(series: &Series, learned: &Learned) -> Vec<Lacking> {
    let mut list = Vec::new();
    if learned.covered < SHORTEST {
        list.push(Lacking::TooShort(learned.covered));
    }
    let covered_frac = if learned.span.0 > 0.0 { learned.covered / learned.span } else { 0.0 };
    if covered_frac < COVERED_FRAC {
        list.push(Lacking::Gaps(1.0 - covered_frac));
    }
    let power = (0..series.samples.len()).any(|row| series.watts(row).is_some())
        || series.samples.iter().any(|sample| sample.used.is_some());
    if !power {
        list.push(Lacking::NoPower);
    } else if series.drawn.iter().all(Option::is_none) {
        list.push(Lacking::NeverDark);
    } else if series.step_s > COARSEST_S {
        list.push(Lacking::TooCoarse(Hours::from_seconds(series.step_s)));
    }
    if series.samples.iter().all(|sample| sample.soc_frac.is_none()) {
        list.push(Lacking::NoSoc);
    }
    list
}
