//! Long work in short slices, between which the page takes input.

use crate::advice::changes::improvements::HelpsJob;
use crate::advice::changes::ways::WaysJob;
use crate::advice::compare::CompareJob;
use crate::advice::on_site::unknowns::UnknownsJob;
use crate::advice::season::YearStripJob;
use crate::advice::sizing::SizingJob;
use crate::forecast::SkyAndAir;
use crate::forecast::weather::WeatherError;
use crate::model::Setup;
use crate::view::lang::t;
use crate::view::outlook::{Calculation, Made};
use crate::view::state::AppState;
use leptos::prelude::*;
use std::time::Duration;

/// Longest slice [ms].
const SLICE_MS: f64 = 12.0;
/// Units of work between looks at the clock; each is some tens of microseconds.
const UNITS: usize = 10;
/// Pause between two looks at what is found so far [ms].
const SHOW_EVERY_MS: f64 = 300.0;

/// Work that goes in portions.
pub trait Job: 'static {
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

goes_in_portions!(HelpsJob, WaysJob, SizingJob, YearStripJob, CompareJob, UnknownsJob);

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
pub struct Turns {
    current: StoredValue<u32>,
}

impl Default for Turns {
    fn default() -> Self {
        Self { current: StoredValue::new(0) }
    }
}

impl Turns {
    /// A new start; earlier ones stop.
    #[must_use]
    pub fn begin(self) -> Turn {
        let number = self.current.try_update_value(|number| {
            *number = number.wrapping_add(1);
            *number
        });
        Turn { current: self.current, number: number.unwrap_or(0) }
    }
}

/// One start.
#[derive(Clone, Copy)]
pub struct Turn {
    current: StoredValue<u32>,
    number: u32,
}

impl Turn {
    /// Another start came after this one, or its place on the page is gone.
    #[must_use]
    pub fn is_over(self) -> bool {
        self.current.try_get_value() != Some(self.number)
    }
}

/// Makes the job after a pause and plays it to the end unless its turn is over before. `show` is
/// told now and then, and at the end.
pub fn play_after<J: Job>(
    pause_ms: u64,
    turn: Turn,
    make: impl FnOnce() -> Result<J, WeatherError> + 'static,
    show: impl Fn(Option<&J>, Stage) + 'static,
) {
    set_timeout(
        move || {
            if turn.is_over() {
                return;
            }
            match make() {
                Ok(job) => slice(job, turn, show, now_ms()),
                Err(_) => show(None, Stage::Failed),
            }
        },
        Duration::from_millis(pause_ms),
    );
}

fn slice<J: Job>(
    mut job: J,
    turn: Turn,
    show: impl Fn(Option<&J>, Stage) + 'static,
    shown_at_ms: f64,
) {
    if turn.is_over() {
        return;
    }
    let start = now_ms();
    let stage = loop {
        match job.advance(UNITS) {
            Ok(true) if now_ms() - start < SLICE_MS => {}
            Ok(true) => break Stage::Working,
            Ok(false) => break Stage::Done,
            Err(_) => break Stage::Failed,
        }
    };
    let mut shown_at_ms = shown_at_ms;
    if stage != Stage::Working || start - shown_at_ms >= SHOW_EVERY_MS {
        show(Some(&job), stage);
        shown_at_ms = start;
    }
    if stage == Stage::Working {
        set_timeout(move || slice(job, turn, show, shown_at_ms), Duration::ZERO);
    }
}

/// The sky and air a search for `setup` plays under; `None` where there is nothing to search: no
/// climate yet, nothing switched on (then what was found goes), or all of it is found, which is
/// for `answers` to say.
pub fn to_search<F: Send + Sync + 'static>(
    setup: &Setup,
    calculation: Calculation,
    found: RwSignal<Option<Made<F>>>,
    answers: impl Fn(&F) -> bool,
) -> Option<SkyAndAir> {
    let climate = calculation.climate.get()?;
    if setup.enabled_loads().next().is_none() {
        found.try_set(None);
        return None;
    }
    let known = found.with_untracked(|found| found.as_ref().is_some_and(|found| answers(&found.0)));
    (!known).then(|| SkyAndAir::from(&climate))
}

/// Says so where a search has failed.
pub fn failure(failed: RwSignal<bool>) -> AnyView {
    let told = move || {
        let text = failed.get().then(|| t("change-failed"))?;
        Some(view! { <p class="notice" role="alert">{text}</p> })
    };
    told.into_any()
}

/// In the place of what is not found yet.
pub fn nothing_yet(app: AppState) -> AnyView {
    let empty = app.setup.with(|setup| setup.enabled_loads().next().is_none());
    if empty {
        view! { <p>{t("answer-none")}</p> }.into_any()
    } else {
        view! { <p class="working">{t("change-working")}</p> }.into_any()
    }
}

/// Milliseconds of a clock that does not jump; wall time where the browser has none.
fn now_ms() -> f64 {
    window().performance().map_or_else(js_sys::Date::now, |clock| clock.now())
}
