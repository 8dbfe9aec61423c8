//! Shared by the tests that run against the library from outside.
//!
//! Each test file uses only part of it.
#![allow(dead_code)]

mod load_rows;
mod power_parts;
pub mod sample;
pub mod setups;
mod values;
