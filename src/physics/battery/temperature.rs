//! Cold: less capacity, more resistance, slower charge; and how cold the battery gets.
//!
//! Lead-acid: cell-size correction factor `f(T)` of IEEE Std 485 (from memory; a published cubic
//! for the same table fits it to 0.014), capacity available `= 1/f`, at rates of up to 8 h. The slower
//! the discharge, the less the cold takes: at 0 degrees Celsius reports go from 29 % at such rates to
//! 15 % at the slowest (published), so half of the loss is left at the 100 h rate, and between the two it
//! falls with the logarithm of the time (common practice, no source).
//! LiFePO4: 100 % at 25, 85 % at 0, 70 % at -20 degrees Celsius (published 80 to 90 and 70 %).
//! Warmth is never counted as more than the rated capacity.
//!
//! ```text
//! reach        g = 1 - (1 - 1 / f(T)) r(t)             lead-acid
//!              r = 1 - ln(t / 8) / (2 ln(100 / 8))     1 below 8 h, 1/2 above 100 h
//!              g = 0.85 + 0.15 T / 25   T >= 0         LiFePO4
//!              g = 0.85 + 0.15 T / 20   T < 0
//! resistance   R / R25     = 1 + 0.008 (25 - T)        lead-acid     from memory
//!                          = exp(0.03 (25 - T))        LiFePO4       from memory
//! absorption   tau / tau25 = exp(0.03 (25 - T))                      from memory
//! standing     L / L20     = 2^((T - 20) / 10)                       from memory
//! air          Ta(h) = Tm + A cos(2 pi (h - 15) / 24)
//! battery      T(h)  = Tm + w + b A cos(2 pi (h - 18) / 24)          common practice, no source
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `T` | battery temperature | degrees Celsius |
//! | `f` | cell-size correction factor | - |
//! | `t` | time in which the mean draw takes the rated capacity | h |
//! | `g` | share of the rated capacity within reach | - |
//! | `R`, `tau`, `L` | resistance, time constant of absorption, self-discharge | Ohm, h, A |
//! | `Tm`, `A` | mean of the air, half its day-night range | degrees Celsius, K |
//! | `w`, `b` | how much milder the place is, share of the swing it lets in | K, - |
//! | `h` | hour of the day | h |

use crate::model::{BatteryPlace, Chemistry};
use crate::physics::indoors::{battery_kept_at, unheated_inside};
use crate::units::{Celsius, Hours};

/// IEEE Std 485 Table 1, base 25 degrees Celsius (from memory).
const IEEE_485: [(f64, f64); 22] = [
    (-3.9, 1.520),
    (-1.1, 1.430),
    (1.7, 1.350),
    (4.4, 1.300),
    (7.2, 1.250),
    (10.0, 1.190),
    (12.8, 1.150),
    (15.6, 1.110),
    (18.3, 1.080),
    (20.0, 1.056),
    (22.2, 1.029),
    (25.0, 1.000),
    (26.7, 0.980),
    (30.0, 0.956),
    (32.2, 0.940),
    (35.0, 0.930),
    (37.8, 0.910),
    (40.6, 0.890),
    (43.3, 0.880),
    (46.1, 0.870),
    (48.9, 0.860),
    (51.7, 0.850),
];

/// Cell-size correction factor for lead-acid; below the table the published cubic carries on
/// (1.70 at -10 degrees Celsius; a maker states 1.65).
#[must_use]
pub fn lead_size_factor(at: Celsius) -> f64 {
    let (lowest, highest) = (IEEE_485[0], IEEE_485[IEEE_485.len() - 1]);
    if at.0 <= lowest.0 {
        let x = at.0.max(-40.0) / 100.0;
        let cubic = |x: f64| -2.8117 * x.powi(3) + 4.1916 * x * x - 2.4941 * x + 1.405;
        return cubic(x) + (lowest.1 - cubic(lowest.0 / 100.0));
    }
    if at.0 >= highest.0 {
        return highest.1;
    }
    IEEE_485.windows(2).find(|pair| at.0 <= pair[1].0).map_or(1.0, |pair| {
        let t = (at.0 - pair[0].0) / (pair[1].0 - pair[0].0);
        pair[0].1 + t * (pair[1].1 - pair[0].1)
    })
}

/// The cell-size correction factor counts in full at this rate and faster.
const FULL_LOSS_RATE: Hours = Hours(8.0);
/// At this rate and slower half of the loss is left.
const HALF_LOSS_RATE: Hours = Hours(100.0);

/// Share of the rated capacity that can be drawn at a temperature, 0..1, by a draw that takes the
/// rated capacity in the time `rate`.
#[must_use]
pub fn capacity_frac(chemistry: Chemistry, at: Celsius, rate: Hours) -> f64 {
    let frac = if chemistry.is_lead() {
        let slower = (rate / FULL_LOSS_RATE).ln() / (HALF_LOSS_RATE / FULL_LOSS_RATE).ln();
        1.0 - (1.0 - 1.0 / lead_size_factor(at)) * (1.0 - 0.5 * slower.clamp(0.0, 1.0))
    } else if at.0 >= 0.0 {
        0.85 + 0.15 * at.0 / 25.0
    } else {
        0.85 + 0.15 * at.0 / 20.0
    };
    frac.clamp(0.3, 1.0)
}

/// Resistance over its value at 25 degrees Celsius (from memory: a fifth more at freezing for
/// lead-acid, about double for LiFePO4).
#[must_use]
pub fn resistance_factor(chemistry: Chemistry, at: Celsius) -> f64 {
    let colder = (25.0 - at.0).clamp(-20.0, 65.0);
    if chemistry.is_lead() { 1.0 + 0.008 * colder } else { (0.03 * colder).exp() }
}

/// Time constant of absorption over its value at 25 degrees Celsius: doubles about every 24 K
/// colder (from memory).
#[must_use]
pub fn taper_factor(at: Celsius) -> f64 {
    (0.03 * (25.0 - at.0).clamp(-20.0, 65.0)).exp()
}

/// Self-discharge over its value at 20 degrees Celsius: doubles every 10 K (from memory).
#[must_use]
pub fn self_discharge_factor(at: Celsius) -> f64 {
    ((at.0 - 20.0) / 10.0).clamp(-6.0, 4.0).exp2()
}

/// Battery temperature at an hour from the day's air: mean and half the day-night range.
///
/// A battery of tens of kilograms follows the air slowly: in a locker about a third of the swing
/// and 2 K milder, outside about two thirds, inside a fifth and never much colder than the heated
/// space (`heated_to`; `None`: not heated); its highest comes about 18:00 (common practice, no source).
#[must_use]
pub fn battery_temperature(
    place: BatteryPlace,
    air_mean: Celsius,
    half_range_k: f64,
    heated_to: Option<Celsius>,
    hour_of_day: f64,
) -> Celsius {
    warmed(place, unheated_temperature(place, air_mean, half_range_k, hour_of_day), heated_to)
}

/// Temperature of a battery that would be at `unheated` by the air alone, in a vehicle heated to `heated_to`.
#[must_use]
pub fn warmed(place: BatteryPlace, unheated: Celsius, heated_to: Option<Celsius>) -> Celsius {
    battery_kept_at(place, heated_to).map_or(unheated, |least| unheated.max(least))
}

/// The same by the air alone, without the heating of the living space.
#[must_use]
pub fn unheated_temperature(
    place: BatteryPlace,
    air_mean: Celsius,
    half_range_k: f64,
    hour_of_day: f64,
) -> Celsius {
    let swing = half_range_k * (std::f64::consts::TAU * (hour_of_day - 18.0) / 24.0).cos();
    match place {
        BatteryPlace::Outside => Celsius(air_mean.0 + 0.65 * swing),
        BatteryPlace::Locker => Celsius(air_mean.0 + 2.0 + 0.35 * swing),
        BatteryPlace::Inside => Celsius(unheated_inside(air_mean).0 + 0.2 * swing),
    }
}

/// Air temperature at an hour: a cosine with its top at 15:00.
#[must_use]
pub fn air_temperature(mean: Celsius, half_range_k: f64, hour_of_day: f64) -> Celsius {
    Celsius(mean.0 + half_range_k * (std::f64::consts::TAU * (hour_of_day - 15.0) / 24.0).cos())
}

/// Temperature at which the electrolyte of a lead-acid battery freezes (from memory: full -55,
/// three quarters -37, half -23, a quarter -15, empty -7 degrees Celsius).
#[must_use]
pub fn lead_freezes_at(soc_frac: f64) -> Celsius {
    let x = soc_frac.clamp(0.0, 1.0) * 4.0;
    let i = (x as usize).min(3);
    Celsius(FREEZING_C[i] + (FREEZING_C[i + 1] - FREEZING_C[i]) * (x - i as f64))
}

/// Freezing point of lead-acid [degrees Celsius], empty to full by quarters.
const FREEZING_C: [f64; 5] = [-7.0, -15.0, -23.0, -37.0, -55.0];

/// State of charge below which a lead-acid battery freezes at a temperature, 0..1: the inverse of
/// [`lead_freezes_at`]. `None` where even an empty one does not freeze.
#[must_use]
pub fn lead_freezes_below(at: Celsius) -> Option<f64> {
    if at.0 > FREEZING_C[0] {
        return None;
    }
    let quarter = FREEZING_C.windows(2).position(|pair| at.0 >= pair[1]);
    Some(quarter.map_or(1.0, |i| {
        let share = (FREEZING_C[i] - at.0) / (FREEZING_C[i] - FREEZING_C[i + 1]);
        (i as f64 + share) / 4.0
    }))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_met_by_the_published_cubic() {
        // A published cubic for the same table, y over x = T/100, stays within 0.014 of it.
        for (t, f) in IEEE_485 {
            let x = t / 100.0;
            let cubic = -2.8117 * x.powi(3) + 4.1916 * x * x - 2.4941 * x + 1.405;
            assert!((cubic - f).abs() <= 0.0145, "{t}: {cubic} {f}");
            assert!((lead_size_factor(Celsius(t)) - f).abs() < 1e-9);
        }
    }

    #[test]
    fn lead_gives_seven_tenths_at_freezing_and_less_below() {
        let at = |t| capacity_frac(Chemistry::Agm, Celsius(t), Hours(8.0));
        assert!((at(0.0) - 0.71).abs() < 0.01);
        assert!((lead_size_factor(Celsius(-10.0)) - 1.68).abs() < 0.06); // maker: 1.65, cubic: 1.70
        assert_eq!(at(25.0), 1.0);
        assert_eq!(at(40.0), 1.0);
    }

    #[test]
    fn a_slow_discharge_loses_less_to_the_cold() {
        let at = |rate| capacity_frac(Chemistry::Agm, Celsius(0.0), Hours(rate));
        // Published for 0 degrees Celsius: 71 % at rates of hours, 80 % at the usual rate, 85 % slowly.
        assert!((at(5.0) - 0.71).abs() < 0.01 && at(1.0) == at(8.0));
        assert!((0.74..=0.80).contains(&at(20.0)), "{}", at(20.0));
        assert!((0.82..=0.86).contains(&at(80.0)), "{}", at(80.0));
        assert!((at(100.0) - 0.855).abs() < 0.006 && at(1000.0) == at(100.0));
        assert_eq!(capacity_frac(Chemistry::Agm, Celsius(25.0), Hours(80.0)), 1.0);
    }

    #[test]
    fn lithium_keeps_more_in_the_cold() {
        let at = |t| capacity_frac(Chemistry::LiFePo4, Celsius(t), Hours(20.0));
        assert!((0.80..=0.90).contains(&at(0.0)));
        assert!((at(-20.0) - 0.70).abs() < 1e-9);
    }

    #[test]
    fn freezing_point_follows_charge() {
        assert_eq!(lead_freezes_at(1.0), Celsius(-55.0));
        assert_eq!(lead_freezes_at(0.5), Celsius(-23.0));
        assert_eq!(lead_freezes_at(-3.0), Celsius(-7.0));
        assert_eq!(lead_freezes_below(Celsius(-6.9)), None);
        assert_eq!(lead_freezes_below(Celsius(-60.0)), Some(1.0));
        for percent in 0..=100 {
            let soc = f64::from(percent) / 100.0;
            let back = lead_freezes_below(lead_freezes_at(soc)).expect("freezes");
            assert!((back - soc).abs() < 1e-12, "{soc} {back}");
        }
    }

    #[test]
    fn a_locker_swings_less_than_the_air() {
        let place = |p, h| battery_temperature(p, Celsius(5.0), 6.0, None, h).0;
        assert!(place(BatteryPlace::Outside, 6.0) < place(BatteryPlace::Locker, 6.0));
        assert!(place(BatteryPlace::Locker, 6.0) < place(BatteryPlace::Inside, 6.0));
        assert!((air_temperature(Celsius(5.0), 6.0, 15.0).0 - 11.0).abs() < 1e-12);
    }
}
