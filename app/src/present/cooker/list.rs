//! The list of cookers, and what is said of one in a line.

use model::cooker::Cooker;
use model::presets::Preset;

use crate::components::{EntryView, Icon};
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::present::cooker::measure::{Measure, Number};
use crate::present::cooker::unlike::unlike;
use crate::state::document::Document;
use crate::state::ids::CookerId;
use crate::state::limits;

/// All panels of a cooker that is added, together.
pub const PANELS_W: Number = Number {
    measure: Measure::Watts,
    bounds: limits::PANELS_W,
    step: 10.0,
};
/// How masses are told.
const MASS: Number = Number {
    measure: Measure::Kilograms,
    bounds: limits::CHARGE_KG,
    step: 1.0,
};
/// What most such cookers have. Common practice, no source. \[W\]
pub const USUAL_PANELS_W: f64 = 200.0;

/// A cooker in a few words: its media and its panels.
pub fn made_of(strings: &Strings, formats: &Formats, cooker: &Cooker) -> String {
    let words = &strings.cooker.list;
    let mut media = cooker.store.charges.iter().map(|charge| {
        (words.charge)(
            &MASS.with_unit(charge.mass_kg, strings, formats),
            (strings.tables.medium)(charge.medium),
        )
    });
    let first = media
        .next()
        .unwrap_or_else(|| strings.cooker.ways.no_store.to_owned());
    let rest: Vec<String> = media.collect();
    let named = match rest.split_last() {
        None => first,
        Some((last, between)) => {
            let first = between
                .iter()
                .fold(first, |sum, next| format!("{sum}, {next}"));
            (words.and)(&first, last)
        }
    };
    (words.made_of)(&named, &formats.watts(panels_w(cooker)))
}

/// Rated power of all panels. \[W\]
pub fn panels_w(cooker: &Cooker) -> f64 {
    let panels = &cooker.panels;
    panels.module_w * f64::from(panels.in_series) * f64::from(panels.in_parallel)
}

/// A line of the list.
pub fn line(
    strings: &Strings,
    formats: &Formats,
    document: &Document,
    id: CookerId,
) -> Option<EntryView> {
    let owned = document.cooker(id)?;
    let in_use = document.in_use == Some(id);
    let words = &strings.cooker.list;
    let mut detail = made_of(strings, formats, &owned.cooker);
    for own in unlike(strings, formats, document, id) {
        detail.push_str(" · ");
        detail.push_str(&own);
    }
    Some(EntryView {
        when: if in_use {
            words.in_use
        } else {
            words.not_in_use
        }
        .to_owned(),
        title: owned.name.clone(),
        detail,
        icon: if in_use { Icon::Tick } else { Icon::Cooker },
    })
}

/// The preset with this key.
pub fn preset(key: &str) -> Option<Preset> {
    Preset::ALL.into_iter().find(|preset| preset.key() == key)
}

/// The text with a capital letter at its head.
pub fn capital(text: &str) -> String {
    let mut letters = text.chars();
    let first = letters.next().map(capital_letter);
    first.into_iter().chain(letters).collect()
}

/// The capital of a Latin letter. The standard library knows all scripts, by tables that weigh
/// more than a screen.
fn capital_letter(letter: char) -> char {
    match letter {
        'à'..='ö' | 'ø'..='þ' => char::from_u32(u32::from(letter) - 0x20).unwrap_or(letter),
        _ => letter.to_ascii_uppercase(),
    }
}

/// Shortens a name to what the document keeps.
pub fn fitting_name(name: String) -> String {
    if name.chars().count() <= limits::NAME_LETTERS {
        return name;
    }
    name.chars().take(limits::NAME_LETTERS).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::present::cooker::tests::spanish;
    use crate::present::tests::english;

    #[test]
    fn a_cooker_is_told_by_its_media_and_panels() {
        let plain = |text: String| text.replace('\u{A0}', " ");
        let (strings, formats) = english();
        let block = Preset::AluminiumInPerlite.cooker(100.0, 11.0);
        assert_eq!(
            plain(made_of(strings, &formats, &block)),
            "7 kg of aluminium, panels of 100 W"
        );
        let (strings, formats) = spanish();
        let can = Preset::ErythritolInGlassWool.cooker(200.0, 11.0);
        assert_eq!(
            plain(made_of(strings, &formats, &can)),
            "5 kg de eritritol y 1 kg de aluminio, paneles de 200 W"
        );
    }

    #[test]
    fn a_name_of_a_copy_of_a_copy_still_fits() {
        let long = "ñ".repeat(60);
        assert_eq!(fitting_name(long).chars().count(), limits::NAME_LETTERS);
        assert_eq!(capital("école"), "École");
        assert_eq!(capital(""), "");
    }
}
