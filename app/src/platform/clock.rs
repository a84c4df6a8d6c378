//! The device's clock.

use js_sys::Date;
use model::local_time::{Day, LocalTime};

/// Now, on the device's own clock.
pub fn now() -> LocalTime {
    let local_s = Date::now() / 1000.0 + f64::from(utc_offset_min()) * 60.0;
    LocalTime(whole_s(local_s))
}

/// Milliseconds, to tell how long something takes.
pub fn ms() -> f64 {
    Date::now()
}

/// Minutes that the device's clock is ahead of universal time; negative west of Greenwich.
pub fn utc_offset_min() -> i32 {
    // The browser counts it the other way round: minutes to add to local time.
    let minutes = -Date::new_0().get_timezone_offset();
    i32::try_from(whole_s(minutes)).unwrap_or(0)
}

/// The same at noon of a day, with the summer time that the device's zone has then.
pub fn utc_offset_on_min(day: Day) -> i32 {
    let (year, month, day) = day.ymd();
    let small = |value: u32| i32::try_from(value).unwrap_or(1);
    let date = Date::new_0();
    date.set_hours(12);
    date.set_full_year_with_month_date(year.cast_unsigned(), small(month) - 1, small(day));
    i32::try_from(whole_s(-date.get_timezone_offset())).unwrap_or(0)
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast of f64 to i64 saturates, as is meant"
)]
fn whole_s(seconds: f64) -> i64 {
    seconds.floor() as i64
}
