//! Keeps the names that the app gave in the language that is spoken.

use crate::i18n::Language;
use crate::i18n::format::Formats;
use crate::platform::locale as device_locale;
use crate::present::names::again;
use crate::present::tonight::Voice;
use crate::reactive::*;
use crate::shell::Shell;
use crate::shell::locale::locale_format;

/// Looks whenever another language is spoken, or another household is shown.
pub(super) fn wire(shell: Shell) {
    let language = shell.words.language();
    let has_household = shell.store.has_household();
    let whose = shell.store.whose();
    effect(move || {
        let language = language.get();
        whose.track();
        if has_household.get() {
            name_again(shell, language);
        }
    });
}

fn name_again(shell: Shell, language: Language) {
    let tags = device_locale::languages();
    let now = shell.clock.now_untracked();
    let degrees = shell
        .words
        .formats()
        .with_untracked(|formats| formats.degrees);
    let formats = Language::ALL.map(|language| Formats {
        locale: locale_format(&language.format_tag(&tags)),
        degrees,
        units: &language.strings().common.units,
    });
    let voices: Vec<Voice<'_>> = Language::ALL
        .iter()
        .zip(&formats)
        .map(|(language, formats)| Voice {
            strings: language.strings(),
            formats,
            now,
        })
        .collect();
    let place = Language::ALL.iter().position(|other| *other == language);
    let action = place
        .and_then(|place| voices.get(place))
        .and_then(|now| shell.store.now_is(|document| again(document, &voices, now)));
    if let Some(action) = action {
        // A name that was given before fits as well in another language.
        let _ = shell.dispatch.run(action);
    }
}
