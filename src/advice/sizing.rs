//! How much solar and battery a number of nights takes: the curve between the two, the cheapest
//! and the lightest pair.
//!
//! Every point is a full simulation of the stay under the same weather sequences; more panel or
//! more battery never makes it worse, so the smallest that does is found by halving. Only the
//! panels' total power and the battery's capacity vary: tilt, shade and controllers are the
//! setup's own (one flat panel where there is none), as are loads, driving, hook-up, the state of
//! charge on arrival and the battery's health; enter the health the battery should still do it
//! at. The other chemistry is taken at its usual limit ([`Chemistry::usual_soc_min_frac`]).
//!
//! Over a season two months have to be lasted: the one with the least sun and the one in which the
//! setup as it is lasts least.

use super::changes::cost::battery_price;
use super::season::in_month;
use super::trial::{SUN_UNITS, Trial, TrialCache};
use crate::forecast::plan::TripSun;
use crate::forecast::weather::WeatherError;
use crate::forecast::{MonthlyClimate, TripPlan};
use crate::model::{Chemistry, Setup, SolarArray};
use crate::units::{AmpHours, Kilograms, Money, Watts};
use std::sync::Arc;

/// Weather sequences behind each point.
pub const SEQUENCES: usize = 64;
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
    /// In each of these months (1..12), see [`super::season::months`].
    pub months: Vec<u8>,
    /// Battery sizes of the table, rising, at the system voltage.
    pub batteries: Vec<AmpHours>,
    /// Solar sizes of the table, rising.
    pub solars: Vec<Watts>,
}

impl SizingAim {
    /// The usual sizes of the trade.
    #[must_use]
    pub fn usual(setup: &Setup, nights: usize, chance_frac: f64, months: Vec<u8>) -> Self {
        let series_12v = setup.bank.system.series_12v();
        let batteries = [50.0, 80.0, 100.0, 150.0, 200.0, 300.0, 400.0, 600.0];
        let solars = [0.0, 50.0, 100.0, 150.0, 200.0, 300.0, 400.0, 600.0, 800.0];
        Self {
            nights,
            chance_frac,
            months,
            batteries: batteries.map(|ah| AmpHours(ah / series_12v)).to_vec(),
            solars: solars.map(Watts).to_vec(),
        }
    }
}

/// A setup of this chemistry and capacity, with panels of this power in all.
#[must_use]
pub fn sized(setup: &Setup, chemistry: Chemistry, battery: AmpHours, solar: Watts) -> Setup {
    let mut setup = setup.clone();
    setup.solar.retain(|array| array.enabled && array.peak.0 > 0.0);
    if setup.solar.is_empty() {
        setup.solar.push(SolarArray { peak: REFERENCE, ..SolarArray::default() });
    }
    let total: Watts = setup.solar.iter().map(|array| array.peak).sum();
    for array in &mut setup.solar {
        array.peak = array.peak * (solar / total);
    }
    if solar.0 <= 0.0 {
        setup.solar.clear();
    }
    setup.bank.exchange(chemistry);
    setup.bank.parallel = 1;
    setup.bank.capacity_20h = battery;
    setup
}

/// A month that has to be lasted, with its sun worked out with and without panels.
#[derive(Clone, Debug)]
struct HardMonth {
    month: u8,
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
    /// Largest step known or taken not to do.
    fails: i32,
    /// Smallest step known to do; `None` until one is found.
    does: Option<i32>,
    /// Step being played.
    at: i32,
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
    unseen: Vec<u8>,
    seen: Vec<(u8, f64, f64)>,
    hard: Vec<HardMonth>,
    todo: Vec<(Chemistry, Fixed)>,
    done: usize,
    search: Option<Search>,
    /// Trials of the searched size still to be played, one a hard month.
    playing: Vec<Trial>,
    curves: Vec<Curve>,
}

impl SizingJob {
    /// Ready to search. The chemistries compared are the setup's own and lithium, or AGM beside
    /// lithium.
    #[must_use]
    pub fn new(setup: &Setup, climate: &MonthlyClimate, mut aim: SizingAim) -> Self {
        aim.nights = aim.nights.clamp(1, 60);
        aim.chance_frac = aim.chance_frac.clamp(0.01, 0.99);
        if aim.months.is_empty() {
            aim.months.push(setup.trip.month.clamp(1, 12));
        }
        let own = setup.bank.chemistry;
        let other = if own.is_lead() { Chemistry::LiFePo4 } else { Chemistry::Agm };
        let mut todo = Vec::new();
        for chemistry in [other, own] {
            todo.extend(aim.solars.iter().rev().map(|w| (chemistry, Fixed::Solar(*w))));
            todo.extend(aim.batteries.iter().rev().map(|ah| (chemistry, Fixed::Battery(*ah))));
        }
        Self {
            setup: setup.clone(),
            climate: *climate,
            unseen: aim.months.iter().rev().copied().collect(),
            seen: Vec::new(),
            hard: Vec::new(),
            todo,
            done: 0,
            search: None,
            playing: Vec::new(),
            curves: [own, other].map(Curve::new).to_vec(),
            aim,
        }
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
                self.pick_hard_months(&mut left)?;
            } else if let Some((chemistry, fixed)) = self.todo.pop() {
                let most = Self::most(fixed);
                let at = self.hint(chemistry, fixed).unwrap_or(most);
                // No panels may do; a battery there is always.
                let fails = if matches!(fixed, Fixed::Solar(_)) { 0 } else { -1 };
                let search = Search { chemistry, fixed, fails, does: None, at };
                self.play(search, &mut left)?;
            } else {
                return Ok(false);
            }
        }
        Ok(true)
    }

    /// Plays the setup as it is in a month, in average weather.
    fn look_at(&mut self, month: u8, left: &mut usize) -> Result<(), WeatherError> {
        let peak: Watts = self.setup.solar.iter().filter(|a| a.enabled).map(|a| a.peak).sum();
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

    fn pick_hard_months(&mut self, left: &mut usize) -> Result<(), WeatherError> {
        let darkest = self.seen.iter().min_by(|a, b| a.1.total_cmp(&b.1)).map(|seen| seen.0);
        let hardest = self.seen.iter().min_by(|a, b| a.2.total_cmp(&b.2)).map(|seen| seen.0);
        let mut months: Vec<u8> = darkest.into_iter().chain(hardest).collect();
        months.dedup();
        for month in months {
            let bank = &self.setup.bank;
            let reference = sized(&self.setup, bank.chemistry, bank.rated_capacity(), REFERENCE);
            let mut reference = in_month(&reference, month, self.aim.nights);
            let with_panels = Arc::new(TripSun::build(&reference, &self.climate)?);
            reference.solar.clear();
            let without = Arc::new(with_panels.with_panels(&reference));
            *left = left.saturating_sub(2 * SUN_UNITS);
            self.hard.push(HardMonth { month, with_panels, without, cache: None });
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
        let steps = f64::from(search.at);
        let (battery, solar) = match search.fixed {
            Fixed::Battery(battery) => (battery, SOLAR_STEP * steps),
            Fixed::Solar(solar) => (AmpHours(self.battery_step() * steps), solar),
        };
        let setup = sized(&self.setup, search.chemistry, battery, solar);
        self.playing.clear();
        for hard in &mut self.hard {
            let mut setup = in_month(&setup, hard.month, self.aim.nights);
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
            let trial = Trial::of_plan(Arc::new(plan), SEQUENCES, cache)?;
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
        let most = Self::most(search.fixed);
        if does {
            search.does = Some(search.at);
        } else {
            search.fails = search.at;
        }
        let upper = search.does.unwrap_or(most + 1);
        if upper - search.fails <= 1 {
            self.file(search);
            return Ok(());
        }
        search.at = match search.does {
            // What did for a smaller size does not: nothing below may be assumed.
            None => most,
            Some(does) => i32::midpoint(search.fails, does),
        };
        self.play(search, left)
    }

    fn file(&mut self, search: Search) {
        let step = self.battery_step();
        self.done += 1;
        let Some(curve) = self.curves.iter_mut().find(|c| c.chemistry == search.chemistry) else {
            return;
        };
        let steps = search.does.map(f64::from);
        match search.fixed {
            Fixed::Battery(battery) => {
                curve.solar_for_battery.push((battery, steps.map(|s| SOLAR_STEP * s)));
            }
            Fixed::Solar(solar) => {
                curve.battery_for_solar.push((solar, steps.map(|s| AmpHours(step * s))));
            }
        }
    }

    /// What is known so far; whole once [`Self::advance`] says false.
    #[must_use]
    pub fn sizing(&self) -> Sizing {
        let months = self.hard.iter().map(|hard| hard.month).collect();
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
        let have: Watts = setup.solar.iter().filter(|a| a.enabled).map(|a| a.peak).sum();
        let more_solar = (solar - have).max(Watts::ZERO);
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

/// The answer of sizing.
#[derive(Clone, Debug, PartialEq)]
pub struct Sizing {
    /// Months that had to be lasted, of all that were asked for.
    pub hard_months: Vec<u8>,
    /// Curves: the setup's own chemistry, then the other.
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
