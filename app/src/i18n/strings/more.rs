//! Texts of the room More and its pages.

/// Texts of the room More and its pages.
#[derive(Debug)]
pub struct More {
    /// Head of the screen.
    pub title: &'static str,
    /// Name of the page with language, looks and units.
    pub settings: &'static str,
    /// Name of the page for copies.
    pub copies: &'static str,
    /// Name of the page with the example household.
    pub example: &'static str,
    /// Name of the page with the cautions.
    pub safety: &'static str,
    /// Name of the page about the app.
    pub about: &'static str,
    /// What the page with the settings holds, in one line.
    pub settings_line: &'static str,
    /// What the page for copies is for, in one line.
    pub copies_line: &'static str,
    /// What the page with the example offers, in one line.
    pub example_line: &'static str,
    /// What the page with the cautions holds, in one line.
    pub safety_line: &'static str,
    /// What the page about the app tells, in one line.
    pub about_line: &'static str,
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
    /// The names of the cookers in a picked copy, listed.
    pub copy_cookers: fn(names: &str) -> String,
    /// A picked copy holds no household at all.
    pub copy_empty: &'static str,
    /// A picked copy was made in the example.
    pub copy_of_example: &'static str,
    /// When a picked copy was written.
    pub copy_saved_at: fn(value: &str) -> String,
    /// First and last day in a picked copy.
    pub copy_spans: fn(a: &str, b: &str) -> String,
    /// What bringing it in does.
    pub copy_replaces: &'static str,
    /// What bringing it in does where there is no household yet.
    pub copy_takes_place: &'static str,
    /// Head over what is in a picked copy.
    pub copy_picked: &'static str,
    /// Button: bring it in where there is no household yet.
    pub copy_take: &'static str,
    /// A copy was handed out; the name of its file.
    pub copy_is_out: fn(name: &str) -> String,
    /// Copies are of the person's own household, and the example is shown.
    pub copies_own_only: &'static str,
    /// Head over how things stand with saving.
    pub keeping: &'static str,
    /// The browser promised to keep what is saved.
    pub keeping_promised: &'static str,
    /// The browser gave no such promise.
    pub keeping_not_promised: &'static str,
    /// Head over what to do when saving fails.
    pub trouble: &'static str,
    /// What to do when saving fails, step by step.
    pub trouble_steps: [&'static str; 5],
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
    /// Said when a copy could not take the readings of files along.
    pub copy_lacks_readings: &'static str,
    /// There is no room to put the present household aside, so the copy was not brought in.
    pub copy_no_room: &'static str,
    /// Head of the list of what was put aside.
    pub aside: &'static str,
    /// How long things put aside are kept.
    pub aside_why: &'static str,
    /// The browser does not say what was put aside.
    pub aside_not_read: &'static str,
    /// Button: hand it out as a file.
    pub aside_to_file: &'static str,
    /// Asks before something put aside is erased for good.
    pub aside_erase_sure: &'static str,
    /// One put aside when a copy came in; when.
    pub aside_replaced: fn(value: &str) -> String,
    /// One put aside because it could not be read; when.
    pub aside_damaged: fn(value: &str) -> String,
    /// What the example household is.
    pub example_what: &'static str,
    /// Who lives in the example, and what they cook on.
    pub example_who: &'static str,
    /// The example can't be shown, since the own household could not be saved.
    pub example_not_now: &'static str,
    /// Button: go to the example.
    pub example_show: &'static str,
    /// Button: leave it.
    pub example_leave: &'static str,
    /// Button: start the example over.
    pub example_anew: &'static str,
    /// The day that runs in half a minute.
    pub day: ToldDay,
    /// The page about the app.
    pub about_page: AboutPage,
}

/// Texts of the example's day that runs in half a minute.
#[derive(Debug)]
pub struct ToldDay {
    /// Its name.
    pub title: &'static str,
    /// What it shows, in a sentence or two.
    pub what: &'static str,
    /// Said instead where the person asked for less motion.
    pub what_in_steps: &'static str,
    /// Button: begin.
    pub start: &'static str,
    /// Button: stop the clock.
    pub pause: &'static str,
    /// Button: let it run.
    pub go_on: &'static str,
    /// Button: one hour forward.
    pub step: &'static str,
    /// Button: end it.
    pub stop: &'static str,
    /// Button: run it once more.
    pub again: &'static str,
    /// The sun is up; what the sky is like.
    pub sun: fn(sky: &str) -> String,
    /// The sun is down and nothing is in the cooker.
    pub evening: &'static str,
    /// After each: how hot the store is.
    pub store: fn(degrees: &str) -> String,
    /// The pot has gone in.
    pub pot_in: &'static str,
    /// It boils.
    pub boils: &'static str,
    /// It is done and out.
    pub done: &'static str,
}

/// Texts of the page about the app.
#[derive(Debug)]
pub struct AboutPage {
    /// Head over what it does.
    pub does: &'static str,
    /// What it works out, one thing each.
    pub does_list: [&'static str; 5],
    /// Head over how sure it is.
    pub sure: &'static str,
    /// What its answers rest on, and how an answer says how sure it is.
    pub sure_list: [&'static str; 3],
    /// Head over what it does not know.
    pub not_known: &'static str,
    /// What it does not know, one thing each.
    pub not_known_list: [&'static str; 5],
    /// Head over where things are kept.
    pub device: &'static str,
    /// Where things are kept and who sees them.
    pub device_list: [&'static str; 2],
    /// Whether it works offline: not known yet.
    pub offline_looking: &'static str,
    /// All of it is on the device.
    pub offline_ready: &'static str,
    /// The browser keeps no app.
    pub offline_unsupported: &'static str,
    /// Not all of it could be stored; what to do.
    pub offline_not_stored: &'static str,
    /// The version.
    pub version: fn(version: &str) -> String,
    /// Head over the licence.
    pub licence: &'static str,
    /// What the licence allows, in a sentence.
    pub licence_line: &'static str,
}
