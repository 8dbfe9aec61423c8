//! What people bring: tables from spreadsheets, forums and meters, as text.
//!
//! A file is decoded by the browser under the name [`table::encoding_label`] gives; from there on all
//! is text and runs natively too.

pub mod appliances;
pub mod columns;
mod headings;
pub mod log;
mod matcher;
pub mod number;
pub mod recognise;
pub mod table;
