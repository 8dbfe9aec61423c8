//! Advice for one wish, the nights of the stay: what moves its chance, the most first, and the next step.

use super::cost::Cost;
use super::improvement::Improvement;
use crate::forecast::odds::reaches;
use std::cmp::Ordering;

/// Least gain of a chance worth a line.
pub(super) const WORTH_FRAC: f64 = 0.01;
/// What costs nothing comes before what does if it brings at least this share of its gain (common practice,
/// no source).
const FREE_SHARE: f64 = 0.5;

/// Changes for a stay, ranked by what they do to the chance that the battery lasts.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Advice {
    /// Nights whose chance the changes are ranked by: those wanted, or the first that is not sure yet where no
    /// single change moves the chance of all.
    pub nights: usize,
    /// Chance from which on a night counts as sure, 0..1.
    pub sure_frac: f64,
    /// What moves that chance, the most first.
    pub improvements: Vec<Improvement>,
}

impl Improvement {
    /// Chance, 0..1, of lasting `nights` nights without the change and with it, under the same weather.
    #[must_use]
    pub fn chances(&self, nights: usize) -> (f64, f64) {
        (self.before.chance_of(nights), self.outcome.chance_of(nights))
    }

    /// What the change adds to the chance of lasting `nights` nights, -1..1.
    #[must_use]
    pub fn chance_gain(&self, nights: usize) -> f64 {
        let (before, after) = self.chances(nights);
        after - before
    }

    /// Moves the chance of lasting `nights` nights by enough to be worth a line.
    #[must_use]
    pub fn moves(&self, nights: usize) -> bool {
        self.chance_gain(nights) >= WORTH_FRAC
    }

    /// Asks for no money, no drive and no fee.
    #[must_use]
    pub fn is_free(&self) -> bool {
        matches!(self.cost, Cost::Free | Cost::Effort)
    }
}

impl Advice {
    /// Ranks `improvements` for a stay of `wanted` nights. Empty where nothing moves the chance, for one because all
    /// nights are sure. A night is sure from the chance `sure_frac`, 0..1, on.
    #[must_use]
    pub fn of(improvements: &[Improvement], wanted: usize, sure_frac: f64) -> Self {
        let nights = nights_moved(improvements.iter(), wanted, sure_frac);
        let moving = improvements.iter().filter(|help| help.moves(nights));
        let mut improvements: Vec<Improvement> = moving.cloned().collect();
        improvements.sort_by(|a, b| by_chance(a, b, nights));
        Self { nights, sure_frac, improvements }
    }

    /// The one change to try next: the best of those that cost nothing where it reaches the aim or brings half
    /// as much as the best of all; else that.
    #[must_use]
    pub fn next_step(&self) -> Option<&Improvement> {
        let best = self.improvements.first()?;
        let free = self.improvements.iter().find(|help| help.is_free());
        let enough = |help: &&Improvement| {
            reaches(help.outcome.chance_of(self.nights), self.sure_frac)
                || help.chance_gain(self.nights) >= FREE_SHARE * best.chance_gain(self.nights)
        };
        free.filter(enough).or(Some(best))
    }
}

/// The nights that changes are ranked by: see [`Advice::nights`].
pub(super) fn nights_moved<'a>(
    improvements: impl Iterator<Item = &'a Improvement> + Clone,
    wanted: usize,
    sure_frac: f64,
) -> usize {
    let Some(help) = improvements.clone().next() else { return wanted };
    let first_unsure = help.before.nights_at(sure_frac) + 1;
    let moved = improvements.into_iter().any(|help| help.moves(wanted));
    if moved || first_unsure >= wanted { wanted } else { first_unsure }
}

/// By the chance gained, to a hundredth, then by all that the change brings.
pub(super) fn by_chance(a: &Improvement, b: &Improvement, nights: usize) -> Ordering {
    let points = |help: &Improvement| (help.chance_gain(nights) * 100.0).round() as i64;
    points(b).cmp(&points(a)).then_with(|| a.gain.rank(&b.gain))
}
