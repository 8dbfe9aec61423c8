//! The readings so far, beside the forecast for the same moment.

use super::form::{band_words, moment};
use crate::advice::on_site::{ReadPoint, points, soc_at};
use crate::i18n::Arg;
use crate::model::{ReadingKind, Setup};
use crate::view::icons::Icon;
use crate::view::lang::{amp_hours, duration, percent, quantity, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::state::AppState;
use crate::view::widgets::icon_button;
use leptos::prelude::*;

/// What was read, in words.
fn read_words(kind: &ReadingKind) -> String {
    match *kind {
        ReadingKind::StateOfCharge { soc_frac } => {
            t_args("site-read-soc", &[("soc", Arg::Text(&percent(soc_frac)))])
        }
        ReadingKind::Voltage { volts, rested } => {
            let (volts, rested) = (quantity(volts.0, 2, "V"), duration(rested));
            t_args(
                "site-read-volts",
                &[("volts", Arg::Text(&volts)), ("rested", Arg::Text(&rested))],
            )
        }
        ReadingKind::Used { amp_hours: used } => {
            t_args("site-read-used", &[("used", Arg::Text(&amp_hours(used)))])
        }
    }
}

/// The list.
pub(super) fn view(app: AppState, calculation: Calculation) -> AnyView {
    let rows = move || {
        let course = calculation.plan.get().zip(calculation.outlook.get());
        let foreseen = |point: &ReadPoint| {
            let (plan, outlook) = course.as_ref()?;
            soc_at(&plan.0, &outlook.0.course, point.at)
        };
        app.setup.with(|setup| {
            points(setup)
                .iter()
                .map(|point| row(app, setup, point, foreseen(point)))
                .collect::<Vec<AnyView>>()
        })
    };
    let none = move || app.setup.with(|setup| setup.readings.is_empty());
    view! {
        <section class="card" aria-labelledby="site-log-title">
            <h2 id="site-log-title" tabindex="-1">{t("site-log-title")}</h2>
            {move || none().then(|| view! { <p>{t("site-log-none")}</p> })}
            <ol class="readings">{rows}</ol>
        </section>
    }
    .into_any()
}

fn row(app: AppState, setup: &Setup, point: &ReadPoint, foreseen: Option<f64>) -> AnyView {
    let Some(reading) = setup.readings.get(point.index).copied() else { return ().into_any() };
    let at = moment(&setup.trip, reading.at);
    let foreseen = foreseen.map(|soc| {
        let soc = percent(soc);
        view! { <li>{t_args("site-foreseen", &[("soc", Arg::Text(&soc))])}</li> }
    });
    let unrested =
        (point.rested == Some(false)).then(|| view! { <li><em>{t("site-unrested")}</em></li> });
    let name = t_args("site-delete", &[("moment", Arg::Text(&at))]);
    let told = t_args("toast-reading-deleted", &[("moment", Arg::Text(&at))]);
    let delete = move || {
        app.edit_with_undo(told.clone(), |setup| setup.readings.retain(|other| *other != reading));
        crate::view::focus::to("site-log-title");
    };
    view! {
        <li class="reading" data-testid="reading">
            <div>
                <h3>{at}</h3>
                <ul class="help-facts">
                    <li>{read_words(&reading.kind)}</li>
                    <li>{band_words(point)}</li>
                    {unrested}
                    {foreseen}
                </ul>
            </div>
            {icon_button(Icon::Delete, name, delete)}
        </li>
    }
    .into_any()
}
