//! What a day warmer or colder than usual changes: the state of the battery, and the draw of what
//! follows the air. Tables, made once for a plan and read by every hour of every sequence.

use super::demand::{LoadDay, at_battery, follows_air};
use super::surroundings::Surroundings;
use crate::model::Setup;
use crate::physics::battery::{BankPhysics, Conditions};
use crate::physics::indoors::battery_kept_at;
use crate::physics::inverter::InverterCurve;
use crate::units::{Celsius, Watts};

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
    /// Draw at the battery of all that follows the air, by air temperature and hour of the day;
    /// empty if nothing does.
    draw: Vec<[Watts; 24]>,
}

impl AirResponse {
    /// For the battery and the loads of a setup.
    #[must_use]
    pub fn of(setup: &Setup, bank: &BankPhysics) -> Self {
        let conditions = (0..=BATTERY_STEPS)
            .map(|i| bank.conditions(Celsius(COLDEST_BATTERY_C + i as f64 * BATTERY_STEP_K)))
            .collect();
        let followers: Vec<_> = setup.enabled_loads().filter(|load| follows_air(load)).collect();
        let curve = InverterCurve::of(&setup.inverter);
        let factor = setup.correction.use_factor;
        let draw_at = |air: Celsius| {
            let mut sum = [Watts::ZERO; 24];
            let around = Surroundings::at_rest(setup, [air; 24]);
            for load in &followers {
                let day = LoadDay::of(load, &around);
                for (sum, hour) in sum.iter_mut().zip(day.hours) {
                    *sum += at_battery(load, hour, &curve) * factor;
                }
            }
            sum
        };
        let draw = if followers.is_empty() {
            Vec::new()
        } else {
            (0..=AIR_STEPS)
                .map(|i| draw_at(Celsius(COLDEST_AIR_C + i as f64 * AIR_STEP_K)))
                .collect()
        };
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
        if self.draw.is_empty() {
            return Watts::ZERO;
        }
        self.draw_at(hour_of_day, air.0 + anomaly_k) - self.draw_at(hour_of_day, air.0)
    }

    fn draw_at(&self, hour_of_day: usize, air_c: f64) -> Watts {
        let x = ((air_c - COLDEST_AIR_C) / AIR_STEP_K).clamp(0.0, AIR_STEPS as f64);
        let i = (x as usize).min(AIR_STEPS - 1);
        let (here, next) = (self.draw[i][hour_of_day], self.draw[i + 1][hour_of_day]);
        here + (next - here) * (x - i as f64)
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
