//! The sun of a day, hour by hour or as a number of hours.

use std::ops::Range;

use model::local_time::{Day, LocalTime};
use model::place::Place;
use model::sun::{DayLog, Daylight, Sky, SolarDay};

use crate::components::{Sky as Drawn, SunHour};
use crate::i18n::format::LocaleFormat;
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

/// The hours that a word for the whole day is about: those that have begun, or all of them where
/// none has.
pub fn told_at_once(daylight: &Range<usize>, day: Day, now: LocalTime) -> Range<usize> {
    let begun = daylight.start..daylight.end.min(now.hour() + 1);
    if day == now.day() && !begun.is_empty() {
        begun
    } else {
        daylight.clone()
    }
}

/// The log once all these hours were the same; what was told of the others stays.
pub fn all_day(log: Option<&DayLog>, sky: Sky, hours: &Range<usize>) -> DayLog {
    let mut skies = skies_of(log);
    for told in skies.iter_mut().take(hours.end).skip(hours.start) {
        *told = Some(sky);
    }
    DayLog::Hourly(skies)
}

/// What the log becomes when all that is left of the day is like an hour; none where it is already,
/// or nothing was told of the hour.
pub fn onward(log: Option<&DayLog>, hour: usize, daylight: &Range<usize>) -> Option<(Sky, DayLog)> {
    let sky = skies_of(log).get(hour).copied().flatten()?;
    let rest = hour..daylight.end;
    (daylight.contains(&hour) && !is_all_day(log, sky, &rest))
        .then(|| (sky, all_day(log, sky, &rest)))
}

/// The same in words, for the button that does it.
pub fn onward_words(voice: &Voice<'_>, hour: usize, sky: Sky) -> String {
    (voice.strings.diary.onward)(
        &clock(&voice.formats.locale, hour),
        (voice.strings.tables.sky)(sky),
    )
}

/// Whether the log says that it was so in all these hours.
pub fn is_all_day(log: Option<&DayLog>, sky: Sky, hours: &Range<usize>) -> bool {
    let skies = skies_of(log);
    !hours.is_empty()
        && hours
            .clone()
            .all(|hour| skies.get(hour).copied().flatten() == Some(sky))
}

/// Whether a log takes the place of one that a tap does not bring back, so that the way back is
/// worth offering; `is_one_hour` where one hour was tapped.
pub fn is_worth_undoing(
    before: Option<&DayLog>,
    after: Option<&DayLog>,
    is_one_hour: bool,
) -> bool {
    match (before, after) {
        (Some(DayLog::SunHours(_)), Some(DayLog::Hourly(_)))
        | (Some(DayLog::Hourly(_)), Some(DayLog::SunHours(_))) => true,
        (Some(DayLog::Hourly(before)), Some(DayLog::Hourly(after))) => {
            let n_changed = before
                .iter()
                .zip(after)
                .filter(|(before, after)| before.is_some() && before != after)
                .count();
            usize::from(is_one_hour) < n_changed
        }
        _ => false,
    }
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
        let locale = &voice.formats.locale;
        SunHour {
            label: locale.hour(hour),
            half: locale.half(hour).to_owned(),
            spoken: (words.hour)(&clock(locale, hour), &clock(locale, hour + 1), name),
            sky: drawn(sky),
            now: is_now(voice.now, day, hour),
        }
    };
    daylight.clone().map(cell).collect()
}

fn clock(locale: &LocaleFormat, hour: usize) -> String {
    let hour = u32::try_from(hour).map_or(0.0, f64::from);
    locale.clock(hour * 3600.0)
}

fn is_now(now: LocalTime, day: Day, hour: usize) -> bool {
    now.day() == day && now.hour() == hour
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::present::tests::english;
    use crate::state::action::{Action, apply};
    use crate::state::document::{Document, Whose};
    use crate::state::saved::{Layout, decode, encode};

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
        let log = all_day(None, Sky::Clear, &daylight);
        assert!(is_all_day(Some(&log), Sky::Clear, &daylight));
        assert!(!is_all_day(Some(&log), Sky::Grey, &daylight));
        assert_eq!(skies_of(Some(&log))[5], None);
        assert!(!is_all_day(Some(&log), Sky::Clear, &(0..0)));
    }

    #[test]
    fn a_grey_afternoon_is_one_tap_once_its_first_hour_is_told() {
        let daylight = 6..18;
        let morning = all_day(None, Sky::Clear, &(6..12));
        let mut log = Some(morning);
        for _ in 0..4 {
            log = tapped(log.as_ref(), 12, &daylight);
        }
        let (sky, all) = onward(log.as_ref(), 12, &daylight).unwrap();
        assert_eq!(sky, Sky::Grey);
        let skies = skies_of(Some(&all));
        assert_eq!((skies[11], skies[12]), (Some(Sky::Clear), Some(Sky::Grey)));
        assert_eq!((skies[17], skies[18]), (Some(Sky::Grey), None));
        assert_eq!(onward(Some(&all), 12, &daylight), None, "once is enough");
        assert_eq!(onward(Some(&all), 17, &daylight), None, "no hour is left");
        assert_eq!(onward(Some(&all), 20, &daylight), None, "at night");
        assert_eq!(onward(None, 12, &daylight), None, "nothing told");
    }

    #[test]
    fn a_clock_of_twelve_hours_says_which_half_of_the_day_it_is() {
        let (strings, mut formats) = english();
        let halves = |formats: &crate::i18n::format::Formats| -> Vec<String> {
            let voice = Voice {
                strings,
                formats,
                now: DAY.start(),
            };
            let cells = cells(&voice, None, DAY, &(11..14)).into_iter();
            cells
                .map(|cell| format!("{}{}", cell.label, cell.half))
                .collect()
        };
        assert_eq!(halves(&formats), ["11", "12", "13"]);
        formats.locale.clock = crate::i18n::format::ClockStyle::Hours12 {
            am: "am".to_owned(),
            pm: "pm".to_owned(),
        };
        assert_eq!(halves(&formats), ["11am", "12pm", "1pm"]);
    }

    #[test]
    fn what_more_than_a_tap_went_into_can_be_had_back() {
        let hours = DayLog::SunHours(7.5);
        let clear = all_day(None, Sky::Clear, &(6..18));
        let grey = all_day(None, Sky::Grey, &(6..18));
        let one = tapped(Some(&clear), 9, &(6..18)).unwrap();
        assert!(is_worth_undoing(Some(&hours), Some(&clear), false));
        assert!(is_worth_undoing(Some(&clear), Some(&hours), false));
        assert!(is_worth_undoing(Some(&clear), Some(&grey), false));
        assert!(!is_worth_undoing(Some(&clear), Some(&one), true));
        assert!(
            is_worth_undoing(Some(&clear), Some(&one), false),
            "by a word for the day"
        );
        assert!(!is_worth_undoing(
            Some(&hours),
            Some(&DayLog::SunHours(8.0)),
            false
        ));
        assert!(!is_worth_undoing(None, Some(&clear), false));
    }

    fn any_sky() -> impl Strategy<Value = Option<Sky>> {
        proptest::option::of((0..Sky::ALL.len()).prop_map(|place| Sky::ALL[place]))
    }

    /// The hours of a made-up hill town at 11 degrees north, and how long its day is.
    fn hill_town(day: Day) -> (Range<usize>, f64) {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1900.0,
            utc_offset_min: 180,
        };
        let daylight = hours_of(Daylight::of(&place, day).unwrap(), day);
        (daylight, possible_h(&place, day).unwrap())
    }

    fn kept(log: DayLog, day: Day, possible_h: f64) -> DayLog {
        let mut document = Document::new(Whose::Own);
        let now = day.at_s(80_000);
        let action = Action::SetSky {
            day,
            log,
            possible_h,
        };
        apply(&mut document, action, now).unwrap();
        let text = encode(&document, now, Layout::Compact).unwrap();
        decode(&text).unwrap().document.skies[&day]
    }

    proptest! {
        #[test]
        fn any_hours_that_were_tapped_survive(
            skies in proptest::collection::vec(any_sky(), 24), day in 19_000..21_000_i32,
        ) {
            let (strings, formats) = english();
            let day = Day(day);
            let voice = Voice { strings, formats: &formats, now: day.at_s(80_000) };
            let (daylight, possible_h) = hill_town(day);
            // Each hour is tapped as often as its sky is down the list.
            let mut log = None;
            for (hour, sky) in skies.iter().enumerate().filter(|(hour, _)| daylight.contains(hour)) {
                let n_taps = sky.map_or(0, |sky| {
                    1 + Sky::ALL.iter().position(|other| *other == sky).unwrap()
                });
                for _ in 0..n_taps {
                    log = tapped(log.as_ref(), hour, &daylight);
                }
            }
            let before = cells(&voice, log.as_ref(), day, &daylight);
            prop_assert_eq!(before.len(), daylight.len());
            for (cell, hour) in before.iter().zip(daylight.clone()) {
                prop_assert_eq!(cell.sky, drawn(skies[hour]));
            }
            if let Some(log) = log {
                let log = kept(log, day, possible_h);
                prop_assert_eq!(cells(&voice, Some(&log), day, &daylight), before);
            }
        }

        #[test]
        fn any_number_of_hours_the_day_has_survives(share in 0.0..=1.0_f64, day in 19_000..21_000_i32) {
            let day = Day(day);
            let (_, possible_h) = hill_town(day);
            let hours = (10.0 * share * possible_h).round() / 10.0;
            let log = DayLog::SunHours(hours);
            prop_assert_eq!(kept(log, day, possible_h), log);
        }
    }
}
