//! The page: fields and pictures of what the lower layers compute. The only layer that knows a
//! browser.
//!
//! [`app`] holds one [`state::AppState`]; every field is tied to a place of the setup by a
//! [`lens::Lens`]; the answer arrives as an [`answer::AnswerView`]. A change of language builds
//! the page again around the same state.
//!
//! A view is a plain function that returns [`AnyView`](leptos::prelude::AnyView): one type for all
//! views keeps the program small, and a plain function shows what it needs in its arguments.
//!
//! Code that runs later (timers, listeners, futures) reads and writes signals with `try_get` and
//! `try_set`: by then the part of the page that owns a signal may be gone, and plain `get` would
//! panic.
//!
//! The modules form rooms that use each other in one direction (`tests/layers.rs` holds it):
//!
//! | room | modules |
//! |---|---|
//! | ground | [`state`], [`lens`], [`lang`], [`storage`], [`tasks`], [`jobs`], [`focus`], [`icons`] and other small ones |
//! | widgets and charts | [`widgets`], [`chart`] |
//! | words | [`words`] |
//! | answer | [`answer`], [`outlook`], [`search`], [`load_energy`] |
//! | setups | [`setups`], [`recovery`] |
//! | screens | [`loads`], [`power`], [`trip`], [`start`], [`change`], [`tools`], [`share`], [`more`] |
//! | frame | [`parts`] names the screens, [`shell`] shows them |

pub mod answer;
pub mod arc_ptr_eq;
pub mod certainty;
pub mod change;
pub mod chart;
pub mod climate_file;
pub mod fetched;
pub mod focus;
pub mod icons;
pub mod jobs;
pub mod lang;
pub mod lens;
pub mod load_energy;
pub mod loads;
pub mod more;
pub mod offline;
pub mod outlook;
pub mod page_address;
pub mod parts;
pub mod places_file;
pub mod power;
pub mod preferences;
pub mod reader;
pub mod recovery;
pub mod search;
pub mod setups;
pub mod share;
pub mod shell;
pub mod start;
pub mod state;
pub mod storage;
pub mod tasks;
pub mod text_file;
pub mod today;
pub mod tools;
pub mod trip;
pub mod wide;
pub mod widgets;
pub mod words;
pub mod working;

pub use shell::app;
