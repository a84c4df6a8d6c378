//! The five questions of the first start: what is proposed, what is answered, what comes of it.

mod kept;
mod options;

use model::cooker::Cooker;
use model::place::{AirYear, Place};
use model::presets::Preset;

use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::typed::{self, Mistake, Steps};
use crate::state::action::Action;
use crate::state::document::Household;
use crate::state::limits;
use crate::state::refused::{Field, Wrong};
use crate::state::zones::{LOWLAND_M, Whereabouts, ZonePlace, longitude_of_clock};

pub use options::{land_options, panel_options, people_options, preset_options, towns};

/// A question.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Question {
    /// Where it stands.
    Place,
    /// How high above the sea.
    Height,
    /// What it is built of.
    Cooker,
    /// Watts of panels.
    Panels,
    /// People who usually eat.
    People,
}

impl Question {
    /// Every question, in the order asked.
    pub const ALL: [Self; 5] = [
        Self::Place,
        Self::Height,
        Self::Cooker,
        Self::Panels,
        Self::People,
    ];

    /// The question with this number, from 1.
    pub fn numbered(number: u8) -> Option<Self> {
        let place = usize::from(number.checked_sub(1)?);
        Self::ALL.get(place).copied()
    }

    /// Its number, from 1.
    pub fn from_one(self) -> u8 {
        u8::try_from(self.number() + 1).unwrap_or(u8::MAX)
    }

    /// Its place in the order, from 0.
    pub fn number(self) -> usize {
        Self::ALL.iter().position(|it| *it == self).unwrap_or(0)
    }

    /// The one after it.
    pub fn next(self) -> Option<Self> {
        Self::ALL.get(self.number() + 1).copied()
    }

    /// The one before it.
    pub fn before(self) -> Option<Self> {
        Self::ALL.get(self.number().checked_sub(1)?).copied()
    }

    /// The question in words.
    pub fn words(self, strings: &Strings) -> &'static str {
        let words = &strings.first_start;
        match self {
            Self::Place => words.place,
            Self::Height => words.height,
            Self::Cooker => words.cooker,
            Self::Panels => words.panels,
            Self::People => words.people,
        }
    }
}

/// How high the land is, in four words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Land {
    /// Up to 300 m.
    NearTheSea,
    /// Up to 1100 m.
    Hills,
    /// Up to 2000 m.
    Highland,
    /// Higher.
    Mountains,
}

impl Land {
    /// All of them, the lowest first.
    pub const ALL: [Self; 4] = [
        Self::NearTheSea,
        Self::Hills,
        Self::Highland,
        Self::Mountains,
    ];

    /// The height that stands for it. [m]
    pub fn typical_m(self) -> f64 {
        match self {
            Self::NearTheSea => LOWLAND_M,
            Self::Hills => 800.0,
            Self::Highland => 1500.0,
            Self::Mountains => 2500.0,
        }
    }

    /// Where it ends; the highest does not. [m]
    fn top_m(self) -> Option<f64> {
        match self {
            Self::NearTheSea => Some(300.0),
            Self::Hills => Some(1100.0),
            Self::Highland => Some(2000.0),
            Self::Mountains => None,
        }
    }

    /// The land at a height.
    pub fn at(height_m: f64) -> Self {
        Self::ALL
            .into_iter()
            .find(|land| land.top_m().is_none_or(|top_m| height_m <= top_m))
            .unwrap_or(Self::Mountains)
    }

    fn key(self) -> &'static str {
        match self {
            Self::NearTheSea => "sea",
            Self::Hills => "hills",
            Self::Highland => "highland",
            Self::Mountains => "mountains",
        }
    }
}

/// Watts that panels commonly come in, alone or by twos.
pub const PANELS_W: [u32; 5] = [50, 100, 200, 300, 400];

/// Tables as they commonly are.
pub const PEOPLE: [u32; 6] = [2, 3, 4, 5, 6, 8];

/// How the height's step buttons count. [m]
pub const HEIGHT_STEPS: Steps = Steps {
    by: 100.0,
    range: limits::ALTITUDE_M,
    start: LOWLAND_M,
};

/// How the watts' step buttons count. [W]
pub const WATT_STEPS: Steps = Steps {
    by: 10.0,
    range: limits::PANELS_W,
    start: 100.0,
};

/// How the people's step buttons count.
pub const PEOPLE_STEPS: Steps = Steps {
    by: 1.0,
    range: (1.0, 200.0),
    start: 4.0,
};

/// How the step buttons of latitude and longitude count. [deg]
pub const DEGREE_STEPS: Steps = Steps {
    by: 1.0,
    range: (0.0, 180.0),
    start: 0.0,
};

/// The answers as they stand on the screen.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// Where the device is.
    pub whereabouts: Whereabouts,
    /// Latitude without its sign. [deg]
    pub latitude: String,
    /// South of the equator.
    pub south: bool,
    /// Longitude without its sign. [deg]
    pub longitude: String,
    /// West of Greenwich.
    pub west: bool,
    /// Height above the sea. [m]
    pub height: String,
    /// What the cooker is built of.
    pub preset: Preset,
    /// Watts of all panels. [W]
    pub watts: String,
    /// People who usually eat.
    pub people: String,
}

impl Draft {
    /// What is proposed. Only where the device tells no place is something left to be filled in.
    pub fn new(whereabouts: Whereabouts, formats: &Formats) -> Self {
        let zone = whereabouts.zone;
        // A clock set to universal time says nothing of where it stands.
        let tells_longitude = zone.is_some() || whereabouts.utc_offset_min != 0;
        let longitude_deg = zone.map_or_else(
            || longitude_of_clock(whereabouts.utc_offset_min),
            |zone| zone.longitude_deg,
        );
        let degrees = |degrees: f64| formats.field(degrees.abs(), 1);
        Self {
            whereabouts,
            latitude: zone.map_or_else(String::new, |zone| degrees(zone.latitude_deg)),
            south: zone.is_some_and(|zone| zone.latitude_deg < 0.0),
            longitude: if tells_longitude {
                degrees(longitude_deg)
            } else {
                String::new()
            },
            west: longitude_deg < 0.0,
            height: formats.field(zone.map_or(LOWLAND_M, |zone| zone.altitude_m), 0),
            preset: Preset::AluminiumInPerlite,
            watts: formats.field(WATT_STEPS.start, 0),
            people: formats.field(PEOPLE_STEPS.start, 0),
        }
    }

    /// Takes the town of this time zone: its place and its height.
    pub fn pick_town(&mut self, zone: &str, formats: &Formats) {
        let Some(zone) = ZonePlace::of(zone) else {
            return;
        };
        let whereabouts = Whereabouts {
            zone: Some(zone),
            ..self.whereabouts
        };
        let Self {
            latitude,
            south,
            longitude,
            west,
            height,
            ..
        } = Self::new(whereabouts, formats);
        *self = Self {
            whereabouts,
            latitude,
            south,
            longitude,
            west,
            height,
            ..self.clone()
        };
    }

    /// The time zone of the town that the place is near; empty where it is near none.
    pub fn picked_town(&self) -> &'static str {
        self.town().map_or("", |zone| zone.zone)
    }

    fn town(&self) -> Option<ZonePlace> {
        let (latitude_deg, longitude_deg) = (self.latitude_deg().ok()?, self.longitude_deg().ok()?);
        let near = |a: f64, b: f64| (a - b).abs() < 0.05;
        self.whereabouts.zone.filter(|zone| {
            near(zone.latitude_deg, latitude_deg) && near(zone.longitude_deg, longitude_deg)
        })
    }

    fn degrees(text: &str, field: Field, most: f64, negative: bool) -> Result<f64, Mistake> {
        let degrees = typed::number(text, field, (0.0, most))?;
        Ok(if negative { -degrees } else { degrees })
    }

    /// Latitude, north positive. [deg]
    ///
    /// # Errors
    ///
    /// [`Mistake`] in its field; so for the others.
    pub fn latitude_deg(&self) -> Result<f64, Mistake> {
        let most = limits::LATITUDE_DEG.1;
        Self::degrees(&self.latitude, Field::LatitudeDeg, most, self.south)
    }

    /// Longitude, east positive. [deg]
    ///
    /// # Errors
    ///
    /// [`Mistake`] in its field.
    pub fn longitude_deg(&self) -> Result<f64, Mistake> {
        let most = limits::LONGITUDE_DEG.1;
        Self::degrees(&self.longitude, Field::LongitudeDeg, most, self.west)
    }

    /// Height above the sea. [m]
    ///
    /// # Errors
    ///
    /// [`Mistake`] in its field.
    pub fn height_m(&self) -> Result<f64, Mistake> {
        typed::number(&self.height, Field::AltitudeM, limits::ALTITUDE_M)
    }

    /// Watts of all panels. [W]
    ///
    /// # Errors
    ///
    /// [`Mistake`] in its field.
    pub fn watts_w(&self) -> Result<f64, Mistake> {
        typed::number(&self.watts, Field::ModuleW, limits::PANELS_W)
    }

    /// People who usually eat.
    ///
    /// # Errors
    ///
    /// [`Mistake`] in its field.
    pub fn n_people(&self) -> Result<u32, Mistake> {
        typed::whole(&self.people, Field::People, limits::PEOPLE)
    }

    /// Whether a question has an answer that can be gone on from.
    pub fn is_answered(&self, question: Question) -> bool {
        match question {
            Question::Place => self.latitude_deg().is_ok() && self.longitude_deg().is_ok(),
            Question::Height => self.height_m().is_ok(),
            Question::Cooker => true,
            Question::Panels => self.watts_w().is_ok(),
            Question::People => self.n_people().is_ok(),
        }
    }

    /// The first question without such an answer.
    pub fn unanswered(&self) -> Option<Question> {
        Question::ALL
            .into_iter()
            .find(|question| !self.is_answered(*question))
    }

    /// What the answers come to.
    ///
    /// # Errors
    ///
    /// The first [`Mistake`].
    pub fn household(&self) -> Result<Household, Mistake> {
        let place = Place {
            latitude_deg: self.latitude_deg()?,
            longitude_deg: self.longitude_deg()?,
            altitude_m: self.height_m()?,
            utc_offset_min: self.whereabouts.utc_offset_min,
        };
        // The limits of the fields are narrower than those of the guess.
        let mut air = AirYear::guess(place.latitude_deg, place.altitude_m)
            .map_err(|_| Field::LatitudeDeg.refuse(Wrong::NotANumber))?;
        // A polar ice cap is colder than any kitchen's year is taken to be.
        let (coldest_c, warmest_c) = limits::AIR_C;
        for month_c in air.day_c.iter_mut().chain(&mut air.night_c) {
            *month_c = month_c.clamp(coldest_c, warmest_c);
        }
        Ok(Household {
            place,
            air,
            people: self.n_people()?,
        })
    }

    /// The cooker that the answers describe.
    ///
    /// # Errors
    ///
    /// The first [`Mistake`].
    pub fn cooker(&self) -> Result<Cooker, Mistake> {
        Ok(self.preset.cooker(self.watts_w()?, self.latitude_deg()?))
    }

    /// What sets the household up.
    ///
    /// # Errors
    ///
    /// The first [`Mistake`].
    pub fn action(&self, strings: &Strings) -> Result<Action, Mistake> {
        Ok(Action::SetUp {
            household: self.household()?,
            name: strings.first_start.cooker_name.to_owned(),
            cooker: Box::new(self.cooker()?),
        })
    }

    /// The place in words: by its town as long as it is the zone's, by its degrees otherwise.
    pub fn place_words(&self, strings: &Strings, formats: &Formats) -> Option<String> {
        let words = &strings.first_start;
        let latitude_deg = self.latitude_deg().ok()?;
        let longitude_deg = self.longitude_deg().ok()?;
        Some(match self.town() {
            Some(zone) => (words.place_near)(&zone.name()),
            None => (words.place_at)(
                &formats.field(latitude_deg.abs(), 1),
                self.south,
                &formats.field(longitude_deg.abs(), 1),
                self.west,
            ),
        })
    }

    /// Key of the land the height lies in.
    pub fn picked_land(&self) -> &'static str {
        self.height_m()
            .map_or("", |height_m| Land::at(height_m).key())
    }

    /// Takes the land with this key: its typical height, unless the height is there already.
    pub fn pick_land(&mut self, key: &str, formats: &Formats) {
        let land = Land::ALL.into_iter().find(|land| land.key() == key);
        if let Some(land) = land.filter(|_| self.picked_land() != key) {
            self.height = formats.field(land.typical_m(), 0);
        }
    }

    /// Takes the way of building with this key.
    pub fn pick_preset(&mut self, key: &str) {
        if let Some(preset) = Preset::ALL.into_iter().find(|preset| preset.key() == key) {
            self.preset = preset;
        }
    }
}

#[cfg(test)]
mod tests;
