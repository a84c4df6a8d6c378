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

    /// An estimated time as it is told: what to write, and how closely, at least as closely as `sure`.
    /// Rounding does not carry it over the meal's hour, since what is late must not read as ready;
    /// nor does it read as the moment at which the pot goes in, soon after which it is rounded up.
    fn told(at: LocalTime, sure: Sure, stay: Stay) -> (LocalTime, Sure) {
        let Stay { put_in, eat_at } = stay;
        let at = at.max(put_in.plus_s(60));
        let is_like = |told: LocalTime| put_in < told && (told <= eat_at) == (at <= eat_at);
        let next = at.ceil_to_s(Sure::Near.step_s());
        if let Some(sure) = [sure, Sure::Near]
            .into_iter()
            .find(|sure| is_like(sure.round(at)))
        {
            (at, sure)
        } else if Sure::Near.round(at) <= put_in && is_like(next) {
            (next, Sure::Near)
        } else {
            (at, Sure::Known)
        }
    }

    /// An estimated time in words: `about 18:40`.
    fn about_in(&self, at: LocalTime, sure: Sure, stay: Stay) -> String {
        let (at, sure) = Self::told(at, sure, stay);
        self.about(at, sure)
    }

    /// An end of a span that has no other.
    fn near(&self, at: LocalTime, stay: Stay) -> String {
        let (at, sure) = Self::told(at, Sure::Near, stay);
        self.time(at, sure)
    }

    /// An estimated time with the span it lies in, where that is wider than the rounding.
    fn estimate(
        &self,
        middle: LocalTime,
        ends: Option<(LocalTime, LocalTime)>,
        stay: Stay,
    ) -> Estimate {
        let (at, sure) = Self::told_by(middle, ends, stay);
        let at = self.about(at, sure);
        let Some((early, late)) = ends else {
            return Estimate { at, span: None };
        };
        let (early, late) = (early.min(late).min(middle), early.max(late).max(middle));
        let sure = Sure::of_band_s(seconds(late, early));
        let soonest = stay.put_in.plus_s(1).ceil_to_s(Sure::Near.step_s());
        let (from, to) = (sure.round(early).max(soonest), sure.round(late));
        // Ends that lie one step of the rounding apart say no more than 'about' does.
        let is_wide = sure.step_s() < to.since_s(from);
        // A day that both share is told once.
        let told = if from.day() == to.day() {
            self.formats.clock(from, Sure::Known)
        } else {
            self.time(from, Sure::Known)
        };
        let span = is_wide.then(|| (told, self.time(to, Sure::Known)));
        Estimate { at, span }
    }

    /// How an estimated time is told, by the width of the span it lies in: the same wherever it
    /// stands.
    fn told_by(
        middle: LocalTime,
        ends: Option<(LocalTime, LocalTime)>,
        stay: Stay,
    ) -> (LocalTime, Sure) {
        let by_width = ends.map_or(Sure::Rough, |(early, late)| {
            let (early, late) = (early.min(late).min(middle), early.max(late).max(middle));
            Sure::of_band_s(seconds(late, early))
        });
        Self::told(middle, by_width, stay)
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

/// When a pot goes in, and when it is eaten: what is told lies on the right side of both.
#[derive(Debug, Clone, Copy)]
struct Stay {
    put_in: LocalTime,
    eat_at: LocalTime,
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
