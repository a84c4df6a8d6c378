//! English: what limits a build.

use crate::i18n::strings::cooker::limits::Limits;

pub(super) const LIMITS: Limits = Limits {
    heading: "What limits this build",
    how: "Asked: how much water boils within an hour of sunset, evening after evening, when every day is sun and cloud by turns. Each part is then doubled, or the loss halved, and it is worked out again.",
    working: "Being worked out…",
    sun: |now, better| {
        format!(
            "The heat it gets. On ordinary days it boils {now} an evening; with twice the heat from its panels, by more of them or a resistor that suits them better, it would boil {better}."
        )
    },
    store: |now, better| {
        format!(
            "The size of the store. On ordinary days it boils {now} an evening; with twice the mass it would boil {better}."
        )
    },
    contact: |now, better| {
        format!(
            "The contact between store and pot. On ordinary days it boils {now} an evening; with twice the contact it would boil {better}."
        )
    },
    jacket: |now, better| {
        format!(
            "The jacket. On ordinary days it boils {now} an evening; with half the loss it would boil {better}."
        )
    },
    pot: |now| {
        format!(
            "Only the pot. On ordinary days it boils {now} an evening: more than the pot takes without boiling over."
        )
    },
    even: |now| {
        format!("No part more than the others. On ordinary days it boils {now} an evening.")
    },
    nothing: "More than one part. On ordinary days not even a cup boils within an hour of sunset, and no single part made twice as good changes that.",
    none: "nothing",
    as_built: "As it is",
    twice_sun: "Twice the heat from the panels",
    twice_store: "Twice the store",
    twice_contact: "Twice the contact",
    half_loss: "Half the loss",
};
