//! What a bank can deliver into a short circuit.
//!
//! I_k = U / R, with the open-circuit voltage of a full bank and the internal resistance of a new,
//! warm one: the worst case. R falls with capacity and grows with blocks in series. Common
//! practice, no source: 12 V lead-acid of 100 Ah 4 milliohms (3200 A), LiFePO4 of 100 Ah
//! 2.7 milliohms (5000 A; what its protection electronics would stop is not counted on). The
//! maker's short-circuit current comes first.

use super::fuse::prospective_current;
use crate::model::{Bank, Chemistry};
use crate::units::{Amps, Ohms, Volts};

/// Internal resistance of the whole bank, new and warm.
#[must_use]
pub fn least_resistance(bank: &Bank) -> Ohms {
    let block_of_100ah = match bank.chemistry {
        Chemistry::Flooded | Chemistry::Agm | Chemistry::Gel => 0.004,
        Chemistry::LiFePo4 => 0.0027,
    };
    let capacity = bank.rated_capacity().0.max(1.0);
    Ohms(block_of_100ah * bank.system.twelves() * 100.0 / capacity)
}

/// Open-circuit voltage of the whole bank, full.
#[must_use]
pub fn full_open_circuit(bank: &Bank) -> Volts {
    let block = if bank.chemistry.is_lead() { 12.8 } else { 13.5 };
    Volts(block * bank.system.twelves())
}

/// Prospective current of a short at the terminals of the bank.
#[must_use]
pub fn of_bank(bank: &Bank) -> Amps {
    prospective_current(full_open_circuit(bank), least_resistance(bank), Ohms::ZERO)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::SystemVoltage;
    use crate::units::AmpHours;

    /// 12.8 V behind 4 milliohms is 3200 A; a 100 Ah LiFePO4 bank can pass 2 to 5 kA (published).
    #[test]
    fn a_leisure_battery_delivers_thousands_of_amperes() {
        let lead = Bank::default();
        assert!((of_bank(&lead).0 - 3200.0).abs() < 1.0);
        let lithium = Bank { chemistry: Chemistry::LiFePo4, ..Bank::default() };
        assert!((2000.0..=5000.0).contains(&of_bank(&lithium).0));
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
