//! Snow on the panels against the model of Townsend & Powers, fed with the snow of towns.
//!
//! T. Townsend, L. Powers, "Photovoltaics and snow: an update from two winters of measurements in the
//! Sierra", 37th IEEE PVSC 2011; the equations as pvlib-python 0.16.1 (`pvlib.snow.loss_townsend`) has them,
//! and two of its results. Mean temperature, humidity, snowfall, days with more than an inch of it and
//! sun of January are long-term means from memory, rounded.

use nightbank::model::Place;
use nightbank::model::SolarArray;
use nightbank::physics::solar::snow::snow_loss_frac;
use nightbank::physics::solar::{SolarTable, TripSky};
use nightbank::units::{Celsius, Degrees, Watts};
use time::{Date, Month};

/// A town in January.
struct Town {
    name: &'static str,
    mean_c: f64,
    humidity: f64,
    snow_cm: f64,
    snow_days: f64,
    sun_kwh: f64,
}

const fn town(
    name: &'static str,
    (mean_c, humidity, snow_cm, snow_days, sun_kwh): (f64, f64, f64, f64, f64),
) -> Town {
    Town { name, mean_c, humidity, snow_cm, snow_days, sun_kwh }
}

const TOWNS: [Town; 17] = [
    town("Minneapolis", (-9.0, 0.70, 31.0, 4.0, 60.0)),
    town("Burlington", (-7.0, 0.68, 53.0, 7.0, 52.0)),
    town("Chicago", (-4.5, 0.72, 28.0, 4.0, 55.0)),
    town("Buffalo", (-4.0, 0.76, 64.0, 9.0, 45.0)),
    town("Davos", (-5.0, 0.75, 70.0, 9.0, 50.0)),
    town("Oslo", (-4.0, 0.83, 30.0, 4.0, 12.0)),
    town("Helsinki", (-4.5, 0.87, 30.0, 4.0, 9.0)),
    town("Boston", (-1.7, 0.63, 33.0, 4.0, 58.0)),
    town("Denver", (-0.4, 0.55, 18.0, 3.0, 80.0)),
    town("Salt Lake City", (-1.5, 0.75, 32.0, 5.0, 62.0)),
    town("Munich", (-0.5, 0.84, 30.0, 4.0, 32.0)),
    town("Berlin", (0.6, 0.85, 12.0, 2.0, 20.0)),
    town("Philadelphia", (0.5, 0.66, 17.0, 2.5, 60.0)),
    town("London", (5.0, 0.83, 2.0, 0.5, 22.0)),
    town("Seattle", (5.0, 0.78, 4.0, 0.7, 30.0)),
    town("Copenhagen", (1.5, 0.86, 10.0, 2.0, 16.0)),
    town("Amsterdam", (3.4, 0.87, 5.0, 1.0, 21.0)),
];

/// Share of the month's yield lost by a panel of 1 m along the slope, 2.5 m above the ground.
fn townsend_powers(town: &Town, tilt: f64) -> f64 {
    const INCH_CM: f64 = 2.54;
    let (slope, edge) = (1.0 * 39.37, 2.5 * 39.37);
    let effective = 0.5 * town.snow_cm / INCH_CM * (1.0 + 1.0 / town.snow_days);
    let level = tilt.to_radians().cos();
    let gamma = slope * effective * level / (edge * edge - effective * effective)
        * 2.0
        * 40_f64.to_radians().tan();
    let ground = 1.0 - 0.51 * (-gamma).exp();
    let kelvin = town.mean_c + 273.15;
    let lost = 5.7e4 * effective * level * level * ground * town.humidity
        / (kelvin * kelvin)
        / town.sun_kwh.powf(0.67);
    lost.min(1.0)
}

#[test]
fn the_loss_lies_among_what_the_snow_of_towns_takes() {
    // As printed by pvlib 0.16.1.
    for (name, tilt, want) in [("Munich", 30.0, 0.18), ("Helsinki", 0.0, 0.60)] {
        let town = TOWNS.iter().find(|town| town.name == name).expect("listed");
        let got = townsend_powers(town, tilt);
        assert!((got - want).abs() < 0.006, "{name}: {got}");
    }
    for tilt in [0.0, 30.0, 60.0] {
        let (mut sum, mut want_sum) = (0.0, 0.0);
        for town in &TOWNS {
            let ours = snow_loss_frac(Celsius(town.mean_c), Degrees(tilt));
            let want = townsend_powers(town, tilt);
            println!("{:14} {:5} C {tilt:2}: {ours:.2} / {want:.2}", town.name, town.mean_c);
            assert!((ours - want).abs() < 0.29, "{}: {ours} {want}", town.name);
            sum += ours;
            want_sum += want;
        }
        let ratio = sum / want_sum;
        assert!((0.85..1.2).contains(&ratio), "{tilt}: {ratio}");
    }
}

/// The table that every forecast reads gives a day of frost so much less than the same panel without snow,
/// and a mild day all of it.
#[test]
fn the_table_of_a_trip_takes_the_snow_off() {
    let place = Place { latitude: Degrees(47.0), longitude: Degrees(0.0), ..Place::default() };
    let date = Date::from_calendar_date(2026, Month::January, 15).expect("a date");
    // Without a temperature coefficient the air alone changes nothing.
    let panel = |tilt| SolarArray {
        peak: Watts(200.0),
        tilt: Degrees(tilt),
        facing: Degrees(180.0),
        temp_coeff_per_k: 0.0,
        ..SolarArray::default()
    };
    let of = |air: f64, arrays: &[SolarArray]| {
        SolarTable::build(&TripSky::new(&place, date, 1, 0), arrays, |_, _| Celsius(air))
    };
    for (air, tilt) in [(-5.0, 0.0), (0.0, 30.0), (3.0, 60.0), (8.0, 0.0)] {
        let (cold, mild) = (of(air, &[panel(tilt)]), of(20.0, &[panel(tilt)]));
        for k in [0.2, 0.5, 0.7] {
            let left = cold.day_energy(0, k) / mild.day_energy(0, k);
            let lost = snow_loss_frac(Celsius(air), Degrees(tilt));
            assert!((left - (1.0 - lost)).abs() < 1e-9, "{air} {tilt} {k}: {left}");
            let flow = cold.losses(0, k);
            assert!((flow.snow / flow.ideal - lost).abs() < 1e-9, "{air} {tilt} {k}: {flow:?}");
            let parts: f64 = flow.losses().iter().map(|part| part.0).sum();
            assert!((parts + flow.delivered.0 - flow.ideal.0).abs() < 1e-9 * flow.ideal.0);
        }
    }
    // Each array by its own tilt.
    let both = of(-5.0, &[panel(0.0), panel(60.0)]).day_energy(0, 0.5);
    let apart =
        of(-5.0, &[panel(0.0)]).day_energy(0, 0.5) + of(-5.0, &[panel(60.0)]).day_energy(0, 0.5);
    assert!((both.0 - apart.0).abs() < 1e-9);
}
