//! Everything the user has told us.

use super::{
    Bank, CableRun, Correction, Driving, HookUp, Inverter, Load, OtherSource, Prices, Reading,
    SolarArray, Trip,
};
use serde::{Deserialize, Serialize};

/// One whole setup: what a link, a file and the storage carry.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Setup {
    /// Name for people.
    pub name: String,
    /// This is the invented example, not the user's own.
    pub example: bool,
    /// Appliances.
    pub loads: Vec<Load>,
    /// Battery.
    pub bank: Bank,
    /// Inverter.
    pub inverter: Inverter,
    /// Solar.
    pub solar: Vec<SolarArray>,
    /// Engine.
    pub driving: Driving,
    /// Mains.
    pub hook_up: HookUp,
    /// Generator, fuel cell, wind.
    pub other: Vec<OtherSource>,
    /// Where and when.
    pub trip: Trip,
    /// Prices and weights.
    pub prices: Prices,
    /// Readings on site.
    pub readings: Vec<Reading>,
    /// What they taught.
    pub correction: Correction,
    /// Cables to check.
    pub cables: Vec<CableRun>,
}

impl Setup {
    /// An id no load of this setup has.
    #[must_use]
    pub fn fresh_load_id(&self) -> u32 {
        self.loads.iter().map(|load| load.id).max().map_or(1, |max| max.wrapping_add(1).max(1))
    }

    /// The load with this id.
    #[must_use]
    pub fn load(&self, id: u32) -> Option<&Load> {
        self.loads.iter().find(|load| load.id == id)
    }

    /// The load with this id, to be changed.
    pub fn load_mut(&mut self, id: u32) -> Option<&mut Load> {
        self.loads.iter_mut().find(|load| load.id == id)
    }

    /// Loads that count.
    pub fn enabled_loads(&self) -> impl Iterator<Item = &Load> {
        self.loads.iter().filter(|load| load.enabled)
    }
}
