//! Whether an entry can be meant.

use model::dish::Basis;
use model::journal::{Meal, What};
use model::local_time::{Day, LocalTime};
use model::sun::{DayLog, ROUNDING_H};

use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};

/// # Errors
///
/// [`Refused`] with the first field that can't be meant.
pub(in crate::state::action) fn check(
    at: LocalTime,
    what: &What,
    now: LocalTime,
) -> Result<(), Refused> {
    match what {
        What::Reading { store_c } => {
            check_past(Field::At, at, now)?;
            Field::ReadingC.within(*store_c, limits::READING_C)?;
            Ok(())
        }
        What::Felt(_) => check_past(Field::At, at, now),
        What::LidOpen { for_s } => {
            check_past(Field::At, at, now)?;
            check_span(*for_s, limits::LID_OPEN_S)
        }
        What::HeaterOff { for_s } => {
            check_past(Field::At, at, now)?;
            check_span(*for_s, limits::HEATER_OFF_S)
        }
        What::TopUp { heat_w, for_s } => {
            check_past(Field::At, at, now)?;
            Field::TopUpW.within(*heat_w, limits::TOP_UP_W)?;
            check_span(*for_s, limits::TOP_UP_S)
        }
        What::Meal(meal) => check_meal(at, meal, now),
    }
}

/// # Errors
///
/// [`Refused`] for a day to come, or for more sun than the day has, by more than the rounding of
/// a number of hours.
pub(super) fn check_sky(
    day: Day,
    log: &DayLog,
    possible_h: f64,
    now: LocalTime,
) -> Result<(), Refused> {
    check_years(Field::Day, day.start())?;
    if now.day() < day {
        return Err(Field::Day.refuse(Wrong::InFuture));
    }
    match log {
        DayLog::SunHours(hours) => {
            Field::SunHours.within(*hours, (0.0, f64::MAX))?;
            if possible_h + ROUNDING_H < *hours {
                return Err(Field::SunHours.refuse(Wrong::SunExceedsDay { possible_h }));
            }
            Ok(())
        }
        DayLog::Hourly(_) => Ok(()),
    }
}

/// # Errors
///
/// [`Refused`] with the first field that can't be meant.
pub(in crate::state::action) fn check_meal(
    at: LocalTime,
    meal: &Meal,
    now: LocalTime,
) -> Result<(), Refused> {
    check_years(Field::PutIn, at)?;
    Field::PutIn.not_after(at, now.plus_s(limits::AHEAD_S))?;
    Field::FoodKg.within(meal.food_kg, limits::FOOD_KG)?;
    Field::WaterKg.within(meal.water_kg, limits::WATER_KG)?;
    let wet_kg = match meal.dish.props().basis {
        Basis::Dry => meal.water_kg,
        Basis::Fresh | Basis::Liquid => meal.water_kg + meal.food_kg,
    };
    Field::WaterKg.within(wet_kg, (limits::LEAST_WET_KG, f64::MAX))?;
    Field::StartC.within(meal.start_c, limits::START_C)?;
    let filled_l = meal.water_kg + meal.food_kg * limits::FOOD_L_KG;
    let holds_l = meal.pot.size.props().volume_l;
    if holds_l < filled_l {
        return Err(Field::WaterKg.refuse(Wrong::PotTooSmall { holds_l }));
    }
    Field::EatAt.not_before(meal.eat_at, at)?;
    Field::EatAt.not_after(meal.eat_at, at.plus_s(limits::MEAL_S))?;
    check_outcome(at, meal, now)
}

fn check_outcome(at: LocalTime, meal: &Meal, now: LocalTime) -> Result<(), Refused> {
    let seen = meal.outcome;
    for (field, seen_at) in [
        (Field::OutAt, meal.out),
        (Field::BoiledAt, seen.boiled_at),
        (Field::NotBoiledBy, seen.not_boiled_by),
        (Field::DoneAt, seen.done_at),
        (Field::NotDoneBy, seen.not_done_by),
    ] {
        let Some(seen_at) = seen_at else { continue };
        check_past(field, seen_at, now)?;
        field.not_before(seen_at, at)?;
        field.not_after(seen_at, at.plus_s(limits::MEAL_S))?;
    }
    if let (Some(not_by), Some(boiled_at)) = (seen.not_boiled_by, seen.boiled_at) {
        Field::BoiledAt.not_before(boiled_at, not_by)?;
    }
    // Food goes on softening outside, so it may be done after it came out; it can't begin to
    // boil there.
    if let (Some(boiled_at), Some(out)) = (seen.boiled_at, meal.out) {
        Field::BoiledAt.not_after(boiled_at, out)?;
    }
    Ok(())
}

fn check_span(for_s: i64, (least_s, most_s): (i64, i64)) -> Result<(), Refused> {
    if for_s < least_s {
        Err(Field::ForS.refuse(Wrong::TooLow {
            least: seconds(least_s),
        }))
    } else if most_s < for_s {
        Err(Field::ForS.refuse(Wrong::TooHigh {
            most: seconds(most_s),
        }))
    } else {
        Ok(())
    }
}

pub(in crate::state::action) fn check_past(
    field: Field,
    at: LocalTime,
    now: LocalTime,
) -> Result<(), Refused> {
    check_years(field, at)?;
    if now.plus_s(limits::CLOCK_SLACK_S) < at {
        return Err(field.refuse(Wrong::InFuture));
    }
    Ok(())
}

fn check_years(field: Field, at: LocalTime) -> Result<(), Refused> {
    let bound = |year| Day::from_ymd(year, 1, 1).map(Day::start);
    if let Some(earliest) = bound(limits::FIRST_YEAR) {
        field.not_before(at, earliest)?;
    }
    if let Some(latest) = bound(limits::END_YEAR) {
        field.not_after(at, latest)?;
    }
    Ok(())
}

fn seconds(span_s: i64) -> f64 {
    // The bounds are small constants.
    i32::try_from(span_s).map_or(f64::MAX, f64::from)
}
