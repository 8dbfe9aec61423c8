//! The climate of the world: fetched when a place of the user's own first needs it.
//!
//! The example has its climate written out, so a first visit fetches nothing. Until the file is
//! here the regions count; what follows [`climate`] is worked out again when it comes.

use super::fetched::{DataFile, FileState};
use crate::forecast::climate_in;
use crate::model::climate::{Climate, World};
use crate::model::{Place, Trip};
use crate::units::Metres;
use std::sync::Arc;

thread_local! {
    static FILE: DataFile<World> = DataFile::new("climate.bin", |bytes| {
        World::decode(&bytes).map_err(|error| error.to_string())
    });
}

/// How far the file is; followed where it is called.
#[must_use]
pub fn state() -> FileState<World> {
    FILE.with(DataFile::state)
}

/// The climate of the world, if it is here; asks for it if not. Followed where it is called.
#[must_use]
pub fn world() -> Option<Arc<World>> {
    FILE.with(DataFile::wanted)
}

/// Climate of a trip, of the world's table where it is here. Followed where it is called.
#[must_use]
pub fn climate(trip: &Trip) -> Climate {
    climate_in(world().as_deref(), trip)
}

/// Mean height of the land around a place, if the table is here.
#[must_use]
pub fn height(place: &Place) -> Option<Metres> {
    let world = FILE.with(DataFile::here)?;
    Some(world.at(place.latitude, place.longitude)?.height)
}
