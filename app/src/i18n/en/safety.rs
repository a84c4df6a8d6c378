//! English: the cautions.

use crate::i18n::strings::safety::Safety;

pub(super) const SAFETY: Safety = Safety {
    title: "Safety",
    danger: "Danger",
    hot_metal: "Metal above 60 °C burns at a touch, and it does not look hot. Use a lifter or dry thick cloth, and keep children away.",
    fire: "A store at 250 °C can set oil, straw, husk, cloth and wood alight. Keep them off it and out of its jacket.",
    nitrate: "Molten nitrate salt burns through skin and feeds fire. Never let it meet sugar, oil, charcoal or other fuel, and never water.",
    pressure: "Never heat a sealed vessel that has no relief valve.",
    panel_live: "A panel gives voltage whenever light falls on it and can’t be switched off. Cover it before you touch a wire, and never pull a plug under load: the arc goes on burning.",
    wiring: "Fuse and wire sizes follow your local code. Anything beyond extra-low voltage is connected by a licensed person.",
    beans: "Dried beans: soak them, throw that water away, then boil them hard for at least 10 minutes in fresh water. Beans kept below boiling can make you very ill.",
    meat: "Cook meat until its middle has reached 74 °C.",
    holding: "Keep cooked food at 60 °C or above, or cool it fast. Warm food left standing grows germs.",
    cook_decides: "Duskpot advises; the cook decides. If the food is not done, it is not done.",
};
