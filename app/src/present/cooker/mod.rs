//! What the room Cooker shows: what follows from a build, what limits it, and its parts as fields.

pub mod cautions;
pub mod facts;
pub mod fault;
pub mod learned;
pub mod limits;
pub mod list;
pub mod measure;
pub mod parts;
pub mod place;
pub mod plots;
mod unlike;

#[cfg(test)]
pub(in crate::present) mod tests {
    use model::place::{AirYear, Place};
    use model::tonight::Site;

    use crate::i18n::Language;
    use crate::i18n::format::{Formats, LocaleFormat};
    use crate::i18n::strings::Strings;
    use crate::present::tests::speaking;

    /// Spanish words, with numbers as most of those write them who speak it.
    pub(in crate::present) fn spanish() -> (&'static Strings, Formats) {
        let (strings, formats) = speaking(Language::Spanish);
        let locale = LocaleFormat {
            decimal: ',',
            ..LocaleFormat::default()
        };
        (strings, Formats { locale, ..formats })
    }

    /// A made-up hill town at 1500 m, where water boils at 95 °C.
    pub(in crate::present) fn household_site() -> Site {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1500.0,
            utc_offset_min: 180,
        };
        Site {
            place,
            air: AirYear::guess(11.0, 1500.0).unwrap(),
        }
    }
}
