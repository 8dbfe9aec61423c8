//! What is allowed in every field: one list for typing, links, files and storage.
//!
//! The page checks a typed number against the same [`Range`] that [`Setup::sanitised`] uses to pull
//! foreign data into bounds, so nothing can enter by one door that another refuses. Bounds stand
//! beside the fields they are for, in the `bounds` of each file, and are gathered here.
//!
//! [`Setup::sanitised`]: super::Setup::sanitised

pub use super::bank::bounds::*;
pub use super::charging::bounds::*;
pub use super::inverter::bounds::*;
pub use super::load::bounds::*;
pub use super::log::bounds::*;
pub use super::money::bounds::*;
pub use super::sanitise::{
    CABLE_M, CABLE_MM2, DRAW_A, EVERY_DAYS, FRAC, HOURS_A_DAY, MAX_NAME_CHARS, MINUTE_OF_DAY,
    MINUTES_A_DAY, Range, SINCE_ARRIVAL_H, SUN_WH_M2,
};
pub use super::setup::bounds::*;
pub use super::trip::bounds::*;
pub use super::wiring::bounds::*;
