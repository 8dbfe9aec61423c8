//! What differs between chemistries, all for a 12 V block and scaled from there.
//!
//! | quantity | symbol | unit | source |
//! |---|---|---|---|
//! | open-circuit voltage over state of charge | `ocv_v` | V | middle of published tables, see [`super::open_circuit`] |
//! | resistance felt over an hour, ohmic and polarisation, per 100 Ah | `resistance` | Ohm | from memory: 4 mOhm ohmic for lead, and 0.3 to 0.6 V polarisation at 94 A |
//! | ohmic part alone, for short-circuit current, per 100 Ah | `ohmic` | Ohm | from memory |
//! | charge efficiency over state of charge | `charge_frac` | - | flooded: the middle of a band, see below; the others: usual bands, from memory |
//! | absorption time constant at 25 degrees Celsius | `taper` | h | analytic taper I = I0 exp(-t/tau); tau = 1 h gives the usual 4 to 6 h for the last fifth of lead-acid |
//! | most it takes in bulk, over capacity | `bulk_limit_c` | 1/h | common practice, no source |
//! | current at which it counts as full, over capacity | `end_of_charge_c` | 1/h | from memory: makers of lead-acid state 0.5 to 2 %, of LiFePO4 2 to 5 % |
//! | absorption voltage at 25 degrees Celsius, its change per kelvin | `absorption`, `absorption_v_per_k` | V, V/K | usual ranges, from memory |
//! | self-discharge in 30 days at 20 degrees Celsius | `self_discharge_month_frac` | - | usual ranges, from memory |
//! | kinetic model: share in the available well, rate constant | `available_frac`, `recovery_per_h` | -, 1/h | fitted to Peukert exponents of 1.25, 1.10, 1.15 and 1.02, see [`super::rate`] |

//!
//! How much charge a flooded battery stores of what is put in is told in two ways that disagree. Stevens
//! & Corey (25th IEEE PVSC 1996, numbers from memory) measured 91 % on average from empty to 84 %, but
//! 55 % from 79 to 84 % and less than half above 90 %: 1.5 Ah for each 1 Ah from half to nearly full.
//! Common practice (no source) puts in 1.1 to 1.2 Ah. A real off-grid system with such batteries returned
//! 62 % of its energy (published), which speaks for the steep end. The table lies between, at 1.3.

use crate::model::Chemistry;
use crate::units::{Hours, Ohms, Volts, Watts};

/// Number of points of the tables over state of charge: every 5 %.
pub const POINTS: usize = 21;

/// Everything that belongs to one chemistry, for a 12 V block.
#[derive(Clone, Copy, Debug)]
pub struct CellData {
    /// Rested voltage [V] at `soc = 0`, 5 %, .. 100 %.
    pub ocv_v: [f64; POINTS],
    /// Charge stored over charge put in, at the same points.
    pub charge_frac: [f64; POINTS],
    /// Resistance over an hour at 25 degrees Celsius, per 100 Ah.
    pub resistance: Ohms,
    /// Ohmic resistance alone, per 100 Ah.
    pub ohmic: Ohms,
    /// Time constant of the absorption taper at 25 degrees Celsius.
    pub taper: Hours,
    /// Most it takes in bulk, as a multiple of capacity per hour [1/h].
    pub bulk_limit_c: f64,
    /// Full once the current at the charge voltage has fallen to this multiple of capacity [1/h].
    pub end_of_charge_c: f64,
    /// Absorption voltage at 25 degrees Celsius.
    pub absorption: Volts,
    /// Float voltage at 25 degrees Celsius.
    pub float: Volts,
    /// Change of the charge voltages per kelvin [V/K].
    pub absorption_v_per_k: f64,
    /// Lost in 30 days at 20 degrees Celsius, as a share of capacity.
    pub self_discharge_month_frac: f64,
    /// Kinetic model: share of the charge in the available well, 0..1.
    pub available_frac: f64,
    /// Kinetic model: rate constant k' [1/h].
    pub recovery_per_h: f64,
    /// Draw of the management system.
    pub management: Watts,
    /// Continuous discharge a block of this kind bears with ease, multiple of capacity [1/h].
    pub discharge_limit_c: f64,
    /// Full cycles to the usual depth, low and high (from memory).
    pub cycles: (f64, f64),
}

/// Linear fill of a 21-point table from breakpoints `(soc, value)` in rising order.
const fn table<const N: usize>(points: [(f64, f64); N]) -> [f64; POINTS] {
    let mut out = [0.0; POINTS];
    let mut i = 0;
    while i < POINTS {
        let soc = i as f64 / (POINTS - 1) as f64;
        let mut j = 0;
        while j + 2 < N && soc > points[j + 1].0 {
            j += 1;
        }
        let (x0, y0) = points[j];
        let (x1, y1) = points[j + 1];
        out[i] = y0 + (y1 - y0) * (soc - x0) / (x1 - x0);
        i += 1;
    }
    out
}

static FLOODED: CellData = CellData {
    ocv_v: table([(0.0, 11.80), (0.25, 12.02), (0.5, 12.22), (0.75, 12.44), (1.0, 12.70)]),
    charge_frac: table([
        (0.0, 0.955),
        (0.75, 0.955),
        (0.80, 0.73),
        (0.85, 0.65),
        (0.90, 0.60),
        (1.0, 0.48),
    ]),
    resistance: Ohms(0.009),
    ohmic: Ohms(0.005),
    taper: Hours(1.0),
    bulk_limit_c: 0.20,
    end_of_charge_c: 0.005,
    absorption: Volts(14.6),
    float: Volts(13.5),
    absorption_v_per_k: -0.024,
    self_discharge_month_frac: 0.06,
    available_frac: 0.35,
    recovery_per_h: 0.9,
    management: Watts(0.0),
    discharge_limit_c: 0.25,
    cycles: (200.0, 400.0),
};

static AGM: CellData = CellData {
    ocv_v: table([(0.0, 11.65), (0.25, 11.95), (0.5, 12.24), (0.75, 12.53), (1.0, 12.85)]),
    charge_frac: table([(0.0, 0.985), (0.8, 0.985), (0.9, 0.93), (0.95, 0.88), (1.0, 0.80)]),
    resistance: Ohms(0.008),
    ohmic: Ohms(0.004),
    taper: Hours(1.0),
    bulk_limit_c: 0.30,
    end_of_charge_c: 0.005,
    absorption: Volts(14.5),
    float: Volts(13.6),
    absorption_v_per_k: -0.024,
    self_discharge_month_frac: 0.02,
    available_frac: 0.62,
    recovery_per_h: 1.2,
    management: Watts(0.0),
    discharge_limit_c: 0.5,
    cycles: (500.0, 700.0),
};

static GEL: CellData = CellData {
    ocv_v: table([(0.0, 11.70), (0.25, 12.0), (0.5, 12.28), (0.75, 12.58), (1.0, 12.85)]),
    charge_frac: table([(0.0, 0.97), (0.8, 0.97), (0.9, 0.90), (1.0, 0.78)]),
    resistance: Ohms(0.010),
    ohmic: Ohms(0.005),
    taper: Hours(1.1),
    bulk_limit_c: 0.20,
    end_of_charge_c: 0.005,
    absorption: Volts(14.2),
    float: Volts(13.7),
    absorption_v_per_k: -0.024,
    self_discharge_month_frac: 0.02,
    available_frac: 0.50,
    recovery_per_h: 1.1,
    management: Watts(0.0),
    discharge_limit_c: 0.25,
    cycles: (500.0, 800.0),
};

static LIFEPO4: CellData = CellData {
    ocv_v: table([
        (0.0, 10.0),
        (0.10, 12.5),
        (0.20, 12.85),
        (0.40, 13.13),
        (0.70, 13.25),
        (0.90, 13.33),
        (1.0, 13.6),
    ]),
    charge_frac: table([(0.0, 0.995), (1.0, 0.995)]),
    resistance: Ohms(0.003),
    ohmic: Ohms(0.002),
    taper: Hours(0.15),
    bulk_limit_c: 0.5,
    end_of_charge_c: 0.05,
    absorption: Volts(14.3),
    float: Volts(13.5),
    absorption_v_per_k: 0.0,
    self_discharge_month_frac: 0.02,
    available_frac: 0.95,
    recovery_per_h: 3.0,
    management: Watts(0.2),
    discharge_limit_c: 1.0,
    cycles: (2500.0, 6000.0),
};

/// Data of a chemistry.
#[must_use]
pub fn cell_data(chemistry: Chemistry) -> &'static CellData {
    match chemistry {
        Chemistry::Flooded => &FLOODED,
        Chemistry::Agm => &AGM,
        Chemistry::Gel => &GEL,
        Chemistry::LiFePo4 => &LIFEPO4,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn tables_pass_through_their_breakpoints() {
        let data = cell_data(Chemistry::LiFePo4);
        assert!((data.ocv_v[0] - 10.0).abs() < 1e-12);
        assert!((data.ocv_v[4] - 12.85).abs() < 1e-9);
        assert!((data.ocv_v[20] - 13.6).abs() < 1e-9);
    }

    #[test]
    fn voltage_rises_and_charge_efficiency_never_rises_with_charge() {
        for chemistry in Chemistry::ALL {
            let data = cell_data(chemistry);
            assert!(data.ocv_v.windows(2).all(|pair| pair[1] > pair[0]), "{chemistry:?}");
            assert!(data.charge_frac.windows(2).all(|pair| pair[1] <= pair[0] + 1e-12));
        }
    }
}
