//! Texts of the room More and its pages.

/// Texts of the room More and its pages.
#[derive(Debug)]
pub struct More {
    /// Head of the screen.
    pub title: &'static str,
    /// Name of the page with place, language, looks and units.
    pub settings: &'static str,
    /// Name of the page for copies.
    pub copies: &'static str,
    /// Name of the page with the example household.
    pub example: &'static str,
    /// Name of the page with the cautions.
    pub safety: &'static str,
    /// Name of the page about the app.
    pub about: &'static str,
    /// Label of the choice of language.
    pub language: &'static str,
    /// The choice that follows the phone.
    pub language_automatic: &'static str,
    /// Label of the choice of light or dark.
    pub theme: &'static str,
    /// The choice that follows the phone.
    pub theme_automatic: &'static str,
    /// Light looks.
    pub theme_light: &'static str,
    /// Dark looks.
    pub theme_dark: &'static str,
    /// Label of the choice of unit for temperatures.
    pub degrees: &'static str,
    /// Degrees Celsius.
    pub degrees_c: &'static str,
    /// Degrees Fahrenheit.
    pub degrees_f: &'static str,
    /// Why a copy is a good thing, in a sentence or two.
    pub copies_why: &'static str,
    /// Button: write the copy.
    pub copy_out: &'static str,
    /// Button: pick a file with a copy.
    pub copy_in: &'static str,
    /// What is in a picked copy: numbers of cookers, entries and days with their sun.
    pub copy_holds: fn(n_cookers: usize, n_entries: usize, n_days: usize) -> String,
    /// When a picked copy was written.
    pub copy_saved_at: fn(value: &str) -> String,
    /// First and last day in a picked copy.
    pub copy_spans: fn(a: &str, b: &str) -> String,
    /// What bringing it in does.
    pub copy_replaces: &'static str,
    /// Button: bring it in.
    pub copy_replace: &'static str,
    /// The picked file is something else.
    pub copy_not_ours: &'static str,
    /// The picked file was written by a newer version.
    pub copy_newer: &'static str,
    /// The picked file is damaged; where, in technical words.
    pub copy_damaged: fn(value: &str) -> String,
    /// The picked file could not be read at all.
    pub copy_unreadable: &'static str,
    /// There is no room to put the present household aside, so the copy was not brought in.
    pub copy_no_room: &'static str,
    /// Head of the list of what was put aside.
    pub aside: &'static str,
    /// One put aside when a copy came in; when.
    pub aside_replaced: fn(value: &str) -> String,
    /// One put aside because it could not be read; when.
    pub aside_damaged: fn(value: &str) -> String,
    /// What the example household is.
    pub example_what: &'static str,
    /// Button: go to the example.
    pub example_show: &'static str,
    /// Button: leave it.
    pub example_leave: &'static str,
    /// Button: start the example over.
    pub example_anew: &'static str,
}
