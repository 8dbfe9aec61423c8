//! Setups at rest: the file format, the library of named setups in the browser's storage, tables
//! for spreadsheets. No browser types: the page does the reading and writing, this decides what.
//!
//! Everything read passes [`Setup::sanitised`](crate::model::Setup::sanitised), as links do. What
//! cannot be read is handed back as it was, so that the page can set it aside; nothing is erased. Of a setup with a bad
//! field, that field alone is lost.

pub mod copies;
pub mod file;
pub mod keys;
pub mod library;
pub mod library_text;
mod lineage;
mod migration;
mod misfit;
pub mod reconcile;
pub mod tab;

pub use copies::{copies_json, read_copies};
pub use file::{FileContent, FileError, read_file, write_file};
pub use keys::Key;
pub use library::{Deleted, Entry, EntryId, Library, LibraryError};
pub use library_text::{Loaded, Notes, library_json, read_library, write_library};
pub use migration::SCHEMA;
pub use misfit::{Misfit, MisfitRow};
pub use reconcile::{Reconciled, reconcile};
pub use tab::{TabMemory, TakenIn};
