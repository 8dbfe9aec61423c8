//! The draw, in watts or in amperes: either can be typed, the other follows.

use crate::model::limits::{DRAW_A, DRAW_W, STATED_V};
use crate::model::{Draw, Feed, Load, Setup, Usage};
use crate::units::{Amps, Volts, Watts};
use crate::view::lang::t;
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, Term};
use leptos::prelude::*;

/// Mains voltage a current behind the inverter is read at, unless stated otherwise.
const MAINS: Volts = Volts(230.0);

/// Voltage at which a current of this load is meant.
fn stated_volts(setup: &Setup, load: &Load) -> Volts {
    match (load.draw, load.feed) {
        (Draw::Current { volts, .. }, _) => volts,
        (Draw::Power { .. }, Feed::Dc) => setup.bank.system.nominal(),
        (Draw::Power { .. }, Feed::Inverter) => MAINS,
    }
}

/// Power, current and voltage of the load with this id.
pub(super) fn view(app: AppState, id: u32) -> AnyView {
    let watts = Lens::<f64>::load(
        id,
        |load| Some(load.draw.watts().0),
        |load, value| load.draw = Draw::Power { watts: Watts(value) },
    );
    let amps = Lens::<f64>::new(
        move |setup| {
            setup.load(id).map(|load| match load.draw {
                Draw::Current { amps, .. } => amps.0,
                Draw::Power { .. } => load.draw.amps_at(stated_volts(setup, load)).0,
            })
        },
        move |setup, value| {
            let Some(volts) = setup.load(id).map(|load| stated_volts(setup, load)) else { return };
            set(setup, id, Draw::Current { amps: Amps(value), volts });
        },
    );
    // Another voltage keeps what is known: a typed current stays a current, a typed power a power.
    let volts = Lens::<f64>::new(
        move |setup| setup.load(id).map(|load| stated_volts(setup, load).0),
        move |setup, value| {
            let volts = Volts(value);
            let Some(draw) = setup.load(id).map(|load| load.draw) else { return };
            let amps = match draw {
                Draw::Current { amps, .. } => amps,
                Draw::Power { .. } => draw.amps_at(volts),
            };
            set(setup, id, Draw::Current { amps, volts });
        },
    );
    let counts = Memo::new(move |_| {
        app.setup.with(|setup| {
            setup.load(id).is_some_and(|load| !matches!(load.usage, Usage::Energy { .. }))
        })
    });
    let behind = Memo::new(move |_| {
        app.setup.with(|setup| setup.load(id).is_some_and(|load| load.feed == Feed::Inverter))
    });
    view! {
        <fieldset class="group">
            <legend>{t("draw-title")}</legend>
            <div class="fields fields-tight">
                {NumberField::new(t("draw-power"), "W", DRAW_W, watts)
                    .term(Term::WattAndWattHour)
                    .view(app)}
                {NumberField::new(t("draw-current"), "A", DRAW_A, amps).view(app)}
                {NumberField::new(t("draw-volts"), "V", STATED_V, volts).view(app)}
            </div>
            <p class="field-hint">
                {move || if behind.get() { t("draw-hint-mains") } else { t("draw-hint") }}
                {move || (!counts.get()).then(|| format!(" {}", t("draw-hint-energy")))}
            </p>
        </fieldset>
    }
    .into_any()
}

fn set(setup: &mut Setup, id: u32, draw: Draw) {
    if let Some(load) = setup.load_mut(id) {
        load.draw = draw;
    }
}
