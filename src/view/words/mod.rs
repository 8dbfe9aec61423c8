//! Words for what the lower layers compute: names, units and sentences, without a place on the page.

pub mod changes;
pub mod loads;
pub mod names;
pub mod setups;
