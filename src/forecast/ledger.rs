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
