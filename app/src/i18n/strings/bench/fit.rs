//! Texts of the page of what was found from a run; the sheet on it is the worker's.

use crate::i18n::strings::diary::{Say, SayTwo};

/// Texts of the page of what was found from a run.
#[derive(Debug)]
pub struct Fit {
    /// Name of the page.
    pub title: &'static str,
    /// Said while it is worked out.
    pub working: &'static str,
    /// Heads the list of runs that are fitted together.
    pub together: &'static str,
    /// What another run of the cooker tells otherwise.
    pub differ: Differ,
    /// Opens the fields for what changes cost.
    pub costs: &'static str,
    /// What they are for, and in which money.
    pub costs_why: &'static str,
    /// Names of the prices: a kilogram of the store, a better seat, fins, as much jacket again, a
    /// wrap of the pot, a fitting heater, as many panels again.
    pub prices: [&'static str; 7],
    /// The button that takes the figures over into the cooker.
    pub use_it: &'static str,
    /// What changes when that is done.
    pub taking: Taking,
    /// What taking it over leaves as it is.
    pub weighed: &'static str,
    /// Stands on it when that is done.
    pub used: &'static str,
}

/// Texts of a figure that another run of the cooker tells otherwise.
#[derive(Debug)]
pub struct Differ {
    /// The figure, what this run tells of it, the other run's name, and what that tells.
    pub differs: fn(figure: &str, own: &str, run: &str, theirs: &str) -> String,
    /// This run has the smaller spread.
    pub this_better: &'static str,
    /// The other has; its name.
    pub other_better: Say,
    /// Their spreads are about the same.
    pub alike: &'static str,
    /// The button that fits both together.
    pub fit_both: &'static str,
}

/// Texts of what changes of a cooker when what was measured is used for it.
#[derive(Debug)]
pub struct Taking {
    /// Head; the cooker's name.
    pub title: Say,
    /// Under it.
    pub lead: &'static str,
    /// Nothing changes.
    pub none: &'static str,
    /// Name of the loss; the store's temperature at which it is told.
    pub loss: Say,
    /// Name of the jacket's capacity.
    pub jacket: &'static str,
    /// Name of the heat that the store holds.
    pub store: &'static str,
    /// Name of the contact; the store's temperature at which it is told.
    pub contact: Say,
    /// Name of the pot's loss, over what its kind says.
    pub pot_loss: &'static str,
    /// Name of a tracker's share.
    pub tracker: &'static str,
    /// What it was, what it will be, and the unit.
    pub from_to: fn(now: &str, then: &str, unit: &str) -> String,
    /// How well it counted as known, and will.
    pub doubt: SayTwo,
    /// The same of the contact, which counts as a part of the whole way into the pot.
    pub doubt_way: SayTwo,
    /// What is not in the list.
    pub rest: &'static str,
    /// A figure that was measured and has no place in the description: its name, and what it is.
    pub stays: fn(name: &str, value: &str) -> String,
    /// The button that does it.
    pub do_it: &'static str,
}
