//! What the screen Tonight shows.

pub mod care;
pub mod chances;
pub mod course;
pub mod heat;
pub mod help;
pub mod now;
pub mod plan;
pub mod running;
pub mod store;
pub mod verdict;

#[cfg(test)]
mod tests;

use model::local_time::LocalTime;

use crate::i18n::format::{Formats, Sure};
use crate::i18n::strings::Strings;

/// How things are said: the language, its way of writing values, and the present.
#[derive(Debug, Clone, Copy)]
pub struct Voice<'a> {
    /// The language.
    pub strings: &'static Strings,
    /// How values are written.
    pub formats: &'a Formats,
    /// Now.
    pub now: LocalTime,
}

impl Voice<'_> {
    /// A time of day, with its day where that is not today: `18:40`, `07:10 tomorrow`.
    pub fn time(&self, at: LocalTime, sure: Sure) -> String {
        self.formats.time(at, sure, self.now.day())
    }

    /// An estimated time of day: `about 18:40`.
    pub fn about(&self, at: LocalTime, sure: Sure) -> String {
        (self.strings.common.about_time)(&self.time(at, sure))
    }

    /// How closely a time must be told, at least as closely as `sure`, so that rounding does not
    /// carry it over the meal's hour: what is late must not read as ready.
    fn beside(at: LocalTime, sure: Sure, meal: LocalTime) -> Sure {
        [sure, Sure::Near]
            .into_iter()
            .find(|sure| (sure.round(at) <= meal) == (at <= meal))
            .unwrap_or(Sure::Known)
    }

    /// An estimated time with the span it lies in, where that is wider than the rounding.
    fn estimate(
        &self,
        told: LocalTime,
        ends: Option<(LocalTime, LocalTime)>,
        meal: LocalTime,
    ) -> Estimate {
        let at = self.about(told, Self::told_by(told, ends, meal));
        let Some((early, late)) = ends else {
            return Estimate { at, span: None };
        };
        let (early, late) = (early.min(late).min(told), early.max(late).max(told));
        let sure = Sure::of_band_s(seconds(late, early));
        // Ends that lie one step of the rounding apart say no more than 'about' does.
        let is_wide = sure.step_s() < sure.round(late).since_s(sure.round(early));
        // A day that both share is told once.
        let is_one_day = sure.round(early).day() == sure.round(late).day();
        let from = if is_one_day {
            self.formats.clock(early, sure)
        } else {
            self.time(early, sure)
        };
        let span = is_wide.then(|| (from, self.time(late, sure)));
        Estimate { at, span }
    }

    /// How closely an estimated time is told, by the width of the span it lies in: the same
    /// wherever it stands.
    fn told_by(told: LocalTime, ends: Option<(LocalTime, LocalTime)>, meal: LocalTime) -> Sure {
        let by_width = ends.map_or(Sure::Rough, |(early, late)| {
            let (early, late) = (early.min(late).min(told), early.max(late).max(told));
            Sure::of_band_s(seconds(late, early))
        });
        Self::beside(told, by_width, meal)
    }

    /// The hottest that a pot gets that does not boil. Finer near the boil, so that it is not
    /// rounded up to it.
    fn hottest(&self, hottest_c: f64, boiling_c: f64) -> String {
        let sure = if hottest_c < boiling_c - 10.0 {
            Sure::Near
        } else {
            Sure::Known
        };
        self.formats.temperature(hottest_c, sure)
    }
}

/// An estimated time in words.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Estimate {
    /// About when.
    at: String,
    /// The earliest and the latest, where they differ once rounded.
    span: Option<(String, String)>,
}

/// A sentence whose last value brings a full stop of its own, as `p. m.` does, ends with one.
fn ended(sentence: String) -> String {
    match sentence.strip_suffix("..") {
        Some(start) => format!("{start}."),
        None => sentence,
    }
}

/// From `earlier` to `at`. \[s\]
fn seconds(at: LocalTime, earlier: LocalTime) -> f64 {
    i32::try_from(at.since_s(earlier)).map_or(f64::MAX, f64::from)
}
