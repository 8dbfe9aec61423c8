//! Plays the trip once with one given weather and books every watt-hour of every hour.
//!
//! Each step of each hour the sources feed the loads first; what is left charges the battery as
//! far as it accepts it; what is missing comes out of the battery. Sun is used before any other
//! source. What the battery does not take of the sun is "unused sun"; what it cannot give is
//! "unmet". Per step, to 1e-9 of a watt-hour:
//!
//! ```text
//! sun + driving + hook-up + other  =  loads + inverter + electronics + battery heating
//!                                     + charge losses + resistance + cables + self-discharge
//!                                     + stored
//! ```

use super::ledger::Ledger;
use super::offer::{Circuit, Offer, offer};
use super::plan::{PlanHour, TripPlan};
use crate::physics::battery::{BankPhysics, BankState, ChargeStage, Conditions, Flow};
use crate::physics::solar::panel::HourYield;
use crate::units::{Celsius, Hours, Litres, Volts, WattHours, Watts};

/// One hour of a course.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HourRecord {
    /// Day of the trip.
    pub day: usize,
    /// Hour of the day, camp time.
    pub hour_of_day: usize,
    /// State of charge at the end of the hour, 0..1.
    pub soc_frac: f64,
    /// Limit the user set, where the cold puts it, 0..1.
    pub low_frac: f64,
    /// Nothing more comes out below this, 0..1.
    pub empty_frac: f64,
    /// Mean voltage at the battery.
    pub volts: Volts,
    /// Voltage at the distribution when the largest appliance of the hour runs.
    pub sag_volts: Volts,
    /// Air temperature.
    pub air: Celsius,
    /// Battery temperature.
    pub battery: Celsius,
    /// Stage of the charge at the end of the hour; `None` unless more goes in than out.
    pub stage: Option<ChargeStage>,
    /// Share of the hour driving.
    pub driving_share: f64,
    /// Share of the hour on hook-up.
    pub hook_up_share: f64,
    /// Energies of the hour.
    pub ledger: Ledger,
}

/// An appliance that would switch itself off for low voltage although energy is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CutOutEvent {
    /// The load, or the inverter if `None`.
    pub load_id: Option<u32>,
    /// Hour from arrival in which it first cuts out.
    pub first_hour: usize,
    /// Hours it stays off during the stay.
    pub hours_off: usize,
    /// Voltage it sees in that first hour.
    pub volts: Volts,
    /// State of charge at that time, 0..1.
    pub soc_frac: f64,
}

/// A trip played with one weather.
#[derive(Clone, Debug)]
pub struct Course {
    /// Every hour from arrival.
    pub hours: Vec<HourRecord>,
    /// First hour at whose end the limit is passed.
    pub first_low: Option<usize>,
    /// First hour in which something asked for is not to be had.
    pub first_unmet: Option<usize>,
    /// Lowest state of charge over the stay asked for, 0..1, and its hour.
    pub lowest: (f64, usize),
    /// Sums over the stay asked for.
    pub ledger: Ledger,
}

impl Course {
    /// Plays the plan in average weather.
    #[must_use]
    pub fn average(plan: &TripPlan) -> Self {
        Self::play_rows(plan, |day| {
            plan.sun.average.get(day).copied().unwrap_or_default().map(|hour| taught(plan, hour))
        })
    }

    /// Plays the plan with the daily clearness `k_frac`, a figure a day; days without one are
    /// sunless.
    #[must_use]
    pub fn play(plan: &TripPlan, k_frac: &[f64]) -> Self {
        Self::play_rows(plan, |day| sun_row(plan, day, k_frac.get(day).copied().unwrap_or(0.0)))
    }

    fn play_rows(plan: &TripPlan, rows: impl Fn(usize) -> [HourYield; 24]) -> Self {
        let mut state = BankState::rested(plan.start_soc_frac);
        let stay = plan.stay_hours();
        let mut course = Self {
            hours: Vec::with_capacity(plan.hours.len()),
            first_low: None,
            first_unmet: None,
            lowest: (state.soc_frac, 0),
            ledger: Ledger::default(),
        };
        let mut row = [HourYield::default(); 24];
        let mut row_day = usize::MAX;
        for (index, hour) in plan.hours.iter().enumerate() {
            if hour.day != row_day {
                row_day = hour.day;
                row = rows(row_day);
            }
            if let Some(soc_frac) = plan.restarts_at(index) {
                state = BankState::rested(soc_frac);
                course.forget_the_past();
            }
            let sag = plan.bank.sagging_volts(&state, &hour.conditions, hour.demand.momentary);
            let (ledger, volts) = play_hour(plan, &mut state, hour, row[hour.hour_of_day]);
            course.note(index, index < stay, &state, hour, ledger);
            course.hours.push(HourRecord {
                day: hour.day,
                hour_of_day: hour.hour_of_day,
                soc_frac: state.soc_frac,
                low_frac: hour.conditions.low_frac,
                empty_frac: hour.conditions.empty_frac,
                volts,
                sag_volts: sag,
                air: hour.air,
                battery: hour.conditions.temperature,
                stage: stage(plan, &state, hour, &ledger, volts),
                driving_share: hour.supply.driving_share,
                hook_up_share: hour.supply.hook_up_share,
                ledger,
            });
        }
        course
    }

    fn forget_the_past(&mut self) {
        self.first_low = None;
        self.first_unmet = None;
        self.lowest = (1.0, 0);
        self.ledger = Ledger::default();
    }

    fn note(
        &mut self,
        index: usize,
        within_stay: bool,
        state: &BankState,
        hour: &PlanHour,
        ledger: Ledger,
    ) {
        if self.first_low.is_none() && is_low(state, hour.conditions.low_frac) {
            self.first_low = Some(index);
        }
        if self.first_unmet.is_none() && ledger.unmet.0 > 1e-6 {
            self.first_unmet = Some(index);
        }
        if within_stay {
            self.ledger += ledger;
            if state.soc_frac < self.lowest.0 {
                self.lowest = (state.soc_frac, index);
            }
        }
    }
}

/// The quick step of a battery stays closer than this to the booked one over a trip, 0..1 (see
/// [`BankPhysics::advance`]).
const QUICK_OFF_FRAC: f64 = 3e-4;

/// What a course in average weather comes to, without its books: what setups are compared by.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AverageCourse {
    /// First hour at whose end the limit is passed; the same as of [`Course::average`].
    pub first_low: Option<usize>,
    /// Lowest state of charge over the stay asked for, 0..1, within 0.0003 of that of the booked course.
    pub lowest_frac: f64,
    /// Time of the stay in which a surplus met a battery too cold to charge.
    pub cold_locked: Hours,
}

impl AverageCourse {
    /// Of a plan. Played by the quick steps of the odds, or booked where the charge comes so close to the
    /// limit that they might tell another hour.
    #[must_use]
    pub fn of(plan: &TripPlan) -> Self {
        Self::quick(plan).unwrap_or_else(|| Self::booked(plan))
    }

    /// By the course with its books.
    #[must_use]
    pub fn booked(plan: &TripPlan) -> Self {
        let course = Course::average(plan);
        Self {
            first_low: course.first_low,
            lowest_frac: course.lowest.0,
            cold_locked: course.ledger.cold_locked,
        }
    }

    /// By quick steps; `None` where the limit is passed or kept by too little to say.
    fn quick(plan: &TripPlan) -> Option<Self> {
        let mut state = BankState::rested(plan.start_soc_frac);
        let stay = plan.stay_hours();
        let start = Self { first_low: None, lowest_frac: state.soc_frac, cold_locked: Hours::ZERO };
        let mut course = start;
        let mut close = false;
        for (index, hour) in plan.hours.iter().enumerate() {
            if let Some(soc_frac) = plan.restarts_at(index) {
                state = BankState::rested(soc_frac);
                (course, close) = (Self { lowest_frac: 1.0, ..start }, false);
            }
            let row = plan.sun.average.get(hour.day).and_then(|row| row.get(hour.hour_of_day));
            let sun = row.map_or_else(HourYield::default, |hour| taught(plan, *hour));
            let locked_frac = advance_hour(plan, &mut state, &hour.into(), sun);
            if course.first_low.is_none() {
                let low_frac = hour.conditions.low_frac;
                close |= (state.soc_frac - low_frac).abs() < QUICK_OFF_FRAC;
                if is_low(&state, low_frac) {
                    course.first_low = Some(index);
                }
            }
            if index < stay {
                course.lowest_frac = course.lowest_frac.min(state.soc_frac);
                course.cold_locked += Hours(locked_frac);
            }
        }
        (!close).then_some(course)
    }
}

/// A yield with what readings taught.
#[inline]
pub(super) fn taught(plan: &TripPlan, hour: HourYield) -> HourYield {
    HourYield { mppt: hour.mppt * plan.sun_factor, pwm: hour.pwm * plan.sun_factor }
}

/// Stage that an hour of charging leaves the battery in.
fn stage(
    plan: &TripPlan,
    state: &BankState,
    hour: &PlanHour,
    ledger: &Ledger,
    volts: Volts,
) -> Option<ChargeStage> {
    let gained = ledger.into_battery - ledger.out_of_battery;
    let idle = gained + ledger.unused_sun + ledger.unused_other <= WattHours::ZERO;
    if gained < WattHours::ZERO || idle {
        return None;
    }
    plan.bank.stage(state, &hour.conditions, gained / Hours(1.0) / volts)
}

/// Below the limit the user set, where the cold puts it.
#[inline]
pub(super) fn is_low(state: &BankState, low_frac: f64) -> bool {
    state.soc_frac < low_frac - 1e-9
}

/// Yield by hour of a day at a clearness, with what readings taught.
pub(super) fn sun_row(plan: &TripPlan, day: usize, k_frac: f64) -> [HourYield; 24] {
    plan.sun.table.day_row(day, k_frac).map(|hour| taught(plan, hour))
}

impl TripPlan {
    /// State of charge from which the forecast starts again at this hour.
    #[inline]
    pub(super) fn restarts_at(&self, index: usize) -> Option<f64> {
        self.restart.and_then(|(hour, soc_frac)| (hour == index).then_some(soc_frac))
    }
}

/// Moves the bank by one step; returns flow, power to battery heating, and the share of the step in
/// which a surplus met a battery too cold to charge.
#[inline]
fn balance(
    bank: &BankPhysics,
    state: &mut BankState,
    conditions: &Conditions,
    surplus: Watts,
) -> (Flow, Watts, f64) {
    let (heating, share) = bank.warm(state, conditions, surplus);
    if surplus.0 < 0.0 {
        return (bank.discharge(state, conditions, -surplus), Watts::ZERO, 0.0);
    }
    let locked = if surplus.0 > 0.0 { 1.0 - share } else { 0.0 };
    (bank.charge(state, conditions, (surplus - heating) * share), heating, locked)
}

/// Plays one hour fast: only the state moves. Tells the share of it in which a surplus met a battery too
/// cold to charge.
#[inline]
pub(super) fn advance_hour(
    plan: &TripPlan,
    state: &mut BankState,
    hour: &Circuit<'_>,
    sun: HourYield,
) -> f64 {
    let mut locked_frac = 0.0;
    for _ in 0..plan.steps_per_hour {
        let offer = offer(&plan.bank, state, hour, sun);
        let mut surplus = offer.sun + offer.machines() - hour.load;
        let (heating, share) = plan.bank.warm(state, hour.conditions, surplus);
        if surplus.0 > 0.0 {
            surplus = (surplus - heating) * share;
            locked_frac += (1.0 - share) / plan.steps_per_hour as f64;
        }
        plan.bank.advance(state, hour.conditions, surplus);
    }
    locked_frac
}

/// Plays one hour and accounts for it; the mean voltage with it.
fn play_hour(
    plan: &TripPlan,
    state: &mut BankState,
    hour: &PlanHour,
    sun: HourYield,
) -> (Ledger, Volts) {
    let dt = Hours(1.0 / plan.steps_per_hour as f64);
    let mut ledger = Ledger::default();
    let mut volts = Volts::ZERO;
    for _ in 0..plan.steps_per_hour {
        let offer = offer(&plan.bank, state, &Circuit::from(hour), sun);
        let surplus = offer.sun + offer.machines() - hour.load;
        let (flow, heating, locked) = balance(&plan.bank, state, &hour.conditions, surplus);
        ledger += account(hour, offer, &flow, heating, locked, dt);
        volts += flow.volts / plan.steps_per_hour as f64;
    }
    ledger.fuel = hour.supply.fuel;
    (ledger, volts)
}

/// Books one step.
fn account(
    hour: &PlanHour,
    offer: Offer,
    flow: &Flow,
    heating: Watts,
    locked: f64,
    dt: Hours,
) -> Ledger {
    let wanted = hour.load * dt;
    let offered = (offer.sun + offer.machines()) * dt;
    let heating = heating * dt;
    let short = (wanted - offered - flow.given).max(WattHours::ZERO);
    let unmet = if offered < wanted { short } else { WattHours::ZERO };
    let served = wanted - unmet;
    // What the sources gave: everything served that the battery did not give, and its charge.
    let from_sources = served + heating + flow.taken - flow.given;
    let sun = (offer.sun * dt).min(from_sources).max(WattHours::ZERO);
    let from_machines = from_sources - sun;
    let machines = offer.machines() * dt;
    let used = if machines.0 > 0.0 { from_machines / machines } else { 0.0 };
    let met = if wanted.0 > 0.0 { served / wanted } else { 0.0 };
    // Peaks pass to and fro through the terminals; what they lose inside stays inside.
    let (peaks, cable_peaks) = (hour.peak_loss * dt * met, hour.peak_cable_loss * dt * met);
    let through = flow.taken - flow.given - flow.lost_cable + peaks;
    Ledger {
        sun,
        unused_sun: offer.sun * dt - sun,
        driving: offer.driving * dt * used,
        hook_up: offer.hook_up * dt * used,
        other: offer.other * dt * used,
        unused_other: machines - from_machines,
        charging_cable: offer.cable_loss * dt,
        direct_loads: hour.demand.direct * dt * met,
        mains_loads: hour.demand.mains * dt * met,
        conversion: hour.demand.conversion * dt * met,
        inverter_idle: hour.demand.inverter_idle * dt * met,
        electronics: hour.electronics * dt * met,
        battery_heating: heating,
        charge_loss: flow.lost_charging,
        resistance_loss: flow.lost_resistance + peaks,
        cable_loss: flow.lost_cable + cable_peaks,
        self_discharge: flow.lost_self,
        into_battery: through.max(WattHours::ZERO),
        out_of_battery: (-through).max(WattHours::ZERO),
        stored: flow.stored,
        unmet,
        fuel: Litres::ZERO,
        cold_locked: dt * locked,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forecast::demand::HourDemand;
    use crate::forecast::plan::{MonthlyClimate, TripSun};
    use crate::model::Setup;
    use crate::units::Celsius;
    use std::sync::Arc;

    const HALF_HOUR: Hours = Hours(0.5);

    /// An hour in which 100 W are drawn: 60 straight, 20 at the sockets, 5 and 5 by the inverter, 10 by controllers.
    /// Appliances that come and go lose 2 W in the battery and 1 W in its cables.
    fn hour() -> PlanHour {
        let climate = MonthlyClimate {
            clearness_frac: [0.4; 12],
            air: [Celsius(20.0); 12],
            half_range_k: [0.0; 12],
            error_frac: 0.0,
        };
        let setup = Setup::default();
        let sun = TripSun::build(&setup, &climate).expect("valid climate");
        let demand = HourDemand {
            direct: Watts(60.0),
            mains: Watts(20.0),
            conversion: Watts(5.0),
            inverter_idle: Watts(5.0),
            ..HourDemand::default()
        };
        PlanHour {
            demand,
            electronics: Watts(10.0),
            peak_loss: Watts(2.0),
            peak_cable_loss: Watts(1.0),
            load: Watts(100.0),
            ..TripPlan::build(&setup, Arc::new(sun)).hours[0]
        }
    }

    fn offer(sun: f64, [driving, hook_up, other]: [f64; 3]) -> Offer {
        Offer {
            sun: Watts(sun),
            driving: Watts(driving),
            hook_up: Watts(hook_up),
            other: Watts(other),
            cable_loss: Watts(4.0),
        }
    }

    fn assert_booked(ledger: &Ledger, expected: &[(&str, WattHours, f64)]) {
        for (what, got, wh) in expected {
            assert!((got.0 - wh).abs() < 1e-9, "{what}: {got:?}, not {wh}: {ledger:?}");
        }
    }

    /// By hand, half an hour: 50 Wh wanted, 40 offered and all used, 10 from the battery.
    #[test]
    fn what_is_drawn_comes_from_the_sources_and_the_battery() {
        let flow = Flow {
            given: WattHours(10.0),
            lost_cable: WattHours(1.0),
            lost_resistance: WattHours(0.5),
            lost_self: WattHours(0.25),
            stored: WattHours(-11.75),
            ..Flow::default()
        };
        let offered = offer(40.0, [10.0, 20.0, 10.0]);
        let l = account(&hour(), offered, &flow, Watts::ZERO, 0.25, HALF_HOUR);
        assert_booked(
            &l,
            &[
                ("sun", l.sun, 20.0),
                ("unused sun", l.unused_sun, 0.0),
                ("driving", l.driving, 5.0),
                ("hook-up", l.hook_up, 10.0),
                ("other", l.other, 5.0),
                ("unused other", l.unused_other, 0.0),
                ("charging cable", l.charging_cable, 2.0),
                ("direct", l.direct_loads, 30.0),
                ("mains", l.mains_loads, 10.0),
                ("conversion", l.conversion, 2.5),
                ("idle", l.inverter_idle, 2.5),
                ("electronics", l.electronics, 5.0),
                ("resistance", l.resistance_loss, 0.5 + 1.0),
                ("cable", l.cable_loss, 1.0 + 0.5),
                ("self", l.self_discharge, 0.25),
                ("into", l.into_battery, 0.0),
                // What left the terminals: given, lost in the cables behind them, less the peaks inside.
                ("out of", l.out_of_battery, 10.0),
                ("stored", l.stored, -11.75),
                ("unmet", l.unmet, 0.0),
            ],
        );
        assert_eq!(l.cold_locked, Hours(0.125));
    }

    /// 80 Wh offered, 50 wanted, 10 charged and 2 to warm the battery: the sun goes first, the machines give the
    /// rest, each its share.
    #[test]
    fn a_surplus_charges_and_the_machines_give_what_the_sun_does_not() {
        let flow = Flow {
            taken: WattHours(10.0),
            lost_charging: WattHours(0.75),
            stored: WattHours(9.25),
            ..Flow::default()
        };
        let offered = offer(100.0, [30.0, 20.0, 10.0]);
        let l = account(&hour(), offered, &flow, Watts(4.0), 0.0, HALF_HOUR);
        assert_booked(
            &l,
            &[
                ("sun", l.sun, 50.0),
                ("unused sun", l.unused_sun, 0.0),
                ("driving", l.driving, 6.0),
                ("hook-up", l.hook_up, 4.0),
                ("other", l.other, 2.0),
                ("unused other", l.unused_other, 18.0),
                ("heating", l.battery_heating, 2.0),
                ("charge loss", l.charge_loss, 0.75),
                ("into", l.into_battery, 11.0),
                ("out of", l.out_of_battery, 0.0),
                ("unmet", l.unmet, 0.0),
            ],
        );
        // More sun than is taken: 75 Wh offered, 62 used.
        let l = account(&hour(), offer(150.0, [0.0; 3]), &flow, Watts(4.0), 0.0, HALF_HOUR);
        assert_booked(&l, &[("sun", l.sun, 62.0), ("unused sun", l.unused_sun, 13.0)]);
    }

    /// An empty battery gives 5 of the 50 Wh, the sun 15: two fifths of everything are served.
    #[test]
    fn what_is_not_to_be_had_is_shared_by_all() {
        let flow = Flow { given: WattHours(5.0), ..Flow::default() };
        let l = account(&hour(), offer(30.0, [0.0; 3]), &flow, Watts::ZERO, 0.0, HALF_HOUR);
        assert_booked(
            &l,
            &[
                ("sun", l.sun, 15.0),
                ("unmet", l.unmet, 30.0),
                ("direct", l.direct_loads, 12.0),
                ("mains", l.mains_loads, 4.0),
                ("conversion", l.conversion, 1.0),
                ("idle", l.inverter_idle, 1.0),
                ("electronics", l.electronics, 2.0),
                ("resistance", l.resistance_loss, 0.4),
                ("cable", l.cable_loss, 0.2),
                ("out of", l.out_of_battery, 4.6),
            ],
        );
    }
}
