//! The year: nights by month for this setup.

use crate::advice::season::YearStripJob;
use crate::advice::trial::Outcome;
use crate::forecast::MonthlyClimate;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::certainty::sure_frac;
use crate::view::chart::{MonthNights, MonthsChart, months_chart};
use crate::view::jobs::Stage;
use crate::view::lang::{number, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult, search_key};
use crate::view::state::AppState;
use leptos::prelude::*;

/// Pause after the last edit before the year is played [ms].
const PAUSE_MS: u64 = 400;

type Searched = SearchResult<Setup, Vec<Outcome>>;

/// The screen.
#[must_use]
pub fn view(
    app: AppState,
    calculation: Calculation,
    search: Search<Setup, Vec<Outcome>>,
) -> AnyView {
    let plan = Plan {
        pause_ms: PAUSE_MS,
        forget: false,
        start: |setup: &Setup, sky: &MonthlyClimate| Ok(YearStripJob::new(setup, sky)),
        read: |job: &YearStripJob| job.months().to_vec(),
    };
    let about = Memo::new(move |_| app.setup.with(search_key));
    search.follow(calculation, plan, move || Some(about.get()));
    let months = Memo::new(move |_| {
        search.result.with(|result| {
            result.as_ref().filter(|r| r.0.stage == Stage::Done).map(|r| chart(&r.0))
        })
    });
    view! {
        <section class="card" aria-labelledby="year-title">
            <h2 id="year-title">{t("year-title")}</h2>
            <p>{t("year-told")}</p>
            {search.view(app, progress)}
            {months_chart(months.into())}
        </section>
    }
    .into_any()
}

fn progress(result: &Searched) -> AnyView {
    if result.stage != Stage::Working {
        return ().into_any();
    }
    let done = number(result.found.len() as f64, 0);
    let told = t_args("year-progress", &[("done", Arg::Text(&done))]);
    view! { <p class="working">{told}</p> }.into_any()
}

/// The months played so far, ready to be drawn.
fn chart(result: &Searched) -> MonthsChart {
    let whole = |nights: usize| u16::try_from(nights).unwrap_or(u16::MAX);
    let horizon = result.found.first().map_or(0, |outcome| outcome.lasting_frac.len());
    let months = result.found.iter().zip(1..).map(|(outcome, month)| MonthNights {
        month,
        sure_nights: whole(outcome.nights_at(sure_frac())),
        even_nights: whole(outcome.nights_even),
        average_nights: whole(outcome.nights),
    });
    MonthsChart {
        months: months.collect(),
        looked_ahead: whole(horizon),
        wanted: u16::from(result.query.trip.nights),
        this_month: Some(result.query.trip.month),
    }
}
