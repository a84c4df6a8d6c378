//! The language and the formats, as signals.

use crate::reactive::*;

use crate::i18n::Language;
use crate::i18n::format::{Formats, LocaleFormat};
use crate::i18n::strings::Strings;
use crate::shell::store::Store;

/// The language that is spoken and how values are written in it. Copies stand for the same ones.
#[derive(Clone, Copy)]
pub struct Words {
    language: Memo<Language>,
    formats: Memo<Formats>,
}

impl Words {
    /// Follows the settings; `browser` are the person's languages, and `locale` tells how a
    /// locale writes.
    pub fn new(store: Store, browser: Vec<String>, locale: fn(&str) -> LocaleFormat) -> Self {
        let settings = store.settings();
        let tags = browser.clone();
        let language = Memo::new(move |_| Language::pick(settings.get().language, &browser));
        let habits = Memo::new(move |_| locale(&language.get().format_tag(&tags)));
        let formats = Memo::new(move |_| Formats {
            locale: habits.get(),
            degrees: settings.get().degrees,
            units: &language.get().strings().common.units,
        });
        Self { language, formats }
    }

    /// The language that is spoken.
    pub fn language(&self) -> Memo<Language> {
        self.language
    }

    /// Its texts, followed: read inside a closure of `view!`.
    pub fn strings(&self) -> &'static Strings {
        self.language.get().strings()
    }

    /// How values are written, followed.
    pub fn formats(&self) -> Memo<Formats> {
        self.formats
    }

    /// A text of the language as a signal.
    pub fn text(&self, pick: fn(&Strings) -> &'static str) -> Signal<String> {
        let words = *self;
        Signal::derive(move || pick(words.strings()).to_owned())
    }
}
