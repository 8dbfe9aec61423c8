//! Simulates the trip hour by hour, in average weather and in hundreds of weather sequences.

pub mod air_response;
pub mod charging;
pub mod climate;
pub mod course;
pub mod demand;
pub mod full_charge;
pub mod ledger;
pub mod odds;
mod offer;
pub mod outlook;
pub mod parked;
pub mod plan;
pub mod supply;
pub mod surroundings;
pub mod weather;

pub use charging::{ChargeSession, Charger, charge_session};
pub use climate::{climate_in, climate_of};
pub use course::{Course, CutOutEvent, HourRecord};
pub use ledger::Ledger;
pub use odds::{Odds, OddsRun};
pub use outlook::{LoadShare, Outlook};
pub use plan::{MonthlyClimate, TripPlan};
