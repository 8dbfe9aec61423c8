//! Where the energy goes: a river that widens with every source and narrows with every loss and
//! every use, one row for each.

use super::canvas::{Anchor, Canvas, Frame, Stroke};
use super::picture::{Ends, Picture, legend, legend_item};
use super::river::{FlowKind, river};
use crate::i18n::Arg;
use crate::units::WattHours;
use crate::view::lang::{key, percent, t, t_args, watt_hours};
use crate::view::widgets::DataTable;
use leptos::prelude::*;

/// Flow of energy over a day or a stay.
#[derive(Clone, Debug, PartialEq)]
pub struct FlowChart {
    /// What it is the flow of, such as "An average day of the stay"; title of the table.
    pub title: String,
    /// The parts in the order they are met: sources first, then what is lost, then what is used,
    /// last what stays in the battery. Energies are positive whatever their direction; a part of
    /// nothing is left out.
    pub parts: Vec<FlowPart>,
}

/// One part of the flow.
#[derive(Clone, Debug, PartialEq)]
pub struct FlowPart {
    /// What it is.
    pub label: String,
    /// How much, 0 or more.
    pub energy: WattHours,
    /// What becomes of it.
    pub kind: FlowKind,
}

/// Height of a bar [px].
const BAR_PX: f64 = 14.0;
/// Room at the sides [px].
const SIDE_PX: f64 = 2.0;

impl FlowKind {
    const ALL: [Self; 5] = [Self::Source, Self::Unused, Self::Loss, Self::Load, Self::Kept];

    fn word(self) -> String {
        t(match self {
            Self::Source => key!("chart-flow-source"),
            Self::Unused => key!("chart-flow-unused"),
            Self::Loss => key!("chart-flow-loss"),
            Self::Load => key!("chart-flow-load"),
            Self::Kept => key!("chart-flow-kept"),
        })
    }

    /// Comes in or goes out.
    fn sign(self) -> &'static str {
        match self {
            Self::Source => "+",
            Self::Kept => "→",
            _ => "−",
        }
    }

    fn legend(self) -> AnyView {
        let (class, path) = match self {
            Self::Source => ("sign-glow", "M1 3H23V13H1z"),
            Self::Unused => ("sign-broken", "M1 3H23V13H1z"),
            Self::Loss => ("sign-hatched", "M1 3H23V13H1zM2 13L8 3M8 13L14 3M14 13L20 3"),
            Self::Load => ("sign-deep", "M1 3H23V13H1z"),
            Self::Kept => ("sign-faint", "M1 3H23V13H1z"),
        };
        legend_item(class, path.to_owned(), self.word())
    }
}

impl FlowChart {
    /// Parts that are something.
    fn shown(&self) -> impl Iterator<Item = &FlowPart> {
        self.parts.iter().filter(|part| part.energy.0.is_finite() && part.energy.0 > 0.05)
    }

    fn supply(&self) -> f64 {
        self.shown().filter(|part| part.kind == FlowKind::Source).map(|part| part.energy.0).sum()
    }

    fn sum_of(&self, kind: FlowKind) -> String {
        let sum: f64 =
            self.shown().filter(|part| part.kind == kind).map(|part| part.energy.0).sum();
        watt_hours(WattHours(sum))
    }

    fn summary(&self) -> String {
        let texts = [
            self.title.clone(),
            watt_hours(WattHours(self.supply())),
            self.sum_of(FlowKind::Unused),
            self.sum_of(FlowKind::Loss),
            self.sum_of(FlowKind::Load),
        ];
        let names = ["title", "supply", "unused", "loss", "load"];
        let args: Vec<(&str, Arg<'_>)> =
            names.into_iter().zip(texts.iter().map(|text| Arg::Text(text))).collect();
        t_args("chart-flow-summary", &args)
    }

    fn table(&self) -> DataTable {
        let supply = self.supply();
        let rows = self
            .shown()
            .map(|part| {
                let share =
                    if supply > 0.0 { percent(part.energy.0 / supply) } else { "–".into() };
                vec![part.label.clone(), part.kind.word(), watt_hours(part.energy), share]
            })
            .collect();
        DataTable {
            caption: self.title.clone(),
            heads: vec![
                t("chart-head-part"),
                t("chart-head-kind"),
                t("chart-head-energy"),
                t("chart-head-share"),
            ],
            rows,
        }
    }

    fn legend(&self) -> AnyView {
        let kinds = FlowKind::ALL
            .into_iter()
            .filter(|kind| self.shown().any(|part| part.kind == *kind))
            .map(FlowKind::legend);
        legend(kinds.collect())
    }
}

fn row_px(font_px: f64) -> f64 {
    font_px * 1.75 + BAR_PX
}

fn height_px(chart: &FlowChart, font_px: f64) -> f64 {
    chart.shown().count().max(1) as f64 * row_px(font_px) + 4.0
}

fn draw(canvas: &Canvas, chart: &FlowChart) -> Ends {
    let parts: Vec<&FlowPart> = chart.shown().collect();
    let amounts: Vec<(FlowKind, f64)> =
        parts.iter().map(|part| (part.kind, part.energy.0)).collect();
    let rows = river(&amounts);
    let (left, right) = (SIDE_PX, canvas.width_px - SIDE_PX);
    let place = |share: f64| left + share * (right - left);
    let row_px = row_px(canvas.font_px);
    let palette = canvas.palette;
    let bar_top = |index: usize| index as f64 * row_px + canvas.font_px * 1.75;
    // The water first, then what joins and leaves, then the words over both.
    for (index, row) in rows.iter().enumerate() {
        let (top, bottom) = (bar_top(index), bar_top(index) + BAR_PX);
        let through = row.after.min(row.before);
        canvas.fill((left, top, place(through), bottom), palette.glow_wash, 1.0);
        if index + 1 < rows.len() {
            let bank = place(row.after);
            let fall = bar_top(index + 1);
            canvas.fill((left, bottom, bank, fall), palette.glow_wash, 1.0);
            let stroke = Stroke::whole(palette.glow_ink, 1.0);
            canvas.column(bank, (bottom, fall), stroke);
        }
        canvas.column(
            left,
            (top, bar_top(index + 1).min(canvas.height_px)),
            Stroke::whole(palette.glow_ink, 1.0),
        );
    }
    for (index, (part, row)) in parts.iter().zip(&rows).enumerate() {
        let top = bar_top(index);
        piece(canvas, part.kind, (place(row.piece.0), top, place(row.piece.1), top + BAR_PX));
        let y = top - canvas.font_px * 0.85;
        let value = format!("{}{}", part.kind.sign(), watt_hours(part.energy));
        let room = right - left - canvas.width_of(&value, true) - 24.0;
        let label = canvas.fitted(&part.label, room, false);
        let ink = palette.ink;
        // A rim in the colour of the ground keeps words legible where a bank runs through them.
        let bank =
            index.checked_sub(1).and_then(|above| rows.get(above)).map_or(0.0, |row| row.after);
        let ground = |at: f64| if at < place(bank) { palette.glow_wash } else { palette.paper };
        let middle = left + 6.0 + canvas.width_of(&label, false) / 2.0;
        let at = (left + 6.0, y);
        canvas.text(&label, at, Anchor::Left, (ink, false), Some(ground(middle)));
        let middle = right - 6.0 - canvas.width_of(&value, true) / 2.0;
        let at = (right - 6.0, y);
        canvas.text(&value, at, Anchor::Right, (ink, true), Some(ground(middle)));
    }
    Ends::default()
}

/// What joins or leaves in a row: told apart by its pattern, not by colour alone.
fn piece(canvas: &Canvas, kind: FlowKind, (left, top, right, bottom): Frame) {
    // What is small must still be seen.
    let frame = (left.min(right - 1.5), top, right, bottom);
    let palette = canvas.palette;
    let corners = [(left, top), (right, top), (right, bottom), (left, bottom)];
    match kind {
        FlowKind::Source => canvas.fill(frame, palette.glow, 1.0),
        FlowKind::Load => canvas.fill(frame, palette.night, 1.0),
        FlowKind::Unused => {
            canvas.fill(frame, palette.sheet, 1.0);
            canvas.outline(frame, Stroke::broken(palette.edge, 1.4, &[4.0, 3.0]));
        }
        FlowKind::Loss => {
            canvas.fill(frame, palette.sheet, 1.0);
            canvas.hatch(&corners, 5.0, true, Stroke::whole(palette.edge, 1.2));
            canvas.outline(frame, Stroke::whole(palette.edge, 1.0));
        }
        FlowKind::Kept => {
            canvas.fill(frame, palette.glow_wash, 1.0);
            canvas.outline(frame, Stroke::whole(palette.glow_ink, 1.6));
        }
    }
}

/// The flow of energy: picture, legend and table. Nothing while there is no data.
#[must_use]
pub fn flow_chart(data: Signal<Option<FlowChart>>) -> AnyView {
    let legend = move || data.with(|chart| chart.as_ref().map(FlowChart::legend));
    Picture {
        class: "chart-flow",
        summary: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(FlowChart::summary).unwrap_or_default())
        }),
        height_px: Box::new(move |_, font| {
            data.with(|chart| chart.as_ref().map_or(1.0, |chart| height_px(chart, font)))
        }),
        draw: Box::new(move |canvas| {
            data.with(|chart| chart.as_ref().map(|chart| draw(canvas, chart)).unwrap_or_default())
        }),
        reading: None,
        legend: Box::new(move || view! { {legend} }.into_any()),
        table: Signal::derive(move || {
            data.with(|chart| chart.as_ref().map(FlowChart::table).unwrap_or_default())
        }),
    }
    .view()
}
