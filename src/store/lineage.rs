//! Marks in a stored library that tell which tabs' writes it contains, so that a lost one is noticed.

use serde::{Deserialize, Serialize};

/// One writing of the library by one tab.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Mark {
    /// The tab, a number drawn by lot when it opens.
    pub tab: u64,
    /// Counts the writings of this tab, from 1.
    pub write: u64,
}

/// The writings a library has taken in: the newest of each tab, the latest tab first. Empty for one
/// that was never written.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Lineage(Vec<Mark>);

impl Lineage {
    /// Most tabs that are remembered. A state whose tab has dropped out counts as not taken in,
    /// which at worst keeps a version too many.
    const MOST: usize = 16;

    /// From marks as they were stored.
    pub(super) fn from_marks(marks: Vec<Mark>) -> Self {
        let mut lineage = Self::default();
        marks.into_iter().for_each(|mark| lineage.add(mark));
        lineage.0.truncate(Self::MOST);
        lineage
    }

    /// The newest writing of each tab, the latest first.
    pub(super) fn marks(&self) -> &[Mark] {
        &self.0
    }

    /// Adds a mark behind the others, or raises the one its tab has.
    fn add(&mut self, mark: Mark) {
        match self.0.iter_mut().find(|known| known.tab == mark.tab) {
            Some(known) => known.write = known.write.max(mark.write),
            None => self.0.push(mark),
        }
    }

    /// What either has taken in.
    pub(super) fn joined(&self, other: &Self) -> Self {
        Self::from_marks(self.0.iter().chain(&other.0).copied().collect())
    }

    /// With a writing that is newer than all.
    pub(super) fn signed(&self, mark: Mark) -> Self {
        Self::from_marks(std::iter::once(mark).chain(self.0.iter().copied()).collect())
    }

    /// Whether the state that `state` is the lineage of was taken in: its newest writing says so,
    /// and one that was never written is where everybody starts.
    pub(super) fn took_in(&self, state: &Self) -> bool {
        state.0.first().is_none_or(|newest| {
            self.0.iter().any(|mark| mark.tab == newest.tab && mark.write >= newest.write)
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mark(tab: u64, write: u64) -> Mark {
        Mark { tab, write }
    }

    #[test]
    fn a_lineage_keeps_the_newest_writing_of_each_tab() {
        let one = Lineage::from_marks(vec![mark(1, 2), mark(2, 5), mark(1, 3)]);
        assert_eq!(one.marks(), [mark(1, 3), mark(2, 5)]);
        let two = one.signed(mark(2, 6));
        assert_eq!(two.marks(), [mark(2, 6), mark(1, 3)]);
        assert!(two.took_in(&one) && !one.took_in(&two));
        assert!(one.took_in(&Lineage::default()));
        let many = (0..40).fold(two.clone(), |all, tab| all.signed(mark(tab + 10, 1)));
        assert_eq!(many.marks().len(), Lineage::MOST);
        assert!(!many.took_in(&two), "forgotten is not taken in");
    }

    #[test]
    fn what_two_lineages_took_in_is_taken_in_by_the_two_joined() {
        let one = Lineage::from_marks(vec![mark(1, 3), mark(2, 5)]);
        let other = Lineage::from_marks(vec![mark(3, 1), mark(2, 7)]);
        assert!(!one.took_in(&other) && !other.took_in(&one));
        let joined = one.joined(&other);
        assert!(joined.took_in(&one) && joined.took_in(&other));
        assert_eq!(joined.marks(), [mark(1, 3), mark(2, 7), mark(3, 1)]);
    }
}
