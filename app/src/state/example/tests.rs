//! The example is valid, the same all day long, and worth looking at.

use super::*;
use crate::state::example::today::{Phase, due, phase, span_of};
use model::journal::{Meal, What};
use model::tonight::{Evening, Site, Verdict};

fn day() -> Day {
    Day::from_ymd(2026, 11, 25).unwrap()
}

fn at(hour: i64) -> LocalTime {
    day().at_s(3600 * hour)
}

fn site() -> Site {
    Site {
        place: PLACE,
        air: AIR,
    }
}

/// What the plan means at `now`.
fn planned(document: &Document, now: LocalTime) -> (LocalTime, Meal) {
    let plan = document.plan.as_ref().unwrap();
    let pot = document.cooker_in_use().unwrap().cooker.pot;
    (plan.put_in_at(now), plan.meal(pot, 20.0, now))
}

fn evening(document: &Document, id: CookerId, now: LocalTime) -> Evening {
    let owned = document.cooker(id).unwrap();
    Evening::new(&site(), &owned.cooker, &document.journal(id), now, now).unwrap()
}

#[test]
fn nothing_of_it_is_refused_on_any_day_of_the_year() {
    for n_days in (0..366).step_by(29) {
        let today = day().plus(n_days);
        let mut document = Document::new(Whose::Example);
        for (at, action) in story(today) {
            let told = format!("{action:?}");
            apply(&mut document, action, at).unwrap_or_else(|refused| panic!("{told}: {refused}"));
        }
        assert_eq!(document, example_document(today.at_s(86_399)));
    }
}

#[test]
fn it_holds_what_it_is_meant_to_show() {
    let document = example_document(at(23));
    assert_eq!(document.household.as_ref().unwrap().people, 5);
    assert_eq!(document.cookers.len(), 2);
    assert_eq!(document.cooker_in_use().unwrap().name, "Rufo");
    assert_eq!(document.days(), Some((day().plus(-DAYS_BACK), day())));
    assert_eq!(document.skies.len(), 13, "one day is missing");
    let n_of = |is: fn(&What) -> bool| {
        document
            .entries
            .iter()
            .filter(|entry| is(&entry.what))
            .count()
    };
    assert_eq!(n_of(|what| matches!(what, What::LidOpen { .. })), 1);
    assert!(3 <= n_of(|what| matches!(what, What::Reading { .. })));
    assert!(8 <= n_of(|what| matches!(what, What::Meal(_))));
    assert_eq!(document.running, None);
}

#[test]
fn it_says_nothing_of_what_has_not_happened_yet() {
    let morning = example_document(at(9));
    assert_eq!(
        morning.skies.get(&day()),
        example_document(at(9).plus_s(3599)).skies.get(&day())
    );
    let Some(DayLog::Hourly(skies)) = morning.skies.get(&day()) else {
        panic!("today is told by the hour")
    };
    assert_eq!(skies.iter().flatten().count(), 4);
    assert_eq!(example_document(at(5)).skies.get(&day()), None);
    assert!(morning.entries.iter().all(|entry| entry.at <= at(9)));
}

#[test]
fn a_device_whose_clock_is_decades_off_still_gets_a_household() {
    for now in [LocalTime(0), LocalTime(6_000_000_000)] {
        let document = example_document(now);
        assert_eq!(document.cookers.len(), 2);
        assert!(document.household.is_some());
    }
}

#[test]
fn the_plan_should_work_out_at_most_hours() {
    let mut n_good = 0;
    for hour in 0..24 {
        let now = at(hour).plus_s(60);
        let document = example_document(now);
        let (put_in, meal) = planned(&document, now);
        let answer = evening(&document, RUFO, now).ask(&meal, put_in).unwrap();
        n_good += i32::from(Verdict::Likely <= answer.verdict);
    }
    assert!(20 <= n_good, "{n_good} of 24 hours");
}

/// What the household noted of its pots is what such a cooker does, by the model's three leanings.
#[test]
fn its_pots_behave() {
    for n_days in [0, 120, 240] {
        let document = example_document(day().plus(n_days).at_s(86_399));
        for entry in &document.entries {
            let What::Meal(told) = &entry.what else {
                continue;
            };
            let owned = document.cooker(entry.cooker).unwrap();
            let mut journal = document.journal(entry.cooker);
            journal.events.retain(|event| event.at < entry.at);
            let evening =
                Evening::new(&site(), &owned.cooker, &journal, entry.at, entry.at).unwrap();
            let asked = Meal {
                out: None,
                eat_at: entry.at.plus_s(4 * 3600),
                ..told.clone()
            };
            let answer = evening.ask(&asked, entry.at).unwrap();
            let what = format!("{:?} on {:?}: {answer:?}", told.dish, entry.at.day().ymd());
            match told.outcome.boiled_at {
                Some(boiled_at) => {
                    let soonest = answer.in_favour.boils_at.expect(&what);
                    assert!(-600 <= boiled_at.since_s(soonest), "{what}");
                    let last = answer.against.boils_at.unwrap_or(boiled_at);
                    assert!(boiled_at.since_s(last) <= 900, "{what}");
                }
                None => assert_eq!(answer.as_told.boils_at, None, "{what}"),
            }
        }
    }
}

#[test]
fn an_example_of_another_day_is_stale_and_so_is_one_that_knows_the_future() {
    let document = example_document(at(13));
    assert!(!is_stale(&document, at(13)));
    assert!(!is_stale(&document, at(18)));
    assert!(is_stale(&document, at(9)));
    assert!(is_stale(&document, at(13).plus_s(86_400)));
    let night = example_document(at(3));
    assert!(!is_stale(&night, at(4)));
    assert!(is_stale(&night, at(7)));
}

#[test]
fn the_day_runs_from_first_light_to_the_meal() {
    let (from, until) = span_of(day());
    let mut document = example_document(from);
    let mut phases = vec![phase(&document, from)];
    let mut now = from;
    while now < until {
        let next = now.plus_s(900);
        for action in due(&document, now, next) {
            let told = format!("{action:?}");
            apply(&mut document, action, next).unwrap_or_else(|error| panic!("{told}: {error}"));
        }
        now = next;
        let reached = phase(&document, now);
        if phases.last() != Some(&reached) {
            phases.push(reached);
        }
    }
    assert_eq!(phases.first(), Some(&Phase::Sun(Sky::Thin)));
    assert!(
        phases.ends_with(&[Phase::PotIn, Phase::Boils, Phase::Done]),
        "{phases:?}"
    );
    assert_eq!(
        document.skies.get(&day()),
        example_document(until).skies.get(&day())
    );
    let What::Meal(meal) = &document.entries.last().unwrap().what else {
        panic!("the meal comes last")
    };
    assert!(meal.outcome.boiled_at < meal.outcome.done_at);
    assert!(meal.out.unwrap() <= meal.eat_at.plus_s(60));
}

#[test]
fn long_steps_do_as_much_as_short_ones() {
    let (from, until) = span_of(day());
    let run = |step_s| {
        let mut document = example_document(from);
        let mut now = from;
        while now < until {
            let next = now.plus_s(step_s).min(until);
            for action in due(&document, now, next) {
                apply(&mut document, action, next).unwrap();
            }
            now = next;
        }
        document
    };
    assert_eq!(run(900).entries, run(3600).entries);
}
