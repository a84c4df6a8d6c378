//! The word for how badly something can go, the same in every room.

use crate::components::CautionLevel;
use crate::i18n::strings::safety::Safety;

/// The level in a word.
pub fn word(safety: &Safety, level: CautionLevel) -> &'static str {
    match level {
        CautionLevel::Danger => safety.danger,
        CautionLevel::Warning => safety.warning,
        CautionLevel::Note => safety.note,
    }
}
