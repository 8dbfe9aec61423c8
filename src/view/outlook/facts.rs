//! Inputs of the answer (setup, plan, outlook, odds) and figures several views derive from them.

use crate::forecast::outlook::LoadShare;
use crate::forecast::{Odds, Outlook, TripPlan};
use crate::model::Setup;
use crate::model::climate::Climate;
use crate::view::chart;

/// Drains listed.
const DRAINS: usize = 8;

/// Setup, plan and forecast of the answer on screen.
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
