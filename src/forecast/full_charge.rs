//! How often a lead battery gets full: one that stays partly charged ages fast (sulphation).
//!
//! Full is what the stages of a charge call float ([`crate::physics::battery::stages`]): the current at the
//! charge voltage has fallen to the end of charge. Average weather would say "always" or "never", so that
//! the days are counted over sequences of weather, with usual use and usual air. That lead wants to get
//! full about once a week is common practice, no source.

use super::course::{advance_hour, sun_row};
use super::odds::SEED;
use super::plan::TripPlan;
use super::weather::{Sequence, WeatherError};
use crate::physics::battery::{BankState, ChargeStage};
use crate::units::Amps;

/// About so many days are played, in one sequence at least.
const DAYS_PLAYED: usize = 240;
/// Sequences that are played at most.
const MOST_SEQUENCES: usize = 32;
/// Days of a week.
const WEEK: f64 = 7.0;

/// On how many days a week a lead battery gets full, 0..7, over the whole days of the stay. `None` for
/// lithium, and for a stay without a whole day.
///
/// # Errors
/// [`WeatherError`] as of [`super::plan::TripSun::sequences`].
pub fn days_full_a_week(plan: &TripPlan) -> Result<Option<f64>, WeatherError> {
    // The day of arrival and the morning of leaving are no whole days.
    let whole_days = plan.nights_wanted.saturating_sub(1);
    if !plan.bank.chemistry.is_lead() || whole_days == 0 {
        return Ok(None);
    }
    let mut weather = plan.sun.sequences(SEED)?;
    // A power of two, so that they lie evenly.
    let sequences = 1_usize << (DAYS_PLAYED / whole_days).clamp(1, MOST_SEQUENCES).ilog2();
    let mut sequence = Sequence::default();
    let mut full = 0;
    for _ in 0..sequences {
        weather.fill(&mut sequence);
        full += days_full(plan, &sequence.k_frac, whole_days);
    }
    Ok(Some(WEEK * full as f64 / (whole_days * sequences) as f64))
}

/// Days, of the whole ones, on which the battery is full at the end of some hour; `k_frac`: daily clearness.
fn days_full(plan: &TripPlan, k_frac: &[f64], whole_days: usize) -> usize {
    let mut state = BankState::rested(plan.start_soc_frac);
    let mut full = vec![false; whole_days + 1];
    let mut index = 0;
    for (day, hours) in plan.hours.chunk_by(|a, b| a.day == b.day).enumerate().take(full.len()) {
        let row = sun_row(plan, day, k_frac.get(day).copied().unwrap_or(0.0));
        for hour in hours {
            if let Some(soc_frac) = plan.restarts_at(index) {
                state = BankState::rested(soc_frac);
            }
            index += 1;
            advance_hour(plan, &mut state, &hour.into(), row[hour.hour_of_day]);
            let stage = plan.bank.stage(&state, &hour.conditions, Amps::ZERO);
            full[day] |= stage == Some(ChargeStage::Float);
        }
    }
    full.iter().skip(1).filter(|full| **full).count()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forecast::plan::{MonthlyClimate, TripSun};
    use crate::model::{Chemistry, Draw, EveryNth, Load, Setup, SolarArray, Usage};
    use crate::units::{Celsius, Watts};
    use std::sync::Arc;

    /// 100 Ah that draws all day, with a panel.
    fn camp(chemistry: Chemistry, drawn: Watts, panel: Watts) -> Setup {
        let mut setup = Setup::default();
        setup.bank.chemistry = chemistry;
        setup.loads.push(Load {
            draw: Draw::Power { watts: drawn },
            usage: Usage::AlwaysOn,
            ..Load::default()
        });
        setup.solar.push(SolarArray { peak: panel, ..SolarArray::default() });
        (setup.trip.month, setup.trip.day, setup.trip.nights) = (6, 10, 15);
        setup
    }

    fn a_week(setup: &Setup) -> Option<f64> {
        let climate = MonthlyClimate {
            clearness_frac: [0.45; 12],
            air: [Celsius(15.0); 12],
            half_range_k: [4.0; 12],
            error_frac: 0.0,
        };
        let sun = TripSun::build(setup, &climate).expect("valid climate");
        days_full_a_week(&TripPlan::build(setup, Arc::new(sun))).expect("valid weather")
    }

    #[test]
    fn it_rises_with_the_panel_from_never_to_every_day() {
        let by_panel: Vec<f64> = [0.0, 60.0, 120.0, 240.0, 480.0, 960.0]
            .into_iter()
            .filter_map(|panel| a_week(&camp(Chemistry::Agm, Watts(15.0), Watts(panel))))
            .collect();
        assert_eq!(by_panel.len(), 6);
        assert!(by_panel.is_sorted(), "{by_panel:?}");
        assert_eq!(by_panel[0], 0.0, "{by_panel:?}");
        assert!(by_panel[3] > 1.0 && by_panel[3] < 6.8, "{by_panel:?}");
        assert!(by_panel[5] > 6.8, "{by_panel:?}");
    }

    /// Plugged in from 18:00 to 9:00 on the fifth and tenth day, some 80 Ah down: 20 A need four hours and a
    /// taper of five, so that it is full at three in the morning after. Two of 14 whole days: one a week.
    #[test]
    fn hook_up_fills_it_on_the_days_it_is_there() {
        let mut setup = camp(Chemistry::Agm, Watts(8.0), Watts(1.0));
        setup.hook_up.fitted = true;
        setup.hook_up.every = EveryNth(5);
        assert_eq!(a_week(&setup), Some(1.0));
    }

    #[test]
    fn nothing_is_told_of_lithium_or_a_single_night() {
        assert_eq!(a_week(&camp(Chemistry::LiFePo4, Watts(15.0), Watts(200.0))), None);
        let mut one_night = camp(Chemistry::Agm, Watts(15.0), Watts(200.0));
        one_night.trip.nights = 1;
        assert_eq!(a_week(&one_night), None);
    }
}
