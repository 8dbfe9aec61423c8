//! What the sun brings: from the sun's place in the sky to the power at the battery.
//!
//! | file | step |
//! |---|---|
//! | [`sun`], [`sun_times`] | where the sun stands, rise and set, light above the air |
//! | [`irradiance`] | clear sky, split of the global light, light on a tilted plane |
//! | [`incidence_angle`] | reflection at the panel's cover |
//! | [`panel`] | cell temperature, efficiency, controller |
//! | [`day`] | one calendar day at a clearness, hour by hour |
//! | [`snow`] | what snow on the panels takes |
//! | [`yield_table`] | a whole trip, ready to be looked up for thousands of weather sequences |
//! | [`losses`] | where the light of a day goes |
//!
//! Not modelled: what a shaded cell does to the rest of its string beyond its share of the light, and the
//! spectrum of the light.

pub mod day;
pub mod incidence_angle;
pub mod irradiance;
pub mod losses;
pub mod panel;
pub mod snow;
pub mod sun;
pub mod sun_times;
pub mod yield_table;

pub use day::{ArrayDay, ArrayLight, DaySun, SunSample};
pub use losses::LossFlow;
pub use panel::{HourYield, Panel};
pub use sun::{JulianDate, Sun, SunDirection};
pub use sun_times::SunTimes;
pub use yield_table::{SolarTable, TripSky};
