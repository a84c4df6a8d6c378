//! A household lives through its days: the truth happens, and some of it is written down, late and
//! wrong, so that a diary can be read as it stood at any instant.

use std::collections::BTreeMap;

use model::dish::{Basis, Dish};
use model::journal::{Event, Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::pot::Lid;
use model::sun::{DayLog, Sky, SolarDay};

use crate::household::{Habits, Household, SkyHabit};
use crate::truth::kitchen::Fate;
use crate::truth::random::Random;
use crate::truth::sky::Day as TrueDay;

/// Something that becomes known at an instant.
#[derive(Debug, Clone)]
struct Note {
    known_at: LocalTime,
    what: Known,
}

#[derive(Debug, Clone)]
enum Known {
    Sky(Day, DayLog),
    Meal(usize, LocalTime, Meal),
    Reading(LocalTime, f64),
    /// What was seen of a meal, and when it came out if it did before its hour.
    Seen(usize, Outcome, Option<LocalTime>),
}

/// A pot that was asked about, and what became of it.
#[derive(Debug, Clone)]
pub(crate) struct Asked {
    /// Days since the diary began, from 1.
    pub(crate) day: u32,
    /// When it was asked, which is when it went in as logged.
    pub(crate) at: LocalTime,
    /// When it truly went in: what is asked is how long it takes from then.
    pub(crate) put_in: LocalTime,
    pub(crate) meal: Meal,
    pub(crate) store_c: f64,
    pub(crate) boiled_at: Option<LocalTime>,
    pub(crate) ready_at: Option<LocalTime>,
}

/// A household's days.
pub(crate) struct Lived {
    pub(crate) asked: Vec<Asked>,
    notes: Vec<Note>,
}

/// A diary that is read from the first note on, never ahead of time.
pub(crate) struct Reader<'a> {
    notes: &'a [Note],
    with_thermometer: bool,
    journal: Journal,
    /// Where each meal stands among the events: by its instant as logged.
    meals: BTreeMap<usize, LocalTime>,
}

impl Lived {
    pub(crate) fn reader(&self, with_thermometer: bool) -> Reader<'_> {
        Reader {
            notes: &self.notes,
            with_thermometer,
            journal: Journal::default(),
            meals: BTreeMap::new(),
        }
    }
}

impl Reader<'_> {
    /// The diary as it stands at an instant, which may not go back.
    pub(crate) fn at(&mut self, now: LocalTime) -> &Journal {
        while let Some((note, rest)) = self.notes.split_first()
            && note.known_at <= now
        {
            self.take(&note.what);
            self.notes = rest;
        }
        &self.journal
    }

    fn take(&mut self, known: &Known) {
        match known {
            Known::Sky(day, log) => {
                self.journal.skies.insert(*day, *log);
            }
            Known::Reading(at, store_c) => {
                if self.with_thermometer {
                    self.insert(*at, What::Reading { store_c: *store_c });
                }
            }
            Known::Meal(number, at, meal) => {
                self.meals.insert(*number, *at);
                self.insert(*at, What::Meal(meal.clone()));
            }
            Known::Seen(number, outcome, out) => {
                let Some(at) = self.meals.get(number) else {
                    return;
                };
                for event in &mut self.journal.events {
                    if let What::Meal(meal) = &mut event.what
                        && event.at == *at
                    {
                        meal.outcome = *outcome;
                        meal.out = *out;
                    }
                }
            }
        }
    }

    fn insert(&mut self, at: LocalTime, what: What) {
        let place = self.journal.events.partition_point(|event| event.at <= at);
        self.journal.events.insert(place, Event { at, what });
    }
}

/// A pot planned for a day. Instants in seconds of local time.
struct Plan {
    put_in_s: i64,
    meal: Meal,
}

/// Lives so many days; `any_hour` for a thermometer that is read at any hour of the day.
pub(crate) fn live(household: &mut Household, seed: u64, days: u32, any_hour: bool) -> Lived {
    let mut random = Random::new(seed, 2);
    let first_day = household.first_day;
    if household.begins_warm {
        for day in first_day - 2..first_day {
            let light = household.truth.outside.day(day);
            let end_s = i64::from(day + 1) * 86_400;
            household.truth.kitchen.run(end_s, &light);
        }
    }
    let mut lived = Lived {
        asked: Vec::new(),
        notes: Vec::new(),
    };
    for number in 0..days {
        let day = Day(first_day + number as i32);
        let light = household.truth.outside.day(day.0);
        write_sky(household, day, &light, &mut random, &mut lived.notes);
        live_day(
            household,
            (number + 1, day, any_hour),
            &light,
            &mut random,
            &mut lived,
        );
    }
    lived.notes.sort_by_key(|note| note.known_at);
    lived
}

fn live_day(
    household: &mut Household,
    (number, day, any_hour): (u32, Day, bool),
    light: &TrueDay,
    random: &mut Random,
    lived: &mut Lived,
) {
    let plans = plans(household, day, random);
    // Most readings are taken to know what the evening's pot will meet, some at any hour.
    let mut reading_s = random.chance(0.92).then(|| {
        let any_s = day.at_s((random.between(8.0, 20.0) * 3600.0) as i64).0;
        let before_s = (random.between(0.0, 3600.0)) as i64;
        let mut is_before = || random.chance(0.6) && !any_hour;
        let evening = plans.last().filter(|_| is_before());
        evening.map_or(any_s, |plan| plan.put_in_s - before_s)
    });
    for plan in plans {
        if let Some(at_s) = reading_s.filter(|at_s| *at_s < plan.put_in_s) {
            read(household, at_s, light, random, lived);
            reading_s = None;
        }
        household.truth.kitchen.run(plan.put_in_s, light);
        let store_c = household.truth.kitchen.row.mixed_c();
        cook(
            household,
            (number, day),
            &plan,
            store_c,
            light,
            random,
            lived,
        );
    }
    if let Some(at_s) = reading_s
        && household.truth.kitchen.now_s <= at_s
    {
        read(household, at_s, light, random, lived);
    }
    household.truth.kitchen.run(day.plus(1).start().0, light);
}

fn read(
    household: &mut Household,
    at_s: i64,
    light: &TrueDay,
    random: &mut Random,
    lived: &mut Lived,
) {
    let kitchen = &mut household.truth.kitchen;
    kitchen.run(at_s, light);
    let habits = &household.habits;
    let true_c = kitchen.row.store_c_at(habits.thermometer_place);
    let shown_c = true_c + habits.thermometer_off_k + 1.5 * random.normal();
    let marks_k = habits.thermometer_marks_k;
    lived.notes.push(Note {
        known_at: LocalTime(at_s),
        what: Known::Reading(LocalTime(at_s), marks_k * (shown_c / marks_k).round()),
    });
}

/// What is to be cooked on a day, and when.
fn plans(household: &Household, day: Day, random: &mut Random) -> Vec<Plan> {
    let habits = &household.habits;
    let mut plans = Vec::new();
    if random.chance(habits.breakfasts) {
        let dish = if random.chance(0.5) {
            Dish::TeaWater
        } else {
            Dish::MaizePorridge
        };
        let put_in_s = day.at_s((random.between(5.5, 7.5) * 3600.0) as i64).0;
        plans.push(plan(household, dish, put_in_s, random));
    }
    if random.chance(0.92) {
        let weighted: Vec<(Dish, f64)> = habits.dishes.iter().map(|dish| (*dish, 1.0)).collect();
        let dish = random.pick(&weighted).unwrap_or(Dish::WhiteRice);
        let put_in_s = day.at_s((random.between(16.0, 19.0) * 3600.0) as i64).0;
        plans.push(plan(household, dish, put_in_s, random));
    }
    plans
}

fn plan(household: &Household, dish: Dish, put_in_s: i64, random: &mut Random) -> Plan {
    let props = dish.props();
    let pot = household.cooker.pot;
    let persons = (household.habits.persons + random.normal()).max(1.0);
    let mut food_kg = persons * props.portion_kg.value;
    let mut water_kg = food_kg * props.water_per_food.value * random.factor(0.08);
    let most_kg = 0.8 * pot.size.props().volume_l;
    let over = (food_kg + water_kg) / most_kg;
    if 1.0 < over {
        food_kg /= over;
        water_kg /= over;
    }
    let round = |kg: f64| (kg * 20.0).round() / 20.0;
    let cooking_min = if props.basis == Basis::Liquid {
        0.0
    } else {
        props.minutes_at_100_c.value
    };
    let stay_min = 1.2 * cooking_min + random.between(40.0, 160.0);
    let eat_s = put_in_s + (stay_min / 15.0).round() as i64 * 900;
    Plan {
        put_in_s,
        meal: Meal {
            dish,
            food_kg: round(food_kg).max(0.05),
            water_kg: round(water_kg),
            start_c: 20.0,
            pot,
            lid: Lid::On,
            out: None,
            eat_at: LocalTime(eat_s).ceil_to_s(900),
            outcome: Outcome::default(),
        },
    }
}

fn cook(
    household: &mut Household,
    (number, day): (u32, Day),
    plan: &Plan,
    store_c: f64,
    light: &TrueDay,
    random: &mut Random,
    lived: &mut Lived,
) {
    let habits = household.habits.clone();
    let lid = if random.chance(habits.lid_ajar) {
        Lid::Ajar
    } else {
        Lid::On
    };
    let truth = &mut household.truth;
    let charge = truth.charge(&plan.meal, lid, habits.measure_share);
    truth.kitchen.put_in(charge);
    let early = random.chance(habits.takes_out_early);
    let lag_s = (60.0 * random.between(5.0, 30.0)) as i64;
    let eat_s = plan.meal.eat_at.0.min(day.plus(1).start().0);
    let (mut left_s, mut fate) = (eat_s, Fate::default());
    while truth.kitchen.now_s < eat_s {
        let next_s = (truth.kitchen.now_s + 300).min(eat_s);
        truth.kitchen.run(next_s, light);
        fate = truth.kitchen.fate().unwrap_or_default();
        if early && ready_s(&fate).is_some_and(|ready_s| ready_s + lag_s <= next_s) {
            left_s = next_s;
            break;
        }
    }
    truth.kitchen.take_out();

    // The clock is read to five minutes, and not always when the pot goes in.
    let logged_s = plan.put_in_s + (180.0 * random.normal()) as i64;
    let at = LocalTime((logged_s + 150).div_euclid(300) * 300);
    lived.asked.push(Asked {
        day: number,
        at,
        put_in: LocalTime(plan.put_in_s),
        meal: plan.meal.clone(),
        store_c,
        boiled_at: fate.boiled_s.map(LocalTime),
        ready_at: ready_s(&fate).map(LocalTime),
    });
    if random.chance(habits.forgets_meal) {
        return;
    }
    let meal_number = lived.asked.len();
    lived.notes.push(Note {
        known_at: at.plus_s(1),
        what: Known::Meal(meal_number, at, plan.meal.clone()),
    });
    let (outcome, out) = seen(&habits, &fate, (at.0, left_s), eat_s, random);
    let wait_s = if random.chance(0.3) { 12 * 3600 } else { 600 };
    lived.notes.push(Note {
        known_at: LocalTime(left_s + wait_s),
        what: Known::Seen(meal_number, outcome, out),
    });
}

/// When the food was done and safe.
fn ready_s(fate: &Fate) -> Option<i64> {
    let ready_s = fate.done_s?.max(fate.safe_s?);
    fate.dry_s
        .is_none_or(|dry_s| ready_s <= dry_s)
        .then_some(ready_s)
}

/// What a household saw of a pot, in whole five minutes.
fn seen(
    habits: &Habits,
    fate: &Fate,
    (put_in_s, left_s): (i64, i64),
    eat_s: i64,
    random: &mut Random,
) -> (Outcome, Option<LocalTime>) {
    let marks = |at_s: i64| LocalTime((at_s + 150).div_euclid(300) * 300);
    let mut outcome = Outcome::default();
    let late_s = |random: &mut Random| (60.0 * random.wait(habits.late_min)) as i64;
    // Water that nearly boils is taken for boiling now and then.
    let boiled_s = fate
        .boiled_s
        .or_else(|| fate.nearly_s.filter(|_| random.chance(0.25)));
    if random.chance(habits.tells_boil) {
        match boiled_s {
            Some(boiled_s) => {
                let noticed_s = boiled_s + late_s(random);
                if noticed_s <= left_s {
                    outcome.boiled_at = Some(marks(noticed_s));
                }
                if random.chance(0.15) {
                    let looked_s = put_in_s + ((boiled_s - put_in_s) as f64 * random.unit()) as i64;
                    outcome.not_boiled_by = Some(marks(looked_s));
                }
            }
            None => outcome.not_boiled_by = Some(marks(left_s)),
        }
    }
    if random.chance(habits.tells_done)
        && let Some(done_s) = fate.done_s
    {
        let noticed_s = done_s + late_s(random);
        outcome.done_at = (noticed_s <= left_s).then(|| marks(noticed_s));
    }
    let out = (left_s < eat_s).then(|| marks(left_s));
    (outcome, out)
}

/// Writes down the sky of a day as the household does.
fn write_sky(
    household: &Household,
    day: Day,
    light: &TrueDay,
    random: &mut Random,
    notes: &mut Vec<Note>,
) {
    let habits = &household.habits;
    if random.chance(habits.forgets_day) {
        return;
    }
    if habits.sky == SkyHabit::SunHours {
        let latitude_deg = household.site.place.latitude_deg;
        let longest_h =
            SolarDay::new(latitude_deg, day.of_year()).map_or(12.0, |solar| solar.daylight_h);
        let felt_h = light.sun_hours + (0.4 + 0.07 * light.sun_hours) * random.normal();
        let logged_h = ((2.0 * felt_h).round() / 2.0).clamp(0.0, (2.0 * longest_h).floor() / 2.0);
        let known_s = if random.chance(0.7) { 16 } else { 32 } * 3600;
        notes.push(Note {
            known_at: day.at_s(known_s),
            what: Known::Sky(day, DayLog::SunHours(logged_h)),
        });
        return;
    }
    let shift = if random.chance(habits.wrong_hour) {
        if random.chance(0.5) { 1 } else { -1 }
    } else {
        0
    };
    let mut logged: [Option<Sky>; 24] = [None; 24];
    let blocks: &[(usize, usize)] = if habits.sky == SkyHabit::Blocks {
        &[(6, 10), (10, 14), (14, 18)]
    } else {
        &[
            (6, 7),
            (7, 8),
            (8, 9),
            (9, 10),
            (10, 11),
            (11, 12),
            (12, 13),
            (13, 14),
            (14, 15),
            (15, 16),
            (16, 17),
            (17, 18),
        ]
    };
    for &(from, to) in blocks {
        if random.chance(habits.forgets_hour) {
            continue;
        }
        let hours = (from as i32 + shift).max(0) as usize..(to as i32 + shift).max(1) as usize;
        let Some(seen) = commonest(&light.skies[hours]) else {
            continue;
        };
        let word = if random.chance(habits.wrong_word) {
            neighbour(seen, random.chance(0.5))
        } else {
            seen
        };
        logged[from..to].fill(Some(word));
        notes.push(Note {
            known_at: day.at_s(3600 * to as i64 + (3600.0 * random.unit()) as i64),
            what: Known::Sky(day, DayLog::Hourly(logged)),
        });
    }
}

fn commonest(skies: &[Sky]) -> Option<Sky> {
    Sky::ALL
        .into_iter()
        .max_by_key(|sky| skies.iter().filter(|held| *held == sky).count())
}

fn neighbour(sky: Sky, brighter: bool) -> Sky {
    let place = Sky::ALL.iter().position(|held| *held == sky).unwrap_or(2);
    let next = if brighter {
        place.saturating_sub(1)
    } else {
        (place + 1).min(Sky::ALL.len() - 1)
    };
    Sky::ALL[next]
}
