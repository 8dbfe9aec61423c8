//! What the weather may bring, and what that does to the battery.

pub mod weather;
