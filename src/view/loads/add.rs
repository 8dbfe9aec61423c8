//! Adding an appliance: from the catalogue in two taps, or a blank one.

use super::editor::button_id;
use crate::i18n::Arg;
use crate::model::catalogue::{Appliance, search};
use crate::model::limits::MAX_LOADS;
use crate::model::{Feed, Group, Load};
use crate::view::focus;
use crate::view::icons::{Icon, icon};
use crate::view::lang::{number, t, t_args};
use crate::view::state::AppState;
use crate::view::widgets::{Sheet, button, fresh_id, quiet_button};
use crate::view::words::names::group_name;
use leptos::ev::Event;
use leptos::prelude::*;

/// What the sheet shows: a field to search and the catalogue.
pub(super) fn view(app: AppState, sheet: Sheet, open: RwSignal<Option<u32>>) -> AnyView {
    let query = RwSignal::new(String::new());
    let found = Memo::new(move |_| {
        query.with(|query| {
            let ids: Vec<u16> = search(query, t).into_iter().map(|known| known.id).collect();
            ids
        })
    });
    let id = fresh_id("find");
    let blank = move || {
        if let Some(added) = add(app, |fresh| Load { id: fresh, ..Load::default() }) {
            open.try_set(Some(added));
            sheet.close();
            focus::to_new(button_id(added));
        }
    };
    view! {
        <div class="field find">
            <label class="unseen" for=id.clone()>{t("add-search")}</label>
            <div class="field-box">
                {icon(Icon::Search)}
                <input
                    id=id
                    type="search"
                    autocomplete="off"
                    placeholder=t("add-search")
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
        {move || catalogue(app, found, query.with(|query| query.trim().is_empty()))}
        <div class="button-row">
            {quiet_button(Some(Icon::Add), t("add-blank"), blank)}
            {button(Some(Icon::Done), t("add-done"), move || sheet.close())}
        </div>
    }
    .into_any()
}

/// The entries found; under their groups while nothing is typed.
fn catalogue(app: AppState, found: Memo<Vec<u16>>, by_group: bool) -> AnyView {
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
            view! { {head} {entry(app, known)} }.into_any()
        })
        .collect();
    if rows.is_empty() {
        return view! { <p class="quiet">{t("add-nothing")}</p> }.into_any();
    }
    view! { <ul class="find-list">{rows}</ul> }.into_any()
}

fn entry(app: AppState, known: &'static Appliance) -> AnyView {
    let count = Memo::new(move |_| {
        app.setup.with(|setup| {
            setup.loads.iter().filter(|load| load.appliance == Some(known.id)).count()
        })
    });
    let press = move |_| {
        let name = t(known.key);
        let added = add(app, |fresh| {
            let system = app.setup.with_untracked(|setup| setup.bank.system);
            known.to_load(fresh, system)
        });
        if added.is_some() {
            app.tell(t_args("add-added", &[("name", Arg::Text(&name))]), true);
        }
    };
    view! {
        <li>
            <button type="button" class="find-entry" on:click=press>
                <span class="find-name">{t(known.key)}</span>
                <small>{usual_draw(known)}</small>
                <span class="find-count">
                    {move || {
                        let count = count.get();
                        if count == 0 {
                            icon(Icon::Add)
                        } else {
                            let words = t_args("add-in-list", &[("n", Arg::Count(count as i32))]);
                            view! { {icon(Icon::Done)} <span>{words}</span> }.into_any()
                        }
                    }}
                </span>
            </button>
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
fn add(app: AppState, make: impl FnOnce(u32) -> Load) -> Option<u32> {
    let (count, fresh) =
        app.setup.with_untracked(|setup| (setup.loads.len(), setup.fresh_load_id()));
    if count >= MAX_LOADS {
        app.tell(t_args("loads-full", &[("most", Arg::Count(MAX_LOADS as i32))]), false);
        return None;
    }
    let load = make(fresh);
    app.edit_apart(|setup| setup.loads.push(load));
    Some(fresh)
}
