//! Peukert's rule, to compare the two wells with.
//!
//! General form: `t = H (C_H / (I H))^k`, charge `Q = I t`, for one constant current at one temperature.
//! It must not be used with the capacity at 1 A, nor below the rated current: it would promise 149 Ah
//! from a 100 Ah battery at 1 A.

use nightbank::units::{AmpHours, Amps, Hours};

/// Slow discharges give at most this multiple of the 20 h capacity.
pub const SLOW_LIMIT: f64 = 1.12;

/// Time a full battery bears a constant current, Peukert's general form, capped at
/// [`SLOW_LIMIT`] of the rated capacity.
pub fn peukert_time(rated: AmpHours, rated_time: Hours, exponent: f64, current: Amps) -> Hours {
    if current.0 <= 0.0 {
        return Hours(f64::INFINITY);
    }
    let plain = rated_time.0 * (rated.0 / (current.0 * rated_time.0)).powf(exponent);
    Hours(plain.min(SLOW_LIMIT * rated.0 / current.0))
}

/// Peukert's exponent from two ratings (current, hours).
pub fn peukert_exponent(slow: (Amps, Hours), fast: (Amps, Hours)) -> f64 {
    (slow.1 / fast.1).ln() / (fast.0 / slow.0).ln()
}
