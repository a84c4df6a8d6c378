//! Texts of refusals.

/// Texts of refusals.
#[derive(Debug)]
pub struct Refusals {
    /// Letters where a number belongs.
    pub not_a_number: &'static str,
    /// A broken number where a whole one belongs.
    pub not_whole: &'static str,
    /// Nothing where something is needed.
    pub empty: &'static str,
    /// A name of too many letters.
    pub too_long: fn(n_most: usize) -> String,
    /// Below the least that can be; the least with its unit.
    pub too_low: fn(value: &str) -> String,
    /// Above the most that can be; the most with its unit.
    pub too_high: fn(value: &str) -> String,
    /// More hours of sun than the day has; the hours it has.
    pub sun_exceeds_day: fn(value: &str) -> String,
    /// More than the pot holds; what it holds.
    pub pot_too_small: fn(value: &str) -> String,
    /// A time that has not come yet.
    pub in_future: &'static str,
    /// Fins that leave less than half of the room to what is between them.
    pub fins_too_close: &'static str,
    /// Too early; the earliest it can be.
    pub before: fn(value: &str) -> String,
    /// Too late; the latest it can be.
    pub after: fn(value: &str) -> String,
    /// The night is given as warmer than the day.
    pub night_warmer: &'static str,
    /// What was to be changed is no longer there.
    pub gone: &'static str,
    /// A second meal is started while one is in the cooker.
    pub meal_running: &'static str,
    /// A question about a meal was answered for an entry that is none.
    pub not_a_meal: &'static str,
    /// The only cooker can’t be erased.
    pub last_cooker: &'static str,
    /// More of something than the app keeps.
    pub too_many: fn(n_most: usize) -> String,
}
