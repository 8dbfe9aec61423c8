//! Rows of a log as a series: in order of time, with its gaps, and the power drawn where it can be told.
//!
//! What the appliances draw is only seen where nothing hides it:
//!
//! | the log has | drawn |
//! |---|---|
//! | a column of what is used | that |
//! | what comes in, and the battery's current or power | what comes in less what the battery takes |
//! | the battery's current or power alone | what the battery gives, while the sun is down, nothing charges, and it is not empty |
//!
//! Where neither panels are listed nor anything charges by day, the days count like the nights.

use crate::model::{Sample, Setup};
use crate::physics::battery::open_circuit::OpenCircuit;
use crate::physics::solar::sun::{JulianDate, Sun};
use crate::units::{Amps, Hours, Volts, WattHours, Watts};
use time::{Date, Duration, Month};

/// Seconds of a day.
pub(super) const DAY_S: f64 = 86_400.0;
/// Seconds of an hour.
pub(super) const HOUR_S: f64 = 3_600.0;
/// Sine of the height of the sun below which no panel gives anything: 2 degrees below the horizon, as places and
/// clocks are not exact.
const LOW_SUN: f64 = -0.035;
/// How long the sun's place is kept for [s].
const SUN_KEPT_S: f64 = 300.0;
/// What charges is told of this long before and after it is seen [s]: it may just carry the loads.
const CHARGER_EDGE_S: f64 = 900.0;
/// Rows this many usual steps apart have a gap between them.
const GAP_STEPS: f64 = 3.5;
/// Longest time between rows that still counts as one run, whatever their usual step [s].
const GAP_LONGEST_S: f64 = 2.0 * HOUR_S;
/// Below this state of charge a battery may have switched its loads off.
const EMPTY_FRAC: f64 = 0.25;
/// Over so long [s] it gives less than [`GIVES_NOTHING_W`] then.
const EMPTY_S: f64 = 1_200.0;
/// Less than any van draws with something on, and than a shunt is off by [W].
const GIVES_NOTHING_W: f64 = 1.0;
/// A battery that takes more than this share of its capacity in an hour is being charged.
const CHARGES_FROM_C: f64 = 0.005;

/// A log in order of time.
#[derive(Clone, Debug, Default)]
pub struct Series {
    /// Its rows, one for each time.
    pub samples: Vec<Sample>,
    /// Usual time from row to row [s].
    pub step_s: f64,
    /// Power drawn by row, where it can be told.
    pub drawn: Vec<Option<Watts>>,
    /// Whether the sun is up, by row.
    pub sun_up: Vec<bool>,
    /// Drawn is seen by day too.
    pub whole_day: bool,
    gap_s: f64,
    nominal: Volts,
}

/// Times further from 1970 than a few thousand years are none [s].
const FURTHEST_S: f64 = 1e11;

/// Date and second of the day of a time of the camp's clock; `None` beyond any calendar.
#[must_use]
pub fn date_of(at_s: f64) -> Option<(Date, f64)> {
    if at_s.is_nan() || at_s.abs() > FURTHEST_S {
        return None;
    }
    let days = (at_s / DAY_S).floor();
    let epoch = Date::from_calendar_date(1970, Month::January, 1).ok()?;
    let date = epoch.checked_add(Duration::days(days as i64))?;
    Some((date, at_s - days * DAY_S))
}

/// Seconds of the camp's clock at an hour of a date.
#[must_use]
pub(super) fn seconds_at(date: Date, hour: u8) -> f64 {
    // Julian day of 1 January 1970.
    const EPOCH: i32 = 2_440_588;
    f64::from(date.to_julian_day() - EPOCH) * DAY_S + f64::from(hour) * HOUR_S
}

/// Hour of the day, 0..23.
pub(super) fn hour_of(at_s: f64) -> usize {
    ((at_s.rem_euclid(DAY_S) / HOUR_S) as usize).min(23)
}

impl Series {
    /// Puts rows in order; of rows with the same time the first stays, which readers tell about.
    #[must_use]
    pub fn new(mut samples: Vec<Sample>, setup: &Setup) -> Self {
        samples.retain(|sample| date_of(sample.at_s).is_some());
        samples.sort_by(|a, b| a.at_s.total_cmp(&b.at_s));
        samples.dedup_by(|later, first| later.at_s == first.at_s);
        let mut steps: Vec<f64> =
            samples.windows(2).map(|pair| pair[1].at_s - pair[0].at_s).collect();
        let step_s = median(&mut steps).unwrap_or(0.0);
        let bank = &setup.bank;
        let middle = OpenCircuit::new(bank.chemistry, bank.system, bank.aged_capacity()).volts(0.6);
        Self {
            samples,
            step_s,
            gap_s: (GAP_STEPS * step_s).clamp(90.0, GAP_LONGEST_S.max(1.2 * step_s)),
            nominal: middle,
            ..Self::default()
        }
    }

    /// Whole time between the first and the last row.
    #[must_use]
    pub fn span(&self) -> Hours {
        match (self.samples.first(), self.samples.last()) {
            (Some(first), Some(last)) => Hours::from_seconds(last.at_s - first.at_s),
            _ => Hours::ZERO,
        }
    }

    /// Time covered by rows, gaps left out.
    #[must_use]
    pub fn covered(&self) -> Hours {
        Hours::from_seconds((0..self.samples.len()).map(|row| self.held_s(row)).sum())
    }

    /// How long a row holds: to the next one, nothing before a gap [s].
    #[must_use]
    pub fn held_s(&self, row: usize) -> f64 {
        match (self.samples.get(row), self.samples.get(row + 1)) {
            (Some(here), Some(next)) if next.at_s - here.at_s <= self.gap_s => {
                next.at_s - here.at_s
            }
            _ => 0.0,
        }
    }

    /// Rows from one gap to the next, as ranges.
    #[must_use]
    pub fn stretches(&self) -> Vec<std::ops::Range<usize>> {
        let mut found = Vec::new();
        let mut from = 0;
        for row in 0..self.samples.len() {
            if self.held_s(row) <= 0.0 {
                found.push(from..row + 1);
                from = row + 1;
            }
        }
        found
    }

    /// Current into the battery, from its power where no current was logged.
    #[must_use]
    pub fn amps(&self, row: usize) -> Option<Amps> {
        let sample = self.samples.get(row)?;
        let volts = sample.volts.unwrap_or(self.nominal);
        sample.amps.or_else(|| sample.watts.map(|watts| watts / volts))
    }

    /// Power into the battery, from its current where no power was logged.
    #[must_use]
    pub fn watts(&self, row: usize) -> Option<Watts> {
        let sample = self.samples.get(row)?;
        let volts = sample.volts.unwrap_or(self.nominal);
        let of_columns = sample.charging.zip(sample.used).map(|(charging, used)| charging - used);
        sample.watts.or_else(|| sample.amps.map(|amps| amps * volts)).or(of_columns)
    }

    /// Works out when the sun is up and what is drawn.
    pub fn find_drawn(&mut self, setup: &Setup) {
        self.find_sun(setup);
        let rows = self.samples.len();
        let charges_from = setup.bank.aged_capacity() * CHARGES_FROM_C / Hours(1.0) * self.nominal;
        let charged: Vec<bool> =
            (0..rows).map(|row| self.watts(row).is_some_and(|net| net > charges_from)).collect();
        let with_column =
            self.samples.iter().filter(|s| s.used.is_some() || s.charging.is_some()).count();
        let by_day = self.sun_up.iter().filter(|up| **up).count();
        let charged_by_day =
            charged.iter().zip(&self.sun_up).filter(|(charged, up)| **charged && **up).count();
        let no_sun_used = setup.solar.is_empty() && charged_by_day * 50 <= by_day;
        self.whole_day = with_column * 2 > rows || no_sun_used;
        let near_charger = self.near(&charged);
        let gave_out = self.gave_out();
        self.drawn = (0..rows)
            .map(|row| {
                let sample = &self.samples[row];
                let net = self.watts(row);
                sample
                    .used
                    .or_else(|| sample.charging.zip(net).map(|(from, net)| from - net))
                    .or_else(|| {
                        let by_day = self.sun_up[row] && !no_sun_used;
                        let hidden = near_charger[row] || by_day || gave_out[row];
                        if hidden { None } else { net.map(|net| -net) }
                    })
            })
            .collect();
    }

    /// Rows in which the battery gives nothing because it is empty: what is on then draws nothing either.
    fn gave_out(&self) -> Vec<bool> {
        let mut gave_out = vec![false; self.samples.len()];
        let mut from = 0;
        while let Some(first) = self.samples.get(from) {
            let length = self.samples[from..].partition_point(|s| s.at_s < first.at_s + EMPTY_S);
            let block = from..from + length.max(1);
            let net: f64 = block.clone().filter_map(|row| self.watts(row)).map(|net| net.0).sum();
            let low = |row: usize| self.samples[row].soc_frac.is_some_and(|soc| soc <= EMPTY_FRAC);
            if block.clone().all(low) && (net / length.max(1) as f64).abs() < GIVES_NOTHING_W {
                gave_out[block.clone()].fill(true);
            }
            from = block.end;
        }
        gave_out
    }

    fn find_sun(&mut self, setup: &Setup) {
        let place = &setup.trip.place;
        let offset_min = f64::from(setup.trip.utc_offset_min);
        let mut known = (f64::NEG_INFINITY, false);
        self.sun_up = self
            .samples
            .iter()
            .map(|sample| {
                if sample.at_s - known.0 > SUN_KEPT_S {
                    let up = date_of(sample.at_s).is_some_and(|(date, second)| {
                        let instant = JulianDate::from_local(date, second / 60.0, offset_min);
                        Sun::at(instant).seen_from(place.latitude, place.longitude).up > LOW_SUN
                    });
                    known = (sample.at_s, up);
                }
                known.1
            })
            .collect();
    }

    /// Rows within [`CHARGER_EDGE_S`] of one that is marked.
    fn near(&self, marked: &[bool]) -> Vec<bool> {
        let mut near = vec![false; marked.len()];
        let mut pass = |rows: &mut dyn Iterator<Item = usize>| {
            let mut last: Option<f64> = None;
            for row in rows {
                let at_s = self.samples[row].at_s;
                if marked[row] {
                    last = Some(at_s);
                }
                near[row] |= last.is_some_and(|last| (at_s - last).abs() <= CHARGER_EDGE_S);
            }
        };
        pass(&mut (0..marked.len()));
        pass(&mut (0..marked.len()).rev());
        near
    }

    /// State of charge at a time, straight between the rows around it; `None` in a gap.
    #[must_use]
    pub fn soc_at(&self, at_s: f64) -> Option<f64> {
        let after = self.samples.partition_point(|sample| sample.at_s < at_s);
        let next = self.samples.get(after)?;
        if next.at_s == at_s {
            return next.soc_frac;
        }
        let before = self.samples.get(after.checked_sub(1)?)?;
        let apart = next.at_s - before.at_s;
        if apart > self.gap_s.max(HOUR_S) {
            return None;
        }
        let share = (at_s - before.at_s) / apart;
        Some(before.soc_frac? + (next.soc_frac? - before.soc_frac?) * share)
    }

    /// Mean state of charge around a time, which evens out noise; `None` in a gap.
    #[must_use]
    pub fn mean_soc(&self, at_s: f64, within_s: f64) -> Option<f64> {
        let from = self.samples.partition_point(|sample| sample.at_s < at_s - within_s);
        let to = self.samples.partition_point(|sample| sample.at_s <= at_s + within_s);
        let (sum, count) = self.samples[from..to]
            .iter()
            .filter_map(|sample| sample.soc_frac)
            .fold((0.0, 0_u32), |(sum, count), soc| (sum + soc, count + 1));
        if count == 0 { self.soc_at(at_s) } else { Some(sum / f64::from(count)) }
    }
}

/// Middle of the values; the list is put in order. `None` of nothing.
pub(super) fn median(values: &mut [f64]) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    values.get(values.len() / 2).copied()
}

/// Energy over the time that rows hold.
pub(super) fn energy(power: Watts, held_s: f64) -> WattHours {
    power * Hours::from_seconds(held_s)
}
