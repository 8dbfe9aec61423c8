//! A list from a spreadsheet: pasted, or chosen as a file; shown as it is understood, and added as one step.

mod words;

use super::list::{LOADS_TITLE_ID, LoadList, Shown};
use super::tick::tick;
use crate::i18n::Arg;
use crate::import::appliances::{Draft, Note, Reading, read_appliances};
use crate::import::columns::{Columns, Kind, Meaning, Question};
use crate::import::number::{DecimalMark, MarkFound, find_mark, read_number, split_unit};
use crate::import::recognise::find_columns;
use crate::import::table::{Row, Table, TableError, read_table};
use crate::model::limits::MAX_LOADS;
use crate::model::{DrawSource, Load, catalogue};
use crate::view::focus;
use crate::view::icons::Icon;
use crate::view::lang::{number, t, t_args};
use crate::view::text_file::{TextFileError, read_text};
use crate::view::widgets::{button, disclosure, fresh_id, quiet_button, radios};
use crate::view::words::loads::load_summary;
use crate::view::words::names::{DRAW_SOURCES, count, draw_source_name};
use leptos::ev::Event;
use leptos::html::Input;
use leptos::prelude::*;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;
use wasm_bindgen_futures::spawn_local;
use words::{kind_name, note, row_fault, table_fault};

/// Cells of a column that are shown beside its heading.
const SAMPLES: usize = 2;

/// A text, how it is understood, and what its owner chose.
#[derive(Clone, PartialEq)]
struct Understood {
    table: Result<Arc<Table>, TableError>,
    columns: Columns,
    mark: MarkFound,
    source: Option<DrawSource>,
    matches: BTreeMap<usize, Option<u16>>,
    left_out: BTreeSet<usize>,
    without_faulty: bool,
}

impl Understood {
    fn of(text: &str) -> Self {
        let table = read_table(text).map(Arc::new);
        let columns = match &table {
            Ok(table) => find_columns(table),
            Err(_) => Columns { heading: None, meanings: Vec::new() },
        };
        let mark = match &table {
            Ok(table) => find_mark(cells(columns.body(table))),
            Err(_) => MarkFound::Known(DecimalMark::Point),
        };
        Self {
            table,
            columns,
            mark,
            source: None,
            matches: BTreeMap::new(),
            left_out: BTreeSet::new(),
            without_faulty: false,
        }
    }

    fn body(&self) -> &[Row] {
        self.table.as_ref().map_or(&[], |table| self.columns.body(table))
    }

    /// Whether the figures are the owner's; rows this page wrote know where theirs are from.
    fn asks_source(&self) -> bool {
        !self.body().is_empty() && self.columns.of(Kind::Code).is_none()
    }

    /// What stands over a column, or its first cell where nothing does.
    fn heading(&self, column: usize) -> String {
        let Ok(table) = &self.table else { return String::new() };
        let row = self.columns.heading.and_then(|row| table.rows.get(row));
        let heading = row.map_or("", |row| row.cell(column));
        if heading.is_empty() {
            t_args("table-column", &[("n", Arg::Count(count(column + 1)))])
        } else {
            heading.to_owned()
        }
    }

    /// A cell that can be read either way.
    fn open_cell(&self) -> Option<&str> {
        cells(self.body()).find(|cell| {
            let (digits, _) = split_unit(cell);
            let read = |mark| read_number(digits, mark);
            read(DecimalMark::Point) != read(DecimalMark::Comma)
        })
    }
}

fn cells(rows: &[Row]) -> impl Iterator<Item = &str> {
    rows.iter().flat_map(|row| row.cells.iter().map(String::as_str))
}

/// The sheet with what it follows; copies share it.
#[derive(Clone, Copy)]
struct Bring {
    list: LoadList,
    now: RwSignal<Understood>,
    drafts: Memo<Vec<Draft>>,
    /// What is to be added, in the order of the table.
    chosen: Memo<Vec<Load>>,
    /// The list of the setup goes, and this one takes its place.
    replaces: RwSignal<bool>,
}

impl Bring {
    fn read(self, text: String) {
        self.now.try_set(Understood::of(&text));
        self.list.app.pasted.try_set(text);
    }

    fn edit(self, change: impl FnOnce(&mut Understood)) {
        self.now.try_update(change);
    }

    /// Why nothing can be added yet.
    fn obstacle(self) -> Option<String> {
        let wanted = self.chosen.with(Vec::len);
        let faulty = self.drafts.with(|drafts| drafts.iter().any(|draft| draft.load.is_err()));
        let here = self.list.app.setup.with(|setup| setup.loads.len());
        let here = if self.replaces.get() { 0 } else { here };
        self.now.with(|now| {
            if now.columns.asks()
                || now.mark == MarkFound::Unknown
                || now.asks_source() && now.source.is_none()
            {
                Some(t("table-wait-question"))
            } else if faulty && !now.without_faulty {
                Some(t("table-wait-rows"))
            } else if wanted == 0 {
                Some(t("table-nothing"))
            } else if here + wanted > MAX_LOADS {
                let most = Arg::Count(count(MAX_LOADS));
                let over = Arg::Count(count(here + wanted - MAX_LOADS));
                Some(t_args("table-no-room", &[("most", most), ("n", over)]))
            } else {
                None
            }
        })
    }

    fn add(self) {
        if self.obstacle().is_some() {
            return;
        }
        let (loads, replaces) = (self.chosen.get_untracked(), self.replaces.get_untracked());
        let told = t_args("table-added", &[("n", Arg::Count(count(loads.len())))]);
        let app = self.list.app;
        app.edit_with_undo(told, |setup| {
            if replaces {
                setup.loads.clear();
            }
            for load in loads {
                let id = setup.fresh_load_id();
                setup.loads.push(Load { id, ..load });
            }
        });
        app.pasted.try_set(String::new());
        self.list.sheet.close();
        focus::to_new(LOADS_TITLE_ID);
    }
}

/// The sheet.
pub(super) fn view(list: LoadList) -> AnyView {
    let app = list.app;
    let now = RwSignal::new(app.pasted.with_untracked(|text| Understood::of(text)));
    let system = Memo::new(move |_| app.setup.with(|setup| setup.bank.system));
    let drafts = Memo::new(move |_| {
        let system = system.get();
        now.with(|now| {
            let Ok(table) = &now.table else { return Vec::new() };
            let MarkFound::Known(mark) = now.mark else { return Vec::new() };
            let reading = Reading {
                table,
                columns: &now.columns,
                mark,
                system,
                source: now.source.unwrap_or_default(),
                names: &t,
            };
            read_appliances(&reading, &now.matches)
        })
    });
    let chosen = Memo::new(move |_| {
        drafts.with(|drafts| {
            now.with(|now| {
                let wanted = drafts.iter().filter(|draft| !now.left_out.contains(&draft.line));
                wanted.filter_map(|draft| draft.load.as_ref().ok()).cloned().collect::<Vec<_>>()
            })
        })
    });
    let replaces = RwSignal::new(app.setup.with_untracked(|setup| setup.example));
    let bring = Bring { list, now, drafts, chosen, replaces };
    view! {
        <div class="bring" data-testid="table">
            {paste_box(bring)}
            {move || questions(bring)}
            {move || ready(bring)}
            {move || faulty(bring)}
            {move || columns(bring)}
            {replace(bring)}
        </div>
        {deeds(bring)}
    }
    .into_any()
}

/// Where the table comes in.
fn paste_box(bring: Bring) -> AnyView {
    let (id, file_id, fault_id) =
        (fresh_id("table"), fresh_id("table-file"), fresh_id("table-fault"));
    let described = fault_id.clone();
    let unread = RwSignal::new(None::<TextFileError>);
    let node: NodeRef<Input> = NodeRef::new();
    let chosen = move |_| {
        let file = node.get_untracked().and_then(|input| input.files()?.get(0));
        let Some(file) = file else { return };
        spawn_local(async move {
            let text = read_text(&file).await;
            unread.try_set(text.as_ref().err().copied());
            if let Ok(text) = text {
                bring.read(text);
            }
        });
    };
    let fault = move || {
        let empty = bring.list.app.pasted.with(|text| text.trim().is_empty());
        let fault = bring.now.with(|now| now.table.as_ref().err().copied());
        match (unread.get(), fault) {
            (Some(TextFileError::TooLarge { .. }), _) => table_fault(TableError::TooLarge),
            (Some(TextFileError::Unread), _) => t("file-unread"),
            (None, Some(fault)) if !empty => table_fault(fault),
            (None, _) => String::new(),
        }
    };
    view! {
        <div class="field">
            <div class="field-head"><label for=id.clone()>{t("table-paste")}</label></div>
            <textarea
                id=id
                rows="3"
                spellcheck="false"
                autocomplete="off"
                aria-describedby=described
                prop:value=move || bring.list.app.pasted.get()
                on:input=move |event: Event| {
                    unread.try_set(None);
                    bring.read(event_target_value(&event));
                }
            ></textarea>
            <p class="field-hint">{t("table-paste-hint")}</p>
            <p class="field-fault" role="alert" id=fault_id>{fault}</p>
        </div>
        <div class="field">
            <div class="field-head"><label for=file_id.clone()>{t("table-file")}</label></div>
            <input
                id=file_id
                class="file-input"
                type="file"
                accept=".csv,.tsv,.txt,.md,text/*"
                node_ref=node
                on:change=chosen
            />
        </div>
    }
    .into_any()
}

/// What only the owner can tell.
fn questions(bring: Bring) -> AnyView {
    let asked: Vec<AnyView> = bring.now.with(|now| {
        if now.body().is_empty() {
            return Vec::new();
        }
        let columns = now.columns.meanings.iter().enumerate();
        let mut asked: Vec<AnyView> = columns
            .filter_map(|(column, meaning)| match meaning {
                Meaning::Asked { question, .. } => {
                    Some(about_column(bring, now, column, *question))
                }
                Meaning::Unused | Meaning::Known { .. } => None,
            })
            .collect();
        if now.mark == MarkFound::Unknown {
            asked.extend(now.open_cell().map(|cell| about_mark(bring, cell)));
        }
        asked
    });
    let source = bring.now.with(Understood::asks_source).then(|| {
        let options = DRAW_SOURCES.map(draw_source_name).to_vec();
        let chosen = Signal::derive(move || {
            let source = bring.now.with(|now| now.source)?;
            DRAW_SOURCES.iter().position(|known| *known == source)
        });
        radios(t("table-source"), options, chosen, move |at| {
            bring.edit(|now| now.source = DRAW_SOURCES.get(at).copied());
        })
    });
    view! {
        {asked}
        {source}
    }
    .into_any()
}

fn about_column(bring: Bring, now: &Understood, column: usize, question: Question) -> AnyView {
    let heading = now.heading(column);
    let answers = question.answers();
    let options = answers.iter().map(|kind| kind_name(*kind)).collect();
    let legend = t_args("table-asked", &[("heading", Arg::Text(&heading))]);
    radios(legend, options, Signal::derive(|| None), move |at| {
        if let Some(kind) = answers.get(at) {
            bring.edit(|now| now.columns.set(column, Meaning::of(*kind)));
        }
    })
}

fn about_mark(bring: Bring, cell: &str) -> AnyView {
    let (digits, _) = split_unit(cell);
    let marks = [DecimalMark::Point, DecimalMark::Comma];
    let options = marks
        .iter()
        .map(|mark| read_number(digits, *mark).map_or_else(String::new, |value| number(value, 3)))
        .collect();
    let legend = t_args("table-mark", &[("cell", Arg::Text(cell))]);
    radios(legend, options, Signal::derive(|| None), move |at| {
        if let Some(mark) = marks.get(at) {
            bring.edit(|now| now.mark = MarkFound::Known(*mark));
        }
    })
}

/// The rows that are appliances.
fn ready(bring: Bring) -> Option<AnyView> {
    let drafts = bring.drafts.get();
    let rows: Vec<AnyView> = drafts
        .iter()
        .filter_map(|draft| Some(row(bring, draft, draft.load.as_ref().ok()?)))
        .collect();
    if rows.is_empty() {
        return None;
    }
    let heading = t_args("table-ready", &[("n", Arg::Count(count(rows.len())))]);
    let inside = view! {
        <section class="bring-part">
            <h3>{heading}</h3>
            <ol class="bring-rows">{rows}</ol>
        </section>
    };
    Some(inside.into_any())
}

fn row(bring: Bring, draft: &Draft, load: &Load) -> AnyView {
    let line = draft.line;
    let kept = move || bring.now.with(|now| !now.left_out.contains(&line));
    let keep = move |keep: bool| {
        bring.edit(|now| {
            if keep {
                now.left_out.remove(&line);
            } else {
                now.left_out.insert(line);
            }
        });
    };
    let notes: Vec<AnyView> = draft
        .notes
        .iter()
        .map(|told: &Note| view! { <p class="bring-note">{note(*told)}</p> }.into_any())
        .collect();
    let words = view! { {draft.name.clone()} " " <small>{load_summary(load)}</small> }.into_any();
    view! {
        <li class="bring-row" data-testid="table-row">
            {tick(words, kept, keep)}
            {matched(bring, draft, load)}
            {notes}
        </li>
    }
    .into_any()
}

/// What the catalogue knows the row as, to be chosen otherwise.
fn matched(bring: Bring, draft: &Draft, load: &Load) -> Option<AnyView> {
    if draft.candidates.is_empty() {
        return None;
    }
    let line = draft.line;
    let candidates = draft.candidates.clone();
    let known = candidates.iter().filter_map(|id| catalogue::appliance(*id)).map(|known| {
        let selected = load.appliance == Some(known.id);
        view! { <option value=known.id.to_string() selected=selected>{t(known.key)}</option> }
    });
    let known = known.collect_view();
    let none = load.appliance.is_none();
    let label = t_args("table-match", &[("name", Arg::Text(&draft.name))]);
    let choose = move |event: Event| {
        let id = event_target_value(&event).parse().ok();
        bring.edit(|now| _ = now.matches.insert(line, id));
    };
    let inside = view! {
        <select class="bring-match" aria-label=label on:change=choose>
            {known}
            <option value="" selected=none>{t("table-match-none")}</option>
        </select>
    };
    Some(inside.into_any())
}

/// The rows that are none, with the reason.
fn faulty(bring: Bring) -> Option<AnyView> {
    let drafts = bring.drafts.get();
    let rows: Vec<AnyView> = drafts
        .iter()
        .filter_map(|draft| {
            let fault = row_fault(draft.load.as_ref().err()?);
            let line = t_args("table-line", &[("line", Arg::Count(count(draft.line)))]);
            let name = draft.name.clone();
            Some(view! { <li><b>{line}</b> " " {name} " " <small>{fault}</small></li> }.into_any())
        })
        .collect();
    if rows.is_empty() || bring.now.with(|now| now.columns.asks()) {
        return None;
    }
    let label = t_args("table-leave", &[("n", Arg::Count(count(rows.len())))]).into_any();
    let left = move || bring.now.with(|now| now.without_faulty);
    let leave = move |leave| bring.edit(|now| now.without_faulty = leave);
    let inside = view! {
        <section class="bring-part">
            <h3>{t("table-faulty")}</h3>
            <ul class="bring-faulty" data-testid="table-faulty">{rows}</ul>
            {tick(label, left, leave)}
        </section>
    };
    Some(inside.into_any())
}

/// What each column is read as, to be set otherwise.
fn columns(bring: Bring) -> Option<AnyView> {
    let now = bring.now.get();
    if now.body().is_empty() {
        return None;
    }
    let fields = (0..now.columns.meanings.len()).map(|column| column_field(bring, &now, column));
    let fields = fields.collect_view();
    // Open where too little is known to go by.
    let knows = |kind| now.columns.of(kind).is_some();
    let figures = [Kind::Watts, Kind::Amps, Kind::EnergyOfOne, Kind::EnergyOfAll, Kind::Code];
    let enough = knows(Kind::Name)
        && (now.columns.meanings.len() == 1
            || figures.into_iter().any(knows)
            || now.columns.asks());
    Some(disclosure(
        t("table-columns"),
        !enough,
        view! { <div class="fields">{fields}</div> }.into_any(),
    ))
}

fn column_field(bring: Bring, now: &Understood, column: usize) -> AnyView {
    let id = fresh_id("column");
    let meaning = now.columns.meanings.get(column).copied().unwrap_or_default();
    let samples: Vec<&str> =
        now.body().iter().map(|row| row.cell(column)).filter(|cell| !cell.is_empty()).collect();
    let samples = samples.iter().take(SAMPLES).copied().collect::<Vec<_>>().join(" · ");
    let options: Vec<AnyView> = Kind::ALL
        .iter()
        .enumerate()
        .map(|(at, kind)| {
            let selected = meaning.kind() == Some(*kind);
            view! { <option value=at.to_string() selected=selected>{kind_name(*kind)}</option> }
                .into_any()
        })
        .collect();
    let none = meaning.kind().is_none();
    let choose = move |event: Event| {
        let kind = event_target_value(&event).parse().ok().and_then(|at: usize| Kind::ALL.get(at));
        let meaning = kind.map_or(Meaning::Unused, |kind| Meaning::of(*kind));
        bring.edit(|now| now.columns.set(column, meaning));
    };
    view! {
        <div class="field">
            <div class="field-head"><label for=id.clone()>{now.heading(column)}</label></div>
            <div class="field-box">
                <select id=id on:change=choose>
                    <option value="" selected=none>{t("table-unused")}</option>
                    {options}
                </select>
            </div>
            <p class="field-hint">{samples}</p>
        </div>
    }
    .into_any()
}

/// Whether the list of the setup goes.
fn replace(bring: Bring) -> AnyView {
    let some = Memo::new(move |_| bring.list.app.setup.with(|setup| !setup.loads.is_empty()));
    let read = Memo::new(move |_| bring.now.with(|now| !now.body().is_empty()));
    let inside = move || {
        (some.get() && read.get()).then(|| {
            let set = move |on| _ = bring.replaces.try_set(on);
            tick(t("table-replace").into_any(), move || bring.replaces.get(), set)
        })
    };
    view! { {inside} }.into_any()
}

/// What stands in the way, and the button.
fn deeds(bring: Bring) -> AnyView {
    let read = Memo::new(move |_| bring.now.with(|now| !now.body().is_empty()));
    let obstacle = Memo::new(move |_| bring.obstacle());
    let told = move || read.get().then(|| obstacle.get()).flatten();
    let back = move || bring.list.open(Shown::Catalogue);
    let add = move || {
        (obstacle.get().is_none() && read.get()).then(|| {
            let words =
                t_args("table-add", &[("n", Arg::Count(count(bring.chosen.with(Vec::len))))]);
            button(Some(Icon::Add), words, move || bring.add())
        })
    };
    view! {
        <p class="bring-obstacle" role="status">{told}</p>
        <div class="button-row">{quiet_button(None, t("table-back"), back)} {add}</div>
    }
    .into_any()
}
