//! Texts of test runs as they are made, compared and printed.

pub mod guide;
pub mod live;
pub mod report;
pub mod rows;

/// Texts of test runs.
#[derive(Debug)]
pub struct Runs {
    /// What a run is for and how it is done.
    pub guide: guide::Guide,
    /// A run that goes on.
    pub live: live::Live,
    /// Runs beside each other, on the screen and on paper.
    pub report: report::Report,
    /// Single rows of an imported run.
    pub rows: rows::Rows,
}
