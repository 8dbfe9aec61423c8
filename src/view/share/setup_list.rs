//! The list of the user's setups.

use crate::i18n::Arg;
use crate::model::Setup;
use crate::model::example::example_setup;
use crate::store::file::MAX_SETUPS;
use crate::store::{Entry, EntryId};
use crate::view::icons::Icon;
use crate::view::lang::{t, t_args};
use crate::view::lens::Lens;
use crate::view::setups::Setups;
use crate::view::widgets::{icon_button, quiet_button, text_field};
use crate::view::words::names::setup_name;
use crate::view::words::setups::setup_outline;
use leptos::prelude::*;

/// What a row of the list shows.
#[derive(Clone, PartialEq)]
struct Row {
    id: EntryId,
    name: String,
    outline: String,
}

impl Row {
    fn of(entry: &Entry) -> Self {
        Self { id: entry.id, name: setup_name(&entry.setup), outline: setup_outline(&entry.setup) }
    }
}

/// The list, with what can be done with setups.
#[must_use]
pub fn setup_list(setups: Setups) -> AnyView {
    let rows = Memo::new(move |_| {
        setups.library.with(|library| library.entries().iter().map(Row::of).collect::<Vec<_>>())
    });
    let chosen = Memo::new(move |_| {
        let own = setups.preview.with(Option::is_none);
        let current = setups.library.with(|library| library.current().map(|entry| entry.id));
        current.filter(|_| own)
    });
    let name = Lens::of(|setup: &Setup| setup.name.clone(), |setup, name| setup.name = name);
    view! {
        <section class="card" aria-label=t("setups-title")>
            <div class="card-head"><h2>{t("setups-title")}</h2></div>
            {move || {
                let list = rows.get();
                if list.is_empty() {
                    view! { <p>{t("setups-none")}</p> }.into_any()
                } else {
                    let items: Vec<AnyView> =
                        list.into_iter().map(|row| row_view(setups, chosen, row)).collect();
                    view! { <ul class="shelf">{items}</ul> }.into_any()
                }
            }}
            {text_field(setups.app, t("setup-name"), t("setup-nameless"), name)}
            <div class="button-row">
                {quiet_button(Some(Icon::Add), t("setups-new"), move || { setups.add_setup(blank(setups)); })}
                {quiet_button(None, t("setups-new-example"), move || { setups.add_setup(example_setup()); })}
                {quiet_button(Some(Icon::Duplicate), t("setups-duplicate"), move || setups.duplicate())}
            </div>
            {move || {
                (rows.with(Vec::len) >= MAX_SETUPS).then(|| view! { <p>{t("setups-full")}</p> })
            }}
        </section>
    }
    .into_any()
}

/// A setup with nothing in it but the trip, which is usually the same.
fn blank(setups: Setups) -> Setup {
    let trip = setups.app.setup.with_untracked(|setup| setup.trip.clone());
    Setup { name: t("setup-new-name"), trip, ..Setup::default() }
}

fn row_view(setups: Setups, chosen: Memo<Option<EntryId>>, row: Row) -> AnyView {
    let Row { id, name, outline } = row;
    let delete = t_args("setups-delete", &[("name", Arg::Text(&name))]);
    view! {
        <li class="shelf-row">
            <button
                type="button"
                class="shelf-choose"
                data-testid="setup"
                aria-current=move || (chosen.get() == Some(id)).then_some("true")
                on:click=move |_| setups.select(id)
            >
                <strong>{name}</strong>
                <small>{outline}</small>
            </button>
            {icon_button(Icon::Delete, delete, move || setups.delete(id))}
        </li>
    }
    .into_any()
}
