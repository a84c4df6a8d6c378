//! What is said of real evenings.

mod answers;
mod running;

use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::{Journal, Outcome};
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::presets::Preset;
use model::sun::{DayLog, Daylight, Sky};
use model::tonight::{Answer, Evening, Site, Verdict};

use super::care::care;
use super::course::course;
use super::heat::heat;
use super::help::{help, that_fits};
use super::now::now_line;
use super::plan::amounts;
use super::running::{is_over, running};
use super::store::{Boils, column, store_sure};
use super::verdict::{Question, verdict};
use super::{Stay, Voice};
use crate::components::{CautionLevel, ClockView, Icon, VerdictTone, VerdictView};
use crate::i18n::Language;
use crate::i18n::format::{ClockStyle, Formats, LocaleFormat, Sure};
use crate::state::action::check_meal;
use crate::state::plan::{Amount, Plan, TimeOfDay};
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
        ..Journal::default()
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
        is_in: false,
        boiling_c: evening.rig().boiling_c().unwrap(),
        store_sure: store_sure(&evening.store().unwrap()),
        sky_is_logged: true,
        lacks_sun: false,
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
    let latest = latest_of(told);
    in_english(|voice| verdict(voice, &told.question, &told.answer, latest))
}

fn latest_of(told: &Told) -> Option<LocalTime> {
    let latest = told.evening.latest_put_in(&told.question.meal).unwrap();
    latest.against.or(latest.as_told)
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
            verdict(voice, &told.question, &told.answer, None).headline
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

/// What each offer turns the plan into is asked again: what is shown is rounded, and must still
/// work.
#[test]
fn what_an_offer_makes_of_the_plan_works() {
    let mut n_seen = 0;
    for sky in [Sky::Clear, Sky::Patchy, Sky::Grey] {
        for (dish, people) in [
            (Dish::WhiteRice, 4),
            (Dish::WhiteRice, 7),
            (Dish::Lentils, 6),
            (Dish::CommonBeansUnsoaked, 2),
            (Dish::Potatoes, 3),
            (Dish::TeaWater, 8),
        ] {
            let mut plan = plan(dish, people);
            plan.lid = Lid::Ajar;
            plan.eat = TimeOfDay::at(19, 45);
            let told = told(sky, plan);
            let (meal, put_in) = (&told.question.meal, told.question.put_in);
            let offers = told.evening.help(meal, put_in).unwrap();
            for offer in offers.helps {
                let view = in_english(|voice| help(voice, &told.plan, meal, offer));
                let now = clock(NOW.0, NOW.1);
                let next = view.plan.meal(told.cooker.pot, meal.start_c, now);
                let answer = told.evening.ask(&next, view.plan.put_in_at(now)).unwrap();
                assert!(
                    offers.reach <= answer.verdict,
                    "{dish:?} {offer:?} {view:?}"
                );
                assert_ne!(view.plan, told.plan, "{offer:?}");
                assert!(!view.sentence.is_empty() && !view.button.is_empty());
                n_seen += 1;
            }
        }
    }
    assert!(8 < n_seen, "only {n_seen} offers");
}

#[test]
fn a_pot_that_is_too_small_is_helped_by_a_larger_one_or_by_fewer_people() {
    let plan = plan(Dish::WhiteRice, 20);
    let now = clock(NOW.0, NOW.1);
    let meal = plan.meal(cooker().pot, 14.0, now);
    let refused = check_meal(plan.put_in_at(now), &meal, now).unwrap_err();
    let view = in_english(|voice| super::verdict::refused(voice, refused));
    assert_eq!(view.tone, VerdictTone::No);
    assert!(view.sentence.contains("2.5"), "{view:?}");
    let offers = in_english(|voice| that_fits(voice, &plan, &meal));
    assert_eq!(offers.len(), 2);
    for offer in offers {
        let meal = offer.plan.meal(cooker().pot, 14.0, now);
        assert_eq!(check_meal(plan.put_in_at(now), &meal, now), Ok(()));
    }
}

#[test]
fn water_for_tea_is_done_when_it_boils() {
    let view = verdict_of(&told(Sky::Clear, plan(Dish::TeaWater, 4)));
    let labels: Vec<&str> = view.facts.iter().map(|fact| fact.label.as_str()).collect();
    assert!(
        labels.contains(&"Boils") && !labels.contains(&"Done"),
        "{labels:?}"
    );
    assert_eq!(view.sentence, "The pot boils before 19:30.");
}

#[test]
fn no_headline_contradicts_its_tone_or_its_facts() {
    for sky in [Sky::Clear, Sky::Thin, Sky::Patchy, Sky::Grey, Sky::Dark] {
        for dish in Dish::ALL {
            let told = told(sky, plan(dish, 3));
            let view = verdict_of(&told);
            let is_good =
                view.headline.starts_with("Will b") || view.headline.starts_with("Should");
            let is_fine = matches!(view.tone, VerdictTone::Sure | VerdictTone::Likely);
            assert_eq!(is_good, is_fine, "{dish:?} under {sky:?}: {view:?}");
            let says_cold = view.headline == "Will not boil";
            let boils = view.facts.iter().any(|fact| fact.label == "Boils");
            assert!(!(says_cold && boils), "{dish:?} under {sky:?}: {view:?}");
        }
    }
}

#[test]
fn a_sentence_ends_with_one_full_stop_whatever_the_clock() {
    let told = told(Sky::Patchy, plan(Dish::WhiteRice, 4));
    let spanish = Formats {
        locale: LocaleFormat {
            clock: ClockStyle::Hours12 {
                am: "a. m.".into(),
                pm: "p. m.".into(),
            },
            ..LocaleFormat::default()
        },
        ..formats(Language::Spanish)
    };
    let voice = Voice {
        strings: Language::Spanish.strings(),
        formats: &spanish,
        now: clock(NOW.0, NOW.1),
    };
    let mut said = vec![verdict(&voice, &told.question, &told.answer, None).sentence];
    let (meal, put_in) = (&told.question.meal, told.question.put_in);
    let offers = told.evening.help(meal, put_in).unwrap();
    said.extend(
        offers
            .helps
            .into_iter()
            .map(|offer| help(&voice, &told.plan, meal, offer).sentence),
    );
    let view = running(&voice, &told.question, Some(&told.answer), None);
    said.extend(view.lines);
    said.push(view.since);
    for sentence in said {
        assert!(
            sentence.ends_with('.') && !sentence.ends_with(".."),
            "{sentence}"
        );
    }
}

fn stay(put_in: LocalTime, eat_at: LocalTime) -> Stay {
    Stay { put_in, eat_at }
}

#[test]
fn times_that_differ_by_less_than_they_are_known_have_no_span() {
    let stay = stay(clock(17, 0), clock(20, 0));
    in_english(|voice| {
        let told = clock(18, 36);
        let near = voice.estimate(told, Some((clock(18, 34), clock(18, 39))), stay);
        assert_eq!((near.at.as_str(), near.span), ("about 18:35", None));
        let wide = voice.estimate(told, Some((clock(19, 5), clock(18, 24))), stay);
        assert_eq!(wide.span, Some(("18:30".into(), "19:00".into())));
    });
}

/// Done at 19:35 is too late for half past seven, and must not be rounded to it.
#[test]
fn a_time_past_the_meal_is_not_rounded_back_to_it() {
    let by = |eat_at| stay(clock(17, 0), eat_at);
    let meal = by(clock(19, 30));
    in_english(|voice| {
        for (minute, told) in [
            (31, "about 19:31"),
            (35, "about 19:35"),
            (44, "about 19:45"),
        ] {
            let late = clock(19, minute);
            assert_eq!(voice.estimate(late, None, meal).at, told);
            let ends = Some((clock(18, 50), clock(20, 40)));
            assert_eq!(voice.estimate(late, ends, meal).at, told);
        }
        assert_eq!(voice.estimate(clock(19, 26), None, meal).at, "about 19:30");
        // A meal at an odd minute: what is in time does not read as late either.
        assert_eq!(
            voice.estimate(clock(19, 24), None, by(clock(19, 25))).at,
            "about 19:25"
        );
    });
}

/// Nothing boils as it goes in, however hot the store is and however widely its time is known.
#[test]
fn what_follows_on_the_pot_going_in_does_not_read_as_that_moment() {
    let in_at = clock(18, 30);
    let long = stay(in_at, clock(19, 30));
    in_english(|voice| {
        for (minute, told) in [
            (30, "about 18:35"),
            (31, "about 18:35"),
            (33, "about 18:35"),
            (36, "about 18:35"),
            (38, "about 18:45"),
        ] {
            let at = clock(18, minute);
            assert_eq!(voice.estimate(at, None, long).at, told);
            let wide = voice.estimate(at, Some((in_at, clock(19, 20))), long);
            assert_eq!(wide.at, told);
            assert_eq!(wide.span.unwrap().0, "18:35");
        }
        // Rounded up it would be late.
        let short = stay(in_at, clock(18, 34));
        assert_eq!(voice.estimate(clock(18, 32), None, short).at, "about 18:32");
        assert_eq!(voice.near(clock(18, 31), long), "18:35");
    });
}

#[test]
fn what_can_kill_comes_first() {
    let evening = evening_on(&cooker(), &under(Sky::Clear), clock(NOW.0, NOW.1));
    let store = evening.store().unwrap();
    let of = |dish| in_english(|voice| care(voice, dish, &cooker(), &store));
    let beans = of(Dish::RedKidneyBeansSoaked);
    assert_eq!(
        (beans[0].level, beans[0].icon),
        (CautionLevel::Danger, Icon::Beans)
    );
    let rice = of(Dish::WhiteRice);
    assert!(rice.iter().any(|view| view.icon == Icon::Moon), "{rice:?}");
    // The food comes before the store, where both are as bad.
    assert_eq!(rice.last().unwrap().level, CautionLevel::Warning);
    // A hot store is told of whatever is cooked.
    assert!(
        of(Dish::TeaWater)
            .iter()
            .any(|view| matches!(view.icon, Icon::Alight | Icon::HotHand))
    );
}

#[test]
fn the_column_says_what_the_store_can_do() {
    let say_of = |sky, boils| {
        let cooker = cooker();
        let evening = evening_on(&cooker, &under(sky), clock(NOW.0, NOW.1));
        let boiling_c = evening.rig().boiling_c().unwrap();
        in_english(|voice| column(voice, &cooker, &evening.store().unwrap(), boils, boiling_c))
    };
    let say = |sky| say_of(sky, Boils::AsTold);
    let (clear, dark) = (say(Sky::Clear), say(Sky::Dark));
    assert!(clear.sentence.contains("L of water"), "{}", clear.sentence);
    // The pot that is in may be about to boil on a store that boils no other.
    for sky in [Sky::Clear, Sky::Dark] {
        let said = say_of(sky, Boils::PotIsIn).sentence;
        assert!(!said.contains("boil") && said.contains("°C"), "{said}");
    }
    assert!(
        dark.sentence.contains("can\u{2019}t boil"),
        "{}",
        dark.sentence
    );
    let (low, high) = clear.band.unwrap();
    assert!(low < clear.now.at && clear.now.at < high && high <= clear.high);
    assert_eq!(clear.melting, None);
    let salt = Preset::NitrateInCeramicFibre.cooker(200.0, -13.5);
    let evening = evening_on(&salt, &under(Sky::Clear), clock(NOW.0, NOW.1));
    let view =
        in_english(|voice| column(voice, &salt, &evening.store().unwrap(), Boils::AsTold, 91.0));
    assert!(view.melting.is_some());
}

#[test]
fn the_sun_is_told_of_through_the_day() {
    let daylight = Daylight::Between {
        rises: clock(5, 12),
        sets: clock(17, 57),
    };
    let at = |hour, minute| {
        let now = clock(hour, minute);
        saying(Language::English, now, |voice| now_line(voice, daylight))
    };
    assert_eq!(at(4, 0), "Wednesday, 04:00 · sun from 05:10");
    assert_eq!(at(17, 20), "Wednesday, 17:20 · sun until 17:55");
    assert_eq!(at(18, 0), "Wednesday, 18:00 · the sun is down");
}

#[test]
fn amounts_are_told_together() {
    let say =
        |dish, people| in_english(|voice| amounts(voice, dish, plan(dish, people).amounts_kg()));
    assert_eq!(
        say(Dish::WhiteRice, 5).replace('\u{A0}', " "),
        "400 g white rice, 0.7 L water"
    );
    assert_eq!(say(Dish::Milk, 4).replace('\u{A0}', " "), "1.0 L milk");
}
