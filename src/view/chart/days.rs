//! Days and nights along an axis of hours from arrival.

/// A stretch of time in hours from the start of the chart.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Span {
    /// Start [h].
    pub from_hour: f64,
    /// End [h], after the start.
    pub to_hour: f64,
}

impl Span {
    /// The part of it between 0 and `end_hour`, if there is any.
    #[must_use]
    pub fn within(self, end_hour: f64) -> Option<Self> {
        if self.from_hour.is_nan() || self.to_hour.is_nan() {
            return None;
        }
        let from_hour = self.from_hour.max(0.0);
        let to_hour = self.to_hour.min(end_hour);
        (from_hour < to_hour).then_some(Self { from_hour, to_hour })
    }

    /// Whether `hour` lies in it, the start included.
    #[must_use]
    pub fn holds(self, hour: f64) -> bool {
        self.from_hour <= hour && hour < self.to_hour
    }
}

/// A calendar day on the axis; the first and the last may be cut short.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayOnAxis {
    /// Days after the first, 0 for the first.
    pub day: usize,
    /// The part of the day that is on the axis.
    pub span: Span,
}

/// The days of `hour_count` hours that begin `start_hour` hours after midnight (0..24).
#[must_use]
pub fn days_on_axis(start_hour: f64, hour_count: usize) -> Vec<DayOnAxis> {
    let start = if start_hour.is_finite() { start_hour.clamp(0.0, 24.0) } else { 0.0 };
    let end = hour_count as f64;
    let mut days = Vec::new();
    let mut from_hour = 0.0;
    for day in 0.. {
        let to_hour = (day as f64 + 1.0) * 24.0 - start;
        if let Some(span) = (Span { from_hour, to_hour }).within(end) {
            days.push(DayOnAxis { day, span });
        }
        if to_hour >= end {
            break;
        }
        from_hour = to_hour.max(0.0);
    }
    days
}

/// Day and time of day of `hour` hours after a start at `start_hour` o'clock: days after the
/// first, and hours 0..24.
#[must_use]
pub fn day_and_time(start_hour: f64, hour: f64) -> (usize, f64) {
    let since_midnight = (start_hour + hour).max(0.0);
    if !since_midnight.is_finite() {
        return (0, 0.0);
    }
    ((since_midnight / 24.0).floor() as usize, since_midnight % 24.0)
}

/// Which of evenly spaced day labels to write so that they stand at least `need_px` apart: every,
/// every second, every fifth, and then whole weeks.
#[must_use]
pub fn every_nth_day(px_per_day: f64, need_px: f64) -> usize {
    [1usize, 2, 5, 7, 14, 28]
        .into_iter()
        .find(|days| *days as f64 * px_per_day >= need_px)
        .unwrap_or(56)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_cover_the_axis_without_a_gap() {
        for start in [0.0, 9.0, 14.5, 23.0, 24.0] {
            for count in [1usize, 9, 10, 24, 25, 100, 336] {
                let days = days_on_axis(start, count);
                let mut at = 0.0;
                for day in &days {
                    assert_eq!(day.span.from_hour, at, "{start} {count}");
                    at = day.span.to_hour;
                }
                assert_eq!(at, count as f64);
            }
        }
        assert!(days_on_axis(0.0, 0).is_empty());
        assert_eq!(days_on_axis(f64::NAN, 24).len(), 1);
    }

    #[test]
    fn a_start_in_the_afternoon_shortens_the_first_day() {
        let days = days_on_axis(14.0, 48);
        assert_eq!(days.len(), 3);
        assert_eq!(days[0], DayOnAxis { day: 0, span: Span { from_hour: 0.0, to_hour: 10.0 } });
        assert_eq!(days[2].day, 2);
        assert_eq!(day_and_time(14.0, 10.0), (1, 0.0));
        assert_eq!(day_and_time(14.0, 9.5), (0, 23.5));
    }

    #[test]
    fn spans_are_cut_to_the_axis() {
        let span = Span { from_hour: -3.0, to_hour: 5.0 };
        assert_eq!(span.within(24.0), Some(Span { from_hour: 0.0, to_hour: 5.0 }));
        assert_eq!(span.within(0.0), None);
        assert_eq!((Span { from_hour: 30.0, to_hour: 40.0 }).within(24.0), None);
        assert_eq!((Span { from_hour: f64::NAN, to_hour: f64::NAN }).within(24.0), None);
        assert!(span.holds(-3.0) && !span.holds(5.0));
    }

    #[test]
    fn crowded_days_are_thinned() {
        assert_eq!(every_nth_day(100.0, 40.0), 1);
        assert_eq!(every_nth_day(21.0, 40.0), 2);
        assert_eq!(every_nth_day(9.0, 40.0), 5);
        assert_eq!(every_nth_day(0.0, 40.0), 56);
    }
}
