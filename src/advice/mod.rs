//! Advice for the user's own setup: what to change, compare, read and check, as figures without words.
//!
//! [`trial`] plays a setup's trip in full; everything else asks it. [`changes`] are single changes,
//! what they ask for, and lists and series of them; [`compare`] sets whole setups side by side;
//! [`on_site`] is about readings and measurements, [`log`] about whole logs of them; [`workshop`] about cables,
//! fuses and inverter.

pub mod changes;
pub mod compare;
pub mod log;
pub mod on_site;
pub mod season;
pub mod sizing;
pub mod trial;
pub mod workshop;
