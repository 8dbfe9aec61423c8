//! What a wiring check can find, as numbers without words.

use crate::units::{Amps, Celsius, SquareMillimetres, Volts};

/// How much a finding matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Severity {
    /// Good to know.
    Note,
    /// It will not work well.
    Warning,
    /// It can burn.
    Danger,
}

/// What is wrong or worth knowing about a run.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CableFinding {
    /// The drop passes what is allowed.
    DropTooHigh {
        /// Voltage lost.
        drop: Volts,
        /// Share of nominal, 0..1.
        drop_frac: f64,
        /// Share allowed, 0..1.
        allowed_frac: f64,
    },
    /// At the start the voltage at the appliance falls below its cut-out while the battery stands
    /// at 95 % of nominal.
    MayCutOut {
        /// Voltage at the appliance.
        at_load: Volts,
        /// Its cut-out.
        cut_out: Volts,
    },
    /// The current is more than the cable carries where it lies.
    CableTooThin {
        /// Current.
        current: Amps,
        /// What the cable carries.
        ampacity: Amps,
    },
    /// The conductor is thinner than the least for a single core.
    BelowMinimumSize {
        /// Its area.
        area: SquareMillimetres,
        /// The least.
        least: SquareMillimetres,
    },
    /// No fuse is fitted.
    NoFuse,
    /// The fuse lets more pass than the cable carries.
    FuseAboveCable {
        /// Fuse.
        fuse: Amps,
        /// What the cable carries.
        ampacity: Amps,
    },
    /// The fuse is less than 1.25 times the load.
    FuseBelowLoad {
        /// Fuse.
        fuse: Amps,
        /// Least rating.
        needed: Amps,
    },
    /// The start takes more than twice the rating: it may blow then.
    FuseMayBlowAtStart {
        /// Fuse.
        fuse: Amps,
        /// Starting current.
        start: Amps,
    },
    /// The cable carries the load but no rating of the series lies between.
    NoFuseFits {
        /// Least rating.
        from: Amps,
        /// Largest rating.
        to: Amps,
    },
    /// A short at the battery passes what a blade fuse can interrupt.
    HighInterruptNeeded {
        /// Current of a short at the battery.
        prospective: Amps,
        /// What a blade fuse interrupts.
        blade: Amps,
    },
    /// Passes as American wire gauge, but the SAE gauge of the same number is thinner and fails.
    FailsAsSaeGauge {
        /// Gauge number.
        gauge: i8,
        /// Share of nominal lost with the SAE gauge, 0..1.
        drop_frac: f64,
    },
    /// The conductor gets warmer than the working temperature the drop was computed for.
    WarmerThanAssumed {
        /// Estimated temperature.
        conductor: Celsius,
        /// Assumed with the run.
        assumed: Celsius,
    },
    /// The run names a load that is no longer there; its typed current is used.
    LoadMissing {
        /// Id named.
        load_id: u32,
    },
    /// No current is known: nothing could be checked but the size.
    CurrentUnknown,
}

impl CableFinding {
    /// How much it matters.
    #[must_use]
    pub fn severity(&self) -> Severity {
        match self {
            Self::CableTooThin { .. } | Self::NoFuse | Self::FuseAboveCable { .. } => {
                Severity::Danger
            }
            Self::DropTooHigh { .. }
            | Self::MayCutOut { .. }
            | Self::BelowMinimumSize { .. }
            | Self::FuseBelowLoad { .. }
            | Self::NoFuseFits { .. }
            | Self::HighInterruptNeeded { .. }
            | Self::LoadMissing { .. }
            | Self::CurrentUnknown => Severity::Warning,
            Self::FuseMayBlowAtStart { .. }
            | Self::FailsAsSaeGauge { .. }
            | Self::WarmerThanAssumed { .. } => Severity::Note,
        }
    }
}
