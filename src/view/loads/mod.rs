//! Appliances: the list, biggest first, and a sheet over it to add one, to set one, or to set the lamps.

mod add;
mod badges;
mod draw;
mod editor;
mod light;
mod list;
mod pictures;
mod quick;
mod row;
mod table;
mod take;
mod tick;
mod usage;
mod window;

use super::answer::spoken;
use super::focus;
use super::icons::{Icon, icon};
use super::lang::{number, t, t_args, watt_hours, watt_hours_a_day};
use super::load_energy::{self, DayUse};
use super::outlook::{self, Calculation};
use super::state::{AppState, Waiting};
use super::widgets::{Sheet, Term, button, sheet, tip_with};
use super::words::names::{drawer_name, load_name_by_id};
use crate::forecast::outlook::Drawer;
use crate::i18n::Arg;
use crate::model::Load;
use crate::model::limits::MAX_LOADS;
use crate::units::WattHours;
use leptos::prelude::*;
use list::{LoadList, Shown};
use pictures::Picture;

pub use list::LOADS_TITLE_ID;

/// A row: the id of its load and what that is in the catalogue, as another setup may have the same ids.
type RowKey = (u32, Option<u16>);

/// The rows in the order they stand in.
#[derive(Clone, Debug, PartialEq)]
struct Order {
    rows: Vec<RowKey>,
    /// The sheet lay over them.
    covered: bool,
}

/// The part "Loads".
#[must_use]
pub fn view(app: AppState, calculation: Calculation) -> AnyView {
    let list = LoadList {
        app,
        day: load_energy::follow(app, calculation),
        badges: badges::follow(app, calculation),
        answer: outlook::answer(app, calculation),
        sheet: Sheet::default(),
        shown: RwSignal::new(Shown::Catalogue),
    };
    let order = follow_order(list);
    keep_the_place(list);
    Effect::new(move |_| {
        if let Some(waiting) = app.waiting.get() {
            app.waiting.set(None);
            list.open(match waiting {
                Waiting::Table => Shown::Table,
                Waiting::Take => Shown::Take,
            });
        }
    });
    let full = Memo::new(move |_| app.setup.with(|setup| setup.loads.len() >= MAX_LOADS));
    let none = Memo::new(move |_| app.setup.with(|setup| setup.loads.is_empty()));
    let title = Signal::derive(move || match list.shown.get() {
        Shown::Catalogue => t("add-title"),
        Shown::Load { id, .. } => app.setup.with(|setup| load_name_by_id(setup, id)),
        Shown::Light => t("light-title"),
        Shown::Table => t("table-title"),
        Shown::Take => t("take-title"),
    });
    let inside = move || match list.shown.get() {
        Shown::Catalogue => add::view(list),
        // What lies behind a sheet is not read out.
        Shown::Load { id, added } => {
            view! { {quick::view(list, id, added)} {spoken(list.answer)} }.into_any()
        }
        Shown::Light => view! { {light::view(list)} {spoken(list.answer)} }.into_any(),
        Shown::Table => table::view(list),
        Shown::Take => take::view(list),
    };
    view! {
        <div class="section-head">
            <h1 id=LOADS_TITLE_ID tabindex="-1">{t("loads-title")}</h1>
            <span class="section-figure" data-testid="loads-total">
                {move || watt_hours_a_day(list.day.with(|day| day.total))}
            </span>
            {tip_with(Term::WattAndWattHour, t("from-total"))}
        </div>
        {scaled(app)}
        <ol class="load-list">
            <For
                each=move || order.get().rows
                key=|row| *row
                children=move |row| row::view(list, row.0)
            />
            {move || others(list)}
        </ol>
        {move || none.get().then(|| view! { <p class="quiet">{t("loads-none")}</p> })}
        {light::door(list)}
        <div class="add-bar" data-testid="add-bar">
            {move || {
                if full.get() {
                    let most = t_args("loads-full", &[("most", Arg::Count(MAX_LOADS as i32))]);
                    view! { <p class="quiet">{most}</p> }.into_any()
                } else {
                    button(Some(Icon::Add), t("loads-add"), move || list.open(Shown::Catalogue))
                }
            }}
        </div>
        {sheet(list.sheet, title, inside)}
    }
    .into_any()
}

/// Biggest first, what is switched off last. It is sorted anew when the list is opened, when the sheet
/// over it goes away, and when rows come or go otherwise: so no row jumps away under the finger.
fn follow_order(list: LoadList) -> Memo<Order> {
    let LoadList { app, day, sheet, .. } = list;
    let here = Memo::new(move |_| app.setup.with(|setup| setup.loads.iter().map(key_of).collect()));
    Memo::new(move |before: Option<&Order>| {
        let here: Vec<RowKey> = here.get();
        let covered = sheet.is_open();
        let same_rows = |before: &Order| {
            before.rows.len() == here.len() && before.rows.iter().all(|row| here.contains(row))
        };
        let kept = before.filter(|before| covered || !before.covered && same_rows(before));
        let rows = match kept {
            Some(before) => {
                let old = before.rows.iter().filter(|row| here.contains(row));
                let new = here.iter().filter(|row| !before.rows.contains(row));
                old.chain(new).copied().collect()
            }
            None => biggest_first(app, &day.get_untracked()),
        };
        Order { rows, covered }
    })
}

fn key_of(load: &Load) -> RowKey {
    (load.id, load.appliance)
}

fn biggest_first(app: AppState, day: &DayUse) -> Vec<RowKey> {
    let mut rows: Vec<(bool, WattHours, RowKey)> = app.setup.with_untracked(|setup| {
        let row = |load: &Load| (!load.enabled, day.of_load(load.id), key_of(load));
        setup.loads.iter().map(row).collect()
    });
    // Of the same size: in the order they were added.
    rows.sort_by(|a, b| a.0.cmp(&b.0).then(b.1.0.total_cmp(&a.1.0)));
    rows.into_iter().map(|(_, _, row)| row).collect()
}

/// When the sheet goes away, the row it was about has the focus, wherever it stands now.
fn keep_the_place(list: LoadList) {
    Effect::new(move |was_open: Option<bool>| {
        let open = list.sheet.is_open();
        if was_open == Some(true)
            && !open
            && let Some(Shown::Load { id, .. }) = list.shown.try_get_untracked()
        {
            focus::to_new(row::button_id(id));
        }
        open
    });
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

/// What draws and is no appliance of the list, so that all rows add up to the figure above them.
fn others(list: LoadList) -> Vec<AnyView> {
    list.day.with(|day| {
        let row = |(drawer, energy): &(Drawer, WattHours)| {
            let name = list.app.setup.with_untracked(|setup| drawer_name(setup, *drawer));
            let picture = match drawer {
                Drawer::InverterIdle => icon(Icon::Power),
                Drawer::Load(_) | Drawer::Electronics => Picture::Standby.view(),
            };
            view! {
                <li class="load load-other">
                    {picture}
                    <span class="load-name">{name}</span>
                    <span class="load-energy" data-testid="other-energy">{watt_hours(*energy)}</span>
                    {row::bar(day.share(*energy))}
                </li>
            }
            .into_any()
        };
        day.others.iter().map(row).collect()
    })
}
