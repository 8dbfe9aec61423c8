//! Capacity in use, from the charge counted while the state of charge falls.
//!
//! Within one discharge the state of charge falls by the charge counted over the capacity, `soc = a - Q/C`.
//! Straight lines of one slope and an own start for each discharge, through means of a quarter of an hour each,
//! by least squares:
//!
//! ```text
//! 1/C = - sum (Q - mean Q)(soc - mean soc) / sum (Q - mean Q)^2
//! ```
//!
//! Charging is left out: what of its charge stays is not known. A monitor that counts with a capacity typed in
//! shows that capacity, so the figure is compared with the label, not taken for a test of the cells.
//!
//! Without states of charge, a discharge that begins full and ends with a rested, low voltage tells the same
//! over one span; the band of [`soc_from_voltage`] is its error.

use super::series::Series;
use crate::model::Setup;
use crate::physics::battery::open_circuit::soc_from_voltage;
use crate::units::{AmpHours, Hours, Volts};

/// Rows are averaged over this time [s].
const BLOCK_S: f64 = 900.0;
/// Least swing of the state of charge.
pub const LEAST_SWING_FRAC: f64 = 0.3;
/// Least swing of one discharge that counts.
const RUN_SWING_FRAC: f64 = 0.03;
/// Error of a shunt's gain (common practice, no source).
const SHUNT_FRAC: f64 = 0.01;
/// Error of a monitor's state of charge from one to the next, see [`crate::advice::on_site`].
const SOC_SD_FRAC: f64 = 0.012;
/// Currents below this share of the capacity an hour let a battery rest.
const RESTING_C: f64 = 0.005;
/// Largest likely error that is still told.
const TELLABLE_FRAC: f64 = 0.15;

/// How the capacity was learned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CapacityWay {
    /// Charge counted between states of charge.
    BetweenStates,
    /// From full to a low rested voltage.
    RestedVoltage,
}

/// Capacity in use.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CapacityFound {
    /// Of the whole bank.
    pub capacity: AmpHours,
    /// Likely error, one standard deviation, as a share.
    pub error_frac: f64,
    /// Largest fall of the state of charge it comes from, 0..1.
    pub swing_frac: f64,
    /// How.
    pub way: CapacityWay,
}

/// Why the capacity cannot be told.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CapacityMissing {
    /// No current or power of the battery.
    NoCurrent,
    /// Neither states of charge nor a rested low voltage after a full battery.
    NoState,
    /// The state of charge moved too little: the swing seen, 0..1.
    SmallSwing(f64),
    /// The columns do not go together: the charge counted and the states of charge contradict each other.
    Contradicts,
}

#[derive(Clone, Copy)]
struct Block {
    /// Charge taken out since the start of the stretch [Ah].
    out_ah: f64,
    soc_frac: f64,
    amps: f64,
    volts: Option<f64>,
}

/// Means of quarter hours of one stretch; charge counted along.
fn blocks(series: &Series, rows: std::ops::Range<usize>, with_soc: bool) -> Vec<Block> {
    let mut found = Vec::new();
    let mut out_ah = 0.0;
    let (mut start, mut n, mut sum_out, mut sum_soc, mut sum_amps) = (f64::NAN, 0.0, 0.0, 0.0, 0.0);
    let (mut sum_volts, mut n_volts) = (0.0, 0.0);
    for row in rows {
        let sample = &series.samples[row];
        let Some(amps) = series.amps(row) else { continue };
        let soc = sample.soc_frac.or((!with_soc).then_some(0.0));
        if start.is_nan() {
            start = sample.at_s;
        }
        if sample.at_s - start >= BLOCK_S && n > 0.0 {
            found.push(Block {
                out_ah: sum_out / n,
                soc_frac: sum_soc / n,
                amps: sum_amps / n,
                volts: (n_volts > 0.0).then(|| sum_volts / n_volts),
            });
            (start, n, sum_out, sum_soc, sum_amps) = (sample.at_s, 0.0, 0.0, 0.0, 0.0);
            (sum_volts, n_volts) = (0.0, 0.0);
        }
        if let Some(soc) = soc {
            n += 1.0;
            sum_out += out_ah;
            sum_soc += soc;
            sum_amps += amps.0;
            if let Some(volts) = sample.volts {
                (sum_volts, n_volts) = (sum_volts + volts.0, n_volts + 1.0);
            }
        }
        // Charge of this row up to the next.
        out_ah -= amps.0 * series.held_s(row) / super::series::HOUR_S;
    }
    if n > 0.0 {
        found.push(Block {
            out_ah: sum_out / n,
            soc_frac: sum_soc / n,
            amps: sum_amps / n,
            volts: (n_volts > 0.0).then(|| sum_volts / n_volts),
        });
    }
    found
}

/// Capacity of the bank, or why it cannot be told.
///
/// # Errors
/// [`CapacityMissing`]: what the log lacks.
pub fn capacity(series: &Series, setup: &Setup) -> Result<CapacityFound, CapacityMissing> {
    let rows = series.samples.len();
    if (0..rows).all(|row| series.amps(row).is_none()) {
        return Err(CapacityMissing::NoCurrent);
    }
    let with_soc = series.samples.iter().filter(|sample| sample.soc_frac.is_some()).count();
    if with_soc >= 8 { between_states(series) } else { from_full(series, setup) }
}

fn between_states(series: &Series) -> Result<CapacityFound, CapacityMissing> {
    let (mut sxx, mut sxy, mut syy, mut points, mut runs) = (0.0, 0.0, 0.0, 0.0, 0.0);
    let (mut swings, mut largest) = (0.0, 0.0_f64);
    let (mut low, mut high) = (1.0_f64, 0.0_f64);
    for stretch in series.stretches() {
        let blocks = blocks(series, stretch, true);
        for block in &blocks {
            (low, high) = (low.min(block.soc_frac), high.max(block.soc_frac));
        }
        for run in blocks.split(|block| block.amps >= 0.0).filter(|run| run.len() >= 4) {
            let n = run.len() as f64;
            let x = run.iter().map(|b| b.out_ah).sum::<f64>() / n;
            let y = run.iter().map(|b| b.soc_frac).sum::<f64>() / n;
            let swing = run[0].soc_frac - run[run.len() - 1].soc_frac;
            if swing < RUN_SWING_FRAC {
                continue;
            }
            for block in run {
                let (dx, dy) = (block.out_ah - x, block.soc_frac - y);
                sxx += dx * dx;
                sxy += dx * dy;
                syy += dy * dy;
            }
            points += n;
            runs += 1.0;
            swings += swing;
            largest = largest.max(swing);
        }
    }
    let range = (high - low).max(0.0);
    if range < LEAST_SWING_FRAC || swings < LEAST_SWING_FRAC || sxx <= 0.0 {
        return Err(CapacityMissing::SmallSwing(range.min(swings)));
    }
    let slope = -sxy / sxx;
    if slope.is_nan() || slope <= 1e-6 {
        return Err(CapacityMissing::Contradicts);
    }
    let left = (syy - slope * slope * sxx).max(0.0) / (points - runs - 1.0).max(1.0);
    let random = (left / sxx).sqrt() / slope;
    let states = SOC_SD_FRAC * std::f64::consts::SQRT_2 / swings;
    let error_frac = (random.powi(2) + states.powi(2) + SHUNT_FRAC.powi(2)).sqrt();
    if error_frac > TELLABLE_FRAC {
        return Err(CapacityMissing::Contradicts);
    }
    Ok(CapacityFound {
        capacity: AmpHours(1.0 / slope),
        error_frac,
        swing_frac: largest,
        way: CapacityWay::BetweenStates,
    })
}

/// The best of all spans from full to a rested low voltage.
fn from_full(series: &Series, setup: &Setup) -> Result<CapacityFound, CapacityMissing> {
    let bank = &setup.bank;
    let rated = bank.aged_capacity().0.max(1.0);
    // Full: at its charge voltage (13.8 V of a 12 V block and more) with hardly any current left.
    let full_v = 13.8 * bank.system.series_12v();
    let mut best: Option<CapacityFound> = None;
    for stretch in series.stretches() {
        let blocks = blocks(series, stretch, false);
        let mut full: Option<f64> = None;
        let mut resting = 0.0;
        for block in &blocks {
            let Some(volts) = block.volts else { continue };
            if volts >= full_v && block.amps.abs() <= 0.03 * rated {
                full = Some(block.out_ah);
            }
            resting = if block.amps.abs() <= RESTING_C * rated { resting + BLOCK_S } else { 0.0 };
            let Some(out) = full.map(|full| block.out_ah - full).filter(|out| *out > 0.0) else {
                continue;
            };
            let rested = Hours::from_seconds(resting);
            let band = soc_from_voltage(bank.chemistry, bank.system, Volts(volts), rested);
            let swing = 1.0 - band.likely_frac;
            let error =
                ((band.high_frac - band.low_frac) / 4.0 / swing.max(1e-6)).hypot(SHUNT_FRAC);
            let better = best.is_none_or(|best| error < best.error_frac);
            if band.rested && swing >= LEAST_SWING_FRAC && better {
                best = Some(CapacityFound {
                    capacity: AmpHours(out / swing),
                    error_frac: error,
                    swing_frac: swing,
                    way: CapacityWay::RestedVoltage,
                });
            }
        }
    }
    best.filter(|best| best.error_frac <= TELLABLE_FRAC).ok_or(CapacityMissing::NoState)
}
