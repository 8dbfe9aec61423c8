//! Readings taken on site, and what was learned from them.

use crate::units::{AmpHours, Hours, Volts};
use serde::{Deserialize, Serialize};

/// What was read.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ReadingKind {
    /// State of charge from a battery monitor, 0..1.
    StateOfCharge {
        /// State of charge, 0..1.
        soc_frac: f64,
    },
    /// Voltage at the terminals.
    Voltage {
        /// Voltage of the bank [V].
        volts: Volts,
        /// Nothing drew or charged for so long before [h].
        rested: Hours,
    },
    /// Charge used since full, from a battery monitor [Ah], positive.
    Used {
        /// Charge taken out since full [Ah].
        amp_hours: AmpHours,
    },
}

/// One reading.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    /// Time since arrival [h]; arrival is the trip's date and hour.
    pub at: Hours,
    /// What was read.
    pub kind: ReadingKind,
}

/// What readings taught, applied to the forecast.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Correction {
    /// Real consumption over planned, 0.2..5.
    pub use_factor: f64,
    /// Real solar yield over planned, 0..3.
    pub sun_factor: f64,
    /// The forecast starts again here: time since arrival [h] and state of charge there, 0..1.
    pub restart: Option<(Hours, f64)>,
}

impl Default for Correction {
    fn default() -> Self {
        Self { use_factor: 1.0, sun_factor: 1.0, restart: None }
    }
}
