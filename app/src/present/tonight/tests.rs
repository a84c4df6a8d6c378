//! What is said of real evenings.

use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::Journal;
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::presets::Preset;
use model::sun::{DayLog, Sky};
use model::tonight::{Answer, Evening, Site};

use super::Voice;
use super::care::care;
use super::course::course;
use super::heat::heat;
use super::help::help;
use super::verdict::{Question, verdict};
use crate::components::{VerdictTone, VerdictView};
use crate::i18n::Language;
use crate::i18n::format::{Formats, LocaleFormat};
use crate::state::plan::{Amount, Plan};
use crate::state::settings::Degrees;

fn today() -> Day {
    Day::from_ymd(2026, 11, 25).unwrap()
}

fn clock(hour: i64, minute: i64) -> LocalTime {
    today().at_s(3600 * hour + 60 * minute)
}

fn place() -> Place {
    Place {
        latitude_deg: -13.5,
        longitude_deg: -72.0,
        altitude_m: 2750.0,
        utc_offset_min: -300,
    }
}

fn cooker() -> Cooker {
    Preset::AluminiumInPerlite.cooker(160.0, -13.5)
}

fn evening_on(cooker: &Cooker, journal: &Journal, now: LocalTime) -> Evening {
    let place = place();
    let air = AirYear::guess(place.latitude_deg, place.altitude_m).unwrap();
    Evening::new(&Site { place, air }, cooker, journal, now, now).unwrap()
}

fn under(sky: Sky) -> Journal {
    let days = (-2..=0).map(|back| today().plus(back));
    Journal {
        skies: days
            .map(|day| (day, DayLog::Hourly([Some(sky); 24])))
            .collect(),
        events: Vec::new(),
    }
}

fn plan(dish: Dish, people: u32) -> Plan {
    Plan {
        dish,
        amount: Amount::People(people),
        ..Plan::start(people, clock(16, 0))
    }
}

/// An evening that was asked about at 17:00.
struct Told {
    plan: Plan,
    cooker: Cooker,
    evening: Evening,
    question: Question,
    answer: Answer,
}

const NOW: (i64, i64) = (17, 0);

fn told(sky: Sky, plan: Plan) -> Told {
    let now = clock(NOW.0, NOW.1);
    let cooker = cooker();
    let evening = evening_on(&cooker, &under(sky), now);
    let question = Question {
        meal: plan.meal(cooker.pot, 14.0, now),
        put_in: plan.put_in_at(now),
        boiling_c: evening.rig().boiling_c().unwrap(),
        sky_is_logged: true,
    };
    let answer = evening.ask(&question.meal, question.put_in).unwrap();
    Told {
        plan,
        cooker,
        evening,
        question,
        answer,
    }
}

fn formats(language: Language) -> Formats {
    Formats {
        locale: LocaleFormat::default(),
        degrees: Degrees::Celsius,
        units: &language.strings().common.units,
    }
}

fn saying<T>(language: Language, now: LocalTime, say: impl FnOnce(&Voice<'_>) -> T) -> T {
    say(&Voice {
        strings: language.strings(),
        formats: &formats(language),
        now,
    })
}

fn in_english<T>(say: impl FnOnce(&Voice<'_>) -> T) -> T {
    saying(Language::English, clock(NOW.0, NOW.1), say)
}

fn verdict_of(told: &Told) -> VerdictView {
    in_english(|voice| verdict(voice, &told.question, &told.answer))
}

#[test]
fn a_clear_day_boils_rice_and_says_when() {
    let told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    let view = verdict_of(&told);
    assert!(
        matches!(view.tone, VerdictTone::Sure | VerdictTone::Likely),
        "{view:?}"
    );
    assert!(!view.headline.is_empty() && !view.figure.is_empty() && !view.sentence.is_empty());
    assert!(
        view.facts.iter().any(|fact| fact.value.contains(':')),
        "{view:?}"
    );
}

#[test]
fn a_dark_day_does_not_boil_beans_and_says_how_hot_it_gets() {
    let told = told(Sky::Dark, plan(Dish::CommonBeansSoaked, 4));
    let view = verdict_of(&told);
    assert_eq!(view.tone, VerdictTone::No);
    assert!(view.sentence.contains("°C"), "{view:?}");
}

#[test]
fn both_languages_say_something_else() {
    let told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    let now = clock(NOW.0, NOW.1);
    let say = |language| {
        saying(language, now, |voice| {
            verdict(voice, &told.question, &told.answer).headline
        })
    };
    assert_ne!(say(Language::English), say(Language::Spanish));
}

#[test]
fn the_heat_and_the_course_are_drawn_for_what_was_asked() {
    let told = told(Sky::Clear, plan(Dish::WhiteRice, 4));
    let bar = in_english(|voice| heat(voice, &told.answer.as_told.account));
    assert!(bar.parts.iter().all(|part| 0.0 <= part.share), "{bar:?}");
    let drawn: f64 = bar.parts.iter().map(|part| part.share).sum();
    let came_j = told.answer.as_told.account.came_j();
    assert!((drawn / came_j - 1.0).abs() < 0.02, "{drawn} of {came_j} J");
    let chart = in_english(|voice| course(voice, &told.question, &told.answer)).unwrap();
    assert!(!chart.sentence.is_empty() && !chart.series.is_empty());
}

#[test]
fn beans_bring_their_caution() {
    let cautions = in_english(|voice| care(voice, Dish::RedKidneyBeansSoaked, &cooker(), 180.0));
    assert!(!cautions.is_empty());
}

#[test]
fn an_offered_change_changes_the_plan() {
    let told = told(Sky::Grey, plan(Dish::Lentils, 6));
    let (meal, put_in) = (&told.question.meal, told.question.put_in);
    for offer in told.evening.help(meal, put_in).unwrap() {
        let view = in_english(|voice| help(voice, &told.plan, meal, offer));
        assert!(!view.sentence.is_empty(), "{offer:?}");
    }
    assert!(told.cooker.store.cutout_c > 100.0);
}
