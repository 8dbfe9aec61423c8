//! How much solar and battery a number of nights takes: the curve between the two, the cheapest
//! and the lightest pair.
//!
//! Every point is a full simulation of the stay under the same weather sequences; more panel or
//! more battery never makes it worse, so the smallest that does is found by halving: first with a few
//! sequences, then, nearby, with as many as the answer has. Only the
//! panels' total power and the battery's capacity vary: tilt, shade and controllers are the
//! setup's own (one flat panel where there is none), as are loads, driving, hook-up, the state of
//! charge on arrival and the battery's health; enter the health the battery should still do it
//! at. Lithium in place of lead is new, at its usual limit ([`Chemistry::usual_soc_min_frac`]).
//!
//! Sizes are for the stay itself, or for a season. Over a season two months have to be lasted: the one with
//! the least sun and the one in which the setup as it is lasts least.

use super::changes::Change;
use super::changes::cost::battery_price;
use super::season::in_month;
use super::trial::{SUN_UNITS, Trial, TrialCache};
use crate::forecast::odds::SEQUENCES;
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::forecast::{MonthlyClimate, TripPlan};
use crate::model::{Chemistry, Setup, SolarArray, limits};
use crate::units::{AmpHours, Kilograms, Money, Watts};
use std::sync::Arc;

/// Weather sequences to find a size roughly by.
const FEW_SEQUENCES: usize = 64;
/// Step of the solar sizes.
pub const SOLAR_STEP: Watts = Watts(10.0);
/// Step of the battery sizes at 12 V; half of it at 24 V.
pub const BATTERY_STEP_12V: AmpHours = AmpHours(5.0);
/// Largest solar looked at.
pub const MOST_SOLAR: Watts = Watts(2000.0);
/// Largest battery looked at, at 12 V.
pub const MOST_BATTERY_12V: AmpHours = AmpHours(1500.0);
/// Peak the sun is worked out for; other sizes are scaled from it.
const REFERENCE: Watts = Watts(100.0);
/// Work between two looks at whether a size does.
const LOOK_UNITS: usize = 3;

/// What the equipment has to do.
#[derive(Clone, Debug, PartialEq)]
pub struct SizingAim {
    /// Nights to last, 1..60.
    pub nights: usize,
    /// At this chance, 0..1.
    pub chance_frac: f64,
    /// In each of these months (1..12), see [`super::season::months`]; none for the stay itself.
    pub months: Vec<u8>,
    /// Battery sizes of the table, rising, at the system voltage.
    pub batteries: Vec<AmpHours>,
    /// Solar sizes of the table, rising.
    pub solars: Vec<Watts>,
}

impl SizingAim {
    /// The usual sizes of the trade, and those the setup has.
    #[must_use]
    pub fn usual(setup: &Setup, nights: usize, chance_frac: f64, months: Vec<u8>) -> Self {
        let series_12v = setup.bank.system.series_12v();
        let batteries = [50.0, 100.0, 150.0, 200.0, 300.0, 400.0, 600.0];
        let solars = [0.0, 100.0, 200.0, 300.0, 400.0, 600.0, 800.0];
        let mut batteries: Vec<f64> = batteries.map(|ah| ah / series_12v).to_vec();
        let mut solars = solars.to_vec();
        for (sizes, own) in
            [(&mut batteries, setup.bank.rated_capacity().0), (&mut solars, setup.solar_peak().0)]
        {
            sizes.push(own);
            sizes.sort_by(f64::total_cmp);
            sizes.dedup();
        }
        Self {
            nights,
            chance_frac,
            months,
            batteries: batteries.into_iter().map(AmpHours).collect(),
            solars: solars.into_iter().map(Watts).collect(),
        }
    }
}

/// A setup of this chemistry and capacity, with panels of this power in all.
#[must_use]
pub fn sized(setup: &Setup, chemistry: Chemistry, battery: AmpHours, solar: Watts) -> Setup {
    let mut setup = setup.clone();
    setup.solar.retain(|array| array.enabled && array.peak.0 > 0.0);
    if setup.solar.is_empty() {
        let facing = setup.trip.place.noon_facing();
        setup.solar.push(SolarArray { peak: REFERENCE, facing, ..SolarArray::default() });
    }
    let total: Watts = setup.solar.iter().map(|array| array.peak).sum();
    for array in &mut setup.solar {
        array.peak = array.peak * (solar / total);
    }
    if solar.0 <= 0.0 {
        setup.solar.clear();
    }
    if chemistry != setup.bank.chemistry {
        setup.bank.exchange(chemistry);
        setup.bank.health_frac = 1.0;
    }
    setup.bank.parallel = 1;
    setup.bank.capacity_20h = battery;
    setup
}

/// A stay that has to be lasted, with its sun worked out with and without panels.
#[derive(Clone, Debug)]
struct HardStay {
    setup: Setup,
    /// Its month, where a season was asked for.
    month: Option<u8>,
    with_panels: Arc<TripSun>,
    without: Arc<TripSun>,
    /// Of the size played last.
    cache: Option<TrialCache>,
}

/// One size that is searched.
#[derive(Clone, Copy, Debug)]
struct Search {
    chemistry: Chemistry,
    fixed: Fixed,
    /// Weather sequences it is played with.
    sequences: usize,
    /// Largest step there is.
    most: i32,
    /// Largest step known or taken not to do.
    fails: i32,
    /// Smallest step known to do; `None` until one is found.
    does: Option<i32>,
    /// Step being played.
    at: i32,
    /// How far the next look goes from what few sequences found; doubled each time.
    stride: i32,
}

impl Search {
    /// Largest step that never does: no panels may do, a battery there is always.
    fn lowest(&self) -> i32 {
        if matches!(self.fixed, Fixed::Solar(_)) { 0 } else { -1 }
    }

    /// Notes whether the present step does and goes on to the next; false once the smallest is found.
    fn judge(&mut self, does: bool) -> bool {
        if does {
            self.does = Some(self.at);
        } else {
            self.fails = self.at;
        }
        let lowest = self.lowest();
        let upper = self.does.unwrap_or(self.most + 1);
        let few = self.sequences == FEW_SEQUENCES;
        if upper - self.fails <= 1 {
            if few {
                self.at = upper.min(self.most);
                *self =
                    Self { sequences: SEQUENCES, fails: lowest, does: None, stride: 1, ..*self };
            }
            return few;
        }
        self.at = match self.does {
            // What did for a smaller size does not: nothing below may be assumed.
            None if few => self.most,
            None => self.further(self.fails).min(self.most),
            Some(does) if !few && self.fails == lowest => (does - self.further(0)).max(lowest + 1),
            Some(does) => i32::midpoint(self.fails, does),
        };
        true
    }

    /// A stride beyond `from`; the next is twice as long.
    fn further(&mut self, from: i32) -> i32 {
        let stride = self.stride;
        self.stride = stride.saturating_mul(2);
        from + stride
    }
}

#[derive(Clone, Copy, Debug)]
enum Fixed {
    Battery(AmpHours),
    Solar(Watts),
}

/// The search for sizes, in portions.
#[derive(Clone, Debug)]
pub struct SizingJob {
    setup: Setup,
    climate: MonthlyClimate,
    aim: SizingAim,
    /// Only what costs less than this beyond what the setup has is of interest.
    budget: Option<Money>,
    unseen: Vec<u8>,
    seen: Vec<(u8, f64, f64)>,
    hard: Vec<HardStay>,
    todo: Vec<(Chemistry, Fixed)>,
    done: usize,
    search: Option<Search>,
    /// Trials of the searched size still to be played, one a hard month.
    playing: Vec<Trial>,
    curves: Vec<Curve>,
}

impl SizingJob {
    /// Ready to search. Compared are the setup's own chemistry and, beside lead, lithium.
    #[must_use]
    pub fn new(setup: &Setup, climate: &MonthlyClimate, mut aim: SizingAim) -> Self {
        aim.nights = aim.nights.clamp(1, 60);
        aim.chance_frac = aim.chance_frac.clamp(0.01, 0.99);
        let own = setup.bank.chemistry;
        let lithium = own.is_lead().then_some(Chemistry::LiFePo4);
        let mut todo = Vec::new();
        for chemistry in lithium.into_iter().chain([own]) {
            todo.extend(aim.solars.iter().rev().map(|w| (chemistry, Fixed::Solar(*w))));
            todo.extend(aim.batteries.iter().rev().map(|ah| (chemistry, Fixed::Battery(*ah))));
        }
        Self {
            setup: setup.clone(),
            climate: *climate,
            budget: None,
            unseen: aim.months.iter().rev().copied().collect(),
            seen: Vec::new(),
            hard: Vec::new(),
            todo,
            done: 0,
            search: None,
            playing: Vec::new(),
            curves: [own].into_iter().chain(lithium).map(Curve::new).collect(),
            aim,
        }
    }

    /// The same for the sizes alone that cost less than `budget` beyond what the setup has; where nothing has
    /// a price there are none.
    #[must_use]
    pub fn within_budget(mut self, budget: Money) -> Self {
        self.budget = Some(budget);
        self
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate is not a number in range.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let mut left = units.max(1);
        while left > 0 {
            if let Some(trial) = self.playing.last_mut() {
                let mut portion = left.min(LOOK_UNITS);
                let before = portion;
                let _more = trial.advance(&mut portion);
                left = left.saturating_sub((before - portion).max(1));
                match trial.verdict(self.aim.nights, self.aim.chance_frac) {
                    Some(true) => {
                        self.playing.pop();
                        if self.playing.is_empty() {
                            self.judge(true, &mut left)?;
                        }
                    }
                    Some(false) => self.judge(false, &mut left)?,
                    None => {}
                }
            } else if let Some(month) = self.unseen.pop() {
                self.look_at(month, &mut left)?;
            } else if self.hard.is_empty() {
                self.pick_hard_stays(&mut left)?;
            } else if let Some((chemistry, fixed)) = self.todo.pop() {
                if let Some(search) = self.begin(chemistry, fixed) {
                    self.play(search, &mut left)?;
                }
            } else {
                return Ok(false);
            }
        }
        Ok(true)
    }

    /// Plays the setup as it is in a month, in average weather.
    fn look_at(&mut self, month: u8, left: &mut usize) -> Result<(), WeatherError> {
        let peak = self.setup.solar_peak();
        let bank = &self.setup.bank;
        let setup = sized(&self.setup, bank.chemistry, bank.rated_capacity(), peak.max(REFERENCE));
        let setup = in_month(&setup, month, self.aim.nights);
        let sun = Arc::new(TripSun::build(&setup, &self.climate)?);
        let days = sun.average.iter().take(self.aim.nights + 1);
        let yield_w: f64 = days.flatten().map(|hour| hour.mppt.0 + 13.0 * hour.pwm.0).sum();
        let trial = Trial::new(&setup, sun, 1, None)?;
        *left = left.saturating_sub(SUN_UNITS + trial.set_up_units());
        let outcome = trial.outcome();
        let until = outcome.first_low.map_or(f64::INFINITY, |low| low.0);
        // Later nights than the aim do not count; the lowest charge then tells the months apart.
        let score = until.min(24.0 * self.aim.nights as f64) + outcome.lowest_frac;
        self.seen.push((month, yield_w, score));
        Ok(())
    }

    fn pick_hard_stays(&mut self, left: &mut usize) -> Result<(), WeatherError> {
        let darkest = self.seen.iter().min_by(|a, b| a.1.total_cmp(&b.1)).map(|seen| seen.0);
        let hardest = self.seen.iter().min_by(|a, b| a.2.total_cmp(&b.2)).map(|seen| seen.0);
        let mut months: Vec<u8> = darkest.into_iter().chain(hardest).collect();
        months.dedup();
        let mut stays: Vec<(Option<u8>, Setup)> = months
            .into_iter()
            .map(|month| (Some(month), in_month(&self.setup, month, self.aim.nights)))
            .collect();
        if stays.is_empty() {
            stays.push((None, lasting(&self.setup, self.aim.nights)));
        }
        for (month, setup) in stays {
            let bank = &setup.bank;
            let mut reference = sized(&setup, bank.chemistry, bank.rated_capacity(), REFERENCE);
            let with_panels = Arc::new(TripSun::build(&reference, &self.climate)?);
            reference.solar.clear();
            let without = Arc::new(with_panels.with_panels(&reference));
            *left = left.saturating_sub(2 * SUN_UNITS);
            self.hard.push(HardStay { setup, month, with_panels, without, cache: None });
        }
        Ok(())
    }

    fn battery_step(&self) -> f64 {
        BATTERY_STEP_12V.0 / self.setup.bank.system.series_12v()
    }

    fn most(fixed: Fixed) -> i32 {
        match fixed {
            Fixed::Battery(_) => (MOST_SOLAR / SOLAR_STEP) as i32,
            Fixed::Solar(_) => (MOST_BATTERY_12V / BATTERY_STEP_12V) as i32,
        }
    }

    /// The search for a size: up to the largest there is, or that the budget buys; `None` where that is nothing.
    fn begin(&self, chemistry: Chemistry, fixed: Fixed) -> Option<Search> {
        let mut most = Self::most(fixed);
        if let Some(budget) = self.budget {
            let of = |battery: AmpHours, solar: Watts| {
                Choice::of(&self.setup, chemistry, (battery, solar)).to_buy
            };
            let (have_battery, have_solar) =
                (self.setup.bank.rated_capacity(), self.setup.solar_peak());
            let fits = |step: i32| {
                let (battery, solar) = self.size(fixed, step);
                of(battery, solar) < budget
            };
            // Less than there is costs no less.
            let own = chemistry == self.setup.bank.chemistry;
            match fixed {
                Fixed::Battery(battery) if own && battery < have_battery => return None,
                Fixed::Solar(solar) if solar < have_solar => return None,
                Fixed::Battery(_) | Fixed::Solar(_) => {}
            }
            while most > -1 && !fits(most) {
                most -= 1;
            }
        }
        let at = self.hint(chemistry, fixed).unwrap_or(most).min(most);
        let (sequences, does, stride) = (FEW_SEQUENCES, None, 1);
        let mut search = Search { chemistry, fixed, sequences, most, fails: 0, does, at, stride };
        search.fails = search.lowest();
        (most > search.fails).then_some(search)
    }

    /// Battery and panels of a step.
    fn size(&self, fixed: Fixed, step: i32) -> (AmpHours, Watts) {
        match fixed {
            Fixed::Battery(battery) => (battery, SOLAR_STEP * f64::from(step)),
            Fixed::Solar(solar) => (AmpHours(self.battery_step() * f64::from(step)), solar),
        }
    }

    /// What did for the size before: the next larger one needs no more.
    fn hint(&self, chemistry: Chemistry, fixed: Fixed) -> Option<i32> {
        let curve = self.curves.iter().find(|curve| curve.chemistry == chemistry)?;
        let step = match fixed {
            Fixed::Battery(_) => curve.solar_for_battery.last()?.1? / SOLAR_STEP,
            Fixed::Solar(_) => curve.battery_for_solar.last()?.1?.0 / self.battery_step(),
        };
        Some(step.round() as i32)
    }

    /// Lays out a search's present step in all hard months.
    fn play(&mut self, search: Search, left: &mut usize) -> Result<(), WeatherError> {
        let (battery, solar) = self.size(search.fixed, search.at);
        self.playing.clear();
        for hard in &mut self.hard {
            let mut setup = sized(&hard.setup, search.chemistry, battery, solar);
            let sun = if solar.0 > 0.0 {
                setup.correction.sun_factor *= solar / REFERENCE;
                hard.with_panels.clone()
            } else {
                hard.without.clone()
            };
            let cache = hard.cache.as_ref();
            let mut plan = TripPlan::build_like(&setup, sun, cache.map(TrialCache::plan));
            if let Some(morning) = plan.mornings.get(self.aim.nights - 1).copied() {
                plan.mornings.truncate(self.aim.nights);
                plan.hours.truncate(morning);
            }
            let trial = Trial::of_plan(Arc::new(plan), search.sequences, cache)?;
            hard.cache = Some(trial.cache());
            *left = left.saturating_sub(trial.set_up_units());
            self.playing.push(trial);
        }
        self.search = Some(search);
        Ok(())
    }

    /// The present step does or does not: halve what is left, or file the size.
    fn judge(&mut self, does: bool, left: &mut usize) -> Result<(), WeatherError> {
        self.playing.clear();
        let Some(mut search) = self.search.take() else { return Ok(()) };
        if search.judge(does) {
            return self.play(search, left);
        }
        self.file(search);
        Ok(())
    }

    fn file(&mut self, search: Search) {
        let found = search.does.map(|step| self.size(search.fixed, step));
        self.done += 1;
        if let (Some(budget), Some(pair)) = (self.budget, found) {
            let to_buy = Choice::of(&self.setup, search.chemistry, pair).to_buy;
            self.budget = Some(budget.min(to_buy));
        }
        let Some(curve) = self.curves.iter_mut().find(|c| c.chemistry == search.chemistry) else {
            return;
        };
        match search.fixed {
            Fixed::Battery(battery) => {
                curve.solar_for_battery.push((battery, found.map(|pair| pair.1)));
            }
            Fixed::Solar(solar) => {
                curve.battery_for_solar.push((solar, found.map(|pair| pair.0)));
            }
        }
    }

    /// What is known so far; whole once [`Self::advance`] says false.
    #[must_use]
    pub fn sizing(&self) -> Sizing {
        let months = self.hard.iter().filter_map(|hard| hard.month).collect();
        Sizing::of(&self.setup, months, self.curves.clone())
    }

    /// Share of the work that is done, 0..1.
    #[must_use]
    pub fn progress_frac(&self) -> f64 {
        let open = self.todo.len() + usize::from(self.search.is_some());
        self.done as f64 / (self.done + open).max(1) as f64
    }
}

/// Sizes of one chemistry that do; `None` where none within the looked-at range does.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// Chemistry.
    pub chemistry: Chemistry,
    /// Smallest solar at each battery size, batteries rising.
    pub solar_for_battery: Vec<(AmpHours, Option<Watts>)>,
    /// Smallest battery at each solar size, solar rising.
    pub battery_for_solar: Vec<(Watts, Option<AmpHours>)>,
}

impl Curve {
    fn new(chemistry: Chemistry) -> Self {
        Self { chemistry, solar_for_battery: Vec::new(), battery_for_solar: Vec::new() }
    }

    /// All pairs that do.
    pub fn pairs(&self) -> impl Iterator<Item = (AmpHours, Watts)> {
        let by_battery = self.solar_for_battery.iter().filter_map(|(ah, w)| Some((*ah, (*w)?)));
        let by_solar = self.battery_for_solar.iter().filter_map(|(w, ah)| Some(((*ah)?, *w)));
        by_battery.chain(by_solar)
    }
}

/// A pair of battery and panels with its price and weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Choice {
    /// Chemistry of the battery.
    pub chemistry: Chemistry,
    /// Capacity at the 20 h rate, at the system voltage.
    pub battery: AmpHours,
    /// Panels in all.
    pub solar: Watts,
    /// Price of all of it, new.
    pub money: Money,
    /// Price of what the setup does not have yet; another chemistry is bought whole.
    pub to_buy: Money,
    /// Weight of all of it [kg].
    pub weight: Kilograms,
}

impl Choice {
    fn of(setup: &Setup, chemistry: Chemistry, (battery, solar): (AmpHours, Watts)) -> Self {
        let prices = &setup.prices;
        let (price, weight) = battery_price(setup, chemistry);
        let per_ah = setup.bank.system.series_12v() / 100.0;
        let per_watt = 1.0 / 100.0;
        let more_solar = (solar - setup.solar_peak()).max(Watts::ZERO);
        let more_battery = if chemistry == setup.bank.chemistry {
            (battery - setup.bank.rated_capacity()).max(AmpHours::ZERO)
        } else {
            battery
        };
        let money = |battery: AmpHours, solar: Watts| {
            price * (battery.0 * per_ah) + prices.solar_per_100w * (solar.0 * per_watt)
        };
        Self {
            chemistry,
            battery,
            solar,
            money: money(battery, solar),
            to_buy: money(more_battery, more_solar),
            weight: weight * (battery.0 * per_ah) + prices.solar_kg_per_100w * (solar.0 * per_watt),
        }
    }
}

impl Choice {
    /// What has to be bought, as changes to the setup; what it has already stays.
    #[must_use]
    pub fn changes(&self, setup: &Setup) -> Vec<Change> {
        let have = setup.bank.rated_capacity();
        let battery = if self.chemistry != setup.bank.chemistry {
            Some(Change::Lithium { capacity: self.battery })
        } else {
            (self.battery > have).then(|| Change::MoreBattery { capacity: self.battery - have })
        };
        let more = self.solar - setup.solar_peak();
        battery
            .into_iter()
            .chain((more.0 > 0.0).then_some(Change::MoreSolar { peak: more }))
            .collect()
    }
}

/// The setup with a stay of `nights` nights at least.
#[must_use]
pub fn lasting(setup: &Setup, nights: usize) -> Setup {
    let mut setup = setup.clone();
    let most = limits::NIGHTS.max as u8;
    let nights = u8::try_from(nights).unwrap_or(most).clamp(1, most);
    setup.trip.nights = setup.trip.nights.max(nights);
    setup
}

/// The answer of sizing.
#[derive(Clone, Debug, PartialEq)]
pub struct Sizing {
    /// Months that had to be lasted, of all that were asked for; none for the stay itself.
    pub hard_months: Vec<u8>,
    /// Curves: the setup's own chemistry, then lithium beside lead.
    pub curves: Vec<Curve>,
    /// Cheapest pair, all bought new.
    pub cheapest: Option<Choice>,
    /// Pair that costs least beyond what the setup has.
    pub least_to_buy: Option<Choice>,
    /// Lightest pair.
    pub lightest: Option<Choice>,
}

impl Sizing {
    /// The pairs that stand out among the curves, at the prices of the setup.
    #[must_use]
    pub fn of(setup: &Setup, hard_months: Vec<u8>, curves: Vec<Curve>) -> Self {
        let choices: Vec<Choice> = curves
            .iter()
            .flat_map(|curve| curve.pairs().map(|pair| Choice::of(setup, curve.chemistry, pair)))
            .collect();
        let least = |key: fn(&Choice) -> (f64, f64)| {
            choices
                .iter()
                .min_by(|a, b| {
                    let (a, b) = (key(a), key(b));
                    a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1))
                })
                .copied()
        };
        Self {
            hard_months,
            cheapest: least(|choice| (choice.money.0, choice.weight.0)),
            least_to_buy: least(|choice| (choice.to_buy.0, choice.weight.0)),
            lightest: least(|choice| (choice.weight.0, choice.money.0)),
            curves,
        }
    }
}
