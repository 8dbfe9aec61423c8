//! Nightbank: how many nights will a leisure battery last here, and what should change?
//!
//! Layers point one way: [`units`] <- [`model`] <- [`physics`] <- forecast <- advice; links and
//! storage stand beside the model; [`import`] reads what people bring, [`export`] writes what they
//! take away; the page stands on top.
pub mod advice;
pub mod export;
pub mod forecast;
pub mod i18n;
pub mod import;
pub mod link;
pub mod model;
pub mod physics;
pub mod store;
pub mod units;
#[cfg(feature = "web")]
pub mod view;
