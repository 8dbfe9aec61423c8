//! Solar properties that hold for any place, date, weather and array.

use crate::reference::sun::{azimuth, sun_at};
use nightbank::model::{Controller, Mounting, Place, Shade, SolarArray, SystemVoltage};
use nightbank::physics::solar::sun::{daily_extraterrestrial, daily_horizontal};
use nightbank::physics::solar::{
    ArrayDay, DaySun, JulianDate, Panel, SolarTable, SunTimes, TripSky,
};
use nightbank::units::{Celsius, Degrees, Metres, Watts, WattsPerSquareMetre};
use proptest::prelude::*;
use time::{Date, Duration, Month};

fn day_after_2000(days: i64) -> Date {
    Date::from_calendar_date(2000, Month::January, 1).expect("date") + Duration::days(days)
}

prop_compose! {
    fn places()(
        latitude in prop_oneof![
            4 => -90.0..=90.0_f64,
            1 => prop::sample::select(vec![-90.0, -66.56, 0.0, 66.56, 89.9999, 90.0]),
        ],
        longitude in -180.0..=180.0_f64,
        altitude in -430.0..6000.0_f64,
    ) -> Place {
        Place {
            latitude: Degrees(latitude),
            longitude: Degrees(longitude),
            altitude: Metres(altitude),
            ..Place::default()
        }
    }
}

prop_compose! {
    fn arrays()(
        peak in 0.0..5000.0_f64,
        tilt in 0.0..=90.0_f64,
        facing in 0.0..=360.0_f64,
        mounting in prop::sample::select(vec![Mounting::Glued, Mounting::SmallGap, Mounting::OpenRack]),
        controller in prop::sample::select(vec![Controller::Mppt, Controller::Pwm]),
        shades in prop::array::uniform4(0.0..=1.0_f64),
        losses in prop::array::uniform4(0.0..0.3_f64),
        temp_coeff_per_k in -0.01..=0.0_f64,
    ) -> SolarArray {
        SolarArray {
            peak: Watts(peak),
            tilt: Degrees(tilt),
            facing: Degrees(facing),
            mounting,
            controller,
            shade: Shade {
                morning_frac: shades[0],
                midday_frac: shades[1],
                afternoon_frac: shades[2],
                sky_frac: shades[3],
            },
            dirt_frac: losses[0],
            wiring_frac: losses[1],
            mismatch_frac: losses[2],
            low_light_frac: losses[3],
            temp_coeff_per_k,
            ..SolarArray::default()
        }
    }
}

/// Any k, sensible or not.
fn clearness() -> impl Strategy<Value = f64> {
    prop_oneof![
        6 => 0.0..1.0_f64,
        1 => prop::sample::select(vec![f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 0.0, 1e9]),
    ]
}

proptest! {
    /// No NaN, nothing negative, nothing at night, and never more than the nominal power in
    /// one and a half suns on a cold day.
    #[test]
    fn yield_is_finite_and_dark_at_night(
        place in places(),
        day in 0_i64..36_500,
        offset in -720_i16..=840,
        k in clearness(),
        array in arrays(),
        air in -40.0..50.0_f64,
        reflectance in 0.0..=1.0_f64,
        v24 in any::<bool>(),
    ) {
        let date = day_after_2000(day);
        let system = if v24 { SystemVoltage::V24 } else { SystemVoltage::V12 };
        let sky = TripSky { system, ground_reflectance: reflectance, ..TripSky::new(&place, date, 1, offset) };
        let table = SolarTable::build(&sky, std::slice::from_ref(&array), |_, _| Celsius(air));
        for (hour, got) in table.day_row(0, k).into_iter().enumerate() {
            prop_assert!(got.mppt.is_finite() && got.mppt.0 >= 0.0, "{:?}", got);
            prop_assert!(got.pwm.is_finite() && got.pwm.0 >= 0.0, "{:?}", got);
            prop_assert!(got.mppt.0 <= array.peak.0 * 2.6, "{:?}", got);
            let up = (0..=60).any(|minute| {
                let minutes = hour as f64 * 60.0 + f64::from(minute);
                let at = JulianDate::from_local(date, minutes, f64::from(offset));
                sun_at(at, place.latitude, place.longitude).up > 0.0
            });
            prop_assert!(up || (got.mppt.0 == 0.0 && got.pwm.0 == 0.0), "yield at night: {:?}", got);
        }
        let flow = table.losses(0, k);
        prop_assert!(flow.ideal.is_finite() && flow.delivered.0 >= 0.0);
        prop_assert!(flow.losses().iter().all(|part| part.is_finite()));
        prop_assert!(flow.delivered.0 <= flow.ideal.0 * 1.7 + 1e-9);
        prop_assert!(table.h0(0).is_finite() && table.h0(0).0 >= 0.0);
    }

    /// More nominal power never yields less; less shade never yields less.
    #[test]
    fn more_panel_and_less_shade_never_yield_less(
        place in places(),
        day in 0_i64..36_500,
        k in 0.0..0.9_f64,
        array in arrays(),
        more in 1.0..3.0_f64,
    ) {
        // Beyond -0.006 per kelvin no silicon goes; there a hot panel can lose by more light.
        let array = SolarArray { temp_coeff_per_k: array.temp_coeff_per_k.max(-0.006), ..array };
        let sky = TripSky::new(&place, day_after_2000(day), 1, 0);
        let table = |array: &SolarArray| {
            SolarTable::build(&sky, std::slice::from_ref(array), |_, _| Celsius(15.0))
        };
        let base = table(&array).day_energy(0, k).0;
        let larger = SolarArray { peak: array.peak * more, ..array.clone() };
        prop_assert!(table(&larger).day_energy(0, k).0 >= base - 1e-9);
        let freed = SolarArray { shade: Shade::default(), ..array.clone() };
        prop_assert!(table(&freed).day_energy(0, k).0 >= base * (1.0 - 1e-9) - 1e-9);
    }

    /// More light in the cells never yields less, with silicon's temperature coefficients.
    #[test]
    fn more_light_never_yields_less(
        array in arrays(),
        light in 0.0..1200.0_f64,
        more in 0.0..100.0_f64,
        air in -30.0..40.0_f64,
    ) {
        let array = SolarArray { temp_coeff_per_k: array.temp_coeff_per_k.max(-0.005), ..array };
        let panel = Panel::new(&array, SystemVoltage::V12, 2.0);
        let power = |light| panel.power(WattsPerSquareMetre(light), Celsius(air)).delivered.0;
        prop_assert!(power(light + more) >= power(light) - 1e-9);
    }

    /// Two arrays yield what each yields; a switched-off one yields nothing.
    #[test]
    fn arrays_add_up(place in places(), day in 0_i64..36_500, k in 0.0..0.9_f64, a in arrays(), b in arrays()) {
        let sky = TripSky::new(&place, day_after_2000(day), 1, 60);
        let energy = |arrays: &[SolarArray]| {
            SolarTable::build(&sky, arrays, |_, _| Celsius(10.0)).day_energy(0, k).0
        };
        let off = SolarArray { enabled: false, ..b.clone() };
        let (alone, other) = (energy(std::slice::from_ref(&a)), energy(std::slice::from_ref(&b)));
        let both = energy(&[a.clone(), b]);
        prop_assert!((both - alone - other).abs() <= 1e-9 * both.max(1.0));
        prop_assert_eq!(energy(&[a, off]), alone);
    }

    /// The hours of a day on a level panel sum to k times H0, up to the clearest day, and no hour exceeds the light
    /// above the air.
    #[test]
    fn hours_sum_to_the_day(place in places(), day in 0_i64..36_500, offset in -720_i16..=840, k in clearness()) {
        let sun = DaySun::new(&place, day_after_2000(day), offset);
        let level = SolarArray { tilt: Degrees(0.0), ..SolarArray::default() };
        let hours = ArrayDay::new(&sun, &level, 0.2).light(&sun, k).map(|hour| hour.poa);
        let sum: f64 = hours.iter().map(|hour| hour.0).sum();
        prop_assert!((sum - sun.global(k).0).abs() <= 1e-6 * sum.max(1.0));
        prop_assert!(hours.iter().all(|hour| hour.0 >= 0.0 && hour.0 < 1412.0));
        let held = if k.is_nan() { 0.0 } else { k.clamp(0.0, sun.k_frac_max()) };
        prop_assert!((sum - held * sun.h0().0).abs() <= 1e-6 * sum.max(1.0));
    }

    /// Sun angles stay in range, and rise, noon and set come in order.
    #[test]
    fn sun_stays_on_the_sky(place in places(), day in 0_i64..36_500, minutes in 0.0..1440.0_f64) {
        let date = day_after_2000(day);
        let sun = sun_at(JulianDate::from_utc(date, minutes), place.latitude, place.longitude);
        prop_assert!((-90.0..=90.0).contains(&sun.elevation().0));
        prop_assert!((0.0..=360.0).contains(&azimuth(sun).0));
        let length = sun.east.hypot(sun.north).hypot(sun.up);
        prop_assert!((length - 1.0).abs() < 1e-4);
        let times = SunTimes::on(date, place.latitude, place.longitude, place.longitude.0 * 4.0);
        match times {
            SunTimes::RisesAndSets { rise, noon, set } => {
                prop_assert!(rise.0 < noon.0 && noon.0 < set.0 && (set - rise).0 <= 24.5, "{:?}", times);
            }
            SunTimes::PolarDay { noon } | SunTimes::PolarNight { noon } => {
                prop_assert!((noon.0 - 12.0).abs() < 0.5, "{:?}", times);
            }
        }
    }
}

/// The southern sky half a year later mirrors the northern one but for the orbit: 7 % of distance
/// (common practice), and 2 % more in February and November because the seasons are not equally
/// long; at the solstices the 7 % alone.
#[test]
fn southern_hemisphere_mirrors_the_northern() {
    let first = day_after_2000(9_132); // 2025-01-01
    for n in (0..365).step_by(5) {
        for latitude in [15.0, 30.0, 43.0] {
            let north =
                daily_extraterrestrial(first + Duration::days(n), Degrees(latitude), Degrees(0.0));
            let later = first + Duration::days(n + 182);
            let south = daily_extraterrestrial(later, Degrees(-latitude), Degrees(0.0));
            assert!((south / north - 1.0).abs() < 0.09, "{latitude} day {n}: {}", south / north);
        }
    }
    let solstice = |month, latitude| {
        let day = Date::from_calendar_date(2025, month, 21).expect("date");
        daily_extraterrestrial(day, Degrees(latitude), Degrees(0.0))
    };
    for latitude in [15.0, 30.0, 43.0, 55.0] {
        let summers = solstice(Month::December, -latitude) / solstice(Month::June, latitude);
        assert!((1.06..1.075).contains(&summers), "{latitude}: {summers}");
    }
    // With the same sun the mirror is exact.
    let sun = nightbank::physics::solar::Sun::at(JulianDate::from_utc(first, 720.0));
    let declination = sun.declination();
    let normal = sun.extraterrestrial_normal();
    for latitude in [0.0, 20.0, 50.0, 70.0, 90.0] {
        let north = daily_horizontal(normal, Degrees(latitude), declination);
        let south = daily_horizontal(normal, Degrees(-latitude), -declination);
        assert!((north - south).0.abs() < 1e-9);
    }
}

/// South of the equator the sun stands north at noon, and a panel facing north gains.
#[test]
fn facing_north_is_right_in_the_south() {
    let place = Place { latitude: Degrees(-42.0), longitude: Degrees(147.0), ..Place::default() };
    let winter = Date::from_calendar_date(2026, Month::June, 21).expect("date");
    let noon =
        sun_at(JulianDate::from_local(winter, 720.0, 588.0), place.latitude, place.longitude);
    assert!(azimuth(noon).0 < 5.0 || azimuth(noon).0 > 355.0);
    let energy = |facing| {
        let array =
            SolarArray { tilt: Degrees(50.0), facing: Degrees(facing), ..SolarArray::default() };
        SolarTable::build(&TripSky::new(&place, winter, 1, 600), &[array], |_, _| Celsius(10.0))
            .day_energy(0, 0.5)
            .0
    };
    assert!(energy(0.0) > 1.5 * energy(180.0));
    assert!(energy(0.0) > energy(90.0) && energy(0.0) > energy(270.0));
}

/// Polar night yields nothing and polar day does not end.
#[test]
fn polar_night_and_day() {
    let day = |month| Date::from_calendar_date(2026, month, 21).expect("date");
    for (latitude, dark, light) in [
        (78.2, Month::December, Month::June),
        (90.0, Month::December, Month::June),
        (-90.0, Month::June, Month::December),
    ] {
        let place = Place { latitude: Degrees(latitude), ..Place::default() };
        let table = |month| {
            SolarTable::build(
                &TripSky::new(&place, day(month), 1, 0),
                &[SolarArray::default()],
                |_, _| Celsius(-10.0),
            )
        };
        let night = table(dark);
        assert_eq!(night.day_energy(0, 0.5).0, 0.0);
        assert_eq!(night.h0(0).0, 0.0);
        assert_eq!(night.sun(0).map(DaySun::clear_sky_k_frac), Some(0.0));
        let summer = table(light);
        assert!(summer.day_row(0, 0.5).iter().all(|hour| hour.mppt.0 > 0.0));
        assert!(matches!(
            SunTimes::on(day(dark), place.latitude, place.longitude, 0.0),
            SunTimes::PolarNight { .. }
        ));
        assert!(matches!(
            SunTimes::on(day(light), place.latitude, place.longitude, 0.0),
            SunTimes::PolarDay { .. }
        ));
    }
}

/// Figures that are no numbers give no yield and no NaN.
#[test]
fn broken_figures_do_not_spread() {
    let place =
        Place { latitude: Degrees(f64::NAN), altitude: Metres(f64::NAN), ..Place::default() };
    let array = SolarArray {
        peak: Watts(f64::NAN),
        tilt: Degrees(f64::NAN),
        facing: Degrees(f64::INFINITY),
        controller_frac: f64::NAN,
        dirt_frac: f64::NAN,
        temp_coeff_per_k: f64::NAN,
        self_use: Watts(f64::NAN),
        ..SolarArray::default()
    };
    let date = Date::from_calendar_date(2026, Month::June, 1).expect("date");
    let sky = TripSky {
        wind_m_s: f64::NAN,
        ground_reflectance: f64::NAN,
        ..TripSky::new(&place, date, 1, 0)
    };
    let table = SolarTable::build(&sky, &[array, SolarArray::default()], |_, _| Celsius(f64::NAN));
    assert!(table.day_energy(0, 0.5).is_finite());
    assert!(table.self_use().is_finite());
    assert!(table.losses(0, 0.5).losses().iter().all(|part| part.is_finite()));
}
