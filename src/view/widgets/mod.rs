//! Widgets that all views share: fields, choices, sheets, lanterns, tables.
//!
//! Each is a plain function or a struct with a `view` method that returns an [`AnyView`]: one type
//! for all of them keeps the program small.
//!
//! [`AnyView`]: leptos::prelude::AnyView

mod buttons;
mod caution;
mod choice;
mod data_table;
mod disclosure;
mod explained_figure;
mod facts;
mod lanterns;
mod number_field;
mod sheet;
mod text_field;
mod time_field;
mod tip;
mod toast;

pub use buttons::{button, icon_button, quiet_button};
pub use caution::{Danger, caution, cautions};
pub use choice::{choice_row, pictured_radios, pictured_row, radios, select_field, toggle};
pub use data_table::{DataTable, data_table};
pub use disclosure::{disclosure, made_when_open, made_while_open, table_disclosure};
pub use explained_figure::{ExplainedFigure, FigureBar, OpenDetails, explained_list};
pub use facts::{Fact, facts};
pub use lanterns::{LanternLevel, LanternNight, lantern, lantern_row, lantern_sprite};
pub use number_field::NumberField;
pub use sheet::{Sheet, sheet};
pub use text_field::text_field;
pub use time_field::{date_field, time_field};
pub use tip::{Term, origin, tip, tip_with};
pub use toast::toasts;

use std::cell::Cell;

/// An id no other element of the page has, for labels and descriptions.
#[must_use]
pub fn fresh_id(stem: &str) -> String {
    thread_local! {
        static NEXT: Cell<u32> = const { Cell::new(0) };
    }
    let number = NEXT.with(|next| {
        next.set(next.get().wrapping_add(1));
        next.get()
    });
    format!("{stem}-{number}")
}
