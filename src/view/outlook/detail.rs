//! The sections below the answer: energy balance, nights, largest loads, how sure it is.

use super::facts::Facts;
use super::flow::average_day;
use super::picture::course_chart;
use super::{Calculation, origins};
use super::{verdict, words};
use crate::view::chart::{SocChart, flow_chart, soc_chart};
use crate::view::lang::t;
use crate::view::state::AppState;
use crate::view::tasks::{ViewFn, mount_as_tasks};
use crate::view::wide::is_wide;
use crate::view::widgets::{
    DataTable, ExplainedFigure, OpenDetails, Term, data_table, explained_list, made_when_open,
    made_while_open, tip_with,
};
use leptos::prelude::*;
use std::sync::Arc;

/// The verdict, and the course of the battery under its heading.
#[must_use]
pub fn course(app: AppState, calculation: Calculation, next_step: AnyView) -> AnyView {
    let course: Memo<Option<SocChart>> = Memo::new(move |_| {
        calculation.of_facts_with(Some(calculation.odds_in_chart), app, course_chart).flatten()
    });
    let has_course = Memo::new(move |_| course.with(Option::is_some));
    let inside = move || has_course.get().then(|| soc_chart(course.into()));
    view! {
        {verdict::view(app, calculation, next_step)}
        <h2>{t("answer-course")}</h2>
        <div class="course">{inside}</div>
    }
    .into_any()
}

/// What one section shows.
#[derive(Clone, PartialEq)]
enum Section {
    Notes(Vec<String>),
    Balance(Vec<ExplainedFigure>),
    Drains(Vec<ExplainedFigure>),
    ByNight(DataTable),
    Certainty(Vec<String>),
}

/// Makes a section.
type Make = fn(&Facts<'_>) -> Section;

/// The sections of average weather, in their order.
const AVERAGE: [Make; 2] = [
    |facts| Section::Balance(origins::balance(facts)),
    |facts| Section::Drains(origins::drains(facts)),
];

/// The sections that tell of the odds, in their order.
const OF_ODDS: [Make; 2] = [
    |facts| Section::ByNight(words::by_night(facts)),
    |facts| Section::Certainty(words::certainty(facts)),
];

/// What is worth knowing, and the rest of the answer under "Details", which stand open where there is room;
/// `below` ends them.
#[must_use]
pub fn view(
    app: AppState,
    calculation: Calculation,
    below: Arc<dyn Fn() -> AnyView + Send + Sync>,
) -> AnyView {
    let notes = Memo::new(move |_| {
        calculation.of_facts_with(None, app, |facts| Section::Notes(words::notes(facts)))
    });
    let inside = move || view! { {sections(app, calculation)} {below()} }.into_any();
    view! {
        <div class="details">
            {follow(notes)}
            {made_while_open(Signal::stored(t("answer-details")), is_wide(), inside)}
        </div>
    }
    .into_any()
}

/// Figures, balance, drains, night by night, how sure. Each section follows what it shows by itself, and is
/// made in a turn of its own.
fn sections(app: AppState, calculation: Calculation) -> AnyView {
    let section = |odds, make: Make| Memo::new(move |_| calculation.of_facts_with(odds, app, make));
    let [balance, drains] = AVERAGE.map(|make| section(None, make));
    let [by_night, certainty] = OF_ODDS.map(|make| section(Some(calculation.odds_below), make));
    let flow = Memo::new(move |_| calculation.of_facts_with(None, app, average_day));
    let makers: Vec<ViewFn> = vec![
        Box::new(move || verdict::figures(app, calculation)),
        Box::new(move || follow(balance)),
        Box::new(move || follow(drains)),
        Box::new(move || folded(|| t("answer-by-night"), by_night, move || follow(by_night))),
        Box::new(move || folded(|| t("answer-certainty"), certainty, move || follow(certainty))),
        Box::new(move || folded(|| t("flow-title"), flow, move || flow_chart(flow.into()))),
    ];
    view! { <div class="details">{mount_as_tasks(makers)}</div> }.into_any()
}

fn follow(section: Memo<Option<Section>>) -> AnyView {
    let opened = OpenDetails::default();
    view! { {move || section.get().map(|section| show(section, opened))} }.into_any()
}

/// `inside` under a heading that opens it, and stays as the reader left it while the figures change.
fn folded<T: Send + Sync + PartialEq + 'static>(
    title: fn() -> String,
    section: Memo<Option<T>>,
    inside: impl Fn() -> AnyView + Copy + Send + 'static,
) -> AnyView {
    let has = Memo::new(move |_| section.with(Option::is_some));
    let heading = move || has.get().then(|| made_when_open(Signal::stored(title()), inside));
    view! { {heading} }.into_any()
}

fn show(section: Section, opened: OpenDetails) -> AnyView {
    match section {
        Section::Notes(notes) => show_notes(notes),
        Section::Balance(rows) => show_balance(rows, opened),
        Section::Drains(rows) => show_drains(rows, opened),
        Section::ByNight(table) => data_table(table),
        Section::Certainty(texts) => {
            let texts: Vec<AnyView> =
                texts.into_iter().map(|text| view! { <p>{text}</p> }.into_any()).collect();
            view! { <div>{texts}</div> }.into_any()
        }
    }
}

fn show_notes(notes: Vec<String>) -> AnyView {
    if notes.is_empty() {
        return ().into_any();
    }
    let notes: Vec<AnyView> =
        notes.into_iter().map(|note| view! { <li>{note}</li> }.into_any()).collect();
    view! {
        <section class="card">
            <h2>{t("answer-notes")}</h2>
            <ul class="answer-facts">{notes}</ul>
        </section>
    }
    .into_any()
}

fn show_balance(rows: Vec<ExplainedFigure>, opened: OpenDetails) -> AnyView {
    view! {
        <section class="card">
            <div class="card-head"><h2>{t("answer-balance")}</h2>{tip_with(Term::WattAndWattHour, t("from-balance"))}</div>
            <p class="field-hint">{t("origins-hint")}</p>
            {explained_list(rows, opened)}
        </section>
    }
    .into_any()
}

fn show_drains(rows: Vec<ExplainedFigure>, opened: OpenDetails) -> AnyView {
    view! {
        <section class="card">
            <h2>{t("answer-drains")}</h2>
            {explained_list(rows, opened)}
        </section>
    }
    .into_any()
}
