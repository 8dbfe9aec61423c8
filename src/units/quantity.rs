//! The quantity types and the few products and quotients that are physical.

use serde::{Deserialize, Serialize};
use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

macro_rules! quantity {
    ($(#[$doc:meta])* $name:ident, $unit:literal) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub f64);

        impl $name {
            /// Symbol of the unit, as written after a number.
            pub const UNIT: &'static str = $unit;
            /// Nothing of this quantity.
            pub const ZERO: Self = Self(0.0);

            /// The smaller of the two.
            #[must_use]
            pub fn min(self, other: Self) -> Self {
                Self(self.0.min(other.0))
            }

            /// The larger of the two.
            #[must_use]
            pub fn max(self, other: Self) -> Self {
                Self(self.0.max(other.0))
            }

            /// Size without sign.
            #[must_use]
            pub fn abs(self) -> Self {
                Self(self.0.abs())
            }

            /// True for a number that is neither infinite nor NaN.
            #[must_use]
            pub fn is_finite(self) -> bool {
                self.0.is_finite()
            }
        }

        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl Neg for $name {
            type Output = Self;
            fn neg(self) -> Self {
                Self(-self.0)
            }
        }
        impl AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }
        impl SubAssign for $name {
            fn sub_assign(&mut self, other: Self) {
                self.0 -= other.0;
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }
        impl Mul<$name> for f64 {
            type Output = $name;
            fn mul(self, quantity: $name) -> $name {
                $name(self * quantity.0)
            }
        }
        impl Div<f64> for $name {
            type Output = Self;
            fn div(self, divisor: f64) -> Self {
                Self(self.0 / divisor)
            }
        }
        /// Ratio of two like quantities, a plain number.
        impl Div for $name {
            type Output = f64;
            fn div(self, other: Self) -> f64 {
                self.0 / other.0
            }
        }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(parts: I) -> Self {
                Self(parts.map(|part| part.0).sum())
            }
        }
    };
}

/// `$a * $b = $product`, in either order, and both quotients.
macro_rules! product {
    ($a:ident * $b:ident = $product:ident) => {
        impl Mul<$b> for $a {
            type Output = $product;
            fn mul(self, other: $b) -> $product {
                $product(self.0 * other.0)
            }
        }
        impl Mul<$a> for $b {
            type Output = $product;
            fn mul(self, other: $a) -> $product {
                $product(self.0 * other.0)
            }
        }
        impl Div<$b> for $product {
            type Output = $a;
            fn div(self, other: $b) -> $a {
                $a(self.0 / other.0)
            }
        }
        impl Div<$a> for $product {
            type Output = $b;
            fn div(self, other: $a) -> $b {
                $b(self.0 / other.0)
            }
        }
    };
}

quantity!(
    /// Power [W]: how fast energy flows. Not an amount of energy.
    Watts, "W"
);
quantity!(
    /// Energy [Wh]: an amount. One watt for one hour.
    WattHours, "Wh"
);
quantity!(
    /// Current [A]: how fast charge flows.
    Amps, "A"
);
quantity!(
    /// Charge [Ah]: an amount. One ampere for one hour.
    AmpHours, "Ah"
);
quantity!(
    /// Charge of a small cell [mAh], as printed on phones and power banks.
    MilliAmpHours, "mAh"
);
quantity!(
    /// Voltage [V].
    Volts, "V"
);
quantity!(
    /// Resistance [Ohm].
    Ohms, "Ω"
);
quantity!(
    /// Duration [h].
    Hours, "h"
);
quantity!(
    /// Temperature [degrees Celsius].
    Celsius, "°C"
);
quantity!(
    /// Angle [degrees]. Azimuths run clockwise from north.
    Degrees, "°"
);
quantity!(
    /// Length [m].
    Metres, "m"
);
quantity!(
    /// Conductor cross-section [mm2].
    SquareMillimetres, "mm²"
);
quantity!(
    /// Volume [L].
    Litres, "L"
);
quantity!(
    /// Flow [L/min].
    LitresPerMinute, "L/min"
);
quantity!(
    /// Mass [kg].
    Kilograms, "kg"
);
quantity!(
    /// Money in the user's own currency.
    Money, ""
);
quantity!(
    /// Irradiance [W/m2].
    WattsPerSquareMetre, "W/m²"
);
quantity!(
    /// Irradiation, an amount [Wh/m2].
    WattHoursPerSquareMetre, "Wh/m²"
);

product!(Watts * Hours = WattHours);
product!(Volts * Amps = Watts);
product!(Amps * Hours = AmpHours);
product!(Volts * AmpHours = WattHours);
product!(Amps * Ohms = Volts);
product!(WattsPerSquareMetre * Hours = WattHoursPerSquareMetre);

impl Degrees {
    /// The same angle in radians.
    #[must_use]
    pub fn radians(self) -> f64 {
        self.0.to_radians()
    }
}

impl Hours {
    /// From minutes.
    #[must_use]
    pub fn from_minutes(minutes: f64) -> Self {
        Self(minutes / 60.0)
    }

    /// From seconds.
    #[must_use]
    pub fn from_seconds(seconds: f64) -> Self {
        Self(seconds / super::SECONDS_PER_HOUR)
    }

    /// In minutes.
    #[must_use]
    pub fn minutes(self) -> f64 {
        self.0 * 60.0
    }
}

impl MilliAmpHours {
    /// The same charge in ampere-hours.
    #[must_use]
    pub fn amp_hours(self) -> AmpHours {
        AmpHours(self.0 / 1000.0)
    }
}

/// Time to move a volume at a flow; minutes come out of L / (L/min).
impl Div<LitresPerMinute> for Litres {
    type Output = Hours;
    fn div(self, flow: LitresPerMinute) -> Hours {
        Hours::from_minutes(self.0 / flow.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn products_and_quotients_agree() {
        let power = Volts(12.0) * Amps(5.0);
        assert_eq!(power, Watts(60.0));
        assert_eq!(power * Hours(2.0), WattHours(120.0));
        assert_eq!(WattHours(120.0) / Volts(12.0), AmpHours(10.0));
        assert_eq!(WattHours(120.0) / Watts(60.0), Hours(2.0));
        assert_eq!(AmpHours(10.0) / Hours(2.0), Amps(5.0));
        assert_eq!(Amps(100.0) * Ohms(0.004), Volts(0.4));
    }

    #[test]
    fn pumping_takes_volume_over_flow() {
        assert!((Litres(20.0) / LitresPerMinute(10.0)).minutes() - 2.0 < 1e-12);
    }

    #[test]
    fn a_phone_cell_is_milli_amp_hours() {
        assert_eq!(MilliAmpHours(5000.0).amp_hours() * Volts(3.85), WattHours(19.25));
    }
}
