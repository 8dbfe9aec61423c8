//! Capacity against rate: the kinetic two-well model.
//!
//! Peukert's rule holds for one constant current and not for loads that come and go, whose lost charge
//! returns at rest. The simulation uses the kinetic battery model of Manwell & McGowan (1993), which
//! handles rest:
//! a share `c` of the charge is available at once, the rest seeps over at the rate `k`.
//! With the total charge `y = y1 + y2` and the height difference `d = y2/(1-c) - y1/c`,
//!
//! ```text
//! dy/dt = -I,   dd/dt = I/c - k d,   available: y1 = c (y - (1-c) d)
//! ```
//!
//! so the charge stranded by the rate is `(1-c) d`, and each step is exact for constant current.
//! The most a constant current can draw in the time T is
//! `q_max(T) = q k c T / (1 - e^{-kT} + c (kT - 1 + e^{-kT}))`, which goes to `c q` for T -> 0 and
//! to `q` for T -> infinity; `q` is chosen so that 20 h give the rated capacity.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `I` | discharge current | A |
//! | `c`, `k` | available share, rate constant | -, 1/h |
//! | `q` | charge in both wells when full | Ah |

use crate::units::{AmpHours, Amps, Hours};

/// Charge a constant current can draw in the time `t`, kinetic model with `q` in both wells.
#[must_use]
pub fn kinetic_charge(q: AmpHours, available_frac: f64, rate_per_h: f64, t: Hours) -> AmpHours {
    let (c, kt) = (available_frac, rate_per_h * t.0);
    if kt < 1e-9 {
        return q * c;
    }
    let e = (-kt).exp();
    q * (kt * c / (1.0 - e + c * (kt - 1.0 + e)))
}

/// The two wells as the simulation steps them.
#[derive(Clone, Copy, Debug)]
pub struct Kinetic {
    /// Share stranded per unit of height difference, `1 - c`.
    pub bound_frac: f64,
    /// Charge held beyond the rated capacity when full [Ah]; reached only by slow discharge.
    pub reserve: AmpHours,
    decay: f64,
    gain_per_amp: f64,
}

impl Kinetic {
    /// For a bank of 20 h capacity `rated`, stepped by `dt`.
    #[must_use]
    pub fn new(rated: AmpHours, available_frac: f64, rate_per_h: f64, dt: Hours) -> Self {
        let at_20h = kinetic_charge(AmpHours(1.0), available_frac, rate_per_h, Hours(20.0));
        let both = rated.0 / at_20h.0;
        let decay = (-rate_per_h * dt.0).exp();
        Self {
            bound_frac: 1.0 - available_frac,
            reserve: AmpHours(both - rated.0),
            decay,
            gain_per_amp: (1.0 - decay) / (available_frac * rate_per_h),
        }
    }

    /// Height difference after one step at a constant discharge current (negative: charging).
    #[inline]
    #[must_use]
    pub fn advance(&self, difference_ah: f64, discharge: Amps) -> f64 {
        difference_ah * self.decay + discharge.0 * self.gain_per_amp
    }

    /// Charge that this height difference keeps out of reach for now.
    #[inline]
    #[must_use]
    pub fn stranded(&self, difference_ah: f64) -> AmpHours {
        AmpHours((self.bound_frac * difference_ah - self.reserve.0).max(0.0))
    }
}
