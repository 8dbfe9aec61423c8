//! The user's setups and the ways in and out: browser storage, the address bar, links, files,
//! posts, pictures, paper.

mod address;
mod file_card;
mod files;
mod hand_on;
mod keeper;
mod keeping;
mod link_card;
mod notices;
mod outcome;
mod pictures;
mod post_card;
mod print;
mod setups;
mod shelf;
mod tables;
mod told;
mod words;

pub use address::address_with;
pub use keeper::{Keeper, keeper, something_to_read};
pub use outcome::Outcome;
pub use print::{paper, print_page};
pub use setups::{Kept, Preview, Setups};
pub use words::setup_name;

use leptos::prelude::*;

/// Everything here, as it stands under "More".
#[must_use]
pub fn view(setups: Setups) -> AnyView {
    let outcome = use_context::<Outcome>();
    view! {
        {shelf::shelf(setups)}
        {link_card::link_card(setups)}
        {outcome.map(|outcome| post_card::post_card(setups, outcome))}
        {file_card::file_card(setups)}
    }
    .into_any()
}
