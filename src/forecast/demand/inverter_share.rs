//! What the inverter takes on account of each appliance behind it, so that the appliance can answer for it.
//!
//! While something runs, the inverter draws `P0` ([`super`]). What it draws in an hour beyond its draw
//! with nothing running is shared among what runs in that hour, by running time; what it draws with
//! nothing running is nobody's and stands by itself. All shares and the rest add up to its no-load draw.

use super::{LoadDay, LoadHour, at_battery, inverter_idle};
use crate::forecast::surroundings::{FIRST_WHOLE_DAY, Surroundings};
use crate::model::{Feed, Load, Setup};
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, HOURS_PER_DAY, Hours, WattHours, Watts};

/// What the inverter takes in a day, by the appliance that makes it run.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct InverterEnergy {
    by_load: Vec<(u32, InverterPart)>,
    /// No-load draw of all appliances that are switched on.
    pub shared: WattHours,
    /// No-load draw with nothing running: nobody's.
    pub alone: WattHours,
}

/// What the inverter takes on account of one appliance in a day.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct InverterPart {
    /// Its share of the no-load draw; not part of what the appliance takes by
    /// [`LoadDay::energy_at_battery`].
    pub idle: WattHours,
    /// Lost in passing its power on; part of what the appliance takes.
    pub conversion: WattHours,
}

impl InverterEnergy {
    /// Of every load of a setup on the first whole day of its trip; `air` outside by hour of the day.
    /// A load that is switched off counts as if it ran beside those that are on.
    #[must_use]
    pub fn of(setup: &Setup, air: &[Celsius; 24]) -> Self {
        Self::on_day(setup, &Surroundings::on_day(setup, FIRST_WHOLE_DAY, *air))
    }

    /// The same on any day.
    #[must_use]
    pub fn on_day(setup: &Setup, around: &Surroundings) -> Self {
        let curve = InverterCurve::of(&setup.inverter);
        let idle = |busy: f64| inverter_idle(&setup.inverter, &curve, busy);
        let days: Vec<(&Load, LoadDay)> = setup
            .loads
            .iter()
            .filter(|load| load.feed == Feed::Inverter)
            .map(|load| (load, LoadDay::of(load, around)))
            .collect();
        let mut energy = Self { alone: idle(0.0) * Hours(HOURS_PER_DAY), ..Self::default() };
        for (load, day) in &days {
            let mut part = InverterPart::default();
            for (hour, slot) in day.hours.iter().enumerate() {
                let busy = busy_frac(slot);
                let (mut sum, mut quiet) = (busy, 1.0 - busy);
                for (other, day) in days.iter().filter(|(other, _)| other.id != load.id) {
                    if other.enabled {
                        let busy = day.hours.get(hour).map_or(0.0, busy_frac);
                        sum += busy;
                        quiet *= 1.0 - busy;
                    }
                }
                if sum > 0.0 {
                    part.idle += (idle(1.0 - quiet) - idle(0.0)) * (busy / sum) * Hours(1.0);
                }
                let lost = at_battery(load, *slot, &curve) - slot.running - slot.standby;
                part.conversion += lost * setup.correction.use_factor * Hours(1.0);
            }
            if load.enabled {
                energy.shared += part.idle;
            }
            energy.by_load.push((load.id, part));
        }
        energy
    }

    /// On account of the load with this id; nothing for one that is not behind the inverter.
    #[must_use]
    pub fn of_load(&self, id: u32) -> InverterPart {
        let own = self.by_load.iter().find(|(load, _)| *load == id);
        own.map_or(InverterPart::default(), |(_, part)| *part)
    }
}

/// Share of the hour in which it keeps the inverter on, 0..1: all of it where it draws between uses.
fn busy_frac(hour: &LoadHour) -> f64 {
    if hour.standby > Watts::ZERO {
        1.0
    } else if hour.momentary > Watts::ZERO {
        (hour.running / hour.momentary).min(1.0)
    } else {
        0.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forecast::demand::Demands;
    use crate::model::{Draw, Inverter, InverterSwitching, Usage, Window};

    const AIR: [Celsius; 24] = [Celsius(18.0); 24];

    fn behind(id: u32, watts: f64, minutes: f64, window: Window) -> Load {
        Load {
            id,
            draw: Draw::Power { watts: Watts(watts) },
            usage: Usage::Daily { minutes },
            window,
            feed: Feed::Inverter,
            ..Load::default()
        }
    }

    fn setup(loads: Vec<Load>, switching: InverterSwitching) -> Setup {
        let inverter =
            Inverter { fitted: true, idle: Watts(10.0), switching, ..Inverter::default() };
        Setup { loads, inverter, ..Setup::default() }
    }

    #[test]
    fn the_shares_and_what_is_nobodys_add_up_to_the_no_load_draw() {
        let standing_by = Load { standby: Watts(2.0), ..behind(3, 90.0, 60.0, Window::EVENING) };
        let off = Load { enabled: false, ..behind(4, 700.0, 45.0, Window::MORNING) };
        for switching in [
            InverterSwitching::AllDay,
            InverterSwitching::WhenUsed,
            InverterSwitching::PowerSave { asleep: Watts(1.5) },
        ] {
            let setup = setup(
                vec![
                    behind(1, 50.0, 240.0, Window::EVENING),
                    behind(2, 1200.0, 20.0, Window::ALL_DAY),
                    standing_by.clone(),
                    off.clone(),
                ],
                switching,
            );
            let around = Surroundings::on_day(&setup, FIRST_WHOLE_DAY, AIR);
            let whole: f64 = Demands::new(&setup, &around, 1.0)
                .on(&around)
                .iter()
                .map(|hour| hour.inverter_idle.0)
                .sum();
            let energy = InverterEnergy::of(&setup, &AIR);
            let shares: f64 =
                setup.enabled_loads().map(|load| energy.of_load(load.id).idle.0).sum();
            assert!((shares - energy.shared.0).abs() < 1e-9);
            assert!((shares + energy.alone.0 - whole).abs() < 1e-9, "{switching:?}: {whole} Wh");
        }
    }

    /// By hand: four hours of television keep an inverter of 10 W on for four hours.
    #[test]
    fn who_runs_alone_answers_for_all_the_time_it_runs() {
        let curve = |setup: &Setup| InverterCurve::of(&setup.inverter);
        let one = setup(
            vec![behind(1, 50.0, 240.0, Window { from_min: 1080, to_min: 1320 })],
            InverterSwitching::WhenUsed,
        );
        let energy = InverterEnergy::of(&one, &AIR);
        let by_hand = 4.0 * curve(&one).p0.0;
        assert!((energy.of_load(1).idle.0 - by_hand).abs() < 1e-9);
        // r P^2 for four hours.
        let lost = 4.0 * curve(&one).r_per_watt * 50.0 * 50.0;
        assert!((energy.of_load(1).conversion.0 - lost).abs() < 1e-9);
        assert!(by_hand > 30.0 && energy.alone == WattHours::ZERO);
    }

    #[test]
    fn two_that_run_at_the_same_time_share_and_what_is_off_changes_nobodys_share() {
        let window = Window { from_min: 1080, to_min: 1200 };
        let alone = setup(vec![behind(1, 50.0, 120.0, window)], InverterSwitching::WhenUsed);
        let mut both = setup(
            vec![behind(1, 50.0, 120.0, window), behind(2, 90.0, 120.0, window)],
            InverterSwitching::WhenUsed,
        );
        let whole = InverterEnergy::of(&alone, &AIR).of_load(1).idle;
        let shared = InverterEnergy::of(&both, &AIR);
        assert!((shared.of_load(1).idle.0 - whole.0 / 2.0).abs() < 1e-9);
        assert!((shared.of_load(2).idle.0 - whole.0 / 2.0).abs() < 1e-9);
        both.loads[1].enabled = false;
        assert_eq!(InverterEnergy::of(&both, &AIR).of_load(1).idle, whole);
    }

    #[test]
    fn from_the_battery_nothing_is_added() {
        let mut setup =
            setup(vec![behind(1, 50.0, 240.0, Window::ALL_DAY)], InverterSwitching::WhenUsed);
        setup.loads[0].feed = Feed::Dc;
        assert_eq!(InverterEnergy::of(&setup, &AIR).of_load(1), InverterPart::default());
    }
}
