//! Ways to reach a number of nights: the cheapest of all, the one for which nothing is bought, and the one for
//! which nothing changes but what is bought.
//!
//! A way is built step by step: of the changes it allows, the one that brings the trip nearest
//! to the wanted nights for its price is taken, then the same again from
//! there, until the nights are reached. A change tried before is only tried again when what it
//! brought then still beats the best so far, since changes seldom bring more after others. Steps
//! that turn out not to be needed are dropped at the end, the dearest first, and what is bought is made as small
//! as will do.
//!
//! Built so are a way without purchases, one of purchases alone and one of all together. Beside them stand the
//! sizes of battery and panels that will do ([`crate::advice::sizing`]) and every single change that reaches the
//! nights. Cheapest is what [`Bill::price`] says of all these. Each is played as often as the answer itself, under
//! the same weather.

use super::candidates::candidates;
use super::cost::{Bill, Cost};
use super::{Change, Family, wish};
use crate::advice::sizing::{BATTERY_STEP_12V, SOLAR_STEP, SizingAim, SizingJob, lasting};
use crate::advice::trial::{Outcome, SUN_UNITS, Trial, TrialCache};
use crate::forecast::MonthlyClimate;
use crate::forecast::odds::{SEQUENCES, reaches};
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::model::{Setup, limits};
use crate::units::{AmpHours, Money, Watts};
use std::sync::Arc;

/// Sequences to choose a step by.
const CHOOSE_SEQUENCES: usize = 32;
/// A single change that falls short by more under so few sequences does not reach the aim under all.
const NEAR_FRAC: f64 = 0.25;
/// Work between two looks at whether the aim can still be reached.
const LOOK_UNITS: usize = 3;
/// Most steps of a way of habits alone: more at once nobody keeps up.
const MAX_HABITS: usize = 8;
/// Most rounds of looking for the next step elsewhere. Several batteries become one step in the end, and small steps that
/// a large one makes needless are dropped, so that a way is much shorter than that.
const MAX_ROUNDS: usize = 20;
/// Gain too small to be a step [nights].
const TOO_LITTLE: f64 = 0.01;

/// By which means a way is searched.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WayKind {
    /// Settings, habits, effort, driving and hook-up; nothing is bought.
    NothingBought,
    /// Purchases that have a price, and nothing else.
    OnlyBought,
    /// All of these.
    Any,
}

impl WayKind {
    /// All of them, in the order they are searched.
    pub const ALL: [Self; 3] = [Self::NothingBought, Self::OnlyBought, Self::Any];

    /// Whether a change of this cost belongs to it.
    #[must_use]
    pub fn allows(self, cost: Cost) -> bool {
        let bought = matches!(cost, Cost::Money { .. });
        match self {
            Self::NothingBought => !bought && cost != Cost::Unpriced,
            Self::OnlyBought => matches!(cost, Cost::Money { driving, .. } if driving.0 <= 0.0),
            Self::Any => cost != Cost::Unpriced,
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
    /// All its steps are allowed by these.
    pub kinds: Vec<WayKind>,
    /// The changes, in the order they are made.
    pub steps: Vec<Change>,
    /// What they ask for together.
    pub bill: Bill,
    /// The same as one amount, see [`Bill::price`].
    pub price: Money,
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

    fn is_cheaper_than(&self, other: &Self) -> bool {
        (self.price.0, self.steps.len()) < (other.price.0, other.steps.len())
    }
}

/// A setup with changes made one after the other.
#[must_use]
pub fn apply_all(setup: &Setup, steps: &[Change]) -> Setup {
    steps.iter().fold(setup.clone(), |setup, change| change.apply(&setup))
}

/// What steps ask for together, each for the setup as the steps before it leave it.
#[must_use]
pub fn bill_of(setup: &Setup, steps: &[Change]) -> Bill {
    let mut setup = setup.clone();
    let mut bill = Bill::default();
    for step in steps {
        bill = bill.with(step.cost(&setup));
        setup = step.apply(&setup);
    }
    bill
}

/// The sun of a setup that steps led to: worked out anew where they touch it.
fn sun_with(
    before: &Arc<TripSun>,
    steps: &[Change],
    after: &Setup,
    left: &mut usize,
) -> Arc<TripSun> {
    if !steps.iter().any(Change::touches_sun) {
        return before.clone();
    }
    *left = left.saturating_sub(SUN_UNITS);
    Arc::new(before.with_panels(after))
}

/// What steps are played for, to see whether they still reach the aim.
#[derive(Clone, Debug)]
enum Test {
    /// Whether one that was left out is needed.
    Without,
    /// Whether a size of the step of this place does: so many of its smallest pieces.
    Smaller { place: usize, pieces: i32 },
    /// Whether the sizes found do.
    Sizes,
    /// Whether a change does by itself.
    Single,
}

#[derive(Clone, Debug)]
enum Phase {
    /// Playing the setup as it stands, to say whether the aim is reached.
    Standing(Trial),
    /// Playing it again under the few sequences candidates are compared by.
    Reference(Trial),
    /// Playing candidate `usize`.
    Choosing(usize, Trial),
    /// Looking for sizes of battery and panels.
    Sizing(Box<SizingJob>),
    /// Playing steps that may take the place of those there are.
    Testing(Test, Vec<Change>, Trial),
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

/// How far the way in the making is.
#[derive(Clone, Debug)]
enum Making {
    /// Steps are added.
    Adding,
    /// These are still to be tried without, the dearest last.
    Pruning(Vec<Change>),
    /// Steps up to this place are still to be made smaller; of the last the pieces that do and that do not.
    Shrinking { place: usize, does: i32, fails: i32 },
}

/// The search for ways, in portions.
#[derive(Clone, Debug)]
pub struct WaysJob {
    base: Setup,
    climate: MonthlyClimate,
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
    making: Making,
    /// Single changes that may reach the aim, with their price.
    singles: Vec<(Change, Money)>,
    phase: Phase,
}

impl WaysJob {
    /// Ready to search for ways to last `aim.nights` nights (1..60) at `aim.chance_frac`.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn new(setup: &Setup, climate: &MonthlyClimate, aim: Aim) -> Result<Self, WeatherError> {
        let nights = aim.nights.clamp(1, limits::NIGHTS.max as usize);
        let base = lasting(setup, nights);
        let aim = Aim { nights, chance_frac: aim.chance_frac.clamp(0.01, 0.99) };
        let sun = Arc::new(TripSun::build(&base, climate)?);
        let standing = Trial::new(&base, sun.clone(), SEQUENCES, None)?.booked();
        Ok(Self {
            base,
            climate: *climate,
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
            making: Making::Adding,
            singles: Vec::new(),
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

    /// Ways that reach the aim, the cheapest first, then the cheapest without purchases and the cheapest of
    /// purchases alone, each once; where none reaches it the one that comes nearest. Whole once
    /// [`Self::advance`] says false.
    #[must_use]
    pub fn ways(&self) -> Vec<Way> {
        let reaching: Vec<&Way> = self.ways.iter().filter(|way| way.reaches).collect();
        if reaching.is_empty() {
            let chance = |way: &Way| (chance_of(&way.outcome, self.aim), way.outcome.nights_mean);
            let nearest = self.ways.iter().max_by(|a, b| {
                let (a, b) = (chance(a), chance(b));
                a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
            });
            // What brings the trip no nearer is no way.
            let nearer = |way: &&Way| {
                let Some(before) = &self.baseline else { return false };
                let nights = |outcome: &Outcome| outcome.nights_at(self.aim.chance_frac);
                chance(way).0 >= chance_of(before, self.aim) + wish::WORTH_FRAC
                    || nights(&way.outcome) > nights(before)
            };
            return nearest.filter(nearer).cloned().into_iter().collect();
        }
        let mut list: Vec<Way> = Vec::new();
        for kind in [WayKind::Any, WayKind::NothingBought, WayKind::OnlyBought] {
            let of_kind = reaching.iter().filter(|way| way.kinds.contains(&kind));
            let cheapest = of_kind.reduce(|a, b| if b.is_cheaper_than(a) { b } else { a });
            if let Some(way) = cheapest.filter(|way| !list.contains(way)) {
                list.push((*way).clone());
            }
        }
        list
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
                Phase::Testing(_, _, trial) => {
                    let mut portion = left.min(LOOK_UNITS);
                    let before = portion;
                    let more = trial.advance(&mut portion);
                    left = left.saturating_sub((before - portion).max(1));
                    more && trial.verdict(self.aim.nights, self.aim.chance_frac) != Some(false)
                }
                Phase::Sizing(job) => {
                    let portion = left.min(LOOK_UNITS);
                    left -= portion;
                    job.advance(portion)?
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
                Phase::Sizing(job) => self.size(&job, &mut left)?,
                Phase::Testing(test, steps, trial) => {
                    // One that was stopped has not reached the aim.
                    let outcome = Some(trial.outcome()).filter(|_| trial.is_finished());
                    self.judge(&test, steps, outcome.filter(|it| self.is_reached(it)), &mut left)?;
                }
                Phase::Between if !self.next(&mut left)? => return Ok(false),
                Phase::Between => {}
            }
        }
        Ok(true)
    }

    /// Goes on with what follows from the state; false once nothing does.
    fn next(&mut self, left: &mut usize) -> Result<bool, WeatherError> {
        if self.kinds.is_empty() {
            return self.try_single(left);
        }
        match self.making.clone() {
            Making::Adding => self.choose(left)?,
            Making::Pruning(open) => self.prune(open, left)?,
            Making::Shrinking { place, does, fails } => {
                self.shrink(place, (does, fails), left)?;
            }
        }
        Ok(true)
    }

    fn setup(&self) -> Setup {
        apply_all(&self.base, &self.steps)
    }

    fn is_reached(&self, outcome: &Outcome) -> bool {
        reaches(outcome.chance_of(self.aim.nights), self.aim.chance_frac)
    }

    /// Price of a way that reaches the aim and that others have to beat.
    fn to_beat(&self, kind: WayKind) -> Money {
        let allowed =
            |way: &&Way| way.reaches && (kind == WayKind::Any || way.kinds.contains(&kind));
        let prices = self.ways.iter().filter(allowed).map(|way| way.price);
        prices.fold(Money(f64::INFINITY), Money::min)
    }

    fn price(&self, setup: &Setup, change: &Change) -> Money {
        Bill::default().with(change.cost(setup)).price(&self.base.prices)
    }

    fn trial(
        &self,
        setup: &Setup,
        sun: Arc<TripSun>,
        sequences: usize,
        left: &mut usize,
    ) -> Result<Trial, WeatherError> {
        let trial = Trial::new(setup, sun, sequences, self.cache.as_ref())?;
        let trial = if sequences == SEQUENCES { trial.booked() } else { trial };
        *left = left.saturating_sub(trial.set_up_units());
        Ok(trial)
    }

    /// Starts to play other steps in place of those there are.
    fn test(
        &mut self,
        test: Test,
        steps: Vec<Change>,
        left: &mut usize,
    ) -> Result<(), WeatherError> {
        let setup = apply_all(&self.base, &steps);
        let sun = sun_with(&self.base_sun, &steps, &setup, left);
        let trial = self.trial(&setup, sun, SEQUENCES, left)?;
        self.phase = Phase::Testing(test, steps, trial);
        Ok(())
    }

    /// The setup with the steps so far is known: done, or on to the next round.
    fn stand(&mut self, outcome: Outcome, left: &mut usize) -> Result<(), WeatherError> {
        let reached = self.is_reached(&outcome);
        let Some(kind) = self.kinds.first().copied() else { return Ok(()) };
        if self.baseline.is_none() {
            self.baseline = Some(outcome.clone());
            if reached {
                self.kinds.clear();
                return Ok(());
            }
        }
        self.outcome = Some(outcome.clone());
        let most = if kind == WayKind::NothingBought { MAX_HABITS } else { MAX_ROUNDS };
        if reached || self.steps.len() >= most {
            return self.finish(reached);
        }
        let setup = self.setup();
        let used: Vec<Family> = self.steps.iter().filter_map(once).collect();
        let before = std::mem::take(&mut self.tried);
        let to_beat = self.to_beat(kind);
        self.tried = candidates(&setup, &outcome)
            .into_iter()
            .chain(larger(&setup))
            .filter(|change| kind.allows(change.cost(&setup)))
            .filter(|change| self.price(&setup, change) < to_beat)
            .filter(|change| once(change).is_none_or(|family| !used.contains(&family)))
            .map(|change| {
                let known = before.iter().find(|tried| tried.change == change);
                Tried { change, worth: known.map_or(f64::INFINITY, |t| t.worth), fresh: false }
            })
            .collect();
        if self.tried.is_empty() {
            return self.finish(reached);
        }
        let trial = self.trial(&setup, self.sun.clone(), CHOOSE_SEQUENCES, left)?;
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
            return self.finish(false);
        };
        let (change, fresh) = (tried.change, tried.fresh);
        let changed = change.apply(&self.setup());
        let sun = sun_with(&self.sun, &[change], &changed, left);
        let sequences = if fresh { SEQUENCES } else { CHOOSE_SEQUENCES };
        let trial = self.trial(&changed, sun.clone(), sequences, left)?;
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
        let Some(change) = self.tried.get(index).map(|tried| tried.change) else { return };
        let price = self.price(&setup, &change);
        let wanted = self.aim.chance_frac - NEAR_FRAC;
        let is_known = self.singles.iter().any(|(single, _)| *single == change);
        if self.steps.is_empty() && !is_known && outcome.chance_of(self.aim.nights) >= wanted {
            self.singles.push((change, price));
        }
        if let Some(tried) = self.tried.get_mut(index) {
            tried.fresh = true;
            // What has no price at all is taken first, by what it brings.
            tried.worth = if gained > TOO_LITTLE { gained / price.0.max(1e-6) } else { 0.0 };
        }
    }

    /// No more steps are added: what was not needed is dropped next, or the way is filed as it is.
    fn finish(&mut self, reached: bool) -> Result<(), WeatherError> {
        self.steps = merged(&self.steps);
        if !reached {
            return self.file(false);
        }
        let mut open: Vec<(Money, Change)> =
            self.steps.iter().map(|step| (self.price(&self.base, step), *step)).collect();
        open.sort_by(|a, b| a.0.0.total_cmp(&b.0.0));
        self.making = Making::Pruning(open.into_iter().map(|(_, step)| step).collect());
        Ok(())
    }

    /// Plays without the next step that may not be needed.
    fn prune(&mut self, mut open: Vec<Change>, left: &mut usize) -> Result<(), WeatherError> {
        let step = open.pop().filter(|_| self.steps.len() > 1);
        self.making =
            if step.is_some() { Making::Pruning(open) } else { self.shrinking(self.steps.len()) };
        let Some(step) = step else { return Ok(()) };
        let steps: Vec<Change> =
            self.steps.iter().filter(|other| **other != step).copied().collect();
        self.test(Test::Without, steps, left)
    }

    /// Ready to make the last step before `place` smaller that comes in sizes.
    fn shrinking(&self, place: usize) -> Making {
        let sized =
            |place: &usize| self.steps.get(*place).and_then(|step| self.pieces(step)).is_some();
        let found = (0..place).rev().find(sized);
        let does = found.and_then(|at| self.pieces(self.steps.get(at)?)).unwrap_or(0);
        Making::Shrinking { place: found.map_or(0, |at| at + 1), does, fails: 0 }
    }

    /// Of how many of its smallest pieces a step consists; `None` where it comes in one size.
    fn pieces(&self, step: &Change) -> Option<i32> {
        match *step {
            Change::MoreBattery { capacity } => {
                Some((capacity / self.battery_piece()).ceil() as i32)
            }
            Change::MoreSolar { peak } => Some((peak / SOLAR_STEP).ceil() as i32),
            _ => None,
        }
    }

    fn battery_piece(&self) -> AmpHours {
        AmpHours(BATTERY_STEP_12V.0 / self.base.bank.system.series_12v())
    }

    /// Plays with half as much of the step before `place`; files the way where there is none.
    fn shrink(
        &mut self,
        place: usize,
        (does, fails): (i32, i32),
        left: &mut usize,
    ) -> Result<(), WeatherError> {
        let Some(at) = place.checked_sub(1) else { return self.file(true) };
        if does - fails <= 1 {
            self.making = self.shrinking(at);
            return Ok(());
        }
        let pieces = i32::midpoint(fails, does);
        let mut steps = self.steps.clone();
        let battery = self.battery_piece() * f64::from(pieces);
        match steps.get_mut(at) {
            Some(Change::MoreBattery { capacity }) => *capacity = battery,
            Some(Change::MoreSolar { peak }) => *peak = SOLAR_STEP * f64::from(pieces),
            _ => {}
        }
        self.test(Test::Smaller { place, pieces }, steps, left)
    }

    /// Other steps were played: `outcome` is what becomes of the trip with them where they reach the aim.
    fn judge(
        &mut self,
        test: &Test,
        steps: Vec<Change>,
        outcome: Option<Outcome>,
        left: &mut usize,
    ) -> Result<(), WeatherError> {
        let does = outcome.is_some();
        match test {
            Test::Without | Test::Smaller { .. } => {
                if let Some(outcome) = outcome {
                    self.steps = steps;
                    self.outcome = Some(outcome);
                }
            }
            Test::Sizes | Test::Single => {
                if let Some(outcome) = outcome {
                    self.add(steps, outcome, true);
                }
            }
        }
        match (test, &mut self.making) {
            (
                Test::Smaller { place, pieces },
                Making::Shrinking { place: open, does: most, fails },
            ) if place == open => {
                *(if does { most } else { fails }) = *pieces;
            }
            (Test::Sizes, _) => self.next_kind(left)?,
            _ => {}
        }
        Ok(())
    }

    /// Adds a way to those found.
    fn add(&mut self, steps: Vec<Change>, outcome: Outcome, reaches: bool) {
        let bill = bill_of(&self.base, &steps);
        let mut setup = self.base.clone();
        let mut kinds = WayKind::ALL.to_vec();
        for step in &steps {
            let cost = step.cost(&setup);
            kinds.retain(|kind| kind.allows(cost));
            setup = step.apply(&setup);
        }
        let price = bill.price(&self.base.prices);
        self.ways.push(Way { kinds, steps, bill, price, outcome, reaches });
    }

    /// Files the way that is done; after one of purchases the sizes are looked for, else the next kind begins.
    fn file(&mut self, reaches: bool) -> Result<(), WeatherError> {
        let steps = std::mem::take(&mut self.steps);
        if let Some(outcome) = self.outcome.take().filter(|_| !steps.is_empty()) {
            self.add(steps, outcome, reaches);
        }
        let mut left = 0;
        if self.kinds.first() != Some(&WayKind::OnlyBought) {
            return self.next_kind(&mut left);
        }
        let aim = SizingAim::usual(&self.base, self.aim.nights, self.aim.chance_frac, Vec::new());
        let budget = self.to_beat(WayKind::OnlyBought);
        let job = SizingJob::new(&self.base, &self.climate, aim).within_budget(budget);
        self.phase = Phase::Sizing(Box::new(job));
        Ok(())
    }

    /// The sizes are known: the cheapest are played once more, with what comes after the wanted nights.
    fn size(&mut self, job: &SizingJob, left: &mut usize) -> Result<(), WeatherError> {
        let steps = job.sizing().least_to_buy.map(|choice| choice.changes(&self.base));
        match steps.filter(|steps| !steps.is_empty()) {
            Some(steps) => self.test(Test::Sizes, steps, left),
            None => self.next_kind(left),
        }
    }

    /// Gets ready for the next kind of way.
    fn next_kind(&mut self, left: &mut usize) -> Result<(), WeatherError> {
        if !self.kinds.is_empty() {
            self.kinds.remove(0);
        }
        self.steps.clear();
        self.tried.clear();
        self.making = Making::Adding;
        self.sun = self.base_sun.clone();
        self.phase = Phase::Between;
        if self.kinds.is_empty() {
            // The dearest last, so that the cheapest are taken off its end.
            self.singles.sort_by(|a, b| b.1.0.total_cmp(&a.1.0));
        } else if let Some(baseline) = self.baseline.clone() {
            self.stand(baseline, left)?;
        }
        Ok(())
    }

    /// Plays the next single change that would be cheaper than all ways; false where there is none.
    fn try_single(&mut self, left: &mut usize) -> Result<bool, WeatherError> {
        let single = self.singles.pop().filter(|(_, price)| *price < self.to_beat(WayKind::Any));
        let Some((change, _)) = single else {
            self.singles.clear();
            return Ok(false);
        };
        self.test(Test::Single, vec![change], left)?;
        Ok(true)
    }
}

fn chance_of(outcome: &Outcome, aim: Aim) -> f64 {
    outcome.chance_of(aim.nights)
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
