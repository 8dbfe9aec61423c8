//! Light by scenes: tap the lamps that burn, enter the minutes once, and see the day's sum.

use super::list::{LoadList, Shown};
use super::pictures::Picture;
use crate::i18n::Arg;
use crate::model::Load;
use crate::model::light_scenes::{LightScenes, Scene, SceneLamp, is_lamp};
use crate::model::limits::MINUTES_A_DAY;
use crate::units::WattHours;
use crate::view::icons::Icon;
use crate::view::lang::{key, percent, t, t_args, watt_hours, watt_hours_a_day};
use crate::view::lens::Lens;
use crate::view::widgets::{NumberField, button, quiet_button, radios};
use crate::view::words::loads::usage_words;
use crate::view::words::names::{count, load_name};
use leptos::prelude::*;

/// Position of the scene that is shown first.
const EVENING: usize = 1;

fn scene_name(scene: Scene) -> String {
    t(match scene {
        Scene::Morning => key!("scene-morning"),
        Scene::Evening => key!("scene-evening"),
        Scene::Night => key!("scene-night"),
        Scene::Bathroom => key!("scene-bathroom"),
        Scene::Awning => key!("scene-awning"),
    })
}

/// The way to the scenes, where there are two lamps or more.
pub(super) fn door(list: LoadList) -> AnyView {
    let enough = Memo::new(move |_| {
        list.app.setup.with(|setup| {
            let lamps = setup.loads.iter().filter(|load| is_lamp(load));
            lamps.map(|load| usize::from(load.quantity)).sum::<usize>() >= 2
        })
    });
    view! {
        {move || {
            enough
                .get()
                .then(|| {
                    let open = move || list.open(Shown::Light);
                    view! {
                        <div class="button-row">
                            {quiet_button(Some(Icon::Nights), t("light-title"), open)}
                        </div>
                    }
                })
        }}
    }
    .into_any()
}

/// The lamps by scenes.
pub(super) fn view(list: LoadList) -> AnyView {
    let scenes = RwSignal::new(list.app.setup.with_untracked(LightScenes::of));
    let scene = RwSignal::new(EVENING);
    let names = Scene::ALL.into_iter().map(scene_name).collect();
    let chosen = Signal::derive(move || Some(scene.get()));
    let lamps = scenes.with_untracked(|now| now.lamps.clone());
    let lamps: Vec<AnyView> = lamps.iter().map(|own| lamp(list, scenes, scene, own)).collect();
    view! {
        <div class="quick" data-testid="light">
            <div class="quick-face">{Picture::Light.view()} {sum(list)}</div>
            {radios(t("light-scene"), names, chosen, move |at| _ = scene.try_set(at))}
            <div class="quick-lines">{move || time(list, scenes, scene.get())}</div>
            <p class="quiet">{t("light-tap")}</p>
            <ul class="lamps">{lamps}</ul>
        </div>
        <div class="button-row quick-deeds">
            {button(Some(Icon::Done), t("load-done"), move || list.sheet.close())}
        </div>
    }
    .into_any()
}

/// What all lamps take a day.
fn sum(list: LoadList) -> AnyView {
    let words = move || {
        let lamps: Vec<u32> = list.app.setup.with(|setup| {
            setup.loads.iter().filter(|load| is_lamp(load)).map(|load| load.id).collect()
        });
        list.day.with(|day| {
            let energy: WattHours = lamps.iter().map(|id| day.of_load(*id)).sum();
            let (amount, share) = (watt_hours_a_day(energy), percent(day.share(energy)));
            t_args("quick-cost", &[("amount", Arg::Text(&amount)), ("share", Arg::Text(&share))])
        })
    };
    view! { <p class="quick-cost" role="status" data-testid="light-sum">{words}</p> }.into_any()
}

/// How long the lamps of a scene burn.
fn time(list: LoadList, scenes: RwSignal<LightScenes>, scene: usize) -> AnyView {
    let lens = Lens::<f64>::new(
        move |_| scenes.with(|scenes| scenes.minutes.get(scene).copied()),
        move |setup, value| {
            scenes.try_update(|scenes| {
                if let Some(minutes) = scenes.minutes.get_mut(scene) {
                    *minutes = value;
                }
            });
            scenes.with_untracked(|scenes| scenes.write(setup));
        },
    );
    NumberField::new(t("use-how-long"), "min", MINUTES_A_DAY, lens).step(15.0).view(list.app)
}

/// A lamp: a bulb to tap for each piece of it.
fn lamp(
    list: LoadList,
    scenes: RwSignal<LightScenes>,
    scene: RwSignal<usize>,
    own: &SceneLamp,
) -> AnyView {
    let (app, id) = (list.app, own.id);
    let name = app.setup.with_untracked(|setup| setup.load(id).map(load_name).unwrap_or_default());
    let pieces = own.lit.first().map_or(0, Vec::len);
    let bulb = |piece: usize| {
        let label = if pieces > 1 {
            let n = Arg::Count(count(piece + 1));
            t_args("light-piece", &[("name", Arg::Text(&name)), ("n", n)])
        } else {
            name.clone()
        };
        let lit = move || {
            scenes.with(|scenes| {
                let lamp = scenes.lamps.iter().find(|lamp| lamp.id == id);
                lamp.and_then(|lamp| lamp.lit.get(scene.get())?.get(piece)).copied()
            }) == Some(true)
        };
        let press = move |_| {
            scenes.try_update(|scenes| scenes.toggle(id, scene.get_untracked(), piece));
            let now = scenes.get_untracked();
            app.edit(|setup| now.write(setup));
        };
        view! {
            <button
                type="button"
                class="bulb"
                aria-label=label.clone()
                title=label
                aria-pressed=move || if lit() { "true" } else { "false" }
                on:click=press
            >
                {Picture::Light.view()}
            </button>
        }
    };
    let bulbs = (0..pieces).map(bulb).collect_view();
    let told = move || {
        let use_of = |load: &Load| usage_words(&load.usage);
        let words = app.setup.with(|setup| setup.load(id).map(use_of).unwrap_or_default());
        let energy = watt_hours(list.day.with(|day| day.of_load(id)));
        let kept = scenes
            .with(|scenes| scenes.lamps.iter().any(|lamp| lamp.id == id && lamp.keeps_its_times()));
        let kept = if kept { format!(" · {}", t("light-kept")) } else { String::new() };
        format!("{words} · {energy}{kept}")
    };
    view! {
        <li class="lamp" data-testid="lamp">
            <p>{name.clone()} <small>{told}</small></p>
            <div class="bulbs">{bulbs}</div>
        </li>
    }
    .into_any()
}
