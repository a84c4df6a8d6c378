//! Days and instants as text: `2026-11-25` and `2026-11-25T18:40:00`, the extended format of ISO
//! 8601-1:2019 without an offset, since the kitchen clock has none.

use model::local_time::{Day, LocalTime};

use super::reader::{Found, Node, Read};
use super::writer::{Write, Writer};

/// A day as text.
pub(super) fn day(day: Day) -> String {
    let (year, month, day) = day.ymd();
    format!("{year:04}-{month:02}-{day:02}")
}

/// A day from text.
pub(super) fn read_day(text: &str) -> Option<Day> {
    let mut parts = text.splitn(3, '-');
    let year = digits(parts.next()?, 4)?;
    let month = digits(parts.next()?, 2)?;
    let day = digits(parts.next()?, 2)?;
    Day::from_ymd(i32::try_from(year).ok()?, month, day)
}

/// An instant as text.
fn instant(at: LocalTime) -> String {
    let second = at.second_of_day();
    let (hour, minute) = (second / 3600, second / 60 % 60);
    format!("{}T{hour:02}:{minute:02}:{:02}", day(at.day()), second % 60)
}

/// An instant from text.
fn read_instant(text: &str) -> Option<LocalTime> {
    let (day, time) = text.split_once('T')?;
    let mut parts = time.splitn(3, ':');
    let hour = digits(parts.next()?, 2)?;
    let minute = digits(parts.next()?, 2)?;
    let second = digits(parts.next()?, 2)?;
    if 23 < hour || 59 < minute || 59 < second {
        return None;
    }
    Some(read_day(day)?.at_s(i64::from(hour * 3600 + minute * 60 + second)))
}

impl Write for Day {
    fn write(&self, out: &mut Writer) {
        day(*self).write(out);
    }
}

impl Read for Day {
    fn read(from: &Node<'_>) -> Found<Self> {
        read_day(from.text()?).map_or_else(|| from.unknown(), Ok)
    }
}

impl Write for LocalTime {
    fn write(&self, out: &mut Writer) {
        instant(*self).write(out);
    }
}

impl Read for LocalTime {
    fn read(from: &Node<'_>) -> Found<Self> {
        read_instant(from.text()?).map_or_else(|| from.unknown(), Ok)
    }
}

fn digits(text: &str, n_digits: usize) -> Option<u32> {
    let is_number = text.len() == n_digits && text.bytes().all(|byte| byte.is_ascii_digit());
    is_number.then(|| text.parse().ok()).flatten()
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    #[test]
    fn as_the_standard_writes_them() {
        let day_2026 = Day::from_ymd(2026, 11, 25).unwrap();
        assert_eq!(day(day_2026), "2026-11-25");
        assert_eq!(instant(day_2026.at_s(67_205)), "2026-11-25T18:40:05");
    }

    #[test]
    fn nonsense_is_no_time() {
        for text in [
            "",
            "2026-02-30",
            "2026-2-3",
            "26-02-03",
            "2026-02-0x",
            "+026-02-03",
        ] {
            assert_eq!(read_day(text), None, "{text:?}");
        }
        for text in [
            "2026-11-25",
            "2026-11-25T24:00:00",
            "2026-11-25T18:40",
            "T18:40:00",
        ] {
            assert_eq!(read_instant(text), None, "{text:?}");
        }
    }

    proptest! {
        #[test]
        fn an_instant_survives(seconds in 0_i64..5_000_000_000) {
            prop_assert_eq!(read_instant(&instant(LocalTime(seconds))), Some(LocalTime(seconds)));
        }
    }
}
