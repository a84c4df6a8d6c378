//! What the bench's worker says: of a text that was read, and of a cooker that was fitted.
//!
//! A table of its own, so that only the worker carries it.

pub mod found;
pub mod text;

/// Texts of the worker.
#[derive(Debug)]
pub struct Report {
    /// Of a text that was read.
    pub text: text::TextWords,
    /// Of what was found.
    pub found: found::FoundWords,
    /// The device has no room for the readings.
    pub full: &'static str,
    /// The browser keeps nothing, as in a private window.
    pub keeps_nothing: &'static str,
    /// The readings of a run that were kept are gone.
    pub lost: &'static str,
    /// There is no text to keep any more.
    pub nothing_held: &'static str,
}
