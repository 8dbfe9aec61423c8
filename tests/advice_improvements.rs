//! What helps most: ranks against trips played directly, sensible changes only, undo.

use crate::advice_common;

use advice_common::{everything, failing_van, frost, load, summer};
use nightbank::advice::changes::Change;
use nightbank::advice::changes::candidates::candidates;
use nightbank::advice::changes::cost::is_medical;
use nightbank::advice::changes::improvement::{Gain, Improvement};
use nightbank::advice::changes::improvements::{ImprovementsJob, InFullJob, ROUNDS, TOLD};
use nightbank::advice::changes::wish::Advice;
use nightbank::advice::trial::Trial;
use nightbank::forecast::odds::{SEQUENCES, SURE_FRAC};
use nightbank::forecast::plan::TripSun;
use nightbank::forecast::{MonthlyClimate, OddsRun, Outlook, TripPlan};
use nightbank::model::{Chemistry, Setup, SystemVoltage, Usage, Window};
use nightbank::units::{Degrees, Hours, Watts};
use proptest::prelude::*;
use std::sync::Arc;

fn all_helps(setup: &Setup, climate: &MonthlyClimate) -> ImprovementsJob {
    let mut job = ImprovementsJob::new(setup, climate, SURE_FRAC).expect("valid climate");
    while job.advance(200).expect("valid climate") {}
    job
}

/// Mean nights over the weather and nights in average weather, without the advice's own code.
fn directly(setup: &Setup, climate: &MonthlyClimate, sequences: usize) -> (f64, usize, f64) {
    let sun = Arc::new(TripSun::build(setup, climate).expect("valid climate"));
    let plan = Arc::new(TripPlan::build(setup, sun));
    let outlook = Outlook::of(setup, &plan);
    let mut run = OddsRun::nights_only(plan, sequences).expect("valid climate");
    while run.advance(500) {}
    (run.odds().lasting_frac.iter().sum(), outlook.nights, outlook.course.lowest.0)
}

#[test]
fn ranks_agree_with_trips_played_directly() {
    let (setup, climate) = (failing_van(), summer());
    let job = all_helps(&setup, &climate);
    let improvements = job.improvements();
    assert!(improvements.len() >= 10, "{}", improvements.len());
    let (sequences, best) = ROUNDS[2];
    assert_eq!((sequences, best), (SEQUENCES, TOLD));
    let base = directly(&setup, &climate, sequences);
    let mut last = f64::INFINITY;
    for help in &improvements[..best] {
        let (mean, nights, lowest) =
            directly(&help.change.apply(&setup), &climate, help.outcome.sequences);
        assert_eq!(nights, help.outcome.nights, "{:?}", help.change);
        assert!((mean - help.outcome.nights_mean).abs() < 1e-9, "{:?}", help.change);
        assert!((lowest - help.outcome.lowest_frac).abs() < 1e-12, "{:?}", help.change);
        assert_eq!(help.outcome.sequences, sequences);
        assert!(((mean - base.0) - help.gain.nights_mean).abs() < 1e-9);
        let chance = help.chance_gain(7);
        assert!(chance <= last + 0.01 + 1e-9, "{:?} out of order", help.change);
        last = chance;
    }
    // With a larger sample the first is still worth more than the last of them.
    let first = directly(&improvements[0].change.apply(&setup), &climate, 2000).0;
    let last = directly(&improvements[best - 1].change.apply(&setup), &climate, 2000).0;
    assert!(first > last);
}

/// A few weather sequences are enough to choose what is told first: played in full, no change left out
/// brings more chance of the nights than the last of them by eight points, and the first is the best to
/// within three.
#[test]
fn the_first_look_leaves_nothing_good_out() {
    let mut lithium = failing_van();
    lithium.bank.chemistry = Chemistry::LiFePo4;
    lithium.solar[0].peak = Watts(200.0);
    lithium.trip.month = 9;
    let mut many = everything(SystemVoltage::V12, 48);
    many.loads.retain(|load| load.appliance.is_some_and(|number| number < 148));
    many.loads.truncate(40);
    many.bank.capacity_20h.0 = 1200.0;
    many.solar[0].peak = Watts(900.0);
    for setup in [failing_van(), lithium, many] {
        let climate = summer();
        let job = all_helps(&setup, &climate);
        let advice = Advice::of(&job.improvements(), usize::from(setup.trip.nights), SURE_FRAC);
        let told = &advice.improvements[..TOLD.min(advice.improvements.len())];
        let gain_of = |help: &Improvement| help.chance_gain(advice.nights);
        let last = if told.len() < TOLD { 0.0 } else { gain_of(&told[TOLD - 1]) };
        let mut highest = f64::NEG_INFINITY;
        let all = candidates(&setup, job.baseline());
        let mut in_full = InFullJob::new(&setup, &climate, all.clone());
        while in_full.advance(500).expect("valid climate") {}
        let in_full = in_full.improvements();
        assert_eq!(in_full.len(), all.len());
        for help in told {
            // The same figures whichever way it was played.
            let again =
                in_full.iter().find(|other| other.change == help.change).expect("a candidate");
            assert_eq!(
                again.chances(advice.nights),
                help.chances(advice.nights),
                "{:?}",
                help.change
            );
        }
        for help in &in_full {
            let (change, gain) = (help.change, gain_of(help));
            highest = highest.max(gain);
            let is_told = told.iter().any(|help| {
                help.change == change
                    || (change.family().is_some() && help.change.family() == change.family())
            });
            assert!(is_told || gain <= last + 0.08, "{change:?} brings {gain}, the last {last}");
        }
        assert!(gain_of(&told[0]) >= highest - 0.03, "{highest} {:?}", told[0]);
        assert!(highest > 0.1, "nothing helps: {highest}");
    }
}

/// Only the panels are worked out again for a change to them; that is the sun of the changed setup.
#[test]
fn a_change_of_panels_has_the_sun_worked_out_anew() {
    let (setup, climate) = (failing_van(), summer());
    let sun = TripSun::build(&setup, &climate).expect("valid climate");
    let outcome = Trial::with_climate(&setup, &climate, 16).expect("valid").finished().outcome();
    let mut seen = 0;
    for change in candidates(&setup, &outcome).into_iter().filter(Change::touches_sun) {
        let changed = change.apply(&setup);
        assert_eq!((&changed.trip, changed.bank.system), (&setup.trip, setup.bank.system));
        let (short, whole) = (sun.with_panels(&changed), TripSun::build(&changed, &climate));
        let whole = whole.expect("valid climate");
        assert_eq!(short.average, whole.average, "{change:?}");
        for day in 0..whole.days.len() {
            assert_eq!(
                short.table.day_row(day, 0.37),
                whole.table.day_row(day, 0.37),
                "{change:?}"
            );
        }
        seen += 1;
    }
    assert!(seen >= 3, "{seen} changes of panels");
}

#[test]
fn portions_do_not_change_the_answer() {
    let (setup, climate) = (failing_van(), summer());
    let at_once = all_helps(&setup, &climate).improvements();
    let mut job = ImprovementsJob::new(&setup, &climate, SURE_FRAC).expect("valid climate");
    let mut portions = 0;
    let mut progress = 0.0;
    let mut shown = Vec::new();
    let mut screened = 0.0;
    while job.advance(17).expect("valid climate") {
        portions += 1;
        assert!(job.screened_frac() >= screened && job.screened_frac() <= 1.0);
        screened = job.screened_frac();
        assert!(job.progress_frac() >= progress - 1e-12 && job.progress_frac() <= 1.0);
        progress = job.progress_frac();
        shown.push(progress);
    }
    assert!(portions > 20);
    // It says about how far it is: after half of the portions about half of the work is done.
    assert!((0.3..=0.8).contains(&shown[shown.len() / 2]), "{shown:?}");
    assert_eq!((job.progress_frac(), job.screened_frac()), (1.0, 1.0));
    assert_eq!(job.improvements(), at_once);
}

/// A first panel faces the noon sun: south of the equator that is north.
#[test]
fn a_first_panel_faces_the_noon_sun() {
    for (latitude, facing) in [(52.0, 180.0), (-34.0, 0.0)] {
        let mut setup = failing_van();
        setup.solar.clear();
        setup.trip.place.latitude = Degrees(latitude);
        let changed = Change::MoreSolar { peak: Watts(100.0) }.apply(&setup);
        assert_eq!(changed.solar.len(), 1);
        assert_eq!(
            (changed.solar[0].peak, changed.solar[0].facing),
            (Watts(100.0), Degrees(facing))
        );
    }
}

#[test]
fn the_usual_suspects_are_found() {
    let improvements = all_helps(&failing_van(), &summer()).improvements();
    let has = |wanted: fn(&Change) -> bool| improvements.iter().any(|help| wanted(&help.change));
    assert!(has(|c| matches!(c, Change::InverterWhenUsed)));
    assert!(has(|c| matches!(c, Change::SwitchOff { load: 2 })));
    assert!(has(
        |c| matches!(c, Change::ShorterUse { load: 3, minutes_less } if *minutes_less == 120.0)
    ));
    assert!(has(|c| matches!(c, Change::Drive { .. })));
    assert!(has(|c| matches!(c, Change::HookUp { .. })));
    assert!(has(|c| matches!(c, Change::MoreBattery { .. })));
    assert!(has(|c| matches!(c, Change::Lithium { .. })));
    // One day to drive on, one rhythm of hook-up, one way to switch the inverter.
    for family in improvements.iter().filter_map(|help| help.change.family()) {
        let members =
            improvements.iter().filter(|help| help.change.family() == Some(family)).count();
        assert_eq!(members, 1, "{family:?}");
    }
    assert!(improvements.iter().all(|help| help.gain.is_noticeable()));
}

#[test]
fn health_and_safety_are_never_switched_off() {
    for (system, offset) in
        [(SystemVoltage::V12, 30), (SystemVoltage::V24, 64), (SystemVoltage::V12, 100)]
    {
        let setup = everything(system, offset);
        let outcome = Trial::with_climate(&setup, &summer(), 1).expect("valid").outcome();
        let list = candidates(&setup, &outcome);
        let mut medical = 0;
        for load in setup.enabled_loads() {
            let safety = matches!(load.appliance, Some(128 | 129));
            if !is_medical(load) && !safety {
                continue;
            }
            medical += 1;
            for change in list.iter().filter(|change| change.load() == Some(load.id)) {
                assert!(matches!(change, Change::DcInstead { .. }), "{change:?} for {load:?}");
            }
        }
        assert!(medical > 0, "nothing tested");
    }
}

#[test]
fn nothing_that_is_not_there_is_offered() {
    let mut setup = failing_van();
    setup.driving.fitted = false;
    setup.hook_up.fitted = false;
    setup.inverter.fitted = false;
    setup.solar.clear();
    setup.bank.chemistry = Chemistry::LiFePo4;
    setup.loads[3].feed = nightbank::model::Feed::Dc;
    let outcome = Trial::with_climate(&setup, &summer(), 1).expect("valid").outcome();
    let list = candidates(&setup, &outcome);
    let not_there = |change: &Change| {
        matches!(
            change,
            Change::Drive { .. }
                | Change::HookUp { .. }
                | Change::InverterWhenUsed
                | Change::InverterPowerSave { .. }
                | Change::DcInstead { .. }
                | Change::Tilt { .. }
                | Change::Clean { .. }
                | Change::ToMidday { .. }
                | Change::Lithium { .. }
                | Change::HeatedBattery
                | Change::ArriveFull
        )
    };
    assert!(!list.iter().any(not_there), "{list:?}");
    // A wet battery stays out of the living space.
    setup.bank.chemistry = Chemistry::Flooded;
    let list = candidates(&setup, &outcome);
    assert!(!list.iter().any(|change| matches!(change, Change::WarmerPlace { .. })));
}

/// Once a reading has been taken on site, a drive is suggested for the days to come alone.
#[test]
fn no_drive_is_suggested_for_a_day_gone_by() {
    let mut setup = failing_van();
    let drives = |setup: &Setup| -> Vec<usize> {
        let outcome = Trial::with_climate(setup, &summer(), 200).expect("valid").outcome();
        let list = candidates(setup, &outcome);
        let day = |change: &Change| match change {
            Change::Drive { day, .. } => Some(*day),
            _ => None,
        };
        list.iter().filter_map(day).collect()
    };
    assert!(drives(&setup).iter().any(|day| *day <= 3), "{:?}", drives(&setup));
    // Two days after an arrival at 16:00 it is the afternoon of day 2; the battery gets low on day 3 or 4.
    setup.trip.arrival_hour = 16;
    setup.correction.restart = Some((Hours(48.0), 0.72));
    let ahead = drives(&setup);
    assert!(!ahead.is_empty() && ahead.iter().all(|day| *day >= 3), "{ahead:?}");
}

#[test]
fn heating_is_offered_where_the_cold_keeps_lithium_from_charging() {
    let mut setup = failing_van();
    setup.bank.chemistry = Chemistry::LiFePo4;
    setup.bank.soc_min_frac = 0.1;
    setup.bank.capacity_20h.0 = 120.0;
    setup.bank.place = nightbank::model::BatteryPlace::Outside;
    setup.solar[0].peak = Watts(300.0);
    let improvements = all_helps(&setup, &frost()).improvements();
    assert!(improvements.iter().any(|help| matches!(help.change, Change::WarmerPlace { .. })));
    let heated = improvements.iter().find(|help| help.change == Change::HeatedBattery);
    // Weak sun warms the cells without charging them yet; most of the locked hours are gone.
    assert!(heated.is_some_and(|h| h.outcome.cold_locked < Hours(24.0) && h.gain.nights_sure > 5));
}

#[test]
fn a_night_off_takes_a_third_of_what_is_always_on() {
    let mut setup = Setup::default();
    setup.loads.push(load(1, 10.0, Usage::AlwaysOn));
    let need = |setup: &Setup| {
        Trial::with_climate(setup, &summer(), 1).expect("valid").outcome().need_per_day.0
    };
    let off = Change::OffAtNight { load: 1 }.apply(&setup);
    assert!((need(&setup) - 240.0).abs() < 1e-9);
    assert!((need(&off) - 160.0).abs() < 1e-9);
    assert_eq!(off.loads[0].window, Window { from_min: 420, to_min: 1380 });
}

#[test]
fn the_more_is_gained_the_earlier_it_stands() {
    let gain = |nights_mean, hours, lowest_frac| Gain {
        nights_mean,
        until_low: Hours(hours),
        lowest_frac,
        ..Gain::default()
    };
    let mut list =
        [gain(0.0, 2.0, 0.5), gain(1.0, 0.0, 0.0), gain(0.0, 2.0, 0.6), gain(0.0, 9.0, 0.0)];
    list.sort_by(Gain::rank);
    assert_eq!(
        list.map(|g| (g.nights_mean, g.until_low.0, g.lowest_frac)),
        [(1.0, 0.0, 0.0), (0.0, 9.0, 0.0), (0.0, 2.0, 0.6), (0.0, 2.0, 0.5)]
    );
}

#[test]
fn a_drive_after_the_planned_stay_is_kept_for_a_longer_one() {
    let mut setup = failing_van();
    setup.trip.nights = 3;
    let changed = Change::Drive { day: 9, minutes: 60.0 }.apply(&setup);
    assert_eq!(changed.trip.day_plan(9).drive_minutes, Some(60.0));
    assert_eq!(changed.clone().sanitised(), (changed, 0));
    let longest = Change::Drive { day: 60, minutes: 2000.0 }.apply(&setup);
    assert_eq!(longest.clone().sanitised(), (longest, 0));
    assert_eq!(Change::Drive { day: 61, minutes: 60.0 }.apply(&setup), setup);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, ..ProptestConfig::default() })]

    /// A change made keeps every bound, leaves the setup it was made from alone, and a change to
    /// something that is not there changes nothing.
    #[test]
    fn changes_keep_the_bounds(
        offset in 0_usize..147, v24 in any::<bool>(), ah in 1.0..5000.0_f64, peak in 0.0..5000.0_f64,
        nights in 1_u8..=60, start in 0.0..1.0_f64, longitude in -180.0..180.0_f64,
        zone in -720_i16..=840, lithium in any::<bool>(), chance_low in 0_usize..20,
    ) {
        let system = if v24 { SystemVoltage::V24 } else { SystemVoltage::V12 };
        let mut setup = everything(system, offset);
        setup.bank.capacity_20h.0 = ah;
        setup.bank.soc_start_frac = start;
        setup.solar[0].peak = Watts(peak);
        setup.trip.nights = nights;
        setup.trip.place.longitude.0 = longitude;
        setup.trip.utc_offset_min = zone;
        if lithium {
            setup.bank.chemistry = Chemistry::LiFePo4;
        }
        let setup = setup.sanitised().0;
        let mut outcome = Trial::with_climate(&failing_van(), &summer(), 1).expect("valid").outcome();
        outcome.nights_sure = chance_low;
        outcome.cold_locked = Hours(1.0);
        let before = setup.clone();
        for change in candidates(&setup, &outcome) {
            let changed = change.apply(&setup);
            prop_assert_eq!(&setup, &before);
            prop_assert_ne!(&changed, &setup);
            let (kept, count) = changed.clone().sanitised();
            prop_assert!(count == 0 && kept == changed, "{:?}", change);
            if !change.touches_sun() {
                prop_assert_eq!(&changed.solar, &setup.solar);
                prop_assert_eq!(&changed.trip.place, &setup.trip.place);
                prop_assert_eq!(changed.bank.system, setup.bank.system);
            }
        }
        for change in [Change::SwitchOff { load: 9999 }, Change::Clean { array: 99 }] {
            prop_assert_eq!(change.apply(&setup), before.clone());
        }
    }
}

/// What protects or has to run is never cut; gas cooks and heats and nothing else; an adapter is offered
/// only where there is one.
#[test]
fn each_appliance_is_offered_what_makes_sense_for_it() {
    use nightbank::advice::changes::candidates::candidates;
    use nightbank::model::catalogue::appliance;
    let offered = |number: u16| {
        let mut setup = Setup::default();
        setup.inverter.fitted = true;
        let load = appliance(number).expect("listed").to_load(1, SystemVoltage::V12);
        setup.loads.push(load);
        let sky = nightbank::forecast::MonthlyClimate {
            clearness_frac: [0.4; 12],
            air: [nightbank::units::Celsius(18.0); 12],
            half_range_k: [3.0; 12],
            error_frac: 0.0,
        };
        let mut trial =
            nightbank::advice::trial::Trial::with_climate(&setup, &sky, 20).expect("climate");
        let mut units = 10_000;
        while trial.advance(&mut units) {}
        let all = candidates(&setup, &trial.outcome());
        all.into_iter().filter(|change| change.load() == Some(1)).collect::<Vec<_>>()
    };
    // Gas alarm, burglar alarm, electric fence, held relay, heater panel, frost valve, tank heater,
    // baby monitor.
    for number in [128, 129, 115, 146, 139, 17, 32, 81] {
        assert_eq!(offered(number), [], "{number}");
    }
    // Games console, wheelchair, spin dryer, straightener: there is no adapter.
    for number in [65, 80, 104, 101] {
        let dc = offered(number).iter().any(|change| matches!(change, Change::DcInstead { .. }));
        assert!(!dc, "{number}");
    }
    let gas =
        |number| offered(number).iter().any(|change| matches!(change, Change::GasInstead { .. }));
    assert!(gas(83) && gas(85) && gas(20));
    assert!(!gas(100) && !gas(27));
    assert!(offered(100).contains(&Change::DoWithout { load: 1 }));
}
