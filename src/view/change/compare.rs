//! Up to four setups side by side: the one on screen, the user's other ones, and copies set
//! beside, which this browser keeps.

use super::compare_words::{field_words, value_words};
use super::copies::Copies;
use super::helps::nights;
use super::prices;
use super::words::{count, kilograms, money};
use super::work::{Stage, Turns, play_after};
use crate::advice::compare::differences::Difference;
use crate::advice::compare::{Column, CompareJob, LifeCost, MOST_SETUPS};
use crate::forecast::{SkyAndAir, climate_of};
use crate::i18n::Arg;
use crate::model::{Chemistry, Setup};
use crate::store::EntryId;
use crate::units::Money;
use crate::view::icons::Icon;
use crate::view::lang::{percent, quantity_fixed, t, t_args, watt_hours};
use crate::view::outlook::Made;
use crate::view::power::chemistry_name;
use crate::view::share::{Setups, setup_name};
use crate::view::state::AppState;
use crate::view::widgets::{DataTable, data_table, quiet_button};
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last edit before the comparison is played [ms].
const PAUSE_MS: u64 = 400;

/// What is known of the comparison.
#[derive(Clone, Debug)]
pub struct Found {
    setups: Vec<Setup>,
    columns: Vec<Column>,
    differences: Vec<Difference>,
    batteries: Vec<Difference>,
    stage: Stage,
}

/// What is compared and what is known, kept while other parts of the page are shown.
#[derive(Clone, Copy, Default)]
pub struct Kept {
    chosen: RwSignal<Vec<EntryId>>,
    copies: Copies,
    found: RwSignal<Option<Made<Found>>>,
}

impl Kept {
    fn others(self) -> usize {
        self.chosen.with(Vec::len) + self.copies.count()
    }

    fn is_full(self) -> bool {
        self.others() + 1 >= MOST_SETUPS
    }
}

/// The part.
#[must_use]
pub fn view(app: AppState, kept: Kept) -> AnyView {
    let setups = use_context::<Setups>();
    kept.copies.follow(setups);
    search(app, setups, kept);
    view! {
        <section class="card" aria-labelledby="compare-title">
            <h2 id="compare-title" tabindex="-1">{t("compare-title")}</h2>
            <p>{t("compare-told")}</p>
            {setups.map(|setups| move || picker(setups, kept))}
            {move || copies(setups, kept)}
            {move || {
                if kept.is_full() {
                    let most = Arg::Count(count(MOST_SETUPS));
                    view! { <p>{t_args("compare-full", &[("most", most)])}</p> }.into_any()
                } else {
                    quiet_button(Some(Icon::Duplicate), t("compare-copy"), move || {
                        let setup = app.setup.get_untracked();
                        kept.copies.add(setups, setup);
                    })
                }
            }}
            {move || kept.found.get().map(|found| table(&found.0))}
            {move || app.setup.with(life_costs)}
            {prices::form(app)}
        </section>
    }
    .into_any()
}

/// The user's other setups, to tick.
fn picker(setups: Setups, kept: Kept) -> Option<AnyView> {
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
    let full = kept.is_full();
    let rows: Vec<AnyView> = others
        .into_iter()
        .map(|(id, name)| {
            let on = kept.chosen.with(|ids| ids.contains(&id));
            let change = move |event: leptos::ev::Event| {
                let on = event_target_checked(&event);
                kept.chosen.try_update(|ids| {
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

/// Copies set beside, to put away again; and a word where they are not kept.
fn copies(setups: Option<Setups>, kept: Kept) -> AnyView {
    let buttons: Vec<AnyView> = (0..kept.copies.count())
        .map(|index| {
            let name = copy_name(index);
            let text = t_args("compare-drop", &[("name", Arg::Text(&name))]);
            quiet_button(Some(Icon::Close), text, move || kept.copies.put_away(setups, index))
        })
        .collect();
    let passing = kept
        .copies
        .are_passing()
        .then(|| view! { <p class="notice">{t("compare-copies-passing")}</p> });
    view! {
        {buttons}
        {passing}
    }
    .into_any()
}

fn search(app: AppState, setups: Option<Setups>, kept: Kept) {
    let turns = Turns::default();
    Effect::new(move |before: Option<()>| {
        let mut all = vec![app.setup.get()];
        let mut names = vec![t("compare-this")];
        if let Some(setups) = setups {
            setups.library.with(|library| {
                let chosen = kept.chosen.get();
                if chosen.iter().any(|id| library.get(*id).is_none()) {
                    kept.chosen.update(|ids| ids.retain(|id| library.get(*id).is_some()));
                }
                for id in chosen {
                    if let Some(entry) = library.get(id) {
                        names.push(setup_name(&entry.setup));
                        all.push(entry.setup.clone());
                    }
                }
            });
        }
        let copies = kept.copies.get();
        names.extend((0..copies.len()).map(copy_name));
        all.extend(copies);
        all.truncate(MOST_SETUPS);
        for (setup, name) in all.iter_mut().zip(names) {
            setup.name = name;
        }
        let turn = turns.begin();
        let known = kept.found.with_untracked(|found| {
            found.as_ref().is_some_and(|f| f.0.stage == Stage::Done && f.0.setups == all)
        });
        if known {
            return;
        }
        let about = all.clone();
        play_after(
            if before.is_some() { PAUSE_MS } else { 0 },
            turn,
            move || {
                let skies: Vec<SkyAndAir> =
                    all.iter().map(|setup| SkyAndAir::from(&climate_of(&setup.trip))).collect();
                let pairs: Vec<(&Setup, &SkyAndAir)> = all.iter().zip(&skies).collect();
                Ok(CompareJob::new(&pairs))
            },
            move |job, stage| {
                kept.found.try_set(job.map(|job| {
                    Made(Arc::new(Found {
                        setups: about.clone(),
                        columns: job.columns(),
                        differences: job.differences().to_vec(),
                        batteries: job.batteries().to_vec(),
                        stage,
                    }))
                }));
            },
        );
    });
}

fn table(found: &Found) -> AnyView {
    let Some(first) = found.setups.first() else { return ().into_any() };
    let mut heads = vec![t("compare-what")];
    heads.extend(found.setups.iter().map(|setup| setup.name.clone()));
    let line = |label: String, cell: &dyn Fn(&Column) -> String| {
        let mut row = vec![label];
        row.extend(
            (0..found.setups.len())
                .map(|index| found.columns.get(index).map_or_else(|| t("compare-working"), cell)),
        );
        row
    };
    let absent = || t("value-absent");
    let mut rows = vec![
        line(t("compare-sure"), &|column| {
            nights(column.outcome.nights_sure, column.outcome.lasting_frac.len()).text
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
    chances.extend(found.setups.iter().enumerate().map(|(index, setup)| {
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
    let differing = if found.setups.len() < 2 {
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
    let failed = (found.stage == Stage::Failed)
        .then(|| view! { <p class="notice" role="alert">{t("change-failed")}</p> });
    view! {
        {failed}
        {data_table(outcomes)}
        {differing}
        {batteries}
    }
    .into_any()
}

/// Two decimals below ten: a kilowatt-hour costs cents.
fn per_kwh(setup: &Setup, amount: Money) -> String {
    quantity_fixed(amount.0, if amount.0 < 10.0 { 2 } else { 0 }, &setup.prices.currency)
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
