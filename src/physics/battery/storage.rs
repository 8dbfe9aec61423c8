//! The van parked and unused: how long until the minimum, and whether it may freeze.
//!
//! With everything drawing the constant current `I` and self-discharge a constant current `L`
//! (both small), the time from the state `s` to the floor `m` is `t = (s - m) C / (I + L)`:
//! conservation of charge. A slow drain goes on to flat: cold puts the lowest part of the charge out of
//! reach of a fast draw, not of a slow one. As it empties its electrolyte freezes at ever milder
//! temperatures; it freezes at the temperature `T` once it is down to the charge `s_T` at which its
//! freezing point is `T`, after `(s - s_T) C / (I + L)`. Self-discharge and freezing points, with their sources, are in
//! [`super::temperature`].
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `s`, `m` | state of charge now, lowest allowed | - |
//! | `C` | capacity with age | Ah |
//! | `I`, `L` | draw of what stays on, self-discharge | A |

use super::bank::BankPhysics;
use super::temperature::{lead_freezes_at, lead_freezes_below};
use crate::units::{Amps, Celsius, Hours, Watts};

/// How a parked battery fares.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parked {
    /// Until the lowest state of charge allowed; infinite if nothing drains it.
    pub until_low: Hours,
    /// Until it is flat.
    pub until_empty: Hours,
    /// Draw and self-discharge together.
    pub drain: Amps,
    /// Lead-acid only: the electrolyte freezes at this temperature as it is charged at first.
    pub freezes_at_first: Option<Celsius>,
    /// Lead-acid only: the electrolyte freezes at this temperature when the minimum is reached.
    pub freezes_at_low: Option<Celsius>,
    /// Lead-acid only: the electrolyte freezes at this temperature once it is flat.
    pub freezes_at_flat: Option<Celsius>,
    /// Lead-acid only: until it freezes at the temperature it stands at, as it empties; `None` where even
    /// flat it does not.
    pub freezes_after: Option<Hours>,
}

/// Parked at a temperature with `standing` drawing all the time and nothing charging.
#[must_use]
pub fn parked(bank: &BankPhysics, soc_frac: f64, standing: Watts, at: Celsius) -> Parked {
    let bank = &bank.clone().drawn_at(standing + bank.management());
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
        until_empty: until(0.0),
        drain,
        freezes_at_first: freezes_at(soc_frac),
        freezes_at_low: freezes_at(conditions.low_frac),
        freezes_at_flat: freezes_at(0.0),
        freezes_after: lead_freezes_below(at).filter(|_| bank.chemistry.is_lead()).map(until),
    }
}
