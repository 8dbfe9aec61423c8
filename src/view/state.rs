//! What the page holds: one setup, the way back through its changes, and how it is shown.

use super::lang::t;
use super::storage::{self, Key, StorageFault, Stored};
use crate::i18n::Lang;
use crate::model::Setup;
use leptos::leptos_dom::helpers::TimeoutHandle;
use leptos::prelude::*;
use std::time::Duration;

/// Changes that can be taken back, at most.
const MAX_UNDO: usize = 50;
/// Typing within this time is one change [ms].
const SAME_CHANGE_MS: f64 = 1_500.0;
/// Pause in typing after which the setup is written [ms].
const SAVE_AFTER_MS: u64 = 300;
/// How long a message stays [ms].
const TOAST_MS: u64 = 12_000;

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

/// A short message at the foot of the page.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Toast {
    /// What happened.
    pub text: String,
    /// Whether "undo" is offered.
    pub undo: bool,
    serial: u32,
}

/// Whether what is on screen is also kept.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kept {
    /// Written.
    Yes,
    /// Not written, and why.
    No(StorageFault),
}

/// State of the page; copies share it.
#[derive(Clone, Copy)]
pub struct AppState {
    /// The setup on screen.
    pub setup: RwSignal<Setup>,
    /// Part of the page shown.
    pub tab: RwSignal<Tab>,
    /// Look.
    pub theme: RwSignal<Theme>,
    /// Language in force; set by [`Self::choose_lang`].
    pub lang: RwSignal<Lang>,
    /// Message on screen.
    pub toast: RwSignal<Option<Toast>>,
    /// Whether the setup is kept.
    pub kept: RwSignal<Kept>,
    /// A stored setup could not be read and was set aside.
    pub set_aside: RwSignal<bool>,
    /// Changes that can be taken back.
    pub undo_depth: RwSignal<usize>,
    before: StoredValue<Vec<Setup>>,
    last_edit_ms: StoredValue<f64>,
    toast_serial: StoredValue<u32>,
    save_timer: StoredValue<Option<TimeoutHandle>>,
}

impl AppState {
    /// State from what this browser kept, or `first` on the first visit.
    #[must_use]
    pub fn from_storage(first: impl FnOnce() -> Setup) -> Self {
        let stored = storage::load_setup();
        let kept = match stored {
            Stored::Blocked => Kept::No(StorageFault::Blocked),
            _ => Kept::Yes,
        };
        let set_aside = stored == Stored::Unread;
        let setup = match stored {
            Stored::Found(setup, _) => *setup,
            _ => first().sanitised().0,
        };
        let word = storage::load_text(Key::Theme).unwrap_or_default();
        let theme = Theme::ALL.into_iter().find(|theme| theme.word() == word).unwrap_or_default();
        let state = Self {
            setup: RwSignal::new(setup),
            tab: RwSignal::new(Tab::default()),
            theme: RwSignal::new(theme),
            lang: RwSignal::new(Lang::En),
            toast: RwSignal::new(None),
            kept: RwSignal::new(kept),
            set_aside: RwSignal::new(set_aside),
            undo_depth: RwSignal::new(0),
            before: StoredValue::new(Vec::new()),
            last_edit_ms: StoredValue::new(f64::NEG_INFINITY),
            toast_serial: StoredValue::new(0),
            save_timer: StoredValue::new(None),
        };
        state.follow();
        state
    }

    /// The same page around another setup that is neither shown nor stored, for a form that only
    /// makes a setup. Changes to it cannot be taken back.
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

    /// Saves after changes and keeps the look in force.
    fn follow(self) {
        Effect::new(move |first: Option<()>| {
            self.setup.track();
            if first.is_some() {
                self.save_soon();
            }
        });
        Effect::new(move |_| {
            let word = self.theme.get().word();
            let root = document().document_element();
            if let Some(root) = root {
                // Only fails for an invalid attribute name.
                let _ = root.set_attribute("data-theme", word);
            }
            storage::save_text(Key::Theme, word);
        });
        // The last keystrokes before the page goes away are kept too.
        let handle = window_event_listener_untyped("pagehide", move |_| self.save_now());
        on_cleanup(move || handle.remove());
    }

    fn save_soon(self) {
        let timer =
            set_timeout_with_handle(move || self.save_now(), Duration::from_millis(SAVE_AFTER_MS))
                .ok();
        let earlier = self.save_timer.try_update_value(|slot| std::mem::replace(slot, timer));
        if let Some(Some(earlier)) = earlier {
            earlier.clear();
        }
    }

    /// Writes the setup to this browser now.
    pub fn save_now(self) {
        let Some(written) = self.setup.try_with_untracked(storage::save_setup) else { return };
        let kept = match written {
            Ok(()) => Kept::Yes,
            Err(fault) => Kept::No(fault),
        };
        if self.kept.try_get_untracked() != Some(kept) {
            self.kept.try_set(kept);
        }
    }

    /// Changes the setup. Typing in quick succession counts as one change to take back.
    pub fn edit(self, change: impl FnOnce(&mut Setup)) {
        let now = js_sys::Date::now();
        let last = self.last_edit_ms.try_get_value().unwrap_or(f64::NEG_INFINITY);
        self.change(now - last > SAME_CHANGE_MS, change);
        let _ = self.last_edit_ms.try_update_value(|last| *last = now);
    }

    /// Changes the setup by one deliberate step, such as adding a row.
    pub fn edit_apart(self, change: impl FnOnce(&mut Setup)) {
        self.change(true, change);
        let _ = self.last_edit_ms.try_update_value(|last| *last = f64::NEG_INFINITY);
    }

    /// Changes the setup in a way worth a message with "undo", such as a deletion.
    pub fn edit_with_undo(self, told: String, change: impl FnOnce(&mut Setup)) {
        self.edit_apart(change);
        self.tell(told, true);
    }

    fn change(self, remember: bool, change: impl FnOnce(&mut Setup)) {
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

    /// Shows a message for a while.
    pub fn tell(self, text: String, undo: bool) {
        let serial = self.toast_serial.try_update_value(|serial| {
            *serial = serial.wrapping_add(1);
            *serial
        });
        let serial = serial.unwrap_or(0);
        self.toast.try_set(Some(Toast { text, undo, serial }));
        set_timeout(
            move || {
                let current = self.toast.try_get_untracked().flatten();
                if current.is_some_and(|toast| toast.serial == serial) {
                    self.toast.try_set(None);
                }
            },
            Duration::from_millis(TOAST_MS),
        );
    }

    /// Shows another part of the page, from its top.
    pub fn go(self, tab: Tab) {
        self.tab.try_set(tab);
        window().scroll_to_with_x_and_y(0.0, 0.0);
    }

    /// Fetches and puts in force the texts of `lang`; if that fails the language stays.
    pub fn choose_lang(self, lang: Lang) {
        leptos::task::spawn_local(async move {
            match super::lang::switch_to(lang).await {
                Ok(()) => {
                    storage::save_text(Key::Lang, lang.code());
                    self.lang.try_set(lang);
                }
                Err(_) => self.tell(t("toast-lang-failed"), false),
            }
        });
    }

    /// The language to start with: as chosen before, else as the browser asks.
    #[must_use]
    pub fn starting_lang() -> Lang {
        storage::load_text(Key::Lang)
            .and_then(|code| Lang::from_tag(&code))
            .unwrap_or_else(super::lang::browser_lang)
    }
}
