//! Inputs of the answer (setup, plan, outlook, odds) and figures several views derive from them.

use crate::forecast::odds::reaches;
use crate::forecast::outlook::LoadShare;
use crate::forecast::{Odds, Outlook, TripPlan};
use crate::model::Setup;
use crate::model::climate::Climate;
use crate::view::chart;
use crate::view::today::since_arrival_now;

/// Drains listed.
const DRAINS: usize = 8;

/// Setup, plan and forecast of the answer on screen.
#[derive(Clone, Copy)]
pub struct Facts<'a> {
    /// Setup.
    pub setup: &'a Setup,
    /// Its plan.
    pub plan: &'a TripPlan,
    /// The average course.
    pub outlook: &'a Outlook,
    /// The odds, once there are some.
    pub odds: Option<&'a Odds>,
    /// Climate of the place.
    pub climate: &'a Climate,
    /// Nights that are over; 0 unless today lies within the stay.
    pub nights_past: usize,
    /// Told from arrival, wherever the stay has come to.
    pub from_arrival: bool,
}

impl Facts<'_> {
    /// Chance, 0..1, that the battery lasts through night `night` (from 1), as it has through the nights that
    /// are over; `None` until the odds are there.
    #[must_use]
    pub fn chance_of(&self, night: usize) -> Option<f64> {
        let odds = self.odds?;
        let so_far = odds.chance_of(self.nights_past);
        // Nothing of the kind was played: then only what is ahead is known to be bad.
        Some(if so_far > 0.0 { odds.chance_of(night) / so_far } else { 0.0 })
    }

    /// Nights from arrival that last with at least the chance `chance_frac`; `None` until the odds are there.
    #[must_use]
    pub fn nights_at(&self, chance_frac: f64) -> Option<usize> {
        let horizon = self.odds?.lasting_frac.len();
        let ahead = (self.nights_past + 1..=horizon)
            .take_while(|night| self.chance_of(*night).is_some_and(|c| reaches(c, chance_frac)));
        Some(self.nights_past + ahead.count())
    }
}

/// Nights of the stay that are over now; 0 before the stay and after it.
#[must_use]
pub fn nights_past(setup: &Setup, plan: &TripPlan) -> usize {
    let Some(since) = since_arrival_now(&setup.trip) else { return 0 };
    let past = plan.mornings.iter().filter(|morning| **morning as f64 <= since.0).count();
    if past < plan.nights_wanted { past } else { 0 }
}

/// Day and time when `hours` hours of the forecast are over, such as "Tue 16 Jun 04:00"; 0 is when it
/// begins. The charge of an hour is that at its end, so an hour ends in low charge at `hour + 1`.
#[must_use]
pub fn moment(facts: &Facts<'_>, hours: usize) -> String {
    let (Some(first_day), Some(first)) = (facts.plan.sun.dates.first(), facts.plan.hours.first())
    else {
        return String::new();
    };
    chart::moment(*first_day, first.hour_of_day as f64, hours as f64)
}

/// Length of the stay [days], never nothing.
pub(super) fn days_of(facts: &Facts<'_>) -> f64 {
    (facts.plan.stay_hours() as f64 / 24.0).max(1.0 / 24.0)
}

/// Whoever takes most, as many as are shown, largest first.
pub(super) fn largest_shares<'a>(facts: &Facts<'a>) -> impl Iterator<Item = &'a LoadShare> {
    facts.outlook.shares.iter().filter(|share| share.per_day.0 > 0.0).take(DRAINS)
}
