//! Words that were told for a stretch of hours at once.
//!
//! Who looks up once in a morning and gives one word for it has seen an hour or two; the sky of the
//! others is known by those, not told. A diary shows which it is: a sky that is looked at every hour
//! changes within three hours now and then, one that is told by the stretch never does.

use std::collections::BTreeMap;

use crate::local_time::Day;
use crate::sun::{DayLog, Sky};

/// How many days back a diary is looked through for it.
const LOOK_BACK_DAYS: i32 = 30;
/// A word for fewer hours running is one for each of them.
const SHORTEST: usize = 3;

type Told = [Option<Sky>; 24];

/// First hours and lengths of the stretches of one word.
fn stretches(told: &Told) -> Vec<(usize, usize)> {
    let mut stretches: Vec<(usize, usize)> = Vec::new();
    for (hour, sky) in told.iter().enumerate() {
        if sky.is_none() {
            continue;
        }
        match stretches.last_mut() {
            Some((first, length)) if *first + *length == hour && told[*first] == *sky => {
                *length += 1;
            }
            _ => stretches.push((hour, 1)),
        }
    }
    stretches
}

/// Whether the hours of a day were told by the stretch, by that day and those before it, `first` the
/// earliest that is looked at.
fn are_told_by_stretch(skies: &BTreeMap<Day, DayLog>, (first, day): (Day, Day)) -> bool {
    let from = day.plus(-LOOK_BACK_DAYS).max(first).min(day);
    skies.range(from..=day).all(|(_, log)| match log {
        DayLog::SunHours(_) => true,
        DayLog::Hourly(told) => {
            let all = stretches(told);
            all.iter().all(|(_, length)| SHORTEST <= *length)
        }
    })
}

/// The hours of a day that were looked at: all that were told, or the middle half of each stretch;
/// and whether it was told by the stretch.
pub(super) fn looked_at(
    skies: &BTreeMap<Day, DayLog>,
    told: &Told,
    (first, day): (Day, Day),
) -> (Told, bool) {
    if !are_told_by_stretch(skies, (first, day)) {
        return (*told, false);
    }
    let mut seen = [None; 24];
    for (first, length) in stretches(told) {
        let end = length / 4;
        let middle = first + end..first + length - end;
        seen[middle.clone()].copy_from_slice(&told[middle]);
    }
    (seen, true)
}

#[cfg(test)]
mod tests {
    use super::*;

    const TODAY: Day = Day(20_500);

    fn told(words: &[(std::ops::Range<usize>, Sky)]) -> Told {
        let mut told = [None; 24];
        for (hours, sky) in words {
            told[hours.clone()].fill(Some(*sky));
        }
        told
    }

    fn seen(today: Told, before: &[Told]) -> (Told, bool) {
        let days = (1..).map(|back| TODAY.plus(-back));
        let mut skies: BTreeMap<Day, DayLog> = days
            .zip(before.iter().copied().map(DayLog::Hourly))
            .collect();
        skies.insert(TODAY, DayLog::Hourly(today));
        looked_at(&skies, &today, (Day(0), TODAY))
    }

    #[test]
    fn a_word_for_a_morning_is_one_look() {
        let today = told(&[(6..10, Sky::Clear), (10..14, Sky::Patchy)]);
        let (hours, by_stretch) = seen(today, &[]);
        assert!(by_stretch);
        let expected = told(&[(7..9, Sky::Clear), (11..13, Sky::Patchy)]);
        assert_eq!(hours, expected);
    }

    #[test]
    fn one_hour_of_its_own_shows_who_looks_every_hour() {
        let today = told(&[(6..10, Sky::Clear)]);
        let before = told(&[(6..9, Sky::Clear), (9..10, Sky::Thin), (10..14, Sky::Clear)]);
        assert_eq!(seen(today, &[before]), (today, false));
        // An hour that was left out ends a stretch as well, and what is long ago does not count.
        let gap = told(&[(6..8, Sky::Clear), (9..14, Sky::Clear)]);
        assert_eq!(seen(gap, &[]), (gap, false));
        let mut old = vec![[None; 24]; 30];
        old.push(before);
        assert!(seen(today, &old).1);
    }

    #[test]
    fn nothing_told_is_nothing_seen() {
        assert_eq!(seen([None; 24], &[]).0, [None; 24]);
    }
}
