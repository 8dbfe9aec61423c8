//! Solar arrays: panels of one tilt and facing on one controller.

use super::place_climate::climate_here;
use super::rows::row_keys;
use crate::forecast::parked::coldest_air;
use crate::i18n::Arg;
use crate::model::limits::{
    CONTROLLER_FRAC, DIRT_FRAC, FACING_DEG, FRAC, MAX_ARRAYS, PANEL_V, SELF_USE_W, SMALL_LOSS_FRAC,
    SOLAR_W, TEMP_COEFF_PER_K, TILT_DEG,
};
use crate::model::{Controller, Mounting, SolarArray};
use crate::physics::solar::panel::cold_voltage_rise_frac;
use crate::units::{Degrees, Volts, Watts};
use crate::view::icons::Icon;
use crate::view::lang::{key, percent, t, t_args, temperature};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{
    Danger, NumberField, Term, caution, choice_row, disclosure, pictured_radios, pictured_row,
    quiet_button, text_field, tip, toggle,
};
use crate::view::words::changes::degrees;
use crate::view::words::names::array_name;
use leptos::prelude::*;

const MOUNTINGS: [Mounting; 3] = [Mounting::Glued, Mounting::SmallGap, Mounting::OpenRack];
const CONTROLLERS: [Controller; 2] = [Controller::Mppt, Controller::Pwm];
/// Tilts to choose by picture [degrees].
const TILTS: [u8; 4] = [0, 20, 40, 60];
/// Points of the compass, clockwise from north.
const COMPASS: [&str; 8] = [
    key!("compass-n"),
    key!("compass-ne"),
    key!("compass-e"),
    key!("compass-se"),
    key!("compass-s"),
    key!("compass-sw"),
    key!("compass-w"),
    key!("compass-nw"),
];

pub(super) fn view(app: AppState) -> AnyView {
    let keys = row_keys(app, |setup| &setup.solar);
    let count = Memo::new(move |_| keys.with(Vec::len));
    let add = move || {
        app.edit_apart(|setup| {
            // Panels face the equator unless somebody says otherwise.
            let facing = setup.trip.place.noon_facing();
            setup.solar.push(SolarArray { facing, ..SolarArray::default() });
        });
    };
    view! {
        {move || {
            (count.get() == 0).then(|| view! { <p class="quiet">{t("solar-none")}</p> })
        }}
        <For each=move || keys.get() key=|key| *key children=move |(_, row)| array(app, row) />
        <div class="cautions">
            {move || {
                (count.get() < MAX_ARRAYS)
                    .then(|| quiet_button(Some(Icon::Add), t("solar-add"), add))
            }}
            {move || (count.get() > 0).then(|| caution(Danger::Roof))}
        </div>
    }
    .into_any()
}

/// Points of the compass to choose from, each with its arrow.
fn points() -> Vec<(Icon, String)> {
    (0u8..).zip(COMPASS).map(|(point, name)| (Icon::Towards(point), t(name))).collect()
}

/// Voltage of panels in series at the coldest of the place.
fn cold_voltage(app: AppState) -> AnyView {
    let climate = climate_here(app);
    let told = move || {
        let coldest = climate.with(coldest_air);
        let (cold, share) = (temperature(coldest), percent(cold_voltage_rise_frac(coldest)));
        t_args("solar-cold-volts", &[("cold", Arg::Text(&cold)), ("share", Arg::Text(&share))])
    };
    view! { <p class="field-hint">{told}</p> }.into_any()
}

fn array(app: AppState, row: usize) -> AnyView {
    let title = move || app.setup.with(|setup| array_name(setup, row));
    let told = t_args("solar-deleted", &[("n", Arg::Count(row as i32 + 1))]);
    let delete = move || {
        app.edit_with_undo(told.clone(), |setup| {
            if row < setup.solar.len() {
                setup.solar.remove(row);
            }
        });
    };
    let duplicate = move || {
        app.edit_apart(|setup| {
            if let Some(twin) = setup.solar.get(row).cloned()
                && setup.solar.len() < MAX_ARRAYS
            {
                setup.solar.insert(row + 1, twin);
            }
        });
    };
    let may_grow = Memo::new(move |_| app.setup.with(|setup| setup.solar.len() < MAX_ARRAYS));
    let facing = Lens::array(row, |a| a.facing.0, |a, v| a.facing = Degrees(v));
    let point = facing.clone().map(
        |degrees| (degrees / 45.0).round().rem_euclid(8.0) as usize,
        |point: usize| point as f64 * 45.0,
    );
    let tilt = Lens::array(row, |a| a.tilt.0, |a, v| a.tilt = Degrees(v));
    let tilt_now = {
        let tilt = tilt.clone();
        Memo::new(move |_| {
            let now = tilt.read(app)?;
            TILTS.iter().position(|known| f64::from(*known) == now)
        })
    };
    let tilts = TILTS
        .iter()
        .map(|tilt| (Icon::Tilted(*tilt), degrees(Degrees(f64::from(*tilt)))))
        .collect();
    let choose_tilt = {
        let tilt = tilt.clone();
        move |index: usize| {
            if let Some(known) = TILTS.get(index) {
                tilt.write(app, f64::from(*known));
            }
        }
    };
    let flat = Memo::new(move |_| {
        app.setup.with(|setup| setup.solar.get(row).is_none_or(|array| array.tilt.0 == 0.0))
    });
    let more = view! {
            {choice_row(
                app,
                t("solar-mounting"),
                vec![t("mounting-glued"), t("mounting-gap"), t("mounting-rack")],
                Lens::array(row, |a| a.mounting, |a, v| a.mounting = v).choice(&MOUNTINGS),
            )}
            <div class="fields">
                {NumberField::new(t("solar-tilt"), "°", TILT_DEG, tilt)
                    .hint(t("solar-tilt-hint"))
                    .view(app)}
                {move || {
                    (!flat.get())
                        .then(|| {
                            NumberField::new(
                                    t("solar-facing-degrees"),
                                    "°",
                                    FACING_DEG,
                                    facing.clone(),
                                )
                                .hint(t("solar-facing-hint"))
                                .view(app)
                        })
                }}
            </div>
            <div class="with-tip">
                {choice_row(
                    app,
                    t("solar-controller"),
                    vec![t("controller-mppt"), t("controller-pwm")],
                    Lens::array(row, |a| a.controller, |a, v| a.controller = v)
                        .choice(&CONTROLLERS),
                )} {tip(Term::Controller)}
            </div>
            {losses(app, row)}
            {cold_voltage(app)}
            <div class="button-row">
                {move || {
                    may_grow
                        .get()
                        .then(|| {
                            quiet_button(Some(Icon::Duplicate), t("solar-duplicate"), duplicate)
                        })
                }}
                {quiet_button(Some(Icon::Delete), t("solar-delete"), delete)}
            </div>
    }
    .into_any();
    view! {
        <fieldset class="group row-card">
            <legend>{title}</legend>
            {toggle(
                app,
                t("counts-in"),
                None,
                Lens::array(row, |a| a.enabled, |a, v| a.enabled = v),
            )}
            <div class="fields">
                {NumberField::new(
                        t("solar-peak"),
                        Watts::UNIT,
                        SOLAR_W,
                        Lens::array(row, |a| a.peak.0, |a, v| a.peak = Watts(v)),
                    )
                    .in_peak_watts()
                    .term(Term::WattPeak)
                    .view(app)}
            </div>
            {pictured_radios(t("solar-tilt"), tilts, tilt_now.into(), choose_tilt)}
            {move || {
                (!flat.get())
                    .then(|| pictured_row(app, t("solar-facing"), points(), point.clone()))
            }}
            {disclosure(t("solar-shade"), false, shade(app, row))}
            {disclosure(t("load-more"), false, more)}
        </fieldset>
    }
    .into_any()
}

type Part = (fn(&SolarArray) -> f64, fn(&mut SolarArray, f64));

fn shares(
    app: AppState,
    row: usize,
    parts: Vec<(String, crate::model::limits::Range, Part)>,
) -> Vec<AnyView> {
    parts
        .into_iter()
        .map(|(label, range, (get, set))| {
            NumberField::percent(label, range, Lens::array(row, get, set)).view(app)
        })
        .collect()
}

fn shade(app: AppState, row: usize) -> AnyView {
    let parts: Vec<(String, _, Part)> = vec![
        (t("shade-morning"), FRAC, (|a| a.shade.morning_frac, |a, v| a.shade.morning_frac = v)),
        (t("shade-midday"), FRAC, (|a| a.shade.midday_frac, |a, v| a.shade.midday_frac = v)),
        (
            t("shade-afternoon"),
            FRAC,
            (|a| a.shade.afternoon_frac, |a, v| a.shade.afternoon_frac = v),
        ),
        (t("shade-sky"), FRAC, (|a| a.shade.sky_frac, |a, v| a.shade.sky_frac = v)),
    ];
    view! {
        <p class="field-hint">{t("shade-hint")}</p>
        <div class="fields">{shares(app, row, parts)}</div>
    }
    .into_any()
}

fn losses(app: AppState, row: usize) -> AnyView {
    let parts: Vec<(String, _, Part)> = vec![
        (
            t("solar-low-light"),
            SMALL_LOSS_FRAC,
            (|a| a.low_light_frac, |a, v| a.low_light_frac = v),
        ),
        (t("solar-dirt"), DIRT_FRAC, (|a| a.dirt_frac, |a, v| a.dirt_frac = v)),
        (t("solar-wiring"), SMALL_LOSS_FRAC, (|a| a.wiring_frac, |a, v| a.wiring_frac = v)),
        (t("solar-mismatch"), SMALL_LOSS_FRAC, (|a| a.mismatch_frac, |a, v| a.mismatch_frac = v)),
    ];
    let is_mppt = Memo::new(move |_| {
        app.setup.with(|setup| {
            setup.solar.get(row).is_some_and(|array| array.controller == Controller::Mppt)
        })
    });
    let efficiency = move || {
        is_mppt.get().then(|| {
            NumberField::percent(
                t("solar-efficiency"),
                CONTROLLER_FRAC,
                Lens::array(row, |a| a.controller_frac, |a, v| a.controller_frac = v),
            )
            .view(app)
        })
    };
    let best_voltage = move || {
        (!is_mppt.get()).then(|| {
            let lens = Lens::array(row, |a| a.vmp.map(|v| v.0), |a, v| a.vmp = v.map(Volts));
            NumberField::optional(t("solar-vmp"), "V", PANEL_V, lens)
                .hint(t("solar-vmp-hint"))
                .view(app)
        })
    };
    let coefficient = NumberField::new(
        t("solar-temperature"),
        "%/K",
        TEMP_COEFF_PER_K,
        Lens::array(row, |a| a.temp_coeff_per_k, |a, v| a.temp_coeff_per_k = v),
    );
    let own_use = NumberField::new(
        t("solar-self-use"),
        "W",
        SELF_USE_W,
        Lens::array(row, |a| a.self_use.0, |a, v| a.self_use = Watts(v)),
    );
    view! {
        <div class="fields">
            {efficiency} {best_voltage} {shares(app, row, parts)}
            {NumberField { scale: 100.0, ..coefficient }
                .hint(t("solar-temperature-hint"))
                .view(app)}
            {own_use.view(app)}
        </div>
        {text_field(
            app,
            t("solar-name"),
            String::new(),
            Lens::array(row, |a| a.name.clone(), |a, v| a.name = v),
        )}
    }
    .into_any()
}
