//! Facts of the trade, as check values: common practice, no source, unless one is named.

use crate::common::still_air;
use nightbank::forecast::demand::energy_per_day;
use nightbank::model::catalogue::appliance;
use nightbank::model::{Chemistry, Draw, Load, SystemVoltage, Usage};
use nightbank::physics::solar::panel::cold_voltage_rise_frac;
use nightbank::units::{Amps, Celsius, Litres, LitresPerMinute, MilliAmpHours, Volts, Watts};

const MILD: Celsius = Celsius(25.0);

fn wh(draw: Draw, usage: Usage) -> f64 {
    energy_per_day(&Load { draw, usage, ..Load::default() }, &still_air(MILD)).0
}

fn amps(amps: f64, volts: f64) -> Draw {
    Draw::Current { amps: Amps(amps), volts: Volts(volts) }
}

fn watts(watts: f64) -> Draw {
    Draw::Power { watts: Watts(watts) }
}

#[test]
fn a_quarter_amp_of_standby_is_over_seventy_watt_hours_a_day() {
    let day = wh(amps(0.26, 12.0), Usage::AlwaysOn);
    assert!(day > 70.0 && (day - 74.88).abs() < 1e-9, "{day}");
}

#[test]
fn a_motor_mover_takes_19_wh_in_5_minutes_and_57_in_15() {
    let mover = |minutes| wh(amps(19.0, 12.0), Usage::Daily { minutes });
    assert!((mover(5.0) - 19.0).abs() < 1e-9);
    assert!((mover(15.0) - 57.0).abs() < 1e-9);
    let uses = wh(amps(19.0, 12.0), Usage::Uses { per_day: 3.0, seconds: 300.0 });
    assert!((uses - 57.0).abs() < 1e-9);
}

#[test]
fn a_radio_of_7_2_w_takes_14_4_wh_in_2_hours() {
    assert!((wh(watts(7.2), Usage::Daily { minutes: 120.0 }) - 14.4).abs() < 1e-9);
}

#[test]
fn a_phone_of_5000_mah_takes_24_wh_a_charge() {
    let charge = wh(
        watts(10.0),
        Usage::Charges {
            every_days: 1.0,
            cell: MilliAmpHours(5000.0),
            cell_volts: Volts(3.85),
            charger_frac: 0.8,
        },
    );
    assert!((charge - 24.06).abs() < 0.01, "{charge}");
}

#[test]
fn an_on_board_tank_is_pumped_twice() {
    let pumped = |pumped_twice| {
        let usage = Usage::Litres {
            litres_per_day: Litres(20.0),
            flow: LitresPerMinute(10.0),
            pumped_twice,
        };
        wh(watts(60.0), usage)
    };
    // 20 L at 10 L/min is 2 min of 60 W: 2 Wh, and the same again.
    assert!((pumped(false) - 2.0).abs() < 1e-9);
    assert!((pumped(true) - 4.0).abs() < 1e-9);
}

/// Physics: 1 L of water from 15 to 100 degrees Celsius, 4.186 kJ/(kg K), takes 98.9 Wh; the
/// catalogue's kettles must take no less for the litre a day they boil, and no more than a kettle
/// of 80 % would.
#[test]
fn a_litre_to_the_boil_takes_98_9_wh_of_heat() {
    let heat = 4186.0 * 1.0 * (100.0 - 15.0) / 3600.0;
    assert!((heat - 98.9_f64).abs() < 0.1, "{heat}");
    for kettle in [82, 83] {
        let load = appliance(kettle).expect("listed").to_load(1, SystemVoltage::V12);
        let day = energy_per_day(&load, &still_air(MILD)).0;
        assert!((heat..heat / 0.8).contains(&day), "{kettle}: {day}");
    }
}

#[test]
fn a_fridge_does_not_run_all_day_and_runs_more_in_the_heat() {
    let fridge = appliance(1).expect("listed").to_load(1, SystemVoltage::V12);
    let at = |celsius| energy_per_day(&fridge, &still_air(Celsius(celsius))).0;
    // A label of 45 W times 24 h would be 1080 Wh; at 25 degrees it is about a third.
    assert!((at(25.0) - 324.0).abs() < 1.0, "{}", at(25.0));
    assert!(at(35.0) > 1.6 * at(25.0) && at(15.0) < 0.6 * at(25.0));
}

/// What the catalogue's table test works out by hand is what the forecast counts, standby apart.
#[test]
fn the_forecast_counts_a_catalogue_row_by_its_rule_of_use() {
    for (number, expected) in [
        (1, 45.0 * 0.30 * 24.0),
        (41, 2.0 * 4.0),
        (57, 45.0 * 5.0),
        (70, 6.0 * 24.0),
        (75, 12.0 * 8.0),
        (86, 1250.0 * 0.1 + 1.5 * 23.9),
        (102, 2.0),
        (108, 17.4 * 36.0 / 0.85 / 2.0),
        (126, 1.4 * 24.0),
    ] {
        let load = appliance(number).expect("listed").to_load(1, SystemVoltage::V12);
        let day = energy_per_day(&load, &still_air(MILD)).0;
        assert!((day - expected).abs() < 0.02 * expected, "{number}: {day} {expected}");
    }
}

#[test]
fn lead_acid_is_used_to_half_and_lithium_to_a_tenth() {
    assert!((Chemistry::Agm.usual_soc_min_frac() - 0.5).abs() < 1e-12);
    assert!((Chemistry::Flooded.usual_soc_min_frac() - 0.5).abs() < 1e-12);
    assert!((Chemistry::LiFePo4.usual_soc_min_frac() - 0.1).abs() < 1e-12);
}

/// NEC 690.7(A), correction for crystalline silicon by the lowest expected temperature (from memory).
#[test]
fn a_cold_panel_has_the_voltage_of_the_electrical_code() {
    for (air, factor) in [
        (20.0, 1.02),
        (10.0, 1.06),
        (5.0, 1.08),
        (0.0, 1.10),
        (-5.0, 1.12),
        (-10.0, 1.14),
        (-20.0, 1.18),
        (-30.0, 1.21),
        (-40.0, 1.25),
    ] {
        let ours = 1.0 + cold_voltage_rise_frac(Celsius(air));
        assert!((ours - factor).abs() <= 0.0101, "{air}: {ours}");
    }
    assert_eq!(cold_voltage_rise_frac(Celsius(35.0)), 0.0);
}
