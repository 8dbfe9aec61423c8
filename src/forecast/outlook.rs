//! The answer in figures: nights, need a day, who draws how much, what cuts out.

use super::course::{Course, CutOutEvent};
use super::demand::LoadDay;
use super::demand::inverter_share::InverterEnergy;
use super::plan::{PlanHour, TripPlan};
use super::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use crate::model::{Feed, Group, Load, Setup};
use crate::physics::cable::loop_resistance;
use crate::units::{Celsius, Hours, Volts, WattHours, Watts};

/// Who draws.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Drawer {
    /// An appliance, by id.
    Load(u32),
    /// The inverter with nothing running.
    InverterIdle,
    /// Solar controllers and battery management.
    Electronics,
}

/// One consumer's part of the day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LoadShare {
    /// Who.
    pub drawer: Drawer,
    /// Group.
    pub group: Group,
    /// Energy a day at the battery, with what the inverter takes on its account ([`inverter_share`]).
    ///
    /// [`inverter_share`]: super::demand::inverter_share
    pub per_day: WattHours,
    /// Of which between uses.
    pub standby: WattHours,
    /// Share of the whole day's need, 0..1.
    pub of_need_frac: f64,
    /// Share of the usable battery it takes in a day; above 1 where it takes more.
    pub of_usable_frac: f64,
}

/// What the page shows first.
#[derive(Clone, Debug)]
pub struct Outlook {
    /// Energy a day all together need at the battery, on the first whole day.
    pub need_per_day: WattHours,
    /// The same, by consumer, largest first.
    pub shares: Vec<LoadShare>,
    /// Usable energy between full and the limit, at the battery's mean temperature.
    pub usable: WattHours,
    /// Nominal energy, rated charge times nominal voltage, for comparison.
    pub nominal: WattHours,
    /// Nights lasted in average weather, as far as the plan looks.
    pub nights: usize,
    /// The plan's horizon was reached without passing the limit.
    pub nights_open: bool,
    /// Time until the limit is passed, from arrival.
    pub first_low: Option<Hours>,
    /// The average course.
    pub course: Course,
    /// Appliances and inverter that would cut out for low voltage.
    pub cut_outs: Vec<CutOutEvent>,
}

impl Outlook {
    /// Plays the trip in average weather and sums it up.
    #[must_use]
    pub fn of(setup: &Setup, plan: &TripPlan) -> Self {
        let course = Course::average(plan);
        let around = Surroundings::on_day(setup, FIRST_WHOLE_DAY, plan.sun.first_whole_day_air());
        let mean_battery =
            mean(plan.hours.iter().take(24).map(|hour| hour.conditions.temperature.0));
        let conditions = plan.bank.conditions(Celsius(mean_battery));
        let usable = plan.bank.usable(&conditions);
        let shares = shares(setup, plan, &around, usable);
        let nights = plan.nights_before(course.first_low);
        Self {
            need_per_day: shares.iter().map(|share| share.per_day).sum(),
            shares,
            usable,
            nominal: setup.bank.rated_capacity() * setup.bank.system.nominal(),
            nights,
            nights_open: course.first_low.is_none(),
            first_low: course.first_low.map(|hour| Hours((hour + 1) as f64)),
            cut_outs: cut_outs(setup, plan, &course, &around),
            course,
        }
    }

    /// Energy a day by group, largest first.
    #[must_use]
    pub fn by_group(&self) -> Vec<(Group, WattHours)> {
        let mut sums: Vec<(Group, WattHours)> = Group::ALL
            .iter()
            .map(|group| {
                let own = self.shares.iter().filter(|share| share.group == *group);
                (*group, own.map(|share| share.per_day).sum())
            })
            .filter(|(_, sum): &(Group, WattHours)| sum.0 > 0.0)
            .collect();
        sums.sort_by(|a, b| b.1.0.total_cmp(&a.1.0));
        sums
    }
}

fn mean(values: impl Iterator<Item = f64>) -> f64 {
    let (sum, count) = values.fold((0.0, 0_u32), |(sum, count), value| (sum + value, count + 1));
    if count == 0 { 0.0 } else { sum / f64::from(count) }
}

fn shares(
    setup: &Setup,
    plan: &TripPlan,
    around: &Surroundings,
    usable: WattHours,
) -> Vec<LoadShare> {
    let factor = setup.correction.use_factor;
    let hour = Hours(1.0);
    let inverter = InverterEnergy::on_day(setup, around);
    let mut list: Vec<(Drawer, Group, WattHours, WattHours)> = setup
        .enabled_loads()
        .map(|load| {
            let day = LoadDay::of(load, around);
            let energy = day.energy_at_battery(load, setup) + inverter.of_load(load.id).idle;
            let standby: WattHours =
                day.hours.iter().map(|slot| slot.standby * factor * hour).sum();
            (Drawer::Load(load.id), load.group, energy, standby)
        })
        .collect();
    let electronics = (plan.sun.table.self_use() + plan.bank.management()) * Hours(24.0);
    list.push((Drawer::InverterIdle, Group::Standby, inverter.alone, inverter.alone));
    list.push((Drawer::Electronics, Group::Standby, electronics, electronics));
    let need: WattHours = list.iter().map(|entry| entry.2).sum();
    let of = |part: WattHours, whole: WattHours| if whole.0 > 0.0 { part / whole } else { 0.0 };
    let mut shares: Vec<LoadShare> = list
        .into_iter()
        .filter(|(drawer, _, per_day, _)| matches!(drawer, Drawer::Load(_)) || per_day.0 > 0.0)
        .map(|(drawer, group, per_day, standby)| LoadShare {
            drawer,
            group,
            per_day,
            standby,
            of_need_frac: of(per_day, need),
            of_usable_frac: of(per_day, usable),
        })
        .collect();
    shares.sort_by(|a, b| b.per_day.0.total_cmp(&a.per_day.0));
    shares
}

/// Drop in the cable of an appliance whose cable was not entered, per 12 V nominal: 5 %, between the
/// 3 and 10 % that standards allow (common practice, no source).
pub const USUAL_CABLE_DROP: Volts = Volts(0.6);

/// Drop in the cable of an appliance alone while it runs: that of the cable entered for it, else the
/// usual one.
fn own_drop(setup: &Setup, load: &Load) -> Volts {
    let system = setup.bank.system;
    setup.cables.iter().find(|run| run.load_id == Some(load.id)).map_or(
        USUAL_CABLE_DROP * system.series_12v(),
        |run| {
            let current = load.draw.watts() * f64::from(load.quantity) / system.nominal();
            loop_resistance(run.size, run.length, run.working) * current
        },
    )
}

/// Voltages are stated for 12 V; a cut-out holds until the voltage passes its switch-on value.
fn cut_outs(
    setup: &Setup,
    plan: &TripPlan,
    course: &Course,
    around: &Surroundings,
) -> Vec<CutOutEvent> {
    let series_12v = setup.bank.system.series_12v();
    let cable = setup.bank.cable;
    let mut events = Vec::new();
    let mut watch = |load_id: Option<u32>,
                     drop: Volts,
                     off: Volts,
                     on: Volts,
                     in_use: &dyn Fn(&PlanHour) -> bool| {
        let mut event: Option<CutOutEvent> = None;
        let mut is_off = false;
        for (index, (record, hour)) in
            course.hours.iter().zip(&plan.hours).enumerate().take(plan.stay_hours())
        {
            let current = hour.demand.momentary / record.sag_volts.max(Volts(1.0));
            let seen = record.sag_volts - current * cable - drop;
            is_off = if is_off {
                record.volts < on * series_12v
            } else {
                seen < off * series_12v && in_use(hour) && record.ledger.unmet.0 <= 1e-6
            };
            if is_off {
                event
                    .get_or_insert(CutOutEvent {
                        load_id,
                        first_hour: index,
                        hours_off: 0,
                        volts: seen,
                        soc_frac: record.soc_frac,
                    })
                    .hours_off += 1;
            }
        }
        events.extend(event);
    };
    for load in setup.enabled_loads() {
        if let Some(cut_out) = load.cut_out {
            let day = LoadDay::of(load, around);
            let drop = if load.feed == Feed::Dc { own_drop(setup, load) } else { Volts::ZERO };
            watch(Some(load.id), drop, cut_out.off, cut_out.on, &|hour| {
                let on_hook_up =
                    load.feed == Feed::Inverter && hour.supply.sockets_on_hook_up >= 1.0;
                !on_hook_up && day.hours[hour.hour_of_day].momentary > Watts::ZERO
            });
        }
    }
    if setup.inverter.fitted {
        let off = setup.inverter.cut_out;
        watch(None, Volts::ZERO, off, off + Volts(1.5), &|hour| {
            hour.demand.mains + hour.demand.inverter_idle > Watts::ZERO
        });
    }
    events
}
