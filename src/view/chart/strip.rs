//! Nights on battery through the year: a lantern for each month, as tall as the nights it lasts.

use super::canvas::{Anchor, Canvas, Stroke};
use super::picture::{Ends, Picture, Reading, legend, legend_item};
use super::scale::{Scale, ticks_from_zero};
use crate::i18n::Arg;
use crate::view::lang::{month_name, number, t, t_args};
use crate::view::widgets::DataTable;
use leptos::prelude::*;
use std::sync::Arc;

/// Nights by month.
#[derive(Clone, Debug, PartialEq)]
pub struct MonthsChart {
    /// The months, in order.
    pub months: Vec<MonthNights>,
    /// Nights that were looked ahead: a figure this high means "or more".
    pub looked_ahead: u16,
    /// Nights wanted.
    pub wanted: u16,
    /// The month of the trip, 1..12.
    pub this_month: Option<u8>,
}

/// Nights in one month.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MonthNights {
    /// 1..12.
    pub month: u8,
    /// Nights with nine chances in ten.
    pub sure_nights: u16,
    /// Nights at even odds.
    pub even_nights: u16,
    /// Nights in average weather.
    pub average_nights: u16,
}

impl MonthsChart {
    fn nights(&self, nights: u16) -> String {
        let plus = if nights >= self.looked_ahead { "+" } else { "" };
        format!("{}{plus}", number(f64::from(nights.min(self.looked_ahead)), 0))
    }

    fn words(&self, index: usize) -> String {
        let Some(month) = self.months.get(index) else { return String::new() };
        let texts = [
            month_name(month.month),
            self.nights(month.sure_nights),
            self.nights(month.even_nights),
            self.nights(month.average_nights),
        ];
        let names = ["month", "sure", "even", "average"];
        let args: Vec<(&str, Arg<'_>)> =
            names.into_iter().zip(texts.iter().map(|text| Arg::Text(text))).collect();
        t_args("chart-months-read", &args)
    }

    fn summary(&self) -> String {
        let best = self.months.iter().max_by_key(|month| (month.sure_nights, month.even_nights));
        let worst = self.months.iter().min_by_key(|month| (month.sure_nights, month.even_nights));
        let (Some(best), Some(worst)) = (best, worst) else { return t("chart-months-none") };
        let texts = [
            month_name(best.month),
            self.nights(best.sure_nights),
            month_name(worst.month),
            self.nights(worst.sure_nights),
        ];
        let names = ["best", "most", "worst", "fewest"];
        let args: Vec<(&str, Arg<'_>)> =
            names.into_iter().zip(texts.iter().map(|text| Arg::Text(text))).collect();
        t_args("chart-months-summary", &args)
    }

    fn table(&self) -> DataTable {
        let rows = self.months.iter().map(|month| {
            vec![
                month_name(month.month),
                self.nights(month.sure_nights),
                self.nights(month.even_nights),
                self.nights(month.average_nights),
            ]
        });
        DataTable {
            caption: t("chart-months-table"),
            heads: vec![
                t("chart-head-month"),
                t("chart-months-sure"),
                t("chart-months-even"),
                t("chart-months-average"),
            ],
            rows: rows.collect(),
        }
    }
}

fn key() -> AnyView {
    legend(vec![
        legend_item("sign-glow", "M5 3H19V14H5z".to_owned(), t("chart-months-sure")),
        legend_item("sign-faint", "M5 3H19V14H5z".to_owned(), t("chart-months-even")),
        legend_item("sign-line", "M2 8H22".to_owned(), t("chart-months-average")),
        legend_item("sign-low", "M2 8H6M9 8H13M16 8H20".to_owned(), t("chart-months-wanted")),
    ])
}

fn height_px(width_px: f64, font_px: f64) -> f64 {
    (width_px * 0.42).clamp(150.0, 260.0) + font_px * 4.2
}

fn draw(canvas: &Canvas, chart: &MonthsChart, chosen: Option<usize>) -> Ends {
    let palette = canvas.palette;
    let font = canvas.font_px;
    let top_nights = chart
        .months
        .iter()
        .map(|month| month.even_nights.max(month.average_nights).max(month.sure_nights))
        .max()
        .unwrap_or(1)
        .max(chart.wanted)
        .min(chart.looked_ahead)
        .max(2);
    let mut ticks = ticks_from_zero(f64::from(top_nights), 4);
    ticks.dedup_by(|a, b| a.fract() != 0.0 || b == a);
    let end = ticks.last().copied().unwrap_or(1.0);
    let widest =
        ticks.iter().map(|tick| canvas.width_of(&number(*tick, 0), false)).fold(0.0, f64::max);
    let (left, right) = (widest + 8.0, canvas.width_px - 2.0);
    let (top, base) = (font * 1.0, canvas.height_px - font * 3.4);
    let y = Scale::new((0.0, end), (base, top));
    for tick in ticks.iter().filter(|tick| tick.fract() == 0.0) {
        canvas.row((left, right), y.px(*tick), Stroke::whole(palette.line, 1.0));
        let ink = (palette.ink_soft, false);
        canvas.text(&number(*tick, 0), (left - 6.0, y.px(*tick)), Anchor::Right, ink, None);
    }
    let count = chart.months.len().max(1) as f64;
    let step = (right - left) / count;
    let narrow =
        chart.months.iter().any(|m| canvas.width_of(&month_name(m.month), true) > step - 2.0);
    for (index, month) in chart.months.iter().enumerate() {
        let centre = left + (index as f64 + 0.5) * step;
        let picked = chosen == Some(index);
        let mine = chart.this_month == Some(month.month);
        if picked {
            canvas.fill((centre - step / 2.0, 1.0, centre + step / 2.0, base), palette.sheet, 1.0);
            let frame = (centre - step / 2.0, 1.0, centre + step / 2.0, canvas.height_px - 2.0);
            canvas.outline(frame, Stroke::whole(palette.ink, 1.0));
        }
        lantern(canvas, chart, month, (centre, (step * 0.62).min(30.0)), &y);
        let name = month_name(month.month);
        let name = if narrow { name.chars().take(1).collect() } else { name };
        let ink = if mine { palette.ink } else { palette.ink_soft };
        let at = (centre, base + font);
        canvas.text(&name, at, Anchor::Middle, (ink, mine), None);
        let sure = chart.nights(month.sure_nights);
        let at = (centre, base + font * 2.5);
        canvas.text(&sure, at, Anchor::Middle, (palette.ink, true), None);
        if mine {
            let under = base + font * 1.65;
            let half = canvas.width_of(&name, true) / 2.0 + 2.0;
            canvas.row((centre - half, centre + half), under, Stroke::whole(palette.glow_ink, 2.0));
        }
    }
    canvas.row((left, right), base, Stroke::whole(palette.ink, 1.0));
    let wanted = y.px(f64::from(chart.wanted.min(chart.looked_ahead)));
    canvas.row((left, right), wanted, Stroke::broken(palette.fault, 2.0, &[5.0, 4.0]));
    Ends { first_px: left + step / 2.0, last_px: right - step / 2.0 }
}

/// A lantern: glass filled up to the sure nights, empty glass up to even odds, a bar across at
/// average weather, its cap and ring on top.
fn lantern(
    canvas: &Canvas,
    chart: &MonthsChart,
    month: &MonthNights,
    (x, width): (f64, f64),
    y: &Scale,
) {
    let palette = canvas.palette;
    let nights = |nights: u16| y.px(f64::from(nights.min(chart.looked_ahead)));
    let base = y.px(0.0);
    let half = width / 2.0;
    let sure = nights(month.sure_nights);
    let even = nights(month.even_nights.max(month.sure_nights));
    let dark = month.even_nights == 0 && month.sure_nights == 0;
    let glass = even.min(base - 10.0);
    let frame = (x - half, glass, x + half, base);
    if even < base {
        canvas.fill((x - half, even, x + half, base), palette.glow, 0.3);
    }
    if sure < base {
        canvas.fill((x - half, sure, x + half, base), palette.glow, 1.0);
    }
    let stroke = if dark {
        Stroke::broken(palette.ink_soft, 1.4, &[2.5, 2.5])
    } else {
        Stroke::whole(palette.ink, 1.4)
    };
    canvas.outline(frame, stroke);
    // Cap and ring.
    let cap = [
        (x - half - 1.0, glass),
        (x - half * 0.6, glass - 4.0),
        (x + half * 0.6, glass - 4.0),
        (x + half + 1.0, glass),
    ];
    if dark {
        canvas.line(&cap, stroke);
    } else {
        canvas.shape(&cap, palette.ink, 1.0);
    }
    let average = nights(month.average_nights);
    canvas.row(
        (x - half - 2.0, x + half + 2.0),
        average.min(base - 1.0),
        Stroke::whole(palette.ink, 2.4),
    );
}

/// Nights by month: picture, slider, legend and table. Nothing while there is no data.
#[must_use]
pub fn months_chart(data: Signal<Option<MonthsChart>>) -> AnyView {
    let chosen = RwSignal::new(None::<usize>);
    let count =
        Signal::derive(move || data.with(|chart| chart.as_ref().map_or(0, |c| c.months.len())));
    let first = Signal::derive(move || {
        data.with(|chart| {
            let chart = chart.as_ref()?;
            chart.months.iter().position(|month| Some(month.month) == chart.this_month)
        })
        .unwrap_or(0)
    });
    let reading = Reading {
        name: Signal::derive(|| t("chart-months-slider")),
        chosen,
        first,
        count,
        page: 3,
        words: Arc::new(move |index| {
            data.with(|chart| chart.as_ref().map(|chart| chart.words(index)).unwrap_or_default())
        }),
    };
    Picture {
        class: "chart-months",
        summary: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(MonthsChart::summary).unwrap_or_default())
        }),
        height_px: Box::new(height_px),
        draw: Box::new(move |canvas| {
            let at = chosen.get();
            data.with(|chart| chart.as_ref().map(|c| draw(canvas, c, at)).unwrap_or_default())
        }),
        reading: Some((
            reading,
            Box::new(move |share| {
                (share * count.get_untracked().saturating_sub(1) as f64).round() as usize
            }),
        )),
        legend: Box::new(key),
        table: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(MonthsChart::table).unwrap_or_default())
        }),
    }
    .view()
}
