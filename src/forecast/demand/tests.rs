//! Energy a day and draw by hour.

use super::*;
use crate::model::{Draw, StayEnd, Window};
use crate::units::{Amps, Litres, LitresPerMinute, MilliAmpHours, Volts};

const AROUND: Surroundings = Surroundings {
    outside: [Celsius(25.0); 24],
    inside: [Celsius(25.0); 24],
    heat: [Watts::ZERO; 24],
    driving_frac: [0.0; 24],
    into_stay_h: f64::INFINITY,
    stay_left_h: f64::INFINITY,
};

fn at(setup: &Setup, outside: f64) -> Surroundings {
    Surroundings::at_rest(setup, [Celsius(outside); 24])
}

fn load(watts: f64, usage: Usage) -> Load {
    Load { draw: Draw::Power { watts: Watts(watts) }, usage, ..Load::default() }
}

fn wh(load: &Load) -> f64 {
    energy_per_day(load, &AROUND).0
}

/// A television of 30 W for two hours with 1 W standby: 60 Wh and 22 Wh from the battery, the same through an
/// inverter that loses nothing, and by hand with 0.001 per watt of loss 60 x 1.030 + 22 x 1.001 (the mean of
/// the hour stands for the standby's own draw, which tells a thousandth of a watt-hour less).
#[test]
fn standby_is_part_of_what_a_use_takes_from_the_battery() {
    let mut tv = load(30.0, Usage::Daily { minutes: 120.0 });
    tv.standby = Watts(1.0);
    let sum = |tv: &Load, r_per_watt| {
        let curve = InverterCurve { p0: Watts(12.0), r_per_watt };
        let day = LoadDay::of(tv, &AROUND);
        day.hours.iter().map(|hour| at_battery(tv, *hour, &curve).0).sum::<f64>()
    };
    assert!((sum(&tv, 0.001) - 82.0).abs() < 1e-9, "{}", sum(&tv, 0.001));
    tv.feed = Feed::Inverter;
    assert!((sum(&tv, 0.0) - 82.0).abs() < 1e-9, "{}", sum(&tv, 0.0));
    assert!((sum(&tv, 0.001) - (61.8 + 22.022)).abs() < 0.005, "{}", sum(&tv, 0.001));
}

#[test]
fn facts_of_the_trade() {
    // Common practice, no source: each of these is quoted wherever campers count.
    let radio = load(7.2, Usage::Daily { minutes: 120.0 });
    assert!((wh(&radio) - 14.4).abs() < 1e-9);
    let standby = Load {
        draw: Draw::Current { amps: Amps(0.26), volts: Volts(12.0) },
        usage: Usage::AlwaysOn,
        ..Load::default()
    };
    assert!(wh(&standby) > 70.0 && wh(&standby) < 80.0);
    let mover = |minutes| Load {
        draw: Draw::Current { amps: Amps(19.0), volts: Volts(12.0) },
        usage: Usage::Daily { minutes },
        ..Load::default()
    };
    assert!((wh(&mover(5.0)) - 19.0).abs() < 1e-9);
    assert!((wh(&mover(15.0)) - 57.0).abs() < 1e-9);
}

#[test]
fn a_tank_aboard_is_pumped_twice() {
    let pump = |pumped_twice| {
        load(
            60.0,
            Usage::Litres {
                litres_per_day: Litres(20.0),
                flow: LitresPerMinute(10.0),
                pumped_twice,
            },
        )
    };
    assert!((wh(&pump(false)) - 2.0).abs() < 1e-9);
    assert!((wh(&pump(true)) - 4.0).abs() < 1e-9);
}

#[test]
fn a_phone_charge_is_its_cell_over_its_charger() {
    // 5000 mAh at 3.85 V and 0.8: 24 Wh (trade figure).
    let phone = load(
        10.0,
        Usage::Charges {
            every_days: 1.0,
            cell: MilliAmpHours(5000.0),
            cell_volts: Volts(3.85),
            charger_frac: 0.8,
        },
    );
    assert!((wh(&phone) - 24.06).abs() < 0.01);
}

#[test]
fn uses_duty_and_energy() {
    assert!((wh(&load(100.0, Usage::Uses { per_day: 6.0, seconds: 30.0 })) - 5.0).abs() < 1e-9);
    let fixed = Usage::Duty { cycle: DutyCycle::Fixed { frac: 0.5 } };
    assert!((wh(&load(40.0, fixed)) - 480.0).abs() < 1e-9);
    // 45 W fridge at 25 degrees Celsius and duty 0.32: 346 Wh, not 45 x 24 (trade figure).
    let fridge = Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.32 } };
    assert!((wh(&load(45.0, fridge)) - 345.6).abs() < 0.1);
    let hot = energy_per_day(
        &load(45.0, fridge),
        &Surroundings { inside: [Celsius(35.0); 24], ..AROUND },
    )
    .0;
    assert!((hot - 594.0).abs() < 1.0, "{hot}");
    assert!((wh(&load(0.0, Usage::Energy { per_day: WattHours(120.0) })) - 120.0).abs() < 1e-9);
}

#[test]
fn the_window_moves_energy_but_keeps_it() {
    let mut lamp = load(5.0, Usage::Daily { minutes: 240.0 });
    lamp.window = Window::EVENING;
    let day = LoadDay::of(&lamp, &AROUND);
    assert!((wh(&lamp) - 20.0).abs() < 1e-9);
    assert_eq!(day.hours[12].running, Watts::ZERO);
    assert!((day.hours[20].running.0 - 4.0).abs() < 1e-9);
    lamp.usage = Usage::Daily { minutes: 600.0 };
    assert!(!fits_times(&lamp));
    assert!((wh(&lamp) - 50.0).abs() < 1e-9);
    // Ten hours into a window of five: lit all through it, five hours left for the other nineteen.
    let day = LoadDay::of(&lamp, &AROUND);
    assert!((day.hours[20].running.0 - 5.0).abs() < 1e-9);
    assert!((day.hours[12].running.0 - 25.0 / 19.0).abs() < 1e-9);
}

/// By hand: 60 W for two hours at 06:00 to 08:00 and 18:00 to 22:00 are 120 Wh over six hours, 20 W in each; for
/// nine hours they are full in the six, and three hours' worth is spread over the other eighteen. A heater
/// of half the heat needed runs half of the times it has.
#[test]
fn several_windows_share_the_use_by_their_length() {
    let mut lamp = load(60.0, Usage::Daily { minutes: 120.0 });
    lamp.window = Window { from_min: 18 * 60, to_min: 22 * 60 };
    lamp.more_windows = vec![Window { from_min: 6 * 60, to_min: 8 * 60 }];
    let used = |hour: usize| (6..8).contains(&hour) || (18..22).contains(&hour);
    for (minutes, inside_w, outside_w) in [(120.0, 20.0, 0.0), (540.0, 60.0, 10.0)] {
        lamp.usage = Usage::Daily { minutes };
        for (hour, slot) in LoadDay::of(&lamp, &AROUND).hours.iter().enumerate() {
            let expected = if used(hour) { inside_w } else { outside_w };
            assert!((slot.running.0 - expected).abs() < 1e-9, "{minutes} {hour}: {slot:?}");
        }
        assert!((wh(&lamp) - minutes).abs() < 1e-9);
    }
    assert!(!fits_times(&lamp));
    lamp.usage = Usage::Daily { minutes: 360.0 };
    assert!(fits_times(&lamp));
    // The same minutes entered twice are no more of them.
    let once = LoadDay::of(&lamp, &AROUND).hours;
    lamp.more_windows.push(Window { from_min: 19 * 60, to_min: 20 * 60 });
    assert_eq!(LoadDay::of(&lamp, &AROUND).hours, once);
    lamp.usage =
        Usage::Duty { cycle: DutyCycle::Heating { heat: Watts(2000.0), start: WattHours::ZERO } };
    let around = Surroundings { heat: [Watts(1000.0); 24], ..AROUND };
    let heating = LoadDay::of(&lamp, &around);
    for (hour, slot) in heating.hours.iter().enumerate() {
        let expected = if used(hour) { 30.0 } else { 0.0 };
        assert!((slot.running.0 - expected).abs() < 1e-9, "{hour}: {slot:?}");
    }
}

#[test]
fn use_just_longer_than_its_window_moves_next_to_nothing() {
    // 80 W for 300 and for 300.5 minutes in a window of five hours.
    let day = |minutes| {
        let mut heater = load(80.0, Usage::Daily { minutes });
        heater.window = Window::EVENING;
        LoadDay::of(&heater, &AROUND)
    };
    let (fits, spills) = (day(300.0), day(300.5));
    for (a, b) in fits.hours.iter().zip(&spills.hours) {
        assert!((a.running - b.running).0.abs() < 0.5, "{a:?} {b:?}");
    }
}

/// A fridge of 45 W and 30 % at 25 degrees Celsius in a British January of 4 degrees: about 189 Wh a day
/// where the van is kept at 16 degrees, next to nothing out in the air (an hourly balance by hand).
#[test]
fn a_fridge_follows_the_air_it_stands_in() {
    let setup = Setup::default();
    let mut fridge =
        load(45.0, Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.30 } });
    let inside = energy_per_day(&fridge, &at(&setup, 4.0)).0;
    assert!((180.0..=200.0).contains(&inside), "{inside}");
    fridge.place = LoadPlace::Outside;
    assert_eq!(energy_per_day(&fridge, &at(&setup, 4.0)), WattHours::ZERO);
    // In summer inside is the warmer place.
    let outside = energy_per_day(&fridge, &at(&setup, 20.0));
    fridge.place = LoadPlace::Inside;
    assert!(energy_per_day(&fridge, &at(&setup, 20.0)) > outside);
    // Not heated, it follows the air outside, three kelvin warmer.
    let mut cold = setup;
    cold.trip.heated_to = None;
    assert!(energy_per_day(&fridge, &at(&cold, 4.0)).0 < 60.0);
}

/// A van of 85 W/K kept at 16 degrees in frost, 3 of them free: 1105 W, 55 % of a heater of 2 kW. By
/// hand 20 W x 24 h x 0.5525 = 265 Wh, and two starts of 5 Wh.
#[test]
fn a_heater_makes_up_what_the_vehicle_loses() {
    let mut setup = Setup::default();
    let heating = |heat, start| Usage::Duty {
        cycle: DutyCycle::Heating { heat: Watts(heat), start: WattHours(start) },
    };
    let heater = load(20.0, heating(2000.0, 5.0));
    let wh = |setup: &Setup, outside| energy_per_day(&heater, &at(setup, outside)).0;
    assert!((wh(&setup, 0.0) - 275.2).abs() < 0.1, "{}", wh(&setup, 0.0));
    assert_eq!(wh(&setup, 13.0), 0.0);
    assert!(wh(&setup, 12.99) < 0.4 && wh(&setup, -60.0) <= 480.0 + 10.0 + 1e-9);
    setup.vehicle = crate::model::Vehicle::Motorhome;
    assert!((wh(&setup, 0.0) - (20.0 * 24.0 * 120.0 * 13.0 / 2000.0 + 10.0)).abs() < 0.1);
    setup.trip.heated_to = None;
    assert_eq!(wh(&setup, -10.0), 0.0);
}

/// Fans run their usual share at 25 degrees Celsius, twice that at 35, not at all at 15 (common
/// practice, no source).
#[test]
fn fans_follow_the_heat() {
    let setup = Setup::default();
    let fan = load(15.0, Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: 0.25 } });
    let wh = |outside| energy_per_day(&fan, &at(&setup, outside)).0;
    assert!((wh(25.0) - 90.0).abs() < 1e-9 && (wh(35.0) - 180.0).abs() < 1e-9);
    assert_eq!((wh(15.0), wh(-5.0)), (0.0, 0.0));
    assert!((wh(60.0) - 360.0).abs() < 0.001 + 360.0 * 0.1);
}

/// 150 W for the two hours driven, nothing on a day at rest.
#[test]
fn what_is_tied_to_driving_draws_while_driving() {
    let setup = Setup::default();
    let element = load(150.0, Usage::WhileDriving);
    let mut day = at(&setup, 20.0);
    assert_eq!(energy_per_day(&element, &day), WattHours::ZERO);
    day.driving_frac[10] = 1.0;
    day.driving_frac[11] = 1.0;
    assert!((energy_per_day(&element, &day).0 - 300.0).abs() < 1e-9);
}

/// A mover of 300 W for 90 minutes: 450 Wh after an arrival at 15:00, in two hours; a step of 36 W for ten minutes,
/// 6 Wh, before a stay that ends at 10:00; nothing on any other day, and nothing on a usual one.
#[test]
fn what_runs_once_runs_at_its_end_of_the_stay() {
    let setup = Setup::default();
    let mover = load(300.0, Usage::Once { at: StayEnd::Arrival, minutes: 90.0 });
    let step = load(36.0, Usage::Once { at: StayEnd::Leaving, minutes: 10.0 });
    // Arrival at 15:00, two nights, end at 10:00: 43 hours.
    let days = [0, 1, 2, 3].map(|day| {
        let into_stay_h = 24.0 * f64::from(day) - 15.0;
        at(&setup, 20.0).in_stay(into_stay_h, 43.0 - into_stay_h)
    });
    let energies = |load: &Load| days.map(|day| energy_per_day(load, &day).0);
    for (energy, by_hand) in energies(&mover).into_iter().zip([450.0, 0.0, 0.0, 0.0]) {
        assert!((energy - by_hand).abs() < 1e-9);
    }
    for (energy, by_hand) in energies(&step).into_iter().zip([0.0, 0.0, 6.0, 0.0]) {
        assert!((energy - by_hand).abs() < 1e-9);
    }
    let hours = LoadDay::of(&mover, &days[0]).hours;
    assert_eq!(
        (hours[14].running, hours[15].running, hours[16].running),
        (Watts(0.0), Watts(300.0), Watts(150.0))
    );
    assert_eq!(hours[17].running, Watts(0.0));
    assert!((LoadDay::of(&step, &days[2]).hours[9].running.0 - 6.0).abs() < 1e-9);
    assert_eq!(energy_per_day(&mover, &at(&setup, 20.0)), WattHours::ZERO);
    // Past midnight it goes on: an arrival at 23:00.
    let late = at(&setup, 20.0).in_stay(1.0, 40.0);
    assert!((energy_per_day(&mover, &late).0 - 150.0).abs() < 1e-9);
}

proptest::proptest! {
    #[test]
    fn colder_never_means_less_heating_nor_warmer_less_cooling(
        outside in -30.0..40.0_f64, colder in 0.0..5.0_f64, kept in 5.0..25.0_f64,
    ) {
        let mut setup = Setup::default();
        setup.trip.heated_to = Some(Celsius(kept));
        let cycle = DutyCycle::Heating { heat: Watts(2000.0), start: WattHours(5.0) };
        let heater = load(20.0, Usage::Duty { cycle });
        let fan = load(20.0, Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: 0.4 } });
        let wh = |load: &Load, outside| energy_per_day(load, &at(&setup, outside)).0;
        proptest::prop_assert!(wh(&heater, outside - colder) >= wh(&heater, outside) - 1e-9);
        proptest::prop_assert!(wh(&fan, outside - colder) <= wh(&fan, outside) + 1e-9);
        // A kelvin of a van is 85 W of 2000, of 20 W for 24 h 20.4 Wh; and the starts.
        let step = wh(&heater, outside - 0.01) - wh(&heater, outside);
        proptest::prop_assert!(step <= 0.4, "{step}");
    }


    #[test]
    fn a_little_more_use_never_makes_a_leap(
        minutes in 0.0..1439.0_f64, more in 0.0..1.0_f64, from in 0_u16..1440, to in 0_u16..1440,
    ) {
        let day = |minutes| {
            let mut lamp = load(60.0, Usage::Daily { minutes });
            lamp.window = Window { from_min: from, to_min: to };
            LoadDay::of(&lamp, &AROUND)
        };
        let (a, b) = (day(minutes), day(minutes + more));
        for (a, b) in a.hours.iter().zip(&b.hours) {
            // One more minute of 60 W is one watt-hour, wherever it falls.
            proptest::prop_assert!((a.running - b.running).0.abs() <= more + 1e-9);
        }
    }
}

#[test]
fn standby_fills_the_time_between_uses() {
    let mut tv = load(30.0, Usage::Daily { minutes: 180.0 });
    tv.standby = Watts(1.0);
    tv.quantity = 2;
    assert!((wh(&tv) - 2.0 * (90.0 + 21.0)).abs() < 1e-9);
}

#[test]
fn the_inverter_left_on_costs_its_idle_draw() {
    // 40 W idle for 24 h is 960 Wh a day (trade figure).
    let mut setup = Setup::default();
    setup.inverter.fitted = true;
    setup.inverter.idle = Watts(40.0);
    setup.inverter.switching = InverterSwitching::AllDay;
    let sum: f64 = Demands::new(&setup, &AROUND, 1.0).on(&AROUND).iter().map(|h| h.total().0).sum();
    assert!((sum - 960.0).abs() < 1e-9);
    setup.inverter.switching = InverterSwitching::WhenUsed;
    let sum: f64 = Demands::new(&setup, &AROUND, 1.0).on(&AROUND).iter().map(|h| h.total().0).sum();
    assert_eq!(sum, 0.0);
}

#[test]
fn a_short_heavy_load_pays_its_losses_at_running_power() {
    let mut setup = Setup::default();
    setup.inverter.fitted = true;
    setup.inverter.continuous = Watts(2000.0);
    setup.inverter.idle = Watts(20.0);
    setup.inverter.full_load_frac = 0.88;
    let mut kettle = load(2000.0, Usage::Daily { minutes: 3.0 });
    kettle.feed = Feed::Inverter;
    setup.loads.push(kettle);
    let sum: f64 = Demands::new(&setup, &AROUND, 1.0).on(&AROUND).iter().map(|h| h.total().0).sum();
    assert!((sum - 100.0 / 0.88).abs() < 0.01, "{sum}");
}

#[test]
fn hook_up_carries_the_sockets() {
    let demand = HourDemand {
        direct: Watts(10.0),
        mains: Watts(100.0),
        conversion: Watts(8.0),
        inverter_idle: Watts(20.0),
        ..HourDemand::default()
    };
    assert_eq!(demand.with_sockets_on_hook_up(1.0).total(), Watts(10.0));
    assert_eq!(demand.with_sockets_on_hook_up(0.5).total(), Watts(74.0));
}
