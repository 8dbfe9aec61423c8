//! Advice: what the numbers mean for the user's own setup, as figures and findings without words.

pub mod wiring;
pub mod wiring_runs;
