//! What everybody asks: a second battery, lithium, a second panel, an hour's drive every other day. Each is
//! the setup as it is with that one thing changed, played in the same weather.

use crate::advice::changes::Change;
use crate::advice::changes::cost::{Cost, Hazard};
use crate::advice::trial::{self, Outcome, Trial};
use crate::forecast::MonthlyClimate;
use crate::forecast::weather::WeatherError;
use crate::model::{EveryNth, Setup};
use crate::units::{Amps, Hours, Watts};

/// Panels of which a second one is as large as the first; another size is what the trade sells most (common
/// practice, no source) [W].
const USUAL_PANEL: Watts = Watts(100.0);
/// An hour's drive every other day.
const DRIVE_EVERY: u8 = 2;
/// The same [min].
const DRIVE_MINUTES: f64 = 60.0;

/// What is changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Choice {
    /// Nothing.
    AsItIs,
    /// As much battery again, of the same kind.
    SecondBattery,
    /// LiFePO4 of the same capacity in place of lead.
    Lithium,
    /// As much panel again as the first one, or 100 W where there is none.
    SecondPanel,
    /// An hour's drive every other day; with a dc-dc charger where nothing charges on the move yet.
    Drive,
}

/// One of the things asked about.
#[derive(Clone, Debug, PartialEq)]
pub struct Alternative {
    /// What is changed.
    pub choice: Choice,
    /// The setup with it.
    pub setup: Setup,
    /// What it asks for; `None` for the setup as it is.
    pub cost: Option<Cost>,
    /// What to beware of.
    pub hazards: &'static [Hazard],
}

/// The setup as it is, and each thing asked about that it does not have yet.
#[must_use]
pub fn alternatives(setup: &Setup) -> Vec<Alternative> {
    let of_change = |choice, change: Change| Alternative {
        choice,
        setup: change.apply(setup),
        cost: Some(change.cost(setup)),
        hazards: change.hazards(setup),
    };
    let as_it_is =
        Alternative { choice: Choice::AsItIs, setup: setup.clone(), cost: None, hazards: &[] };
    let mut list = vec![as_it_is];
    let capacity = setup.bank.rated_capacity();
    list.push(of_change(Choice::SecondBattery, Change::MoreBattery { capacity }));
    if setup.bank.chemistry.is_lead() {
        list.push(of_change(Choice::Lithium, Change::Lithium { capacity }));
    }
    let peak = setup.solar.first().map_or(USUAL_PANEL, |array| array.peak);
    let peak = if peak.0 > 0.0 { peak } else { USUAL_PANEL };
    list.push(of_change(Choice::SecondPanel, Change::MoreSolar { peak }));
    list.extend(drive(setup, of_change));
    list
}

fn drive(setup: &Setup, of_change: impl Fn(Choice, Change) -> Alternative) -> Option<Alternative> {
    let driving = &setup.driving;
    if !driving.fitted {
        let charger = Change::DcDcCharger { amps: Amps(30.0), drive_every: Some(DRIVE_EVERY) };
        return Some(of_change(Choice::Drive, charger));
    }
    let planned = (1..=DRIVE_EVERY).contains(&driving.every.0) && driving.minutes >= DRIVE_MINUTES;
    (!planned).then(|| {
        let mut changed = setup.clone();
        changed.driving.every = EveryNth(DRIVE_EVERY);
        changed.driving.minutes = changed.driving.minutes.max(DRIVE_MINUTES);
        let days = usize::from(setup.trip.nights / DRIVE_EVERY) as f64;
        let time = Hours::from_minutes(changed.driving.minutes) * days;
        Alternative {
            choice: Choice::Drive,
            setup: changed,
            cost: Some(Cost::Driving { time }),
            hazards: &[],
        }
    })
}

/// The alternatives, played in portions, as often as the answer itself.
#[derive(Clone, Debug)]
pub struct AlternativesJob {
    climate: MonthlyClimate,
    list: Vec<Alternative>,
    trials: Vec<Trial>,
}

impl AlternativesJob {
    /// Ready to play.
    #[must_use]
    pub fn new(setup: &Setup, climate: &MonthlyClimate) -> Self {
        Self { climate: *climate, list: alternatives(setup), trials: Vec::new() }
    }

    /// Works on for about `units` (a played fortnight each); false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where the climate or a day's weather is not a number in range.
    pub fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        let next = |index: usize| self.list.get(index).map(|next| (&next.setup, &self.climate));
        trial::play_on(&mut self.trials, next, units)
    }

    /// What is played, with what becomes of it as far as that is known.
    #[must_use]
    pub fn found(&self) -> Vec<(Alternative, Option<Outcome>)> {
        let outcome = |index: usize| {
            self.trials.get(index).filter(|trial| trial.is_finished()).map(Trial::outcome)
        };
        self.list.iter().cloned().enumerate().map(|(at, it)| (it, outcome(at))).collect()
    }
}
