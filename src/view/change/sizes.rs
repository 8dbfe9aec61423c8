//! All sizes of battery and panels that are just enough for a number of nights, in the stay or over a season; the
//! cheapest all new and the lightest pair. What costs least beside what there is already is a way.

use super::stay::Stay;
use crate::advice::changes::cost::Hazard;
use crate::advice::season::months;
use crate::advice::sizing::{
    Choice, Curve, MOST_BATTERY_12V, MOST_SOLAR, Sizing, SizingAim, SizingJob, sized,
};
use crate::forecast::MonthlyClimate;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::units::{AmpHours, Watts};
use crate::view::certainty::sure_frac;
use crate::view::chart::{Axis, CurveChart, CurveMark, CurvePoint, curve_chart};
use crate::view::icons::Icon;
use crate::view::jobs::Stage;
use crate::view::lang::{amp_hours, month_name, peak_watts, percent, t, t_args};
use crate::view::lens::Lens;
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult, search_key};
use crate::view::state::AppState;
use crate::view::widgets::{
    DataTable, data_table, disclosure, made_when_open, quiet_button, select_field,
};
use crate::view::words::changes::cautions;
use crate::view::words::names::{chemistry_name, count, kilograms, money};
use leptos::prelude::*;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 500;

/// What is known of the sizes.
pub struct FoundSizes {
    sizing: Sizing,
    progress_frac: f64,
}

type Searched = SearchResult<(Setup, SizingAim), FoundSizes>;

/// What is wanted and what is known, kept while other screens are shown.
#[derive(Clone, Copy, Default)]
pub struct SizesState {
    /// First and last month of the season, 1..12; `None` for both is the stay itself, else the month of the trip.
    season: RwSignal<(Option<u8>, Option<u8>)>,
    search: Search<(Setup, SizingAim), FoundSizes>,
}

/// The sizes, searched and shown when they are asked for.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, stay: Stay, state: SizesState) -> AnyView {
    made_when_open(Signal::stored(t("buy-title")), move || inside(app, calculation, stay, state))
}

fn inside(app: AppState, calculation: Calculation, stay: Stay, state: SizesState) -> AnyView {
    let SizesState { season, search } = state;
    let plan = Plan {
        pause_ms: PAUSE_MS,
        forget: true,
        start: |(setup, aim): &(Setup, SizingAim), sky: &MonthlyClimate| {
            Ok(SizingJob::new(setup, sky, aim.clone()))
        },
        read: |job: &SizingJob| FoundSizes {
            sizing: job.sizing(),
            progress_frac: job.progress_frac(),
        },
    };
    let about = Memo::new(move |_| app.setup.with(search_key));
    search.follow(calculation, plan, move || {
        let setup = about.get();
        let trip_month = setup.trip.month;
        let season = match season.get() {
            (None, None) => Vec::new(),
            (first, last) => months(first.unwrap_or(trip_month), last.unwrap_or(trip_month)),
        };
        let aim = SizingAim::usual(&setup, stay.nights(), sure_frac(), season);
        Some((setup, aim))
    });
    view! {
        <p>{t("buy-told")}</p>
        <div class="fields">
            {month(app, t("buy-from"), season, |season| season.0, |season, month| season.0 = month)}
            {month(app, t("buy-to"), season, |season| season.1, |season, month| season.1 = month)}
        </div>
        {search.view(app, move |result| app.setup.with(|setup| list(app, setup, result)))}
    }
    .into_any()
}

type Season = (Option<u8>, Option<u8>);

fn month(
    app: AppState,
    label: String,
    season: RwSignal<Season>,
    get: fn(&Season) -> Option<u8>,
    set: fn(&mut Season, Option<u8>),
) -> AnyView {
    let mut options = vec![t("buy-this-month")];
    options.extend((1..=12).map(month_name));
    let lens = Lens::new(
        move |_| season.try_with(|season| get(season).map_or(0, usize::from)),
        move |_, index: usize| {
            let month = u8::try_from(index).ok().filter(|month| (1..=12).contains(month));
            season.try_update(|season| set(season, month));
        },
    );
    select_field(app, label, options, lens)
}

fn list(app: AppState, setup: &Setup, result: &Searched) -> AnyView {
    let SearchResult { query: (_, aim), found, stage } = result;
    let working = *stage == Stage::Working;
    // Prices do not change which sizes do, only what they cost.
    let sizing = Sizing::of(setup, found.sizing.hard_months.clone(), found.sizing.curves.clone());
    let progress = working.then(|| {
        let done = percent(found.progress_frac);
        view! { <p class="working">{t_args("buy-progress", &[("done", Arg::Text(&done))])}</p> }
    });
    let hard: Vec<String> = sizing.hard_months.iter().map(|month| month_name(*month)).collect();
    // Where one month is asked for, it is the hardest without saying.
    let hard = (!hard.is_empty() && aim.months.len() > 1).then(|| {
        let months = hard.join(", ");
        view! { <p>{t_args("buy-hard", &[("months", Arg::Text(&months))])}</p> }
    });
    let choices = if working { None } else { Some(choices(app, setup, aim, &sizing)) };
    let curves: Vec<AnyView> = sizing.curves.iter().map(|curve| sizes(setup, curve, aim)).collect();
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
    // For the stay itself that is a way, with all else that can be bought.
    let least = sizing.least_to_buy.filter(|_| !aim.months.is_empty());
    let named = [
        (t("buy-least"), least),
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
            peak_watts(MOST_SOLAR),
            amp_hours(AmpHours(MOST_BATTERY_12V.0 / setup.bank.system.series_12v())),
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
    let (battery, solar) = (amp_hours(choice.battery), peak_watts(choice.solar));
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
        crate::view::focus::to("ways-title");
    };
    let longer = (usize::from(setup.trip.nights) < aim.nights)
        .then(|| view! { <p><small>{t_args("way-longer", &[("n", n)])}</small></p> });
    view! {
        <article class="way" data-testid="size">
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
    let (least, solar) = (amp_hours(AmpHours(first.x)), peak_watts(Watts(first.y)));
    let (most, few) = (amp_hours(AmpHours(last.x)), peak_watts(Watts(last.y)));
    let summary = t_args(
        "buy-curve-told",
        &[
            ("least", Arg::Text(&least)),
            ("solar", Arg::Text(&solar)),
            ("most", Arg::Text(&most)),
            ("few", Arg::Text(&few)),
        ],
    );
    let have = setup.solar_peak();
    let have = CurvePoint { x: setup.bank.rated_capacity().0, y: have.0 };
    let same = curve.chemistry == setup.bank.chemistry;
    let marks = same.then(|| CurveMark { at: have, label: t("buy-have") });
    Some(CurveChart {
        title: t_args("buy-curve", &[("kind", Arg::Text(&kind))]),
        summary,
        x: Axis { name: t("buy-battery"), unit: AmpHours::UNIT.to_owned(), decimals: 0 },
        y: Axis { name: t("buy-solar"), unit: t("unit-peak"), decimals: 0 },
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
                vec![amp_hours(*battery), solar.map_or_else(|| t("buy-too-little"), peak_watts)]
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
                vec![peak_watts(*solar), battery.map_or_else(|| t("buy-too-little"), amp_hours)]
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
