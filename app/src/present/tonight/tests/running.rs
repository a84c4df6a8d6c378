//! A meal that is in the cooker.

use super::*;
use crate::chart::Mark;
use crate::present::tonight::course::banded;
use crate::present::tonight::running::{RunningView, after_danger, after_heading, open};
use model::journal::Meal;
use model::odds::{Band, CourseBand, Odds};

/// A meal of an evening asked about at `now`, after `seen` was told of it.
fn view_at(mut told: Told, now: LocalTime, seen: Outcome) -> RunningView {
    told.question.meal.outcome = seen;
    let (meal, put_in) = (&told.question.meal, told.question.put_in);
    let answer = told.evening.ask(meal, put_in).unwrap();
    saying(Language::English, now, |voice| {
        running(voice, &told.question, Some(&answer), None)
    })
}

/// Rice that went in at 18:30.
fn clock_at(now: LocalTime, seen: Outcome) -> ClockView {
    let told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    view_at(told, now, seen).clock.unwrap()
}

#[test]
fn the_clock_of_a_meal_follows_what_is_seen() {
    let told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    let (boils_at, ready_at) = (
        told.answer.as_told.boils_at.unwrap(),
        told.answer.as_told.ready_at.unwrap(),
    );
    let waits = clock_at(clock(18, 31), Outcome::default());
    assert!(waits.headline.starts_with("Boils about"), "{waits:?}");
    assert!(waits.left.starts_with("in ") && 0.0 < waits.done && waits.done < 1.0);
    let late = clock_at(boils_at.plus_s(60), Outcome::default());
    assert_eq!(
        (late.headline.as_str(), late.done),
        ("Should boil by now", 1.0)
    );
    let boiled = Outcome {
        boiled_at: Some(boils_at.plus_s(60)),
        ..Outcome::default()
    };
    let cooks = clock_at(boils_at.plus_s(120), boiled);
    let near = [0, 60, 120].map(|late_s| {
        let at = ready_at.plus_s(late_s);
        in_english(|voice| format!("Done {}", voice.about(at, Sure::Near)))
    });
    assert!(near.contains(&cooks.headline), "{cooks:?} {near:?}");
    let done = Outcome {
        done_at: Some(ready_at.plus_s(600)),
        ..boiled
    };
    assert_eq!(clock_at(ready_at.plus_s(660), done).headline, "Done");
}

#[test]
fn a_meal_is_over_once_it_is_out_or_forgotten() {
    let mut meal = told(Sky::Clear, plan(Dish::WhiteRice, 4)).question.meal;
    assert!(!is_over(&meal, clock(19, 40)));
    assert!(is_over(&meal, clock(21, 30)));
    meal.out = Some(clock(19, 10));
    assert!(is_over(&meal, clock(19, 10)));
}

#[test]
fn nothing_is_asked_that_was_told() {
    let mut meal = told(Sky::Clear, plan(Dish::WhiteRice, 4)).question.meal;
    let heading = |meal: &Meal| in_english(|voice| after_heading(voice, meal));
    assert!(open(&meal).has_more(), "the boil, and that it is done");
    meal.outcome.boiled_at = Some(clock(18, 50));
    assert!(open(&meal).has_more(), "that it is not done yet");
    meal.outcome.done_at = Some(clock(19, 20));
    assert!(!open(&meal).has_more(), "the main button asks what is left");
    assert_eq!(heading(&meal), "How did it go: white rice?");
    meal.out = Some(clock(19, 25));
    assert_eq!(heading(&meal), "How it went: white rice");
}

/// Beans in a store that does not boil them.
fn cold_beans() -> Told {
    told(Sky::Grey, plan(Dish::CommonBeansSoaked, 4))
}

#[test]
fn beans_that_do_not_boil_are_a_danger_while_they_are_in_and_after() {
    let told = cold_beans();
    let put_in = told.question.put_in;
    let now = put_in.plus_s(3600);
    let view = view_at(told, now, Outcome::default());
    let danger = view.danger.unwrap();
    assert_eq!(danger.level, CautionLevel::Danger);
    assert!(danger.text.contains("30\u{A0}min"), "{}", danger.text);
    assert!(
        !view.lines.iter().any(|line| line.contains("stay in")),
        "{:?}",
        view.lines
    );
    assert!(view.clock.unwrap().headline.starts_with("Does not boil"));

    let mut meal = cold_beans().question.meal;
    meal.out = Some(now);
    let after = |meal: &Meal| in_english(|voice| after_danger(voice, meal));
    assert!(after(&meal).is_some());
    meal.outcome.boiled_at = Some(now.plus_s(-1200));
    assert!(after(&meal).is_some(), "twenty minutes are too few");
    meal.outcome.boiled_at = Some(now.plus_s(-1800));
    assert_eq!(after(&meal), None);
    meal.dish = Dish::WhiteRice;
    meal.outcome.boiled_at = None;
    assert_eq!(after(&meal), None);
}

#[test]
fn the_wait_of_what_is_not_done_in_time_goes_by() {
    let put_in = cold_beans().question.put_in;
    let gone = |after_s| {
        let view = view_at(cold_beans(), put_in.plus_s(after_s), Outcome::default());
        view.clock.unwrap().done
    };
    assert!(gone(0) < 0.01 && gone(600) < gone(1800) && gone(1800) < 1.0);
}

#[test]
fn nothing_can_stay_in_until_an_hour_that_is_past() {
    let told = told(Sky::Thin, plan(Dish::WhiteRice, 6));
    let late = told.question.meal.eat_at.plus_s(20 * 60);
    let view = view_at(told, late, Outcome::default());
    assert!(
        view.lines
            .iter()
            .any(|line| line == "It was to be eaten at 19:30."),
        "{:?}",
        view.lines
    );
    assert!(!view.lines.iter().any(|line| line.contains("can stay")));
}

fn one(value: f64) -> Band<f64> {
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

fn odds(p_boil: f64, p_done: f64, boils_at: Option<LocalTime>) -> Odds {
    let band = |at: Option<LocalTime>| Band {
        p05: at,
        p10: at,
        p25: at,
        p50: at,
        p75: at,
        p90: at.map(|at| at.plus_s(2400)),
        p95: at,
    };
    Odds {
        p_boil,
        p_done,
        boils_at: band(boils_at),
        ready_at: band(boils_at.map(|at| at.plus_s(900))),
        boiled_away_kg: one(0.0),
        p_dry: 0.0,
        store_before_c: one(180.0),
        store_after_c: one(120.0),
    }
}

/// What is said of a running meal by its odds, all of it.
fn said_by_odds(told: &Told, odds: &Odds) -> (ClockView, Vec<String>) {
    let (meal, put_in) = (&told.question.meal, told.question.put_in);
    let answer = told.evening.ask(meal, put_in).unwrap();
    let now = put_in.plus_s(300);
    let view = saying(Language::English, now, |voice| {
        running(voice, &told.question, Some(&answer), Some(odds))
    });
    let plain = |line: &String| line.replace('\u{A0}', " ");
    let said = view.sure.iter().chain(&view.lines);
    (view.clock.unwrap(), said.map(plain).collect())
}

#[test]
fn nothing_is_drawn_of_the_past_of_a_pot_that_is_in() {
    let mut told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    let now = told.question.put_in.plus_s(1800);
    let places: Vec<CourseBand> = (0..5)
        .map(|n| CourseBand {
            at: now.plus_s(600 * n),
            store_c: one(220.0),
            pot_c: Some(one(90.0)),
        })
        .collect();
    let drawn = |question: &Question| {
        saying(Language::English, now, |voice| {
            banded(voice, question, &odds(0.9, 0.9, None), &places).unwrap()
        })
    };
    told.question.is_in = true;
    let view = drawn(&told.question);
    for series in &view.series {
        let drawn: Vec<bool> = series.points.iter().map(|it| it.1.is_finite()).collect();
        assert_eq!(drawn, [false, true, true, true, true, true]);
    }
    let (begins, _) = view.series[0].points[1];
    let is_now = |mark: &Mark| mark.label == "now 19:00" && (mark.at - begins).abs() < 1e-9;
    assert!(view.moments.iter().any(is_now), "{:?}", view.moments);
    assert!(view.sentence.contains("before now is not drawn"));
    // A pot that is planned has no past to leave out.
    told.question.is_in = false;
    let view = drawn(&told.question);
    let mut points = view.series.iter().flat_map(|series| &series.points);
    assert!(points.all(|(_, celsius)| celsius.is_finite()));
    assert!(!view.sentence.contains("not drawn"));
}

#[test]
fn where_there_are_odds_they_alone_speak() {
    // The plain forecast of these beans never boils, whatever the odds say.
    let told = cold_beans();
    let put_in = told.question.put_in;
    let (clock, lines) = said_by_odds(&told, &odds(0.3, 0.3, None));
    assert_eq!(clock.headline, "Unlikely to boil");
    assert_eq!(clock.left.replace('\u{A0}', " "), "unlikely, 3 in 10");
    assert!(lines.iter().any(|line| line.contains("unlikely, 3 in 10")));
    let (clock, lines) = said_by_odds(&told, &odds(0.97, 0.9, Some(put_in.plus_s(2700))));
    assert_eq!(clock.headline, "Will boil");
    assert!(clock.left.ends_with("in 40\u{A0}min"), "{clock:?}");
    for said in ["Between ", "Boils by ", "Ready by "] {
        assert!(lines.iter().any(|line| line.starts_with(said)), "{lines:?}");
    }
    let (clock, lines) = said_by_odds(&told, &odds(0.02, 0.02, None));
    assert_eq!(clock.headline, "Will not boil");
    assert!(
        lines.iter().all(|line| !line.contains("stay in")),
        "{lines:?}"
    );
}

#[test]
fn once_it_boils_the_food_is_waited_for() {
    let mut told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    let boiled_at = told.question.put_in.plus_s(240);
    told.question.meal.outcome.boiled_at = Some(boiled_at);
    let (clock, lines) = said_by_odds(&told, &odds(0.98, 0.85, Some(boiled_at)));
    assert_eq!(clock.headline, "Should be done");
    assert!(
        lines.iter().all(|line| !line.starts_with("Boils by")),
        "{lines:?}"
    );
}
