//! Why two batteries fare differently on the same trip: each reason with its figure.
//!
//! Every figure comes from the model the trip is played with, at the temperature the battery has
//! on that trip, so that the same two batteries are told apart for other reasons in the cold than
//! in the warm.

pub use super::differences::BatteryReason;
use super::differences::{Difference, Field, Value};
use crate::forecast::{Charger, Outlook, TripPlan, charge_session};
use crate::model::Setup;
use crate::physics::battery::rate::kinetic_charge;
use crate::physics::battery::storage::drain;
use crate::physics::battery::{BankState, UsableEnergy};
use crate::units::{AmpHours, Celsius, Hours, Volts, Watts};

/// One setup with its trip played in average weather.
struct Played<'a> {
    setup: &'a Setup,
    plan: &'a TripPlan,
    outlook: Outlook,
    mean: Celsius,
}

impl Played<'_> {
    /// Hours of the stay before the lowest level allowed is passed: what a battery does below it
    /// tells how much it held, not how well it holds its voltage.
    fn hours_with_charge(&self) -> usize {
        let stay = self.plan.stay_hours();
        self.outlook.course.first_low.map_or(stay, |low| low.min(stay))
    }
}

type Reader = fn(&Played<'_>) -> Value;

const REASONS: [(BatteryReason, Reader); 13] = [
    (BatteryReason::UsableShare, |p| {
        let energy = UsableEnergy::at(&p.setup.bank, p.mean);
        Value::Share(energy.usable / energy.label)
    }),
    (BatteryReason::ColdReach, |p| {
        let hours = p.plan.hours.iter().take(p.plan.stay_hours());
        Value::Share(hours.map(|hour| hour.conditions.available_frac).fold(1.0, f64::min))
    }),
    (BatteryReason::FastDischarge, |p| {
        let cell = p.plan.bank.cell;
        let given = |hours| {
            let time = Hours(hours);
            kinetic_charge(AmpHours(1.0), cell.available_frac, cell.recovery_per_h, time)
        };
        Value::Share(given(5.0) / given(20.0))
    }),
    (BatteryReason::StoredAbove80, |p| {
        const PARTS: u32 = 40;
        let put_in: f64 = (0..PARTS)
            .map(|part| 0.8 + 0.2 * (f64::from(part) + 0.5) / f64::from(PARTS))
            .map(|soc_frac| 1.0 / p.plan.bank.charge_frac(soc_frac))
            .sum();
        Value::Share(f64::from(PARTS) / put_in)
    }),
    (BatteryReason::TakenAt90, |p| {
        let bank = &p.plan.bank;
        Value::Current(bank.max_charge_current(&BankState::rested(0.9), &bank.conditions(p.mean)))
    }),
    (BatteryReason::TimeToFull, time_to_full),
    (BatteryReason::LostADay, |p| {
        let ledger = &p.outlook.course.ledger;
        let days = p.plan.stay_hours().max(1) as f64 / 24.0;
        Value::Energy((ledger.charge_loss + ledger.resistance_loss) / days)
    }),
    (BatteryReason::LowestVoltage, |p| {
        let hours = p.outlook.course.hours.iter().take(p.hours_with_charge());
        let lowest = hours.map(|hour| hour.sag_volts).fold(Volts(f64::INFINITY), Volts::min);
        if lowest.is_finite() { Value::Voltage(lowest) } else { Value::Absent }
    }),
    (BatteryReason::CutOut, |p| {
        let until = p.hours_with_charge();
        let off = p.outlook.cut_outs.iter().filter_map(|event| {
            let left = until.checked_sub(event.first_hour).filter(|left| *left > 0)?;
            Some(event.hours_off.min(left))
        });
        off.max().map_or(Value::Absent, |hours| Value::Time(Hours(hours as f64)))
    }),
    (BatteryReason::NoChargeBelow, |p| {
        if p.plan.bank.conditions(Celsius(-0.1)).may_charge {
            Value::Absent
        } else {
            Value::Temperature(Celsius(0.0))
        }
    }),
    (BatteryReason::ColdLocked, |p| {
        let locked = p.outlook.course.ledger.cold_locked;
        if locked > Hours::ZERO { Value::Time(locked) } else { Value::Absent }
    }),
    (BatteryReason::Management, |p| {
        let draw = p.plan.bank.management();
        if draw > Watts::ZERO { Value::Power(draw) } else { Value::Absent }
    }),
    (BatteryReason::StandingLoss, |p| {
        let bank = &p.plan.bank;
        let lost = drain(bank, 1.0, Watts::ZERO, p.mean) * Hours(30.0 * 24.0);
        Value::Share((lost / bank.capacity).min(1.0))
    }),
];

/// With the charger of the most current that has stages.
fn time_to_full(played: &Played<'_>) -> Value {
    let others = (0..played.setup.other.len()).map(Charger::Other);
    let sessions = [Charger::HookUp, Charger::Driving]
        .into_iter()
        .chain(others)
        .filter_map(|charger| charge_session(played.setup, played.plan, charger));
    sessions
        .max_by(|a, b| a.current.0.total_cmp(&b.current.0))
        .and_then(|session| session.stages)
        .map_or(Value::Absent, |stages| Value::Time(stages.full))
}

/// The reasons in which batteries differ on their trips; none where the batteries are the same.
/// Each setup with the plan made from it.
#[must_use]
pub fn battery_reasons(setups: &[(&Setup, &TripPlan)]) -> Vec<Difference> {
    if setups.windows(2).all(|pair| pair[0].0.bank == pair[1].0.bank) {
        return Vec::new();
    }
    let played: Vec<Played<'_>> = setups
        .iter()
        .map(|(setup, plan)| {
            let hours = plan.hours.iter().take(plan.stay_hours().max(1));
            let (sum, count) = hours.fold((0.0, 0.0), |(sum, count), hour| {
                (sum + hour.conditions.temperature.0, count + 1.0)
            });
            let mean = Celsius(if count > 0.0 { sum / count } else { 20.0 });
            Played { setup, plan, outlook: Outlook::of(setup, plan), mean }
        })
        .collect();
    REASONS
        .iter()
        .map(|(reason, value)| Difference {
            field: Field::Battery(*reason),
            values: played.iter().map(value).collect(),
        })
        .filter(|line| line.values.windows(2).any(|pair| pair[0] != pair[1]))
        .collect()
}
