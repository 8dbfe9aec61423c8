//! Formulas and ways of speaking that the product does not use, to compare it with.

pub mod cable_sizes;
pub mod peukert;
pub mod standards;
pub mod sun;
pub mod taper;
