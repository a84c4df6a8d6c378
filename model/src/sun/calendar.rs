//! Which day of its year a day is.

use chrono::{Datelike, NaiveDate};

use crate::sun::SunError;

/// The first day the solar position is offered for: 1 January 1950. \[days since 1970-01-01\]
pub const FIRST_DAY: i32 = -7_305;
/// The last day the solar position is offered for: 31 December 2100. \[days since 1970-01-01\]
pub const LAST_DAY: i32 = 47_846;

/// 1970-01-01 in days since 1 January of the year 1, which itself counts as day 1.
const EPOCH_FROM_CE: i32 = 719_163;

/// Number of a day within its year, 1 January being 1.
///
/// # Arguments
///
/// * `day`: [`FIRST_DAY`] to [`LAST_DAY`]. \[days since 1970-01-01\]
///
/// # Returns
///
/// 1 to 366.
///
/// # Errors
///
/// [`SunError::Day`] outside that range.
///
/// # Example
///
/// ```
/// use model::sun::day_of_year;
///
/// assert_eq!(day_of_year(0), Ok(1));
/// // 3 September 2026 is day 20,699.
/// assert_eq!(day_of_year(20_699), Ok(246));
/// ```
pub fn day_of_year(day: i32) -> Result<u32, SunError> {
    if !(FIRST_DAY..=LAST_DAY).contains(&day) {
        return Err(SunError::Day(day));
    }
    NaiveDate::from_num_days_from_ce_opt(day + EPOCH_FROM_CE)
        .map(|date| date.ordinal())
        .ok_or(SunError::Day(day))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bounds_are_the_named_dates() {
        assert_eq!(day_of_year(FIRST_DAY), Ok(1));
        assert_eq!(day_of_year(LAST_DAY), Ok(365));
        assert_eq!(
            day_of_year(FIRST_DAY - 1),
            Err(SunError::Day(FIRST_DAY - 1))
        );
        assert_eq!(day_of_year(i32::MAX), Err(SunError::Day(i32::MAX)));
    }

    #[test]
    fn leap_day_is_day_60() {
        // 29 February 2024 is day 19,782.
        assert_eq!(day_of_year(19_782), Ok(60));
        assert_eq!(day_of_year(19_783), Ok(61));
    }
}
