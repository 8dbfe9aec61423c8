//! How weather lasts from one day to the next.

use super::WeatherError;

/// How strongly a day's weather follows that of the days before.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Persistence {
    /// Correlation of `z` from one day to the next, both parts together (0..1).
    pub next_day_corr_frac: f64,
    /// Share of the variance of `z` in spells of weeks (0..1), `s`.
    pub slow_share_frac: f64,
    /// Days over which such spells fade to 1/e; `b = exp(-1 / slow_days)`.
    pub slow_days: f64,
}

impl Persistence {
    /// As measured.
    ///
    /// The 0.36 from one day to the next is the figure that made forecasts come true over seven
    /// measured multi-year sites. On its own it leaves long stays too even: the mean of `z` over 30
    /// days would have the variance 0.069. The spread of single months between years in central
    /// Europe (coefficients of variation 14 17 15 14 12 11 11 9 12 13 14 15 % from January to
    /// December), divided by the slope of `k` over `z` of the Hollands & Huget density, asks for
    /// 0.087 on the average of the twelve months; the 20 measured years at De Bilt give 0.095 to
    /// 0.097. A share of 0.05 fading over 20 days gives 0.093, and brings the spread of 3- to
    /// 60-day means of De Bilt within 2.5 % (0.36 alone: 15 % short at 30 days, 21 % at 60). It moves
    /// the spread of 3- to 5-day means by less than 2 %, so it is used for every length of stay.
    pub const MEASURED: Self =
        Self { next_day_corr_frac: 0.36, slow_share_frac: 0.05, slow_days: 20.0 };

    /// The two chains, or an error if no stationary chains fit the figures.
    pub(super) fn chains(self) -> Result<Chains, WeatherError> {
        let slow = if self.slow_days > 0.0 {
            libm::exp(-1.0 / self.slow_days)
        } else {
            return Err(WeatherError::Persistence);
        };
        let share = self.slow_share_frac;
        let fast = (self.next_day_corr_frac - share * slow) / (1.0 - share);
        let fits =
            (0.0..1.0).contains(&share) && (0.0..1.0).contains(&slow) && (0.0..1.0).contains(&fast);
        if fits { Ok(Chains { fast, slow, share }) } else { Err(WeatherError::Persistence) }
    }
}

/// Day-to-day factors of the two chains, 0..1, and the share of the slow one.
#[derive(Debug, Clone, Copy)]
pub(super) struct Chains {
    pub(super) fast: f64,
    pub(super) slow: f64,
    pub(super) share: f64,
}
