//! What the page holds: the setup on screen, the way back through its changes, and how it is shown.
//! The user's setups and their keeping are [`super::setups::Setups`].

use super::certainty::Certainty;
use super::lang::t;
use super::preferences::Preferences;
use super::reader::UnitChoice;
use crate::i18n::Lang;
use crate::model::Setup;
use leptos::prelude::*;
use std::sync::Arc;
use std::time::Duration;

/// Changes that can be taken back, at most.
const MAX_UNDO: usize = 50;
/// Typing within this time is one change [ms].
const SAME_CHANGE_MS: f64 = 1_500.0;
/// How long a message stays [ms].
const TOAST_MS: u64 = 4_000;
/// The same where it alone takes something back [ms].
const UNDO_TOAST_MS: u64 = 12_000;

/// The parts of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tab {
    /// The answer in full.
    #[default]
    Nights,
    /// Appliances.
    Loads,
    /// Battery and what charges it.
    Power,
    /// Where and when.
    Trip,
    /// What to change.
    Change,
    /// Sharing, setups, settings, about.
    More,
}

impl Tab {
    /// All parts, in the order of the navigation.
    pub const ALL: [Self; 6] =
        [Self::Nights, Self::Loads, Self::Power, Self::Trip, Self::Change, Self::More];
}

/// How the page looks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// As the device is set.
    #[default]
    Auto,
    /// Paper and ink.
    Light,
    /// Lamplight on ink blue.
    Dark,
    /// Deep red and low, for eyes used to the dark.
    Dim,
}

impl Theme {
    /// All looks, in the order they are offered.
    pub const ALL: [Self; 4] = [Self::Auto, Self::Light, Self::Dark, Self::Dim];

    /// Word in the `data-theme` attribute and in storage.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Auto => "auto",
            Self::Light => "light",
            Self::Dark => "dark",
            Self::Dim => "dim",
        }
    }
}

/// What opens under "Change".
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Screen {
    /// Ranked changes.
    #[default]
    Improvements,
    /// Ways to a number of nights.
    Ways,
    /// Setups side by side.
    Compare,
    /// Nights by month.
    Year,
    /// Tool: readings on site.
    OnSite,
    /// Tool: a log of readings.
    Log,
    /// Tool: measuring bench.
    Measure,
    /// Tool: wiring check.
    Wiring,
    /// Tool: inverter check.
    Inverter,
}

impl Screen {
    /// Its name in the markup.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Improvements => "improvements",
            Self::Ways => "ways",
            Self::Compare => "compare",
            Self::Year => "year",
            Self::OnSite => "on-site",
            Self::Log => "log",
            Self::Measure => "measure",
            Self::Wiring => "wiring",
            Self::Inverter => "inverter",
        }
    }

    /// Whether it is a tool for on site or the workshop.
    #[must_use]
    pub fn is_tool(self) -> bool {
        match self {
            Self::Improvements | Self::Ways | Self::Compare | Self::Year => false,
            Self::OnSite | Self::Log | Self::Measure | Self::Wiring | Self::Inverter => true,
        }
    }
}

/// Takes something back.
pub type UndoFn = Arc<dyn Fn() + Send + Sync>;

/// What was asked for elsewhere and opens over the list of appliances.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Waiting {
    /// A table that was dropped on the page.
    Table,
    /// Parts of the setup out of a link.
    Take,
}

/// A short message at the foot of the page.
#[derive(Clone)]
pub struct Toast {
    /// What happened.
    pub text: String,
    /// What "undo" does, where it is offered.
    pub undo: Option<UndoFn>,
    serial: u32,
}

/// State of the page; copies share it.
#[derive(Clone, Copy)]
pub struct AppState {
    /// The setup on screen.
    pub setup: RwSignal<Setup>,
    /// Part of the page shown.
    pub tab: RwSignal<Tab>,
    /// What is open under "Change".
    pub screen: RwSignal<Screen>,
    /// Part of the page from which a screen of "Change" was opened, if it was another.
    pub opened_from: RwSignal<Option<Tab>>,
    /// Night of the stay whose figures are open, from 0.
    pub night: RwSignal<Option<usize>>,
    /// Look.
    pub theme: RwSignal<Theme>,
    /// Language in force; set by [`Self::choose_lang`].
    pub lang: RwSignal<Lang>,
    /// Language asked for last, in force or being fetched.
    pub lang_asked: RwSignal<Lang>,
    /// Message on screen.
    pub toast: RwSignal<Option<Toast>>,
    /// Changes that can be taken back.
    pub undo_depth: RwSignal<usize>,
    /// Text of a table of appliances that was pasted, dropped or chosen, kept until it is added.
    pub pasted: RwSignal<String>,
    /// A log of readings that was dropped on the page and waits for its screen.
    pub dropped_log: RwSignal<Option<String>>,
    /// What the list of appliances is to show as soon as it is here.
    pub waiting: RwSignal<Option<Waiting>>,
    before: StoredValue<Vec<Setup>>,
    last_edit_ms: StoredValue<f64>,
    toast_serial: StoredValue<u32>,
}

impl AppState {
    /// State with `setup` on screen, looking as this browser kept it.
    #[must_use]
    pub fn new(setup: Setup) -> Self {
        let Preferences { theme: word, certainty, units, .. } = Preferences::load();
        let units = UnitChoice::ALL.into_iter().find(|known| known.word() == units);
        units.unwrap_or_default().put_in_force();
        let certainty = Certainty::ALL.into_iter().find(|known| known.word() == certainty);
        certainty.unwrap_or_default().put_in_force();
        let theme = Theme::ALL.into_iter().find(|theme| theme.word() == word).unwrap_or_default();
        let state = Self {
            setup: RwSignal::new(setup),
            tab: RwSignal::new(Tab::default()),
            screen: RwSignal::new(Screen::default()),
            opened_from: RwSignal::new(None),
            night: RwSignal::new(None),
            theme: RwSignal::new(theme),
            lang: RwSignal::new(Lang::En),
            lang_asked: RwSignal::new(Lang::En),
            toast: RwSignal::new(None),
            undo_depth: RwSignal::new(0),
            pasted: RwSignal::new(String::new()),
            dropped_log: RwSignal::new(None),
            waiting: RwSignal::new(None),
            before: StoredValue::new(Vec::new()),
            last_edit_ms: StoredValue::new(f64::NEG_INFINITY),
            toast_serial: StoredValue::new(0),
        };
        state.follow_theme();
        state
    }

    /// A detached state for forms that only make a setup: not shown, not stored, without undo.
    #[must_use]
    pub fn scratch(self, setup: Setup) -> Self {
        Self {
            setup: RwSignal::new(setup),
            undo_depth: RwSignal::new(0),
            before: StoredValue::new(Vec::new()),
            last_edit_ms: StoredValue::new(f64::NEG_INFINITY),
            ..self
        }
    }

    /// Keeps the look in force.
    fn follow_theme(self) {
        Effect::new(move |first: Option<()>| {
            let word = self.theme.get().word();
            let root = document().document_element();
            if let Some(root) = root {
                // Only fails for an invalid attribute name.
                let _ = root.set_attribute("data-theme", word);
            }
            if first.is_some() {
                Preferences::change(|preferences| word.clone_into(&mut preferences.theme));
            }
        });
    }

    /// Puts another setup on screen; the way back through changes starts anew.
    pub fn show(self, setup: Setup) {
        let _ = self.before.try_update_value(Vec::clear);
        self.undo_depth.try_set(0);
        let _ = self.last_edit_ms.try_update_value(|last| *last = f64::NEG_INFINITY);
        if self.setup.try_with_untracked(|now| *now != setup) == Some(true) {
            self.setup.try_set(setup);
        }
    }

    /// Changes the setup. Typing in quick succession counts as one change to take back.
    pub fn edit(self, change: impl FnOnce(&mut Setup)) {
        let now = js_sys::Date::now();
        let last = self.last_edit_ms.try_get_value().unwrap_or(f64::NEG_INFINITY);
        self.change(now - last > SAME_CHANGE_MS, &mut once(change));
        let _ = self.last_edit_ms.try_update_value(|last| *last = now);
    }

    /// What is left of a pause after typing [ms]; nothing after a deliberate step.
    #[must_use]
    pub fn pause_after_typing(self, pause_ms: u64) -> u64 {
        let last = self.last_edit_ms.try_get_value().unwrap_or(f64::NEG_INFINITY);
        // A clock that was set back counts as just now.
        let since_ms = (js_sys::Date::now() - last).max(0.0);
        pause_ms.saturating_sub(since_ms as u64)
    }

    /// Changes the setup by one deliberate step, such as adding a row.
    pub fn edit_apart(self, change: impl FnOnce(&mut Setup)) {
        self.change(true, &mut once(change));
        let _ = self.last_edit_ms.try_update_value(|last| *last = f64::NEG_INFINITY);
    }

    /// Changes the setup in a way worth a message with "undo", such as a deletion.
    pub fn edit_with_undo(self, told: String, change: impl FnOnce(&mut Setup)) {
        self.edit_apart(change);
        self.tell(told, true);
    }

    /// Not generic: the program holds it once, not for every field.
    fn change(self, remember: bool, change: &mut dyn FnMut(&mut Setup)) {
        let Some(mut next) = self.setup.try_get_untracked() else { return };
        let before = next.clone();
        change(&mut next);
        if next == before {
            return;
        }
        if remember {
            let depth = self.before.try_update_value(|list| {
                if list.len() >= MAX_UNDO {
                    list.remove(0);
                }
                list.push(before);
                list.len()
            });
            self.undo_depth.try_set(depth.unwrap_or(0));
        }
        if self.toast.try_with_untracked(Option::is_some) == Some(true) {
            self.toast.try_set(None);
        }
        self.setup.try_set(next);
    }

    /// Takes the last change back.
    pub fn undo(self) {
        let last = self.before.try_update_value(Vec::pop).flatten();
        let depth = self.before.try_with_value(Vec::len).unwrap_or(0);
        self.undo_depth.try_set(depth);
        let _ = self.last_edit_ms.try_update_value(|last| *last = f64::NEG_INFINITY);
        if let Some(setup) = last {
            self.setup.try_set(setup);
            self.tell(t("toast-undone"), false);
        }
    }

    /// Shows a message for a while; with `undo` it offers to take the last change back.
    pub fn tell(self, text: String, undo: bool) {
        self.show_toast(text, undo.then(|| Arc::new(move || self.undo()) as UndoFn), TOAST_MS);
    }

    /// Shows a message for a while, with what its "undo" does; longer, as nothing else takes it back.
    pub fn tell_with(self, text: String, undo: UndoFn) {
        self.show_toast(text, Some(undo), UNDO_TOAST_MS);
    }

    fn show_toast(self, text: String, undo: Option<UndoFn>, time_ms: u64) {
        let serial = self.toast_serial.try_update_value(|serial| {
            *serial = serial.wrapping_add(1);
            *serial
        });
        let serial = serial.unwrap_or(0);
        self.toast.try_set(Some(Toast { text, undo, serial }));
        self.put_away_later(serial, time_ms);
    }

    /// Takes the message away in time, but not while someone is about to use it with mouse or keys.
    fn put_away_later(self, serial: u32, time_ms: u64) {
        let put_away = move || {
            let current = self.toast.try_get_untracked().flatten();
            if current.is_none_or(|toast| toast.serial != serial) {
                return;
            }
            // A screen that was touched goes on to report what was touched as hovered.
            let mouse = window().match_media("(hover: hover)").ok().flatten();
            let pointed = mouse.is_some_and(|mouse| mouse.matches())
                && super::focus::first(".toast:hover").is_some();
            if pointed || super::focus::first(".toast :focus-visible").is_some() {
                self.put_away_later(serial, time_ms);
            } else {
                self.toast.try_set(None);
            }
        };
        set_timeout(put_away, Duration::from_millis(time_ms));
    }

    /// Shows another part of the page, from its top.
    pub fn go(self, tab: Tab) {
        self.tab.try_set(tab);
        window().scroll_to_with_x_and_y(0.0, 0.0);
    }

    /// Opens a screen of "Change", from wherever the page is.
    pub fn open(self, screen: Screen) {
        let from = self.tab.try_get_untracked().filter(|tab| *tab != Tab::Change);
        self.opened_from.try_set(from);
        self.screen.try_set(screen);
        self.go(Tab::Change);
        super::focus::to("change-title");
    }

    /// Fetches and puts in force the texts of `lang`; if that fails the language stays.
    pub fn choose_lang(self, lang: Lang) {
        self.lang_asked.try_set(lang);
        leptos::task::spawn_local(async move {
            match super::lang::switch_to(lang).await {
                Ok(()) => {
                    Preferences::change(|preferences| {
                        lang.code().clone_into(&mut preferences.lang);
                    });
                    self.lang.try_set(lang);
                }
                Err(_) => {
                    self.tell(t("toast-lang-failed"), false);
                    let in_force = self.lang.try_get_untracked().unwrap_or_default();
                    self.lang_asked.try_set(in_force);
                }
            }
        });
    }

    /// Puts in force how surely a night should last, and builds the page again.
    pub fn choose_certainty(self, certainty: Certainty) {
        certainty.put_in_force();
        Preferences::change(|preferences| certainty.word().clone_into(&mut preferences.certainty));
        self.lang.notify();
    }

    /// Puts the units in force that the reader asked for, and builds the page again.
    pub fn choose_units(self, units: UnitChoice) {
        units.put_in_force();
        Preferences::change(|preferences| units.word().clone_into(&mut preferences.units));
        self.lang.notify();
    }

    /// The language to start with: as chosen before, else as the browser asks.
    #[must_use]
    pub fn starting_lang() -> Lang {
        Lang::from_tag(&Preferences::load().lang).unwrap_or_else(super::lang::browser_lang)
    }
}

/// Something done once as something that can be called through a reference.
fn once(change: impl FnOnce(&mut Setup)) -> impl FnMut(&mut Setup) {
    let mut change = Some(change);
    move |setup| {
        if let Some(change) = change.take() {
            change(setup);
        }
    }
}
