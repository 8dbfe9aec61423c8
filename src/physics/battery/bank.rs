//! One step of the whole bank: power in or out, charge, voltage and losses.
//!
//! State is the charge `q` and the kinetic height difference `d` ([`super::rate`]).
//!
//! ```text
//! discharging at the power P:  (V - I (R + R_c)) I = P  dq = -I dt
//! charging    with the power P: (V + I R_p) I = P       dq = eta I dt,  I <= I_acc
//! V = (E(q1) - E(q0)) / (q1 - q0)                      mean rested voltage over the step
//! ```
//!
//! In bulk the charger's current goes in and the voltage rises. Once the charge voltage is reached the
//! battery sets the current, which falls as it fills: `I_acc = min(Q_rem / tau, I_bulk)`. Below its taper
//! the voltage sits between rest and the charge voltage in proportion to the share of `I_acc` that is
//! used, a linear polarisation `R_p = (V_abs - V) / I_acc`. Full, it takes nothing; the charger floats and
//! carries the loads. The taper is a usual simplification, from memory; that the last fifth of a
//! lead-acid battery takes 4 to 6 h sets its time constant ([`super::chemistry`]).
//!
//! `V` is found by iteration, so the energy of a step closes: what went in is what is stored and
//! what was lost, to 1e-9. Charge stranded by a fast draw pulls the voltage down, and with it
//! whatever has a low-voltage cut-out; it is not lost, so it does not end the trip by itself. Cold
//! does not destroy charge; it puts the lowest part out of reach:
//! at the capacity share `g(T)` the bank is empty at `1 - g` and the user's limit `m` lies at
//! `1 - (1 - m) g`. Kirchhoff's laws and the conservation of charge and energy; what differs
//! between batteries is in [`super::chemistry`], with its sources.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `q` | charge, 25 degrees Celsius, with age | Ah |
//! | `E(q)` | energy held | Wh |
//! | `R`, `R_p` | resistance, polarisation resistance | Ohm |
//! | `R_c` | cables to the distribution, both ways | Ohm |
//! | `eta` | charge efficiency | - |
//! | `Q_rem`, `tau` | charge missing to full, time constant of the taper | Ah, h |
//! | `g(T)` | share of capacity within reach | - |

use super::chemistry::{CellData, cell_data};
use super::flow::{BankState, Conditions, Flow};
use super::open_circuit::OpenCircuit;
use super::rate::Kinetic;
use super::temperature;
use crate::model::{Bank, Chemistry};
use crate::units::{AmpHours, Amps, Celsius, Hours, Ohms, Volts, Watts};

/// A month for self-discharge figures.
const MONTH: Hours = Hours(30.0 * 24.0);
/// Rate of the rated capacity.
const RATED_AT: Hours = Hours(20.0);
/// Passes to find the mean voltage of a step; each gains about three decimals.
const PASSES: usize = 5;
/// A current so much above what the battery takes brings it to the charge voltage, share (our choice).
const TO_CHARGE_VOLTAGE: f64 = 0.1;
/// A mean voltage is found when it changes by less than this [V].
const SETTLED_V: f64 = 1e-11;

/// Most power of the heating, per ampere-hour [W]: 25 W for 100 Ah (common practice, no source).
const HEATING_W_PER_AH: f64 = 0.25;

/// Most power of the heating of a bank, capacity counted at 12 V.
fn most_heating(capacity: AmpHours) -> Watts {
    Watts(HEATING_W_PER_AH * capacity.0)
}

/// A bank ready to be stepped.
#[derive(Clone, Debug)]
pub struct BankPhysics {
    /// Chemistry data of a 12 V block.
    pub cell: &'static CellData,
    /// Chemistry.
    pub chemistry: Chemistry,
    /// Capacity with age at 25 degrees Celsius.
    pub capacity: AmpHours,
    /// Lowest state of charge allowed at 25 degrees Celsius, 0..1.
    pub soc_min_frac: f64,
    /// Voltage and energy over state of charge.
    pub curve: OpenCircuit,
    pub(super) series_12v: f64,
    resistance_25c: Ohms,
    cable: Ohms,
    kinetic: Kinetic,
    pub(super) dt: Hours,
    cold_charge: bool,
    pub(super) heated: bool,
    /// Time in which the mean draw takes the rated capacity.
    pub(super) rate: Hours,
}

impl BankPhysics {
    /// From the user's bank, stepped by `dt`.
    #[must_use]
    pub fn new(bank: &Bank, dt: Hours) -> Self {
        let cell = cell_data(bank.chemistry);
        let capacity = bank.aged_capacity().max(AmpHours(0.1));
        let series_12v = bank.system.series_12v();
        // Resistance falls with size and rises as the battery ages.
        let per_100ah = cell.resistance.0 * series_12v * 100.0 / capacity.0;
        Self {
            cell,
            chemistry: bank.chemistry,
            capacity,
            soc_min_frac: bank.soc_min_frac,
            curve: OpenCircuit::new(bank.chemistry, bank.system, capacity),
            series_12v,
            resistance_25c: Ohms(per_100ah),
            cable: bank.cable.max(Ohms::ZERO),
            kinetic: Kinetic::new(capacity, cell.available_frac, cell.recovery_per_h, dt),
            dt,
            cold_charge: bank.chemistry.is_lead() || bank.heated || bank.cold_charge_allowed,
            heated: bank.heated && !bank.chemistry.is_lead(),
            rate: RATED_AT,
        }
    }

    /// Whether a step moves this bank as it moves the other: all but the user's limit, what heats it and
    /// how much the cold leaves within reach.
    #[must_use]
    pub fn steps_like(&self, other: &Self) -> bool {
        let key = |bank: &Self| {
            (
                bank.chemistry,
                bank.capacity,
                bank.series_12v,
                bank.resistance_25c,
                bank.cable,
                bank.dt,
            )
        };
        key(self) == key(other)
    }

    /// Conditions at a battery temperature.
    #[must_use]
    pub fn conditions(&self, at: Celsius) -> Conditions {
        let reach = temperature::capacity_frac(self.chemistry, at, self.rate);
        let frost = at.0 < 0.0;
        let absorption = self.cell.absorption.0
            + self.cell.absorption_v_per_k * (at.0 - 25.0).clamp(-25.0, 20.0);
        Conditions {
            temperature: at,
            available_frac: reach,
            empty_frac: 1.0 - reach,
            low_frac: 1.0 - (1.0 - self.soc_min_frac) * reach,
            resistance: self.resistance_25c * temperature::resistance_factor(self.chemistry, at),
            taper: self.cell.taper * temperature::taper_factor(at),
            absorption: Volts(absorption * self.series_12v),
            self_discharge: self.capacity / MONTH
                * (self.cell.self_discharge_month_frac * temperature::self_discharge_factor(at)),
            may_charge: self.cold_charge || !frost,
            heating: if self.heated && frost {
                most_heating(self.capacity * self.series_12v)
            } else {
                Watts::ZERO
            },
        }
    }

    /// Rise of the voltage over rest for each ampere of charge. Lead-acid comes to its charge voltage
    /// with all the current it accepts; LiFePO4 rises by its own resistance alone, until it is nearly
    /// full.
    #[inline]
    #[must_use]
    pub fn polarisation(&self, c: &Conditions, rest: Volts, most: Amps) -> Ohms {
        let to_absorption = (c.absorption - rest).max(Volts(0.02)) / most;
        if self.chemistry.is_lead() { to_absorption } else { to_absorption.min(c.resistance) }
    }

    /// Draw of the battery's management system: one to a bank, whatever its voltage.
    #[must_use]
    pub fn management(&self) -> Watts {
        self.cell.management
    }

    /// Most current the bank accepts now.
    #[inline]
    #[must_use]
    pub fn max_charge_current(&self, state: &BankState, conditions: &Conditions) -> Amps {
        if !conditions.may_charge {
            return Amps::ZERO;
        }
        let missing = (1.0 - state.soc_frac).max(0.0) * self.capacity.0;
        Amps((missing / conditions.taper.0).min(self.cell.bulk_limit_c * self.capacity.0))
    }

    /// Charge efficiency at a state of charge.
    #[inline]
    #[must_use]
    pub fn charge_frac(&self, soc_frac: f64) -> f64 {
        let x = soc_frac.clamp(0.0, 1.0) * (super::chemistry::POINTS - 1) as f64;
        let i = (x as usize).min(super::chemistry::POINTS - 2);
        let table = &self.cell.charge_frac;
        table[i] + (table[i + 1] - table[i]) * (x - i as f64)
    }

    /// Voltage at the terminals while charging with `current`.
    #[inline]
    #[must_use]
    pub fn charging_volts(&self, state: &BankState, c: &Conditions, current: Amps) -> Volts {
        let rest = self.curve.volts(state.soc_frac);
        let most = self.max_charge_current(state, c);
        if most.0 <= 0.0 {
            return c.absorption.max(rest);
        }
        let polarisation = self.polarisation(c, rest, most);
        let volts = (rest + polarisation * current.min(most).max(Amps::ZERO)).min(c.absorption);
        // What is more than the battery takes brings it up to the charge voltage.
        let beyond = ((current / most - 1.0) / TO_CHARGE_VOLTAGE).clamp(0.0, 1.0);
        (volts + (c.absorption - volts) * beyond).max(rest)
    }

    /// Voltage at the terminals at a momentary draw, surface depletion included. Infinite power
    /// is not to be had: beyond the most the bank can give this is half the rested voltage.
    #[must_use]
    pub fn sagging_volts(&self, state: &BankState, c: &Conditions, draw: Watts) -> Volts {
        let depleted = self.kinetic.stranded(state.difference_ah) / self.capacity;
        let rest = self.curve.volts(state.soc_frac - depleted);
        let current = current_for(draw, rest, resistance_at(state.soc_frac, c));
        rest - current * resistance_at(state.soc_frac, c)
    }

    /// What draws that come and go lose in the battery and in its cables, beyond what their mean
    /// loses: `R var(P) / V^2`, at the middle of the charge. `variance_w2` in square watts.
    #[must_use]
    pub fn peak_losses(&self, c: &Conditions, variance_w2: f64) -> (Watts, Watts) {
        let volts = self.curve.volts(0.5);
        let square_a2 = variance_w2.max(0.0) / (volts.0 * volts.0);
        (Watts(resistance_at(0.5, c).0 * square_a2), Watts(self.cable.0 * square_a2))
    }

    /// Charge with at most the power `offered` at the terminals for one step.
    #[inline]
    pub fn charge(&self, state: &mut BankState, c: &Conditions, offered: Watts) -> Flow {
        let most = self.max_charge_current(state, c);
        if most.0 <= 0.0 || offered.0 <= 0.0 {
            return self.rest(state, c);
        }
        let (before, energy_before) = (state.soc_frac, self.curve.energy(state.soc_frac));
        let eta = self.charge_frac(before);
        let missing = (1.0 - before) * self.capacity.0;
        let bulk = self.cell.bulk_limit_c * self.capacity.0;
        let mut mean_v = self.curve.volts(before).0;
        let mut gain = 0.0;
        let mut volts = mean_v;
        for _ in 0..PASSES {
            let above = (c.absorption.0 - mean_v).max(0.02);
            let polarisation = self.polarisation(c, Volts(mean_v), most);
            let wanted = charging_current(offered, Volts(mean_v), polarisation).0.min(bulk);
            let (straight, tapered) = self.fill(missing, wanted, eta, c.taper.0);
            gain = (straight + tapered).min(missing);
            let before_taper = mean_v + polarisation.0 * wanted.min(most.0);
            volts = (straight * before_taper + tapered * (mean_v + above)) / (straight + tapered);
            let after = (before + gain / self.capacity.0).min(1.0);
            let settled = (self.curve.energy(after).0 - energy_before.0) / gain;
            let change = (settled - mean_v).abs();
            mean_v = settled;
            if change < SETTLED_V {
                break;
            }
        }
        let current = Amps(gain / (eta * self.dt.0));
        let volts = Volts(volts.min(offered.0 / current.0).max(mean_v));
        state.soc_frac = (before + gain / self.capacity.0).min(1.0);
        let stored = self.curve.energy(state.soc_frac) - energy_before;
        let taken = volts * current * self.dt;
        let lost_charging = current * self.dt * Volts(mean_v) * (1.0 - eta);
        let lost_resistance = (volts - Volts(mean_v)) * current * self.dt;
        state.difference_ah = self.kinetic.advance(state.difference_ah, -current * eta);
        let mut flow = Flow {
            taken,
            lost_charging,
            lost_resistance,
            stored,
            current,
            volts,
            ..Flow::default()
        };
        self.leak(state, c, &mut flow);
        flow
    }

    /// Moves the state by one step with `surplus` at the terminals (negative: a draw), without the
    /// books: one pass at the voltage of the middle of the step instead of the iteration of
    /// [`Self::charge`] and [`Self::discharge`]. Over a trip the state of charge stays within 0.01 %
    /// of theirs. For playing thousands of trips.
    #[inline]
    pub fn advance(&self, state: &mut BankState, c: &Conditions, surplus: Watts) {
        let before = state.soc_frac;
        let rest_v = self.curve.volts(before);
        let half_step = 0.5 * self.dt.0 / self.capacity.0;
        let mut current = Amps::ZERO;
        if surplus.0 < 0.0 {
            let resistance = resistance_at(before, c) + self.cable;
            let reach = ((before - c.empty_frac) * self.capacity.0).max(0.0);
            let middle = self.curve.volts(before + surplus.0 / rest_v.0 * half_step);
            let drawn = current_for(-surplus, middle, resistance).min(Amps(reach / self.dt.0));
            state.soc_frac = before - drawn.0 * self.dt.0 / self.capacity.0;
            current = drawn;
        } else if surplus.0 > 0.0 {
            let most = self.max_charge_current(state, c);
            if most.0 > 0.0 {
                let eta = self.charge_frac(before);
                let guess = (surplus / rest_v).min(most);
                let middle = self.curve.volts(before + eta * guess.0 * half_step);
                let polarisation = self.polarisation(c, middle, most);
                let bulk = self.cell.bulk_limit_c * self.capacity.0;
                let wanted = charging_current(surplus, middle, polarisation).0.min(bulk);
                let missing = (1.0 - before) * self.capacity.0;
                let (straight, tapered) = self.fill(missing, wanted, eta, c.taper.0);
                let gain = (straight + tapered).min(missing);
                state.soc_frac = (before + gain / self.capacity.0).min(1.0);
                current = Amps(-gain / self.dt.0);
            }
        }
        state.difference_ah = self.kinetic.advance(state.difference_ah, current);
        let leak = c.self_discharge.0 * self.dt.0 / self.capacity.0;
        state.soc_frac = (state.soc_frac - leak).max(0.0);
    }

    /// Charge stored in one step at the constant current `wanted_a` until the taper begins, and
    /// in the taper after that [Ah].
    #[inline]
    fn fill(&self, missing_ah: f64, wanted_a: f64, eta: f64, taper_h: f64) -> (f64, f64) {
        let tapered = |left_ah: f64, t_h: f64| left_ah * (1.0 - (-eta * t_h / taper_h).exp());
        let left_at_taper = wanted_a * taper_h;
        if left_at_taper >= missing_ah {
            return (0.0, tapered(missing_ah, self.dt.0));
        }
        let until_taper = (missing_ah - left_at_taper) / (eta * wanted_a);
        if until_taper >= self.dt.0 {
            return (eta * wanted_a * self.dt.0, 0.0);
        }
        (eta * wanted_a * until_taper, tapered(left_at_taper, self.dt.0 - until_taper))
    }

    /// Draw the power `wanted` at the terminals for one step, or what there is.
    #[inline]
    pub fn discharge(&self, state: &mut BankState, c: &Conditions, wanted: Watts) -> Flow {
        let before = state.soc_frac;
        let energy_before = self.curve.energy(before);
        let resistance = resistance_at(before, c);
        let reach = ((before - c.empty_frac) * self.capacity.0).max(0.0);
        let mut mean_v = self.curve.volts(before);
        let mut current = Amps::ZERO;
        let mut after = before;
        for _ in 0..PASSES {
            current =
                current_for(wanted, mean_v, resistance + self.cable).min(Amps(reach / self.dt.0));
            let drawn = current.0 * self.dt.0;
            after = before - drawn / self.capacity.0;
            if drawn <= 0.0 {
                break;
            }
            let settled = (energy_before.0 - self.curve.energy(after).0) / drawn;
            let change = (settled - mean_v.0).abs();
            mean_v = Volts(settled);
            if change < SETTLED_V {
                break;
            }
        }
        let stored = self.curve.energy(after) - energy_before;
        state.soc_frac = after.max(0.0);
        state.difference_ah = self.kinetic.advance(state.difference_ah, current);
        let volts = mean_v - current * resistance;
        let mut flow = Flow {
            given: (volts - current * self.cable) * current * self.dt,
            lost_resistance: current * resistance * current * self.dt,
            lost_cable: current * self.cable * current * self.dt,
            stored,
            current: -current,
            volts,
            ..Flow::default()
        };
        self.leak(state, c, &mut flow);
        flow
    }

    /// Neither charge nor discharge for one step.
    #[inline]
    pub fn rest(&self, state: &mut BankState, c: &Conditions) -> Flow {
        state.difference_ah = self.kinetic.advance(state.difference_ah, Amps::ZERO);
        let mut flow = Flow { volts: self.curve.volts(state.soc_frac), ..Flow::default() };
        self.leak(state, c, &mut flow);
        flow
    }

    /// Self-discharge of the step.
    #[inline]
    fn leak(&self, state: &mut BankState, c: &Conditions, flow: &mut Flow) {
        let before = self.curve.energy(state.soc_frac);
        let lost = c.self_discharge.0 * self.dt.0 / self.capacity.0;
        state.soc_frac = (state.soc_frac - lost).max(0.0);
        let change = self.curve.energy(state.soc_frac) - before;
        flow.lost_self = -change;
        flow.stored += change;
    }
}

/// Resistance rises towards empty: by 60 % at the bottom (common practice, no source).
#[inline]
fn resistance_at(soc_frac: f64, c: &Conditions) -> Ohms {
    let down = 1.0 - soc_frac;
    c.resistance * (1.0 + 0.6 * down * down)
}

/// Current that gives the power `p` from a source `v` behind `r`: the smaller root of
/// `v I - r I^2 = p`; at most `v / 2r`, the matched load.
#[inline]
fn current_for(p: Watts, v: Volts, r: Ohms) -> Amps {
    if r.0 <= 0.0 {
        return p / v;
    }
    let under = v.0 * v.0 - 4.0 * r.0 * p.0;
    if under <= 0.0 { Amps(v.0 / (2.0 * r.0)) } else { Amps(2.0 * p.0 / (v.0 + under.sqrt())) }
}

/// Current that takes the power `p` into a source `v` behind `r`: the root of `v I + r I^2 = p`.
#[inline]
fn charging_current(p: Watts, v: Volts, r: Ohms) -> Amps {
    Amps(2.0 * p.0 / (v.0 + (v.0 * v.0 + 4.0 * r.0 * p.0).sqrt()))
}
