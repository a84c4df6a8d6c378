//! A diary as it stood at an instant.

use model::journal::{Event, Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::place::Place;
use model::sun::{DayLog, SolarDay};

/// What had been told before `now`.
pub(crate) fn before(journal: &Journal, now: LocalTime, place: &Place) -> Journal {
    let today = now.day();
    let skies = journal
        .skies
        .iter()
        .filter(|(day, _)| **day <= today)
        .filter_map(|(day, log)| {
            let log = if *day == today {
                so_far(log, now, place)
            } else {
                Some(*log)
            };
            Some((*day, log?))
        });
    let events = journal.events.iter().filter(|event| event.at < now);
    Journal {
        skies: skies.collect(),
        events: events
            .map(|event| Event {
                at: event.at,
                what: match &event.what {
                    What::Meal(meal) => What::Meal(seen(meal, now)),
                    what => what.clone(),
                },
            })
            .collect(),
        formerly: journal.formerly.clone(),
    }
}

/// Today's sky up to the hour that runs. Hours of sun are known once the sun has set.
fn so_far(log: &DayLog, now: LocalTime, place: &Place) -> Option<DayLog> {
    match log {
        DayLog::SunHours(hours) => {
            (sunset(now.day(), place) <= now).then_some(DayLog::SunHours(*hours))
        }
        DayLog::Hourly(skies) => {
            let mut skies = *skies;
            for sky in skies.iter_mut().skip(now.hour() + 1) {
                *sky = None;
            }
            Some(DayLog::Hourly(skies))
        }
    }
}

/// When the sun sets, to some minutes: half a day's light after the sun's noon.
fn sunset(day: Day, place: &Place) -> LocalTime {
    let daylight_h =
        SolarDay::new(place.latitude_deg, day.of_year()).map_or(12.0, |solar| solar.daylight_h);
    let noon_h = 12.0 + f64::from(place.utc_offset_min) / 60.0 - place.longitude_deg / 15.0;
    let set_h = noon_h + 0.5 * daylight_h;
    #[expect(clippy::cast_possible_truncation, reason = "a time of the day")]
    let seconds = (set_h * 3600.0).round() as i64;
    day.at_s(seconds)
}

/// A meal with what had been seen of it.
fn seen(meal: &Meal, now: LocalTime) -> Meal {
    let known = |at: Option<LocalTime>| at.filter(|at| *at < now);
    Meal {
        out: known(meal.out),
        outcome: Outcome {
            boiled_at: known(meal.outcome.boiled_at),
            not_boiled_by: known(meal.outcome.not_boiled_by),
            done_at: known(meal.outcome.done_at),
            not_done_by: known(meal.outcome.not_done_by),
        },
        ..meal.clone()
    }
}
