//! Texts of how sure the answer is.

/// Texts of how sure the answer is.
#[derive(Debug)]
pub struct Chances {
    /// Heads the figures.
    pub heading: &'static str,
    /// What is expected: water or milk boils in time.
    pub expect_boil: fn(eaten: &str) -> String,
    /// It boils and is done in time.
    pub expect_done: fn(eaten: &str) -> String,
    /// It is done in time, and likely boils.
    pub expect_either: fn(eaten: &str) -> String,
    /// It is done in time without boiling.
    pub expect_below: fn(eaten: &str) -> String,
    /// What may go wrong: it stays below the boil.
    pub may_stay_cold: &'static str,
    /// It boils too late.
    pub may_be_late: fn(eaten: &str) -> String,
    /// The same where it rather boils in time than not.
    pub close_boil: fn(eaten: &str) -> String,
    /// It is done too late.
    pub may_not_be_done: fn(eaten: &str) -> String,
    /// The same where it is rather done in time than not.
    pub close_done: fn(eaten: &str) -> String,
    /// The water is gone first.
    pub may_boil_dry: &'static str,
    /// What is expected to go wrong: it stays below the boil; where water boils here.
    pub stays_cold: fn(boiling: &str) -> String,
    /// It boils too late; when.
    pub boils_late: fn(eaten: &str, boils: &str) -> String,
    /// It is not done in time.
    pub not_done: fn(eaten: &str) -> String,
    /// It is done too late; when.
    pub done_late: fn(eaten: &str, done: &str) -> String,
    /// The water is gone first.
    pub boils_dry: &'static str,
    /// Label: the chance that it boils while it is in.
    pub boils: &'static str,
    /// Label: the chance that it is done by the meal's hour.
    pub done: fn(eaten: &str) -> String,
    /// The latest time, and the odds it stands for.
    pub latest: fn(time: &str, figure: &str) -> String,
    /// The time that is planned is too late: the latest, and the odds it stands for.
    pub sooner: fn(time: &str, figure: &str) -> String,
    /// The time that is planned is the latest for these odds.
    pub no_later: fn(figure: &str) -> String,
    /// There is no time for these odds.
    pub no_time: fn(figure: &str) -> String,
    /// Label: how much the pot may hold.
    pub most: &'static str,
    /// Food and water together.
    pub up_to: fn(litres: &str) -> String,
    /// So much is sure to be ready in so many of so many evenings.
    pub for_odds: fn(figure: &str) -> String,
    /// Not even a little is.
    pub nothing: &'static str,
    /// Label: a look at the thermometer now.
    pub reading: &'static str,
    /// It settles the question in so many cases.
    pub reading_settles: fn(figure: &str) -> String,
    /// It tells little that is not known.
    pub reading_little: &'static str,
    /// Label: tomorrow's breakfast.
    pub breakfast: &'static str,
    /// What it is: so much water, in from, boiling by; with tonight's pot cooked.
    pub breakfast_water: fn(litres: &str, from: &str, by: &str) -> String,
    /// The odds with a change.
    pub then: fn(odds: &str) -> String,
    /// Beside the plot: how the store goes, in the middle of what may be.
    pub store_goes: fn(from: &str, to: &str, time: &str) -> String,
    /// After that: between what it then lies.
    pub store_between: fn(low: &str, high: &str) -> String,
    /// Heads a column of the table: the lower end of the store.
    pub store_from: &'static str,
    /// The upper end.
    pub store_to: &'static str,
    /// While the pot is in: the odds that it is ready by the meal's hour.
    pub ready_by: fn(eaten: &str, odds: &str) -> String,
    /// The same of the boil.
    pub boils_by: fn(eaten: &str, odds: &str) -> String,
}
