//! What the bank meets in an hour, the state it is in, and what one step moves. Only names and units;
//! the equations stand in [`super::bank`].

use crate::units::{Amps, Celsius, Hours, Ohms, Volts, WattHours, Watts};

/// What the bank meets during an hour; depends on temperature alone.
#[derive(Clone, Copy, Debug)]
pub struct Conditions {
    /// Battery temperature.
    pub temperature: Celsius,
    /// Share of the capacity within reach, 0..1.
    pub available_frac: f64,
    /// State of charge below which nothing more comes out, 0..1.
    pub empty_frac: f64,
    /// State of charge the user does not want to go below, 0..1.
    pub low_frac: f64,
    /// Resistance.
    pub resistance: Ohms,
    /// Time constant of the taper.
    pub taper: Hours,
    /// Charge voltage.
    pub absorption: Volts,
    /// Charge lost by itself per hour [A].
    pub self_discharge: Amps,
    /// It may be charged (false: lithium in the cold).
    pub may_charge: bool,
    /// Most power of the battery's own heating, below freezing.
    pub heating: Watts,
}

/// Charge and wells.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BankState {
    /// Charge as a share of the capacity, 0..1, as a battery monitor counts it.
    pub soc_frac: f64,
    /// Height difference of the kinetic wells [Ah].
    pub difference_ah: f64,
    /// Heated cells above their surroundings [K].
    pub warmth_k: f64,
}

impl BankState {
    /// At rest at a state of charge.
    #[must_use]
    pub fn rested(soc_frac: f64) -> Self {
        Self { soc_frac: soc_frac.clamp(0.0, 1.0), difference_ah: 0.0, warmth_k: 0.0 }
    }
}

/// What one step moved. Energies at the distribution unless said otherwise; none is negative except
/// `stored`.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Flow {
    /// Taken in.
    pub taken: WattHours,
    /// Given out, behind the cables.
    pub given: WattHours,
    /// Lost to charge efficiency.
    pub lost_charging: WattHours,
    /// Lost in resistance and polarisation.
    pub lost_resistance: WattHours,
    /// Lost in the cables between the bank and the distribution.
    pub lost_cable: WattHours,
    /// Lost by self-discharge.
    pub lost_self: WattHours,
    /// Change of the energy held.
    pub stored: WattHours,
    /// Mean current, charging positive.
    pub current: Amps,
    /// Voltage at the terminals.
    pub volts: Volts,
}

impl Flow {
    /// What does not add up: in less out less lost less stored. Zero but for rounding.
    #[must_use]
    pub fn residual(&self) -> WattHours {
        self.taken
            - self.given
            - self.lost_charging
            - self.lost_resistance
            - self.lost_cable
            - self.lost_self
            - self.stored
    }
}
