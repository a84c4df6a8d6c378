//! What no answer may say: each of these was once said to a cook.

use super::*;
use crate::components::Fact;

fn in_all_cases(mut check: impl FnMut(Dish, Sky, &Told, &VerdictView)) {
    for sky in Sky::ALL {
        for dish in Dish::ALL {
            for people in [1, 3, 8] {
                let told = told(sky, plan(dish, people));
                let view = verdict_of(&told);
                check(dish, sky, &told, &view);
            }
        }
    }
}

fn fact<'a>(view: &'a VerdictView, label: &str) -> Option<&'a Fact> {
    view.facts.iter().find(|fact| fact.label == label)
}

#[test]
fn what_is_said_not_to_boil_has_no_time_to_boil() {
    in_all_cases(|dish, sky, _, view| {
        let boils = fact(view, "Boils");
        let is_hoped_for = view.sentence.ends_with("If all goes well, the pot boils.");
        let is_cold = view.headline == "Will not boil"
            || view.sentence.contains("without boiling") && !is_hoped_for;
        assert!(!(is_cold && boils.is_some()), "{dish:?} {sky:?} {view:?}");
        // A temperature below the boil goes with a time only where that is hoped for.
        if (view.sentence.contains("Water boils here") || is_hoped_for)
            && let Some(boils) = boils
        {
            assert!(boils.value.ends_with("at the earliest"), "{view:?}");
            assert_eq!(view.headline, "May boil", "{view:?}");
            assert!(view.sentence.ends_with("If all goes well, the pot boils."));
        }
    });
}

#[test]
fn beans_that_do_not_boil_are_said_not_to_boil() {
    let mut n_seen = 0;
    in_all_cases(|dish, sky, told, view| {
        let is_no = told.answer.verdict == Verdict::No;
        if dish.needs_full_boil() && is_no && told.answer.as_told.boils_at.is_none() {
            assert_eq!(view.headline, "Will not boil", "{dish:?} {sky:?}");
            assert_eq!(fact(view, "Done"), None, "{dish:?} {sky:?} {view:?}");
            n_seen += 1;
        }
    });
    assert!(10 < n_seen);
}

#[test]
fn what_does_not_work_is_not_told_to_be_done() {
    in_all_cases(|dish, sky, told, view| {
        let is_no = told.answer.verdict == Verdict::No;
        assert_eq!(fact(view, "Put it in").is_none(), is_no, "{dish:?} {sky:?}");
        let put_in = view.facts.first().unwrap();
        assert!(
            !is_no || put_in.detail.is_empty(),
            "{dish:?} {sky:?} {view:?}"
        );
    });
}

/// With nothing logged the store may be anything, and a flat no would be a lie.
#[test]
fn an_unknown_sun_is_told_and_is_no_flat_no() {
    let now = clock(NOW.0, NOW.1);
    let cooker = cooker();
    let evening = evening_on(&cooker, &Journal::default(), now);
    let rice = plan(Dish::WhiteRice, 4);
    let mut question = told(Sky::Clear, rice.clone()).question;
    question.sky_is_logged = false;
    question.lacks_sun = true;
    let answer = evening.ask(&question.meal, question.put_in).unwrap();
    assert!(Verdict::No < answer.verdict && answer.verdict < Verdict::Yes);
    let view = in_english(|voice| verdict(voice, &question, &answer, None));
    assert!(
        view.sentence
            .starts_with("Today\u{2019}s sun is not logged yet."),
        "{view:?}"
    );
    assert!(
        ["only after a clear day", "if sun and clouds take turns"].contains(&view.figure.as_str()),
        "{view:?}"
    );
}

/// Rice for 22 hours in a cooling cooker.
#[test]
fn a_meal_that_is_left_in_overnight_is_a_caution_with_days() {
    let mut plan = plan(Dish::WhiteRice, 8);
    plan.put_in = None;
    plan.eat = TimeOfDay::at(16, 0);
    let view = verdict_of(&told(Sky::Thin, plan));
    assert_eq!(view.tone, VerdictTone::No, "{view:?}");
    assert_eq!(view.headline, "Don\u{2019}t leave it in", "{view:?}");
    assert!(view.figure.is_empty());
    assert!(view.sentence.contains("60\u{A0}°C"), "{view:?}");
    let out = fact(&view, "Take it out").unwrap();
    assert!(out.value.ends_with("or it spoils"), "{out:?}");
    assert_eq!(view.facts.first().unwrap().detail, "");
}

#[test]
fn each_time_that_is_not_todays_has_its_day() {
    let mut plan = plan(Dish::WhiteRice, 6);
    // In an hour that is past, so tomorrow's.
    plan.put_in = Some(TimeOfDay::at(9, 0));
    plan.eat = TimeOfDay::at(10, 30);
    let told = told(Sky::Clear, plan);
    assert_eq!(told.question.put_in.day(), today().plus(1));
    let view = verdict_of(&told);
    assert!(view.sentence.contains("tomorrow"), "{view:?}");
    for fact in &view.facts {
        let said = format!("{} {}", fact.value, fact.detail);
        let times = said.matches(':').count();
        assert!(times == 0 || said.contains("tomorrow"), "{fact:?}");
    }
    let chart = in_english(|voice| course(voice, &told.question, &told.answer)).unwrap();
    assert!(chart.sentence.contains("tomorrow"));
}

#[test]
fn the_plot_tells_the_same_time_as_the_card() {
    let mut n_compared = 0;
    in_all_cases(|dish, sky, told, view| {
        let chart = in_english(|voice| course(voice, &told.question, &told.answer)).unwrap();
        for (name, word) in [("Boils", "boils "), ("Done", "done ")] {
            let card = fact(view, name).and_then(|fact| fact.value.strip_prefix("about "));
            let mut marks = chart.moments.iter();
            let mark = marks.find_map(|mark| mark.label.strip_prefix(word));
            if let (Some(card), Some(mark)) = (card, mark) {
                assert!(card.starts_with(mark), "{dish:?} {sky:?} {card} {mark}");
                n_compared += 1;
            }
        }
    });
    assert!(10 < n_compared);
}

#[test]
fn the_latest_time_is_before_the_pot_must_be_out() {
    in_all_cases(|dish, sky, told, view| {
        let put_in = view.facts.first().unwrap();
        if put_in.detail.is_empty() {
            return;
        }
        let latest = told.evening.latest_put_in(&told.question.meal).unwrap();
        let Some(latest) = latest.against else {
            return;
        };
        let out = crate::present::tonight::verdict::out_by(&told.answer, told.question.meal.eat_at);
        assert!(
            !matches!(out, Some(crate::present::tonight::verdict::OutBy::Burns(at)) if at <= latest),
            "{dish:?} {sky:?} {view:?}"
        );
    });
}

#[test]
fn the_store_does_not_promise_what_the_pot_does_not_get() {
    in_all_cases(|_, _, told, _| {
        let store = told.evening.store().unwrap();
        let boiling_c = told.question.boiling_c;
        let view =
            in_english(|voice| column(voice, &told.cooker, &store, Boils::AsTold, boiling_c));
        assert!(!view.sentence.contains("That boils"), "{}", view.sentence);
    });
}

#[test]
fn close_answers_are_of_the_same_kind() {
    in_all_cases(|dish, sky, told, view| {
        let begins = match told.answer.verdict {
            Verdict::Yes => "Will ",
            Verdict::Likely => "Should ",
            Verdict::Doubtful => "May ",
            Verdict::No => return,
        };
        assert!(
            view.headline.starts_with(begins),
            "{dish:?} {sky:?} {view:?}"
        );
        assert!(!view.headline.contains(" not "), "{view:?}");
    });
}
