//! What helps most: changes ranked by what they bring, each applied with one tap.

use super::words::{cautions_on_tap, change_words, cost_words};
use super::work::{Stage, Turns, failure, nothing_yet, play_after, to_search};
use crate::advice::changes::improvements::{Gain, Help, HelpsJob};
use crate::advice::trial::Outcome;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::icons::Icon;
use crate::view::lang::{Shown, duration, percent, t, t_args};
use crate::view::outlook::{Calculation, Made};
use crate::view::state::AppState;
use crate::view::widgets::{disclosure, quiet_button};
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 250;
/// Changes shown at once; the rest opens on tap.
const FIRST: usize = 8;

/// What is known of what helps.
#[derive(Clone, Debug)]
pub struct Found {
    /// The setup it is about.
    pub setup: Setup,
    /// What becomes of it as it is.
    pub baseline: Outcome,
    /// What helps, the most first.
    pub helps: Vec<Help>,
    /// Share of the search that is done, 0..1.
    pub progress_frac: f64,
    /// How far the search has come.
    pub stage: Stage,
}

/// What is known, kept while other parts of the page are shown.
pub type Kept = RwSignal<Option<Made<Found>>>;

/// The part.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, kept: Kept) -> AnyView {
    let turns = Turns::default();
    let failed = RwSignal::new(false);
    Effect::new(move |before: Option<()>| {
        let setup = app.setup.get();
        let turn = turns.begin();
        failed.try_set(false);
        let sky = to_search(&setup, calculation, kept, |found| {
            found.stage == Stage::Done && found.setup == setup
        });
        let Some(sky) = sky else { return };
        let pause_ms = if before.is_some() { PAUSE_MS } else { 0 };
        let about = setup.clone();
        play_after(
            pause_ms,
            turn,
            move || HelpsJob::new(&setup, &sky),
            move |job, stage| match job {
                Some(job) => {
                    kept.try_set(Some(Made(Arc::new(Found {
                        setup: about.clone(),
                        baseline: job.baseline().clone(),
                        helps: job.helps(),
                        progress_frac: job.progress_frac(),
                        stage,
                    }))));
                }
                None => {
                    failed.try_set(true);
                }
            },
        );
    });
    view! {
        <section class="card" aria-labelledby="helps-title">
            <h2 id="helps-title" tabindex="-1">{t("helps-title")}</h2>
            <p>{t("helps-told")}</p>
            {failure(failed)}
            {move || match kept.get() {
                None => nothing_yet(app),
                Some(found) => list(app, &found.0),
            }}
        </section>
    }
    .into_any()
}

fn list(app: AppState, found: &Found) -> AnyView {
    let most = found.helps.iter().map(|help| help.gain.nights_mean).fold(0.0, f64::max);
    let row = |help: &Help| row(app, found, help, most);
    let first: Vec<AnyView> = found.helps.iter().take(FIRST).map(row).collect();
    let rest: Vec<AnyView> = found.helps.iter().skip(FIRST).map(row).collect();
    let more = (!rest.is_empty()).then(|| {
        let n = Arg::Count(super::words::count(rest.len()));
        disclosure(
            t_args("helps-more", &[("n", n)]),
            false,
            view! { <ol class="helps">{rest}</ol> }.into_any(),
        )
    });
    let working = found.stage == Stage::Working;
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
        <ol class="helps" aria-busy=if working { "true" } else { "false" }>{first}</ol>
        {more}
    }
    .into_any()
}

/// A number of nights, with a plus at the end of what was looked at.
#[must_use]
pub fn nights(count: usize, horizon: usize) -> Shown {
    let mut nights = Shown::new(count as f64, 0);
    if horizon > 0 && count >= horizon {
        nights.text.push('+');
    }
    nights
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

fn row(app: AppState, found: &Found, help: &Help, most: f64) -> AnyView {
    let setup = &found.setup;
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
        <li class="help">
            <div class="help-head">
                <h3>{title}</h3>
                <strong class="help-gain">{gain_words(&help.gain)}</strong>
            </div>
            <span class="bar-track" aria-hidden="true">
                <span class="bar-fill" style:width=width></span>
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
