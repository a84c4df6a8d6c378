//! Skies, entries and what was erased, as saved.

use model::journal::{Felt, Meal, Outcome, What};
use model::local_time::LocalTime;
use model::sun::{DayLog, Sky};
use serde::{Deserialize, Serialize};

use super::cooker::SavedPot;
use super::{SavedOwnedCooker, each, leaf};
use crate::state::document::Entry;
use crate::state::erased::{Erased, ErasedWhat};
use crate::state::ids::{CookerId, EntryId, ErasedId};
use crate::state::saved::{DecodeError, time};

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub(super) enum SavedSky {
    /// Hours of sun.
    SunHours(f64),
    /// A letter an hour: `c`lear, `t`hin, `p`atchy, `g`rey, `d`ark; `.` where none was logged.
    Hourly(String),
}

#[derive(Serialize, Deserialize)]
pub(super) struct SavedEntry {
    id: u32,
    cooker: u32,
    at: String,
    what: SavedWhat,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedWhat {
    Reading { store_c: f64 },
    Felt(SavedFelt),
    Meal(Box<SavedMeal>),
    LidOpen { for_s: i64 },
    HeaterOff { for_s: i64 },
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedFelt {
    Cold,
    Hot,
}

#[derive(Serialize, Deserialize)]
struct SavedMeal {
    dish: String,
    food_kg: f64,
    water_kg: f64,
    start_c: f64,
    pot: SavedPot,
    lid: String,
    out: Option<String>,
    eat_at: String,
    boiled_at: Option<String>,
    not_boiled_by: Option<String>,
    done_at: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    not_done_by: Option<String>,
}

#[derive(Serialize, Deserialize)]
pub(super) struct SavedErased {
    id: u32,
    at: String,
    what: SavedErasedWhat,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedErasedWhat {
    Entry {
        entry: SavedEntry,
        was_running: bool,
    },
    Cooker {
        cooker: Box<SavedOwnedCooker>,
        place: u32,
        was_in_use: bool,
        entries: Vec<SavedEntry>,
    },
    Sky {
        day: String,
        log: SavedSky,
    },
}

/// The letter of each sky.
const SKIES: [(Sky, char); 5] = [
    (Sky::Clear, 'c'),
    (Sky::Thin, 't'),
    (Sky::Patchy, 'p'),
    (Sky::Grey, 'g'),
    (Sky::Dark, 'd'),
];

/// The letter of an hour that nobody looked at.
const NOT_LOGGED: char = '.';

impl SavedSky {
    pub(super) fn from_log(log: &DayLog) -> Self {
        match log {
            DayLog::SunHours(hours) => Self::SunHours(*hours),
            DayLog::Hourly(skies) => Self::Hourly(skies.iter().map(|sky| letter(*sky)).collect()),
        }
    }

    pub(super) fn into_log(self) -> Result<DayLog, DecodeError> {
        match self {
            Self::SunHours(hours) => Ok(DayLog::SunHours(hours)),
            Self::Hourly(letters) => hourly(&letters)
                .map(DayLog::Hourly)
                .ok_or_else(|| DecodeError::value("hourly", letters)),
        }
    }
}

fn letter(sky: Option<Sky>) -> char {
    SKIES
        .iter()
        .find(|(of, _)| Some(*of) == sky)
        .map_or(NOT_LOGGED, |(_, letter)| *letter)
}

fn hourly(letters: &str) -> Option<[Option<Sky>; 24]> {
    let mut skies = [None; 24];
    let mut chars = letters.chars();
    for hour in &mut skies {
        let letter = chars.next()?;
        if letter != NOT_LOGGED {
            *hour = Some(SKIES.iter().find(|(_, of)| *of == letter)?.0);
        }
    }
    chars.next().is_none().then_some(skies)
}

impl SavedEntry {
    pub(super) fn from_entry(entry: &Entry) -> Self {
        Self {
            id: entry.id.0,
            cooker: entry.cooker.0,
            at: time::instant(entry.at),
            what: match &entry.what {
                What::Reading { store_c } => SavedWhat::Reading { store_c: *store_c },
                What::Felt(Felt::Cold) => SavedWhat::Felt(SavedFelt::Cold),
                What::Felt(Felt::Hot) => SavedWhat::Felt(SavedFelt::Hot),
                What::Meal(meal) => SavedWhat::Meal(Box::new(SavedMeal::from_meal(meal))),
                What::LidOpen { for_s } => SavedWhat::LidOpen { for_s: *for_s },
                What::HeaterOff { for_s } => SavedWhat::HeaterOff { for_s: *for_s },
            },
        }
    }

    pub(super) fn into_entry(self) -> Result<Entry, DecodeError> {
        Ok(Entry {
            id: EntryId(self.id),
            cooker: CookerId(self.cooker),
            at: instant("at", &self.at)?,
            what: match self.what {
                SavedWhat::Reading { store_c } => What::Reading { store_c },
                SavedWhat::Felt(SavedFelt::Cold) => What::Felt(Felt::Cold),
                SavedWhat::Felt(SavedFelt::Hot) => What::Felt(Felt::Hot),
                SavedWhat::Meal(meal) => What::Meal(
                    meal.into_meal()
                        .map_err(|error| error.within("what.meal"))?,
                ),
                SavedWhat::LidOpen { for_s } => What::LidOpen { for_s },
                SavedWhat::HeaterOff { for_s } => What::HeaterOff { for_s },
            },
        })
    }
}

impl SavedMeal {
    fn from_meal(meal: &Meal) -> Self {
        let Outcome {
            boiled_at,
            not_boiled_by,
            done_at,
            not_done_by,
        } = meal.outcome;
        Self {
            dish: leaf::name(meal.dish),
            food_kg: meal.food_kg,
            water_kg: meal.water_kg,
            start_c: meal.start_c,
            pot: SavedPot::from_pot(&meal.pot),
            lid: leaf::name(meal.lid),
            out: meal.out.map(time::instant),
            eat_at: time::instant(meal.eat_at),
            boiled_at: boiled_at.map(time::instant),
            not_boiled_by: not_boiled_by.map(time::instant),
            done_at: done_at.map(time::instant),
            not_done_by: not_done_by.map(time::instant),
        }
    }

    fn into_meal(self) -> Result<Meal, DecodeError> {
        Ok(Meal {
            dish: leaf::row("dish", &self.dish)?,
            food_kg: self.food_kg,
            water_kg: self.water_kg,
            start_c: self.start_c,
            pot: self.pot.into_pot().map_err(|error| error.within("pot"))?,
            lid: leaf::row("lid", &self.lid)?,
            out: maybe_instant("out", self.out)?,
            eat_at: instant("eat_at", &self.eat_at)?,
            outcome: Outcome {
                boiled_at: maybe_instant("boiled_at", self.boiled_at)?,
                not_boiled_by: maybe_instant("not_boiled_by", self.not_boiled_by)?,
                done_at: maybe_instant("done_at", self.done_at)?,
                not_done_by: maybe_instant("not_done_by", self.not_done_by)?,
            },
        })
    }
}

impl SavedErased {
    pub(super) fn from_erased(erased: &Erased) -> Self {
        let what = match &erased.what {
            ErasedWhat::Entry { entry, was_running } => SavedErasedWhat::Entry {
                entry: SavedEntry::from_entry(entry),
                was_running: *was_running,
            },
            ErasedWhat::Cooker {
                cooker,
                place,
                was_in_use,
                entries,
            } => SavedErasedWhat::Cooker {
                cooker: Box::new(SavedOwnedCooker::from_owned(cooker)),
                place: u32::try_from(*place).unwrap_or(u32::MAX),
                was_in_use: *was_in_use,
                entries: entries.iter().map(SavedEntry::from_entry).collect(),
            },
            ErasedWhat::Sky { day, log } => SavedErasedWhat::Sky {
                day: time::day(*day),
                log: SavedSky::from_log(log),
            },
        };
        Self {
            id: erased.id.0,
            at: time::instant(erased.at),
            what,
        }
    }

    pub(super) fn into_erased(self) -> Result<Erased, DecodeError> {
        let what = match self.what {
            SavedErasedWhat::Entry { entry, was_running } => ErasedWhat::Entry {
                entry: entry.into_entry().map_err(|error| error.within("entry"))?,
                was_running,
            },
            SavedErasedWhat::Cooker {
                cooker,
                place,
                was_in_use,
                entries,
            } => ErasedWhat::Cooker {
                cooker: Box::new(
                    cooker
                        .into_owned()
                        .map_err(|error| error.within("cooker"))?,
                ),
                place: usize::try_from(place).unwrap_or(usize::MAX),
                was_in_use,
                entries: each("entries", entries, SavedEntry::into_entry)?,
            },
            SavedErasedWhat::Sky { day, log } => ErasedWhat::Sky {
                day: time::read_day(&day).ok_or_else(|| DecodeError::value("day", &day))?,
                log: log.into_log()?,
            },
        };
        Ok(Erased {
            id: ErasedId(self.id),
            at: instant("at", &self.at)?,
            what,
        })
    }
}

fn instant(at: &str, text: &str) -> Result<LocalTime, DecodeError> {
    time::read_instant(text).ok_or_else(|| DecodeError::value(at, text))
}

fn maybe_instant(at: &str, text: Option<String>) -> Result<Option<LocalTime>, DecodeError> {
    text.map(|text| instant(at, &text)).transpose()
}
