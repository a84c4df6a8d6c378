//! Time as a household keeps it: the kitchen clock.
//!
//! What people log is said in local time, so the model counts local time too; only the sun
//! needs universal time, which is local time less the place's offset.

use chrono::{Datelike, NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};

/// Seconds in a day of the kitchen clock.
pub const DAY_S: i64 = 86_400;

/// A day of the local calendar, counted from 1970-01-01.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Day(pub i32);

/// An instant on the local clock: seconds since 1970-01-01 00:00, local time.
#[derive(
    Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct LocalTime(pub i64);

impl Day {
    /// The day of a calendar date; `None` where the calendar has no such date.
    pub fn from_ymd(year: i32, month: u32, day: u32) -> Option<Self> {
        let date = NaiveDate::from_ymd_opt(year, month, day)?;
        let days = date.signed_duration_since(NaiveDate::default()).num_days();
        i32::try_from(days).ok().map(Self)
    }

    fn date(self) -> NaiveDate {
        NaiveDate::default()
            .checked_add_signed(TimeDelta::days(i64::from(self.0)))
            .unwrap_or_default()
    }

    /// Year, month (1 to 12) and day of the month (1 to 31).
    pub fn ymd(self) -> (i32, u32, u32) {
        let date = self.date();
        (date.year(), date.month(), date.day())
    }

    /// Day of the year, 1 to 366.
    pub fn of_year(self) -> u32 {
        self.date().ordinal()
    }

    /// Midnight at the start of the day.
    pub fn start(self) -> LocalTime {
        LocalTime(i64::from(self.0) * DAY_S)
    }

    /// An instant of this day, `seconds` after midnight.
    pub fn at_s(self, seconds: i64) -> LocalTime {
        LocalTime(i64::from(self.0) * DAY_S + seconds)
    }

    /// The day `n_days` later (earlier when negative).
    pub fn plus(self, n_days: i32) -> Self {
        Self(self.0.saturating_add(n_days))
    }
}

impl LocalTime {
    /// The day this instant falls on.
    pub fn day(self) -> Day {
        Day(i32::try_from(self.0.div_euclid(DAY_S)).unwrap_or(i32::MAX))
    }

    /// Seconds since local midnight, 0 to 86 399.
    pub fn second_of_day(self) -> i64 {
        self.0.rem_euclid(DAY_S)
    }

    /// Hour of the day, 0 to 23.
    pub fn hour(self) -> usize {
        usize::try_from(self.second_of_day() / 3600).unwrap_or(0)
    }

    /// Minute of the hour, 0 to 59.
    pub fn minute(self) -> i64 {
        self.second_of_day() / 60 % 60
    }

    /// The instant `seconds` later (earlier when negative).
    pub fn plus_s(self, seconds: i64) -> Self {
        Self(self.0.saturating_add(seconds))
    }

    /// Seconds from `earlier` to this instant; negative when this one is the earlier.
    pub fn since_s(self, earlier: Self) -> i64 {
        self.0.saturating_sub(earlier.0)
    }

    /// The first instant at or after this one whose seconds since midnight are a multiple of
    /// `step_s`.
    pub fn ceil_to_s(self, step_s: i64) -> Self {
        let over = self.0.rem_euclid(step_s.max(1));
        if over == 0 {
            self
        } else {
            self.plus_s(step_s - over)
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_date_and_back() {
        for (y, m, d) in [(1970, 1, 1), (2000, 2, 29), (2026, 11, 25), (1969, 12, 31)] {
            assert_eq!(Day::from_ymd(y, m, d).map(Day::ymd), Some((y, m, d)));
        }
        assert_eq!(Day::from_ymd(2026, 2, 29), None);
        assert_eq!(Day::from_ymd(1970, 1, 2), Some(Day(1)));
    }

    #[test]
    fn the_day_of_an_instant_before_the_epoch_is_the_day_before() {
        assert_eq!(LocalTime(-1).day(), Day(-1));
        assert_eq!(LocalTime(-1).hour(), 23);
        assert_eq!(LocalTime(-1).minute(), 59);
    }

    #[test]
    fn rounding_up_leaves_a_round_instant_alone() {
        assert_eq!(LocalTime(600).ceil_to_s(300), LocalTime(600));
        assert_eq!(LocalTime(601).ceil_to_s(300), LocalTime(900));
    }
}
