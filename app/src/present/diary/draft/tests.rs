//! Drafts are read as they are meant.

use model::pot::{Pot, PotKind, PotSize, Wrap};

use super::*;
use crate::present::tests::english;
use crate::state::action::check_entry;

const DAY: Day = Day(20_000);

fn usual() -> Meal {
    let pot = Pot {
        kind: PotKind::ALL[0],
        size: PotSize::ALL[2],
        wrap: Wrap::ALL[0],
    };
    let now = DAY.at_s(43_200);
    Plan::start(4, now).meal(pot, 18.0, now)
}

fn draft(kind: Kind) -> Draft {
    let (_, formats) = english();
    Draft::new(kind, DAY.at_s(18 * 3600 + 30), usual(), 475.0, &formats)
}

fn refused(draft: &Draft) -> String {
    let (strings, formats) = english();
    let mistake = draft.read(&formats).unwrap_err();
    mistake.words(strings, &formats, DAY).replace('\u{A0}', " ")
}

#[test]
fn a_reading_is_read_and_no_other_can_be() {
    let (_, formats) = english();
    let mut draft = draft(Kind::Reading);
    assert_eq!(refused(&draft), "Something is needed here.");
    draft.number = "182".into();
    let read = draft.read(&formats).unwrap();
    assert_eq!(
        read,
        (DAY.at_s(18 * 3600), What::Reading { store_c: 182.0 })
    );
    draft.number = "900".into();
    assert_eq!(refused(&draft), "At most 650 °C.");
    draft.time = String::new();
    assert_eq!(draft.read(&formats).unwrap_err().field(), Field::At);
}

#[test]
fn lengths_are_typed_in_minutes_and_hours() {
    let (_, formats) = english();
    let mut lid = draft(Kind::LidOpen);
    lid.number = "15".into();
    assert_eq!(lid.read(&formats).unwrap().1, What::LidOpen { for_s: 900 });
    let mut heater = draft(Kind::HeaterOff);
    heater.number = "1.5".into();
    let what = heater.read(&formats).unwrap().1;
    assert_eq!(what, What::HeaterOff { for_s: 5400 });
    assert_eq!(
        Draft::of(DAY.at_s(60), &what, usual(), &formats).number,
        "1.5"
    );
    heater.number = "0".into();
    assert_eq!(refused(&heater), "At least 1 min.");
}

#[test]
fn what_a_hand_told_and_what_was_not_done_stay_as_they_are() {
    let (_, formats) = english();
    let at = DAY.at_s(18 * 3600 + 20);
    let what = What::Felt(Felt::Cold);
    let mut felt = Draft::of(at, &what, usual(), &formats);
    assert_eq!(felt.read(&formats).unwrap(), (at, what));
    felt.felt = Felt::Hot;
    assert_eq!(felt.read(&formats).unwrap().1, What::Felt(Felt::Hot));
    let mut meal = usual();
    meal.outcome.not_done_by = Some(at.plus_s(3000));
    let what = What::Meal(Meal {
        food_kg: 0.4,
        water_kg: 0.72,
        eat_at: at.plus_s(5400),
        ..meal
    });
    let draft = Draft::of(at, &what, usual(), &formats);
    assert_eq!(draft.read(&formats).unwrap(), (at, what));
}

#[test]
fn weights_below_nothing_are_refused() {
    let mut meal = draft(Kind::Meal);
    meal.food = "-5".into();
    assert_eq!(refused(&meal), "At least 0 kg.");
}

#[test]
fn a_meal_that_is_not_touched_stays_as_it_is() {
    let (_, formats) = english();
    let at = DAY.at_s(18 * 3600 + 17);
    let mut meal = usual();
    meal.eat_at = at.plus_s(5400);
    meal.outcome.boiled_at = Some(at.plus_s(3611));
    meal.food_kg = 0.4;
    meal.water_kg = 0.72;
    let what = What::Meal(meal);
    let draft = Draft::of(at, &what, usual(), &formats);
    assert_eq!(draft.read(&formats).unwrap(), (at, what));
}

#[test]
fn times_past_midnight_belong_to_the_next_day() {
    let (_, formats) = english();
    let mut meal = draft(Kind::Meal);
    meal.seen.done = "01:10".into();
    meal.seen.boiled = "18:00".into();
    let What::Meal(read) = meal.read(&formats).unwrap().1 else {
        panic!("it is a meal")
    };
    let seen = read.outcome;
    assert_eq!(seen.done_at, Some(DAY.plus(1).at_s(4200)));
    assert_eq!(seen.boiled_at, Some(DAY.at_s(18 * 3600)));
    assert_eq!(meal.other_day("01:10"), Some(DAY.plus(1)));
    assert_eq!(meal.other_day("19:10"), None);
}

#[test]
fn a_time_before_the_pot_went_in_is_refused_and_not_called_tomorrow() {
    let (_, formats) = english();
    let mut draft = draft(Kind::Meal);
    draft.time = "18:00".into();
    draft.seen.boiled = "17:50".into();
    assert_eq!(draft.other_day("17:50"), None);
    let (at, what) = draft.read(&formats).unwrap();
    let wrong = check_entry(at, &what, DAY.at_s(19 * 3600)).unwrap_err();
    let earliest = DAY.at_s(18 * 3600);
    assert_eq!(wrong, Field::BoiledAt.refuse(Wrong::Before { earliest }));
}

#[test]
fn a_liquid_has_one_field() {
    let (_, formats) = english();
    let liquid = Dish::ALL
        .into_iter()
        .find(|dish| dish.props().basis == Basis::Liquid)
        .unwrap();
    let mut meal = draft(Kind::Meal);
    meal.change_dish(liquid, 4, &formats);
    meal.food = "2".into();
    let What::Meal(read) = meal.read(&formats).unwrap().1 else {
        panic!("it is a meal")
    };
    assert!((read.food_kg + read.water_kg - 2.0).abs() < 1e-9);
    let mistake = Field::WaterKg.refuse(Wrong::TooLow { least: 0.1 }).into();
    assert_eq!(meal.place_of(&mistake), Field::FoodKg);
}

#[test]
fn a_top_up_has_a_power_and_a_length() {
    let (strings, formats) = english();
    let mut draft = draft(Kind::TopUp);
    let what = What::TopUp {
        heat_w: 475.0,
        for_s: 1800,
    };
    assert_eq!(draft.read(&formats).unwrap().1, what);
    let again = Draft::of(DAY.at_s(60), &what, usual(), &formats);
    assert_eq!((again.number.as_str(), again.power.as_str()), ("30", "475"));
    draft.power = "0".into();
    let mistake = draft.read(&formats).unwrap_err();
    assert_eq!(mistake.field(), Field::TopUpW);
    let said = mistake.words(strings, &formats, DAY).replace('\u{A0}', " ");
    assert_eq!(said, "At least 1.0 W.");
}
