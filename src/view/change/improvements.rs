//! What helps most: changes ranked by what they bring, each applied with one tap.

use crate::advice::changes::improvements::{Gain, Help, HelpsJob};
use crate::advice::trial::Outcome;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::icons::Icon;
use crate::view::jobs::Stage;
use crate::view::lang::{Shown, duration, percent, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult};
use crate::view::state::AppState;
use crate::view::widgets::{disclosure, quiet_button};
use crate::view::words::changes::{cautions_on_tap, change_words, cost_words, nights};
use leptos::prelude::*;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 250;
/// Changes shown at once; the rest opens on tap.
const FIRST: usize = 8;

/// What is known of what helps.
pub struct FoundImprovements {
    /// What becomes of the setup as it is.
    baseline: Outcome,
    /// What helps, the most first.
    helps: Vec<Help>,
    /// Share of the search that is done, 0..1.
    progress_frac: f64,
}

type Searched = SearchResult<Setup, FoundImprovements>;

/// The screen.
#[must_use]
pub fn view(
    app: AppState,
    calculation: Calculation,
    search: Search<Setup, FoundImprovements>,
) -> AnyView {
    let plan = Plan {
        pause_ms: PAUSE_MS,
        forget: false,
        start: HelpsJob::new,
        read: |job: &HelpsJob| FoundImprovements {
            baseline: job.baseline().clone(),
            helps: job.helps(),
            progress_frac: job.progress_frac(),
        },
    };
    search.follow(calculation, plan, move || Some(app.setup.get()));
    view! {
        <section class="card" aria-labelledby="helps-title">
            <h2 id="helps-title" tabindex="-1">{t("helps-title")}</h2>
            <p>{t("helps-told")}</p>
            {search.view(app, move |result| list(app, result))}
        </section>
    }
    .into_any()
}

fn list(app: AppState, result: &Searched) -> AnyView {
    let found = &result.found;
    let most = found.helps.iter().map(|help| help.gain.nights_mean).fold(0.0, f64::max);
    let row = |help: &Help| row(app, &result.query, found, help, most);
    let first: Vec<AnyView> = found.helps.iter().take(FIRST).map(row).collect();
    let rest: Vec<AnyView> = found.helps.iter().skip(FIRST).map(row).collect();
    let more = (!rest.is_empty()).then(|| {
        let n = Arg::Count(crate::view::words::names::count(rest.len()));
        disclosure(
            t_args("helps-more", &[("n", n)]),
            false,
            view! { <ol class="helps">{rest}</ol> }.into_any(),
        )
    });
    let working = result.stage == Stage::Working;
    let none = (!working && found.helps.is_empty()).then(|| view! { <p>{t("helps-none")}</p> });
    let progress = working.then(|| {
        let done = percent(found.progress_frac);
        view! {
            <p class="working">{t_args("helps-progress", &[("done", Arg::Text(&done))])}</p>
        }
    });
    let horizon = found.baseline.lasting_frac.len();
    let sure = nights(found.baseline.nights_sure, horizon);
    let even = nights(found.baseline.nights_even, horizon);
    let now = t_args("helps-now", &[("sure", sure.arg()), ("even", even.arg())]);
    view! {
        <p class="helps-now">{now}</p>
        {progress}
        {none}
        <ol class="helps" data-testid="improvements" aria-busy=if working { "true" } else { "false" }>{first}</ol>
        {more}
    }
    .into_any()
}

/// The gain the list is ranked by, in the largest unit it shows in.
#[must_use]
pub fn gain_words(gain: &Gain) -> String {
    if gain.nights_mean >= 0.05 {
        t_args("gain-mean", &[("amount", Shown::new(gain.nights_mean, 1).arg())])
    } else if gain.until_low.0 >= 1.0 {
        let hours = duration(crate::units::Hours(gain.until_low.0.round()));
        t_args("gain-hours", &[("amount", Arg::Text(&hours))])
    } else {
        let points = percent(gain.lowest_frac);
        t_args("gain-lowest", &[("amount", Arg::Text(&points))])
    }
}

fn row(app: AppState, setup: &Setup, found: &FoundImprovements, help: &Help, most: f64) -> AnyView {
    let (before, after) = (&found.baseline, &help.outcome);
    let horizon = before.lasting_frac.len().max(after.lasting_frac.len());
    let from_to =
        |key: &str, from: Shown, to: Shown| t_args(key, &[("from", from.arg()), ("to", to.arg())]);
    // A line played with fewer weather sequences is told as what it gains on the setup under the
    // same few, so that no saving looks like a loss.
    let gained = |from: usize, gain: i32| {
        nights(from.saturating_add_signed(gain as isize).min(horizon), horizon)
    };
    let lowest = (percent(before.lowest_frac), percent(after.lowest_frac));
    let facts = [
        from_to(
            crate::view::lang::key!("help-sure"),
            nights(before.nights_sure, horizon),
            gained(before.nights_sure, help.gain.nights_sure),
        ),
        from_to(
            crate::view::lang::key!("help-even"),
            nights(before.nights_even, horizon),
            gained(before.nights_even, help.gain.nights_even),
        ),
        t_args("help-lowest", &[("from", Arg::Text(&lowest.0)), ("to", Arg::Text(&lowest.1))]),
    ];
    let facts: Vec<AnyView> =
        facts.into_iter().map(|fact| view! { <li>{fact}</li> }.into_any()).collect();
    let share = if most > 0.0 { help.gain.nights_mean / most } else { 0.0 };
    let width = format!("{:.1}%", share.clamp(0.0, 1.0) * 100.0);
    let title = change_words(setup, &help.change);
    let name = t_args("help-apply-name", &[("change", Arg::Text(&title))]);
    let change = help.change;
    let told = title.clone();
    let apply = move || {
        let told = t_args("toast-applied", &[("change", Arg::Text(&told))]);
        app.edit_with_undo(told, |setup| *setup = change.apply(setup));
        crate::view::focus::to("helps-title");
    };
    view! {
        <li class="help" data-testid="improvement">
            <div class="help-head">
                <h3>{title}</h3>
                <strong class="help-gain">{gain_words(&help.gain)}</strong>
            </div>
            <span class="bar-track" aria-hidden="true">
                <span class="bar-fill" data-testid="improvement-bar" style:width=width></span>
            </span>
            <ul class="help-facts">{facts}<li>{cost_words(setup, help.cost)}</li></ul>
            <div class="help-foot" aria-label=name role="group">
                {quiet_button(Some(Icon::Done), t("help-apply"), apply)}
                {cautions_on_tap(help.hazards)}
            </div>
        </li>
    }
    .into_any()
}
