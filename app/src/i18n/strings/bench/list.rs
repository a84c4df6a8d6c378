//! Texts of the list of test runs.

use crate::i18n::strings::diary::Say;

/// Texts of the list of test runs.
#[derive(Debug)]
pub struct List {
    /// Heads the list.
    pub heading: &'static str,
    /// Stands in the list while it is empty: what a run is good for.
    pub none: &'static str,
    /// How many runs there are.
    pub count: fn(n_runs: usize) -> String,
    /// A line of a run that goes on: the cooker's name and how many readings there are.
    pub going: fn(cooker: &str, readings: &str) -> String,
    /// A line of a run: the cooker's name and how many readings there are.
    pub over: fn(cooker: &str, readings: &str) -> String,
    /// How many readings, over how long.
    pub readings: fn(n_rows: usize, span: &str) -> String,
    /// Instead, without any.
    pub no_readings: &'static str,
    /// The address named a run that is not there.
    pub gone: &'static str,
    /// The way back to the list.
    pub all: &'static str,
    /// Added to a line: what was found is there to be read.
    pub found: Say,
}
