//! What the sun of a day comes to, and what of it the store takes.

use std::ops::Range;

use model::local_time::{Day, LocalTime};
use model::sun::DayLog;

use crate::i18n::format::Sure;
use crate::present::tonight::Voice;

/// What the day comes to; `heat_j` is what reaches the heater. \[J\]
pub fn comes_to(
    voice: &Voice<'_>,
    log: Option<&DayLog>,
    heat_j: Option<f64>,
    untold: Untold,
) -> String {
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
    let comes_to = if untold.to_come {
        words.comes_to_if_it_stays
    } else {
        words.comes_to
    };
    said.extend(energy.map(|energy| comes_to(&energy)));
    if untold.gone_by {
        said.push(words.like_the_told.to_owned());
    }
    said.join(" ")
}

/// What of the heat that a day can give the store takes; none of it known where the day is long past.
/// \[J\]
pub fn room(
    voice: &Voice<'_>,
    day: Day,
    came_j: f64,
    taken_j: Option<f64>,
    cutout_c: f64,
) -> String {
    let words = &voice.strings.diary;
    let is_over = day < voice.now.day();
    let full_at = (words.full_at)(&voice.formats.temperature(cutout_c, Sure::Known));
    let Some(taken_j) = taken_j else {
        return full_at;
    };
    let [came, taken] = [came_j, taken_j].map(|joules| voice.formats.energy(joules));
    if came == taken {
        let all = if is_over {
            words.took_all
        } else {
            words.has_room_for_all
        };
        return all.to_owned();
    }
    let some = if is_over { words.took } else { words.has_room };
    format!("{} {full_at}", some(&taken))
}

/// Which hours of sun of a day that was logged by the hour were not told.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Untold {
    /// Some that are still to come: the last sky stands for them.
    pub to_come: bool,
    /// Some that have gone by: the hours that were told stand for them.
    pub gone_by: bool,
}

/// The hours of a log of which nothing was told.
pub fn untold(log: Option<&DayLog>, day: Day, daylight: &Range<usize>, now: LocalTime) -> Untold {
    let Some(DayLog::Hourly(skies)) = log else {
        return Untold::default();
    };
    let is_untold = |hour: &usize| skies.get(*hour).copied().flatten().is_none();
    let is_to_come = |hour: usize| day == now.day() && now.hour() < hour;
    let mut untold = Untold::default();
    for hour in daylight.clone().filter(is_untold) {
        if is_to_come(hour) {
            untold.to_come = true;
        } else {
            untold.gone_by = true;
        }
    }
    untold
}

#[cfg(test)]
mod tests {
    use model::sun::Sky;

    use super::*;
    use crate::present::diary::sun::{all_day, skies_of, tapped, told_at_once};
    use crate::present::tests::english;

    const DAY: Day = Day(20_000);

    #[test]
    fn a_day_that_is_not_over_is_told_as_far_as_it_has_come() {
        let daylight = 6..18;
        let at = |hour: i64| DAY.at_s(hour * 3600);
        assert_eq!(told_at_once(&daylight, DAY, at(10)), 6..11);
        assert_eq!(told_at_once(&daylight, DAY, at(20)), 6..18);
        assert_eq!(told_at_once(&daylight, DAY, at(5)), 6..18);
        assert_eq!(told_at_once(&daylight, DAY.plus(-1), at(10)), 6..18);
        let rain = all_day(None, Sky::Dark, &(15..18));
        let log = all_day(Some(&rain), Sky::Clear, &(6..11));
        let skies = skies_of(Some(&log));
        assert_eq!(
            (skies[10], skies[12], skies[16]),
            (Some(Sky::Clear), None, Some(Sky::Dark))
        );
        let untold_at = |day, hour| {
            let untold = untold(Some(&log), day, &daylight, at(hour));
            (untold.to_come, untold.gone_by)
        };
        assert_eq!(untold_at(DAY, 10), (true, false));
        assert_eq!(untold_at(DAY, 13), (true, true));
        assert_eq!(untold_at(DAY, 15), (false, true));
        assert_eq!(untold_at(DAY.plus(-1), 10), (false, true));
        let by_number = DayLog::SunHours(5.0);
        assert_eq!(
            untold(Some(&by_number), DAY, &daylight, at(10)),
            Untold::default()
        );
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
            comes_to(&voice, log.as_ref(), Some(1.5e6), Untold::default()).replace('\u{A0}', " ")
        };
        assert_eq!(
            say(Some(DayLog::SunHours(7.0))),
            "Noted as 7 h with sharp shadows. This can give about 0.4 kWh to the store."
        );
        assert!(say(None).starts_with("Nothing noted yet."));
        let one_hour = tapped(None, 9, &(6..18));
        let gaps = untold(one_hour.as_ref(), DAY, &(6..18), DAY.at_s(18 * 3600));
        assert!(
            comes_to(&voice, one_hour.as_ref(), Some(1.5e6), gaps)
                .ends_with(strings.diary.like_the_told)
        );
        assert_eq!(
            comes_to(&voice, None, None, Untold::default()),
            strings.diary.nothing_told_plain
        );
    }

    #[test]
    fn what_the_store_takes_stands_beside_what_came() {
        let (strings, formats) = english();
        let voice = Voice {
            strings,
            formats: &formats,
            now: DAY.at_s(18 * 3600),
        };
        let say =
            |day: Day, taken_j| room(&voice, day, 7.2e6, taken_j, 280.0).replace('\u{A0}', " ");
        let full = "At 280 °C the store is full and takes no more.";
        let before = DAY.plus(-1);
        let some = format!("The store took about 1.0 kWh of it. {full}");
        assert_eq!(say(before, Some(3.6e6)), some);
        assert_eq!(say(before, Some(7.15e6)), "The store took all of it.");
        let some = format!("The store has room for about 1.0 kWh of it. {full}");
        assert_eq!(say(DAY, Some(3.6e6)), some);
        assert_eq!(say(DAY, Some(7.2e6)), "The store has room for all of it.");
        assert_eq!(say(DAY.plus(-40), None), full);
    }
}
