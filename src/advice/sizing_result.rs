//! What sizing found: curves, and the pairs of battery and panels that stand out.

use super::cost::battery_price;
use crate::model::{Chemistry, Setup};
use crate::units::{AmpHours, Kilograms, Money, Watts};

/// Sizes of one chemistry that do; `None` where none within the looked-at range does.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Chemistry.
    pub chemistry: Chemistry,
    /// Smallest solar at each battery size, batteries rising.
    pub solar_for_battery: Vec<(AmpHours, Option<Watts>)>,
    /// Smallest battery at each solar size, solar rising.
    pub battery_for_solar: Vec<(Watts, Option<AmpHours>)>,
}

impl Curve {
    pub(super) fn new(chemistry: Chemistry) -> Self {
        Self { chemistry, solar_for_battery: Vec::new(), battery_for_solar: Vec::new() }
    }

    /// All pairs that do.
    pub fn pairs(&self) -> impl Iterator<Item = (AmpHours, Watts)> {
        let by_battery = self.solar_for_battery.iter().filter_map(|(ah, w)| Some((*ah, (*w)?)));
        let by_solar = self.battery_for_solar.iter().filter_map(|(w, ah)| Some(((*ah)?, *w)));
        by_battery.chain(by_solar)
    }
}

/// A pair of battery and panels with its price and weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choice {
    /// Chemistry of the battery.
    pub chemistry: Chemistry,
    /// Capacity at the 20 h rate, at the system voltage.
    pub battery: AmpHours,
    /// Panels in all.
    pub solar: Watts,
    /// Price of all of it, new.
    pub money: Money,
    /// Price of what the setup does not have yet; another chemistry is bought whole.
    pub to_buy: Money,
    /// Weight of all of it [kg].
    pub weight: Kilograms,
}

impl Choice {
    fn of(setup: &Setup, chemistry: Chemistry, (battery, solar): (AmpHours, Watts)) -> Self {
        let prices = &setup.prices;
        let (price, weight) = battery_price(setup, chemistry);
        let per_ah = setup.bank.system.twelves() / 100.0;
        let per_watt = 1.0 / 100.0;
        let have: Watts = setup.solar.iter().filter(|a| a.enabled).map(|a| a.peak).sum();
        let more_solar = (solar - have).max(Watts::ZERO);
        let more_battery = if chemistry == setup.bank.chemistry {
            (battery - setup.bank.rated_capacity()).max(AmpHours::ZERO)
        } else {
            battery
        };
        let money = |battery: AmpHours, solar: Watts| {
            price * (battery.0 * per_ah) + prices.solar_per_100w * (solar.0 * per_watt)
        };
        Self {
            chemistry,
            battery,
            solar,
            money: money(battery, solar),
            to_buy: money(more_battery, more_solar),
            weight: weight * (battery.0 * per_ah) + prices.solar_kg_per_100w * (solar.0 * per_watt),
        }
    }
}

/// The answer of sizing.
#[derive(Clone, Debug, PartialEq)]
pub struct Sizing {
    /// Months that had to be lasted, of all that were asked for.
    pub hard_months: Vec<u8>,
    /// Curves: the setup's own chemistry, then the other.
    pub curves: Vec<Curve>,
    /// Cheapest pair, all bought new.
    pub cheapest: Option<Choice>,
    /// Pair that costs least beyond what the setup has.
    pub least_to_buy: Option<Choice>,
    /// Lightest pair.
    pub lightest: Option<Choice>,
}

impl Sizing {
    /// The pairs that stand out among the curves, at the prices of the setup.
    #[must_use]
    pub fn of(setup: &Setup, hard_months: Vec<u8>, curves: Vec<Curve>) -> Self {
        let choices: Vec<Choice> = curves
            .iter()
            .flat_map(|curve| curve.pairs().map(|pair| Choice::of(setup, curve.chemistry, pair)))
            .collect();
        let least = |key: fn(&Choice) -> (f64, f64)| {
            choices
                .iter()
                .min_by(|a, b| {
                    let (a, b) = (key(a), key(b));
                    a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
                })
                .copied()
        };
        Self {
            hard_months,
            cheapest: least(|choice| (choice.money.0, choice.weight.0)),
            least_to_buy: least(|choice| (choice.to_buy.0, choice.weight.0)),
            lightest: least(|choice| (choice.weight.0, choice.money.0)),
            curves,
        }
    }
}
