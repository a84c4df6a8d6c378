//! Texts of the answer.

/// Texts of the answer.
#[derive(Debug)]
pub struct VerdictTexts {
    /// The answer in two or three words.
    pub headlines: Headlines,
    /// How sure it is, in a few words.
    pub sureness: Sureness,
    /// What happens, in a sentence.
    pub sentences: Sentences,
    /// The figures under it.
    pub facts: Facts,
}

/// The answer in two or three words.
#[derive(Debug)]
pub struct Headlines {
    /// It boils, in time, for all that is known.
    pub will_boil: &'static str,
    /// It is done in time without boiling, for all that is known.
    pub will_be_done: &'static str,
    /// It boils, in time, if things are as logged.
    pub should_boil: &'static str,
    /// It is done in time without boiling, if things are as logged.
    pub should_be_done: &'static str,
    /// It boils only if all goes well.
    pub may_boil: &'static str,
    /// It is done in time only if all goes well.
    pub may_be_done: &'static str,
    /// It rather does not boil in time.
    pub unlikely_to_boil: &'static str,
    /// It is rather not done in time.
    pub unlikely_to_be_done: &'static str,
    /// The water may boil away before the food is done.
    pub may_boil_dry: &'static str,
    /// It may or may not boil, but is not done in time.
    pub not_done: &'static str,
    /// It boils only after the meal's hour.
    pub too_late: &'static str,
    /// It does not boil.
    pub will_not_boil: &'static str,
    /// The water boils away before the food is done.
    pub boils_dry: &'static str,
    /// It would stand too long too cold in the cooker.
    pub do_not_leave: &'static str,
    /// What is planned can't be put into the pot.
    pub does_not_fit: &'static str,
    /// There is too little water to boil.
    pub too_little_water: &'static str,
}

/// How sure the answer is, in a few words.
#[derive(Debug)]
pub struct Sureness {
    /// Even with less heat than was reckoned.
    pub even_weaker: &'static str,
    /// If the day was as it was logged.
    pub as_logged: &'static str,
    /// Even under a grey sky; nothing was logged.
    pub even_grey: &'static str,
    /// Nothing was logged: if sun and clouds come by turns.
    pub as_assumed: &'static str,
    /// Only with more heat than was reckoned.
    pub if_all_goes_well: &'static str,
    /// Only under a clear sky; nothing was logged.
    pub if_clear: &'static str,
    /// Not even with more heat than was reckoned.
    pub not_even_then: &'static str,
    /// Not even under a clear sky; nothing was logged.
    pub not_even_clear: &'static str,
}

/// What happens, in a sentence.
#[derive(Debug)]
pub struct Sentences {
    /// It boils and is done before it is eaten.
    pub boils_and_done: fn(eaten: &str) -> String,
    /// Water or milk boils in time.
    pub boils: fn(eaten: &str) -> String,
    /// It is done without boiling; the hottest it gets.
    pub done_without_boil: fn(hottest: &str, eaten: &str) -> String,
    /// It is done only later, without boiling; the hottest it gets, and when.
    pub done_late: fn(hottest: &str, eaten: &str, done: &str) -> String,
    /// It is done, but then stands below this temperature for so long that from this time on it
    /// must be thrown away.
    pub spoils: fn(least: &str, from: &str) -> String,
    /// It boils, but is done only later; when.
    pub done_later: fn(eaten: &str, done: &str) -> String,
    /// It boils, but is not done, and will not be for hours.
    pub not_done: fn(eaten: &str) -> String,
    /// It boils only after the meal's hour.
    pub boils_later: fn(eaten: &str, boils: &str) -> String,
    /// It does not boil; the hottest it gets, and where water boils here.
    pub never_boils: fn(hottest: &str, boiling: &str) -> String,
    /// The water boils away at this time, before the food is done.
    pub boils_dry: fn(dry: &str) -> String,
    /// After that: with luck it boils.
    pub hope_boils: &'static str,
    /// After that: with luck it is done, without boiling.
    pub hope_done: &'static str,
    /// Before it: today's sun was not logged.
    pub sun_unknown: &'static str,
}

/// The figures under the answer.
#[derive(Debug)]
pub struct Facts {
    /// When it goes in.
    pub put_in: &'static str,
    /// When it goes in, where that is no advice.
    pub goes_in: &'static str,
    /// At a time of day.
    pub at: fn(time: &str) -> String,
    /// At once.
    pub now: &'static str,
    /// The latest it can go in.
    pub at_the_latest: fn(time: &str) -> String,
    /// When it boils.
    pub boils: &'static str,
    /// When it is done.
    pub done: &'static str,
    /// The span that a time lies in.
    pub between: fn(from: &str, to: &str) -> String,
    /// A time that may as well never come.
    pub at_the_earliest: fn(time: &str) -> String,
    /// The hottest that the pot gets.
    pub gets_to: &'static str,
    /// Until when the pot stays in.
    pub leave_in: &'static str,
    /// Until the meal.
    pub until_eaten: fn(time: &str) -> String,
    /// The pot must come out.
    pub take_out: &'static str,
    /// By this time, or the food burns.
    pub or_it_burns: fn(time: &str) -> String,
    /// Somebody must look whether there is water left.
    pub look_in: &'static str,
    /// By this time; the water may be gone before the food is done.
    pub or_it_is_dry: fn(time: &str) -> String,
    /// By this time, or the food spoils.
    pub or_it_spoils: fn(time: &str) -> String,
}
