//! Answers and setups for use elsewhere: text for a forum, pictures, a QR code, tables.
//!
//! The page hands over finished words and figures; everything here is text out of text.

pub mod csv;
mod drawing;
pub mod forum_table;
pub mod forum_text;
pub mod outlook_picture;
pub mod qr;
pub mod ranking;
