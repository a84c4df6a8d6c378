//! Texts of the room Bench.

pub mod fit;
pub mod import;
pub mod list;

use model::bench::RunKind;

/// Texts of the room Bench.
#[derive(Debug)]
pub struct Bench {
    /// Name of the screen.
    pub title: &'static str,
    /// Name of a kind of run; also the name that a new run of it is given.
    pub kind: fn(kind: RunKind) -> &'static str,
    /// What was found from a run.
    pub fit: fit::Fit,
    /// Readings from a paste or a file.
    pub import: import::Import,
    /// The list of runs.
    pub list: list::List,
}
