//! Charging while driving.

use super::every::every_field;
use super::fitted::fitted_section;
use super::stages;
use crate::forecast::Charger;
use crate::model::limits::{ALTERNATOR_V, CABLE_M, CABLE_MM2, CHARGER_A, MINUTES_A_DAY};
use crate::model::{DrivingCharger, Setup};
use crate::units::{Amps, Measure, Metres, SquareMillimetres, Volts};
use crate::view::lang::{amps, t};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{
    Danger, NumberField, Term, cautions, choice_row, made_when_open, time_field, tip, toggle,
};
use leptos::prelude::*;

/// A usual relay circuit to start from (common practice, no source).
const USUAL_RELAY: DrivingCharger = DrivingCharger::Relay {
    alternator: Volts(14.2),
    cable_length: Metres(6.0),
    cable_size: SquareMillimetres(6.0),
    limit: Amps(30.0),
    smart_alternator: false,
};

fn kind(setup: &Setup) -> usize {
    usize::from(matches!(setup.driving.charger, DrivingCharger::Relay { .. }))
}

pub(super) fn view(app: AppState) -> AnyView {
    fitted_section(
        app,
        t("driving-title"),
        t("driving-fitted"),
        Lens::of(|s| s.driving.fitted, |s, v| s.driving.fitted = v),
        move |fitted| fitted.then(|| form(app)),
    )
}

/// The choice of charger. What was typed for the other kind comes back with it.
fn kind_lens() -> Lens<usize> {
    let set_aside = StoredValue::new(None::<DrivingCharger>);
    Lens::new(
        |setup| Some(kind(setup)),
        move |setup: &mut Setup, choice| {
            if choice != kind(setup) {
                let usual = if choice == 1 { USUAL_RELAY } else { DrivingCharger::default() };
                let next = set_aside.try_get_value().flatten().unwrap_or(usual);
                set_aside.try_update_value(|aside| *aside = Some(setup.driving.charger));
                setup.driving.charger = next;
            }
        },
    )
}

fn form(app: AppState) -> AnyView {
    let relay = Memo::new(move |_| app.setup.with(|setup| kind(setup) == 1));
    let lead = Memo::new(move |_| app.setup.with(|setup| setup.bank.chemistry.is_lead()));
    let hot = Memo::new(move |_| app.setup.with(|setup| !setup.inverter.fitted));
    let current = Memo::new(move |_| {
        app.setup.with(|setup| match setup.driving.charger {
            DrivingCharger::DcDc { amps } => amps,
            DrivingCharger::Relay { limit, .. } => limit,
        })
    });
    let name = move || if relay.get() { t("charger-relay") } else { t("charger-dc-dc") };
    let title = Signal::derive(move || format!("{}, {}", name(), amps(current.get())));
    let kinds = kind_lens();
    let charger = move || {
        view! {
                <div class="with-tip">
                    {choice_row(
                        app,
                        t("driving-charger"),
                        vec![t("charger-dc-dc"), t("charger-relay")],
                        kinds.clone(),
                    )} {tip(Term::DrivingCharger)}
                </div>
                {move || if relay.get() { relay_form(app) } else { dc_dc_form(app) }}
            <div class="fields">
                {time_field(
                    app,
                    t("driving-from"),
                    Lens::of(|s| s.driving.from_min, |s, v| s.driving.from_min = v),
                )}
            </div>
            {stages::told(app, Charger::Driving)}
            <p class="field-hint">
                {move || lead.get().then(|| t("driving-taper"))} " " {t("driving-days-hint")}
            </p>
        }
        .into_any()
    };
    view! {
        <div class="fields">
            {every_field(
                app,
                t("driving-every"),
                |s| Some(s.driving.every),
                |s, every| s.driving.every = every,
            )}
            {NumberField::new(
                    t("driving-minutes"),
                    "min",
                    MINUTES_A_DAY,
                    Lens::of(|s| s.driving.minutes, |s, v| s.driving.minutes = v),
                )
                .view(app)}
        </div>
        {made_when_open(title, charger)}
        {move || {
            // Said once: where there is an inverter, it stands there.
            let heat = hot.get().then_some(Danger::CableHeat);
            cautions([Danger::Alternator].into_iter().chain(heat).collect())
        }}
    }
    .into_any()
}

fn dc_dc_form(app: AppState) -> AnyView {
    let amps = Lens::<f64>::new(
        |setup| match setup.driving.charger {
            DrivingCharger::DcDc { amps } => Some(amps.0),
            DrivingCharger::Relay { .. } => None,
        },
        |setup, value| {
            if let DrivingCharger::DcDc { amps } = &mut setup.driving.charger {
                *amps = Amps(value);
            }
        },
    );
    view! {
        <div class="fields">
            {NumberField::new(t("driving-amps"), "A", CHARGER_A, amps)
                .hint(t("amps-hint"))
                .view(app)}
        </div>
    }
    .into_any()
}

/// A figure of the relay circuit, bound to `$x` in a pattern.
macro_rules! relay {
    ($x:ident in $pattern:pat) => {
        Lens::<f64>::new(
            |setup| if let $pattern = &setup.driving.charger { Some(*$x) } else { None },
            |setup, value| {
                if let $pattern = &mut setup.driving.charger {
                    *$x = value;
                }
            },
        )
    };
}

fn relay_form(app: AppState) -> AnyView {
    let volts = relay!(x in DrivingCharger::Relay { alternator: Volts(x), .. });
    let length = relay!(x in DrivingCharger::Relay { cable_length: Metres(x), .. });
    let size = relay!(x in DrivingCharger::Relay { cable_size: SquareMillimetres(x), .. });
    let limit = relay!(x in DrivingCharger::Relay { limit: Amps(x), .. });
    let smart = Lens::<bool>::new(
        |setup| match setup.driving.charger {
            DrivingCharger::Relay { smart_alternator, .. } => Some(smart_alternator),
            DrivingCharger::DcDc { .. } => None,
        },
        |setup, value| {
            if let DrivingCharger::Relay { smart_alternator, .. } = &mut setup.driving.charger {
                *smart_alternator = value;
            }
        },
    );
    view! {
        <div class="fields">
            {NumberField::new(t("relay-alternator"), "V", ALTERNATOR_V, volts)
                .hint(t("per-12-volts"))
                .view(app)}
            {NumberField::of(Measure::Length, t("relay-length"), CABLE_M, length).view(app)}
            {NumberField::of(Measure::Section, t("relay-size"), CABLE_MM2, size).view(app)}
            {NumberField::new(t("relay-limit"), "A", CHARGER_A, limit).view(app)}
            {toggle(app, t("relay-smart"), Some(t("relay-smart-hint")), smart)}
        </div>
    }
    .into_any()
}
