//! What a bank can deliver into a short circuit.
//!
//! I_k = U / R, with the open-circuit voltage of a full bank and the ohmic resistance of a new, warm
//! one (both of [`super::battery`]): the worst case. R falls with capacity and grows with blocks in
//! series. What the protection electronics of lithium would stop is not counted on. The maker's
//! short-circuit current comes first.

use super::battery::cell_data;
use super::fuse::prospective_current;
use crate::model::Bank;
use crate::units::{Amps, Ohms, Volts};

/// Ohmic resistance of the whole bank, new and warm.
#[must_use]
pub fn least_resistance(bank: &Bank) -> Ohms {
    scaled(cell_data(bank.chemistry).ohmic, bank)
}

/// Resistance of the whole bank, new and warm, as it is felt over minutes to an hour: ohmic and
/// polarisation.
#[must_use]
pub fn loaded_resistance(bank: &Bank) -> Ohms {
    scaled(cell_data(bank.chemistry).resistance, bank)
}

/// From one 12 V block of 100 Ah to the bank.
fn scaled(block: Ohms, bank: &Bank) -> Ohms {
    block * (bank.system.series_12v() * 100.0 / bank.rated_capacity().0.max(1.0))
}

/// Open-circuit voltage of the whole bank, full.
#[must_use]
pub fn full_open_circuit(bank: &Bank) -> Volts {
    let [.., full] = cell_data(bank.chemistry).ocv_v;
    Volts(full * bank.system.series_12v())
}

/// Prospective current of a short at the terminals of the bank.
#[must_use]
pub fn of_bank(bank: &Bank) -> Amps {
    prospective_current(full_open_circuit(bank), least_resistance(bank), Ohms::ZERO)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{Chemistry, SystemVoltage};
    use crate::units::AmpHours;

    /// 12.8 V behind 4 milliohms is 3200 A for lead-acid (computed); 100 Ah of LiFePO4 can exceed
    /// 2 to 5 kA (from memory).
    #[test]
    fn a_leisure_battery_delivers_thousands_of_amperes() {
        let lead = Bank::default();
        assert!((of_bank(&lead).0 - 3200.0).abs() < 150.0, "{:?}", of_bank(&lead));
        let lithium = Bank { chemistry: Chemistry::LiFePo4, ..Bank::default() };
        assert!((5000.0..10_000.0).contains(&of_bank(&lithium).0), "{:?}", of_bank(&lithium));
    }

    #[test]
    fn parallel_doubles_it_and_series_keeps_it() {
        let one = Bank { capacity_20h: AmpHours(80.0), ..Bank::default() };
        let two = Bank { parallel: 2, ..one.clone() };
        let series = Bank { system: SystemVoltage::V24, ..one.clone() };
        assert!((of_bank(&two) / of_bank(&one) - 2.0).abs() < 1e-12);
        assert!((of_bank(&series) / of_bank(&one) - 1.0).abs() < 1e-12);
    }
}
