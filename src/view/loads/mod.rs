//! Appliances: the list, and the way to add one.

mod add;
mod draw;
mod editor;
mod row;
mod usage;
mod window;

use super::icons::Icon;
use super::lang::{number, t, t_args, watt_hours_a_day};
use super::state::AppState;
use super::widgets::{Sheet, Term, button, sheet, tip_with};
use super::words::names::group_name;
use crate::forecast::demand::LoadEnergy;
use crate::i18n::Arg;
use crate::model::Group;
use crate::model::limits::MAX_LOADS;
use crate::units::WattHours;
use leptos::prelude::*;

/// A line of the list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
enum Line {
    /// Head of a group.
    Head(Group),
    /// A load, by id.
    Row(u32),
}

/// Id of the heading of this part.
pub const LOADS_TITLE_ID: &str = "loads-title";

/// The part "Loads".
#[must_use]
pub fn view(app: AppState, needs: Memo<LoadEnergy>) -> AnyView {
    let lines = Memo::new(move |_| app.setup.with(|setup| lines(&setup.loads)));
    let adding = Sheet::default();
    let open = RwSignal::new(None);
    let full = Memo::new(move |_| app.setup.with(|setup| setup.loads.len() >= MAX_LOADS));
    view! {
        <div class="section-head">
            <h1 id=LOADS_TITLE_ID tabindex="-1">{t("loads-title")}</h1>
            <span class="section-figure">
                {move || watt_hours_a_day(needs.with(|needs| needs.total))}
            </span>
            {tip_with(Term::WattAndWattHour, t("from-total"))}
        </div>
        {scaled(app)}
        <ol class="load-list">
            <For
                each=move || lines.get()
                key=|line| *line
                children=move |line| match line {
                    Line::Head(group) => group_head(app, needs, group),
                    Line::Row(id) => row::view(app, needs, open, id),
                }
            />
        </ol>
        {move || lines.with(Vec::is_empty).then(|| view! { <p class="quiet">{t("loads-none")}</p> })}
        <div class="add-bar" data-testid="add-bar">
            {move || {
                if full.get() {
                    let most = t_args("loads-full", &[("most", Arg::Count(MAX_LOADS as i32))]);
                    view! { <p class="quiet">{most}</p> }.into_any()
                } else {
                    button(Some(Icon::Add), t("loads-add"), move || adding.show())
                }
            }}
        </div>
        {sheet(adding, t("add-title"), move || add::view(app, adding, open))}
    }
    .into_any()
}

/// That readings on site have scaled every figure of the list, where they have.
fn scaled(app: AppState) -> AnyView {
    let factor = Memo::new(move |_| app.setup.with(|setup| setup.correction.use_factor));
    let line = move || {
        let factor = factor.get();
        (factor != 1.0).then(|| {
            let times = format!("×{}", number(factor, 2));
            let said = t_args("loads-scaled", &[("factor", Arg::Text(&times))]);
            view! { <p class="quiet">{said}</p> }
        })
    };
    view! { {line} }.into_any()
}

fn lines(loads: &[crate::model::Load]) -> Vec<Line> {
    let mut lines = Vec::new();
    for group in Group::ALL {
        let mut rows = loads.iter().filter(|load| load.group == group).peekable();
        if rows.peek().is_some() {
            lines.push(Line::Head(group));
            lines.extend(rows.map(|load| Line::Row(load.id)));
        }
    }
    lines
}

fn group_head(app: AppState, needs: Memo<LoadEnergy>, group: Group) -> AnyView {
    let sum = move || -> WattHours {
        app.setup.with(|setup| {
            let own = setup.loads.iter().filter(|load| load.group == group);
            needs.with(|needs| own.map(|load| needs.of_load(load.id)).sum())
        })
    };
    view! {
        <li class="load-group">
            <h2>{group_name(group)}</h2>
            <span>{move || watt_hours_a_day(sum())}</span>
        </li>
    }
    .into_any()
}
