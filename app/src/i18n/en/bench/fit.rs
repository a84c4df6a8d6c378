//! English: the page of what was found from a run.

use crate::i18n::strings::bench::fit::Fit;

pub(super) const FIT: Fit = Fit {
    title: "What was found",
    working: "Working it out…",
    together: "Runs of this cooker, fitted together",
    costs: "What changes cost",
    costs_why: "In your own money, as far as you know. The advice is put in order by it, the cheapest \
                first.",
    prices: [
        "A kilogram more of the store",
        "A better seat: ground flat, clamped, a film of oil",
        "Fins through a melting store",
        "As much jacket again",
        "A wrap for the pot",
        "A heater that fits the panels",
        "As many panels again",
    ],
    use_it: "Use for this cooker",
    weighed: "Weights stay as you gave them. The store then counts as holding what was measured, until \
              you change what is in it.",
    used: "Used for this cooker",
};
