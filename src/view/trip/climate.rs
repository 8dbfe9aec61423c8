//! Where sun and air come from, and the user's own figures for them.

use crate::forecast::climate::monthly_extraterrestrial;
use crate::i18n::Arg;
use crate::model::climate::Climate;
use crate::model::limits::{AIR_C, FRAC, SUN_WH_M2};
use crate::model::{MonthlySun, Setup};
use crate::units::{Celsius, WattHoursPerSquareMetre};
use crate::view::lang::{celsius, month_name, number, t, t_args};
use crate::view::lens::Lens;
use crate::view::outlook::{Calculation, words};
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, Term, tip};
use leptos::prelude::*;

/// Which source is used, how good it is, and what it says for the month of arrival.
pub(super) fn source(calculation: Calculation) -> AnyView {
    view! {
        <p>{move || calculation.climate.get().map(|climate| words::climate_source(&climate))}</p>
    }
    .into_any()
}

/// Own monthly sun, own air temperature, and the ground.
pub(super) fn own(app: AppState) -> AnyView {
    let place = Memo::new(move |_| {
        app.setup.with(|setup| (setup.trip.place.clone(), i32::from(setup.trip.year)))
    });
    let usual = Memo::new(move |_| {
        place.with(|(place, year)| {
            let above = monthly_extraterrestrial(place, *year);
            let climate = Climate::at(place, None, &above);
            let sun: Vec<f64> =
                climate.clearness_frac.iter().zip(&above).map(|(k, h0)| k * h0.0).collect();
            (sun, climate.air)
        })
    });
    let months: Vec<AnyView> = (0..12)
        .map(|month| {
            let says = Signal::derive(move || {
                let sun = usual.with(|(sun, _)| sun.get(month).copied().unwrap_or(0.0));
                t_args("climate-usual", &[("amount", Arg::Text(&number(sun / 1000.0, 1)))])
            });
            own_sun(month).live_hint(says).view(app)
        })
        .collect();
    let air_says = Signal::derive(move || {
        let month = app.setup.with(|setup| usize::from(setup.trip.month.clamp(1, 12)) - 1);
        let usual = usual.with(|(_, air)| air.get(month).copied().unwrap_or(Celsius(15.0)));
        t_args("climate-usual", &[("amount", Arg::Text(&celsius(usual)))])
    });
    let air = Lens::<Option<f64>>::of(
        |s| s.trip.own_air.map(|air| air.0),
        |s, v| s.trip.own_air = v.map(Celsius),
    );
    let ground =
        Lens::<f64>::of(|s| s.trip.ground_albedo_frac, |s, v| s.trip.ground_albedo_frac = v);
    view! {
        <div class="card-head"><h3>{t("climate-own-sun")}</h3>{tip(Term::PeakSunHours)}</div>
        <p class="field-hint">{t("climate-own-sun-hint")}</p>
        <div class="fields fields-tight">{months}</div>
        <div class="fields">
            {NumberField::optional(t("climate-own-air"), "°C", AIR_C, air)
                .live_hint(air_says)
                .view(app)}
            {NumberField::percent(t("climate-ground"), FRAC, ground)
                .term(Term::Albedo)
                .hint(t("climate-ground-hint"))
                .view(app)}
        </div>
    }
    .into_any()
}

/// Sun of a month, 0 January; empty where the user gave none.
fn own_sun(month: usize) -> NumberField {
    let lens = Lens::<Option<f64>>::new(
        move |setup: &Setup| {
            let given = setup.trip.own_sun.as_ref().and_then(|sun| sun.0.get(month));
            Some(given.map(|sun| sun.0).filter(|sun| *sun > 0.0))
        },
        move |setup: &mut Setup, value: Option<f64>| {
            let none = MonthlySun([WattHoursPerSquareMetre::ZERO; 12]);
            let mut sun = setup.trip.own_sun.unwrap_or(none);
            if let Some(slot) = sun.0.get_mut(month) {
                slot.0 = value.unwrap_or(0.0);
            }
            setup.trip.own_sun = (sun != none).then_some(sun);
        },
    );
    let name = month_name(u8::try_from(month + 1).unwrap_or(1));
    let field = NumberField::optional(name, "kWh/m²", SUN_WH_M2, lens);
    NumberField { scale: 0.001, ..field }
}
