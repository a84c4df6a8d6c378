//! English: the page of what was found from a run.

use crate::i18n::strings::bench::fit::Fit;

pub(super) const FIT: Fit = Fit {
    title: "What was found",
    working: "Working it out…",
    together: "Runs of this cooker, fitted together",
    use_it: "Use for this cooker",
    used: "Used for this cooker",
};
