//! How often a store lasts the night, forecast from the climate against measured years.

use super::{DeBilt, extraterrestrial_wh_m2, quantile};
use nightbank::forecast::weather::Persistence;

/// Nights of the longest stay.
pub const LONGEST_STAY: usize = 14;
const SEQUENCES_PER_START: usize = 300;

/// One camper: when, how big a battery, how much sun for the load.
#[derive(Debug, Clone, Copy)]
pub struct Cell {
    /// Month of arrival, 1 to 12.
    pub month: usize,
    /// Usable capacity as days of load.
    pub battery_days: f64,
    /// Panel yield of the month's mean day as a share of the day's load.
    pub sun_share: f64,
    /// Mean global irradiation of the month, Wh/m2 a day.
    pub month_mean_wh_m2: f64,
}

/// Chance of lasting at least `n + 1` nights, by `n`, measured and forecast.
#[derive(Debug, Clone)]
pub struct Outcome {
    pub cell: Cell,
    pub measured: [f64; LONGEST_STAY],
    pub forecast: [f64; LONGEST_STAY],
}

/// Runs every cell through the measured years and through drawn weather. `nights_lasted` is the
/// store: given the cell and the daily irradiation (Wh/m2), how many nights it lasts.
pub fn compare(
    years: &DeBilt,
    cells: &[Cell],
    how: Persistence,
    nights_lasted: impl Fn(&Cell, &[f64]) -> usize,
) -> Vec<Outcome> {
    let tally = |cells: &[Cell], sun: &[f64], counts: &mut [[f64; LONGEST_STAY]]| {
        for (cell, count) in cells.iter().zip(counts) {
            for night in count.iter_mut().take(nights_lasted(cell, sun)) {
                *night += 1.0;
            }
        }
    };
    let mut outcomes = Vec::new();
    for month in 1..=12 {
        let cells: Vec<Cell> = cells.iter().copied().filter(|c| c.month == month).collect();
        let mut measured = vec![[0.0; LONGEST_STAY]; cells.len()];
        let mut forecast = measured.clone();
        let (mut runs, mut drawn) = (0.0, 0.0);
        let mut sun = vec![0.0; LONGEST_STAY];
        for run in years.runs(month, LONGEST_STAY) {
            for (sun, day) in sun.iter_mut().zip(run) {
                *sun = day.ghi_wh_m2;
            }
            tally(&cells, &sun, &mut measured);
            runs += 1.0;
        }
        years.drawn_runs(month, LONGEST_STAY, SEQUENCES_PER_START, how, |start, k| {
            for ((sun, k), day) in sun.iter_mut().zip(k).zip(start..) {
                *sun = k * extraterrestrial_wh_m2(2001, day);
            }
            tally(&cells, &sun, &mut forecast);
            drawn += 1.0;
        });
        for ((cell, measured), forecast) in cells.into_iter().zip(measured).zip(forecast) {
            outcomes.push(Outcome {
                cell,
                measured: measured.map(|count| count / runs),
                forecast: forecast.map(|count| count / drawn),
            });
        }
    }
    outcomes
}

/// How far the forecast chances were from the measured shares.
#[derive(Debug, Clone, Copy)]
pub struct Misses {
    /// Chances compared.
    pub count: usize,
    /// Mean absolute error, points.
    pub mean_points: f64,
    /// Mean of forecast less measured, points: above zero promises too much.
    pub bias_points: f64,
    /// Error that nine in ten stay below, points.
    pub p90_points: f64,
}

/// Over all outcomes and `nights` where the pick says so (given measured and forecast chance).
pub fn misses(outcomes: &[Outcome], nights: &[usize], pick: impl Fn(f64, f64) -> bool) -> Misses {
    let mut errors: Vec<f64> = outcomes
        .iter()
        .flat_map(|o| nights.iter().map(|n| (o.measured[n - 1], o.forecast[n - 1])))
        .filter(|(measured, forecast)| pick(*measured, *forecast))
        .map(|(measured, forecast)| 100.0 * (forecast - measured))
        .collect();
    let count = errors.len();
    let bias_points = errors.iter().sum::<f64>() / count as f64;
    errors.iter_mut().for_each(|error| *error = error.abs());
    Misses {
        count,
        mean_points: errors.iter().sum::<f64>() / count as f64,
        bias_points,
        p90_points: quantile(&mut errors, 0.9),
    }
}

/// Forecasts sorted into bins of 20 points (the outer ones without the all but certain 2 %): mean
/// forecast, mean of what came true, count.
pub fn reliability(outcomes: &[Outcome], nights: &[usize]) -> Vec<(f64, f64, usize)> {
    let edges = [0.02, 0.2, 0.4, 0.6, 0.8, 0.98];
    let pairs = || {
        outcomes.iter().flat_map(|o| nights.iter().map(|n| (o.forecast[n - 1], o.measured[n - 1])))
    };
    edges
        .windows(2)
        .map(|edge| {
            let inside = || pairs().filter(|(f, _)| (edge[0]..edge[1]).contains(f));
            let count = inside().count();
            let sums = inside().fold((0.0, 0.0), |s, (f, m)| (s.0 + f, s.1 + m));
            (sums.0 / count as f64, sums.1 / count as f64, count)
        })
        .collect()
}
