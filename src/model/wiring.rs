//! Cable runs the user wants checked.

use crate::units::{Amps, Celsius, Metres, SquareMillimetres};
use serde::{Deserialize, Serialize};

/// Size of a conductor as it is sold.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum ConductorSize {
    /// Cross-section [mm2], IEC 60228.
    Metric {
        /// Cross-section [mm2].
        area: SquareMillimetres,
    },
    /// American wire gauge, ASTM B258: 0 is 1/0, -1 is 2/0, -3 is 4/0.
    Awg {
        /// Gauge number.
        gauge: i8,
    },
}

impl Default for ConductorSize {
    fn default() -> Self {
        Self::Metric { area: SquareMillimetres(6.0) }
    }
}

/// One run from the battery side to a consumer, inverter or charger.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct CableRun {
    /// What hangs on it.
    pub name: String,
    /// Load it feeds, if its current should follow that load.
    pub load_id: Option<u32>,
    /// Continuous current [A], where no load is named.
    pub amps: Amps,
    /// Length one way [m].
    pub length: Metres,
    /// Conductor.
    pub size: ConductorSize,
    /// Temperature of the conductor at work [degrees Celsius].
    pub working: Celsius,
    /// Fuse fitted [A]; 0 for none.
    pub fuse: Amps,
    /// Safety equipment or main feed: 3 % allowed instead of 10 %.
    pub critical: bool,
}

impl Default for CableRun {
    fn default() -> Self {
        Self {
            name: String::new(),
            load_id: None,
            amps: Amps(10.0),
            length: Metres(5.0),
            size: ConductorSize::default(),
            working: Celsius(50.0),
            fuse: Amps::ZERO,
            critical: false,
        }
    }
}
