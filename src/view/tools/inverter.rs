//! Inverter check: what may run together, the moment of starting, and the current at the battery.

use super::wiring;
use crate::advice::workshop::inverter_check::{
    self, Clash, Forbidden, InverterFinding, InverterVerdict, OnInverter, clash, demand,
};
use crate::i18n::Arg;
use crate::model::Setup;
use crate::physics::ampacity::Surroundings;
use crate::view::lang::{amps, clock, key, number, pair, quantity, t, t_args, watt_hours, watts};
use crate::view::state::{AppState, Tab};
use crate::view::widgets::{Danger, caution, disclosure, quiet_button};
use crate::view::words::names::{count, load_name_by_id};
use leptos::prelude::*;

/// Pairs and triples shown at once.
const FIRST: usize = 6;

/// The tool.
#[must_use]
pub fn view(
    app: AppState,
    surroundings: RwSignal<Surroundings>,
    picked: RwSignal<Vec<u32>>,
) -> AnyView {
    let loads = Memo::new(move |_| app.setup.with(inverter_check::loads_on));
    let verdict = move || {
        let surroundings = surroundings.get();
        app.setup.with(|setup| said(app, setup, &inverter_check::check(setup, surroundings)))
    };
    view! {
        <p>{t("ac-told")}</p>
        {caution(Danger::Mains)}
        {caution(Danger::CableHeat)}
        {move || {
            loads
                .with(|loads| loads.is_empty())
                .then(|| view! { <p class="notice">{t("ac-none")}</p> })
        }}
        {move || picker(app, loads.get(), picked)}
        {verdict}
    }
    .into_any()
}

fn names(setup: &Setup, ids: &[u32]) -> String {
    let names: Vec<String> = ids.iter().map(|id| load_name_by_id(setup, *id)).collect();
    names.join(" + ")
}

/// Pick loads and see whether they may run together.
fn picker(app: AppState, loads: Vec<OnInverter>, picked: RwSignal<Vec<u32>>) -> Option<AnyView> {
    if loads.is_empty() {
        return None;
    }
    let rows: Vec<AnyView> = loads
        .iter()
        .map(|load| {
            let id = load.id;
            let name = app.setup.with_untracked(|setup| load_name_by_id(setup, id));
            let power = watts(load.running);
            let change = move |event: leptos::ev::Event| {
                let on = event_target_checked(&event);
                picked.try_update(|ids| {
                    ids.retain(|other| *other != id);
                    if on {
                        ids.push(id);
                    }
                });
            };
            view! {
                <label class="choice">
                    <input
                        type="checkbox"
                        prop:checked=move || picked.with(|ids| ids.contains(&id))
                        on:change=change
                    />
                    <span>{name} ", " {power}</span>
                </label>
            }
            .into_any()
        })
        .collect();
    let said = move || {
        let set: Vec<OnInverter> = picked
            .with(|ids| loads.iter().filter(|load| ids.contains(&load.id)).copied().collect());
        if set.is_empty() {
            return view! { <p>{t("ac-pick-none")}</p> }.into_any();
        }
        app.setup.with(|setup| {
            let (running, starting) = demand(&set);
            let (running, starting) = (watts(running), watts(starting));
            let sums = t_args(
                "ac-sums",
                &[("running", Arg::Text(&running)), ("starting", Arg::Text(&starting))],
            );
            let verdict = match clash(&set, &setup.inverter) {
                None => t("ac-fits"),
                Some(why) => clash_words(setup, why),
            };
            view! {
                <p><strong>{verdict}</strong></p>
                <p>{sums}</p>
            }
            .into_any()
        })
    };
    Some(
        view! {
            <section class="card" aria-labelledby="pick-title">
                <h2 id="pick-title">{t("ac-pick")}</h2>
                <fieldset class="field choices">
                    <legend>{t("ac-pick-told")}</legend>
                    <div class="choice-row">{rows}</div>
                </fieldset>
                <div aria-live="polite">{said}</div>
            </section>
        }
        .into_any(),
    )
}

fn clash_words(setup: &Setup, why: Clash) -> String {
    let inverter = &setup.inverter;
    match why {
        Clash::Continuous => {
            let limit = watts(inverter.continuous);
            t_args("ac-too-much", &[("limit", Arg::Text(&limit))])
        }
        Clash::Surge => {
            let limit = watts(inverter.surge.max(inverter.continuous));
            t_args("ac-too-much-at-start", &[("limit", Arg::Text(&limit))])
        }
    }
}

fn finding_words(finding: &InverterFinding) -> String {
    let two = |key: &str, a: (&str, String), b: (&str, String)| {
        t_args(key, &[(a.0, Arg::Text(&a.1)), (b.0, Arg::Text(&b.1))])
    };
    match *finding {
        InverterFinding::NotFitted => t("ac-not-fitted"),
        InverterFinding::FiguresContradict => t("ac-contradict"),
        InverterFinding::SurgeBelowContinuous { surge, continuous } => {
            two(key!("ac-surge-below"), ("surge", watts(surge)), ("continuous", watts(continuous)))
        }
        InverterFinding::TogetherTooMuch { running, continuous } => {
            two(key!("ac-together"), ("running", watts(running)), ("continuous", watts(continuous)))
        }
        InverterFinding::BatteryStrained { current, comfortable } => {
            two(key!("ac-strained"), ("current", amps(current)), ("limit", amps(comfortable)))
        }
        InverterFinding::BatteryOverloaded { current, most } => {
            two(key!("ac-overloaded"), ("current", amps(current)), ("limit", amps(most)))
        }
        InverterFinding::RatingAboveBattery { current, most } => {
            two(key!("ac-rating"), ("current", amps(current)), ("limit", amps(most)))
        }
        InverterFinding::CableTooThin { current, ampacity } => {
            two(key!("ac-cable"), ("current", amps(current)), ("limit", amps(ampacity)))
        }
        InverterFinding::MayCutOut { at_inverter, cut_out } => two(
            key!("ac-cut-out"),
            ("volts", quantity(at_inverter.0, 1, "V")),
            ("limit", quantity(cut_out.0, 1, "V")),
        ),
        InverterFinding::IdleAllDay { per_day } => {
            t_args("ac-idle", &[("energy", Arg::Text(&watt_hours(per_day)))])
        }
    }
}

fn said(app: AppState, setup: &Setup, verdict: &InverterVerdict) -> AnyView {
    let findings: Vec<AnyView> = verdict
        .findings
        .iter()
        .map(|finding| wiring::found(finding.severity(), finding_words(finding)))
        .collect();
    let findings = (!findings.is_empty()).then(|| {
        view! {
            <section class="card" aria-labelledby="ac-found">
                <h2 id="ac-found">{t("ac-found")}</h2>
                <ul class="founds">{findings}</ul>
            </section>
        }
    });
    if !setup.inverter.fitted {
        let to_power = quiet_button(None, t("ac-to-power"), move || app.go(Tab::Power));
        return view! { {findings} {to_power} }.into_any();
    }
    let rate = number(verdict.worst_c_rate_per_hour, 2);
    let together = &verdict.together;
    let worst = (together.running.0 > 0.0).then(|| {
        let (at, what) = (clock(together.at_min), names(setup, &together.ids));
        let power = watts(together.running);
        t_args(
            "ac-worst",
            &[("time", Arg::Text(&at)), ("names", Arg::Text(&what)), ("power", Arg::Text(&power))],
        )
    });
    let rows = [
        (t("ac-continuous"), watts(setup.inverter.continuous)),
        (t("ac-surge"), watts(setup.inverter.surge)),
        (t("ac-rating-current"), amps(verdict.rating_current)),
        (t("ac-worst-current"), amps(verdict.worst_current)),
        (t("ac-c-rate"), rate),
        (t("ac-comfortable"), amps(verdict.battery.comfortable)),
        (t("ac-most"), amps(verdict.battery.most)),
    ];
    let rows: Vec<AnyView> = rows
        .into_iter()
        .map(|(label, value)| {
            view! { <div class="ledger-row"><dt>{label}</dt><dd>{value}</dd></div> }.into_any()
        })
        .collect();
    view! {
        {findings}
        <section class="card" aria-labelledby="ac-currents">
            <h2 id="ac-currents">{t("ac-currents")}</h2>
            {worst.map(|worst| view! { <p>{worst}</p> })}
            <dl class="ledger ledger-wide">{rows}</dl>
            <p><small>{t("ac-va")}</small></p>
        </section>
        {forbidden(setup, &verdict.forbidden, verdict.loads.len())}
    }
    .into_any()
}

fn forbidden(setup: &Setup, sets: &[Forbidden], loads: usize) -> Option<AnyView> {
    if loads == 0 {
        return None;
    }
    let row = |set: &Forbidden| {
        let why = clash_words(setup, set.clash);
        let planned = set.planned.then(|| view! { " " {t("ac-planned")} });
        let power = match set.clash {
            Clash::Continuous => watts(set.running),
            Clash::Surge => watts(set.starting),
        };
        view! {
            <li class="found">
                <span><strong>{pair(&names(setup, &set.ids), &power)}</strong> ". " {why} {planned}</span>
            </li>
        }
        .into_any()
    };
    let first: Vec<AnyView> = sets.iter().take(FIRST).map(row).collect();
    let rest: Vec<AnyView> = sets.iter().skip(FIRST).map(row).collect();
    let more = (!rest.is_empty()).then(|| {
        let n = Arg::Count(count(rest.len()));
        let title = t_args("ac-more-sets", &[("n", n)]);
        disclosure(title, false, view! { <ul class="founds">{rest}</ul> }.into_any())
    });
    let none = sets.is_empty().then(|| view! { <p>{t("ac-all-together")}</p> });
    Some(
        view! {
            <section class="card" aria-labelledby="ac-not-together">
                <h2 id="ac-not-together">{t("ac-not-together")}</h2>
                {none}
                <ul class="founds">{first}</ul>
                {more}
            </section>
        }
        .into_any(),
    )
}
