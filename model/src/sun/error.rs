//! What can be wrong with a place, a panel's mounting or a logged day.

/// Input that no sun can be computed from. Each variant carries the value that was wrong.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SunError {
    /// Latitude is not a number from -90 to 90 degrees.
    #[error("latitude {0} deg is outside -90 to 90")]
    Latitude(f64),
    /// Longitude is not a number from -180 to 180 degrees.
    #[error("longitude {0} deg is outside -180 to 180")]
    Longitude(f64),
    /// Altitude is not a number from -500 to 9000 m.
    #[error("altitude {0} m is outside -500 to 9000")]
    Altitude(f64),
    /// The household's clock is more than 14 hours off UTC.
    #[error("clock offset of {0} min from UTC is outside -840 to 840")]
    UtcOffset(i32),
    /// The day is before 1950 or after 2100, beyond the solar position's validity.
    #[error("day {0} since 1970 is outside the years 1950 to 2100")]
    Day(i32),
    /// A day of the year is not from 1 to 366.
    #[error("day of the year {0} is outside 1 to 366")]
    DayOfYear(u32),
    /// Tilt is not a number from 0 (flat) to 90 (upright) degrees.
    #[error("tilt {0} deg is outside 0 to 90")]
    Tilt(f64),
    /// The panel's azimuth is not a number from -360 to 360 degrees.
    #[error("azimuth {0} deg is outside -360 to 360")]
    Azimuth(f64),
    /// The ground's reflectance is not a number from 0 to 1.
    #[error("albedo {0} is outside 0 to 1")]
    Albedo(f64),
    /// Wind is not a number from 0 to 60 m/s.
    #[error("wind {0} m/s is outside 0 to 60")]
    Wind(f64),
    /// A monthly air temperature is not a number from -60 to 60 degC.
    #[error("air temperature {0} degC is outside -60 to 60")]
    Air(f64),
    /// A month's night is warmer than its day.
    #[error("nights of {night_c} degC are warmer than days of {day_c} degC")]
    NightWarmerThanDay {
        /// The month's afternoon temperature. \[degC\]
        day_c: f64,
        /// The month's temperature before dawn. \[degC\]
        night_c: f64,
    },
    /// Logged hours of sunshine are negative or not a number.
    #[error("{0} hours of sunshine are not a number of hours")]
    SunHours(f64),
    /// More sunshine was logged than the day is long.
    #[error("{logged_h} h of sunshine were logged, but the day has {possible_h:.1} h")]
    SunHoursExceedDay {
        /// What was logged. \[h\]
        logged_h: f64,
        /// Sunrise to sunset that day. \[h\]
        possible_h: f64,
    },
    /// A share of the possible sunshine is not a number from 0 to 1.
    #[error("sunshine share {0} is outside 0 to 1")]
    SunshineShare(f64),
    /// A time step that does not divide the hour, or is below one minute.
    #[error("a step of {0} min does not divide the hour")]
    Step(u32),
    /// The mean of the logged hours was asked for, but no hour of daylight was logged.
    #[error("no hour of daylight was logged")]
    NothingLogged,
}

/// `value` if it is a number from `low` to `high`, else the error that `refuse` makes of it.
pub(crate) fn within(
    value: f64,
    low: f64,
    high: f64,
    refuse: impl FnOnce(f64) -> SunError,
) -> Result<f64, SunError> {
    if (low..=high).contains(&value) {
        Ok(value)
    } else {
        Err(refuse(value))
    }
}
