//! Time of day an appliance runs.

use crate::forecast::demand::{fits_window, running_time};
use crate::i18n::Arg;
use crate::model::{DutyCycle, Load, Usage, Window};
use crate::view::lang::{duration, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{select_field, time_field};
use leptos::prelude::*;

const PRESETS: [Window; 5] =
    [Window::ALL_DAY, Window::DAYTIME, Window::EVENING, Window::NIGHT, Window::MORNING];

/// Position of "own times" after the presets.
const OWN: usize = PRESETS.len();

/// Window of the load with this id.
pub(super) fn view(app: AppState, id: u32) -> AnyView {
    let now = app.setup.with_untracked(|setup| setup.load(id).map(|load| load.window));
    let own = RwSignal::new(!now.is_some_and(|now| PRESETS.contains(&now)));
    let chosen = Lens::<usize>::new(
        move |setup| {
            let now = setup.load(id)?.window;
            let preset = PRESETS.iter().position(|preset| *preset == now);
            Some(if own.get() { OWN } else { preset.unwrap_or(OWN) })
        },
        move |setup, index| {
            own.try_set(index == OWN);
            if let (Some(preset), Some(load)) = (PRESETS.get(index), setup.load_mut(id)) {
                load.window = *preset;
            }
        },
    );
    let shown = {
        let chosen = chosen.clone();
        Memo::new(move |_| chosen.read(app))
    };
    let needed = Memo::new(move |_| {
        read(app, id, |load| {
            // What is never off, or a share of the whole day, has no time of its own.
            !matches!(
                load.usage,
                Usage::AlwaysOn
                    | Usage::WhileDriving
                    | Usage::Once { .. }
                    | Usage::Duty {
                        cycle: DutyCycle::Fixed { .. } | DutyCycle::AirTemperature { .. }
                    }
            )
        })
        .unwrap_or(false)
    });
    let too_long = Memo::new(move |_| {
        read(app, id, |load| (!fits_window(load)).then(|| running_time(load)).flatten()).flatten()
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

fn times(app: AppState, id: u32) -> AnyView {
    let from = Lens::<u16>::load(
        id,
        |load| Some(load.window.from_min),
        |load, minute| load.window.from_min = minute,
    );
    let to = Lens::<u16>::load(
        id,
        |load| Some(load.window.to_min),
        |load, minute| load.window.to_min = minute,
    );
    view! {
        <div class="fields fields-tight">
            {time_field(app, t("window-from"), from)} {time_field(app, t("window-to"), to)}
        </div>
    }
    .into_any()
}
