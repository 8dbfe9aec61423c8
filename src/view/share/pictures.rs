//! Pictures to post, always on paper and in ink, whatever the look of the page. They are drawn so large that they
//! can be read where a forum shows them 600 px wide.

use super::outcome::WholeAnswer;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::answer::AnswerView;
use crate::view::chart::{SocChart, course_canvas};
use crate::view::lang::{full_date, key, number, t, t_args, watt_hours_a_day};
use crate::view::widgets::LanternLevel;
use crate::view::words::names::setup_name;
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, CanvasRenderingContext2d, HtmlCanvasElement, HtmlElement, HtmlImageElement};

/// Width of the picture [px].
const WIDTH: f64 = 1200.0;
const MARGIN: f64 = 48.0;
const PAPER: &str = "#f5f0e6";
const INK: &str = "#1b2740";
const SOFT: &str = "#4c566b";
const EDGE: &str = "#857a63";
const GLOW: &str = "#c47812";
/// Drains listed.
const DRAINS: usize = 6;
/// Nights drawn.
const NIGHTS: usize = 10;

fn canvas() -> Option<HtmlCanvasElement> {
    document().create_element("canvas").ok()?.dyn_into().ok()
}

/// The course drawn off screen in the colours of paper, `None` where there is no course or no
/// canvas. It is taken out of the page again before this returns.
#[must_use]
pub fn course_on_paper(course: Option<&SocChart>) -> Option<HtmlCanvasElement> {
    let body = document().body()?;
    let studio: HtmlElement = document().create_element("div").ok()?.dyn_into().ok()?;
    // Fails only for an invalid attribute name.
    let _ = studio.set_attribute("class", "studio");
    let canvas = canvas()?;
    let _ = canvas.set_attribute("class", "chart-canvas");
    studio.append_child(&canvas).ok()?;
    body.append_child(&studio).ok()?;
    let drawn = course.is_some_and(|course| course_canvas(&canvas, course));
    studio.remove();
    drawn.then_some(canvas)
}

/// Makes the picture and hands it over as PNG; `None` where the browser makes none.
pub fn outlook_picture(
    setup: &Setup,
    whole: &WholeAnswer,
    done: impl FnOnce(Option<Blob>) + 'static,
) {
    match painted(setup, whole) {
        Some(canvas) => as_png(&canvas, done),
        None => done(None),
    }
}

fn painted(setup: &Setup, whole: &WholeAnswer) -> Option<HtmlCanvasElement> {
    let answer = &whole.answer;
    let course = course_on_paper(whole.course.as_ref());
    let room = WIDTH - 2.0 * MARGIN;
    let course_height = course.as_ref().map_or(0.0, |course| {
        f64::from(course.height()) / f64::from(course.width().max(1)) * room + 24.0
    });
    let drains = whole.detail.drains.iter().take(DRAINS);
    let height = 420.0 + course_height + 62.0 + 52.0 * drains.len() as f64 + 60.0;
    let canvas = canvas()?;
    canvas.set_width(WIDTH as u32);
    canvas.set_height(height as u32);
    let context: CanvasRenderingContext2d = canvas.get_context("2d").ok()??.dyn_into().ok()?;
    let page = Page { context: &context };
    page.fill(PAPER, (0.0, 0.0, WIDTH, height));
    let trip = &setup.trip;
    let when = full_date(trip.start());
    let under = [trip.place.name.as_str(), when.as_str()].join(" · ");
    page.words(&setup_name(setup), (MARGIN, 78.0), "600 44px Georgia, serif", INK);
    page.words(under.trim_start_matches(" · "), (MARGIN, 120.0), "30px sans-serif", SOFT);
    let plus = if answer.open_ended { "+" } else { "" };
    let figure = format!("{}{plus}", number(f64::from(answer.sure_nights), 0));
    let wide = page.words(&figure, (MARGIN, 232.0), "600 104px Georgia, serif", INK);
    let count = Arg::Count(i32::from(answer.sure_nights));
    let beside = MARGIN + wide + 20.0;
    page.words(
        &t_args("answer-nights", &[("n", count)]),
        (beside, 200.0),
        "600 36px Georgia, serif",
        INK,
    );
    let odds = answer.chance_frac.is_some();
    let sure = t(if odds { key!("answer-sure") } else { key!("answer-average") });
    page.words(&sure, (beside, 234.0), "30px sans-serif", SOFT);
    page.lanterns(answer, 262.0);
    let mut y = 420.0;
    if let Some(course) = &course {
        let drawn = context.draw_image_with_html_canvas_element_and_dw_and_dh(
            course,
            MARGIN,
            y,
            room,
            course_height - 24.0,
        );
        y += if drawn.is_ok() { course_height } else { 0.0 };
    }
    page.words(&t("answer-drains"), (MARGIN, y + 36.0), "600 32px Georgia, serif", INK);
    y += 62.0;
    let longest = whole.detail.drains.iter().map(|drain| drain.per_day.0).fold(0.0, f64::max);
    for drain in drains {
        let value = watt_hours_a_day(drain.per_day);
        page.words(&drain.name, (MARGIN, y + 24.0), "28px sans-serif", INK);
        page.words_right(&value, (WIDTH - MARGIN, y + 24.0), "600 28px sans-serif", INK);
        let share = if longest > 0.0 { drain.per_day.0 / longest } else { 0.0 };
        page.fill(GLOW, (MARGIN, y + 35.0, (room * share).max(2.0), 7.0));
        y += 52.0;
    }
    page.words(&t("post-note"), (MARGIN, y + 40.0), "26px sans-serif", SOFT);
    Some(canvas)
}

/// Hands a picture in SVG over as PNG, [`WIDTH`] wide; `None` where the browser makes none.
pub fn svg_as_png(svg: &str, done: impl FnOnce(Option<Blob>) + 'static) {
    let Ok(picture) = HtmlImageElement::new() else { return done(None) };
    let address = format!("data:image/svg+xml,{}", String::from(js_sys::encode_uri_component(svg)));
    picture.set_src(&address);
    spawn_local(async move {
        // Fails where the browser does not draw SVG.
        if JsFuture::from(picture.decode()).await.is_err() {
            return done(None);
        }
        let height =
            WIDTH * f64::from(picture.natural_height()) / f64::from(picture.natural_width().max(1));
        let drawn = canvas().and_then(|canvas| {
            canvas.set_width(WIDTH as u32);
            canvas.set_height(height as u32);
            let context: CanvasRenderingContext2d =
                canvas.get_context("2d").ok()??.dyn_into().ok()?;
            let size = (WIDTH, height);
            let drawn = context.draw_image_with_html_image_element_and_dw_and_dh(
                &picture, 0.0, 0.0, size.0, size.1,
            );
            drawn.is_ok().then_some(canvas)
        });
        match drawn {
            Some(canvas) => as_png(&canvas, done),
            None => done(None),
        }
    });
}

fn as_png(canvas: &HtmlCanvasElement, done: impl FnOnce(Option<Blob>) + 'static) {
    let call = Closure::once_into_js(move |blob: JsValue| done(blob.dyn_into().ok()));
    // Where it throws the callback is not called; only a canvas with foreign pictures does.
    let _ = canvas.to_blob(call.unchecked_ref());
}

struct Page<'a> {
    context: &'a CanvasRenderingContext2d,
}

impl Page<'_> {
    fn fill(&self, colour: &str, (x, y, width, height): (f64, f64, f64, f64)) {
        self.context.set_fill_style_str(colour);
        self.context.fill_rect(x, y, width, height);
    }

    /// Writes, and gives the width.
    fn words(&self, text: &str, (x, y): (f64, f64), font: &str, colour: &str) -> f64 {
        self.context.set_font(font);
        self.context.set_fill_style_str(colour);
        self.context.set_text_align("left");
        // Fails for numbers that are none only.
        let _ = self.context.fill_text_with_max_width(text, x, y, WIDTH - MARGIN - x);
        self.context.measure_text(text).map_or(0.0, |size| size.width())
    }

    fn words_right(&self, text: &str, (x, y): (f64, f64), font: &str, colour: &str) {
        self.context.set_font(font);
        self.context.set_fill_style_str(colour);
        self.context.set_text_align("right");
        let _ = self.context.fill_text(text, x, y);
    }

    /// One lantern a night: full glow, half, or an outline; day and chance below.
    fn lanterns(&self, answer: &AnswerView, y: f64) {
        let step = (WIDTH - 2.0 * MARGIN) / NIGHTS as f64;
        for (index, night) in answer.lanterns.iter().take(NIGHTS).enumerate() {
            let middle = MARGIN + step * (index as f64 + 0.5);
            let (left, top, width, height) = (middle - 16.0, y + 14.0, 32.0, 46.0);
            let glow = match night.level {
                LanternLevel::Lit => 1.0,
                LanternLevel::Low => 0.35,
                LanternLevel::Dark | LanternLevel::Past => 0.0,
            };
            self.fill(GLOW, (left, top + height * (1.0 - glow), width, height * glow));
            let line = if night.level == LanternLevel::Dark { EDGE } else { INK };
            self.context.set_stroke_style_str(line);
            self.context.set_line_width(3.0);
            self.context.stroke_rect(left, top, width, height);
            self.context.begin_path();
            // Fails for a negative radius only.
            let _ = self.context.arc(middle, top, 10.0, std::f64::consts::PI, 0.0);
            self.context.stroke();
            self.context.set_text_align("center");
            for (text, below, colour) in [(&night.label, 94.0, SOFT), (&night.chance, 124.0, INK)] {
                self.context.set_font("26px sans-serif");
                self.context.set_fill_style_str(colour);
                let _ = self.context.fill_text_with_max_width(text, middle, y + below, step);
            }
        }
    }
}
