//! Readings taken on site as points with their bands, beside the planned course.
//!
//! | reading | state of charge | band, about 95 % |
//! |---|---|---|
//! | battery monitor, state of charge | as read | 5 points either way: counters drift (common practice, no source) |
//! | battery monitor, charge since full | `1 - used / capacity with age` | 2 points and a tenth of what was used: the capacity is not known better (common practice, no source) |
//! | voltage | published tables | what the tables span, wider when not rested ([`soc_from_voltage`]) |
//!
//! Most of a monitor's band is shared by all its readings (where it thinks full is); from one
//! reading to the next it is right to about a point (common practice, no source). The fit takes
//! the shared part as an offset and weighs each reading by the rest, [`ReadPoint::sd_frac`].

pub mod fit;
pub mod measure;
pub mod tilt;
pub mod unknowns;

use crate::forecast::{Course, TripPlan};
use crate::model::{Reading, ReadingKind, Setup};
use crate::physics::battery::open_circuit::soc_from_voltage;
use crate::units::Hours;

/// Band of a monitor's state of charge.
const MONITOR_BAND_FRAC: f64 = 0.05;
/// Band of charge counted, with nothing used.
const COUNTED_BAND_FRAC: f64 = 0.02;
/// Band of charge counted, share of what was used.
const COUNTED_ERROR_FRAC: f64 = 0.1;

/// Standard deviation of a monitor from one reading to the next.
const MONITOR_SD_FRAC: f64 = 0.012;
/// The same for charge counted, share of what was used.
const COUNTED_SD_FRAC: f64 = 0.02;

/// A reading as a state of charge with its band.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ReadPoint {
    /// Place in the setup's log.
    pub index: usize,
    /// Time since arrival.
    pub at: Hours,
    /// Lowest, 0..1.
    pub low_frac: f64,
    /// Most likely, 0..1.
    pub likely_frac: f64,
    /// Highest, 0..1.
    pub high_frac: f64,
    /// Standard deviation against the other readings of its kind.
    pub sd_frac: f64,
    /// For a voltage: rested long enough for a table to apply. `None` for monitors.
    pub rested: Option<bool>,
}

impl ReadPoint {
    /// From one reading of a setup's log.
    #[must_use]
    pub fn of(setup: &Setup, index: usize, reading: &Reading) -> Self {
        let point = |likely: f64, band: f64, sd_frac: f64| {
            let likely = likely.clamp(0.0, 1.0);
            Self {
                index,
                at: reading.at,
                low_frac: (likely - band).clamp(0.0, 1.0),
                likely_frac: likely,
                high_frac: (likely + band).clamp(0.0, 1.0),
                sd_frac,
                rested: None,
            }
        };
        match reading.kind {
            ReadingKind::StateOfCharge { soc_frac } => {
                point(soc_frac, MONITOR_BAND_FRAC, MONITOR_SD_FRAC)
            }
            ReadingKind::Used { amp_hours } => {
                let capacity = setup.bank.aged_capacity().0.max(0.1);
                let used = (amp_hours.0 / capacity).clamp(0.0, 1.0);
                let band = COUNTED_BAND_FRAC + COUNTED_ERROR_FRAC * used;
                point(1.0 - used, band, MONITOR_SD_FRAC + COUNTED_SD_FRAC * used)
            }
            ReadingKind::Voltage { volts, rested } => {
                let bank = &setup.bank;
                let band = soc_from_voltage(bank.chemistry, bank.system, volts, rested);
                Self {
                    index,
                    at: reading.at,
                    low_frac: band.low_frac,
                    likely_frac: band.likely_frac,
                    high_frac: band.high_frac,
                    sd_frac: ((band.high_frac - band.low_frac) / 4.0).max(MONITOR_SD_FRAC),
                    rested: Some(band.rested),
                }
            }
        }
    }
}

/// All readings of a setup's log, in order of time.
#[must_use]
pub fn points(setup: &Setup) -> Vec<ReadPoint> {
    let mut points: Vec<ReadPoint> = setup
        .readings
        .iter()
        .enumerate()
        .map(|(index, reading)| ReadPoint::of(setup, index, reading))
        .filter(|point| point.at.is_finite() && point.at.0 >= 0.0)
        .collect();
    points.sort_by(|a, b| a.at.0.total_cmp(&b.at.0));
    points
}

/// State of charge of a course at a time since arrival, straight between the ends of hours;
/// `None` past its end.
#[must_use]
pub fn soc_at(plan: &TripPlan, course: &Course, at: Hours) -> Option<f64> {
    let index = at.0.max(0.0) as usize;
    let end = course.hours.get(index)?.soc_frac;
    let begin = match index.checked_sub(1) {
        Some(before) => course.hours.get(before)?.soc_frac,
        None => plan.start_soc_frac,
    };
    Some(begin + (end - begin) * (at.0.max(0.0) - index as f64))
}
