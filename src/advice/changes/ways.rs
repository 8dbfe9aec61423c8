//! Different ways to reach a number of nights: by habits, by driving and hook-up, by buying.
//!
//! Each way is built step by step: of the changes it allows, the one that brings the trip nearest
//! to the wanted nights is taken (for purchases: nearest per money), then the same again from
//! there, until the nights are reached. A change tried before is only tried again when what it
//! brought then still beats the best so far, since changes seldom bring more after others. Steps
//! that turn out not to be needed are dropped at the end. Every figure is a full simulation under
//! the same weather.

use super::candidates::candidates;
use super::cost::{Bill, Cost};
use super::{Change, Family};
use crate::advice::trial::{Outcome, SUN_UNITS, Trial, TrialCache};
use crate::forecast::MonthlyClimate;
use crate::forecast::odds::reaches;
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::model::{Setup, limits};
use crate::units::{AmpHours, Watts};
use std::sync::Arc;

/// Sequences to choose a step by.
const CHOOSE_SEQUENCES: usize = 32;
/// Sequences to say whether the nights are reached.
const VERIFY_SEQUENCES: usize = 256;
/// Work between two looks at whether a step is still needed.
const LOOK_UNITS: usize = 3;
/// Most steps of a way.
const MAX_STEPS: usize = 8;
/// Gain too small to be a step [nights].
const TOO_LITTLE: f64 = 0.01;

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

    fn allows(self, cost: Cost) -> bool {
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

#[derive(Clone, Debug)]
enum Phase {
    /// Playing the setup as it stands, to say whether the aim is reached.
    Standing(Trial),
    /// Playing it again under the few sequences candidates are compared by.
    Reference(Trial),
    /// Playing candidate `usize`.
    Choosing(usize, Trial),
    /// Playing without step `usize`.
    Pruning(usize, Trial),
    /// Nothing is being played; the next thing follows from the state.
    Between,
}

#[derive(Clone, Debug)]
struct Tried {
    change: Change,
    /// Nearness gained per price when last tried.
    worth: f64,
    /// Tried in this round.
    fresh: bool,
}

/// The search for ways, in portions.
#[derive(Clone, Debug)]
pub struct WaysJob {
    base: Setup,
    base_sun: Arc<TripSun>,
    aim: Aim,
    kinds: Vec<WayKind>,
    ways: Vec<Way>,
    steps: Vec<Change>,
    sun: Arc<TripSun>,
    /// Of the setup with the steps so far.
    cache: Option<TrialCache>,
    outcome: Option<Outcome>,
    baseline: Option<Outcome>,
    near: f64,
    tried: Vec<Tried>,
    phase: Phase,
}

impl WaysJob {
    /// Ready to search for ways to last `aim.nights` nights (1..60) at `aim.chance_frac`.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn new(setup: &Setup, climate: &MonthlyClimate, aim: Aim) -> Result<Self, WeatherError> {
        let most = limits::NIGHTS.max as u8;
        let nights = u8::try_from(aim.nights).unwrap_or(most).clamp(1, most);
        let mut base = setup.clone();
        base.trip.nights = base.trip.nights.max(nights);
        let aim =
            Aim { nights: usize::from(nights), chance_frac: aim.chance_frac.clamp(0.01, 0.99) };
        let sun = Arc::new(TripSun::build(&base, climate)?);
        let standing = Trial::new(&base, sun.clone(), VERIFY_SEQUENCES, None)?.booked();
        Ok(Self {
            base,
            base_sun: sun.clone(),
            aim,
            kinds: WayKind::ALL.to_vec(),
            ways: Vec::new(),
            steps: Vec::new(),
            sun,
            cache: Some(standing.cache()),
            outcome: None,
            baseline: None,
            near: 0.0,
            tried: Vec::new(),
            phase: Phase::Standing(standing),
        })
    }

    /// What is wanted, within bounds.
    #[must_use]
    pub fn aim(&self) -> Aim {
        self.aim
    }

    /// What becomes of the setup as it is, once that was played.
    #[must_use]
    pub fn baseline(&self) -> Option<&Outcome> {
        self.baseline.as_ref()
    }

    /// The setup as it is reaches the aim: no way is needed, and none will be found.
    #[must_use]
    pub fn is_reached_already(&self) -> bool {
        self.baseline.as_ref().is_some_and(|outcome| self.is_reached(outcome))
    }

    /// Ways found so far, at most one of each kind; none of a kind that has no means at all.
    #[must_use]
    pub fn ways(&self) -> &[Way] {
        &self.ways
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`]; none in practice, since the setup as it is was laid out before.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let mut left = units.max(1);
        while left > 0 {
            let mut phase = std::mem::replace(&mut self.phase, Phase::Between);
            let more = match &mut phase {
                Phase::Standing(trial) | Phase::Reference(trial) | Phase::Choosing(_, trial) => {
                    trial.advance(&mut left)
                }
                // What cannot reach the aim any more is not played to its end.
                Phase::Pruning(_, trial) => {
                    let mut portion = left.min(LOOK_UNITS);
                    let before = portion;
                    let more = trial.advance(&mut portion);
                    left = left.saturating_sub((before - portion).max(1));
                    more && trial.verdict(self.aim.nights, self.aim.chance_frac) != Some(false)
                }
                Phase::Between => false,
            };
            if more {
                self.phase = phase;
                continue;
            }
            match phase {
                Phase::Standing(trial) => self.stand(trial.outcome(), &mut left)?,
                Phase::Reference(trial) => self.near = self.nearness(&trial.outcome()),
                Phase::Choosing(index, trial) => self.note(index, &trial.outcome()),
                Phase::Pruning(index, trial) => self.prune(index, &trial.outcome(), &mut left)?,
                Phase::Between if self.kinds.is_empty() => return Ok(false),
                Phase::Between => self.choose(&mut left)?,
            }
        }
        Ok(!self.kinds.is_empty())
    }

    fn setup(&self) -> Setup {
        apply_all(&self.base, &self.steps)
    }

    fn is_reached(&self, outcome: &Outcome) -> bool {
        reaches(outcome.chance_of(self.aim.nights), self.aim.chance_frac)
    }

    fn trial(
        &self,
        setup: &Setup,
        touches_sun: bool,
        sequences: usize,
        left: &mut usize,
    ) -> Result<(Trial, Arc<TripSun>), WeatherError> {
        let sun = if touches_sun {
            *left = left.saturating_sub(SUN_UNITS);
            Arc::new(self.sun.with_panels(setup))
        } else {
            self.sun.clone()
        };
        let trial = Trial::new(setup, sun.clone(), sequences, self.cache.as_ref())?;
        let trial = if sequences == VERIFY_SEQUENCES { trial.booked() } else { trial };
        *left = left.saturating_sub(trial.set_up_units());
        Ok((trial, sun))
    }

    /// The setup with the steps so far is known: done, or on to the next round.
    fn stand(&mut self, outcome: Outcome, left: &mut usize) -> Result<(), WeatherError> {
        let reached = self.is_reached(&outcome);
        let Some(kind) = self.kinds.first().copied() else { return Ok(()) };
        self.baseline.get_or_insert_with(|| outcome.clone());
        self.outcome = Some(outcome.clone());
        if reached || self.steps.len() >= MAX_STEPS {
            return self.try_without(self.steps.len(), left);
        }
        let setup = self.setup();
        let used: Vec<Family> = self.steps.iter().filter_map(once).collect();
        let before = std::mem::take(&mut self.tried);
        self.tried = candidates(&setup, &outcome)
            .into_iter()
            .chain(if kind == WayKind::Purchase { larger(&setup) } else { Vec::new() })
            .filter(|change| kind.allows(change.cost(&setup)))
            .filter(|change| once(change).is_none_or(|family| !used.contains(&family)))
            .map(|change| {
                let known = before.iter().find(|tried| tried.change == change);
                Tried { change, worth: known.map_or(f64::INFINITY, |t| t.worth), fresh: false }
            })
            .collect();
        let (trial, _) = self.trial(&setup, false, CHOOSE_SEQUENCES, left)?;
        self.phase = Phase::Reference(trial);
        Ok(())
    }

    /// Mean of the wanted nights that are lasted, and a little for the time until low in average
    /// weather: nights move as a whole, and small steps would not show in them alone.
    fn nearness(&self, outcome: &Outcome) -> f64 {
        let wanted = self.aim.nights as f64;
        let days = outcome.first_low.map_or(wanted, |low| (low.0 / 24.0).min(wanted));
        outcome.lasting_frac.iter().take(self.aim.nights).sum::<f64>() + 0.2 * days
    }

    /// Tries the most promising candidate, or takes it if it was tried already.
    fn choose(&mut self, left: &mut usize) -> Result<(), WeatherError> {
        let best = self
            .tried
            .iter()
            .enumerate()
            .max_by(|a, b| a.1.worth.total_cmp(&b.1.worth).then(b.0.cmp(&a.0)));
        let Some((index, tried)) = best.filter(|(_, tried)| tried.worth > 0.0) else {
            return self.try_without(self.steps.len(), left);
        };
        let (change, fresh) = (tried.change, tried.fresh);
        let changed = change.apply(&self.setup());
        let sequences = if fresh { VERIFY_SEQUENCES } else { CHOOSE_SEQUENCES };
        let (trial, sun) = self.trial(&changed, change.touches_sun(), sequences, left)?;
        if fresh {
            self.steps.push(change);
            self.sun = sun;
            self.cache = Some(trial.cache());
            self.phase = Phase::Standing(trial);
        } else {
            self.phase = Phase::Choosing(index, trial);
        }
        Ok(())
    }

    fn note(&mut self, index: usize, outcome: &Outcome) {
        let setup = self.setup();
        let gained = self.nearness(outcome) - self.near;
        if let Some(tried) = self.tried.get_mut(index) {
            let price = match tried.change.cost(&setup) {
                Cost::Money { amount, .. } => amount.0.max(1.0),
                Cost::Driving { time } => time.0.max(0.1),
                Cost::HookUp { nights } => nights.max(1) as f64,
                Cost::Effort => 1.5,
                Cost::Free | Cost::Unpriced => 1.0,
            };
            tried.fresh = true;
            tried.worth = if gained > TOO_LITTLE { gained / price } else { 0.0 };
        }
    }

    /// Starts to play without the last step before `from`; files the way when none is left.
    fn try_without(&mut self, from: usize, left: &mut usize) -> Result<(), WeatherError> {
        let reached = self.outcome.as_ref().is_some_and(|outcome| self.is_reached(outcome));
        if !reached || from == 0 || self.steps.len() < 2 {
            return self.file(reached);
        }
        let mut steps = self.steps.clone();
        steps.remove(from - 1);
        let setup = apply_all(&self.base, &steps);
        let touches_sun = steps.iter().any(Change::touches_sun);
        self.sun = self.base_sun.clone();
        let (trial, _) = self.trial(&setup, touches_sun, VERIFY_SEQUENCES, left)?;
        self.phase = Phase::Pruning(from - 1, trial);
        Ok(())
    }

    fn prune(
        &mut self,
        index: usize,
        outcome: &Outcome,
        left: &mut usize,
    ) -> Result<(), WeatherError> {
        if self.is_reached(outcome) {
            self.steps.remove(index);
            self.outcome = Some(outcome.clone());
        }
        self.try_without(index, left)
    }

    /// Files the way that is done and gets ready for the next kind.
    fn file(&mut self, reaches: bool) -> Result<(), WeatherError> {
        let steps = merged(&self.steps);
        if !self.kinds.is_empty() {
            let kind = self.kinds.remove(0);
            if let Some(outcome) = self.outcome.take()
                && !steps.is_empty()
            {
                let mut setup = self.base.clone();
                let mut bill = Bill::default();
                for step in &steps {
                    bill = bill.with(step.cost(&setup));
                    setup = step.apply(&setup);
                }
                self.ways.push(Way { kind, steps, bill, outcome, reaches });
            }
        }
        self.steps.clear();
        self.tried.clear();
        self.sun = self.base_sun.clone();
        self.phase = if self.kinds.is_empty() {
            Phase::Between
        } else {
            let cache = self.cache.as_ref();
            let trial = Trial::new(&self.base, self.sun.clone(), VERIFY_SEQUENCES, cache)?.booked();
            self.cache = Some(trial.cache());
            Phase::Standing(trial)
        };
        Ok(())
    }
}

/// A family of which one way holds only one change; several driving days, batteries and panels
/// may come together, and hook-up may become more frequent.
fn once(change: &Change) -> Option<Family> {
    if let Some(load) = change.load() {
        return Some(Family::Load(load));
    }
    change.family().filter(|family| !matches!(family, Family::DrivingDay | Family::HookUp))
}

/// Larger steps for the shop, where a small one brings nothing by itself.
fn larger(setup: &Setup) -> Vec<Change> {
    let series_12v = setup.bank.system.series_12v();
    vec![
        Change::MoreBattery { capacity: AmpHours(200.0 / series_12v) },
        Change::MoreSolar { peak: Watts(200.0) },
        Change::MoreSolar { peak: Watts(400.0) },
    ]
    .into_iter()
    .filter(|change| change.apply(setup) != *setup)
    .collect()
}

/// Several batteries or panels in one step.
fn merged(steps: &[Change]) -> Vec<Change> {
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
