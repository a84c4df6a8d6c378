//! What there is to say about a text of readings.

use super::form::Column;

/// Something a person should look at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Remark {
    /// Line of the text where it begins, from 1; 0 for the text as a whole.
    pub line: usize,
    /// Line where it ends; the same for a single line.
    pub through: usize,
    /// What it is.
    pub what: What,
}

impl Remark {
    pub(super) const fn at(line: usize, what: What) -> Self {
        Self {
            line,
            through: line,
            what,
        }
    }

    pub(super) const fn whole(what: What) -> Self {
        Self::at(0, what)
    }
}

/// The kinds of remark. The line is set aside only where it is said; everything else is kept.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum What {
    /// More or fewer cells than columns; those that fit are kept.
    FieldCount {
        /// In this line.
        found: usize,
        /// Columns there are.
        wanted: usize,
    },
    /// No time can be read: the line is set aside.
    NoTime,
    /// No later than the line before: the line is set aside.
    NotLater,
    /// A cell that is not a number: the cell is set aside.
    NotANumber {
        /// In which column.
        column: Column,
    },
    /// A value no such instrument shows, as of a broken wire: the cell is set aside.
    NotSensible {
        /// In which column.
        column: Column,
        /// What it says.
        value: f64,
    },
    /// Nothing was read for much longer than usual before this line.
    Gap {
        /// How long. \[s\]
        gap_s: f64,
    },
    /// A value far off those before and after it.
    Spike {
        /// In which column.
        column: Column,
        /// What it says.
        value: f64,
        /// What its neighbours say.
        neighbours: f64,
    },
    /// A person put a cell right.
    Corrected {
        /// In which column.
        column: Column,
        /// What the text says, where that is a reading.
        was: Option<f64>,
        /// What was put in its place.
        now: f64,
    },
    /// A person left a cell out.
    LeftOut {
        /// In which column.
        column: Column,
        /// What the text says, where that is a reading.
        was: Option<f64>,
    },
    /// Two columns seem to have changed places from here to there, or in the whole text.
    Swapped {
        /// The one.
        first: Column,
        /// And the other.
        second: Column,
    },
    /// A column of temperatures was read as °C and looks like °F.
    LooksFahrenheit {
        /// Which.
        column: Column,
    },
    /// A decimal comma may have been taken for the mark between columns.
    LooksDecimalComma,
    /// A column is not used; counted from 1.
    ColumnUnused {
        /// Which.
        place: usize,
    },
    /// Two columns say the same; the second is not used. Counted from 1.
    ColumnTwice {
        /// Which.
        place: usize,
    },
    /// Whether the day or the month comes first could not be told: the day was taken.
    DayFirstGuessed,
    /// Plain numbers of time were taken for seconds.
    SecondsGuessed,
    /// All rows together are shorter than a minute: perhaps the times are in another unit.
    ShortRun {
        /// How long. \[s\]
        length_s: f64,
    },
}

/// Why nothing could be read.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum ReadingsError {
    /// Nothing but blanks and notes.
    #[error("there are no rows")]
    Empty,
    /// No two columns side by side.
    #[error("no columns can be told apart")]
    NoColumns,
    /// No column of times.
    #[error("no column of times was found")]
    NoTimes,
    /// No column of readings.
    #[error("no column of readings was found")]
    NoReadings,
    /// Not one row could be used.
    #[error("not one row has a time that can be read")]
    NoRows,
}
