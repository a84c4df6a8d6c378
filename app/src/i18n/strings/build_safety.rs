//! Texts of what must not be built, and of what a person must be told of a build.

use model::insulation::InsulationHazard;
use model::media::Hazard;

/// Texts of what must not be built, and of what a person must be told of a build.
#[derive(Debug)]
pub struct BuildSafety {
    /// Combinations that are not accepted, with the reason.
    pub refusals: Refusals,
    /// What must be told.
    pub cautions: Cautions,
}

/// Combinations that are not accepted. Names of media and insulations come as they stand in lists.
#[derive(Debug)]
pub struct Refusals {
    /// A nitrate and something organic in one store.
    pub nitrate_organic: fn(nitrate: &str, organic: &str) -> String,
    /// A nitrate under a seat with oil.
    pub nitrate_oil: fn(nitrate: &str) -> String,
    /// A nitrate in a jacket that burns.
    pub nitrate_jacket: fn(nitrate: &str, insulation: &str) -> String,
    /// A nitrate in which the pot stands.
    pub nitrate_pot: fn(nitrate: &str) -> String,
    /// A nitrate with a salt that holds water.
    pub nitrate_hydrate: fn(nitrate: &str, hydrate: &str) -> String,
    /// The cut-out is above what a medium stands.
    pub above_medium: fn(medium: &str, limit: &str, cutout: &str) -> String,
    /// A layer of the jacket would be hotter than it stands.
    pub above_insulation: fn(insulation: &str, limit: &str, face: &str) -> String,
    /// Oil in the seat of a store that is too hot for it.
    pub oil_too_hot: fn(limit: &str, cutout: &str) -> String,
    /// The cut-out is not known.
    pub cutout_unknown: &'static str,
}

/// What a person must be told of a build. Whole sentences, joined as they come.
#[derive(Debug)]
pub struct Cautions {
    /// Nitrate against aluminium.
    pub nitrate_aluminium: &'static str,
    /// Nitrate in a jacket that nobody described.
    pub nitrate_unknown: &'static str,
    /// Nitrate against fibre with resin.
    pub nitrate_binder: fn(insulation: &str) -> String,
    /// It attacks a metal of the same store; the metal.
    pub corrodes: fn(metal: &str) -> String,
    /// A thermostat for alternating current does not break direct current.
    pub switch_dc: &'static str,
    /// The voltage can no longer be touched safely.
    pub above_touch: fn(volts: &str, limit: &str) -> String,
    /// Beyond extra-low voltage.
    pub beyond_low: fn(volts: &str, limit: &str) -> String,
    /// Before the sentences about one medium or insulation.
    pub about: fn(name: &str) -> String,
    /// A property of a medium.
    pub medium: fn(Hazard) -> &'static str,
    /// A property of an insulation.
    pub insulation: fn(InsulationHazard) -> &'static str,
}
