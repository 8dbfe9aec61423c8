//! What is drawn by hour of the day, what never stops, and what comes in by day.

use super::series::{DAY_S, HOUR_S, Series, date_of, energy, hour_of};
use super::steps::{COARSEST_S, Levels};
use crate::units::{Hours, WattHours, Watts};
use time::Date;

/// An hour of the day is known from this much of it.
const ENOUGH_S: f64 = 0.5 * HOUR_S;
/// Night: from this hour on, and before [`NIGHT_ENDS`].
const NIGHT_BEGINS: usize = 22;
/// First hour after the night.
const NIGHT_ENDS: usize = 6;
/// Least time of a low level that makes a floor [s].
const FLOOR_S: f64 = 0.5 * HOUR_S;
/// Share of the night below the floor that is looked past.
const FLOOR_FRAC: f64 = 0.05;
/// A day counts when this much of it was logged.
const WHOLE_DAY_FRAC: f64 = 0.8;

/// Mean draw in one hour of the day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HourUse {
    /// Mean.
    pub mean: Watts,
    /// Time watched.
    pub watched: Hours,
}

/// What never stops.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Floor {
    /// Power.
    pub power: Watts,
    /// Likely error, one standard deviation.
    pub sd: Watts,
    /// Rows are close enough together to show it between the runs of others; otherwise it is the most it can be.
    pub seen_between_runs: bool,
}

/// What came in on one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayIn {
    /// The day.
    pub date: Date,
    /// Energy.
    pub energy: WattHours,
    /// Highest power, short spikes left out.
    pub peak: Watts,
}

/// What comes in.
#[derive(Clone, Debug, PartialEq)]
pub struct Income {
    /// Day by day, those that were logged nearly whole.
    pub days: Vec<DayIn>,
    /// From a column of what comes in; otherwise what reached the battery and what never stops, at least.
    pub measured: bool,
}

impl Income {
    /// Mean of the days.
    #[must_use]
    pub fn mean_per_day(&self) -> WattHours {
        self.days.iter().map(|day| day.energy).sum::<WattHours>() / self.days.len().max(1) as f64
    }

    /// Highest power of all days.
    #[must_use]
    pub fn peak(&self) -> Watts {
        self.days.iter().map(|day| day.peak).fold(Watts::ZERO, Watts::max)
    }
}

/// Mean draw by hour of the day; `None` for hours that were not watched.
#[must_use]
pub fn use_by_hour(series: &Series) -> [Option<HourUse>; 24] {
    let mut sums = [(0.0, 0.0); 24];
    for (row, drawn) in series.drawn.iter().enumerate() {
        if let Some(drawn) = drawn {
            let held = series.held_s(row);
            let (sum, watched) = &mut sums[hour_of(series.samples[row].at_s)];
            *sum += drawn.0 * held;
            *watched += held;
        }
    }
    sums.map(|(sum, watched)| {
        (watched >= ENOUGH_S)
            .then(|| HourUse { mean: Watts(sum / watched), watched: Hours::from_seconds(watched) })
    })
}

fn is_night(hour: usize) -> bool {
    !(NIGHT_ENDS..NIGHT_BEGINS).contains(&hour)
}

/// What never stops at night.
///
/// The lowest level that lasts: of all levels at night those within 15 % above the one that a twentieth of the
/// night lies at or below. Rows too far apart for levels only say that it is no more than the quietest hour.
#[must_use]
pub fn floor(series: &Series, levels: &Levels, by_hour: &[Option<HourUse>; 24]) -> Option<Floor> {
    if series.step_s <= COARSEST_S
        && let Some(floor) = floor_of_levels(levels)
    {
        return Some(floor);
    }
    let quiet = (0..24).filter(|hour| is_night(*hour)).filter_map(|hour| by_hour[hour]);
    let least = quiet.min_by(|a, b| a.mean.0.total_cmp(&b.mean.0))?;
    let power = least.mean.max(Watts::ZERO);
    Some(Floor { power, sd: (power * 0.2).max(Watts(1.0)), seen_between_runs: false })
}

fn floor_of_levels(levels: &Levels) -> Option<Floor> {
    let mut night: Vec<_> = levels
        .levels
        .iter()
        .filter(|level| level.rows >= 3)
        .filter(|level| is_night(hour_of((level.from_s + level.to_s) / 2.0)))
        .collect();
    night.sort_by(|a, b| a.power.0.total_cmp(&b.power.0));
    let whole_s: f64 = night.iter().map(|level| level.length_s()).sum();
    let mut below_s = 0.0;
    let lowest = night.iter().find(|level| {
        below_s += level.length_s();
        below_s >= FLOOR_FRAC * whole_s
    })?;
    let room = (lowest.power * 0.15).max(levels.threshold * 0.5);
    let floor: Vec<_> = night.iter().filter(|level| level.power <= lowest.power + room).collect();
    let long_s: f64 = floor.iter().map(|level| level.length_s()).sum();
    if long_s < FLOOR_S {
        return None;
    }
    let mean = floor.iter().map(|level| level.power.0 * level.length_s()).sum::<f64>() / long_s;
    let square = floor.iter().map(|l| (l.power.0 - mean).powi(2) * l.length_s()).sum::<f64>();
    let rows: u32 = floor.iter().map(|level| level.rows).sum();
    let sd =
        (square / long_s / floor.len() as f64 + levels.noise.0.powi(2) / f64::from(rows)).sqrt();
    Some(Floor {
        power: Watts(mean.max(0.0)),
        // Half a watt: what a shunt of 0.05 A shows at 12 V.
        sd: Watts(sd.max(0.5)),
        seen_between_runs: true,
    })
}

/// What comes in by day; `None` where nothing does, or no day was logged nearly whole.
#[must_use]
pub fn income(series: &Series, floor: Option<Floor>) -> Option<Income> {
    let measured = series.samples.iter().filter(|sample| sample.charging.is_some()).count() * 2
        > series.samples.len();
    let always = floor.map_or(Watts::ZERO, |floor| floor.power);
    let mut days: Vec<(Date, f64, WattHours, Vec<f64>)> = Vec::new();
    for (row, sample) in series.samples.iter().enumerate() {
        let held = series.held_s(row);
        let Some((date, _)) = date_of(sample.at_s) else { continue };
        if days.last().is_none_or(|day| day.0 != date) {
            days.push((date, 0.0, WattHours::ZERO, Vec::new()));
        }
        let Some((_, covered, sum, powers)) = days.last_mut() else { continue };
        *covered += held;
        let power = match (sample.charging, series.watts(row)) {
            (Some(charging), _) => charging.max(Watts::ZERO),
            (None, Some(net)) if !measured && net > Watts::ZERO => net + always,
            _ => continue,
        };
        *sum += energy(power, held);
        powers.push(power.0);
    }
    let days: Vec<DayIn> = days
        .into_iter()
        .filter(|(_, covered, _, _)| *covered >= WHOLE_DAY_FRAC * DAY_S)
        .map(|(date, _, energy, mut powers)| {
            powers.sort_by(f64::total_cmp);
            let high = powers.len().saturating_sub(1) * 99 / 100;
            DayIn { date, energy, peak: Watts(powers.get(high).copied().unwrap_or(0.0)) }
        })
        .collect();
    let comes = days.iter().any(|day| day.energy > WattHours(1.0));
    comes.then_some(Income { days, measured })
}
