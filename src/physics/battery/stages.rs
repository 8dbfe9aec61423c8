//! The stages of a charge: how long each lasts, and which one a given time reaches.
//!
//! ```text
//! I_taper = Q_rem / tau                      what the battery takes at the charge voltage
//! bulk         I < I_taper                   the charger sets the current
//! absorption   I_end < I_taper <= I          the battery sets it, and it falls
//! float        I_taper <= I_end = e C_20     full; the charger holds it and carries the loads
//! ```
//!
//! The charge is played with the very steps of the simulation ([`BankPhysics::charge`]), losses,
//! cold and heating included. Without losses the times are
//! `t_bulk = (Q_rem - I tau) / I` and `t_absorption = tau ln(I / I_end)`.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `I` | current of the charger that is left for the battery | A |
//! | `Q_rem` | charge missing to full | Ah |
//! | `tau` | time constant of the taper ([`super::bank`]) | h |
//! | `e` | end of charge, share of capacity an hour ([`super::CellData::end_of_charge_c`]) | 1/h |

use super::bank::BankPhysics;
use super::flow::{BankState, Conditions};
use crate::model::Bank;
use crate::units::{Amps, Celsius, Hours};

/// Step of the charge; times are right to so much.
pub const STAGE_STEP: Hours = Hours(1.0 / 60.0);
/// A charge is not followed for longer than this.
pub const LONGEST_CHARGE: Hours = Hours(96.0);

/// A stage of a charge.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ChargeStage {
    /// The charger gives its full current, the voltage rises.
    Bulk,
    /// At the charge voltage the battery takes less and less.
    Absorption,
    /// Full.
    Float,
}

/// A charge from a state of charge until the battery is full.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChargeStages {
    /// Time in bulk; infinite where [`LONGEST_CHARGE`] does not see its end.
    pub bulk: Hours,
    /// Time until full, bulk included; infinite where [`LONGEST_CHARGE`] does not see it.
    pub full: Hours,
    /// State of charge at which absorption begins, 0..1; 1 where it is not seen.
    pub absorption_from_frac: f64,
    /// Stage at the end of the time given.
    pub reached: ChargeStage,
    /// State of charge at the end of the time given, 0..1.
    pub reached_frac: f64,
}

impl BankPhysics {
    /// Stage at which `current` (charging positive) leaves the battery; `None` while it is not
    /// charged or is too cold for it.
    #[must_use]
    pub fn stage(&self, state: &BankState, c: &Conditions, current: Amps) -> Option<ChargeStage> {
        if !c.may_charge || current.0 < 0.0 {
            return None;
        }
        let taper = self.capacity * (1.0 - state.soc_frac) / c.taper;
        let end = self.cell.end_of_charge_c * self.capacity.0;
        if taper.0 <= end {
            Some(ChargeStage::Float)
        } else if current.0 <= 0.0 {
            None
        } else if current >= taper {
            Some(ChargeStage::Absorption)
        } else {
            Some(ChargeStage::Bulk)
        }
    }
}

/// Charges a bank at a battery temperature from a state of charge with a charger that has
/// `current` left for it, and tells what the time `given` reaches. `None` where nothing goes in.
#[must_use]
pub fn charge_stages(
    bank: &Bank,
    at: Celsius,
    from_frac: f64,
    current: Amps,
    given: Hours,
) -> Option<ChargeStages> {
    let physics = BankPhysics::new(bank, STAGE_STEP);
    let c = physics.conditions(at);
    let mut state = BankState::rested(from_frac);
    let offered = |state: &BankState| current * physics.charging_volts(state, &c, current);
    if current.0 <= 0.0 {
        return None;
    }
    let mut stages = ChargeStages {
        bulk: Hours(f64::INFINITY),
        full: Hours(f64::INFINITY),
        absorption_from_frac: 1.0,
        reached: physics.stage(&state, &c, current)?,
        reached_frac: state.soc_frac,
    };
    let steps = (LONGEST_CHARGE / STAGE_STEP).round() as usize;
    for step in 0..=steps {
        let time = STAGE_STEP * step as f64;
        let mut now = current;
        if step > 0 {
            let power = offered(&state);
            let (heating, share) = physics.warm(&mut state, &c, power);
            now = physics.charge(&mut state, &c, (power - heating) * share).current;
        }
        // Cells that are still being warmed take nothing yet.
        let stage = physics.stage(&state, &c, now).unwrap_or(ChargeStage::Bulk);
        if stage > ChargeStage::Bulk && !stages.bulk.is_finite() {
            stages.bulk = time;
            stages.absorption_from_frac = state.soc_frac;
        }
        if time <= given + STAGE_STEP * 0.5 {
            (stages.reached, stages.reached_frac) = (stage, state.soc_frac);
        }
        if stage == ChargeStage::Float {
            stages.full = time;
            break;
        }
    }
    Some(stages)
}
