//! The frame around every chart: the canvas, the slider and the words that read it, the legend,
//! and the table behind it.
//!
//! The canvas is one image to a screen reader, with a summary as its name. Reading single values
//! is the job of a slider below the plot, as long as the plot: it works by touch, by mouse and by
//! keyboard, and says what it stands on. Touching the plot moves it.

use super::canvas::Canvas;
use super::watch::Watch;
use crate::view::lang::t;
use crate::view::tasks::{ViewFn, mount_as_tasks, run_as_tasks};
use crate::view::widgets::{DataTable, table_disclosure};
use leptos::ev;
use leptos::html;
use leptos::prelude::*;
use std::sync::Arc;

/// Half the width of the slider's knob [px], as in the style sheet.
const KNOB_PX: f64 = 14.0;

/// Where the first and the last value that can be read stand [px from the left].
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Ends {
    /// Place of the first value.
    pub first_px: f64,
    /// Place of the last value.
    pub last_px: f64,
}

/// Draws a picture.
pub type Draw = Box<dyn Fn(&Canvas) -> Ends>;

/// Finds the value nearest to a share (0..1) of the way between the [`Ends`].
pub type Pick = Box<dyn Fn(f64) -> usize>;

/// How values are read one by one.
#[derive(Clone)]
pub struct Reading {
    /// What the slider moves along.
    pub name: Signal<String>,
    /// Value chosen.
    pub chosen: RwSignal<Option<usize>>,
    /// Value the slider stands on before one is chosen.
    pub first: Signal<usize>,
    /// How many there are.
    pub count: Signal<usize>,
    /// How many the page keys pass over.
    pub page: usize,
    /// A value in words.
    pub words: Arc<dyn Fn(usize) -> String + Send + Sync>,
}

impl Reading {
    /// The value the slider stands on.
    fn place(&self) -> usize {
        let last = self.count.get().saturating_sub(1);
        self.chosen.get().unwrap_or_else(|| self.first.get()).min(last)
    }

    fn choose(&self, index: usize) {
        let last = self.count.get_untracked().saturating_sub(1);
        self.chosen.try_set(Some(index.min(last)));
    }
}

/// A chart.
pub struct Picture {
    /// Class of the whole, for room reserved before it is drawn.
    pub class: &'static str,
    /// What it shows, in a sentence or two.
    pub summary: Signal<String>,
    /// Height [px] for a width [px] and a size of text [px].
    pub height_px: Box<dyn Fn(f64, f64) -> f64>,
    /// Draws it; signals read here have it drawn again when they change.
    pub draw: Draw,
    /// How values are read, if they can be.
    pub reading: Option<(Reading, Pick)>,
    /// What the signs mean.
    pub legend: ViewFn,
    /// All figures.
    pub table: Signal<DataTable>,
}

impl Picture {
    /// The chart on the page.
    #[must_use]
    pub fn view(self) -> AnyView {
        let Self { class, summary, height_px, draw, reading, legend, table } = self;
        let node = NodeRef::<html::Canvas>::new();
        let stale = RwSignal::new(0u32);
        let ends = RwSignal::new(Ends::default());
        let watch = StoredValue::new_local(None::<Watch>);
        let summary = Memo::new(move |_| summary.get());
        // The first time in two turns of its own: the canvas and its letters are made ready, then it
        // is drawn.
        let made_ready = RwSignal::new(None);
        run_as_tasks(vec![
            Box::new(move || _ = made_ready.try_set(Some(false))),
            Box::new(move || _ = made_ready.try_set(Some(true))),
        ]);
        Effect::new(move |_| {
            let Some(room) = node.get().and_then(|canvas| canvas.parent_element()) else { return };
            watch.set_value(Some(Watch::new(&room, stale)));
        });
        Effect::new(move |_| {
            stale.track();
            let (Some(canvas), Some(ready)) = (node.get(), made_ready.get()) else { return };
            let Some(canvas) = Canvas::open(&canvas, &*height_px) else { return };
            if !ready {
                // The widths themselves are of no use yet.
                let _ = [false, true].map(|strong| canvas.width_of("0", strong));
                return;
            }
            let drawn = draw(&canvas);
            if ends.get_untracked() != drawn {
                ends.set(drawn);
            }
            watch.update_value(|watch| {
                if let Some(watch) = watch {
                    watch.follow_ratio();
                }
            });
        });
        let (reading, pick) = reading.unzip();
        let read = reading.clone();
        let follow = move |event: ev::PointerEvent| {
            let (Some(reading), Some(pick)) = (&read, &pick) else { return };
            let Ends { first_px, last_px } = ends.get_untracked();
            if last_px > first_px {
                let share = (f64::from(event.offset_x()) - first_px) / (last_px - first_px);
                reading.choose(pick(share.clamp(0.0, 1.0)));
            }
        };
        let follow = std::rc::Rc::new(follow);
        let press = std::rc::Rc::clone(&follow);
        let slider =
            reading.map(|reading| -> ViewFn { Box::new(move || slider(reading.clone(), ends)) });
        let table: ViewFn =
            Box::new(move || table_disclosure(Signal::stored(t("chart-figures")), table));
        let around = mount_as_tasks(slider.into_iter().chain([legend, table]).collect());
        view! {
            <div class=format!("chart {class}")>
                <div class="chart-room">
                    <canvas
                        class="chart-canvas"
                        node_ref=node
                        role="img"
                        aria-label=move || summary.get()
                        aria-hidden=move || summary.with(String::is_empty).then_some("true")
                        on:pointerdown=move |event| press(event)
                        on:pointermove=move |event| follow(event)
                    ></canvas>
                </div>
                {around}
            </div>
        }
        .into_any()
    }
}

fn slider(reading: Reading, ends: RwSignal<Ends>) -> AnyView {
    let margin = move || format!("{:.1}px", (ends.get().first_px - KNOB_PX).max(0.0));
    let length = move || {
        let Ends { first_px, last_px } = ends.get();
        format!("{:.1}px", (last_px - first_px).max(0.0) + 2.0 * KNOB_PX)
    };
    let (place, most, said, shown) =
        (reading.clone(), reading.clone(), reading.clone(), reading.clone());
    let (typed, paged) = (reading.clone(), reading.clone());
    let page = move |event: ev::KeyboardEvent| {
        let at = untrack(|| paged.place());
        let next = match event.key().as_str() {
            "PageUp" => at + paged.page,
            "PageDown" => at.saturating_sub(paged.page),
            _ => return,
        };
        event.prevent_default();
        paged.choose(next);
    };
    view! {
        <input
            class="chart-slider"
            type="range"
            min="0"
            step="1"
            max=move || most.count.get().saturating_sub(1).to_string()
            prop:value=move || place.place().to_string()
            aria-label=move || reading.name.get()
            aria-valuetext=move || (said.words)(said.place())
            style:margin-inline-start=margin
            style:width=length
            on:keydown=page
            on:input=move |event| {
                if let Ok(index) = event_target_value(&event).parse() {
                    typed.choose(index);
                }
            }
        />
        <p class="chart-reading" data-testid="chart-reading">
            {move || match shown.chosen.get() {
                Some(_) => (shown.words)(shown.place()),
                None => t("chart-touch"),
            }}
        </p>
    }
    .into_any()
}

/// A word of the legend with its sign, which is an SVG path in a box of 24 by 16 drawn in the
/// style of `class`.
#[must_use]
pub fn legend_item(class: &'static str, path: String, word: String) -> AnyView {
    view! {
        <li class="chart-key">
            <svg class=format!("chart-sign {class}") viewBox="0 0 24 16" aria-hidden="true" focusable="false">
                <path d=path></path>
            </svg>
            <span>{word}</span>
        </li>
    }
    .into_any()
}

/// The legend.
#[must_use]
pub fn legend(items: Vec<AnyView>) -> AnyView {
    view! { <ul class="chart-legend">{items}</ul> }.into_any()
}
