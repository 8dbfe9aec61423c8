//! What the sources offer to the battery circuit in one step of the trip.

use super::plan::PlanHour;
use super::supply::{HourSupply, Relay};
use crate::physics::battery::{BankPhysics, BankState, Conditions};
use crate::physics::solar::panel::HourYield;
use crate::units::{Amps, Volts, Watts};

/// Power offered in a step, at the terminals.
#[derive(Clone, Copy, Default)]
pub(super) struct Offer {
    pub(super) sun: Watts,
    pub(super) driving: Watts,
    pub(super) hook_up: Watts,
    pub(super) other: Watts,
    pub(super) cable_loss: Watts,
}

impl Offer {
    pub(super) fn machines(&self) -> Watts {
        self.driving + self.hook_up + self.other
    }
}

/// What an hour brings, apart from the sun: as planned, or as one sequence of weather has it.
#[derive(Clone, Copy)]
pub(super) struct Circuit<'a> {
    pub(super) conditions: &'a Conditions,
    /// Everything drawn.
    pub(super) load: Watts,
    pub(super) supply: &'a HourSupply,
    /// Current offered by dc-dc charger, mains charger and other machines.
    pub(super) offered: Amps,
}

impl<'a> From<&'a PlanHour> for Circuit<'a> {
    fn from(hour: &'a PlanHour) -> Self {
        Self {
            conditions: &hour.conditions,
            load: hour.load,
            supply: &hour.supply,
            offered: hour.offered,
        }
    }
}

/// Voltage of the battery circuit while `surplus` (of current sources) may charge.
#[inline]
fn circuit_volts(
    bank: &BankPhysics,
    state: &BankState,
    hour: &Circuit<'_>,
    sun: HourYield,
) -> Volts {
    let rest = bank.curve.volts(state.soc_frac);
    let surplus = sun.mppt - hour.load + (sun.pwm + hour.offered) * rest;
    if surplus.0 > 0.0 { bank.charging_volts(state, hour.conditions, surplus / rest) } else { rest }
}

/// What a split-charge relay delivers, and what its cable loses. With `x = V_alt - V - R_loop I_load`, the
/// voltage left over if the alternator carries all that is drawn: `I = I_load + x / (R_loop + R)`, where `R`
/// is the battery's polarisation as it charges, or its resistance where it has to help out (`x < 0`).
fn relay_offer(
    relay: &Relay,
    bank: &BankPhysics,
    state: &BankState,
    hour: &Circuit<'_>,
) -> (Watts, Watts) {
    if relay.share <= 0.0 {
        return (Watts::ZERO, Watts::ZERO);
    }
    let rest = bank.curve.volts(state.soc_frac);
    let load = hour.load / rest;
    let loop_ohm = relay.loop_resistance.0;
    let left_over = relay.alternator.0 - rest.0 - loop_ohm * load.0;
    let into_battery = if left_over < 0.0 {
        left_over / (loop_ohm + hour.conditions.resistance.0)
    } else {
        let most = bank.max_charge_current(state, hour.conditions);
        if most.0 > 0.0 {
            let polarisation = bank.polarisation(hour.conditions, rest, most).0;
            (left_over / (loop_ohm + polarisation)).min(most.0)
        } else {
            0.0
        }
    };
    let current = Amps((load.0 + into_battery).clamp(0.0, relay.limit.0));
    let at_battery = relay.alternator - current * relay.loop_resistance;
    let delivered = at_battery * current * relay.share;
    let lost = current * relay.loop_resistance * current * relay.share;
    (delivered, lost)
}

/// What the sources offer in this step.
#[inline]
pub(super) fn offer(
    bank: &BankPhysics,
    state: &BankState,
    hour: &Circuit<'_>,
    sun: HourYield,
) -> Offer {
    let supply = hour.supply;
    if sun.pwm.0 <= 0.0 && hour.offered.0 <= 0.0 && supply.relay.is_none() {
        return Offer { sun: sun.mppt, ..Offer::default() };
    }
    let volts = circuit_volts(bank, state, hour, sun);
    let (relay, cable_loss) = supply
        .relay
        .as_ref()
        .map_or((Watts::ZERO, Watts::ZERO), |relay| relay_offer(relay, bank, state, hour));
    Offer {
        sun: sun.mppt + sun.pwm * volts,
        driving: supply.dcdc * volts + relay,
        hook_up: supply.hook_up * volts,
        other: supply.other * volts,
        cable_loss,
    }
}
