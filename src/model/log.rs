//! Readings taken on site, and what was learned from them.

use super::sanitise::{FRAC, SINCE_ARRIVAL_H, Sanitiser};
use crate::units::{AmpHours, Amps, Hours, Volts, Watts};
use bounds::{BANK_V, SUN_FACTOR, USE_FACTOR, USED_AH};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Consumption, real over planned.
    pub const USE_FACTOR: Range = Range::new(0.2, 5.0);
    /// Solar yield, real over planned.
    pub const SUN_FACTOR: Range = Range::new(0.0, 3.0);
    /// Voltage of a bank [V].
    pub const BANK_V: Range = Range::new(5.0, 32.0);
    /// Charge used since full [Ah].
    pub const USED_AH: Range = Range::new(0.0, 80_000.0);
}

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

/// One row of a log that a monitor or controller kept. It belongs to no setup and is never stored.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Sample {
    /// Seconds from midnight of 1 January 1970 as the camp's clock shows it [s].
    pub at_s: f64,
    /// State of charge, 0..1.
    pub soc_frac: Option<f64>,
    /// Voltage of the battery [V].
    pub volts: Option<Volts>,
    /// Current into the battery [A], negative while it gives.
    pub amps: Option<Amps>,
    /// Power into the battery [W], negative while it gives.
    pub watts: Option<Watts>,
    /// Power that comes in from sun, engine or mains [W].
    pub charging: Option<Watts>,
    /// Power that the appliances draw [W].
    pub used: Option<Watts>,
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

impl Reading {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { at, kind } = self;
        sanitiser.number(&mut at.0, SINCE_ARRIVAL_H, 0.0);
        match kind {
            ReadingKind::StateOfCharge { soc_frac } => sanitiser.number(soc_frac, FRAC, 0.5),
            ReadingKind::Voltage { volts, rested } => {
                sanitiser.number(&mut volts.0, BANK_V, 12.5);
                sanitiser.number(&mut rested.0, SINCE_ARRIVAL_H, 0.0);
            }
            ReadingKind::Used { amp_hours } => sanitiser.number(&mut amp_hours.0, USED_AH, 0.0),
        }
    }
}

impl Correction {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { use_factor, sun_factor, restart } = self;
        sanitiser.number(use_factor, USE_FACTOR, 1.0);
        sanitiser.number(sun_factor, SUN_FACTOR, 1.0);
        if let Some((at, soc_frac)) = restart {
            sanitiser.number(&mut at.0, SINCE_ARRIVAL_H, 0.0);
            sanitiser.number(soc_frac, FRAC, 0.5);
        }
    }
}
