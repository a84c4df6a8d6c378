//! Every word a person reads, in every language, and how numbers are written.
//!
//! A language is one [`Strings`] value. Plain text is `&'static str`; a text with values in it
//! is a function that takes them ready to print, so that each language orders and inflects its
//! own sentence, and a missing text does not compile.

pub mod en;
pub mod es;
pub mod format;
pub mod refusal;
pub mod strings;

use strings::Strings;
use strings::report::Report;

use crate::state::settings::LanguageChoice;

/// A language the app speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
pub enum Language {
    /// English, in British spelling.
    #[default]
    English,
    /// Spanish, as written in the Andes and elsewhere.
    Spanish,
}

/// Which way a language is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Direction {
    /// From left to right.
    LeftToRight,
    /// From right to left.
    RightToLeft,
}

impl Language {
    /// Every language, in the order of the list in the settings.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// Its subtag in the IANA Language Subtag Registry, as BCP 47 (RFC 5646) wants it.
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::Spanish => "es",
        }
    }

    /// Its name, in itself.
    pub fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// Which way it is written.
    pub fn direction(self) -> Direction {
        match self {
            Self::English | Self::Spanish => Direction::LeftToRight,
        }
    }

    /// Its texts.
    pub fn strings(self) -> &'static Strings {
        match self {
            Self::English => &en::STRINGS,
            Self::Spanish => &es::STRINGS,
        }
    }

    /// The texts of the bench's worker, which the page itself does not carry.
    pub fn report(self) -> &'static Report {
        match self {
            Self::English => &en::REPORT,
            Self::Spanish => &es::REPORT,
        }
    }

    /// The language with this primary subtag, whatever region or script follows it.
    pub fn from_tag(tag: &str) -> Option<Self> {
        let primary = tag.split(['-', '_']).next().unwrap_or_default();
        Self::ALL
            .into_iter()
            .find(|language| language.tag().eq_ignore_ascii_case(primary))
    }

    /// The language to speak: the one chosen, or the first of the browser's list that we have,
    /// or English.
    pub fn pick(choice: LanguageChoice, browser: &[String]) -> Self {
        match choice {
            LanguageChoice::Chosen(language) => language,
            LanguageChoice::Automatic => browser
                .iter()
                .find_map(|tag| Self::from_tag(tag))
                .unwrap_or_default(),
        }
    }

    /// The tag whose habits of writing numbers and dates fit: the browser's first of this
    /// language, since it names a region, or the bare language.
    pub fn format_tag(self, browser: &[String]) -> String {
        browser
            .iter()
            .find(|tag| Self::from_tag(tag) == Some(self))
            .cloned()
            .unwrap_or_else(|| self.tag().to_owned())
    }
}

impl Direction {
    /// The value of the `dir` attribute.
    pub fn attribute(self) -> &'static str {
        match self {
            Self::LeftToRight => "ltr",
            Self::RightToLeft => "rtl",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn list(tags: &[&str]) -> Vec<String> {
        tags.iter().map(|&tag| tag.to_owned()).collect()
    }

    #[test]
    fn the_browsers_first_language_that_we_speak_is_picked() {
        let auto = LanguageChoice::Automatic;
        assert_eq!(
            Language::pick(auto, &list(&["qu-PE", "es-PE", "en"])),
            Language::Spanish
        );
        assert_eq!(
            Language::pick(auto, &list(&["en-GB", "es"])),
            Language::English
        );
        assert_eq!(Language::pick(auto, &list(&["qu"])), Language::English);
        assert_eq!(Language::pick(auto, &[]), Language::English);
    }

    #[test]
    fn a_choice_wins_over_the_browser() {
        let chosen = LanguageChoice::Chosen(Language::English);
        assert_eq!(Language::pick(chosen, &list(&["es"])), Language::English);
    }

    #[test]
    fn numbers_follow_the_region_of_the_language_shown() {
        let browser = list(&["de-AT", "en-IN", "es-PE"]);
        assert_eq!(Language::English.format_tag(&browser), "en-IN");
        assert_eq!(Language::Spanish.format_tag(&browser), "es-PE");
        assert_eq!(Language::Spanish.format_tag(&[]), "es");
    }

    #[test]
    fn a_tag_is_known_by_its_primary_subtag_alone() {
        assert_eq!(Language::from_tag("ES_419"), Some(Language::Spanish));
        assert_eq!(Language::from_tag("est"), None);
        assert_eq!(Language::from_tag(""), None);
    }

    #[test]
    fn no_text_is_empty() {
        for language in Language::ALL {
            assert!(
                !format!("{:?}", language.strings()).contains("\"\""),
                "{language:?}"
            );
        }
    }

    #[test]
    fn rows_of_a_table_have_names_of_their_own() {
        fn check<T: Copy>(rows: &[T], name: fn(T) -> &'static str) {
            let mut names: Vec<&str> = rows.iter().map(|row| name(*row)).collect();
            names.sort_unstable();
            names.dedup();
            assert_eq!(names.len(), rows.len(), "{names:?}");
            assert!(names.iter().all(|name| !name.is_empty()), "{names:?}");
        }
        for language in Language::ALL {
            let tables = &language.strings().tables;
            check(&model::media::Medium::ALL, tables.medium);
            check(&model::insulation::Insulation::ALL, tables.insulation);
            check(&model::jacket::LidFit::ALL, tables.lid_fit);
            check(&model::seat::Seat::ALL, tables.seat);
            check(&model::pot::PotKind::ALL, tables.pot_kind);
            check(&model::pot::Wrap::ALL, tables.wrap);
            check(&model::pot::Lid::ALL, tables.pot_lid);
            check(&model::dish::Dish::ALL, tables.dish);
            check(&model::sun::Sky::ALL, tables.sky);
        }
    }
}
