//! A curve of one figure over another, such as battery size over solar power.

use super::canvas::{Anchor, Canvas, Stroke};
use super::picture::{Ends, Picture, Reading, legend};
use super::scale::{Scale, clearance_px, decimals_for_step, fit_labels, nearest, ticks_from_zero};
use crate::view::lang::{number, pair, quantity};
use crate::view::widgets::DataTable;
use leptos::prelude::*;
use std::sync::Arc;

/// A curve with its axes.
#[derive(Clone, Debug, PartialEq)]
pub struct CurveChart {
    /// What it shows; title of the table.
    pub title: String,
    /// What it says, in a sentence, for those who do not see it.
    pub summary: String,
    /// Along.
    pub x: Axis,
    /// Upwards.
    pub y: Axis,
    /// Points, in order along x; both figures 0 or more.
    pub points: Vec<CurvePoint>,
    /// Single places with a name, such as what there is now.
    pub marks: Vec<CurveMark>,
}

/// One axis; it starts at 0.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Axis {
    /// What is measured.
    pub name: String,
    /// Unit.
    pub unit: String,
    /// Decimals worth showing.
    pub decimals: u8,
}

/// A point, in the units of the axes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CurvePoint {
    /// Along, in the unit of the axis.
    pub x: f64,
    /// Upwards, in the unit of the axis.
    pub y: f64,
}

/// A named place.
#[derive(Clone, Debug, PartialEq)]
pub struct CurveMark {
    /// Where.
    pub at: CurvePoint,
    /// A short word.
    pub label: String,
}

impl Axis {
    fn value(&self, value: f64) -> String {
        quantity(value, self.decimals, &self.unit)
    }

    fn head(&self) -> String {
        format!("{} ({})", self.name, self.unit)
    }
}

impl CurveChart {
    fn words(&self, index: usize) -> String {
        self.points.get(index).map_or_else(String::new, |point| {
            let (x, y) = (self.x.value(point.x), self.y.value(point.y));
            format!("{}\u{a0}· {}", pair(&self.x.name, &x), pair(&self.y.name, &y))
        })
    }

    fn table(&self) -> DataTable {
        let row = |point: &CurvePoint| {
            vec![number(point.x, self.x.decimals), number(point.y, self.y.decimals)]
        };
        DataTable {
            caption: self.title.clone(),
            heads: vec![self.x.head(), self.y.head()],
            rows: self.points.iter().map(row).collect(),
        }
    }

    /// Greatest figure along an axis, marks included.
    fn greatest(&self, of: impl Fn(&CurvePoint) -> f64) -> f64 {
        let places = self.points.iter().chain(self.marks.iter().map(|mark| &mark.at));
        places.map(of).filter(|value| value.is_finite()).fold(0.0, f64::max)
    }

    fn share_of(&self, index: usize) -> f64 {
        let first = self.points.first().map_or(0.0, |point| point.x);
        let last = self.points.last().map_or(1.0, |point| point.x);
        let x = self.points.get(index).map_or(first, |point| point.x);
        Scale::new((first, last), (0.0, 1.0)).px(x)
    }
}

fn height_px(width_px: f64, font_px: f64) -> f64 {
    (width_px * 0.5).clamp(160.0, 300.0) + font_px * 5.0
}

fn draw(canvas: &Canvas, chart: &CurveChart, chosen: Option<usize>) -> Ends {
    let palette = canvas.palette;
    let font = canvas.font_px;
    let soft = (palette.ink_soft, false);
    let y_ticks = ticks_from_zero(chart.greatest(|point| point.y), 5);
    let x_ticks = ticks_from_zero(
        chart.greatest(|point| point.x),
        if canvas.width_px < 480.0 { 4 } else { 8 },
    );
    let step = |ticks: &[f64]| ticks.get(1).copied().unwrap_or(1.0);
    let label = |value: f64, ticks: &[f64]| number(value, decimals_for_step(step(ticks)));
    let widest = y_ticks
        .iter()
        .map(|tick| canvas.width_of(&label(*tick, &y_ticks), false))
        .fold(0.0, f64::max);
    let (left, right) = ((widest + 8.0).max(14.0), canvas.width_px - 14.0);
    let (top, bottom) = (font * 2.0, canvas.height_px - font * 3.2);
    let x = Scale::new((0.0, x_ticks.last().copied().unwrap_or(1.0)), (left, right));
    let y = Scale::new((0.0, y_ticks.last().copied().unwrap_or(1.0)), (bottom, top));
    canvas.fill((left, top, right, bottom), palette.sheet, 1.0);
    for tick in &y_ticks {
        let place = y.px(*tick);
        canvas.row((left, right), place, Stroke::whole(palette.line, 1.0));
        canvas.text(&label(*tick, &y_ticks), (left - 6.0, place), Anchor::Right, soft, None);
    }
    let names: Vec<String> = x_ticks.iter().map(|tick| label(*tick, &x_ticks)).collect();
    let centres: Vec<f64> = x_ticks.iter().map(|tick| x.px(*tick)).collect();
    let widths: Vec<f64> = names.iter().map(|name| canvas.width_of(name, false)).collect();
    let starts = fit_labels(&centres, &widths, (0.0, canvas.width_px), 6.0);
    for ((name, centre), start) in names.iter().zip(&centres).zip(starts) {
        canvas.column(*centre, (bottom, bottom + 4.0), Stroke::whole(palette.edge, 1.0));
        if let Some(start) = start {
            canvas.text(name, (start, bottom + font), Anchor::Left, soft, None);
        }
    }
    canvas.row((left, right), bottom, Stroke::whole(palette.edge, 1.0));
    let y_head = canvas.fitted(&chart.y.head(), canvas.width_px, true);
    canvas.text(&y_head, (0.0, font * 0.8), Anchor::Left, (palette.ink, true), None);
    let x_head = canvas.fitted(&chart.x.head(), right - left, true);
    canvas.text(&x_head, (right, bottom + font * 2.4), Anchor::Right, (palette.ink, true), None);

    let places: Vec<(f64, f64)> =
        chart.points.iter().map(|point| (x.px(point.x), y.px(point.y))).collect();
    canvas.line(&places, Stroke::whole(palette.ink, 2.2));
    if places.len() <= 24 {
        for place in &places {
            canvas.disc(*place, 3.2, palette.ink);
        }
    }
    for mark in &chart.marks {
        let (at_x, at_y) = (x.px(mark.at.x), y.px(mark.at.y));
        let size = 6.0;
        let diamond =
            [(at_x, at_y - size), (at_x + size, at_y), (at_x, at_y + size), (at_x - size, at_y)];
        canvas.shape(&diamond, palette.glow, 1.0);
        let mut outline = diamond.to_vec();
        outline.extend(diamond.first());
        canvas.line(&outline, Stroke::whole(palette.ink, 1.6));
        let (width, height) = (canvas.width_of(&mark.label, true), font * 1.2);
        let (aside, gap) = (size + 4.0, size + 3.0);
        let centred = (at_x - width / 2.0).min(right - width).max(left);
        let best = [
            (at_x + aside, at_y - height / 2.0),
            (at_x - aside - width, at_y - height / 2.0),
            (centred, at_y - gap - height),
            (centred, at_y + gap),
        ]
        .into_iter()
        .map(|(start, y)| (start, y, start + width, y + height))
        .filter(|label| label.0 >= left && label.2 <= right && label.1 >= 0.0 && label.3 <= bottom)
        .map(|label| (clearance_px(&places, label, 20.0), label))
        .reduce(|best, next| if next.0 > best.0 + 1.0 { next } else { best });
        if let Some((_, (start, y, _, end))) = best {
            let ink = (palette.ink, true);
            let at = (start, f64::midpoint(y, end));
            canvas.text(&mark.label, at, Anchor::Left, ink, Some(palette.sheet));
        }
    }
    if let Some((at_x, at_y)) = chosen.and_then(|index| places.get(index)) {
        canvas.column(*at_x, (top, bottom), Stroke::whole(palette.ink, 1.0));
        canvas.row((left, right), *at_y, Stroke::broken(palette.ink, 1.0, &[3.0, 3.0]));
        canvas.disc((*at_x, *at_y), 6.0, palette.sheet);
        canvas.disc((*at_x, *at_y), 4.5, palette.ink);
    }
    Ends {
        first_px: places.first().map_or(left, |place| place.0),
        last_px: places.last().map_or(right, |place| place.0),
    }
}

/// A curve: picture, slider and table. Nothing while there is no data.
#[must_use]
pub fn curve_chart(data: Signal<Option<CurveChart>>) -> AnyView {
    let chosen = RwSignal::new(None::<usize>);
    let count =
        Signal::derive(move || data.with(|chart| chart.as_ref().map_or(0, |c| c.points.len())));
    let reading = Reading {
        name: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(|chart| chart.x.name.clone()).unwrap_or_default())
        }),
        chosen,
        first: Signal::derive(|| 0),
        count,
        page: 5,
        words: Arc::new(move |index| {
            data.with(|chart| chart.as_ref().map(|chart| chart.words(index)).unwrap_or_default())
        }),
    };
    Picture {
        class: "chart-curve",
        summary: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(|c| c.summary.clone()).unwrap_or_default())
        }),
        height_px: Box::new(height_px),
        draw: Box::new(move |canvas| {
            let at = chosen.get();
            data.with(|chart| chart.as_ref().map(|c| draw(canvas, c, at)).unwrap_or_default())
        }),
        reading: Some((
            reading,
            Box::new(move |share| {
                data.with_untracked(|chart| {
                    let chart = chart.as_ref()?;
                    nearest((0..chart.points.len()).map(|index| chart.share_of(index)), share)
                })
                .unwrap_or(0)
            }),
        )),
        legend: Box::new(|| legend(Vec::new())),
        table: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(CurveChart::table).unwrap_or_default())
        }),
    }
    .view()
}
