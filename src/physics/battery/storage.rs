//! The van parked and unused: how long until the minimum, and whether it may freeze.
//!
//! With everything drawing the constant current `I` and self-discharge a constant current `L`
//! (both small), the time from the state `s` to the floor `m` is `t = (s - m) C / (I + L)`:
//! conservation of charge. Self-discharge and freezing points, with their sources, are in
//! [`super::temperature`].
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `s`, `m` | state of charge now, lowest allowed | - |
//! | `C` | capacity with age | Ah |
//! | `I`, `L` | draw of what stays on, self-discharge | A |

use super::bank::BankPhysics;
use super::temperature::lead_freezes_at;
use crate::units::{Amps, Celsius, Hours, Watts};

/// How a parked battery fares.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parked {
    /// Until the lowest state of charge allowed; infinite if nothing drains it.
    pub until_low: Hours,
    /// Until nothing more comes out.
    pub until_empty: Hours,
    /// Draw and self-discharge together.
    pub drain: Amps,
    /// Lead-acid only: the electrolyte freezes at this temperature as it is charged at first.
    pub freezes_at_first: Option<Celsius>,
    /// Lead-acid only: the electrolyte freezes at this temperature when the minimum is reached.
    pub freezes_at_low: Option<Celsius>,
}

/// Parked at a temperature with `standing` drawing all the time and nothing charging.
#[must_use]
pub fn parked(bank: &BankPhysics, soc_frac: f64, standing: Watts, at: Celsius) -> Parked {
    let conditions = bank.conditions(at);
    let volts = bank.curve.volts(0.5 * (soc_frac + conditions.low_frac));
    let drain = (standing + bank.management()) / volts + conditions.self_discharge;
    let until = |floor: f64| {
        let charge = bank.capacity * (soc_frac - floor).max(0.0);
        if drain.0 > 0.0 { charge / drain } else { Hours(f64::INFINITY) }
    };
    let freezes_at = |soc_frac| bank.chemistry.is_lead().then(|| lead_freezes_at(soc_frac));
    Parked {
        until_low: until(conditions.low_frac),
        until_empty: until(conditions.empty_frac),
        drain,
        freezes_at_first: freezes_at(soc_frac),
        freezes_at_low: freezes_at(conditions.low_frac),
    }
}
