//! Ranks every sensible change by what it brings, each simulated in full.
//!
//! All candidates are played with a few weather sequences first, the better ones played on with more
//! ([`ROUNDS`]); what a better one has played already is not played again. A change is compared
//! with the setup as it is under the very same sequences, so few of them tell much. Ranked as
//! [`super::wish`] says, by the chance of the nights wanted; where that is equal, by the mean number of nights
//! gained, the time gained until the battery gets low in average weather, then by the lowest state of charge.
//!
//! What is told first, and the next step, is played as often as the answer in the end: so its figures are those
//! of the answer once the change is made. The rest is played so by [`InFullJob`] when it is asked for.

use super::candidates::candidates;
use super::improvement::Improvement;
use super::wish::{self, Advice};
use super::{Change, Family};
use crate::advice::trial::{self, Outcome, SUN_UNITS, Trial, TrialCache};
use crate::forecast::MonthlyClimate;
use crate::forecast::odds::SEQUENCES;
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::model::Setup;
use std::collections::VecDeque;
use std::sync::Arc;

/// Changes told first.
pub const TOLD: usize = 5;
/// Weather sequences of each round, and how many of the best changes are in it.
pub const ROUNDS: [(usize, usize); 3] = [(16, usize::MAX), (32, 12), (SEQUENCES, TOLD)];

/// Looks with few sequences that take as long as one with all.
const IN_FULL_WORTH: usize = 5;

/// A first look does not tell apart changes of one family that differ by less.
const CLOSE_NIGHTS: f64 = 0.4;

#[derive(Clone, Debug)]
struct Candidate {
    change: Change,
    sun: Option<Arc<TripSun>>,
    /// Where it stopped, kept while it is among those that the next round goes on with.
    trial: Option<Trial>,
    result: Option<Improvement>,
}

#[derive(Clone, Debug)]
enum Playing {
    Baseline(Trial),
    Candidate(usize, Trial),
}

/// Changes played as often as the answer, in portions: for those that are not told first.
#[derive(Clone, Debug)]
pub struct InFullJob {
    setup: Setup,
    climate: MonthlyClimate,
    changes: Vec<Change>,
    setups: Vec<Setup>,
    trials: Vec<Trial>,
}

impl InFullJob {
    /// Ready to play each of `changes` to `setup`.
    #[must_use]
    pub fn new(setup: &Setup, climate: &MonthlyClimate, changes: Vec<Change>) -> Self {
        let changed = changes.iter().map(|change| change.apply(setup));
        Self {
            setups: std::iter::once(setup.clone()).chain(changed).collect(),
            setup: setup.clone(),
            climate: *climate,
            changes,
            trials: Vec::new(),
        }
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let next = |index: usize| self.setups.get(index).map(|setup| (setup, &self.climate));
        trial::play_on(&mut self.trials, next, units)
    }

    /// Those played so far, in the order they were given.
    #[must_use]
    pub fn improvements(&self) -> Vec<Improvement> {
        let mut played = self.trials.iter().filter(|trial| trial.is_finished()).map(Trial::outcome);
        let Some(before) = played.next().map(Arc::new) else { return Vec::new() };
        let of = |(change, outcome): (&Change, Outcome)| {
            Improvement::of(*change, &self.setup, &before, outcome)
        };
        self.changes.iter().zip(played).map(of).collect()
    }
}

/// The search for what helps, in portions.
#[derive(Clone, Debug)]
pub struct ImprovementsJob {
    setup: Setup,
    sure_frac: f64,
    sun: Arc<TripSun>,
    /// Of the setup as it is.
    cache: TrialCache,
    /// The setup as it is, after the sequences of each round.
    baselines: Vec<Arc<Outcome>>,
    /// The same, as far as it is known.
    baseline: Outcome,
    candidates: Vec<Candidate>,
    round: usize,
    queue: VecDeque<usize>,
    playing: Option<Playing>,
    played: usize,
}

impl ImprovementsJob {
    /// Ready to search; plays the setup once in average weather. A night is sure from the chance `sure_frac`,
    /// 0..1, on.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn new(
        setup: &Setup,
        climate: &MonthlyClimate,
        sure_frac: f64,
    ) -> Result<Self, WeatherError> {
        let sun = Arc::new(TripSun::build(setup, climate)?);
        let trial = Trial::new(setup, sun.clone(), ROUNDS[0].0, None)?.booked();
        Ok(Self {
            setup: setup.clone(),
            sure_frac,
            sun,
            cache: trial.cache(),
            baselines: Vec::new(),
            baseline: trial.outcome(),
            candidates: Vec::new(),
            round: 0,
            queue: VecDeque::new(),
            playing: Some(Playing::Baseline(trial)),
            played: 0,
        })
    }

    /// Works on for about `units` (a played fortnight each, some tens of microseconds); false once
    /// all is done.
    ///
    /// # Errors
    /// [`WeatherError`]; none in practice, since the setup as it is was laid out before.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let mut left = units.max(1);
        while left > 0 {
            match self.playing.take() {
                Some(mut playing) => {
                    let trial = match &mut playing {
                        Playing::Baseline(trial) | Playing::Candidate(_, trial) => trial,
                    };
                    if trial.advance(&mut left) {
                        self.playing = Some(playing);
                    } else {
                        self.note(playing);
                    }
                }
                None => match self.queue.pop_front() {
                    Some(index) => self.start(index, &mut left)?,
                    None if !self.next_round() => return Ok(false),
                    None => {}
                },
            }
        }
        Ok(true)
    }

    fn note(&mut self, playing: Playing) {
        match playing {
            Playing::Baseline(trial) => self.note_baseline(trial),
            Playing::Candidate(index, trial) => {
                let outcome = trial.outcome();
                let round = self.round.saturating_sub(1);
                if let (Some(candidate), Some(before)) =
                    (self.candidates.get_mut(index), self.baselines.get(round))
                {
                    let help = Improvement::of(candidate.change, &self.setup, before, outcome);
                    candidate.result = Some(help);
                    candidate.trial = Some(trial);
                }
                self.played += 1;
                self.put_trials_away();
            }
        }
    }

    /// The setup as it is has been played as far as one round goes: on to the next, or to the
    /// candidates.
    fn note_baseline(&mut self, mut trial: Trial) {
        self.baseline = trial.outcome();
        self.baselines.push(Arc::new(self.baseline.clone()));
        if let Some((sequences, _)) = ROUNDS.get(self.baselines.len()) {
            trial.want(*sequences);
            self.playing = Some(Playing::Baseline(trial));
        } else {
            self.candidates = candidates(&self.setup, &self.baseline)
                .into_iter()
                .map(|change| Candidate { change, sun: None, trial: None, result: None })
                .collect();
        }
    }

    /// Keeps the trials that the next round goes on with, as far as is known, and no others: a
    /// long trip of many appliances would take tens of megabytes.
    fn put_trials_away(&mut self) {
        let goes_on = ROUNDS.get(self.round).map_or(0, |round| round.1);
        let mut best = self.ranking(self.close_nights());
        best.retain(|index| self.sequences_of(*index) > 0);
        best.truncate(goes_on);
        for (index, candidate) in self.candidates.iter_mut().enumerate() {
            if candidate.trial.is_some() && !best.contains(&index) {
                candidate.trial = None;
            }
        }
    }

    fn start(&mut self, index: usize, left: &mut usize) -> Result<(), WeatherError> {
        let sequences = self.sequences();
        let Some(candidate) = self.candidates.get_mut(index) else { return Ok(()) };
        let is_last_round = self.round == ROUNDS.len();
        if let Some(trial) = candidate.trial.take() {
            let mut trial = if is_last_round { trial.booked() } else { trial };
            trial.want(sequences);
            self.playing = Some(Playing::Candidate(index, trial));
            return Ok(());
        }
        let changed = candidate.change.apply(&self.setup);
        let sun = match &candidate.sun {
            Some(sun) => sun.clone(),
            None if candidate.change.touches_sun() => {
                let sun = Arc::new(self.sun.with_panels(&changed));
                candidate.sun = Some(sun.clone());
                *left = left.saturating_sub(SUN_UNITS);
                sun
            }
            None => self.sun.clone(),
        };
        let trial = Trial::new(&changed, sun, sequences, Some(&self.cache))?;
        let trial = if is_last_round { trial.booked() } else { trial };
        *left = left.saturating_sub(trial.set_up_units());
        self.playing = Some(Playing::Candidate(index, trial));
        Ok(())
    }

    /// How close to the best of its family a change is played on after the round that is played:
    /// few sequences do not tell one day to drive on from the next.
    fn close_nights(&self) -> f64 {
        if self.round <= 1 { CLOSE_NIGHTS } else { 0.0 }
    }

    fn sequences(&self) -> usize {
        ROUNDS.get(self.round.saturating_sub(1)).map_or(1, |round| round.0)
    }

    /// Queues the best changes for the next round; false after the last one. The last round is repeated
    /// until every change that is told first has been played in it, and the next step.
    fn next_round(&mut self) -> bool {
        let again = self.round == ROUNDS.len();
        let round = self.round.min(ROUNDS.len() - 1);
        let (sequences, keep) = ROUNDS[round];
        let mut best = if round + 1 == ROUNDS.len() {
            self.told()
        } else {
            let mut best = self.ranking(self.close_nights());
            best.truncate(keep);
            best
        };
        if again {
            best.retain(|index| self.sequences_of(*index) < sequences);
        }
        if best.is_empty() {
            self.round = ROUNDS.len();
            return false;
        }
        self.round = round + 1;
        self.queue = best.into();
        true
    }

    fn sequences_of(&self, index: usize) -> usize {
        let result = self.candidates.get(index).and_then(|candidate| candidate.result.as_ref());
        result.map_or(0, |help| help.outcome.sequences)
    }

    /// What is told first and the next step, as far as is known; where less moves the chance, the most hopeful
    /// of the others.
    fn told(&self) -> Vec<usize> {
        let nights = usize::from(self.setup.trip.nights);
        let advice = Advice::of(&self.improvements(), nights, self.sure_frac);
        let first = advice.improvements.iter().take(TOLD).chain(advice.next_step());
        let place = |help: &Improvement| {
            self.candidates.iter().position(|candidate| candidate.change == help.change)
        };
        let mut told: Vec<usize> = Vec::new();
        for index in first.filter_map(place) {
            // The next step is mostly one of the first.
            if !told.contains(&index) {
                told.push(index);
            }
        }
        let others = self.ranking(0.0).into_iter().filter(|index| !told.contains(index));
        let others: Vec<usize> = others.take(TOLD.saturating_sub(told.len())).collect();
        told.extend(others);
        told
    }

    /// Candidates worth playing on: not yet played ones, then the noticeable ones best first. Of
    /// each family the best, and those that are less than `close_nights` behind it.
    fn ranking(&self, close_nights: f64) -> Vec<usize> {
        let fresh = self.candidates.iter().enumerate().filter(|(_, c)| c.result.is_none());
        let mut order: Vec<usize> = fresh.map(|(index, _)| index).collect();
        let mut played: Vec<(usize, &Improvement)> = self
            .candidates
            .iter()
            .enumerate()
            .filter_map(|(index, c)| c.result.as_ref().map(|help| (index, help)))
            .filter(|(_, help)| help.gain.is_noticeable())
            .collect();
        let wanted = usize::from(self.setup.trip.nights);
        let helps = || played.iter().map(|(_, help)| *help);
        let nights = wish::nights_moved(helps(), wanted, self.sure_frac);
        played.sort_by(|a, b| wish::by_chance(a.1, b.1, nights));
        let mut families: Vec<(Family, f64)> = Vec::new();
        for (index, help) in played {
            if let Some(family) = help.change.family() {
                match families.iter().find(|(seen, _)| *seen == family) {
                    Some((_, best))
                        if close_nights <= 0.0 || best - help.gain.nights_mean >= close_nights =>
                    {
                        continue;
                    }
                    Some(_) => {}
                    None => families.push((family, help.gain.nights_mean)),
                }
            }
            order.push(index);
        }
        order
    }

    /// What helps, as far as it is known, the most first. One of each family of changes that
    /// exclude each other; nothing that brings nothing.
    #[must_use]
    pub fn improvements(&self) -> Vec<Improvement> {
        let known = self.ranking(0.0).into_iter().filter_map(|index| self.candidates.get(index));
        known.filter_map(|candidate| candidate.result.clone()).collect()
    }

    /// What becomes of the setup as it is.
    #[must_use]
    pub fn baseline(&self) -> &Outcome {
        &self.baseline
    }

    /// Changes that are looked at, sensible or not.
    #[must_use]
    pub fn candidate_count(&self) -> usize {
        self.candidates.len()
    }

    /// Share of the changes that have been played at all, 0..1: at 1 the list is whole, and only
    /// its best lines still get finer.
    #[must_use]
    pub fn screened_frac(&self) -> f64 {
        let known = self.candidates.iter().filter(|candidate| candidate.result.is_some()).count();
        if self.baselines.len() < ROUNDS.len() {
            0.0
        } else if self.candidates.is_empty() {
            1.0
        } else {
            known as f64 / self.candidates.len() as f64
        }
    }

    /// Share of the work that is done, 0..1.
    #[must_use]
    pub fn progress_frac(&self) -> f64 {
        if self.round >= ROUNDS.len() && self.queue.is_empty() && self.playing.is_none() {
            return 1.0;
        }
        if self.candidates.is_empty() {
            return 0.0;
        }
        // One that is played in full takes as long as a few that are looked at.
        let all = self.candidates.len() + ROUNDS[1].1 + IN_FULL_WORTH * TOLD;
        let in_full = self.candidates.iter().filter_map(|candidate| candidate.result.as_ref());
        let in_full = in_full.filter(|help| help.is_in_full()).count();
        let done = self.played + (IN_FULL_WORTH - 1) * in_full;
        (done as f64 / all as f64).min(0.99)
    }
}
