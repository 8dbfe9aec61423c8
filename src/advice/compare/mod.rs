//! Up to four setups side by side: what differs, how long each lasts, what it costs and weighs,
//! and what a kilowatt-hour through its battery costs over the battery's life.
//!
//! ```text
//! cost per usable kWh = price / (usable energy of one cycle * cycles)
//! usable energy       = capacity * nominal voltage * (1 - usual lowest state of charge)
//! ```
//!
//! Cycles are a band from memory ([`crate::physics::battery::chemistry::CellData::cycles`]), to
//! the usual depth of the chemistry; so the cost is a band. It holds where the cycles are used up
//! before the years are; batteries used two weeks a year age by the calendar.

pub mod alternatives;
pub mod battery_reasons;
pub mod differences;

use crate::advice::changes::cost::{battery_price, hardware};
use crate::advice::trial::{Outcome, Trial, play_on};
use crate::forecast::demand::LoadEnergy;
use crate::forecast::plan::DayAir;
use crate::forecast::weather::WeatherError;
use crate::forecast::{MonthlyClimate, TripPlan};
use crate::model::{Chemistry, Setup};
use crate::physics::battery::chemistry::cell_data;
use crate::units::{AmpHours, Celsius, Kilograms, Money, Volts, WattHours};
use battery_reasons::battery_reasons;
use differences::{Difference, differences};

/// Most setups side by side.
pub const MOST_SETUPS: usize = 4;

/// Price band of a kilowatt-hour through a battery over its life.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LifeCost {
    /// Chemistry.
    pub chemistry: Chemistry,
    /// With the most cycles of the band, a usable kWh.
    pub low: Money,
    /// With the fewest.
    pub high: Money,
}

impl LifeCost {
    /// At the prices of a setup; `None` for a battery whose price is not entered.
    #[must_use]
    pub fn of(setup: &Setup, chemistry: Chemistry) -> Option<Self> {
        let (price, _) = battery_price(setup, chemistry);
        let usable = AmpHours(100.0)
            * Volts(nominal_12v(chemistry))
            * (1.0 - chemistry.usual_soc_min_frac());
        let (fewest, most) = cell_data(chemistry).cycles;
        let per_kwh = |cycles: f64| price / (usable.0 / 1000.0 * cycles);
        (price.0 > 0.0).then(|| Self { chemistry, low: per_kwh(most), high: per_kwh(fewest) })
    }
}

/// Nominal voltage of a 12 V block: 12.8 V for four lithium cells.
fn nominal_12v(chemistry: Chemistry) -> f64 {
    if chemistry.is_lead() { 12.0 } else { 12.8 }
}

/// One setup in the comparison.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// What becomes of its trip.
    pub outcome: Outcome,
    /// Price of panels, battery and dc-dc charger, new.
    pub money: Money,
    /// Their weight; the charger's is left out [kg].
    pub weight: Kilograms,
    /// Usable energy of the battery between full and its limit, warm, with its age.
    pub usable: WattHours,
    /// Weight of the battery for each usable kilowatt-hour [kg]; `None` where nothing is usable.
    pub battery_weight_per_kwh: Option<Kilograms>,
    /// Cost of a usable kilowatt-hour over the battery's life.
    pub life_cost: Option<LifeCost>,
}

/// Comparison in the making.
#[derive(Clone, Debug)]
pub struct CompareJob {
    setups: Vec<(Setup, MonthlyClimate)>,
    differences: Vec<Difference>,
    batteries: Option<Vec<Difference>>,
    trials: Vec<Trial>,
}

impl CompareJob {
    /// Ready to compare; setups past the fourth ([`MOST_SETUPS`]) are left out. Each with the
    /// climate of its own place. Prices are the first setup's for all, so that they compare.
    #[must_use]
    pub fn new(setups: &[(&Setup, &MonthlyClimate)]) -> Self {
        let prices = setups.first().map(|(setup, _)| setup.prices.clone()).unwrap_or_default();
        let setups: Vec<(Setup, MonthlyClimate)> = setups
            .iter()
            .take(MOST_SETUPS)
            .map(|(setup, climate)| {
                (Setup { prices: prices.clone(), ..(*setup).clone() }, **climate)
            })
            .collect();
        let all: Vec<(&Setup, LoadEnergy)> = setups
            .iter()
            .map(|(setup, climate)| {
                let air = DayAir::of_first_whole_day(&setup.trip, climate).by_hour();
                (setup, LoadEnergy::of(setup, &air))
            })
            .collect();
        Self { differences: differences(&all), batteries: None, setups, trials: Vec::new() }
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where a climate or a day's weather is not a number in range.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let next = |index: usize| self.setups.get(index).map(|(setup, climate)| (setup, climate));
        let more = play_on(&mut self.trials, next, units)?;
        if !more {
            let setups = self.setups.iter().zip(&self.trials);
            let played: Vec<(&Setup, &TripPlan)> =
                setups.map(|((setup, _), trial)| (setup, &**trial.plan())).collect();
            self.batteries.get_or_insert_with(|| battery_reasons(&played));
        }
        Ok(more)
    }

    /// Where the setups differ; known from the start.
    #[must_use]
    pub fn differences(&self) -> &[Difference] {
        &self.differences
    }

    /// What makes the batteries fare differently; empty until all is done, and where they are the
    /// same.
    #[must_use]
    pub fn batteries(&self) -> &[Difference] {
        self.batteries.as_deref().unwrap_or_default()
    }

    /// Columns known so far, in the order of the setups.
    #[must_use]
    pub fn columns(&self) -> Vec<Column> {
        self.setups
            .iter()
            .zip(&self.trials)
            .map(|((setup, _), trial)| column(setup, trial))
            .collect()
    }
}

fn column(setup: &Setup, trial: &Trial) -> Column {
    let (money, weight) = hardware(setup);
    let bank = &trial.plan().bank;
    let usable = bank.usable(&bank.conditions(Celsius(25.0)));
    let (_, per_100ah) = battery_price(setup, setup.bank.chemistry);
    let hundreds = setup.bank.rated_capacity().0 / 100.0 * setup.bank.system.series_12v();
    Column {
        outcome: trial.outcome(),
        money,
        weight,
        usable,
        battery_weight_per_kwh: (usable.0 > 0.0)
            .then(|| per_100ah * hundreds / (usable.0 / 1000.0)),
        life_cost: LifeCost::of(setup, setup.bank.chemistry),
    }
}
