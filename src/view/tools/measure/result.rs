//! What was measured, how sure it is, and the load that takes it over.

use super::bench::Bench;
use super::method::Method;
use crate::advice::on_site::measure::{Field, MeasureError, MeasureWarning, Measured, Quantity};
use crate::i18n::Arg;
use crate::model::limits::MAX_LOADS;
use crate::model::{Draw, Feed, Load, Setup};
use crate::units::{Hours, WattHours};
use crate::view::icons::Icon;
use crate::view::lang::{
    amps, duration, key, percent, quantity, t, t_args, temperature, volts, watt_hours,
    watt_hours_a_day, watts,
};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{button, select_field};
use crate::view::words::names::load_name;
use leptos::prelude::*;

/// The result, following the readings.
pub(super) fn view(app: AppState, bench: Bench) -> AnyView {
    let measured = Memo::new(move |_| {
        let method = bench.method.get();
        bench.readings.with(|readings| app.setup.with(|setup| readings.measured(method, setup)))
    });
    let shown = move || match measured.get() {
        None => view! { <p>{t("measured-missing")}</p> }.into_any(),
        Some(Err(error)) => {
            view! { <p class="field-fault" role="alert">{error_words(&error)}</p> }.into_any()
        }
        Some(Ok(measured)) => result(&measured),
    };
    // Which loads are offered depends on where it was read and on which loads there are; the
    // figures themselves do not build the list again.
    let offered = Memo::new(move |_| {
        let ok = measured.with(|measured| matches!(measured, Some(Ok(_))));
        let method = bench.method.get();
        let feed = feed_of(method, bench.readings.with(|r| r.is_at_socket(method)));
        ok.then(|| app.setup.with(|setup| offered(setup, method, feed)))
    });
    view! {
        <div class="measured" aria-live="polite">{shown}</div>
        {move || offered.get().map(|loads| taker(app, bench, measured, loads))}
    }
    .into_any()
}

/// Which loads a reading can be of: those fed from where it was read.
fn feed_of(method: Method, at_socket: bool) -> Option<Feed> {
    match method {
        Method::Fridge => None,
        _ if at_socket => Some(Feed::Inverter),
        _ => Some(Feed::Dc),
    }
}

fn offered(setup: &Setup, method: Method, feed: Option<Feed>) -> Vec<(Option<u32>, String)> {
    let mut list: Vec<(Option<u32>, String)> = setup
        .loads
        .iter()
        .filter(|load| feed.is_none_or(|feed| load.feed == feed))
        .map(|load| (Some(load.id), load_name(load)))
        .collect();
    // A share of the time alone makes no load.
    if method != Method::Fridge && setup.loads.len() < MAX_LOADS {
        list.push((None, t("measured-new")));
    }
    list
}

fn taker(
    app: AppState,
    bench: Bench,
    measured: Memo<Option<Result<Measured, MeasureError>>>,
    loads: Vec<(Option<u32>, String)>,
) -> AnyView {
    if loads.is_empty() {
        return view! { <p>{t("measured-no-load")}</p> }.into_any();
    }
    let options = loads.iter().map(|(_, name)| name.clone()).collect();
    let ids: Vec<Option<u32>> = loads.iter().map(|(id, _)| *id).collect();
    let target = bench.target;
    if !ids.contains(&target.get_untracked()) {
        target.try_set(ids.first().copied().flatten());
    }
    let known = ids.clone();
    let lens = Lens::new(
        move |_| target.try_get().map(|id| known.iter().position(|k| *k == id).unwrap_or(0)),
        move |_, index: usize| {
            if let Some(id) = ids.get(index) {
                target.try_set(*id);
            }
        },
    );
    let take = move || {
        let Some(Ok(measured)) = measured.get_untracked() else { return };
        let id = target.get_untracked();
        let name = loads.iter().find(|(other, _)| *other == id).map(|(_, name)| name.clone());
        let at_socket = bench
            .readings
            .with_untracked(|readings| readings.is_at_socket(bench.method.get_untracked()));
        let told = t_args("toast-measured", &[("name", Arg::Text(&name.unwrap_or_default()))]);
        app.edit_with_undo(told, |setup| {
            if let Some(id) = id {
                if let Some(load) = setup.load_mut(id) {
                    *load = measured.applied_to(load);
                }
            } else {
                let feed = if at_socket { Feed::Inverter } else { Feed::Dc };
                let new = Load {
                    id: setup.fresh_load_id(),
                    enabled: true,
                    quantity: 1,
                    feed,
                    ..Load::default()
                };
                setup.loads.push(measured.applied_to(&new));
            }
        });
    };
    view! {
        <div class="fields">{select_field(app, t("measured-for"), options, lens)}</div>
        <p><small>{t("measured-one")}</small></p>
        {button(Some(Icon::Done), t("measured-take"), take)}
    }
    .into_any()
}

fn result(measured: &Measured) -> AnyView {
    let error = measured.plus_minus_frac;
    let around = |middle: f64, say: &dyn Fn(f64) -> String| {
        let (low, high) = (say((middle * (1.0 - error)).max(0.0)), say(middle * (1.0 + error)));
        t_args("measured-band", &[("low", Arg::Text(&low)), ("high", Arg::Text(&high))])
    };
    let say_watts = |value: f64| watts(crate::units::Watts(value));
    let (figure, band, detail) = match measured.found {
        Quantity::Draw(draw) => {
            let detail = match draw {
                Draw::Power { .. } => None,
                Draw::Current { amps: current, volts: voltage } => {
                    Some(format!("{} × {}", amps(current), volts(voltage)))
                }
            };
            let power = draw.watts();
            (watts(power), around(power.0, &say_watts), detail)
        }
        Quantity::PerDay(per_day) => {
            let band = around(per_day.0, &|value| watt_hours(WattHours(value)));
            (watt_hours_a_day(per_day), band, None)
        }
        Quantity::Duty { seen_frac, frac_at_25c } => {
            let seen = percent(seen_frac);
            let detail = t_args("measured-seen", &[("seen", Arg::Text(&seen))]);
            let at_25c = percent(frac_at_25c);
            let figure = t_args("measured-duty", &[("share", Arg::Text(&at_25c))]);
            (figure, around(frac_at_25c, &|value| percent(value.min(1.0))), Some(detail))
        }
    };
    let plus_minus = percent(error);
    let battery = measured.battery_side.map(|power| {
        let power = watts(power);
        view! { <p>{t_args("measured-battery", &[("power", Arg::Text(&power))])}</p> }
    });
    let useless = (error >= 0.995).then(|| {
        view! { <p class="notice"><strong>{t("measured-useless")}</strong></p> }
    });
    let warnings: Vec<AnyView> = measured
        .warnings
        .iter()
        .map(|warning| {
            view! { <li class="found found-warning">{warning_words(warning)}</li> }.into_any()
        })
        .collect();
    view! {
        <p class="measured-figure" data-testid="measured-figure">
            <strong>{figure}</strong>
            " "
            <span>{t_args("measured-plus-minus", &[("error", Arg::Text(&plus_minus))])}</span>
        </p>
        {detail.map(|detail| view! { <p>{detail}</p> })}
        <p>{band}</p>
        {battery}
        {useless}
        <ul class="founds">{warnings}</ul>
    }
    .into_any()
}

fn field_name(field: Field) -> String {
    t(match field {
        Field::Current => key!("read-current"),
        Field::Voltage => key!("read-voltage"),
        Field::Power => key!("read-power"),
        Field::Energy => key!("read-energy"),
        Field::Charge => key!("read-after"),
        Field::Elapsed => key!("read-hours"),
        Field::Ran => key!("read-ran"),
        Field::Accuracy => key!("read-accuracy"),
        Field::Air => key!("read-air"),
        Field::Background => key!("read-background"),
        Field::Sun => key!("read-sun"),
    })
}

fn error_words(error: &MeasureError) -> String {
    let at = |key: &str, field: Field| t_args(key, &[("field", Arg::Text(&field_name(field)))]);
    match *error {
        MeasureError::OutOfRange(field) => at(key!("measure-out-of-range"), field),
        MeasureError::NotPositive(field) => at(key!("measure-not-positive"), field),
        MeasureError::NoDifference { .. } => t("measure-no-difference"),
        MeasureError::RanLongerThanWatched { ran, watched } => {
            let (ran, watched) = (duration(ran), duration(watched));
            let ran = ("ran", Arg::Text(ran.as_str()));
            t_args("measure-ran-longer", &[ran, ("watched", Arg::Text(&watched))])
        }
        MeasureError::BackgroundExplainsAll { background, read } => {
            let (others, read) = (watt_hours(background), watt_hours(read));
            let others = ("others", Arg::Text(others.as_str()));
            t_args("measure-background-all", &[others, ("read", Arg::Text(&read))])
        }
        MeasureError::AirTooCold { air } => {
            t_args("measure-too-cold", &[("air", Arg::Text(&temperature(air)))])
        }
    }
}

fn warning_words(warning: &MeasureWarning) -> String {
    let share =
        |key: &str, share_frac: f64| t_args(key, &[("share", Arg::Text(&percent(share_frac)))]);
    let time = |key: &str, time: Hours| t_args(key, &[("time", Arg::Text(&duration(time)))]);
    match *warning {
        MeasureWarning::CoarseReading { share_frac } => share(key!("warn-coarse"), share_frac),
        MeasureWarning::AboveMultimeter { current } => {
            t_args("warn-multimeter", &[("current", Arg::Text(&amps(current)))])
        }
        MeasureWarning::BatteryNotFull => t("warn-not-full"),
        MeasureWarning::StillAbsorbing => t("warn-absorbing"),
        MeasureWarning::SunTooWeak { on, could } => {
            let (on, could) = (amps(on), amps(could));
            let on = ("on", Arg::Text(on.as_str()));
            t_args("warn-weak-sun", &[on, ("could", Arg::Text(&could))])
        }
        MeasureWarning::SunUnknown => t("warn-sun-unknown"),
        MeasureWarning::Drifted { share_frac } => share(key!("warn-drifted"), share_frac),
        MeasureWarning::ChargedMeanwhile => t("warn-charged"),
        MeasureWarning::BelowMonitorThreshold { current } => {
            t_args("warn-threshold", &[("current", Arg::Text(&quantity(current.0, 2, "A")))])
        }
        MeasureWarning::LessThanADay { watched } => time(key!("warn-less-than-a-day"), watched),
        MeasureWarning::FewCycles { cycles } => {
            t_args("warn-few-cycles", &[("n", Arg::Count(i32::try_from(cycles).unwrap_or(0)))])
        }
        MeasureWarning::NeverStopped => t("warn-never-stopped"),
        MeasureWarning::NotASine => t("warn-not-sine"),
    }
}
