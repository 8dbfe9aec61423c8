//! The year: nights by month for this setup.

use super::stay::essence;
use super::work::{Stage, Turns, failure, nothing_yet, play_after, to_search};
use crate::advice::season::YearStripJob;
use crate::advice::trial::Outcome;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::chart::{MonthNights, MonthsChart, months_chart};
use crate::view::lang::{number, t, t_args};
use crate::view::outlook::{Calculation, Made};
use crate::view::state::AppState;
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last edit before the year is played [ms].
const PAUSE_MS: u64 = 400;

/// What is known of the year.
#[derive(Clone, Debug)]
pub struct Found {
    essence: Setup,
    months: Vec<Outcome>,
    stage: Stage,
}

/// What is known, kept while other parts of the page are shown.
pub type Kept = RwSignal<Option<Made<Found>>>;

/// The part.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, kept: Kept) -> AnyView {
    let failed = RwSignal::new(false);
    search(app, calculation, kept, failed);
    let months = Memo::new(move |_| {
        kept.with(|found| found.as_ref().filter(|f| f.0.stage == Stage::Done).map(|f| chart(&f.0)))
    });
    view! {
        <section class="card" aria-labelledby="year-title">
            <h2 id="year-title">{t("year-title")}</h2>
            <p>{t("year-told")}</p>
            {failure(failed)}
            {move || match kept.get() {
                None => nothing_yet(app),
                Some(found) if found.0.stage == Stage::Working => {
                    let done = number(found.0.months.len() as f64, 0);
                    let told = t_args("year-progress", &[("done", Arg::Text(&done))]);
                    view! { <p class="working">{told}</p> }.into_any()
                }
                Some(_) => ().into_any(),
            }}
            {months_chart(months.into())}
        </section>
    }
    .into_any()
}

fn search(app: AppState, calculation: Calculation, kept: Kept, failed: RwSignal<bool>) {
    let turns = Turns::default();
    let about = Memo::new(move |_| app.setup.with(essence));
    Effect::new(move |before: Option<()>| {
        let setup = about.get();
        let turn = turns.begin();
        failed.try_set(false);
        let sky = to_search(&setup, calculation, kept, |found| {
            found.stage == Stage::Done && found.essence == setup
        });
        let Some(sky) = sky else { return };
        let essence = setup.clone();
        play_after(
            if before.is_some() { PAUSE_MS } else { 0 },
            turn,
            move || Ok(YearStripJob::new(&setup, &sky)),
            move |job, stage| match job {
                Some(job) if stage != Stage::Failed => {
                    kept.try_set(Some(Made(Arc::new(Found {
                        essence: essence.clone(),
                        months: job.months().to_vec(),
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

/// The months played so far, ready to be drawn.
fn chart(found: &Found) -> MonthsChart {
    let whole = |nights: usize| u16::try_from(nights).unwrap_or(u16::MAX);
    let horizon = found.months.first().map_or(0, |outcome| outcome.lasting_frac.len());
    let months = found.months.iter().zip(1..).map(|(outcome, month)| MonthNights {
        month,
        sure_nights: whole(outcome.nights_sure),
        even_nights: whole(outcome.nights_even),
        average_nights: whole(outcome.nights),
    });
    MonthsChart {
        months: months.collect(),
        looked_ahead: whole(horizon),
        this_month: Some(found.essence.trip.month),
    }
}
