//! The physics: equations with their symbols, units and sources, and nothing about people.

pub mod ampacity;
pub mod battery;
pub mod cable;
pub mod fridge;
pub mod fuse;
pub mod inverter;
pub mod short_circuit;
pub mod solar;
