//! English: the cautions.

use crate::i18n::strings::safety::Safety;

pub(super) const SAFETY: Safety = Safety {
    title: "Safety",
    first: "Local codes come before anything said here. A licensed person connects and checks what the code asks one for.",
    danger: "Danger",
    warning: "Warning",
    note: "Good to know",
    group_heat: "Heat and fire",
    group_salt: "Salt and fuel",
    group_pressure: "Pressure",
    group_electricity: "Electricity",
    group_food: "Beans and other food",
    hot_metal: "Metal above 60 °C (140 °F) burns at a touch, and it does not look hot. Use a lifter or dry thick cloth, and keep children away.",
    fire: "A store at 250 °C (480 °F) can set oil, straw, husk, cloth and wood alight. Keep them off it and out of its jacket.",
    steam: "Steam and boiling water scald. Open the lid away from you, and lift the pot straight out with both hands.",
    burn_help: "Cool a burn under clean running water for twenty minutes, and get help for one that is larger than the hand, or on a face or a child.",
    nitrate: "Molten nitrate salt burns through skin and feeds fire. Never let it meet sugar, oil, charcoal or other fuel, and never water.",
    nitrate_trouble: "If the salt leaks or fumes: keep everyone away, take the panel off the heater, and let it freeze by itself. No water on it, and nothing that burns to soak it up.",
    pressure: "Never heat a sealed vessel that has no relief valve.",
    panel_live: "A panel gives voltage whenever light falls on it and can’t be switched off. Cover it before you touch a wire, and never pull a plug under load: the arc goes on burning.",
    wiring: "Fuse and wire sizes follow your local code. Anything beyond extra-low voltage is connected by a licensed person.",
    fuse: "A fuse belongs close to the panel or the battery, and a switch must be made for direct current of that voltage: one for the mains can burn on.",
    beans: "Dried beans: soak them, throw that water away, then boil them hard in fresh water for 30 minutes, and never less than 10. Beans kept below boiling can make you very ill.",
    meat: "Cook meat until its middle has reached 74 °C (165 °F).",
    holding: "Keep cooked food at 60 °C (140 °F) or above, or cool it fast. Warm food left standing grows germs.",
    cook_decides: "Duskpot advises; the cook decides. If the food is not done, it is not done.",
};
