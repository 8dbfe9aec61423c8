//! Sequences as they were drawn, kept for all who play the same weather.

use super::persistence::Persistence;
use super::sequences::{ForecastDay, Sequence, WeatherSequences};

/// So many sequences are kept; later ones are drawn whenever they are read.
const KEPT: usize = 512;

/// One sequence, a figure a day; see [`Sequence`].
#[derive(Clone, Copy, Debug)]
pub struct DrawnSequence<'a> {
    /// Daily clearness index, 0..1.
    pub k_frac: &'a [f64],
    /// Degrees of each day above the usual mean of its time of year [K].
    pub air_anomaly_k: &'a [f64],
    /// How far the user's own figures are off, all together: a standard normal figure.
    pub use_normal: f64,
}

/// The weather of a stay, each of the first sequences drawn once however often it is read.
#[derive(Clone, Debug)]
pub struct DrawnWeather {
    weather: WeatherSequences,
    /// Of the sequences kept, in turn.
    k_frac: Vec<f64>,
    air_anomaly_k: Vec<f64>,
    use_normal: Vec<f64>,
    /// The one drawn last.
    last: Sequence,
}

impl DrawnWeather {
    /// Nothing is drawn yet.
    #[must_use]
    pub fn new(weather: WeatherSequences) -> Self {
        Self {
            weather,
            k_frac: Vec::new(),
            air_anomaly_k: Vec::new(),
            use_normal: Vec::new(),
            last: Sequence::default(),
        }
    }

    /// The same of plain random sequences; see [`WeatherSequences::plain`].
    #[must_use]
    pub fn plain(&self) -> Self {
        Self::new(self.weather.clone().plain())
    }

    /// Whether the sequences are those of a stay; see [`WeatherSequences::are_of`].
    #[must_use]
    pub fn is_of(&self, days: &[ForecastDay], by: Persistence, climate_error_frac: f64) -> bool {
        self.weather.are_of(days, by, climate_error_frac)
    }

    /// Number of days in each sequence.
    #[must_use]
    pub fn days(&self) -> usize {
        self.weather.days()
    }

    /// The sequence of this number, 0 the first.
    pub fn sequence(&mut self, number: usize) -> DrawnSequence<'_> {
        let days = self.weather.days();
        while self.use_normal.len() <= number.min(KEPT - 1) {
            self.draw(self.use_normal.len());
            self.k_frac.extend_from_slice(&self.last.k_frac);
            self.air_anomaly_k.extend_from_slice(&self.last.air_anomaly_k);
            self.use_normal.push(self.last.use_normal);
        }
        let kept = number * days..(number + 1) * days;
        let Some(use_normal) = self.use_normal.get(number) else {
            self.draw(number);
            let Sequence { k_frac, air_anomaly_k, use_normal } = &self.last;
            return DrawnSequence { k_frac, air_anomaly_k, use_normal: *use_normal };
        };
        DrawnSequence {
            k_frac: self.k_frac.get(kept.clone()).unwrap_or_default(),
            air_anomaly_k: self.air_anomaly_k.get(kept).unwrap_or_default(),
            use_normal: *use_normal,
        }
    }

    fn draw(&mut self, number: usize) {
        self.weather.go_to(number as u64);
        self.weather.fill(&mut self.last);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forecast::weather::{DayClimate, DayDistribution};

    /// In any order, once or twice, kept or not: the sequence of a number is the one drawn by itself.
    #[test]
    fn a_sequence_is_the_same_however_it_is_read() {
        let days = |count: usize| {
            let day = DayDistribution::of_climate(DayClimate::INLAND, 0.42).expect("finite");
            vec![ForecastDay::unknown(day); count]
        };
        let weather = || WeatherSequences::new(days(5), 7).expect("valid");
        let mut drawn = DrawnWeather::new(weather());
        assert_eq!(drawn.days(), 5);
        let (mut alone, mut by_itself) = (weather(), Sequence::default());
        for number in [3, 0, KEPT - 1, KEPT, KEPT + 40, 3, KEPT, 1] {
            alone.go_to(number as u64);
            alone.fill(&mut by_itself);
            let told = drawn.sequence(number);
            assert_eq!(told.k_frac, by_itself.k_frac, "{number}");
            assert_eq!(told.air_anomaly_k, by_itself.air_anomaly_k, "{number}");
            assert_eq!(told.use_normal, by_itself.use_normal, "{number}");
        }
        let measured = Persistence::MEASURED;
        assert!(drawn.is_of(&days(5), measured, 0.0) && !drawn.is_of(&days(4), measured, 0.0));
        assert!(!drawn.is_of(&days(5), measured, 0.1));
        let other = Persistence { slow_days: 30.0, ..measured };
        assert!(!drawn.is_of(&days(5), other, 0.0));
        // Plain ones are others.
        let even = drawn.sequence(2).k_frac.to_vec();
        assert_ne!(drawn.plain().sequence(2).k_frac, even);
    }
}
