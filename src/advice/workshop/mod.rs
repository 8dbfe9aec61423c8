//! The workshop: cables, fuses, and what may run together on the inverter.

pub mod inverter_check;
pub mod wiring;
pub mod wiring_runs;
