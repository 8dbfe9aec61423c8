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
