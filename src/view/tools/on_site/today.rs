//! On the day: what the battery shows, the sky of today and tomorrow, how the panel stands best, and what
//! to switch off tonight. Readings and what they teach are kept here.

use super::form::band_words;
use super::{Draft, log};
use crate::advice::changes::Change;
use crate::advice::on_site::ReadPoint;
use crate::advice::on_site::fit::{Fit, fit};
use crate::advice::on_site::tilt::best_stand;
use crate::i18n::Arg;
use crate::model::limits::{self, MAX_READINGS};
use crate::model::{Correction, Reading, ReadingKind, Setup, Weather};
use crate::units::{AmpHours, Hours, Volts};
use crate::view::arc_ptr_eq::ArcPtrEq;
use crate::view::icons::Icon;
use crate::view::lang::{percent, t, t_args};
use crate::view::lens::Lens;
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::today::since_arrival_now;
use crate::view::widgets::{NumberField, button, made_when_open, pictured_radios, quiet_button};
use crate::view::words::changes::{change_words, degrees, towards};
use leptos::prelude::*;

/// What can be read, in the order it is offered.
const UNITS: [&str; 3] = ["%", "V", "Ah"];

/// Skies that are known by looking up.
const SKIES: [(Weather, Icon); 3] = [
    (Weather::Clear, Icon::Sun),
    (Weather::Mixed, Icon::SunAndCloud),
    (Weather::Dull, Icon::Cloud),
];

/// What the card needs of other screens.
#[derive(Clone, Copy)]
pub struct Today {
    /// A reading being typed under "On site".
    pub draft: Draft,
    /// What the readings teach.
    pub learned: RwSignal<Option<ArcPtrEq<Fit>>>,
}

/// The card; nothing unless today lies within the stay. `off_tonight` is what helps most of
/// what can be switched off for the night.
#[must_use]
pub fn view(
    app: AppState,
    calculation: Calculation,
    today: Today,
    off_tonight: Signal<Option<Change>>,
) -> AnyView {
    let day = Memo::new(move |_| app.setup.with(day_of_stay));
    let inside = move || {
        let day = day.get()?;
        Some(view! {
            <section class="card today" aria-labelledby="today-title" data-testid="today">
                <h2 id="today-title" tabindex="-1">{t("today-title")}</h2>
                {shows(app, calculation)}
                {sky(app, day, t("today-sky"))}
                {sky(app, day + 1, t("today-sky-tomorrow"))}
                {stand(app, calculation, day)}
                {tonight(app, off_tonight)}
                {made_when_open(Signal::stored(t("today-readings")), move || {
                    view! {
                        {log::view(app, calculation)}
                        {super::learned::view(app, calculation, today.learned)}
                        {super::form::view(app, today.draft)}
                    }
                    .into_any()
                })}
            </section>
        })
    };
    view! { {inside} }.into_any()
}

/// Day of the stay that is today, 0 is the day of arrival; `None` outside the stay.
fn day_of_stay(setup: &Setup) -> Option<usize> {
    let since = since_arrival_now(&setup.trip)?;
    let day = (f64::from(setup.trip.arrival_hour) + since.0) / 24.0;
    (day < f64::from(setup.trip.nights) + 1.0).then_some(day as usize)
}

/// The one field: what the battery shows now.
fn shows(app: AppState, calculation: Calculation) -> AnyView {
    let unit = RwSignal::new(0_usize);
    let value = RwSignal::new(None::<f64>);
    let reading = move || {
        let value = value.get()?;
        Some(match unit.get() {
            0 => ReadingKind::StateOfCharge { soc_frac: value },
            1 => ReadingKind::Voltage { volts: Volts(value), rested: Hours::ZERO },
            _ => ReadingKind::Used { amp_hours: AmpHours(value) },
        })
    };
    let means = move || {
        let kind = reading()?;
        app.setup.with(|setup| {
            let reading = Reading { at: Hours::ZERO, kind };
            Some(band_words(&ReadPoint::of(setup, 0, &reading)))
        })
    };
    let full = Memo::new(move |_| app.setup.with(|setup| setup.readings.len() >= MAX_READINGS));
    let take = move || {
        let Some(kind) = untrack(reading) else { return };
        let sun = calculation.sun.get_untracked();
        app.edit_apart(|setup| {
            let Some(at) = since_arrival_now(&setup.trip) else { return };
            setup.readings.push(Reading { at, kind });
            let fitted = sun.and_then(|sun| fit(setup, sun.0));
            if let Some(fitted) = fitted {
                setup.correction =
                    Correction { restart: fitted.correction.restart, ..setup.correction.clone() };
            }
        });
        value.try_set(None);
        crate::view::focus::to("today-title");
    };
    let counted = Memo::new(move |_| {
        app.setup.with(|setup| setup.correction.restart.map(|(_, soc_frac)| percent(soc_frac)))
    });
    let units: Vec<AnyView> = UNITS
        .iter()
        .enumerate()
        .map(|(index, text)| {
            view! {
                <label class="choice">
                    <input
                        type="radio"
                        name="today-unit"
                        prop:checked=move || unit.get() == index
                        on:change=move |_| {
                            value.try_set(None);
                            unit.try_set(index);
                        }
                    />
                    <span>{*text}</span>
                </label>
            }
            .into_any()
        })
        .collect();
    let field = move || {
        let lens = Lens::signal(value);
        let unit = unit.get();
        let (range, scale) = match unit {
            0 => (limits::FRAC, 100.0),
            1 => (limits::BANK_V, 1.0),
            _ => (limits::USED_AH, 1.0),
        };
        let unit = UNITS.get(unit).copied().unwrap_or_default();
        let field = NumberField::optional(t("today-shows"), unit, range, lens);
        NumberField { scale, ..field }.view(app)
    };
    let foot = move || {
        if full.get() {
            return view! { <p>{t("today-full")}</p> }.into_any();
        }
        let means = means();
        let ready = means.is_some();
        view! {
            {means.map(|means| view! { <p class="site-preview" data-testid="today-means">{means}</p> })}
            {ready.then(|| button(Some(Icon::Done), t("today-take"), take))}
        }
        .into_any()
    };
    let forget = move || {
        app.edit_apart(|setup| {
            setup.readings.pop();
            setup.correction = Correction::default();
        });
        crate::view::focus::to("today-title");
    };
    view! {
        <div class="today-shows">
            {field}
            <fieldset class="field choices"><legend class="unseen">{t("today-unit")}</legend><div class="choice-row">{units}</div></fieldset>
        </div>
        <div aria-live="polite">{foot}</div>
        {move || counted.get().map(|soc| {
            let told = t_args("today-counted", &[("soc", Arg::Text(&soc))]);
            view! {
                <div class="step-tried" data-testid="today-counted">
                    <p>{told}</p>
                    {quiet_button(Some(Icon::Undo), t("next-back"), forget)}
                </div>
            }
        })}
    }
    .into_any()
}

/// The sky of one day, by picture.
fn sky(app: AppState, day: usize, legend: String) -> AnyView {
    let now = Memo::new(move |_| {
        let weather = app.setup.with(|setup| setup.trip.day_plan(day).weather);
        SKIES.iter().position(|(known, _)| *known == weather)
    });
    let words = [t("sky-clear"), t("sky-mixed"), t("sky-dull")];
    let options = SKIES.iter().map(|(_, picture)| *picture).zip(words).collect();
    let choose = move |index: usize| {
        if let Some((weather, _)) = SKIES.get(index) {
            app.edit_apart(|setup| setup.trip.day_mut(day).weather = *weather);
        }
    };
    pictured_radios(legend, options, now.into(), choose)
}

/// How a loose panel stands best today.
fn stand(app: AppState, calculation: Calculation, day: usize) -> AnyView {
    let best = Memo::new(move |_| {
        let sun = calculation.sun.get()?;
        app.setup.with(|setup| best_stand(setup, &sun.0, day))
    });
    let told = move || {
        let (tilt, facing) = best.get()?;
        let (tilt, facing) = (degrees(tilt), towards(facing));
        let args = [("tilt", Arg::Text(&tilt)), ("facing", Arg::Text(&facing))];
        Some(view! { <p data-testid="today-tilt">{t_args("today-tilt", &args)}</p> })
    };
    view! { {told} }.into_any()
}

/// What to switch off tonight.
fn tonight(app: AppState, off_tonight: Signal<Option<Change>>) -> AnyView {
    let off = Memo::new(move |_| {
        let change = off_tonight.get()?;
        Some(app.setup.with(|setup| change_words(setup, &change)))
    });
    let told = move || {
        let words = off.get()?;
        let told = t_args("today-off", &[("change", Arg::Text(&words))]);
        Some(view! { <p data-testid="today-off">{told}</p> })
    };
    view! { {told} }.into_any()
}
