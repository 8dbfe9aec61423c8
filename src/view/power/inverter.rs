//! The inverter.

use super::fitted::fitted_section;
use super::inverter_figures;
use crate::i18n::Arg;
use crate::model::limits::{
    INVERTER_CUT_OUT_V, INVERTER_FRAC, INVERTER_IDLE_W, INVERTER_SURGE_W, INVERTER_W,
};
use crate::model::{Inverter, InverterSwitching, Setup};
use crate::units::{Volts, Watts};
use crate::view::lang::{number, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{Danger, NumberField, Term, cautions, choice_row, disclosure};
use leptos::prelude::*;

/// Draw asleep to start from [W].
const ASLEEP: Watts = Watts(2.0);

/// Position of the switching in the row of choices.
fn switching(setup: &Setup) -> usize {
    match setup.inverter.switching {
        InverterSwitching::WhenUsed => 0,
        InverterSwitching::AllDay => 1,
        InverterSwitching::PowerSave { .. } => 2,
    }
}

/// The choice of switching. A typed draw asleep comes back with its choice.
fn switching_lens() -> Lens<usize> {
    let typed = StoredValue::new(ASLEEP);
    Lens::new(
        |setup| Some(switching(setup)),
        move |setup: &mut Setup, choice| {
            if choice == switching(setup) {
                return;
            }
            if let InverterSwitching::PowerSave { asleep } = setup.inverter.switching {
                typed.try_update_value(|typed| *typed = asleep);
            }
            setup.inverter.switching = match choice {
                1 => InverterSwitching::AllDay,
                2 => {
                    InverterSwitching::PowerSave { asleep: typed.try_get_value().unwrap_or(ASLEEP) }
                }
                _ => InverterSwitching::WhenUsed,
            };
        },
    )
}

/// Another rating; a no-load draw that was the usual one of the old rating follows.
fn rated(inverter: &mut Inverter, continuous: Watts) {
    let usual = |rating| Watts(Inverter::usual_idle(rating).1.0.round().min(INVERTER_IDLE_W.max));
    if inverter.idle == usual(inverter.continuous) {
        inverter.idle = usual(continuous);
    }
    inverter.continuous = continuous;
}

pub(super) fn view(app: AppState) -> AnyView {
    fitted_section(
        app,
        t("inverter-title"),
        t("inverter-fitted"),
        Lens::of(|s| s.inverter.fitted, |s, v| s.inverter.fitted = v),
        move |fitted| Some(if fitted { form(app) } else { inverter_figures::missing(app) }),
    )
}

fn form(app: AppState) -> AnyView {
    let usual =
        Memo::new(move |_| app.setup.with(|setup| Inverter::usual_idle(setup.inverter.continuous)));
    let sleeps = Memo::new(move |_| app.setup.with(|setup| switching(setup) == 2));
    let asleep = Lens::<f64>::new(
        |setup| match setup.inverter.switching {
            InverterSwitching::PowerSave { asleep } => Some(asleep.0),
            _ => None,
        },
        |setup, value| {
            if let InverterSwitching::PowerSave { asleep } = &mut setup.inverter.switching {
                *asleep = Watts(value);
            }
        },
    );
    let more = view! {
        <div class="fields">
            {NumberField::new(
                    t("inverter-surge"),
                    "W",
                    INVERTER_SURGE_W,
                    Lens::of(|s| s.inverter.surge.0, |s, v| s.inverter.surge = Watts(v)),
                )
                .term(Term::Surge)
                .view(app)}
            {NumberField::percent(
                    t("inverter-efficiency"),
                    INVERTER_FRAC,
                    Lens::of(|s| s.inverter.full_load_frac, |s, v| s.inverter.full_load_frac = v),
                )
                .hint(t("inverter-efficiency-hint"))
                .view(app)}
            {NumberField::new(
                    t("inverter-cut-out"),
                    "V",
                    INVERTER_CUT_OUT_V,
                    Lens::of(|s| s.inverter.cut_out.0, |s, v| s.inverter.cut_out = Volts(v)),
                )
                .term(Term::CutOut)
                .hint(t("inverter-cut-out-hint"))
                .view(app)}
        </div>
        {inverter_figures::view(app)}
    }
    .into_any();
    view! {
        <div class="fields">
            {NumberField::new(
                    t("inverter-continuous"),
                    "W",
                    INVERTER_W,
                    Lens::of(|s| s.inverter.continuous.0, |s, v| rated(&mut s.inverter, Watts(v))),
                )
                .view(app)}
            {NumberField::new(
                    t("inverter-idle"),
                    "W",
                    INVERTER_IDLE_W,
                    Lens::of(|s| s.inverter.idle.0, |s, v| s.inverter.idle = Watts(v)),
                )
                .term(Term::NoLoadDraw)
                .view(app)}
        </div>
        <p class="field-hint" aria-live="polite">
            {move || {
                let (low, high) = usual.get();
                let (low, high) = (number(low.0, 0), number(high.0, 0));
                t_args(
                    "inverter-idle-usual",
                    &[("low", Arg::Text(&low)), ("high", Arg::Text(&high))],
                )
            }}
        </p>
        {choice_row(
            app,
            t("inverter-switching"),
            vec![t("inverter-when-used"), t("inverter-all-day"), t("inverter-power-save")],
            switching_lens(),
        )}
        {move || {
            sleeps
                .get()
                .then(|| {
                    NumberField::new(t("inverter-asleep"), "W", INVERTER_IDLE_W, asleep.clone())
                        .view(app)
                })
        }}
        {inverter_figures::contradiction(app)}
        {disclosure(t("load-more"), false, more)}
        {cautions(vec![Danger::Mains, Danger::CableHeat])}
    }
    .into_any()
}
