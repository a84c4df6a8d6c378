//! Texts of a run that goes on.

use crate::i18n::strings::diary::{Say, SayTwo};

/// Texts of a run that goes on.
#[derive(Debug)]
pub struct Live {
    /// Under the name: since when, and how many readings.
    pub since: fn(time: &str, n_readings: usize) -> String,
    /// The same of a run that is over: from when to when, and how many.
    pub was: fn(from: &str, to: &str, n_readings: usize) -> String,
    /// Head of the clock.
    pub clock: &'static str,
    /// Before the minutes and seconds that are left.
    pub next_in: &'static str,
    /// It is time to read.
    pub now: &'static str,
    /// How often, and when the next one is due.
    pub every: SayTwo,
    /// It is late, by so much.
    pub late: Say,
    /// Nobody has read for hours, in place of the minutes that are left.
    pub when_you_can: &'static str,
    /// Under it: since when nothing was written down, and what can be done.
    pub left_alone: Say,
    /// Readings that were due while the screen was off: one.
    pub missed_one: &'static str,
    /// The same: several.
    pub missed: Say,
    /// How long the run takes in all, as it is foreseen; when that is over.
    pub ends: SayTwo,
    /// No pot went in yet into a run that is about one.
    pub ends_with_pot: &'static str,
    /// That time is over.
    pub has_told: &'static str,
    /// Head of how long it goes on, and of the switches for reminders.
    pub remind: &'static str,
    /// Switch: keeps the screen on.
    pub keep_on: &'static str,
    /// Under it.
    pub keep_on_detail: &'static str,
    /// Switch: buzzes and shows a notice.
    pub call: &'static str,
    /// Under it: what a locked phone does.
    pub call_detail: &'static str,
    /// This browser can't keep the screen on.
    pub no_wake: &'static str,
    /// This browser shows no notices.
    pub no_notices: &'static str,
    /// The person said no to notices.
    pub denied: &'static str,
    /// This device does not buzz.
    pub no_buzz: &'static str,
    /// Head of a notice; the run's name.
    pub notice: Say,
    /// What the notice says.
    pub notice_body: &'static str,
    /// Head of the entry of a reading.
    pub entry: &'static str,
    /// The question what is read.
    pub channel: &'static str,
    /// The store.
    pub store: &'static str,
    /// The pot.
    pub pot: &'static str,
    /// The air.
    pub air: &'static str,
    /// The heater's power.
    pub power: &'static str,
    /// Label of the number.
    pub shows: &'static str,
    /// Step button: less.
    pub lower: &'static str,
    /// Step button: more.
    pub higher: &'static str,
    /// Label of the time; empty means now.
    pub at: &'static str,
    /// Under it.
    pub at_hint: &'static str,
    /// Under it where the time is proposed.
    pub at_proposed: &'static str,
    /// Under it in a run that is over, up to its end, where none is proposed.
    pub at_within: &'static str,
    /// Keeps a reading.
    pub note: &'static str,
    /// Keeps one that was taken then.
    pub note_at: Say,
    /// Opens what was read or put in on paper, of a run that is over.
    pub from_paper: &'static str,
    /// Head of the readings.
    pub readings: &'static str,
    /// They come from a text: how many, and over how long.
    pub of_text: SayTwo,
    /// There are none yet.
    pub none_yet: &'static str,
    /// The name of what was read, and the value.
    pub value: SayTwo,
    /// Shows all of them.
    pub show_all: Say,
    /// Head of the sheet that changes one.
    pub change: &'static str,
    /// Head of the plot.
    pub plot: &'static str,
    /// The foreseen line of the store, and of the pot.
    pub foreseen_store: &'static str,
    /// See above.
    pub foreseen_pot: &'static str,
    /// What was read, of store and pot alike.
    pub read: &'static str,
    /// What the plot says: what was read last of the store, and when.
    pub sentence: SayTwo,
    /// And how it lies: so much hotter than the cooker as it is described.
    pub above: Say,
    /// So much colder.
    pub below: Say,
    /// As described.
    pub as_described: &'static str,
    /// Column of times.
    pub time: &'static str,
    /// Head of the pots.
    pub pots: &'static str,
    /// A pot that is in: what, and since when.
    pub pot_in_since: SayTwo,
    /// A pot that was in: what, and from when to when.
    pub pot_was_in: fn(what: &str, from: &str, to: &str) -> String,
    /// What is in a pot: litres of water, the lid.
    pub water_lid: SayTwo,
    /// What was left, by weighing.
    pub left: Say,
    /// Head of the sheet that changes a pot.
    pub change_pot: &'static str,
    /// Note: it was changed.
    pub pot_changed: &'static str,
    /// Note: it was erased.
    pub pot_erased: &'static str,
    /// Under when it came out, in that sheet.
    pub out_hint: &'static str,
    /// Puts a pot in.
    pub put_in: &'static str,
    /// Takes it out.
    pub take_out: &'static str,
    /// The same at a time that has passed.
    pub was_put_in: &'static str,
    /// See above.
    pub was_taken_out: &'static str,
    /// Opens the time of that.
    pub earlier: &'static str,
    /// Label: when it went in.
    pub went_in: &'static str,
    /// Label: when it came out.
    pub came_out: &'static str,
    /// Notes that the pot boils.
    pub boils: &'static str,
    /// Notes that the pot boiled then.
    pub boiled_at: Say,
    /// Under it: what is written down.
    pub boils_hint: Say,
    /// Label: litres of water.
    pub water: &'static str,
    /// Label: how warm it goes in.
    pub start: &'static str,
    /// Label: what was left.
    pub left_label: &'static str,
    /// Under it.
    pub left_hint: &'static str,
    /// There are too few readings to find anything: how many it takes, and how many there are.
    pub too_few: SayTwo,
    /// Leads back to where readings are written down.
    pub more_readings: &'static str,
    /// Finishes the run.
    pub finish: &'static str,
    /// Opens the time at which it was over.
    pub finish_earlier: &'static str,
    /// Label: when it was over.
    pub finished: &'static str,
    /// Finishes the run at a time.
    pub finish_at: Say,
    /// Lets it go on again.
    pub go_on: &'static str,
    /// Leads to what is found from it.
    pub to_fit: &'static str,
    /// Erases the run.
    pub erase: &'static str,
    /// The run is not there any more.
    pub gone: &'static str,
}
