//! Cable runs the user wants checked.

use super::sanitise::{CABLE_M, CABLE_MM2, DRAW_A, MAX_NAME_CHARS, Sanitiser};
use crate::units::{Amps, Celsius, Metres, SquareMillimetres};
use bounds::{CABLE_AWG, CONDUCTOR_C, FUSE_A};
use serde::{Deserialize, Serialize};

/// What the fields may hold.
pub mod bounds {
    use crate::model::sanitise::Range;

    /// Wire gauge: -3 is 4/0.
    pub const CABLE_AWG: Range = Range::new(-3.0, 22.0);
    /// Conductor temperature [degrees Celsius].
    pub const CONDUCTOR_C: Range = Range::new(-20.0, 105.0);
    /// Fuse [A].
    pub const FUSE_A: Range = Range::new(0.0, 600.0);
}

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

impl CableRun {
    /// Every field within its bounds.
    pub(super) fn sanitise(&mut self, sanitiser: &mut Sanitiser) {
        let Self { name, load_id: _, amps, length, size, working, fuse, critical: _ } = self;
        sanitiser.text(name, MAX_NAME_CHARS);
        sanitiser.number(&mut amps.0, DRAW_A, 0.0);
        sanitiser.number(&mut length.0, CABLE_M, 1.0);
        match size {
            ConductorSize::Metric { area } => sanitiser.number(&mut area.0, CABLE_MM2, 6.0),
            ConductorSize::Awg { gauge } => sanitiser.whole(gauge, CABLE_AWG),
        }
        sanitiser.number(&mut working.0, CONDUCTOR_C, 50.0);
        sanitiser.number(&mut fuse.0, FUSE_A, 0.0);
    }
}
