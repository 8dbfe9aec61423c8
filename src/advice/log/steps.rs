//! Levels and steps in the power drawn, and the appliances behind them.
//!
//! Edges are found, paired and grouped as in G. W. Hart, "Nonintrusive appliance load monitoring",
//! Proc. IEEE 80(12), 1992, 1870-1891 (from memory), in one dimension, as a battery has no reactive power:
//!
//! 1. the noise `s` of a row from the next is the median of the differences, which steps hardly touch;
//! 2. a level ends where two rows on end leave it the same way, by more than `max(8 W, 4 s)` on average;
//!    one row alone is noise or a short pull, and is passed over;
//! 3. an edge up belongs to the next edge down of the same size, or to one as large as two or three of them
//!    that end together; runs of one size are one appliance;
//! 4. a run that a gap cut off counts from or to the gap, no longer than a usual one, if its size is known from
//!    whole ones. Short gaps are bridged.
//!
//! A thermostat is told by runs that come again evenly, in most of the hours watched.
//!
//! Runs shorter than two rows are not seen, nor what switches in small steps, nor what never stops. Rows more
//! than [`COARSEST_S`] apart show no steps at all.

use super::series::{HOUR_S, Series, hour_of, median};
use crate::units::{Hours, Watts};
use std::ops::Range;

/// Rows further apart than this show no steps [s].
pub const COARSEST_S: f64 = 300.0;
/// Smallest step looked for.
const SMALLEST: Watts = Watts(8.0);
/// Steps stand out of the noise by so many standard deviations.
const OUT_OF_NOISE: f64 = 4.0;
/// A level follows a slow drift over so many rows.
const LEVEL_ROWS: f64 = 30.0;
/// Runs of one appliance differ by so much of their power.
const SAME_FRAC: f64 = 0.15;
/// Edges up that wait for their end, looked at for several that end together.
const MOST_OPEN: usize = 8;
/// Fewest runs that make an appliance.
const FEWEST_RUNS: usize = 3;
/// Fewest runs that show a thermostat.
const FEWEST_CYCLES: usize = 6;
/// The times between starts of a thermostat differ by less than this share of their mean.
const EVEN_FRAC: f64 = 0.6;
/// Gaps up to this long do not end what runs [s].
const BRIDGED_S: f64 = 1_800.0;
/// Share of an hour of the day that has to be watched before it counts, in days of it.
const WATCHED_ENOUGH_H: f64 = 0.5;

/// A time of nearly the same power.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Level {
    /// First row.
    pub from: usize,
    /// Row after the last.
    pub to: usize,
    /// Start [s].
    pub from_s: f64,
    /// End [s].
    pub to_s: f64,
    /// Mean power.
    pub power: Watts,
    /// Rows that make the mean.
    pub rows: u32,
    /// It goes on from the level before, without a gap.
    pub joined: bool,
}

impl Level {
    /// How long it lasts [s].
    pub(super) fn length_s(&self) -> f64 {
        self.to_s - self.from_s
    }
}

/// Levels of a log and what they are known by.
#[derive(Clone, Debug, Default)]
pub struct Levels {
    /// In order of time.
    pub levels: Vec<Level>,
    /// Noise of one row, one standard deviation.
    pub noise: Watts,
    /// Smallest step told from noise.
    pub threshold: Watts,
}

/// How an appliance comes and goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pattern {
    /// Evenly all the time, as a thermostat switches.
    Thermostat,
    /// At its times of day, or as it happens.
    Uses,
}

/// Something that switches on and off.
#[derive(Clone, Debug, PartialEq)]
pub struct Appliance {
    /// Power while running, at the battery.
    pub power: Watts,
    /// Spread of that power from run to run, one standard deviation.
    pub power_sd: Watts,
    /// Runs seen.
    pub runs: usize,
    /// Usual length of a run.
    pub usual_run: Hours,
    /// Share of the time watched in which it ran, 0..1.
    pub duty_frac: f64,
    /// Time it runs a day, in the hours of the day that were watched.
    pub per_day: Hours,
    /// Time it ran of an hour of the day, 0..1; `None` for hours not watched.
    pub by_hour: [Option<f64>; 24],
    /// How it comes and goes.
    pub pattern: Pattern,
}

/// One run of something.
#[derive(Clone, Copy, Debug)]
struct Run {
    from_s: f64,
    to_s: f64,
    power: f64,
    seen: Seen,
}

/// Which ends of a run were seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Seen {
    Both,
    Start,
    End,
}

/// Noise of a row, one standard deviation, from the differences between rows.
fn noise(series: &Series) -> Watts {
    let mut differences: Vec<f64> = (0..series.drawn.len())
        .filter(|row| series.held_s(*row) > 0.0)
        .filter_map(|row| Some((*series.drawn.get(row + 1)?)?.0 - series.drawn[row]?.0))
        .map(f64::abs)
        .collect();
    let rounding = differences.iter().copied().filter(|d| *d > 1e-9).fold(f64::INFINITY, f64::min);
    let rounding = if rounding.is_finite() { rounding / 12.0_f64.sqrt() } else { 0.0 };
    // 1.4826: median of a normal spread; a difference holds the noise of two rows.
    let middle = median(&mut differences).unwrap_or(0.0);
    Watts((1.4826 * middle / std::f64::consts::SQRT_2).max(rounding.min(SMALLEST.0)))
}

/// Finds the levels.
#[must_use]
pub fn levels(series: &Series) -> Levels {
    let noise = noise(series);
    let threshold = SMALLEST.max(noise * OUT_OF_NOISE);
    let mut found: Vec<Level> = Vec::new();
    for stretch in series.stretches() {
        let mut from = stretch.start;
        for row in stretch.clone() {
            if series.drawn[row].is_none() {
                levels_of(series, from..row, threshold, &mut found);
                from = row + 1;
            }
        }
        levels_of(series, from..stretch.end, threshold, &mut found);
    }
    Levels { levels: found, noise, threshold }
}

/// Levels of rows without a gap.
fn levels_of(series: &Series, rows: Range<usize>, threshold: Watts, found: &mut Vec<Level>) {
    let end = rows.end;
    if rows.len() < 2 {
        return;
    }
    let power = |row: usize| series.drawn[row].unwrap_or_default().0;
    let at = |row: usize| series.samples[row].at_s;
    let mut from = rows.start;
    // Over a short gap most of what ran before runs on.
    let mut joined = found.last().is_some_and(|last| at(from) - last.to_s <= BRIDGED_S);
    let (mut level, mut count, mut sum) = (power(from), 1.0_f64, power(from));
    let mut row = from + 1;
    while row < end {
        let off = power(row) - level;
        let next_off = (row + 1 < end).then(|| power(row + 1) - level);
        let leaves = next_off.is_some_and(|next| {
            let same_way = off * next > 0.0 && off.abs().min(next.abs()) > 0.6 * threshold.0;
            same_way && (off + next).abs() / 2.0 > threshold.0
        });
        if leaves {
            found.push(Level {
                from,
                to: row,
                from_s: at(from),
                to_s: at(row),
                power: Watts(sum / count),
                rows: count as u32,
                joined,
            });
            // A row taken while it switched lies between the two levels.
            let next = power(row + 1);
            let between =
                (next - power(row)).abs() > threshold.0 && (next - level).abs() > off.abs();
            from = row;
            row += usize::from(between);
            (level, count, sum) = (power(row), 1.0, power(row));
            joined = true;
        } else if off.abs() <= threshold.0 {
            count += 1.0;
            sum += power(row);
            level += off / count.min(LEVEL_ROWS);
        }
        row += 1;
    }
    found.push(Level {
        from,
        to: end,
        from_s: at(from),
        to_s: at(end - 1),
        power: Watts(sum / count),
        rows: count as u32,
        joined,
    });
}

/// Time watched by hour of the day [s].
pub(super) fn watched_s(series: &Series) -> [f64; 24] {
    let mut watched = [0.0; 24];
    for row in 0..series.samples.len() {
        if series.drawn[row].is_some() {
            watched[hour_of(series.samples[row].at_s)] += series.held_s(row);
        }
    }
    watched
}

/// Edges up that may end with an edge down of this size: one of them, or two or three that went off together.
fn ending_with(open: &[(f64, f64)], size: f64, threshold: Watts) -> Option<Vec<usize>> {
    let close = (SAME_FRAC * size).max(0.7 * threshold.0);
    let off =
        |together: &[usize]| (together.iter().map(|at| open[*at].1).sum::<f64>() - size).abs();
    let best = |sets: Vec<Vec<usize>>| {
        let near = sets.into_iter().map(|set| (off(&set), set)).filter(|(off, _)| *off <= close);
        near.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, set)| set)
    };
    // Of several that fit, the one that came on last.
    let single = (0..open.len()).rev().find(|at| off(&[*at]) <= close);
    // Only the last few can be meant; more would fit by chance.
    let from = open.len().saturating_sub(MOST_OPEN);
    let pairs = || {
        (from..open.len()).flat_map(move |a| (a + 1..open.len()).map(move |b| vec![a, b])).collect()
    };
    let triples = || {
        let all = (from..open.len())
            .flat_map(move |a| (a + 1..open.len()).map(move |b| (a, b)))
            .flat_map(move |(a, b)| (b + 1..open.len()).map(move |c| vec![a, b, c]));
        all.collect()
    };
    single.map(|at| vec![at]).or_else(|| best(pairs())).or_else(|| best(triples()))
}

/// Runs, from edges that belong together; edges that are left over, up and down.
///
/// What is on lies above `floor`, what never stops; what would not fit above it any more has gone off unseen. Of
/// `known` powers, one may end while another that began with it runs on.
fn pair_edges(levels: &Levels, floor: Watts, known: &[f64]) -> (Vec<Run>, Vec<Run>) {
    let mut runs = Vec::new();
    let mut cut = Vec::new();
    let mut open: Vec<(f64, f64)> = Vec::new();
    let mut start_s = f64::NEG_INFINITY;
    let alike = |a: f64, b: f64| (a - b).abs() <= (SAME_FRAC * b).max(0.7 * levels.threshold.0);
    for (index, here) in levels.levels.iter().enumerate() {
        if !here.joined {
            start_s = here.from_s;
            open.clear();
        }
        let Some(next) = levels.levels.get(index + 1).filter(|next| next.joined) else {
            cut.extend(open.drain(..).map(|(from_s, power)| Run {
                from_s,
                to_s: here.to_s,
                power,
                seen: Seen::Start,
            }));
            continue;
        };
        let step = (next.power - here.power).0;
        if step > 0.0 {
            open.push((next.from_s, step));
            continue;
        }
        let (size, to_s) = (-step, next.from_s);
        let left = (next.power - floor).0;
        let gone = |open: &mut Vec<(f64, f64)>, cut: &mut Vec<Run>| {
            open.retain(|(from_s, power)| {
                let fits = power - left <= room_for(*power, levels.threshold);
                if !fits {
                    cut.push(Run { from_s: *from_s, to_s, power: *power, seen: Seen::Start });
                }
                fits
            });
        };
        if let Some(set) = ending_with(&open, size, levels.threshold) {
            let went_on: f64 = set.iter().map(|at| open[*at].1).sum();
            for at in set.into_iter().rev() {
                let (from_s, power) = open.remove(at);
                // Half the way to what the edge down says.
                let power = power * (1.0 + size / went_on) / 2.0;
                runs.push(Run { from_s, to_s, power, seen: Seen::Both });
            }
            gone(&mut open, &mut cut);
            continue;
        }
        let together = open.iter().position(|(_, power)| {
            let left = power - size;
            known.iter().any(|known| alike(size, *known))
                && known.iter().any(|known| alike(left, *known))
        });
        // One of those that came on goes off together with one whose start was not seen.
        let with_one = || {
            (0..open.len())
                .rev()
                .find(|at| known.iter().any(|known| alike(size - open[*at].1, *known)))
        };
        if let Some(at) = together {
            runs.push(Run { from_s: open[at].0, to_s, power: size, seen: Seen::Both });
            open[at].1 -= size;
        } else if let Some(at) = with_one() {
            let (from_s, power) = open.remove(at);
            runs.push(Run { from_s, to_s, power, seen: Seen::Both });
            cut.push(Run { from_s: start_s, to_s, power: size - power, seen: Seen::End });
        } else {
            cut.push(Run { from_s: start_s, to_s, power: size, seen: Seen::End });
        }
        gone(&mut open, &mut cut);
    }
    (runs, cut)
}

/// Runs of one power each, at least [`FEWEST_RUNS`] in a group; one of them may have been cut off by a gap.
fn groups_of(mut runs: Vec<Run>, cut: &[Run], threshold: Watts) -> Vec<Vec<Run>> {
    runs.sort_by(|a, b| a.power.total_cmp(&b.power));
    let mut groups: Vec<Vec<Run>> = Vec::new();
    for run in runs {
        match groups.last_mut() {
            Some(group)
                if run.power - mean_power(group) <= room_for(mean_power(group), threshold) =>
            {
                group.push(run);
            }
            _ => groups.push(vec![run]),
        }
    }
    groups.retain(|group| {
        let power = mean_power(group);
        let alike = |run: &&Run| (run.power - power).abs() <= room_for(power, threshold);
        group.len() + cut.iter().filter(alike).count().min(1) >= FEWEST_RUNS
    });
    groups
}

fn room_for(power: f64, threshold: Watts) -> f64 {
    (SAME_FRAC * power).max(0.7 * threshold.0)
}

fn mean_power(runs: &[Run]) -> f64 {
    runs.iter().map(|run| run.power).sum::<f64>() / runs.len().max(1) as f64
}

/// The appliances that levels tell of, the one that takes most first.
#[must_use]
pub fn appliances(series: &Series, levels: &Levels, floor: Watts) -> Vec<Appliance> {
    if series.step_s > COARSEST_S {
        return Vec::new();
    }
    let (first, loose) = pair_edges(levels, floor, &[]);
    let known: Vec<f64> =
        groups_of(first, &loose, levels.threshold).iter().map(|group| mean_power(group)).collect();
    let (runs, cut) = pair_edges(levels, floor, &known);
    let watched = watched_s(series);
    let mut found: Vec<Appliance> = groups_of(runs, &cut, levels.threshold)
        .iter()
        .map(|group| appliance(series, group, &cut, &watched, levels.threshold))
        .collect();
    // What is left of two that were told apart may be next to nothing.
    found.retain(|found| found.power >= SMALLEST);
    found.sort_by(|a, b| (b.power * b.per_day).0.total_cmp(&(a.power * a.per_day).0));
    found
}

fn appliance(
    series: &Series,
    whole: &[Run],
    cut: &[Run],
    watched_s: &[f64; 24],
    threshold: Watts,
) -> Appliance {
    let power = mean_power(whole);
    let spread = whole.iter().map(|run| (run.power - power).powi(2)).sum::<f64>();
    let power_sd = (spread / (whole.len() - 1).max(1) as f64).sqrt();
    let mut lengths: Vec<f64> = whole.iter().map(|run| run.to_s - run.from_s).collect();
    let usual_s = median(&mut lengths).unwrap_or(0.0);
    let alike = (2.0 * power_sd).max(0.1 * power).max(0.5 * threshold.0);
    let also = cut.iter().filter(|run| (run.power - power).abs() <= alike).map(|run| {
        let long = (run.to_s - run.from_s).min(usual_s);
        match run.seen {
            Seen::End => Run { from_s: run.to_s - long, ..*run },
            Seen::Start | Seen::Both => Run { to_s: run.from_s + long, ..*run },
        }
    });
    let mut all: Vec<Run> = whole.iter().copied().chain(also).collect();
    all.sort_by(|a, b| a.from_s.total_cmp(&b.from_s));
    // Only rows that show the draw count, as they do in the time watched.
    let mut ran_s = [0.0; 24];
    let mut after = 0;
    for run in &all {
        let begin = series.samples.partition_point(|sample| sample.at_s < run.from_s);
        let end = series.samples.partition_point(|sample| sample.at_s < run.to_s);
        // Two runs of one appliance do not overlap.
        for row in begin.max(after)..end {
            if series.drawn[row].is_some() {
                ran_s[hour_of(series.samples[row].at_s)] += series.held_s(row);
            }
        }
        after = after.max(end);
    }
    let by_hour: [Option<f64>; 24] = std::array::from_fn(|hour| {
        (watched_s[hour] >= WATCHED_ENOUGH_H * HOUR_S)
            .then(|| (ran_s[hour] / watched_s[hour]).min(1.0))
    });
    let total_s: f64 = watched_s.iter().sum();
    let duty_frac = (ran_s.iter().sum::<f64>() / total_s.max(1.0)).min(1.0);
    Appliance {
        power: Watts(power),
        power_sd: Watts(power_sd),
        runs: all.len(),
        usual_run: Hours::from_seconds(usual_s),
        duty_frac,
        per_day: Hours(by_hour.iter().flatten().sum()),
        pattern: pattern(&all, &by_hour),
        by_hour,
    }
}

fn pattern(runs: &[Run], by_hour: &[Option<f64>; 24]) -> Pattern {
    // From one start to the next, without what a gap or a day lies between.
    let mut between: Vec<f64> = runs
        .windows(2)
        .filter(|pair| pair.iter().all(|run| run.seen == Seen::Both))
        .map(|pair| pair[1].from_s - pair[0].from_s)
        .collect();
    let Some(usual) = median(&mut between) else { return Pattern::Uses };
    between.retain(|time| *time < 4.0 * usual);
    let mean = between.iter().sum::<f64>() / between.len().max(1) as f64;
    let square = between.iter().map(|time| (time - mean).powi(2)).sum::<f64>();
    let spread = (square / between.len().max(1) as f64).sqrt();
    let hours: Vec<f64> = by_hour.iter().flatten().copied().collect();
    let busy = hours.iter().filter(|share| **share > 0.02).count();
    let even = runs.len() >= FEWEST_CYCLES && spread < EVEN_FRAC * mean;
    if even && busy * 10 >= hours.len() * 7 { Pattern::Thermostat } else { Pattern::Uses }
}
