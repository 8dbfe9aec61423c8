//! Nightbank.
pub mod units;
#[cfg(feature = "web")]
pub mod view;
