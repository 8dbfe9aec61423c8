//! Editions of the catalogue, frozen for links.
//!
//! A link names an appliance by its number and carries only what the user changed. The catalogue's
//! figures may be improved later, and a link given away must still open with the figures its sender
//! saw. So every released state of the catalogue is kept here as an edition, and a link names the
//! edition it was written with. Rows are version 1 loads in base 62, compared with the plain load.
//!
//! A test compares the newest edition with the catalogue. Where it fails after a change, add an
//! edition holding the rows that changed (the test prints them) and leave the earlier ones alone.

/// An edition: its rows by appliance number, ascending. Rows that did not change since the edition
/// before are not repeated.
type Edition = &'static [(u16, &'static str)];

/// All editions after edition 0, which knows no appliance.
const EDITIONS: &[Edition] = &[];

/// The edition that links are written with.
pub(super) const LATEST: u32 = EDITIONS.len() as u32;

/// The row of an appliance as of an edition.
pub(super) fn row(edition: u32, id: u16) -> Option<&'static str> {
    let known = EDITIONS.get(..edition as usize).unwrap_or(EDITIONS);
    known.iter().rev().find_map(|rows| {
        let at = rows.binary_search_by_key(&id, |&(id, _)| id).ok()?;
        rows.get(at).map(|&(_, row)| row)
    })
}
