//! The user's own prices and weights.

use crate::advice::changes::cost::{driving_hour, hook_up_night};
use crate::i18n::Arg;
use crate::model::limits::{PRICE, WEIGHT_KG};
use crate::model::{Prices, Setup};
use crate::units::{Kilograms, Measure, Money};
use crate::view::lang::{t, t_args};
use crate::view::lens::Lens;
use crate::view::reader;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, disclosure, text_field};
use crate::view::words::names::money;
use leptos::prelude::*;

/// Characters of a currency.
const CURRENCY_CHARS: usize = 4;

fn price(
    app: AppState,
    label: String,
    get: fn(&Prices) -> Money,
    set: fn(&mut Prices, Money),
) -> AnyView {
    let lens = Lens::new(
        move |setup| Some(get(&setup.prices).0),
        move |setup, value| set(&mut setup.prices, Money(value)),
    );
    NumberField::new(label, "", PRICE, lens).view(app)
}

fn weight(
    app: AppState,
    label: String,
    get: fn(&Prices) -> Kilograms,
    set: fn(&mut Prices, Kilograms),
) -> AnyView {
    let lens = Lens::new(
        move |setup| Some(get(&setup.prices).0),
        move |setup, value| set(&mut setup.prices, Kilograms(value)),
    );
    NumberField::of(Measure::Weight, label, WEIGHT_KG, lens).view(app)
}

/// What is counted for driving and hook-up, where ways are compared.
fn counted(setup: &Setup) -> String {
    let hour = money(setup, driving_hour(&setup.prices));
    let night = money(setup, hook_up_night(&setup.prices));
    t_args("prices-counted", &[("hour", Arg::Text(&hour)), ("night", Arg::Text(&night))])
}

/// The form, closed until it is tapped.
#[must_use]
pub fn form(app: AppState) -> AnyView {
    let currency = Lens::<String>::of(reader::currency, |setup, text| {
        let typed: String = text.chars().take(CURRENCY_CHARS).collect();
        setup.prices.currency = reader::stored_currency(&typed);
    });
    disclosure(
        t("prices-title"),
        false,
        view! {
            <p>{t("prices-told")}</p>
            <p>{move || app.setup.with(counted)}</p>
            <div class="fields">
                {text_field(app, t("prices-currency"), String::new(), currency)}
                {price(app, t("prices-solar"), |p| p.solar_per_100w, |p, v| p.solar_per_100w = v)}
                {weight(
                    app,
                    t("prices-solar-weight"),
                    |p| p.solar_kg_per_100w,
                    |p, v| p.solar_kg_per_100w = v,
                )}
                {price(app, t("prices-lead"), |p| p.lead_per_100ah, |p, v| p.lead_per_100ah = v)}
                {weight(
                    app,
                    t("prices-lead-weight"),
                    |p| p.lead_kg_per_100ah,
                    |p, v| p.lead_kg_per_100ah = v,
                )}
                {price(
                    app,
                    t("prices-lithium"),
                    |p| p.lithium_per_100ah,
                    |p, v| p.lithium_per_100ah = v,
                )}
                {weight(
                    app,
                    t("prices-lithium-weight"),
                    |p| p.lithium_kg_per_100ah,
                    |p, v| p.lithium_kg_per_100ah = v,
                )}
                {price(app, t("prices-dc-dc"), |p| p.dcdc, |p, v| p.dcdc = v)}
            </div>
        }
        .into_any(),
    )
}
