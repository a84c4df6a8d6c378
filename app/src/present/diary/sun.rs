//! The sun of a day, hour by hour or as a number of hours.

use std::ops::Range;

use model::local_time::{Day, LocalTime};
use model::place::Place;
use model::sun::{DayLog, Daylight, Sky, SolarDay};

use crate::components::{Sky as Drawn, SunHour};
use crate::i18n::strings::Strings;
use crate::present::tonight::Voice;
use crate::present::typed::Steps;

/// Sun in an hour that is worth a cell of its own. [s]
const WORTH_S: i64 = 20 * 60;

/// How the number of hours is stepped.
pub const SUN_HOUR_STEPS: Steps = Steps {
    by: 0.5,
    range: (0.0, 24.0),
    start: 6.0,
};

/// The hours of the clock in which the sun is up for a good part.
pub fn hours_of(daylight: Daylight, day: Day) -> Range<usize> {
    match daylight {
        Daylight::AllDay => 0..24,
        Daylight::NotAtAll => 0..0,
        Daylight::Between { rises, sets } => {
            let start = day.start();
            let place = |since_s: i64| usize::try_from(since_s / 3600).unwrap_or(0).min(24);
            // The first hour with enough sun left after it rises, and the last with enough before.
            let first = place(rises.since_s(start) + WORTH_S);
            let end = place(sets.since_s(start) - WORTH_S) + 1;
            first..end.min(24).max(first)
        }
    }
}

/// How long the sun can shine on a day, as the model counts it. \[h\]
pub fn possible_h(place: &Place, day: Day) -> Option<f64> {
    SolarDay::new(place.latitude_deg, day.of_year())
        .ok()
        .map(|day| day.daylight_h)
}

/// What the hour becomes at a tap.
pub fn next_sky(sky: Option<Sky>) -> Option<Sky> {
    match sky {
        None => Sky::ALL.first().copied(),
        Some(sky) => {
            let place = Sky::ALL.iter().position(|other| *other == sky)?;
            Sky::ALL.get(place + 1).copied()
        }
    }
}

/// The skies of the hours of a log; none where it is not by the hour.
pub fn skies_of(log: Option<&DayLog>) -> [Option<Sky>; 24] {
    match log {
        Some(DayLog::Hourly(skies)) => *skies,
        Some(DayLog::SunHours(_)) | None => [None; 24],
    }
}

/// The log after a tap on an hour; none where no hour of daylight is told any more.
pub fn tapped(log: Option<&DayLog>, hour: usize, daylight: &Range<usize>) -> Option<DayLog> {
    let mut skies = skies_of(log);
    if let Some(sky) = skies.get_mut(hour) {
        *sky = next_sky(*sky);
    }
    let is_told = skies
        .iter()
        .enumerate()
        .any(|(hour, sky)| daylight.contains(&hour) && sky.is_some());
    is_told.then_some(DayLog::Hourly(skies))
}

/// The log of a day that was the same all day.
pub fn all_day(sky: Sky, daylight: &Range<usize>) -> DayLog {
    let mut skies = [None; 24];
    for hour in daylight.clone() {
        if let Some(told) = skies.get_mut(hour) {
            *told = Some(sky);
        }
    }
    DayLog::Hourly(skies)
}

/// Whether the log says that it was so all day.
pub fn is_all_day(log: Option<&DayLog>, sky: Sky, daylight: &Range<usize>) -> bool {
    let skies = skies_of(log);
    !daylight.is_empty()
        && daylight
            .clone()
            .all(|hour| skies.get(hour).copied().flatten() == Some(sky))
}

/// How a sky is drawn.
pub fn drawn(sky: Option<Sky>) -> Drawn {
    match sky {
        None => Drawn::Unset,
        Some(Sky::Clear) => Drawn::Clear,
        Some(Sky::Thin) => Drawn::Haze,
        Some(Sky::Patchy) => Drawn::Broken,
        Some(Sky::Grey) => Drawn::Overcast,
        Some(Sky::Dark) => Drawn::Rain,
    }
}

/// The skies with their names, in the order of tapping.
pub fn key(strings: &Strings) -> Vec<(Drawn, String)> {
    let named = Sky::ALL.map(|sky| (drawn(Some(sky)), (strings.tables.sky)(sky).to_owned()));
    let mut key = vec![(Drawn::Unset, strings.diary.untold.to_owned())];
    key.extend(named);
    key
}

/// The cells of the hours of daylight.
pub fn cells(
    voice: &Voice<'_>,
    log: Option<&DayLog>,
    day: Day,
    daylight: &Range<usize>,
) -> Vec<SunHour> {
    let words = &voice.strings.diary;
    let skies = skies_of(log);
    let cell = |hour: usize| {
        let sky = skies.get(hour).copied().flatten();
        let name = sky.map_or(words.untold, voice.strings.tables.sky);
        SunHour {
            label: hour.to_string(),
            spoken: (words.hour)(&hour.to_string(), &(hour + 1).to_string(), name),
            sky: drawn(sky),
            now: is_now(voice.now, day, hour),
        }
    };
    daylight.clone().map(cell).collect()
}

fn is_now(now: LocalTime, day: Day, hour: usize) -> bool {
    now.day() == day && now.hour() == hour
}

/// What the day comes to; `heat_j` is what reaches the heater. \[J\]
pub fn comes_to(voice: &Voice<'_>, log: Option<&DayLog>, heat_j: Option<f64>) -> String {
    let words = &voice.strings.diary;
    let energy = heat_j.map(|heat_j| voice.formats.energy(heat_j));
    let Some(log) = log else {
        return energy.map_or_else(
            || words.nothing_told_plain.to_owned(),
            |energy| (words.nothing_told)(&energy),
        );
    };
    let mut said = Vec::new();
    if let DayLog::SunHours(hours) = log {
        said.push((words.told_hours)(&voice.formats.sun_hours(*hours)));
    }
    said.extend(energy.map(|energy| (words.comes_to)(&energy)));
    said.join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::tests::english;

    const DAY: Day = Day(20_000);

    fn between(rises: (i64, i64), sets: (i64, i64)) -> Range<usize> {
        let at = |(hour, minute)| DAY.at_s(hour * 3600 + minute * 60);
        let (rises, sets) = (at(rises), at(sets));
        hours_of(Daylight::Between { rises, sets }, DAY)
    }

    #[test]
    fn hours_with_hardly_any_sun_are_left_out() {
        assert_eq!(between((6, 10), (18, 30)), 6..19);
        assert_eq!(between((5, 50), (18, 10)), 6..18);
        assert_eq!(between((0, 0), (24, 0)), 0..24);
        assert_eq!(hours_of(Daylight::NotAtAll, DAY), 0..0);
        assert_eq!(between((11, 50), (12, 5)), 12..12);
    }

    #[test]
    fn a_tap_goes_through_all_skies_and_back() {
        let mut sky = None;
        let mut seen = Vec::new();
        for _ in 0..6 {
            sky = next_sky(sky);
            seen.push(sky);
        }
        let mut expected: Vec<_> = Sky::ALL.into_iter().map(Some).collect();
        expected.push(None);
        assert_eq!(seen, expected);
    }

    #[test]
    fn the_last_hour_taken_back_leaves_nothing_told() {
        let daylight = 6..18;
        let once = tapped(None, 9, &daylight).unwrap();
        assert_eq!(skies_of(Some(&once))[9], Some(Sky::Clear));
        let mut dark = [None; 24];
        dark[9] = Some(Sky::Dark);
        assert_eq!(tapped(Some(&DayLog::Hourly(dark)), 9, &daylight), None);
    }

    #[test]
    fn a_sunny_day_is_one_tap() {
        let daylight = 6..18;
        let log = all_day(Sky::Clear, &daylight);
        assert!(is_all_day(Some(&log), Sky::Clear, &daylight));
        assert!(!is_all_day(Some(&log), Sky::Grey, &daylight));
        assert_eq!(skies_of(Some(&log))[5], None);
        assert!(!is_all_day(Some(&log), Sky::Clear, &(0..0)));
    }

    #[test]
    fn what_it_comes_to_is_said() {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: DAY.at_s(0),
        };
        let say = |log: Option<DayLog>| {
            comes_to(&voice, log.as_ref(), Some(1.5e6)).replace('\u{A0}', " ")
        };
        assert_eq!(
            say(Some(DayLog::SunHours(7.0))),
            "Noted as 7 h of sun in the day. This comes to about 0.4 kWh into the store."
        );
        assert!(say(None).starts_with("Nothing noted yet."));
        assert_eq!(
            comes_to(&voice, None, None),
            strings.diary.nothing_told_plain
        );
    }
}
