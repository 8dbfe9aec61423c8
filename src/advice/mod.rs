//! Advice: what the numbers mean for the user's own setup, as figures and findings without words.

pub mod battery_reasons;
pub mod candidates;
pub mod change;
pub mod compare;
pub mod cost;
pub mod differences;
mod edits;
pub mod fit;
pub mod helps;
pub mod inverter_check;
pub mod measure;
pub mod on_site;
pub mod season;
pub mod sizing;
pub mod sizing_result;
pub mod standards;
pub mod trial;
pub mod unknowns;
pub mod way;
pub mod ways;
pub mod wiring;
pub mod wiring_runs;
