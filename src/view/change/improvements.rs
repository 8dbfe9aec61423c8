//! What helps most: changes ranked by the chance of the nights wanted, each applied with one tap.

use crate::advice::changes::Change;
use crate::advice::changes::improvement::Improvement;
use crate::advice::changes::improvements::{ImprovementsJob, InFullJob, TOLD};
use crate::advice::changes::wish::Advice;
use crate::advice::trial::Outcome;
use crate::forecast::odds::{chance_of, reaches};
use crate::forecast::{MonthlyClimate, Odds};
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::certainty::sure_frac;
use crate::view::icons::Icon;
use crate::view::jobs::Stage;
use crate::view::lang::{Shown, percent, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult};
use crate::view::state::{AppState, Tab};
use crate::view::wide::is_wide;
use crate::view::widgets::{made_when_open, quiet_button};
use crate::view::words::changes::{cautions_on_tap, change_words, cost_words};
use crate::view::words::names::count;
use leptos::prelude::*;

/// Pause after the last edit before the search starts [ms].
const PAUSE_MS: u64 = 250;

/// What is known of what helps.
pub struct FoundImprovements {
    /// What becomes of the setup as it is.
    pub baseline: Outcome,
    /// What helps, the most first.
    pub improvements: Vec<Improvement>,
    /// Share of the search that is done, 0..1.
    progress_frac: f64,
}

/// The search for what helps, kept for every screen that tells of it.
pub type ImprovementsSearch = Search<Setup, FoundImprovements>;

type Searched = SearchResult<Setup, FoundImprovements>;

/// Searches for what helps the setup on screen, once its odds are known, while the answer or the screen is in
/// sight.
pub fn follow(app: AppState, calculation: Calculation, search: ImprovementsSearch) {
    let plan = Plan {
        pause_ms: PAUSE_MS,
        forget: false,
        start: |setup: &Setup, sky: &MonthlyClimate| ImprovementsJob::new(setup, sky, sure_frac()),
        read: |job: &ImprovementsJob| FoundImprovements {
            baseline: job.baseline().clone(),
            improvements: job.improvements(),
            progress_frac: job.progress_frac(),
        },
    };
    let odds_are_there =
        Memo::new(move |_| calculation.odds.with(|o| o.as_ref().is_some_and(Odds::is_complete)));
    search.follow(calculation, plan, move || {
        let in_sight = matches!(app.tab.get(), Tab::Nights | Tab::Change) || is_wide();
        (in_sight && odds_are_there.get()).then(|| app.setup.get())
    });
}

/// The screen. The search is that of [`follow`].
#[must_use]
pub fn view(app: AppState, calculation: Calculation, search: ImprovementsSearch) -> AnyView {
    view! {
        <section class="card" aria-labelledby="helps-title">
            <h2 id="helps-title" tabindex="-1">{t("helps-title")}</h2>
            <p>{t("helps-told")}</p>
            {search.view(app, move |result| {
                // The answer's own chances, played more often than the search does.
                let known = calculation.odds.with(|odds| odds.as_ref().map(|o| o.lasting_frac.clone()));
                let before = known.unwrap_or_else(|| result.found.baseline.lasting_frac.clone());
                list(app, calculation, result, &before)
            })}
        </section>
    }
    .into_any()
}

fn list(app: AppState, calculation: Calculation, result: &Searched, before: &[f64]) -> AnyView {
    let found = &result.found;
    let setup = &result.query;
    let advice = Advice::of(&found.improvements, usize::from(setup.trip.nights), sure_frac());
    let working = result.stage == Stage::Working;
    // A figure is shown once it has been played as often as the answer: it comes true when the change is made.
    let first: Vec<AnyView> = advice
        .improvements
        .iter()
        .take(TOLD)
        .filter(|help| help.is_in_full())
        .map(|help| row(app, setup, help, advice.nights))
        .collect();
    let rest: Vec<Change> = advice.improvements.iter().skip(TOLD).map(|help| help.change).collect();
    let more = (!working && !rest.is_empty())
        .then(|| further(app, calculation, setup.clone(), rest, advice.nights));
    let progress = working.then(|| {
        let done = percent(found.progress_frac);
        view! {
            <p class="working">{t_args("helps-progress", &[("done", Arg::Text(&done))])}</p>
        }
    });
    view! {
        <p class="helps-now">{about(result, &advice, before)}</p>
        {progress}
        <ol class="helps" data-testid="improvements" aria-busy=if working { "true" } else { "false" }>{first}</ol>
        {more}
    }
    .into_any()
}

/// The other changes, played when they are asked for.
fn further(
    app: AppState,
    calculation: Calculation,
    setup: Setup,
    changes: Vec<Change>,
    nights: usize,
) -> AnyView {
    let title = t_args("helps-more", &[("n", Arg::Count(count(changes.len())))]);
    made_when_open(Signal::stored(title), move || {
        let search: Search<(Setup, Vec<Change>), Vec<Improvement>> = Search::default();
        let plan = Plan {
            pause_ms: 0,
            forget: true,
            start: |(setup, changes): &(Setup, Vec<Change>), sky: &MonthlyClimate| {
                Ok(InFullJob::new(setup, sky, changes.clone()))
            },
            read: InFullJob::improvements,
        };
        let query = (setup.clone(), changes.clone());
        search.follow(calculation, plan, move || Some(query.clone()));
        search.view(app, move |result| {
            let working = result.stage == Stage::Working;
            let found = Advice::of(&result.found, nights, sure_frac()).improvements;
            let moving = found.iter().filter(|help| help.moves(nights));
            let rows: Vec<AnyView> =
                moving.map(|help| row(app, &result.query.0, help, nights)).collect();
            view! {
                {working.then(|| view! { <p class="working">{t("change-working")}</p> })}
                <ol class="helps" data-testid="improvements-further" aria-busy=working.to_string()>{rows}</ol>
            }
            .into_any()
        })
    })
}

/// Whose chance the list is about, and what it is now.
fn about(result: &Searched, advice: &Advice, before: &[f64]) -> String {
    let wanted = usize::from(result.query.trip.nights);
    let chance = percent(chance_of(before, advice.nights));
    let args = [("n", Arg::Count(count(advice.nights))), ("chance", Arg::Text(&chance))];
    let now = t_args("helps-now", &args);
    if result.stage == Stage::Working {
        now
    } else if advice.nights < wanted {
        let told = t_args("helps-too-far", &[("n", Arg::Count(count(wanted)))]);
        format!("{told} {now}")
    } else if !advice.improvements.is_empty() {
        now
    } else if reaches(chance_of(before, wanted), sure_frac()) {
        format!("{now} {}", t("helps-sure"))
    } else {
        format!("{now} {}", t("helps-none"))
    }
}

fn row(app: AppState, setup: &Setup, help: &Improvement, wanted: usize) -> AnyView {
    let (from, to) = help.chances(wanted);
    let (from, to_words) = (percent(from), percent(to));
    let gain = t_args("help-gain", &[("from", Arg::Text(&from)), ("to", Arg::Text(&to_words))]);
    let (mean, more) =
        (Shown::new(help.outcome.nights_mean, 1), Shown::new(help.gain.nights_mean, 1));
    let mean = t_args("help-mean", &[("to", mean.arg()), ("more", more.arg())]);
    let width = format!("{:.1}%", to * 100.0);
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
                <strong class="help-gain" data-testid="improvement-gain">{gain}</strong>
            </div>
            <span class="bar-track" aria-hidden="true">
                <span class="bar-fill" data-testid="improvement-bar" style:width=width></span>
            </span>
            <ul class="help-facts"><li>{mean}</li><li>{cost_words(setup, help.cost)}</li></ul>
            <div class="help-foot" aria-label=name role="group">
                {quiet_button(Some(Icon::Done), t("help-apply"), apply)}
                {cautions_on_tap(help.hazards)}
            </div>
        </li>
    }
    .into_any()
}
