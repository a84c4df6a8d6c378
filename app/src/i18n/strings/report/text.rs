//! What is said of a text of readings.

use model::bench::readings::{Column, Delimiter, ReadingsError, What};

use crate::i18n::strings::diary::{Say, SayTwo};

/// Writes a number.
pub type Number<'a> = &'a dyn Fn(f64) -> String;

/// What is said of a text of readings.
#[derive(Debug)]
pub struct TextWords {
    /// Why nothing could be read.
    pub error: fn(error: ReadingsError) -> &'static str,
    /// Heads what was understood.
    pub heading: &'static str,
    /// How many rows, over how long.
    pub rows: fn(rows: &str, span: &str) -> String,
    /// No header was understood: the columns were taken in the usual order.
    pub columns_guessed: &'static str,
    /// Name of the line that says what stands between the columns, and what it says.
    pub delimiter: (&'static str, fn(of: Delimiter) -> &'static str),
    /// Name of the line that says which decimal sign was found, the point and the comma.
    pub decimal: (&'static str, &'static str, &'static str),
    /// Name of the line that says whether there is a header; there is, there is none.
    pub header: (&'static str, &'static str, &'static str),
    /// Name of the line that says when the first row was taken.
    pub start: &'static str,
    /// Heads what there is to look at.
    pub remarks: &'static str,
    /// Nothing was found that looks wrong.
    pub none: &'static str,
    /// How many remarks there are; all of them stand in the table.
    pub count: fn(n_remarks: &str) -> String,
    /// What opens the table of all remarks.
    pub all: &'static str,
    /// More remarks than a table can hold; how many are not in it.
    pub more: Say,
    /// Head of the column of lines.
    pub line_head: &'static str,
    /// Head of the column of remarks.
    pub what_head: &'static str,
    /// A line of the text.
    pub line: Say,
    /// Several lines of the text.
    pub lines: SayTwo,
    /// The text as a whole.
    pub whole: &'static str,
    /// A remark.
    pub remark: fn(what: &What, number: Number<'_>) -> String,
    /// What a column holds, within a remark.
    pub column: fn(column: Column) -> &'static str,
    /// Name of the plot of what was read.
    pub plot: &'static str,
    /// The plot in a sentence: coldest and hottest of the store.
    pub plot_store: SayTwo,
    /// The same with the pot.
    pub plot_pot: SayTwo,
    /// Head of the column of times in the table under a plot.
    pub time: &'static str,
}
