//! The van parked and unused: until when the battery stands, and whether it may freeze.

use super::place_climate::climate_here;
use crate::forecast::parked::parked_day;
use crate::i18n::Arg;
use crate::model::limits::{AIR_C, FRAC, Range, STANDBY_W};
use crate::model::{Feed, Setup, Usage};
use crate::physics::battery::BankPhysics;
use crate::physics::battery::storage::{Parked, ParkedDay, parked};
use crate::units::{Amps, Celsius, HOURS_PER_DAY, Hours, Measure, Watts};
use crate::view::lang::{Shown, amps, full_date, key, t, t_args, temperature};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{Fact, NumberField, date_field, facts, made_when_open};
use leptos::prelude::*;
use time::{Date, Duration};

/// Days beyond which more days say nothing.
const LONG_DAYS: f64 = 730.0;

/// Closed until somebody asks.
pub(super) fn view(app: AppState) -> AnyView {
    made_when_open(Signal::stored(t("parked-open")), move || inside(app))
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
    let own_air = RwSignal::new(None::<f64>);
    let from = RwSignal::new(app.setup.with_untracked(|setup| {
        setup.trip.start().saturating_add(Duration::days(i64::from(setup.trip.nights)))
    }));
    let climate = climate_here(app);
    let bank = Memo::new(move |_| app.setup.with(|s| s.bank.clone()));
    let result = Memo::new(move |_| {
        let (from, climate, own_air) = (from.get(), climate.get(), own_air.get());
        bank.with(|bank| {
            let physics = BankPhysics::new(bank, Hours(1.0));
            parked(&physics, soc_frac.get(), Watts(standing.get()), |day| match own_air {
                Some(air) => ParkedDay::steady(Celsius(air)),
                None => {
                    let day = i64::try_from(day).unwrap_or(0);
                    parked_day(bank.place, &climate, from.saturating_add(Duration::days(day)))
                }
            })
        })
    });
    let in_amps = Lens::new(
        move |setup| Some(standing.try_get()? / setup.bank.system.nominal().0),
        move |setup, amps: f64| {
            standing.try_set(amps * setup.bank.system.nominal().0);
        },
    );
    let volts = app.setup.with_untracked(|setup| setup.bank.system.nominal());
    let limits = Range { max: STANDBY_W.max / volts.0, ..STANDBY_W };
    let watts = Lens::signal(standing);
    let standing_field = NumberField::new(t("parked-draw"), Watts::UNIT, STANDBY_W, watts)
        .hint(t("parked-draw-hint"));
    let amps_field = NumberField::new(t("parked-draw-amps"), Amps::UNIT, limits, in_amps);
    let soc_field = NumberField::percent(t("parked-soc"), FRAC, Lens::signal(soc_frac));
    let air_field = NumberField::optional_of(
        Measure::Temperature,
        t("parked-air"),
        AIR_C,
        Lens::signal(own_air),
    )
    .hint(t("parked-air-hint"));
    view! {
        <p class="field-hint">{t("parked-hint")}</p>
        <div class="fields">
            {date_field(app, t("parked-from"), Lens::signal(from))}
            {standing_field.view(app)} {amps_field.view(app)}
            {soc_field.view(app)} {air_field.view(app)}
        </div>
        {move || figures(&result.get(), from.get())}
        {move || frost(&result.get(), from.get())}
    }
    .into_any()
}

/// The date so long after another.
fn date_after(from: Date, time: Hours) -> Date {
    from.saturating_add(Duration::days((time.0 / HOURS_PER_DAY) as i64))
}

fn days(time: Hours) -> String {
    let days = time.0 / HOURS_PER_DAY;
    if days > LONG_DAYS {
        return t("parked-years");
    }
    t_args("parked-days", &[("days", Shown::new(days, u8::from(days < 9.95)).arg())])
}

/// A time from a date on, with the date it ends on.
fn until(from: Date, time: Hours) -> String {
    if !time.is_finite() {
        return t("parked-years");
    }
    let (days, date) = (days(time), full_date(date_after(from, time)));
    t_args("parked-until", &[("days", Arg::Text(&days)), ("date", Arg::Text(&date))])
}

fn figures(result: &Parked, from: Date) -> AnyView {
    facts(vec![
        Fact::new(t("parked-drain"), amps(result.drain)),
        Fact::new(t("parked-low"), until(from, result.until_low)),
        Fact::new(t("parked-empty"), until(from, result.until_empty)),
    ])
}

fn frost(result: &Parked, from: Date) -> AnyView {
    let by = |key: &'static str, time: Hours| {
        let date = full_date(date_after(from, time));
        t_args(key, &[("date", Arg::Text(&date))])
    };
    let low = Some(result.until_low).filter(|low| low.is_finite());
    let (Some(first), Some(at), Some(flat)) =
        (result.freezes_at_first, result.freezes_at_low, result.freezes_at_flat)
    else {
        let charge = low.map(|low| by(key!("parked-charge-by"), low));
        return view! { <p class="field-hint">{charge} " " {t("parked-lithium")}</p> }.into_any();
    };
    let (first, at, flat) = (temperature(first), temperature(at), temperature(flat));
    let text = t_args(
        "parked-freezes",
        &[("first", Arg::Text(&first)), ("at", Arg::Text(&at)), ("flat", Arg::Text(&flat))],
    );
    let freezes = result.freezes_after;
    let first_harm = freezes.into_iter().chain(low).reduce(Hours::min);
    let charge = first_harm.map(|harm| by(key!("parked-charge-by"), harm));
    let danger = freezes.map(|after| {
        view! { " " {by(key!("parked-frost-from"), after)} " " {t("parked-frost")} }
    });
    let class = if danger.is_some() { "notice" } else { "field-hint" };
    view! { <p class=class>{charge} {danger} " " {text}</p> }.into_any()
}
