//! Texts of a meal that is in the cooker, and after it.

/// Texts of a meal that is in the cooker, and after it.
#[derive(Debug)]
pub struct Running {
    /// Head of the block: what is in the cooker.
    pub heading: fn(dish: &str) -> String,
    /// What is in it, and when it went in.
    pub went_in: fn(amounts: &str, time: &str) -> String,
    /// What is in it, and when it goes in.
    pub goes_in: fn(amounts: &str, time: &str) -> String,
    /// When it boils.
    pub boils: fn(time: &str) -> String,
    /// It should have boiled by now, and nobody said that it did.
    pub should_boil_now: &'static str,
    /// It will not boil; the hottest it gets.
    pub will_not_boil: fn(hottest: &str) -> String,
    /// It may stay below the boil.
    pub may_not_boil: &'static str,
    /// When it is done.
    pub done: fn(time: &str) -> String,
    /// It will not be done by the meal's hour.
    pub not_done_by: fn(time: &str) -> String,
    /// It should be done by now.
    pub should_be_done: &'static str,
    /// It was said to be done.
    pub is_done: &'static str,
    /// How long until then.
    pub in_time: fn(span: &str) -> String,
    /// About when, and how long until then.
    pub at_in: fn(about: &str, span: &str) -> String,
    /// It is about now.
    pub about_now: &'static str,
    /// Between these times, for all that is known.
    pub between: fn(from: &str, to: &str) -> String,
    /// Not before this time, for all that is known.
    pub not_before: fn(time: &str) -> String,
    /// Take the pot out by this time, or the food burns.
    pub out_by: fn(time: &str) -> String,
    /// Look in by this time and pour hot water on: it may be gone before the food is done.
    pub lacks_water: fn(time: &str) -> String,
    /// Take the pot out by this time, or the food spoils.
    pub spoils_by: fn(time: &str) -> String,
    /// The meal's hour is past.
    pub was_to_be_eaten: fn(time: &str) -> String,
    /// It stays in until the meal.
    pub stays_until: fn(time: &str) -> String,
    /// Answered: it boiled then.
    pub boiled_at: fn(time: &str) -> String,
    /// Answered: it had not boiled then.
    pub not_boiled_by: fn(time: &str) -> String,
    /// Answered: it was done then.
    pub done_at: fn(time: &str) -> String,
    /// Answered: it was not done then.
    pub not_done_then: fn(time: &str) -> String,
    /// Answered: it came out then.
    pub out_at: fn(time: &str) -> String,
    /// Head of the questions while it is in.
    pub ask: &'static str,
    /// Button: it boils.
    pub boils_now: &'static str,
    /// Button: it does not boil yet.
    pub not_yet: &'static str,
    /// Button: it is not done yet.
    pub not_done_yet: &'static str,
    /// Button: it is done.
    pub done_now: &'static str,
    /// Button: the pot is out.
    pub out_now: &'static str,
    /// Head of the questions after it.
    pub after_heading: fn(dish: &str) -> String,
    /// The same once nothing is left to ask.
    pub after_told: fn(dish: &str) -> String,
    /// Why they are asked.
    pub after_why: &'static str,
    /// Question: when did it boil.
    pub when_boiled: &'static str,
    /// Button: it did not boil.
    pub did_not_boil: &'static str,
    /// Button: it was not done.
    pub was_not_done: &'static str,
    /// Question: when was it done.
    pub when_done: &'static str,
    /// Question: when did it come out.
    pub when_out: &'static str,
    /// Button: keeps the time beside it.
    pub keep: &'static str,
    /// Button: back to planning.
    pub plan_next: &'static str,
}
