//! Rested voltage and state of charge, both ways.
//!
//! Energy held between empty and `q` is the integral of voltage over charge,
//! `E(q) = C int_0^{q/C} V(s) ds`, exact for the piecewise linear `V(s)` used here; the balance of
//! every step closes against it.
//!
//! Published tables of rested voltage against state of charge disagree: at 12.5 V they say 65, 75
//! or 80 %. A voltage therefore reads as a band, never as one figure, and a wider one when the
//! battery has not rested.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `s` | state of charge | - |
//! | `C` | charge between empty and full | Ah |
//! | `V(s)` | rested voltage | V |
//! | `E(q)` | energy held | Wh |

use super::chemistry::{POINTS, cell_data};
use crate::model::{Chemistry, SystemVoltage};
use crate::units::{AmpHours, Hours, Volts, WattHours};

const SEGMENTS: usize = POINTS - 1;

/// Rested voltage curve of a whole bank with the energy under it.
#[derive(Clone, Debug)]
pub struct OpenCircuit {
    volts: [f64; POINTS],
    /// Integral of voltage over state of charge up to each point [V].
    under: [f64; POINTS],
    capacity_ah: f64,
}

impl OpenCircuit {
    /// For a bank of `capacity` (25 degrees Celsius, with its age) at the system voltage.
    #[must_use]
    pub fn new(chemistry: Chemistry, system: SystemVoltage, capacity: AmpHours) -> Self {
        let volts = cell_data(chemistry).ocv_v.map(|v| v * system.series_12v());
        let mut under = [0.0; POINTS];
        for i in 1..POINTS {
            under[i] = under[i - 1] + 0.5 * (volts[i - 1] + volts[i]) / SEGMENTS as f64;
        }
        Self { volts, under, capacity_ah: capacity.0 }
    }

    /// Segment and position within it, 0..1.
    #[inline]
    fn place(soc_frac: f64) -> (usize, f64) {
        let x = soc_frac.clamp(0.0, 1.0) * SEGMENTS as f64;
        let segment = (x as usize).min(SEGMENTS - 1);
        (segment, x - segment as f64)
    }

    /// Rested voltage at a state of charge.
    #[inline]
    #[must_use]
    pub fn volts(&self, soc_frac: f64) -> Volts {
        let (i, t) = Self::place(soc_frac);
        Volts(self.volts[i] + (self.volts[i + 1] - self.volts[i]) * t)
    }

    /// Energy held between empty and this state of charge.
    #[inline]
    #[must_use]
    pub fn energy(&self, soc_frac: f64) -> WattHours {
        let (i, t) = Self::place(soc_frac);
        let slope = self.volts[i + 1] - self.volts[i];
        let part = (self.volts[i] + 0.5 * slope * t) * t / SEGMENTS as f64;
        WattHours((self.under[i] + part) * self.capacity_ah)
    }
}

/// A state of charge read off a voltage: most likely value and the band published tables span.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SocBand {
    /// Lowest, 0..1.
    pub low_frac: f64,
    /// Most likely, 0..1.
    pub likely_frac: f64,
    /// Highest, 0..1.
    pub high_frac: f64,
    /// Rested long enough for a table to apply at all.
    pub rested: bool,
}

/// Published tables for a 12 V block, `(V, soc)` rising; see the domain's sources: two rules for
/// flooded (full-charge points published, middle from memory), two published pages each for AGM
/// and LiFePO4, gel 0.1 V above the first AGM page (from memory).
const FLOODED_TABLES: [&[(f64, f64)]; 2] = [
    &[(11.8, 0.0), (12.01, 0.25), (12.22, 0.5), (12.50, 0.8), (12.73, 1.0)],
    &[(11.6, 0.0), (12.0, 0.25), (12.2, 0.5), (12.4, 0.75), (12.6, 1.0)],
];
const AGM_TABLES: [&[(f64, f64)]; 2] = [
    &[(11.5, 0.0), (11.7, 0.2), (12.1, 0.5), (12.5, 0.8), (12.7, 1.0)],
    &[(11.9, 0.0), (12.1, 0.25), (12.35, 0.5), (12.60, 0.75), (13.2, 1.0)],
];
const GEL_TABLES: [&[(f64, f64)]; 2] = [
    &[(11.6, 0.0), (11.8, 0.2), (12.2, 0.5), (12.6, 0.8), (12.8, 1.0)],
    &[(11.8, 0.0), (12.05, 0.25), (12.35, 0.5), (12.65, 0.75), (13.0, 1.0)],
];
const LIFEPO4_TABLES: [&[(f64, f64)]; 2] = [
    &[(10.0, 0.0), (12.8, 0.2), (13.2, 0.4), (13.3, 0.7), (13.6, 0.99)],
    &[(10.0, 0.0), (12.85, 0.225), (13.1, 0.5), (13.2, 0.8), (13.6, 0.95)],
];

/// Hours without load or charge after which a table applies; sources say 2 to 24 h.
pub const RESTED: Hours = Hours(4.0);

/// Error of a digital voltmeter as a share of the reading, about 25 mV at 12 V (common practice, no
/// source; a poor one may be 1 % off, 120 mV).
const METER_ERROR_FRAC: f64 = 0.002;
/// What an unrested battery may still be away from rest, per 12 V [V].
const UNRESTED_V: f64 = 0.25;

fn invert(table: &[(f64, f64)], volts: f64) -> f64 {
    let (Some(first), Some(last)) = (table.first(), table.last()) else { return 0.5 };
    if volts <= first.0 {
        return first.1;
    }
    if volts >= last.0 {
        return last.1;
    }
    table.windows(2).find(|pair| volts <= pair[1].0).map_or(last.1, |pair| {
        let t = (volts - pair[0].0) / (pair[1].0 - pair[0].0);
        pair[0].1 + t * (pair[1].1 - pair[0].1)
    })
}

/// State of charge from a voltage of the whole bank after `rested` without load or charge.
///
/// The band spans the published tables and a good meter's error (0.2 %), and 0.25 V more per 12 V
/// where the battery has not rested. For LiFePO4 the band is wide between 20 and 90 % by nature:
/// the voltage hardly moves there.
#[must_use]
pub fn soc_from_voltage(
    chemistry: Chemistry,
    system: SystemVoltage,
    volts: Volts,
    rested: Hours,
) -> SocBand {
    let tables = match chemistry {
        Chemistry::Flooded => &FLOODED_TABLES,
        Chemistry::Agm => &AGM_TABLES,
        Chemistry::Gel => &GEL_TABLES,
        Chemistry::LiFePo4 => &LIFEPO4_TABLES,
    };
    let block = volts.0 / system.series_12v();
    let is_rested = rested.0 >= RESTED.0;
    let slack = block * METER_ERROR_FRAC + if is_rested { 0.0 } else { UNRESTED_V };
    let read = |v: f64| tables.iter().map(move |table| invert(table, v));
    let likely_frac = read(block).sum::<f64>() / tables.len() as f64;
    let low_frac = read(block - slack).fold(1.0, f64::min);
    let high_frac = read(block + slack).fold(0.0, f64::max);
    SocBand { low_frac, likely_frac, high_frac, rested: is_rested }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn energy_is_the_integral_of_voltage() {
        let curve = OpenCircuit::new(Chemistry::Agm, SystemVoltage::V12, AmpHours(100.0));
        let n = 100_000;
        let sum: f64 = (0..n)
            .map(|i| curve.volts(0.2 + 0.6 * (f64::from(i) + 0.5) / f64::from(n)).0)
            .sum::<f64>()
            * 60.0
            / f64::from(n);
        let exact = curve.energy(0.8) - curve.energy(0.2);
        assert!((sum - exact.0).abs() < 1e-6, "{sum} {}", exact.0);
    }

    #[test]
    fn twelve_and_a_half_volts_means_65_to_80_percent() {
        // Published tables say 65, 75 and 80 % at 12.5 V.
        let band = soc_from_voltage(Chemistry::Agm, SystemVoltage::V12, Volts(12.5), Hours(8.0));
        assert!(band.low_frac <= 0.65 && band.high_frac >= 0.80, "{band:?}");
        assert!(band.likely_frac > 0.65 && band.likely_frac < 0.80);
        let flooded =
            soc_from_voltage(Chemistry::Flooded, SystemVoltage::V12, Volts(12.5), Hours(8.0));
        assert!(flooded.low_frac <= 0.80 && flooded.high_frac >= 0.80, "{flooded:?}");
    }

    #[test]
    fn lithium_voltage_says_little_in_the_middle() {
        // Published: 13.2 V is 40 % on one page and 80 % on another.
        let band =
            soc_from_voltage(Chemistry::LiFePo4, SystemVoltage::V12, Volts(13.2), Hours(8.0));
        assert!(band.low_frac <= 0.41 && band.high_frac >= 0.79, "{band:?}");
    }

    #[test]
    fn an_unrested_reading_is_a_wider_band() {
        let at = |rested| {
            soc_from_voltage(Chemistry::Agm, SystemVoltage::V24, Volts(24.8), Hours(rested))
        };
        let (fresh, rested) = (at(0.1), at(12.0));
        assert!(!fresh.rested && rested.rested);
        assert!(fresh.high_frac - fresh.low_frac > rested.high_frac - rested.low_frac + 0.1);
    }
}
