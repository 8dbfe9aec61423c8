//! The inverter: mains voltage from the battery.

use crate::units::{Volts, Watts};
use serde::{Deserialize, Serialize};

/// When the inverter is switched on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum InverterSwitching {
    /// Left on day and night.
    AllDay,
    /// Switched on by hand only while something on it runs.
    #[default]
    WhenUsed,
    /// Left on in a power-save mode that wakes for a load.
    PowerSave {
        /// Draw while asleep [W].
        asleep: Watts,
    },
}

/// The inverter, if one is fitted.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Inverter {
    /// There is one.
    pub fitted: bool,
    /// Continuous rating on the mains side [W].
    pub continuous: Watts,
    /// Rating for a few seconds [W].
    pub surge: Watts,
    /// Draw from the battery with nothing connected [W].
    pub idle: Watts,
    /// Efficiency at the continuous rating, 0..1, idle draw included.
    pub full_load_frac: f64,
    /// When it is on.
    pub switching: InverterSwitching,
    /// It shuts down below this battery voltage [V], per 12 V nominal.
    pub cut_out: Volts,
}

impl Default for Inverter {
    fn default() -> Self {
        Self {
            fitted: false,
            continuous: Watts(1000.0),
            surge: Watts(2000.0),
            idle: Watts(12.0),
            full_load_frac: 0.88,
            switching: InverterSwitching::WhenUsed,
            cut_out: Volts(10.5),
        }
    }
}
