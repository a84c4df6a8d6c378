//! What is refused, and what only looks as if it should be.

use model::cooker::{Cooker, Metal};
use model::dish::Dish;
use model::journal::{Meal, Outcome, What};
use model::local_time::LocalTime;
use model::media::Medium;
use model::pot::{Pot, PotSize};
use model::sun::DayLog;

use super::check_refused;
use crate::state::action::{Action, Seen, apply};
use crate::state::document::{Document, Household};
use crate::state::ids::{CookerId, EntryId};
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};
use crate::state::sample::{TODAY, at, cooker, done, household, meal, set_up};

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
        ..Outcome::default()
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
    let cases: [(Change, Field, Wrong); 8] = [
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
        (
            |c| c.store.charges = vec![c.store.charges[0]; 9],
            Field::Charges,
            Wrong::TooMany { n_most: 8 },
        ),
        (
            |c| c.store.cutout_c = 900.0,
            Field::CutoutC,
            Wrong::TooHigh { most: 600.0 },
        ),
        (
            |c| c.pot_loss_share = 11.0,
            Field::PotLossShare,
            Wrong::TooHigh { most: 10.0 },
        ),
        (
            |c| c.store.capacity_share = 3.5,
            Field::CapacityShare,
            Wrong::TooHigh { most: 3.0 },
        ),
        (
            |c| {
                c.store.metal = Some(Metal::Fins {
                    of: Medium::Aluminium,
                    thickness_m: 0.014,
                    pitch_m: 0.015,
                });
            },
            Field::LayerM,
            Wrong::FinsTooClose,
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
fn the_only_cooker_stays() {
    let action = Action::EraseCooker(set_up().cookers[0].id);
    check_refused(&set_up(), action, Field::Cooker, Wrong::LastCooker);
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
