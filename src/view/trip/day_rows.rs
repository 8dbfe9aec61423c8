//! Day by day: the sky, driving, and hook-up, where they differ from the plan.

use crate::i18n::Arg;
use crate::model::limits::{MINUTES_A_DAY, SUN_WH_M2};
use crate::model::{DayPlan, Setup, Weather};
use crate::units::WattHoursPerSquareMetre;
use crate::view::icons::Icon;
use crate::view::lang::{day_month, t, t_args, weekday};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, Term, quiet_button, select_field};
use leptos::prelude::*;

/// Days listed before the reader asks for the rest.
const FIRST_LISTED: usize = 8;
/// A fair day to start from when the sun of a day is known [Wh/m2].
const SOME_SUN: Weather = Weather::Sun { per_day: WattHoursPerSquareMetre(4000.0) };
const SKIES: [Weather; 6] =
    [Weather::Unknown, Weather::Typical, Weather::Clear, Weather::Mixed, Weather::Dull, SOME_SUN];
const HOOK_UPS: [Option<bool>; 3] = [None, Some(true), Some(false)];

/// A value of the day in this row. Days beyond the list follow the plan; writing one fills up to it.
fn day<T: 'static>(
    row: usize,
    get: fn(&DayPlan) -> T,
    set: impl Fn(&mut DayPlan, T) + Send + Sync + 'static,
) -> Lens<T> {
    Lens::new(
        move |setup: &Setup| Some(get(&setup.trip.day_plan(row))),
        move |setup: &mut Setup, value| {
            let days = &mut setup.trip.days;
            if days.len() <= row {
                days.resize(row + 1, DayPlan::default());
            }
            if let Some(day) = days.get_mut(row) {
                set(day, value);
            }
            while days.last() == Some(&DayPlan::default()) {
                days.pop();
            }
        },
    )
}

pub(super) fn view(app: AppState) -> AnyView {
    let all = RwSignal::new(false);
    let count = Memo::new(move |_| app.setup.with(|setup| usize::from(setup.trip.nights) + 1));
    let listed = Memo::new(move |_| if all.get() { usize::MAX } else { FIRST_LISTED });
    let shown = Memo::new(move |_| count.get().min(listed.get()));
    let fitted =
        Memo::new(move |_| app.setup.with(|setup| (setup.driving.fitted, setup.hook_up.fitted)));
    view! {
        <p class="field-hint">{t("days-hint")}</p>
        <ol class="days">
            {move || {
                let (drives, plugs) = fitted.get();
                (0..shown.get()).map(|row| day_row(app, row, drives, plugs)).collect::<Vec<_>>()
            }}
        </ol>
        {move || {
            let rest = count.get().saturating_sub(shown.get());
            (rest > 0)
                .then(|| {
                    let words = t_args("days-more", &[("n", Arg::Count(rest as i32))]);
                    quiet_button(
                        Some(Icon::Open),
                        words,
                        move || {
                            all.try_set(true);
                        },
                    )
                })
        }}
    }
    .into_any()
}

fn day_row(app: AppState, row: usize, drives: bool, plugs: bool) -> AnyView {
    let date = move || {
        app.setup.with(|setup| {
            let ahead = time::Duration::days(i64::try_from(row).unwrap_or(0));
            let date = setup.trip.start().saturating_add(ahead);
            format!("{} {}", weekday(date), day_month(date))
        })
    };
    let sky = day(row, |day| sky_index(day.weather), set_sky);
    let sunny = Memo::new(move |_| {
        app.setup.with(|setup| matches!(setup.trip.day_plan(row).weather, Weather::Sun { .. }))
    });
    let skies = vec![
        t("sky-unknown"),
        t("sky-typical"),
        t("sky-clear"),
        t("sky-mixed"),
        t("sky-dull"),
        t("sky-sun"),
    ];
    let drive = drives.then(|| {
        let minutes = day(row, |day| day.drive_minutes, |day, value| day.drive_minutes = value);
        NumberField::optional(t("day-drive"), "min", MINUTES_A_DAY, minutes)
            .placeholder(t("as-planned"))
            .view(app)
    });
    let hook_up = plugs.then(|| {
        let names = vec![t("as-planned"), t("day-hook-up-yes"), t("day-hook-up-no")];
        let lens = day(row, |day| day.hook_up, |day, value| day.hook_up = value);
        select_field(app, t("day-hook-up"), names, lens.choice(&HOOK_UPS))
    });
    view! {
        <li class="day">
            <fieldset class="group">
                <legend>{date}</legend>
                <div class="fields fields-tight">
                    {select_field(app, t("day-sky"), skies, sky)}
                    {move || sunny.get().then(|| sun_field(row).view(app))} {drive} {hook_up}
                </div>
            </fieldset>
        </li>
    }
    .into_any()
}

fn sky_index(sky: Weather) -> usize {
    match sky {
        Weather::Unknown => 0,
        Weather::Typical => 1,
        Weather::Clear => 2,
        Weather::Mixed => 3,
        Weather::Dull => 4,
        Weather::Sun { .. } => 5,
    }
}

fn set_sky(day: &mut DayPlan, index: usize) {
    if sky_index(day.weather) != index
        && let Some(sky) = SKIES.get(index)
    {
        day.weather = *sky;
    }
}

fn sun_field(row: usize) -> NumberField {
    let lens = Lens::<f64>::new(
        move |setup| match setup.trip.day_plan(row).weather {
            Weather::Sun { per_day } => Some(per_day.0),
            _ => None,
        },
        move |setup, value| {
            if let Some(day) = setup.trip.days.get_mut(row) {
                day.weather = Weather::Sun { per_day: WattHoursPerSquareMetre(value) };
            }
        },
    );
    let field = NumberField::new(t("day-sun"), "kWh/m²", SUN_WH_M2, lens);
    NumberField { scale: 0.001, ..field }.term(Term::PeakSunHours)
}
