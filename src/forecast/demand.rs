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
//! time does not fit into the window it is spread over the whole day. What stays on between uses
//! draws its standby power for the rest of the time.
//!
//! Behind the inverter, `P_dc = P0 + P + r P^2` ([`crate::physics::inverter`]): each load is
//! charged `P + r P^2` at its running power, not at its average, and the no-load draw `P0` is
//! counted by itself for as long as the inverter is on.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `P` | power while running | W |
//! | `t` | running time a day | h |
//! | `d` | duty cycle | - |
//! | `eta` | charger efficiency | - |

use crate::model::{DutyCycle, Feed, Inverter, InverterSwitching, Load, Setup, Usage, Window};
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
        let window = effective_window(load);
        let length = window.length().0;
        let mut hours = [LoadHour::default(); 24];
        for (hour, out) in hours.iter_mut().enumerate() {
            let share = window.share_of_hour(hour);
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
                _ => running_energy(load) / Hours(length) * share,
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
}

/// The window, or the whole day where the running time does not fit.
fn effective_window(load: &Load) -> Window {
    if matches!(load.usage, Usage::AlwaysOn) {
        return Window::ALL_DAY;
    }
    if fits_window(load) { load.window } else { Window::ALL_DAY }
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
            match load.feed {
                Feed::Dc => out.direct += mean,
                Feed::Inverter => {
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
mod tests {
    use super::*;
    use crate::model::Draw;
    use crate::units::{Amps, Litres, LitresPerMinute, MilliAmpHours, Volts};

    const AIR: [Celsius; 24] = [Celsius(25.0); 24];

    fn load(watts: f64, usage: Usage) -> Load {
        Load { draw: Draw::Power { watts: Watts(watts) }, usage, ..Load::default() }
    }

    fn wh(load: &Load) -> f64 {
        energy_per_day(load, &AIR).0
    }

    #[test]
    fn facts_of_the_trade() {
        // Common practice, no source: each of these is quoted wherever campers count.
        let radio = load(7.2, Usage::Daily { minutes: 120.0 });
        assert!((wh(&radio) - 14.4).abs() < 1e-9);
        let standby = Load {
            draw: Draw::Current { amps: Amps(0.26), volts: Volts(12.0) },
            usage: Usage::AlwaysOn,
            ..Load::default()
        };
        assert!(wh(&standby) > 70.0 && wh(&standby) < 80.0);
        let mover = |minutes| Load {
            draw: Draw::Current { amps: Amps(19.0), volts: Volts(12.0) },
            usage: Usage::Daily { minutes },
            ..Load::default()
        };
        assert!((wh(&mover(5.0)) - 19.0).abs() < 1e-9);
        assert!((wh(&mover(15.0)) - 57.0).abs() < 1e-9);
    }

    #[test]
    fn a_tank_aboard_is_pumped_twice() {
        let pump = |pumped_twice| {
            load(
                60.0,
                Usage::Litres {
                    litres_per_day: Litres(20.0),
                    flow: LitresPerMinute(10.0),
                    pumped_twice,
                },
            )
        };
        assert!((wh(&pump(false)) - 2.0).abs() < 1e-9);
        assert!((wh(&pump(true)) - 4.0).abs() < 1e-9);
    }

    #[test]
    fn a_phone_charge_is_its_cell_over_its_charger() {
        // 5000 mAh at 3.85 V and 0.8: 24 Wh (trade figure).
        let phone = load(
            10.0,
            Usage::Charges {
                every_days: 1.0,
                cell: MilliAmpHours(5000.0),
                cell_volts: Volts(3.85),
                charger_frac: 0.8,
            },
        );
        assert!((wh(&phone) - 24.06).abs() < 0.01);
    }

    #[test]
    fn uses_duty_and_energy() {
        assert!((wh(&load(100.0, Usage::Uses { per_day: 6.0, seconds: 30.0 })) - 5.0).abs() < 1e-9);
        let fixed = Usage::Duty { cycle: DutyCycle::Fixed { frac: 0.5 } };
        assert!((wh(&load(40.0, fixed)) - 480.0).abs() < 1e-9);
        // 45 W fridge at 25 degrees Celsius and duty 0.32: 346 Wh, not 45 x 24 (trade figure).
        let fridge = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.32 } };
        assert!((wh(&load(45.0, fridge)) - 345.6).abs() < 0.1);
        let hot = energy_per_day(&load(45.0, fridge), &[Celsius(35.0); 24]).0;
        assert!((hot - 594.0).abs() < 1.0, "{hot}");
        assert!((wh(&load(0.0, Usage::Energy { per_day: WattHours(120.0) })) - 120.0).abs() < 1e-9);
    }

    #[test]
    fn the_window_moves_energy_but_keeps_it() {
        let mut lamp = load(5.0, Usage::Daily { minutes: 240.0 });
        lamp.window = Window::EVENING;
        let day = LoadDay::of(&lamp, &AIR);
        assert!((wh(&lamp) - 20.0).abs() < 1e-9);
        assert_eq!(day.hours[12].running, Watts::ZERO);
        assert!((day.hours[20].running.0 - 4.0).abs() < 1e-9);
        lamp.usage = Usage::Daily { minutes: 600.0 };
        assert!(!fits_window(&lamp));
        assert!((wh(&lamp) - 50.0).abs() < 1e-9);
    }

    #[test]
    fn standby_fills_the_time_between_uses() {
        let mut tv = load(30.0, Usage::Daily { minutes: 180.0 });
        tv.standby = Watts(1.0);
        tv.quantity = 2;
        assert!((wh(&tv) - 2.0 * (90.0 + 21.0)).abs() < 1e-9);
    }

    #[test]
    fn the_inverter_left_on_costs_its_idle_draw() {
        // 40 W idle for 24 h is 960 Wh a day (trade figure).
        let mut setup = Setup::default();
        setup.inverter.fitted = true;
        setup.inverter.idle = Watts(40.0);
        setup.inverter.switching = InverterSwitching::AllDay;
        let sum: f64 = day_demand(&setup, &AIR, 1.0).iter().map(|h| h.total().0).sum();
        assert!((sum - 960.0).abs() < 1e-9);
        setup.inverter.switching = InverterSwitching::WhenUsed;
        let sum: f64 = day_demand(&setup, &AIR, 1.0).iter().map(|h| h.total().0).sum();
        assert_eq!(sum, 0.0);
    }

    #[test]
    fn a_short_heavy_load_pays_its_losses_at_running_power() {
        let mut setup = Setup::default();
        setup.inverter.fitted = true;
        setup.inverter.continuous = Watts(2000.0);
        setup.inverter.idle = Watts(20.0);
        setup.inverter.full_load_frac = 0.88;
        let mut kettle = load(2000.0, Usage::Daily { minutes: 3.0 });
        kettle.feed = Feed::Inverter;
        setup.loads.push(kettle);
        let sum: f64 = day_demand(&setup, &AIR, 1.0).iter().map(|h| h.total().0).sum();
        assert!((sum - 100.0 / 0.88).abs() < 0.01, "{sum}");
    }

    #[test]
    fn hook_up_carries_the_sockets() {
        let demand = HourDemand {
            direct: Watts(10.0),
            mains: Watts(100.0),
            conversion: Watts(8.0),
            inverter_idle: Watts(20.0),
            ..HourDemand::default()
        };
        assert_eq!(demand.with_sockets_on_hook_up(1.0).total(), Watts(10.0));
        assert_eq!(demand.with_sockets_on_hook_up(0.5).total(), Watts(74.0));
    }
}
