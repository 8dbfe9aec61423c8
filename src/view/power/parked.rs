//! The van parked and unused: how long the battery stands, and whether it may freeze.

use super::bank_figures::coldest_hour;
use crate::i18n::Arg;
use crate::model::limits::{AIR_C, FRAC, STANDBY_W};
use crate::model::{Feed, Setup, Usage};
use crate::physics::battery::BankPhysics;
use crate::physics::battery::storage::{Parked, parked};
use crate::units::{Celsius, HOURS_PER_DAY, Hours, Watts};
use crate::view::lang::{Shown, amps, celsius, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{Fact, NumberField, disclosure, facts};
use leptos::prelude::*;

/// Days beyond which more days say nothing.
const LONG_DAYS: f64 = 730.0;

/// Closed until somebody asks.
pub(super) fn view(app: AppState) -> AnyView {
    disclosure(t("parked-open"), false, inside(app))
}

/// What stays on when nobody is aboard: appliances that are always on, and what sleeps.
fn stays_on(setup: &Setup) -> Watts {
    let aboard: Watts = setup
        .enabled_loads()
        .filter(|load| load.feed != Feed::Inverter)
        .map(|load| {
            let each = match load.usage {
                Usage::AlwaysOn => load.draw.watts(),
                _ => load.standby,
            };
            each * f64::from(load.quantity)
        })
        .sum();
    let controllers: Watts =
        setup.solar.iter().filter(|array| array.enabled).map(|array| array.self_use).sum();
    aboard + controllers
}

fn inside(app: AppState) -> AnyView {
    let start = app.setup.with_untracked(stays_on).min(Watts(STANDBY_W.max));
    // Two decimals: what is shown in the field is what is counted.
    let standing = RwSignal::new((start.0 * 100.0).round() / 100.0);
    let soc_frac = RwSignal::new(1.0);
    let air = RwSignal::new(coldest_hour(app).get_untracked().0.round());
    let bank = Memo::new(move |_| app.setup.with(|s| s.bank.clone()));
    let result = Memo::new(move |_| {
        bank.with(|bank| {
            let physics = BankPhysics::new(bank, Hours(1.0));
            parked(&physics, soc_frac.get(), Watts(standing.get()), Celsius(air.get()))
        })
    });
    let standing_field =
        NumberField::new(t("parked-draw"), Watts::UNIT, STANDBY_W, Lens::signal(standing))
            .hint(t("parked-draw-hint"));
    let soc_field = NumberField::percent(t("parked-soc"), FRAC, Lens::signal(soc_frac));
    let air_field = NumberField::new(t("parked-air"), Celsius::UNIT, AIR_C, Lens::signal(air));
    view! {
        <p class="field-hint">{t("parked-hint")}</p>
        <div class="fields">
            {standing_field.view(app)}
            {soc_field.view(app)}
            {air_field.view(app)}
        </div>
        {move || figures(&result.get())}
        {move || frost(&result.get(), Celsius(air.get()))}
    }
    .into_any()
}

fn days(time: Hours) -> String {
    let days = time.0 / HOURS_PER_DAY;
    if days > LONG_DAYS {
        return t("parked-years");
    }
    t_args("parked-days", &[("days", Shown::new(days, u8::from(days < 9.95)).arg())])
}

fn figures(result: &Parked) -> AnyView {
    facts(vec![
        Fact::new(t("parked-drain"), amps(result.drain)),
        Fact::new(t("parked-low"), days(result.until_low)),
        Fact::new(t("parked-empty"), days(result.until_empty)),
    ])
}

fn frost(result: &Parked, air: Celsius) -> AnyView {
    let (Some(first), Some(low), Some(flat)) =
        (result.freezes_at_first, result.freezes_at_low, result.freezes_at_flat)
    else {
        return view! { <p class="field-hint">{t("parked-lithium")}</p> }.into_any();
    };
    let (first, low, flat) = (celsius(first), celsius(low), celsius(flat));
    let text = t_args(
        "parked-freezes",
        &[("first", Arg::Text(&first)), ("at", Arg::Text(&low)), ("flat", Arg::Text(&flat))],
    );
    let danger = result.freezes_after.filter(|after| after.is_finite()).map(|after| {
        let (air, days) = (celsius(air), days(after));
        let text =
            t_args("parked-frost-after", &[("air", Arg::Text(&air)), ("days", Arg::Text(&days))]);
        view! { " " {text} " " {t("parked-frost")} }
    });
    let class = if danger.is_some() { "notice" } else { "field-hint" };
    view! { <p class=class>{text} {danger}</p> }.into_any()
}
