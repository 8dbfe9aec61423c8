//! What a day warmer or colder than usual changes: the state of the battery, and the draw of what
//! follows the air. Tables, made once for a plan and read by every hour of every sequence.

use super::demand::{LoadDay, at_battery, follows_air};
use super::surroundings::Surroundings;
use crate::model::{Load, Setup, Vehicle};
use crate::physics::battery::{BankPhysics, Conditions};
use crate::physics::indoors::battery_kept_at;
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, Watts};
use std::sync::{Arc, OnceLock};

/// Battery temperatures of the table: from the first, in steps, so many.
const COLDEST_BATTERY_C: f64 = -45.0;
const BATTERY_STEP_K: f64 = 0.25;
const BATTERY_STEPS: usize = 440;
/// Likely error of the use once readings of the battery have corrected it (what a fit calls known is
/// within a quarter, usually a tenth: [`crate::advice`]; our choice between the two).
const TAUGHT_ERROR_FRAC: f64 = 0.15;
/// Air temperatures of the table of draws.
const COLDEST_AIR_C: f64 = -50.0;
const AIR_STEP_K: f64 = 1.0;
const AIR_STEPS: usize = 110;

/// Tables of what follows the temperature.
#[derive(Clone, Debug)]
pub struct AirResponse {
    conditions: Vec<Conditions>,
    /// The battery is kept at this, or at nothing: minus infinity.
    at_least_c: f64,
    draw: Arc<AirDraw>,
}

/// Draw of what follows the air, and of what it is.
#[derive(Clone, Debug)]
struct AirDraw {
    followers: Followers,
    /// At the battery, by air temperature and hour of the day, each worked out when it is first read;
    /// empty if nothing follows the air.
    table: Vec<OnceLock<[Watts; 24]>>,
}

/// What follows the air, with all that its draw hangs on.
#[derive(Clone, Debug, PartialEq)]
struct Followers {
    loads: Vec<Load>,
    curve: InverterCurve,
    use_factor: f64,
    vehicle: Vehicle,
    heated_to: Option<Celsius>,
}

impl AirResponse {
    /// For the battery and the loads of a setup; the draw is taken from `like` where it is the same there.
    #[must_use]
    pub fn like(setup: &Setup, bank: &BankPhysics, like: Option<&Self>) -> Self {
        let conditions = (0..=BATTERY_STEPS)
            .map(|i| bank.conditions(Celsius(COLDEST_BATTERY_C + i as f64 * BATTERY_STEP_K)))
            .collect();
        let followers = Followers {
            loads: setup.enabled_loads().filter(|load| follows_air(load)).cloned().collect(),
            curve: InverterCurve::of(&setup.inverter),
            use_factor: setup.correction.use_factor,
            vehicle: setup.vehicle,
            heated_to: setup.trip.heated_to,
        };
        let known = like.filter(|like| like.draw.followers == followers);
        let draw =
            known.map_or_else(|| Arc::new(AirDraw::of(followers)), |known| known.draw.clone());
        let kept_at = battery_kept_at(setup.bank.place, setup.trip.heated_to);
        Self { conditions, at_least_c: kept_at.map_or(f64::NEG_INFINITY, |at| at.0), draw }
    }

    /// Place among [`Self::all_conditions`] of a battery that would be at `unheated` by the air alone.
    #[inline]
    #[must_use]
    pub fn place(&self, unheated: Celsius) -> usize {
        let at = unheated.0.max(self.at_least_c);
        let i = ((at - COLDEST_BATTERY_C) / BATTERY_STEP_K + 0.5) as i32;
        (i.max(0) as usize).min(BATTERY_STEPS)
    }

    /// Conditions of a battery that would be at `unheated` by the air alone.
    #[inline]
    #[must_use]
    pub fn conditions(&self, unheated: Celsius) -> &Conditions {
        &self.conditions[self.place(unheated)]
    }

    /// Conditions at every temperature of the table, the coldest first.
    #[must_use]
    pub fn all_conditions(&self) -> &[Conditions] {
        &self.conditions
    }

    /// What a day `anomaly_k` warmer than usual adds to the draw of this hour, whose air is usually
    /// at `air`; negative on colder days.
    #[inline]
    #[must_use]
    pub fn extra_draw(&self, hour_of_day: usize, air: Celsius, anomaly_k: f64) -> Watts {
        if self.draw.table.is_empty() {
            return Watts::ZERO;
        }
        self.draw_at(hour_of_day, air.0 + anomaly_k) - self.draw_at(hour_of_day, air.0)
    }

    fn draw_at(&self, hour_of_day: usize, air_c: f64) -> Watts {
        let x = ((air_c - COLDEST_AIR_C) / AIR_STEP_K).clamp(0.0, AIR_STEPS as f64);
        let i = (x as usize).min(AIR_STEPS - 1);
        let (here, next) = (self.draw.at(i)[hour_of_day], self.draw.at(i + 1)[hour_of_day]);
        here + (next - here) * (x - i as f64)
    }
}

impl AirDraw {
    fn of(followers: Followers) -> Self {
        let steps = if followers.loads.is_empty() { 0 } else { AIR_STEPS + 1 };
        Self { table: vec![OnceLock::new(); steps], followers }
    }

    /// At step `i` of the table.
    #[inline]
    fn at(&self, i: usize) -> &[Watts; 24] {
        self.table[i]
            .get_or_init(|| self.followers.draw_at(Celsius(COLDEST_AIR_C + i as f64 * AIR_STEP_K)))
    }
}

impl Followers {
    #[cold]
    fn draw_at(&self, air: Celsius) -> [Watts; 24] {
        let mut sum = [Watts::ZERO; 24];
        let around = Surroundings::of_vehicle(self.vehicle, self.heated_to, [air; 24]);
        for load in &self.loads {
            let day = LoadDay::of(load, &around);
            for (sum, hour) in sum.iter_mut().zip(day.hours) {
                *sum += at_battery(load, hour, &self.curve) * self.use_factor;
            }
        }
        sum
    }
}

/// Likely error of the energy all loads take in a day, one standard deviation over the energy: each
/// load is off by its own share, independently of the others
/// ([`crate::model::Load::likely_error_frac`]).
#[must_use]
pub fn use_error_frac(setup: &Setup, around: &Surroundings) -> f64 {
    let (mut sum, mut square) = (0.0, 0.0);
    for load in setup.enabled_loads() {
        let wh = LoadDay::of(load, around).energy_at_battery(load, setup).0;
        sum += wh;
        square += (wh * load.likely_error_frac()).powi(2);
    }
    let listed = if sum > 0.0 { square.sqrt() / sum } else { 0.0 };
    // Readings of the battery measured all loads together.
    if setup.correction.use_factor == 1.0 { listed } else { listed.min(TAUGHT_ERROR_FRAC) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forecast::demand::Demands;
    use crate::model::{Draw, DrawSource, DutyCycle, Usage};
    use crate::units::Hours;

    fn load(watts: f64, usage: Usage) -> Load {
        Load { draw: Draw::Power { watts: Watts(watts) }, usage, ..Load::default() }
    }

    fn with_fridge() -> Setup {
        let mut setup = Setup::default();
        let cycle = DutyCycle::AirTemperature { frac_at_25c: 0.32 };
        setup.loads.push(load(45.0, Usage::Duty { cycle }));
        setup.loads.push(load(7.0, Usage::AlwaysOn));
        setup
    }

    fn response(setup: &Setup) -> AirResponse {
        AirResponse::like(setup, &BankPhysics::new(&setup.bank, Hours(1.0)), None)
    }

    /// A fridge on a day that is warmer or colder takes what it takes in air that warm. The table has whole
    /// degrees; what does not follow the air adds nothing.
    #[test]
    fn another_day_takes_what_its_air_takes() {
        let mut setup = with_fridge();
        setup.correction.use_factor = 1.5;
        let table = response(&setup);
        let direct = |air: f64| {
            let around = Surroundings::at_rest(&setup, [Celsius(air); 24]);
            Demands::new(&setup, &around, 1.5).on(&around)[13].total().0
        };
        for (usual, anomaly_k) in [(18.0, 7.0), (24.0, -6.5), (30.25, 4.5), (12.0, 0.0)] {
            let extra = table.extra_draw(13, Celsius(usual), anomaly_k).0;
            let expected = direct(usual + anomaly_k) - direct(usual);
            assert!((extra - expected).abs() < 0.05, "{usual} {anomaly_k}: {extra} {expected}");
            assert!(anomaly_k == 0.0 || extra * anomaly_k > 0.5, "{extra}");
        }
        // Beyond the table its ends hold: -50 and 60 degrees.
        assert_eq!(table.extra_draw(13, Celsius(60.0), 5.0), Watts::ZERO);
        assert_eq!(table.extra_draw(13, Celsius(-50.0), -5.0), Watts::ZERO);
        setup.loads.remove(0);
        assert_eq!(response(&setup).extra_draw(13, Celsius(20.0), 9.0), Watts::ZERO);
    }

    /// The state of the battery is read at the nearest quarter of a degree, and at the ends beyond them.
    #[test]
    fn the_battery_is_read_at_the_nearest_quarter_of_a_degree() {
        let mut setup = with_fridge();
        let table = response(&setup);
        for (air, expected) in
            [(0.0, 0.0), (7.12, 7.0), (7.13, 7.25), (-12.4, -12.5), (-60.0, -45.0), (90.0, 65.0)]
        {
            assert_eq!(table.conditions(Celsius(air)).temperature, Celsius(expected), "{air}");
        }
        assert_eq!(table.all_conditions()[0].temperature, Celsius(-45.0));
        setup.trip.heated_to = Some(Celsius(15.0));
        setup.bank.place = crate::model::BatteryPlace::Inside;
        let least =
            battery_kept_at(setup.bank.place, setup.trip.heated_to).expect("it is kept warm");
        let heated = response(&setup);
        let at = |air| heated.conditions(Celsius(air)).temperature.0;
        assert!((at(-20.0) - least.0).abs() <= 0.125 && (at(28.0) - 28.0).abs() < 1e-9);
    }

    /// By hand: 100 Wh off by a fifth and 60 Wh off by a half are 20 and 30 Wh, together the root of 1300 of
    /// 160 Wh, 22.5 %. Readings of the battery leave 15 % of it.
    #[test]
    fn errors_of_loads_add_up_by_their_squares() {
        let mut setup = Setup::default();
        for (per_day, error) in [(100.0, 0.2), (60.0, 0.5)] {
            setup.loads.push(Load {
                spread_frac: Some(error),
                draw_source: DrawSource::Estimate,
                ..load(0.0, Usage::Energy { per_day: crate::units::WattHours(per_day) })
            });
        }
        let around = Surroundings::at_rest(&setup, [Celsius(20.0); 24]);
        assert!((use_error_frac(&setup, &around) - 1300_f64.sqrt() / 160.0).abs() < 1e-9);
        setup.correction.use_factor = 1.2;
        assert_eq!(use_error_frac(&setup, &around), 0.15);
        setup.loads.clear();
        assert_eq!(use_error_frac(&setup, &around), 0.0);
    }
}
