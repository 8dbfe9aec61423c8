//! The answer as a sentence a friend would say: "Friday and Saturday are safe. Sunday probably (87 %)."

use super::Calculation;
use super::facts::Facts;
use crate::forecast::odds::EVEN_FRAC;
use crate::i18n::Arg;
use crate::units::WattHours;
use crate::view::answer::{AnswerView, low_words};
use crate::view::certainty::sure_frac;
use crate::view::lang::{key, long_weekday, percent, short_date, t, t_args};
use crate::view::state::AppState;
use crate::view::widgets::{Term, origin, tip_with};
use crate::view::words::names::drawer_name;
use leptos::prelude::*;

/// Nights that can be told apart by their weekday.
const NIGHTS_OF_A_WEEK: usize = 7;

/// The nights wanted, the verdict, what takes most, and the next step. They follow by themselves.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, next_step: AnyView) -> AnyView {
    let odds = Some(calculation.odds_in_chart);
    let says = Memo::new(move |_| calculation.of_facts_with(odds, app, verdict).flatten());
    let most = Memo::new(move |_| calculation.of_facts_with(None, app, takes_most).flatten());
    view! {
        {super::wish::view(app, calculation)}
        <p class="answer-verdict" data-testid="verdict">{move || says.get()}</p>
        <p class="answer-most" data-testid="takes-most">{move || most.get()}</p>
        {next_step}
    }
    .into_any()
}

/// More figures of the odds.
#[must_use]
pub fn figures(app: AppState, calculation: Calculation) -> AnyView {
    let odds = Some(calculation.odds_below);
    let answer =
        Memo::new(move |_| calculation.of_facts_with(odds, app, super::words::answer_view));
    let shown = move |words: fn(&AnswerView) -> String| {
        move || answer.with(|answer| answer.as_ref().map(words))
    };
    let has_odds = Memo::new(move |_| {
        answer.with(|answer| answer.as_ref().is_some_and(|answer| answer.chance_frac.is_some()))
    });
    let inside = move || {
        if !has_odds.get() {
            return view! { <p>{t("answer-working")}</p> }.into_any();
        }
        view! {
            <ul class="answer-facts" data-testid="answer-facts">
                <li><span>{shown(likely_words)}</span>{origin(t("from-likely"))}</li>
                <li><span>{shown(low_words)}</span>{origin(t("from-first-low"))}</li>
                <li><span>{shown(lowest_words)}</span>{tip_with(Term::StateOfCharge, t("from-lowest"))}</li>
            </ul>
        }
        .into_any()
    };
    view! { {inside} }.into_any()
}

/// Which nights are safe, which are likely, and from which on it gets tight; `None` until the odds
/// are there.
#[must_use]
pub fn verdict(facts: &Facts<'_>) -> Option<String> {
    let (wanted, past) = (facts.plan.nights_wanted, facts.nights_past);
    let sure = facts.nights_at(sure_frac())?.min(wanted);
    let likely = facts.nights_at(EVEN_FRAC)?.clamp(sure, wanted);
    if wanted == 0 {
        return None;
    }
    if sure == wanted {
        return Some(t_args("verdict-all", &[("n", count(wanted - past))]));
    }
    let name = |night: usize| night_name(facts, night);
    let chance = |night: usize| percent(facts.chance_of(night).unwrap_or_default());
    if likely == past {
        let key = if past > 0 { key!("verdict-none-now") } else { key!("verdict-none") };
        return Some(t_args(key, &[("chance", Arg::Text(&chance(past + 1)))]));
    }
    let mut sentences = Vec::new();
    if sure > past {
        let key = match sure - past {
            1 => key!("verdict-safe-one"),
            2 => key!("verdict-safe-two"),
            _ => key!("verdict-safe-more"),
        };
        let (first, last) = (name(past + 1), name(sure));
        sentences.push(t_args(key, &[("first", Arg::Text(&first)), ("last", Arg::Text(&last))]));
    }
    if likely > sure {
        let key = if likely == sure + 1 {
            key!("verdict-likely-one")
        } else {
            key!("verdict-likely-more")
        };
        let (first, last, chance) = (name(sure + 1), name(likely), chance(likely));
        let args = [
            ("first", Arg::Text(&first)),
            ("last", Arg::Text(&last)),
            ("chance", Arg::Text(&chance)),
        ];
        sentences.push(t_args(key, &args));
    }
    if likely < wanted {
        sentences.push(t_args("verdict-tight", &[("first", Arg::Text(&name(likely + 1)))]));
    }
    Some(sentences.join(" "))
}

/// Whoever takes most of a day's use, and how much of it; `None` where nothing draws.
fn takes_most(facts: &Facts<'_>) -> Option<String> {
    let shares = &facts.outlook.shares;
    let most = shares.first().filter(|share| share.per_day.0 > 0.0)?;
    let all: WattHours = shares.iter().map(|share| share.per_day).sum();
    let name = drawer_name(facts.setup, most.drawer);
    let share = percent(most.per_day.0 / all.0);
    Some(t_args("answer-most", &[("name", Arg::Text(&name)), ("share", Arg::Text(&share))]))
}

fn likely_words(answer: &AnswerView) -> String {
    let likely = t_args("answer-likely", &[("n", Arg::Count(i32::from(answer.likely_nights)))]);
    let asked = t_args("answer-asked", &[("n", Arg::Count(i32::from(answer.asked_nights)))]);
    format!("{likely}. {asked}")
}

fn lowest_words(answer: &AnswerView) -> String {
    t_args("answer-lowest", &[("soc", Arg::Text(&percent(answer.lowest_soc_frac)))])
}

fn count(nights: usize) -> Arg<'static> {
    Arg::Count(i32::try_from(nights).unwrap_or(i32::MAX))
}

/// The evening a night begins with: its weekday, with the date where the stay is longer than a week.
fn night_name(facts: &Facts<'_>, night: usize) -> String {
    let Some(date) = night.checked_sub(1).and_then(|at| facts.plan.sun.dates.get(at)) else {
        return String::new();
    };
    if facts.plan.nights_wanted <= NIGHTS_OF_A_WEEK {
        long_weekday(*date)
    } else {
        short_date(*date)
    }
}
