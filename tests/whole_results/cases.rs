//! Invented setups that differ in everything the calculation knows.

use crate::common::bank;
use nightbank::model::catalogue::appliance;
use nightbank::model::*;
use nightbank::units::*;

/// Appliances of the catalogue, numbered from 1, and how many of each.
fn aboard(system: SystemVoltage, rows: &[(u16, u16)]) -> Vec<Load> {
    let load = |(index, (number, quantity)): (usize, &(u16, u16))| {
        let entry = appliance(*number).expect("in the catalogue");
        Load { quantity: *quantity, ..entry.to_load(index as u32 + 1, system) }
    };
    rows.iter().enumerate().map(load).collect()
}

fn place(name: &str, latitude: f64, longitude: f64, altitude: f64) -> Place {
    Place {
        name: name.to_owned(),
        latitude: Degrees(latitude),
        longitude: Degrees(longitude),
        altitude: Metres(altitude),
    }
}

fn panel(watts: f64) -> SolarArray {
    SolarArray { peak: Watts(watts), ..SolarArray::default() }
}

fn times(from: u16, to: u16) -> Window {
    Window { from_min: from, to_min: to }
}

/// A van by a lake in May: one AGM battery, one flat panel, an inverter for the laptop, a drive every third day.
pub fn lake_in_may() -> Setup {
    let rows = [(1, 1), (41, 4), (35, 1), (60, 2), (57, 1), (126, 1), (24, 1), (101, 1)];
    let mut setup = Setup { name: "By a lake".to_owned(), ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.loads[4].feed = Feed::Inverter;
    setup.loads[4].standby = Watts(1.5);
    setup.bank = bank(Chemistry::Agm, 110.0, BatteryPlace::Inside);
    setup.inverter.fitted = true;
    setup.inverter.continuous = Watts(300.0);
    setup.inverter.surge = Watts(600.0);
    setup.inverter.idle = Watts(4.5);
    setup.solar = vec![panel(120.0)];
    setup.driving =
        Driving { fitted: true, every: EveryNth(3), minutes: 75.0, ..Driving::default() };
    setup.trip.place = place("A lake", 47.6, 9.4, 400.0);
    setup.trip.utc_offset_min = 120;
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (5, 18, 6);
    setup
}

/// A caravan in the mountains in January: two old wet batteries on the drawbar, a blown-air heater, snow, a
/// steep panel with shade and a simple controller, hook-up every fourth night.
pub fn snow_in_the_mountains() -> Setup {
    let rows =
        [(14, 1), (6, 1), (41, 5), (43, 1), (36, 1), (52, 1), (73, 1), (60, 2), (18, 1), (32, 1)];
    let mut setup =
        Setup { name: "Snow".to_owned(), vehicle: Vehicle::Caravan, ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.bank = bank(Chemistry::Flooded, 95.0, BatteryPlace::Outside);
    setup.bank.parallel = 2;
    setup.bank.health_frac = 0.78;
    setup.bank.soc_start_frac = 0.93;
    setup.bank.cable = Ohms(0.009);
    let mut steep = panel(150.0);
    (steep.tilt, steep.facing) = (Degrees(62.0), Degrees(205.0));
    steep.controller = Controller::Pwm;
    steep.shade =
        Shade { morning_frac: 0.6, midday_frac: 0.1, afternoon_frac: 0.35, sky_frac: 0.2 };
    setup.solar = vec![steep];
    setup.hook_up = HookUp {
        fitted: true,
        amps: Amps(16.0),
        every: EveryNth(4),
        from_min: 17 * 60 + 30,
        hours: Hours(15.5),
        pass_through: true,
    };
    setup.trip.place = place("A pass", 46.8, 9.9, 1550.0);
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (1, 9, 5);
    setup.trip.arrival_hour = 14;
    setup.trip.heated_to = Some(Celsius(18.0));
    setup.trip.ground_albedo_frac = 0.65;
    setup
}

/// A motorhome in deep frost: LiFePO4 in a locker that may not charge below zero, an inverter left on all day, a
/// generator at noon, own mean temperature.
pub fn frost_and_a_generator() -> Setup {
    let rows =
        [(149, 1), (41, 6), (34, 1), (53, 1), (159, 1), (88, 1), (153, 1), (128, 1), (60, 2)];
    let mut setup =
        Setup { name: "Frost".to_owned(), vehicle: Vehicle::Motorhome, ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.bank = bank(Chemistry::LiFePo4, 150.0, BatteryPlace::Locker);
    setup.bank.soc_start_frac = 0.97;
    setup.inverter = Inverter {
        fitted: true,
        continuous: Watts(2000.0),
        surge: Watts(3500.0),
        idle: Watts(18.0),
        full_load_frac: 0.9,
        switching: InverterSwitching::AllDay,
        cut_out: Volts(11.0),
    };
    setup.solar = vec![panel(200.0)];
    setup.solar[0].tilt = Degrees(15.0);
    setup.solar[0].facing = Degrees(120.0);
    setup.solar[0].shade.midday_frac = 0.04;
    setup.other = vec![OtherSource {
        amps: Amps(30.0),
        from_min: 11 * 60 + 15,
        hours: Hours(2.5),
        every: EveryNth(2),
        ..OtherSource::default()
    }];
    setup.trip.place = place("The far north", 62.4, 12.6, 620.0);
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (2, 20, 5);
    setup.trip.own_air = Some(Celsius(-3.0));
    setup.trip.ground_albedo_frac = 0.7;
    setup
}

/// 24 V with a battery that warms itself, outside, an inverter that sleeps, a fuel cell every evening, November.
pub fn warmed_battery() -> Setup {
    let rows = [(149, 1), (2, 1), (42, 3), (34, 1), (57, 2), (72, 1), (86, 1), (136, 1), (103, 1)];
    let mut setup =
        Setup { name: "November".to_owned(), vehicle: Vehicle::Motorhome, ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V24, &rows);
    setup.bank = bank(Chemistry::LiFePo4, 105.0, BatteryPlace::Outside);
    setup.bank.system = SystemVoltage::V24;
    setup.bank.block_volts = Volts(24.0);
    setup.bank.heated = true;
    setup.bank.health_frac = 0.92;
    setup.inverter = Inverter {
        fitted: true,
        continuous: Watts(1600.0),
        surge: Watts(3000.0),
        idle: Watts(14.0),
        switching: InverterSwitching::PowerSave { asleep: Watts(2.0) },
        ..Inverter::default()
    };
    setup.solar = vec![panel(300.0)];
    setup.other = vec![OtherSource {
        kind: OtherSourceKind::FuelCell,
        amps: Amps(3.2),
        from_min: 15 * 60,
        hours: Hours(14.0),
        every: EveryNth(1),
        fuel_per_hour: Litres(0.07),
        ..OtherSource::default()
    }];
    setup.trip.place = place("A moor", 53.6, 7.2, 20.0);
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (11, 21, 4);
    setup.trip.heated_to = Some(Celsius(20.0));
    setup
}

/// The southern summer: gel, fans and an air conditioner, two panels, the engine through a relay, hot.
pub fn southern_heat() -> Setup {
    let rows = [(3, 1), (24, 1), (26, 1), (28, 1), (48, 1), (35, 1), (59, 2), (70, 1), (108, 1)];
    let mut setup = Setup { name: "Heat".to_owned(), ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.loads[0].place = LoadPlace::Outside;
    setup.loads[3].usage = Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: 0.05 } };
    setup.loads[8].feed = Feed::Inverter;
    setup.bank = bank(Chemistry::Gel, 130.0, BatteryPlace::Inside);
    setup.bank.parallel = 2;
    setup.inverter.fitted = true;
    let mut roof = panel(180.0);
    roof.facing = Degrees(0.0);
    roof.mounting = Mounting::Glued;
    let mut loose = panel(120.0);
    (loose.tilt, loose.facing) = (Degrees(25.0), Degrees(300.0));
    loose.mounting = Mounting::OpenRack;
    loose.controller = Controller::Pwm;
    loose.dirt_frac = 0.08;
    loose.shade.afternoon_frac = 0.1;
    setup.solar = vec![roof, loose];
    setup.driving = Driving {
        fitted: true,
        charger: DrivingCharger::Relay {
            alternator: Volts(14.1),
            cable_length: Metres(6.5),
            cable_size: SquareMillimetres(10.0),
            limit: Amps(40.0),
            smart_alternator: true,
        },
        minutes: 110.0,
        every: EveryNth(2),
        from_min: 8 * 60 + 20,
    };
    setup.trip.place = place("A dry coast", -33.2, 18.1, 30.0);
    setup.trip.utc_offset_min = 120;
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (1, 4, 7);
    setup.trip.heated_to = None;
    setup
}

/// Near the equator, high up, for longer than a fortnight: glued panels that face east with morning shade, wind,
/// the user's own sun, blocks of 6 V.
pub fn tropical_highland() -> Setup {
    let rows = [(148, 1), (41, 6), (34, 1), (57, 1), (71, 1), (83, 1), (90, 1), (115, 1)];
    let mut setup = Setup { name: "Highland".to_owned(), ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.bank = bank(Chemistry::Flooded, 225.0, BatteryPlace::Locker);
    setup.bank.block_volts = Volts(6.0);
    setup.bank.soc_min_frac = 0.4;
    setup.inverter.fitted = true;
    setup.inverter.continuous = Watts(2500.0);
    setup.inverter.surge = Watts(5000.0);
    let mut glued = panel(330.0);
    (glued.tilt, glued.facing, glued.mounting) = (Degrees(12.0), Degrees(90.0), Mounting::Glued);
    glued.shade.morning_frac = 0.45;
    glued.temp_coeff_per_k = -0.0044;
    glued.low_light_frac = 0.07;
    glued.vmp = Some(Volts(36.4));
    setup.solar = vec![glued];
    setup.other = vec![OtherSource {
        kind: OtherSourceKind::Wind,
        amps: Amps(2.4),
        from_min: 13 * 60,
        hours: Hours(7.5),
        every: EveryNth(1),
        fuel_per_hour: Litres(0.0),
        ..OtherSource::default()
    }];
    setup.trip.place = place("A highland", 9.7, -83.9, 1900.0);
    setup.trip.utc_offset_min = -360;
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (9, 25, 17);
    setup.trip.arrival_hour = 11;
    let sun = [5100, 5700, 6000, 5600, 4900, 4500, 4600, 4700, 0, 4300, 0, 4700];
    setup.trip.own_sun = Some(MonthlySun(sun.map(|wh| WattHoursPerSquareMetre(f64::from(wh)))));
    setup
}

/// Work on the road in June: 24 V, three arrays, a large inverter, the weather of some days known.
pub fn work_on_the_road() -> Setup {
    let rows = [(72, 1), (57, 2), (58, 2), (2, 1), (85, 1), (88, 1), (42, 2), (34, 1), (65, 1)];
    let mut setup =
        Setup { name: "Work".to_owned(), vehicle: Vehicle::Motorhome, ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V24, &rows);
    setup.loads[1].window = times(8 * 60, 12 * 60);
    setup.loads[1].more_windows = vec![times(13 * 60, 17 * 60 + 30)];
    setup.loads[1].usage = Usage::Daily { minutes: 480.0 };
    setup.loads[8].enabled = false;
    setup.bank = bank(Chemistry::LiFePo4, 100.0, BatteryPlace::Inside);
    setup.bank.system = SystemVoltage::V24;
    setup.bank.parallel = 2;
    setup.bank.cold_charge_allowed = true;
    setup.bank.soc_min_frac = 0.15;
    setup.inverter = Inverter {
        fitted: true,
        continuous: Watts(3000.0),
        surge: Watts(6000.0),
        idle: Watts(25.0),
        full_load_frac: 0.91,
        switching: InverterSwitching::WhenUsed,
        cut_out: Volts(10.8),
    };
    let mut west = panel(220.0);
    (west.tilt, west.facing, west.vmp) = (Degrees(20.0), Degrees(270.0), Some(Volts(31.2)));
    west.shade.sky_frac = 0.05;
    let mut off = panel(100.0);
    off.enabled = false;
    let mut loose = panel(160.0);
    (loose.tilt, loose.mounting, loose.self_use) = (Degrees(40.0), Mounting::OpenRack, Watts(0.6));
    setup.solar = vec![west, off, loose];
    setup.hook_up = HookUp { fitted: true, pass_through: false, ..HookUp::default() };
    setup.trip.place = place("A plateau", 40.3, -3.2, 950.0);
    setup.trip.utc_offset_min = 120;
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (6, 12, 8);
    setup.trip.heated_to = None;
    let sun = Weather::Sun { per_day: WattHoursPerSquareMetre(3100.0) };
    setup.trip.days = vec![
        DayPlan { weather: Weather::Clear, ..DayPlan::default() },
        DayPlan { weather: Weather::Dull, ..DayPlan::default() },
        DayPlan { weather: sun, drive_minutes: Some(40.0), hook_up: None },
        DayPlan { weather: Weather::Mixed, ..DayPlan::default() },
        DayPlan { weather: Weather::Typical, drive_minutes: None, hook_up: Some(true) },
    ];
    setup.cables = vec![
        CableRun { load_id: Some(5), length: Metres(1.2), critical: true, ..CableRun::default() },
        CableRun {
            load_id: Some(4),
            length: Metres(7.5),
            size: ConductorSize::Awg { gauge: 12 },
            fuse: Amps(15.0),
            ..CableRun::default()
        },
    ];
    setup
}

/// A caravan in August that looked at its battery five times: monitor, voltmeter and counted charge.
pub fn readings_on_site() -> Setup {
    let rows = [(1, 1), (41, 5), (35, 1), (52, 1), (60, 2), (73, 1), (126, 1)];
    let mut setup =
        Setup { name: "Readings".to_owned(), vehicle: Vehicle::Caravan, ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.bank = bank(Chemistry::Agm, 105.0, BatteryPlace::Locker);
    setup.bank.soc_start_frac = 0.96;
    let mut loose = panel(110.0);
    (loose.tilt, loose.mounting) = (Degrees(30.0), Mounting::OpenRack);
    setup.solar = vec![loose];
    setup.trip.place = place("Dunes", 56.9, 8.3, 10.0);
    setup.trip.utc_offset_min = 120;
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (8, 3, 7);
    setup.trip.days = vec![
        DayPlan { weather: Weather::Mixed, ..DayPlan::default() },
        DayPlan { weather: Weather::Clear, ..DayPlan::default() },
    ];
    let soc = |at: f64, soc_frac: f64| Reading {
        at: Hours(at),
        kind: ReadingKind::StateOfCharge { soc_frac },
    };
    setup.readings = vec![
        soc(6.5, 0.87),
        Reading {
            at: Hours(15.5),
            kind: ReadingKind::Voltage { volts: Volts(12.55), rested: Hours(3.0) },
        },
        soc(26.0, 0.88),
        Reading { at: Hours(39.0), kind: ReadingKind::Used { amp_hours: AmpHours(31.5) } },
        soc(47.5, 0.74),
    ];
    setup
}

/// The same, with what the readings taught and the forecast begun again.
pub fn readings_taken_over() -> Setup {
    let mut setup = readings_on_site();
    setup.correction =
        Correction { use_factor: 1.22, sun_factor: 0.91, restart: Some((Hours(47.5), 0.74)) };
    setup
}

/// Three nights that somebody's health depends on, without any charging: breathing device, medicine, a mover on
/// arrival and on leaving, electric bicycles.
pub fn night_device() -> Setup {
    let rows = [(76, 1), (78, 1), (117, 1), (108, 2), (47, 2), (6, 1), (37, 1), (122, 1)];
    let mut setup =
        Setup { name: "Breathing".to_owned(), vehicle: Vehicle::Caravan, ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.loads[2].usage = Usage::Once { at: StayEnd::Arrival, minutes: 6.0 };
    setup.loads[7].usage = Usage::Once { at: StayEnd::Leaving, minutes: 2.0 };
    setup.loads[3].draw_source = DrawSource::Label;
    setup.loads[0].draw_source = DrawSource::Meter;
    setup.loads[1].spread_frac = Some(0.1);
    setup.bank = bank(Chemistry::Agm, 120.0, BatteryPlace::Inside);
    setup.bank.health_frac = 0.9;
    setup.inverter.fitted = true;
    setup.inverter.continuous = Watts(350.0);
    setup.inverter.surge = Watts(500.0);
    setup.trip.place = place("A wood", 50.4, 12.9, 600.0);
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (10, 8, 3);
    setup.trip.arrival_hour = 19;
    setup
}

/// On the move every day over the new year, far in the west: a small battery, a dc-dc charger, a fridge that runs on
/// electricity while driving.
pub fn on_the_move() -> Setup {
    let rows = [(7, 1), (12, 1), (41, 3), (57, 1), (60, 2), (121, 1), (35, 1), (129, 1), (84, 1)];
    let mut setup = Setup { name: "On the move".to_owned(), ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &rows);
    setup.loads[3].draw = Draw::Current { amps: Amps(4.2), volts: Volts(12.5) };
    // An aquarium and a wine cooler: what runs by itself and is neither a fridge nor a heater.
    for (id, cycle) in [
        (20, DutyCycle::Fixed { frac: 0.45 }),
        (21, DutyCycle::AirTemperature { frac_at_25c: 0.2 }),
    ] {
        let draw = Draw::Power { watts: Watts(14.0) };
        setup.loads.push(Load { id, draw, usage: Usage::Duty { cycle }, ..Load::default() });
    }
    setup.bank = bank(Chemistry::LiFePo4, 60.0, BatteryPlace::Inside);
    setup.bank.soc_start_frac = 0.55;
    setup.solar = vec![panel(50.0)];
    setup.driving = Driving {
        fitted: true,
        charger: DrivingCharger::DcDc { amps: Amps(18.0) },
        minutes: 150.0,
        every: EveryNth(1),
        from_min: 9 * 60 + 45,
    };
    setup.trip.place = place("A river", 44.9, -93.2, 250.0);
    setup.trip.utc_offset_min = -360;
    (setup.trip.year, setup.trip.month, setup.trip.day, setup.trip.nights) = (2027, 12, 28, 9);
    setup.trip.arrival_hour = 22;
    setup.trip.heated_to = Some(Celsius(15.0));
    setup.trip.days = vec![
        DayPlan::default(),
        DayPlan::default(),
        DayPlan { drive_minutes: Some(0.0), ..DayPlan::default() },
        DayPlan { drive_minutes: Some(20.0), ..DayPlan::default() },
    ];
    setup
}

/// Hook-up that charges next to nothing: a flat battery, a fridge behind the inverter and one of 12 V, both of which cut
/// out for low voltage.
pub fn weak_hook_up() -> Setup {
    let mut setup = Setup { name: "Weak hook-up".to_owned(), ..Setup::default() };
    setup.loads = aboard(SystemVoltage::V12, &[(2, 1), (10, 1), (19, 1)]);
    for fridge in &mut setup.loads[..2] {
        fridge.cut_out = Some(CutOut { off: Volts(12.1), on: Volts(12.7) });
    }
    setup.bank = bank(Chemistry::Agm, 75.0, BatteryPlace::Inside);
    setup.bank.soc_start_frac = 0.7;
    setup.inverter.fitted = true;
    setup.inverter.cut_out = Volts(11.2);
    setup.hook_up = HookUp {
        fitted: true,
        amps: Amps(3.0),
        every: EveryNth(1),
        from_min: 18 * 60,
        hours: Hours(14.0),
        pass_through: true,
    };
    setup.trip.place = place("A farm", 48.0, 0.5, 90.0);
    (setup.trip.month, setup.trip.day, setup.trip.nights) = (7, 20, 3);
    setup
}
