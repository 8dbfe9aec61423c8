//! Yield of all arrays for a whole trip, by day, hour and daily clearness k.
//!
//! ```text
//! yield(day, hour, k) = (1 - f) Y[day][i][hour] + f Y[day][i+1][hour]
//! k = (i + f) k_max / 15,  i = 0..14,  0 <= f <= 1,  k_max: the day's clearest sky
//! ```
//! Y is worked out by [`super::day`], [`super::panel`] and [`super::snow`] at sixteen values of k from 0 to the
//! clearest day. Between them the yield is taken as straight. Sun geometry and skies are shared by
//! all arrays. Looking up a day costs two rows of 24 hours.

use super::day::{ArrayDay, DaySun};
use super::irradiance::GROUND_REFLECTANCE;
use super::losses::LossFlow;
use super::panel::{CHARGING_VOLTS_12, HourYield, Panel, USUAL_WIND_M_S};
use super::snow::{day_mean, snow_loss_frac};
use crate::model::{Place, SolarArray, SystemVoltage};
use crate::units::{Amps, Celsius, Volts, WattHours, WattHoursPerSquareMetre, Watts};
use time::{Date, Duration};

/// Number of clearness values worked out.
pub const BINS: usize = 16;

/// Where and when the arrays stand.
#[derive(Clone, Debug, PartialEq)]
pub struct TripSky<'a> {
    /// Place.
    pub place: &'a Place,
    /// First calendar day.
    pub start: Date,
    /// Number of calendar days.
    pub days: usize,
    /// Camp clock against UTC [min], east positive.
    pub utc_offset_min: i16,
    /// System voltage, for PWM controllers.
    pub system: SystemVoltage,
    /// Share of light the ground throws back, 0..1; see [`GROUND_REFLECTANCE`].
    pub ground_reflectance: f64,
    /// Wind at 10 m [m/s], cools the panels; see [`USUAL_WIND_M_S`].
    pub wind_m_s: f64,
}

impl<'a> TripSky<'a> {
    /// Usual ground and wind on a 12 V system.
    #[must_use]
    pub fn new(place: &'a Place, start: Date, days: usize, utc_offset_min: i16) -> Self {
        Self {
            place,
            start,
            days,
            utc_offset_min,
            system: SystemVoltage::V12,
            ground_reflectance: GROUND_REFLECTANCE,
            wind_m_s: USUAL_WIND_M_S,
        }
    }
}

/// Yield of 24 hours at one clearness.
type Row = [HourYield; 24];

/// One day of the trip.
#[derive(Clone, Debug)]
struct TableDay {
    sun: DaySun,
    air: [Celsius; 24],
    /// Distance between the clearness values; 0 in the polar night.
    k_step: f64,
    rows: [Row; BINS],
}

/// Yield of all enabled arrays, hour by hour of a trip, at any clearness.
///
/// A day beyond the trip yields nothing. What the controllers draw themselves is not taken off:
/// it flows at night as well, see [`SolarTable::self_use`].
#[derive(Clone, Debug)]
pub struct SolarTable {
    days: Vec<TableDay>,
    arrays: Vec<(SolarArray, Panel)>,
    ground_reflectance: f64,
    wind_m_s: f64,
    charging_volts: Volts,
}

impl SolarTable {
    /// Works out the table. Arrays that are not enabled are left out. `air`: temperature by day
    /// of the trip and hour of the day; one that is no number counts as 15 degrees Celsius.
    pub fn build(
        sky: &TripSky<'_>,
        arrays: &[SolarArray],
        air: impl Fn(usize, usize) -> Celsius,
    ) -> Self {
        let arrays = enabled(arrays, sky.system, sky.wind_m_s);
        let days = (0..sky.days)
            .map(|index| {
                let ahead = Duration::days(i64::try_from(index).unwrap_or(i64::MAX / 100_000));
                let date = sky.start.saturating_add(ahead);
                let sun = DaySun::new(sky.place, date, sky.utc_offset_min);
                let temperatures = std::array::from_fn(|hour| {
                    let celsius = air(index, hour);
                    if celsius.is_finite() { celsius } else { Celsius(15.0) }
                });
                TableDay::new(sun, temperatures, &arrays, sky.ground_reflectance)
            })
            .collect();
        Self {
            days,
            arrays,
            ground_reflectance: sky.ground_reflectance,
            wind_m_s: sky.wind_m_s,
            charging_volts: CHARGING_VOLTS_12 * sky.system.series_12v(),
        }
    }

    /// The same sky over other arrays on a system of the same voltage.
    #[must_use]
    pub fn with_arrays(&self, arrays: &[SolarArray], system: SystemVoltage) -> Self {
        let arrays = enabled(arrays, system, self.wind_m_s);
        let days = self
            .days
            .iter()
            .map(|day| TableDay::new(day.sun.clone(), day.air, &arrays, self.ground_reflectance));
        Self { days: days.collect(), arrays, ..*self }
    }

    /// Number of days.
    #[must_use]
    pub fn days(&self) -> usize {
        self.days.len()
    }

    /// What all controllers together draw, day and night.
    #[must_use]
    pub fn self_use(&self) -> Watts {
        self.arrays.iter().map(|(array, _)| array.self_use.max(Watts(0.0))).sum()
    }

    /// The sun of a day, day 0 first.
    #[must_use]
    pub fn sun(&self, day: usize) -> Option<&DaySun> {
        self.days.get(day).map(|day| &day.sun)
    }

    /// Irradiation above the air of a day on level ground, H0.
    #[must_use]
    pub fn h0(&self, day: usize) -> WattHoursPerSquareMetre {
        self.sun(day).map_or(WattHoursPerSquareMetre(0.0), DaySun::h0)
    }

    /// Yield of one hour at the day's clearness. Any k is held within the table; an hour past 23
    /// or a k that is no number yields nothing.
    #[must_use]
    pub fn hour(&self, day: usize, hour: usize, k_frac: f64) -> HourYield {
        let Some((low, high, weight)) = self.rows(day, k_frac) else {
            return HourYield::default();
        };
        match (low.get(hour), high.get(hour)) {
            (Some(&low), Some(&high)) => between(low, high, weight),
            _ => HourYield::default(),
        }
    }

    /// Yield of all 24 hours at the day's clearness.
    #[must_use]
    pub fn day_row(&self, day: usize, k_frac: f64) -> [HourYield; 24] {
        let mut row = [HourYield::default(); 24];
        if let Some((low, high, weight)) = self.rows(day, k_frac) {
            for (hour, (&low, &high)) in row.iter_mut().zip(low.iter().zip(high)) {
                *hour = between(low, high, weight);
            }
        }
        row
    }

    /// Where a clearness stands among the rows of its day: the one below it, and how far on to the next,
    /// 0..1; without sun row 0, which yields nothing.
    #[must_use]
    pub fn place(&self, day: usize, k_frac: f64) -> (usize, f64) {
        let k_step = self.days.get(day).map_or(0.0, |day| day.k_step);
        place(k_step, k_frac).unwrap_or((0, 0.0))
    }

    /// Yield of one hour at a place as of [`Self::place`].
    #[inline]
    #[must_use]
    pub fn hour_at(&self, day: usize, hour: usize, (below, part): (usize, f64)) -> HourYield {
        let row = |at: usize| self.days.get(day)?.rows.get(at)?.get(hour);
        match (row(below), row(below + 1)) {
            (Some(low), Some(high)) => between(*low, *high, part),
            _ => HourYield::default(),
        }
    }

    /// Whether an hour can yield anything at all: to MPPT, to PWM controllers.
    #[must_use]
    pub fn shines(&self, day: usize, hour: usize) -> [bool; 2] {
        let rows = self.days.get(day).map_or(&[][..], |day| &day.rows);
        let any = |of: fn(&HourYield) -> f64| {
            rows.iter().any(|row| row.get(hour).is_some_and(|at| of(at) > 0.0))
        };
        [any(|at| at.mppt.0), any(|at| at.pwm.0)]
    }

    /// Energy offered to the battery on a day, PWM current told at 13.2 V (26.4 V at 24 V).
    #[must_use]
    pub fn day_energy(&self, day: usize, k_frac: f64) -> WattHours {
        let sum: Watts = self
            .day_row(day, k_frac)
            .into_iter()
            .map(|hour| hour.power_at(self.charging_volts))
            .sum();
        WattHours(sum.0)
    }

    /// Where the light of a day goes at a clearness, all arrays together.
    #[must_use]
    pub fn losses(&self, day: usize, k_frac: f64) -> LossFlow {
        let mut flow = LossFlow::default();
        if let Some(day) = self.days.get(day) {
            for (array, panel) in &self.arrays {
                flow += LossFlow::of_array(
                    &day.sun,
                    &day.air,
                    array,
                    panel,
                    self.ground_reflectance,
                    k_frac,
                );
            }
        }
        flow
    }

    /// The two rows that enclose k, and the weight of the second.
    fn rows(&self, day: usize, k_frac: f64) -> Option<(&Row, &Row, f64)> {
        let TableDay { rows, k_step, .. } = self.days.get(day)?;
        let (below, weight) = place(*k_step, k_frac)?;
        Some((rows.get(below)?, rows.get(below + 1)?, weight))
    }
}

/// Arrays that are there, ready to be worked out.
fn enabled(
    arrays: &[SolarArray],
    system: SystemVoltage,
    wind_m_s: f64,
) -> Vec<(SolarArray, Panel)> {
    let arrays = arrays.iter().filter(|array| array.enabled);
    arrays.map(|array| (array.clone(), Panel::new(array, system, wind_m_s))).collect()
}

/// The clearness value below `k_frac` and the way to the next; `None` without sun.
fn place(k_step: f64, k_frac: f64) -> Option<(usize, f64)> {
    let position = (k_frac / k_step).clamp(0.0, (BINS - 1) as f64);
    if position.is_nan() || position <= 0.0 || k_step <= 0.0 {
        return None;
    }
    let below = (position as usize).min(BINS - 2);
    Some((below, position - below as f64))
}

impl TableDay {
    fn new(
        sun: DaySun,
        air: [Celsius; 24],
        arrays: &[(SolarArray, Panel)],
        ground_reflectance: f64,
    ) -> Self {
        let k_step = sun.k_frac_max() / (BINS - 1) as f64;
        let mut rows = [[HourYield::default(); 24]; BINS];
        let geometries: Vec<_> = arrays
            .iter()
            .map(|(array, panel)| {
                let clear_frac = 1.0 - snow_loss_frac(day_mean(&air), array.tilt);
                (ArrayDay::new(&sun, array, ground_reflectance), panel, clear_frac)
            })
            .collect();
        for (bin, row) in rows.iter_mut().enumerate().skip(1) {
            let skies = sun.skies(bin as f64 * k_step);
            for (geometry, panel, clear_frac) in &geometries {
                let light = geometry.poa_effective(&skies);
                for ((sum, light), &air) in row.iter_mut().zip(light).zip(&air) {
                    let part = panel.power(light, air).at_battery;
                    sum.mppt += part.mppt * *clear_frac;
                    sum.pwm += part.pwm * *clear_frac;
                }
            }
        }
        Self { sun, air, k_step, rows }
    }
}

/// Yield part of the way, 0..1, from one clearness value to the next.
#[inline]
fn between(low: HourYield, high: HourYield, weight: f64) -> HourYield {
    HourYield {
        mppt: Watts(low.mppt.0 + (high.mppt.0 - low.mppt.0) * weight),
        pwm: Amps(low.pwm.0 + (high.pwm.0 - low.pwm.0) * weight),
    }
}
