//! The ways in and out for setups and answers: links, files, forum text, pictures, paper.

mod file_card;
mod forum_card;
mod link_card;
mod outcome;
mod pictures;
mod print;
mod setup_list;
mod share_sheet;
mod tables;

pub use outcome::Outcome;
pub use print::{paper, print_page};

use crate::view::setups::Setups;
use leptos::prelude::*;

/// Everything here, as it stands under "More".
#[must_use]
pub fn view(setups: Setups) -> AnyView {
    let outcome = use_context::<Outcome>();
    view! {
        {setup_list::setup_list(setups)}
        {link_card::link_card(setups)}
        {outcome.map(|outcome| forum_card::forum_card(setups, outcome))}
        {file_card::file_card(setups)}
    }
    .into_any()
}
