//! The battery: voltage, losses, acceptance, rate, cold and storage.

pub mod acceptance;
pub mod bank;
pub mod chemistry;
pub mod open_circuit;
pub mod rate;
pub mod storage;
pub mod temperature;

pub use bank::{BankPhysics, BankState, Conditions, Flow};
pub use chemistry::{CellData, cell_data};
