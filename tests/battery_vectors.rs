//! Battery figures against numbers from outside the project. The source stands beside each.

use crate::reference::peukert::{SLOW_LIMIT, peukert_exponent, peukert_time};
use crate::reference::taper::{absorbed, absorption_time, charge_time};
use nightbank::model::{Bank, BatteryPlace, Chemistry, SystemVoltage};
use nightbank::physics::battery::rate::{Kinetic, kinetic_charge};
use nightbank::physics::battery::storage::{ParkedDay, parked};
use nightbank::physics::battery::{BankPhysics, BankState, cell_data, charge_stages};
use nightbank::units::{AmpHours, Amps, Celsius, Hours, Ohms, Volts, Watts};

fn near(got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "got {got}, want {want} +- {tolerance}");
}

/// The reference itself: published worked examples of Peukert's rule, and the same formula recomputed.
#[test]
fn peukert_as_published() {
    let time = |c, h, k, i| peukert_time(AmpHours(c), Hours(h), k, Amps(i)).0;
    let charge = |c, h, k, i| time(c, h, k, i) * i;
    // Published: Cp = 100 Ah at 1 A, k = 1.2, 5 A: 14.5 h.
    near(time(100.0, 100.0, 1.2, 5.0), 14.4956, 1e-3);
    // The classic trap: the same label read as 100 Ah at 20 h must be 20 h, not 14.5.
    near(time(100.0, 20.0, 1.2, 5.0), 20.0, 1e-9);
    near(time(100.0, 20.0, 1.25, 10.0), 8.4090, 1e-3);
    near(time(100.0, 20.0, 1.25, 20.0), 3.5355, 1e-3);
    near(time(100.0, 20.0, 1.25, 50.0), 1.1247, 1e-3);
    for (i, ah) in [(10.0, 93.30), (20.0, 87.06), (50.0, 79.43), (100.0, 74.11)] {
        near(charge(100.0, 20.0, 1.1, i), ah, 0.01);
    }
    near(charge(100.0, 20.0, 1.05, 50.0), 89.13, 0.01);
    near(charge(100.0, 20.0, 1.05, 100.0), 86.09, 0.01);
    // The formula gives 149.5 Ah at 1 A, which no battery does: capped.
    near(charge(100.0, 20.0, 1.25, 1.0), 100.0 * SLOW_LIMIT, 1e-9);
    near(peukert_exponent((Amps(5.0), Hours(20.0)), (Amps(16.0), Hours(5.0))), 1.1918, 1e-4);
}

/// What follows the temperature, at the points it is known by (from memory: lead-acid a fifth more resistance at
/// freezing, LiFePO4 twice; absorption twice as slow 23 K colder; self-discharge twice as fast 10 K warmer).
#[test]
fn laws_of_temperature_pass_through_their_points() {
    use nightbank::physics::battery::temperature as law;
    let resistance = |chemistry, celsius| law::resistance_factor(chemistry, Celsius(celsius));
    for lead in [Chemistry::Flooded, Chemistry::Agm, Chemistry::Gel] {
        near(resistance(lead, 25.0), 1.0, 1e-12);
        near(resistance(lead, 0.0), 1.2, 1e-12);
    }
    near(resistance(Chemistry::LiFePo4, 25.0), 1.0, 1e-12);
    near(resistance(Chemistry::LiFePo4, 0.0), 2.0, 0.15);
    near(law::taper_factor(Celsius(25.0)), 1.0, 1e-12);
    near(law::taper_factor(Celsius(2.0)), 2.0, 0.01);
    for (celsius, factor) in [(10.0, 0.5), (20.0, 1.0), (30.0, 2.0), (40.0, 4.0)] {
        near(law::self_discharge_factor(Celsius(celsius)), factor, 1e-12);
    }
    // IEEE 485 ends at 25 F, -3.9; the cubic that goes on below begins where the table ends.
    let size = |celsius| law::lead_size_factor(Celsius(celsius));
    near(size(-3.9 - 1e-6), size(-3.9 + 1e-6), 1e-4);
    near(size(-10.0), 1.70, 0.02);
    // The air is warmest at 15:00, a battery outside at 18:00, and both are at their mean six hours later.
    let air = |hour| law::air_temperature(Celsius(10.0), 5.0, hour).0;
    for (hour, celsius) in [(3.0, 5.0), (9.0, 10.0), (15.0, 15.0), (21.0, 10.0)] {
        near(air(hour), celsius, 1e-9);
        let outside =
            law::unheated_temperature(BatteryPlace::Outside, Celsius(10.0), 5.0, hour + 3.0).0;
        near(outside - 10.0, 0.65 * (celsius - 10.0), 1e-9);
    }
}

/// Conditions follow the temperature: the charge voltage of lead-acid rises by 24 mV a kelvin in the cold (usual
/// range 18 to 30, from memory), that of LiFePO4 stays; 25 W for 100 Ah of 12 V heat a frozen LiFePO4 battery.
#[test]
fn conditions_follow_temperature_and_voltage() {
    for (system, times) in [(SystemVoltage::V12, 1.0), (SystemVoltage::V24, 2.0)] {
        let volts = |chemistry, celsius| {
            let bank = Bank { chemistry, system, ..Bank::default() };
            BankPhysics::new(&bank, Hours(1.0)).conditions(Celsius(celsius)).absorption.0 / times
        };
        for lead in [Chemistry::Flooded, Chemistry::Agm, Chemistry::Gel] {
            assert!((14.0..=14.8).contains(&volts(lead, 25.0)), "{lead:?}");
            let per_k = (volts(lead, 5.0) - volts(lead, 25.0)) / 20.0;
            assert!((0.018..=0.030).contains(&per_k), "{lead:?} {per_k}");
        }
        near(volts(Chemistry::LiFePo4, 5.0), volts(Chemistry::LiFePo4, 25.0), 1e-12);
        let heated =
            Bank { chemistry: Chemistry::LiFePo4, heated: true, system, ..Bank::default() };
        let conditions = BankPhysics::new(&heated, Hours(1.0)).conditions(Celsius(-5.0));
        near(conditions.heating.0, 25.0 * times * heated.rated_capacity().0 / 100.0, 1e-9);
    }
}

/// A charger with more current than the battery takes brings it to the charge voltage; at a twentieth more it is half
/// the way there. A step of charge is taken at the voltage told for its current.
#[test]
fn the_voltage_while_charging_is_told_and_used() {
    let bank = Bank { chemistry: Chemistry::LiFePo4, ..Bank::default() };
    let physics = BankPhysics::new(&bank, Hours(0.1));
    let c = physics.conditions(Celsius(25.0));
    let state = BankState::rested(0.5);
    let most = physics.max_charge_current(&state, &c);
    let at = |share: f64| physics.charging_volts(&state, &c, most * share).0;
    assert!(at(1.0) < c.absorption.0 - 0.2);
    near(at(1.05), (at(1.0) + c.absorption.0) / 2.0, 1e-9);
    near(at(1.1), c.absorption.0, 1e-9);
    for chemistry in Chemistry::ALL {
        let physics = BankPhysics::new(&Bank { chemistry, ..Bank::default() }, Hours(0.1));
        let c = physics.conditions(Celsius(25.0));
        let mut state = BankState::rested(0.5);
        let told = physics.charging_volts(&state, &c, Amps(8.0));
        let flow = physics.charge(&mut state, &c, told * Amps(8.0));
        near(flow.current.0, 8.0, 0.1);
        near(flow.volts.0, told.0, 0.05);
    }
}

/// A chemistry corrected by hand brings its usual lowest level along, and leaves one that the user set.
#[test]
fn the_usual_lowest_level_follows_the_chemistry() {
    for (set, expected) in [(0.5, 0.1), (0.35, 0.35)] {
        let mut bank = Bank { chemistry: Chemistry::Agm, soc_min_frac: set, ..Bank::default() };
        bank.set_chemistry(Chemistry::LiFePo4);
        assert_eq!((bank.chemistry, bank.soc_min_frac), (Chemistry::LiFePo4, expected));
    }
}

/// Manwell & McGowan 1993: recomputed from the published formula, q = 100 Ah, c = 0.30, k = 1 /h,
/// and its limits.
#[test]
fn kinetic_model() {
    let charge = |t| kinetic_charge(AmpHours(100.0), 0.30, 1.0, Hours(t)).0;
    for (t, ah) in [(0.1, 31.05), (1.0, 40.40), (5.0, 68.33), (10.0, 81.08), (20.0, 89.55)] {
        near(charge(t), ah, 0.01);
    }
    near(charge(100.0), 97.72, 0.01);
    near(charge(1e-12), 30.0, 1e-6);
    near(charge(1e9), 100.0, 1e-3);
}

/// Peukert exponents as usual, from memory.
fn usual_exponents(chemistry: Chemistry) -> (f64, f64) {
    match chemistry {
        Chemistry::Flooded => (1.2, 1.3),
        Chemistry::Agm => (1.05, 1.15),
        Chemistry::Gel => (1.10, 1.20),
        Chemistry::LiFePo4 => (1.0, 1.05),
    }
}

/// The wells of each chemistry stand for the usual Peukert exponents.
#[test]
fn wells_match_the_usual_exponents() {
    for chemistry in Chemistry::ALL {
        let (low, high) = usual_exponents(chemistry);
        let cell = cell_data(chemistry);
        let charge = |t: f64| {
            kinetic_charge(AmpHours(1.0), cell.available_frac, cell.recovery_per_h, Hours(t)).0
        };
        let exponent = peukert_exponent(
            (Amps(charge(20.0) / 20.0), Hours(20.0)),
            (Amps(charge(5.0) / 5.0), Hours(5.0)),
        );
        println!("{chemistry:?}: exponent between 20 h and 5 h {exponent:.3}");
        assert!(exponent >= low - 0.005 && exponent <= high + 0.005, "{chemistry:?} {exponent}");
    }
}

/// The wells as the simulation steps them, emptied at constant currents, against Peukert's rule with
/// the usual exponents (from memory, as above): they last as long as an exponent in that range says, with
/// 6 % beside it, from the 20 h rate down to two hours.
#[test]
fn the_wells_last_as_long_as_peukert_says() {
    for chemistry in Chemistry::ALL {
        let (low, high) = usual_exponents(chemistry);
        let cell = cell_data(chemistry);
        let (rated, dt) = (AmpHours(100.0), Hours(1.0 / 60.0));
        let wells = Kinetic::new(rated, cell.available_frac, cell.recovery_per_h, dt);
        for current in [5.0, 7.5, 10.0, 20.0, 35.0] {
            let current = Amps(current);
            let (mut difference_ah, mut steps) = (0.0, 0_u32);
            let mut out = AmpHours::ZERO;
            while out + wells.stranded(difference_ah) < rated {
                difference_ah = wells.advance(difference_ah, current);
                out += current * dt;
                steps += 1;
            }
            let lasted = f64::from(steps) * dt.0;
            let by = |exponent| peukert_time(rated, Hours(20.0), exponent, current).0;
            println!(
                "{chemistry:?} {current:?}: {lasted:.2} h, {:.2} to {:.2} h",
                by(high),
                by(low)
            );
            let within = by(high) * 0.94 - 0.02..=by(low) * 1.06 + 0.02;
            assert!(within.contains(&lasted), "{chemistry:?} {current:?}: {lasted}, {within:?}");
        }
    }
}

/// The reference itself: Q_rem = 20 Ah, I0 = 20 A, tau = 1 h: to 2 A in 2.303 h with 18.0 Ah put back;
/// one hour from 80 % returns 12.6 Ah however big the charger.
#[test]
fn the_analytic_taper() {
    let tau = Hours(1.0);
    near(absorption_time(AmpHours(20.0), tau, Amps(2.0)).0, std::f64::consts::LN_10, 1e-4);
    near(absorbed(AmpHours(20.0), tau, Hours(std::f64::consts::LN_10)).0, 18.0, 1e-4);
    near(absorbed(AmpHours(20.0), tau, Hours(1.0)).0, 12.64, 0.01);
    // Rule (from memory): the last 15 to 20 % of lead-acid takes 4 to 6 h.
    let last = charge_time(AmpHours(100.0), tau, Amps(20.0), 0.8, 0.997);
    assert!((4.0..=6.0).contains(&last.0), "{}", last.0);
}

/// The charge step of the simulation against the analytic taper, charger large enough: what is stored in
/// a quarter of an hour is that of a taper slowed by the charge efficiency at its beginning.
#[test]
fn the_charge_step_follows_the_analytic_taper() {
    let dt = Hours(0.25);
    for chemistry in Chemistry::ALL {
        let bank = BankPhysics::new(&Bank { chemistry, ..Bank::default() }, dt);
        let conditions = bank.conditions(Celsius(25.0));
        let mut state = BankState::rested(0.95);
        for _ in 0..12 {
            let before = state.soc_frac;
            let missing = bank.capacity * (1.0 - before);
            let expected = absorbed(missing, conditions.taper / bank.charge_frac(before), dt);
            bank.charge(&mut state, &conditions, Watts(5000.0));
            let leak = conditions.self_discharge * dt;
            let stored = bank.capacity * (state.soc_frac - before) + leak;
            near(stored.0, expected.0, 1e-9 * bank.capacity.0);
        }
    }
}

/// A whole charge at 20 A from half full against bulk and taper without losses, to the end of charge:
/// what the battery loses makes it longer, by a band that its charge efficiency sets.
#[test]
fn a_whole_charge_against_bulk_and_taper() {
    for chemistry in Chemistry::ALL {
        let bank = Bank { chemistry, ..Bank::default() };
        let cell = cell_data(chemistry);
        let stages = charge_stages(&bank, Celsius(25.0), 0.5, Amps(20.0), Hours(1.0));
        let full = stages.expect("it charges").full;
        let end_frac = 1.0 - cell.end_of_charge_c * cell.taper.0;
        let lossless = charge_time(bank.capacity_20h, cell.taper, Amps(20.0), 0.5, end_frac);
        let ratio = full / lossless;
        println!("{chemistry:?}: {full:?} for {lossless:?}, {ratio:.3}");
        let band = match chemistry {
            Chemistry::Flooded => 1.3..=2.2,
            Chemistry::Agm | Chemistry::Gel => 1.01..=1.3,
            Chemistry::LiFePo4 => 1.0..=1.02,
        };
        assert!(band.contains(&ratio), "{chemistry:?}: {ratio}, {band:?}");
    }
}

/// An hour of driving from 80 % with a 30 A charger brings about 12.6 Ah to a 100 Ah AGM battery,
/// not 30.
#[test]
fn an_hours_drive_from_four_fifths() {
    let dt = Hours(0.25);
    let bank = BankPhysics::new(&Bank::default(), dt);
    let conditions = bank.conditions(Celsius(25.0));
    let mut state = BankState::rested(0.8);
    let mut put_in = 0.0;
    for _ in 0..4 {
        let flow = bank.charge(&mut state, &conditions, Watts(30.0 * 13.8));
        put_in += flow.current.0 * dt.0;
    }
    assert!((11.5..=13.5).contains(&put_in), "{put_in}");
    let from_half = {
        let mut state = BankState::rested(0.5);
        (0..4)
            .map(|_| bank.charge(&mut state, &conditions, Watts(30.0 * 13.8)).current.0 * dt.0)
            .sum::<f64>()
    };
    assert!((26.0..=31.0).contains(&from_half), "{from_half}");
}

/// Stevens & Corey, 25th IEEE PVSC 1996 (numbers from memory): flooded lead-acid stores on average
/// 91 % of what is put in from 0 to 84 %, 55 % from 79 to 84 %, and less than half above 90 %: 1.5 Ah
/// in for each 1 Ah from half to nearly full. Common practice (no source) says 1.1 to 1.2 Ah. The model
/// lies between the two.
#[test]
fn charge_efficiency_of_flooded_cells() {
    let bank =
        BankPhysics::new(&Bank { chemistry: Chemistry::Flooded, ..Bank::default() }, Hours(0.5));
    let stored_over_put = |from: f64, to: f64| {
        let n = 10_000;
        let step = (to - from) / f64::from(n);
        let put: f64 =
            (0..n).map(|i| step / bank.charge_frac(from + (f64::from(i) + 0.5) * step)).sum();
        (to - from) / put
    };
    assert!((0.91..=0.94).contains(&stored_over_put(0.0, 0.84)));
    assert!((0.55..=0.83).contains(&stored_over_put(0.79, 0.84)));
    assert!((0.45..=0.83).contains(&stored_over_put(0.90, 1.0)));
    near(1.0 / stored_over_put(0.5, 0.98), 1.3, 0.03);
}

/// Coulombic efficiency of a full charge lies in the usual bands (from memory).
#[test]
fn charge_efficiency_bands() {
    for chemistry in Chemistry::ALL {
        let (low, high) = match chemistry {
            // Against measurements instead: see the test above.
            Chemistry::Flooded => continue,
            Chemistry::Agm => (0.95, 0.98),
            Chemistry::Gel => (0.92, 0.97),
            Chemistry::LiFePo4 => (0.99, 1.0),
        };
        let table = cell_data(chemistry).charge_frac;
        let put: f64 = table.windows(2).map(|pair| 0.05 / (0.5 * (pair[0] + pair[1]))).sum();
        let frac = 1.0 / put;
        assert!(frac >= low && frac <= high, "{chemistry:?} {frac}");
    }
}

/// Energy out over energy in of a slow full cycle: AGM 0.80 to 0.90, LiFePO4 0.92 to 0.97, gel 0.80
/// to 0.88, flooded 0.70 to 0.80 (from memory). A real off-grid system with flooded batteries came
/// to 62 % (published), its charge reaching full more often.
#[test]
fn energy_efficiency_of_a_cycle() {
    for chemistry in Chemistry::ALL {
        let (low, high) = match chemistry {
            Chemistry::Flooded => (0.62, 0.82),
            Chemistry::Agm => (0.80, 0.90),
            Chemistry::Gel => (0.78, 0.88),
            // At a tenth of the current the band is told for it loses less.
            Chemistry::LiFePo4 => (0.92, 0.99),
        };
        let bank = BankPhysics::new(&Bank { chemistry, ..Bank::default() }, Hours(0.5));
        let conditions = bank.conditions(Celsius(25.0));
        let mut state = BankState::rested(1.0);
        let (mut out, mut back) = (0.0, 0.0);
        while state.soc_frac > 0.4 {
            out += bank.discharge(&mut state, &conditions, Watts(60.0)).given.0;
        }
        for _ in 0..400 {
            if state.soc_frac < 0.98 {
                back += bank.charge(&mut state, &conditions, Watts(150.0)).taken.0;
            }
        }
        // What is still missing counts as if it went in at the same efficiency.
        let frac = out / back * (state.soc_frac - 0.4) / 0.6;
        println!("{chemistry:?}: {frac:.3}");
        assert!(frac >= low && frac <= high, "{chemistry:?} {frac}");
    }
}

/// 94 A from 12.2 V at rest leaves about 11.0 to 11.3 V (4 mOhm battery, 2.4 mOhm cable and 0.3 to
/// 0.6 V polarisation, trade figure from memory).
#[test]
fn a_kettle_pulls_the_voltage_down() {
    let bank = BankPhysics::new(&Bank::default(), Hours(0.5));
    let conditions = bank.conditions(Celsius(25.0));
    let state = BankState::rested(0.48);
    let at_battery = bank.sagging_volts(&state, &conditions, Watts(94.0 * 11.3));
    let at_inverter = at_battery.0 - 94.0 * 0.0024;
    assert!((10.9..=11.4).contains(&at_inverter), "{at_inverter}");
}

/// Lead-acid recovers: an hour after a heavy draw the same appliance pulls it down less than right
/// after it, by tenths of a volt (common practice, no source). At the same charge only what the draw
/// left out of reach makes the difference.
#[test]
fn a_battery_sags_deeper_right_after_a_heavy_draw() {
    let bank = BankPhysics::new(&Bank::default(), Hours(0.5));
    let conditions = bank.conditions(Celsius(25.0));
    let mut state = BankState::rested(0.9);
    bank.discharge(&mut state, &conditions, Watts(400.0));
    let after = bank.sagging_volts(&state, &conditions, Watts(100.0));
    let rested = bank.sagging_volts(&BankState::rested(state.soc_frac), &conditions, Watts(100.0));
    let deeper = rested - after;
    assert!((0.05..=0.4).contains(&deeper.0), "{deeper:?}");
    for _ in 0..24 {
        bank.rest(&mut state, &conditions);
    }
    let recovered = bank.sagging_volts(&state, &conditions, Watts(100.0));
    assert!((rested - recovered).0.abs() < 0.2 * deeper.0, "{rested:?} {recovered:?}");
}

/// 65 mA is 1.56 Ah a day and 47 Ah a month; 0.2 A is 34 Ah a week (trade figures).
#[test]
fn parked_with_something_left_on() {
    near(Amps(0.065).0 * 24.0, 1.56, 1e-9);
    let lossless = |amps: f64, days: f64| (Amps(amps) * Hours(24.0 * days)).0;
    near(lossless(0.065, 30.0), 46.8, 0.2);
    near(lossless(0.2, 7.0), 33.6, 0.5);
    let bank = BankPhysics::new(&Bank::default(), Hours(0.5));
    let stay = parked(&bank, 1.0, Watts(0.065 * 12.5), |_| ParkedDay::steady(Celsius(15.0)));
    let days = stay.until_low.0 / 24.0;
    // 50 Ah within reach of the limit at 15 degrees Celsius is less: factor 1.12.
    assert!((24.0..=32.0).contains(&days), "{days}");
    assert!(stay.until_empty > stay.until_low);
    // Freezing points of lead-acid (from memory): full -55, half -23, a quarter -15 degrees Celsius;
    // the half allowed lies a little higher in the cold.
    assert_eq!(stay.freezes_at_first, Some(Celsius(-55.0)));
    assert!(stay.freezes_at_low.is_some_and(|t| (-27.0..=-23.0).contains(&t.0)));
    // Left with 0.26 A at -10 degrees, a flooded battery of 100 Ah is down to 9 %, where it freezes at
    // -10, after 91 Ah, some two weeks, and flat a day and a half later (by hand; freezing points of -7
    // when flat and -15 at a quarter, from memory).
    let bank100 = Bank { chemistry: Chemistry::Flooded, ..Bank::default() };
    let stay = parked(&BankPhysics::new(&bank100, Hours(0.5)), 1.0, Watts(3.2), |_| {
        ParkedDay::steady(Celsius(-10.0))
    });
    let frozen = stay.freezes_after.expect("freezes").0 / 24.0;
    assert!((13.0..=15.0).contains(&frozen), "{frozen}");
    assert!(stay.until_empty.0 / 24.0 > frozen + 1.0 && stay.until_low < stay.until_empty);
    assert_eq!(stay.freezes_at_flat, Some(Celsius(-7.0)));
    let mild = parked(&BankPhysics::new(&bank100, Hours(0.5)), 1.0, Watts(3.2), |_| {
        ParkedDay::steady(Celsius(-5.0))
    });
    assert_eq!(mild.freezes_after, None);
    let flat = parked(&bank, 0.25, Watts(0.0), |_| ParkedDay::steady(Celsius(15.0)));
    assert_eq!((flat.freezes_at_first, flat.until_low), (Some(Celsius(-15.0)), Hours(0.0)));
    let lithium =
        BankPhysics::new(&Bank { chemistry: Chemistry::LiFePo4, ..Bank::default() }, Hours(0.5));
    assert_eq!(
        parked(&lithium, 1.0, Watts(1.0), |_| ParkedDay::steady(Celsius(15.0))).freezes_at_low,
        None
    );
}

/// Usable energy: lead-acid 100 Ah x 12.1 V x 0.5 = 605 Wh; LiFePO4 100 Ah is 1280 Wh (trade).
#[test]
fn usable_energy() {
    let usable = |chemistry: Chemistry, soc_min_frac: f64| {
        let bank =
            BankPhysics::new(&Bank { chemistry, soc_min_frac, ..Bank::default() }, Hours(0.5));
        bank.usable(&bank.conditions(Celsius(25.0))).0
    };
    near(usable(Chemistry::Agm, 0.5), 605.0, 30.0);
    near(usable(Chemistry::LiFePo4, 0.0), 1280.0, 40.0);
}

/// 24 V halves the current and quarters the loss in the same cable (Ohm's law).
#[test]
fn a_24_volt_bank_of_the_same_energy() {
    let run = |bank: Bank, cable: f64| {
        let bank = BankPhysics::new(&Bank { cable: Ohms(cable), ..bank }, Hours(0.5));
        let mut state = BankState::rested(0.9);
        let flow = bank.discharge(&mut state, &bank.conditions(Celsius(25.0)), Watts(100.0));
        near(flow.residual().0, 0.0, 1e-9);
        (flow, state.soc_frac)
    };
    let twelve = Bank { capacity_20h: AmpHours(200.0), ..Bank::default() };
    let twenty_four = Bank { system: SystemVoltage::V24, ..Bank::default() };
    let ((a, soc_a), (b, soc_b)) = (run(twelve.clone(), 0.0), run(twenty_four.clone(), 0.0));
    near(a.current.0 / b.current.0, 2.0, 1e-9);
    near(soc_a, soc_b, 1e-12);
    near(a.lost_resistance.0, b.lost_resistance.0, 1e-9);
    near(b.volts.0, 2.0 * a.volts.0, 1e-9);
    assert_eq!(a.lost_cable.0, 0.0);
    let (a, b) = (run(twelve, 0.004).0, run(twenty_four, 0.004).0);
    near(a.lost_cable.0, a.current.0 * a.current.0 * 0.004 * 0.5, 1e-9);
    // A little more than four times, as what is lost has to be drawn as well.
    near(a.lost_cable / b.lost_cable, 4.0, 0.02);
    near(a.given.0, 50.0, 1e-6);
}

/// Charge voltages of a 12 V battery at 25 degrees Celsius lie in the usual ranges (from memory).
#[test]
fn charge_voltages() {
    for chemistry in Chemistry::ALL {
        let (low, high) = match chemistry {
            Chemistry::Flooded => (14.4, 14.8),
            Chemistry::Agm => (14.4, 14.7),
            Chemistry::Gel => (14.1, 14.4),
            Chemistry::LiFePo4 => (14.0, 14.6),
        };
        let v = cell_data(chemistry).absorption;
        assert!(v >= Volts(low) && v <= Volts(high), "{chemistry:?}");
    }
}

/// EN 50272-2 / IEC 62485-2: formula as published, gassing currents from memory, results by
/// recomputing: six cells of 100 Ah.
#[test]
fn hydrogen_asks_for_fresh_air() {
    use nightbank::model::{Bank, SystemVoltage};
    use nightbank::physics::battery::ventilation::{ventilation, ventilation_of};
    let air = |chemistry| ventilation(chemistry, 6, AmpHours(100.0));
    for (chemistry, m3_per_h, cm2) in [
        (Chemistry::Flooded, 0.600, 16.8),
        (Chemistry::Agm, 0.240, 6.72),
        (Chemistry::Gel, 0.240, 6.72),
    ] {
        let asked = air(chemistry).expect("lead makes hydrogen");
        assert!((asked.air_m3_per_h - m3_per_h).abs() < 1e-9, "{chemistry:?}: {asked:?}");
        assert!((asked.opening_cm2 - cm2).abs() < 1e-9, "{chemistry:?}: {asked:?}");
    }
    assert_eq!(air(Chemistry::LiFePo4), None);
    // Two blocks in parallel make twice the gas, at 24 V the cells of both halves.
    let bank = Bank { chemistry: Chemistry::Flooded, parallel: 2, ..Bank::default() };
    let twice = ventilation_of(&bank).expect("lead").air_m3_per_h;
    assert!((twice - 2.0 * 0.6 * bank.capacity_20h.0 / 100.0).abs() < 1e-9);
    let bank = Bank { system: SystemVoltage::V24, ..bank };
    assert!((ventilation_of(&bank).expect("lead").air_m3_per_h / twice - 2.0).abs() < 1e-9);
}

/// A half-hour step, charging or discharging, ends where a hundred steps of eighteen seconds end: in bulk, through the
/// beginning of the taper, deep in it, and down to an empty battery. The quick step without books ends there too.
#[test]
fn a_long_step_ends_where_many_short_ones_do() {
    for chemistry in Chemistry::ALL {
        for celsius in [25.0, 2.0] {
            for (soc_frac, power) in [
                (0.9, -30.0),
                (0.6, -450.0),
                (0.31, -300.0),
                (0.3, 40.0),
                (0.5, 120.0),
                (0.72, 240.0),
                (0.8, 400.0),
                (0.9, 120.0),
                (0.97, 60.0),
            ] {
                let play = |dt: f64, steps: usize| {
                    let bank = Bank { chemistry, ..Bank::default() };
                    let physics = BankPhysics::new(&bank, Hours(dt));
                    let c = physics.conditions(Celsius(celsius));
                    let (mut booked, mut quick) =
                        (BankState::rested(soc_frac), BankState::rested(soc_frac));
                    for _ in 0..steps {
                        if power < 0.0 {
                            physics.discharge(&mut booked, &c, Watts(-power));
                        } else {
                            physics.charge(&mut booked, &c, Watts(power));
                        }
                        physics.advance(&mut quick, &c, Watts(power));
                    }
                    (booked, quick)
                };
                let (long, quick) = play(0.5, 1);
                let (short, quick_short) = play(0.005, 100);
                let what = format!(
                    "{chemistry:?} {celsius} {soc_frac} {power}: {long:?} {quick:?} {short:?}"
                );
                let moved = (short.soc_frac - soc_frac).abs();
                // A step takes the charge efficiency of its beginning; that of flooded cells falls steeply.
                let off_by = if chemistry == Chemistry::Flooded { 0.08 } else { 0.03 };
                assert!((long.soc_frac - short.soc_frac).abs() < 0.0002 + off_by * moved, "{what}");
                assert!((quick.soc_frac - long.soc_frac).abs() < 0.0002 + 0.003 * moved, "{what}");
                assert!((quick_short.soc_frac - short.soc_frac).abs() < 2e-5, "{what}");
                assert!(
                    (quick.difference_ah - long.difference_ah).abs()
                        < 0.02 + 0.01 * long.difference_ah.abs(),
                    "{what}"
                );
                assert_eq!((long.soc_frac - soc_frac) > 0.0, power > 0.0, "{what}");
            }
        }
    }
}

/// What a step books, by Ohm's law: drawn current squared times the resistance, which is 60 % more in an empty
/// battery than in a full one (common practice, no source), and what is offered taken where it fits.
#[test]
fn a_step_books_what_ohms_law_says() {
    for chemistry in Chemistry::ALL {
        let physics = BankPhysics::new(&Bank { chemistry, ..Bank::default() }, Hours(0.5));
        let c = physics.conditions(Celsius(25.0));
        for soc_frac in [1.0, 0.7, 0.55] {
            let mut state = BankState::rested(soc_frac);
            let flow = physics.discharge(&mut state, &c, Watts(240.0));
            let amps = -flow.current.0;
            let ohm = c.resistance.0 * (1.0 + 0.6 * (1.0 - soc_frac).powi(2));
            near(flow.lost_resistance.0, amps * amps * ohm * 0.5, 1e-9);
            near(flow.lost_cable.0, amps * amps * Bank::default().cable.0 * 0.5, 1e-9);
            near(flow.given.0, 120.0, 1e-6);
            let before = physics.curve.volts(soc_frac).0;
            assert!(
                flow.volts.0 < before - amps * ohm * 0.99 && flow.volts.0 > before - 0.4,
                "{flow:?}"
            );
            near(flow.residual().0, 0.0, 1e-9);
            let leak = c.self_discharge.0 * 0.5 / physics.capacity.0;
            near(state.soc_frac, soc_frac - amps * 0.5 / physics.capacity.0 - leak, 1e-9);
            assert!(flow.lost_self.0 > 0.0);
        }
        let mut state = BankState::rested(0.5);
        let flow = physics.charge(&mut state, &c, Watts(90.0));
        near(flow.taken.0, 45.0, 1e-6);
        near(flow.current.0 * flow.volts.0, 90.0, 1e-6);
        let eta = physics.charge_frac(0.5);
        let stored_ah = flow.current.0 * 0.5 * eta;
        let leak = c.self_discharge.0 * 0.5 / physics.capacity.0;
        near(state.soc_frac, 0.5 + stored_ah / physics.capacity.0 - leak, 1e-9);
        near(flow.residual().0, 0.0, 1e-9);
        let rest = physics.rest(&mut state, &c);
        near(rest.lost_self.0, -rest.stored.0, 1e-12);
        near(rest.lost_self.0, c.self_discharge.0 * 0.5 * rest.volts.0, 0.01 * rest.lost_self.0);
        // Nothing offered and nothing asked for are a rest.
        let [offered, asked] = [BankState::rested(0.8); 2];
        let (mut offered, mut asked) = (offered, asked);
        assert_eq!(physics.charge(&mut offered, &c, Watts(0.0)).current, Amps(0.0));
        assert_eq!(physics.discharge(&mut asked, &c, Watts(0.0)).current, Amps(0.0));
        near(offered.soc_frac, asked.soc_frac, 1e-12);
    }
}

/// More than a battery can give: the matched load at half its voltage, no more; and nothing once it is empty.
#[test]
fn no_more_comes_out_than_there_is() {
    let physics = BankPhysics::new(&Bank::default(), Hours(0.005));
    let c = physics.conditions(Celsius(25.0));
    let mut state = BankState::rested(0.9);
    let volts = physics.sagging_volts(&state, &c, Watts(1e6)).0;
    near(volts, physics.curve.volts(0.9).0 / 2.0, 1e-9);
    let flow = physics.discharge(&mut state, &c, Watts(1e6));
    let ohm = c.resistance.0 * (1.0 + 0.6 * 0.1 * 0.1) + Bank::default().cable.0;
    near(-flow.current.0 / (physics.curve.volts(0.9).0 / (2.0 * ohm)), 1.0, 0.02);
    let cold = physics.conditions(Celsius(-20.0));
    let mut state = BankState::rested(cold.empty_frac);
    let flow = physics.discharge(&mut state, &cold, Watts(50.0));
    assert_eq!((flow.given.0, flow.current.0), (0.0, 0.0));
    assert!(cold.empty_frac > 0.2 && cold.low_frac > cold.empty_frac);
    near(cold.low_frac, 1.0 - 0.5 * (1.0 - cold.empty_frac), 1e-12);
}

/// Heated LiFePO4 of 100 Ah in 5 degrees of frost, by hand: 3.1 Wh a kelvin, 0.6 W a kelvin lost. Half an hour at 25 W
/// warms by 3.84 K, the next to 7.33 K, above freezing for 67 % of it; then 21.8 W are enough to reach 10 K, and
/// 6 W hold them.
#[test]
fn cells_are_warmed_and_then_held() {
    let bank = Bank { chemistry: Chemistry::LiFePo4, heated: true, ..Bank::default() };
    let bank = Bank { capacity_20h: AmpHours(100.0), health_frac: 1.0, parallel: 1, ..bank };
    let physics = BankPhysics::new(&bank, Hours(0.5));
    let frost = physics.conditions(Celsius(-5.0));
    let mut state = BankState::rested(0.5);
    for (watts, kelvin, share) in
        [(25.0, 3.842, 0.0), (25.0, 7.330, 0.668), (21.753, 10.0, 1.0), (6.0, 10.0, 1.0)]
    {
        let (power, may_charge) = physics.warm(&mut state, &frost, Watts(300.0));
        near(power.0, watts, 0.01);
        near(state.warmth_k, kelvin, 0.005);
        near(may_charge, share, 0.002);
    }
    // No more than there is to spare; without anything to spare they cool by their time constant of 5.2 h.
    let mut state = BankState::rested(0.5);
    assert_eq!(physics.warm(&mut state, &frost, Watts(7.0)).0, Watts(7.0));
    let mut state = BankState { warmth_k: 10.0, ..BankState::rested(0.5) };
    assert_eq!(physics.warm(&mut state, &frost, Watts(-50.0)).0, Watts(0.0));
    near(state.warmth_k, 10.0 * (-0.5_f64 * 0.6 / 3.1).exp(), 1e-9);
    let plain = BankPhysics::new(&Bank { heated: false, ..bank }, Hours(0.5));
    for (celsius, share) in [(-0.1, 0.0), (0.0, 1.0)] {
        let c = plain.conditions(Celsius(celsius));
        let told = plain.warm(&mut BankState::rested(0.5), &c, Watts(50.0));
        assert_eq!(told, (Watts(0.0), share));
    }
}

/// AGM of 100 Ah, taper of one hour: at nine tenths it accepts 10 A, so that 10 A or more are absorption and less
/// is bulk; with half an ampere-hour missing it is full.
#[test]
fn the_stage_follows_the_current_accepted() {
    use nightbank::physics::battery::ChargeStage::{Absorption, Bulk, Float};
    let bank = Bank { capacity_20h: AmpHours(100.0), health_frac: 1.0, ..Bank::default() };
    let physics = BankPhysics::new(&bank, Hours(0.5));
    let warm = physics.conditions(Celsius(25.0));
    let stage =
        |soc_frac, amps: f64| physics.stage(&BankState::rested(soc_frac), &warm, Amps(amps));
    let accepted = physics.capacity.0 * 0.1 / warm.taper.0;
    assert_eq!(stage(0.9, accepted + 1e-6), Some(Absorption));
    assert_eq!(stage(0.9, accepted - 1e-6), Some(Bulk));
    assert_eq!((stage(0.9, 0.0), stage(0.9, -1.0)), (None, None));
    let full = 1.0 - 0.005 * warm.taper.0;
    assert_eq!((stage(full + 1e-6, 0.0), stage(full - 1e-6, 0.0)), (Some(Float), None));
    let lithium = Bank { chemistry: Chemistry::LiFePo4, ..Bank::default() };
    let physics = BankPhysics::new(&lithium, Hours(0.5));
    let frozen = physics.conditions(Celsius(-1.0));
    assert_eq!(physics.stage(&BankState::rested(0.5), &frozen, Amps(5.0)), None);
}

/// Half way between two rows of IEEE 485 (from memory) the factor lies half way; the rate counts by its logarithm,
/// and lithium goes straight through its points.
#[test]
fn the_cold_goes_straight_between_the_rows() {
    use nightbank::physics::battery::temperature as law;
    for (celsius, factor) in
        [(5.8, 1.275), (-2.5, 1.475), (21.1, 1.0425), (51.7, 0.85), (60.0, 0.85)]
    {
        near(law::lead_size_factor(Celsius(celsius)), factor, 1e-9);
    }
    // At 4.4 degrees 1 / 1.3 is left; half of the loss at the 100 h rate, three quarters between the two.
    let left = |hours: f64| law::capacity_frac(Chemistry::Gel, Celsius(4.4), Hours(hours));
    let loss = 1.0 - 1.0 / 1.3;
    for (hours, share) in [(1.0, 1.0), (8.0, 1.0), (800_f64.sqrt(), 0.75), (100.0, 0.5), (1e9, 0.5)]
    {
        near(left(hours), 1.0 - loss * share, 1e-9);
    }
    let lithium =
        |celsius: f64| law::capacity_frac(Chemistry::LiFePo4, Celsius(celsius), Hours(20.0));
    for (celsius, frac) in
        [(25.0, 1.0), (12.5, 0.925), (0.0, 0.85), (-10.0, 0.775), (-20.0, 0.70), (-100.0, 0.3)]
    {
        near(lithium(celsius), frac, 1e-9);
    }
    for (soc_frac, celsius) in [(0.125, -11.0), (0.25, -15.0), (0.625, -30.0), (0.875, -46.0)] {
        near(law::lead_freezes_at(soc_frac).0, celsius, 1e-9);
    }
    for (celsius, soc_frac) in [(-7.0, 0.0), (-11.0, 0.125), (-23.0, 0.5), (-46.0, 0.875)] {
        near(law::lead_freezes_below(Celsius(celsius)).expect("it freezes"), soc_frac, 1e-9);
    }
}
