//! Light by scenes: which lamps burn in the morning, in the evening, at night, and how long.
//!
//! A scene is nothing of its own in a setup: it writes the lamps' usual time a day and time of day. A
//! lamp of `q` pieces of which `n` burn in a scene of `t` minutes is entered with `t n / q` minutes for
//! each, which is the same energy; several scenes add up, and their times of day together become the
//! lamp's.

use super::{Group, Load, Setup, TimesOfDay, Usage, Window};

/// Minutes in a day.
const DAY_MIN: f64 = 1440.0;
/// Number of the awning light in the catalogue.
const AWNING_LIGHT: u16 = 43;

/// When or where lamps burn together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Scene {
    /// Before breakfast.
    Morning,
    /// Until bedtime.
    Evening,
    /// While others sleep.
    Night,
    /// Washing, at any time of the day.
    Bathroom,
    /// Sitting outside in the evening.
    Awning,
}

impl Scene {
    /// All scenes, in the order they are offered.
    pub const ALL: [Self; 5] =
        [Self::Morning, Self::Evening, Self::Night, Self::Bathroom, Self::Awning];

    /// Time of day.
    #[must_use]
    pub fn window(self) -> Window {
        match self {
            Self::Morning => Window::MORNING,
            Self::Evening | Self::Awning => Window::EVENING,
            Self::Night => Window::NIGHT,
            Self::Bathroom => Window::ALL_DAY,
        }
    }

    /// How long its lamps usually burn a day [min] (common practice, no source).
    fn usual_minutes(self) -> f64 {
        match self {
            Self::Morning | Self::Bathroom => 30.0,
            Self::Evening => 180.0,
            Self::Night => 15.0,
            Self::Awning => 120.0,
        }
    }

    /// The scene that a lamp's time of day speaks of.
    fn of(load: &Load) -> Option<Self> {
        if !load.more_windows.is_empty() {
            None
        } else if load.window == Window::MORNING {
            Some(Self::Morning)
        } else if load.window == Window::EVENING {
            let outside = load.appliance == Some(AWNING_LIGHT);
            Some(if outside { Self::Awning } else { Self::Evening })
        } else if load.window == Window::NIGHT {
            Some(Self::Night)
        } else {
            None
        }
    }
}

/// A lamp and the scenes it burns in.
#[derive(Clone, Debug, PartialEq)]
pub struct SceneLamp {
    /// Its load.
    pub id: u32,
    /// Which pieces burn, by scene in the order of [`Scene::ALL`].
    pub lit: [Vec<bool>; 5],
    /// Its use before, where that was no scene's: what it keeps while it burns in none.
    own: Option<(Usage, Window, Vec<Window>)>,
}

impl SceneLamp {
    fn burning(&self, scene: usize) -> usize {
        self.lit.get(scene).map_or(0, |pieces| pieces.iter().filter(|lit| **lit).count())
    }

    /// It burns in no scene and keeps times of its own.
    #[must_use]
    pub fn keeps_its_times(&self) -> bool {
        self.own.is_some() && (0..Scene::ALL.len()).all(|scene| self.burning(scene) == 0)
    }
}

/// All scenes of a setup.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LightScenes {
    /// How long the lamps of a scene burn a day [min], in the order of [`Scene::ALL`].
    pub minutes: [f64; 5],
    /// The lamps.
    pub lamps: Vec<SceneLamp>,
}

/// Whether a load is a lamp that burns for a time a day.
#[must_use]
pub fn is_lamp(load: &Load) -> bool {
    load.enabled && load.group == Group::Light && matches!(load.usage, Usage::Daily { .. })
}

impl LightScenes {
    /// The scenes that the lamps of a setup speak of: a scene lasts as long as the lamp that burns
    /// longest at its time of day, and lamps that burn a part of that are taken for some of their pieces.
    #[must_use]
    pub fn of(setup: &Setup) -> Self {
        let lamps = || setup.loads.iter().filter(|load| is_lamp(load));
        let time = |load: &Load| match load.usage {
            Usage::Daily { minutes } => minutes,
            _ => 0.0,
        };
        let minutes = Scene::ALL.map(|scene| {
            let own = lamps().filter(|load| Scene::of(load) == Some(scene)).map(time);
            let longest = own.fold(0.0, f64::max);
            if longest > 0.0 { longest } else { scene.usual_minutes() }
        });
        let lamp = |load: &Load| {
            let pieces = usize::from(load.quantity);
            let mut lit: [Vec<bool>; 5] = std::array::from_fn(|_| vec![false; pieces]);
            let found = Scene::of(load).and_then(|scene| {
                let at = Scene::ALL.iter().position(|one| *one == scene)?;
                let burning = pieces as f64 * time(load) / minutes.get(at)?;
                let whole = burning.round();
                (whole >= 1.0 && (burning - whole).abs() < 1e-6).then_some((at, whole as usize))
            });
            if let Some((at, burning)) = found
                && let Some(pieces) = lit.get_mut(at)
            {
                pieces.iter_mut().take(burning).for_each(|piece| *piece = true);
            }
            let own = found.is_none().then(|| (load.usage, load.window, load.more_windows.clone()));
            SceneLamp { id: load.id, lit, own }
        };
        Self { minutes, lamps: lamps().map(lamp).collect() }
    }

    /// Lights a piece of a lamp in a scene, or puts it out; the scene in the order of [`Scene::ALL`].
    pub fn toggle(&mut self, id: u32, scene: usize, piece: usize) {
        let lamp = self.lamps.iter_mut().find(|lamp| lamp.id == id);
        if let Some(lit) = lamp.and_then(|lamp| lamp.lit.get_mut(scene)?.get_mut(piece)) {
            *lit = !*lit;
        }
    }

    /// Enters the scenes at the lamps of the setup they were read from.
    pub fn write(&self, setup: &mut Setup) {
        for lamp in &self.lamps {
            let Some(load) = setup.load_mut(lamp.id) else { continue };
            let pieces = f64::from(load.quantity.max(1));
            let (mut minutes, mut windows) = (0.0, Vec::new());
            for (at, (scene, time)) in Scene::ALL.iter().zip(self.minutes).enumerate() {
                let burning = lamp.burning(at);
                if burning > 0 {
                    minutes += time * burning as f64 / pieces;
                    windows.push(scene.window());
                }
            }
            match (windows.split_first(), &lamp.own) {
                (Some((first, more)), _) => {
                    load.usage = Usage::Daily { minutes: minutes.min(DAY_MIN) };
                    load.set_times_of_day(&TimesOfDay::of(*first, more));
                }
                (None, Some((usage, window, more_windows))) => {
                    load.usage = *usage;
                    load.window = *window;
                    load.more_windows.clone_from(more_windows);
                }
                (None, None) => load.usage = Usage::Daily { minutes: 0.0 },
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::{Draw, Feed};
    use crate::units::Watts;

    fn lamp(id: u32, quantity: u16, minutes: f64, window: Window) -> Load {
        Load {
            id,
            quantity,
            group: Group::Light,
            draw: Draw::Power { watts: Watts(2.0) },
            usage: Usage::Daily { minutes },
            window,
            feed: Feed::Dc,
            ..Load::default()
        }
    }

    fn setup(loads: Vec<Load>) -> Setup {
        Setup { loads, ..Setup::default() }
    }

    const MORNING: usize = 0;
    const EVENING: usize = 1;
    const NIGHT: usize = 2;
    const BATHROOM: usize = 3;

    fn minutes(setup: &Setup, id: u32) -> f64 {
        match setup.load(id).map(|load| load.usage) {
            Some(Usage::Daily { minutes }) => minutes,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn what_was_read_is_written_back_as_it_was() {
        let before = setup(vec![
            lamp(1, 5, 240.0, Window::EVENING),
            lamp(2, 1, 90.0, Window::EVENING),
            lamp(3, 1, 20.0, Window::ALL_DAY),
            lamp(4, 2, 15.0, Window::NIGHT),
            Load { appliance: Some(AWNING_LIGHT), ..lamp(5, 1, 120.0, Window::EVENING) },
        ]);
        let scenes = LightScenes::of(&before);
        let mut after = before.clone();
        scenes.write(&mut after);
        assert_eq!(after, before);
        let lit = |id: u32, scene: usize| {
            scenes.lamps.iter().find(|lamp| lamp.id == id).map(|lamp| lamp.burning(scene))
        };
        assert_eq!((lit(1, EVENING), lit(5, 4), lit(4, NIGHT)), (Some(5), Some(1), Some(2)));
        // An hour and a half is no whole lamp of four hours.
        assert!(scenes.lamps[1].keeps_its_times() && scenes.lamps[2].keeps_its_times());
    }

    /// By hand: three of five lamps for three hours are 9 lamp hours, 1.8 h for each of the five.
    #[test]
    fn pieces_that_burn_are_counted_and_found_again() {
        let mut setup =
            setup(vec![lamp(1, 5, 180.0, Window::EVENING), lamp(2, 1, 180.0, Window::EVENING)]);
        let mut scenes = LightScenes::of(&setup);
        scenes.toggle(1, EVENING, 0);
        scenes.toggle(1, EVENING, 3);
        scenes.write(&mut setup);
        assert!((minutes(&setup, 1) - 108.0).abs() < 1e-9);
        assert_eq!(LightScenes::of(&setup).lamps[0].burning(EVENING), 3);
    }

    #[test]
    fn scenes_add_up_and_so_do_their_times_of_day() {
        let mut setup = setup(vec![lamp(1, 1, 180.0, Window::EVENING)]);
        let mut scenes = LightScenes::of(&setup);
        scenes.toggle(1, MORNING, 0);
        scenes.write(&mut setup);
        assert!((minutes(&setup, 1) - 210.0).abs() < 1e-9);
        // Not between them.
        let times =
            |setup: &Setup| setup.load(1).map(|load| (load.window, load.more_windows.clone()));
        assert_eq!(times(&setup), Some((Window::MORNING, vec![Window::EVENING])));
        // Evening, night and morning are one stretch, 18:00 to 09:00.
        scenes.toggle(1, NIGHT, 0);
        scenes.write(&mut setup);
        let dark = Window { from_min: 18 * 60, to_min: 9 * 60 };
        assert_eq!(times(&setup), Some((dark, Vec::new())));
        scenes.toggle(1, NIGHT, 0);
        scenes.toggle(1, BATHROOM, 0);
        scenes.write(&mut setup);
        assert_eq!(times(&setup), Some((Window::ALL_DAY, Vec::new())));
        assert!((minutes(&setup, 1) - 240.0).abs() < 1e-9);
    }

    #[test]
    fn put_out_everywhere_a_lamp_burns_no_more_or_as_it_did() {
        let mut setup =
            setup(vec![lamp(1, 1, 180.0, Window::EVENING), lamp(2, 1, 20.0, Window::ALL_DAY)]);
        let mut scenes = LightScenes::of(&setup);
        scenes.toggle(1, EVENING, 0);
        scenes.toggle(2, EVENING, 0);
        scenes.write(&mut setup);
        assert_eq!((minutes(&setup, 1), minutes(&setup, 2)), (0.0, 180.0));
        scenes.toggle(2, EVENING, 0);
        scenes.write(&mut setup);
        assert_eq!(minutes(&setup, 2), 20.0);
        assert_eq!(setup.load(2).map(|load| load.window), Some(Window::ALL_DAY));
    }

    #[test]
    fn only_lamps_with_a_time_a_day_take_part() {
        let charged = Load { usage: Usage::AlwaysOn, ..lamp(1, 1, 0.0, Window::ALL_DAY) };
        let off = Load { enabled: false, ..lamp(2, 1, 60.0, Window::EVENING) };
        let other = Load { group: Group::Kitchen, ..lamp(3, 1, 60.0, Window::EVENING) };
        assert!(LightScenes::of(&setup(vec![charged, off, other])).lamps.is_empty());
    }
}
