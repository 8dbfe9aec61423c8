//! Merges what two tabs stored: a three-way merge of libraries.
//!
//! Each tab knows what both have in common (`base`, see [`super::tab`]), what it has now (`ours`)
//! and what storage holds (`theirs`). Per setup: changed on one side only, that side counts;
//! changed on both sides, the later one stays and the earlier one is kept beside it under a number;
//! deleted on one side and changed on the other, it stays. Nothing typed is ever overwritten
//! unasked.
//!
//! Both tabs may do this at once, so both must come to the same: which version is the later one and
//! which id the other gets follow from the two versions alone, not from who looks.

use super::file::MAX_SETUPS;
use super::library::{Entry, EntryId, Library};

/// What came of two libraries.
#[derive(Clone, Debug, PartialEq)]
pub struct Reconciled {
    /// Both together.
    pub library: Library,
    /// Setups kept beside a later change of the same setup, to be told to the user.
    pub conflict_copies: Vec<EntryId>,
    /// Setups for which there was no room; to be set aside or offered as a file.
    pub left_over: Vec<Entry>,
}

/// Brings a tab's library and the stored one together. `base` is what both have in common;
/// the setup on screen stays that of `ours` where it still exists.
#[must_use]
pub fn reconcile(base: &Library, ours: &Library, theirs: &Library) -> Reconciled {
    let mut library = Library {
        current: None,
        entries: Vec::new(),
        revision: ours.revision.max(theirs.revision),
        last_id: ours.last_id.max(theirs.last_id),
        lineage: ours.lineage.joined(&theirs.lineage),
    };
    let mut earlier: Vec<Entry> = Vec::new();
    for entry in &theirs.entries {
        match merged(base.get(entry.id), ours.get(entry.id), Some(entry)) {
            Merged::One(one) => library.entries.push(one.clone()),
            Merged::Both { later, before } => {
                library.entries.push(later.clone());
                earlier.push(before.clone());
            }
            Merged::Gone => {}
        }
    }
    for (position, entry) in ours.entries.iter().enumerate() {
        if theirs.get(entry.id).is_none()
            && let Merged::One(one) = merged(base.get(entry.id), Some(entry), None)
        {
            library.entries.insert(position.min(library.entries.len()), one.clone());
        }
    }
    let left_over = library.entries.split_off(library.entries.len().min(MAX_SETUPS));
    let mut reconciled = Reconciled { library, conflict_copies: Vec::new(), left_over };
    for entry in earlier {
        keep_conflict_copy(&mut reconciled, entry);
    }
    let library = &mut reconciled.library;
    let there = |id: &EntryId| library.entries.iter().any(|entry| entry.id == *id);
    library.current = ours
        .current
        .filter(there)
        .or(theirs.current.filter(there))
        .or(library.entries.first().map(|entry| entry.id));
    if library.entries != theirs.entries || library.current != theirs.current {
        library.revision += 1;
    }
    reconciled
}

enum Merged<'a> {
    One(&'a Entry),
    Both { later: &'a Entry, before: &'a Entry },
    Gone,
}

fn merged<'a>(
    base: Option<&Entry>,
    ours: Option<&'a Entry>,
    theirs: Option<&'a Entry>,
) -> Merged<'a> {
    let unchanged = |side: &Entry| base.is_some_and(|base| base.setup == side.setup);
    match (ours, theirs) {
        (None, None) => Merged::Gone,
        // Missing on one side: deleted there if the tab knew it, new on the other if not.
        (Some(one), None) | (None, Some(one)) => {
            if unchanged(one) {
                Merged::Gone
            } else {
                Merged::One(one)
            }
        }
        (Some(ours), Some(theirs)) => {
            if ours.setup == theirs.setup || unchanged(ours) {
                Merged::One(theirs)
            } else if unchanged(theirs) {
                Merged::One(ours)
            } else if is_later(ours, theirs) {
                Merged::Both { later: ours, before: theirs }
            } else {
                Merged::Both { later: theirs, before: ours }
            }
        }
    }
}

/// Of two versions changed in the same millisecond, any order will do that both tabs agree on.
fn is_later(one: &Entry, other: &Entry) -> bool {
    let text = |entry: &Entry| serde_json::to_string(&entry.setup).unwrap_or_default();
    let order = one.changed_at_ms.cmp(&other.changed_at_ms);
    order.then_with(|| text(one).cmp(&text(other))).is_gt()
}

/// The id of a version that is kept beside another: the time of its change, or the next free one.
fn conflict_copy_id(library: &Library, entry: &Entry) -> EntryId {
    let mut id = EntryId(entry.changed_at_ms);
    while library.get(id).is_some() {
        id.0 += 1;
    }
    id
}

fn keep_conflict_copy(reconciled: &mut Reconciled, mut entry: Entry) {
    let library = &mut reconciled.library;
    if library.entries.len() >= MAX_SETUPS {
        reconciled.left_over.push(entry);
        return;
    }
    let behind = library.entries.iter().position(|other| other.id == entry.id);
    let position = behind.map_or(library.entries.len(), |at| at + 1);
    entry.id = conflict_copy_id(library, &entry);
    library.last_id = library.last_id.max(entry.id);
    entry.setup.name = library.free_name(&entry.setup.name);
    reconciled.conflict_copies.push(entry.id);
    library.entries.insert(position.min(library.entries.len()), entry);
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::model::Setup;

    fn named(name: &str) -> Setup {
        Setup { name: name.to_owned(), ..Setup::default() }
    }

    fn with_nights(name: &str, nights: u8) -> Setup {
        let mut setup = named(name);
        setup.trip.nights = nights;
        setup
    }

    fn base() -> (Library, EntryId, EntryId) {
        let mut library = Library::default();
        let a = library.add(named("A"), 1).expect("room");
        let b = library.add(named("B"), 2).expect("room");
        (library, a, b)
    }

    fn seen(library: &Library) -> Vec<(&str, u8)> {
        let entries = library.entries().iter();
        entries.map(|e| (e.setup.name.as_str(), e.setup.trip.nights)).collect()
    }

    #[test]
    fn no_change_anywhere_is_no_change() {
        let (base, ..) = base();
        let done = reconcile(&base, &base, &base);
        assert_eq!(done.library, base);
        assert!(done.conflict_copies.is_empty() && done.left_over.is_empty());
    }

    #[test]
    fn changes_to_different_setups_both_count() {
        let (base, a, b) = base();
        let (mut ours, mut theirs) = (base.clone(), base.clone());
        ours.update(a, with_nights("A", 3), 10).expect("there");
        theirs.update(b, with_nights("B", 4), 11).expect("there");
        let done = reconcile(&base, &ours, &theirs);
        assert_eq!(seen(&done.library), [("A", 3), ("B", 4)]);
        assert!(done.conflict_copies.is_empty());
        assert!(done.library.revision() > theirs.revision().max(base.revision()));
    }

    #[test]
    fn changes_to_the_same_setup_are_both_kept() {
        let (base, a, _) = base();
        for (our_time, their_time, first) in [(20, 10, 3), (10, 20, 4), (10, 10, 4)] {
            let (mut ours, mut theirs) = (base.clone(), base.clone());
            ours.update(a, with_nights("A", 3), our_time).expect("there");
            theirs.update(a, with_nights("A", 4), their_time).expect("there");
            let done = reconcile(&base, &ours, &theirs);
            let second = if first == 3 { 4 } else { 3 };
            assert_eq!(seen(&done.library), [("A", first), ("A 2", second), ("B", 7)]);
            assert_eq!(done.conflict_copies, [done.library.entries()[1].id]);
            assert_eq!(done.library.entries()[0].id, a);
        }
    }

    #[test]
    fn a_deletion_counts_unless_the_other_side_changed_it() {
        let (base, a, b) = base();
        let (mut ours, mut theirs) = (base.clone(), base.clone());
        ours.delete(a).expect("there");
        theirs.delete(b).expect("there");
        theirs.update(a, with_nights("A", 4), 11).expect("there");
        let done = reconcile(&base, &ours, &theirs);
        assert_eq!(seen(&done.library), [("A", 4)]);
        let swapped = reconcile(&base, &theirs, &ours);
        assert_eq!(seen(&swapped.library), [("A", 4)]);
    }

    #[test]
    fn additions_of_both_sides_stay_and_our_screen_too() {
        let (base, ..) = base();
        let (mut ours, mut theirs) = (base.clone(), base.clone());
        let c = ours.add(named("C"), 10).expect("room");
        theirs.add(named("D"), 11).expect("room");
        let done = reconcile(&base, &ours, &theirs);
        assert_eq!(seen(&done.library), [("A", 7), ("B", 7), ("C", 7), ("D", 7)]);
        assert_eq!(done.library.current().map(|e| e.id), Some(c));
    }

    #[test]
    fn the_same_id_given_twice_keeps_both() {
        let (base, ..) = base();
        let (mut ours, mut theirs) = (base.clone(), base.clone());
        let c = ours.add(named("C"), 10).expect("room");
        let d = theirs.add(named("D"), 10).expect("room");
        assert_eq!(c, d);
        let done = reconcile(&base, &ours, &theirs);
        assert_eq!(seen(&done.library), [("A", 7), ("B", 7), ("D", 7), ("C", 7)]);
        assert_eq!(done.conflict_copies.len(), 1);
    }

    #[test]
    fn what_finds_no_room_is_handed_back() {
        let (base, ..) = base();
        let (mut ours, mut theirs) = (base.clone(), base.clone());
        for n in 0..MAX_SETUPS - 2 {
            ours.add(named(&format!("o{n}")), 100 + n as u64).expect("room");
            theirs.add(named(&format!("t{n}")), 200 + n as u64).expect("room");
        }
        let done = reconcile(&base, &ours, &theirs);
        assert_eq!(done.library.entries().len(), MAX_SETUPS);
        assert_eq!(done.left_over.len(), MAX_SETUPS - 2);
    }

    #[test]
    fn the_other_tab_learns_the_same_from_what_was_written() {
        let (base, a, _) = base();
        let (mut ours, mut theirs) = (base.clone(), base.clone());
        ours.update(a, with_nights("A", 3), 10).expect("there");
        theirs.update(a, with_nights("A", 4), 11).expect("there");
        let written = reconcile(&base, &ours, &theirs).library;
        // The other tab had written `theirs` before and now reads `written`.
        let there = reconcile(&theirs, &theirs, &written);
        assert_eq!(there.library.entries(), written.entries());
        assert!(there.conflict_copies.is_empty());
    }
}
