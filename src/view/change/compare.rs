//! Up to four setups side by side: the one on screen, the user's other ones, and copies set
//! beside, which this browser keeps.

use super::compare_words::{field_words, value_words};
use super::copies::Copies;
use super::prices;
use crate::advice::compare::differences::Difference;
use crate::advice::compare::{Column, CompareJob, LifeCost, MOST_SETUPS};
use crate::forecast::MonthlyClimate;
use crate::i18n::Arg;
use crate::model::{Chemistry, Setup};
use crate::store::EntryId;
use crate::units::Money;
use crate::view::certainty::sure_frac;
use crate::view::climate_file;
use crate::view::icons::Icon;
use crate::view::jobs::Generations;
use crate::view::lang::{money as money_of, number_fixed, percent, t, t_args, watt_hours};
use crate::view::reader;
use crate::view::search::{Search, SearchResult};
use crate::view::setups::Setups;
use crate::view::state::AppState;
use crate::view::widgets::{DataTable, data_table, quiet_button};
use crate::view::words::changes::nights;
use crate::view::words::names::{chemistry_name, count, kilograms, money, setup_name};
use leptos::prelude::*;

/// Pause after the last edit before the comparison is played [ms].
const PAUSE_MS: u64 = 400;

/// What is known of the comparison.
pub struct FoundOutcomes {
    columns: Vec<Column>,
    differences: Vec<Difference>,
    batteries: Vec<Difference>,
}

/// What is compared and what is known, kept while other screens are shown.
#[derive(Clone, Copy, Default)]
pub struct CompareState {
    chosen: RwSignal<Vec<EntryId>>,
    copies: Copies,
    search: Search<Vec<Setup>, FoundOutcomes>,
}

impl CompareState {
    fn others(self) -> usize {
        self.chosen.with(Vec::len) + self.copies.count()
    }

    fn is_full(self) -> bool {
        self.others() + 1 >= MOST_SETUPS
    }
}

/// The part.
#[must_use]
pub fn view(app: AppState, state: CompareState) -> AnyView {
    let setups = use_context::<Setups>();
    state.copies.follow(setups);
    search(app, setups, state);
    view! {
        <section class="card" aria-labelledby="compare-title">
            <h2 id="compare-title" tabindex="-1">{t("compare-title")}</h2>
            <p>{t("compare-told")}</p>
            {setups.map(|setups| move || picker(setups, state))}
            {move || copies(setups, state)}
            {move || {
                if state.is_full() {
                    let most = Arg::Count(count(MOST_SETUPS));
                    view! { <p>{t_args("compare-full", &[("most", most)])}</p> }.into_any()
                } else {
                    quiet_button(Some(Icon::Duplicate), t("compare-copy"), move || {
                        let setup = app.setup.get_untracked();
                        state.copies.add(setups, setup);
                    })
                }
            }}
            {state.search.failure()}
            {move || state.search.result.get().map(|result| table(&result.0))}
            {move || app.setup.with(life_costs)}
            {prices::form(app)}
        </section>
    }
    .into_any()
}

/// The user's other setups, to tick.
fn picker(setups: Setups, state: CompareState) -> Option<AnyView> {
    let preview = setups.preview.get().is_some();
    let others: Vec<(EntryId, String)> = setups.library.with(|library| {
        let current = library.current().map(|entry| entry.id).filter(|_| !preview);
        library
            .entries()
            .iter()
            .filter(|entry| Some(entry.id) != current)
            .map(|entry| (entry.id, setup_name(&entry.setup)))
            .collect()
    });
    if others.is_empty() {
        return None;
    }
    let full = state.is_full();
    let rows: Vec<AnyView> = others
        .into_iter()
        .map(|(id, name)| {
            let on = state.chosen.with(|ids| ids.contains(&id));
            let change = move |event: leptos::ev::Event| {
                let on = event_target_checked(&event);
                state.chosen.try_update(|ids| {
                    ids.retain(|other| *other != id);
                    if on {
                        ids.push(id);
                    }
                });
            };
            view! {
                <label class="choice">
                    <input type="checkbox" prop:checked=on disabled=full && !on on:change=change />
                    <span>{name}</span>
                </label>
            }
            .into_any()
        })
        .collect();
    Some(
        view! {
            <fieldset class="field choices">
                <legend>{t("compare-with")}</legend>
                <div class="choice-row">{rows}</div>
            </fieldset>
        }
        .into_any(),
    )
}

fn copy_name(index: usize) -> String {
    t_args("compare-copy-name", &[("n", Arg::Count(count(index + 1)))])
}

/// What a copy is called: what differs from the setup on screen, once that is known.
fn told_name(result: &SearchResult<Vec<Setup>, FoundOutcomes>, column: usize) -> String {
    let name = result.query.get(column).map_or_else(String::new, |setup| setup.name.clone());
    let copies = 0..MOST_SETUPS;
    if column == 0 || !copies.into_iter().any(|index| name == copy_name(index)) {
        return name;
    }
    let differing = result.found.differences.iter().find_map(|line| {
        let (own, first) = (line.values.get(column)?, line.values.first()?);
        (own != first)
            .then(|| format!("{}: {}", field_words(&line.field), value_words(&line.field, own)))
    });
    differing.unwrap_or(name)
}

/// The same for the copy set beside as number `index`.
fn told_copy_name(state: CompareState, index: usize) -> String {
    let plain = copy_name(index);
    state.search.result.with(|result| {
        let column =
            result.as_ref().and_then(|r| r.0.query.iter().position(|setup| setup.name == plain));
        match (result, column) {
            (Some(result), Some(column)) => told_name(&result.0, column),
            _ => plain.clone(),
        }
    })
}

/// Copies set beside, to put away again; and a word where they are not state.
fn copies(setups: Option<Setups>, state: CompareState) -> AnyView {
    let buttons: Vec<AnyView> = (0..state.copies.count())
        .map(|index| {
            let name = told_copy_name(state, index);
            let text = t_args("compare-drop", &[("name", Arg::Text(&name))]);
            quiet_button(Some(Icon::Close), text, move || state.copies.put_away(setups, index))
        })
        .collect();
    let passing = state
        .copies
        .are_passing()
        .then(|| view! { <p class="notice">{t("compare-copies-passing")}</p> });
    view! {
        {buttons}
        {passing}
    }
    .into_any()
}

fn search(app: AppState, setups: Option<Setups>, state: CompareState) {
    let generations = Generations::default();
    Effect::new(move |before: Option<()>| {
        let mut all = vec![app.setup.get()];
        let mut names = vec![t("compare-this")];
        if let Some(setups) = setups {
            setups.library.with(|library| {
                let chosen = state.chosen.get();
                if chosen.iter().any(|id| library.get(*id).is_none()) {
                    state.chosen.update(|ids| ids.retain(|id| library.get(*id).is_some()));
                }
                for id in chosen {
                    if let Some(entry) = library.get(id) {
                        names.push(setup_name(&entry.setup));
                        all.push(entry.setup.clone());
                    }
                }
            });
        }
        let copies = state.copies.get();
        names.extend((0..copies.len()).map(copy_name));
        all.extend(copies);
        all.truncate(MOST_SETUPS);
        for (setup, name) in all.iter_mut().zip(names) {
            setup.name = name;
        }
        let generation = generations.begin();
        if state.search.knows(&all) {
            return;
        }
        let query = all.clone();
        let make = move || {
            let skies: Vec<MonthlyClimate> = all
                .iter()
                .map(|setup| MonthlyClimate::from(&climate_file::climate(&setup.trip)))
                .collect();
            let pairs: Vec<(&Setup, &MonthlyClimate)> = all.iter().zip(&skies).collect();
            Ok(CompareJob::new(&pairs))
        };
        let read = |job: &CompareJob| FoundOutcomes {
            columns: job.columns(),
            differences: job.differences().to_vec(),
            batteries: job.batteries().to_vec(),
        };
        let pause_ms = if before.is_some() { PAUSE_MS } else { 0 };
        state.search.begin(pause_ms, generation, query, make, read);
    });
}

fn table(result: &SearchResult<Vec<Setup>, FoundOutcomes>) -> AnyView {
    let SearchResult { query: setups, found, .. } = result;
    let Some(first) = setups.first() else { return ().into_any() };
    let mut heads = vec![t("compare-what")];
    heads.extend((0..setups.len()).map(|column| told_name(result, column)));
    let line = |label: String, cell: &dyn Fn(&Column) -> String| {
        let mut row = vec![label];
        row.extend(
            (0..setups.len())
                .map(|index| found.columns.get(index).map_or_else(|| t("compare-working"), cell)),
        );
        row
    };
    let absent = || t("value-absent");
    let mut rows = vec![
        line(t("compare-sure"), &|column| {
            nights(column.outcome.nights_at(sure_frac()), column.outcome.lasting_frac.len()).text
        }),
        line(t("compare-even"), &|column| {
            nights(column.outcome.nights_even, column.outcome.lasting_frac.len()).text
        }),
        line(t("compare-lowest"), &|column| percent(column.outcome.lowest_frac)),
        line(t("compare-use"), &|column| watt_hours(column.outcome.need_per_day)),
        line(t("compare-usable"), &|column| watt_hours(column.usable)),
        line(t("compare-money"), &|column| money(first, column.money)),
        line(t("compare-weight"), &|column| kilograms(column.weight)),
        line(t("compare-weight-per-kwh"), &|column| {
            column.battery_weight_per_kwh.map_or_else(absent, kilograms)
        }),
        line(t("compare-life-cost"), &|column| {
            column.life_cost.map_or_else(absent, |cost| band(first, &cost))
        }),
    ];
    // The chance of the nights each setup asks for.
    let mut chances = vec![t("compare-chance")];
    chances.extend(setups.iter().enumerate().map(|(index, setup)| {
        found.columns.get(index).map_or_else(
            || t("compare-working"),
            |column| percent(column.outcome.chance_of(usize::from(setup.trip.nights))),
        )
    }));
    rows.insert(2, chances);
    let outcomes = DataTable { caption: t("compare-outcomes"), heads: heads.clone(), rows };
    let in_words = |lines: &[Difference], caption: String| {
        let rows: Vec<Vec<String>> = lines
            .iter()
            .map(|line| {
                let mut row = vec![field_words(&line.field)];
                row.extend(line.values.iter().map(|value| value_words(&line.field, value)));
                row
            })
            .collect();
        DataTable { caption, heads: heads.clone(), rows }
    };
    let differences = in_words(&found.differences, t("compare-differences"));
    let mut batteries = in_words(&found.batteries, t("compare-batteries"));
    // What reads the same, once rounded, is no reason.
    batteries.rows.retain(|row| row.iter().skip(2).any(|cell| Some(cell) != row.get(1)));
    let differing = if setups.len() < 2 {
        view! { <p>{t("compare-alone")}</p> }.into_any()
    } else if differences.rows.is_empty() {
        view! { <p>{t("compare-same")}</p> }.into_any()
    } else {
        data_table(differences)
    };
    let batteries = (!batteries.rows.is_empty()).then(|| {
        view! {
            {data_table(batteries)}
            <p><small>{t("compare-batteries-how")}</small></p>
        }
    });
    view! {
        {data_table(outcomes)}
        {differing}
        {batteries}
    }
    .into_any()
}

/// Two decimals below ten: a kilowatt-hour costs cents.
fn per_kwh(setup: &Setup, amount: Money) -> String {
    let decimals = if amount.0 < 10.0 { 2 } else { 0 };
    money_of(&number_fixed(amount.0, decimals), &reader::currency(setup))
}

fn band(setup: &Setup, cost: &LifeCost) -> String {
    let (low, high) = (per_kwh(setup, cost.low), per_kwh(setup, cost.high));
    t_args("compare-band", &[("low", Arg::Text(&low)), ("high", Arg::Text(&high))])
}

/// What a kilowatt-hour through a lead and through a lithium battery costs.
fn life_costs(setup: &Setup) -> Option<AnyView> {
    let own = setup.bank.chemistry;
    let lead = if own.is_lead() { own } else { Chemistry::Agm };
    let rows: Vec<Vec<String>> = [lead, Chemistry::LiFePo4]
        .into_iter()
        .filter_map(|chemistry| LifeCost::of(setup, chemistry))
        .map(|cost| vec![chemistry_name(cost.chemistry), band(setup, &cost)])
        .collect();
    (!rows.is_empty()).then(|| {
        let table = DataTable {
            caption: t("compare-life"),
            heads: vec![t("buy-battery"), t("compare-life-cost")],
            rows,
        };
        view! {
            {data_table(table)}
            <p><small>{t("compare-life-how")}</small></p>
        }
        .into_any()
    })
}
