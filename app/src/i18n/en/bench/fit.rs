//! English: the page of what was found from a run.

use crate::i18n::strings::bench::fit::{Differ, Fit, Taking};

pub(super) const FIT: Fit = Fit {
    title: "What was found",
    working: "Working it out…",
    together: "Runs of this cooker, fitted together",
    differ: Differ {
        differs: |figure, own, run, theirs| {
            format!(
                "{figure}: {own} from this run, {theirs} from ‘{run}’. That is further apart than their \
                 spreads allow together: something differed on the two days, or one of them was not as \
                 it was written down."
            )
        },
        this_better: "This run tells it more narrowly. Fitted together, each counts for what it tells.",
        other_better: |run| {
            format!(
                "‘{run}’ tells it more narrowly. Fitted together, each counts for what it tells."
            )
        },
        alike: "Both tell it about as narrowly. Fit them together, or do one of them again.",
        fit_both: "Fit both together",
    },
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
    taking: Taking {
        title: |name| format!("What changes in {name}"),
        lead: "As it counts now, then as it will count from the first day of its diary on. It can be undone.",
        none: "Nothing: the cooker already counts as it was measured.",
        loss: |at| format!("Loss through the jacket, the store at {at}"),
        jacket: "Heat the jacket holds",
        store: "Heat the store holds from the boil to the cut-out",
        contact: |at| format!("Contact with the pot, the store at {at}"),
        pot_loss: "Heat the pot loses, of what its kind says",
        tracker: "Share that the tracker brings to the heater",
        from_to: |now, then, unit| format!("{now} → {then}\u{A0}{unit}"),
        doubt: |now, then| format!("within {now} in 8 of 10 cases now, {then} then"),
        doubt_way: |now, then| {
            format!(
                "the whole way into the pot, with the film of water in it: within {now} in 8 of 10 cases \
                 now, {then} then"
            )
        },
        stays: |name, value| {
            format!(
                "{name} was measured, {value}, but is not carried over: a cooker’s description has no \
                 place for it. The answers for this cooker therefore differ from the figures here."
            )
        },
        rest: "Everything else stays as it is described.",
        do_it: "Use these figures",
    },
    weighed: "Weights stay as you gave them. The store then counts as holding what was measured, until \
              you change what is in it.",
    used: "Used for this cooker",
};
