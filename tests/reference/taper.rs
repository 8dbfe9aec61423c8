//! The analytic taper of a charge without losses, to compare the charge step with.
//!
//! `I(t) = I0 exp(-t/tau)` with `I0 = Q_rem/tau` once the charge voltage is reached: from 80 % of 100 Ah
//! with tau = 1 h, one hour returns 12.6 Ah however big the charger (a usual simplification, from memory).

use nightbank::units::{AmpHours, Amps, Hours};

/// Charge put back in absorption in the time `t`, without losses: `Q_rem (1 - e^{-t/tau})`.
pub fn absorbed(missing: AmpHours, tau: Hours, t: Hours) -> AmpHours {
    missing * (1.0 - (-(t / tau)).exp())
}

/// Time in absorption until the current has fallen to `end`, starting at `Q_rem / tau`.
pub fn absorption_time(missing: AmpHours, tau: Hours, end: Amps) -> Hours {
    let start = missing / tau;
    if end.0 <= 0.0 {
        return Hours(f64::INFINITY);
    }
    if start.0 <= end.0 { Hours::ZERO } else { tau * (start / end).ln() }
}

/// Time to charge from one state to another with a charger of `current`, bulk and absorption,
/// without losses. `capacity` full; states as shares of it.
pub fn charge_time(
    capacity: AmpHours,
    tau: Hours,
    current: Amps,
    from_frac: f64,
    to_frac: f64,
) -> Hours {
    if current.0 <= 0.0 || to_frac <= from_frac {
        return if to_frac <= from_frac { Hours::ZERO } else { Hours(f64::INFINITY) };
    }
    let taper_from = (1.0 - (current * tau) / capacity).clamp(0.0, 1.0);
    let bulk_to = to_frac.min(taper_from.max(from_frac));
    let bulk = capacity * (bulk_to - from_frac) / current;
    if to_frac <= bulk_to {
        return bulk;
    }
    let (left, end) = (1.0 - bulk_to, 1.0 - to_frac);
    if end <= 0.0 { Hours(f64::INFINITY) } else { bulk + tau * (left / end).ln() }
}
