//! Copper cables: resistance, and the voltage they drop.
//!
//! - R(T) = R20 (1 + alpha (T - 20)), alpha = 0.00393 1/K for annealed copper (IEC 60028);
//! - dU = I * 2 L * R(T): the current flows out and back, so the loop is twice the length L;
//! - metric sizes: largest resistance at 20 degrees Celsius of class 5 plain copper, IEC 60228;
//! - wire gauge n: d = 0.127 mm * 92^((36 - n) / 39), ASTM B258, solid copper of
//!   17.241 Ohm mm2/km at 20 degrees Celsius;
//! - SAE gauge (SAE J378, J1128) names thinner wire than the same American wire gauge; its areas are in
//!   circular mils, the area of a round wire of one thousandth of an inch, 1 cmil = pi/4 (0.0254 mm)^2.

use crate::model::ConductorSize;
use crate::units::{Amps, Celsius, Metres, Ohms, SquareMillimetres, Volts};

/// Temperature coefficient of the resistance of copper at 20 degrees Celsius [1/K].
pub const COPPER_ALPHA_PER_K: f64 = 0.00393;
/// Resistivity of annealed copper at 20 degrees Celsius [Ohm mm2/km].
pub const COPPER_OHM_MM2_PER_KM: f64 = 17.241;
/// Area of a circular mil [mm2].
const MM2_PER_CIRCULAR_MIL: f64 = std::f64::consts::FRAC_PI_4 * 0.0254 * 0.0254;

/// IEC 60228 class 5, plain copper: cross-section [mm2] and largest resistance at 20 degrees
/// Celsius [Ohm/km].
pub const IEC_60228_CLASS_5: [(SquareMillimetres, f64); 18] = [
    (SquareMillimetres(0.5), 39.0),
    (SquareMillimetres(0.75), 26.0),
    (SquareMillimetres(1.0), 19.5),
    (SquareMillimetres(1.5), 13.3),
    (SquareMillimetres(2.5), 7.98),
    (SquareMillimetres(4.0), 4.95),
    (SquareMillimetres(6.0), 3.30),
    (SquareMillimetres(10.0), 1.91),
    (SquareMillimetres(16.0), 1.21),
    (SquareMillimetres(25.0), 0.780),
    (SquareMillimetres(35.0), 0.554),
    (SquareMillimetres(50.0), 0.386),
    (SquareMillimetres(70.0), 0.272),
    (SquareMillimetres(95.0), 0.206),
    (SquareMillimetres(120.0), 0.161),
    (SquareMillimetres(150.0), 0.129),
    (SquareMillimetres(185.0), 0.106),
    (SquareMillimetres(240.0), 0.0801),
];

/// Wire gauges as sold, thin to thick: 0 is 1/0, -3 is 4/0.
pub const GAUGES: [i8; 16] = [22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3];

/// SAE gauges and their least area [circular mils] (SAE J378/J1128; 12 and 8 as published, the
/// others from memory, checked only through the published cable table they reproduce).
const SAE_CIRCULAR_MILS: [(i8, f64); 14] = [
    (18, 1537.0),
    (16, 2336.0),
    (14, 3702.0),
    (12, 5833.0),
    (10, 9343.0),
    (8, 14_810.0),
    (6, 25_910.0),
    (4, 37_360.0),
    (2, 62_450.0),
    (1, 77_790.0),
    (0, 98_980.0),
    (-1, 125_100.0),
    (-2, 158_600.0),
    (-3, 205_500.0),
];

/// Resistance at `conductor` over resistance at 20 degrees Celsius. Meant for -40..200 degrees;
/// never below 0.
#[must_use]
pub fn temperature_ratio(conductor: Celsius) -> f64 {
    (1.0 + COPPER_ALPHA_PER_K * (conductor.0 - 20.0)).max(0.0)
}

/// Cross-section of an American wire gauge, ASTM B258.
#[must_use]
pub fn awg_area(gauge: i8) -> SquareMillimetres {
    let diameter_mm = 0.127 * 92f64.powf((36.0 - f64::from(gauge)) / 39.0);
    SquareMillimetres(std::f64::consts::FRAC_PI_4 * diameter_mm * diameter_mm)
}

/// Least cross-section of the SAE gauge of this number; `None` for a number not in the table.
#[must_use]
pub fn sae_area(gauge: i8) -> Option<SquareMillimetres> {
    SAE_CIRCULAR_MILS
        .iter()
        .find(|(number, _)| *number == gauge)
        .map(|(_, mils)| SquareMillimetres(mils * MM2_PER_CIRCULAR_MIL))
}

/// Cross-section of a conductor.
#[must_use]
pub fn area(size: ConductorSize) -> SquareMillimetres {
    match size {
        ConductorSize::Metric { area } => area,
        ConductorSize::Awg { gauge } => awg_area(gauge),
    }
}

/// Resistance at 20 degrees Celsius of one conductor [Ohm/km].
///
/// Metric sizes between two of the table run straight on logarithmic scales; outside the table
/// resistance times area stays that of the nearest end. An area of 0 or less has infinite
/// resistance.
#[must_use]
pub fn ohm_per_km_at_20c(size: ConductorSize) -> f64 {
    match size {
        ConductorSize::Awg { gauge } => COPPER_OHM_MM2_PER_KM / awg_area(gauge).0,
        ConductorSize::Metric { area } => metric_ohm_per_km(area),
    }
}

fn metric_ohm_per_km(area: SquareMillimetres) -> f64 {
    if area.0.is_nan() || area.0 <= 0.0 {
        return f64::INFINITY;
    }
    let mut below: Option<(f64, f64)> = None;
    for &(size, ohm) in &IEC_60228_CLASS_5 {
        if area.0 == size.0 {
            return ohm;
        }
        if area.0 < size.0 {
            return match below {
                None => ohm * size.0 / area.0,
                Some((thin, thin_ohm)) => {
                    let share = (area.0 / thin).ln() / (size.0 / thin).ln();
                    thin_ohm * (ohm / thin_ohm).powf(share)
                }
            };
        }
        below = Some((size.0, ohm));
    }
    below.map_or(f64::INFINITY, |(thick, ohm)| ohm * thick / area.0)
}

/// Resistance out and back of a cable of the one-way length `length`, at conductor temperature
/// `conductor`.
#[must_use]
pub fn loop_resistance(size: ConductorSize, length: Metres, conductor: Celsius) -> Ohms {
    let km = 2.0 * length.0.max(0.0) / 1000.0;
    Ohms(ohm_per_km_at_20c(size) * km * temperature_ratio(conductor))
}

/// Voltage lost out and back.
#[must_use]
pub fn voltage_drop(
    size: ConductorSize,
    length: Metres,
    current: Amps,
    conductor: Celsius,
) -> Volts {
    loop_resistance(size, length, conductor) * current
}

/// Resistance of copper, both ways, at 20 degrees Celsius [Ohm].
///
/// R = 2 L rho / A with rho = 0.0195 Ohm mm2/m, class 5 copper (IEC 60228: 1 mm2 has at most
/// 19.5 Ohm/km).
#[must_use]
pub fn copper_loop(length: Metres, size: SquareMillimetres) -> Ohms {
    if size.0 > 0.0 { Ohms(2.0 * length.0 * 0.0195 / size.0) } else { Ohms::ZERO }
}
