//! Texts of the page that takes readings from a paste or a file.

use model::bench::readings::{Column, Degrees, ElapsedUnit};

use crate::i18n::strings::diary::Say;

/// Texts of the page that takes readings from a paste or a file.
#[derive(Debug)]
pub struct Import {
    /// Name of the page, and the way to it.
    pub title: &'static str,
    /// What can be brought in.
    pub lead: &'static str,
    /// Label of the field for a paste.
    pub paste: &'static str,
    /// How a row may look.
    pub paste_hint: &'static str,
    /// The button that reads what was pasted.
    pub read_paste: &'static str,
    /// The button for a file.
    pub open_file: &'static str,
    /// Said while a text is read.
    pub reading: &'static str,
    /// Heads the columns.
    pub columns: &'static str,
    /// A column; its number and its first cells.
    pub column: fn(place: usize, sample: &str) -> String,
    /// What a column can hold.
    pub holds: fn(column: Column) -> &'static str,
    /// The unit of temperatures in the text.
    pub degrees: &'static str,
    /// A unit of temperatures.
    pub degrees_of: fn(degrees: Degrees) -> &'static str,
    /// The unit of times that are plain numbers.
    pub elapsed: &'static str,
    /// A unit of time; none for what the text says.
    pub elapsed_of: fn(unit: Option<ElapsedUnit>) -> &'static str,
    /// Two columns seem to have changed places.
    pub swapped: &'static str,
    /// The button that changes them back.
    pub swap: &'static str,
    /// Heads what the text does not tell of the run.
    pub about: &'static str,
    /// Which cooker was tested.
    pub cooker: &'static str,
    /// Name of the run.
    pub name: &'static str,
    /// What kind of run it was.
    pub kind: &'static str,
    /// The day on which the first row was taken.
    pub started: &'static str,
    /// Under it, where the rows tell times of day alone.
    pub day_guessed: &'static str,
    /// The air.
    pub air: &'static str,
    /// Under it: needed where no column tells it.
    pub air_hint: &'static str,
    /// Power of the heater.
    pub heater: &'static str,
    /// Under it.
    pub heater_hint: &'static str,
    /// Water in the pot.
    pub water: &'static str,
    /// Minutes from the first row until the pot went in.
    pub pot_in: &'static str,
    /// Minutes until it came out.
    pub pot_out: &'static str,
    /// Lowers a number, for a screen reader.
    pub less: fn(label: &str) -> String,
    /// Raises it.
    pub more: fn(label: &str) -> String,
    /// The button that keeps the run.
    pub keep: &'static str,
    /// The worker could not be started; the browser's words, or nothing.
    pub no_worker: Say,
    /// The worker stopped in the middle.
    pub stopped: &'static str,
    /// It says something the page does not understand: two versions of the app.
    pub not_understood: &'static str,
    /// The file could not be read.
    pub unreadable: &'static str,
}
