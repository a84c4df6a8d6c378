//! What the example household did before today, day by day.

use model::dish::Dish;
use model::journal::{Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};
use model::sun::{DayLog, Sky};

use crate::state::action::Action;
use crate::state::example::{BRINA, FIRST_HOUR, RUFO, Step, set_sky};

use Sky::{Clear, Dark, Grey, Patchy, Thin};

/// The skies of a day's light, from [`FIRST_HOUR`] on.
type Skies = [Sky; 12];

/// How a day's sun was noted.
#[derive(Clone, Copy)]
pub(super) enum Sun {
    /// As a number of hours. [h]
    Hours(f64),
    /// Hour by hour.
    Words(Skies),
    /// Nobody noted it.
    Missing,
}

/// A time of day: hour and minute.
type At = (i64, i64);

/// A pot of food: what, kilograms of it, of water, and the times that were noted.
#[derive(Clone, Copy)]
pub(super) struct Pottage {
    dish: Dish,
    food_kg: f64,
    water_kg: f64,
    put_in: At,
    boiled: Option<At>,
    not_boiled_by: Option<At>,
    done: Option<At>,
    out: At,
}

/// What a day brought.
#[derive(Clone, Copy)]
pub(super) enum Did {
    /// Cooked on Rufo.
    OnRufo(Pottage),
    /// Cooked on Brina.
    OnBrina(Pottage),
    /// Read the thermometer in the store. [°C]
    Read(At, f64),
    /// Found the lid open, after so many minutes.
    LidOpen(At, i64),
    /// Charged a lamp on the panel for so many minutes, with the heater off.
    HeaterOff(At, i64),
}

/// A day as it is told.
pub(super) type Told = (Sun, &'static [Did]);

/// Today's skies: haze that burns off, clouds in the early afternoon.
pub(super) const TODAY: Skies = [
    Thin, Clear, Clear, Clear, Clear, Clear, Thin, Patchy, Clear, Clear, Clear, Thin,
];

/// The days before today, the first one first.
pub(super) const BEFORE_TODAY: [Told; 13] = [
    (Sun::Hours(9.0), &[]),
    (
        Sun::Hours(7.5),
        &[Did::OnRufo(pottage(
            Dish::WhiteRice,
            0.4,
            0.8,
            (18, 0),
            Some((18, 10)),
            Some((18, 35)),
            (18, 40),
        ))],
    ),
    (
        Sun::Words([
            Clear, Clear, Clear, Clear, Clear, Clear, Clear, Clear, Patchy, Patchy, Clear, Clear,
        ]),
        &[
            Did::Read((16, 30), 250.0),
            Did::OnRufo(pottage(
                Dish::Lentils,
                0.4,
                1.25,
                (17, 30),
                Some((17, 45)),
                Some((18, 40)),
                (18, 45),
            )),
        ],
    ),
    (
        Sun::Hours(4.0),
        &[Did::OnRufo(pottage(
            Dish::TeaWater,
            0.0,
            0.5,
            (17, 30),
            Some((17, 40)),
            None,
            (17, 45),
        ))],
    ),
    (
        Sun::Hours(2.0),
        &[Did::OnRufo(did_not_boil(
            Dish::Potatoes,
            1.2,
            0.9,
            (17, 45),
            (19, 30),
        ))],
    ),
    (Sun::Missing, &[]),
    (
        Sun::Words([
            Grey, Patchy, Patchy, Clear, Clear, Patchy, Patchy, Patchy, Clear, Patchy, Patchy, Grey,
        ]),
        &[
            Did::HeaterOff((13, 0), 50),
            Did::OnRufo(pottage(
                Dish::VegetableStew,
                1.1,
                0.5,
                (17, 45),
                Some((18, 0)),
                Some((18, 40)),
                (18, 45),
            )),
        ],
    ),
    (
        Sun::Hours(8.5),
        &[Did::OnRufo(pottage(
            Dish::WhiteRice,
            0.45,
            0.9,
            (18, 0),
            Some((18, 10)),
            Some((18, 35)),
            (18, 40),
        ))],
    ),
    (
        Sun::Hours(9.5),
        &[
            Did::Read((16, 45), 245.0),
            Did::OnRufo(pottage(
                Dish::CommonBeansSoaked,
                0.4,
                1.2,
                (17, 0),
                Some((17, 10)),
                None,
                (19, 30),
            )),
            Did::OnBrina(pottage(
                Dish::WhiteRice,
                0.3,
                0.6,
                (17, 45),
                Some((18, 10)),
                Some((18, 35)),
                (18, 40),
            )),
        ],
    ),
    (
        Sun::Words([
            Dark, Dark, Grey, Grey, Grey, Grey, Thin, Grey, Grey, Grey, Dark, Dark,
        ]),
        &[
            Did::LidOpen((9, 15), 40),
            Did::OnRufo(did_not_boil(Dish::Lentils, 0.35, 1.1, (18, 0), (19, 30))),
        ],
    ),
    (
        Sun::Hours(6.0),
        &[Did::OnRufo(pottage(
            Dish::Eggs,
            0.5,
            0.8,
            (17, 30),
            Some((17, 45)),
            Some((17, 55)),
            (18, 0),
        ))],
    ),
    (
        Sun::Words([
            Thin, Thin, Clear, Clear, Clear, Clear, Clear, Patchy, Clear, Clear, Thin, Thin,
        ]),
        &[
            Did::Read((16, 45), 255.0),
            Did::OnRufo(pottage(
                Dish::MaizePorridge,
                0.35,
                1.4,
                (17, 45),
                Some((18, 0)),
                Some((18, 30)),
                (18, 35),
            )),
        ],
    ),
    (
        Sun::Hours(8.0),
        &[Did::OnRufo(pottage(
            Dish::Potatoes,
            1.2,
            0.9,
            (17, 30),
            Some((17, 50)),
            Some((18, 20)),
            (18, 25),
        ))],
    ),
];

/// A meal that went well.
const fn pottage(
    dish: Dish,
    food_kg: f64,
    water_kg: f64,
    put_in: At,
    boiled: Option<At>,
    done: Option<At>,
    out: At,
) -> Pottage {
    Pottage {
        dish,
        food_kg,
        water_kg,
        put_in,
        boiled,
        not_boiled_by: None,
        done,
        out,
    }
}

/// A meal that did not.
const fn did_not_boil(dish: Dish, food_kg: f64, water_kg: f64, put_in: At, by: At) -> Pottage {
    Pottage {
        dish,
        food_kg,
        water_kg,
        put_in,
        boiled: None,
        not_boiled_by: Some(by),
        done: None,
        out: by,
    }
}

/// What was done on a day.
pub(super) fn steps_of(day: Day, (sun, did): Told) -> Vec<Step> {
    let evening = clock(day, (21, 0));
    let mut steps = Vec::new();
    match sun {
        Sun::Hours(hours) => steps.push((evening, set_sky(day, DayLog::SunHours(hours)))),
        Sun::Words(words) => {
            let mut skies = [None; 24];
            for (sky, word) in skies.iter_mut().skip(FIRST_HOUR).zip(words) {
                *sky = Some(word);
            }
            steps.push((evening, set_sky(day, DayLog::Hourly(skies))));
        }
        Sun::Missing => {}
    }
    for did in did {
        let add = |at, what| Action::AddEntry { at, what };
        // Noted in the evening, as most people do.
        match *did {
            Did::OnRufo(pottage) => {
                let (at, meal) = meal(day, pottage);
                steps.push((evening, add(at, What::Meal(meal))));
            }
            Did::OnBrina(pottage) => {
                let (at, meal) = meal(day, pottage);
                steps.push((evening, Action::UseCooker(BRINA)));
                steps.push((evening, add(at, What::Meal(meal))));
                steps.push((evening, Action::UseCooker(RUFO)));
            }
            Did::Read(at, store_c) => {
                let at = clock(day, at);
                steps.push((at, add(at, What::Reading { store_c })));
            }
            Did::LidOpen(at, minutes) => {
                let for_s = 60 * minutes;
                steps.push((evening, add(clock(day, at), What::LidOpen { for_s })));
            }
            Did::HeaterOff(at, minutes) => {
                let for_s = 60 * minutes;
                steps.push((evening, add(clock(day, at), What::HeaterOff { for_s })));
            }
        }
    }
    steps
}

fn meal(day: Day, told: Pottage) -> (LocalTime, Meal) {
    let at = |time| clock(day, time);
    let meal = Meal {
        dish: told.dish,
        food_kg: told.food_kg,
        water_kg: told.water_kg,
        start_c: 20.0,
        pot: Pot {
            kind: PotKind::ThickAluminium,
            size: PotSize::Litres2_5,
            wrap: Wrap::SunkInCooker,
        },
        lid: Lid::On,
        out: Some(at(told.out)),
        eat_at: at((19, 30)).max(at(told.out)),
        outcome: Outcome {
            boiled_at: told.boiled.map(at),
            not_boiled_by: told.not_boiled_by.map(at),
            done_at: told.done.map(at),
            not_done_by: None,
        },
    };
    (at(told.put_in), meal)
}

fn clock(day: Day, (hour, minute): At) -> LocalTime {
    day.at_s(3600 * hour + 60 * minute)
}
