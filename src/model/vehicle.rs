//! What somebody travels in: how much heat it loses.

use serde::{Deserialize, Serialize};

/// What somebody travels in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Vehicle {
    /// Camper van.
    #[default]
    Van,
    /// Caravan.
    Caravan,
    /// Motorhome.
    Motorhome,
}

impl Vehicle {
    /// All of them, in the order they are listed.
    pub const ALL: [Self; 3] = [Self::Van, Self::Caravan, Self::Motorhome];

    /// Heat lost through walls, windows and fresh air [W/K] (common practice, no source: 2 kW keep a
    /// van warm in frost, a motorhome takes half as much again).
    #[must_use]
    pub fn heat_loss_w_per_k(self) -> f64 {
        match self {
            Self::Van => 85.0,
            Self::Caravan => 100.0,
            Self::Motorhome => 120.0,
        }
    }
}
