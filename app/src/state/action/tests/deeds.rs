//! What is done.

use model::cooker::Cooker;
use model::journal::{Formerly, Meal, What};
use model::pot::Wrap;
use model::sun::{DayLog, Sky};

use super::check_refused;
use crate::state::action::{Action, Done, Seen, apply};
use crate::state::document::Document;
use crate::state::ids::{CookerId, EntryId};
use crate::state::limits;
use crate::state::plan::Plan;
use crate::state::refused::{Field, Wrong};
use crate::state::sample::{TODAY, at, done, full, household, meal, set_up};

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
    // It still waits for what else was seen, until it is put away.
    assert_eq!(document.running, Some(id));
    document = done(document, [Action::CloseMeal]);
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
fn a_warm_start_is_for_one_pot() {
    let warmed = Plan {
        start_c: Some(90.0),
        ..Plan::start(4, at(16, 0))
    };
    let start = Action::StartMeal {
        at: at(17, 0),
        meal: meal(),
    };
    let document = done(set_up(), [Action::ChangePlan(warmed.clone()), start]);
    let left = document.plan.unwrap();
    assert_eq!(left.start_c, None);
    assert_eq!(
        Plan {
            start_c: Some(90.0),
            ..left
        },
        warmed
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
fn hours_that_were_tapped_come_back_from_a_number_of_hours() {
    let sky = |log| Action::SetSky {
        day: TODAY,
        log,
        possible_h: 12.8,
    };
    let tapped = DayLog::Hourly([Some(Sky::Patchy); 24]);
    let mut document = done(set_up(), [sky(tapped)]);
    let replaced = apply(&mut document, sky(DayLog::SunHours(5.0)), at(20, 0));
    let Ok(Done::Replaced(id)) = replaced else {
        panic!("{replaced:?}")
    };
    // A number that is stepped on replaces nothing that is worth keeping.
    let document = done(document, [sky(DayLog::SunHours(5.5))]);
    assert_eq!(document.erased.len(), 1);
    let document = done(document, [Action::BringBack(id)]);
    assert_eq!(document.skies.get(&TODAY), Some(&tapped));
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

/// The cookers of a household with a reading in its diary, the first with 2 kg more in its store.
fn rebuilt() -> (Document, CookerId, Cooker) {
    let reading = What::Reading { store_c: 90.0 };
    let document = done(
        set_up(),
        [Action::AddEntry {
            at: at(12, 0),
            what: reading,
        }],
    );
    let id = document.in_use.unwrap();
    let was = document.cookers[0].cooker.clone();
    (done(document, [more(id, &was, 2.0)]), id, was)
}

fn more(id: CookerId, was: &Cooker, kg: f64) -> Action {
    let mut cooker = Box::new(was.clone());
    cooker.store.charges[0].mass_kg += kg;
    Action::ChangeCooker { id, cooker }
}

#[test]
fn what_was_cooked_before_a_change_was_cooked_on_what_it_was() {
    let (document, id, was) = rebuilt();
    let owned = document.cooker(id).unwrap();
    assert!(owned.is_asked);
    let formerly = Formerly {
        until: at(20, 0),
        cooker: was.clone(),
    };
    assert_eq!(owned.formerly, [formerly]);
    assert_eq!(document.journal(id).formerly, owned.formerly);
    // While parts are being changed, what it was stays what it was before the first of them.
    let further = done(document.clone(), [more(id, &was, 3.0)]);
    assert_eq!(further.cooker(id).unwrap().formerly, owned.formerly);
    // Changed back, there is nothing to ask.
    let back = done(further.clone(), [more(id, &was, 0.0)]);
    let owned = back.cooker(id).unwrap();
    assert!(owned.formerly.is_empty() && !owned.is_asked);
    // Said to be rebuilt, the next change is another one.
    let is_rebuilt = true;
    let said = done(further, [Action::SayRebuilt { id, is_rebuilt }]);
    assert!(!said.cooker(id).unwrap().is_asked);
    let again = done(said, [more(id, &was, 4.0)]);
    assert_eq!(again.cooker(id).unwrap().formerly.len(), 2);
}

#[test]
fn a_correction_holds_for_all_that_was_cooked() {
    let (document, id, _) = rebuilt();
    let is_rebuilt = false;
    let document = done(document, [Action::SayRebuilt { id, is_rebuilt }]);
    assert!(document.journal(id).formerly.is_empty());
    assert!(!document.cooker(id).unwrap().is_asked);
    // Said once more, or of a cooker that was not changed, it changes nothing.
    let again = done(document.clone(), [Action::SayRebuilt { id, is_rebuilt }]);
    assert_eq!(again, document);
}

#[test]
fn a_change_that_touches_no_diary_is_not_asked_about() {
    let document = set_up();
    let id = document.in_use.unwrap();
    let was = document.cookers[0].cooker.clone();
    let changed = done(document, [more(id, &was, 2.0)]);
    assert!(!changed.cooker(id).unwrap().is_asked);
    // Nor is another pot: each meal has its own.
    let (document, id, _) = rebuilt();
    let document = done(
        document,
        [Action::SayRebuilt {
            id,
            is_rebuilt: true,
        }],
    );
    let mut cooker = Box::new(document.cooker(id).unwrap().cooker.clone());
    cooker.pot.wrap = Wrap::Wrapped;
    let document = done(document, [Action::ChangeCooker { id, cooker }]);
    assert!(!document.cooker(id).unwrap().is_asked);
}

#[test]
fn a_change_that_nobody_spoke_of_stands_the_next_day() {
    let (mut document, id, was) = rebuilt();
    apply(&mut document, more(id, &was, 5.0), at(20 + 24, 0)).unwrap();
    let owned = document.cooker(id).unwrap();
    let days: Vec<_> = owned.formerly.iter().map(|one| one.until.day()).collect();
    assert_eq!(days, [TODAY, TODAY.plus(1)]);
}

#[test]
fn an_entry_is_said_to_be_right_until_it_is_changed() {
    let (document, ..) = rebuilt();
    let id = document.entries[0].id;
    let document = done(document, [Action::KeepEntry(id)]);
    assert!(document.entries[0].is_right);
    let change = Action::ChangeEntry {
        id,
        at: at(12, 5),
        what: What::Reading { store_c: 95.0 },
    };
    let document = done(document, [change]);
    assert!(!document.entries[0].is_right);
    check_refused(
        &document,
        Action::KeepEntry(EntryId(999)),
        Field::Entry,
        Wrong::Gone,
    );
}
