//! English: the parts that not every cooker has, and what wears.

use crate::i18n::strings::cooker::ways::Ways;

pub(super) const WAYS: Ways = Ways {
    mm: "mm",
    m2: "m²",
    no_store: "no store",
    no_store_note: "No store: the heater warms the pot straight, while the sun shines.",
    element: |number| format!("Resistance of element {number}"),
    element_hint: "The switch is taken to follow the sun: each light has the best of its positions.",
    add_element: "Add an element on a switch",
    remove_element: |number| format!("Take out element {number}"),
    metal: "Metal through the medium",
    metal_hint: "It carries the heat through what conducts poorly.",
    metals: [
        "none",
        "fins that stand on the seat",
        "foam, or crumpled foil",
    ],
    metal_of: "Made of",
    fin: "Thickness of a fin",
    fin_hint: "Measured on the edge.",
    pitch: "From one fin to the next",
    pitch_hint: "From the middle of one to the middle of the next.",
    foam_share: "Share of the room that the metal takes",
    foam_share_hint: "Its kilograms tell: a litre of solid aluminium has 2.7 kg, of steel 7.9, of copper 8.9.",
    metal_weighs: |mass| {
        format!(
            "By these measures the metal weighs about {mass}. Its heat counts only among the media above: enter it there, too."
        )
    },
    filled_on: "Filled in on",
    filled_on_hint: "Its molten hours wear it. Leave empty if you don’t know.",
    flask: "A vacuum flask",
    flask_gap: "Between its walls",
    flask_gap_hint: "The empty space between the inner and the outer wall.",
    flask_wall: "Its walls",
    walls: ["silvered", "bright steel"],
    vacuum: "Its vacuum",
    sound: "Sound",
    sound_detail: "cool outside when full",
    lost: "Lost",
    lost_detail: "warm outside when full",
    charging: "Other ways to charge",
    dish: "A dish that follows the sun",
    dish_detail: "In place of the panels. It gathers the direct sun alone.",
    aperture: "What it catches",
    aperture_hint: "The area square to the sun, without its own shadow.",
    optical: "Of that the store takes in",
    optical_hint: "Clean mirrors and a black plate: 50 to 70 %.",
    second: "A second charge: grid or fire",
    second_detail: "Each time it is on goes into the diary.",
    second_w: "Its power",
    second_w_hint: "What it draws from the socket, or what the fuel gives.",
    second_share: "Of that the store takes in",
    second_share_hint: "An element inside: nearly all. A fire under it: 10 to 30 %.",
    carried: "Charged outside and carried in",
    carried_detail: "It takes no sun while a pot stands on it.",
    way: "The way takes",
    way_hint: "From the sun until it stands in its jacket.",
    wrap: "Wrapped on the way in",
    wrap_hint: "A blanket or wool round it; 0 for nothing.",
    turned: "Turned over in the kitchen",
    turned_detail: "What has not melted then lies away from the pot.",
    wear_heading: "Wear of the store",
    worn: |medium, hours, degrees| {
        format!(
            "Since it was filled in, {medium} has been molten for about {hours}. It now melts at \
             about {degrees}: the hours, and more so the heat, wear it."
        )
    },
    last_boil: |day, earliest, latest| {
        let latest = latest.map_or_else(
            || "or much later".to_owned(),
            |latest| format!("or as late as {latest}"),
        );
        format!(
            "If it goes on like this, a pot like this no longer boils from about {day} on; it may be \
             from {earliest}, {latest}. A cooler cut-out makes it last, a fresh filling starts anew."
        )
    },
    worn_out: "With the figures as they stand, a pot like this no longer boils on it in time. A fresh filling starts anew.",
    never: "A pot like this goes on boiling on it, on what the melt holds above the boil.",
};
