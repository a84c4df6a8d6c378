//! What was erased, with all that is needed to bring it back.

use model::local_time::{Day, LocalTime};
use model::sun::DayLog;

use crate::state::bench::{Reading, TestRun};
use crate::state::document::{Entry, OwnedCooker};
use crate::state::ids::{ErasedId, RunId};

/// Something that was erased.
#[derive(Debug, Clone, PartialEq)]
pub struct Erased {
    /// Which.
    pub id: ErasedId,
    /// When.
    pub at: LocalTime,
    /// What.
    pub what: ErasedWhat,
}

/// What was erased.
#[derive(Debug, Clone, PartialEq)]
pub enum ErasedWhat {
    /// An entry of the diary.
    Entry {
        /// The entry.
        entry: Entry,
        /// It was the running meal.
        was_running: bool,
    },
    /// A cooker with its entries.
    Cooker {
        /// The cooker.
        cooker: Box<OwnedCooker>,
        /// Where it stood in the list.
        place: usize,
        /// It was the one in use.
        was_in_use: bool,
        /// Its entries.
        entries: Vec<Entry>,
        /// Its test runs.
        runs: Vec<TestRun>,
    },
    /// The sky of a day.
    Sky {
        /// The day.
        day: Day,
        /// What was logged.
        log: DayLog,
    },
    /// A test run with its readings.
    Run {
        /// The run.
        run: Box<TestRun>,
        /// Where it stood in the list.
        place: usize,
    },
    /// A reading of a test run.
    Reading {
        /// The run.
        run: RunId,
        /// What was read.
        reading: Reading,
    },
}
