//! Quantities with their units in the type.
//!
//! Every quantity that crosses a module border is one of these types or carries its unit in its
//! name (`soc_frac`, `tilt_deg`). They convert only where physics allows: power times time is
//! energy, voltage times current is power; a power can never stand where an energy is wanted.
//!
//! ```compile_fail
//! use nightbank::units::{WattHours, Watts};
//! let energy: WattHours = Watts(60.0); // a power is not an energy
//! ```
//!
//! ```
//! use nightbank::units::{Hours, Volts, WattHours, Watts};
//! let energy: WattHours = Watts(60.0) * Hours(2.0);
//! assert_eq!(energy, WattHours(120.0));
//! assert_eq!((Watts(60.0) / Volts(12.0)).0, 5.0);
//! ```

mod quantity;
pub mod reader;

pub use quantity::{
    AmpHours, Amps, Celsius, Degrees, Hours, Kilograms, Litres, LitresPerMinute, Metres,
    MilliAmpHours, Money, Ohms, SquareMillimetres, Volts, WattHours, WattHoursPerSquareMetre,
    Watts, WattsPerSquareMetre,
};
pub use reader::{Measure, UnitSystem};

/// Hours in a day.
pub const HOURS_PER_DAY: f64 = 24.0;
/// Minutes in a day.
pub const MINUTES_PER_DAY: f64 = 1440.0;
/// Seconds in an hour.
pub const SECONDS_PER_HOUR: f64 = 3600.0;
