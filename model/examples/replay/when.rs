//! Days and instants of a copy.

use model::local_time::{Day, LocalTime};
use serde::de::Error;
use serde::{Deserialize, Deserializer};

pub(crate) fn instant<'d, D: Deserializer<'d>>(from: D) -> Result<LocalTime, D::Error> {
    let text = String::deserialize(from)?;
    time(&text)
        .ok_or_else(|| D::Error::custom(format!("{text:?} is no time like 2026-11-25T18:40:00")))
}

pub(crate) fn maybe_instant<'d, D: Deserializer<'d>>(
    from: D,
) -> Result<Option<LocalTime>, D::Error> {
    match Option::<String>::deserialize(from)? {
        None => Ok(None),
        Some(text) => time(&text)
            .map(Some)
            .ok_or_else(|| D::Error::custom(format!("{text:?} is no time"))),
    }
}

/// ISO 8601-1:2019, extended, without an offset.
fn time(text: &str) -> Option<LocalTime> {
    let (date, clock) = text.split_once('T')?;
    let mut parts = clock.splitn(3, ':').map(str::parse::<i64>);
    let (hour, minute, second) = (
        parts.next()?.ok()?,
        parts.next()?.ok()?,
        parts.next()?.ok()?,
    );
    let is_clock =
        (0..24).contains(&hour) && (0..60).contains(&minute) && (0..60).contains(&second);
    let seconds = 3600 * hour + 60 * minute + second;
    day(date).filter(|_| is_clock).map(|day| day.at_s(seconds))
}

pub(crate) fn day(text: &str) -> Option<Day> {
    let mut parts = text.splitn(3, '-');
    let year = parts.next()?.parse().ok()?;
    let month = parts.next()?.parse().ok()?;
    let day = parts.next()?.parse().ok()?;
    Day::from_ymd(year, month, day)
}

pub(crate) fn maybe_day<'d, D: Deserializer<'d>>(from: D) -> Result<Option<Day>, D::Error> {
    match Option::<String>::deserialize(from)? {
        None => Ok(None),
        Some(text) => day(&text)
            .map(Some)
            .ok_or_else(|| D::Error::custom(format!("{text:?} is no day"))),
    }
}
