//! English: the cooker.

use crate::i18n::strings::cooker::Cooker;

pub(super) const COOKER: Cooker = Cooker {
    title: "Cooker",
    copy_name: |name| format!("{name}, copy"),
};
