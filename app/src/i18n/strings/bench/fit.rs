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
    /// Opens the fields for what changes cost.
    pub costs: &'static str,
    /// What they are for, and in which money.
    pub costs_why: &'static str,
    /// Names of the prices: a kilogram of the store, a better seat, fins, as much jacket again, a
    /// wrap of the pot, a fitting heater, as many panels again.
    pub prices: [&'static str; 7],
    /// The button that takes the figures over into the cooker.
    pub use_it: &'static str,
    /// What taking it over leaves as it is.
    pub weighed: &'static str,
    /// Stands on it when that is done.
    pub used: &'static str,
}
