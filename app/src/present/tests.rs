//! What the tests of this room share.

use crate::i18n::Language;
use crate::i18n::format::{Formats, LocaleFormat};
use crate::i18n::strings::Strings;
use crate::state::settings::Degrees;

/// English words, with numbers as the British write them.
pub(super) fn english() -> (&'static Strings, Formats) {
    speaking(Language::English)
}

/// The words of a language, with numbers as the British write them.
pub(super) fn speaking(language: Language) -> (&'static Strings, Formats) {
    let strings = language.strings();
    let formats = Formats {
        locale: LocaleFormat::default(),
        degrees: Degrees::Celsius,
        units: &strings.common.units,
    };
    (strings, formats)
}
