//! The battery: voltage, losses, charging, rate, cold and storage.

pub mod bank;
pub mod chemistry;
pub mod flow;
pub mod heating;
pub mod open_circuit;
pub mod rate;
pub mod stages;
pub mod storage;
pub mod temperature;
pub mod usable;
pub mod ventilation;

pub use bank::BankPhysics;
pub use chemistry::{CellData, cell_data};
pub use flow::{BankState, Conditions, Flow};
pub use stages::{ChargeStage, ChargeStages, charge_stages};
pub use usable::UsableEnergy;
