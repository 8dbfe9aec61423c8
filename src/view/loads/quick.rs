//! One appliance on one screen: how many, how long, when, and what that costs a day.

use super::list::{LoadList, QUICK_ID};
use super::pictures::Picture;
use super::{editor, row, usage, window};
use crate::i18n::Arg;
use crate::model::catalogue::{self, appliance};
use crate::model::limits::{MAX_LOADS, QUANTITY};
use crate::model::{Feed, Group, Load};
use crate::units::{WattHours, Watts};
use crate::view::focus;
use crate::view::icons::Icon;
use crate::view::lang::{percent, t, t_args, watt_hours, watt_hours_a_day};
use crate::view::lens::Lens;
use crate::view::state::{AppState, Tab};
use crate::view::widgets::{Danger, NumberField, button, caution, made_when_open, quiet_button};
use crate::view::words::loads::time_in_this_air;
use crate::view::words::names::load_name;
use leptos::prelude::*;

/// The sheet of the load with this id, which was `added` a moment ago.
pub(super) fn view(list: LoadList, id: u32, added: bool) -> AnyView {
    let app = list.app;
    let load = app.setup.with_untracked(|setup| setup.load(id).cloned().unwrap_or_default());
    let picture = Memo::new(move |_| {
        app.setup.with(|setup| setup.load(id).map_or(Picture::Other, Picture::of))
    });
    let quantity = Lens::<f64>::load(
        id,
        |load| Some(f64::from(load.quantity)),
        |load, value| load.quantity = value.round() as u16,
    );
    let more = move || view! { {editor::view(app, id)} {duplicate(list, id)} }.into_any();
    view! {
        <div class="quick" id=QUICK_ID tabindex="-1" data-testid="quick">
            <div class="quick-face">
                {move || picture.get().view()}
                <div>{cost(list, id)} {in_this_air(list, id)}</div>
            </div>
            {move || list.badges.with(|badges| badges.told(app, id))}
            <div class="quick-lines">
                {NumberField::new(t("load-quantity"), "", QUANTITY, quantity).step(1.0).view(app)}
                {usage::lines(app, id)}
                {window::view(app, id)}
            </div>
            {cautions(app, id, &load)}
            {inverter_notice(app, id)}
            {made_when_open(Signal::stored(t("load-more")), more)}
        </div>
        {deeds(list, id, added)}
    }
    .into_any()
}

/// What it takes a day, the share of the whole, and how much of it the inverter takes.
fn cost(list: LoadList, id: u32) -> AnyView {
    let LoadList { app, day, .. } = list;
    let enabled =
        Memo::new(move |_| app.setup.with(|setup| setup.load(id).is_some_and(|load| load.enabled)));
    let words = move || {
        let energy = day.with(|day| day.of_load(id));
        let a_day = watt_hours_a_day(energy);
        if !enabled.get() {
            return t_args("quick-off", &[("amount", Arg::Text(&a_day))]);
        }
        let share = percent(day.with(|day| day.share(energy)));
        t_args("quick-cost", &[("amount", Arg::Text(&a_day)), ("share", Arg::Text(&share))])
    };
    let inverter = move || {
        let by_inverter = day.with(|day| day.of_inverter(id));
        (by_inverter > WattHours::ZERO).then(|| {
            let amount = watt_hours(by_inverter);
            let told = t_args("quick-inverter", &[("amount", Arg::Text(&amount))]);
            view! { <p class="field-hint" data-testid="quick-inverter">{told}</p> }
        })
    };
    view! {
        <p class="quick-cost" data-testid="quick-cost">{words}</p>
        {inverter}
    }
    .into_any()
}

/// Why a load that follows the air takes another amount than its usual share of the time says.
fn in_this_air(list: LoadList, id: u32) -> AnyView {
    let LoadList { app, day, .. } = list;
    let told = Memo::new(move |_| {
        let energy = day.with(|day| day.without_inverter_idle(id));
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

/// A second one with the same figures.
fn duplicate(list: LoadList, id: u32) -> AnyView {
    let app = list.app;
    let press = move || {
        let copy = RwSignal::new(None);
        app.edit_apart(|setup| {
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
            list.show_added(copy);
        } else {
            list.tell_full();
        }
    };
    quiet_button(Some(Icon::Duplicate), t("load-duplicate"), press)
}

/// Away with it, the next one, done.
fn deeds(list: LoadList, id: u32, added: bool) -> AnyView {
    let LoadList { app, sheet, .. } = list;
    let remove = move || {
        let name =
            app.setup.with_untracked(|setup| setup.load(id).map(load_name).unwrap_or_default());
        let told = t_args("load-deleted", &[("name", Arg::Text(&name))]);
        let beside = row::beside(id);
        sheet.close();
        app.edit_with_undo(told, |setup| setup.loads.retain(|load| load.id != id));
        focus::to_new(beside);
    };
    let away = if added { t("load-take-away") } else { t("load-delete") };
    // Three have room beside each other without their pictures.
    let picture = (!added).then_some(Icon::Delete);
    let next = added.then(|| quiet_button(None, t("load-next"), move || list.search_on()));
    view! {
        <div class="button-row quick-deeds">
            {quiet_button(picture, away, remove)} {next}
            {button(Some(Icon::Done), t("load-done"), move || sheet.close())}
        </div>
    }
    .into_any()
}
