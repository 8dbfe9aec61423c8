//! Everything about one appliance, edited in place.

use super::{draw, usage, window};
use crate::forecast::demand::LoadEnergy;
use crate::i18n::Arg;
use crate::model::catalogue::{self, appliance};
use crate::model::limits::{CUT_OUT_V, FRAC, MAX_LOADS, QUANTITY, STANDBY_W, SURGE_FACTOR};
use crate::model::{CutOut, Feed, Group, Load};
use crate::units::{Volts, Watts};
use crate::view::focus;
use crate::view::icons::Icon;
use crate::view::lang::{t, t_args};
use crate::view::lens::Lens;
use crate::view::state::{AppState, Tab};
use crate::view::widgets::{
    Danger, NumberField, Term, caution, choice_row, disclosure, quiet_button, select_field,
    text_field, toggle,
};
use crate::view::words::loads::time_in_this_air;
use crate::view::words::names::{
    DRAW_SOURCES, draw_source_name, group_name, load_name, usual_name,
};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

/// Id in the page of the button that opens the row of a load.
pub(super) fn button_id(id: u32) -> String {
    format!("row-{id}")
}

const FEEDS: [Feed; 2] = [Feed::Dc, Feed::Inverter];

/// The form for the load with this id.
pub(super) fn view(
    app: AppState,
    needs: Memo<LoadEnergy>,
    open: RwSignal<Option<u32>>,
    id: u32,
) -> AnyView {
    let load = app.setup.with_untracked(|setup| setup.load(id).cloned().unwrap_or_default());
    let quantity = Lens::<f64>::load(
        id,
        |load| Some(f64::from(load.quantity)),
        |load, value| load.quantity = value.round() as u16,
    );
    let feed = Lens::<Feed>::load(id, |load| Some(load.feed), |load, feed| load.feed = feed);
    let draw_source =
        Lens::load(id, |load| Some(load.draw_source), |load, how| load.draw_source = how);
    let group = Lens::<Group>::load(id, |load| Some(load.group), |load, to| load.group = to);
    let feeds = vec![t("feed-dc"), t("feed-inverter")];
    let groups = Group::ALL.into_iter().map(group_name).collect();
    let more = view! {
        <div class="fields">
            {standby(id).view(app)}
            {spread(id).view(app)}
            {surge(id).view(app)}
            {cut_out(app, id)}
            {select_field(app, t("load-group"), groups, group.choice(&Group::ALL))}
        </div>
    }
    .into_any();
    view! {
        <div class="load-editor" data-testid="load-editor">
            {cautions(app, id, &load)}
            {text_field(
                app,
                t("load-name"),
                usual_name(&load),
                Lens::load(id, |load| Some(load.name.clone()), |load, name| load.name = name),
            )}
            {draw::view(app, id)}
            {choice_row(
                app,
                t("load-learned"),
                DRAW_SOURCES.into_iter().map(draw_source_name).collect(),
                draw_source.choice(&DRAW_SOURCES),
            )}
            {usage::view(app, id)}
            {in_this_air(app, needs, id)}
            {window::view(app, id)}
            <div class="fields">
                {NumberField::new(t("load-quantity"), "", QUANTITY, quantity).step(1.0).view(app)}
            </div>
            {choice_row(app, t("load-feed"), feeds, feed.choice(&FEEDS))}
            {inverter_notice(app, id)}
            {disclosure(t("load-more"), false, more)}
            {deeds(app, open, id)}
        </div>
    }
    .into_any()
}

/// Why a load that follows the air takes another amount than its usual share of the time says.
fn in_this_air(app: AppState, needs: Memo<LoadEnergy>, id: u32) -> AnyView {
    let told = Memo::new(move |_| {
        let energy = needs.with(|needs| needs.of_load(id));
        app.setup.with(|setup| {
            let load = setup.load(id)?;
            let planned = energy / setup.correction.use_factor;
            // What it takes between uses is in the amount.
            (load.standby <= Watts::ZERO).then(|| time_in_this_air(load, planned))?
        })
    });
    let line = move || told.get().map(|text| view! { <p class="field-hint">{text}</p> });
    view! { {line} }.into_any()
}

fn standby(id: u32) -> NumberField {
    let lens = Lens::<f64>::load(
        id,
        |load| Some(load.standby.0),
        |load, value| load.standby = Watts(value),
    );
    NumberField::new(t("load-standby"), "W", STANDBY_W, lens)
        .hint(t("load-standby-hint"))
        .term(Term::Standby)
}

fn spread(id: u32) -> NumberField {
    let lens = Lens::<Option<f64>>::load(
        id,
        |load| Some(load.spread_frac),
        |load, value| load.spread_frac = value,
    );
    let field = NumberField::optional(t("load-spread"), "%", FRAC, lens);
    NumberField { scale: 100.0, ..field }.hint(t("load-spread-hint"))
}

fn surge(id: u32) -> NumberField {
    let lens = Lens::<f64>::load(
        id,
        |load| Some(load.surge_factor),
        |load, value| load.surge_factor = value,
    );
    NumberField::new(t("load-surge"), "×", SURGE_FACTOR, lens).term(Term::Surge)
}

/// A cut-out of its own: off and on again.
fn cut_out(app: AppState, id: u32) -> AnyView {
    let has = Lens::<bool>::load(
        id,
        |load| Some(load.cut_out.is_some()),
        |load, on| load.cut_out = on.then_some(catalogue_cut_out()),
    );
    let off = Lens::<f64>::load(
        id,
        |load| load.cut_out.map(|cut_out| cut_out.off.0),
        |load, value| {
            if let Some(cut_out) = &mut load.cut_out {
                cut_out.off = Volts(value);
                cut_out.on = cut_out.on.max(cut_out.off);
            }
        },
    );
    let on = Lens::<f64>::load(
        id,
        |load| load.cut_out.map(|cut_out| cut_out.on.0),
        |load, value| {
            if let Some(cut_out) = &mut load.cut_out {
                cut_out.on = Volts(value);
                cut_out.off = cut_out.off.min(cut_out.on);
            }
        },
    );
    let shown = {
        let has = has.clone();
        Memo::new(move |_| has.read(app).unwrap_or(false))
    };
    view! {
        {toggle(app, t("load-cut-out"), Some(t("load-cut-out-hint")), has)}
        {move || {
            shown
                .get()
                .then(|| {
                    view! {
                        {NumberField::new(t("load-cut-out-off"), "V", CUT_OUT_V, off.clone())
                            .term(Term::CutOut)
                            .view(app)}
                        {NumberField::new(t("load-cut-out-on"), "V", CUT_OUT_V, on.clone())
                            .view(app)}
                    }
                })
        }}
    }
    .into_any()
}

fn catalogue_cut_out() -> CutOut {
    // A compressor fridge's usual setting, stated for 12 V.
    CutOut { off: Volts(10.4), on: Volts(11.7) }
}

/// Cautions that go with the appliance.
fn cautions(app: AppState, id: u32, load: &Load) -> AnyView {
    let known: &[catalogue::Caution] =
        load.appliance.and_then(appliance).map_or(&[], |known| known.cautions);
    let group = Memo::new(move |_| {
        app.setup.with(|setup| setup.load(id).map_or(Group::Other, |load| load.group))
    });
    let boxes: Vec<AnyView> = known
        .iter()
        .filter(|about| **about != catalogue::Caution::Medical)
        .map(|about| match about {
            catalogue::Caution::Medical => ().into_any(),
            catalogue::Caution::Combustion => caution(Danger::CarbonMonoxide),
            catalogue::Caution::Heavy => caution(Danger::CableHeat),
            catalogue::Caution::DrivingOnly => {
                view! { <p class="notice">{t("load-driving-only")}</p> }.into_any()
            }
            catalogue::Caution::CountedElsewhere => {
                view! { <p class="notice">{t("load-counted-elsewhere")}</p> }.into_any()
            }
        })
        .collect();
    let is_medical = known.contains(&catalogue::Caution::Medical);
    view! {
        {boxes}
        {move || (is_medical || group.get() == Group::Health).then(|| caution(Danger::Medical))}
    }
    .into_any()
}

/// A load behind an inverter where none is fitted, and the caution of mains voltage.
fn inverter_notice(app: AppState, id: u32) -> AnyView {
    let state = Memo::new(move |_| {
        app.setup.with(|setup| {
            let behind =
                setup.loads.iter().any(|load| load.id == id && load.feed == Feed::Inverter);
            (behind, setup.inverter.fitted)
        })
    });
    view! {
        {move || match state.get() {
            (false, _) => ().into_any(),
            (true, true) => caution(Danger::Mains),
            (true, false) => {
                view! {
                    <p class="notice">
                        {t("load-no-inverter")} " "
                        <button type="button" class="in-text" on:click=move |_| app.go(Tab::Power)>
                            {t("load-enter-inverter")}
                        </button>
                    </p>
                }
                    .into_any()
            }
        }}
    }
    .into_any()
}

/// Id of what the focus goes to when the row of this load goes: the row after it, else the one before.
fn beside(id: u32) -> String {
    let Ok(rows) = document().query_selector_all(".load-button") else {
        return String::new();
    };
    let ids: Vec<String> = (0..rows.length())
        .filter_map(|at| rows.get(at)?.dyn_into::<web_sys::Element>().ok())
        .map(|row| row.id())
        .collect();
    let at = ids.iter().position(|row| *row == button_id(id)).unwrap_or(0);
    let before = at.checked_sub(1).and_then(|before| ids.get(before));
    ids.get(at + 1).or(before).cloned().unwrap_or_default()
}

/// Duplicate, delete, done.
fn deeds(app: AppState, open: RwSignal<Option<u32>>, id: u32) -> AnyView {
    let duplicate = move || {
        let copy = RwSignal::new(None);
        app.edit(|setup| {
            if setup.loads.len() >= MAX_LOADS {
                return;
            }
            let fresh = setup.fresh_load_id();
            if let Some(at) = setup.loads.iter().position(|load| load.id == id)
                && let Some(load) = setup.loads.get(at).cloned()
            {
                setup.loads.insert(at + 1, Load { id: fresh, ..load });
                copy.set(Some(fresh));
            }
        });
        if let Some(copy) = copy.get_untracked() {
            open.try_set(Some(copy));
            focus::to_new(button_id(copy));
        } else {
            let most = Arg::Count(MAX_LOADS as i32);
            app.tell(t_args("loads-full", &[("most", most)]), false);
        }
    };
    let delete = move || {
        let name =
            app.setup.with_untracked(|setup| setup.load(id).map(load_name).unwrap_or_default());
        focus::to(&beside(id));
        open.try_set(None);
        let told = t_args("load-deleted", &[("name", Arg::Text(&name))]);
        app.edit_with_undo(told, |setup| setup.loads.retain(|load| load.id != id));
    };
    view! {
        <div class="button-row">
            {quiet_button(
                Some(Icon::Done),
                t("load-done"),
                move || {
                    focus::to(&button_id(id));
                    open.try_set(None);
                },
            )}
            {quiet_button(Some(Icon::Duplicate), t("load-duplicate"), duplicate)}
            {quiet_button(Some(Icon::Delete), t("load-delete"), delete)}
        </div>
    }
    .into_any()
}
