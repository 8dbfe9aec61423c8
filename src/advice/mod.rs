//! Advice: what the numbers mean for the user's own setup, as figures and findings without words.

pub mod inverter_check;
pub mod measure;
pub mod standards;
pub mod wiring;
pub mod wiring_runs;
