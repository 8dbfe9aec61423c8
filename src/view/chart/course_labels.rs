//! The words and signs around the course of the battery.

use super::canvas::{Anchor, Frame, Stroke};
use super::course_data::SocChart;
use super::course_draw::{LANE_PX, Plot, RIGHT_PX, lanes};
use super::days::{DayOnAxis, days_on_axis, every_nth_day};
use super::scale::{clearance_px, fit_labels};
use crate::i18n::Arg;
use crate::view::lang::{day_month, number, percent, t_args, weekday};

/// Size of a sign [px].
const SIGN_PX: f64 = 16.0;

impl SocChart {
    /// The limit in words, with its range where the cold moves it.
    #[must_use]
    pub fn low_words(&self) -> String {
        let lows = || self.hours.iter().map(|hour| hour.low_frac);
        let (least, most) = (lows().fold(1.0, f64::min) * 100.0, lows().fold(0.0, f64::max));
        let least = number(least, 0);
        let soc = if least == number(most * 100.0, 0) {
            percent(most)
        } else {
            format!("{least}–{}", percent(most))
        };
        t_args("chart-low", &[("soc", Arg::Text(&soc))])
    }
}

impl Plot<'_> {
    /// The word at the limit, at whichever end and side leaves most room to the other lines.
    pub(super) fn low_label(&self) {
        let (left, top, right, bottom) = self.frame;
        let canvas = self.canvas;
        let (line, low) = (self.middle(), self.low());
        let text = self.chart.low_words();
        let width = canvas.width_of(&text, true);
        let height = canvas.font_px * 1.2;
        let mut best: Option<(f64, Frame)> = None;
        for start in [left + 4.0, right - 4.0 - width] {
            // Clear of the limit itself, which may rise and fall below the word.
            let beside = low.iter().filter(|(x, _)| *x >= start && *x <= start + width);
            let ends = beside.fold((f64::INFINITY, f64::NEG_INFINITY), |(top, bottom), (_, y)| {
                (top.min(*y), bottom.max(*y))
            });
            for above in [true, false] {
                let y = if above { ends.0 - height - 2.0 } else { ends.1 + 2.0 };
                let frame = (start, y, start + width, y + height);
                if y < top || y + height > bottom || width > right - left {
                    continue;
                }
                // On clear ground it reads better than on the hatching.
                let ground = if above { 2.0 } else { 0.0 };
                let marks = self.chart.marks.iter().map(|mark| {
                    let x = self.x.px(mark.hour);
                    clearance_px(&[(x, top), (x, bottom)], frame, 30.0)
                });
                let room = marks
                    .chain([
                        clearance_px(&line, frame, 30.0),
                        clearance_px(&low, frame, 30.0) + 10.0,
                    ])
                    .fold(f64::INFINITY, f64::min)
                    + ground;
                if best.is_none_or(|(most, _)| room > most) {
                    best = Some((room, frame));
                }
            }
        }
        if let Some((_, (start, y, _, end))) = best {
            let palette = canvas.palette;
            let ink = (palette.fault, true);
            canvas.text(
                &text,
                (start, f64::midpoint(y, end)),
                Anchor::Left,
                ink,
                Some(palette.sheet),
            );
        }
    }

    /// Rows of signs; gives the height below them.
    pub(super) fn events(&self) -> f64 {
        let (left, _, right, bottom) = self.frame;
        let palette = self.canvas.palette;
        let end = self.chart.hours.len() as f64;
        let mut y = bottom + 4.0;
        for lane in lanes(self.chart) {
            if lane.is_empty() {
                continue;
            }
            let spans: Vec<_> = lane
                .into_iter()
                .filter_map(|event| event.span.within(end).map(|span| (event.kind, span)))
                .map(|(kind, span)| (kind, self.x.px(span.from_hour), self.x.px(span.to_hour)))
                .collect();
            let centres: Vec<f64> = spans.iter().map(|(_, from, to)| (from + to) / 2.0).collect();
            let widths = vec![SIGN_PX; spans.len()];
            let room = (left - SIGN_PX / 2.0, right + SIGN_PX / 2.0);
            let starts = fit_labels(&centres, &widths, room, 2.0);
            let base = y + LANE_PX - 3.0;
            for ((kind, from, to), start) in spans.into_iter().zip(starts) {
                if !kind.is_weather() {
                    let to = to.max(from + 3.0);
                    self.canvas.row((from, to), base, Stroke::whole(palette.ink_soft, 2.0));
                }
                if let Some(start) = start {
                    let centre = (start + SIGN_PX / 2.0, y + SIGN_PX / 2.0 + 1.0);
                    self.canvas.sign(kind, centre, SIGN_PX, palette.ink);
                }
            }
            y += LANE_PX;
        }
        y
    }

    pub(super) fn day_labels(&self, below_px: f64) {
        let (left, _, right, _) = self.frame;
        let canvas = self.canvas;
        let days = days_on_axis(self.chart.start_hour_of_day, self.chart.hours.len());
        let names: Vec<[String; 2]> = days
            .iter()
            .map(|day| {
                let date = self.chart.date(day.day);
                [weekday(date), day_month(date)]
            })
            .collect();
        let width = |row: usize| {
            names
                .iter()
                .filter_map(move |name| name.get(row))
                .map(|name| canvas.width_of(name, false))
        };
        let px_per_day = self.x.px_per_unit() * 24.0;
        let ink = canvas.palette.ink_soft;
        let width_px =
            |day: &DayOnAxis| self.x.px(day.span.to_hour) - self.x.px(day.span.from_hour);
        let mut y = below_px + canvas.font_px * 0.75;
        for (row, strong) in [(0, true), (1, false)] {
            let need = width(row).fold(0.0, f64::max) + 6.0;
            let nth = every_nth_day(px_per_day, need);
            if row == 0 && nth > 2 {
                // Every fifth weekday tells nobody anything; the dates do.
                continue;
            }
            let centres: Vec<f64> = days
                .iter()
                .map(|day| self.x.px(f64::midpoint(day.span.from_hour, day.span.to_hour)))
                .collect();
            // A day cut short at the start or the end is named only where its name has room.
            let named = |day: &DayOnAxis| width_px(day) >= (need * 0.7).min(px_per_day * 0.6);
            let from = usize::from(days.first().is_some_and(|day| !named(day)));
            let chosen: Vec<usize> = days
                .iter()
                .enumerate()
                .filter(|(index, day)| *index >= from && (index - from) % nth == 0 && named(day))
                .map(|(index, _)| index)
                .collect();
            let pick = |from: &[f64]| -> Vec<f64> {
                chosen.iter().filter_map(|index| from.get(*index).copied()).collect()
            };
            let widths: Vec<f64> = width(row).collect();
            let starts =
                fit_labels(&pick(&centres), &pick(&widths), (left - 8.0, right + RIGHT_PX), 4.0);
            for (index, start) in chosen.iter().zip(starts) {
                let name = names.get(*index).and_then(|name| name.get(row));
                if let (Some(name), Some(start)) = (name, start) {
                    let at = (start, y);
                    canvas.text(name, at, Anchor::Left, (ink, strong), None);
                }
            }
            y += canvas.font_px * 1.25;
        }
    }
}
