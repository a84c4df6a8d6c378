//! Texts that all screens share.

use crate::state::settings::Degrees;

/// Texts that all screens share.
#[derive(Debug)]
pub struct Common {
    /// The name of the app.
    pub app_name: &'static str,
    /// Names of the rooms in the bar at the bottom; short.
    pub rooms: Rooms,
    /// Words on buttons.
    pub buttons: Buttons,
    /// What is said about saving.
    pub saving: Saving,
    /// Short notes that come and go.
    pub notes: Notes,
    /// How values are written.
    pub units: Units,
    /// Skips the bar and the head, for keyboards and screen readers.
    pub skip_to_content: &'static str,
    /// Label of the bar at the bottom, for screen readers.
    pub rooms_label: &'static str,
    /// The rooms of the app are downloaded, once, and someone waits for them.
    pub rooms_coming: &'static str,
    /// The rooms of the app could not be downloaded.
    pub rooms_not_here: &'static str,
    /// Before an estimated value: 'about 180 °C'.
    pub about: fn(value: &str) -> String,
    /// Before an estimated time of day: 'about 18:40'.
    pub about_time: fn(time: &str) -> String,
    /// Stands where a value is not known.
    pub not_known: &'static str,
    /// Heads the table under a plot, and the button that shows it.
    pub show_table: &'static str,
    /// Hides that table again.
    pub hide_table: &'static str,
    /// Said at the top of every screen of the example household.
    pub example_banner: &'static str,
    /// The way back, beside it; as short as can be.
    pub example_back: &'static str,
}

/// Names of the rooms.
#[derive(Debug)]
pub struct Rooms {
    /// Will it boil tonight.
    pub tonight: &'static str,
    /// What happened.
    pub diary: &'static str,
    /// Measuring a build.
    pub bench: &'static str,
    /// What we cook on.
    pub cooker: &'static str,
    /// The rest.
    pub more: &'static str,
}

/// Words on buttons.
#[derive(Debug)]
pub struct Buttons {
    /// Keeps what was typed.
    pub save: &'static str,
    /// Leaves without keeping it.
    pub cancel: &'static str,
    /// Closes what lies on top.
    pub close: &'static str,
    /// Goes one step back.
    pub back: &'static str,
    /// Goes on.
    pub next: &'static str,
    /// Takes back what was just done.
    pub undo: &'static str,
    /// Changes an entry.
    pub change: &'static str,
    /// Erases an entry.
    pub erase: &'static str,
    /// Brings back what was erased.
    pub bring_back: &'static str,
    /// Adds something.
    pub add: &'static str,
    /// Yes.
    pub yes: &'static str,
    /// No.
    pub no: &'static str,
    /// Tries again.
    pub try_again: &'static str,
    /// Stepper: less. For screen readers.
    pub less: &'static str,
    /// Stepper: more. For screen readers.
    pub more: &'static str,
}

/// What is said about saving.
#[derive(Debug)]
pub struct Saving {
    /// All is kept.
    pub saved: &'static str,
    /// A change is about to be kept.
    pub pending: &'static str,
    /// What was kept was cleared while it is shown: the next change keeps it again, and leaving
    /// lets it go.
    pub cleared: &'static str,
    /// The browser has no room left.
    pub full: &'static str,
    /// The browser keeps nothing, as in a private window.
    pub not_allowed: &'static str,
    /// Anything else went wrong.
    pub failed: &'static str,
    /// What is kept was written by a newer version of the app.
    pub newer_version: &'static str,
    /// What was kept could not be read and was put aside.
    pub damaged: &'static str,
    /// What was kept could not be read, and there was no room to put it aside.
    pub damaged_in_place: &'static str,
    /// The way out: a copy as a file.
    pub copy_to_file: &'static str,
    /// The way out for what was put aside.
    pub copy_damaged_to_file: &'static str,
    /// Another window changed the same household; this one shows it now.
    pub changed_elsewhere: &'static str,
    /// As above, and something typed here no longer made sense.
    pub change_lost: &'static str,
    /// A new version waits.
    pub update_waits: &'static str,
    /// Takes the new version.
    pub update_now: &'static str,
}

/// Short notes with an undo button.
#[derive(Debug)]
pub struct Notes {
    /// An entry of the diary was erased.
    pub entry_erased: &'static str,
    /// A cooker was erased, with its entries.
    pub cooker_erased: fn(name: &str) -> String,
    /// The sky of a day was erased.
    pub sky_erased: &'static str,
    /// A test run was erased; its name.
    pub run_erased: fn(name: &str) -> String,
    /// A reading of a test run was erased.
    pub reading_erased: &'static str,
    /// It is back.
    pub brought_back: &'static str,
    /// A pot went in.
    pub pot_in: &'static str,
    /// What was added is gone again.
    pub taken_back: &'static str,
    /// What was seen is in the diary.
    pub noted: &'static str,
    /// It stands in place of the hours of the day that were told before.
    pub hours_replaced: &'static str,
    /// It stands in place of the day's number of hours.
    pub number_replaced: &'static str,
    /// A reading of a test run is kept.
    pub written_down: &'static str,
    /// The same in place of what was read then: what that was, and when.
    pub overwritten: fn(was: &str, time: &str) -> String,
    /// What was found is used for a cooker; its name.
    pub fit_used: fn(name: &str) -> String,
    /// A copy was brought in; the former household was put aside.
    pub copy_brought_in: &'static str,
}

/// How values are written. Each function gets the number ready to print.
#[derive(Debug)]
pub struct Units {
    /// A temperature.
    pub degrees: fn(number: &str, unit: Degrees) -> String,
    /// A volume in litres.
    pub litres: fn(number: &str) -> String,
    /// A mass in kilograms.
    pub kilograms: fn(number: &str) -> String,
    /// A mass in grams.
    pub grams: fn(number: &str) -> String,
    /// Whole hours.
    pub hours: fn(number: &str) -> String,
    /// Minutes.
    pub minutes: fn(number: &str) -> String,
    /// Hours and minutes, the minutes with two digits.
    pub hours_minutes: fn(hours: &str, minutes: &str) -> String,
    /// Days, two or more.
    pub days: fn(number: &str) -> String,
    /// A power in watts.
    pub watts: fn(number: &str) -> String,
    /// An energy in watt-hours.
    pub watt_hours: fn(number: &str) -> String,
    /// An energy in kilowatt-hours.
    pub kilowatt_hours: fn(number: &str) -> String,
    /// A resistance in ohms.
    pub ohms: fn(number: &str) -> String,
    /// A length in centimetres.
    pub centimetres: fn(number: &str) -> String,
    /// A height in metres.
    pub metres: fn(number: &str) -> String,
    /// A percentage.
    pub percent: fn(number: &str) -> String,
    /// A span of numbers or times.
    pub from_to: fn(from: &str, to: &str) -> String,
    /// A day and a time of day.
    pub day_time: fn(day: &str, time: &str) -> String,
    /// A time of day that is tomorrow's: 'at 18:40 tomorrow' must read well.
    pub time_tomorrow: fn(time: &str) -> String,
    /// A time of day that was yesterday's.
    pub time_yesterday: fn(time: &str) -> String,
    /// A time of day on another day, given by its date.
    pub time_on: fn(time: &str, day: &str) -> String,
    /// The day that is now.
    pub today: &'static str,
    /// The day before.
    pub yesterday: &'static str,
    /// The day after.
    pub tomorrow: &'static str,
}

// There is one table of units a language, so they are told apart by their place in memory.
impl PartialEq for Units {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}
