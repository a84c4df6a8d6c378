//! What is cooked and when, as the fields show it.

use model::dish::{Basis, Dish};
use model::local_time::LocalTime;
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};

use super::Voice;
use crate::components::SelectOption;
use crate::present::cooker::list::capital;
use crate::state::limits;
use crate::state::plan::{Amount, Plan};
use crate::state::refused::{Field, Refused, Wrong};

/// What is measured of a meal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Part {
    /// Dry or raw food, by weight.
    Food,
    /// Water poured on.
    Water,
    /// A liquid that is the food.
    Liquid,
}

/// Less than this is no food to be weighed. \[kg\]
const LEAST_FOOD_KG: f64 = 0.01;

/// The amounts of a plan with so much of one part; `pot` is the one it goes into.
///
/// # Errors
///
/// [`Refused`] by the field that was typed, where no meal of this dish can have so much of it.
pub fn measured(plan: &Plan, part: Part, kg: f64, pot: Pot) -> Result<Amount, Refused> {
    let (food_kg, water_kg) = plan.amounts_kg();
    let wet_kg = limits::LEAST_WET_KG;
    let (field, least_kg, most_kg) = match (part, plan.dish.props().basis) {
        (Part::Food, Basis::Dry) => (Field::FoodKg, LEAST_FOOD_KG, limits::FOOD_KG.1),
        (Part::Food, Basis::Fresh | Basis::Liquid) => {
            let least_kg = LEAST_FOOD_KG.max(wet_kg - water_kg);
            (Field::FoodKg, least_kg, limits::FOOD_KG.1)
        }
        // What brings its own water needs none.
        (Part::Water, Basis::Fresh) => {
            let least_kg = (wet_kg - food_kg).max(limits::WATER_KG.0);
            (Field::WaterKg, least_kg, limits::WATER_KG.1)
        }
        (Part::Water, Basis::Dry | Basis::Liquid) => (Field::WaterKg, wet_kg, limits::WATER_KG.1),
        (Part::Liquid, _) => (Field::WaterKg, wet_kg, limits::FOOD_KG.1),
    };
    // No pot of these cookers holds so much: the least that is too much is this one's.
    if most_kg < kg {
        let holds_l = pot.size.props().volume_l;
        return Err(field.refuse(Wrong::PotTooSmall { holds_l }));
    }
    let kg = field.within(kg, (least_kg, most_kg))?;
    Ok(match part {
        Part::Food | Part::Liquid => Amount::Measured {
            food_kg: kg,
            water_kg,
        },
        Part::Water => Amount::Measured {
            food_kg,
            water_kg: kg,
        },
    })
}

/// Food and water in words: `400 g white rice, 0.7 L water`.
pub fn amounts(voice: &Voice<'_>, dish: Dish, (food_kg, water_kg): (f64, f64)) -> String {
    let words = &voice.strings.tonight.plan;
    let name = (voice.strings.tables.dish)(dish);
    let formats = voice.formats;
    match dish.props().basis {
        Basis::Liquid => (words.liquid)(&formats.litres(food_kg + water_kg), name),
        Basis::Dry | Basis::Fresh => {
            (words.food_and_water)(&formats.mass(food_kg), name, &formats.litres(water_kg))
        }
    }
}

/// Every dish, in the order of the table; the key is its place there.
pub fn dishes(voice: &Voice<'_>) -> Vec<SelectOption> {
    let name = |dish: &Dish| (voice.strings.tables.dish)(*dish);
    numbered(Dish::ALL.iter().map(name))
}

/// Every size of pot, the cooker's own marked.
pub fn pot_sizes(voice: &Voice<'_>, usual: Pot) -> Vec<SelectOption> {
    let label = |size: &PotSize| {
        let litres = voice.formats.litres(size.props().volume_l);
        if *size == usual.size {
            (voice.strings.tonight.plan.usual_pot)(&litres)
        } else {
            litres
        }
    };
    let labels: Vec<String> = PotSize::ALL.iter().map(label).collect();
    numbered(labels.iter().map(String::as_str))
}

/// What a pot can be made of.
pub fn pot_kinds(voice: &Voice<'_>) -> Vec<SelectOption> {
    let name = |kind: &PotKind| (voice.strings.tables.pot_kind)(*kind);
    numbered(PotKind::ALL.iter().map(name))
}

/// What can be round a pot.
pub fn wraps(voice: &Voice<'_>) -> Vec<SelectOption> {
    let name = |wrap: &Wrap| (voice.strings.tables.wrap)(*wrap);
    numbered(Wrap::ALL.iter().map(name))
}

/// What can be on a pot.
pub fn lids(voice: &Voice<'_>) -> Vec<SelectOption> {
    let name = |lid: &Lid| (voice.strings.tables.pot_lid)(*lid);
    numbered(Lid::ALL.iter().map(name))
}

/// The key of a row in a list made from all rows.
pub fn key_of<T: PartialEq>(rows: &[T], row: &T) -> String {
    rows.iter()
        .position(|other| other == row)
        .map(|place| place.to_string())
        .unwrap_or_default()
}

/// The row of a key.
pub fn row_of<T: Copy>(rows: &[T], key: &str) -> Option<T> {
    rows.get(key.parse::<usize>().ok()?).copied()
}

/// Under a time field: the day, where it is not today.
pub fn day_hint(voice: &Voice<'_>, at: LocalTime) -> String {
    if at.day() == voice.now.day() {
        return String::new();
    }
    let day = voice.formats.near_day(at.day(), voice.now.day());
    (voice.strings.tonight.plan.on_day)(&day)
}

fn numbered<'a>(labels: impl Iterator<Item = &'a str>) -> Vec<SelectOption> {
    labels
        .enumerate()
        .map(|(place, label)| SelectOption {
            key: place.to_string(),
            label: capital(label),
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::refusal::refusal;
    use crate::present::tests::english;
    use crate::state::sample::{at, pot};

    fn said(dish: Dish, part: Part, kg: f64) -> String {
        let (strings, formats) = english();
        let plan = Plan {
            dish,
            ..Plan::start(2, at(12, 0))
        };
        match measured(&plan, part, kg, pot()) {
            Ok(_) => String::new(),
            Err(why) => refusal(strings, &formats, why, at(12, 0).day()).replace('\u{A0}', " "),
        }
    }

    #[test]
    fn what_no_meal_has_is_refused_beside_its_field_in_its_unit() {
        let holds = "This pot holds 4.0 L, and needs room to boil.";
        for (dish, part, kg, expected) in [
            (Dish::WhiteRice, Part::Water, 0.0, "At least 0.1 L."),
            (Dish::WhiteRice, Part::Water, 99.0, holds),
            (Dish::WhiteRice, Part::Water, 1.0, ""),
            (Dish::WhiteRice, Part::Food, 0.0, "At least 10 g."),
            (Dish::WhiteRice, Part::Food, 99.0, holds),
            (Dish::Potatoes, Part::Water, 0.0, ""),
            (Dish::Potatoes, Part::Water, -1.0, "At least 0 L."),
            (Dish::Milk, Part::Liquid, 0.0, "At least 0.1 L."),
            (Dish::Milk, Part::Liquid, 99.0, holds),
        ] {
            assert_eq!(said(dish, part, kg), expected, "{dish:?} {part:?} {kg}");
        }
    }
}
