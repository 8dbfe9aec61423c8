//! Generators, fuel cells and wind turbines.

use super::every::every_field;
use super::rows::row_keys;
use super::stages;
use crate::forecast::Charger;
use crate::i18n::Arg;
use crate::model::limits::{CHARGER_A, FUEL_L_H, HOURS_A_DAY, MAX_OTHER};
use crate::model::{OtherSource, OtherSourceKind};
use crate::units::{Amps, Hours, Litres, Measure};
use crate::view::icons::Icon;
use crate::view::lang::{t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{
    Danger, NumberField, caution, choice_row, quiet_button, time_field, toggle,
};
use leptos::prelude::*;

const KINDS: [OtherSourceKind; 3] =
    [OtherSourceKind::Generator, OtherSourceKind::FuelCell, OtherSourceKind::Wind];

/// Methanol a fuel cell burns for some 6 A [L/h] (common practice, no source).
const FUEL_CELL_L_H: Litres = Litres(0.07);

/// Another kind burns another amount; wind burns none.
fn set_kind(source: &mut OtherSource, kind: OtherSourceKind) {
    if source.kind != kind {
        source.kind = kind;
        source.fuel_per_hour = match kind {
            OtherSourceKind::Generator => OtherSource::default().fuel_per_hour,
            OtherSourceKind::FuelCell => FUEL_CELL_L_H,
            OtherSourceKind::Wind => Litres::ZERO,
        };
    }
}

pub(super) fn view(app: AppState) -> AnyView {
    let keys = row_keys(app, |setup| &setup.other);
    let count = Memo::new(move |_| keys.with(Vec::len));
    let burns = Memo::new(move |_| {
        app.setup
            .with(|setup| setup.other.iter().any(|source| source.kind != OtherSourceKind::Wind))
    });
    let add = move || app.edit_apart(|setup| setup.other.push(OtherSource::default()));
    view! {
        <div class="card-head">
            <h2>{t("other-title")}</h2>
            {move || {
                (count.get() < MAX_OTHER)
                    .then(|| quiet_button(Some(Icon::Add), t("other-add"), add))
            }}
        </div>
        {move || {
            (count.get() == 0).then(|| view! { <p class="quiet">{t("other-none")}</p> })
        }}
        <For each=move || keys.get() key=|key| *key children=move |(_, row)| source(app, row) />
        {move || burns.get().then(|| caution(Danger::CarbonMonoxide))}
    }
    .into_any()
}

fn source(app: AppState, row: usize) -> AnyView {
    let number = Arg::Count(row as i32 + 1);
    let title = t_args("other-number", &[("n", number.clone())]);
    let told = t_args("other-deleted", &[("n", number)]);
    let delete = move || {
        app.edit_with_undo(told.clone(), |setup| {
            if row < setup.other.len() {
                setup.other.remove(row);
            }
        });
    };
    let burns = Memo::new(move |_| {
        app.setup.with(|setup| {
            setup.other.get(row).is_some_and(|source| source.kind != OtherSourceKind::Wind)
        })
    });
    let fuel = Lens::other(row, |o| o.fuel_per_hour.0, |o, v| o.fuel_per_hour = Litres(v));
    view! {
        <fieldset class="group row-card">
            <legend>{title}</legend>
            {toggle(
                app,
                t("counts-in"),
                None,
                Lens::other(row, |o| o.enabled, |o, v| o.enabled = v),
            )}
            {choice_row(
                app,
                t("other-kind"),
                vec![t("other-generator"), t("other-fuel-cell"), t("other-wind")],
                Lens::other(row, |o| o.kind, set_kind).choice(&KINDS),
            )}
            <div class="fields">
                {NumberField::new(
                        t("other-amps"),
                        "A",
                        CHARGER_A,
                        Lens::other(row, |o| o.amps.0, |o, v| o.amps = Amps(v)),
                    )
                    .hint(t("amps-hint"))
                    .view(app)}
                {every_field(
                    app,
                    t("other-every"),
                    move |s| s.other.get(row).map(|o| o.every),
                    move |s, every| {
                        if let Some(o) = s.other.get_mut(row) {
                            o.every = every;
                        }
                    },
                )}
                {time_field(
                    app,
                    t("other-from"),
                    Lens::other(row, |o| o.from_min, |o, v| o.from_min = v),
                )}
                {NumberField::new(
                        t("other-hours"),
                        "h",
                        HOURS_A_DAY,
                        Lens::other(row, |o| o.hours.0, |o, v| o.hours = Hours(v)),
                    )
                    .view(app)}
                {move || {
                    burns
                        .get()
                        .then(|| {
                            NumberField::of(Measure::FuelRate, t("other-fuel"), FUEL_L_H, fuel.clone())
                                .view(app)
                        })
                }}
            </div>
            {stages::told(app, Charger::Other(row))}
            {move || {
                (!burns.get()).then(|| view! { <p class="field-hint">{t("other-wind-hint")}</p> })
            }}
            <div class="button-row">{quiet_button(Some(Icon::Delete), t("other-delete"), delete)}</div>
        </fieldset>
    }
    .into_any()
}
