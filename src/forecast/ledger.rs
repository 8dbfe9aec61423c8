//! Energy balance of an hour or a stay: every watt-hour in, out and lost.

use crate::units::{Hours, Litres, WattHours};
use std::ops::AddAssign;

/// Where every watt-hour came from and went.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ledger {
    /// Sun that went into loads or battery.
    pub sun: WattHours,
    /// Sun offered but not taken: battery full, or too cold to charge.
    pub unused_sun: WattHours,
    /// From the engine, after cable losses.
    pub driving: WattHours,
    /// From the mains charger.
    pub hook_up: WattHours,
    /// From generator, fuel cell and wind.
    pub other: WattHours,
    /// Offered by engine, mains or machines and not taken.
    pub unused_other: WattHours,
    /// Lost in the charging cable of a split-charge relay, before the battery circuit.
    pub charging_cable: WattHours,
    /// Into appliances straight from the battery.
    pub direct_loads: WattHours,
    /// Into appliances at the inverter's sockets.
    pub mains_loads: WattHours,
    /// Lost passing power through the inverter.
    pub conversion: WattHours,
    /// No-load draw of the inverter.
    pub inverter_idle: WattHours,
    /// Solar controllers and battery management.
    pub electronics: WattHours,
    /// Heating of the battery itself.
    pub battery_heating: WattHours,
    /// Lost to charge efficiency.
    pub charge_loss: WattHours,
    /// Lost in the battery's resistance and polarisation.
    pub resistance_loss: WattHours,
    /// Lost in the cables between battery and distribution.
    pub cable_loss: WattHours,
    /// Lost by self-discharge.
    pub self_discharge: WattHours,
    /// Put into the battery, at its terminals.
    pub into_battery: WattHours,
    /// Taken out of the battery, at its terminals.
    pub out_of_battery: WattHours,
    /// Change of the energy held in the battery.
    pub stored: WattHours,
    /// Asked for and not to be had.
    pub unmet: WattHours,
    /// Fuel burnt.
    pub fuel: Litres,
    /// Hours in which the sun or another source offered charge to a battery too cold to take it.
    pub cold_locked: Hours,
}

impl AddAssign for Ledger {
    fn add_assign(&mut self, o: Self) {
        self.sun += o.sun;
        self.unused_sun += o.unused_sun;
        self.driving += o.driving;
        self.hook_up += o.hook_up;
        self.other += o.other;
        self.unused_other += o.unused_other;
        self.charging_cable += o.charging_cable;
        self.direct_loads += o.direct_loads;
        self.mains_loads += o.mains_loads;
        self.conversion += o.conversion;
        self.inverter_idle += o.inverter_idle;
        self.electronics += o.electronics;
        self.battery_heating += o.battery_heating;
        self.charge_loss += o.charge_loss;
        self.resistance_loss += o.resistance_loss;
        self.cable_loss += o.cable_loss;
        self.self_discharge += o.self_discharge;
        self.into_battery += o.into_battery;
        self.out_of_battery += o.out_of_battery;
        self.stored += o.stored;
        self.unmet += o.unmet;
        self.fuel += o.fuel;
        self.cold_locked += o.cold_locked;
    }
}

impl Ledger {
    /// All energy that came in.
    #[must_use]
    pub fn sources(&self) -> WattHours {
        self.sun + self.driving + self.hook_up + self.other
    }

    /// All energy that went into loads and what serves them.
    #[must_use]
    pub fn consumption(&self) -> WattHours {
        self.direct_loads
            + self.mains_loads
            + self.conversion
            + self.inverter_idle
            + self.electronics
            + self.battery_heating
    }

    /// What does not add up; zero but for rounding.
    #[must_use]
    pub fn residual(&self) -> WattHours {
        self.sources()
            - self.consumption()
            - self.charge_loss
            - self.resistance_loss
            - self.cable_loss
            - self.self_discharge
            - self.stored
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A ledger whose entries are powers of two, so that every sum tells what is in it.
    fn distinct() -> Ledger {
        Ledger {
            sun: WattHours(1.0),
            unused_sun: WattHours(2.0),
            driving: WattHours(4.0),
            hook_up: WattHours(8.0),
            other: WattHours(16.0),
            unused_other: WattHours(32.0),
            charging_cable: WattHours(64.0),
            direct_loads: WattHours(128.0),
            mains_loads: WattHours(256.0),
            conversion: WattHours(512.0),
            inverter_idle: WattHours(1024.0),
            electronics: WattHours(2048.0),
            battery_heating: WattHours(4096.0),
            charge_loss: WattHours(8192.0),
            resistance_loss: WattHours(16384.0),
            cable_loss: WattHours(32768.0),
            self_discharge: WattHours(65536.0),
            into_battery: WattHours(131_072.0),
            out_of_battery: WattHours(262_144.0),
            stored: WattHours(524_288.0),
            unmet: WattHours(1_048_576.0),
            fuel: Litres(0.5),
            cold_locked: Hours(0.25),
        }
    }

    /// Two hours alike make twice of everything.
    #[test]
    fn hours_add_up_entry_by_entry() {
        let hour = distinct();
        let mut stay = Ledger::default();
        for _ in 0..2 {
            stay += hour;
        }
        let twice = |one: WattHours| one * 2.0;
        let expected = Ledger {
            sun: twice(hour.sun),
            unused_sun: twice(hour.unused_sun),
            driving: twice(hour.driving),
            hook_up: twice(hour.hook_up),
            other: twice(hour.other),
            unused_other: twice(hour.unused_other),
            charging_cable: twice(hour.charging_cable),
            direct_loads: twice(hour.direct_loads),
            mains_loads: twice(hour.mains_loads),
            conversion: twice(hour.conversion),
            inverter_idle: twice(hour.inverter_idle),
            electronics: twice(hour.electronics),
            battery_heating: twice(hour.battery_heating),
            charge_loss: twice(hour.charge_loss),
            resistance_loss: twice(hour.resistance_loss),
            cable_loss: twice(hour.cable_loss),
            self_discharge: twice(hour.self_discharge),
            into_battery: twice(hour.into_battery),
            out_of_battery: twice(hour.out_of_battery),
            stored: twice(hour.stored),
            unmet: twice(hour.unmet),
            fuel: Litres(1.0),
            cold_locked: Hours(0.5),
        };
        assert_eq!(stay, expected);
    }

    /// In: sun, engine, mains, machines. Used: loads and what serves them. What is left is lost or stored.
    #[test]
    fn what_comes_in_is_used_lost_or_stored() {
        let hour = distinct();
        assert_eq!(hour.sources(), WattHours(1.0 + 4.0 + 8.0 + 16.0));
        let used = 128.0 + 256.0 + 512.0 + 1024.0 + 2048.0 + 4096.0;
        assert_eq!(hour.consumption(), WattHours(used));
        let lost = 8192.0 + 16384.0 + 32768.0 + 65536.0;
        assert_eq!(hour.residual(), WattHours(29.0 - used - lost - 524_288.0));
    }
}
