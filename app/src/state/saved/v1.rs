//! The first saved shape. Frozen: a change of it is a new version.

mod cooker;
mod diary;
mod leaf;
mod plan;

use std::collections::BTreeMap;

use model::place::{AirYear, Place};
use serde::{Deserialize, Serialize};

use crate::i18n::Language;
use crate::state::document::{Document, Household, OwnedCooker, Whose};
use crate::state::ids::{CookerId, EntryId};
use crate::state::saved::{DecodeError, time};
use crate::state::settings::{Degrees, LanguageChoice, Settings, Theme};

#[derive(Serialize, Deserialize)]
pub(super) struct Body {
    whose: SavedWhose,
    household: Option<SavedHousehold>,
    cookers: Vec<SavedOwnedCooker>,
    in_use: Option<u32>,
    /// By day, as text.
    skies: BTreeMap<String, diary::SavedSky>,
    entries: Vec<diary::SavedEntry>,
    running: Option<u32>,
    plan: Option<plan::SavedPlan>,
    settings: SavedSettings,
    erased: Vec<diary::SavedErased>,
    next_id: u32,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedWhose {
    Own,
    Example,
}

#[derive(Serialize, Deserialize)]
struct SavedHousehold {
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_m: f64,
    utc_offset_min: i32,
    air_day_c: [f64; 12],
    air_night_c: [f64; 12],
    people: u32,
}

#[derive(Serialize, Deserialize)]
struct SavedOwnedCooker {
    id: u32,
    name: String,
    cooker: cooker::SavedCooker,
}

#[derive(Serialize, Deserialize)]
struct SavedSettings {
    /// A language tag; none for the browser's choice. A tag of a language that is gone falls back
    /// to the browser's choice.
    language: Option<String>,
    theme: SavedTheme,
    degrees: SavedDegrees,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedTheme {
    Automatic,
    Light,
    Dark,
}

#[derive(Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedDegrees {
    Celsius,
    Fahrenheit,
}

impl Body {
    pub(super) fn from_document(document: &Document) -> Self {
        let skies = &document.skies;
        Self {
            whose: match document.whose {
                Whose::Own => SavedWhose::Own,
                Whose::Example => SavedWhose::Example,
            },
            household: document
                .household
                .as_ref()
                .map(SavedHousehold::from_household),
            cookers: document
                .cookers
                .iter()
                .map(SavedOwnedCooker::from_owned)
                .collect(),
            in_use: document.in_use.map(|id| id.0),
            skies: skies
                .iter()
                .map(|(day, log)| (time::day(*day), diary::SavedSky::from_log(log)))
                .collect(),
            entries: document
                .entries
                .iter()
                .map(diary::SavedEntry::from_entry)
                .collect(),
            running: document.running.map(|id| id.0),
            plan: document.plan.as_ref().map(plan::SavedPlan::from_plan),
            settings: SavedSettings::from_settings(document.settings),
            erased: document
                .erased
                .iter()
                .map(diary::SavedErased::from_erased)
                .collect(),
            next_id: document.next_id,
        }
    }

    pub(super) fn into_document(self) -> Result<Document, DecodeError> {
        let mut document = Document {
            whose: match self.whose {
                SavedWhose::Own => Whose::Own,
                SavedWhose::Example => Whose::Example,
            },
            household: self.household.map(SavedHousehold::into_household),
            cookers: each("cookers", self.cookers, SavedOwnedCooker::into_owned)?,
            in_use: self.in_use.map(CookerId),
            skies: BTreeMap::new(),
            entries: each("entries", self.entries, diary::SavedEntry::into_entry)?,
            running: self.running.map(EntryId),
            plan: self.plan.map(plan::SavedPlan::into_plan).transpose()?,
            settings: self.settings.into_settings(),
            erased: each("erased", self.erased, diary::SavedErased::into_erased)?,
            next_id: self.next_id,
        };
        for (text, sky) in self.skies {
            let day = time::read_day(&text).ok_or_else(|| DecodeError::value("skies", &text))?;
            let log = sky
                .into_log()
                .map_err(|error| error.within(&format!("skies.{text}")))?;
            document.skies.insert(day, log);
        }
        check_links(&document)?;
        Ok(document)
    }
}

/// Numbers that are used twice, or point at nothing.
fn check_links(document: &Document) -> Result<(), DecodeError> {
    let mut ids: Vec<u32> = document.cookers.iter().map(|cooker| cooker.id.0).collect();
    ids.extend(document.entries.iter().map(|entry| entry.id.0));
    ids.sort_unstable();
    let twice = ids.windows(2).find(|pair| pair.first() == pair.last());
    if let Some(id) = twice.and_then(|pair| pair.first()) {
        return Err(DecodeError::value("id", id));
    }
    if ids.last().is_some_and(|last| document.next_id <= *last) {
        return Err(DecodeError::value("next_id", document.next_id));
    }
    if let Some(id) = document.in_use.filter(|id| document.cooker(*id).is_none()) {
        return Err(DecodeError::value("in_use", id.0));
    }
    if let Some(id) = document.running.filter(|id| document.entry(*id).is_none()) {
        return Err(DecodeError::value("running", id.0));
    }
    for (idx, entry) in document.entries.iter().enumerate() {
        if document.cooker(entry.cooker).is_none() {
            return Err(DecodeError::value(
                &format!("entries[{idx}].cooker"),
                entry.cooker.0,
            ));
        }
    }
    let in_order = document
        .entries
        .is_sorted_by_key(|entry| (entry.at, entry.id));
    if in_order {
        Ok(())
    } else {
        Err(DecodeError::value("entries", "not by time"))
    }
}

/// Each of a list, with the place of the one that fails.
fn each<A, B>(
    name: &str,
    list: Vec<A>,
    read: impl Fn(A) -> Result<B, DecodeError>,
) -> Result<Vec<B>, DecodeError> {
    list.into_iter()
        .enumerate()
        .map(|(idx, item)| read(item).map_err(|error| error.within(&format!("{name}[{idx}]"))))
        .collect()
}

impl SavedHousehold {
    fn from_household(household: &Household) -> Self {
        let Household { place, air, people } = household;
        Self {
            latitude_deg: place.latitude_deg,
            longitude_deg: place.longitude_deg,
            altitude_m: place.altitude_m,
            utc_offset_min: place.utc_offset_min,
            air_day_c: air.day_c,
            air_night_c: air.night_c,
            people: *people,
        }
    }

    fn into_household(self) -> Household {
        Household {
            place: Place {
                latitude_deg: self.latitude_deg,
                longitude_deg: self.longitude_deg,
                altitude_m: self.altitude_m,
                utc_offset_min: self.utc_offset_min,
            },
            air: AirYear {
                day_c: self.air_day_c,
                night_c: self.air_night_c,
            },
            people: self.people,
        }
    }
}

impl SavedOwnedCooker {
    fn from_owned(owned: &OwnedCooker) -> Self {
        Self {
            id: owned.id.0,
            name: owned.name.clone(),
            cooker: cooker::SavedCooker::from_cooker(&owned.cooker),
        }
    }

    fn into_owned(self) -> Result<OwnedCooker, DecodeError> {
        let cooker = self
            .cooker
            .into_cooker()
            .map_err(|error| error.within("cooker"))?;
        Ok(OwnedCooker {
            id: CookerId(self.id),
            name: self.name,
            cooker,
        })
    }
}

impl SavedSettings {
    fn from_settings(settings: Settings) -> Self {
        Self {
            language: match settings.language {
                LanguageChoice::Automatic => None,
                LanguageChoice::Chosen(language) => Some(language.tag().to_owned()),
            },
            theme: match settings.theme {
                Theme::Automatic => SavedTheme::Automatic,
                Theme::Light => SavedTheme::Light,
                Theme::Dark => SavedTheme::Dark,
            },
            degrees: match settings.degrees {
                Degrees::Celsius => SavedDegrees::Celsius,
                Degrees::Fahrenheit => SavedDegrees::Fahrenheit,
            },
        }
    }

    fn into_settings(self) -> Settings {
        Settings {
            language: self
                .language
                .and_then(|tag| Language::from_tag(&tag))
                .map_or(LanguageChoice::Automatic, LanguageChoice::Chosen),
            theme: match self.theme {
                SavedTheme::Automatic => Theme::Automatic,
                SavedTheme::Light => Theme::Light,
                SavedTheme::Dark => Theme::Dark,
            },
            degrees: match self.degrees {
                SavedDegrees::Celsius => Degrees::Celsius,
                SavedDegrees::Fahrenheit => Degrees::Fahrenheit,
            },
        }
    }
}
