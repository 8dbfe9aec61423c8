//! What the log shows, one line each, to be taken over one by one.

use super::state::{Asked, LogState};
use crate::advice::log::capacity::{CapacityFound, CapacityMissing, CapacityWay};
use crate::advice::log::held::LogTrip;
use crate::advice::log::steps::{Appliance, Pattern};
use crate::advice::log::take_over::{
    bank_with, likely_load, measured_load, standby_load, usual_times,
};
use crate::advice::log::use_by_hour::HourUse;
use crate::advice::log::{Lacking, Learned};
use crate::i18n::Arg;
use crate::model::limits::MAX_LOADS;
use crate::model::{Feed, Group, Load, Setup};
use crate::units::{Hours, Watts};
use crate::view::icons::Icon;
use crate::view::jobs::Stage;
use crate::view::lang::{
    amp_hours, clock, duration, key, percent, quantity, t, t_args, watt_hours_a_day, watts,
};
use crate::view::lens::Lens;
use crate::view::search::SearchResult;
use crate::view::state::AppState;
use crate::view::tools::on_site::fit_words;
use crate::view::widgets::{Danger, DataTable, button, caution, select_field, table_disclosure};
use crate::view::words::loads::times_words;
use crate::view::words::names::{counted, load_name};
use leptos::prelude::*;

/// Nine in ten of a normal spread lie within so many standard deviations.
const NINE_IN_TEN_SD: f64 = 1.645;
/// Appliances shown at most.
const MOST_APPLIANCES: usize = 8;

/// The card, once something is known.
pub(super) fn view(app: AppState, state: LogState) -> AnyView {
    view! {
        {state.learned.failure()}
        {move || state.learned.result.get().map(|result| card(app, &result.0))}
    }
    .into_any()
}

fn card(app: AppState, result: &SearchResult<Asked, Learned>) -> AnyView {
    let learned = &result.found;
    if result.stage != Stage::Done {
        return view! { <p class="working">{t("log-working")}</p> }.into_any();
    }
    let (setup, _) = &result.query;
    let span = t_args(
        "log-span",
        &[
            ("n", counted(learned.rows)),
            ("span", Arg::Text(&duration(learned.span))),
            ("covered", Arg::Text(&duration(learned.covered))),
        ],
    );
    let appliances: Vec<AnyView> = learned
        .appliances
        .iter()
        .take(MOST_APPLIANCES)
        .map(|found| appliance(app, setup, found, learned))
        .collect();
    view! {
        <section class="card" aria-labelledby="log-found-title" data-testid="log-found">
            <h2 id="log-found-title" tabindex="-1">{t("log-found")}</h2>
            <p class="quiet">{span}</p>
            {learned.lacking.iter().map(lacking).collect::<Vec<_>>()}
            {floor(app, learned)}
            {by_hour(&learned.by_hour)}
            {income(learned)}
            {capacity(app, setup, learned)}
            {appliances}
            {held(app, setup, learned)}
            {caution(Danger::SafetyDevices)}
            <p><small>{t("log-how")}</small></p>
        </section>
    }
    .into_any()
}

fn line(text: String, more: AnyView) -> AnyView {
    view! {
        <div class="found-line" data-testid="log-line">
            <p class="learned">{text}</p>
            {more}
        </div>
    }
    .into_any()
}

fn take(app: AppState, what: String, change: impl Fn(&mut Setup) + 'static) -> AnyView {
    let name = t_args("log-take", &[("what", Arg::Text(&what))]);
    let told = t_args("toast-log-taken", &[("what", Arg::Text(&what))]);
    button(Some(Icon::Done), name, move || app.edit_with_undo(told.clone(), &change))
}

fn lacking(lacking: &Lacking) -> AnyView {
    let time = |key: &str, time: Hours| t_args(key, &[("time", Arg::Text(&duration(time)))]);
    let text = match *lacking {
        Lacking::TooShort(covered) => time(key!("log-lacks-time"), covered),
        Lacking::Gaps(frac) => t_args("log-lacks-gaps", &[("share", Arg::Text(&percent(frac)))]),
        Lacking::NoPower => t("log-lacks-power"),
        Lacking::NoSoc => t("log-lacks-soc"),
        Lacking::TooCoarse(step) => time(key!("log-lacks-rows"), step),
        Lacking::NeverDark => t("log-lacks-night"),
    };
    view! { <p class="notice" role="status">{text}</p> }.into_any()
}

/// A likely error as nine in ten lie within it.
fn plus_minus(sd: Watts) -> String {
    watts(sd * NINE_IN_TEN_SD)
}

fn floor(app: AppState, learned: &Learned) -> Option<AnyView> {
    let floor = learned.floor?;
    let power = watts(floor.power);
    if !floor.seen_between_runs {
        return Some(line(
            t_args("log-floor-most", &[("power", Arg::Text(&power))]),
            ().into_any(),
        ));
    }
    let error = plus_minus(floor.sd);
    let text = t_args("log-floor", &[("power", Arg::Text(&power)), ("error", Arg::Text(&error))]);
    let explained = learned.explained.map(|explained| {
        let explained = watts(explained);
        view! { <p>{t_args("log-floor-listed", &[("power", Arg::Text(&explained))])}</p> }
    });
    let room = app.setup.with_untracked(|setup| setup.loads.len() < MAX_LOADS);
    let taken = learned.unexplained().filter(|_| room).map(|left| {
        let what = format!("{} {}", t("log-standby"), watts(left));
        take(app, what, move |setup| {
            let load = standby_load(setup.fresh_load_id(), t("log-standby"), left);
            setup.loads.push(load);
        })
    });
    Some(line(text, view! { {explained} {taken} }.into_any()))
}

fn by_hour(hours: &[Option<HourUse>; 24]) -> Option<AnyView> {
    let known: Vec<Vec<String>> = hours
        .iter()
        .enumerate()
        .filter_map(|(hour, used)| {
            let used = (*used)?;
            let from = clock(u16::try_from(hour * 60).unwrap_or(0));
            Some(vec![from, watts(used.mean), duration(used.watched)])
        })
        .collect();
    let mean = hours.iter().flatten();
    let (sum, count) = mean.fold((Watts::ZERO, 0_u32), |(sum, n), h| (sum + h.mean, n + 1));
    (count > 0).then(|| {
        let (n, power) = (known.len(), watts(sum / f64::from(count)));
        let text = t_args("log-hours", &[("n", counted(n)), ("power", Arg::Text(&power))]);
        let table = DataTable {
            caption: t("log-hours-title"),
            heads: vec![t("log-hours-from"), t("log-hours-mean"), t("log-hours-watched")],
            rows: known,
        };
        let title = Signal::derive(|| t("log-hours-title"));
        line(text, table_disclosure(title, Signal::derive(move || table.clone())))
    })
}

fn income(learned: &Learned) -> Option<AnyView> {
    let income = learned.income.as_ref()?;
    let (energy, peak) = (watt_hours_a_day(income.mean_per_day()), watts(income.peak()));
    let name = if income.measured { key!("log-in") } else { key!("log-in-least") };
    let text = t_args(
        name,
        &[
            ("n", counted(income.days.len())),
            ("energy", Arg::Text(&energy)),
            ("peak", Arg::Text(&peak)),
        ],
    );
    Some(line(text, ().into_any()))
}

fn capacity(app: AppState, setup: &Setup, learned: &Learned) -> AnyView {
    let found = match learned.capacity {
        Ok(found) => found,
        Err(missing) => return line(capacity_missing(missing), ().into_any()),
    };
    let rated = setup.bank.rated_capacity();
    let (capacity, label) = (amp_hours(found.capacity), amp_hours(rated));
    let (error, share) =
        (percent(NINE_IN_TEN_SD * found.error_frac), percent(found.capacity / rated));
    let text = t_args(
        "log-capacity",
        &[
            ("capacity", Arg::Text(&capacity)),
            ("error", Arg::Text(&error)),
            ("share", Arg::Text(&share)),
            ("label", Arg::Text(&label)),
        ],
    );
    let way = t(match found.way {
        CapacityWay::BetweenStates => key!("log-capacity-counted"),
        CapacityWay::RestedVoltage => key!("log-capacity-rested"),
    });
    let differs = differs(setup, &found);
    let taken = differs
        .then(|| take(app, capacity, move |setup| setup.bank = bank_with(&setup.bank, &found)));
    let known = (!differs).then(|| view! { <p class="quiet">{t("log-known")}</p> });
    line(text, view! { <p><small>{way}</small></p> {taken} {known} }.into_any())
}

/// Further from what is entered than its own error, half a percent at least.
fn differs(setup: &Setup, found: &CapacityFound) -> bool {
    let off = (found.capacity / setup.bank.aged_capacity() - 1.0).abs();
    off > found.error_frac.max(0.005)
}

fn capacity_missing(missing: CapacityMissing) -> String {
    match missing {
        CapacityMissing::NoCurrent => t("log-capacity-no-current"),
        CapacityMissing::NoState => t("log-capacity-no-state"),
        CapacityMissing::SmallSwing(swing) => {
            t_args("log-capacity-swing", &[("swing", Arg::Text(&percent(swing)))])
        }
        CapacityMissing::Contradicts => t("log-capacity-contradicts"),
    }
}

fn appliance(app: AppState, setup: &Setup, found: &Appliance, learned: &Learned) -> AnyView {
    let (power, error) = (watts(found.power), plus_minus(found.power_sd));
    let power_text = power.clone();
    let duty = percent(found.duty_frac);
    let run = duration(found.usual_run);
    let (n, power_arg) = (counted(found.runs), ("power", Arg::Text(power.as_str())));
    let error_arg = ("error", Arg::Text(error.as_str()));
    let text = match found.pattern {
        Pattern::Thermostat => {
            let run = ("run", Arg::Text(run.as_str()));
            let duty = ("duty", Arg::Text(duty.as_str()));
            t_args("log-cycles", &[("n", n), power_arg, error_arg, duty, run])
        }
        Pattern::Uses => {
            let times = times_words(&usual_times(found).windows());
            let time = duration(found.per_day);
            let times = ("times", Arg::Text(times.as_str()));
            let time = ("time", Arg::Text(time.as_str()));
            t_args("log-uses", &[("n", n), power_arg, error_arg, time, times])
        }
    };
    let by_night =
        (!learned.whole_day).then(|| view! { <p><small>{t("log-by-night")}</small></p> });
    let Some(trip) = learned.trip.clone() else { return line(text, by_night.into_any()) };
    let mut loads: Vec<(Option<u32>, String)> =
        setup.enabled_loads().map(|load| (Some(load.id), load_name(load))).collect();
    if setup.loads.len() < MAX_LOADS {
        loads.push((None, t("measured-new")));
    }
    let target = RwSignal::new(likely_load(setup, found));
    let ids: Vec<Option<u32>> = loads.iter().map(|(id, _)| *id).collect();
    let names = loads.into_iter().map(|(_, name)| name).collect();
    let known = ids.clone();
    let lens = Lens::new(
        move |_| target.try_get().map(|id| known.iter().position(|k| *k == id).unwrap_or(0)),
        move |_, index: usize| {
            if let Some(id) = ids.get(index) {
                target.try_set(*id);
            }
        },
    );
    let label = t_args("log-is", &[("power", Arg::Text(&power_text))]);
    let found = found.clone();
    let entered = setup.clone();
    let as_known = {
        let (found, trip) = (found.clone(), trip.clone());
        move || {
            let load = target.get().and_then(|id| entered.load(id).cloned());
            let same = load.is_some_and(|load| {
                measured_load(&load, &found, &entered.inverter, &trip, false) == load
            });
            same.then(|| view! { <p class="quiet">{t("log-known")}</p> })
        }
    };
    let taken = take(app, power_text, move |setup| {
        take_appliance(setup, target.get_untracked(), &found, &trip);
    });
    let more = view! {
        {by_night}
        <div class="fields">{select_field(app, label, names, lens)}</div>
        {as_known}
        {taken}
    };
    line(text, more.into_any())
}

fn take_appliance(setup: &mut Setup, id: Option<u32>, found: &Appliance, trip: &LogTrip) {
    let inverter = setup.inverter.clone();
    if let Some(load) = id.and_then(|id| setup.load_mut(id)) {
        *load = measured_load(load, found, &inverter, trip, false);
        return;
    }
    let name = t_args("log-appliance", &[("power", Arg::Text(&watts(found.power)))]);
    let new = Load {
        id: setup.fresh_load_id(),
        name,
        group: Group::Other,
        feed: Feed::Dc,
        enabled: true,
        ..Load::default()
    };
    setup.loads.push(measured_load(&new, found, &inverter, trip, true));
}

/// Points of charge, without a sign.
fn points(frac: f64) -> String {
    quantity(frac.abs() * 100.0, 1, "%")
}

fn held(app: AppState, setup: &Setup, learned: &Learned) -> Option<AnyView> {
    let held = learned.held.as_ref()?;
    let time = duration(Hours(held.hours as f64));
    let (mean, rms) = (points(held.mean_frac), points(held.rms_frac));
    let name = if held.mean_frac >= 0.0 { key!("log-held-high") } else { key!("log-held-low") };
    let text = t_args(
        name,
        &[("time", Arg::Text(&time)), ("mean", Arg::Text(&mean)), ("rms", Arg::Text(&rms))],
    );
    let fit = learned.fit.as_ref().zip(learned.trip.as_ref()).map(|(fit, trip)| {
        let (using, sun, misfit) = fit_words(fit);
        let correction = trip.correction_for(&fit.correction, setup);
        let taken = if setup.correction == correction {
            view! { <p class="quiet">{t("learned-taken")}</p> }.into_any()
        } else {
            take(app, t("log-correction"), move |setup| setup.correction = correction.clone())
        };
        view! {
            <p>{using}</p>
            <p>{sun}</p>
            {misfit}
            {taken}
        }
    });
    Some(line(text, fit.into_any()))
}
