//! What a change asks for, and what to beware of with it. Prices and weights are the user's own.
//!
//! Ways are compared by one price ([`Bill::price`]): what is bought at the user's prices; driving, nights on
//! hook-up and comfort at shares of them, so that they follow the user's money.

use super::{Change, DRIVE_MINUTES};
use crate::model::catalogue::{Caution, appliance};
use crate::model::{Chemistry, DrivingCharger, Group, Load, Prices, Setup};
use crate::units::{AmpHours, Hours, Kilograms, Money};

/// Of what 100 W of solar and 100 Ah of lead cost together an hour of driving is this share, about its fuel
/// (common practice, no source).
const DRIVING_HOUR: f64 = 1.0 / 30.0;
/// A night on hook-up, about what it costs above a pitch without (common practice, no source).
const HOOK_UP_NIGHT: f64 = 1.0 / 15.0;
/// A change that takes comfort or effort: something that is bought has to cost more to be dearer.
const EFFORT: f64 = 1.0 / 60.0;
/// A change that costs nothing still has to be remembered: of two ways the one with fewer of them is cheaper.
const FREE: f64 = 1.0 / 600.0;

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
        /// Time of the stay spent driving more, where it is of no use without.
        driving: Hours,
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
            Self::HookUp { every } => {
                let planned = times(setup, setup.hook_up.every.0);
                Cost::HookUp { nights: times(setup, every).saturating_sub(planned) }
            }
            Self::PortablePanel { peak, .. } | Self::MoreSolar { peak } => bought(
                prices.solar_per_100w * (peak.0 / 100.0),
                prices.solar_kg_per_100w * (peak.0 / 100.0),
            ),
            Self::MoreBattery { capacity } => {
                let (price, weight) = battery_price(setup, setup.bank.chemistry);
                let hundreds = capacity.0 / 100.0 * series_12v;
                bought(price * hundreds, weight * hundreds)
            }
            Self::Lithium { capacity } => {
                let (price, weight) = battery_price(setup, Chemistry::LiFePo4);
                let (_, old_weight) = battery_price(setup, setup.bank.chemistry);
                let hundreds = |capacity: AmpHours| capacity.0 / 100.0 * series_12v;
                let old_weight = old_weight * hundreds(setup.bank.rated_capacity());
                bought(price * hundreds(capacity), weight * hundreds(capacity) - old_weight)
            }
            Self::DcDcCharger { drive_every, .. } => {
                let drives = drive_every.map_or(0, |every| times(setup, every)) as f64;
                let minutes = setup.driving.minutes.max(DRIVE_MINUTES) * drives;
                let driving = Hours::from_minutes(minutes);
                Cost::Money { amount: prices.dcdc, weight: Kilograms::ZERO, driving }
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
            Self::HeatedBattery | Self::Lithium { .. } => &[Hazard::ShortCircuit, Hazard::Lithium],
            Self::DcDcCharger { .. } => &[Hazard::Alternator, Hazard::ShortCircuit],
            _ => &[],
        }
    }
}

fn bought(amount: Money, weight: Kilograms) -> Cost {
    Cost::Money { amount, weight, driving: Hours(0.0) }
}

/// How often every so many nights comes in the stay.
fn times(setup: &Setup, every: u8) -> usize {
    usize::from(setup.trip.nights).checked_div(usize::from(every)).unwrap_or(0)
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
            Cost::Money { amount, weight, driving } => {
                self.money += amount;
                self.weight += weight;
                self.driving += driving;
            }
            Cost::Unpriced => self.unpriced += 1,
        }
        self
    }

    /// All of it as one amount, to tell the cheaper of two ways: see the shares at the top of `cost.rs`. What the
    /// price list has no price for is not in it.
    #[must_use]
    pub fn price(&self, prices: &Prices) -> Money {
        self.money
            + driving_hour(prices) * self.driving.0
            + hook_up_night(prices) * self.hook_up_nights as f64
            + measure(prices) * (EFFORT * self.efforts as f64 + FREE * self.free as f64)
    }
}

/// What shares of the price list are taken of.
fn measure(prices: &Prices) -> Money {
    prices.solar_per_100w + prices.lead_per_100ah
}

/// What an hour of driving is taken to cost.
#[must_use]
pub fn driving_hour(prices: &Prices) -> Money {
    measure(prices) * DRIVING_HOUR
}

/// What a night on hook-up is taken to cost more than one without.
#[must_use]
pub fn hook_up_night(prices: &Prices) -> Money {
    measure(prices) * HOOK_UP_NIGHT
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
