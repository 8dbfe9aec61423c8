//! Finds the entries of the catalogue that a name in a table may mean.

use crate::model::catalogue::{self, Appliance};
use crate::model::typed_words::{fold, rank};
use std::collections::BTreeMap;

/// Entries of the catalogue that are offered for a name.
const MAX_CANDIDATES: usize = 5;

/// Names and search words of the catalogue, folded once.
pub(super) struct Matcher(Vec<(&'static Appliance, String, String)>);

impl Matcher {
    pub(super) fn new(names: &dyn Fn(&'static str) -> String) -> Self {
        let entry = |known: &'static Appliance| (known, fold(&names(known.key)), fold(known.words));
        Self(catalogue::ALL.iter().map(entry).collect())
    }

    /// Entries for a name, best first, and whether all of the name was found in them.
    pub(super) fn find(&self, name: &str) -> (Vec<u16>, bool) {
        let query = fold(name);
        let ranked = |query: &str| {
            let mut found: Vec<(u16, u16)> = self
                .0
                .iter()
                .filter_map(|(known, name, words)| Some((rank(query, name, words)?, known.id)))
                .collect();
            // The name of a kind is as good at its start as behind a word: "fridge", "compressor fridge".
            found.sort_by_key(|(rank, _)| (*rank).max(1));
            found
        };
        if query.is_empty() {
            return (Vec::new(), false);
        }
        let whole = ranked(&query);
        if !whole.is_empty() {
            return (whole.into_iter().take(MAX_CANDIDATES).map(|(_, id)| id).collect(), true);
        }
        // Makers' names and sizes are in no catalogue: by the words it knows.
        let mut scores: BTreeMap<u16, (usize, u16)> = BTreeMap::new();
        for word in query.split(' ').filter(|word| word.chars().count() >= 4) {
            for (rank, id) in ranked(word).into_iter().filter(|(rank, _)| *rank <= 5) {
                let (words, worst) = scores.entry(id).or_insert((0, 0));
                *words += 1;
                *worst = (*worst).max(rank);
            }
        }
        let mut found: Vec<(u16, (usize, u16))> = scores.into_iter().collect();
        found.sort_by_key(|(_, (words, worst))| (usize::MAX - words, *worst));
        (found.into_iter().take(MAX_CANDIDATES).map(|(id, _)| id).collect(), false)
    }
}
