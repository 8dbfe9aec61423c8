//! The ways to find what something draws.

use crate::view::focus;
use crate::view::lang::{key, t};

/// How to find what something draws.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Method {
    /// An ammeter in series, or a clamp.
    #[default]
    Current,
    /// A power meter in series.
    Power,
    /// Energy counted over a time.
    Energy,
    /// The solar controller's current with the device on and off.
    Controller,
    /// A battery monitor before and after.
    Monitor,
    /// A mains meter between inverter and device.
    Socket,
    /// Run times of a fridge.
    Fridge,
}

impl Method {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 7] = [
        Self::Current,
        Self::Power,
        Self::Energy,
        Self::Controller,
        Self::Monitor,
        Self::Socket,
        Self::Fridge,
    ];

    pub(super) fn title(self) -> String {
        t(match self {
            Self::Current => key!("method-current"),
            Self::Power => key!("method-power"),
            Self::Energy => key!("method-energy"),
            Self::Controller => key!("method-controller"),
            Self::Monitor => key!("method-monitor"),
            Self::Socket => key!("method-socket"),
            Self::Fridge => key!("method-fridge"),
        })
    }

    pub(super) fn told(self) -> String {
        t(match self {
            Self::Current => key!("method-current-told"),
            Self::Power => key!("method-power-told"),
            Self::Energy => key!("method-energy-told"),
            Self::Controller => key!("method-controller-told"),
            Self::Monitor => key!("method-monitor-told"),
            Self::Socket => key!("method-socket-told"),
            Self::Fridge => key!("method-fridge-told"),
        })
    }
}

/// Moves the focus to what was measured.
pub(super) fn to_result() {
    focus::to("measured-title");
}
