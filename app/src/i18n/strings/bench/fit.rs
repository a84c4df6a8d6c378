//! Texts of the page of what was found from a run; the sheet on it is the worker's.

/// Texts of the page of what was found from a run.
#[derive(Debug)]
pub struct Fit {
    /// Name of the page.
    pub title: &'static str,
    /// Said while it is worked out.
    pub working: &'static str,
    /// Heads the list of runs that are fitted together.
    pub together: &'static str,
    /// The button that takes the figures over into the cooker.
    pub use_it: &'static str,
    /// Stands on it when that is done.
    pub used: &'static str,
}
