//! What is cooked and when, as the fields show it.

use model::dish::{Basis, Dish};
use model::local_time::LocalTime;
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};

use super::Voice;
use crate::components::SelectOption;
use crate::present::cooker::list::capital;

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
