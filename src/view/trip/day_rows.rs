//! Day by day: the sky, driving, and hook-up, where they differ from the plan.

use crate::i18n::Arg;
use crate::model::limits::{MINUTES_A_DAY, SUN_WH_M2};
use crate::model::{Climate, DayPlan, Setup, Weather};
use crate::physics::solar::sun::monthly_extraterrestrial;
use crate::units::WattHoursPerSquareMetre;
use crate::view::icons::Icon;
use crate::view::lang::{number, short_date, t, t_args};
use crate::view::lens::Lens;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::widgets::{
    NumberField, Term, disclosure, pictured_radios, quiet_button, select_field,
};
use leptos::prelude::*;
use time::{Date, Duration};

/// Days listed before the reader asks for the rest.
const FIRST_LISTED: usize = 8;
/// Skies that need no figure; a figure comes after them.
const SKIES: [Weather; 5] =
    [Weather::Unknown, Weather::Typical, Weather::Clear, Weather::Mixed, Weather::Dull];
const HOOK_UPS: [Option<bool>; 3] = [None, Some(true), Some(false)];

/// A value of the day in this row. Days beyond the list follow the plan; writing one fills up to it.
fn day<T: 'static>(
    row: usize,
    get: fn(&DayPlan) -> T,
    set: impl Fn(&mut DayPlan, T) + Send + Sync + 'static,
) -> Lens<T> {
    Lens::new(
        move |setup: &Setup| Some(get(&setup.trip.day_plan(row))),
        move |setup: &mut Setup, value| change_day(setup, row, |day| set(day, value)),
    )
}

fn change_day(setup: &mut Setup, row: usize, change: impl FnOnce(&mut DayPlan)) {
    change(setup.trip.day_mut(row));
    let days = &mut setup.trip.days;
    while days.last() == Some(&DayPlan::default()) {
        days.pop();
    }
}

fn date_of(setup: &Setup, row: usize) -> Date {
    setup.trip.start().saturating_add(Duration::days(i64::try_from(row).unwrap_or(0)))
}

/// Driving time of a day by the plan [min].
fn planned_minutes(setup: &Setup, row: usize) -> f64 {
    let driving = &setup.driving;
    if driving.every.falls_on(row) { driving.minutes } else { 0.0 }
}

/// The usual sun of the day's month, to start a figure from, to 100 Wh/m2.
fn usual_sun(setup: &Setup, row: usize, climate: Option<&Climate>) -> WattHoursPerSquareMetre {
    let date = date_of(setup, row);
    let month = usize::from(u8::from(date.month()) - 1);
    let above = monthly_extraterrestrial(&setup.trip.place, date.year());
    let clearness = climate.and_then(|climate| climate.clearness_frac.get(month).copied());
    let usual = above.get(month).copied().unwrap_or_default() * clearness.unwrap_or(0.5);
    WattHoursPerSquareMetre((usual.0 / 100.0).round() * 100.0)
}

pub(super) fn view(app: AppState, calculation: Calculation) -> AnyView {
    let all = RwSignal::new(false);
    let count = Memo::new(move |_| app.setup.with(|setup| usize::from(setup.trip.nights) + 1));
    let listed = Memo::new(move |_| if all.get() { usize::MAX } else { FIRST_LISTED });
    let shown = Memo::new(move |_| count.get().min(listed.get()));
    let fitted =
        Memo::new(move |_| app.setup.with(|setup| (setup.driving.fitted, setup.hook_up.fitted)));
    let each = view! {
        <p class="field-hint">{t("days-hint")}</p>
        <ol class="days">
            {move || {
                let (drives, plugs) = fitted.get();
                (0..shown.get())
                    .map(|row| day_row(app, calculation, row, drives, plugs))
                    .collect::<Vec<_>>()
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
    .into_any();
    view! {
        {all_days(app, count)}
        {disclosure(t("days-each"), false, each)}
    }
    .into_any()
}

/// One sky for the whole stay.
fn all_days(app: AppState, count: Memo<usize>) -> AnyView {
    let same = Memo::new(move |_| app.setup.with(|setup| same_sky(setup, count.get())));
    let set_all = move |index: usize| {
        let Some(sky) = SKIES.get(index).copied() else { return };
        app.edit_apart(|setup| {
            for row in 0..count.get_untracked() {
                change_day(setup, row, |day| day.weather = sky);
            }
        });
    };
    let pictures = [Icon::Unknown, Icon::Calendar, Icon::Sun, Icon::SunAndCloud, Icon::Cloud];
    let skies = pictures.into_iter().zip(skies()).collect();
    pictured_radios(t("days-all"), skies, same.into(), set_all)
}

/// The sky that all days share.
fn same_sky(setup: &Setup, count: usize) -> Option<usize> {
    let first = setup.trip.day_plan(0).weather;
    let same = (1..count).all(|row| setup.trip.day_plan(row).weather == first);
    SKIES.iter().position(|sky| same && *sky == first)
}

fn skies() -> Vec<String> {
    vec![t("sky-unknown"), t("sky-typical"), t("sky-clear"), t("sky-mixed"), t("sky-dull")]
}

fn day_row(
    app: AppState,
    calculation: Calculation,
    row: usize,
    drives: bool,
    plugs: bool,
) -> AnyView {
    let date = move || {
        app.setup.with(|setup| {
            let date = date_of(setup, row);
            short_date(date)
        })
    };
    let sky = Lens::new(
        move |setup: &Setup| Some(sky_index(setup.trip.day_plan(row).weather)),
        move |setup: &mut Setup, index: usize| {
            let sky = SKIES.get(index).copied().unwrap_or_else(|| {
                let climate = calculation.climate.get_untracked();
                Weather::Sun { per_day: usual_sun(setup, row, climate.as_ref()) }
            });
            change_day(setup, row, |day| day.weather = sky);
        },
    );
    let sunny = Memo::new(move |_| {
        app.setup.with(|setup| matches!(setup.trip.day_plan(row).weather, Weather::Sun { .. }))
    });
    let mut skies = skies();
    skies.push(t("sky-sun"));
    let drive = drives.then(|| {
        let minutes = day(row, |day| day.drive_minutes, |day, value| day.drive_minutes = value);
        NumberField::optional(t("day-drive"), "min", MINUTES_A_DAY, minutes)
            .placeholder(number(app.setup.with_untracked(|setup| planned_minutes(setup, row)), 0))
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
    SKIES.iter().position(|known| *known == sky).unwrap_or(SKIES.len())
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
