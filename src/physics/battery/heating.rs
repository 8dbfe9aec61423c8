//! LiFePO4 with heating of its own: energy to warm the cells, and what holding them warm takes.
//!
//! ```text
//! w' = w e^(-dt/tau) + (P / U) (1 - e^(-dt/tau)),   tau = M / U
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `w` | cells above their surroundings | K |
//! | `P` | power of the heating, out of a surplus alone | W |
//! | `M` | heat to warm the cells by a kelvin | Wh/K |
//! | `U` | heat lost to the surroundings | W/K |
//!
//! Warm cells count for charging only, not for capacity: that stays on the careful side.

use super::bank::BankPhysics;
use super::flow::{BankState, Conditions};
use crate::units::Watts;

/// Heat it takes to warm LiFePO4 cells by a kelvin, per ampere-hour of a 12 V block [Wh/K]: 11 kg for
/// 100 Ah at 1 kJ/(kg K) (from memory).
const WARMTH_WH_PER_K_AH: f64 = 0.031;
/// Heat a block loses to its surroundings per ampere-hour [W/K]: 6 W for 100 Ah held 10 K above them
/// (common practice, no source).
const LOSS_W_PER_K_AH: f64 = 0.006;
/// Heated cells are kept so much above freezing [K] (common practice, no source).
const ABOVE_FREEZING_K: f64 = 5.0;

impl BankPhysics {
    /// Whether the cells have a heating of their own.
    #[inline]
    #[must_use]
    pub fn warms_itself(&self) -> bool {
        self.heated
    }

    /// Warms heated cells out of a surplus at the terminals for one step, first up to freezing, then
    /// `ABOVE_FREEZING_K` above it. Tells the mean power taken and the share of the step in which the
    /// cells may be charged, 0..1.
    #[inline]
    pub fn warm(&self, state: &mut BankState, c: &Conditions, surplus: Watts) -> (Watts, f64) {
        if !self.heated {
            return (Watts::ZERO, if c.may_charge { 1.0 } else { 0.0 });
        }
        let loss = LOSS_W_PER_K_AH * self.capacity.0 * self.series_12v;
        let kept = (-self.dt.0 * LOSS_W_PER_K_AH / WARMTH_WH_PER_K_AH).exp();
        let (before, frozen_by) = (state.warmth_k, -c.temperature.0);
        let k_per_w = (1.0 - kept) / loss;
        let wanted = (frozen_by + ABOVE_FREEZING_K - before * kept) / k_per_w;
        let power = wanted.min(c.heating.0).min(surplus.0).max(0.0);
        let after = before * kept + power * k_per_w;
        state.warmth_k = after;
        let (low, high) = (before.min(after), before.max(after));
        let share = if low >= frozen_by {
            1.0
        } else if high <= frozen_by {
            0.0
        } else {
            (high - frozen_by) / (high - low)
        };
        (Watts(power), share)
    }
}
