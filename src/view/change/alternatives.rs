//! The comparison card: the setup as it is, and what everybody asks about, each as a row of lanterns.

use crate::advice::changes::cost::Cost;
use crate::advice::compare::alternatives::{Alternative, AlternativesJob, Choice};
use crate::advice::trial::Outcome;
use crate::forecast::MonthlyClimate;
use crate::forecast::odds::chance_of;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::view::certainty::sure_frac;
use crate::view::icons::Icon;
use crate::view::jobs::Stage;
use crate::view::lang::{key, percent, t, t_args};
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult, search_key};
use crate::view::state::AppState;
use crate::view::widgets::{LanternLevel, lantern, quiet_button};
use crate::view::words::changes::{cautions_on_tap, cost_words, nights};
use crate::view::words::names::count;
use leptos::prelude::*;

/// Pause after the last edit before the alternatives are played [ms].
const PAUSE_MS: u64 = 400;
/// Lanterns that fit beside each other on a phone.
const LANTERNS: usize = 14;

/// What is known of the alternatives.
pub type AlternativesSearch = Search<Setup, Vec<(Alternative, Option<Outcome>)>>;

type Searched = SearchResult<Setup, Vec<(Alternative, Option<Outcome>)>>;

/// The card.
#[must_use]
pub fn view(app: AppState, calculation: Calculation, search: AlternativesSearch) -> AnyView {
    let plan = Plan {
        pause_ms: PAUSE_MS,
        forget: true,
        start: |setup: &Setup, sky: &MonthlyClimate| Ok(AlternativesJob::new(setup, sky)),
        read: AlternativesJob::found,
    };
    // Prices do not change what is played, but what is told.
    let about = Memo::new(move |_| {
        app.setup.with(|setup| Setup { prices: setup.prices.clone(), ..search_key(setup) })
    });
    search.follow(calculation, plan, move || Some(about.get()));
    view! {
        <section class="card" aria-labelledby="alternatives-title">
            <h2 id="alternatives-title" tabindex="-1">{t("alternatives-title")}</h2>
            {search.view(app, move |result| list(app, result))}
        </section>
    }
    .into_any()
}

fn list(app: AppState, result: &Searched) -> AnyView {
    let wanted = usize::from(result.query.trip.nights);
    let rows: Vec<AnyView> =
        result.found.iter().map(|(it, outcome)| row(app, wanted, it, outcome.as_ref())).collect();
    let busy = (result.stage == Stage::Working).to_string();
    view! { <ul class="alternatives" data-testid="alternatives" aria-busy=busy>{rows}</ul> }
        .into_any()
}

fn title(choice: Choice, cost: Option<Cost>) -> String {
    let bought = matches!(cost, Some(Cost::Money { .. } | Cost::Unpriced));
    t(match choice {
        Choice::AsItIs => key!("alternative-as-it-is"),
        Choice::SecondBattery => key!("alternative-battery"),
        Choice::Lithium => key!("alternative-lithium"),
        Choice::SecondPanel => key!("alternative-panel"),
        Choice::Drive if bought => key!("alternative-drive-charger"),
        Choice::Drive => key!("alternative-drive"),
    })
}

fn row(app: AppState, wanted: usize, it: &Alternative, outcome: Option<&Outcome>) -> AnyView {
    let title = title(it.choice, it.cost);
    let result = match outcome {
        None => view! { <p class="working">{t("compare-working")}</p> }.into_any(),
        Some(outcome) => lasts(wanted, outcome),
    };
    let cost =
        it.cost.map(|cost| view! { <p class="alternative-cost">{cost_words(&it.setup, cost)}</p> });
    let foot = it.cost.is_some().then(|| {
        let (change, told) = (it.clone(), title.clone());
        let apply = move || {
            let told = t_args("toast-applied", &[("change", Arg::Text(&told))]);
            let after = change.setup.clone();
            app.edit_with_undo(told, |setup| {
                setup.bank = after.bank;
                setup.solar = after.solar;
                setup.driving = after.driving;
            });
            crate::view::focus::to("alternatives-title");
        };
        let name = t_args("help-apply-name", &[("change", Arg::Text(&title))]);
        view! {
            <div class="help-foot" role="group" aria-label=name>
                {quiet_button(Some(Icon::Done), t("help-apply"), apply)}
                {cautions_on_tap(it.hazards)}
            </div>
        }
    });
    view! {
        <li class="alternative" data-testid="alternative">
            <h3>{title}</h3>
            {result}
            {cost}
            {foot}
        </li>
    }
    .into_any()
}

/// A lantern for each night, and how many last.
fn lasts(wanted: usize, outcome: &Outcome) -> AnyView {
    let chance = |night| chance_of(&outcome.lasting_frac, night);
    let lanterns: Vec<AnyView> = (1..=wanted.min(LANTERNS))
        .map(|night| lantern(LanternLevel::of_chance(chance(night))))
        .collect();
    let lasting = nights(outcome.nights_at(sure_frac()), outcome.lasting_frac.len());
    let chance = percent(chance(wanted));
    let told = t_args(
        "alternative-lasts",
        &[
            ("sure", lasting.arg()),
            ("n", Arg::Count(count(wanted))),
            ("chance", Arg::Text(&chance)),
        ],
    );
    view! {
        <p class="alternative-lanterns" aria-hidden="true">{lanterns}</p>
        <p>{told}</p>
    }
    .into_any()
}
