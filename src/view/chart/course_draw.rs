//! Drawing the course of the battery.

use super::brush::{Anchor, Brush, Frame, Stroke};
use super::course::{ChartEvent, SocChart};
use super::days::{days_on_axis, every_nth_day};
use super::picture::Ends;
use super::scale::{Scale, fit_labels};
use crate::i18n::Arg;
use crate::view::lang::{day_month, percent, t_args, weekday};

/// Height of a row of events [px].
const LANE_PX: f64 = 22.0;
/// Size of a sign [px].
const SIGN_PX: f64 = 16.0;
/// Room right of the plot: half the slider's knob [px].
const RIGHT_PX: f64 = 14.0;
/// Nights narrower than this are a flicker, not a night [px].
const LEAST_NIGHT_PX: f64 = 2.0;
const DASH_LOW: &[f64] = &[7.0, 4.0];
const DASH_BAND: &[f64] = &[2.0, 3.0];

/// Height of the whole for a width and a size of text, all in px.
#[must_use]
pub fn height_px(chart: &SocChart, width_px: f64, font_px: f64) -> f64 {
    top_px(chart, font_px) + plot_height_px(width_px) + below_px(chart, font_px)
}

fn plot_height_px(width_px: f64) -> f64 {
    (width_px * 0.5).clamp(170.0, 320.0)
}

fn top_px(chart: &SocChart, font_px: f64) -> f64 {
    if chart.marks.is_empty() { font_px * 0.7 } else { font_px * 1.7 }
}

fn lanes(chart: &SocChart) -> [Vec<&ChartEvent>; 2] {
    let (weather, other) = chart.events.iter().partition(|event| event.kind.is_weather());
    [other, weather]
}

fn below_px(chart: &SocChart, font_px: f64) -> f64 {
    let rows = lanes(chart).iter().filter(|lane| !lane.is_empty()).count();
    rows as f64 * LANE_PX + 4.0 + 2.0 * font_px * 1.3 + 2.0
}

struct Plot<'a> {
    brush: &'a Brush,
    chart: &'a SocChart,
    frame: Frame,
    x: Scale,
    y: Scale,
}

/// Draws `chart`; `chosen` hours after its start stand the cross-hairs.
#[must_use]
pub fn draw(brush: &Brush, chart: &SocChart, chosen: Option<usize>) -> Ends {
    let widest = brush.width_of(&percent(1.0), false).max(brush.width_of(&percent(0.5), false));
    let left = (widest + 8.0).max(RIGHT_PX);
    let top = top_px(chart, brush.font_px);
    let frame = (left, top, brush.width_px - RIGHT_PX, top + plot_height_px(brush.width_px));
    let plot = Plot {
        brush,
        chart,
        frame,
        x: Scale::new((0.0, chart.hours.len().max(1) as f64), (frame.0, frame.2)),
        y: Scale::new((0.0, 1.0), (frame.3, frame.1)),
    };
    plot.ground();
    plot.floor();
    plot.grid();
    plot.band();
    plot.low_line();
    plot.middle_line();
    plot.readings();
    plot.low_label();
    plot.marks();
    let below = plot.events();
    plot.day_labels(below);
    if let Some(hours) = chosen {
        plot.cross_hairs(hours, below);
    }
    Ends { first_px: frame.0, last_px: frame.2 }
}

impl Plot<'_> {
    /// Values at the start and at the end of every hour as points.
    fn curve(&self, start: f64, of: impl Fn(usize) -> Option<f64>) -> Vec<(f64, f64)> {
        let after = (0..self.chart.hours.len()).filter_map(|index| {
            of(index).map(|value| (self.x.px(index as f64 + 1.0), self.y.px(value)))
        });
        std::iter::once((self.x.px(0.0), self.y.px(start))).chain(after).collect()
    }

    fn middle(&self) -> Vec<(f64, f64)> {
        let hours = &self.chart.hours;
        self.curve(self.chart.start_soc_frac, |index| hours.get(index).map(|hour| hour.soc_frac))
    }

    fn low(&self) -> Vec<(f64, f64)> {
        let hours = &self.chart.hours;
        let first = hours.first().map_or(0.0, |hour| hour.low_frac);
        self.curve(first, |index| hours.get(index).map(|hour| hour.low_frac))
    }

    fn ground(&self) {
        let (left, top, right, bottom) = self.frame;
        let palette = self.brush.palette;
        self.brush.fill(self.frame, palette.sheet, 1.0);
        for night in &self.chart.nights {
            let Some(night) = night.within(self.chart.hours.len() as f64) else { continue };
            let (from, to) = (self.x.px(night.from_hour), self.x.px(night.to_hour));
            if to - from >= LEAST_NIGHT_PX {
                self.brush.fill((from, top, to, bottom), palette.night_wash, 1.0);
            }
        }
        self.brush.row((left, right), bottom, Stroke::whole(palette.edge, 1.0));
    }

    /// Hatched below the limit, cross-hatched where nothing more comes out.
    fn floor(&self) {
        let (left, _, right, bottom) = self.frame;
        let stroke = Stroke::whole(self.brush.palette.edge, 0.8);
        let mut shape = self.low();
        shape.extend([(right, bottom), (left, bottom)]);
        self.brush.hatch(&shape, 8.0, true, stroke);
        let hours = &self.chart.hours;
        let first = hours.first().map_or(0.0, |hour| hour.empty_frac);
        let mut shape = self.curve(first, |index| hours.get(index).map(|hour| hour.empty_frac));
        shape.extend([(right, bottom), (left, bottom)]);
        self.brush.hatch(&shape, 8.0, false, stroke);
    }

    fn grid(&self) {
        let (left, top, right, bottom) = self.frame;
        let palette = self.brush.palette;
        let roomy = bottom - top > 10.0 * self.brush.font_px;
        for quarter in 0..=4u8 {
            let frac = f64::from(quarter) / 4.0;
            let y = self.y.px(frac);
            if quarter > 0 {
                self.brush.row((left, right), y, Stroke::whole(palette.line, 1.0));
            }
            if roomy || quarter % 2 == 0 {
                let ink = (palette.ink_soft, false);
                self.brush.text(&percent(frac), (left - 6.0, y), Anchor::Right, ink, None);
            }
        }
        for day in days_on_axis(self.chart.start_hour_of_day, self.chart.hours.len()) {
            if day.span.from_hour > 0.0 {
                let x = self.x.px(day.span.from_hour);
                self.brush.column(x, (top, bottom + 3.0), Stroke::whole(palette.line, 1.0));
            }
        }
    }

    fn band(&self) {
        let start = self.chart.start_soc_frac;
        let hours = &self.chart.hours;
        let band = |index: usize| hours.get(index).and_then(|hour| hour.band);
        let low = self.curve(start, |index| band(index).map(|band| band.p10_frac));
        let high = self.curve(start, |index| band(index).map(|band| band.p90_frac));
        if low.len() < 2 {
            return;
        }
        let palette = self.brush.palette;
        let shape: Vec<(f64, f64)> = high.iter().chain(low.iter().rev()).copied().collect();
        self.brush.shape(&shape, palette.glow, 0.34);
        for edge in [low, high] {
            self.brush.line(&edge, Stroke::broken(palette.glow_ink, 1.0, DASH_BAND));
        }
    }

    fn low_line(&self) {
        let stroke = Stroke::broken(self.brush.palette.fault, 1.6, DASH_LOW);
        self.brush.line(&self.low(), stroke);
    }

    fn middle_line(&self) {
        self.brush.line(&self.middle(), Stroke::whole(self.brush.palette.ink, 2.2));
    }

    /// The word at the limit, at the end of it where the line of charge is farthest.
    fn low_label(&self) {
        let hours = &self.chart.hours;
        let (Some(first), Some(last)) = (hours.first(), hours.last()) else { return };
        let (left, top, right, bottom) = self.frame;
        let palette = self.brush.palette;
        let line = self.middle();
        let half = self.brush.font_px * 0.8;
        let places = [(left, first, Anchor::Left), (right, last, Anchor::Right)]
            .into_iter()
            .flat_map(|(x, hour, anchor)| [(x, hour, anchor, -1.0), (x, hour, anchor, 1.0)]);
        let mut best: Option<(f64, String, (f64, f64), Anchor)> = None;
        for (x, hour, anchor, side) in places {
            let soc = percent(hour.low_frac);
            let text = t_args("chart-low", &[("soc", Arg::Text(&soc))]);
            let width = self.brush.width_of(&text, true) + 8.0;
            let y = self.y.px(hour.low_frac) + side * (half + 3.0);
            if y - half < top || y + half > bottom || width > right - left {
                continue;
            }
            let (from, to) = if anchor == Anchor::Left { (x, x + width) } else { (x - width, x) };
            // Above the hatching it reads better: a slight preference.
            let nearest = line
                .iter()
                .filter(|(at, _)| *at >= from && *at <= to)
                .map(|(_, place)| (place - y).abs())
                .fold(60.0, f64::min)
                - f64::from(u8::from(side > 0.0)) * half;
            let at = if anchor == Anchor::Left { x + 4.0 } else { x - 4.0 };
            if best.as_ref().is_none_or(|(least, ..)| nearest > *least) {
                best = Some((nearest, text, (at, y), anchor));
            }
        }
        if let Some((_, text, at, anchor)) = best {
            self.brush.text(&text, at, anchor, (palette.fault, true), Some(palette.sheet));
        }
    }

    fn readings(&self) {
        let palette = self.brush.palette;
        let stroke = Stroke::whole(palette.ink, 1.5);
        for reading in &self.chart.readings {
            if !(0.0..=self.chart.hours.len() as f64).contains(&reading.hour) {
                continue;
            }
            let (x, y) = (self.x.px(reading.hour), self.y.px(reading.soc_frac));
            if reading.error_frac > 0.0 {
                let high = self.y.px(reading.soc_frac + reading.error_frac);
                let low = self.y.px(reading.soc_frac - reading.error_frac);
                self.brush.column(x, (high, low), stroke);
                for end in [high, low] {
                    self.brush.row((x - 4.0, x + 4.0), end, stroke);
                }
            }
            self.brush.disc((x, y), 4.5, palette.ink);
            self.brush.disc((x, y), 2.8, palette.sheet);
        }
    }

    fn marks(&self) {
        let (left, top, right, bottom) = self.frame;
        let palette = self.brush.palette;
        let shown: Vec<_> = self
            .chart
            .marks
            .iter()
            .filter(|mark| (0.0..=self.chart.hours.len() as f64).contains(&mark.hour))
            .collect();
        let centres: Vec<f64> = shown.iter().map(|mark| self.x.px(mark.hour)).collect();
        let widths: Vec<f64> =
            shown.iter().map(|mark| self.brush.width_of(&mark.label, true)).collect();
        let room = (left - 6.0, right + 10.0);
        let starts = fit_labels(&centres, &widths, room, 8.0);
        for ((mark, x), start) in shown.iter().zip(&centres).zip(starts) {
            self.brush.column(*x, (top - 4.0, bottom), Stroke::whole(palette.glow_ink, 1.6));
            let (y, half) = (top - 5.0, 4.0);
            self.brush.shape(&[(x - half, y), (x + half, y), (*x, y + 5.0)], palette.glow_ink, 1.0);
            if let Some(start) = start {
                let at = (start, top - 5.0 - self.brush.font_px * 0.6);
                self.brush.text(&mark.label, at, Anchor::Left, (palette.ink, true), None);
            }
        }
    }

    /// Rows of signs; gives the height below them.
    fn events(&self) -> f64 {
        let (left, _, right, bottom) = self.frame;
        let palette = self.brush.palette;
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
                    self.brush.row((from, to), base, Stroke::whole(palette.ink_soft, 2.0));
                }
                if let Some(start) = start {
                    let centre = (start + SIGN_PX / 2.0, y + SIGN_PX / 2.0 + 1.0);
                    self.brush.sign(kind, centre, SIGN_PX, palette.ink);
                }
            }
            y += LANE_PX;
        }
        y
    }

    fn day_labels(&self, below_px: f64) {
        let (left, _, right, _) = self.frame;
        let brush = self.brush;
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
                .map(|name| brush.width_of(name, false))
        };
        let px_per_day = self.x.px_per_unit() * 24.0;
        let y = below_px + brush.font_px * 0.75;
        let ink = brush.palette.ink_soft;
        for (row, strong) in [(0, true), (1, false)] {
            let need = width(row).fold(0.0, f64::max) + 6.0;
            let nth = every_nth_day(px_per_day, need);
            let centres: Vec<f64> = days
                .iter()
                .map(|day| self.x.px((day.span.from_hour + day.span.to_hour) / 2.0))
                .collect();
            let chosen: Vec<usize> = (0..days.len())
                .filter(|index| {
                    days.get(*index).is_some_and(|day| {
                        let whole = self.x.px(day.span.to_hour) - self.x.px(day.span.from_hour);
                        day.day % nth == 0 && (whole >= need * 0.7 || nth > 1)
                    })
                })
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
                    let at = (start, y + row as f64 * brush.font_px * 1.25);
                    brush.text(name, at, Anchor::Left, (ink, strong), None);
                }
            }
        }
    }

    fn cross_hairs(&self, hours: usize, below_px: f64) {
        let hours = hours.min(self.chart.hours.len());
        let (_, top, _, _) = self.frame;
        let palette = self.brush.palette;
        let x = self.x.px(hours as f64);
        self.brush.column(x, (top, below_px), Stroke::whole(palette.ink, 1.0));
        if let Some((x, y)) = self.middle().get(hours) {
            self.brush.disc((*x, *y), 6.0, palette.sheet);
            self.brush.disc((*x, *y), 4.5, palette.ink);
        }
    }
}
