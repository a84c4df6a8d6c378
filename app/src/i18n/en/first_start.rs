//! English: the first start.

use crate::i18n::strings::first_start::FirstStart;

pub(super) const FIRST_START: FirstStart = FirstStart {
    title: "Welcome",
    what_it_does: "Duskpot tells you whether tonight’s pot will boil on your heat-storing solar cooker, when, and how long to leave it in. Everything stays on this device.",
    set_up: "Set up my cooker",
    show_example: "Show me with an example",
    cooker_name: "My cooker",
};
