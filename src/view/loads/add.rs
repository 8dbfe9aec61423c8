//! Adding an appliance: from the catalogue in two taps, or a blank one.

use super::list::{LoadList, SEARCH_ID, Shown};
use crate::i18n::Arg;
use crate::model::catalogue::{Appliance, search};
use crate::model::limits::MAX_LOADS;
use crate::model::{Feed, Group, Load};
use crate::view::focus;
use crate::view::icons::{Icon, icon};
use crate::view::lang::{number, t, t_args};
use crate::view::widgets::{button, icon_button, quiet_button};
use crate::view::words::names::group_name;
use leptos::ev::Event;
use leptos::prelude::*;

/// What the sheet shows: a field to search and the catalogue.
pub(super) fn view(list: LoadList) -> AnyView {
    let query = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        query.with(|query| {
            let ids: Vec<u16> = search(query, t).into_iter().map(|known| known.id).collect();
            ids
        })
    });
    let blank = move || {
        if let Some(added) = add(list, |fresh| Load { id: fresh, ..Load::default() }) {
            list.show_added(added);
        }
    };
    view! {
        <div class="field find">
            <label class="unseen" for=SEARCH_ID>{t("add-search")}</label>
            <div class="field-box">
                {icon(Icon::Search)}
                <input
                    id=SEARCH_ID
                    type="search"
                    autocomplete="off"
                    placeholder=t("add-search")
                    prop:value=move || query.get()
                    on:input=move |event: Event| {
                        query.try_set(event_target_value(&event));
                    }
                />
            </div>
        </div>
        <p class="unseen" role="status">
            {move || {
                let count = Arg::Count(found.with(Vec::len) as i32);
                query.with(|query| !query.is_empty()).then(|| t_args("add-found", &[("n", count)]))
            }}
        </p>
        {move || catalogue(list, query, found)}
        <div class="button-row">
            {quiet_button(Some(Icon::Add), t("add-blank"), blank)}
            {quiet_button(None, t("table-door"), move || list.open(Shown::Table))}
            {button(Some(Icon::Done), t("add-done"), move || list.sheet.close())}
        </div>
    }
    .into_any()
}

/// The entries found; under their groups while nothing is typed.
fn catalogue(list: LoadList, query: RwSignal<String>, found: Memo<Vec<u16>>) -> AnyView {
    let by_group = query.with(|query| query.trim().is_empty());
    let mut last: Option<Group> = None;
    let rows: Vec<AnyView> = found
        .get()
        .into_iter()
        .filter_map(crate::model::catalogue::appliance)
        .map(|known| {
            let head = (by_group && last != Some(known.group)).then(|| {
                last = Some(known.group);
                view! { <li class="find-group">{group_name(known.group)}</li> }
            });
            view! { {head} {entry(list, query, known)} }.into_any()
        })
        .collect();
    if rows.is_empty() {
        return view! { <p class="quiet">{t("add-nothing")}</p> }.into_any();
    }
    view! { <ul class="find-list">{rows}</ul> }.into_any()
}

/// An appliance of the catalogue: pressed it is added and shown; its plus adds it as it usually is.
fn entry(list: LoadList, query: RwSignal<String>, known: &'static Appliance) -> AnyView {
    let app = list.app;
    let count = Memo::new(move |_| {
        app.setup.with(|setup| {
            setup.loads.iter().filter(|load| load.appliance == Some(known.id)).count()
        })
    });
    let add_it = move || {
        let added = add(list, |fresh| {
            let system = app.setup.with_untracked(|setup| setup.bank.system);
            known.to_load(fresh, system)
        });
        if added.is_some() {
            app.tell(t_args("add-added", &[("name", Arg::Text(&t(known.key)))]), true);
        }
        added
    };
    let and_show = move |_| {
        if let Some(added) = add_it() {
            list.show_added(added);
        }
    };
    let as_usual = move || {
        // Whoever searched searches on.
        if add_it().is_some() && query.with_untracked(|query| !query.is_empty()) {
            query.set(String::new());
            focus::to(SEARCH_ID);
        }
    };
    let usual = t_args("add-usual", &[("name", Arg::Text(&t(known.key)))]);
    let in_list = move || {
        let count = count.get();
        (count > 0).then(|| {
            let words = t_args("add-in-list", &[("n", Arg::Count(count as i32))]);
            view! { <span class="find-count">{icon(Icon::Done)}{words}</span> }
        })
    };
    view! {
        <li class="find-row">
            <button type="button" class="find-entry" on:click=and_show>
                <span class="find-name">{t(known.key)}</span>
                <small>{usual_draw(known)} " " {in_list}</small>
            </button>
            {icon_button(Icon::Add, usual, as_usual)}
        </li>
    }
    .into_any()
}

fn usual_draw(known: &Appliance) -> String {
    let range = if known.low == known.high {
        number(known.typical.0, 1)
    } else {
        format!("{}–{}", number(known.low.0, 1), number(known.high.0, 1))
    };
    let draw = format!("{range}\u{202f}W");
    match known.feed {
        Feed::Dc => draw,
        Feed::Inverter => format!("{draw} · {}", t("summary-inverter")),
    }
}

/// Adds a load and gives its id; `None` where the list is full, which is told.
fn add(list: LoadList, make: impl FnOnce(u32) -> Load) -> Option<u32> {
    let app = list.app;
    let (count, fresh) =
        app.setup.with_untracked(|setup| (setup.loads.len(), setup.fresh_load_id()));
    if count >= MAX_LOADS {
        list.tell_full();
        return None;
    }
    let load = make(fresh);
    app.edit_apart(|setup| setup.loads.push(load));
    Some(fresh)
}
