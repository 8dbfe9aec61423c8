//! The page: fields and pictures of what the lower layers compute. The only layer that knows a
//! browser.
//!
//! [`app`] holds one [`state::AppState`]; every field is tied to a place of the setup by a
//! [`lens::Lens`]; the answer arrives as an [`answer::AnswerView`]. A change of language builds
//! the page again around the same state.

pub mod answer;
pub mod change;
pub mod chart;
pub mod focus;
pub mod icons;
pub mod lang;
pub mod lens;
pub mod loads;
pub mod more;
pub mod needs;
pub mod offline;
pub mod outlook;
pub mod parts;
pub mod power;
pub mod preferences;
pub mod recovery;
pub mod share;
pub mod shell;
pub mod start;
pub mod state;
pub mod storage;
pub mod tools;
pub mod trip;
pub mod turns;
pub mod widgets;

pub use share::{Keeper, something_to_read};
pub use shell::app;
