//! Texts of runs beside each other, on the screen and on paper.

use model::bench::{Parameter, Worth};

use crate::i18n::strings::diary::{Say, SayTwo};

/// Texts of the comparison.
#[derive(Debug)]
pub struct Report {
    /// Head of the screen.
    pub title: &'static str,
    /// Head of the printed page.
    pub printed_title: &'static str,
    /// Under the head: the date.
    pub dated: Say,
    /// Head of the list of runs.
    pub choose: &'static str,
    /// How many can be chosen at most.
    pub at_most: Say,
    /// There is no run at all.
    pub no_runs: &'static str,
    /// A run in that list: its cooker, its kind, and its day.
    pub run_line: fn(cooker: &str, kind: &str, day: &str) -> String,
    /// Where the curves are laid over each other.
    pub aligned: &'static str,
    /// At the start of each run.
    pub at_start: &'static str,
    /// Where the pot goes in.
    pub at_pot: &'static str,
    /// What is drawn: the store or the pot.
    pub drawn: &'static str,
    /// Head of the plot of the store, and of the pot.
    pub plot_store: &'static str,
    /// See above.
    pub plot_pot: &'static str,
    /// What one curve does: its letter and name, from and to which temperature, in what time.
    pub curve: fn(name: &str, from: &str, to: &str, time: &str) -> String,
    /// A run whose readings are a file that is being looked up.
    pub in_file: Say,
    /// A run whose readings were in a file that is not there any more.
    pub file_gone: Say,
    /// A run without readings of what is drawn.
    pub not_read: Say,
    /// Letter and name of a run.
    pub lettered: SayTwo,
    /// What the description of a run's cooker foresees; the run's letter.
    pub as_described: Say,
    /// Switch: shows that beside what was measured.
    pub beside: &'static str,
    /// Under it.
    pub beside_detail: &'static str,
    /// The same while no run was worked out since it can.
    pub beside_none: &'static str,
    /// Head of the table of what was measured of each cooker.
    pub measured: &'static str,
    /// Head of the table of the figures.
    pub figures: &'static str,
    /// Column of names.
    pub figure: &'static str,
    /// A value with its band and its unit; the unit may be empty.
    pub banded: fn(value: &str, low: &str, high: &str, unit: &str) -> String,
    /// A value whose spread is not known.
    pub plain: SayTwo,
    /// An efficiency above one.
    pub above_all: Say,
    /// The runs did not tell it.
    pub not_told: &'static str,
    /// It has no value: the first litre never boils.
    pub no_value: &'static str,
    /// The run was not fitted.
    pub not_fitted: &'static str,
    /// The air was read, and its readings are in a file.
    pub air_in_file: &'static str,
    /// Runs that were fitted together, by name.
    pub together: Say,
    /// Under the tables: fit the runs first.
    pub fit_first: &'static str,
    /// What is measured of a cooker; short, with its unit apart.
    pub parameter: fn(Parameter) -> &'static str,
    /// The store's temperature for which loss and contact are told; a row.
    pub told_at: &'static str,
    /// How a loss stands in the words of a build: the figure, told halfway between boil and cut-out.
    pub told_halfway: Say,
    /// What a fit is worth; a row of the table.
    pub worth: &'static str,
    /// In a word.
    pub worth_of: fn(Worth) -> &'static str,
    /// Usual distance of a reading from the fitted curve; a row.
    pub scatter: &'static str,
    /// Our own figures and those of the tests, and what each is.
    pub named: FigureNames,
    /// Saves the results as a file.
    pub csv: &'static str,
    /// Under it, once it is saved: the file's name.
    pub csv_saved: Say,
    /// It could not be saved; in the browser's words.
    pub csv_failed: Say,
    /// Leads to the page that can be printed.
    pub to_print: &'static str,
    /// Prints it.
    pub print: &'static str,
    /// What the browser's own window can do with it.
    pub print_hint: &'static str,
    /// It can't print.
    pub print_failed: &'static str,
    /// Head: builds and places.
    pub builds: &'static str,
    /// A build: its name, what it is made of.
    pub build: SayTwo,
    /// And its parts.
    pub parts: fn(jacket: &str, seat: &str, pot: &str, cutout: &str) -> String,
    /// The place: its height and where water boils there.
    pub place: SayTwo,
    /// Head: the runs and their conditions.
    pub conditions: &'static str,
    /// Columns of that table.
    pub heads: ConditionHeads,
    /// Head: how it was measured and how sure it is.
    pub methods: &'static str,
    /// Paragraphs of it.
    pub method: &'static [&'static str],
    /// Head of what the figures are.
    pub definitions: &'static str,
}

/// A figure's name, and what exactly it is.
#[derive(Debug)]
pub struct Named {
    /// Its name, with a capital letter.
    pub name: &'static str,
    /// What it is, in a sentence.
    pub means: &'static str,
}

/// Names of the figures.
#[derive(Debug)]
pub struct FigureNames {
    /// Litres boiled per charge.
    pub litres: Named,
    /// First-litre time.
    pub first_litre: Named,
    /// Power at 50 K below the boil.
    pub power_50: Named,
    /// Hold time to the boil line.
    pub hold: Named,
    /// Overnight loss.
    pub overnight: Named,
    /// Share of the day's sun that reaches the food.
    pub sun_to_food: Named,
    /// Time to boil after the water boiling test.
    pub boil_time: Named,
    /// The same, brought to the rise from 25 °C to 100 °C.
    pub boil_corrected: Named,
    /// Efficiency after the water boiling test.
    pub efficiency: Named,
    /// Standardised cooking power.
    pub standard: Named,
}

/// Columns of the table of conditions.
#[derive(Debug)]
pub struct ConditionHeads {
    /// The run.
    pub run: &'static str,
    /// When it began.
    pub began: &'static str,
    /// How long it took.
    pub took: &'static str,
    /// The air.
    pub air: &'static str,
    /// The heater.
    pub heater: &'static str,
    /// Water in the pots.
    pub water: &'static str,
    /// Readings.
    pub readings: &'static str,
}
