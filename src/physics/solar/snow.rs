//! Snow on the panels: the share of its yield that a panel loses to snow, by air and tilt.
//!
//! ```text
//! lost = 0.4 x^2 (3 - 2 x) cos^2 b,   x = (7 - T) / 16, held within 0..1
//! ```
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | `T` | usual mean of the day, outside | degrees Celsius |
//! | `b` | tilt from level | degree |
//!
//! How much snow falls at a place is not known here, so that the temperature stands for it: nothing where
//! days are 7 degrees or more, most from -9 degrees down, and between them no step. Nobody clears the
//! panels. The tilt is that of Townsend & Powers (37th IEEE PVSC 2011; as pvlib-python 0.16.1 has it), and
//! the curve is our choice beside what their model makes of the snow of seventeen towns; it misses a single
//! town by up to 0.28 (`tests/solar_snow.rs`). It is a mean over many winters, taken off every day alike.

use crate::units::{Celsius, Degrees};

/// From this mean of the day on no snow stays.
const NONE_FROM_C: f64 = 7.0;
/// So much colder it is most.
const MOST_AFTER_K: f64 = 16.0;
/// Most that a level panel loses, share of its yield.
const MOST_FRAC: f64 = 0.4;

/// Share of its yield that a panel loses to snow on a day of this usual mean temperature, 0..1; nothing where
/// one of them is no number.
#[must_use]
pub fn snow_loss_frac(day_mean: Celsius, tilt: Degrees) -> f64 {
    let cold = ((NONE_FROM_C - day_mean.0) / MOST_AFTER_K).clamp(0.0, 1.0);
    let level = tilt.0.to_radians().cos();
    let lost = MOST_FRAC * cold * cold * (3.0 - 2.0 * cold) * level * level;
    if lost.is_finite() { lost } else { 0.0 }
}

/// Mean air of a day.
pub(super) fn day_mean(air: &[Celsius; 24]) -> Celsius {
    Celsius(air.iter().map(|hour| hour.0).sum::<f64>() / 24.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn none_when_it_is_mild_or_upright_and_most_on_a_level_panel_in_deep_cold() {
        assert_eq!(snow_loss_frac(Celsius(7.0), Degrees(0.0)), 0.0);
        assert_eq!(snow_loss_frac(Celsius(30.0), Degrees(0.0)), 0.0);
        assert!(snow_loss_frac(Celsius(-20.0), Degrees(90.0)) < 1e-9);
        assert_eq!(snow_loss_frac(Celsius(-20.0), Degrees(0.0)), 0.4);
        // By hand: x = 7 / 16, 0.4 x 0.4067 of it, and three quarters of that at 30 degrees of tilt.
        assert!((snow_loss_frac(Celsius(0.0), Degrees(0.0)) - 0.1627).abs() < 1e-3);
        assert!((snow_loss_frac(Celsius(0.0), Degrees(30.0)) - 0.1220).abs() < 1e-3);
    }

    /// A tenth of a kelvin or a degree of tilt never moves it by more than half a percent of the yield.
    #[test]
    fn it_never_leaps() {
        for step in -300..200 {
            let air = f64::from(step) * 0.1;
            for tilt in (0..90).map(f64::from) {
                let here = snow_loss_frac(Celsius(air), Degrees(tilt));
                let warmer = snow_loss_frac(Celsius(air + 0.1), Degrees(tilt));
                let steeper = snow_loss_frac(Celsius(air), Degrees(tilt + 0.5));
                assert!(here >= warmer && here - warmer < 0.005, "{air} {tilt}");
                assert!(here >= steeper && here - steeper < 0.005, "{air} {tilt}");
            }
        }
    }
}
