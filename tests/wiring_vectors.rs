//! Cables and fuses against published tables, published rows and hand-computed drops.

use crate::reference::cable_sizes::{
    circular_mils, circular_mils_needed, iec_factor_to_20c, smallest_awg, smallest_sae,
};
use nightbank::advice::workshop::wiring;
use nightbank::model::{CableRun, ConductorSize, Setup};
use nightbank::physics::ampacity::{self, Insulation, Surroundings};
use nightbank::physics::cable;
use nightbank::physics::fuse::{self, FuseKind, FuseWindow};
use nightbank::units::{Amps, Celsius, Metres, Ohms, SquareMillimetres, Volts};
use proptest::prelude::*;

const COLD: Celsius = Celsius(20.0);

fn mm2(area: f64) -> ConductorSize {
    ConductorSize::Metric { area: SquareMillimetres(area) }
}

fn close(got: f64, expected: f64, tolerance: f64) {
    assert!((got - expected).abs() <= tolerance, "got {got}, expected {expected} +- {tolerance}");
}

/// IEC 60228, class 5, plain copper, largest resistance at 20 degrees Celsius [Ohm/km].
#[test]
fn class_5_resistances() {
    for (area, ohm_per_km) in [
        (0.5, 39.0),
        (0.75, 26.0),
        (1.0, 19.5),
        (1.5, 13.3),
        (2.5, 7.98),
        (4.0, 4.95),
        (6.0, 3.30),
        (10.0, 1.91),
        (16.0, 1.21),
        (25.0, 0.780),
        (35.0, 0.554),
        (50.0, 0.386),
        (70.0, 0.272),
        (95.0, 0.206),
        (120.0, 0.161),
        (150.0, 0.129),
        (185.0, 0.106),
        (240.0, 0.0801),
    ] {
        assert_eq!(cable::ohm_per_km_at_20c(mm2(area)), ohm_per_km);
        // Physics behind the table: no class 5 conductor may beat solid copper of its area, and
        // stranding costs at most about 18 %.
        let over_solid = ohm_per_km * area / cable::COPPER_OHM_MM2_PER_KM;
        assert!((1.0..1.18).contains(&over_solid), "{area}: {over_solid}");
    }
    for area in [0.0, -1.0, f64::NAN] {
        assert_eq!(cable::ohm_per_km_at_20c(mm2(area)), f64::INFINITY);
    }
    // Thicker than the table: twice the copper, half the resistance.
    close(cable::ohm_per_km_at_20c(mm2(480.0)), 0.0801 / 2.0, 1e-12);
}

/// IEC 60228, factor to refer a measured resistance to 20 degrees Celsius; and ours, with the
/// coefficient of annealed copper, within 1 % of it from 5 to 90 degrees.
#[test]
fn temperature_factors() {
    for (at, factor) in [
        (5.0, 1.064),
        (20.0, 1.0),
        (30.0, 0.962),
        (40.0, 0.926),
        (50.0, 0.893),
        (70.0, 0.833),
        (90.0, 0.781),
    ] {
        close(iec_factor_to_20c(Celsius(at)), factor, 5e-4);
        close(cable::temperature_ratio(Celsius(at)) * factor, 1.0, 0.01);
    }
    close(cable::temperature_ratio(Celsius(50.0)), 1.1179, 1e-9);
    close(cable::temperature_ratio(Celsius(70.0)), 1.1965, 1e-9);
}

/// American wire gauge, ASTM B258: area [mm2] and resistance of solid copper [Ohm/km] (printed
/// values from memory, reproduced by the standard's formula).
#[test]
fn american_wire_gauge() {
    for (gauge, area, ohm_per_km) in [
        (16, 1.309, 13.17),
        (14, 2.081, 8.285),
        (12, 3.309, 5.211),
        (10, 5.261, 3.277),
        (8, 8.366, 2.061),
        (6, 13.30, 1.296),
        (4, 21.15, 0.8152),
        (2, 33.63, 0.5127),
        (0, 53.48, 0.3224),
        (-1, 67.43, 0.2557),
        (-3, 107.2, 0.1608),
    ] {
        close(cable::awg_area(gauge).0, area, area * 5e-4);
        let size = ConductorSize::Awg { gauge };
        close(cable::ohm_per_km_at_20c(size), ohm_per_km, ohm_per_km * 5e-4);
    }
}

/// Published: AWG 12 has 6530 circular mils, SAE 12 has 5833, SAE 8 14810, AWG 8 16510.
#[test]
fn sae_gauge_is_thinner() {
    close(circular_mils(cable::awg_area(12)), 6530.0, 5.0);
    close(circular_mils(cable::awg_area(8)), 16510.0, 10.0);
    for gauge in [18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3] {
        let sae = cable::sae_area(gauge).expect("in the table");
        assert!(sae < cable::awg_area(gauge) && sae.0 > 0.88 * cable::awg_area(gauge).0);
    }
    assert_eq!(cable::sae_area(3), None);
}

/// What the page says of a run at 12 V.
fn checked(amps: Amps, length: Metres, working: Celsius) -> wiring::RunVerdict {
    let run = CableRun { amps, length, working, ..CableRun::default() };
    wiring::check(&run, &Setup::default(), Surroundings::default())
}

fn mils(amps: f64, circuit_ft: f64, volts: f64) -> f64 {
    circular_mils_needed(Amps(amps), Metres(circuit_ft * 0.3048), Volts(volts))
}

/// Worked examples of the circular-mil method as published for boat wiring.
#[test]
fn circular_mil_examples() {
    // 10 A, 11 ft out and 10 ft back, 3 % of 12 V: AWG 12 passes, SAE 12 fails, SAE 10 it is.
    let three_percent = mils(10.0, 21.0, 0.36);
    close(three_percent, 6270.8, 0.05);
    assert_eq!(smallest_awg(three_percent), Some(12));
    assert_eq!(smallest_sae(three_percent), Some(10));
    // The same at 10 %.
    let ten_percent = mils(10.0, 21.0, 1.2);
    close(ten_percent, 1881.0, 0.3);
    assert_eq!(smallest_awg(ten_percent), Some(16));
    // 40 ft of circuit, 45 A, 10 % of 12 V.
    let long = mils(45.0, 40.0, 1.2);
    close(long, 16125.0, 0.5);
    assert_eq!(smallest_awg(long), Some(8));
    // 24 V, 3 %, 10 ft of circuit, 100 A: SAE 8 just fails, AWG 8 would pass.
    let heavy = mils(100.0, 10.0, 0.72);
    close(heavy, 14931.0, 0.5);
    assert_eq!(smallest_sae(heavy), Some(6));
    assert_eq!(smallest_awg(heavy), Some(8));
}

/// Two rows of the published 12 V, 3 % table: 15 ft and 20 ft of circuit.
#[test]
fn published_rows_of_the_three_percent_table() {
    let amps = [5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 60.0, 70.0, 80.0, 90.0, 100.0];
    for (circuit_ft, gauges) in [
        (15.0, [16, 12, 10, 10, 8, 8, 6, 6, 4, 4, 4, 2, 2]),
        (20.0, [14, 10, 10, 8, 6, 6, 6, 4, 4, 2, 2, 2, 2]),
    ] {
        for (current, gauge) in amps.into_iter().zip(gauges) {
            let needed = mils(current, circuit_ft, 0.36);
            assert_eq!(smallest_sae(needed), Some(gauge), "{circuit_ft} ft, {current} A");
        }
    }
}

/// The circular-mil constant 10.75 is the resistivity of copper at 29 degrees Celsius, so both
/// methods agree there: independent check of the ohmic path.
#[test]
fn both_methods_agree() {
    for (gauge, amps, one_way_m) in [(12, 10.0, 3.2), (8, 45.0, 6.1), (2, 100.0, 2.5)] {
        let size = ConductorSize::Awg { gauge };
        let drop = cable::voltage_drop(size, Metres(one_way_m), Amps(amps), Celsius(29.3)).0;
        let needed = circular_mils_needed(Amps(amps), Metres(2.0 * one_way_m), Volts(drop));
        let has = circular_mils(cable::awg_area(gauge));
        close(needed / has, 1.0, 0.002);
    }
}

/// Drops computed by hand from the IEC 60228 resistances: mm2, A, metres one way, volts.
#[test]
fn hand_computed_drops() {
    for (area, amps, length, volts) in [
        (2.5, 10.0, 5.0, 0.798),
        (4.0, 10.0, 5.0, 0.495),
        (6.0, 10.0, 5.0, 0.330),
        // Compressor fridge running and starting.
        (1.5, 3.75, 6.0, 0.599),
        (1.5, 11.0, 6.0, 1.756),
        // Inverter.
        (70.0, 170.0, 1.5, 0.139),
        (35.0, 170.0, 1.5, 0.283),
        // Absorption fridge fed from the towing vehicle.
        (2.5, 15.0, 8.0, 1.915),
        (6.0, 15.0, 8.0, 0.792),
    ] {
        let drop = cable::voltage_drop(mm2(area), Metres(length), Amps(amps), COLD);
        close(drop.0, volts, 5.1e-4);
    }
    let warm = cable::voltage_drop(mm2(2.5), Metres(5.0), Amps(10.0), Celsius(50.0));
    close(warm.0, 0.892, 5e-4);
    // 10 A over 5 m: 2.5 mm2 loses 6.65 % of 12 V, 6 mm2 is the first under 3 %.
    let told = checked(Amps(10.0), Metres(5.0), COLD);
    assert_eq!(told.for_3_percent.metric, Some(SquareMillimetres(6.0)));
    assert_eq!(told.for_10_percent.metric, Some(SquareMillimetres(2.5)));
}

/// ISO 10133 table A.1 (from memory, medium confidence).
#[test]
fn iso_10133_currents() {
    for (area, at_70, at_105) in [
        (1.0, 14.0, 20.0),
        (2.5, 25.0, 35.0),
        (6.0, 45.0, 60.0),
        (16.0, 90.0, 130.0),
        (35.0, 160.0, 210.0),
        (70.0, 265.0, 330.0),
        (95.0, 310.0, 390.0),
    ] {
        let at = |insulation| ampacity::table_current(SquareMillimetres(area), insulation).0;
        assert_eq!(at(Insulation::C70), at_70);
        assert_eq!(at(Insulation::C105), at_105);
    }
    // Between two sizes straight on logarithmic scales: 20 mm2 lies half way from 16 to 25, by hand
    // (90 x 120)^0.5 and (130 x 170)^0.5 A. Below the table with the area.
    for (area, insulation, amps) in [
        (20.0, Insulation::C70, 103.923),
        (20.0, Insulation::C105, 148.661),
        (0.5, Insulation::C70, 7.0),
    ] {
        close(ampacity::table_current(SquareMillimetres(area), insulation).0, amps, 1e-3);
    }
    // Above the table with the root of the area (own extrapolation): four times 95 mm2, twice 310 A.
    let four = ampacity::table_current(SquareMillimetres(380.0), Insulation::C70);
    close(four.0, 620.0, 1e-9);
    // What is no area carries nothing.
    for area in [0.0, -6.0, f64::NAN] {
        assert_eq!(ampacity::table_current(SquareMillimetres(area), Insulation::C70), Amps(0.0));
    }
}

/// Boat wiring practice lists 0.75, 0.82 and 0.85 for insulation of 75, 90 and 105 degrees in an
/// engine space at 50 degrees (from memory); the square-root law reproduces all three.
#[test]
fn engine_space_factors() {
    for (limit, factor) in [(75.0, 0.75), (90.0, 0.82), (105.0, 0.85)] {
        close(ampacity::ambient_factor(Celsius(limit), Celsius(50.0)), factor, 0.01);
    }
    assert_eq!(ampacity::ambient_factor(Celsius(70.0), Celsius(70.0)), 0.0);
}

/// Boats' wiring practice for conductors in one bundle: 0.7 for 4 to 6, 0.6 for 7 to 24, 0.5 for more (from memory).
#[test]
fn bundles_carry_less() {
    for (conductors, factor) in
        [(1, 1.0), (3, 1.0), (4, 0.7), (6, 0.7), (7, 0.6), (24, 0.6), (25, 0.5), (200, 0.5)]
    {
        assert_eq!(ampacity::bundle_factor(conductors), factor, "{conductors}");
    }
}

#[test]
fn a_cable_at_its_ampacity_is_as_warm_as_its_insulation_stands() {
    for (ambient, bundled) in [(30.0, 2), (45.0, 2), (30.0, 8), (50.0, 30)] {
        let place =
            Surroundings { insulation: Insulation::C70, ambient: Celsius(ambient), bundled };
        let most = ampacity::ampacity(mm2(6.0), place);
        close(ampacity::conductor_temperature(mm2(6.0), most, place).0, 70.0, 1e-9);
    }
}

/// A short behind 4 milliohms at 12.8 V: 3200 A (computed); a blade or a bolted strip is not made
/// for that, class T is.
#[test]
fn prospective_current_decides_the_make() {
    let short = fuse::prospective_current(Volts(12.8), Ohms(0.004), Ohms::ZERO);
    close(short.0, 3200.0, 1e-6);
    let choice = fuse::choose(Amps(100.0), Amps(100.0), Amps(200.0), short).expect("window");
    assert_eq!((choice.kind, choice.rating), (FuseKind::ClassT, Amps(125.0)));
    assert!(!choice.needs_main_fuse);
    // A thin lamp circuit on the same battery: a blade, but only behind a main fuse.
    let lamp = fuse::choose(Amps(4.0), Amps(4.0), Amps(14.0), short).expect("window");
    assert_eq!((lamp.kind, lamp.rating), (FuseKind::Blade, Amps(5.0)));
    assert!(lamp.needs_main_fuse);
    let weak = fuse::choose(Amps(10.0), Amps(10.0), Amps(25.0), Amps(800.0)).expect("window");
    assert_eq!((weak.kind, weak.rating), (FuseKind::Blade, Amps(15.0)));
}

/// The smallest standard fuse of at least 1.25 times the load, whatever the cable could bear beyond
/// that: 12.5, 22.5 and 37.5 A are 15, 25 and 40 A blades, on a battery whose short a blade cannot
/// interrupt only behind a main fuse (rule: common practice and boat wiring standards, from memory).
#[test]
fn a_thicker_cable_does_not_ask_for_a_larger_fuse() {
    for (load, carries, fuse_a) in
        [(10.0, 25.0, 15.0), (10.0, 45.0, 15.0), (18.0, 45.0, 25.0), (30.0, 60.0, 40.0)]
    {
        let choice = fuse::choose(Amps(load), Amps(load), Amps(carries), Amps(3200.0));
        let choice = choice.expect("window");
        assert_eq!((choice.kind, choice.rating), (FuseKind::Blade, Amps(fuse_a)), "{load} A");
        assert!(choice.needs_main_fuse);
    }
}

/// A fridge that starts with 11 A gets a fuse that holds the start, not the smallest possible.
#[test]
fn the_fuse_holds_the_start() {
    let choice = fuse::choose(Amps(3.75), Amps(11.0), Amps(18.0), Amps(500.0)).expect("window");
    assert_eq!(choice.rating, Amps(7.5));
    let choice = fuse::choose(Amps(3.75), Amps(3.75), Amps(18.0), Amps(500.0)).expect("window");
    assert_eq!(choice.rating, Amps(5.0));
    // 10 A on a cable for 25 A may have 15, 20 or 25 A. None holds a start of 200 A; 25 A comes nearest.
    let choice = fuse::choose(Amps(10.0), Amps(200.0), Amps(25.0), Amps(500.0)).expect("window");
    assert_eq!(choice.rating, Amps(25.0));
}

#[test]
fn no_fuse_fits_a_cable_thinner_than_its_load_needs() {
    assert_eq!(fuse::choose(Amps(20.0), Amps(20.0), Amps(18.0), Amps(500.0)), None);
}

proptest! {
    #[test]
    fn longer_or_more_never_drops_less(area in 0.3..300.0f64, length in 0.1..50.0f64, more_m in 0.0..50.0f64, amps in 0.0..500.0f64, more_a in 0.0..500.0f64, at in -20.0..105.0f64, warmer in 0.0..50.0f64) {
        let base = cable::voltage_drop(mm2(area), Metres(length), Amps(amps), Celsius(at));
        let longer = cable::voltage_drop(mm2(area), Metres(length + more_m), Amps(amps), Celsius(at));
        let stronger = cable::voltage_drop(mm2(area), Metres(length), Amps(amps + more_a), Celsius(at));
        let hotter = cable::voltage_drop(mm2(area), Metres(length), Amps(amps), Celsius(at + warmer));
        prop_assert!(longer >= base && stronger >= base && hotter >= base && base.is_finite());
    }

    #[test]
    fn thicker_never_drops_more_nor_carries_less(area in 0.2..300.0f64, more in 0.0..100.0f64, gauge in -2..22i8) {
        let (length, amps, at) = (Metres(4.0), Amps(12.0), Celsius(50.0));
        prop_assert!(
            cable::voltage_drop(mm2(area + more), length, amps, at)
                <= cable::voltage_drop(mm2(area), length, amps, at)
        );
        let place = Surroundings::default();
        prop_assert!(ampacity::ampacity(mm2(area + more), place) >= ampacity::ampacity(mm2(area), place));
        let (thin, thick) = (ConductorSize::Awg { gauge }, ConductorSize::Awg { gauge: gauge - 1 });
        prop_assert!(cable::voltage_drop(thick, length, amps, at) <= cable::voltage_drop(thin, length, amps, at));
    }

    /// The size told keeps the drop; every thinner one does not, or carries too little for a fuse.
    #[test]
    fn the_smallest_size_keeps_the_drop_and_the_next_thinner_does_not(length in 0.1..30.0f64, amps in 0.1..200.0f64) {
        let drop = |area: f64| cable::voltage_drop(mm2(area), Metres(length), Amps(amps), Celsius(50.0)).0;
        let told = checked(Amps(amps), Metres(length), Celsius(50.0));
        let fits = |area: f64| {
            let carries = ampacity::ampacity(mm2(area), Surroundings::default());
            area >= 1.0 && fuse::choose(Amps(amps), Amps(amps), carries, told.prospective).is_some()
        };
        for (allowed, size) in [(0.36, told.for_3_percent.metric), (1.2, told.for_10_percent.metric)] {
            let thinner = |area: &f64| size.is_none_or(|size| *area < size.0);
            for area in cable::IEC_60228_CLASS_5.map(|(area, _)| area.0).into_iter().filter(thinner) {
                prop_assert!(drop(area) > allowed || !fits(area), "{area} would do");
            }
            prop_assert!(size.is_none_or(|size| drop(size.0) <= allowed));
        }
    }

    #[test]
    fn a_suggested_fuse_lies_in_its_window(load in 0.1..400.0f64, start in 1.0..8.0f64, carries in 1.0..700.0f64, short in 50.0..30_000.0f64) {
        let window = FuseWindow::of(Amps(load), Amps(carries));
        if let Some(choice) = fuse::choose(Amps(load), Amps(load * start), Amps(carries), Amps(short)) {
            prop_assert!(window.holds(choice.rating));
            prop_assert!(choice.kind.ratings().contains(&choice.rating.0));
            prop_assert_eq!(choice.needs_main_fuse, choice.kind.interrupting().0 < short);
        } else {
            for kind in FuseKind::ALL {
                prop_assert!(kind.ratings().iter().all(|&rating| !window.holds(Amps(rating))));
            }
        }
    }
}
