//! Editions of the catalogue, frozen for links.
//!
//! A link names an appliance by its number and carries only what the user changed. The catalogue's
//! figures may be improved later, and a link given away must still open with the figures its sender
//! saw. So every released state of the catalogue is kept here as an edition, and a link names the
//! edition it was written with. Rows are version 1 loads in base 62 on a 12 V system, compared with
//! the plain load.
//!
//! A test compares the newest edition with the catalogue. Where it fails after a change, add the
//! rows it prints as the next edition and leave the earlier ones alone.

/// An edition: a line for each appliance, its number and its row. Rows that did not change since
/// the edition before are not repeated.
type Edition = &'static str;

/// All editions after edition 0, which knows no appliance.
const EDITIONS: &[Edition] = &[include_str!("editions/1.txt"), include_str!("editions/2.txt")];

/// The edition that links are written with.
pub(super) const LATEST: u32 = EDITIONS.len() as u32;

/// The row of an appliance as of an edition.
pub(super) fn row(edition: u32, id: u16) -> Option<&'static str> {
    let known = EDITIONS.get(..edition as usize).unwrap_or(EDITIONS);
    known.iter().rev().find_map(|rows| {
        let mut entries = rows.lines().filter_map(|line| line.split_once(' '));
        entries.find(|(number, _)| number.parse() == Ok(id)).map(|(_, row)| row)
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::link::v1::{pack_row, unpack_row};
    use crate::model::{SystemVoltage, catalogue};

    #[test]
    fn the_newest_edition_is_the_catalogue() {
        let changed: Vec<String> = catalogue::ALL
            .iter()
            .map(|appliance| (appliance.id, pack_row(&appliance.to_load(0, SystemVoltage::V12))))
            .filter(|(id, now)| row(LATEST, *id) != Some(now.as_str()))
            .map(|(id, now)| format!("{id} {now}"))
            .collect();
        assert!(
            changed.is_empty(),
            "the catalogue changed; save these lines as editions/{}.txt and list it:\n{}\n",
            LATEST + 1,
            changed.join("\n")
        );
    }

    #[test]
    fn the_steps_of_a_link_carry_the_catalogue_exactly() {
        for appliance in &catalogue::ALL {
            let load = appliance.to_load(0, SystemVoltage::V12);
            assert_eq!(unpack_row(&pack_row(&load)), Some(load), "{}", appliance.key);
        }
    }

    #[test]
    fn every_row_of_every_edition_reads() {
        for (at, edition) in EDITIONS.iter().enumerate() {
            for line in edition.lines() {
                let (number, text) = line.split_once(' ').expect("a number and a row");
                let id = number.parse().expect("a number");
                assert_eq!(row(at as u32 + 1, id), Some(text));
                assert_eq!(unpack_row(text).expect("the row reads").appliance, Some(id));
            }
        }
        assert_eq!(row(0, 1), None);
    }
}
