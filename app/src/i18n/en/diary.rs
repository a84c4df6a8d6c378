//! English: the diary.

use crate::i18n::strings::diary::Diary;

pub(super) const DIARY: Diary = Diary { title: "Diary" };
