//! Taking appliances, panels or the battery of a setup out of a link into one's own.

use super::list::LoadList;
use super::tick::tick;
use crate::i18n::Arg;
use crate::model::taking::Parts;
use crate::model::{Load, Setup};
use crate::view::icons::Icon;
use crate::view::lang::{amp_hours, peak_watts, t, t_args};
use crate::view::setups::Setups;
use crate::view::widgets::button;
use crate::view::words::loads::load_summary;
use crate::view::words::names::{chemistry_name, count, load_name};
use leptos::prelude::*;

/// The sheet; nothing where no setup out of a link is on screen.
pub(super) fn view(list: LoadList) -> AnyView {
    let Some(setups) = use_context::<Setups>() else { return ().into_any() };
    let Some(own) = setups.current().map(|entry| entry.setup) else { return ().into_any() };
    let theirs = list.app.setup.get_untracked();
    let parts = RwSignal::new(Parts::default());
    let rows: Vec<AnyView> = theirs.loads.iter().map(|load| appliance(parts, load, &own)).collect();
    let panels = theirs.solar.iter().filter(|array| array.enabled);
    let peak = panels.map(|array| array.peak).sum();
    let bank = &theirs.bank;
    let battery = t_args(
        "take-battery",
        &[
            ("capacity", Arg::Text(&amp_hours(bank.rated_capacity()))),
            ("kind", Arg::Text(&chemistry_name(bank.chemistry))),
        ],
    );
    let has_panels = !theirs.solar.is_empty();
    let panels = has_panels.then(|| {
        let words = t_args("take-panels", &[("peak", Arg::Text(&peak_watts(peak)))]);
        let set = move |on| parts.update(|parts| parts.panels = on);
        tick(words.into_any(), move || parts.with(|parts| parts.panels), set)
    });
    let set_battery = move |on| parts.update(|parts| parts.battery = on);
    let battery = tick(battery.into_any(), move || parts.with(|parts| parts.battery), set_battery);
    let room = own.room_for_loads();
    let obstacle = move || {
        let taken = parts.with(|parts| parts.loads.len());
        (taken > room).then(|| {
            let n = Arg::Count(count(taken - room));
            t_args("take-no-room", &[("n", n)])
        })
    };
    let add = move || {
        let fits = parts.with(|parts| !parts.is_empty() && parts.loads.len() <= room);
        fits.then(|| {
            let theirs = theirs.clone();
            button(Some(Icon::Done), t("take-add"), move || {
                take(list, setups, &theirs, &parts.get_untracked());
            })
        })
    };
    view! {
        <div class="bring" data-testid="take">
            <p class="quiet">{t("take-about")}</p>
            <ol class="bring-rows">{rows}</ol>
            {panels}
            {battery}
        </div>
        <p class="bring-obstacle" role="status">{obstacle}</p>
        <div class="button-row">{add}</div>
    }
    .into_any()
}

fn appliance(parts: RwSignal<Parts>, load: &Load, own: &Setup) -> AnyView {
    let id = load.id;
    let name = load_name(load);
    let twice = own.loads.iter().any(|here| load_name(here) == name);
    let twice = twice.then(|| view! { <p class="bring-note">{t("take-twice")}</p> });
    let words = view! { {name} " " <small>{load_summary(load)}</small> }.into_any();
    let set = move |on| {
        parts.update(|parts| {
            if on {
                parts.loads.insert(id);
            } else {
                parts.loads.remove(&id);
            }
        });
    };
    let taken = move || parts.with(|parts| parts.loads.contains(&id));
    view! { <li class="bring-row">{tick(words, taken, set)} {twice}</li> }.into_any()
}

/// Shows one's own setup with the parts in it; one step takes them out again.
fn take(list: LoadList, setups: Setups, theirs: &Setup, parts: &Parts) {
    list.sheet.close();
    setups.leave_for_own();
    list.app.edit_with_undo(t("take-done"), |own| own.take(theirs, parts));
}
