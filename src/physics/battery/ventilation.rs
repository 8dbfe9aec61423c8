//! Fresh air that a charging lead-acid battery asks for, so that its hydrogen stays far below the
//! 4 % at which it explodes.
//!
//! ```text
//! Q = 0.05 n Igas C / 1000      air [m3/h], n cells in series, Igas [mA/Ah], C at the 20 h rate [Ah]
//! A = 28 Q                      area of each of two openings, low and high [cm2]
//! ```
//! EN 50272-2 / IEC 62485-2 (formulas as published; the gassing currents in boost charge, 20 mA/Ah
//! flooded and 8 mA/Ah sealed, from memory). The standard counts the capacity at the 10 h rate,
//! which is smaller: what comes out here is on the safe side. It is written for stationary
//! batteries; the maker's manual and the rules for vehicles come first.

use crate::model::{Bank, Chemistry};
use crate::units::AmpHours;

/// Air and openings.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ventilation {
    /// Fresh air while charging at the absorption voltage [m3/h].
    pub air_m3_per_h: f64,
    /// Free area of the opening below, and of the one above [cm2].
    pub opening_cm2: f64,
}

/// Gassing current in boost charge [mA/Ah]; `None` where there is no gas to speak of.
fn gassing_ma_per_ah(chemistry: Chemistry) -> Option<f64> {
    match chemistry {
        Chemistry::Flooded => Some(20.0),
        Chemistry::Agm | Chemistry::Gel => Some(8.0),
        Chemistry::LiFePo4 => None,
    }
}

/// For `cells` in series of a capacity [Ah at the 20 h rate]; `None` for lithium.
#[must_use]
pub fn ventilation(chemistry: Chemistry, cells: u16, capacity: AmpHours) -> Option<Ventilation> {
    let gassing_ma_per_ah = gassing_ma_per_ah(chemistry)?;
    let air_m3_per_h = 0.05 * f64::from(cells) * gassing_ma_per_ah * capacity.0.max(0.0) / 1000.0;
    Some(Ventilation { air_m3_per_h, opening_cm2: 28.0 * air_m3_per_h })
}

/// For a whole bank: six cells for every 12 V.
#[must_use]
pub fn ventilation_of(bank: &Bank) -> Option<Ventilation> {
    let cells = (6.0 * bank.system.series_12v()).round() as u16;
    ventilation(bank.chemistry, cells, bank.rated_capacity())
}
