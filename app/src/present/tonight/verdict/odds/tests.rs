//! What is said follows from the odds alone.

use super::*;
use crate::present::tests::english;
use crate::state::plan::Plan;
use crate::state::sample::pot;

fn odds(p_boil: f64, p_done: f64, p_dry: f64, boils: bool) -> Odds {
    let band = |value| Band {
        p05: value,
        p10: value,
        p25: value,
        p50: value,
        p75: value,
        p90: value,
        p95: value,
    };
    let at = Some(LocalTime(70_000));
    Odds {
        p_boil,
        p_done,
        boils_at: band(at.filter(|_| boils)),
        ready_at: band(at),
        boiled_away_kg: band_of(0.0),
        p_dry,
        store_before_c: band_of(180.0),
        store_after_c: band_of(120.0),
    }
}

fn band_of(value: f64) -> Band<f64> {
    Band {
        p05: value,
        p10: value,
        p25: value,
        p50: value,
        p75: value,
        p90: value,
        p95: value,
    }
}

fn question() -> Question {
    let now = LocalTime(60_000);
    Question {
        meal: Plan::start(2, now).meal(pot(), 18.0, now),
        put_in: now,
        is_in: false,
        boiling_c: 95.0,
        store_sure: Sure::Near,
        sky_is_logged: true,
        lacks_sun: false,
    }
}

#[test]
fn the_tone_follows_the_scale_of_words() {
    for (p, tone) in [
        (1.0, VerdictTone::Sure),
        (0.95, VerdictTone::Sure),
        (0.94, VerdictTone::Likely),
        (0.6, VerdictTone::Likely),
        (0.59, VerdictTone::Doubtful),
        (0.2, VerdictTone::Doubtful),
        (0.19, VerdictTone::No),
        (0.0, VerdictTone::No),
    ] {
        assert_eq!(Judged::of(&odds(1.0, p, 0.0, true)).tone, tone, "{p}");
    }
}

#[test]
fn the_headline_says_what_the_word_beside_it_says() {
    let (strings, formats) = english();
    let voice = Voice {
        strings,
        formats: &formats,
        now: LocalTime(60_000),
    };
    let say = |p_boil, p_done, boils| {
        let judged = Judged::of(&odds(p_boil, p_done, 0.0, boils));
        (
            headline(&voice, judged),
            crate::present::odds::word(strings, judged.chance),
        )
    };
    assert_eq!(say(0.5, 0.5, true), ("May boil", "may go either way"));
    assert_eq!(say(0.3, 0.3, true), ("Unlikely to boil", "unlikely"));
    assert_eq!(say(0.95, 0.5, true), ("May be done", "may go either way"));
    assert_eq!(say(0.95, 0.3, true), ("Unlikely to be done", "unlikely"));
    assert_eq!(say(0.1, 0.1, false), ("Will not boil", "very unlikely"));
}

#[test]
fn no_sentence_puts_after_the_meal_what_a_time_below_puts_before() {
    let mut question = question();
    let (strings, formats) = english();
    let voice = Voice {
        strings,
        formats: &formats,
        now: LocalTime(60_000),
    };
    // Boils and is done at 70 000 s, in the middle of what may be; eaten before or after.
    for (p_boil, p_done) in [
        (0.5, 0.5),
        (0.95, 0.5),
        (0.55, 0.19),
        (0.3, 0.3),
        (0.95, 0.3),
    ] {
        for eat_at in [LocalTime(69_000), LocalTime(71_000)] {
            question.meal.eat_at = eat_at;
            let odds = odds(p_boil, p_done, 0.0, true);
            let said = sentence(&voice, &question, &odds, Judged::of(&odds));
            let is_after = said.contains("only after 19:") || said.contains("yet");
            assert_eq!(is_after, eat_at < LocalTime(70_000), "{said}");
        }
    }
}

#[test]
fn what_goes_wrong_is_what_goes_wrong_most() {
    let wrong =
        |p_boil, p_done, p_dry, boils| Judged::of(&odds(p_boil, p_done, p_dry, boils)).wrong;
    assert_eq!(wrong(0.1, 0.1, 0.0, false), Wrong::Cold);
    assert_eq!(wrong(0.1, 0.1, 0.0, true), Wrong::Late);
    assert_eq!(wrong(0.95, 0.3, 0.0, true), Wrong::NotDone);
    assert_eq!(wrong(0.95, 0.3, 0.6, true), Wrong::Dry);
}

#[test]
fn it_is_said_by_when_the_pot_must_go_in_whatever_the_odds() {
    let (strings, formats) = english();
    let at = |hour: i64, minute: i64| LocalTime(3600 * hour + 60 * minute);
    let voice = Voice {
        strings,
        formats: &formats,
        now: at(17, 28),
    };
    let say = |p_done, latest| {
        let odds = odds(p_done, p_done, 0.0, true);
        by_when(&voice, at(18, 0), &odds, latest).replace('\u{A0}', " ")
    };
    // As the figures are told: 0.87 is nine in ten.
    for good in [0.97, 0.9, 0.87] {
        let later = say(good, Some(at(18, 33)));
        assert_eq!(later, "at the latest 18:30, for 9 in 10");
        for latest in [Some(at(18, 4)), Some(at(17, 40)), None] {
            assert_eq!(say(good, latest), "no later, for 9 in 10");
        }
    }
    for poor in [0.84, 0.3, 0.01] {
        let earlier = say(poor, Some(at(17, 44)));
        assert_eq!(earlier, "better by 17:40: 9 in 10 then");
        let at_once = say(poor, Some(at(17, 29)));
        assert_eq!(at_once, "better by 17:28: 9 in 10 then");
        assert_eq!(say(poor, None), "hardly 9 in 10 at any time");
    }
}

#[test]
fn what_is_done_without_boiling_is_not_told_to_boil() {
    assert!(!Judged::of(&odds(0.4, 0.97, 0.0, false)).boils);
    assert!(Judged::of(&odds(0.99, 0.97, 0.0, true)).boils);
    // Nor is one that has a time to boil told not to.
    for has_time in [false, true] {
        let odds = odds(0.4, 0.97, 0.0, has_time);
        let is_below = is_done_below(&odds, Judged::of(&odds));
        assert_eq!(is_below, odds.boils_at.p50.is_none());
        assert_eq!(is_below, !has_time);
    }
}

#[test]
fn a_pot_does_not_boil_as_it_goes_in_and_one_time_stands_everywhere() {
    let (strings, formats) = english();
    let at = |hour: i64, minute: i64| LocalTime(3600 * hour + 60 * minute);
    let voice = Voice {
        strings,
        formats: &formats,
        now: at(17, 0),
    };
    let mut question = question();
    (question.put_in, question.meal.eat_at) = (at(18, 30), at(19, 30));
    let mut odds = odds(0.97, 0.97, 0.0, true);
    let boils = Band {
        p10: Some(at(18, 31)),
        p50: Some(at(18, 33)),
        p90: Some(at(19, 20)),
        ..odds.boils_at
    };
    (odds.boils_at, odds.ready_at) = (boils, boils);
    let said = happens(&voice, &question, boils, false).unwrap();
    assert_eq!(said.0, "about 18:35");
    assert_eq!(said.1, "between 18:35 and 19:15");
    // And where the sentence says it: a boil that is late.
    question.meal.eat_at = at(18, 32);
    odds.p_boil = 0.1;
    odds.p_done = 0.1;
    let said = sentence(&voice, &question, &odds, Judged::of(&odds));
    let (figure, _) = happens(&voice, &question, boils, false).unwrap();
    assert!(said.contains(&figure), "{said} {figure}");
}
