//! A way to reach a number of nights: some changes, one after the other, and their price.

use super::change::{Change, Family};
use super::cost::{Bill, Cost};
use super::trial::Outcome;
use crate::model::Setup;
use crate::units::{AmpHours, Watts};

/// By which means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WayKind {
    /// Settings, habits and effort; nothing bought, no driving, no hook-up.
    Habits,
    /// Driving and hook-up.
    OnTheMove,
    /// Purchases that have a price.
    Purchase,
}

impl WayKind {
    /// All of them, in the order they are told.
    pub const ALL: [Self; 3] = [Self::Habits, Self::OnTheMove, Self::Purchase];

    pub(super) fn allows(self, cost: Cost) -> bool {
        match self {
            Self::Habits => matches!(cost, Cost::Free | Cost::Effort),
            Self::OnTheMove => matches!(cost, Cost::Driving { .. } | Cost::HookUp { .. }),
            Self::Purchase => matches!(cost, Cost::Money { .. }),
        }
    }
}

/// What is wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Aim {
    /// Nights to last.
    pub nights: usize,
    /// At this chance, 0..1.
    pub chance_frac: f64,
}

/// One way, with its steps and their price.
#[derive(Clone, Debug, PartialEq)]
pub struct Way {
    /// By which means.
    pub kind: WayKind,
    /// The changes, in the order they are made.
    pub steps: Vec<Change>,
    /// What they ask for together.
    pub bill: Bill,
    /// What becomes of the trip with them.
    pub outcome: Outcome,
    /// The aim is reached; otherwise this is as far as these means go.
    pub reaches: bool,
}

impl Way {
    /// The setup with all steps made, one after the other.
    #[must_use]
    pub fn apply(&self, setup: &Setup) -> Setup {
        apply_all(setup, &self.steps)
    }
}

/// A setup with changes made one after the other.
#[must_use]
pub fn apply_all(setup: &Setup, steps: &[Change]) -> Setup {
    steps.iter().fold(setup.clone(), |setup, change| change.apply(&setup))
}

/// A family of which one way holds only one change; several driving days, batteries and panels
/// may come together, and hook-up may become more frequent.
pub(super) fn once(change: &Change) -> Option<Family> {
    if let Some(load) = change.load() {
        return Some(Family::Load(load));
    }
    change.family().filter(|family| !matches!(family, Family::DrivingDay | Family::HookUp))
}

/// Larger steps for the shop, where a small one brings nothing by itself.
pub(super) fn larger(setup: &Setup) -> Vec<Change> {
    let twelves = setup.bank.system.twelves();
    vec![
        Change::MoreBattery { capacity: AmpHours(200.0 / twelves) },
        Change::MoreSolar { peak: Watts(200.0) },
        Change::MoreSolar { peak: Watts(400.0) },
    ]
    .into_iter()
    .filter(|change| change.apply(setup) != *setup)
    .collect()
}

/// Several batteries or panels in one step.
pub(super) fn merged(steps: &[Change]) -> Vec<Change> {
    let mut list: Vec<Change> = Vec::new();
    for step in steps {
        let same = list.iter_mut().find_map(|before| match (before, step) {
            (Change::MoreBattery { capacity }, Change::MoreBattery { capacity: more }) => {
                *capacity += *more;
                Some(())
            }
            (Change::MoreSolar { peak }, Change::MoreSolar { peak: more }) => {
                *peak += *more;
                Some(())
            }
            (Change::Drive { day, minutes }, Change::Drive { day: same_day, minutes: more })
                if day == same_day =>
            {
                *minutes += more;
                Some(())
            }
            (Change::HookUp { every }, Change::HookUp { every: oftener }) => {
                *every = *oftener;
                Some(())
            }
            _ => None,
        });
        if same.is_none() {
            list.push(*step);
        }
    }
    list
}
