//! Sequences of weather played side by side, hour by hour.

use super::maps::{Charge, HourMaps, Level, SharedMaps};
use crate::forecast::course::{advance_hour, is_low, taught};
use crate::forecast::offer::Circuit;
use crate::forecast::plan::{PlanHour, TripPlan};
use crate::forecast::weather::DrawnWeather;
use crate::physics::battery::BankState;
use crate::physics::solar::panel::HourYield;
use crate::units::{Celsius, Hours, Watts};
use std::sync::Arc;

/// One sequence on its way through the trip.
#[derive(Clone, Debug)]
pub(super) struct Played {
    /// Its number in the block.
    pub(super) index: usize,
    /// What is really used over what was entered, less one.
    use_off: f64,
    pub(super) state: BankState,
    pub(super) first_low: Option<usize>,
    /// Lowest state of charge of the stay, 0..1.
    pub(super) lowest: f64,
}

impl Played {
    /// A reading tells the state of charge.
    pub(super) fn restart(&mut self, soc_frac: f64) {
        self.state = BankState::rested(soc_frac);
        self.first_low = None;
        self.lowest = self.state.soc_frac;
    }

    /// Notes what the hour `index` left, with the limit that held in it.
    #[inline]
    pub(super) fn note(&mut self, index: usize, within_stay: bool, low_frac: f64) {
        if is_low(&self.state, low_frac) && self.first_low.is_none() {
            self.first_low = Some(index);
        }
        if within_stay {
            self.lowest = self.lowest.min(self.state.soc_frac);
        }
    }
}

/// Sky and air of one day of one sequence.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct SkyDay {
    /// Place of the clearness in the table of yields.
    clearness: (usize, f64),
    /// Degrees above the usual mean [K].
    anomaly_k: f64,
}

/// Sequences that are played side by side.
#[derive(Clone, Debug, Default)]
pub(super) struct Block {
    pub(super) played: Vec<Played>,
    /// Sky of each day, of all sequences of the block in turn.
    sky: Vec<SkyDay>,
    /// Sequences drawn.
    count: usize,
}

impl Block {
    /// Takes the `count` sequences of a plan from number `first` on.
    pub(super) fn draw(
        &mut self,
        plan: &TripPlan,
        weather: &mut DrawnWeather,
        (first, count): (usize, usize),
    ) {
        self.count = count;
        self.sky.resize(weather.days() * count, SkyDay::default());
        self.played.clear();
        for index in 0..count {
            let drawn = weather.sequence(first + index);
            let days = drawn.k_frac.iter().zip(drawn.air_anomaly_k).enumerate();
            for (day, (k_frac, anomaly_k)) in days {
                if let Some(sky) = self.sky.get_mut(day * count + index) {
                    let clearness = plan.sun.table.place(day, *k_frac);
                    *sky = SkyDay { clearness, anomaly_k: *anomaly_k };
                }
            }
            let state = BankState::rested(plan.start_soc_frac);
            self.played.push(Played {
                index,
                use_off: use_factor(plan.use_error_frac, drawn.use_normal) - 1.0,
                lowest: state.soc_frac,
                state,
                first_low: None,
            });
        }
    }

    /// The sequences that are still played, and the sky of a day by their numbers.
    pub(super) fn on_day(&mut self, day: usize) -> (&mut [Played], &[SkyDay]) {
        let sky = self.sky.get(day * self.count..(day + 1) * self.count);
        (&mut self.played, sky.unwrap_or_default())
    }
}

/// What the battery meets at one temperature, as the maps need it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Reach {
    level: Level,
    /// Limit the user set, where the cold puts it, 0..1.
    low_frac: f64,
    /// Nothing more comes out below this, 0..1.
    empty_frac: f64,
    /// Lost by itself in an hour, 0..1.
    leak_frac: f64,
    may_charge: bool,
}

/// The hours as the maps of the battery tell them.
#[derive(Clone, Debug)]
pub(super) struct Mapped {
    pub(super) maps: SharedMaps,
    /// By temperature, as [`AirResponse::place`] counts.
    pub(super) reach: Arc<[Reach]>,
}

impl Mapped {
    pub(super) fn new(plan: &TripPlan, maps: SharedMaps) -> Self {
        let reach = plan.air_response.all_conditions().iter().map(|at| Reach {
            level: Level::of(at.temperature),
            low_frac: at.low_frac,
            empty_frac: at.empty_frac,
            leak_frac: at.self_discharge * Hours(1.0) / plan.bank.capacity,
            may_charge: at.may_charge,
        });
        Self { maps, reach: reach.collect() }
    }
}

/// An hour of the plan, with what is the same in all sequences.
pub(super) struct Now<'a> {
    plan: &'a TripPlan,
    hour: &'a PlanHour,
    /// The sun may shine.
    is_lit: bool,
    /// A source gives a current whatever the voltage.
    has_currents: bool,
    /// Draw that may be off with the use.
    use_off_by: Watts,
}

impl<'a> Now<'a> {
    pub(super) fn of(plan: &'a TripPlan, hour: &'a PlanHour) -> Self {
        let [mppt, pwm] = plan.sun.table.shines(hour.day, hour.hour_of_day);
        Self {
            plan,
            hour,
            is_lit: mppt || pwm,
            has_currents: hour.offered.0 > 0.0 || pwm,
            use_off_by: hour.demand.total(),
        }
    }

    /// A relay gives what the battery's own voltage leaves it: such an hour is played step by step.
    pub(super) fn is_mapped(&self) -> bool {
        self.hour.supply.relay.is_none()
    }

    /// Temperature of the battery by the air alone.
    #[inline]
    fn unheated(&self, sky: &SkyDay) -> Celsius {
        Celsius(self.hour.unheated.0 + sky.anomaly_k)
    }

    /// Everything drawn.
    #[inline]
    fn load(&self, played: &Played, sky: &SkyDay) -> Watts {
        let response = &self.plan.air_response;
        let by_air = response.extra_draw(self.hour.hour_of_day, self.hour.air, sky.anomaly_k);
        (self.hour.load + by_air + self.use_off_by * played.use_off).max(Watts::ZERO)
    }

    #[inline]
    fn sun(&self, sky: &SkyDay) -> HourYield {
        if !self.is_lit {
            return HourYield::default();
        }
        let PlanHour { day, hour_of_day, .. } = *self.hour;
        taught(self.plan, self.plan.sun.table.hour_at(day, hour_of_day, sky.clearness))
    }

    /// Plays the hour step by step; tells the limit the user set, where the cold puts it.
    pub(super) fn step(&self, played: &mut Played, sky: &SkyDay) -> f64 {
        let conditions = self.plan.air_response.conditions(self.unheated(sky));
        let load = self.load(played, sky);
        let circuit = Circuit { conditions, load, ..self.hour.into() };
        advance_hour(self.plan, &mut played.state, &circuit, self.sun(sky));
        conditions.low_frac
    }

    /// Plays the hour as the maps tell it; tells the limit.
    #[inline]
    pub(super) fn read(
        &self,
        maps: &mut HourMaps,
        reach: &[Reach],
        played: &mut Played,
        sky: &SkyDay,
    ) -> f64 {
        let plan = self.plan;
        let unheated = self.unheated(sky);
        let Some(at) = reach.get(plan.air_response.place(unheated)) else { return 0.0 };
        let before = played.state.soc_frac;
        let charge = Charge::of(before);
        let sun = self.sun(sky);
        let mut power = sun.mppt - self.load(played, sky);
        if self.has_currents {
            let amps = sun.pwm + self.hour.offered;
            power += amps * plan.bank.curve.volts(before);
            power += amps * maps.lift(charge, power, at.level);
        }
        if plan.bank.warms_itself() {
            power = warmed(plan, &mut played.state, unheated, power);
        } else if !at.may_charge {
            power = power.min(Watts::ZERO);
        }
        let mut after = before + maps.gain_frac(charge, power, at.level);
        if after < at.empty_frac {
            // No more comes out than is in reach.
            after = after.max(before.min(at.empty_frac) - at.leak_frac).max(0.0);
        }
        played.state.soc_frac = after.min(1.0);
        at.low_frac
    }
}

/// What is left of a power for charging once cold cells have warmed themselves; draws stay as they are.
fn warmed(plan: &TripPlan, state: &mut BankState, unheated: Celsius, power: Watts) -> Watts {
    let conditions = plan.air_response.conditions(unheated);
    let mut left = Watts::ZERO;
    for _ in 0..plan.steps_per_hour {
        let (heating, share) = plan.bank.warm(state, conditions, power);
        left += if power.0 > 0.0 { (power - heating) * share } else { power };
    }
    left / plan.steps_per_hour as f64
}

/// What is really used over what was entered, at the standard normal figure `z`: log-normal, as
/// nobody uses less than nothing, with the mean 1 and the standard deviation `error_frac`.
fn use_factor(error_frac: f64, z: f64) -> f64 {
    let variance = (error_frac * error_frac).ln_1p();
    (variance.sqrt() * z - 0.5 * variance).exp()
}

#[cfg(test)]
mod tests {
    use super::use_factor;

    /// Log-normal with the mean 1 and the standard deviation that was asked for, summed over the normal figures.
    #[test]
    fn the_use_is_right_on_average() {
        for error_frac in [0.0, 0.15, 0.4] {
            let (mut whole, mut mean, mut square) = (0.0, 0.0, 0.0);
            for i in -800..=800 {
                let z = f64::from(i) / 100.0;
                let weight = (-0.5 * z * z).exp();
                let factor = use_factor(error_frac, z);
                whole += weight;
                mean += weight * factor;
                square += weight * factor * factor;
            }
            let (mean, square) = (mean / whole, square / whole);
            assert!((mean - 1.0).abs() < 1e-6, "{error_frac}: {mean}");
            assert!((square - 1.0 - error_frac * error_frac).abs() < 1e-5, "{error_frac}");
        }
        assert!(use_factor(0.4, 1.0) > 1.0 && use_factor(0.4, -1.0) > 0.0);
    }
}
