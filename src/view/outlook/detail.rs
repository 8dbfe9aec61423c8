//! Below the answer: where it comes from, night by night, and how sure it is.

use super::Calculation;
use super::picture::course_chart;
use super::words::answer_detail;
use crate::i18n::Arg;
use crate::view::answer::AnswerDetail;
use crate::view::chart::{SocChart, flow_chart, soc_chart};
use crate::view::lang::{percent, t, t_args, watt_hours};
use crate::view::state::AppState;
use crate::view::widgets::{Bar, Term, bars, disclosure, made_when_open, table_disclosure, tip};
use leptos::prelude::*;

/// The course of the battery; nothing while there is none.
#[must_use]
pub fn course(app: AppState, calculation: Calculation) -> AnyView {
    let course: Memo<Option<SocChart>> = Memo::new(move |_| {
        calculation.of_facts_with(calculation.odds_in_chart, app, course_chart).flatten()
    });
    let has_course = Memo::new(move |_| course.with(Option::is_some));
    let inside = move || has_course.get().then(|| soc_chart(course.into()));
    view! { {inside} }.into_any()
}

/// The rest of the answer: balance, drains, night by night, how sure.
#[must_use]
pub fn view(app: AppState, calculation: Calculation) -> AnyView {
    let answer =
        Memo::new(move |_| calculation.of_facts_with(calculation.odds_below, app, answer_detail));
    let flow =
        Memo::new(move |_| answer.with(|answer| answer.as_ref().map(|answer| answer.flow.clone())));
    let has_flow = Memo::new(move |_| flow.with(Option::is_some));
    view! {
        <div class="details">
            {move || answer.get().map(details_of)}
            {move || {
                has_flow
                    .get()
                    .then(|| {
                        made_when_open(Signal::stored(t("flow-title")), move || flow_chart(flow.into()))
                    })
            }}
        </div>
    }
    .into_any()
}

fn details_of(answer: AnswerDetail) -> AnyView {
    let balance: Vec<AnyView> = answer
        .balance
        .into_iter()
        .map(|(label, energy)| {
            view! { <div class="ledger-row"><dt>{label}</dt><dd>{watt_hours(energy)}</dd></div> }
                .into_any()
        })
        .collect();
    let longest = answer.drains.iter().map(|drain| drain.per_day.0).fold(0.0, f64::max);
    let rows: Vec<Bar> = answer
        .drains
        .into_iter()
        .map(|drain| {
            let share = percent(drain.usable_frac);
            Bar {
                label: drain.name,
                value: watt_hours(drain.per_day),
                length_frac: if longest > 0.0 { drain.per_day.0 / longest } else { 0.0 },
                note: Some(t_args("answer-usable-share", &[("share", Arg::Text(&share))])),
            }
        })
        .collect();
    let by_night = answer
        .by_night
        .map(|table| table_disclosure(Signal::stored(t("answer-by-night")), Signal::stored(table)));
    let certainty: Vec<AnyView> =
        answer.certainty.into_iter().map(|text| view! { <p>{text}</p> }.into_any()).collect();
    let certainty = (!certainty.is_empty()).then(|| {
        disclosure(t("answer-certainty"), false, view! { <div>{certainty}</div> }.into_any())
    });
    let notes: Vec<AnyView> =
        answer.notes.into_iter().map(|note| view! { <li>{note}</li> }.into_any()).collect();
    let notes = (!notes.is_empty()).then(|| {
        view! {
            <section class="card">
                <h2>{t("answer-notes")}</h2>
                <ul class="answer-facts">{notes}</ul>
            </section>
        }
    });
    view! {
        {notes}
        <section class="card">
            <div class="card-head"><h2>{t("answer-balance")}</h2>{tip(Term::WattAndWattHour)}</div>
            <dl class="ledger">{balance}</dl>
        </section>
        <section class="card">
            <h2>{t("answer-drains")}</h2>
            {bars(rows)}
        </section>
        {by_night}
        {certainty}
    }
    .into_any()
}
