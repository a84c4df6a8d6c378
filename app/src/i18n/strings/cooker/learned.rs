//! Texts of what was learned about a cooker.

use model::odds::Multiplier;

/// Texts of what was learned about a cooker.
#[derive(Debug)]
pub struct Learned {
    /// Heads it.
    pub heading: &'static str,
    /// So many things were reported.
    pub from: fn(n_reports: usize) -> String,
    /// So many things were reported, and nothing is known better for it.
    pub nothing_from: fn(n_reports: usize) -> String,
    /// Nothing was reported yet.
    pub from_nothing: &'static str,
    /// The diary is being worked through.
    pub working: &'static str,
    /// What is multiplied.
    pub name: fn(multiplier: Multiplier) -> &'static str,
    /// Words for an amount against what the table says.
    pub amounts: Against,
    /// Words for a time against what the table says.
    pub times: Against,
    /// How many times what the table says, and between what.
    pub so_many_times: fn(middle: &str, low: &str, high: &str) -> String,
    /// A figure now and by the table.
    pub figure: fn(now: &str, told: &str) -> String,
    /// The same, with the store's temperature at which it is told.
    pub figure_at: fn(now: &str, told: &str, at: &str) -> String,
    /// Opens what was not learned yet.
    pub open: &'static str,
    /// Reports touched it, and it is not known yet.
    pub not_sure: &'static str,
    /// What would teach it was told, of too few pots.
    pub told_already: &'static str,
    /// What would teach it.
    pub taught_by: fn(multiplier: Multiplier) -> &'static str,
}

/// Words for something against what the table says.
#[derive(Debug)]
pub struct Against {
    /// Below three quarters.
    pub much_less: &'static str,
    /// Less.
    pub less: &'static str,
    /// To within a twelfth.
    pub same: &'static str,
    /// More.
    pub more: &'static str,
    /// Above four thirds.
    pub much_more: &'static str,
}
