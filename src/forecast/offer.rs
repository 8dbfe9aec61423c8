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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{Bank, Chemistry};
    use crate::units::{Celsius, Hours, Ohms};

    const ALTERNATOR: Volts = Volts(14.2);

    struct Circuitry {
        bank: BankPhysics,
        conditions: Conditions,
        supply: HourSupply,
    }

    impl Circuitry {
        fn new(chemistry: Chemistry, celsius: f64) -> Self {
            let bank = BankPhysics::new(&Bank { chemistry, ..Bank::default() }, Hours(0.5));
            let conditions = bank.conditions(Celsius(celsius));
            Self { bank, conditions, supply: HourSupply::default() }
        }

        fn relay(mut self, ohm: f64, limit: f64, share: f64) -> Self {
            self.supply.relay = Some(Relay {
                alternator: ALTERNATOR,
                loop_resistance: Ohms(ohm),
                limit: Amps(limit),
                share,
            });
            self
        }

        fn offer(&self, soc_frac: f64, load: f64, offered: f64, sun: HourYield) -> Offer {
            let hour = Circuit {
                conditions: &self.conditions,
                load: Watts(load),
                supply: &self.supply,
                offered: Amps(offered),
            };
            offer(&self.bank, &BankState::rested(soc_frac), &hour, sun)
        }
    }

    /// Kirchhoff: the alternator's voltage less what the cable drops is that of the battery, rested and lifted by
    /// what goes into it; what the alternator gives is delivered or lost in the cable.
    #[test]
    fn a_relay_charges_as_far_as_its_cable_lets_it() {
        let it = Circuitry::new(Chemistry::Agm, 25.0).relay(0.05, 100.0, 0.5);
        let (state, c) = (BankState::rested(0.6), &it.conditions);
        let rest = it.bank.curve.volts(0.6);
        for load in [0.0, 60.0] {
            let got = it.offer(0.6, load, 0.0, HourYield::default());
            let (delivered, lost) = (got.driving.0 / 0.5, got.cable_loss.0 / 0.5);
            let amps = (lost / 0.05).sqrt();
            assert!((delivered + lost - 14.2 * amps).abs() < 1e-9, "{load}");
            let lift = it.bank.polarisation(c, rest, it.bank.max_charge_current(&state, c));
            let at_battery = rest + lift * (Amps(amps) - Watts(load) / rest);
            assert!((at_battery.0 - (14.2 - 0.05 * amps)).abs() < 1e-9, "{load}: {amps} A");
            assert!((8.0..30.0).contains(&amps), "{amps}");
        }
    }

    /// 400 W are more than the cable carries over the battery's voltage: the battery helps out, its voltage sags by
    /// its resistance.
    #[test]
    fn the_battery_helps_where_the_cable_is_too_thin() {
        let it = Circuitry::new(Chemistry::Agm, 25.0).relay(0.1, 100.0, 1.0);
        let rest = it.bank.curve.volts(0.6);
        let got = it.offer(0.6, 400.0, 0.0, HourYield::default());
        let amps = (got.cable_loss.0 / 0.1).sqrt();
        let from_battery = 400.0 / rest.0 - amps;
        assert!(from_battery > 5.0 && amps > 5.0, "{amps} {from_battery}");
        let sagged = rest.0 - from_battery * it.conditions.resistance.0;
        assert!((14.2 - 0.1 * amps - sagged).abs() < 1e-9);
    }

    /// 40 A through 10 milliohm for half of the hour: 8 W lost, 13.8 V x 40 A / 2 = 276 W delivered.
    #[test]
    fn a_relay_gives_no_more_than_its_limit() {
        let it = Circuitry::new(Chemistry::LiFePo4, 25.0).relay(0.01, 40.0, 0.5);
        let got = it.offer(0.5, 0.0, 0.0, HourYield::default());
        assert!((got.cable_loss.0 - 8.0).abs() < 1e-9 && (got.driving.0 - 276.0).abs() < 1e-9);
        assert_eq!((got.hook_up, got.other, got.sun), (Watts::ZERO, Watts::ZERO, Watts::ZERO));
        // Frozen lithium takes nothing: what is drawn is all that flows.
        let frozen = Circuitry::new(Chemistry::LiFePo4, -5.0).relay(0.01, 40.0, 1.0);
        let load = 10.0 * frozen.bank.curve.volts(0.5).0;
        let got = frozen.offer(0.5, load, 0.0, HourYield::default());
        assert!((got.cable_loss.0 - 1.0).abs() < 1e-9 && (got.driving.0 - 141.0).abs() < 1e-9);
        let idle = Circuitry::new(Chemistry::Agm, 25.0).relay(0.01, 40.0, 0.0);
        let got = idle.offer(0.5, 100.0, 0.0, HourYield::default());
        assert_eq!((got.driving, got.cable_loss), (Watts::ZERO, Watts::ZERO));
    }

    /// Currents are worth the voltage they meet: that at rest where all of it is drawn, that of charging where some
    /// is left.
    #[test]
    fn currents_are_worth_the_voltage_they_meet() {
        let mut it = Circuitry::new(Chemistry::Agm, 25.0);
        it.supply.dcdc = Amps(10.0);
        it.supply.hook_up = Amps(5.0);
        it.supply.other = Amps(2.0);
        let sun = HourYield { mppt: Watts(50.0), pwm: Amps(3.0) };
        let rest = it.bank.curve.volts(0.6);
        for (load, amps_left) in [(50.0 + 21.0 * rest.0, 0.0), (50.0 + 12.0 * rest.0, 8.0)] {
            let volts =
                it.bank.charging_volts(&BankState::rested(0.6), &it.conditions, Amps(amps_left));
            assert_eq!(amps_left > 0.0, volts > rest + Volts(0.1));
            let got = it.offer(0.6, load, 17.0, sun);
            for (watts, expected) in [
                (got.sun, 50.0 + 3.0 * volts.0),
                (got.driving, 10.0 * volts.0),
                (got.hook_up, 5.0 * volts.0),
                (got.other, 2.0 * volts.0),
                (got.machines(), 17.0 * volts.0),
            ] {
                assert!((watts.0 - expected).abs() < 1e-6, "{load}: {watts:?} {expected}");
            }
        }
    }
}
