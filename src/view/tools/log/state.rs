//! State of the tool: the log in memory and what follows from it.
//!
//! The log stays in memory for as long as the page is open. It is never stored and no part of any setup, link
//! or file.

use crate::advice::log::{Learned, LogJob};
use crate::forecast::MonthlyClimate;
use crate::import::log::{Choices, Fault, LogReader, LogSurvey, LogTable, PlusIs, Rejected, Told};
use crate::import::table::TableError;
use crate::model::{Sample, Setup};
use crate::view::arc_ptr_eq::ArcPtrEq;
use crate::view::jobs::{Generations, Stage, play_after};
use crate::view::lang::{key, t};
use crate::view::outlook::Calculation;
use crate::view::search::{Search, search_key};
use crate::view::state::AppState;
use leptos::prelude::*;
use std::sync::Arc;

/// Pause after the last choice before the rows are read again [ms].
const READ_PAUSE_MS: u64 = 150;
/// Pause after the last edit of the setup before it is compared again [ms].
const LEARN_PAUSE_MS: u64 = 400;

/// The rows of a log as they were read.
pub(super) struct ReadLog {
    pub(super) samples: ArcPtrEq<Vec<Sample>>,
    pub(super) rejected: Vec<Rejected>,
    pub(super) counts: Vec<(Fault, usize)>,
    pub(super) has_sign: bool,
    pub(super) plus_is: Option<PlusIs>,
}

/// What is learned from: the setup and the rows.
pub(super) type Asked = (Setup, ArcPtrEq<Vec<Sample>>);

/// Why a text is no log, in words.
pub(super) fn table_fault(error: &TableError) -> String {
    t(match error {
        TableError::Empty => key!("log-fault-empty"),
        TableError::TooLarge => key!("log-fault-large"),
        TableError::NotText => key!("log-fault-not-text"),
        TableError::TooWide { .. } => key!("log-fault-wide"),
    })
}

/// A log and what it shows, kept while other screens are shown; copies share it.
#[derive(Clone, Copy)]
pub struct LogState {
    pub(super) pasted: RwSignal<String>,
    pub(super) fault: RwSignal<Option<String>>,
    pub(super) working: RwSignal<bool>,
    pub(super) table: RwSignal<Option<ArcPtrEq<LogTable>>>,
    pub(super) choices: RwSignal<Choices>,
    pub(super) told: RwSignal<Vec<Told>>,
    pub(super) read: RwSignal<Option<ArcPtrEq<ReadLog>>>,
    pub(super) learned: Search<Asked, Learned>,
    pub(super) surveys: Generations,
}

impl Default for LogState {
    fn default() -> Self {
        Self {
            pasted: RwSignal::new(String::new()),
            fault: RwSignal::new(None),
            working: RwSignal::new(false),
            table: RwSignal::new(None),
            choices: RwSignal::new(Choices::default()),
            told: RwSignal::new(Vec::new()),
            read: RwSignal::new(None),
            learned: Search::default(),
            surveys: Generations::default(),
        }
    }
}

impl LogState {
    /// Puts the log away.
    pub(super) fn clear(self) {
        let _ = self.surveys.begin();
        self.table.try_set(None);
        self.read.try_set(None);
        self.learned.result.try_set(None);
        self.fault.try_set(None);
        self.working.try_set(false);
        self.pasted.try_set(String::new());
    }

    /// Looks a text over; what it replaces is put away.
    pub(super) fn take_in(self, text: String) {
        self.clear();
        let generation = self.surveys.begin();
        let survey = match LogSurvey::new(Arc::from(text)) {
            Ok(survey) => survey,
            Err(error) => {
                self.fault.try_set(Some(table_fault(&error)));
                return;
            }
        };
        self.working.try_set(true);
        play_after(
            0,
            generation,
            move || Ok(survey),
            move |survey: Option<&LogSurvey>, stage| {
                let Some(survey) = survey.filter(|_| stage != Stage::Working) else { return };
                let table = survey.table();
                let (choices, told) = table.suggested();
                self.told.try_set(told);
                self.choices.try_set(choices);
                self.working.try_set(false);
                self.table.try_set(Some(ArcPtrEq::new(table)));
            },
        );
    }

    /// Reads the rows whenever the choices change.
    pub(super) fn follow_choices(self, app: AppState) {
        let generations = Generations::default();
        // Only choices come several at once: a log that is new is read without a pause.
        Effect::new(move |before: Option<Option<ArcPtrEq<LogTable>>>| {
            let generation = generations.begin();
            let (Some(table), choices) = (self.table.get(), self.choices.get()) else {
                return None;
            };
            let same_log = before.flatten().as_ref() == Some(&table);
            let read_as = Some(table.clone());
            let offset_min = app.setup.with(|setup| setup.trip.utc_offset_min);
            if !table.0.asks(&choices).is_empty() {
                self.read.try_set(None);
                // A reading that this one ends tells nothing any more.
                self.working.try_set(false);
                return read_as;
            }
            let reader = LogReader::new(table.0, choices, offset_min);
            let pause_ms = if same_log { READ_PAUSE_MS } else { 0 };
            self.working.try_set(true);
            play_after(
                pause_ms,
                generation,
                move || Ok(reader),
                move |reader: Option<&LogReader>, stage| {
                    let Some(reader) = reader.filter(|_| stage != Stage::Working) else { return };
                    self.working.try_set(false);
                    self.read.try_set(Some(ArcPtrEq::new(ReadLog {
                        samples: ArcPtrEq::new(reader.samples().to_vec()),
                        rejected: reader.rejected().to_vec(),
                        counts: reader.rejected_counts().to_vec(),
                        has_sign: reader.has_sign(),
                        plus_is: reader.plus_is(),
                    })));
                },
            );
            read_as
        });
    }

    /// Learns anew from the rows whenever they or the setup change.
    pub(super) fn follow_setup(self, app: AppState, calculation: Calculation) {
        let key = Memo::new(move |_| app.setup.with(search_key));
        let generations = Generations::default();
        // Only edits of the setup come several at once.
        Effect::new(move |before: Option<Option<ArcPtrEq<ReadLog>>>| {
            let generation = generations.begin();
            let (read, setup) = (self.read.get(), key.get());
            let (Some(read), Some(climate)) = (read, calculation.climate.get()) else {
                self.learned.result.try_set(None);
                return None;
            };
            let same_rows = before.flatten().as_ref() == Some(&read);
            let learned_from = Some(read.clone());
            if read.0.samples.0.is_empty() || read.0.has_sign && read.0.plus_is.is_none() {
                self.learned.result.try_set(None);
                return learned_from;
            }
            let asked = (setup.clone(), read.0.samples.clone());
            if self.learned.knows(&asked) {
                return learned_from;
            }
            let sky = MonthlyClimate::from(&climate);
            let samples = read.0.samples.clone();
            let pause_ms = if same_rows { LEARN_PAUSE_MS } else { 0 };
            self.learned.begin(
                pause_ms,
                generation,
                asked,
                move || Ok(LogJob::new(samples.0.to_vec(), setup, sky)),
                |job: &LogJob| job.learned().clone(),
            );
            learned_from
        });
    }
}
