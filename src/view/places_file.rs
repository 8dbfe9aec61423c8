//! The list of the world's places: fetched when a place is first searched for. Until it is here,
//! and where it cannot be fetched, the towns that the program carries are found.

use super::fetched::{DataFile, FileState};
use crate::model::places::gazetteer::Gazetteer;
use std::sync::Arc;

thread_local! {
    static FILE: DataFile<Gazetteer> = DataFile::new("places.txt", |bytes| {
        let text = String::from_utf8(bytes).map_err(|error| error.to_string())?;
        Gazetteer::read(&text).map_err(|error| error.to_string())
    });
}

/// How far the list is; followed where it is called.
#[must_use]
pub fn state() -> FileState<Gazetteer> {
    FILE.with(DataFile::state)
}

/// The list, if it is here; asks for it if not. Followed where it is called.
#[must_use]
pub fn list() -> Option<Arc<Gazetteer>> {
    FILE.with(DataFile::wanted)
}

/// The list, if it is here.
#[must_use]
pub fn here() -> Option<Arc<Gazetteer>> {
    FILE.with(DataFile::here)
}
