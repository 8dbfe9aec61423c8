//! What to buy: the smallest panels and battery for a number of nights, the cheapest and the
//! lightest pair.

use super::prices;
use super::stay::{Stay, essence};
use super::words::{cautions, count, kilograms, money};
use super::work::{Stage, Turns, failure, nothing_yet, play_after, to_search};
use crate::advice::changes::cost::Hazard;
use crate::advice::season::months;
use crate::advice::sizing::{Choice, Curve, Sizing};
use crate::advice::sizing::{MOST_BATTERY_12V, MOST_SOLAR, SizingAim, SizingJob, sized};
use crate::i18n::Arg;
use crate::model::Setup;
use crate::units::{AmpHours, Watts};
use crate::view::chart::{Axis, CurveChart, CurveMark, CurvePoint, curve_chart};
use crate::view::icons::Icon;
use crate::view::lang::{amp_hours, month_name, percent, t, t_args, watts};
use crate::view::lens::Lens;
use crate::view::outlook::{Calculation, Made};
use crate::view::power::chemistry_name;
use crate::view::state::AppState;
use crate::view::widgets::{DataTable, data_table, disclosure, quiet_button, select_field};
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 500;

/// What is known of the sizes.
#[derive(Clone, Debug)]
pub struct Found {
    essence: Setup,
    aim: SizingAim,
    sizing: Sizing,
    progress_frac: f64,
    stage: Stage,
}

/// What is wanted and what is known, kept while other parts of the page are shown.
#[derive(Clone, Copy, Default)]
pub struct Kept {
    stay: Stay,
    /// First and last month of the season, 1..12; `None` is the month of the trip.
    season: RwSignal<(Option<u8>, Option<u8>)>,
    found: RwSignal<Option<Made<Found>>>,
}

/// The part.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, kept: Kept) -> AnyView {
    let fields = kept.stay.fields(app, calculation);
    let failed = RwSignal::new(false);
    search(app, calculation, kept, failed);
    view! {
        <section class="card" aria-labelledby="buy-title">
            <h2 id="buy-title" tabindex="-1">{t("buy-title")}</h2>
            <p>{t("buy-told")}</p>
            {fields}
            <div class="fields">
                {month(app, t("buy-from"), kept, |season| season.0, |season, month| season.0 = month)}
                {month(app, t("buy-to"), kept, |season| season.1, |season, month| season.1 = month)}
            </div>
            {prices::form(app)}
            {failure(failed)}
            {move || match kept.found.get() {
                None => nothing_yet(app),
                Some(found) => app.setup.with(|setup| list(app, setup, &found.0)),
            }}
        </section>
    }
    .into_any()
}

type Season = (Option<u8>, Option<u8>);

fn month(
    app: AppState,
    label: String,
    kept: Kept,
    get: fn(&Season) -> Option<u8>,
    set: fn(&mut Season, Option<u8>),
) -> AnyView {
    let mut options = vec![t("buy-this-month")];
    options.extend((1..=12).map(month_name));
    let lens = Lens::new(
        move |_| kept.season.try_with(|season| get(season).map_or(0, usize::from)),
        move |_, index: usize| {
            let month = u8::try_from(index).ok().filter(|month| (1..=12).contains(month));
            kept.season.try_update(|season| set(season, month));
        },
    );
    select_field(app, label, options, lens)
}

fn search(app: AppState, calculation: Calculation, kept: Kept, failed: RwSignal<bool>) {
    let turns = Turns::default();
    let about = Memo::new(move |_| app.setup.with(essence));
    Effect::new(move |before: Option<()>| {
        let setup = about.get();
        let (first, last) = kept.season.get();
        let trip_month = setup.trip.month;
        let season = months(first.unwrap_or(trip_month), last.unwrap_or(trip_month));
        let aim = SizingAim::usual(&setup, kept.stay.nights(), kept.stay.chance_frac(), season);
        let turn = turns.begin();
        failed.try_set(false);
        let sky = to_search(&setup, calculation, kept.found, |found| {
            found.stage == Stage::Done && found.aim == aim && found.essence == setup
        });
        let Some(sky) = sky else { return };
        // Sizes for another aim or another setup are not to be taken for these.
        kept.found.try_set(None);
        let (essence, wanted) = (setup.clone(), aim.clone());
        play_after(
            if before.is_some() { PAUSE_MS } else { 0 },
            turn,
            move || Ok(SizingJob::new(&setup, &sky, aim)),
            move |job, stage| match job {
                Some(job) if stage != Stage::Failed => {
                    kept.found.try_set(Some(Made(Arc::new(Found {
                        essence: essence.clone(),
                        aim: wanted.clone(),
                        sizing: job.sizing(),
                        progress_frac: job.progress_frac(),
                        stage,
                    }))));
                }
                _ => {
                    failed.try_set(true);
                }
            },
        );
    });
}

fn list(app: AppState, setup: &Setup, found: &Found) -> AnyView {
    let working = found.stage == Stage::Working;
    // Prices do not change which sizes do, only what they cost.
    let sizing = Sizing::of(setup, found.sizing.hard_months.clone(), found.sizing.curves.clone());
    let progress = working.then(|| {
        let done = percent(found.progress_frac);
        view! { <p class="working">{t_args("buy-progress", &[("done", Arg::Text(&done))])}</p> }
    });
    let hard: Vec<String> = sizing.hard_months.iter().map(|month| month_name(*month)).collect();
    // Where one month is asked for, it is the hardest without saying.
    let hard = (!hard.is_empty() && found.aim.months.len() > 1).then(|| {
        let months = hard.join(", ");
        view! { <p>{t_args("buy-hard", &[("months", Arg::Text(&months))])}</p> }
    });
    let choices = if working { None } else { Some(choices(app, setup, &found.aim, &sizing)) };
    let curves: Vec<AnyView> =
        sizing.curves.iter().map(|curve| sizes(setup, curve, &found.aim)).collect();
    view! {
        {progress}
        {hard}
        {choices}
        {curves}
        <p><small>{t("buy-how")}</small></p>
    }
    .into_any()
}

fn choices(app: AppState, setup: &Setup, aim: &SizingAim, sizing: &Sizing) -> AnyView {
    let named = [
        (t("buy-least"), sizing.least_to_buy),
        (t("buy-cheapest"), sizing.cheapest),
        (t("buy-lightest"), sizing.lightest),
    ];
    let mut merged: Vec<(String, Choice)> = Vec::new();
    for (name, choice) in named {
        let Some(choice) = choice else { continue };
        match merged.iter_mut().find(|(_, other)| *other == choice) {
            Some((names, _)) => {
                names.push_str(", ");
                names.push_str(&name);
            }
            None => merged.push((name, choice)),
        }
    }
    if merged.is_empty() {
        let (solar, battery) = (
            watts(MOST_SOLAR),
            amp_hours(AmpHours(MOST_BATTERY_12V.0 / setup.bank.system.twelves())),
        );
        let text =
            t_args("buy-none", &[("solar", Arg::Text(&solar)), ("battery", Arg::Text(&battery))]);
        return view! { <p><strong>{text}</strong></p> }.into_any();
    }
    let lithium = merged.iter().any(|(_, choice)| !choice.chemistry.is_lead());
    let lead = merged.iter().any(|(_, choice)| choice.chemistry.is_lead());
    let mut hazards = vec![Hazard::ShortCircuit, Hazard::Roof];
    hazards.extend(lithium.then_some(Hazard::Lithium));
    hazards.extend(lead.then_some(Hazard::Hydrogen));
    let cards: Vec<AnyView> =
        merged.into_iter().map(|(name, choice)| card(app, setup, aim, name, choice)).collect();
    view! {
        <div class="ways">{cards}</div>
        {cautions(hazards)}
    }
    .into_any()
}

fn card(app: AppState, setup: &Setup, aim: &SizingAim, name: String, choice: Choice) -> AnyView {
    let kind = chemistry_name(choice.chemistry);
    let (battery, solar) = (amp_hours(choice.battery), watts(choice.solar));
    let what = t_args(
        "buy-choice",
        &[
            ("kind", Arg::Text(&kind)),
            ("battery", Arg::Text(&battery)),
            ("solar", Arg::Text(&solar)),
        ],
    );
    let (all, more) = (money(setup, choice.money), money(setup, choice.to_buy));
    let weight = kilograms(choice.weight);
    let price = t_args(
        "buy-price",
        &[("all", Arg::Text(&all)), ("more", Arg::Text(&more)), ("weight", Arg::Text(&weight))],
    );
    let n = Arg::Count(count(aim.nights));
    let told = t_args("toast-applied", &[("change", Arg::Text(&what))]);
    let label = t_args("help-apply-name", &[("change", Arg::Text(&what))]);
    let wanted = u8::try_from(aim.nights).unwrap_or(u8::MAX);
    let apply = move || {
        app.edit_with_undo(told.clone(), |setup| {
            *setup = sized(setup, choice.chemistry, choice.battery, choice.solar);
            setup.trip.nights = setup.trip.nights.max(wanted);
        });
        crate::view::focus::to("buy-title");
    };
    let longer = (usize::from(setup.trip.nights) < aim.nights)
        .then(|| view! { <p><small>{t_args("way-longer", &[("n", n)])}</small></p> });
    view! {
        <article class="way">
            <h3>{name}</h3>
            <p><strong>{what}</strong></p>
            <p>{price}</p>
            {longer}
            <div role="group" aria-label=label>
                {quiet_button(Some(Icon::Done), t("buy-take"), apply)}
            </div>
        </article>
    }
    .into_any()
}

/// Battery over solar as a curve; `None` where hardly any pair does.
fn curve_of(setup: &Setup, curve: &Curve) -> Option<CurveChart> {
    let mut points: Vec<CurvePoint> =
        curve.pairs().map(|(battery, solar)| CurvePoint { x: battery.0, y: solar.0 }).collect();
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(b.y.total_cmp(&a.y)));
    points.dedup();
    let (first, last) = (*points.first()?, *points.last()?);
    if points.len() < 3 {
        return None;
    }
    let kind = chemistry_name(curve.chemistry);
    let (least, solar) = (amp_hours(AmpHours(first.x)), watts(Watts(first.y)));
    let (most, few) = (amp_hours(AmpHours(last.x)), watts(Watts(last.y)));
    let summary = t_args(
        "buy-curve-told",
        &[
            ("least", Arg::Text(&least)),
            ("solar", Arg::Text(&solar)),
            ("most", Arg::Text(&most)),
            ("few", Arg::Text(&few)),
        ],
    );
    let have: Watts = setup.solar.iter().filter(|a| a.enabled).map(|a| a.peak).sum();
    let have = CurvePoint { x: setup.bank.rated_capacity().0, y: have.0 };
    let same = curve.chemistry == setup.bank.chemistry;
    let marks = same.then(|| CurveMark { at: have, label: t("buy-have") });
    Some(CurveChart {
        title: t_args("buy-curve", &[("kind", Arg::Text(&kind))]),
        summary,
        x: Axis { name: t("buy-battery"), unit: AmpHours::UNIT.to_owned(), decimals: 0 },
        y: Axis { name: t("buy-solar"), unit: Watts::UNIT.to_owned(), decimals: 0 },
        points,
        marks: marks.into_iter().collect(),
    })
}

fn sizes(setup: &Setup, curve: &Curve, aim: &SizingAim) -> AnyView {
    let kind = chemistry_name(curve.chemistry);
    let kind = [("kind", Arg::Text(kind.as_str()))];
    let by_battery = DataTable {
        caption: t_args("buy-by-battery", &kind),
        heads: vec![t("buy-battery"), t("buy-smallest-solar")],
        rows: curve
            .solar_for_battery
            .iter()
            .map(|(battery, solar)| {
                vec![amp_hours(*battery), solar.map_or_else(|| t("buy-too-little"), watts)]
            })
            .collect(),
    };
    let by_solar = DataTable {
        caption: t_args("buy-by-solar", &kind),
        heads: vec![t("buy-solar"), t("buy-smallest-battery")],
        rows: curve
            .battery_for_solar
            .iter()
            .map(|(solar, battery)| {
                vec![watts(*solar), battery.map_or_else(|| t("buy-too-little"), amp_hours)]
            })
            .collect(),
    };
    let whole =
        by_battery.rows.len() == aim.batteries.len() && by_solar.rows.len() == aim.solars.len();
    let title = t_args("buy-sizes", &kind);
    if !whole {
        return ().into_any();
    }
    let drawn = curve_of(setup, curve).map(|chart| {
        let title = chart.title.clone();
        view! {
            <h3>{title}</h3>
            {curve_chart(RwSignal::new(Some(chart)).into())}
        }
    });
    let tables = view! { {data_table(by_battery)} {data_table(by_solar)} }.into_any();
    view! {
        {drawn}
        {disclosure(title, false, tables)}
    }
    .into_any()
}
