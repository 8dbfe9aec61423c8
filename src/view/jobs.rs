//! Runs long calculations in short slices, so that the page stays responsive.

use super::working::Working;
use crate::advice::changes::improvements::{ImprovementsJob, InFullJob};
use crate::advice::changes::ways::WaysJob;
use crate::advice::compare::CompareJob;
use crate::advice::compare::alternatives::AlternativesJob;
use crate::advice::log::LogJob;
use crate::advice::season::YearStripJob;
use crate::advice::sizing::SizingJob;
use crate::forecast::OddsRun;
use crate::forecast::weather::WeatherError;
use crate::import::log::{LogReader, LogSurvey};
use leptos::prelude::*;
use std::time::Duration;

/// Longest slice [ms]: well below the 50 that are felt, and above the 4 that a browser waits between two.
const SLICE_MS: f64 = 24.0;
/// Weather sequences that take about as long as a unit.
const SEQUENCES_A_UNIT: usize = 5;
/// Weather sequences between looks at the clock, played side by side.
const SEQUENCES_A_LOOK: usize = 50;

/// Work that goes in portions.
pub trait Job: 'static {
    /// Units of work between looks at the clock. One is some tens of microseconds, on a slow phone a millisecond
    /// and more.
    const UNITS: usize = 2;

    /// Works on for about `units`; false once all is done.
    ///
    /// # Errors
    /// [`WeatherError`] where the weather of the trip makes no sense.
    fn advance(&mut self, units: usize) -> Result<bool, WeatherError>;
}

macro_rules! goes_in_portions {
    ($($job:ty),+) => {
        $(impl Job for $job {
            fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
                <$job>::advance(self, units)
            }
        })+
    };
}

goes_in_portions!(
    ImprovementsJob,
    InFullJob,
    WaysJob,
    SizingJob,
    YearStripJob,
    CompareJob,
    AlternativesJob
);

impl Job for LogJob {
    // Its steps are larger than those of a search.
    const UNITS: usize = 1;

    fn advance(&mut self, _units: usize) -> Result<bool, WeatherError> {
        Self::advance(self)
    }
}

/// Tables go piece by piece.
macro_rules! goes_in_pieces {
    ($($job:ty),+) => {
        $(impl Job for $job {
            const UNITS: usize = 1;

            fn advance(&mut self, _units: usize) -> Result<bool, WeatherError> {
                Ok(<$job>::advance(self))
            }
        })+
    };
}

goes_in_pieces!(LogSurvey, LogReader);

impl Job for OddsRun {
    const UNITS: usize = SEQUENCES_A_LOOK / SEQUENCES_A_UNIT;

    fn advance(&mut self, units: usize) -> Result<bool, WeatherError> {
        Ok(Self::advance(self, SEQUENCES_A_UNIT * units))
    }
}

/// How far a job has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stage {
    /// More to come.
    Working,
    /// All is known.
    Done,
    /// It cannot be worked out.
    Failed,
}

/// Counts the starts of one kind of work; only the last one goes on. Copies share the count.
#[derive(Clone, Copy)]
pub struct Generations {
    current: StoredValue<u32>,
}

impl Default for Generations {
    fn default() -> Self {
        Self { current: StoredValue::new(0) }
    }
}

impl Generations {
    /// A new start; earlier ones stop.
    #[must_use]
    pub fn begin(self) -> Generation {
        let number = self.current.try_update_value(|number| {
            *number = number.wrapping_add(1);
            *number
        });
        Generation { current: self.current, number: number.unwrap_or(0) }
    }
}

/// One start.
#[derive(Clone, Copy)]
pub struct Generation {
    current: StoredValue<u32>,
    number: u32,
}

impl Generation {
    /// Another start came after this one, or its place on the page is gone.
    #[must_use]
    pub fn is_over(self) -> bool {
        self.current.try_get_value() != Some(self.number)
    }
}

/// Makes the job after a pause and plays it to the end, unless its generation is over before. `show`
/// is called after every slice.
pub fn play_after<J: Job>(
    pause_ms: u64,
    generation: Generation,
    make: impl FnOnce() -> Result<J, WeatherError> + 'static,
    mut show: impl FnMut(Option<&J>, Stage) + 'static,
) {
    let working = Working::begin();
    set_timeout(
        move || {
            if generation.is_over() {
                return;
            }
            match make() {
                Ok(job) => slice(job, generation, show, working),
                Err(_) => show(None, Stage::Failed),
            }
        },
        Duration::from_millis(pause_ms),
    );
}

fn slice<J: Job>(
    mut job: J,
    generation: Generation,
    mut show: impl FnMut(Option<&J>, Stage) + 'static,
    working: Working,
) {
    if generation.is_over() {
        return;
    }
    let start = now_ms();
    let stage = loop {
        match job.advance(J::UNITS) {
            Ok(true) if now_ms() - start < SLICE_MS => {}
            Ok(true) => break Stage::Working,
            Ok(false) => break Stage::Done,
            Err(_) => break Stage::Failed,
        }
    };
    show(Some(&job), stage);
    if stage == Stage::Working {
        set_timeout(move || slice(job, generation, show, working), Duration::ZERO);
    } else {
        drop(working);
    }
}

/// Milliseconds of a clock that does not jump; wall time where the browser has none.
#[must_use]
pub fn now_ms() -> f64 {
    window().performance().map_or_else(js_sys::Date::now, |clock| clock.now())
}
