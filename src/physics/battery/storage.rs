//! The van parked and unused: how long until the minimum, and whether it may freeze.
//!
//! Day by day, with everything drawing the constant current `I` and a self-discharge `L` that follows the
//! temperature (both small): `s' = s - (I + L) 24 h / C`, conservation of charge. A slow drain goes on to
//! flat: cold puts the lowest part of the charge out of reach of a fast draw, not of a slow one. As it
//! empties its electrolyte freezes at ever milder temperatures: it freezes on the first day whose coldest
//! hour is at or below the freezing point of the charge that is left. Self-discharge and freezing points,
//! with their sources, are in [`super::temperature`].
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `s` | state of charge | - |
//! | `C` | capacity with age | Ah |
//! | `I`, `L` | draw of what stays on, self-discharge | A |

use super::bank::BankPhysics;
use super::flow::Conditions;
use super::temperature::{lead_freezes_at, lead_freezes_below};
use crate::units::{Amps, Celsius, HOURS_PER_DAY, Hours, Watts};

/// Days that are looked at.
pub const LOOKS_AHEAD_DAYS: usize = 730;

/// Temperature of a parked battery on one day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ParkedDay {
    /// Mean.
    pub mean: Celsius,
    /// Coldest hour.
    pub coldest: Celsius,
}

impl ParkedDay {
    /// The same all day.
    #[must_use]
    pub fn steady(at: Celsius) -> Self {
        Self { mean: at, coldest: at }
    }
}

/// How a parked battery fares.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parked {
    /// Until the lowest state of charge allowed; infinite beyond [`LOOKS_AHEAD_DAYS`].
    pub until_low: Hours,
    /// Until it is flat, in the same way.
    pub until_empty: Hours,
    /// Draw and self-discharge together, on the first day.
    pub drain: Amps,
    /// Lead-acid only: the electrolyte freezes at this temperature as it is charged at first.
    pub freezes_at_first: Option<Celsius>,
    /// Lead-acid only: the electrolyte freezes at this temperature when the minimum is reached.
    pub freezes_at_low: Option<Celsius>,
    /// Lead-acid only: the electrolyte freezes at this temperature once it is flat.
    pub freezes_at_flat: Option<Celsius>,
    /// Lead-acid only: until it freezes as it empties; `None` where even flat it does not.
    pub freezes_after: Option<Hours>,
}

/// Draw and self-discharge together of a battery parked at a temperature.
#[must_use]
pub fn drain(bank: &BankPhysics, soc_frac: f64, standing: Watts, at: Celsius) -> Amps {
    let (_, conditions, draw) = drawn(bank, soc_frac, standing, at);
    draw + conditions.self_discharge
}

/// A bank that `standing` draws on all the time, its conditions, and what is drawn at the mean voltage
/// between a state of charge and the lowest.
fn drawn(
    bank: &BankPhysics,
    soc_frac: f64,
    standing: Watts,
    at: Celsius,
) -> (BankPhysics, Conditions, Amps) {
    let standing = standing + bank.management();
    let bank = bank.clone().drawn_at(standing);
    let conditions = bank.conditions(at);
    let draw = standing / bank.curve.volts(0.5 * (soc_frac + conditions.low_frac));
    (bank, conditions, draw)
}

/// Parked from the state of charge `soc_frac` (0..1) with `standing` drawing all the time and nothing
/// charging; `temperature` by day, 0 the first.
#[must_use]
pub fn parked(
    bank: &BankPhysics,
    soc_frac: f64,
    standing: Watts,
    temperature: impl Fn(usize) -> ParkedDay,
) -> Parked {
    let (bank, first, draw) = drawn(bank, soc_frac, standing, temperature(0).mean);
    let is_lead = bank.chemistry.is_lead();
    let freezes_at = |soc_frac| is_lead.then(|| lead_freezes_at(soc_frac));
    let mut stay = Parked {
        until_low: Hours(f64::INFINITY),
        until_empty: Hours(f64::INFINITY),
        drain: draw + first.self_discharge,
        freezes_at_first: freezes_at(soc_frac),
        freezes_at_low: freezes_at(first.low_frac),
        freezes_at_flat: freezes_at(0.0),
        freezes_after: None,
    };
    let mut soc_frac = soc_frac;
    for day in 0..LOOKS_AHEAD_DAYS {
        let air = temperature(day);
        let conditions = bank.conditions(air.mean);
        let drained_frac =
            (draw + conditions.self_discharge) * Hours(HOURS_PER_DAY) / bank.capacity;
        let reaches = |floor: f64| {
            let of_day = if soc_frac <= floor {
                Some(0.0)
            } else {
                (soc_frac - drained_frac <= floor).then(|| (soc_frac - floor) / drained_frac)
            };
            of_day.map(|of_day| Hours((day as f64 + of_day) * HOURS_PER_DAY))
        };
        let earlier = |known: Hours, floor| reaches(floor).map_or(known, |at| known.min(at));
        stay.until_low = earlier(stay.until_low, conditions.low_frac);
        stay.until_empty = earlier(stay.until_empty, 0.0);
        if is_lead && stay.freezes_after.is_none() {
            stay.freezes_after = lead_freezes_below(air.coldest).and_then(reaches);
        }
        soc_frac = (soc_frac - drained_frac).max(0.0);
    }
    stay
}
