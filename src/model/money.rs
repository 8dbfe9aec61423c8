//! Prices and weights for sizing; the user's own, with placeholders to start from.

use super::sanitise::Sanitiser;
use crate::units::{Kilograms, Money};
use bounds::{CURRENCY_CHARS, PRICE, WEIGHT_KG};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Most characters of the currency.
    pub const CURRENCY_CHARS: usize = 4;
    /// Prices.
    pub const PRICE: Range = Range::new(0.0, 1_000_000.0);
    /// Weights [kg].
    pub const WEIGHT_KG: Range = Range::new(0.0, 1_000.0);
}

/// Prices and weights. The defaults are round figures to start from (common practice, no source).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Prices {
    /// Currency as written beside an amount, at most four characters.
    pub currency: String,
    /// Solar panel with fixing, per 100 W peak.
    pub solar_per_100w: Money,
    /// Weight of solar, per 100 W peak [kg].
    pub solar_kg_per_100w: Kilograms,
    /// Lead-acid battery, per 100 Ah at 12 V.
    pub lead_per_100ah: Money,
    /// Weight of lead-acid, per 100 Ah at 12 V [kg].
    pub lead_kg_per_100ah: Kilograms,
    /// LiFePO4 battery, per 100 Ah at 12 V.
    pub lithium_per_100ah: Money,
    /// Weight of LiFePO4, per 100 Ah at 12 V [kg].
    pub lithium_kg_per_100ah: Kilograms,
    /// Dc-dc charger fitted.
    pub dcdc: Money,
}

impl Default for Prices {
    fn default() -> Self {
        Self {
            currency: "€".to_owned(),
            solar_per_100w: Money(120.0),
            solar_kg_per_100w: Kilograms(7.0),
            lead_per_100ah: Money(180.0),
            lead_kg_per_100ah: Kilograms(28.0),
            lithium_per_100ah: Money(450.0),
            lithium_kg_per_100ah: Kilograms(12.0),
            dcdc: Money(250.0),
        }
    }
}

impl Prices {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self {
            currency,
            solar_per_100w,
            solar_kg_per_100w,
            lead_per_100ah,
            lead_kg_per_100ah,
            lithium_per_100ah,
            lithium_kg_per_100ah,
            dcdc,
        } = self;
        sanitiser.text(currency, CURRENCY_CHARS);
        for price in [solar_per_100w, lead_per_100ah, lithium_per_100ah, dcdc] {
            sanitiser.number(&mut price.0, PRICE, 0.0);
        }
        for weight in [solar_kg_per_100w, lead_kg_per_100ah, lithium_kg_per_100ah] {
            sanitiser.number(&mut weight.0, WEIGHT_KG, 0.0);
        }
    }
}
