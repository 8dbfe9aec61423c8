//! Straight-line scales, round tick marks, and finding the point nearest to a finger.
//!
//! Nothing here knows a browser. Lengths on screen are in CSS pixels and end in `_px`.

/// A straight line from values to places on screen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Scale {
    from: f64,
    to: f64,
    from_px: f64,
    to_px: f64,
}

impl Scale {
    /// The scale that puts the value `from` at `from_px` and `to` at `to_px`. Values that are not
    /// finite, or a span without length, give a scale that puts everything at `from_px`.
    #[must_use]
    pub fn new((from, to): (f64, f64), (from_px, to_px): (f64, f64)) -> Self {
        if from.is_finite() && to.is_finite() && (to - from).abs() > f64::EPSILON {
            Self { from, to, from_px, to_px }
        } else {
            Self { from: 0.0, to: 1.0, from_px, to_px: from_px }
        }
    }

    /// Place of `value` [px]; values outside the span land at its ends, no number at its start.
    #[must_use]
    pub fn px(&self, value: f64) -> f64 {
        let share = (value - self.from) / (self.to - self.from);
        let share = if share.is_nan() { 0.0 } else { share.clamp(0.0, 1.0) };
        self.from_px + share * (self.to_px - self.from_px)
    }

    /// Value at a place [px], within the span.
    #[must_use]
    pub fn value(&self, place_px: f64) -> f64 {
        let length = self.to_px - self.from_px;
        if length.abs() < f64::EPSILON || !place_px.is_finite() {
            return self.from;
        }
        let share = ((place_px - self.from_px) / length).clamp(0.0, 1.0);
        self.from + share * (self.to - self.from)
    }

    /// Screen length of one unit of value [px].
    #[must_use]
    pub fn px_per_unit(&self) -> f64 {
        ((self.to_px - self.from_px) / (self.to - self.from)).abs()
    }
}

/// Round values from 0 to at least `top`, in steps of 1, 2 or 5 times a power of ten, at most
/// `most` steps. The last one is where the axis ends.
#[must_use]
pub fn ticks_from_zero(top: f64, most: usize) -> Vec<f64> {
    let top = if top.is_finite() && top > 0.0 { top } else { 1.0 };
    let most = most.clamp(1, 50);
    let step = round_step(top / most as f64);
    let count = ((top / step - 1e-9).ceil().max(1.0) as usize).min(most);
    (0..=count).map(|index| index as f64 * step).collect()
}

/// The smallest of 1, 2, 5 times a power of ten that is not below `least`.
fn round_step(least: f64) -> f64 {
    let power = 10f64.powf(least.log10().floor());
    [1.0, 2.0, 5.0]
        .into_iter()
        .map(|digit| digit * power)
        .find(|step| *step >= least * (1.0 - 1e-9))
        .unwrap_or(10.0 * power)
}

/// Decimals that ticks `step` apart need, at most 3.
#[must_use]
pub fn decimals_for_step(step: f64) -> u8 {
    (0u8..3)
        .find(|places| {
            let scaled = step * 10f64.powi(i32::from(*places));
            (scaled - scaled.round()).abs() < 1e-6
        })
        .unwrap_or(3)
}

/// Index of the place nearest to `at_px`; `None` if there are none.
#[must_use]
pub fn nearest(places_px: impl IntoIterator<Item = f64>, at_px: f64) -> Option<usize> {
    let mut best: Option<(usize, f64)> = None;
    for (index, place) in places_px.into_iter().enumerate() {
        let distance = (place - at_px).abs();
        if distance.is_finite() && best.is_none_or(|(_, least)| distance < least) {
            best = Some((index, distance));
        }
    }
    best.map(|(index, _)| index)
}

/// Middle of the device pixel that holds `place_px`: a stroke an odd number of device pixels wide
/// is sharp there. `dpr` is device pixels per CSS pixel.
#[must_use]
pub fn crisp_px(place_px: f64, dpr: f64) -> f64 {
    ((place_px * dpr).floor() + 0.5) / dpr
}

/// Where labels of `widths_px` around `centres_px` fit between the ends without touching each
/// other: earlier ones win. Gives the left edge of each that fits.
#[must_use]
pub fn fit_labels(
    centres_px: &[f64],
    widths_px: &[f64],
    (left_px, right_px): (f64, f64),
    gap_px: f64,
) -> Vec<Option<f64>> {
    let mut free_px = left_px;
    centres_px
        .iter()
        .zip(widths_px)
        .map(|(centre, width)| {
            let start = (centre - width / 2.0).min(right_px - width).max(left_px);
            // Moved to the edge it may no longer stand for its mark.
            let near = (start + width / 2.0 - centre).abs() <= *width;
            (near && start >= free_px && start + width <= right_px + 1e-9).then(|| {
                free_px = start + width + gap_px;
                start
            })
        })
        .collect()
}

/// Least distance [px] between the line through `points` and a box (left, top, right, bottom), at
/// most `enough_px`; 0 if they touch.
#[must_use]
pub fn clearance_px(points: &[(f64, f64)], frame: (f64, f64, f64, f64), enough_px: f64) -> f64 {
    let (left, top, right, bottom) = frame;
    let distance = |(x, y): (f64, f64)| {
        let aside = (left - x).max(x - right).max(0.0);
        let above = (top - y).max(y - bottom).max(0.0);
        aside.hypot(above)
    };
    let mut least = enough_px;
    for pair in points.windows(2) {
        let [from, to] = *pair else { continue };
        let length = (to.0 - from.0).hypot(to.1 - from.1);
        // Steps finer than any label; a line that is no number has none.
        let steps = if length.is_finite() { (length / 3.0).ceil().clamp(1.0, 1000.0) } else { 0.0 };
        let count = steps as u32;
        for step in 0..=count {
            let share = f64::from(step) / steps.max(1.0);
            let place = (from.0 + share * (to.0 - from.0), from.1 + share * (to.1 - from.1));
            least = least.min(distance(place));
        }
    }
    least
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back() {
        let scale = Scale::new((0.0, 1.0), (200.0, 20.0));
        assert!((scale.px(0.0) - 200.0).abs() < 1e-12);
        assert!((scale.px(1.0) - 20.0).abs() < 1e-12);
        assert!((scale.px(0.25) - 155.0).abs() < 1e-12);
        assert!((scale.value(155.0) - 0.25).abs() < 1e-12);
        assert!((scale.px_per_unit() - 180.0).abs() < 1e-12);
    }

    #[test]
    fn outside_stays_at_the_ends() {
        let scale = Scale::new((0.0, 10.0), (0.0, 100.0));
        assert_eq!(scale.px(-5.0), 0.0);
        assert_eq!(scale.px(50.0), 100.0);
        assert_eq!(scale.px(f64::NAN), 0.0);
        assert_eq!(scale.value(1e9), 10.0);
        assert_eq!(scale.value(f64::NAN), 0.0);
        let flat = Scale::new((3.0, 3.0), (10.0, 90.0));
        assert_eq!(flat.px(3.0), 10.0);
        assert!(flat.value(50.0).is_finite());
    }

    #[test]
    fn ticks_are_round_and_reach_the_top() {
        assert_eq!(ticks_from_zero(100.0, 4), vec![0.0, 50.0, 100.0]);
        assert_eq!(ticks_from_zero(100.0, 5), vec![0.0, 20.0, 40.0, 60.0, 80.0, 100.0]);
        assert_eq!(ticks_from_zero(7.0, 4), vec![0.0, 2.0, 4.0, 6.0, 8.0]);
        assert_eq!(ticks_from_zero(0.0, 4).last(), Some(&1.0));
        assert_eq!(ticks_from_zero(f64::NAN, 4).last(), Some(&1.0));
        for top in [0.03, 0.7, 1.0, 13.0, 99.0, 640.0, 12_345.0] {
            for most in 1..9 {
                let ticks = ticks_from_zero(top, most);
                assert!(ticks.len() <= most + 1, "{top} {most} {ticks:?}");
                assert!(ticks.last().is_some_and(|last| *last >= top * (1.0 - 1e-6)));
            }
        }
    }

    #[test]
    fn decimals_of_ticks() {
        assert_eq!(decimals_for_step(20.0), 0);
        assert_eq!(decimals_for_step(0.5), 1);
        assert_eq!(decimals_for_step(0.02), 2);
    }

    #[test]
    fn the_nearest_point() {
        assert_eq!(nearest([0.0, 10.0, 20.0], 14.0), Some(1));
        assert_eq!(nearest([0.0, 10.0, 20.0], -40.0), Some(0));
        assert_eq!(nearest([0.0, 10.0, 20.0], 400.0), Some(2));
        assert_eq!(nearest([], 4.0), None);
        assert_eq!(nearest([f64::NAN, 3.0], 1.0), Some(1));
    }

    #[test]
    fn hairlines_stand_in_the_middle_of_a_device_pixel() {
        assert_eq!(crisp_px(10.2, 1.0), 10.5);
        assert_eq!(crisp_px(10.2, 2.0), 10.25);
        let place = crisp_px(33.37, 2.625) * 2.625;
        assert!((place.fract() - 0.5).abs() < 1e-9);
    }

    #[test]
    fn room_between_a_line_and_a_label() {
        let line = [(0.0, 0.0), (100.0, 0.0)];
        assert_eq!(clearance_px(&line, (40.0, -5.0, 60.0, 5.0), 50.0), 0.0);
        assert_eq!(clearance_px(&line, (40.0, 10.0, 60.0, 20.0), 50.0), 10.0);
        assert_eq!(clearance_px(&line, (103.0, 4.0, 120.0, 20.0), 50.0), 5.0);
        assert_eq!(clearance_px(&line, (40.0, 900.0, 60.0, 910.0), 50.0), 50.0);
        assert_eq!(clearance_px(&[], (0.0, 0.0, 1.0, 1.0), 50.0), 50.0);
        assert_eq!(clearance_px(&[(0.0, 0.0), (f64::NAN, 1.0)], (9.0, 9.0, 10.0, 10.0), 5.0), 5.0);
    }

    #[test]
    fn labels_never_touch_or_leave() {
        let centres: Vec<f64> = (0..20).map(|n| f64::from(n) * 15.0).collect();
        let widths = vec![30.0; 20];
        let placed = fit_labels(&centres, &widths, (0.0, 285.0), 6.0);
        assert_eq!(placed.first(), Some(&Some(0.0)));
        let starts: Vec<f64> = placed.into_iter().flatten().collect();
        assert!(starts.len() > 5);
        for pair in starts.windows(2) {
            assert!(pair[1] - pair[0] >= 36.0);
        }
        assert!(starts.iter().all(|start| *start >= 0.0 && *start + 30.0 <= 285.0 + 1e-9));
    }
}
