//! Texts of where the household cooks.

/// Texts of where the household cooks.
#[derive(Debug)]
pub struct Place {
    /// Heads the fold.
    pub heading: &'static str,
    /// What the figures are for.
    pub note: &'static str,
    /// Latitude.
    pub latitude: &'static str,
    /// Which way it counts.
    pub latitude_hint: &'static str,
    /// Longitude.
    pub longitude: &'static str,
    /// Which way it counts.
    pub longitude_hint: &'static str,
    /// Height above the sea.
    pub altitude: &'static str,
    /// Where water boils at that height.
    pub boils_at: fn(temperature: &str) -> String,
    /// Clock less universal time.
    pub clock: &'static str,
    /// How to find it.
    pub clock_hint: &'static str,
    /// People who usually eat.
    pub people: &'static str,
    /// Heads the air.
    pub air: &'static str,
    /// Switch: the same all year.
    pub same: &'static str,
    /// What is asked.
    pub same_detail: &'static str,
    /// Warm hour of the day.
    pub day: &'static str,
    /// Cool hour of the night.
    pub night: &'static str,
    /// Warm hour of the day in a month.
    pub month_day: fn(month: &str) -> String,
    /// Cool hour of the night in a month.
    pub month_night: fn(month: &str) -> String,
    /// The months' names.
    pub months: [&'static str; 12],
    /// Button: fill in what is usual at this latitude and height.
    pub guess: &'static str,
    /// How good that is.
    pub guess_note: &'static str,
}
