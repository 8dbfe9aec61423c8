//! Words and numbers in the reader's language, without a browser.
//!
//! [`texts`] finds the text behind a key (Fluent), [`number`] reads what was typed, [`lang`] lists
//! the languages there are. English is part of the program and always complete; other languages
//! are fetched when chosen, and anything they lack appears in English.

pub mod lang;
mod message;
pub mod number;
pub mod region;
pub mod texts;

pub use lang::Lang;
pub use number::{NumberError, parse_number, without_signed_zero};
pub use texts::{Arg, Texts};
