//! Drawing on a canvas in CSS pixels, sharp at any pixel ratio.
//!
//! plotters-canvas knows whole pixels only and no pixel ratio. So the canvas is made as many device
//! pixels large as it covers on the screen, and plotters draws on a grid `GRID` times finer than
//! those, which the context scales down: curves are smooth and nothing is rounded to whole pixels
//! by accident. The backend's own calls are used, since a drawing area would cut that finer grid off
//! at the size of the canvas. Text goes to the context directly, since plotters measures it through an element
//! with a style attribute, which the page's content policy forbids.

use super::colour::{Rgb, parse_colour};
use super::glyph;
use super::scale::crisp_px;
use plotters::prelude::DrawingBackend;
use plotters::style::{RGBAColor, ShapeStyle};
use plotters_canvas::CanvasBackend;
use std::cell::RefCell;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

/// Steps of the drawing grid per device pixel.
const GRID: f64 = 16.0;
/// Pixel ratios beyond this gain nothing the eye sees and cost memory.
const MAX_DPR: f64 = 4.0;

/// The colours of the look in force.
#[derive(Clone, Copy, Debug)]
pub struct Palette {
    /// Ground of the page.
    pub paper: Rgb,
    /// Ground of a sheet.
    pub sheet: Rgb,
    /// Text and main line.
    pub ink: Rgb,
    /// Lesser text.
    pub ink_soft: Rgb,
    /// Grid.
    pub line: Rgb,
    /// Edges that must be seen.
    pub edge: Rgb,
    /// Lamplight.
    pub glow: Rgb,
    /// Lamplight as a line.
    pub glow_ink: Rgb,
    /// Lamplight as a ground.
    pub glow_wash: Rgb,
    /// Night, as a figure.
    pub night: Rgb,
    /// Night, as a ground.
    pub night_wash: Rgb,
    /// The limit.
    pub fault: Rgb,
}

/// A stroke.
#[derive(Clone, Copy, Debug)]
pub struct Stroke {
    /// Colour.
    pub colour: Rgb,
    /// Width [px].
    pub width_px: f64,
    /// Lengths of dashes and gaps [px]; empty for a whole line.
    pub dash_px: &'static [f64],
}

impl Stroke {
    /// A whole line.
    #[must_use]
    pub fn whole(colour: Rgb, width_px: f64) -> Self {
        Self { colour, width_px, dash_px: &[] }
    }

    /// A broken line.
    #[must_use]
    pub fn broken(colour: Rgb, width_px: f64, dash_px: &'static [f64]) -> Self {
        Self { colour, width_px, dash_px }
    }
}

/// Which point of a text is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Its left end.
    Left,
    /// Its middle.
    Middle,
    /// Its right end.
    Right,
}

/// A box: left, top, right, bottom [px].
pub type Frame = (f64, f64, f64, f64);

/// An open canvas.
pub struct Canvas {
    backend: RefCell<CanvasBackend>,
    context: CanvasRenderingContext2d,
    dpr: f64,
    family: String,
    /// Width [px].
    pub width_px: f64,
    /// Height [px].
    pub height_px: f64,
    /// Size of the text [px].
    pub font_px: f64,
    /// Colours.
    pub palette: Palette,
}

impl Canvas {
    /// Makes `canvas` as wide as the element around it and `height_px(width)` high, wiped clean.
    /// `None` while it is not shown, or where the browser offers no canvas.
    #[must_use]
    pub fn open(canvas: &HtmlCanvasElement, height_px: &dyn Fn(f64, f64) -> f64) -> Option<Self> {
        let window = web_sys::window()?;
        let style = window.get_computed_style(canvas).ok()??;
        let read = |name: &str| style.get_property_value(name).unwrap_or_default();
        let font_px = read("font-size").trim_end_matches("px").parse().unwrap_or(13.0);
        let dpr = window.device_pixel_ratio();
        let dpr = if dpr.is_finite() { dpr.clamp(1.0, MAX_DPR) } else { 1.0 };
        let room_px = canvas.parent_element()?.get_bounding_client_rect().width();
        if room_px < 40.0 {
            return None;
        }
        // All is read before anything is written: the browser then works the style out once.
        let family = read("font-family");
        let colour = |name: &str, otherwise: Rgb| parse_colour(&read(name)).unwrap_or(otherwise);
        let ink = colour("--ink", (27, 39, 64));
        let paper = colour("--paper", (245, 240, 230));
        let palette = Palette {
            paper,
            sheet: colour("--sheet", paper),
            ink,
            ink_soft: colour("--ink-soft", ink),
            line: colour("--line", ink),
            edge: colour("--edge", ink),
            glow: colour("--glow", ink),
            glow_ink: colour("--glow-ink", ink),
            glow_wash: colour("--glow-wash", paper),
            night: colour("--night", ink),
            night_wash: colour("--night-wash", paper),
            fault: colour("--fault", ink),
        };
        let device_width = (room_px * dpr).floor();
        let device_height = (height_px(room_px, font_px) * dpr).round().max(1.0);
        let (width_px, height_px) = (device_width / dpr, device_height / dpr);
        if canvas.width() != device_width as u32 || canvas.height() != device_height as u32 {
            canvas.set_width(device_width as u32);
            canvas.set_height(device_height as u32);
        }
        // Known property names with plain lengths cannot fail.
        let _ = canvas.style().set_property("width", &format!("{width_px}px"));
        let _ = canvas.style().set_property("height", &format!("{height_px}px"));
        let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
        context.set_transform(1.0, 0.0, 0.0, 1.0, 0.0, 0.0).ok()?;
        context.clear_rect(0.0, 0.0, device_width, device_height);
        context.set_transform(1.0 / GRID, 0.0, 0.0, 1.0 / GRID, 0.0, 0.0).ok()?;
        context.set_line_join("round");
        context.set_line_cap("butt");
        let backend = RefCell::new(CanvasBackend::with_canvas_object(canvas.clone())?);
        Some(Self { backend, context, dpr, family, width_px, height_px, font_px, palette })
    }

    fn grid(&self, (x, y): (f64, f64)) -> (i32, i32) {
        let unit = self.dpr * GRID;
        // `as` saturates; no number becomes 0.
        ((x * unit).round() as i32, (y * unit).round() as i32)
    }

    fn points(&self, points: &[(f64, f64)]) -> Vec<(i32, i32)> {
        points.iter().map(|point| self.grid(*point)).collect()
    }

    fn style(&self, (r, g, b): Rgb, alpha: f64, width_px: f64) -> ShapeStyle {
        let stroke_width = (width_px * self.dpr * GRID).round().max(1.0) as u32;
        ShapeStyle { color: RGBAColor(r, g, b, alpha), filled: true, stroke_width }
    }

    /// Place of a sharp hairline nearest to `place_px`.
    #[must_use]
    pub fn crisp(&self, place_px: f64) -> f64 {
        crisp_px(place_px, self.dpr)
    }

    /// A line through `points`.
    pub fn line(&self, points: &[(f64, f64)], stroke: Stroke) {
        if points.len() < 2 {
            return;
        }
        let dash = js_sys::Array::new();
        for length in stroke.dash_px {
            dash.push(&JsValue::from_f64(length * self.dpr * GRID));
        }
        let style = self.style(stroke.colour, 1.0, stroke.width_px);
        // The backend can only fail for circles of negative size; the dash is a list of numbers.
        let _ = self.context.set_line_dash(&dash);
        let _ = self.backend.borrow_mut().draw_path(self.points(points), &style);
        if !stroke.dash_px.is_empty() {
            let _ = self.context.set_line_dash(&js_sys::Array::new());
        }
    }

    /// A sharp line one device pixel or more wide along the row at `y_px`.
    pub fn row(&self, (from_px, to_px): (f64, f64), y_px: f64, stroke: Stroke) {
        let y_px = self.crisp(y_px);
        self.line(&[(from_px, y_px), (to_px, y_px)], stroke);
    }

    /// A sharp line one device pixel or more wide down the column at `x_px`.
    pub fn column(&self, x_px: f64, (from_px, to_px): (f64, f64), stroke: Stroke) {
        let x_px = self.crisp(x_px);
        self.line(&[(x_px, from_px), (x_px, to_px)], stroke);
    }

    /// A filled shape; `alpha` 0..1.
    pub fn shape(&self, points: &[(f64, f64)], colour: Rgb, alpha: f64) {
        let style = self.style(colour, alpha, 1.0);
        // See `line`.
        let _ = self.backend.borrow_mut().fill_polygon(self.points(points), &style);
    }

    /// A filled box with its edges on whole device pixels.
    pub fn fill(&self, (left, top, right, bottom): Frame, colour: Rgb, alpha: f64) {
        let snap = |place: f64| (place * self.dpr).round() / self.dpr;
        let (left, top, right, bottom) = (snap(left), snap(top), snap(right), snap(bottom));
        self.shape(&[(left, top), (right, top), (right, bottom), (left, bottom)], colour, alpha);
    }

    /// The outline of a box.
    pub fn outline(&self, (left, top, right, bottom): Frame, stroke: Stroke) {
        let (left, top) = (self.crisp(left), self.crisp(top));
        let (right, bottom) = (self.crisp(right), self.crisp(bottom));
        let corners = [(left, top), (right, top), (right, bottom), (left, bottom), (left, top)];
        self.line(&corners, stroke);
    }

    /// Slanted lines `gap_px` apart inside a shape; `rising` to the right or falling.
    pub fn hatch(&self, shape: &[(f64, f64)], gap_px: f64, rising: bool, stroke: Stroke) {
        let Some(first) = shape.first() else { return };
        let edges = shape.iter().fold((first.0, first.1, first.0, first.1), |edges, (x, y)| {
            (edges.0.min(*x), edges.1.min(*y), edges.2.max(*x), edges.3.max(*y))
        });
        let (left, top, right, bottom) = edges;
        if !(right > left && bottom > top && gap_px >= 1.0) {
            return;
        }
        self.context.save();
        self.context.begin_path();
        for point in self.points(shape) {
            self.context.line_to(f64::from(point.0), f64::from(point.1));
        }
        self.context.clip();
        let height = bottom - top;
        let mut x = left - height;
        // Start on a multiple of the gap so that neighbours continue each other.
        x = (x / gap_px).floor() * gap_px;
        while x < right {
            let ends = if rising {
                [(x, bottom), (x + height, top)]
            } else {
                [(x, top), (x + height, bottom)]
            };
            self.line(&ends, stroke);
            x += gap_px;
        }
        self.context.restore();
    }

    /// A disc.
    pub fn disc(&self, centre: (f64, f64), radius_px: f64, colour: Rgb) {
        let radius = (radius_px.max(0.0) * self.dpr * GRID).round() as u32;
        let style = self.style(colour, 1.0, 1.0);
        // See `line`.
        let _ = self.backend.borrow_mut().draw_circle(self.grid(centre), radius, &style, true);
    }

    /// The sign of an event, `size_px` large, centred.
    pub fn sign(&self, kind: glyph::EventKind, centre: (f64, f64), size_px: f64, colour: Rgb) {
        let unit = size_px / glyph::BOX;
        let (left, top) = (centre.0 - size_px / 2.0, centre.1 - size_px / 2.0);
        for stroke in kind.strokes() {
            let points: Vec<(f64, f64)> =
                stroke.iter().map(|(x, y)| (left + x * unit, top + y * unit)).collect();
            self.line(&points, Stroke::whole(colour, 1.4));
        }
    }

    fn set_font(&self, strong: bool) {
        let weight = if strong { 650 } else { 400 };
        let size = self.font_px * self.dpr;
        self.context.set_font(&format!("{weight} {size}px {}", self.family));
    }

    /// Width of a text [px].
    #[must_use]
    pub fn width_of(&self, text: &str, strong: bool) -> f64 {
        self.set_font(strong);
        self.context.measure_text(text).map_or(0.0, |size| size.width() / self.dpr)
    }

    /// A text whose middle stands at the height `y_px`. `halo`: a rim in this colour keeps it
    /// legible over lines.
    pub fn text(
        &self,
        text: &str,
        (x_px, y_px): (f64, f64),
        anchor: Anchor,
        (colour, strong): (Rgb, bool),
        halo: Option<Rgb>,
    ) {
        let context = &self.context;
        context.save();
        // A plain matrix of numbers cannot fail.
        let _ = context.set_transform(1.0, 0.0, 0.0, 1.0, 0.0, 0.0);
        self.set_font(strong);
        context.set_text_baseline("middle");
        // "left" and "right" mean the same in every writing direction.
        context.set_text_align(match anchor {
            Anchor::Left => "left",
            Anchor::Middle => "center",
            Anchor::Right => "right",
        });
        let (x, y) = ((x_px * self.dpr).round(), (y_px * self.dpr).round());
        if let Some(rim) = halo {
            context.set_stroke_style_str(&css(rim));
            context.set_line_width(4.0 * self.dpr);
            // Fails for no text and no place.
            let _ = context.stroke_text(text, x, y);
        }
        context.set_fill_style_str(&css(colour));
        let _ = context.fill_text(text, x, y);
        context.restore();
    }

    /// `text`, shortened with an ellipsis to at most `room_px`.
    #[must_use]
    pub fn fitted(&self, text: &str, room_px: f64, strong: bool) -> String {
        if self.width_of(text, strong) <= room_px {
            return text.to_owned();
        }
        let mut kept: Vec<char> = text.chars().collect();
        while kept.pop().is_some() {
            let mut shorter: String = kept.iter().collect();
            shorter.truncate(shorter.trim_end().len());
            shorter.push('…');
            if self.width_of(&shorter, strong) <= room_px {
                return shorter;
            }
        }
        String::new()
    }
}

fn css((r, g, b): Rgb) -> String {
    format!("rgb({r} {g} {b})")
}
