//! English: the screen Tonight.

use crate::i18n::strings::tonight::Tonight;

pub(super) const TONIGHT: Tonight = Tonight { title: "Tonight" };
