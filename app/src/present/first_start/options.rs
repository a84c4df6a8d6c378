//! What is offered to choose from.

use model::presets::Preset;

use super::{Land, PANELS_W, PEOPLE};
use crate::components::{ChoiceOption, SelectOption};
use crate::i18n::format::Formats;
use crate::i18n::strings::Strings;
use crate::order::in_order;
use crate::state::zones::ZonePlace;

/// Towns all over the earth by country, after the option of none. A town goes by one name alone, but
/// for the one of the device, `own`, which may be an old one. `country` tells a country's name by its
/// two letters.
pub fn towns(
    strings: &Strings,
    own: Option<&str>,
    country: &dyn Fn(&str) -> Option<String>,
) -> Vec<SelectOption> {
    let option = |key: &str, label: String| SelectOption {
        key: key.to_owned(),
        label,
    };
    let town = |zone: ZonePlace| {
        let is_own = own == Some(zone.zone);
        let label = match zone.country.and_then(country) {
            Some(country) => (strings.first_start.town_in)(&country, &zone.name()),
            None => zone.name(),
        };
        (zone.country.is_some() || is_own).then(|| option(zone.zone, label))
    };
    let towns = ZonePlace::all().filter_map(town);
    let mut options = in_order(towns, |a, b| a.label.cmp(&b.label));
    options.insert(0, option("", strings.first_start.no_town.to_owned()));
    options
}

/// The four heights of the land.
pub fn land_options(strings: &Strings, formats: &Formats) -> Vec<ChoiceOption> {
    let words = &strings.first_start;
    let mut below_m = 0.0;
    Land::ALL
        .into_iter()
        .map(|land| {
            let label = match land {
                Land::NearTheSea => words.near_the_sea,
                Land::Hills => words.hills,
                Land::Highland => words.highland,
                Land::Mountains => words.mountains,
            };
            let detail = match land.top_m() {
                Some(top_m) => (words.up_to)(&formats.metres(top_m)),
                None => (words.above)(&formats.metres(below_m)),
            };
            below_m = land.top_m().unwrap_or(below_m);
            option(land.key(), label.to_owned(), detail)
        })
        .collect()
}

/// The ways of building.
pub fn preset_options(strings: &Strings) -> Vec<ChoiceOption> {
    let words = &strings.first_start;
    Preset::ALL
        .into_iter()
        .map(|preset| {
            option(
                preset.key(),
                (words.preset)(preset).to_owned(),
                (words.preset_good_for)(preset).to_owned(),
            )
        })
        .collect()
}

/// The usual sizes of panels; the key is the number.
pub fn panel_options(formats: &Formats) -> Vec<ChoiceOption> {
    PANELS_W
        .into_iter()
        .map(|watts| {
            option(
                &watts.to_string(),
                formats.watts(f64::from(watts)),
                String::new(),
            )
        })
        .collect()
}

/// The usual tables; the key is the number.
pub fn people_options() -> Vec<ChoiceOption> {
    PEOPLE
        .into_iter()
        .map(|people| option(&people.to_string(), people.to_string(), String::new()))
        .collect()
}

fn option(key: &str, label: String, detail: String) -> ChoiceOption {
    ChoiceOption {
        key: key.to_owned(),
        label,
        detail,
        icon: None,
    }
}
