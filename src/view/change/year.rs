//! The year: nights by month for this setup.

use super::helps::nights;
use super::stay::essence;
use super::work::{Stage, Turns, play_after};
use crate::advice::season::YearStripJob;
use crate::advice::trial::Outcome;
use crate::forecast::SkyAndAir;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::lang::{month_name, percent, t, t_args};
use crate::view::outlook::{Calculation, Made};
use crate::view::state::AppState;
use crate::view::widgets::{Bar, DataTable, bars, data_table, disclosure};
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
    view! {
        <section class="card" aria-labelledby="year-title">
            <h2 id="year-title">{t("year-title")}</h2>
            <p>{t("year-told")}</p>
            {move || failed.get().then(|| view! { <p class="notice" role="alert">{t("change-failed")}</p> })}
            {move || match kept.get() {
                None => {
                    let empty = app.setup.with(|setup| setup.enabled_loads().next().is_none());
                    let text = if empty { t("answer-none") } else { t("change-working") };
                    view! { <p>{text}</p> }.into_any()
                }
                Some(found) => list(&found.0),
            }}
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
        let Some(climate) = calculation.climate.get() else { return };
        if setup.enabled_loads().next().is_none() {
            kept.try_set(None);
            return;
        }
        let known = kept.with_untracked(|found| {
            found.as_ref().is_some_and(|f| f.0.stage == Stage::Done && f.0.essence == setup)
        });
        if known {
            return;
        }
        let sky = SkyAndAir::from(&climate);
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

fn list(found: &Found) -> AnyView {
    let working = found.stage == Stage::Working;
    let figures = |index: usize, outcome: &Outcome| {
        let horizon = outcome.lasting_frac.len();
        let month = u8::try_from(index + 1).unwrap_or(1);
        let lowest = percent(outcome.lowest_frac);
        (
            month_name(month),
            nights(outcome.nights_sure, horizon),
            nights(outcome.nights_even, horizon),
            nights(outcome.nights, horizon),
            lowest,
        )
    };
    let rows: Vec<Bar> = found
        .months
        .iter()
        .enumerate()
        .map(|(index, outcome)| {
            let (label, sure, even, _, _) = figures(index, outcome);
            let horizon = outcome.lasting_frac.len().max(1) as f64;
            Bar {
                label,
                value: t_args("year-sure", &[("nights", Arg::Text(&sure))]),
                length_frac: outcome.nights_sure as f64 / horizon,
                note: Some(t_args("year-even", &[("nights", Arg::Text(&even))])),
            }
        })
        .collect();
    let table = DataTable {
        caption: t("year-title"),
        heads: vec![
            t("year-month"),
            t("year-head-sure"),
            t("year-head-even"),
            t("year-head-average"),
            t("year-head-lowest"),
        ],
        rows: found
            .months
            .iter()
            .enumerate()
            .map(|(index, outcome)| {
                let (label, sure, even, average, lowest) = figures(index, outcome);
                vec![label, sure, even, average, lowest]
            })
            .collect(),
    };
    view! {
        {working.then(|| view! { <p class="working">{t("change-working")}</p> })}
        {bars(rows)}
        {(!working).then(|| disclosure(t("year-table"), false, data_table(table)))}
    }
    .into_any()
}
