//! How long a compressor fridge runs in warm and in cold air.
//!
//! The share of the time running (duty) follows the heat that leaks in, which grows with the
//! difference between the air and the compartment, and the compressor, which works worse the
//! warmer the air around its condenser. Both together for a compartment at 5 degrees Celsius:
//!
//! | air [degrees Celsius] | 5 | 15 | 20 | 25 | 30 | 35 | 40 |
//! |---|---|---|---|---|---|---|---|
//! | duty | 0 | 0.18 | 0.25 | 0.32 | 0.42 | 0.55 | 0.70 |
//!
//! Common practice, no source. The table gives the shape; a fridge of another size, filling or
//! insulation keeps the shape and is scaled so that its own duty at 25 degrees Celsius is met:
//!
//! duty(T) = duty(25) * s(T), s(T) = table(T) / table(25)
//!
//! Between the points s runs straight. Below 15 degrees Celsius it falls straight to 0 at
//! 5 degrees, where nothing is left to cool, and stays 0. Above 40 degrees it rises on with the
//! last slope (0.03 per kelvin). The duty never leaves 0..1: at 1 the compressor never stops and
//! the compartment warms.

use crate::units::Celsius;

/// Usual duty in air of 25 degrees Celsius, where a fridge's own duty is stated, 0..1.
pub const USUAL_DUTY_AT_25C_FRAC: f64 = 0.32;

/// Air temperature [degrees Celsius] and duty, rising in both.
const TABLE: [(f64, f64); 7] = [
    (5.0, 0.0),
    (15.0, 0.18),
    (20.0, 0.25),
    (25.0, 0.32),
    (30.0, 0.42),
    (35.0, 0.55),
    (40.0, 0.70),
];
/// Change of the table's duty per kelvin above its last point [1/K].
const SLOPE_ABOVE_PER_K: f64 = 0.03;

/// Duty at `air` over duty at 25 degrees Celsius: 1 at 25, 0 at 5 and below, never negative, not
/// limited above. An air temperature that is not a number counts as 25 degrees.
#[must_use]
pub fn relative_duty(air: Celsius) -> f64 {
    if !air.is_finite() {
        return 1.0;
    }
    let mut duty = 0.0;
    for pair in TABLE.windows(2) {
        if let [(t0, d0), (t1, d1)] = *pair {
            duty += (d1 - d0) * ((air.0 - t0) / (t1 - t0)).clamp(0.0, 1.0);
        }
    }
    let above = TABLE.last().map_or(0.0, |&(last, _)| (air.0 - last).max(0.0));
    (duty + SLOPE_ABOVE_PER_K * above) / USUAL_DUTY_AT_25C_FRAC
}

/// Share of the time a compressor fridge runs at `air`, 0..1, from its share at 25 degrees
/// Celsius.
///
/// A share that is not a number counts as 0.
#[must_use]
pub fn duty_at(frac_at_25c: f64, air: Celsius) -> f64 {
    if !frac_at_25c.is_finite() {
        return 0.0;
    }
    (frac_at_25c.max(0.0) * relative_duty(air)).clamp(0.0, 1.0)
}

/// Share of the time it would run at 25 degrees Celsius, 0..1, from a share observed at `air`.
///
/// `None` below 10 degrees Celsius, where a fridge hardly runs and the result would be mostly
/// error, and for a share that is not within 0..1. Where the result would pass 1 it is 1: the
/// fridge cannot keep cold at 25 degrees.
#[must_use]
pub fn duty_at_25c_from(observed_frac: f64, air: Celsius) -> Option<f64> {
    if !(0.0..=1.0).contains(&observed_frac) || !air.is_finite() || air.0 < 10.0 {
        return None;
    }
    Some((observed_frac / relative_duty(air)).clamp(0.0, 1.0))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Common practice, no source: the table itself.
    #[test]
    fn the_table_comes_back() {
        for (air, duty) in TABLE {
            assert!((duty_at(USUAL_DUTY_AT_25C_FRAC, Celsius(air)) - duty).abs() < 1e-12, "{air}");
        }
    }

    #[test]
    fn outside_the_table_it_stays_between_never_and_always() {
        assert_eq!(duty_at(0.32, Celsius(-20.0)), 0.0);
        assert!((duty_at(0.32, Celsius(10.0)) - 0.09).abs() < 1e-12);
        assert!((duty_at(0.32, Celsius(45.0)) - 0.85).abs() < 1e-12);
        assert_eq!(duty_at(0.6, Celsius(40.0)), 1.0);
        assert_eq!(duty_at(f64::NAN, Celsius(25.0)), 0.0);
        assert_eq!(duty_at(0.32, Celsius(f64::NAN)), 0.32);
    }

    #[test]
    fn warmer_air_never_means_less_running() {
        let mut last = 0.0;
        for tenth in -200..600 {
            let duty = duty_at(0.4, Celsius(f64::from(tenth) / 10.0));
            assert!(duty >= last - 1e-12 && (0.0..=1.0).contains(&duty));
            last = duty;
        }
    }

    #[test]
    fn an_observed_duty_goes_back_to_25_degrees() {
        for air in [12.0, 18.0, 25.0, 33.0] {
            let seen = duty_at(0.37, Celsius(air));
            let back = duty_at_25c_from(seen, Celsius(air)).expect("air is warm enough");
            assert!((back - 0.37).abs() < 1e-12);
        }
        assert_eq!(duty_at_25c_from(0.2, Celsius(4.0)), None);
        assert_eq!(duty_at_25c_from(1.2, Celsius(25.0)), None);
    }
}
