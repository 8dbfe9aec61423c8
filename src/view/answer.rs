//! The answer: how many nights, shown large, small and spoken.
//!
//! [`AnswerView`] is all this file knows of the calculation: figures and words ready to be shown.

use super::chart::FlowChart;
use super::focus;
use super::lang::{key, number, t, t_args};
use super::state::{AppState, Tab};
use super::widgets::{DataTable, LanternNight, lantern, lantern_row, origin};
use crate::forecast::odds::SEQUENCES;
use crate::i18n::Arg;
use crate::units::WattHours;
use leptos::prelude::*;
use std::time::Duration;

/// The answer itself, as the start of the page shows it.
#[derive(Clone, Debug, PartialEq)]
pub struct AnswerView {
    /// Nights the battery lasts with nine chances in ten, from now where the stay is under way.
    pub sure_nights: u16,
    /// Nights it lasts half the time.
    pub likely_nights: u16,
    /// Today lies within the stay, and nights count from now.
    pub from_now: bool,
    /// Nights asked for.
    pub asked_nights: u16,
    /// It lasts at least as long as was looked ahead.
    pub open_ended: bool,
    /// Chance of lasting all nights asked for, 0..1; `None` while it is not known yet.
    pub chance_frac: Option<f64>,
    /// Until when the battery stays above its limit, as surely as the nights, in words.
    pub first_low: Option<String>,
    /// State of charge the stay keeps above, as surely as the nights, 0..1.
    pub lowest_soc_frac: f64,
    /// Each night.
    pub lanterns: Vec<LanternNight>,
    /// The odds are still being worked out.
    pub working: bool,
}

/// What stands below the answer: where it comes from, and what to know of it.
#[derive(Clone, Debug, PartialEq)]
pub struct AnswerDetail {
    /// Where the energy of an average day goes.
    pub flow: FlowChart,
    /// An average day: what comes and goes, in words, in Wh a day; use is negative.
    pub balance: Vec<(String, WattHours)>,
    /// What takes most, largest first.
    pub drains: Vec<Drain>,
    /// Figures night by night.
    pub by_night: DataTable,
    /// What is worth knowing about this trip, a sentence or two each.
    pub notes: Vec<String>,
    /// How sure the answer is and what it rests on, one paragraph each.
    pub certainty: Vec<String>,
}

/// A load as a drain.
#[derive(Clone, Debug, PartialEq)]
pub struct Drain {
    /// Name.
    pub name: String,
    /// Energy a day at the battery.
    pub per_day: WattHours,
    /// Share of the usable battery a day, 0.. .
    pub usable_frac: f64,
}

/// The answer that follows the setup; `None` while there is nothing to answer.
pub type AnswerSignal = Signal<Option<AnswerView>, LocalStorage>;

/// The nights as a figure, with a plus when they go on beyond what was looked at.
#[must_use]
pub fn figure(answer: &AnswerView) -> String {
    let plus = if answer.open_ended { "+" } else { "" };
    format!("{}{plus}", number(f64::from(answer.sure_nights), 0))
}

/// Until when the battery stays above its limit, in words.
pub(super) fn low_words(answer: &AnswerView) -> String {
    match &answer.first_low {
        Some(when) => t_args("answer-first-low", &[("when", Arg::Text(when))]),
        None => t("answer-never-low"),
    }
}

/// Id of the whole answer, where the focus goes that leads to it.
pub const ANSWER_ID: &str = "answer";

/// One line that stays in sight while editing; leads to the whole answer.
#[must_use]
pub fn answer_bar(app: AppState, answer: AnswerSignal) -> AnyView {
    let at_hand = Memo::new(move |_| app.tab.get() != Tab::Nights);
    view! {
        <div class="answer-bar" data-testid="answer-bar">
            // Hidden where the whole answer stands, and not made there.
            {move || match at_hand.get().then(|| answer.get()) {
                None => ().into_any(),
                Some(None) => view! { <p class="answer-bar-none">{t("answer-none")}</p> }.into_any(),
                Some(Some(answer)) => {
                    let count = i32::from(answer.sure_nights);
                    let lanterns: Vec<AnyView> = answer
                        .lanterns
                        .iter()
                        .take(14)
                        .map(|night| lantern(night.level))
                        .collect();
                    view! {
                        <button
                            type="button"
                            class="answer-bar-button"
                            on:click=move |_| {
                                app.go(Tab::Nights);
                                focus::to_new(ANSWER_ID);
                            }
                        >
                            <span class="answer-bar-figure" data-testid="answer-bar-figure">{figure(&answer)}</span> " "
                            <span class="answer-bar-word">
                                {t_args("answer-nights", &[("n", Arg::Count(count))])}
                            </span>
                            <span class="unseen">" " {t("answer-bar")}</span>
                            <span class="answer-bar-lanterns">{lanterns}</span>
                        </button>
                    }
                        .into_any()
                }
            }}
        </div>
    }
    .into_any()
}

/// The answer with its lanterns and the course of the battery, which has a part of its own.
#[must_use]
pub fn summary(app: AppState, answer: AnswerSignal, course: AnyView) -> AnyView {
    let there = Memo::new(move |_| answer.with(Option::is_some));
    view! {
        <section class="answer" id=ANSWER_ID tabindex="-1" aria-label=t("answer-name")>
            {move || {
                if there.get() {
                    headline(answer, app.night)
                } else {
                    view! { <p class="answer-none">{t("answer-none")}</p> }.into_any()
                }
            }}
            {course}
        </section>
    }
    .into_any()
}

/// Built once so that open disclosures survive updates; only the figures are reactive.
fn headline(answer: AnswerSignal, open: RwSignal<Option<usize>>) -> AnyView {
    let shown = move |words: fn(&AnswerView) -> String| {
        move || answer.with(|answer| answer.as_ref().map(words))
    };
    let lanterns = Memo::new(move |_| {
        answer.with(|answer| answer.as_ref().map(|answer| answer.lanterns.clone()))
    });
    let of_odds =
        Memo::new(move |_| answer.with(|a| a.as_ref().is_some_and(|a| a.chance_frac.is_some())));
    let working = Memo::new(move |_| answer.with(|a| a.as_ref().is_some_and(|a| a.working)));
    let from_now = Memo::new(move |_| answer.with(|a| a.as_ref().is_some_and(|a| a.from_now)));
    let sure = move || {
        t(match (of_odds.get(), from_now.get()) {
            (true, true) => key!("answer-sure-from-now"),
            (true, false) => key!("answer-sure"),
            (false, _) => key!("answer-average"),
        })
    };
    let at_work = move || {
        working.get().then(|| view! { <p class="answer-working" data-testid="answer-working">{t("answer-working")}</p> })
    };
    let times = number(SEQUENCES as f64, 0);
    let runs = t_args("from-nights", &[("times", Arg::Text(&times))]);
    view! {
        <div class="answer-head">
            <p class="answer-figure" data-testid="answer-figure">
                <strong>{shown(|answer| number(f64::from(answer.sure_nights), 0))}</strong>
                <span>{shown(nights_words)}</span>
            </p>
            <div class="answer-sure" data-testid="answer-sure"><span>{sure}</span>{origin(runs)}</div>
        </div>
        {move || lanterns.get().map(|nights| lantern_row(nights, Some(open)))}
        {at_work}
    }
    .into_any()
}

fn nights_words(answer: &AnswerView) -> String {
    let nights = t_args("answer-nights", &[("n", Arg::Count(i32::from(answer.sure_nights)))]);
    if answer.open_ended { format!("{nights} {}", t("answer-more")) } else { nights }
}

/// Says the new answer to a screen reader once typing has paused. Stands beside whatever is shown: what is
/// hidden is not read out.
#[must_use]
pub fn spoken(answer: AnswerSignal) -> AnyView {
    let said = RwSignal::new(String::new());
    let waiting: StoredValue<Option<TimeoutHandle>> = StoredValue::new(None);
    Effect::new(move |first: Option<()>| {
        let words = answer.with(|answer| {
            // What it says is of the odds.
            answer.as_ref().filter(|answer| answer.chance_frac.is_some()).map(|answer| {
                let low = low_words(answer);
                let count = Arg::Count(i32::from(answer.sure_nights));
                t_args("answer-spoken", &[("n", count), ("low", Arg::Text(&low))])
            })
        });
        // The first answer is part of the page as it is read anyway.
        let (Some(words), true) = (words, first.is_some()) else { return };
        let say = move || {
            if said.try_with_untracked(|before| *before != words) == Some(true) {
                said.try_set(words.clone());
            }
        };
        let timer = set_timeout_with_handle(say, Duration::from_millis(1200)).ok();
        let earlier = waiting.try_update_value(|slot| std::mem::replace(slot, timer));
        if let Some(Some(earlier)) = earlier {
            earlier.clear();
        }
    });
    view! { <p class="unseen" role="status" data-testid="answer-said">{move || said.get()}</p> }
        .into_any()
}
