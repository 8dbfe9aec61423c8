//! The stages of a charge against hand calculation, and what a charger's session reaches.

use crate::trip_common;

use nightbank::forecast::{Charger, Outlook, charge_session};
use nightbank::model::{
    Bank, Chemistry, Draw, Driving, DrivingCharger, EveryNth, HookUp, Load, OtherSource,
    OtherSourceKind, Setup, SolarArray, SystemVoltage, Usage, Window,
};
use nightbank::physics::battery::stages::STAGE_STEP;
use nightbank::physics::battery::{
    BankPhysics, BankState, ChargeStage, ChargeStages, cell_data, charge_stages,
};
use nightbank::units::{AmpHours, Amps, Celsius, Hours, Metres, SquareMillimetres, Volts, Watts};
use proptest::prelude::*;
use trip_common::{on_the_sockets, outlook, plan, steady};

const WARM: Celsius = Celsius(25.0);

fn bank(chemistry: Chemistry) -> Bank {
    Bank { chemistry, soc_min_frac: chemistry.usual_soc_min_frac(), ..Bank::default() }
}

fn stages(bank: &Bank, at: Celsius, from: f64, amps: f64, hours: f64) -> ChargeStages {
    charge_stages(bank, at, from, Amps(amps), Hours(hours)).expect("something goes in")
}

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "got {got}, want {want} +- {tolerance}");
}

/// By hand, 100 Ah AGM from one half with 20 A: bulk until 20 Ah are missing (tau = 1 h), 30 Ah at
/// 98.5 % efficiency: 30 / (20 x 0.985) = 1.52 h. Then I = Q_rem / tau falls to 0.5 A; with the
/// efficiency of each part of the table
/// ln(20/10)/0.9575 + ln(10/5)/0.905 + ln(5/0.5)/0.84 = 0.72 + 0.77 + 2.74 = 4.23 h.
#[test]
fn twenty_amperes_into_a_hundred_ampere_hours_of_agm() {
    let charge = stages(&bank(Chemistry::Agm), WARM, 0.5, 20.0, 2.0);
    near(charge.bulk.0, 1.52, 0.03);
    near(charge.absorption_from_frac, 0.80, 0.005);
    near(charge.full.0 - charge.bulk.0, 4.23, 0.1);
    // In 2 h: 29 min of absorption, 20 e^(-0.48 x 0.97) = 12.6 Ah still missing.
    assert_eq!(charge.reached, ChargeStage::Absorption);
    near(charge.reached_frac, 0.874, 0.006);
    // Rule (from memory): the last 15 to 20 % of lead-acid takes 4 to 6 h.
    assert!((4.0..=6.0).contains(&(charge.full.0 - charge.bulk.0)));
    assert_eq!(stages(&bank(Chemistry::Agm), WARM, 0.5, 20.0, 1.0).reached, ChargeStage::Bulk);
    assert_eq!(stages(&bank(Chemistry::Agm), WARM, 0.5, 20.0, 12.0).reached, ChargeStage::Float);
}

/// The same without losses has a closed form, `(Q_rem - I tau) / I + tau ln(I / I_end)`: what is
/// played takes longer than that, by the charge efficiency and no more.
#[test]
fn the_closed_form_without_losses_lies_below() {
    for chemistry in Chemistry::ALL {
        let cell = cell_data(chemistry);
        let (tau, end) = (cell.taper.0, cell.end_of_charge_c * 100.0);
        let table = cell.charge_frac;
        let worst = table[20];
        for amps in [5.0, 10.0, 20.0] {
            let charge = stages(&bank(chemistry), WARM, 0.3, amps, 1.0);
            let bulk = (70.0 - amps * tau) / amps;
            let absorption = if amps > end { tau * (amps / end).ln() } else { 0.0 };
            let slack = STAGE_STEP.0 * 2.0;
            assert!(charge.bulk.0 >= bulk - slack, "{chemistry:?} {amps}: {charge:?}");
            let after = charge.full.0 - charge.bulk.0;
            assert!(after >= absorption - slack, "{chemistry:?} {amps}: {charge:?}");
            assert!(after <= absorption / worst + slack, "{chemistry:?} {amps}: {charge:?}");
        }
    }
}

/// LiFePO4 takes its charger's full current nearly to the end (common practice, no source): from
/// a tenth with 20 A 87 Ah in bulk, 4.4 h, and minutes after that.
#[test]
fn lithium_is_nearly_all_bulk() {
    let charge = stages(&bank(Chemistry::LiFePo4), WARM, 0.1, 20.0, 4.0);
    near(charge.bulk.0, 87.0 / (20.0 * 0.995), 0.05);
    assert!(charge.bulk / charge.full > 0.9, "{charge:?}");
    assert!(charge.absorption_from_frac > 0.96, "{charge:?}");
    let agm = stages(&bank(Chemistry::Agm), WARM, 0.5, 20.0, 4.0);
    assert!(agm.bulk / agm.full < 0.35, "{agm:?}");
}

#[test]
fn a_full_battery_floats_at_once_and_frozen_lithium_takes_nothing() {
    let charge = stages(&bank(Chemistry::Gel), WARM, 1.0, 10.0, 1.0);
    assert_eq!((charge.full, charge.reached), (Hours(0.0), ChargeStage::Float));
    let lithium = bank(Chemistry::LiFePo4);
    assert_eq!(charge_stages(&lithium, Celsius(-1.0), 0.5, Amps(20.0), Hours(5.0)), None);
    let heated = Bank { heated: true, ..lithium.clone() };
    let (cold, warm) =
        (stages(&heated, Celsius(-1.0), 0.5, 20.0, 5.0), stages(&heated, WARM, 0.5, 20.0, 5.0));
    assert!(cold.full > warm.full, "the heating takes its part of the charger");
    // 13 W hold the cells 22 K above their surroundings (0.6 W a kelvin): enough at -1, not at -30.
    assert!(stages(&heated, Celsius(-1.0), 0.5, 1.0, 20.0).reached_frac > 0.55);
    let frozen = stages(&heated, Celsius(-30.0), 0.5, 1.0, 20.0);
    assert!(frozen.reached_frac <= 0.5 && !frozen.full.is_finite(), "{frozen:?}");
    assert_eq!(charge_stages(&heated, WARM, 0.5, Amps(-3.0), Hours(5.0)), None);
}

/// What the heating takes is not charged. By hand, 100 Ah at -20 with 3 A (40 W): 25 W warm 3.1 Wh/K
/// against 0.6 W/K to freezing in 3.1 ln(25 / (25 - 12)) / 0.6 = 3.4 h and to 5 above in 1.3 h more, 15 W hold
/// that. Charged: 1.3 h with 15 W and 15.3 h with 25 W, 400 Wh of 1,320 Wh.
#[test]
fn a_small_charger_shares_between_heating_and_charge() {
    let heated = Bank { heated: true, ..bank(Chemistry::LiFePo4) };
    let charge = stages(&heated, Celsius(-20.0), 0.2, 3.0, 20.0);
    near(charge.reached_frac, 0.2 + 400.0 / 1320.0, 0.02);
}

/// Cold slows absorption, not bulk: the time constant doubles every 24 K (from memory).
#[test]
fn cold_lead_absorbs_slowly() {
    let agm = bank(Chemistry::Agm);
    let (warm, cold) =
        (stages(&agm, WARM, 0.5, 10.0, 1.0), stages(&agm, Celsius(5.0), 0.5, 10.0, 1.0));
    let absorption = |charge: &ChargeStages| charge.full.0 - charge.bulk.0;
    assert!(absorption(&cold) > 1.6 * absorption(&warm), "{warm:?} {cold:?}");
    assert!(cold.absorption_from_frac < warm.absorption_from_frac);
}

/// A session counts what runs meanwhile, and on hook-up not what the hook-up feeds.
#[test]
fn a_session_of_the_mains_charger() {
    let mut setup = steady(25.0);
    setup.inverter.fitted = true;
    setup.loads.push(on_the_sockets(Watts(60.0), Usage::AlwaysOn));
    setup.hook_up = HookUp { fitted: true, hours: Hours(15.0), ..HookUp::default() };
    let session = |setup: &Setup| {
        charge_session(setup, &plan(setup, 25.0), Charger::HookUp).expect("a session")
    };
    let through = session(&setup);
    // 25 W at 12.6 V.
    near(through.drawn.0, 2.0, 0.1);
    near(through.temperature.0, 25.0, 1e-9);
    near(through.from_frac, 0.5, 1e-9);
    let stages = through.stages.expect("charges");
    let direct = charge_stages(&setup.bank, WARM, 0.5, Amps(20.0) - through.drawn, Hours(15.0));
    assert_eq!(Some(stages), direct);
    assert_eq!(stages.reached, ChargeStage::Float);
    setup.hook_up.pass_through = false;
    let behind = session(&setup);
    assert!(behind.drawn.0 > 6.5, "{behind:?}");
    assert!(behind.stages.expect("charges").full > stages.full);
    setup.hook_up.amps = Amps(5.0);
    assert_eq!(session(&setup).stages, None, "the appliances take all of it");
}

/// What runs after midnight is part of a session that began in the evening: a light of 24 W from
/// midnight to six takes 144 Wh of fifteen hours, 9.6 W of them, 0.76 A at 12.6 V.
#[test]
fn a_session_goes_on_past_midnight() {
    let mut setup = steady(0.0);
    setup.loads[0] = Load {
        id: 1,
        draw: Draw::Power { watts: Watts(24.0) },
        usage: Usage::Daily { minutes: 360.0 },
        window: Window { from_min: 0, to_min: 360 },
        ..Load::default()
    };
    setup.hook_up =
        HookUp { fitted: true, from_min: 18 * 60, hours: Hours(15.0), ..HookUp::default() };
    let session = charge_session(&setup, &plan(&setup, 25.0), Charger::HookUp).expect("a session");
    near(session.drawn.0, 9.6 / 12.6, 0.02);
    // What runs from ten to four in the day has no part in it.
    setup.loads[0].window = Window { from_min: 600, to_min: 960 };
    let session = charge_session(&setup, &plan(&setup, 25.0), Charger::HookUp).expect("a session");
    near(session.drawn.0, 0.0, 0.02);
}

/// The session foretells what the played trip does.
#[test]
fn a_session_agrees_with_the_played_trip() {
    for (chemistry, air) in [(Chemistry::Agm, 20.0), (Chemistry::LiFePo4, 8.0)] {
        let mut setup = steady(10.0);
        setup.bank.chemistry = chemistry;
        setup.bank.soc_min_frac = 0.5;
        setup.trip.arrival_hour = 9;
        setup.hook_up = HookUp {
            fitted: true,
            amps: Amps(10.0),
            every: EveryNth(2),
            from_min: 10 * 60,
            hours: Hours(4.0),
            ..HookUp::default()
        };
        let plan = plan(&setup, air);
        let session = charge_session(&setup, &plan, Charger::HookUp).expect("a session");
        let stages = session.stages.expect("charges");
        // The second day at 10:00, having stood at the session's start of charge before.
        let mut trial = setup.clone();
        trial.correction.restart = Some((Hours(25.0), session.from_frac));
        let played = outlook(&trial, air);
        let last = &played.course.hours[28];
        assert_eq!((last.day, last.hour_of_day), (1, 13));
        near(last.soc_frac, stages.reached_frac, 0.004);
        assert_eq!(last.stage, Some(stages.reached));
        assert_eq!(played.course.hours[30].stage, None, "nothing charges in the afternoon");
    }
}

/// A day's course goes through the stages in their order, and ends in float.
#[test]
fn the_course_tells_its_stages() {
    let mut setup = steady(3.0);
    setup.bank.soc_start_frac = 0.5;
    setup.trip.arrival_hour = 8;
    setup.hook_up = HookUp {
        fitted: true,
        every: EveryNth(1),
        from_min: 8 * 60,
        hours: Hours(24.0),
        ..HookUp::default()
    };
    let outlook: Outlook = outlook(&setup, 25.0);
    let stages: Vec<ChargeStage> =
        outlook.course.hours.iter().take(16).map(|hour| hour.stage.expect("charging")).collect();
    assert!(stages.is_sorted(), "{stages:?}");
    assert_eq!((stages[0], stages[15]), (ChargeStage::Bulk, ChargeStage::Float));
    assert!(stages.contains(&ChargeStage::Absorption));
}

#[test]
fn only_chargers_with_stages_have_a_session() {
    let mut setup = steady(5.0);
    let of = |setup: &Setup, charger| charge_session(setup, &plan(setup, 20.0), charger);
    assert_eq!(of(&setup, Charger::HookUp), None);
    assert_eq!(of(&setup, Charger::Driving), None);
    assert_eq!(of(&setup, Charger::Other(0)), None);
    setup.driving =
        Driving { fitted: true, every: EveryNth(1), minutes: 20.0, ..Driving::default() };
    let drive = of(&setup, Charger::Driving).expect("a dc-dc charger").stages.expect("charges");
    // Twenty minutes with 30 A less 0.4 A for 5 W, from where the limit lies at 20 degrees Celsius
    // (factor 1.056, half of its loss at so slow a draw): 9.9 of 100 Ah put back at 98.5 %, still in bulk.
    assert_eq!(drive.reached, ChargeStage::Bulk);
    near(drive.reached_frac, 1.0 - 0.25 * (1.0 + 1.0 / 1.056) + 0.0987 * 0.985, 0.005);
    setup.driving.charger = DrivingCharger::Relay {
        alternator: Volts(14.2),
        cable_length: Metres(6.0),
        cable_size: SquareMillimetres(6.0),
        limit: Amps(30.0),
        smart_alternator: false,
    };
    assert_eq!(of(&setup, Charger::Driving), None);
    setup.other.push(OtherSource::default());
    assert!(of(&setup, Charger::Other(0)).is_some());
    setup.other[0].kind = OtherSourceKind::Wind;
    assert_eq!(of(&setup, Charger::Other(0)), None);
    setup.other[0] = OtherSource { hours: Hours(0.0), ..OtherSource::default() };
    assert_eq!(of(&setup, Charger::Other(0)), None);
}

/// A smart alternator charges at its full voltage for half the drive (common practice, no source).
#[test]
fn a_smart_alternator_brings_half() {
    let driven = |smart_alternator| {
        let mut setup = steady(2.0);
        setup.bank.soc_start_frac = 0.55;
        setup.trip.nights = 1;
        setup.trip.arrival_hour = 9;
        setup.driving = Driving {
            fitted: true,
            every: EveryNth(1),
            charger: DrivingCharger::Relay {
                alternator: Volts(14.2),
                cable_length: Metres(6.0),
                cable_size: SquareMillimetres(10.0),
                limit: Amps(30.0),
                smart_alternator,
            },
            ..Driving::default()
        };
        outlook(&setup, 20.0).course.hours[1].ledger.driving.0
    };
    let (always, smart) = (driven(false), driven(true));
    assert!(always > 150.0);
    near(smart / always, 0.5, 0.05);
}

/// Fuel burns by the hour the machine runs, whatever the battery takes of it; wind burns none.
#[test]
fn fuel_of_the_stay() {
    let mut setup = steady(1.0);
    setup.trip.arrival_hour = 0;
    setup.trip.nights = 4;
    setup.other.push(OtherSource { every: EveryNth(2), ..OtherSource::default() });
    let burnt = |setup: &Setup| outlook(setup, 20.0).course.ledger;
    // From midnight four nights to 8:00 of the fourth day and two hours: days 1 and 3 of 0 to 3,
    // day 3 not yet at its 10:00. Two hours of 0.4 L.
    let ledger = burnt(&setup);
    near(ledger.fuel.0, 0.8, 1e-9);
    assert!(ledger.unused_other.0 > 10.0 * ledger.other.0, "{ledger:?}");
    setup.other[0].kind = OtherSourceKind::Wind;
    setup.other[0].fuel_per_hour = nightbank::units::Litres(0.0);
    assert_eq!(burnt(&setup).fuel.0, 0.0);
}

/// With mains appliances on the hook-up, nothing behind the inverter pulls the battery down.
#[test]
fn nothing_cuts_out_while_the_hook_up_feeds_the_sockets() {
    let mut setup = steady(2.0);
    setup.bank.health_frac = 0.6;
    setup.bank.soc_start_frac = 0.55;
    setup.inverter.fitted = true;
    setup.loads.push(on_the_sockets(Watts(1800.0), Usage::Daily { minutes: 4.0 }));
    assert!(!outlook(&setup, 10.0).cut_outs.is_empty());
    setup.trip.arrival_hour = 0;
    setup.hook_up = HookUp {
        fitted: true,
        every: EveryNth(1),
        from_min: 0,
        hours: Hours(24.0),
        ..HookUp::default()
    };
    assert_eq!(outlook(&setup, 10.0).cut_outs, []);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn more_current_never_takes_longer(
        chemistry in prop::sample::select(Chemistry::ALL.to_vec()), from in 0.0..0.95_f64,
        amps in 1.0..60.0_f64, more in 1.0..3.0_f64, air in 1.0..35.0_f64, ah in 40.0..400.0_f64,
    ) {
        let bank = Bank { capacity_20h: AmpHours(ah), ..bank(chemistry) };
        let less = stages(&bank, Celsius(air), from, amps, 3.0);
        let more = stages(&bank, Celsius(air), from, amps * more, 3.0);
        let slack = STAGE_STEP * 2.0;
        prop_assert!(more.full <= less.full + slack, "{less:?} {more:?}");
        prop_assert!(more.bulk <= less.bulk + slack, "{less:?} {more:?}");
        prop_assert!(more.reached_frac >= less.reached_frac - 1e-3, "{less:?} {more:?}");
    }

    /// Never sooner than the ideal: charge missing over current, and over the best efficiency.
    #[test]
    fn never_sooner_than_ideal(
        chemistry in prop::sample::select(Chemistry::ALL.to_vec()), from in 0.0..0.95_f64,
        amps in 1.0..80.0_f64, air in 1.0..35.0_f64, v24 in any::<bool>(),
    ) {
        let system = if v24 { SystemVoltage::V24 } else { SystemVoltage::V12 };
        let bank = Bank { system, ..bank(chemistry) };
        let charge = stages(&bank, Celsius(air), from, amps, 3.0);
        let physics = BankPhysics::new(&bank, STAGE_STEP);
        let missing_at_full =
            physics.cell.end_of_charge_c * 100.0 * physics.conditions(Celsius(air)).taper.0;
        let put_in = (1.0 - from) * 100.0 - missing_at_full;
        let ideal = put_in / (amps * physics.charge_frac(0.0));
        prop_assert!(charge.full.0 >= ideal - 2.0 * STAGE_STEP.0, "{ideal} {charge:?}");
        prop_assert!(charge.bulk <= charge.full);
        // A longer time never reaches less.
        let longer = stages(&bank, Celsius(air), from, amps, 6.0);
        prop_assert!(longer.reached >= charge.reached && longer.reached_frac >= charge.reached_frac - 1e-6);
    }

    /// The stage is read off the state alone, for any state.
    #[test]
    fn stages_follow_the_current(soc in 0.0..1.0_f64, amps in 0.01..200.0_f64) {
        let physics = BankPhysics::new(&bank(Chemistry::Agm), STAGE_STEP);
        let conditions = physics.conditions(WARM);
        let stage = physics.stage(&BankState::rested(soc), &conditions, Amps(amps));
        let taper = 100.0 * (1.0 - soc);
        let expected = if taper <= 0.5 {
            ChargeStage::Float
        } else if amps >= taper {
            ChargeStage::Absorption
        } else {
            ChargeStage::Bulk
        };
        prop_assert_eq!(stage, Some(expected));
        prop_assert_eq!(physics.stage(&BankState::rested(soc), &conditions, Amps(-amps)), None);
    }
}

#[test]
fn a_solar_day_reaches_a_stage_too() {
    let mut setup = steady(4.0);
    setup.trip.month = 6;
    setup.solar.push(SolarArray { peak: Watts(300.0), ..SolarArray::default() });
    let outlook = outlook(&setup, 18.0);
    let mut midday = outlook.course.hours.iter().filter(|hour| hour.hour_of_day == 14);
    assert!(midday.next_back().is_some_and(|hour| hour.stage == Some(ChargeStage::Float)));
    let mut midnight = outlook.course.hours.iter().filter(|hour| hour.hour_of_day == 0);
    assert!(midnight.next_back().is_some_and(|hour| hour.stage.is_none()));
}
