//! What the diary shows.

pub mod doubts;
pub mod draft;
pub mod entries;
pub mod heat;
pub mod last_days;
pub mod sun;

use model::local_time::{Day, LocalTime};

use crate::state::limits;

/// The day as the text of a date field (HTML, 2.3.5.2 'date').
pub fn day_field(day: Day) -> String {
    let (year, month, day) = day.ymd();
    format!("{year:04}-{month:02}-{day:02}")
}

/// From the text of a date field.
pub fn day_from_field(text: &str) -> Option<Day> {
    let mut parts = text.trim().splitn(3, '-');
    let year = parts.next()?.parse().ok()?;
    let month = parts.next()?.parse().ok()?;
    let day = parts.next()?.parse().ok()?;
    Day::from_ymd(year, month, day)
}

/// The day that is shown when this one is asked for: none to come, none before the diary.
pub fn shown_day(asked: Option<Day>, now: LocalTime) -> Day {
    let today = now.day();
    let first = Day::from_ymd(limits::FIRST_YEAR, 1, 1).unwrap_or(today);
    asked.unwrap_or(today).min(today).max(first.min(today))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_date_field_and_back() {
        let day = Day::from_ymd(2026, 3, 9).unwrap();
        assert_eq!(day_field(day), "2026-03-09");
        assert_eq!(day_from_field("2026-03-09"), Some(day));
        assert_eq!(day_from_field(""), None);
        assert_eq!(day_from_field("2026-02-30"), None);
    }

    #[test]
    fn no_day_to_come_is_shown() {
        let now = Day(20_000).at_s(43_200);
        assert_eq!(shown_day(None, now), Day(20_000));
        assert_eq!(shown_day(Some(Day(20_001)), now), Day(20_000));
        assert_eq!(shown_day(Some(Day(19_990)), now), Day(19_990));
        assert_eq!(
            shown_day(Some(Day(-9000)), now),
            Day::from_ymd(2000, 1, 1).unwrap()
        );
    }
}
