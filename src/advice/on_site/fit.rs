//! Fits consumption, sun and start of charge to the readings taken on site.
//!
//! Weighted least squares with weak expectations, over factors on consumption `u` and sun `s` and
//! an offset `d` of the state of charge on arrival:
//!
//! ```text
//! minimise  sum ((soc(t_i; u, s, d) - soc_i) / sd_i)^2
//!           + ((u - 1)/1)^2 + ((s - 1)/sd_s)^2 + (d/0.03)^2
//! ```
//!
//! by Gauss-Newton steps, each derivative a difference of two fully played courses. The inverse of
//! the matrix of second derivatives gives the uncertainty. A factor is *known* when the readings,
//! not the expectation, decide it: `u` to a quarter, `s` to three fifths of what was expected
//! beforehand. Readings at night say nothing of the sun; one reading a day cannot tell less sun
//! from more consumption, and then the correlation of the two is near 1.
//!
//! Where the weather of the days was not entered, part of `s` was the weather and will not repeat:
//!
//! ```text
//! sd_s^2 = 0.4^2 + 0.35^2 / days not entered      0.4: shade, dirt, facing; 0.35: a day's sky
//! forecast s = 1 + (s - 1) 0.4^2 / sd_s^2
//! ```
//!
//! (0.4 and 0.35: common practice, no source.) A battery that has lost capacity looks like more
//! consumption here; enter its age if it is known.

use super::{ReadPoint, points, soc_at};
use crate::forecast::plan::TripSun;
use crate::forecast::{Course, TripPlan};
use crate::model::limits::{SUN_FACTOR, USE_FACTOR};
use crate::model::trip::Weather;
use crate::model::{Correction, Setup};
use crate::units::Hours;
use std::sync::Arc;

/// Expected spread of the consumption factor.
const USE_SD: f64 = 1.0;
/// Expected spread of the sun factor for what stays: shade, dirt, facing.
const SITE_SD: f64 = 0.4;
/// Spread of one day's sky around the average.
const SKY_SD: f64 = 0.35;
/// Expected spread of the state of charge on arrival.
const START_SD: f64 = 0.03;
/// Step of the derivatives.
const DELTA: f64 = 0.02;
/// Most Gauss-Newton steps.
const MAX_ROUNDS: usize = 8;

/// Consumption, sun, start.
type Three = [f64; 3];

/// A fitted factor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factor {
    /// Real over planned.
    pub value: f64,
    /// Standard deviation.
    pub sd: f64,
    /// The readings decide it; otherwise `value` is mostly what was expected beforehand.
    pub known: bool,
}

/// A reading that would make the answer surer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Wanted {
    /// In the evening and again before sunrise: tells consumption.
    OverNight,
    /// In the morning and again in the evening: tells the sun.
    OverDay,
}

/// What the readings say.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// Consumption, real over planned: 1.18 is "about 18 % more than planned".
    pub use_factor: Factor,
    /// Sun over these days, real over planned.
    pub sun_factor: Factor,
    /// State of charge on arrival that goes with it, 0..1.
    pub start_soc_frac: f64,
    /// Correlation of the two factors' errors, -1..1; near 1 they cannot be told apart.
    pub correlation: f64,
    /// Root mean square of the distances in standard deviations; above 2 the readings contradict
    /// each other or something else is going on.
    pub misfit: f64,
    /// State of charge by hour that goes with it, up to the last reading.
    pub course: Vec<(Hours, f64)>,
    /// What to take over: known factors, and a restart at the last reading.
    pub correction: Correction,
    /// Readings that were used.
    pub readings: usize,
    /// What to read next.
    pub wanted: Vec<Wanted>,
}

impl Fit {
    /// The readings agree with each other and the simulation.
    #[must_use]
    pub fn is_consistent(&self) -> bool {
        self.misfit <= 2.0
    }
}

struct Model<'a> {
    setup: Setup,
    sun: Arc<TripSun>,
    points: &'a [ReadPoint],
    start_soc_frac: f64,
    hours: usize,
}

impl Model<'_> {
    fn play(&self, at: Three) -> (TripPlan, Course) {
        let mut setup = self.setup.clone();
        setup.correction.use_factor = at[0];
        setup.correction.sun_factor = at[1];
        setup.bank.soc_start_frac = (self.start_soc_frac + at[2]).clamp(0.0, 1.0);
        let mut plan = TripPlan::build(&setup, self.sun.clone());
        plan.hours.truncate(self.hours);
        let course = Course::average(&plan);
        (plan, course)
    }

    /// Distance of the played course from each reading, in standard deviations.
    fn residuals(&self, at: Three) -> Vec<f64> {
        let (plan, course) = self.play(at);
        self.points
            .iter()
            .map(|point| {
                let played = soc_at(&plan, &course, point.at).unwrap_or(point.likely_frac);
                (played - point.likely_frac) / point.sd_frac
            })
            .collect()
    }
}

fn bounded(at: Three) -> Three {
    [
        at[0].clamp(USE_FACTOR.min, USE_FACTOR.max),
        at[1].clamp(SUN_FACTOR.min, SUN_FACTOR.max),
        at[2].clamp(-4.0 * START_SD, 4.0 * START_SD),
    ]
}

/// Inverse of a symmetric positive definite 3 by 3 matrix by cofactors.
fn inverse(m: [Three; 3]) -> Option<[Three; 3]> {
    let cofactor = |row: usize, column: usize| {
        let (r, s) = ((row + 1) % 3, (row + 2) % 3);
        let (c, d) = ((column + 1) % 3, (column + 2) % 3);
        m[r][c] * m[s][d] - m[r][d] * m[s][c]
    };
    let determinant: f64 = (0..3).map(|column| m[0][column] * cofactor(0, column)).sum();
    if !determinant.is_finite() || determinant <= 0.0 {
        return None;
    }
    Some(std::array::from_fn(|row| {
        std::array::from_fn(|column| cofactor(column, row) / determinant)
    }))
}

/// Fits the readings of a setup; `None` where no reading lies within the trip. `sun` must belong
/// to the setup's trip and panels.
#[must_use]
pub fn fit(setup: &Setup, sun: Arc<TripSun>) -> Option<Fit> {
    let mut base = setup.clone();
    base.correction = Correction::default();
    let horizon = TripPlan::build(&base, sun.clone()).hours.len() as f64;
    let points: Vec<ReadPoint> =
        points(setup).into_iter().filter(|point| point.at.0 < horizon).collect();
    let last = *points.last()?;
    let site_share = site_share(setup, last.at);
    let sd = [USE_SD, SITE_SD / site_share.sqrt(), START_SD];
    let model = Model {
        start_soc_frac: setup.bank.soc_start_frac,
        hours: last.at.0 as usize + 1,
        points: &points,
        setup: base,
        sun,
    };
    let (best, covariance) = gauss_newton(&model, sd)?;
    let sd_of = |i: usize| covariance[i][i].max(0.0).sqrt();
    let use_factor = Factor { value: best[0], sd: sd_of(0), known: sd_of(0) < 0.25 };
    let sun_factor = Factor { value: best[1], sd: sd_of(1), known: sd_of(1) < 0.6 * sd[1] };
    let residuals = model.residuals(best);
    let squares: f64 = residuals.iter().map(|r| r * r).sum();
    let (plan, course) = model.play(best);
    let correction = Correction {
        use_factor: if use_factor.known { best[0] } else { 1.0 },
        sun_factor: if sun_factor.known { 1.0 + (best[1] - 1.0) * site_share } else { 1.0 },
        restart: Some((last.at, restart_at(&last, soc_at(&plan, &course, last.at)))),
    };
    let mut wanted = Vec::new();
    if !use_factor.known || use_factor.sd > 0.1 {
        wanted.push(Wanted::OverNight);
    }
    if !sun_factor.known && model.sun.is_uncertain() {
        wanted.push(Wanted::OverDay);
    }
    Some(Fit {
        use_factor,
        sun_factor,
        start_soc_frac: plan.start_soc_frac,
        correlation: covariance[0][1] / (sd_of(0) * sd_of(1)).max(1e-12),
        misfit: (squares / residuals.len() as f64).sqrt(),
        course: course
            .hours
            .iter()
            .enumerate()
            .map(|(hour, record)| (Hours((hour + 1) as f64), record.soc_frac))
            .collect(),
        correction,
        readings: points.len(),
        wanted,
    })
}

/// Most likely factors and their covariance.
fn gauss_newton(model: &Model<'_>, sd: Three) -> Option<(Three, [Three; 3])> {
    let mut at = [1.0, 1.0, 0.0];
    let cost = |at: Three, residuals: &[f64]| {
        let expected = [1.0, 1.0, 0.0];
        let prior: f64 = (0..3).map(|i| ((at[i] - expected[i]) / sd[i]).powi(2)).sum();
        residuals.iter().map(|r| r * r).sum::<f64>() + prior
    };
    let mut residuals = model.residuals(at);
    let mut best_cost = cost(at, &residuals);
    let mut covariance = None;
    for _ in 0..MAX_ROUNDS {
        let slopes = slopes(model, at, &residuals);
        let mut matrix = [[0.0; 3]; 3];
        let mut pull = [0.0; 3];
        for i in 0..3 {
            for j in 0..3 {
                matrix[i][j] = slopes[i].iter().zip(&slopes[j]).map(|(a, b)| a * b).sum();
            }
            matrix[i][i] += 1.0 / (sd[i] * sd[i]);
            let expected = if i == 2 { 0.0 } else { 1.0 };
            pull[i] = -slopes[i].iter().zip(&residuals).map(|(a, r)| a * r).sum::<f64>()
                - (at[i] - expected) / (sd[i] * sd[i]);
        }
        let inverted = inverse(matrix)?;
        covariance = Some(inverted);
        let step: Three =
            std::array::from_fn(|i| (0..3).map(|j| inverted[i][j] * pull[j]).sum::<f64>());
        let mut length = 1.0;
        let mut moved = false;
        for _ in 0..5 {
            let next = bounded(std::array::from_fn(|i| at[i] + length * step[i]));
            let next_residuals = model.residuals(next);
            let next_cost = cost(next, &next_residuals);
            if next_cost < best_cost - 1e-9 {
                moved = (0..3).any(|i| (next[i] - at[i]).abs() > 1e-4);
                (at, residuals, best_cost) = (next, next_residuals, next_cost);
                break;
            }
            length *= 0.4;
        }
        if !moved {
            break;
        }
    }
    covariance.map(|covariance| (at, covariance))
}

/// Derivatives of the residuals by each unknown; backwards where the bound is forwards.
fn slopes(model: &Model<'_>, at: Three, residuals: &[f64]) -> [Vec<f64>; 3] {
    std::array::from_fn(|i| {
        // A battery that arrives full cannot be fuller.
        let full = i == 2 && model.start_soc_frac + at[2] + DELTA > 1.0;
        let delta = if full { -DELTA } else { DELTA };
        let mut moved = at;
        moved[i] += delta;
        model.residuals(moved).iter().zip(residuals).map(|(b, a)| (b - a) / delta).collect()
    })
}

/// Share of the sun factor's expected variance that belongs to the place and its panels, the rest
/// being the sky of the days so far whose weather was not entered.
fn site_share(setup: &Setup, until: Hours) -> f64 {
    let arrival = f64::from(setup.trip.arrival_hour);
    let days = ((arrival + until.0) / 24.0).ceil().max(1.0) as usize;
    let open = (0..days).filter(|day| setup.trip.day_plan(*day).weather == Weather::Unknown);
    let open = open.count() as f64;
    let sky = if open > 0.0 { SKY_SD * SKY_SD * (open / days as f64).powi(2) / open } else { 0.0 };
    SITE_SD * SITE_SD / (SITE_SD * SITE_SD + sky)
}

/// State of charge to start again from: a monitor's word is taken; a voltage holds the played
/// course within its band.
fn restart_at(point: &ReadPoint, played: Option<f64>) -> f64 {
    match (point.rested, played) {
        (Some(_), Some(played)) if point.low_frac <= point.high_frac => {
            played.clamp(point.low_frac, point.high_frac)
        }
        _ => point.likely_frac,
    }
}
