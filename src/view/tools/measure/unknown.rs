//! Which load to measure first: how far the unmeasured ones could move the answer, on the bench and
//! beside the answer.

use crate::advice::on_site::unknowns::{Unknown, UnknownsJob};
use crate::advice::trial::Outcome;
use crate::forecast::MonthlyClimate;
use crate::forecast::Odds;
use crate::i18n::Arg;
use crate::model::Setup;
use crate::units::WattHours;
use crate::view::jobs::Stage;
use crate::view::lang::{percent, t, t_args, watt_hours};
use crate::view::outlook::Calculation;
use crate::view::search::{Plan, Search, SearchResult, search_key};
use crate::view::state::{AppState, Screen};
use crate::view::widgets::quiet_button;
use crate::view::words::changes::nights;
use crate::view::words::names::{draw_source_name, load_name_by_id};
use leptos::prelude::*;

/// Pause after the last edit [ms].
const PAUSE_MS: u64 = 400;
/// Loads listed.
const FIRST: usize = 5;
/// Parts smaller than this are not worth measuring.
const WORTH_FRAC: f64 = 0.02;

/// What is known of what is not.
pub struct FoundUnknowns {
    ranking: Vec<Unknown>,
    likely_error: WattHours,
    /// Higher, as entered, lower; as far as played.
    outcomes: Vec<Outcome>,
}

type Searched = SearchResult<Setup, FoundUnknowns>;

/// What is known, kept while other screens are shown.
#[derive(Clone, Copy, Default)]
pub struct Unknowns(Search<Setup, FoundUnknowns>);

impl Unknowns {
    /// Plays it for every setup, once `ready`.
    fn follow(self, app: AppState, calculation: Calculation, ready: Signal<bool>) {
        let plan = Plan {
            pause_ms: PAUSE_MS,
            forget: false,
            start: |setup: &Setup, sky: &MonthlyClimate| Ok(UnknownsJob::new(setup, sky)),
            read: |job: &UnknownsJob| FoundUnknowns {
                ranking: job.ranking().to_vec(),
                likely_error: job.likely_error(),
                outcomes: job.outcomes(),
            },
        };
        let about = Memo::new(move |_| app.setup.with(search_key));
        self.0.follow(calculation, plan, move || {
            let setup = about.get();
            ready.get().then_some(setup)
        });
    }
}

/// The section; empty where everything is known well enough. `target` is the load on the bench.
pub(super) fn view(
    app: AppState,
    calculation: Calculation,
    target: RwSignal<Option<u32>>,
) -> AnyView {
    let Some(unknowns) = use_context::<Unknowns>() else { return ().into_any() };
    unknowns.follow(app, calculation, Signal::stored(true));
    let shown = move || unknowns.0.result.get().and_then(|result| section(target, &result.0));
    view! { {shown} }.into_any()
}

/// How far the figures nobody has measured could move the answer, beside the answer; empty while
/// it is not known and where everything is known well enough.
#[must_use]
pub fn in_the_outlook(app: AppState, calculation: Calculation) -> AnyView {
    let Some(unknowns) = use_context::<Unknowns>() else { return ().into_any() };
    // The odds of the answer itself come first.
    let settled = Memo::new(move |_| {
        calculation.odds.with(|odds| odds.as_ref().is_some_and(Odds::is_complete))
    });
    unknowns.follow(app, calculation, settled.into());
    let about = Memo::new(move |_| app.setup.with(search_key));
    let shown = move || {
        // What was found for the setup before an edit would stand beside another answer.
        let result = unknowns.0.result.get();
        let result = result.filter(|result| about.with(|about| *about == result.0.query))?;
        let moves = moves(&result.0).filter(|_| !worth_measuring(&result.0.found).is_empty())?;
        Some(view! {
            <section class="card" aria-labelledby="unknown-outlook-title">
                <h2 id="unknown-outlook-title">{t("unknown-outlook-title")}</h2>
                <p>{moves}</p>
                {quiet_button(None, t("unknown-outlook-measure"), move || app.open(Screen::Measure))}
            </section>
        })
    };
    view! { {shown} }.into_any()
}

fn worth_measuring(found: &FoundUnknowns) -> Vec<&Unknown> {
    found.ranking.iter().filter(|unknown| unknown.part_frac >= WORTH_FRAC).collect()
}

/// Between how many nights the answer could lie, in words; `None` until all of it is played.
fn moves(result: &Searched) -> Option<String> {
    let found = &result.found;
    let ([higher, _, lower], Stage::Done) = (found.outcomes.as_slice(), result.stage) else {
        return None;
    };
    let all = watt_hours(found.likely_error);
    let horizon = higher.lasting_frac.len();
    let (few, many) = (nights(higher.nights_sure, horizon), nights(lower.nights_sure, horizon));
    Some(if few == many {
        t_args("unknown-same", &[("error", Arg::Text(&all)), ("nights", few.arg())])
    } else {
        t_args(
            "unknown-moves",
            &[("error", Arg::Text(&all)), ("few", few.arg()), ("many", many.arg())],
        )
    })
}

fn section(target: RwSignal<Option<u32>>, result: &Searched) -> Option<AnyView> {
    let worth = worth_measuring(&result.found);
    if worth.is_empty() {
        return None;
    }
    let rows: Vec<AnyView> =
        worth.into_iter().take(FIRST).map(|unknown| row(target, &result.query, unknown)).collect();
    Some(
        view! {
            <section class="card" aria-labelledby="unknown-title">
                <h2 id="unknown-title">{t("unknown-title")}</h2>
                {moves(result).map_or_else(
                    || view! { <p class="working">{t("change-working")}</p> }.into_any(),
                    |moves| view! { <p>{moves}</p> }.into_any(),
                )}
                <ol class="unknowns">{rows}</ol>
            </section>
        }
        .into_any(),
    )
}

fn row(target: RwSignal<Option<u32>>, setup: &Setup, unknown: &Unknown) -> AnyView {
    let id = unknown.load;
    let name = load_name_by_id(setup, id);
    let (energy, error) = (watt_hours(unknown.per_day), watt_hours(unknown.likely_error));
    let part = percent(unknown.part_frac);
    let how = draw_source_name(unknown.draw_source);
    let told = t_args(
        "unknown-row",
        &[
            ("energy", Arg::Text(&energy)),
            ("error", Arg::Text(&error)),
            ("part", Arg::Text(&part)),
            ("how", Arg::Text(&how)),
        ],
    );
    let width = format!("{:.1}%", unknown.part_frac.clamp(0.0, 1.0) * 100.0);
    let label = t_args("unknown-measure-name", &[("name", Arg::Text(&name))]);
    let measure = move || {
        target.try_set(Some(id));
        crate::view::focus::to("method-title");
    };
    view! {
        <li class="help" data-testid="unknown-load">
            <h3>{name}</h3>
            <span class="bar-track" aria-hidden="true">
                <span class="bar-fill" style:width=width></span>
            </span>
            <p class="help-facts">{told}</p>
            <div role="group" aria-label=label>
                {quiet_button(None, t("unknown-measure"), measure)}
            </div>
        </li>
    }
    .into_any()
}
