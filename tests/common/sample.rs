//! Invented setups of the size people have.

use super::power_parts::full_bank;
use nightbank::model::*;
use nightbank::units::*;

/// What is aboard, most used first: appliance numbers of the catalogue.
const ABOARD: [u16; 40] = [
    1, 41, 34, 60, 57, 12, 126, 129, 70, 24, 42, 59, 52, 36, 43, 102, 137, 89, 67, 47, 100, 73, 86,
    108, 61, 13, 17, 55, 46, 99, 25, 120, 118, 64, 62, 83, 40, 140, 48, 97,
];

/// A setup of `count` loads as a careful user leaves it: nearly every second row has its own
/// figures, every eighth is not in the catalogue and has a name, and the rest of the page is filled
/// in: battery, inverter, two arrays, driving, place, dates, some days' weather, one cable.
pub fn typical(count: usize) -> Setup {
    let mut setup = Setup { name: "Four weeks along the coast".to_owned(), ..Setup::default() };
    for (index, id) in ABOARD.iter().take(count).enumerate() {
        let row = index as u32 + 1;
        let appliance = catalogue::appliance(*id).expect("in the catalogue");
        let mut load = appliance.to_load(row, SystemVoltage::V12);
        match index % 8 {
            1 => load.quantity = 6,
            2 => load.usage = Usage::Daily { minutes: 25.0 },
            3 => {
                load.draw = Draw::Current { amps: Amps(1.35), volts: Volts(12.0) };
                load.draw_source = DrawSource::Meter;
            }
            5 => {
                load.draw = Draw::Power { watts: Watts(37.5) };
                load.usage = Usage::Daily { minutes: 150.0 };
                load.window = Window { from_min: 19 * 60, to_min: 23 * 60 + 30 };
            }
            7 => {
                load = Load {
                    id: row,
                    name: format!("Own gadget {row}"),
                    group: Group::Tools,
                    draw: Draw::Power { watts: Watts(18.0) },
                    usage: Usage::Daily { minutes: 90.0 },
                    ..Load::default()
                }
            }
            _ => {}
        }
        setup.loads.push(load);
    }
    setup.bank.chemistry = Chemistry::LiFePo4;
    setup.bank.capacity_20h = AmpHours(105.0);
    setup.bank.parallel = 2;
    setup.bank.soc_min_frac = 0.1;
    setup.bank.soc_start_frac = 0.95;
    setup.inverter.fitted = true;
    setup.inverter.continuous = Watts(1500.0);
    setup.inverter.surge = Watts(3000.0);
    setup.solar = vec![
        SolarArray { peak: Watts(2.0 * 115.0), ..SolarArray::default() },
        SolarArray {
            name: "Folding".to_owned(),
            peak: Watts(120.0),
            tilt: Degrees(35.0),
            mounting: Mounting::OpenRack,
            ..SolarArray::default()
        },
    ];
    if let Some(roof) = setup.solar.first_mut() {
        roof.shade.morning_frac = 0.3;
    }
    setup.driving.fitted = true;
    setup.driving.minutes = 90.0;
    setup.driving.every = EveryNth(3);
    setup.trip.place = Place {
        name: "By the sea".to_owned(),
        latitude: Degrees(43.5),
        longitude: Degrees(-1.4),
        altitude: Metres(50.0),
    };
    setup.trip.month = 9;
    setup.trip.day = 12;
    setup.trip.nights = 14;
    setup.trip.utc_offset_min = 120;
    setup.trip.days = [Weather::Clear, Weather::Mixed, Weather::Dull]
        .map(|weather| DayPlan { weather, ..DayPlan::default() })
        .to_vec();
    setup.cables = vec![CableRun {
        name: "Fridge".to_owned(),
        load_id: Some(1),
        length: Metres(6.5),
        ..CableRun::default()
    }];
    setup
}

/// No, one or two further windows.
fn more_windows(index: usize) -> Vec<Window> {
    let all = [Window { from_min: 5, to_min: 17 }, Window { from_min: 30, to_min: 60 }];
    all[..index % 3].to_vec()
}

/// A setup with something in every part and every choice taken at least once.
pub fn everything() -> Setup {
    let mut setup = typical(8);
    setup.example = true;
    let plain = setup.loads.len() as u32;
    let usages = [
        Usage::Daily { minutes: 7.5 },
        Usage::AlwaysOn,
        Usage::Duty { cycle: DutyCycle::Fixed { frac: 0.65 } },
        Usage::Duty { cycle: DutyCycle::AirTemperature { frac_at_25c: 0.425 } },
        Usage::Charges {
            every_days: 0.5,
            cell: MilliAmpHours(4350.0),
            cell_volts: Volts(3.7),
            charger_frac: 0.85,
        },
        Usage::Litres {
            litres_per_day: Litres(35.5),
            flow: LitresPerMinute(7.25),
            pumped_twice: true,
        },
        Usage::Uses { per_day: 3.5, seconds: 210.0 },
        Usage::Energy { per_day: WattHours(123.4) },
        Usage::Duty { cycle: DutyCycle::Heating { heat: Watts(4250.0), start: WattHours(4.5) } },
        Usage::Duty { cycle: DutyCycle::Cooling { frac_at_25c: 0.275 } },
        Usage::WhileDriving,
        Usage::Once { at: StayEnd::Leaving, minutes: 12.5 },
    ];
    setup.loads.extend(Group::ALL.into_iter().enumerate().map(|(index, group)| Load {
        id: plain + 1 + index as u32,
        name: format!("Gerät „{index}“"),
        group,
        quantity: 1 + index as u16 * 7,
        draw_source: [DrawSource::Meter, DrawSource::SpecSheet, DrawSource::Label][index % 3],
        draw: Draw::Power { watts: Watts(0.07 + 12.5 * index as f64) },
        spread_frac: Some(0.125),
        feed: Feed::Inverter,
        place: LoadPlace::ALL[index % 2],
        usage: usages[index % usages.len()],
        standby: Watts(0.45),
        window: Window { from_min: 61 * index as u16, to_min: 1439 },
        more_windows: more_windows(index),
        surge_factor: 2.75,
        cut_out: Some(CutOut { off: Volts(21.6), on: Volts(23.45) }),
        enabled: index % 2 == 0,
        ..Load::default()
    }));
    setup.bank = full_bank();
    setup.inverter.idle = Watts(7.25);
    setup.inverter.full_load_frac = 0.905;
    setup.inverter.switching = InverterSwitching::PowerSave { asleep: Watts(1.5) };
    setup.inverter.cut_out = Volts(10.75);
    if let Some(array) = setup.solar.last_mut() {
        array.enabled = false;
        array.facing = Degrees(222.5);
        array.mounting = Mounting::Glued;
        array.controller = Controller::Pwm;
        array.controller_frac = 0.975;
        array.self_use = Watts(0.12);
        array.shade.midday_frac = 0.15;
        array.shade.afternoon_frac = 0.45;
        array.shade.sky_frac = 0.25;
        array.low_light_frac = 0.065;
        array.dirt_frac = 0.055;
        array.wiring_frac = 0.015;
        array.mismatch_frac = 0.0;
        array.temp_coeff_per_k = -0.00291;
        array.vmp = Some(Volts(31.7));
    }
    setup.driving.charger = DrivingCharger::Relay {
        alternator: Volts(14.05),
        cable_length: Metres(7.35),
        cable_size: SquareMillimetres(2.5),
        limit: Amps(25.0),
        smart_alternator: true,
    };
    setup.driving.from_min = 485;
    setup.hook_up = HookUp {
        fitted: true,
        amps: Amps(17.5),
        every: EveryNth(5),
        from_min: 1005,
        hours: Hours(13.25),
        pass_through: false,
    };
    setup.other = [OtherSourceKind::Generator, OtherSourceKind::FuelCell, OtherSourceKind::Wind]
        .map(|kind| OtherSource {
            enabled: kind != OtherSourceKind::Wind,
            kind,
            amps: Amps(6.25),
            from_min: 540,
            hours: Hours(3.33),
            every: EveryNth(2),
            fuel_per_hour: Litres(0.35),
        })
        .to_vec();
    setup.vehicle = Vehicle::Motorhome;
    setup.trip.heated_to = None;
    setup.trip.utc_offset_min = -210;
    setup.trip.year = 2027;
    setup.trip.arrival_hour = 21;
    setup.trip.days = vec![
        DayPlan { weather: Weather::Typical, drive_minutes: Some(45.5), hook_up: Some(true) },
        DayPlan::default(),
        DayPlan {
            weather: Weather::Sun { per_day: WattHoursPerSquareMetre(4321.0) },
            drive_minutes: None,
            hook_up: Some(false),
        },
    ];
    let months = [900, 1600, 2900, 4200, 5300, 5700, 5600, 4805, 3500, 2000, 1111, 700];
    setup.trip.own_sun = Some(MonthlySun(months.map(|x| WattHoursPerSquareMetre(f64::from(x)))));
    setup.trip.own_air = Some(Celsius(-4.5));
    setup.trip.ground_albedo_frac = 0.65;
    setup.prices = Prices {
        currency: "Kč".to_owned(),
        solar_per_100w: Money(2999.9),
        solar_kg_per_100w: Kilograms(5.25),
        lead_per_100ah: Money(4500.0),
        lead_kg_per_100ah: Kilograms(27.0),
        lithium_per_100ah: Money(9999.99),
        lithium_kg_per_100ah: Kilograms(11.5),
        dcdc: Money(6000.0),
    };
    setup.readings = vec![
        Reading { at: Hours(15.5), kind: ReadingKind::StateOfCharge { soc_frac: 0.785 } },
        Reading {
            at: Hours(40.25),
            kind: ReadingKind::Voltage { volts: Volts(25.36), rested: Hours(2.75) },
        },
        Reading { at: Hours(63.0), kind: ReadingKind::Used { amp_hours: AmpHours(47.3) } },
    ];
    setup.correction =
        Correction { use_factor: 1.125, sun_factor: 0.873, restart: Some((Hours(63.0), 0.512)) };
    setup.cables.push(CableRun {
        name: "Wechselrichter".to_owned(),
        load_id: None,
        amps: Amps(125.125),
        length: Metres(1.85),
        size: ConductorSize::Awg { gauge: -1 },
        working: Celsius(70.5),
        fuse: Amps(150.0),
        critical: true,
    });
    setup
}
