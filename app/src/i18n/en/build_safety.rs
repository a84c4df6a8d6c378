//! English: what must not be built, and what must be told of a build.

use model::insulation::InsulationHazard;
use model::media::Hazard;

use crate::i18n::strings::build_safety::{BuildSafety, Cautions, Refusals};

pub(super) const BUILD_SAFETY: BuildSafety = BuildSafety {
    refusals: Refusals {
        nitrate_organic: |nitrate, organic| {
            format!("Never {nitrate} with {organic}: hot, the two together can explode.")
        },
        nitrate_oil: |nitrate| {
            format!(
                "Never oil or grease on a store of {nitrate}: the salt feeds a fire that can’t be put out."
            )
        },
        nitrate_jacket: |nitrate, insulation| {
            format!(
                "Never {insulation} round {nitrate}: it burns, and the salt feeds the fire. Use a mineral insulation."
            )
        },
        nitrate_pot: |nitrate| {
            format!(
                "Never a pot in molten {nitrate}: it would meet food and whatever boils over. Set the pot on a plate."
            )
        },
        nitrate_hydrate: |nitrate, hydrate| {
            format!(
                "Never {nitrate} with {hydrate}: its water turns to steam and throws the melt about."
            )
        },
        above_medium: |medium, limit, cutout| {
            format!(
                "The thermostat would cut out at {cutout}, but {medium} stands {limit} at most. Above that it breaks down, melts or burns."
            )
        },
        above_insulation: |insulation, limit, face| {
            format!(
                "The {insulation} would come to {face}, but it stands {limit} at most. Set the thermostat lower, or put another insulation inside it."
            )
        },
        oil_too_hot: |limit, cutout| {
            format!(
                "Oil in the seat smokes above {limit} and can catch fire; this store gets to {cutout}. Choose a dry seat or a lower cut-out."
            )
        },
        cutout_unknown: "The thermostat’s temperature is needed.",
    },
    cautions: Cautions {
        nitrate_aluminium: "Against aluminium the salt must never overheat: it attacks the metal, and burning aluminium in nitrate can’t be put out.",
        nitrate_unknown: "Make sure that nothing in the jacket can burn.",
        nitrate_binder: |insulation| {
            format!(
                "Fire the {insulation} out, outdoors, before the salt goes in: its resin burns."
            )
        },
        corrodes: |metal| format!("It attacks {metal}: look for leaks."),
        switch_dc: "A thermostat or switch for alternating current draws an arc here and burns: use one rated for direct current.",
        above_touch: |volts, limit| {
            format!(
                "The panels reach {volts} on a cold bright morning. Above {limit} a touch can kill."
            )
        },
        beyond_low: |volts, limit| {
            format!(
                "The panels reach {volts} on a cold bright morning, beyond extra-low voltage of {limit}: a licensed person must connect them."
            )
        },
        about: |name| format!("{name}:"),
        medium,
        insulation,
    },
};

fn medium(hazard: Hazard) -> &'static str {
    match hazard {
        Hazard::Oxidiser => "It feeds fire: keep oil, sugar, plastic, charcoal and husk away.",
        Hazard::Combustible => "It burns: keep flames and sparks away.",
        Hazard::Toxic => "It is poisonous: keep it away from food and children.",
        Hazard::Dust => "Its dust harms the lungs: wet it or wear a mask when you cut or pour it.",
        Hazard::Vapour => "Hot, its vapour irritates: heat it where the air moves.",
        Hazard::SpallsWhenWet => {
            "Wet, it can burst when heated: dry it for days and heat it slowly the first time."
        }
        Hazard::Supercools => "It may stay liquid below its melting point and keep its heat back.",
        Hazard::Ages => "Hours spent hot use it up: it holds less each year.",
        Hazard::Corrosive => "It attacks metal.",
        Hazard::ExpandsOnMelting => "It grows when it melts: leave room, or the vessel bursts.",
        Hazard::LosesWater => "It loses its water unless it is kept closed.",
        Hazard::ThermalShock => "It cracks when heated or cooled in one place.",
        Hazard::HotLiquid => "Hot, it is liquid: a spill burns deep.",
    }
}

fn insulation(hazard: InsulationHazard) -> &'static str {
    match hazard {
        InsulationHazard::Combustible => "It can smoulder unseen for hours.",
        InsulationHazard::Dust => "Its dust and fibre harm: gloves, mask, and cover it.",
        InsulationHazard::Damp => "Damp, it hardly insulates: keep it dry.",
        InsulationHazard::BinderFumes => "Its resin smokes on the first firing: do that outdoors.",
        InsulationHazard::AsbestosInOldStock => "Old stock may hold asbestos: use new.",
        InsulationHazard::SelfHeats => "It can heat itself on the first firing: stay with it.",
        InsulationHazard::Settles => "It settles: top it up.",
        InsulationHazard::Pests => "Insects and mice like it.",
    }
}
