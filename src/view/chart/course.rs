//! State of charge over the stay: the likely band, the line through it, the limit, the nights and
//! what happens.

use super::course_data::{ChartEvent, MiddleLine, SocChart, SocHour, moment};
use super::course_draw::{self, height_px};
use super::days::{Span, days_on_axis};
use super::glyph::EventKind;
use super::picture::{Picture, Reading, legend, legend_item};
use crate::i18n::Arg;
use crate::view::lang::{self, key, percent, short_date, t, t_args};
use crate::view::widgets::DataTable;
use leptos::prelude::*;
use std::sync::Arc;

impl SocChart {
    /// State of charge on the line at the end of `hours` hours.
    fn soc_after(&self, hours: usize) -> Option<f64> {
        match hours.checked_sub(1) {
            None => Some(self.start_soc_frac),
            Some(index) => self.hours.get(index).map(|hour| hour.soc_frac),
        }
    }

    fn day_name(&self, days: usize) -> String {
        short_date(self.date(days))
    }

    fn moment(&self, hour: f64) -> String {
        moment(self.first_day, self.start_hour_of_day, hour)
    }

    /// The value after `hours` hours in words.
    fn words(&self, hours: usize) -> String {
        let Some(soc) = self.soc_after(hours) else { return String::new() };
        let soc = percent(soc);
        let line = match self.line {
            MiddleLine::Average => key!("chart-read-average"),
            MiddleLine::Median => key!("chart-read-median"),
        };
        let mut parts = vec![self.moment(hours as f64), t_args(line, &[("soc", Arg::Text(&soc))])];
        if let Some(hour) = hours.checked_sub(1).and_then(|index| self.hours.get(index)) {
            if let Some(band) = hour.band {
                let (from, to) = (percent(band.p10_frac), percent(band.p90_frac));
                let args = [("from", Arg::Text(from.as_str())), ("to", Arg::Text(to.as_str()))];
                parts.push(t_args("chart-read-band", &args));
            }
            let low = percent(hour.low_frac);
            parts.push(t_args("chart-read-low", &[("soc", Arg::Text(&low))]));
        }
        let at = hours as f64;
        for reading in self.readings.iter().filter(|reading| (reading.hour - at).abs() <= 0.5) {
            let soc = percent(reading.soc_frac);
            parts.push(t_args("chart-read-reading", &[("soc", Arg::Text(&soc))]));
        }
        let mut said = Vec::new();
        for event in self.events.iter().filter(|event| event.span.holds(at)) {
            let word = event.word();
            if !said.contains(&word) {
                said.push(word);
            }
        }
        parts.append(&mut said);
        // The dot stays with what it follows.
        parts.join("\u{a0}· ")
    }

    /// The whole chart in a sentence or two.
    fn summary(&self) -> String {
        let Some(end) = self.hours.last() else { return t("chart-course-none") };
        let lowest = self
            .hours
            .iter()
            .enumerate()
            .min_by(|(_, a), (_, b)| a.soc_frac.total_cmp(&b.soc_frac));
        let (lowest, when) = lowest.map_or((0.0, 0), |(index, hour)| (hour.soc_frac, index + 1));
        let texts = [
            self.moment(0.0),
            self.moment(self.hours.len() as f64),
            percent(self.start_soc_frac),
            percent(end.soc_frac),
            percent(lowest),
            self.moment(when as f64),
        ];
        let names = ["from", "to", "start", "end", "lowest", "when"];
        let args: Vec<(&str, Arg<'_>)> =
            names.into_iter().zip(texts.iter().map(|text| Arg::Text(text))).collect();
        let mut said = t_args("chart-course-summary", &args);
        let low = self.hours.iter().position(|hour| hour.soc_frac < hour.low_frac);
        if let Some(index) = low {
            let when = self.moment(index as f64 + 1.0);
            said.push(' ');
            said.push_str(&t_args("chart-course-below", &[("when", Arg::Text(&when))]));
        }
        said
    }

    /// A row for each day.
    fn table(&self) -> DataTable {
        let banded = self.hours.iter().any(|hour| hour.band.is_some());
        let mut heads = vec![
            t("chart-head-day"),
            t("chart-head-lowest"),
            t("chart-head-highest"),
            t("chart-head-end"),
        ];
        if banded {
            heads.push(t("chart-head-unlucky"));
        }
        heads.push(t("chart-head-limit"));
        heads.push(t("chart-head-events"));
        let rows = days_on_axis(self.start_hour_of_day, self.hours.len())
            .into_iter()
            .map(|day| {
                let (from, to) = (day.span.from_hour.ceil(), day.span.to_hour.ceil());
                let hours = self.hours.get(from as usize..to as usize).unwrap_or_default();
                let least = |of: &dyn Fn(&SocHour) -> f64| {
                    percent(hours.iter().map(of).fold(f64::INFINITY, f64::min))
                };
                let most = hours.iter().map(|hour| hour.soc_frac).fold(f64::NEG_INFINITY, f64::max);
                let end = hours.last().map_or(f64::NAN, |hour| hour.soc_frac);
                let limit =
                    hours.iter().map(|hour| hour.low_frac).fold(f64::NEG_INFINITY, f64::max);
                let mut row = vec![
                    self.day_name(day.day),
                    least(&|hour| hour.soc_frac),
                    percent(most),
                    percent(end),
                ];
                if banded {
                    row.push(least(&|hour| hour.band.map_or(hour.soc_frac, |band| band.p10_frac)));
                }
                row.push(percent(limit));
                row.push(self.events_of(day.span));
                row
            })
            .collect();
        DataTable { caption: t("chart-course-table"), heads, rows }
    }

    fn events_of(&self, span: Span) -> String {
        let mut said: Vec<String> = Vec::new();
        for event in &self.events {
            let (from, to) = (event.span.from_hour, event.span.to_hour);
            let word = event.word();
            if from < span.to_hour && to > span.from_hour && !said.contains(&word) {
                said.push(word);
            }
        }
        if said.is_empty() { "–".to_owned() } else { said.join(", ") }
    }

    /// The limit, and where the cold puts it at most, if that is worth telling.
    fn cold_limit(&self) -> Option<(String, String)> {
        let limit = self.limit_frac;
        let highest = self.hours.iter().map(|hour| hour.low_frac).fold(limit, f64::max);
        (limit > 0.0 && highest > limit + 0.02).then(|| (percent(limit), percent(highest)))
    }

    fn shown(&self) -> Shown {
        Shown {
            line: self.line,
            cold_limit: self.cold_limit(),
            band: self.hours.iter().any(|hour| hour.band.is_some()),
            nights: !self.nights.is_empty(),
            readings: !self.readings.is_empty(),
            kinds: EventKind::ALL
                .into_iter()
                .filter(|kind| self.events.iter().any(|event| event.kind == *kind))
                .collect(),
        }
    }
}

/// What the legend has to explain.
#[derive(Clone, PartialEq)]
struct Shown {
    line: MiddleLine,
    cold_limit: Option<(String, String)>,
    band: bool,
    nights: bool,
    readings: bool,
    kinds: Vec<EventKind>,
}

impl Shown {
    fn legend(&self) -> AnyView {
        let line = match self.line {
            MiddleLine::Average => t("chart-key-average"),
            MiddleLine::Median => t("chart-key-median"),
        };
        let mut items = vec![legend_item("sign-line", "M1 8H23".to_owned(), line)];
        if self.band {
            let path = "M1 3H23V13H1z".to_owned();
            items.push(legend_item("sign-band", path, t("chart-key-band")));
        }
        let path = "M1 6H23M3 15L8 9M10 15L15 9M17 15L22 9".to_owned();
        let low = self.cold_limit.as_ref().map_or_else(
            || t("chart-key-low"),
            |(limit, at)| {
                t_args("chart-key-low-cold", &[("limit", Arg::Text(limit)), ("at", Arg::Text(at))])
            },
        );
        items.push(legend_item("sign-low", path, low));
        if self.nights {
            items.push(legend_item(
                "sign-night",
                "M1 1H23V15H1zM1 3H23".to_owned(),
                t("chart-key-night"),
            ));
        }
        if self.readings {
            let path = "M12 1V15M9 1H15M9 15H15M15 8A3 3 0 1 1 9 8A3 3 0 1 1 15 8".to_owned();
            items.push(legend_item("sign-event", path, t("chart-key-reading")));
        }
        for kind in &self.kinds {
            items.push(legend_item("sign-event", kind.svg_path(), word_of(*kind)));
        }
        legend(items)
    }
}

impl ChartEvent {
    fn word(&self) -> String {
        let word = word_of(self.kind);
        if self.label.is_empty() { word } else { lang::pair(&word, &self.label) }
    }
}

fn word_of(kind: EventKind) -> String {
    t(match kind {
        EventKind::Driving => key!("chart-driving"),
        EventKind::HookUp => key!("chart-hook-up"),
        EventKind::ClearDay => key!("chart-clear"),
        EventKind::MixedDay => key!("chart-mixed"),
        EventKind::DullDay => key!("chart-dull"),
        EventKind::ColdLock => key!("chart-cold"),
        EventKind::CutOut => key!("chart-cut-out"),
    })
}

/// The course of the battery: picture, slider, legend and table. Nothing while there is no data.
#[must_use]
pub fn soc_chart(data: Signal<Option<SocChart>>) -> AnyView {
    let chosen = RwSignal::new(None::<usize>);
    let with = move |read: fn(&SocChart) -> String| {
        data.with(|chart| chart.as_ref().map(read).unwrap_or_default())
    };
    let count = Signal::derive(move || {
        data.with(|chart| chart.as_ref().map_or(0, |chart| chart.hours.len() + 1))
    });
    let first = Signal::derive(move || {
        let mark = data.with(|chart| chart.as_ref()?.marks.first().map(|mark| mark.hour));
        mark.map_or(0, |hour| hour.max(0.0).round() as usize)
    });
    let reading = Reading {
        name: Signal::derive(|| t("chart-course-slider")),
        chosen,
        first,
        count,
        page: 24,
        words: Arc::new(move |hours| {
            data.with(|chart| chart.as_ref().map(|chart| chart.words(hours)).unwrap_or_default())
        }),
    };
    let shown = Memo::new(move |_| data.with(|chart| chart.as_ref().map(SocChart::shown)));
    let legend = move || shown.with(|shown| shown.as_ref().map(Shown::legend));
    Picture {
        class: "chart-course",
        summary: Signal::derive(move || with(SocChart::summary)),
        height_px: Box::new(move |width, font| {
            data.with(|chart| chart.as_ref().map_or(1.0, |chart| height_px(chart, width, font)))
        }),
        draw: Box::new(move |canvas| {
            let at = chosen.get();
            data.with(|chart| {
                chart.as_ref().map(|chart| course_draw::draw(canvas, chart, at)).unwrap_or_default()
            })
        }),
        reading: Some((
            reading,
            Box::new(move |share| {
                (share * count.get_untracked().saturating_sub(1) as f64).round() as usize
            }),
        )),
        legend: Box::new(move || view! { {legend} }.into_any()),
        table: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(SocChart::table).unwrap_or_default())
        }),
    }
    .view()
}

/// Draws the course on a canvas that stands in the page, for a picture of it; `false` where the
/// browser offers no canvas.
#[must_use]
pub fn course_canvas(canvas: &web_sys::HtmlCanvasElement, chart: &SocChart) -> bool {
    let height = |width, font| height_px(chart, width, font);
    let Some(canvas) = super::canvas::Canvas::open(canvas, &height) else { return false };
    // Where values could be read on it is of no use in a picture.
    let _ = course_draw::draw(&canvas, chart, None);
    true
}
