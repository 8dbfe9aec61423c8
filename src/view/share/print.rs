//! One A4 page of the answer, built when the browser is about to print.
//!
//! Style sheets show it in place of everything else (`print.css` beside this file); where it has not been
//! built, the page prints as it is.

use super::link_card::qr_view;
use super::outcome::{Outcome, WholeAnswer, setup_lines};
use super::pictures::course_on_paper;
use crate::export::forum_text::Line;
use crate::export::qr::qr_matrix;
use crate::i18n::Arg;
use crate::link::encode;
use crate::model::Setup;
use crate::view::lang::{key, number, percent, t, t_args, watt_hours_a_day};
use crate::view::page_address::address_with;
use crate::view::setups::Setups;
use crate::view::widgets::{Danger, caution, lantern_row};
use crate::view::words::names::setup_name;
use leptos::html::Div;
use leptos::prelude::*;
use std::time::Duration;

/// Nights that fit the row of lanterns.
const NIGHTS: usize = 14;
/// Sentences worth knowing that fit the page.
const NOTES: usize = 3;

/// The page to print, built by `paper` when the browser is about to print.
#[must_use]
pub fn print_page(setups: Setups, paper: impl Fn() -> AnyView + Send + 'static) -> AnyView {
    let printing = setups.printing;
    let before = window_event_listener_untyped("beforeprint", move |_| {
        printing.try_set(true);
    });
    let after = window_event_listener_untyped("afterprint", move |_| {
        printing.try_set(false);
    });
    on_cleanup(move || {
        before.remove();
        after.remove();
    });
    view! {
        <div class="print-page">
            {move || printing.get().then(|| untrack(&paper))}
        </div>
    }
    .into_any()
}

/// Prints; the page is built first, as this runs inside the browser's own doing.
pub fn print(setups: Setups) {
    setups.printing.try_set(true);
    set_timeout(
        move || {
            if window().print().is_err() {
                setups.app.tell(t("print-failed"), false);
            }
            setups.printing.try_set(false);
        },
        Duration::ZERO,
    );
}

fn rows(lines: Vec<Line>) -> Vec<AnyView> {
    lines
        .into_iter()
        .map(|line| {
            view! { <div class="ledger-row"><dt>{line.label}</dt><dd>{line.value}</dd></div> }
                .into_any()
        })
        .collect()
}

/// The answer on one page.
#[must_use]
pub fn paper(setups: Setups, outcome: Outcome) -> AnyView {
    let setup = setups.app.setup.get_untracked();
    let whole = outcome.whole();
    let course = outcome.course();
    let outlook = course.as_ref().map(|(_, outlook)| &*outlook.0);
    let facts = rows(setup_lines(&setup, outlook));
    let drains = whole.as_ref().map(|whole| {
        let drains = whole.detail.drains.iter();
        let lines = drains.map(|drain| Line {
            label: drain.name.clone(),
            value: watt_hours_a_day(drain.per_day),
        });
        rows(lines.collect())
    });
    let medical = setup.enabled_loads().any(|load| load.group == crate::model::Group::Health);
    view! {
        <article class="paper" data-testid="paper">
            <h1>{setup_name(&setup)}</h1>
            {whole.map(headline)}
            <div class="paper-columns">
                <section>
                    <h2>{t("print-setup")}</h2>
                    <dl class="ledger">{facts}</dl>
                </section>
                <section>
                    <h2>{t("answer-drains")}</h2>
                    <dl class="ledger">{drains}</dl>
                </section>
            </div>
            <footer class="paper-foot">
                {code(&setup)}
                <div>
                    <p>{t("print-note")}</p>
                    {medical.then(|| caution(Danger::Medical))}
                </div>
            </footer>
        </article>
    }
    .into_any()
}

fn headline(whole: WholeAnswer) -> AnyView {
    let WholeAnswer { answer, detail, course, verdict } = whole;
    let picture = NodeRef::<Div>::new();
    picture.on_load(move |room| {
        if let Some(canvas) = course_on_paper(course.as_ref()) {
            // An element takes any child.
            let _ = room.append_child(&canvas);
        }
    });
    let count = Arg::Count(i32::from(answer.sure_nights));
    let plus = answer.open_ended.then_some("+");
    let asked = Arg::Count(i32::from(answer.asked_nights));
    let chance = answer.chance_frac.map(|chance| {
        let chance = percent(chance);
        view! { " " {t_args("answer-chance", &[("chance", Arg::Text(&chance))])} "." }
    });
    let sure =
        t(if answer.chance_frac.is_some() { key!("answer-sure") } else { key!("answer-average") });
    let mut lanterns = answer.lanterns;
    lanterns.truncate(NIGHTS);
    let notes: Vec<AnyView> = detail
        .notes
        .into_iter()
        .take(NOTES)
        .map(|note| view! { <li>{note}</li> }.into_any())
        .collect();
    view! {
        <p class="answer-figure">
            <strong>{number(f64::from(answer.sure_nights), 0)}{plus}</strong>
            <span>{t_args("answer-nights", &[("n", count)])}</span>
        </p>
        {verdict.map(|verdict| view! { <p>{verdict}</p> })}
        <p>
            {sure} ". " {t_args("answer-asked", &[("n", asked)])}
            {chance}
        </p>
        {lantern_row(lanterns, None)}
        <div class="paper-course" node_ref=picture></div>
        <ul class="paper-notes">{notes}</ul>
    }
    .into_any()
}

/// The way back from paper to the page.
fn code(setup: &Setup) -> AnyView {
    let code = encode(setup).ok().and_then(|text| qr_matrix(&address_with(&text)).ok());
    view! { <div class="paper-code">{code.map(|code| qr_view(&code))}</div> }.into_any()
}
