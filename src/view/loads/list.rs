//! What the list of appliances and the sheet over it share.

use super::badges::Badges;
use crate::i18n::Arg;
use crate::model::limits::MAX_LOADS;
use crate::view::answer::AnswerSignal;
use crate::view::focus;
use crate::view::lang::t_args;
use crate::view::load_energy::DayUse;
use crate::view::state::AppState;
use crate::view::widgets::Sheet;
use leptos::prelude::*;

/// Id of the heading of this part.
pub const LOADS_TITLE_ID: &str = "loads-title";
/// Id of the field to search the catalogue in.
pub(super) const SEARCH_ID: &str = "find-appliance";
/// Id of what the sheet shows of an appliance.
pub(super) const QUICK_ID: &str = "quick";

/// What the sheet over the list shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shown {
    /// The catalogue, to add from.
    Catalogue,
    /// An appliance; `added` a moment ago.
    Load { id: u32, added: bool },
    /// The lamps by scenes.
    Light,
    /// A table from a spreadsheet.
    Table,
    /// Parts of a setup out of a link.
    Take,
}

/// The list with its sheet; copies share it.
#[derive(Clone, Copy)]
pub(super) struct LoadList {
    /// The page.
    pub(super) app: AppState,
    /// What a day takes.
    pub(super) day: Memo<DayUse>,
    /// What goes wrong.
    pub(super) badges: Memo<Badges>,
    /// The answer, to be read out in the sheet.
    pub(super) answer: AnswerSignal,
    /// The sheet over the list.
    pub(super) sheet: Sheet,
    /// What it shows.
    pub(super) shown: RwSignal<Shown>,
}

impl LoadList {
    /// Opens the sheet, or shows something else in it.
    pub(super) fn open(self, shown: Shown) {
        self.shown.try_set(shown);
        self.sheet.show();
    }

    /// Shows a load that was just added, with the focus on it.
    pub(super) fn show_added(self, id: u32) {
        self.open(Shown::Load { id, added: true });
        focus::to_new(QUICK_ID);
    }

    /// Goes back to the catalogue, ready to search.
    pub(super) fn search_on(self) {
        self.shown.try_set(Shown::Catalogue);
        focus::to_new(SEARCH_ID);
    }

    /// Tells that the list holds no more.
    pub(super) fn tell_full(self) {
        let most = Arg::Count(MAX_LOADS as i32);
        self.app.tell(t_args("loads-full", &[("most", most)]), false);
    }
}
