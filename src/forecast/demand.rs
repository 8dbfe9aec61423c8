//! From how an appliance is used to energy a day and draw by hour.
//!
//! | use | energy a day of one |
//! |---|---|
//! | hours and minutes | `P t` |
//! | always on | `24 P` |
//! | duty cycle | `24 P d`, `d` may follow the air where it stands ([`crate::physics::fridge`]) |
//! | heating | `P sum(q / Q) + n E_s`, with `q = U max(0, T_k - T_u)` by the hour |
//! | cooling, airing | `P sum(d)`, with `d = d_25 (T_o - 15) / 10` by the hour, 0..1 |
//! | while driving | `P t`, `t` the time driven |
//! | once on arrival or on leaving | `P t` on that day, nothing on the others |
//! | charges every N days of m mAh | `m/1000 V / eta / N` |
//! | litres through a pump | `P (2) L / flow`, twice with a tank aboard |
//! | uses of some seconds | `P n s / 3600` |
//! | energy a day | as typed |
//!
//! The energy is spread evenly over the times of day in which it runs, one window or several; where the
//! running time does not fit into them, it runs all through them, and what is left is spread evenly
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
//! | `Q`, `q` | heat of the heater at full draw, heat the vehicle needs | W |
//! | `U` | heat loss of the vehicle ([`crate::physics::indoors`]) | W/K |
//! | `T_k`, `T_u`, `T_o` | kept inside, inside without heating, outside | degrees Celsius |
//! | `n`, `E_s` | starts a day: evening and morning, fewer where less than an hour is heated; energy of one | -, Wh |
//!
//! That fans and coolers begin at 15 degrees Celsius, run their usual share at 25 and twice that at 35
//! is common practice, no source.

pub mod inverter_share;

use super::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use crate::model::{
    DutyCycle, Feed, Inverter, InverterSwitching, Load, LoadPlace, Setup, TimesOfDay, Usage,
};
use crate::physics::fridge;
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, HOURS_PER_DAY, Hours, WattHours, Watts};

/// Outside temperature from which fans and coolers run.
const COOLING_FROM: Celsius = Celsius(15.0);
/// Kelvin above that at which they run their usual share.
const COOLING_USUAL_K: f64 = 10.0;
/// Starts of a heater on a day that needs it: evening and morning (common practice, no source).
const STARTS_A_DAY: f64 = 2.0;

/// Energy a day of all pieces of a load at its socket (dc or mains side), standby included.
#[must_use]
pub fn energy_per_day(load: &Load, around: &Surroundings) -> WattHours {
    let day = LoadDay::of(load, around);
    day.hours.iter().map(|hour| (hour.running + hour.standby) * Hours(1.0)).sum()
}

/// Whether the draw of a load depends on the temperature of the air.
#[must_use]
pub fn follows_air(load: &Load) -> bool {
    match load.usage {
        Usage::Duty { cycle } => match cycle {
            DutyCycle::AirTemperature { .. }
            | DutyCycle::Heating { .. }
            | DutyCycle::Cooling { .. } => true,
            DutyCycle::Fixed { .. } => false,
        },
        Usage::Daily { .. }
        | Usage::AlwaysOn
        | Usage::Charges { .. }
        | Usage::Litres { .. }
        | Usage::Uses { .. }
        | Usage::Energy { .. }
        | Usage::WhileDriving
        | Usage::Once { .. } => false,
    }
}

/// Running time a day [h] of one piece; `None` where the use does not fix one.
#[must_use]
pub fn running_time(load: &Load) -> Option<Hours> {
    let watts = load.draw.watts();
    match load.usage {
        Usage::Daily { minutes } => Some(Hours::from_minutes(minutes)),
        Usage::AlwaysOn => Some(Hours(HOURS_PER_DAY)),
        Usage::Duty { .. } | Usage::WhileDriving | Usage::Once { .. } => None,
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

/// Energy a day of one piece while running, for uses that depend on neither temperature nor driving.
fn running_energy(load: &Load) -> WattHours {
    let watts = load.draw.watts();
    match load.usage {
        Usage::Daily { minutes } => watts * Hours::from_minutes(minutes),
        Usage::AlwaysOn => watts * Hours(HOURS_PER_DAY),
        Usage::Duty { .. } | Usage::WhileDriving | Usage::Once { .. } => WattHours::ZERO,
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
    /// Works out the day.
    #[must_use]
    pub fn of(load: &Load, around: &Surroundings) -> Self {
        let pieces = f64::from(load.quantity);
        let watts = load.draw.watts();
        let times = load.times_of_day();
        let inside = share_inside(load, &times);
        let length = times.length().0;
        let stretch = with_starts(load, &times, around);
        let mut hours = [LoadHour::default(); 24];
        for (hour, out) in hours.iter_mut().enumerate() {
            let share = times.share_of_hour(hour);
            let running = match load.usage {
                Usage::Duty { cycle } => {
                    watts * (duty(cycle, load.place, around, hour) * share * stretch)
                }
                Usage::WhileDriving => watts * around.driving_frac[hour],
                Usage::Once { at, minutes } => {
                    watts * around.near_stay_end_frac(at, Hours::from_minutes(minutes), hour)
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
    /// Of every load of a setup on the first whole day of its trip; `air` outside by hour of the day.
    #[must_use]
    pub fn of(setup: &Setup, air: &[Celsius; 24]) -> Self {
        let around = Surroundings::on_day(setup, FIRST_WHOLE_DAY, *air);
        let mut energy = Self::default();
        for load in &setup.loads {
            let own = LoadDay::of(load, &around).energy_at_battery(load, setup);
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

/// Share of the hour that a thermostat lets it run, 0..1.
fn duty(cycle: DutyCycle, place: LoadPlace, around: &Surroundings, hour: usize) -> f64 {
    match cycle {
        DutyCycle::Fixed { frac } => frac,
        DutyCycle::AirTemperature { frac_at_25c } => {
            fridge::duty_at(frac_at_25c, around.air(place, hour))
        }
        DutyCycle::Heating { heat, .. } if heat.0 > 0.0 => {
            (around.heat[hour] / heat).clamp(0.0, 1.0)
        }
        DutyCycle::Heating { .. } => 0.0,
        DutyCycle::Cooling { frac_at_25c } => {
            let warmer = around.outside[hour] - COOLING_FROM;
            (frac_at_25c * warmer.0 / COOLING_USUAL_K).clamp(0.0, 1.0)
        }
    }
}

/// Energy of a heater with its starts over that without; 1 for everything else.
fn with_starts(load: &Load, times: &TimesOfDay, around: &Surroundings) -> f64 {
    let Usage::Duty { cycle: cycle @ DutyCycle::Heating { start, .. } } = load.usage else {
        return 1.0;
    };
    let hours: f64 =
        (0..24).map(|hour| duty(cycle, load.place, around, hour) * times.share_of_hour(hour)).sum();
    let running = load.draw.watts() * Hours(hours);
    if running.0 > 0.0 { 1.0 + STARTS_A_DAY * hours.min(1.0) * (start / running) } else { 1.0 }
}

/// Share of the day's energy used inside its times of day, 0..1: all of it unless it runs longer than
/// they last. What never stops is inside and outside alike.
fn share_inside(load: &Load, times: &TimesOfDay) -> f64 {
    let length = times.length().0;
    if matches!(load.usage, Usage::AlwaysOn) {
        return length / HOURS_PER_DAY;
    }
    match running_time(load) {
        Some(time) if time.0 > length => length / time.0.min(HOURS_PER_DAY),
        _ => 1.0,
    }
}

/// Whether the running time fits into its times of day.
#[must_use]
pub fn fits_times(load: &Load) -> bool {
    running_time(load).is_none_or(|time| time.0 <= load.times_of_day().length().0 + 1e-9)
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

/// Demand of a setup on any day: what is the same every day is added up once.
#[derive(Clone, Debug)]
pub struct Demands<'a> {
    setup: &'a Setup,
    use_factor: f64,
    curve: InverterCurve,
    same_every_day: Tally,
}

impl<'a> Demands<'a> {
    /// Of a setup; `around`: any day, `use_factor` scales every load.
    #[must_use]
    pub fn new(setup: &'a Setup, around: &Surroundings, use_factor: f64) -> Self {
        let curve = InverterCurve::of(&setup.inverter);
        let mut same_every_day = Tally::default();
        for load in setup.enabled_loads().filter(|load| !follows_the_day(load)) {
            same_every_day.add(load, around, use_factor, &curve);
        }
        Self { setup, use_factor, curve, same_every_day }
    }

    /// By hour of a day.
    #[must_use]
    pub fn on(&self, around: &Surroundings) -> [HourDemand; 24] {
        let mut tally = self.same_every_day.clone();
        for load in self.setup.enabled_loads().filter(|load| follows_the_day(load)) {
            tally.add(load, around, self.use_factor, &self.curve);
        }
        tally.in_all(&self.setup.inverter, &self.curve)
    }
}

/// Whether what a load takes hangs on the air or the driving of the day, or on which day of the stay it is.
fn follows_the_day(load: &Load) -> bool {
    follows_air(load) || matches!(load.usage, Usage::WhileDriving | Usage::Once { .. })
}

/// Demand being added up, by hour.
#[derive(Clone, Debug)]
struct Tally {
    demand: [HourDemand; 24],
    /// Time share in which nothing on the inverter runs.
    quiet: [f64; 24],
    largest_extra: [Watts; 24],
    largest_direct: [Watts; 24],
}

impl Default for Tally {
    fn default() -> Self {
        Self {
            demand: [HourDemand::default(); 24],
            quiet: [1.0; 24],
            largest_extra: [Watts::ZERO; 24],
            largest_direct: [Watts::ZERO; 24],
        }
    }
}

impl Tally {
    fn add(&mut self, load: &Load, around: &Surroundings, use_factor: f64, curve: &InverterCurve) {
        let day = LoadDay::of(load, around);
        for (hour, slot) in day.hours.iter().enumerate() {
            let mean = (slot.running + slot.standby) * use_factor;
            let dc = at_battery(load, *slot, curve) * use_factor;
            let busy =
                if slot.momentary.0 > 0.0 { (slot.running / slot.momentary).min(1.0) } else { 0.0 };
            let running_dc = match load.feed {
                Feed::Dc => slot.momentary,
                Feed::Inverter => slot.momentary * (1.0 + curve.r_per_watt * slot.momentary.0),
            };
            self.largest_extra[hour] = self.largest_extra[hour].max(running_dc - dc);
            if load.feed == Feed::Dc {
                self.largest_direct[hour] = self.largest_direct[hour].max(running_dc - dc);
            }
            let out = &mut self.demand[hour];
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
                    self.quiet[hour] *= if slot.standby.0 > 0.0 { 0.0 } else { 1.0 - busy };
                }
            }
        }
    }

    fn in_all(mut self, inverter: &Inverter, curve: &InverterCurve) -> [HourDemand; 24] {
        for (hour, out) in self.demand.iter_mut().enumerate() {
            out.inverter_idle = inverter_idle(inverter, curve, 1.0 - self.quiet[hour]);
            out.momentary = out.total() + self.largest_extra[hour];
            out.momentary_direct = out.direct + self.largest_direct[hour];
        }
        self.demand
    }
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
