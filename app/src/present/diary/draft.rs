//! An entry while it is typed.

use model::dish::{Basis, Dish};
use model::journal::{Felt, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};

use super::{day_field, day_from_field};
use crate::i18n::format::Formats;
use crate::present::typed::{self, Mistake, Steps};
use crate::state::limits;
use crate::state::parse::ParseError;
use crate::state::plan::{Amount, Plan, TimeOfDay};
use crate::state::refused::{Field, Wrong};

/// How long a meal that is added here stayed in, until it is told. [s]
const MEAL_S: i64 = 90 * 60;

/// What can be added.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// A thermometer in the store.
    Reading,
    /// A hand near the store.
    Felt,
    /// A pot of food.
    Meal,
    /// The lid stood open.
    LidOpen,
    /// The heater got nothing.
    HeaterOff,
    /// Heat came from the grid or a fire.
    TopUp,
}

impl Kind {
    /// Every kind, in the order of the buttons.
    pub const ALL: [Self; 6] = [
        Self::Meal,
        Self::Reading,
        Self::Felt,
        Self::LidOpen,
        Self::HeaterOff,
        Self::TopUp,
    ];

    /// The kind of an entry.
    pub fn of(what: &What) -> Self {
        match what {
            What::Reading { .. } => Self::Reading,
            What::Felt(_) => Self::Felt,
            What::Meal(_) => Self::Meal,
            What::LidOpen { .. } => Self::LidOpen,
            What::HeaterOff { .. } => Self::HeaterOff,
            What::TopUp { .. } => Self::TopUp,
        }
    }

    /// The seconds of the unit that its length is typed in: minutes of a lid or a top-up,
    /// hours of a heater.
    fn unit_s(self) -> f64 {
        if self == Self::HeaterOff {
            3600.0
        } else {
            60.0
        }
    }

    /// How its number is stepped, in the unit it is typed in.
    pub fn steps(self, formats: &Formats) -> Steps {
        let degrees = formats.degrees;
        match self {
            Self::Reading => Steps {
                by: 5.0,
                range: (
                    degrees.from_c(limits::READING_C.0),
                    degrees.from_c(limits::READING_C.1),
                ),
                start: degrees.from_c(150.0).round(),
            },
            Self::LidOpen => Steps {
                by: 5.0,
                range: (1.0, 1440.0),
                start: 10.0,
            },
            Self::HeaterOff => Steps {
                by: 0.5,
                range: (0.5, 1440.0),
                start: 2.0,
            },
            Self::TopUp => Steps {
                by: 10.0,
                range: (1.0, 1440.0),
                start: 30.0,
            },
            Self::Meal | Self::Felt => KILOGRAM_STEPS,
        }
    }
}

/// How weights and litres are stepped.
pub const KILOGRAM_STEPS: Steps = Steps {
    by: 0.1,
    range: (0.0, 30.0),
    start: 0.5,
};

/// How the heat of a top-up is stepped, in watts.
pub const POWER_STEPS: Steps = Steps {
    by: 50.0,
    range: limits::TOP_UP_W,
    start: 300.0,
};

/// What was seen of a meal, as time fields; empty where nobody looked.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct SeenText {
    /// When the pot came out.
    pub out: String,
    /// When it boiled.
    pub boiled: String,
    /// When it was looked at and did not boil.
    pub not_boiled: String,
    /// When it was tasted and was not done.
    pub not_done: String,
    /// When it was done.
    pub done: String,
}

/// The fields of the sheet, as they were typed.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// What kind of entry it is.
    pub kind: Kind,
    /// The day it began on.
    pub day: String,
    /// The time it began at.
    pub time: String,
    /// The reading, or how long.
    pub number: String,
    /// Heat of a top-up into the store, in watts.
    pub power: String,
    /// Food by weight, or a liquid by volume.
    pub food: String,
    /// Water by volume.
    pub water: String,
    /// Temperature of what goes in.
    pub start: String,
    /// When it is eaten.
    pub eat: String,
    /// What was seen of it.
    pub seen: SeenText,
    /// What a hand told.
    pub felt: Felt,
    /// Dish, pot and lid; the other parts stand for what was there before.
    pub meal: Meal,
    /// When it was, if it is in the diary already.
    was_at: Option<LocalTime>,
}

impl Draft {
    /// A new entry. `meal` is what a meal here usually is, `top_up_w` the heat of a top-up.
    pub fn new(
        kind: Kind,
        at: LocalTime,
        mut meal: Meal,
        top_up_w: f64,
        formats: &Formats,
    ) -> Self {
        meal.eat_at = at.plus_s(MEAL_S);
        meal.out = None;
        meal.outcome = Outcome::default();
        let mut draft = Self::of_meal(at, meal, formats);
        draft.kind = kind;
        draft.power = formats.field(top_up_w, 0);
        draft.number = match kind {
            Kind::Reading | Kind::Felt | Kind::Meal => String::new(),
            Kind::LidOpen | Kind::HeaterOff | Kind::TopUp => {
                formats.field(kind.steps(formats).start, 1)
            }
        };
        draft
    }

    /// An entry that is in the diary. `meal` stands in where it is none.
    pub fn of(at: LocalTime, what: &What, meal: Meal, formats: &Formats) -> Self {
        let meal = match what {
            What::Meal(meal) => meal.clone(),
            What::Reading { .. }
            | What::Felt(_)
            | What::LidOpen { .. }
            | What::HeaterOff { .. }
            | What::TopUp { .. } => meal,
        };
        let kind = Kind::of(what);
        Self {
            kind,
            number: match what {
                What::Reading { store_c } => formats.field(formats.degrees.from_c(*store_c), 1),
                What::LidOpen { for_s } | What::HeaterOff { for_s } | What::TopUp { for_s, .. } => {
                    formats.field(seconds(*for_s) / kind.unit_s(), 2)
                }
                What::Meal(_) | What::Felt(_) => String::new(),
            },
            felt: match what {
                What::Felt(felt) => *felt,
                _ => Felt::Hot,
            },
            power: match what {
                What::TopUp { heat_w, .. } => formats.field(*heat_w, 0),
                _ => String::new(),
            },
            was_at: Some(at),
            ..Self::of_meal(at, meal, formats)
        }
    }

    fn of_meal(at: LocalTime, meal: Meal, formats: &Formats) -> Self {
        let time = |at: LocalTime| TimeOfDay::of(at).field();
        let told = |at: Option<LocalTime>| at.map(time).unwrap_or_default();
        let liquid_kg = match meal.dish.props().basis {
            Basis::Liquid => meal.water_kg,
            Basis::Dry | Basis::Fresh => 0.0,
        };
        Self {
            kind: Kind::Meal,
            day: day_field(at.day()),
            time: time(at),
            number: String::new(),
            power: String::new(),
            food: formats.field(meal.food_kg + liquid_kg, 2),
            water: formats.field(meal.water_kg - liquid_kg, 2),
            start: formats.field(formats.degrees.from_c(meal.start_c), 0),
            eat: time(meal.eat_at),
            seen: SeenText {
                out: told(meal.out),
                boiled: told(meal.outcome.boiled_at),
                not_boiled: told(meal.outcome.not_boiled_by),
                not_done: told(meal.outcome.not_done_by),
                done: told(meal.outcome.done_at),
            },
            meal,
            was_at: None,
            felt: Felt::Hot,
        }
    }

    /// Another dish, with what so many people eat of it.
    pub fn change_dish(&mut self, dish: Dish, people: u32, formats: &Formats) {
        let plan = Plan {
            dish,
            amount: Amount::People(people),
            ..Plan::start(people, LocalTime(0))
        };
        let (food_kg, water_kg) = plan.amounts_kg();
        self.meal.dish = dish;
        let is_liquid = dish.props().basis == Basis::Liquid;
        let (food, water) = if is_liquid {
            (food_kg + water_kg, 0.0)
        } else {
            (food_kg, water_kg)
        };
        self.food = formats.field(food, 2);
        self.water = formats.field(water, 2);
    }

    /// Whether it is a meal of a liquid, which has no weight and water of its own.
    pub fn is_liquid(&self) -> bool {
        self.meal.dish.props().basis == Basis::Liquid
    }

    /// The entry that is meant.
    ///
    /// # Errors
    ///
    /// [`Mistake`] with the first field that can't be read.
    pub fn read(&self, formats: &Formats) -> Result<(LocalTime, What), Mistake> {
        let at = self.at()?;
        let what = match self.kind {
            Kind::Reading => {
                let typed = typed::number(&self.number, Field::ReadingC, ANY)?;
                let store_c = formats.degrees.to_c(typed);
                What::Reading {
                    store_c: Field::ReadingC.within(store_c, limits::READING_C)?,
                }
            }
            Kind::Felt => What::Felt(self.felt),
            Kind::LidOpen => What::LidOpen {
                for_s: self.span_s(limits::LID_OPEN_S)?,
            },
            Kind::HeaterOff => What::HeaterOff {
                for_s: self.span_s(limits::HEATER_OFF_S)?,
            },
            Kind::TopUp => What::TopUp {
                heat_w: typed::number(&self.power, Field::TopUpW, limits::TOP_UP_W)?,
                for_s: self.span_s(limits::TOP_UP_S)?,
            },
            Kind::Meal => What::Meal(self.meal(at, formats)?),
        };
        Ok((at, what))
    }

    fn at_field(&self) -> Field {
        if self.kind == Kind::Meal {
            Field::PutIn
        } else {
            Field::At
        }
    }

    fn at(&self) -> Result<LocalTime, Mistake> {
        let day = day_from_field(&self.day).ok_or(Mistake::Text(Field::Day, ParseError::Empty))?;
        let field = self.at_field();
        let time =
            TimeOfDay::from_field(&self.time).ok_or(Mistake::Text(field, ParseError::Empty))?;
        // The seconds of what is in the diary are kept as long as nobody changes its time.
        let same = self
            .was_at
            .filter(|at| at.day() == day && TimeOfDay::of(*at) == time);
        Ok(same.unwrap_or(time.on(day)))
    }

    fn span_s(&self, (least_s, most_s): (i64, i64)) -> Result<i64, Mistake> {
        let typed = typed::number(&self.number, Field::ForS, ANY)?;
        let for_s = Field::ForS.within(
            (typed * self.kind.unit_s()).round(),
            (seconds(least_s), seconds(most_s)),
        )?;
        #[expect(
            clippy::cast_possible_truncation,
            reason = "whole, and within the limits"
        )]
        let for_s = for_s as i64;
        Ok(for_s)
    }

    fn meal(&self, at: LocalTime, formats: &Formats) -> Result<Meal, Mistake> {
        let was = &self.meal;
        // A liquid is measured in litres.
        let of_food = if self.is_liquid() {
            Field::WaterKg
        } else {
            Field::FoodKg
        };
        let food_kg = typed::number(&self.food, of_food, limits::FOOD_KG)?;
        let water_kg = if self.is_liquid() {
            0.0
        } else {
            typed::number(&self.water, Field::WaterKg, limits::WATER_KG)?
        };
        let start = typed::number(&self.start, Field::StartC, ANY)?;
        let shown_start = formats.field(formats.degrees.from_c(was.start_c), 0);
        let start_c = if shown_start == self.start {
            was.start_c
        } else {
            formats.degrees.to_c(start)
        };
        let eat_at = instant(&self.eat, at, Some(was.eat_at), Field::EatAt)?
            .ok_or(Mistake::Text(Field::EatAt, ParseError::Empty))?;
        let (seen, saw) = (&self.seen, was.outcome);
        Ok(Meal {
            food_kg,
            water_kg,
            start_c: Field::StartC.within(start_c, limits::START_C)?,
            eat_at,
            out: instant(&seen.out, at, was.out, Field::OutAt)?,
            outcome: Outcome {
                boiled_at: instant(&seen.boiled, at, saw.boiled_at, Field::BoiledAt)?,
                not_boiled_by: instant(
                    &seen.not_boiled,
                    at,
                    saw.not_boiled_by,
                    Field::NotBoiledBy,
                )?,
                done_at: instant(&seen.done, at, saw.done_at, Field::DoneAt)?,
                not_done_by: instant(&seen.not_done, at, saw.not_done_by, Field::NotDoneBy)?,
            },
            ..was.clone()
        })
    }

    /// The day of a time of the meal, where it is not the day the pot went in.
    pub fn other_day(&self, text: &str) -> Option<Day> {
        let at = self.at().ok()?;
        let time = instant(text, at, None, Field::At).ok()??;
        (at.day() < time.day()).then_some(time.day())
    }

    /// The field beside which a mistake is said.
    pub fn place_of(&self, mistake: &Mistake) -> Field {
        match mistake.field() {
            // A liquid has one field for food and water.
            Field::WaterKg if self.is_liquid() => Field::FoodKg,
            Field::At | Field::PutIn => Field::At,
            field => field,
        }
    }
}

/// The limits are looked at after the unit is known.
const ANY: (f64, f64) = (f64::MIN, f64::MAX);

/// Such a time of day from `at` on; the instant that was there where it is still meant. One from
/// shortly before `at` stays there, to be refused.
fn instant(
    text: &str,
    at: LocalTime,
    was: Option<LocalTime>,
    field: Field,
) -> Result<Option<LocalTime>, Mistake> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let time = TimeOfDay::from_field(text).ok_or(field.refuse(Wrong::NotANumber))?;
    if let Some(was) = was.filter(|was| TimeOfDay::of(*was) == time && at <= *was) {
        return Ok(Some(was));
    }
    Ok(Some(time.since(at)))
}

fn seconds(span_s: i64) -> f64 {
    i32::try_from(span_s).map_or(f64::MAX, f64::from)
}

#[cfg(test)]
mod tests;
