//! The answers as a text, so that a reload halfway does not lose them.

use model::presets::Preset;

use super::Draft;
use crate::i18n::format::Formats;
use crate::state::zones::{Whereabouts, ZonePlace};

/// First line of the text; another one was written by another version.
const MARK: &str = "answers 1";

impl Draft {
    /// The answers, one a line.
    pub fn kept(&self) -> String {
        let zone = self.whereabouts.zone.map_or("", |zone| zone.zone);
        let (south, west) = (self.south.to_string(), self.west.to_string());
        [
            MARK,
            zone,
            &self.latitude,
            &south,
            &self.longitude,
            &west,
            &self.height,
            self.preset.key(),
            &self.watts,
            &self.people,
        ]
        .join("\n")
    }

    /// The answers that were kept; what is proposed where none were, or none that can be read.
    pub fn resumed(kept: Option<&str>, whereabouts: Whereabouts, formats: &Formats) -> Self {
        let new = Self::new(whereabouts, formats);
        kept.and_then(|kept| new.read(kept)).unwrap_or(new)
    }

    fn read(&self, kept: &str) -> Option<Self> {
        let lines: Vec<&str> = kept.split('\n').collect();
        let [
            MARK,
            zone,
            latitude,
            south,
            longitude,
            west,
            height,
            preset,
            watts,
            people,
        ] = lines.as_slice()
        else {
            return None;
        };
        Some(Self {
            whereabouts: Whereabouts {
                zone: ZonePlace::of(zone),
                ..self.whereabouts
            },
            latitude: (*latitude).to_owned(),
            south: south.parse().ok()?,
            longitude: (*longitude).to_owned(),
            west: west.parse().ok()?,
            height: (*height).to_owned(),
            preset: Preset::ALL.into_iter().find(|it| it.key() == *preset)?,
            watts: (*watts).to_owned(),
            people: (*people).to_owned(),
        })
    }
}
