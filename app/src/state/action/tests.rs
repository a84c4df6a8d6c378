//! What a person does, and what becomes of it.

use model::dish::Dish;
use model::journal::{Meal, Outcome, What};
use model::local_time::LocalTime;
use model::pot::{Pot, PotSize};
use model::sun::DayLog;
use proptest::prelude::*;

use super::*;
use crate::state::limits;
use crate::state::refused::{Field, Wrong};
use crate::state::sample::{
    TODAY, any_action, at, cooker, done, full, household, meal, set_up, set_up_action,
};

/// Refused at eight in the evening, with nothing changed.
fn check_refused(document: &Document, action: Action, field: Field, wrong: Wrong) {
    let mut after = document.clone();
    let result = apply(&mut after, action.clone(), at(20, 0));
    assert_eq!(result, Err(Refused { field, wrong }), "{action:?}");
    assert_eq!(&after, document, "{action:?}");
}

fn check_entry(what: What, field: Field, wrong: Wrong) {
    check_refused(
        &set_up(),
        Action::AddEntry {
            at: at(18, 0),
            what,
        },
        field,
        wrong,
    );
}

fn check_meal(change: impl FnOnce(&mut Meal), field: Field, wrong: Wrong) {
    let mut meal = meal();
    change(&mut meal);
    check_refused(
        &set_up(),
        Action::StartMeal {
            at: at(18, 0),
            meal,
        },
        field,
        wrong,
    );
}

#[test]
fn the_first_start_gives_a_household_with_a_cooker_in_use() {
    let document = set_up();
    assert_eq!(document.household, Some(household()));
    assert_eq!(
        document.cooker_in_use().map(|owned| owned.name.as_str()),
        Some("Clay block")
    );
}

#[test]
fn a_place_that_is_not_on_earth() {
    type Change = fn(&mut Household);
    let cases: [(Change, Field, Wrong); 7] = [
        (
            |h| h.place.latitude_deg = 90.1,
            Field::LatitudeDeg,
            Wrong::TooHigh { most: 90.0 },
        ),
        (
            |h| h.place.latitude_deg = f64::NAN,
            Field::LatitudeDeg,
            Wrong::NotANumber,
        ),
        (
            |h| h.place.longitude_deg = -181.0,
            Field::LongitudeDeg,
            Wrong::TooLow { least: -180.0 },
        ),
        (
            |h| h.place.altitude_m = 8848.0,
            Field::AltitudeM,
            Wrong::TooHigh { most: 6000.0 },
        ),
        (
            |h| h.people = 0,
            Field::People,
            Wrong::TooLow { least: 1.0 },
        ),
        (
            |h| h.air.day_c[3] = 80.0,
            Field::AirC,
            Wrong::TooHigh { most: 55.0 },
        ),
        (
            |h| h.air.night_c[3] = 30.0,
            Field::AirC,
            Wrong::NightWarmerThanDay,
        ),
    ];
    for (change, field, wrong) in cases {
        let mut household = household();
        change(&mut household);
        check_refused(&set_up(), Action::ChangeHousehold(household), field, wrong);
    }
}

#[test]
fn more_sun_than_the_day_has_is_refused_with_what_it_has() {
    let sky = |day, hours| Action::SetSky {
        day,
        log: DayLog::SunHours(hours),
        possible_h: 12.8,
    };
    let exceeds = Wrong::SunExceedsDay { possible_h: 12.8 };
    check_refused(&set_up(), sky(TODAY, 19.0), Field::SunHours, exceeds);
    check_refused(
        &set_up(),
        sky(TODAY, f64::NAN),
        Field::SunHours,
        Wrong::NotANumber,
    );
    check_refused(
        &set_up(),
        sky(TODAY, -1.0),
        Field::SunHours,
        Wrong::TooLow { least: 0.0 },
    );
    check_refused(
        &set_up(),
        sky(TODAY.plus(1), 5.0),
        Field::Day,
        Wrong::InFuture,
    );
    // A day of 12.8 h is rounded to 13 by people, who are right.
    assert_eq!(done(set_up(), [sky(TODAY, 13.0)]).skies.len(), 1);
}

#[test]
fn readings_and_mishaps_that_cannot_be() {
    let hot = What::Reading { store_c: 900.0 };
    check_entry(hot, Field::ReadingC, Wrong::TooHigh { most: 650.0 });
    let nothing = What::Reading { store_c: f64::NAN };
    check_entry(nothing, Field::ReadingC, Wrong::NotANumber);
    let long = What::LidOpen { for_s: 90_000 };
    check_entry(long, Field::ForS, Wrong::TooHigh { most: 86_400.0 });
    let short = What::HeaterOff { for_s: 0 };
    check_entry(short, Field::ForS, Wrong::TooLow { least: 60.0 });
    let reading = What::Reading { store_c: 90.0 };
    let tomorrow = Action::AddEntry {
        at: at(44, 0),
        what: reading.clone(),
    };
    check_refused(&set_up(), tomorrow, Field::At, Wrong::InFuture);
    let long_ago = Action::AddEntry {
        at: LocalTime(0),
        what: reading,
    };
    let mut document = set_up();
    assert!(matches!(
        apply(&mut document, long_ago, at(20, 0)),
        Err(Refused {
            field: Field::At,
            wrong: Wrong::Before { .. }
        })
    ));
}

#[test]
fn meals_that_cannot_be() {
    check_meal(
        |meal| meal.water_kg = 0.0,
        Field::WaterKg,
        Wrong::TooLow { least: 0.1 },
    );
    check_meal(
        |meal| meal.water_kg = -2.0,
        Field::WaterKg,
        Wrong::TooLow { least: 0.0 },
    );
    check_meal(
        |meal| meal.food_kg = -5.0,
        Field::FoodKg,
        Wrong::TooLow { least: 0.0 },
    );
    check_meal(
        |meal| meal.food_kg = f64::NAN,
        Field::FoodKg,
        Wrong::NotANumber,
    );
    check_meal(
        |meal| meal.water_kg = 6.0,
        Field::WaterKg,
        Wrong::PotTooSmall { holds_l: 4.0 },
    );
    check_meal(
        |meal| meal.start_c = 130.0,
        Field::StartC,
        Wrong::TooHigh { most: 100.0 },
    );
    let earliest = at(18, 0);
    check_meal(
        |meal| meal.eat_at = at(17, 0),
        Field::EatAt,
        Wrong::Before { earliest },
    );
    let latest = at(18 + 48, 0);
    check_meal(
        |meal| meal.eat_at = at(90, 0),
        Field::EatAt,
        Wrong::After { latest },
    );
    check_meal(
        |meal| meal.out = Some(at(17, 0)),
        Field::OutAt,
        Wrong::Before { earliest },
    );
    check_meal(
        |meal| meal.out = Some(at(21, 0)),
        Field::OutAt,
        Wrong::InFuture,
    );
    let boiled = |boiled_at, not_boiled_by| Outcome {
        boiled_at,
        not_boiled_by,
        done_at: None,
    };
    check_meal(
        |meal| meal.outcome = boiled(Some(at(18, 20)), Some(at(18, 40))),
        Field::BoiledAt,
        Wrong::Before {
            earliest: at(18, 40),
        },
    );
    check_meal(
        |meal| {
            meal.out = Some(at(18, 30));
            meal.outcome = boiled(Some(at(18, 40)), None);
        },
        Field::BoiledAt,
        Wrong::After { latest: at(18, 30) },
    );
}

#[test]
fn tea_and_milk_need_no_food_or_no_water() {
    let tea = Meal {
        dish: Dish::TeaWater,
        food_kg: 0.0,
        water_kg: 1.0,
        ..meal()
    };
    let milk = Meal {
        dish: Dish::Milk,
        food_kg: 1.0,
        water_kg: 0.0,
        ..meal()
    };
    for meal in [tea, milk] {
        let action = Action::StartMeal {
            at: at(18, 0),
            meal,
        };
        assert_eq!(done(set_up(), [action]).entries.len(), 1);
    }
}

#[test]
fn a_meal_is_started_answered_and_taken_out() {
    let mut document = done(
        set_up(),
        [Action::StartMeal {
            at: at(17, 0),
            meal: meal(),
        }],
    );
    let id = document.running.unwrap();
    let second = Action::StartMeal {
        at: at(18, 0),
        meal: meal(),
    };
    check_refused(&document, second, Field::PutIn, Wrong::MealRunning);
    for seen in [Seen::BoiledAt(at(18, 0)), Seen::TakenOutAt(at(18, 30))] {
        document = done(document, [Action::SeeMeal { id, seen }]);
    }
    assert_eq!(document.running, None);
    let What::Meal(meal) = &document.entries[0].what else {
        panic!("a meal")
    };
    assert_eq!(
        (meal.out, meal.outcome.boiled_at),
        (Some(at(18, 30)), Some(at(18, 0)))
    );
    let too_late = Action::SeeMeal {
        id,
        seen: Seen::BoiledAt(at(19, 0)),
    };
    let latest = at(18, 30);
    check_refused(
        &document,
        too_late,
        Field::BoiledAt,
        Wrong::After { latest },
    );
}

#[test]
fn a_meal_long_eaten_does_not_stand_in_the_way() {
    let yesterday = Meal {
        eat_at: at(-5, 0),
        ..meal()
    };
    let document = done(
        set_up(),
        [
            Action::StartMeal {
                at: at(-7, 0),
                meal: yesterday,
            },
            Action::StartMeal {
                at: at(18, 0),
                meal: meal(),
            },
        ],
    );
    assert_eq!(document.running, Some(document.entries[1].id));
}

#[test]
fn entries_stay_in_the_order_of_time_when_they_are_changed() {
    let add = |hour, store_c| Action::AddEntry {
        at: at(hour, 0),
        what: What::Reading { store_c },
    };
    let document = done(set_up(), [add(12, 90.0), add(9, 70.0), add(15, 110.0)]);
    let order = |document: &Document| -> Vec<usize> {
        document
            .entries
            .iter()
            .map(|entry| entry.at.hour())
            .collect()
    };
    assert_eq!(order(&document), [9, 12, 15]);
    let id = document.entries[0].id;
    let what = What::Reading { store_c: 75.0 };
    let document = done(
        document,
        [Action::ChangeEntry {
            id,
            at: at(13, 0),
            what,
        }],
    );
    assert_eq!(order(&document), [12, 13, 15]);
    assert_eq!(document.entries[1].id, id);
}

#[test]
fn names() {
    let rename = |name: &str| Action::RenameCooker {
        id: set_up().cookers[0].id,
        name: name.into(),
    };
    check_refused(&set_up(), rename("  "), Field::Name, Wrong::Empty);
    let n_most = limits::NAME_LETTERS;
    check_refused(
        &set_up(),
        rename(&"ñ".repeat(41)),
        Field::Name,
        Wrong::TooLong { n_most },
    );
    assert_eq!(done(set_up(), [rename(" Olla ")]).cookers[0].name, "Olla");
}

#[test]
fn a_cooker_that_cannot_be() {
    type Change = fn(&mut Cooker);
    let cases: [(Change, Field, Wrong); 5] = [
        (
            |c| c.panels.module_w = 0.0,
            Field::ModuleW,
            Wrong::TooLow { least: 1.0 },
        ),
        (
            |c| c.panels.in_series = 0,
            Field::Modules,
            Wrong::TooLow { least: 1.0 },
        ),
        (
            |c| c.heater.resistance_ohm = f64::NAN,
            Field::Ohm,
            Wrong::NotANumber,
        ),
        (|c| c.store.charges.clear(), Field::Charges, Wrong::Empty),
        (
            |c| c.store.cutout_c = 900.0,
            Field::CutoutC,
            Wrong::TooHigh { most: 600.0 },
        ),
    ];
    let id = set_up().cookers[0].id;
    for (change, field, wrong) in cases {
        let mut cooker = cooker();
        change(&mut cooker);
        let action = Action::ChangeCooker {
            id,
            cooker: Box::new(cooker),
        };
        check_refused(&set_up(), action, field, wrong);
    }
}

#[test]
fn a_cooker_is_erased_with_its_entries_and_comes_back_with_them() {
    let document = done(full(), [Action::CloseMeal]);
    let id = document.cookers[0].id;
    let copy = Action::CopyCooker {
        id,
        name: "Copy".into(),
    };
    let document = done(document, [copy, Action::UseCooker(id)]);
    let mut erased = document.clone();
    let result = apply(&mut erased, Action::EraseCooker(id), at(20, 0));
    let Ok(Done::Erased(erased_id)) = result else {
        panic!("{result:?}")
    };
    assert!(erased.cooker(id).is_none());
    assert!(erased.entries.iter().all(|entry| entry.cooker != id));
    let back = done(erased, [Action::BringBack(erased_id)]);
    assert_eq!(back.cookers, document.cookers);
    assert_eq!(back.entries, document.entries);
    assert_eq!(back.in_use, document.in_use);
}

#[test]
fn the_only_cooker_stays() {
    let action = Action::EraseCooker(set_up().cookers[0].id);
    check_refused(&set_up(), action, Field::Cooker, Wrong::LastCooker);
}

#[test]
fn a_sky_that_comes_back_changes_places_with_the_one_logged_since() {
    let sky = |hours| Action::SetSky {
        day: TODAY,
        log: DayLog::SunHours(hours),
        possible_h: 12.8,
    };
    let mut document = done(set_up(), [sky(5.0)]);
    let erased = apply(&mut document, Action::EraseSky(TODAY), at(20, 0));
    let Ok(Done::Erased(id)) = erased else {
        panic!("{erased:?}")
    };
    let document = done(document, [sky(7.0), Action::BringBack(id)]);
    assert_eq!(document.skies.get(&TODAY), Some(&DayLog::SunHours(5.0)));
    assert_eq!(document.erased.len(), 1);
}

#[test]
fn only_the_latest_erased_things_are_kept() {
    let mut document = set_up();
    for _ in 0..limits::ERASED + 5 {
        let add = Action::AddEntry {
            at: at(12, 0),
            what: What::Reading { store_c: 90.0 },
        };
        document = done(document, [add]);
        let id = document.entries[0].id;
        document = done(document, [Action::EraseEntry(id)]);
    }
    assert_eq!(document.erased.len(), limits::ERASED);
}

#[test]
fn what_is_gone_is_said_to_be_gone() {
    let id = EntryId(999);
    check_refused(&set_up(), Action::EraseEntry(id), Field::Entry, Wrong::Gone);
    let seen = Seen::DoneAt(at(18, 0));
    check_refused(
        &set_up(),
        Action::SeeMeal { id, seen },
        Field::Entry,
        Wrong::Gone,
    );
    check_refused(
        &set_up(),
        Action::UseCooker(CookerId(999)),
        Field::Cooker,
        Wrong::Gone,
    );
    let no_cooker = Document::default();
    let add = Action::AddEntry {
        at: at(12, 0),
        what: What::Reading { store_c: 90.0 },
    };
    check_refused(&no_cooker, add, Field::Cooker, Wrong::Gone);
}

#[test]
fn a_pot_that_is_large_enough_holds_it() {
    let pot = Pot {
        size: PotSize::Litres10,
        ..meal().pot
    };
    let meal = Meal {
        water_kg: 6.0,
        pot,
        ..meal()
    };
    assert_eq!(
        done(
            set_up(),
            [Action::StartMeal {
                at: at(18, 0),
                meal
            }]
        )
        .entries
        .len(),
        1
    );
}

proptest! {
    #[test]
    fn whatever_is_done_the_document_holds_together(
        actions in proptest::collection::vec(any_action(), 0..40)
    ) {
        let mut document = Document::default();
        for action in std::iter::once(set_up_action()).chain(actions) {
            let before = document.clone();
            if apply(&mut document, action, at(20, 0)).is_err() {
                prop_assert_eq!(&document, &before);
            }
            prop_assert!(document.entries.is_sorted_by_key(|entry| (entry.at, entry.id)));
            prop_assert!(document.cooker_in_use().is_some());
            for entry in &document.entries {
                prop_assert!(document.cooker(entry.cooker).is_some());
                prop_assert!(entry.id.0 < document.next_id);
            }
            if document.running.is_some() {
                let running = document.running_meal().map(|entry| &entry.what);
                prop_assert!(matches!(running, Some(What::Meal(_))));
            }
            prop_assert!(document.erased.len() <= limits::ERASED);
        }
    }

    #[test]
    fn an_erased_entry_comes_back_as_it_was(
        actions in proptest::collection::vec(any_action(), 0..30), pick in any::<prop::sample::Index>()
    ) {
        let mut document = full();
        for action in actions {
            // A refusal changes nothing.
            let _ = apply(&mut document, action, at(20, 0));
        }
        if document.entries.is_empty() {
            return Ok(());
        }
        let id = document.entries[pick.index(document.entries.len())].id;
        let mut after = document.clone();
        let erased = apply(&mut after, Action::EraseEntry(id), at(20, 0)).unwrap();
        let Done::Erased(erased) = erased else { panic!("{erased:?}") };
        apply(&mut after, Action::BringBack(erased), at(20, 0)).unwrap();
        prop_assert_eq!(&after.entries, &document.entries);
        prop_assert_eq!(after.running, document.running);
    }
}
