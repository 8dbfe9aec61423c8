//! Pictures to post, always on paper and in ink, whatever the look of the page. They are drawn so large that they
//! can be read where a forum shows them 600 px wide.

use super::outcome::{WholeAnswer, ranking_of};
use crate::export::outlook_picture::{
    OutlookPicture, PictureCourse, PictureHour, PictureLantern, PictureSign,
};
use crate::export::ranking::Ranking;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::answer::figure;
use crate::view::chart::{ChartEvent, SocChart, Span, course_canvas, days_on_axis};
use crate::view::lang::{full_date, key, percent, short_date, t, t_args};
use crate::view::widgets::LanternLevel;
use crate::view::words::names::setup_name;
use leptos::prelude::*;
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::{Blob, CanvasRenderingContext2d, HtmlCanvasElement, HtmlElement, HtmlImageElement};

/// Width of a PNG [px].
const WIDTH: f64 = 1200.0;
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

/// The answer as a picture has it.
#[must_use]
pub fn outlook_picture(setup: &Setup, whole: &WholeAnswer) -> OutlookPicture {
    let answer = &whole.answer;
    let drains = whole.detail.drains.get(..DRAINS).unwrap_or(&whole.detail.drains);
    let Ranking { title: drains_title, rows, footer, .. } = ranking_of(setup, drains);
    let when = full_date(setup.trip.start());
    let under = [setup.trip.place.name.as_str(), when.as_str()].join(" · ");
    let count = Arg::Count(i32::from(answer.sure_nights));
    let odds = answer.chance_frac.is_some();
    let nights = answer.lanterns.iter().take(NIGHTS).map(|night| PictureLantern {
        glow_frac: match night.level {
            LanternLevel::Lit => 1.0,
            LanternLevel::Low => 0.35,
            LanternLevel::Dark | LanternLevel::Past => 0.0,
        },
        day: night.label.clone(),
        chance: night.chance.clone(),
    });
    OutlookPicture {
        title: setup_name(setup),
        subtitle: under.trim_start_matches(" · ").to_owned(),
        figure: figure(answer),
        counted: t_args("answer-nights", &[("n", count)]),
        sure: t(if odds { key!("answer-sure") } else { key!("answer-average") }),
        lanterns: nights.collect(),
        course: whole.course.as_ref().map(picture_course),
        drains_title,
        drains: rows,
        footer,
    }
}

fn picture_course(chart: &SocChart) -> PictureCourse {
    let span = |span: &Span| (span.from_hour, span.to_hour);
    let days = days_on_axis(chart.start_hour_of_day, chart.hours.len());
    let sign = |event: &ChartEvent| {
        let span = event.span.within(chart.hours.len() as f64)?;
        let hour = f64::midpoint(span.from_hour, span.to_hour);
        Some(PictureSign { hour, path: event.kind.svg_path() })
    };
    let signs = |weather: bool| {
        let events = chart.events.iter().filter(|event| event.kind.is_weather() == weather);
        events.filter_map(sign).collect::<Vec<_>>()
    };
    PictureCourse {
        start_frac: chart.start_soc_frac,
        hours: chart
            .hours
            .iter()
            .map(|hour| PictureHour {
                soc_frac: hour.soc_frac,
                low_frac: hour.low_frac,
                band_frac: hour.band.map(|band| (band.p10_frac, band.p90_frac)),
            })
            .collect(),
        nights: chart.nights.iter().map(span).collect(),
        days: days.iter().map(|day| (span(&day.span), short_date(chart.date(day.day)))).collect(),
        signs: [signs(false), signs(true)],
        levels: [0.0, 0.5, 1.0].map(percent),
        low_words: chart.low_words(),
    }
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
