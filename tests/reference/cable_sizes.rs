//! Ways of sizing cable that the page does not use, to compare its areas and resistances with.
//!
//! The boat builders' circular-mil method needs CM = K I L / E, K = 10.75 Ohm cmil/ft, L out and back
//! [ft], E drop [V]. K belongs to copper at about 29 degrees Celsius.

use nightbank::physics::cable::{GAUGES, awg_area, sae_area};
use nightbank::units::{Amps, Celsius, Metres, SquareMillimetres, Volts};

/// Ohm circular mils per foot.
const K: f64 = 10.75;
/// Area of a round wire of one thousandth of an inch [mm2].
const MM2_PER_CIRCULAR_MIL: f64 = std::f64::consts::FRAC_PI_4 * 0.0254 * 0.0254;

/// Factor of IEC 60228 that refers a resistance measured at `conductor` back to 20 degrees
/// Celsius: 1 / (1 + 0.004 (T - 20)).
pub fn iec_factor_to_20c(conductor: Celsius) -> f64 {
    1.0 / (1.0 + 0.004 * (conductor.0 - 20.0))
}

/// An area in circular mils.
pub fn circular_mils(area: SquareMillimetres) -> f64 {
    area.0 / MM2_PER_CIRCULAR_MIL
}

/// Area needed, CM = K I L / E [circular mils]; `circuit` is the length out and back.
pub fn circular_mils_needed(current: Amps, circuit: Metres, allowed: Volts) -> f64 {
    K * current.0 * (circuit.0 / 0.3048) / allowed.0
}

/// Thinnest SAE gauge whose area on the page has at least so many circular mils.
pub fn smallest_sae(needed: f64) -> Option<i8> {
    let reaches = |gauge: i8| sae_area(gauge).is_some_and(|area| circular_mils(area) >= needed);
    GAUGES.into_iter().find(|&gauge| reaches(gauge))
}

/// Thinnest American wire gauge whose area on the page has at least so many circular mils.
pub fn smallest_awg(needed: f64) -> Option<i8> {
    GAUGES.into_iter().find(|&gauge| circular_mils(awg_area(gauge)) >= needed)
}
