//! What the chart of the battery's course shows, in plain figures.

use super::days::{Span, day_and_time};
use super::glyph::EventKind;
use crate::view::lang;
use time::{Date, Duration};

/// Everything the chart of the battery's course shows. Hours count from the start of the chart.
#[derive(Clone, Debug, PartialEq)]
pub struct SocChart {
    /// Date of the first hour, camp time.
    pub first_day: Date,
    /// Time of day at which the first hour begins [h after midnight, 0..24, camp time].
    pub start_hour_of_day: f64,
    /// State of charge at the start, 0..1.
    pub start_soc_frac: f64,
    /// Limit the user set, before the cold moves it, 0..1.
    pub limit_frac: f64,
    /// What the line stands for.
    pub line: MiddleLine,
    /// Hour by hour; empty if there is nothing to draw.
    pub hours: Vec<SocHour>,
    /// Sunset to sunrise, in order; may reach beyond the chart at both ends. With polar night one
    /// span over all of it, with polar day none.
    pub nights: Vec<Span>,
    /// What happens, in order of its start.
    pub events: Vec<ChartEvent>,
    /// State of charge as read on site.
    pub readings: Vec<ChartReading>,
    /// Moments to mark by a labelled line, such as now or where the forecast starts again.
    pub marks: Vec<ChartMark>,
}

/// What the line in the chart stands for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum MiddleLine {
    /// One course in average weather.
    #[default]
    Average,
    /// Half of all courses lie below, half above.
    Median,
}

/// One hour. All at its end.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SocHour {
    /// State of charge on the line, 0..1.
    pub soc_frac: f64,
    /// Limit the user set, where the cold puts it, 0..1.
    pub low_frac: f64,
    /// Nothing more comes out below this, 0..1.
    pub empty_frac: f64,
    /// Likely range; `None` while it is not known, or where there is none.
    pub band: Option<SocBand>,
}

/// Eight courses in ten lie inside.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SocBand {
    /// One course in ten lies below, 0..1.
    pub p10_frac: f64,
    /// One course in ten lies above, 0..1.
    pub p90_frac: f64,
}

/// Something that happens.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartEvent {
    /// What.
    pub kind: EventKind,
    /// When.
    pub span: Span,
    /// What stands after the word of its kind, such as what cuts out; may be empty.
    pub label: String,
}

/// A state of charge read on site.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChartReading {
    /// When [h].
    pub hour: f64,
    /// What was read, 0..1.
    pub soc_frac: f64,
    /// How far it may be off either way, 0..1; 0 if that is not known.
    pub error_frac: f64,
}

/// A moment with a name.
#[derive(Clone, Debug, PartialEq)]
pub struct ChartMark {
    /// When [h].
    pub hour: f64,
    /// A short word.
    pub label: String,
}

/// Day and time `hour` hours after the first hour of a stay began, such as "Tue 16 Jun 04:00", camp
/// time.
#[must_use]
pub fn moment(first_day: Date, start_hour_of_day: f64, hour: f64) -> String {
    let (days, time_h) = day_and_time(start_hour_of_day, hour);
    lang::moment(date_after(first_day, days), (time_h * 60.0).round() as u16)
}

/// The date `days` after `first_day`.
fn date_after(first_day: Date, days: usize) -> Date {
    let days = i64::try_from(days).unwrap_or(0);
    first_day.checked_add(Duration::days(days)).unwrap_or(first_day)
}

impl SocChart {
    /// The date `days` after the first.
    #[must_use]
    pub fn date(&self, days: usize) -> Date {
        date_after(self.first_day, days)
    }
}
