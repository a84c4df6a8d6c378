//! The shape of the first version. Frozen: a change of it is a new version.

mod bench;
mod cooker;
mod diary;
mod names;
mod plan;
mod store;

use std::collections::BinaryHeap;

use model::journal::Formerly;
use model::place::{AirYear, Place};

use crate::i18n::Language;
use crate::state::bench::Bench;
use crate::state::document::{Document, Household, OwnedCooker};
use crate::state::ids::{CookerId, EntryId, ErasedId, RunId};
use crate::state::saved::DecodeError;
use crate::state::saved::reader::{Found, Node, Read};
use crate::state::saved::shape::record;
use crate::state::saved::writer::{Record, Write, Writer};
use crate::state::settings::{LanguageChoice, Settings};

record!(Document {
    whose: "whose",
    household: "household",
    cookers: "cookers",
    in_use: "in_use",
    skies: "skies",
    entries: "entries",
    running: "running",
    plan: "plan",
    bench: "bench" or Bench::default(),
    settings: "settings",
    erased: "erased",
    next_id: "next_id",
});

record!(Settings {
    language: "language",
    theme: "theme",
    degrees: "degrees",
});

/// A document whose numbers point at something.
pub(super) fn read(from: &Node<'_>) -> Result<Document, DecodeError> {
    let document = Document::read(from).map_err(|error| *error)?;
    check_links(&document)?;
    Ok(document)
}

/// Numbers that are used twice, or point at nothing.
fn check_links(document: &Document) -> Result<(), DecodeError> {
    let cookers = document.cookers.iter().map(|cooker| cooker.id.0);
    let entries = document.entries.iter().map(|entry| entry.id.0);
    let runs = document.bench.runs.iter().map(|run| run.id.0);
    let ids = cookers
        .chain(entries)
        .chain(runs)
        .collect::<BinaryHeap<u32>>();
    let ids = ids.into_sorted_vec();
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
    for (idx, run) in document.bench.runs.iter().enumerate() {
        if document.cooker(run.cooker).is_none() {
            return Err(DecodeError::value(
                &format!("bench.runs[{idx}].cooker"),
                run.cooker.0,
            ));
        }
        if !run.typed().is_sorted_by(|a, b| a.at < b.at) {
            return Err(DecodeError::value(
                &format!("bench.runs[{idx}].readings"),
                "not by time",
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

record!(Formerly {
    until: "until",
    cooker: "cooker",
});

/// What came after the first saves is written where there is any.
impl Write for OwnedCooker {
    fn write(&self, out: &mut Writer) {
        let Self {
            id,
            name,
            cooker,
            formerly,
            is_asked,
        } = self;
        let mut fields: Vec<(&str, &dyn Write)> =
            vec![("id", id), ("name", name), ("cooker", cooker)];
        if !formerly.is_empty() {
            fields.push(("formerly", formerly));
        }
        if *is_asked {
            fields.push(("asked", is_asked));
        }
        Record(&fields).write(out);
    }
}

impl Read for OwnedCooker {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            id: from.get("id")?,
            name: from.get("name")?,
            cooker: from.get("cooker")?,
            formerly: Option::unwrap_or_default(from.get("formerly")?),
            is_asked: Option::unwrap_or_default(from.get("asked")?),
        })
    }
}

impl Write for Household {
    fn write(&self, out: &mut Writer) {
        let Self { place, air, people } = self;
        Record(&[
            ("latitude_deg", &place.latitude_deg),
            ("longitude_deg", &place.longitude_deg),
            ("altitude_m", &place.altitude_m),
            ("utc_offset_min", &place.utc_offset_min),
            ("air_day_c", &air.day_c),
            ("air_night_c", &air.night_c),
            ("people", people),
        ])
        .write(out);
    }
}

impl Read for Household {
    fn read(from: &Node<'_>) -> Found<Self> {
        Ok(Self {
            place: Place {
                latitude_deg: from.get("latitude_deg")?,
                longitude_deg: from.get("longitude_deg")?,
                altitude_m: from.get("altitude_m")?,
                utc_offset_min: from.get("utc_offset_min")?,
            },
            air: AirYear {
                day_c: from.get("air_day_c")?,
                night_c: from.get("air_night_c")?,
            },
            people: from.get("people")?,
        })
    }
}

/// As a language tag; none for the browser's choice.
impl Write for LanguageChoice {
    fn write(&self, out: &mut Writer) {
        match self {
            Self::Automatic => None,
            Self::Chosen(language) => Some(language.tag()),
        }
        .write(out);
    }
}

/// A tag of a language that is gone falls back to the browser's choice.
impl Read for LanguageChoice {
    fn read(from: &Node<'_>) -> Found<Self> {
        let tag = Option::<String>::read(from)?;
        let language = tag.and_then(|tag| Language::from_tag(&tag));
        Ok(language.map_or(Self::Automatic, Self::Chosen))
    }
}

/// Numbers that name things.
macro_rules! ids {
    ($($of:ident)*) => {$(
        impl Write for $of {
            fn write(&self, out: &mut Writer) {
                self.0.write(out);
            }
        }

        impl Read for $of {
            fn read(from: &Node<'_>) -> Found<Self> {
                u32::read(from).map(Self)
            }
        }
    )*};
}

ids!(CookerId EntryId ErasedId RunId);
