//! Names, units and sentences for what the lower layers compute, shared by the views.

pub mod changes;
pub mod loads;
pub mod names;
pub mod setups;
