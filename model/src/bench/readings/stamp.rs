//! When a row was taken.

use super::form::ElapsedUnit;
use super::number::Numbers;
use super::remark::{Remark, What};
use crate::local_time::{DAY_S, Day, LocalTime};

/// A clock time that goes back by more than this is of the next day; by less, it is a line out of
/// order, or a clock that was put back by an hour. \[s\]
const NEXT_DAY_S: f64 = 3600.0;

/// Whether dates with two numbers before the year begin with the month.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum MonthFirst {
    /// No such date, or one that tells.
    Known(bool),
    /// Every such date could be read either way.
    Guessed,
}

impl MonthFirst {
    pub(super) fn of<'a>(cells: impl Iterator<Item = &'a String>) -> Self {
        let mut found = false;
        for cell in cells {
            let Some([first, second]) = slashed(date_part(cell).0) else {
                continue;
            };
            found = true;
            if first > 12 {
                return Self::Known(false);
            }
            if second > 12 {
                return Self::Known(true);
            }
        }
        if found {
            Self::Guessed
        } else {
            Self::Known(false)
        }
    }

    pub(super) const fn is_first(self) -> bool {
        matches!(self, Self::Known(true))
    }

    pub(super) fn guess_remark(self) -> Option<Remark> {
        (self == Self::Guessed).then_some(Remark::whole(What::DayFirstGuessed))
    }
}

/// What became of a row's time.
pub(super) enum Stamped {
    /// On the text's own scale. \[s\]
    At(f64),
    /// Not after the row before.
    NotLater,
    /// No time that can be read.
    Unreadable,
}

/// Follows the times down the rows.
pub(super) struct Clock {
    unit: Option<ElapsedUnit>,
    kind: Option<Kind>,
    last_s: Option<f64>,
    /// Midnights passed by times that have no date. \[s\]
    passed_s: f64,
    first: Option<Moment>,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Elapsed,
    Clock,
    Dated,
}

/// A time as it is written.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Moment {
    /// Since midnight. \[s\]
    Clock(f64),
    /// The day, the time since midnight and, where the zone is given, that of UTC less this. \[s\]
    Dated(Day, f64, f64),
    Elapsed(f64),
}

impl Clock {
    pub(super) const fn new(unit: Option<ElapsedUnit>) -> Self {
        Self {
            unit,
            kind: None,
            last_s: None,
            passed_s: 0.0,
            first: None,
        }
    }

    /// Whether plain numbers were met and nobody said their unit.
    pub(super) fn unit_guessed(&self) -> bool {
        self.kind == Some(Kind::Elapsed) && self.unit.is_none()
    }

    /// The first time, where it is one of the clock.
    pub(super) fn start(&self) -> Option<LocalTime> {
        let (day, second) = match self.first? {
            Moment::Clock(second) => (Day(0), second),
            Moment::Dated(day, second, _) => (day, second),
            Moment::Elapsed(_) => return None,
        };
        #[expect(clippy::cast_possible_truncation, reason = "within a day")]
        let second = second.round() as i64;
        Some(day.at_s(second))
    }

    pub(super) fn read(
        &mut self,
        date: Option<&str>,
        cell: &str,
        month_first: bool,
        numbers: &mut Numbers,
    ) -> Stamped {
        let Some(moment) = moment(date, cell, month_first, numbers) else {
            return Stamped::Unreadable;
        };
        let kind = match moment {
            Moment::Clock(_) => Kind::Clock,
            Moment::Dated(..) => Kind::Dated,
            Moment::Elapsed(_) => Kind::Elapsed,
        };
        if *self.kind.get_or_insert(kind) != kind {
            return Stamped::Unreadable;
        }
        let mut time_s = match moment {
            Moment::Clock(second) => second + self.passed_s,
            Moment::Dated(day, second, ahead_s) => second - ahead_s + f64::from(day.0) * day_s(),
            Moment::Elapsed(number) => number * self.unit.unwrap_or(ElapsedUnit::Seconds).in_s(),
        };
        if let (Kind::Clock, Some(last_s)) = (kind, self.last_s)
            && last_s - time_s > NEXT_DAY_S
        {
            self.passed_s += day_s();
            time_s += day_s();
        }
        if self.last_s.is_some_and(|last_s| time_s <= last_s) {
            return Stamped::NotLater;
        }
        self.last_s = Some(time_s);
        self.first.get_or_insert(moment);
        Stamped::At(time_s)
    }
}

#[expect(clippy::cast_precision_loss, reason = "86 400")]
const fn day_s() -> f64 {
    DAY_S as f64
}

/// Whether a cell is a date without a time.
pub(super) fn is_date(cell: &str) -> bool {
    let (date, rest) = date_part(cell);
    rest.is_empty() && day(date, false).or_else(|| day(date, true)).is_some()
}

/// Whether a cell is a clock time, a date or both.
pub(super) fn is_moment(cell: &str) -> bool {
    clock(cell).is_some()
        || is_date(cell)
        || dated(cell, false).or_else(|| dated(cell, true)).is_some()
}

fn moment(
    date: Option<&str>,
    cell: &str,
    month_first: bool,
    numbers: &mut Numbers,
) -> Option<Moment> {
    if let Some(date) = date {
        let day = day(date, month_first)?;
        return clock(cell).map(|(second, ahead_s)| Moment::Dated(day, second, ahead_s));
    }
    if let Some((second, _)) = clock(cell) {
        return Some(Moment::Clock(second));
    }
    if let Some(number) = numbers.plain(cell) {
        return Some(Moment::Elapsed(number));
    }
    dated(cell, month_first)
}

/// A date and a time in one cell, parted by a `T` or a blank.
fn dated(cell: &str, month_first: bool) -> Option<Moment> {
    let (date, rest) = date_part(cell);
    let (second, ahead_s) = clock(rest)?;
    day(date, month_first).map(|day| Moment::Dated(day, second, ahead_s))
}

fn date_part(cell: &str) -> (&str, &str) {
    let cell = cell.trim();
    let end = cell.find(['T', ' ']).unwrap_or(cell.len());
    let (date, rest) = cell.split_at(end);
    (date, rest.trim_start_matches(['T', ' ']))
}

/// The two numbers of `a/b/year`.
fn slashed(date: &str) -> Option<[u32; 2]> {
    let mut parts = date.split('/').map(|part| part.parse().ok());
    let (first, second, year) = (parts.next()??, parts.next()??, parts.next()??);
    (parts.next().is_none() && year >= 1900_u32).then_some([first, second])
}

/// `2026-11-25`, `2026/11/25`, `25.11.2026`, `25/11/2026` or, month first, `11/25/2026`.
fn day(date: &str, month_first: bool) -> Option<Day> {
    let mark = ['-', '/', '.']
        .into_iter()
        .find(|mark| date.contains(*mark))?;
    let mut parts = date.split(mark);
    let parts: [&str; 3] = [parts.next()?, parts.next()?, parts.next()?];
    let number = |part: &str| -> Option<u32> {
        (1..=4)
            .contains(&part.len())
            .then(|| part.parse().ok())
            .flatten()
    };
    let [a, b, c] = [number(parts[0])?, number(parts[1])?, number(parts[2])?];
    let (year, month, day) = match (parts[0].len() == 4, mark) {
        (true, _) => (a, b, c),
        (false, '/') if month_first && parts[2].len() == 4 => (c, a, b),
        (false, '/' | '.') if parts[2].len() == 4 => (c, b, a),
        _ => return None,
    };
    Day::from_ymd(i32::try_from(year).ok()?, month, day)
}

/// Seconds since midnight and, where a zone is given, how far it is ahead of UTC, s.
///
/// `18:05`, `18:05:30`, `18:05:30.5`, with a comma for the point, `6:05 pm`, and after ISO 8601
/// `Z`, `+03:00`, `+0300` or `+03` behind it.
fn clock(cell: &str) -> Option<(f64, f64)> {
    let cell = cell.trim();
    if !cell.as_bytes().first()?.is_ascii_digit() {
        return None;
    }
    let (cell, half) = match cell.char_indices().rev().nth(1) {
        Some((at, _)) if cell[at..].eq_ignore_ascii_case("am") => {
            (cell[..at].trim_end(), Some(0.0))
        }
        Some((at, _)) if cell[at..].eq_ignore_ascii_case("pm") => {
            (cell[..at].trim_end(), Some(12.0))
        }
        _ => (cell, None),
    };
    let (cell, ahead_s) = match cell.find(['Z', '+', '-']) {
        Some(at) => (&cell[..at], zone_s(&cell[at..])?),
        None => (cell, 0.0),
    };
    let mut parts = cell.split(':');
    let hour: f64 = whole(parts.next()?)?;
    let minute: f64 = whole(parts.next()?)?;
    let second = match parts.next() {
        Some(part) => seconds(part)?,
        None => 0.0,
    };
    let hour = match half {
        Some(half) if (1.0..=12.0).contains(&hour) => hour % 12.0 + half,
        Some(_) => return None,
        None => hour,
    };
    let inside = hour < 24.0 && minute < 60.0 && second < 61.0 && parts.next().is_none();
    inside.then_some((3600.0 * hour + 60.0 * minute + second, ahead_s))
}

/// One or two digits.
fn whole(part: &str) -> Option<f64> {
    let digits = (1..=2).contains(&part.len()) && part.bytes().all(|byte| byte.is_ascii_digit());
    digits.then(|| part.parse().ok()).flatten()
}

fn seconds(part: &str) -> Option<f64> {
    match part.find(['.', ',']) {
        Some(at) => {
            let share = &part[at + 1..];
            let digits = !share.is_empty() && share.bytes().all(|byte| byte.is_ascii_digit());
            let share: f64 = digits
                .then(|| format!("0.{share}").parse().ok())
                .flatten()?;
            Some(whole(&part[..at])? + share)
        }
        None => whole(part),
    }
}

fn zone_s(zone: &str) -> Option<f64> {
    if zone == "Z" {
        return Some(0.0);
    }
    let sign = if zone.starts_with('-') { -1.0 } else { 1.0 };
    let digits = zone.get(1..)?;
    let (hour, minute) = match digits.split_once(':') {
        Some(parts) => parts,
        None if digits.len() == 4 => digits.split_at_checked(2)?,
        None => (digits, "0"),
    };
    Some(sign * (3600.0 * whole(hour)? + 60.0 * whole(minute)?))
}
