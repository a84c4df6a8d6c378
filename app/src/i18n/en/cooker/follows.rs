//! English: what follows from a build.

use crate::i18n::strings::cooker::follows::{Cool, Follows, PanelPlot};

pub(super) const FOLLOWS: Follows = Follows {
    heading: "What follows from this build",
    in_short: |capacity, hold, litre| format!("{capacity} · holds {hold} · {litre}"),
    in_short_litre: |time| format!("1\u{A0}L in {time}"),
    in_short_heater: |gets, could| format!("heater gets {gets} of {could} in full sun"),
    in_short_never: "boils no litre",
    capacity: "Heat from the boil to the cut-out",
    capacity_detail: |litres| format!("brings about {litres} of water to the boil"),
    hold: "Stays above the boil for",
    hold_detail: |cutout, air| format!("from {cutout}, without sun or pot, in air of {air}"),
    hold_long: "weeks",
    night: "After a night of 12 hours",
    night_detail: |litres| format!("still boils about {litres}"),
    night_nothing: "boils nothing any more",
    loss: "Lost through the jacket when full",
    loss_detail: |full, full_c, halfway, halfway_c| {
        format!(
            "{full} at {full_c}. Tests and diary tell it for a store halfway to the boil, where the jacket conducts less: {halfway} at {halfway_c}"
        )
    },
    outer_face: "Outside of the jacket then",
    outer_face_burns: "burns at a touch",
    outer_face_unknown: "the jacket was measured, not described",
    seat: "From store to pot",
    seat_detail: |seat, power, more| {
        let why = if more {
            "boiling water takes heat better than water that warms"
        } else {
            "what lies next to the seat conducts poorly"
        };
        format!(
            "in steady drawing, from the middle of the store. The seat alone lets {seat} through to water that warms. A full store gives {power} at first to a pot at the boil: {why}"
        )
    },
    seat_detail_melt: |seat, power| {
        format!(
            "in steady drawing, from the middle of the store, half of its melt frozen. The seat alone lets {seat} through to water that warms. A full store gives {power} at first to a pot at the boil, before anything freezes on the seat"
        )
    },
    litre: "One litre boils in",
    litre_detail: |start| format!("water of {start}, full store, lid on"),
    litre_never: "never",
    below_boil: |cutout, boil| {
        format!(
            "The thermostat cuts out at {cutout}, and water boils at {boil} here: this cooker can’t boil anything."
        )
    },
    too_large: |store, room| {
        format!(
            "The store takes {store}, and the room inside the jacket is {room}: it won’t go in."
        )
    },
    never_full: |loss, cutout, heat| {
        format!(
            "It never gets full: at {cutout} it loses {loss}, and all that heats it is {heat}. What is told of a full store is more than it will do."
        )
    },
    in_short_not_full: "never gets full",
    take_heading: "What the heater takes of the sun",
    clear_day: "On a clear day now",
    ordinary_day: "On an ordinary day now",
    year: "Over the year",
    day_heat: |energy| format!("{energy} of heat"),
    of_most: |percent| format!("{percent} of the most the panels can give"),
    best: "Resistance that takes most",
    best_detail: |percent| format!("would take {percent} over the year"),
    best_already: "over the year yours takes as much; no one resistor suits every light, so in full sun it may take less than the panels could give",
    best_tracker: "any, with a tracker",
    working: "being worked out…",
    no_light: "no light",
    w_k: |number| format!("{number}\u{A0}W/K"),
    volts: |number| format!("{number}\u{A0}V"),
    amperes: |number| format!("{number}\u{A0}A"),
    cool: Cool {
        name: "A full store that cools",
        store: "Store, without sun or pot",
        boil: |temperature| format!("boil, {temperature}"),
        melts: |temperature| format!("freezes, {temperature}"),
        sentence: |cutout, boil, hold, air| {
            format!(
                "Without sun and without a pot, in air of {air}, it falls from {cutout} to the boil at {boil} in {hold}."
            )
        },
        sentence_long: |cutout, boil| {
            format!(
                "Without sun and without a pot it stays between {cutout} and the boil at {boil} for weeks."
            )
        },
        sentence_below: |cutout, boil| format!("It starts at {cutout}, below the boil at {boil}."),
        head_time: "After",
        head_store: "Store",
    },
    panel: PanelPlot {
        name: "The panels and the heater, current against voltage",
        full: "Panels in full sun",
        half: "Panels in half sun",
        load: |ohms| format!("Heater and wires, {ohms}"),
        works: "Where they work",
        sentence: |full, full_most, half, half_most| {
            format!(
                "In full sun the heater gets {full} of the {full_most} that the panels could give, in half sun {half} of {half_most}."
            )
        },
        sentence_tracker: |full, half| {
            format!(
                "The tracker holds the panels where they give most: the heater gets {full} in full sun and {half} in half sun."
            )
        },
        head_light: "Light",
        head_volts: "Volts",
        head_amperes: "Amperes",
        head_heat: "Heater gets",
        head_most: "Panels could give",
    },
};
