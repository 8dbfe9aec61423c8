//! Equations of sun, panels, battery, inverter, cables and fuses, with symbols, units and sources.

pub mod ampacity;
pub mod battery;
pub mod cable;
pub mod fridge;
pub mod fuse;
pub mod indoors;
pub mod inverter;
pub mod short_circuit;
pub mod solar;
