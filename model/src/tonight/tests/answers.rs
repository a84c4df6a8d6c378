//! What an answer may not say: each of these was once said to a cook.

use super::*;
use crate::dish::HOLD_HOT_C;
use crate::tonight::{Answer, Offers};

/// A pot that was put in at this time, as an event.
fn put_in_at(at: LocalTime, meal: Meal) -> Event {
    Event {
        at,
        what: What::Meal(meal),
    }
}

fn after_clear_days_and(event: Event) -> Journal {
    Journal {
        events: vec![event],
        ..under(Sky::Clear)
    }
}

/// Rice for four that goes in at 18:00, after rice for four that came out at `out`; and the latest
/// time for it.
fn after_a_pot_that_came_out(out: LocalTime) -> (Answer, LocalTime) {
    let before = Meal {
        out: Some(out),
        ..meal(Dish::WhiteRice, 4.0)
    };
    let journal = after_clear_days_and(put_in_at(clock(16, 0), before));
    let rice = meal(Dish::WhiteRice, 4.0);
    let evening = evening(&journal);
    let latest = evening.latest_put_in(&rice).unwrap().as_told.unwrap();
    (evening.ask(&rice, clock(18, 0)).unwrap(), latest)
}

/// A pot that came out after the whole minute that is asked from is out all the same.
#[test]
fn a_pot_that_came_out_seconds_ago_is_not_in() {
    let (just_now, latest) = after_a_pot_that_came_out(clock(17, 0).plus_s(20));
    let (before, latest_before) = after_a_pot_that_came_out(clock(16, 59));
    let put_in = clock(18, 0);
    let between = |point: &&crate::tonight::Point| clock(17, 1) < point.at && point.at < put_in;
    assert!(just_now.as_told.points.iter().any(|point| between(&point)));
    for point in just_now.as_told.points.iter().filter(between) {
        assert_eq!(point.pot_c, None, "{point:?}");
    }
    assert_eq!(just_now.verdict, before.verdict);
    let hottest = |answer: &Answer| answer.as_told.hottest_c;
    assert!((hottest(&just_now) - hottest(&before)).abs() < 0.5);
    let ready_at = |answer: &Answer| answer.as_told.ready_at.unwrap();
    for (one, other) in [
        (ready_at(&just_now), ready_at(&before)),
        (latest, latest_before),
    ] {
        let apart_s = one.since_s(other);
        assert!(apart_s.abs() <= 120, "{apart_s} s");
    }
}

/// What the pot before boiled and cooked is not the next one's.
#[test]
fn the_latest_time_leaves_time_to_cook() {
    for out in [clock(17, 0).plus_s(20), clock(17, 30)] {
        let (answer, latest) = after_a_pot_that_came_out(out);
        let told = &answer.as_told;
        assert!(clock(18, 0) < told.boils_at.unwrap());
        let takes_s = told.ready_at.unwrap().since_s(clock(18, 0));
        let left_s = clock(19, 30).since_s(latest);
        // A store that has cooled for longer does not cook faster.
        assert!(takes_s - 300 <= left_s, "{takes_s} s against {left_s} s");
    }
}

/// The plot and the account go as far as the advice to leave the pot in.
#[test]
fn the_pot_stays_in_until_the_meal() {
    let evening = evening(&under(Sky::Patchy));
    let rice = meal(Dish::WhiteRice, 6.0);
    let told = evening.ask(&rice, clock(18, 0)).unwrap().as_told;
    assert!(told.ready_at.unwrap() < clock(19, 0));
    assert_eq!(told.out_at, rice.eat_at);
    let last = told.points.iter().rfind(|point| point.pot_c.is_some());
    assert!(rice.eat_at.since_s(last.unwrap().at) <= 120);
}

/// Food that warms and never cooks stands as long as food that cools.
#[test]
fn rice_that_only_gets_lukewarm_spoils_undone_and_nobody_is_advised_to_leave_it() {
    let evening = evening(&under(Sky::Grey));
    let large = Meal {
        eat_at: clock(24 + 12, 0),
        ..meal(Dish::WhiteRice, 12.0)
    };
    let told = evening.ask(&large, clock(19, 0)).unwrap().as_told;
    assert!(!told.is_ready_by(large.eat_at), "{told:?}");
    assert!((35.0..95.0).contains(&told.hottest_c), "{}", told.hottest_c);
    assert!(told.is_spoilt_by(large.eat_at));
    assert!(evening.spoils(&large, clock(19, 0)).unwrap());
    let tonight = Meal {
        eat_at: clock(21, 0),
        ..large.clone()
    };
    assert!(!evening.spoils(&tonight, clock(19, 0)).unwrap());
    for help in evening.help(&large, clock(19, 0)).unwrap().helps {
        assert!(!matches!(help, Help::EarlierIn { .. }), "{help:?}");
    }
}

/// FDA Food Code, 3-501.19: out of temperature control for four hours at most.
#[test]
fn rice_that_is_left_in_overnight_spoils_and_rice_for_tonight_does_not() {
    let evening = evening(&under(Sky::Patchy));
    let tonight = meal(Dish::WhiteRice, 6.0);
    let told = evening.ask(&tonight, clock(18, 0)).unwrap().as_told;
    assert_eq!(told.spoils_at, None);
    let tomorrow = Meal {
        eat_at: clock(24 + 16, 0),
        ..tonight
    };
    let told = evening.ask(&tomorrow, clock(18, 0)).unwrap().as_told;
    assert!(told.ready_at.is_some(), "{told:?}");
    let spoils_at = told.spoils_at.unwrap();
    let cold = told.points.iter().filter(|point| {
        told.ready_at.unwrap() < point.at
            && point.at < spoils_at
            && point.pot_c.is_some_and(|pot_c| pot_c < HOLD_HOT_C.value)
    });
    // Points lie two minutes apart.
    let cold_h = cold.count() as f64 / 30.0;
    assert!((cold_h - 4.0).abs() < 0.2, "{cold_h} h");
    let tea = Meal {
        dish: Dish::TeaWater,
        ..tomorrow
    };
    assert_eq!(
        evening.ask(&tea, clock(18, 0)).unwrap().as_told.spoils_at,
        None
    );
}

/// Beans that boil though it was not reckoned with, as seen at `boiled_at`.
fn beans_seen_to_boil(boiled_at: LocalTime) -> Meal {
    Meal {
        outcome: Outcome {
            boiled_at: Some(boiled_at),
            ..Outcome::default()
        },
        eat_at: clock(22, 0),
        ..meal(Dish::CommonBeansSoaked, 4.0)
    }
}

#[test]
fn what_boils_in_the_minute_it_goes_in_boils() {
    let evening = evening(&under(Sky::Grey));
    let put_in = clock(17, 0);
    let answer = evening.ask(&beans_seen_to_boil(put_in), put_in).unwrap();
    assert!(answer.as_told.boils_at.unwrap().since_s(put_in) <= 1);
}

#[test]
fn what_was_seen_to_boil_boils() {
    let evening = evening(&under(Sky::Grey));
    let unseen = Meal {
        outcome: Outcome::default(),
        ..beans_seen_to_boil(clock(18, 0))
    };
    let put_in = clock(17, 0);
    assert_eq!(evening.ask(&unseen, put_in).unwrap().as_told.boils_at, None);
    let boiled_at = clock(18, 31);
    let answer = evening.ask(&beans_seen_to_boil(boiled_at), put_in).unwrap();
    let boiling_c = evening.rig().boiling_c().unwrap();
    for forecast in [&answer.as_told, &answer.against, &answer.in_favour] {
        assert_eq!(forecast.boils_at, Some(boiled_at));
        assert!(
            (forecast.hottest_c - boiling_c).abs() < 0.1,
            "{}",
            forecast.hottest_c
        );
    }
    let after = answer
        .as_told
        .points
        .iter()
        .find(|point| boiled_at <= point.at)
        .unwrap();
    assert!((after.pot_c.unwrap() - boiling_c).abs() < 0.5, "{after:?}");
    assert!(boiling_c < after.store_c, "{after:?}");
    let account = answer.as_told.account;
    let gap = (account.came_j() - account.went_j()).abs();
    assert!(gap < 1e-3 * account.came_j(), "{account:?}");
}

/// A pot that boiled later than was reckoned has not cooked at the boil before.
#[test]
fn what_boils_late_is_done_late() {
    let evening = evening(&under(Sky::Patchy));
    let put_in = clock(18, 0);
    let mut rice = meal(Dish::WhiteRice, 6.0);
    let reckoned = evening.ask(&rice, put_in).unwrap().as_told;
    let late_s = 40 * 60;
    let boiled_at = reckoned.boils_at.unwrap().plus_s(late_s);
    rice.outcome.boiled_at = Some(boiled_at);
    let told = evening.ask(&rice, put_in).unwrap().as_told;
    assert_eq!(told.boils_at, Some(boiled_at));
    let moved_s = told.ready_at.unwrap().since_s(reckoned.ready_at.unwrap());
    assert!((moved_s - late_s).abs() < 600, "{moved_s} s");
}

/// The store of now follows what was seen of the pot that is in it.
#[test]
fn the_store_that_boils_a_pot_is_hotter_than_the_boil() {
    let now = clock(18, 40);
    let store_c = |beans: Meal| {
        let journal = Journal {
            events: vec![put_in_at(clock(17, 0), beans)],
            ..under(Sky::Grey)
        };
        let evening = Evening::new(&site(), &cooker(), &journal, now, now).unwrap();
        (
            evening.store().unwrap().store_c,
            evening.rig().boiling_c().unwrap(),
        )
    };
    let mut unseen = beans_seen_to_boil(clock(18, 31));
    let (seen_c, boiling_c) = store_c(unseen.clone());
    unseen.outcome = Outcome::default();
    let (unseen_c, _) = store_c(unseen);
    assert!(
        unseen_c < boiling_c && boiling_c - 1.0 < seen_c,
        "{unseen_c} {seen_c}"
    );
}

/// Without a diary the sky is anybody's guess, and the answer must not be a flat no, nor a yes.
#[test]
fn nothing_is_sure_of_a_sky_that_nobody_saw() {
    let store = |journal: &Journal| evening(journal).store().unwrap();
    let (low_c, high_c) = store(&Journal::default()).band_c;
    let clear = store(&under(Sky::Clear)).store_c;
    assert!(clear - 30.0 < high_c, "{clear} {high_c}");
    assert!(low_c < store(&under(Sky::Patchy)).store_c - 30.0, "{low_c}");

    // Of tomorrow's sky nobody knows either.
    let evening = evening(&under(Sky::Clear));
    let rice = Meal {
        eat_at: clock(24 + 19, 30),
        ..meal(Dish::WhiteRice, 6.0)
    };
    let answer = evening.ask(&rice, clock(24 + 18, 0)).unwrap();
    assert!(answer.against.store_after_c + 20.0 < answer.in_favour.store_after_c);
}

#[test]
fn the_hours_to_come_may_turn_out_either_way() {
    let now = clock(11, 0);
    let mut hours = [None; 24];
    for sky in &mut hours[..11] {
        *sky = Some(Sky::Patchy);
    }
    let mut journal = under(Sky::Patchy);
    journal.skies.insert(today(), DayLog::Hourly(hours));
    let evening = Evening::new(&site(), &cooker(), &journal, now, now).unwrap();
    let rice = meal(Dish::WhiteRice, 4.0);
    let band_c = |evening: &Evening| {
        let answer = evening.ask(&rice, clock(18, 0)).unwrap();
        let [low, high] = [&answer.against, &answer.in_favour].map(|it| {
            it.points
                .first()
                .map_or(it.store_after_c, |point| point.store_c)
        });
        high - low
    };
    let told = super::evening(&under(Sky::Patchy));
    assert!(band_c(&told) < band_c(&evening));
}

/// Where nothing makes it sure, what makes it likelier is offered all the same.
#[test]
fn what_makes_it_likelier_is_offered_where_nothing_makes_it_sure() {
    let mut n_likelier = 0;
    for sky in [Sky::Patchy, Sky::Grey] {
        let evening = evening(&under(sky));
        for (dish, put_in) in [
            (Dish::WhiteRice, clock(19, 0)),
            (Dish::Lentils, clock(18, 45)),
            (Dish::CommonBeansSoaked, clock(18, 0)),
            (Dish::CommonBeansSoaked, clock(17, 15)),
        ] {
            for people in [3.0, 6.0] {
                let meal = meal(dish, people);
                let before = evening.ask(&meal, put_in).unwrap().verdict;
                let Offers { reach, helps } = evening.help(&meal, put_in).unwrap();
                for help in &helps {
                    let (changed, at) = changed(&meal, put_in, *help);
                    let after = evening.ask(&changed, at).unwrap().verdict;
                    assert!(
                        reach <= after && before < reach,
                        "{before:?} {help:?} {after:?}"
                    );
                }
                n_likelier += usize::from(reach < Verdict::Yes && !helps.is_empty());
            }
        }
    }
    assert!(0 < n_likelier);
}

/// Times are told to the minute, so a pot may go in and come out at the same time.
#[test]
fn a_pot_that_came_out_at_once_is_out() {
    let at_once = Meal {
        out: Some(clock(16, 59)),
        ..meal(Dish::WhiteRice, 4.0)
    };
    let journal = after_clear_days_and(put_in_at(clock(16, 59), at_once));
    assert!(!evening(&journal).store().unwrap().pot_is_in);
}
