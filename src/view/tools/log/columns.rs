//! What the columns are: as they were told, to be set otherwise; a preview of three rows; what was left out.

use super::state::{LogState, ReadLog};
use crate::i18n::Arg;
use crate::import::log::{Ask, Clock, DateOrder, Fault, LogTable, PlusIs, Rejected, Role, Told};
use crate::import::number::DecimalMark;
use crate::view::arc_ptr_eq::ArcPtrEq;
use crate::view::lang::{key, number, t, t_args};
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{DataTable, data_table, disclosure, radios, select_field};
use crate::view::words::names::counted;
use leptos::prelude::*;

/// Name of a role.
fn role_name(role: Role) -> String {
    t(match role {
        Role::Unused => key!("log-role-unused"),
        Role::Time => key!("log-role-time"),
        Role::Date => key!("log-role-date"),
        Role::Soc => key!("log-role-soc"),
        Role::Volts => key!("log-role-volts"),
        Role::Amps => key!("log-role-amps"),
        Role::Watts => key!("log-role-watts"),
        Role::Charging => key!("log-role-charging"),
        Role::Used => key!("log-role-used"),
    })
}

fn column_name(table: &LogTable, column: usize) -> String {
    let n = number((column + 1) as f64, 0);
    let n = ("n", Arg::Text(n.as_str()));
    match table.heading(column) {
        "" => t_args("log-column", &[n]),
        name => t_args("log-column-named", &[n, ("name", Arg::Text(name))]),
    }
}

/// The card, once there is a log.
pub(super) fn view(app: AppState, state: LogState) -> AnyView {
    view! {
        {move || state.table.get().map(|table| card(app, state, &table))}
    }
    .into_any()
}

fn card(app: AppState, state: LogState, table: &ArcPtrEq<LogTable>) -> AnyView {
    let log = &table.0;
    let rows = t_args("log-rows", &[("n", counted(log.rows))]);
    let above = (log.above > 0).then(|| {
        view! { <p class="quiet">{t_args("log-above", &[("n", counted(log.above))])}</p> }
    });
    let selects: Vec<AnyView> =
        (0..log.columns.len()).map(|column| select(app, state, log, column)).collect();
    let asked = table.clone();
    let asks = Memo::new(move |_| state.choices.with(|choices| asked.0.asks(choices)));
    let preview = preview(log);
    let table = table.clone();
    view! {
        <section class="card" aria-labelledby="log-columns-title" data-testid="log-columns">
            <h2 id="log-columns-title">{t("log-columns")}</h2>
            <p>{rows} " " {t("log-columns-told")}</p>
            {above}
            {data_table(preview)}
            <div class="fields fields-one">{selects}</div>
            {move || ask_view(&asks.get())}
            {move || order_choice(state, &table.0)}
            {move || mark_choice(state)}
            {move || sign_choice(state)}
            {clock_choice(state)}
            {move || state.read.get().map(|read| left_out(&read.0))}
        </section>
    }
    .into_any()
}

fn preview(log: &LogTable) -> DataTable {
    let columns = log.columns.len();
    let line = t("log-line");
    let heads = (0..columns).map(|column| match log.heading(column) {
        "" => number((column + 1) as f64, 0),
        name => name.to_owned(),
    });
    DataTable {
        caption: t("log-preview"),
        heads: std::iter::once(line).chain(heads).collect(),
        rows: log
            .preview
            .iter()
            .map(|row| {
                let cells = (0..columns).map(|column| row.cell(column).to_owned());
                std::iter::once(number(row.line as f64, 0)).chain(cells).collect()
            })
            .collect(),
    }
}

fn select(app: AppState, state: LogState, log: &LogTable, column: usize) -> AnyView {
    let lens = Lens::new(
        move |_| {
            let role = state.choices.try_with(|choices| choices.roles.get(column).copied())??;
            Role::ALL.iter().position(|known| *known == role)
        },
        move |_, index: usize| {
            if let Some(role) = Role::ALL.get(index) {
                state.choices.try_update(|choices| choices.assign(column, *role));
                state.told.try_update(|told| {
                    if let Some(told) = told.get_mut(column) {
                        *told = Told::Heading;
                    }
                });
            }
        },
    );
    let guessed = move || {
        let guessed = state.told.with(|told| told.get(column) == Some(&Told::Figures));
        guessed.then(|| view! { <p class="field-hint">{t("log-by-figures")}</p> })
    };
    let names = Role::ALL.into_iter().map(role_name).collect();
    view! {
        <div>
            {select_field(app, column_name(log, column), names, lens)}
            {guessed}
        </div>
    }
    .into_any()
}

fn ask_view(asks: &[Ask]) -> AnyView {
    let asks: Vec<AnyView> = asks
        .iter()
        .map(|ask| {
            let text = t(match ask {
                Ask::Time => key!("log-ask-time"),
                Ask::Figure => key!("log-ask-figure"),
                Ask::DateOrder => key!("log-ask-order"),
                Ask::Mark => key!("log-ask-mark"),
            });
            view! { <p class="notice" role="status">{text}</p> }.into_any()
        })
        .collect();
    asks.into_any()
}

/// Only where the log does not say it itself.
fn order_choice(state: LogState, table: &LogTable) -> Option<AnyView> {
    const ORDERS: [DateOrder; 2] = [DateOrder::Dmy, DateOrder::Mdy];
    let open = state.choices.with(|choices| table.date_order(choices).is_none());
    open.then(|| {
        let chosen = Signal::derive(move || {
            let order = state.choices.with(|choices| choices.date_order)?;
            ORDERS.iter().position(|known| *known == order)
        });
        let options = vec![t("log-order-day"), t("log-order-month")];
        radios(t("log-order"), options, chosen, move |index| {
            state.choices.try_update(|choices| choices.date_order = ORDERS.get(index).copied());
        })
    })
}

fn mark_choice(state: LogState) -> Option<AnyView> {
    const MARKS: [DecimalMark; 2] = [DecimalMark::Point, DecimalMark::Comma];
    let table = state.table.get()?;
    let open = table.0.mark() == crate::import::number::MarkFound::Unknown;
    open.then(|| {
        let chosen = Signal::derive(move || {
            let mark = state.choices.with(|choices| choices.mark)?;
            MARKS.iter().position(|known| *known == mark)
        });
        let options = vec![t("log-mark-point"), t("log-mark-comma")];
        radios(t("log-mark"), options, chosen, move |index| {
            state.choices.try_update(|choices| choices.mark = MARKS.get(index).copied());
        })
    })
}

fn sign_choice(state: LogState) -> Option<AnyView> {
    const SIGNS: [PlusIs; 2] = [PlusIs::Charging, PlusIs::Using];
    let read = state.read.get()?;
    read.0.has_sign.then(|| {
        let plus_is = read.0.plus_is;
        let chosen = Signal::derive(move || SIGNS.iter().position(|known| Some(*known) == plus_is));
        let options = vec![t("log-plus-charging"), t("log-plus-using")];
        let row = radios(t("log-plus"), options, chosen, move |index| {
            state.choices.try_update(|choices| choices.plus_is = SIGNS.get(index).copied());
        });
        let asked = plus_is.is_none().then(|| {
            view! { <p class="notice" role="status">{t("log-ask-plus")}</p> }
        });
        view! { {asked} {row} }.into_any()
    })
}

fn clock_choice(state: LogState) -> AnyView {
    const CLOCKS: [Clock; 2] = [Clock::Camp, Clock::Utc];
    let chosen = Signal::derive(move || {
        let clock = state.choices.with(|choices| choices.clock);
        CLOCKS.iter().position(|known| *known == clock)
    });
    let options = vec![t("log-clock-camp"), t("log-clock-utc")];
    radios(t("log-clock"), options, chosen, move |index| {
        if let Some(clock) = CLOCKS.get(index) {
            state.choices.try_update(|choices| choices.clock = *clock);
        }
    })
}

fn reason(fault: Fault) -> String {
    let of = |key: &str, role: Role| t_args(key, &[("name", Arg::Text(&role_name(role)))]);
    match fault {
        Fault::NoTime => t("log-left-no-time"),
        Fault::TimeUnread => t("log-left-time-unread"),
        Fault::SameTime => t("log-left-same-time"),
        Fault::NoFigure => t("log-left-no-figure"),
        Fault::Unread(role) => of(key!("log-left-unread"), role),
        Fault::OutOfRange(role) => of(key!("log-left-range"), role),
    }
}

fn left_out(read: &ReadLog) -> Option<AnyView> {
    let count: usize = read.counts.iter().map(|(_, count)| count).sum();
    (count > 0).then(|| {
        let sums: Vec<AnyView> = read
            .counts
            .iter()
            .map(|(fault, count)| {
                let count = number(*count as f64, 0);
                view! { <li>{reason(*fault)} ": " {count}</li> }.into_any()
            })
            .collect();
        let row = |left: &Rejected| {
            vec![number(left.line as f64, 0), reason(left.fault), left.cell.clone()]
        };
        let table = DataTable {
            caption: t("log-left-first"),
            heads: vec![t("log-line"), t("log-left-why"), t("log-left-cell")],
            rows: read.rejected.iter().map(row).collect(),
        };
        let inside = view! {
            <ul class="help-facts">{sums}</ul>
            {data_table(table)}
        };
        disclosure(t_args("log-left-out", &[("n", counted(count))]), false, inside.into_any())
    })
}
