//! Drawing the course of the battery.

use super::canvas::{Anchor, Canvas, Frame, Stroke};
use super::course_data::{ChartEvent, SocChart};
use super::days::days_on_axis;
use super::picture::Ends;
use super::scale::{Scale, fit_labels};
use crate::view::lang::percent;

/// Height of a row of events [px].
pub(super) const LANE_PX: f64 = 22.0;
/// Room right of the plot: half the slider's knob [px].
pub(super) const RIGHT_PX: f64 = 14.0;
/// Nights narrower than this are a flicker, not a night [px].
const LEAST_NIGHT_PX: f64 = 4.0;
/// Height of the bar that marks a night at the top of the plot [px].
const NIGHT_BAR_PX: f64 = 4.0;
/// Days narrower than this [px] show the shape of the stay, not of each day.
const NARROW_DAY_PX: f64 = 22.0;
const DASH_LOW: &[f64] = &[7.0, 4.0];
const DASH_BAND: &[f64] = &[2.0, 3.0];

/// Height of the whole for a width and a size of text, all in px.
#[must_use]
pub fn height_px(chart: &SocChart, width_px: f64, font_px: f64) -> f64 {
    top_px(chart, font_px) + plot_height_px(width_px) + below_px(chart, font_px)
}

/// Low enough to stand below the answer on a desk of 800 px.
fn plot_height_px(width_px: f64) -> f64 {
    (width_px * 0.38).clamp(170.0, 320.0)
}

fn top_px(chart: &SocChart, font_px: f64) -> f64 {
    if chart.marks.is_empty() { font_px * 0.7 } else { font_px * 1.7 }
}

/// What people do, and the weather.
pub(super) fn lanes(chart: &SocChart) -> [Vec<&ChartEvent>; 2] {
    let (weather, other) = chart.events.iter().partition(|event| event.kind.is_weather());
    [other, weather]
}

fn below_px(chart: &SocChart, font_px: f64) -> f64 {
    let rows = lanes(chart).iter().filter(|lane| !lane.is_empty()).count();
    rows as f64 * LANE_PX + 4.0 + 2.0 * font_px * 1.3 + 2.0
}

/// The plot being drawn.
pub(super) struct Plot<'a> {
    pub(super) canvas: &'a Canvas,
    pub(super) chart: &'a SocChart,
    pub(super) frame: Frame,
    pub(super) x: Scale,
    pub(super) y: Scale,
}

/// Draws `chart`; `chosen` hours after its start stand the cross-hairs.
#[must_use]
pub fn draw(canvas: &Canvas, chart: &SocChart, chosen: Option<usize>) -> Ends {
    let widest = canvas.width_of(&percent(1.0), false).max(canvas.width_of(&percent(0.5), false));
    let left = (widest + 8.0).max(RIGHT_PX);
    let top = top_px(chart, canvas.font_px);
    let frame = (left, top, canvas.width_px - RIGHT_PX, top + plot_height_px(canvas.width_px));
    let plot = Plot {
        canvas,
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
    plot.marks();
    plot.low_label();
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

    pub(super) fn middle(&self) -> Vec<(f64, f64)> {
        let hours = &self.chart.hours;
        self.curve(self.chart.start_soc_frac, |index| hours.get(index).map(|hour| hour.soc_frac))
    }

    pub(super) fn low(&self) -> Vec<(f64, f64)> {
        let hours = &self.chart.hours;
        if self.narrow() {
            // The highest of each day: its rise in every cold night would only be a blur.
            let mut line = Vec::new();
            for day in days_on_axis(self.chart.start_hour_of_day, hours.len()) {
                let (from, to) = (day.span.from_hour, day.span.to_hour);
                let part = hours.get(from.ceil() as usize..to.ceil() as usize).unwrap_or_default();
                let highest = self.y.px(part.iter().map(|hour| hour.low_frac).fold(0.0, f64::max));
                line.extend([(self.x.px(from), highest), (self.x.px(to), highest)]);
            }
            return line;
        }
        let first = hours.first().map_or(0.0, |hour| hour.low_frac);
        self.curve(first, |index| hours.get(index).map(|hour| hour.low_frac))
    }

    /// Whether there are so many days that each is only a few pixels wide.
    fn narrow(&self) -> bool {
        self.x.px_per_unit() * 24.0 < NARROW_DAY_PX
    }

    fn ground(&self) {
        let (left, top, right, bottom) = self.frame;
        let palette = self.canvas.palette;
        self.canvas.fill(self.frame, palette.sheet, 1.0);
        for night in &self.chart.nights {
            let Some(night) = night.within(self.chart.hours.len() as f64) else { continue };
            let (from, to) = (self.x.px(night.from_hour), self.x.px(night.to_hour));
            if to - from >= LEAST_NIGHT_PX {
                self.canvas.fill((from, top, to, bottom), palette.night_wash, 1.0);
                self.canvas.fill((from, top, to, top + NIGHT_BAR_PX), palette.night, 1.0);
            }
        }
        self.canvas.row((left, right), bottom, Stroke::whole(palette.edge, 1.0));
    }

    /// Hatched below the limit, cross-hatched where nothing more comes out.
    fn floor(&self) {
        let (left, _, right, bottom) = self.frame;
        let stroke = Stroke::whole(self.canvas.palette.edge, 0.8);
        let mut shape = self.low();
        shape.extend([(right, bottom), (left, bottom)]);
        self.canvas.hatch(&shape, 8.0, true, stroke);
        let hours = &self.chart.hours;
        let first = hours.first().map_or(0.0, |hour| hour.empty_frac);
        let mut shape = self.curve(first, |index| hours.get(index).map(|hour| hour.empty_frac));
        shape.extend([(right, bottom), (left, bottom)]);
        self.canvas.hatch(&shape, 8.0, false, stroke);
    }

    fn grid(&self) {
        let (left, top, right, bottom) = self.frame;
        let palette = self.canvas.palette;
        let roomy = bottom - top > 10.0 * self.canvas.font_px;
        for quarter in 0..=4u8 {
            let frac = f64::from(quarter) / 4.0;
            let y = self.y.px(frac);
            if quarter > 0 {
                self.canvas.row((left, right), y, Stroke::whole(palette.line, 1.0));
            }
            if roomy || quarter % 2 == 0 {
                let ink = (palette.ink_soft, false);
                self.canvas.text(&percent(frac), (left - 6.0, y), Anchor::Right, ink, None);
            }
        }
        for day in days_on_axis(self.chart.start_hour_of_day, self.chart.hours.len()) {
            if day.span.from_hour > 0.0 {
                let x = self.x.px(day.span.from_hour);
                self.canvas.column(x, (top, bottom + 3.0), Stroke::whole(palette.line, 1.0));
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
        let palette = self.canvas.palette;
        let shape: Vec<(f64, f64)> = high.iter().chain(low.iter().rev()).copied().collect();
        self.canvas.shape(&shape, palette.glow, 0.34);
        for edge in [low, high] {
            self.canvas.line(&edge, Stroke::broken(palette.glow_ink, 1.0, DASH_BAND));
        }
    }

    fn low_line(&self) {
        let stroke = Stroke::broken(self.canvas.palette.fault, 1.6, DASH_LOW);
        self.canvas.line(&self.low(), stroke);
    }

    fn middle_line(&self) {
        let width_px = if self.narrow() { 1.3 } else { 2.2 };
        self.canvas.line(&self.middle(), Stroke::whole(self.canvas.palette.ink, width_px));
    }

    fn readings(&self) {
        let palette = self.canvas.palette;
        let stroke = Stroke::whole(palette.ink, 1.5);
        for reading in &self.chart.readings {
            if !(0.0..=self.chart.hours.len() as f64).contains(&reading.hour) {
                continue;
            }
            let (x, y) = (self.x.px(reading.hour), self.y.px(reading.soc_frac));
            if reading.error_frac > 0.0 {
                let high = self.y.px(reading.soc_frac + reading.error_frac);
                let low = self.y.px(reading.soc_frac - reading.error_frac);
                self.canvas.column(x, (high, low), stroke);
                for end in [high, low] {
                    self.canvas.row((x - 4.0, x + 4.0), end, stroke);
                }
            }
            self.canvas.disc((x, y), 4.5, palette.ink);
            self.canvas.disc((x, y), 2.8, palette.sheet);
        }
    }

    fn marks(&self) {
        let (left, top, right, bottom) = self.frame;
        let palette = self.canvas.palette;
        let shown: Vec<_> = self
            .chart
            .marks
            .iter()
            .filter(|mark| (0.0..=self.chart.hours.len() as f64).contains(&mark.hour))
            .collect();
        let centres: Vec<f64> = shown.iter().map(|mark| self.x.px(mark.hour)).collect();
        let widths: Vec<f64> =
            shown.iter().map(|mark| self.canvas.width_of(&mark.label, true)).collect();
        let room = (left - 6.0, right + 10.0);
        let starts = fit_labels(&centres, &widths, room, 8.0);
        for ((mark, x), start) in shown.iter().zip(&centres).zip(starts) {
            self.canvas.column(*x, (top - 4.0, bottom), Stroke::whole(palette.glow_ink, 1.6));
            let (y, half) = (top - 5.0, 4.0);
            self.canvas.shape(
                &[(x - half, y), (x + half, y), (*x, y + 5.0)],
                palette.glow_ink,
                1.0,
            );
            if let Some(start) = start {
                let at = (start, top - 5.0 - self.canvas.font_px * 0.6);
                self.canvas.text(&mark.label, at, Anchor::Left, (palette.ink, true), None);
            }
        }
    }

    fn cross_hairs(&self, hours: usize, below_px: f64) {
        let hours = hours.min(self.chart.hours.len());
        let (_, top, _, _) = self.frame;
        let palette = self.canvas.palette;
        let x = self.x.px(hours as f64);
        self.canvas.column(x, (top, below_px), Stroke::whole(palette.ink, 1.0));
        if let Some((x, y)) = self.middle().get(hours) {
            self.canvas.disc((*x, *y), 6.0, palette.sheet);
            self.canvas.disc((*x, *y), 4.5, palette.ink);
        }
    }
}
