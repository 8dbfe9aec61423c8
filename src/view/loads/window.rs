//! Times of day an appliance runs: one of the usual ones, or up to three of one's own.

use crate::forecast::demand::{fits_times, running_time};
use crate::i18n::Arg;
use crate::model::limits::MAX_MORE_WINDOWS;
use crate::model::{Load, TimesOfDay, Window};
use crate::view::focus;
use crate::view::icons::Icon;
use crate::view::lang::{duration, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{icon_button, quiet_button, select_field, time_field};
use leptos::ev::FocusEvent;
use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{HtmlElement, Node};

const PRESETS: [Window; 5] =
    [Window::ALL_DAY, Window::DAYTIME, Window::EVENING, Window::NIGHT, Window::MORNING];

/// Around noon, a time to add.
const NOON: Window = Window { from_min: 12 * 60, to_min: 14 * 60 };

/// Position of "own times" after the presets.
const OWN: usize = PRESETS.len();

/// Window of the load with this id.
pub(super) fn view(app: AppState, id: u32) -> AnyView {
    let preset = |load: &Load| {
        let usual = PRESETS.iter().position(|preset| *preset == load.window);
        usual.filter(|_| load.more_windows.is_empty())
    };
    let own =
        RwSignal::new(app.setup.with_untracked(|setup| setup.load(id).and_then(preset).is_none()));
    let chosen = Lens::<usize>::new(
        move |setup| {
            let preset = preset(setup.load(id)?);
            Some(preset.filter(|_| !own.get()).unwrap_or(OWN))
        },
        move |setup, index| {
            own.try_set(index == OWN);
            if let (Some(preset), Some(load)) = (PRESETS.get(index), setup.load_mut(id)) {
                load.use_only_in(*preset);
            }
        },
    );
    let shown = {
        let chosen = chosen.clone();
        Memo::new(move |_| chosen.read(app))
    };
    let needed =
        Memo::new(move |_| read(app, id, |load| load.usage.has_time_of_day()).unwrap_or(false));
    let too_long = Memo::new(move |_| {
        read(app, id, |load| (!fits_times(load)).then(|| running_time(load)).flatten()).flatten()
    });
    let names = vec![
        t("window-any"),
        t("window-day"),
        t("window-evening"),
        t("window-night"),
        t("window-morning"),
        t("window-own"),
    ];
    view! {
        {move || {
            needed
                .get()
                .then(|| {
                    view! {
                        {select_field(app, t("window-title"), names.clone(), chosen.clone())}
                        {move || (shown.get() == Some(OWN)).then(|| times(app, id))}
                        <p class="field-fault" aria-live="polite">
                            {move || {
                                too_long
                                    .get()
                                    .map(|time| {
                                        let time = duration(time);
                                        t_args("window-too-short", &[("time", Arg::Text(&time))])
                                    })
                            }}
                        </p>
                    }
                })
        }}
    }
    .into_any()
}

fn read<T>(app: AppState, id: u32, get: impl Fn(&Load) -> T) -> Option<T> {
    app.setup.with(|setup| setup.load(id).map(get))
}

/// The window at this place in the list.
fn window_mut(load: &mut Load, at: usize) -> Option<&mut Window> {
    if at == 0 { Some(&mut load.window) } else { load.more_windows.get_mut(at - 1) }
}

/// A usual time apart from those the load has, where there is room for one more.
fn another(load: &Load) -> Option<Window> {
    let times = load.times_of_day();
    let apart = |one: &Window| !TimesOfDay::meet([times, TimesOfDay::of(*one, &[])]);
    let room = load.more_windows.len() < MAX_MORE_WINDOWS;
    [Window::MORNING, Window::EVENING, NOON, Window::NIGHT].into_iter().filter(|_| room).find(apart)
}

/// Element id of a window.
fn row_id(at: usize) -> String {
    format!("time-{at}")
}

/// From and until of each window. What overlaps is joined once the focus has left them, not under the
/// finger.
fn times(app: AppState, id: u32) -> AnyView {
    let count = Memo::new(move |_| read(app, id, |load| 1 + load.more_windows.len()).unwrap_or(1));
    let more = Memo::new(move |_| read(app, id, another).flatten());
    let add = move || {
        if let Some(window) = more.get_untracked() {
            app.edit_apart(|setup| {
                if let Some(load) = setup.load_mut(id) {
                    load.more_windows.push(window);
                }
            });
            focus::to_new(row_id(count.get_untracked().saturating_sub(1)));
        }
    };
    let join = move |event: FocusEvent| {
        let around = event.current_target().and_then(|it| it.dyn_into::<HtmlElement>().ok());
        let next = event.related_target().and_then(|it| it.dyn_into::<Node>().ok());
        if around.is_some_and(|around| !around.contains(next.as_ref())) {
            app.edit(|setup| {
                if let Some(load) = setup.load_mut(id) {
                    load.join_windows();
                }
            });
        }
    };
    let add_below = move || {
        (count.get() > 1 && more.with(Option::is_some))
            .then(|| quiet_button(Some(Icon::Add), t("window-another"), add))
    };
    view! {
        <div class="times" data-testid="times" on:focusout=join>
            <For
                each=move || 0..count.get()
                key=|at| *at
                children=move |at| {
                    let end = move || match count.get() {
                        1 => {
                            more.with(Option::is_some)
                                .then(|| icon_button(Icon::Add, t("window-another"), add))
                        }
                        _ => Some(icon_button(Icon::Delete, t("window-away"), move || remove(app, id, at))),
                    };
                    let named = t_args("window-nth", &[("n", Arg::Count(at as i32 + 1))]);
                    view! {
                        <div class="times-row" id=row_id(at) tabindex="-1" role="group" aria-label=named>
                            {time_field(app, t("window-from"), edge(id, at, |window| &mut window.from_min))}
                            {time_field(app, t("window-to"), edge(id, at, |window| &mut window.to_min))}
                            {end}
                        </div>
                    }
                }
            />
            {add_below}
        </div>
    }
    .into_any()
}

/// One end of a window.
fn edge(id: u32, at: usize, end: fn(&mut Window) -> &mut u16) -> Lens<u16> {
    Lens::new(
        move |setup| {
            let load = setup.load(id)?;
            let window = if at == 0 { Some(&load.window) } else { load.more_windows.get(at - 1) };
            let mut window = *window?;
            Some(*end(&mut window))
        },
        move |setup, minute| {
            if let Some(window) = setup.load_mut(id).and_then(|load| window_mut(load, at)) {
                *end(window) = minute;
            }
        },
    )
}

fn remove(app: AppState, id: u32, at: usize) {
    app.edit_apart(|setup| {
        let Some(load) = setup.load_mut(id) else { return };
        if at > 0 {
            // Nothing where a second press came too late.
            if at <= load.more_windows.len() {
                load.more_windows.remove(at - 1);
            }
        } else if !load.more_windows.is_empty() {
            load.window = load.more_windows.remove(0);
        }
    });
    focus::to_new(row_id(at.saturating_sub(1)));
}
