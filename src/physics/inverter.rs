//! What an inverter takes from the battery to deliver mains power.
//!
//! P_dc = P0 + P + r P^2, with
//! - P   power on the mains side [W],
//! - P_dc power on the battery side [W],
//! - P0  draw with nothing connected [W] (control, transformer, fan: always there while on),
//! - r   ohmic part [1/W]: losses in switches and windings grow with the square of the current.
//!
//! r follows from the efficiency eta at the continuous rating P_n, idle draw included:
//! P_n / eta = P0 + P_n + r P_n^2, so r = (P_n / eta - P0 - P_n) / P_n^2.
//!
//! The usual quadratic loss model of inverters (H. Schmidt and D. U. Sauer, Sonnenenergie 4/1996,
//! from memory), here without the small linear part, which idle draw and full-load efficiency
//! alone cannot tell.
//! Power is real power; the rating of an inverter is in volt-amperes, so a load with a poor power
//! factor reaches it earlier than its watts say.

use crate::model::Inverter;
use crate::units::{Amps, Volts, Watts};

/// The two numbers of the loss curve; cheap to evaluate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct InverterCurve {
    /// Draw from the battery while on with nothing connected [W].
    pub p0: Watts,
    /// Ohmic loss coefficient [1/W], not negative.
    pub r_per_watt: f64,
}

impl InverterCurve {
    /// The curve of an inverter.
    ///
    /// Where idle draw and full-load efficiency contradict each other (idle alone already costs
    /// more than the efficiency allows, see [`is_consistent`]), the idle draw is believed and
    /// r is 0.
    #[must_use]
    pub fn of(inverter: &Inverter) -> Self {
        let p0 = Watts(finite_or_zero(inverter.idle.0).max(0.0));
        let rating = finite_or_zero(inverter.continuous.0);
        let r = if rating > 0.0 && inverter.full_load_frac > 0.0 {
            (rating / inverter.full_load_frac - p0.0 - rating) / (rating * rating)
        } else {
            0.0
        };
        Self { p0, r_per_watt: finite_or_zero(r).max(0.0) }
    }

    /// Power from the battery [W] for `ac` on the mains side. Nothing connected, or a negative
    /// or undefined power, gives the idle draw.
    #[must_use]
    pub fn dc_power(&self, ac: Watts) -> Watts {
        let p = ac.0.max(0.0);
        Watts(self.p0.0 + p + self.r_per_watt * p * p)
    }

    /// Mains power over battery power at `ac`, 0..1; 0 with nothing connected.
    #[must_use]
    pub fn efficiency_frac(&self, ac: Watts) -> f64 {
        if ac.0 > 0.0 { ac / self.dc_power(ac) } else { 0.0 }
    }

    /// Current from the battery [A] for `ac` on the mains side at a battery voltage above 0;
    /// 0 at any other voltage.
    #[must_use]
    pub fn dc_current(&self, ac: Watts, battery: Volts) -> Amps {
        if battery.0 > 0.0 { self.dc_power(ac) / battery } else { Amps::ZERO }
    }
}

/// Power from the battery [W] while the inverter delivers `ac`; idle draw included.
#[must_use]
pub fn dc_power(inverter: &Inverter, ac: Watts) -> Watts {
    InverterCurve::of(inverter).dc_power(ac)
}

/// Power from the battery [W] while on with nothing connected.
#[must_use]
pub fn idle(inverter: &Inverter) -> Watts {
    InverterCurve::of(inverter).p0
}

/// Whether idle draw and full-load efficiency can both be true: the idle draw alone must not cost
/// more than the efficiency allows at the continuous rating.
#[must_use]
pub fn is_consistent(inverter: &Inverter) -> bool {
    inverter.continuous.0 > 0.0
        && inverter.full_load_frac > 0.0
        && inverter.continuous.0 / inverter.full_load_frac
            >= inverter.continuous.0 + inverter.idle.0
}

fn finite_or_zero(value: f64) -> f64 {
    if value.is_finite() { value } else { 0.0 }
}
