//! The device's clock.

use js_sys::Date;
use model::local_time::LocalTime;

/// Now, on the device's own clock.
pub fn now() -> LocalTime {
    let local_s = Date::now() / 1000.0 + f64::from(utc_offset_min()) * 60.0;
    LocalTime(whole_s(local_s))
}

/// Minutes that the device's clock is ahead of universal time; negative west of Greenwich.
pub fn utc_offset_min() -> i32 {
    // The browser counts it the other way round: minutes to add to local time.
    let minutes = -Date::new_0().get_timezone_offset();
    i32::try_from(whole_s(minutes)).unwrap_or(0)
}

#[expect(
    clippy::cast_possible_truncation,
    reason = "a cast of f64 to i64 saturates, as is meant"
)]
fn whole_s(seconds: f64) -> i64 {
    seconds.floor() as i64
}
