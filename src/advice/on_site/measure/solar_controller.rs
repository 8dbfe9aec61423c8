//! The solar controller as an ammeter: its current with the device on less without.
//!
//! With a full battery the controller holds the voltage and delivers just what is drawn, so a
//! device adds its own current to the display. It does not while the battery takes all there is
//! (the display stays), nor when the device asks for more than the sun gives (the battery helps).

use super::{
    Accuracy, Field, MeasureError, MeasureWarning, Measured, Quantity, VOLTAGE_ERROR_FRAC, checked,
    digit_share, not_negative, positive, together,
};
use crate::model::Draw;
pub use crate::physics::battery::ChargeStage;
use crate::units::{Amps, Volts, Watts};

/// Readings of the controller's output.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ControllerReading {
    /// Device off, before.
    pub off_before: Amps,
    /// Device on.
    pub on: Amps,
    /// Device off again, after.
    pub off_after: Amps,
    /// Battery voltage meanwhile.
    pub voltage: Volts,
    /// Stage of charge that the controller shows.
    pub stage: ChargeStage,
    /// What the sun could deliver just then, see [`could_deliver`]; `None` if unknown.
    pub could: Option<Amps>,
}

/// What panels of `peak` could deliver at `voltage` under a share of full sun, 0..1, a quarter
/// lost to heat, angle and wires (common practice, no source).
///
/// # Errors
/// Peak not above 0, voltage not above 0, share outside 0..1.
pub fn could_deliver(peak: Watts, sun_frac: f64, voltage: Volts) -> Result<Amps, MeasureError> {
    positive(peak.0, Field::Sun)?;
    positive(voltage.0, Field::Voltage)?;
    if !(0.0..=1.0).contains(&sun_frac) {
        return Err(MeasureError::OutOfRange(Field::Sun));
    }
    Ok(peak * 0.75 * sun_frac / voltage)
}

/// A device's draw from the controller's current with it on and off.
///
/// In bulk, or with the controller within 5 % of what the sun could deliver, the result tells
/// nothing and its error is 1; within 20 % it is at least 0.3; in absorption at least 0.2 (own
/// estimates).
///
/// # Errors
/// Currents negative, voltage not above 0, or the current with the device on not above that
/// without: then the battery was not full or the sun too weak.
pub fn solar_controller(
    reading: ControllerReading,
    accuracy: Accuracy,
) -> Result<Measured, MeasureError> {
    for current in [reading.off_before, reading.off_after] {
        not_negative(current.0, Field::Current)?;
    }
    positive(reading.on.0, Field::Current)?;
    positive(reading.voltage.0, Field::Voltage)?;
    let accuracy = checked(accuracy)?;
    let draw = reading.on - (reading.off_before + reading.off_after) * 0.5;
    if draw.0 <= 0.0 {
        return Err(MeasureError::NoDifference { difference: draw.0 });
    }
    let mut warnings = Vec::new();
    let digit = digit_share(accuracy, draw.0, &mut warnings) * std::f64::consts::SQRT_2;
    let drift = 0.5 * ((reading.off_after - reading.off_before).abs() / draw);
    if drift > 0.1 {
        warnings.push(MeasureWarning::Drifted { share_frac: drift });
    }
    let mut least = 0.0f64;
    match reading.stage {
        ChargeStage::Bulk => {
            warnings.push(MeasureWarning::BatteryNotFull);
            least = 1.0;
        }
        ChargeStage::Absorption => {
            warnings.push(MeasureWarning::StillAbsorbing);
            least = 0.2;
        }
        ChargeStage::Float => {}
    }
    match reading.could {
        None => warnings.push(MeasureWarning::SunUnknown),
        Some(could) => {
            not_negative(could.0, Field::Sun)?;
            let on = reading.on;
            if on >= could * 0.8 {
                warnings.push(MeasureWarning::SunTooWeak { on, could });
                least = least.max(if on >= could * 0.95 { 1.0 } else { 0.3 });
            }
        }
    }
    let error = together(&[accuracy.gain_frac, digit, drift, VOLTAGE_ERROR_FRAC]).max(least);
    let found = Quantity::Draw(Draw::Current { amps: draw, volts: reading.voltage });
    Ok(Measured::new(found, error, warnings))
}
