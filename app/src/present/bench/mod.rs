//! What the room Bench shows: its lists on the page, its sheets from the worker.

pub mod compare;
pub mod differ;
pub mod figure;
pub mod found;
pub mod guide;
pub mod import;
pub mod list;
pub mod live;
pub mod plot;
mod pot;
pub mod pot_change;
pub mod results;
pub mod rows;
mod standard;
pub mod taking;
pub mod text;
pub mod timer;
pub mod typing;
pub mod when;

use model::local_time::LocalTime;

use crate::i18n::Language;
use crate::i18n::format::{Formats, LocaleFormat};
use crate::i18n::strings::Strings;
use crate::i18n::strings::report::Report;
use crate::state::settings::Degrees;

/// How the worker says things, and when.
#[derive(Debug, Clone)]
pub struct Speech {
    /// The texts of the page.
    pub strings: &'static Strings,
    /// The worker's own.
    pub report: &'static Report,
    /// How values are written.
    pub formats: Formats,
    /// The household's clock.
    pub now: LocalTime,
}

impl Speech {
    /// In a language, as a locale writes it.
    pub fn new(
        language: Language,
        locale: LocaleFormat,
        (degrees, now): (Degrees, LocalTime),
    ) -> Self {
        let strings = language.strings();
        Self {
            strings,
            report: language.report(),
            formats: Formats {
                locale,
                degrees,
                units: &strings.common.units,
            },
            now,
        }
    }

    /// A number with three digits that count, none of them beyond a hundredth.
    fn number(&self, value: f64) -> String {
        let decimals = match value.abs() {
            size if size < 9.95 => 2,
            size if size < 99.5 => 1,
            _ => 0,
        };
        self.formats.field(value, decimals)
    }

    /// A number as it stands in a sentence: a tenth at most.
    fn rough(&self, value: f64) -> String {
        self.formats.field(value, usize::from(value.abs() < 9.95))
    }

    /// A count.
    fn count(&self, count: usize) -> String {
        self.formats.number(count as f64, 0)
    }

    /// A difference of temperatures, to a tenth.
    fn difference(&self, kelvin: f64) -> String {
        self.difference_to(kelvin, 1)
    }

    /// A difference of temperatures, to a degree.
    fn whole_difference(&self, kelvin: f64) -> String {
        self.difference_to(kelvin, 0)
    }

    fn difference_to(&self, kelvin: f64, decimals: usize) -> String {
        let degrees = self.formats.degrees;
        let shown = degrees.from_c(kelvin) - degrees.from_c(0.0);
        (self.formats.units.degrees)(&self.formats.number(shown, decimals), degrees)
    }

    /// The unit of temperatures alone.
    fn unit(&self) -> String {
        let formats = &self.formats;
        (formats.units.degrees)("", formats.degrees)
            .trim()
            .to_owned()
    }
}

#[cfg(test)]
pub(crate) fn speech(language: Language) -> Speech {
    let now = crate::state::sample::at(20, 0);
    Speech::new(language, LocaleFormat::default(), (Degrees::Celsius, now))
}
