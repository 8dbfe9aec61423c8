//! What a number, a text or a list may hold, and what pulls foreign data into it.

/// Smallest and largest value a field may hold, in the unit of the field.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// Smallest.
    pub min: f64,
    /// Largest.
    pub max: f64,
}

impl Range {
    pub(super) const fn new(min: f64, max: f64) -> Self {
        Self { min, max }
    }

    /// Whether `value` is a number within the range.
    #[must_use]
    pub fn holds(self, value: f64) -> bool {
        value >= self.min && value <= self.max
    }
}

/// Share of something, 0..1.
pub const FRAC: Range = Range::new(0.0, 1.0);
/// Minute of the day.
pub const MINUTE_OF_DAY: Range = Range::new(0.0, 1439.0);
/// Minutes a day.
pub const MINUTES_A_DAY: Range = Range::new(0.0, 1440.0);
/// Hours of a day.
pub const HOURS_A_DAY: Range = Range::new(0.0, 24.0);
/// Every how many days.
pub const EVERY_DAYS: Range = Range::new(0.0, 60.0);
/// Current of one load [A].
pub const DRAW_A: Range = Range::new(0.0, 1_000.0);
/// Length of a cable one way [m].
pub const CABLE_M: Range = Range::new(0.1, 50.0);
/// Cross-section of a cable [mm2].
pub const CABLE_MM2: Range = Range::new(0.5, 240.0);
/// Time since arrival [h].
pub const SINCE_ARRIVAL_H: Range = Range::new(0.0, 1464.0);
/// Sun on the horizontal [Wh/m2 a day].
pub const SUN_WH_M2: Range = Range::new(0.0, 12_000.0);
/// Most characters of a name.
pub const MAX_NAME_CHARS: usize = 40;

/// Counts what had to be pulled into bounds.
#[derive(Debug, Default)]
pub(super) struct Sanitiser {
    /// Values that had to change.
    pub(super) changed: usize,
}

impl Sanitiser {
    /// A number in its range; `instead` of what is no number.
    pub(super) fn number(&mut self, value: &mut f64, range: Range, instead: f64) {
        let kept = if value.is_finite() { value.clamp(range.min, range.max) } else { instead };
        if kept != *value {
            self.changed += 1;
            *value = kept;
        }
    }

    /// A whole number in its range.
    pub(super) fn whole<T>(&mut self, value: &mut T, range: Range)
    where
        T: Copy + Into<f64> + TryFrom<i64> + PartialEq,
    {
        let kept = T::try_from((*value).into().clamp(range.min, range.max) as i64);
        if let Ok(kept) = kept
            && kept != *value
        {
            self.changed += 1;
            *value = kept;
        }
    }

    /// Plain printable text of bounded length: control and direction-override characters go.
    pub(super) fn text(&mut self, text: &mut String, max_chars: usize) {
        let hidden = |c: &char| {
            c.is_control()
                || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{feff}')
        };
        let kept: String = text.chars().filter(|c| !hidden(c)).take(max_chars).collect();
        if kept != *text {
            self.changed += 1;
            *text = kept;
        }
    }

    /// A list of at most `max` items.
    pub(super) fn length<T>(&mut self, items: &mut Vec<T>, max: usize) {
        if items.len() > max {
            self.changed += items.len() - max;
            items.truncate(max);
        }
    }
}
