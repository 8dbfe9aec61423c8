//! A fridge watched for a while: share of the time running, carried to 25 degrees Celsius.
//!
//! duty = time run / time watched. Where watching begins and ends inside a cycle, at most half of
//! a run is missed or counted too much: 1 / (2 n) for n cycles. The air temperature enters through
//! the slope of [`crate::physics::fridge::relative_duty`].

use super::{
    Field, MeasureError, MeasureWarning, Measured, Quantity, not_negative, positive, together,
};
use crate::physics::fridge;
use crate::units::{Celsius, Hours};

/// Air temperature below which a fridge tells nothing about 25 degrees Celsius.
pub const COLDEST: Celsius = Celsius(10.0);
/// Doors, food put in, and cold nights meanwhile, as a likely error (common practice, no source).
const HABITS_ERROR_FRAC: f64 = 0.08;

/// What was watched.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FridgeRuns {
    /// Time the compressor ran, all runs together.
    pub ran: Hours,
    /// Time watched, runs and pauses.
    pub watched: Hours,
    /// Runs counted.
    pub cycles: u32,
    /// Air around the fridge, mean.
    pub air: Celsius,
    /// Likely error of the air temperature, in kelvins.
    pub air_error_k: f64,
}

/// Share of the time a fridge runs, from its runs at a known air temperature.
///
/// # Errors
/// Times not above 0, run longer than watched, no run counted, air below 10 degrees Celsius or
/// above 60.
pub fn fridge_runs(seen: FridgeRuns) -> Result<Measured, MeasureError> {
    positive(seen.ran.0, Field::Ran)?;
    positive(seen.watched.0, Field::Elapsed)?;
    not_negative(seen.air_error_k, Field::Air)?;
    if seen.cycles == 0 {
        return Err(MeasureError::NotPositive(Field::Ran));
    }
    if !seen.air.is_finite() || seen.air.0 > 60.0 || seen.air_error_k > 30.0 {
        return Err(MeasureError::OutOfRange(Field::Air));
    }
    if seen.ran > seen.watched {
        return Err(MeasureError::RanLongerThanWatched { ran: seen.ran, watched: seen.watched });
    }
    let seen_frac = seen.ran / seen.watched;
    let too_cold = MeasureError::AirTooCold { air: seen.air };
    if seen.air < COLDEST {
        return Err(too_cold);
    }
    let frac_at_25c = fridge::duty_at_25c_from(seen_frac, seen.air).ok_or(too_cold)?;
    let mut warnings = Vec::new();
    let mut edge = 0.5 / f64::from(seen.cycles);
    if seen_frac > 0.98 {
        warnings.push(MeasureWarning::NeverStopped);
        edge = edge.max(0.3);
    } else if seen.cycles < 3 {
        warnings.push(MeasureWarning::FewCycles { cycles: seen.cycles });
    }
    if seen.watched < Hours(23.5) {
        warnings.push(MeasureWarning::LessThanADay { watched: seen.watched });
    }
    let spread = Celsius(seen.air_error_k);
    let slope = fridge::relative_duty(seen.air + spread) - fridge::relative_duty(seen.air - spread);
    let air = 0.5 * slope / fridge::relative_duty(seen.air);
    let error = together(&[edge, air, HABITS_ERROR_FRAC]);
    Ok(Measured::new(Quantity::Duty { seen_frac, frac_at_25c }, error, warnings))
}
