//! The inverter: mains voltage from the battery.

use super::sanitise::Sanitiser;
use crate::units::{Volts, Watts};
use bounds::{INVERTER_CUT_OUT_V, INVERTER_FRAC, INVERTER_IDLE_W, INVERTER_SURGE_W, INVERTER_W};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Inverter rating [W].
    pub const INVERTER_W: Range = Range::new(50.0, 10_000.0);
    /// Inverter surge rating [W].
    pub const INVERTER_SURGE_W: Range = Range::new(50.0, 30_000.0);
    /// Inverter no-load draw [W].
    pub const INVERTER_IDLE_W: Range = Range::new(0.0, 200.0);
    /// Inverter efficiency at full load.
    pub const INVERTER_FRAC: Range = Range::new(0.5, 0.98);
    /// Inverter cut-out, per 12 V nominal [V].
    pub const INVERTER_CUT_OUT_V: Range = Range::new(9.0, 13.0);
}

/// When the inverter is switched on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum InverterSwitching {
    /// Left on day and night.
    AllDay,
    /// Switched on by hand only while something on it runs.
    #[default]
    WhenUsed,
    /// Left on in a power-save mode that wakes for a load.
    PowerSave {
        /// Draw while asleep [W].
        asleep: Watts,
    },
}

/// The inverter, if one is fitted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inverter {
    /// There is one.
    pub fitted: bool,
    /// Continuous rating on the mains side [W].
    pub continuous: Watts,
    /// Rating for a few seconds [W].
    pub surge: Watts,
    /// Draw from the battery with nothing connected [W].
    pub idle: Watts,
    /// Efficiency at the continuous rating, 0..1, idle draw included.
    pub full_load_frac: f64,
    /// When it is on.
    pub switching: InverterSwitching,
    /// It shuts down below this battery voltage [V], per 12 V nominal.
    pub cut_out: Volts,
}

impl Default for Inverter {
    fn default() -> Self {
        Self {
            fitted: false,
            continuous: Watts(1000.0),
            surge: Watts(2000.0),
            idle: Watts(12.0),
            full_load_frac: 0.88,
            switching: InverterSwitching::WhenUsed,
            cut_out: Volts(10.5),
        }
    }
}

impl Inverter {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { fitted: _, continuous, surge, idle, full_load_frac, switching, cut_out } = self;
        sanitiser.number(&mut continuous.0, INVERTER_W, 1000.0);
        sanitiser.number(&mut surge.0, INVERTER_SURGE_W, 2000.0);
        sanitiser.number(&mut idle.0, INVERTER_IDLE_W, 12.0);
        sanitiser.number(full_load_frac, INVERTER_FRAC, 0.88);
        if let InverterSwitching::PowerSave { asleep } = switching {
            sanitiser.number(&mut asleep.0, INVERTER_IDLE_W, 2.0);
        }
        sanitiser.number(&mut cut_out.0, INVERTER_CUT_OUT_V, 10.5);
    }

    /// Usual draw from the battery with nothing connected, low and high [W], of an inverter of this
    /// continuous rating: 3 to 6 W at 300 W, 8 to 12 at 1 kW, 10 to 22 at 2 kW, 18 to 35 at 3 kW,
    /// straight between and on in proportion beyond (common practice, no source).
    #[must_use]
    pub fn usual_idle(continuous: Watts) -> (Watts, Watts) {
        const USUAL_W: [(f64, f64, f64); 5] = [
            (0.0, 2.0, 4.0),
            (300.0, 3.0, 6.0),
            (1000.0, 8.0, 12.0),
            (2000.0, 10.0, 22.0),
            (3000.0, 18.0, 35.0),
        ];
        let rating = continuous.0.max(0.0);
        let pair = USUAL_W.windows(2).find(|pair| rating <= pair[1].0);
        match pair {
            Some(&[(from, low, high), (to, next_low, next_high)]) => {
                let t = (rating - from) / (to - from);
                (Watts(low + t * (next_low - low)), Watts(high + t * (next_high - high)))
            }
            _ => (Watts(18.0 / 3000.0 * rating), Watts(35.0 / 3000.0 * rating)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Usual ranges by rating (common practice, no source), and the default at its upper end.
    #[test]
    fn no_load_draw_grows_with_the_rating() {
        let usual = |rating| Inverter::usual_idle(Watts(rating));
        assert_eq!(usual(2000.0), (Watts(10.0), Watts(22.0)));
        assert_eq!(usual(1000.0).1, Inverter::default().idle);
        assert_eq!(usual(6000.0), (Watts(36.0), Watts(70.0)));
        let mut last = (Watts::ZERO, Watts::ZERO);
        for rating in 0..100 {
            let now = usual(f64::from(rating) * 50.0);
            assert!(now.0 >= last.0 && now.1 >= last.1 && now.0 < now.1, "{rating} {now:?}");
            last = now;
        }
    }
}
