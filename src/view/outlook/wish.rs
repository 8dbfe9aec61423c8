//! The nights wanted, moved along below the lanterns, with the chance that the battery lasts through all of
//! them; and the night whose lantern was tapped.

use super::Calculation;
use super::facts::Facts;
use super::words::night_figures;
use crate::forecast::plan::MIN_HORIZON_NIGHTS;
use crate::i18n::Arg;
use crate::model::limits;
use crate::view::icons::Icon;
use crate::view::lang::{percent, short_date, t, t_args, watt_hours};
use crate::view::state::AppState;
use crate::view::widgets::{Term, fresh_id, icon_button, tip};
use crate::view::words::names::count;
use leptos::prelude::*;

/// Nights that can be reached beyond a long stay in one move.
const FURTHER: u8 = 7;

/// The nights wanted, and what is known of the night that is open.
#[must_use]
pub fn view(app: AppState, calculation: Calculation) -> AnyView {
    let wanted = Memo::new(move |_| app.setup.with(|setup| setup.trip.nights));
    let odds = Some(calculation.odds_in_chart);
    let chance = Memo::new(move |_| calculation.of_facts_with(odds, app, chance).flatten());
    // The end of the scale stays where it is under the finger.
    let end = RwSignal::new(far_end(wanted.get_untracked()));
    let moved = move |event: leptos::ev::Event| {
        if let Ok(nights) = event_target_value(&event).parse::<u8>() {
            app.edit(|setup| setup.trip.nights = nights);
        }
    };
    let released = move |_| _ = end.try_set(far_end(wanted.get_untracked()));
    let id = fresh_id("wish");
    let label = move || {
        let n = ("n", Arg::Count(count(usize::from(wanted.get()))));
        match chance.get() {
            Some(chance) => t_args("wish-chance", &[n, ("chance", Arg::Text(&chance))]),
            None => t_args("wish-nights", &[n]),
        }
    };
    view! {
        <div class="wish" data-testid="wish">
            <label for=id.clone()>{label}</label>
            {tip(Term::Chance)}
            <input
                type="range"
                class="chart-slider"
                id=id
                min="1"
                max=move || end.get().max(wanted.get())
                prop:value=move || wanted.get().to_string()
                on:input=moved
                on:change=released
            />
        </div>
        {night(app, calculation)}
    }
    .into_any()
}

fn far_end(wanted: u8) -> u8 {
    let horizon = u8::try_from(MIN_HORIZON_NIGHTS).unwrap_or(u8::MAX);
    let most = limits::NIGHTS.max as u8;
    if wanted < horizon { horizon } else { wanted.saturating_add(FURTHER) }.min(most)
}

/// Chance of lasting all nights asked for; `None` until the odds are there.
fn chance(facts: &Facts<'_>) -> Option<String> {
    facts.chance_of(facts.plan.nights_wanted).map(percent)
}

/// What is told of one night: its name with its chance, and its figures.
#[derive(Clone, PartialEq)]
struct Night {
    title: String,
    figures: String,
}

/// All nights of the stay.
fn nights(facts: &Facts<'_>) -> Vec<Night> {
    night_figures(facts)
        .into_iter()
        .map(|night| {
            let date = night.evening.map_or_else(String::new, short_date);
            let chance = percent(night.chance_frac);
            let (lowest, sun) = (percent(night.lowest_frac), watt_hours(night.sun));
            let used = watt_hours(night.used);
            Night {
                title: t_args(
                    "night-title",
                    &[("night", Arg::Text(&date)), ("chance", Arg::Text(&chance))],
                ),
                figures: t_args(
                    "night-figures",
                    &[
                        ("lowest", Arg::Text(&lowest)),
                        ("sun", Arg::Text(&sun)),
                        ("used", Arg::Text(&used)),
                    ],
                ),
            }
        })
        .collect()
}

fn night(app: AppState, calculation: Calculation) -> AnyView {
    let odds = Some(calculation.odds_in_chart);
    let told = Memo::new(move |_| {
        let open = app.night.get()?;
        calculation.of_facts_with(odds, app, nights)?.into_iter().nth(open)
    });
    let inside = move || {
        told.get().map(|night| {
            view! {
                <section class="night" data-testid="night" aria-live="polite">
                    <div>
                        <h2>{night.title}</h2>
                        <p>{night.figures}</p>
                    </div>
                    {icon_button(Icon::Close, t("sheet-close"), move || _ = app.night.try_set(None))}
                </section>
            }
        })
    };
    view! { {inside} }.into_any()
}
