//! What a change asks for, and what to beware of with it. Prices and weights are the user's own.

use super::Change;
use crate::model::catalogue::{Caution, appliance};
use crate::model::{Chemistry, DrivingCharger, Group, Load, Setup};
use crate::units::{Hours, Kilograms, Money};

/// What a change asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cost {
    /// Nothing: a switch, a setting.
    Free,
    /// Some comfort or effort.
    Effort,
    /// Driving.
    Driving {
        /// Time of the stay spent driving more.
        time: Hours,
    },
    /// Nights on a place with hook-up; its fee is the place's own.
    HookUp {
        /// Nights of the stay.
        nights: usize,
    },
    /// A purchase at the user's own prices.
    Money {
        /// Amount.
        amount: Money,
        /// Weight added; negative where it gets lighter [kg].
        weight: Kilograms,
    },
    /// A purchase the user's price list has no price for.
    Unpriced,
}

/// What to beware of with a change; the page says it there and then.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hazard {
    /// Work on the roof: falls, leaks, wind, height of the vehicle.
    Roof,
    /// Panels are live whenever there is light; direct current draws arcs.
    LivePanels,
    /// A battery delivers thousands of amps into a short circuit; fuse near it, one kind and age.
    ShortCircuit,
    /// Lead-acid makes hydrogen while charging and wants air.
    Hydrogen,
    /// Lithium: no charge below 0 degrees Celsius, matching charger settings, never beside lead.
    Lithium,
    /// Alternator, cable and fuse must bear the charging current.
    Alternator,
    /// Health depends on it: the maker's own adapter, and a second source of power.
    Medical,
    /// Gas flame inside: air vents open, alarm fitted, never to heat the room.
    GasFlame,
    /// Food must stay cold enough to be safe.
    Food,
    /// What keeps people or vehicle safe stays on.
    SafetyDevices,
}

impl Change {
    /// What it asks for, with the setup's own prices and for its stay.
    #[must_use]
    pub fn cost(&self, setup: &Setup) -> Cost {
        let prices = &setup.prices;
        let series_12v = setup.bank.system.series_12v();
        match *self {
            Self::SwitchOff { .. }
            | Self::OffAtNight { .. }
            | Self::Unplug { .. }
            | Self::ToMidday { .. }
            | Self::InverterWhenUsed
            | Self::InverterPowerSave { .. }
            | Self::Clean { .. }
            | Self::Tilt { roof: false, .. } => Cost::Free,
            Self::DoWithout { .. }
            | Self::GasInstead { .. }
            | Self::ShorterUse { .. }
            | Self::FewerUses { .. }
            | Self::UseShare { .. }
            | Self::WarmerFridge { .. }
            | Self::OutOfShade { .. }
            | Self::ArriveFull
            | Self::WarmerPlace { .. } => Cost::Effort,
            Self::DcInstead { .. }
            | Self::Tilt { roof: true, .. }
            | Self::MpptController { .. }
            | Self::HeatedBattery => Cost::Unpriced,
            Self::Drive { minutes, .. } => Cost::Driving { time: Hours::from_minutes(minutes) },
            Self::HookUp { every } => Cost::HookUp {
                nights: usize::from(setup.trip.nights).checked_div(usize::from(every)).unwrap_or(0),
            },
            Self::PortablePanel { peak, .. } | Self::MoreSolar { peak } => Cost::Money {
                amount: prices.solar_per_100w * (peak.0 / 100.0),
                weight: prices.solar_kg_per_100w * (peak.0 / 100.0),
            },
            Self::MoreBattery { capacity } => {
                let (price, weight) = battery_price(setup, setup.bank.chemistry);
                let hundreds = capacity.0 / 100.0 * series_12v;
                Cost::Money { amount: price * hundreds, weight: weight * hundreds }
            }
            Self::Lithium => {
                let (price, weight) = battery_price(setup, Chemistry::LiFePo4);
                let (_, old_weight) = battery_price(setup, setup.bank.chemistry);
                let hundreds = setup.bank.rated_capacity().0 / 100.0 * series_12v;
                Cost::Money { amount: price * hundreds, weight: (weight - old_weight) * hundreds }
            }
            Self::DcDcCharger { .. } => {
                Cost::Money { amount: prices.dcdc, weight: Kilograms::ZERO }
            }
        }
    }

    /// What to beware of.
    #[must_use]
    pub fn hazards(&self, setup: &Setup) -> &'static [Hazard] {
        match *self {
            Self::SwitchOff { .. } | Self::OffAtNight { .. } => &[Hazard::SafetyDevices],
            Self::GasInstead { .. } => &[Hazard::GasFlame],
            Self::WarmerFridge { .. } => &[Hazard::Food],
            Self::DcInstead { load } => {
                let medical = setup.loads.iter().any(|l| l.id == load && is_medical(l));
                if medical { &[Hazard::Medical] } else { &[] }
            }
            Self::Tilt { roof: true, .. } => &[Hazard::Roof],
            Self::Clean { .. } => &[Hazard::Roof],
            Self::MpptController { .. } | Self::PortablePanel { .. } => &[Hazard::LivePanels],
            Self::MoreSolar { .. } => &[Hazard::Roof, Hazard::LivePanels],
            Self::MoreBattery { .. } | Self::WarmerPlace { .. } => {
                if setup.bank.chemistry.is_lead() {
                    &[Hazard::ShortCircuit, Hazard::Hydrogen]
                } else {
                    &[Hazard::ShortCircuit, Hazard::Lithium]
                }
            }
            Self::HeatedBattery | Self::Lithium => &[Hazard::ShortCircuit, Hazard::Lithium],
            Self::DcDcCharger { .. } => &[Hazard::Alternator, Hazard::ShortCircuit],
            _ => &[],
        }
    }
}

/// Health depends on this load: by its entry in the catalogue or by its group.
#[must_use]
pub fn is_medical(load: &Load) -> bool {
    load.group == Group::Health
        || load.appliance.and_then(appliance).is_some_and(|entry| entry.has(Caution::Medical))
}

/// Price and weight of 100 Ah at 12 V of a chemistry.
#[must_use]
pub fn battery_price(setup: &Setup, chemistry: Chemistry) -> (Money, Kilograms) {
    let prices = &setup.prices;
    if chemistry.is_lead() {
        (prices.lead_per_100ah, prices.lead_kg_per_100ah)
    } else {
        (prices.lithium_per_100ah, prices.lithium_kg_per_100ah)
    }
}

/// Money, effort and weight of several changes together.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Bill {
    /// Purchases.
    pub money: Money,
    /// Purchases the price list has no price for.
    pub unpriced: usize,
    /// Weight added [kg]; negative where it gets lighter.
    pub weight: Kilograms,
    /// Time of the stay spent driving more.
    pub driving: Hours,
    /// Nights of the stay on hook-up.
    pub hook_up_nights: usize,
    /// Changes that take comfort or effort.
    pub efforts: usize,
    /// Changes that cost nothing.
    pub free: usize,
}

impl Bill {
    /// Adds one more cost.
    #[must_use]
    pub fn with(mut self, cost: Cost) -> Self {
        match cost {
            Cost::Free => self.free += 1,
            Cost::Effort => self.efforts += 1,
            Cost::Driving { time } => self.driving += time,
            Cost::HookUp { nights } => self.hook_up_nights += nights,
            Cost::Money { amount, weight } => {
                self.money += amount;
                self.weight += weight;
            }
            Cost::Unpriced => self.unpriced += 1,
        }
        self
    }
}

/// Price and weight of the hardware a setup holds: panels, battery and dc-dc charger.
#[must_use]
pub fn hardware(setup: &Setup) -> (Money, Kilograms) {
    let prices = &setup.prices;
    let peak: f64 = setup.solar.iter().filter(|a| a.enabled).map(|a| a.peak.0 / 100.0).sum();
    let (price, weight) = battery_price(setup, setup.bank.chemistry);
    let hundreds = setup.bank.rated_capacity().0 / 100.0 * setup.bank.system.series_12v();
    let charger =
        setup.driving.fitted && matches!(setup.driving.charger, DrivingCharger::DcDc { .. });
    let charger = if charger { prices.dcdc } else { Money::ZERO };
    (
        prices.solar_per_100w * peak + price * hundreds + charger,
        prices.solar_kg_per_100w * peak + weight * hundreds,
    )
}
