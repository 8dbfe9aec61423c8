//! Panels, controllers and whole days of sun against trade figures and measured climates.
//!
//! - De Bilt: KNMI daily data, station 260, CC BY 4.0 (tests/data/debilt).
//! - Amsterdam: monthly figures of the typical year of WMO 062400 (IWEC), as read.
//! - Bands for reflection and mounting: found when the model was prototyped against 31 hourly
//!   files and 7 measured multi-year sites.

use nightbank::forecast::weather::DayDistribution;
use nightbank::model::{Controller, Mounting, Place, Shade, SolarArray, SystemVoltage};
use nightbank::physics::solar::panel::{low_light_efficiency, temperature_factor};
use nightbank::physics::solar::{ArrayDay, DaySun, HourYield, Panel, SolarTable, TripSky};
use nightbank::units::{Celsius, Degrees, Metres, Volts, Watts, WattsPerSquareMetre};
use time::{Date, Month};

fn near(actual: f64, expected: f64, limit: f64, what: &str) {
    assert!(
        (actual - expected).abs() <= limit,
        "{what}: {actual}, expected {expected} within {limit}"
    );
}

fn within(actual: f64, band: std::ops::RangeInclusive<f64>, what: &str) {
    assert!(band.contains(&actual), "{what}: {actual}, expected {band:?}");
}

fn date(year: i32, month: u8, day: u8) -> Date {
    Date::from_calendar_date(year, Month::try_from(month).expect("month"), day).expect("date")
}

fn place(latitude: f64, longitude: f64) -> Place {
    Place {
        latitude: Degrees(latitude),
        longitude: Degrees(longitude),
        altitude: Metres(0.0),
        ..Place::default()
    }
}

/// 100 W with no loss but those under test.
fn bare(controller: Controller) -> SolarArray {
    SolarArray {
        peak: Watts(100.0),
        controller,
        controller_frac: 1.0,
        dirt_frac: 0.0,
        wiring_frac: 0.0,
        mismatch_frac: 0.0,
        ..SolarArray::default()
    }
}

const FULL_SUN: WattsPerSquareMetre = WattsPerSquareMetre(1000.0);

/// A PWM controller passes the panel's current on: a house panel of 32 V gives 18.2/32 of what one of 36
/// cells and the same power gives (by hand: 100 W / 32 V = 3.1 A, not 5.5 A).
#[test]
fn a_pwm_controller_gives_the_current_of_the_panel_there_is() {
    use nightbank::model::{Controller, SolarArray, SystemVoltage};
    use nightbank::physics::solar::panel::Panel;
    use nightbank::units::{Celsius, Volts, WattsPerSquareMetre};
    let amps = |vmp| {
        let array = SolarArray { controller: Controller::Pwm, vmp, ..SolarArray::default() };
        let panel = Panel::new(&array, SystemVoltage::V12, 1.0);
        panel.power(WattsPerSquareMetre(600.0), Celsius(10.0)).at_battery.pwm.0
    };
    assert_eq!(amps(None), amps(Some(Volts(18.2))));
    assert!((amps(Some(Volts(32.0))) / amps(None) - 18.2 / 32.0).abs() < 1e-9);
}

/// Cells of a bare panel in full sun, read off what heat takes.
fn cell_in_full_sun(mounting: Mounting, air: Celsius) -> f64 {
    let array = SolarArray { mounting, temp_coeff_per_k: -0.004, ..bare(Controller::Mppt) };
    let power = Panel::new(&array, SystemVoltage::V12, 1.0).power(FULL_SUN, air);
    25.0 + (1.0 - power.after_heat / power.after_low_light) / 0.004
}

/// At 30 C in full sun a nominal operating cell temperature of 45 C and the adder of 18 K for a panel
/// glued flat (gap under 12 mm) give 83.75 C (computed): our glued panel in light wind is within 5 K of
/// it, and the mountings rank. pvlib: 100 W, 900 W/m2, 30 C cell, -0.3 %/K: 88.65 W.
#[test]
fn hot_cells_give_less() {
    let ours = |mounting| cell_in_full_sun(mounting, Celsius(30.0));
    near(ours(Mounting::Glued), 83.75, 5.0, "glued");
    assert!(ours(Mounting::Glued) > ours(Mounting::SmallGap));
    assert!(ours(Mounting::SmallGap) > ours(Mounting::OpenRack));
    near(90.0 * temperature_factor(-0.003, Celsius(30.0)), 88.65, 1e-9, "W");
}

/// Data sheets: 2 to 5 % of efficiency lost at 200 W/m2 (common practice, no source).
#[test]
fn weak_light_costs_a_little() {
    let kept = |light| {
        low_light_efficiency(WattsPerSquareMetre(light), SolarArray::default().low_light_frac)
    };
    within(kept(200.0), 0.95..=0.98, "at 200 W/m2");
    near(kept(1000.0), 1.0, 1e-12, "at 1000 W/m2");
    assert_eq!(kept(0.0), 0.0);
    assert!(kept(1e-30) >= 0.0);
    // What the user states is what is lost at 200 W/m2.
    near(low_light_efficiency(WattsPerSquareMetre(200.0), 0.1), 0.9, 1e-12, "stated");
    assert_eq!(low_light_efficiency(WattsPerSquareMetre(50.0), 0.0), 1.0);
}

/// Common practice, no source: a 100 W panel of 5.5 A gives 73 W into a battery at 13.2 V through a
/// PWM controller. Cells at 25 C: 1000 W/m2 and air cold enough for it.
#[test]
fn pwm_gives_the_panels_current_at_battery_voltage() {
    let array = bare(Controller::Pwm);
    let panel = Panel::new(&array, SystemVoltage::V12, 1.0);
    let air = Celsius(25.0 - cell_in_full_sun(array.mounting, Celsius(0.0)));
    let power = panel.power(FULL_SUN, air);
    near(power.at_battery.pwm.0, 5.5, 0.01, "A");
    near(power.at_battery.power_at(Volts(13.2)).0, 73.0, 0.6, "W");
    near(power.after_wiring.0, 100.0, 1e-9, "W offered by the panel");
    // An MPPT controller keeps the power and loses its own few per cent.
    let mppt = Panel::new(&bare(Controller::Mppt), SystemVoltage::V12, 1.0).power(FULL_SUN, air);
    near(mppt.at_battery.mppt.0, 100.0, 1e-9, "W by MPPT");
    assert_eq!(mppt.at_battery.pwm.0, 0.0);
    // Twice the voltage, half the current, the same power.
    let at_24 = Panel::new(&array, SystemVoltage::V24, 1.0).power(FULL_SUN, air);
    near(at_24.at_battery.pwm.0, power.at_battery.pwm.0 / 2.0, 1e-9, "A at 24 V");
    near(at_24.delivered.0, power.delivered.0, 1e-9, "W at 24 V");
}

/// A PWM controller never turns out more than the panel's best power, however hot the panel.
#[test]
fn pwm_never_beats_the_best_power() {
    for celsius in [-30.0, 0.0, 25.0, 60.0, 95.0] {
        for light in [5.0, 50.0, 300.0, 1000.0, 1300.0] {
            let array = SolarArray {
                mounting: Mounting::Glued,
                temp_coeff_per_k: -0.006,
                ..bare(Controller::Pwm)
            };
            let panel = Panel::new(&array, SystemVoltage::V12, 0.0);
            let power = panel.power(WattsPerSquareMetre(light), Celsius(celsius));
            assert!(power.delivered.0 <= power.after_wiring.0 + 1e-9, "{power:?}");
        }
    }
}

/// Twelve measured years at De Bilt (52.1 N), a level panel: reflection takes 4 to 5 % of a year
/// and 9.5 to 11 % in January; a glued panel yields 4 to 6 % less than an open rack (prototype; here
/// without the hourly air, 3 to 6 %). Days above the clearest the model knows are rare and
/// their surplus is nothing.
#[test]
fn years_at_de_bilt_on_a_level_panel() {
    let place = place(52.10, 5.18);
    // Mean air by day, from the Amsterdam year below, plus 3 K for the hours of sun.
    let panel = |mounting| {
        let array = SolarArray { mounting, ..SolarArray::default() };
        Panel::new(&array, SystemVoltage::V12, 2.0)
    };
    let (glued, open) = (panel(Mounting::Glued), panel(Mounting::OpenRack));
    let level = SolarArray::default();
    let (mut glued_wh, mut open_wh) = (0.0, 0.0);
    let mut months = [(0.0, 0.0); 12];
    let (mut measured, mut modelled, mut days) = (0.0, 0.0, 0);
    for line in include_str!("data/debilt/debilt_daily_ghi_even_years.csv").lines() {
        let Some((stamp, wh)) = line.split_once(',') else {
            continue;
        };
        let Ok(wh) = wh.trim().parse::<f64>() else {
            continue; // the heading
        };
        let number = |range: std::ops::Range<usize>| stamp[range].parse::<u16>().expect("date");
        let (year, month, day) = (number(0..4), number(4..6), number(6..8));
        if year < 1996 {
            continue;
        }
        let sun = DaySun::new(&place, date(i32::from(year), month as u8, day as u8), 60);
        let k = wh / sun.h0().0;
        measured += wh;
        modelled += sun.global(k).0;
        days += 1;
        let at = usize::from(month) - 1;
        let air = Celsius(AIR[at] + 3.0);
        for light in ArrayDay::new(&sun, &level, 0.2).light(&sun, k) {
            months[at].0 += light.poa.0;
            months[at].1 += light.poa_effective.0;
            glued_wh += glued.power(light.poa_effective, air).delivered.0;
            open_wh += open.power(light.poa_effective, air).delivered.0;
        }
    }
    assert!(days > 4000, "days read: {days}");
    near(modelled / measured, 1.0, 0.001, "sun kept");
    let lost = |(on, inside): (f64, f64)| 1.0 - inside / on;
    within(lost(months[0]), 0.095..=0.11, "reflection in January");
    let year = months.iter().fold((0.0, 0.0), |sum, month| (sum.0 + month.0, sum.1 + month.1));
    within(lost(year), 0.04..=0.05, "reflection over the year");
    near(year.0 / modelled, 1.0, 1e-9, "a level plane gets the global light");
    within(1.0 - glued_wh / open_wh, 0.03..=0.06, "glued against open");
}

/// Amsterdam (52.3 N), January to December: irradiation of level ground [kWh/m2 a day].
const AMSTERDAM_H: [f64; 12] =
    [0.64, 1.36, 2.48, 3.43, 4.81, 4.93, 4.93, 4.07, 2.72, 1.55, 0.82, 0.46];
/// Mean daily clearness there.
const AMSTERDAM_K: [f64; 12] =
    [0.297, 0.379, 0.420, 0.397, 0.455, 0.429, 0.445, 0.437, 0.403, 0.369, 0.329, 0.263];
/// Mean air temperature there [C].
const AIR: [f64; 12] = [4.2, 3.7, 5.3, 8.4, 12.7, 15.2, 16.9, 17.1, 14.4, 10.9, 6.5, 4.4];

/// Mean over a month's days and the spread of their clearness (Hollands and Huget): light on level
/// ground, on the plane and energy of 100 W, each per day.
fn amsterdam_month(month: usize, tilt: f64, facing: f64) -> (f64, f64, f64) {
    let place = place(52.3, 4.8);
    let array =
        SolarArray { tilt: Degrees(tilt), facing: Degrees(facing), ..SolarArray::default() };
    let panel = Panel::new(&array, SystemVoltage::V12, 2.0);
    let spread = DayDistribution::of_climate(
        nightbank::forecast::weather::DayClimate::INLAND,
        AMSTERDAM_K[month],
    )
    .expect("mean");
    let (mut level, mut poa, mut energy) = (0.0, 0.0, 0.0);
    let draws = 40;
    let dates = [5, 15, 25];
    let weight = 1.0 / f64::from(draws * dates.len() as i32);
    for day in dates {
        let sun = DaySun::new(&place, date(2025, month as u8 + 1, day), 60);
        let geometry = ArrayDay::new(&sun, &array, 0.2);
        for draw in 0..draws {
            let k = spread.quantile((f64::from(draw) + 0.5) / f64::from(draws));
            level += sun.global(k).0 * weight;
            for light in geometry.light(&sun, k) {
                poa += light.poa.0 * weight;
                energy +=
                    panel.power(light.poa_effective, Celsius(AIR[month])).delivered.0 * weight;
            }
        }
    }
    (level, poa, energy)
}

/// Level irradiation by month from clearness and our H0: within 8 % or 0.02 kWh/m2 (the clearness
/// is a mean of days, the irradiation of hours), the year within 2 %.
#[test]
fn amsterdam_irradiation_by_month() {
    let ours: Vec<f64> = (0..12).map(|m| amsterdam_month(m, 0.0, 180.0).0 / 1000.0).collect();
    for (month, (ours, measured)) in ours.iter().zip(AMSTERDAM_H).enumerate() {
        near(*ours, measured, (measured * 0.08).max(0.02), &format!("month {}", month + 1));
    }
    let (ours, measured) = (ours.iter().sum::<f64>(), AMSTERDAM_H.iter().sum::<f64>());
    near(ours / measured, 1.0, 0.02, "year");
}

/// Trade rule (domain figure): 100 W flat give 370 Wh on a June day and 35 Wh on a December day,
/// 0.75 of the light; ours within 10 %.
#[test]
fn flat_panel_in_june_and_december() {
    let june = amsterdam_month(5, 0.0, 180.0).2;
    let december = amsterdam_month(11, 0.0, 180.0).2;
    near(june, 370.0, 37.0, "June");
    near(december, 35.0, 3.5, "December");
    within(june / december, 9.0..=12.0, "ratio");
}

/// Gain of a south tilt over level, from the measured beam share by Klein's formula with an
/// isotropic sky: December 1.50/1.73/1.72 at 30/60/75 degrees, March 1.25/1.26/1.18, June
/// 0.96/0.79/0.67. Ours draws the days and puts the sky's brightness near the sun: 10 %.
#[test]
fn amsterdam_gain_of_tilt() {
    for (month, expected) in
        [(11, [1.50, 1.73, 1.72]), (2, [1.25, 1.26, 1.18]), (5, [0.96, 0.79, 0.67])]
    {
        let level = amsterdam_month(month, 0.0, 180.0).1;
        for (tilt, expected) in [30.0, 60.0, 75.0].into_iter().zip(expected) {
            let gain = amsterdam_month(month, tilt, 180.0).1 / level;
            near(gain, expected, expected * 0.10, &format!("month {} {tilt}", month + 1));
        }
    }
    // Facing the pole costs.
    let level = amsterdam_month(11, 0.0, 180.0).1;
    assert!(amsterdam_month(11, 30.0, 0.0).1 < 0.8 * level);
}

/// The table against the same day worked out in full: within 0.5 % of a clear day at any k, and
/// the same energy whichever way it is asked for.
#[test]
fn table_agrees_with_the_full_calculation() {
    let place = place(52.3, 4.8);
    for (tilt, controller) in
        [(0.0, Controller::Mppt), (60.0, Controller::Mppt), (35.0, Controller::Pwm)]
    {
        let array = SolarArray {
            tilt: Degrees(tilt),
            controller,
            shade: Shade { morning_frac: 0.5, sky_frac: 0.1, ..Shade::default() },
            ..SolarArray::default()
        };
        for month in [3, 6, 12] {
            let sky = TripSky::new(&place, date(2026, month, 10), 2, 60);
            let table = SolarTable::build(&sky, std::slice::from_ref(&array), |_, hour| {
                Celsius(5.0 + hour as f64 * 0.5)
            });
            let clear = table.day_energy(1, 1.0).0;
            assert!(clear > 0.0 && table.days() == 2);
            for step in 0..=90 {
                let k = f64::from(step) / 100.0;
                let flow = table.losses(1, k);
                let looked_up = table.day_energy(1, k).0;
                near(looked_up, flow.delivered.0, clear * 0.005, &format!("{month} k {k}"));
                let parts = flow.losses().iter().map(|part| part.0).sum::<f64>();
                near(parts + flow.delivered.0, flow.ideal.0, 1e-9 * clear, "sum of the parts");
                // Two panels of a kind lose twice as much, part by part.
                let mut both = flow;
                both += flow;
                for (two, one) in both.losses().into_iter().zip(flow.losses()) {
                    near(two.0, 2.0 * one.0, 1e-9 * clear, "a part of two");
                }
                near(both.ideal.0, 2.0 * flow.ideal.0, 1e-9 * clear, "both without loss");
                near(both.delivered.0, 2.0 * flow.delivered.0, 1e-9 * clear, "both delivered");
                let row = table.day_row(1, k);
                for (hour, whole) in row.into_iter().enumerate() {
                    assert_eq!(table.hour(1, hour, k), whole);
                }
            }
            assert_eq!(table.hour(2, 12, 0.5), HourYield::default());
            assert_eq!(table.hour(0, 24, 0.5), HourYield::default());
            assert_eq!(table.day_energy(0, f64::NAN).0, 0.0);
            assert_eq!(table.day_energy(0, -1.0).0, 0.0);
        }
    }
}

/// Shade takes the beam of its own part of the day, and full shade takes everything.
#[test]
fn shade_knows_the_time_of_day() {
    let place = place(48.0, 0.0);
    let sun = DaySun::new(&place, date(2026, 6, 20), 0);
    let light = |shade| {
        let array = SolarArray { shade, ..SolarArray::default() };
        ArrayDay::new(&sun, &array, 0.2).light(&sun, 0.7)
    };
    let free = light(Shade::default());
    let morning = light(Shade { morning_frac: 1.0, ..Shade::default() });
    assert!(morning[8].poa_effective.0 < 0.5 * free[8].poa_effective.0);
    assert_eq!(morning[12], free[12]);
    assert_eq!(morning[16], free[16]);
    let evening = light(Shade { afternoon_frac: 1.0, ..Shade::default() });
    assert_eq!(evening[8], free[8]);
    assert!(evening[16].poa_effective.0 < 0.5 * free[16].poa_effective.0);
    let wood =
        light(Shade { morning_frac: 1.0, midday_frac: 1.0, afternoon_frac: 1.0, sky_frac: 1.0 });
    assert!(wood.iter().all(|hour| hour.poa_effective.0 == 0.0 && hour.poa.0 >= 0.0));
}

/// Snow on the ground brings a steep panel light, a level one none.
#[test]
fn snow_lights_a_steep_panel() {
    let place = place(47.0, 10.0);
    let sun = DaySun::new(&place, date(2026, 2, 1), 60);
    let sum = |tilt, reflectance| {
        let array = SolarArray { tilt: Degrees(tilt), ..SolarArray::default() };
        ArrayDay::new(&sun, &array, reflectance)
            .light(&sun, 0.5)
            .iter()
            .map(|hour| hour.poa_effective.0)
            .sum::<f64>()
    };
    assert!(sum(60.0, 0.7) > 1.05 * sum(60.0, 0.2));
    assert_eq!(sum(0.0, 0.7), sum(0.0, 0.2));
}
