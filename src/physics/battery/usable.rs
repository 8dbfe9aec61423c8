//! Usable energy of a bank: from the label's capacity through voltage, age, limit and cold.
//!
//! ```text
//! label     C_20 x U_nominal
//! voltage   E(1) / h - C_20 U_nominal      a full battery stands above its nominal voltage
//! age       E(1) (1 - 1 / h)               negative
//! kept back E(m) - E(0)                    below the lowest state of charge allowed
//! cold      E(m_T) - E(m)                  out of reach at the temperature T
//! usable    the sum of the above
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `C_20` | rated capacity at the 20 h rate | Ah |
//! | `U_nominal` | nominal voltage of the system | V |
//! | `E(s)` | energy held at the state of charge `s`, with age, 25 degrees Celsius | Wh |
//! | `h` | health | - |
//! | `m`, `m_T` | lowest state of charge allowed, the same in the cold ([`super::bank`]) | - |

use super::bank::BankPhysics;
use super::flow::Conditions;
use crate::model::Bank;
use crate::units::{Celsius, Hours, WattHours, Watts};

impl BankPhysics {
    /// The same bank where `mean` is drawn on average: what the cold takes follows the rate. Without
    /// it, the 20 h rate counts.
    #[must_use]
    pub fn drawn_at(mut self, mean: Watts) -> Self {
        let current = mean / self.curve.volts(0.5);
        self.rate = if current.0 > 0.0 { self.capacity / current } else { Hours(f64::INFINITY) };
        self
    }

    /// Energy within reach between full and the user's limit, at the terminals without load.
    #[must_use]
    pub fn usable(&self, conditions: &Conditions) -> WattHours {
        self.curve.energy(1.0) - self.curve.energy(conditions.low_frac)
    }
}

/// Why the usable energy is not the one on the label. Losses are positive.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct UsableEnergy {
    /// Rated capacity times nominal voltage.
    pub label: WattHours,
    /// What the real voltage between full and empty adds, negative if it takes.
    pub real_voltage: WattHours,
    /// Lost to age.
    pub aged: WattHours,
    /// Kept back below the lowest state of charge allowed.
    pub kept_back: WattHours,
    /// Out of reach at the temperature; negative where warmth gives more than 25 degrees Celsius.
    pub cold: WattHours,
    /// What is left to use.
    pub usable: WattHours,
}

impl UsableEnergy {
    /// At a battery temperature, taken out slowly (20 h or longer).
    #[must_use]
    pub fn at(bank: &Bank, temperature: Celsius) -> Self {
        let physics = BankPhysics::new(bank, Hours(1.0));
        let full = physics.curve.energy(1.0);
        let full_when_new = if bank.health_frac > 0.0 { full / bank.health_frac } else { full };
        let label = bank.rated_capacity() * bank.system.nominal();
        let lowest = physics.curve.energy(physics.soc_min_frac);
        let usable = physics.usable(&physics.conditions(temperature));
        Self {
            label,
            real_voltage: full_when_new - label,
            aged: full_when_new - full,
            kept_back: lowest,
            cold: full - lowest - usable,
            usable,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Chemistry;
    use crate::units::AmpHours;

    fn bank(chemistry: Chemistry) -> Bank {
        Bank { chemistry, soc_min_frac: chemistry.usual_soc_min_frac(), ..Bank::default() }
    }

    #[test]
    fn the_bill_adds_up() {
        for chemistry in Chemistry::ALL {
            for health_frac in [0.5, 0.8, 1.0] {
                for at in [-10.0, 0.0, 25.0, 40.0] {
                    let bank = Bank { health_frac, ..bank(chemistry) };
                    let bill = UsableEnergy::at(&bank, Celsius(at));
                    let sum =
                        bill.label + bill.real_voltage - bill.aged - bill.kept_back - bill.cold;
                    assert!((sum - bill.usable).0.abs() < 1e-9, "{chemistry:?} {at}: {bill:?}");
                }
            }
        }
    }

    /// Facts of the trade (from memory): 100 Ah of lead-acid used to one half give about 605 Wh,
    /// 100 Ah of LiFePO4 hold about 1280 Wh.
    #[test]
    fn a_hundred_ampere_hours() {
        let agm = UsableEnergy::at(&bank(Chemistry::Agm), Celsius(25.0));
        assert!((570.0..=650.0).contains(&agm.usable.0), "{agm:?}");
        let lithium = UsableEnergy::at(&bank(Chemistry::LiFePo4), Celsius(25.0));
        let held = lithium.label + lithium.real_voltage;
        assert!((1255.0..=1335.0).contains(&held.0), "{lithium:?}");
        assert!((1130.0..=1210.0).contains(&lithium.usable.0), "{lithium:?}");
    }

    #[test]
    fn cold_takes_more_from_lead_than_from_lithium() {
        let share = |chemistry| {
            let warm = UsableEnergy::at(&bank(chemistry), Celsius(25.0));
            let cold = UsableEnergy::at(&bank(chemistry), Celsius(0.0));
            assert!(warm.cold.0.abs() < 1e-9 && cold.cold.0 > 0.0);
            cold.usable / warm.usable
        };
        // IEEE 485 cell-size factor about 1.4 at 0 degrees: some 71 % are left (from memory).
        assert!((0.65..=0.78).contains(&share(Chemistry::Agm)));
        assert!(share(Chemistry::LiFePo4) > share(Chemistry::Agm));
    }

    #[test]
    fn twice_the_bank_is_twice_the_energy() {
        let one = UsableEnergy::at(&bank(Chemistry::Gel), Celsius(10.0));
        let two = Bank { capacity_20h: AmpHours(200.0), ..bank(Chemistry::Gel) };
        let two = UsableEnergy::at(&two, Celsius(10.0));
        assert!((two.usable / one.usable - 2.0).abs() < 1e-9);
    }
}
