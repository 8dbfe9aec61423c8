//! From how an appliance is used to energy a day and draw by hour.
//!
//! | use | energy a day of one |
//! |---|---|
//! | hours and minutes | `P t` |
//! | always on | `24 P` |
//! | duty cycle | `24 P d`, `d` may follow the air temperature ([`crate::physics::fridge`]) |
//! | charges every N days of m mAh | `m/1000 V / eta / N` |
//! | litres through a pump | `P (2) L / flow`, twice with a tank aboard |
//! | uses of some seconds | `P n s / 3600` |
//! | energy a day | as typed |
//!
//! The energy is spread evenly over the window of the day in which it runs; where the running
//! time does not fit into the window, it runs all through it, and what is left is spread evenly
//! over the rest of the day. What stays on between uses draws its standby power for the rest of
//! the time.
//!
//! Behind the inverter, `P_dc = P0 + P + r P^2` ([`crate::physics::inverter`]): each load is
//! charged `P + r P^2` at its running power, not at its average, and the no-load draw `P0` is
//! counted by itself for as long as the inverter is on.
//!
//! An appliance that runs for a share of the hour varies by `m (P - m)` about its mean `m`; the
//! variances of several add up. The peaks lose more on the way than the mean does
//! ([`crate::physics::battery::BankPhysics::peak_losses`]).
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `P` | power while running | W |
//! | `t` | running time a day | h |
//! | `d` | duty cycle | - |
//! | `eta` | charger efficiency | - |

use crate::model::{DutyCycle, Feed, Inverter, InverterSwitching, Load, Setup, Usage};
use crate::physics::fridge;
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, HOURS_PER_DAY, Hours, WattHours, Watts};

/// Energy a day of all pieces of a load at its socket (dc or mains side), standby included.
/// `air` by hour of the day.
#[must_use]
pub fn energy_per_day(load: &Load, air: &[Celsius; 24]) -> WattHours {
    let day = LoadDay::of(load, air);
    day.hours.iter().map(|hour| (hour.running + hour.standby) * Hours(1.0)).sum()
}

/// Whether the draw of a load depends on the temperature of the air.
#[must_use]
pub fn follows_air(load: &Load) -> bool {
    matches!(load.usage, Usage::Duty { cycle: DutyCycle::AirTemperature { .. } })
}

/// Running time a day [h] of one piece; `None` where the use does not fix one.
#[must_use]
pub fn running_time(load: &Load) -> Option<Hours> {
    let watts = load.draw.watts();
    match load.usage {
        Usage::Daily { minutes } => Some(Hours::from_minutes(minutes)),
        Usage::AlwaysOn => Some(Hours(HOURS_PER_DAY)),
        Usage::Duty { .. } => None,
        Usage::Charges { .. } | Usage::Energy { .. } => {
            (watts.0 > 0.0).then(|| running_energy(load) / watts)
        }
        Usage::Litres { litres_per_day, flow, pumped_twice } => {
            let once = if flow.0 > 0.0 { litres_per_day / flow } else { Hours::ZERO };
            Some(if pumped_twice { once * 2.0 } else { once })
        }
        Usage::Uses { per_day, seconds } => Some(Hours::from_seconds(seconds) * per_day),
    }
}

/// Energy a day of one piece while running, for uses that do not depend on the temperature.
fn running_energy(load: &Load) -> WattHours {
    let watts = load.draw.watts();
    match load.usage {
        Usage::Daily { minutes } => watts * Hours::from_minutes(minutes),
        Usage::AlwaysOn => watts * Hours(HOURS_PER_DAY),
        Usage::Duty { .. } => WattHours::ZERO,
        Usage::Charges { every_days, cell, cell_volts, charger_frac } => {
            let into_cell = cell.amp_hours() * cell_volts;
            if every_days > 0.0 && charger_frac > 0.0 {
                into_cell / charger_frac / every_days
            } else {
                WattHours::ZERO
            }
        }
        Usage::Litres { .. } | Usage::Uses { .. } => {
            running_time(load).map_or(WattHours::ZERO, |time| watts * time)
        }
        Usage::Energy { per_day } => per_day,
    }
}

/// One hour of one load, all pieces.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct LoadHour {
    /// Mean power of its use over the hour, at its socket.
    pub running: Watts,
    /// Mean power between uses.
    pub standby: Watts,
    /// Power of all pieces while they run; 0 in an hour without use.
    pub momentary: Watts,
}

/// A day of one load.
#[derive(Clone, Debug)]
pub struct LoadDay {
    /// By hour of the day.
    pub hours: [LoadHour; 24],
}

impl LoadDay {
    /// Works out the day; `air` by hour.
    #[must_use]
    pub fn of(load: &Load, air: &[Celsius; 24]) -> Self {
        let pieces = f64::from(load.quantity);
        let watts = load.draw.watts();
        let inside = share_inside_window(load);
        let length = load.window.length().0;
        let mut hours = [LoadHour::default(); 24];
        for (hour, out) in hours.iter_mut().enumerate() {
            let share = load.window.share_of_hour(hour);
            let running = match load.usage {
                Usage::Duty { cycle } => {
                    let duty = match cycle {
                        DutyCycle::Fixed { frac } => frac,
                        DutyCycle::AirTemperature { frac_at_25c } => {
                            fridge::duty_at(frac_at_25c, air[hour])
                        }
                    };
                    watts * (duty * share)
                }
                _ => {
                    let outside = (1.0 - share) / (HOURS_PER_DAY - length).max(f64::EPSILON);
                    running_energy(load) / Hours(1.0)
                        * (inside * share / length + (1.0 - inside) * outside)
                }
            };
            let momentary = if running.0 > 0.0 { watts.max(running) } else { Watts::ZERO };
            let busy = if momentary.0 > 0.0 { (running / momentary).min(1.0) } else { 0.0 };
            *out = LoadHour {
                running: running * pieces,
                standby: load.standby * ((1.0 - busy) * pieces),
                momentary: momentary * pieces,
            };
        }
        Self { hours }
    }

    /// Energy of the day as the battery gives it, inverter losses of the load's own included, with
    /// what readings taught about consumption ([`crate::model::Correction::use_factor`]).
    ///
    /// This is the one rule for what a load takes in a day; `load` and `setup` are those the day
    /// was worked out for.
    #[must_use]
    pub fn energy_at_battery(&self, load: &Load, setup: &Setup) -> WattHours {
        let curve = InverterCurve::of(&setup.inverter);
        let factor = setup.correction.use_factor;
        self.hours.iter().map(|hour| at_battery(load, *hour, &curve) * factor * Hours(1.0)).sum()
    }
}

/// Energy a day by load, at the battery.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LoadEnergy {
    /// By load id; loads that are switched off count as if they were on.
    by_load: Vec<(u32, WattHours)>,
    /// All that are switched on.
    pub total: WattHours,
}

impl LoadEnergy {
    /// Of every load of a setup; `air` by hour of the day.
    #[must_use]
    pub fn of(setup: &Setup, air: &[Celsius; 24]) -> Self {
        let mut energy = Self::default();
        for load in &setup.loads {
            let own = LoadDay::of(load, air).energy_at_battery(load, setup);
            energy.by_load.push((load.id, own));
            if load.enabled {
                energy.total += own;
            }
        }
        energy
    }

    /// Of the load with this id, nothing for one that is not there.
    #[must_use]
    pub fn of_load(&self, id: u32) -> WattHours {
        let own = self.by_load.iter().find(|(load, _)| *load == id);
        own.map_or(WattHours::ZERO, |(_, energy)| *energy)
    }
}

/// Share of the day's energy used inside the window, 0..1: all of it unless it runs longer than the
/// window lasts. What never stops is inside and outside alike.
fn share_inside_window(load: &Load) -> f64 {
    let length = load.window.length().0;
    if matches!(load.usage, Usage::AlwaysOn) {
        return length / HOURS_PER_DAY;
    }
    match running_time(load) {
        Some(time) if time.0 > length => length / time.0.min(HOURS_PER_DAY),
        _ => 1.0,
    }
}

/// Whether the running time fits into the window of the day.
#[must_use]
pub fn fits_window(load: &Load) -> bool {
    running_time(load).is_none_or(|time| time.0 <= load.window.length().0 + 1e-9)
}

/// What all loads ask of the battery in one hour.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct HourDemand {
    /// Straight from the battery.
    pub direct: Watts,
    /// At the mains sockets behind the inverter.
    pub mains: Watts,
    /// What the inverter loses in passing `mains` on, without its no-load draw.
    pub conversion: Watts,
    /// No-load draw of the inverter for the time it is on, or asleep.
    pub inverter_idle: Watts,
    /// The largest momentary draw on the battery: the biggest load running on top of the mean
    /// of the others, with the inverter's losses.
    pub momentary: Watts,
    /// The same without anything behind the inverter.
    pub momentary_direct: Watts,
    /// Variance over the hour of the power drawn straight from the battery, each appliance switching
    /// on and off by itself [W2].
    pub direct_variance_w2: f64,
    /// The same of what is drawn through the inverter [W2].
    pub mains_variance_w2: f64,
}

impl HourDemand {
    /// Everything the battery circuit must give.
    #[must_use]
    pub fn total(&self) -> Watts {
        self.direct + self.mains + self.conversion + self.inverter_idle
    }

    /// The same with a share of the hour on mains hook-up that feeds the sockets directly.
    #[must_use]
    pub fn with_sockets_on_hook_up(self, share: f64) -> Self {
        let left = (1.0 - share).clamp(0.0, 1.0);
        Self {
            mains: self.mains * left,
            conversion: self.conversion * left,
            inverter_idle: self.inverter_idle * left,
            momentary: if left > 0.0 { self.momentary } else { self.momentary_direct },
            mains_variance_w2: self.mains_variance_w2 * left,
            ..self
        }
    }
}

/// Mean power of one load at the battery over one hour, inverter losses of its own included but
/// not the inverter's no-load draw.
#[must_use]
pub fn at_battery(load: &Load, hour: LoadHour, curve: &InverterCurve) -> Watts {
    let mean = hour.running + hour.standby;
    match load.feed {
        Feed::Dc => mean,
        Feed::Inverter => {
            hour.running * (1.0 + curve.r_per_watt * hour.momentary.0)
                + hour.standby * (1.0 + curve.r_per_watt * hour.standby.0)
        }
    }
}

/// Demand of the whole setup on a day, by hour; `air` by hour, `use_factor` scales every load.
#[must_use]
pub fn day_demand(setup: &Setup, air: &[Celsius; 24], use_factor: f64) -> [HourDemand; 24] {
    let curve = InverterCurve::of(&setup.inverter);
    let mut demand = [HourDemand::default(); 24];
    // Time share in which nothing on the inverter runs.
    let mut quiet = [1.0_f64; 24];
    let mut largest_extra = [Watts::ZERO; 24];
    let mut largest_direct = [Watts::ZERO; 24];
    for load in setup.enabled_loads() {
        let day = LoadDay::of(load, air);
        for (hour, slot) in day.hours.iter().enumerate() {
            let mean = (slot.running + slot.standby) * use_factor;
            let dc = at_battery(load, *slot, &curve) * use_factor;
            let busy =
                if slot.momentary.0 > 0.0 { (slot.running / slot.momentary).min(1.0) } else { 0.0 };
            let running_dc = match load.feed {
                Feed::Dc => slot.momentary,
                Feed::Inverter => slot.momentary * (1.0 + curve.r_per_watt * slot.momentary.0),
            };
            largest_extra[hour] = largest_extra[hour].max(running_dc - dc);
            if load.feed == Feed::Dc {
                largest_direct[hour] = largest_direct[hour].max(running_dc - dc);
            }
            let out = &mut demand[hour];
            let variance_w2 = dc.0 * (running_dc - dc).0.max(0.0);
            match load.feed {
                Feed::Dc => {
                    out.direct += mean;
                    out.direct_variance_w2 += variance_w2;
                }
                Feed::Inverter => {
                    out.mains_variance_w2 += variance_w2;
                    out.mains += mean;
                    out.conversion += dc - mean;
                    quiet[hour] *= if slot.standby.0 > 0.0 { 0.0 } else { 1.0 - busy };
                }
            }
        }
    }
    for (hour, out) in demand.iter_mut().enumerate() {
        out.inverter_idle = inverter_idle(&setup.inverter, &curve, 1.0 - quiet[hour]);
        out.momentary = out.total() + largest_extra[hour];
        out.momentary_direct = out.direct + largest_direct[hour];
    }
    demand
}

/// No-load draw of the inverter averaged over an hour in which something runs on it for the share
/// `busy`. Without an inverter there is none; loads that need one still count it while they run.
fn inverter_idle(inverter: &Inverter, curve: &InverterCurve, busy: f64) -> Watts {
    let while_used = curve.p0 * busy;
    if !inverter.fitted {
        return while_used;
    }
    match inverter.switching {
        InverterSwitching::AllDay => curve.p0,
        InverterSwitching::WhenUsed => while_used,
        InverterSwitching::PowerSave { asleep } => while_used + asleep * (1.0 - busy),
    }
}

#[cfg(test)]
mod tests;
