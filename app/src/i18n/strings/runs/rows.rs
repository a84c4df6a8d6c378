//! Texts of single rows of an imported run.

use crate::i18n::strings::diary::{Say, SayTwo};

/// Texts of single rows of an imported run.
#[derive(Debug)]
pub struct Rows {
    /// Head of the panel.
    pub heading: &'static str,
    /// What it is for.
    pub lead: &'static str,
    /// There is nothing to say of any row.
    pub none: &'static str,
    /// Rows with a remark that are not listed.
    pub more: Say,
    /// How many readings are put right by hand, and how many left out.
    pub count: SayTwo,
    /// Opens the way to any other row.
    pub other: &'static str,
    /// Label of the field: the row's number, or its time.
    pub go_to: &'static str,
    /// Under it.
    pub go_to_hint: &'static str,
    /// The button.
    pub show: &'static str,
    /// Rows before those that are shown.
    pub earlier: &'static str,
    /// And after.
    pub later: &'static str,
    /// A row and its time.
    pub row: SayTwo,
    /// Nothing in a row holds.
    pub left_out: &'static str,
    /// Head of the sheet, with the row.
    pub change: Say,
    /// What the text says, in the sheet.
    pub text: Say,
    /// An empty field leaves a reading out.
    pub empty: &'static str,
    /// Leaves the row out.
    pub leave_out: &'static str,
    /// Has the row say again what the text says.
    pub bring_back: &'static str,
    /// Note: it was put right, and the text is kept.
    pub was_changed: Say,
    /// Note: the row was left out.
    pub was_left_out: Say,
    /// Note: it says again what the text says.
    pub was_brought_back: Say,
}
