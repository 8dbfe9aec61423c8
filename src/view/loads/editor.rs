//! What is seldom changed about an appliance: its draw, its feed, standby, surge and cut-out.

use super::{draw, usage};
use crate::model::limits::{CUT_OUT_V, FRAC, STANDBY_W, SURGE_FACTOR};
use crate::model::{CutOut, Feed, Group};
use crate::units::{Volts, Watts};
use crate::view::lang::t;
use crate::view::lens::Lens;
use crate::view::state::AppState;
use crate::view::widgets::{NumberField, Term, choice_row, select_field, text_field, toggle};
use crate::view::words::names::{DRAW_SOURCES, draw_source_name, group_name, usual_name};
use leptos::prelude::*;

const FEEDS: [Feed; 2] = [Feed::Dc, Feed::Inverter];

/// The form for the load with this id.
pub(super) fn view(app: AppState, id: u32) -> AnyView {
    let load = app.setup.with_untracked(|setup| setup.load(id).cloned().unwrap_or_default());
    let feed = Lens::<Feed>::load(id, |load| Some(load.feed), |load, feed| load.feed = feed);
    let draw_source =
        Lens::load(id, |load| Some(load.draw_source), |load, how| load.draw_source = how);
    let group = Lens::<Group>::load(id, |load| Some(load.group), |load, to| load.group = to);
    let feeds = vec![t("feed-dc"), t("feed-inverter")];
    let groups = Group::ALL.into_iter().map(group_name).collect();
    view! {
        <div class="load-editor" data-testid="load-editor">
            {draw::view(app, id)}
            {choice_row(
                app,
                t("load-learned"),
                DRAW_SOURCES.into_iter().map(draw_source_name).collect(),
                draw_source.choice(&DRAW_SOURCES),
            )}
            {choice_row(app, t("load-feed"), feeds, feed.choice(&FEEDS))}
            {usage::view(app, id)}
            <div class="fields">
                {standby(id).view(app)}
                {spread(id).view(app)}
                {surge(id).view(app)}
                {cut_out(app, id)}
                {select_field(app, t("load-group"), groups, group.choice(&Group::ALL))}
            </div>
            {text_field(
                app,
                t("load-name"),
                usual_name(&load),
                Lens::load(id, |load| Some(load.name.clone()), |load, name| load.name = name),
            )}
        </div>
    }
    .into_any()
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
