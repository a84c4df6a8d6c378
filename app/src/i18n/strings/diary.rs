//! Texts of the diary.

/// A text with one value in it.
pub type Say = fn(value: &str) -> String;

/// A text with two values in it.
pub type SayTwo = fn(first: &str, second: &str) -> String;

/// Texts of the diary.
#[derive(Debug)]
pub struct Diary {
    /// Head of the screen.
    pub title: &'static str,
    /// Button: the day before.
    pub previous: &'static str,
    /// Button: the day after.
    pub following: &'static str,
    /// Label of the field for the day.
    pub day: &'static str,
    /// Head of the sun of a day: 'today', or its date.
    pub sun_heading: Say,
    /// Before a button for each sky: it was so all day.
    pub whole_day: &'static str,
    /// The same on a day that is not over: it was so until now.
    pub so_far: &'static str,
    /// What a screen reader calls the grid of hours.
    pub hours_label: &'static str,
    /// What a screen reader calls the way from day to day.
    pub days_label: &'static str,
    /// Makes all hours from one on like it.
    pub onward: fn(from: &str, sky: &str) -> String,
    /// One hour of the grid, for a screen reader.
    pub hour: fn(from: &str, to: &str, sky: &str) -> String,
    /// The sky of an hour that nobody told.
    pub untold: &'static str,
    /// Opens the field for a number of hours.
    pub as_number: &'static str,
    /// Label of that field.
    pub sun_hours: &'static str,
    /// Less sun, for screen readers.
    pub fewer_hours: &'static str,
    /// More sun, for screen readers.
    pub more_hours: &'static str,
    /// Under that field: how long the sun is up.
    pub possible: Say,
    /// A number of hours was logged, instead of single hours.
    pub told_hours: Say,
    /// What the sky of the day comes to.
    pub comes_to: Say,
    /// The same on a day that is not over, with the last sky taken for what is to come.
    pub comes_to_if_it_stays: Say,
    /// Under each of these and the next, of a day that is over: the store took all of it.
    pub took_all: &'static str,
    /// The same of a part of it.
    pub took: Say,
    /// Of today: there is room for all of it in the store.
    pub has_room_for_all: &'static str,
    /// The same of a part of it.
    pub has_room: Say,
    /// After a part: where the store takes no more of it.
    pub full_at: Say,
    /// After it: how hours that have gone by and were not told are taken.
    pub like_the_told: &'static str,
    /// No sky was logged; what is assumed comes to this.
    pub nothing_told: Say,
    /// The same, where the energy is not known.
    pub nothing_told_plain: &'static str,
    /// The sun does not rise on this day.
    pub sun_stays_down: &'static str,
    /// Erases the sky of the day.
    pub erase_sky: &'static str,
    /// Head of what else happened on the day.
    pub entries_heading: &'static str,
    /// There are none.
    pub no_entries: &'static str,
    /// Button: adds a thermometer reading.
    pub add_reading: &'static str,
    /// Button: how hot the store felt.
    pub add_felt: &'static str,
    /// Label of the choice: it felt cold or hot.
    pub felt_label: &'static str,
    /// Under that choice: how to tell without getting burnt.
    pub felt_how: &'static str,
    /// Choice: a palm can stay on it.
    pub felt_cold_choice: &'static str,
    /// Choice: it can't be touched.
    pub felt_hot_choice: &'static str,
    /// Button: adds a meal.
    pub add_meal: &'static str,
    /// Button: the lid stood open.
    pub add_lid: &'static str,
    /// Button: the heater got nothing.
    pub add_heater: &'static str,
    /// Button: heat came from the grid or a fire.
    pub add_top_up: &'static str,
    /// A reading in the list.
    pub reading: Say,
    /// In the list: a hand could stay on the store.
    pub felt_cold: &'static str,
    /// In the list: the store could not be touched.
    pub felt_hot: &'static str,
    /// In the list: for how long the lid stood open.
    pub lid_open: Say,
    /// In the list: for how long the heater got nothing.
    pub heater_off: Say,
    /// In the list: with how much heat the store was topped up, and for how long.
    pub top_up: SayTwo,
    /// Label: what the thermometer showed.
    pub reading_label: &'static str,
    /// Lower, for screen readers.
    pub lower: &'static str,
    /// Higher, for screen readers.
    pub higher: &'static str,
    /// Label: minutes that the lid stood open.
    pub lid_label: &'static str,
    /// Label: hours that the heater got nothing.
    pub heater_label: &'static str,
    /// Label: how long a top-up was on.
    pub top_up_label: &'static str,
    /// Label: heat of a top-up into the store.
    pub top_up_power: &'static str,
    /// Shorter, for screen readers.
    pub shorter: &'static str,
    /// Longer, for screen readers.
    pub longer: &'static str,
    /// Label: the time of an entry.
    pub at: &'static str,
    /// Label: when something began.
    pub from: &'static str,
    /// Label: when the pot went in.
    pub put_in: &'static str,
    /// Label: when it was to be eaten.
    pub eaten: &'static str,
    /// Label: when the pot came out.
    pub out: &'static str,
    /// Label: when it boiled.
    pub boiled: &'static str,
    /// Label: looked at then, and not boiling.
    pub not_boiled: &'static str,
    /// Label: tasted then, and not done.
    pub not_done: &'static str,
    /// Label: when the food was soft.
    pub done: &'static str,
    /// Opens what was seen of a meal.
    pub seen: &'static str,
    /// Under such a field.
    pub if_seen: &'static str,
    /// In the list: nothing was seen of a meal.
    pub not_seen: &'static str,
    /// Beside an entry that does not fit: what was expected instead.
    pub doubt: Say,
    /// The same, where it was not expected at all.
    pub doubt_plain: &'static str,
    /// Button: the entry is right.
    pub keep_it: &'static str,
    /// Button: opens the entry.
    pub change_it: &'static str,
    /// Head of the sheet that changes an entry.
    pub change_title: &'static str,
    /// Opens what was erased lately.
    pub erased_heading: &'static str,
    /// The sky of a day, erased.
    pub erased_sky: Say,
    /// A test run; its name.
    pub erased_run: Say,
    /// A reading of a test run; when it was taken.
    pub erased_reading: Say,
    /// An entry, erased.
    pub erased_entry: SayTwo,
    /// A cooker, erased.
    pub erased_cooker: Say,
    /// Head of the last days.
    pub last_heading: &'static str,
    /// What a screen reader calls that plot.
    pub last_name: &'static str,
    /// What a bar is, and what its full height means.
    pub bar_label: Say,
    /// What the line is, and its span.
    pub line_label: Say,
    /// How many of the days were logged, and their mean.
    pub told_days: SayTwo,
    /// Under the plot: what hours of full sun are, and what the hours are that a person notes.
    pub two_hours: &'static str,
    /// None was logged.
    pub no_told_days: &'static str,
    /// The hottest evening.
    pub hottest: SayTwo,
    /// Head of a column: the day.
    pub table_head_day: &'static str,
    /// Head of a column: hours of full sun.
    pub table_head_sun: &'static str,
    /// Head of a column: the store in the evening.
    pub table_head_store: &'static str,
}
