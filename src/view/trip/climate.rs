//! Where sun and air come from and how good they are; the user's own air, and the ground.

use crate::i18n::Arg;
use crate::model::climate::Climate;
use crate::model::limits::{AIR_C, FRAC, INSIDE_C};
use crate::model::{AirSource, ClimateSource, Vehicle};
use crate::physics::solar::sun::monthly_extraterrestrial;
use crate::units::{Celsius, Measure, WattHoursPerSquareMetre, Watts};
use crate::view::climate_file;
use crate::view::lang::{key, measured, month_name, number_fixed, t, t_args, temperature, watts};
use crate::view::lens::Lens;
use crate::view::outlook::{Calculation, climate_source};
use crate::view::reader;
use crate::view::state::AppState;
use crate::view::widgets::{DataTable, NumberField, Term, data_table, pictured_row, radios};
use crate::view::words::names::vehicles;
use leptos::prelude::*;

/// Light thrown back by grass, sand and fresh snow, 0..1 (common practice, no source).
const GROUNDS_FRAC: [f64; 3] = [0.2, 0.4, 0.6];

/// Which sources are used, and how good they are.
pub(super) fn source(calculation: Calculation) -> AnyView {
    let told = move || {
        calculation.climate.get().map(|climate| {
            view! {
                <p>{climate_source(&climate)}</p>
                <p>{air_source(&climate)}</p>
            }
        })
    };
    view! { <div class="sources">{told}</div> }.into_any()
}

/// What does not count here yet, and what could not be true of the user's own sun.
pub(super) fn notices(calculation: Calculation) -> AnyView {
    let told = move || {
        calculation.climate.get().map(|climate| {
            let impossible = impossible_months(&climate).map(|months| {
                let text = t_args("climate-impossible", &[("months", Arg::Text(&months))]);
                view! { <p class="notice" role="status">{text}</p> }
            });
            view! {
                {without_table(&climate)}
                {impossible}
            }
        })
    };
    view! { {told} }.into_any()
}

/// What stands out in the cold.
pub(super) fn vehicle(app: AppState) -> AnyView {
    let vehicle = Lens::<Vehicle>::of(|s| s.vehicle, |s, v| s.vehicle = v);
    pictured_row(app, t("climate-vehicle"), vehicles(), vehicle.choice(&Vehicle::ALL))
}

/// Why the climate table does not count here yet.
fn without_table(climate: &Climate) -> Option<AnyView> {
    if climate.air_source == AirSource::World {
        return None;
    }
    let text =
        climate_file::state().lacking(key!("climate-coming"), key!("climate-not-fetched"))?;
    Some(view! { <p class="notice" role="status">{text}</p> }.into_any())
}

fn air_source(climate: &Climate) -> String {
    match climate.air_source {
        AirSource::Region { distance_km, .. } => {
            let distance = measured(Measure::Distance, distance_km, 0);
            t_args("climate-air-region", &[("distance", Arg::Text(&distance))])
        }
        AirSource::World => t("climate-air-world"),
        AirSource::Latitude => t("climate-air-latitude"),
    }
}

/// Months whose own figure no sky can give, by name.
fn impossible_months(climate: &Climate) -> Option<String> {
    let ClimateSource::OwnSun { pulled_in, .. } = climate.source else { return None };
    if pulled_in.count() == 0 {
        return None;
    }
    let names: Vec<String> = (0..12u8)
        .filter(|month| pulled_in.holds(usize::from(*month)))
        .map(|month| month_name(month + 1))
        .collect();
    Some(names.join(", "))
}

/// Sun and air month by month, as they are used.
pub(super) fn months(app: AppState, calculation: Calculation) -> AnyView {
    let basis = Memo::new(move |_| {
        app.setup.with(|setup| (setup.trip.place.clone(), i32::from(setup.trip.year)))
    });
    let rows = move || {
        let climate = calculation.climate.get()?;
        let above = basis.with(|(place, year)| monthly_extraterrestrial(place, *year));
        Some(data_table(table(&climate, &above)))
    };
    view! { {rows} }.into_any()
}

fn table(climate: &Climate, above: &[WattHoursPerSquareMetre; 12]) -> DataTable {
    let rows = (1u8..=12)
        .zip(climate.clearness_frac.iter().zip(above).zip(&climate.air))
        .map(|(month, ((clearness, above), air))| {
            vec![
                month_name(month),
                number_fixed(above.0 * clearness / 1000.0, 1),
                number_fixed(Measure::Temperature.shown(reader::system(), air.0), 0),
            ]
        })
        .collect();
    DataTable {
        caption: t("climate-months-caption"),
        heads: vec![
            t("climate-month"),
            "kWh/m²".to_owned(),
            Measure::Temperature.unit(reader::system()).to_owned(),
        ],
        rows,
    }
}

/// Own air temperature, and what the ground throws back.
pub(super) fn air_and_ground(app: AppState, calculation: Calculation) -> AnyView {
    let says = Signal::derive(move || {
        let month = app.setup.with(|setup| usize::from(setup.trip.month.clamp(1, 12)) - 1);
        let climate = calculation.climate.get();
        let usual = climate.and_then(|climate| climate.air.get(month).copied());
        let usual = temperature(usual.unwrap_or(Celsius(15.0)));
        t_args("climate-usual", &[("amount", Arg::Text(&usual))])
    });
    let air = Lens::<Option<f64>>::of(
        |s| s.trip.own_air.map(|air| air.0),
        |s, v| s.trip.own_air = v.map(Celsius),
    );
    let ground =
        Lens::<f64>::of(|s| s.trip.ground_albedo_frac, |s, v| s.trip.ground_albedo_frac = v);
    let kept = Lens::<Option<f64>>::of(
        |s| s.trip.heated_to.map(|kept| kept.0),
        |s, v| s.trip.heated_to = v.map(Celsius),
    );
    let loss = move || {
        let lost = app.setup.with(|setup| Watts(setup.vehicle.heat_loss_w_per_k()));
        t_args("climate-vehicle-loss", &[("watts", Arg::Text(&watts(lost)))])
    };
    view! {
        <p class="field-hint">{loss}</p>
        <div class="fields">
            {NumberField::optional_of(Measure::Temperature, t("climate-inside"), INSIDE_C, kept)
                .hint(t("climate-inside-hint"))
                .view(app)}
            {NumberField::optional_of(Measure::Temperature, t("climate-own-air"), AIR_C, air)
                .live_hint(says)
                .view(app)}
            {NumberField::percent(t("climate-ground"), FRAC, ground.clone())
                .term(Term::Albedo)
                .view(app)}
        </div>
        {grounds(app, ground)}
    }
    .into_any()
}

fn grounds(app: AppState, ground: Lens<f64>) -> AnyView {
    let chosen = {
        let ground = ground.clone();
        Memo::new(move |_| {
            let now = ground.read(app)?;
            GROUNDS_FRAC.iter().position(|frac| (frac - now).abs() < 1e-9)
        })
    };
    let choose = move |index: usize| {
        if let Some(frac) = GROUNDS_FRAC.get(index) {
            ground.write(app, *frac);
        }
    };
    let names = vec![t("ground-grass"), t("ground-sand"), t("ground-snow")];
    radios(t("climate-ground-kind"), names, chosen.into(), choose)
}
