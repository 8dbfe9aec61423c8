//! What the user tells us: plain data, no computation beyond what a field means, no browser types.
//!
//! A [`Setup`] is everything: loads, battery bank, inverter, what charges it, the trip, prices and
//! the log kept on site. Links, files and local storage all carry exactly this, and all of them
//! pass through [`Setup::sanitised`] on the way in.

pub mod bank;
pub mod catalogue;
pub mod charging;
pub mod climate;
pub mod example;
pub mod inverter;
pub mod light_scenes;
pub mod limits;
pub mod load;
pub mod log;
pub mod money;
pub mod places;
pub mod regions;
mod sanitise;
pub mod setup;
pub mod taking;
pub mod trip;
pub mod typed_words;
pub mod vehicle;
pub mod wiring;

pub use bank::{Bank, BatteryPlace, Chemistry, SystemVoltage};
pub use charging::{
    Controller, Driving, DrivingCharger, EveryNth, HookUp, Mounting, OtherSource, OtherSourceKind,
    Shade, SolarArray,
};
pub use climate::{AirSource, Climate, ClimateSource};
pub use inverter::{Inverter, InverterSwitching};
pub use load::{
    CutOut, Draw, DrawSource, DutyCycle, Feed, Group, Load, LoadPlace, StayEnd, TimesOfDay, Usage,
    Window,
};
pub use log::{Correction, Reading, ReadingKind, Sample};
pub use money::Prices;
pub use setup::Setup;
pub use trip::{DayPlan, MonthlySun, Place, Trip, Weather};
pub use vehicle::Vehicle;
pub use wiring::{CableRun, ConductorSize};
