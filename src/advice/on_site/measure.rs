//! The measuring bench: readings become a load's draw, with how far it may be off.
//!
//! Errors. Every part is a share of the result and counts as one likely error; independent parts
//! add as the root of the sum of squares:
//! - gain of the instrument, as a share of the reading;
//! - resolution: half of the last digit, over the reading; a difference of two readings counts it
//!   twice;
//! - voltage, where a current is turned into power: as stated with the reading;
//! - what drifted meanwhile (sun, other loads), as found by reading before and after;
//! - the time watched, where a thermostat's cycles were cut off at the edges.
//!
//! Every reading is of one appliance. Results carry warnings where the conditions make them
//! doubtful, and errors where they cannot be true.

mod fridge_runs;
mod outcome;
mod solar_controller;

pub use fridge_runs::{FridgeRuns, fridge_runs};
pub use outcome::{Field, MeasureError, MeasureWarning, Measured, Quantity};
pub use solar_controller::{ChargeStage, ControllerReading, could_deliver, solar_controller};

use crate::model::{Draw, Inverter};
use crate::physics::inverter::InverterCurve;
use crate::units::{AmpHours, Amps, HOURS_PER_DAY, Hours, Volts, WattHours, Watts};

/// Likely error of a voltage read along with a current, as a share.
pub const VOLTAGE_ERROR_FRAC: f64 = 0.01;
/// Likely error of the inverter curve made from two figures, as a share of the battery side.
pub const INVERTER_CURVE_ERROR_FRAC: f64 = 0.03;
/// Most a multimeter's current input carries.
pub const MULTIMETER_LIMIT: Amps = Amps(10.0);

/// Least and most any reading can sensibly be, whatever its unit; keeps every result finite.
const SENSIBLE_MIN: f64 = 1e-6;
const SENSIBLE_MAX: f64 = 1e6;

/// How good an instrument is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Accuracy {
    /// Likely error as a share of the reading, 0..1.
    pub gain_frac: f64,
    /// Last digit, or the drift of its zero, in the unit of the reading.
    pub resolution: f64,
}

/// Instruments commonly at hand, and what to expect of them (common practice, no source).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Instrument {
    /// Multimeter in series, its 10 A input.
    Multimeter,
    /// Clamp meter for direct current, zeroed before.
    Clamp,
    /// Power meter in series, or a plug-in one for mains.
    PowerMeter,
    /// Battery monitor with a shunt.
    ShuntMonitor,
    /// Display of a solar controller.
    SolarController,
}

impl Instrument {
    /// Usual accuracy, in amperes, or in watts for the power meter.
    #[must_use]
    pub fn usual(self) -> Accuracy {
        let (gain_frac, resolution) = match self {
            Self::Multimeter => (0.015, 0.01),
            Self::Clamp => (0.03, 0.1),
            Self::PowerMeter => (0.02, 0.5),
            Self::ShuntMonitor => (0.01, 0.1),
            Self::SolarController => (0.03, 0.1),
        };
        Accuracy { gain_frac, resolution }
    }
}

/// Root of the sum of squares.
fn together(parts: &[f64]) -> f64 {
    parts.iter().map(|part| part * part).sum::<f64>().sqrt()
}

fn positive(value: f64, field: Field) -> Result<f64, MeasureError> {
    if value <= 0.0 {
        Err(MeasureError::NotPositive(field))
    } else if !(SENSIBLE_MIN..=SENSIBLE_MAX).contains(&value) {
        Err(MeasureError::OutOfRange(field))
    } else {
        Ok(value)
    }
}

fn not_negative(value: f64, field: Field) -> Result<f64, MeasureError> {
    if value == 0.0 { Ok(0.0) } else { positive(value, field) }
}

fn checked(accuracy: Accuracy) -> Result<Accuracy, MeasureError> {
    let sound = (0.0..=1.0).contains(&accuracy.gain_frac)
        && accuracy.resolution.is_finite()
        && accuracy.resolution >= 0.0;
    if sound { Ok(accuracy) } else { Err(MeasureError::OutOfRange(Field::Accuracy)) }
}

/// Half of the last digit over the reading, with a warning where it is coarse.
fn digit_share(accuracy: Accuracy, reading: f64, warnings: &mut Vec<MeasureWarning>) -> f64 {
    let share_frac = 0.5 * accuracy.resolution / reading;
    if share_frac > 0.05 {
        warnings.push(MeasureWarning::CoarseReading { share_frac });
    }
    share_frac
}

/// A current read in series or with a clamp, at a voltage.
///
/// # Errors
/// Current or voltage not above 0, accuracy not within bounds.
pub fn series_current(
    current: Amps,
    voltage: Volts,
    instrument: Instrument,
    accuracy: Accuracy,
) -> Result<Measured, MeasureError> {
    positive(current.0, Field::Current)?;
    positive(voltage.0, Field::Voltage)?;
    let accuracy = checked(accuracy)?;
    let mut warnings = Vec::new();
    let digit = digit_share(accuracy, current.0, &mut warnings);
    if instrument == Instrument::Multimeter && current > MULTIMETER_LIMIT {
        warnings.push(MeasureWarning::AboveMultimeter { current });
    }
    let error = together(&[accuracy.gain_frac, digit, VOLTAGE_ERROR_FRAC]);
    let found = Quantity::Draw(Draw::Current { amps: current, volts: voltage });
    Ok(Measured::new(found, error, warnings))
}

/// A power read on a meter in series.
///
/// # Errors
/// Power not above 0, accuracy not within bounds.
pub fn series_power(power: Watts, accuracy: Accuracy) -> Result<Measured, MeasureError> {
    positive(power.0, Field::Power)?;
    let accuracy = checked(accuracy)?;
    let mut warnings = Vec::new();
    let digit = digit_share(accuracy, power.0, &mut warnings);
    let found = Quantity::Draw(Draw::Power { watts: power });
    Ok(Measured::new(found, together(&[accuracy.gain_frac, digit]), warnings))
}

/// A mains meter between inverter and appliance: the draw on the mains side, and what the battery
/// gives for it by the inverter's loss curve, idle draw included.
///
/// # Errors
/// Power not above 0, accuracy not within bounds.
pub fn behind_inverter(
    power: Watts,
    inverter: &Inverter,
    sine: bool,
    accuracy: Accuracy,
) -> Result<Measured, MeasureError> {
    let mut measured = series_power(power, accuracy)?;
    measured.battery_side = Some(InverterCurve::of(inverter).dc_power(power));
    let mut parts = vec![measured.plus_minus_frac, INVERTER_CURVE_ERROR_FRAC];
    if !sine {
        measured.warnings.push(MeasureWarning::NotASine);
        parts.push(0.10);
    }
    measured.plus_minus_frac = together(&parts).min(1.0);
    Ok(measured)
}

/// What was on while energy or charge was counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Running {
    /// It ran all the time: the mean is its draw.
    Throughout,
    /// It came and went as usual: the count is part of a day.
    AsUsual,
}

/// An energy counted over a time.
///
/// [`Running::AsUsual`] over less than a day adds an error of 0.3 of the part of the day not
/// watched (own estimate).
///
/// # Errors
/// Energy or time not above 0, accuracy (in Wh) not within bounds.
pub fn energy_over_time(
    energy: WattHours,
    elapsed: Hours,
    running: Running,
    accuracy: Accuracy,
) -> Result<Measured, MeasureError> {
    positive(energy.0, Field::Energy)?;
    positive(elapsed.0, Field::Elapsed)?;
    let accuracy = checked(accuracy)?;
    let mut warnings = Vec::new();
    let digit = digit_share(accuracy, energy.0, &mut warnings);
    let mean = energy / elapsed;
    let mut parts = vec![accuracy.gain_frac, digit];
    let found = match running {
        Running::Throughout => Quantity::Draw(Draw::Power { watts: mean }),
        Running::AsUsual => {
            parts.push(unwatched(elapsed, &mut warnings));
            Quantity::PerDay(mean * Hours(HOURS_PER_DAY))
        }
    };
    Ok(Measured::new(found, together(&parts), warnings))
}

fn unwatched(elapsed: Hours, warnings: &mut Vec<MeasureWarning>) -> f64 {
    let missing = 1.0 - (elapsed.0 / HOURS_PER_DAY).min(1.0);
    if missing > 0.01 {
        warnings.push(MeasureWarning::LessThanADay { watched: elapsed });
    }
    0.3 * missing
}

/// Charge a battery monitor counted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MonitorReading {
    /// Taken out since full, before.
    pub before: AmpHours,
    /// Taken out since full, after.
    pub after: AmpHours,
    /// Mean voltage meanwhile.
    pub voltage: Volts,
    /// Time between.
    pub elapsed: Hours,
    /// What else drew meanwhile.
    pub background: Amps,
    /// Sun, engine or mains charged meanwhile.
    pub charged: bool,
    /// How the device ran.
    pub running: Running,
}

/// A battery monitor read before and after.
///
/// # Errors
/// After not above before, voltage or time not above 0, or the background alone explains it.
pub fn battery_monitor(
    reading: MonitorReading,
    accuracy: Accuracy,
) -> Result<Measured, MeasureError> {
    for charge in [reading.before, reading.after] {
        not_negative(charge.0, Field::Charge)?;
    }
    positive(reading.voltage.0, Field::Voltage)?;
    positive(reading.elapsed.0, Field::Elapsed)?;
    not_negative(reading.background.0, Field::Background)?;
    let accuracy = checked(accuracy)?;
    let gone = reading.after - reading.before;
    if gone.0 <= 0.0 {
        return Err(MeasureError::NoDifference { difference: gone.0 });
    }
    let others = reading.background * reading.elapsed;
    let own = gone - others;
    if own.0 <= 0.0 {
        let background = others * reading.voltage;
        return Err(MeasureError::BackgroundExplainsAll {
            background,
            read: gone * reading.voltage,
        });
    }
    let mut warnings = Vec::new();
    // Two readings, and the background known to a tenth.
    let digit = digit_share(accuracy, own.0, &mut warnings) * std::f64::consts::SQRT_2;
    let gain = accuracy.gain_frac * (gone / own);
    let mut parts = vec![gain, digit, 0.1 * (others / own), VOLTAGE_ERROR_FRAC];
    let mean = own / reading.elapsed;
    if mean.0 < 0.1 {
        warnings.push(MeasureWarning::BelowMonitorThreshold { current: mean });
        parts.push(0.3);
    }
    if reading.charged {
        warnings.push(MeasureWarning::ChargedMeanwhile);
        parts.push(1.0);
    }
    let found = match reading.running {
        Running::Throughout => Quantity::Draw(Draw::Current { amps: mean, volts: reading.voltage }),
        Running::AsUsual => {
            parts.push(unwatched(reading.elapsed, &mut warnings));
            Quantity::PerDay(mean * reading.voltage * Hours(HOURS_PER_DAY))
        }
    };
    Ok(Measured::new(found, together(&parts), warnings))
}
