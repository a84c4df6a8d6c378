//! What stores the heat: metals, stones, and media that melt.
//!
//! Each row gives the curve of the specific heat as a line over 20 to 350 degC, and what melting
//! adds. The rows say nothing of how much of a medium a cooker holds.

mod melts;
mod metals;
mod stones;
mod supercooling;

use serde::{Deserialize, Serialize};

use crate::enthalpy::{MediumCurve, Melt};
use crate::provenance::{Datum, Source};

/// A storage medium. The serialised names are kept in saved data: never rename one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Medium {
    /// Wrought aluminium, 3xxx or 6xxx.
    Aluminium,
    /// Grey cast iron.
    CastIron,
    /// Plain carbon steel.
    MildSteel,
    /// Copper.
    Copper,
    /// Talc-magnesite soapstone.
    Soapstone,
    /// Granite.
    Granite,
    /// Basalt or dolerite.
    Basalt,
    /// Dry quartz sand, poured.
    DrySand,
    /// Dense concrete or mortar.
    Concrete,
    /// Dense fireclay brick.
    Firebrick,
    /// Erythritol, a sugar alcohol.
    Erythritol,
    /// D-mannitol, a sugar alcohol.
    Mannitol,
    /// Adipic acid.
    AdipicAcid,
    /// Magnesium chloride with six waters, in a closed tin.
    MagnesiumChlorideHexahydrate,
    /// High-density polyethylene.
    Hdpe,
    /// Sodium nitrate.
    SodiumNitrate,
    /// Potassium nitrate.
    PotassiumNitrate,
    /// 60 % sodium nitrate and 40 % potassium nitrate by mass.
    SodiumPotassiumNitrate,
    /// 53 % potassium nitrate, 40 % sodium nitrite, 7 % sodium nitrate by mass.
    TernaryNitrateNitrite,
    /// Refined vegetable oil.
    VegetableOil,
}

/// What the medium is made of, for the question of what must not meet it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Chemistry {
    /// A metal.
    Metal,
    /// Stone, sand, brick or concrete.
    Mineral,
    /// A sugar alcohol: organic.
    SugarAlcohol,
    /// An organic acid.
    OrganicAcid,
    /// A plastic: organic.
    Polymer,
    /// An oil or fat: organic.
    Oil,
    /// A salt with water of crystallisation.
    SaltHydrate,
    /// A nitrate or nitrite salt: an oxidiser.
    Nitrate,
}

impl Chemistry {
    /// Whether it feeds a fire, and an explosion when mixed with a nitrate.
    #[must_use]
    pub const fn is_organic(self) -> bool {
        matches!(
            self,
            Self::SugarAlcohol | Self::OrganicAcid | Self::Polymer | Self::Oil
        )
    }

    /// Whether it gives oxygen to a fire.
    #[must_use]
    pub const fn is_oxidiser(self) -> bool {
        matches!(self, Self::Nitrate)
    }
}

/// What can go wrong with a medium.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Hazard {
    /// Gives oxygen: never with oil, sugar, plastic, charcoal, husk or other fuel.
    Oxidiser,
    /// Burns.
    Combustible,
    /// Poisonous when swallowed.
    Toxic,
    /// Dust that harms the lungs.
    Dust,
    /// Vapour that irritates or chokes.
    Vapour,
    /// Splinters or bursts when heated wet: dry it for days, heat it slowly the first time.
    SpallsWhenWet,
    /// May stay liquid below its melting point, and keep its latent heat back.
    Supercools,
    /// Loses latent heat with hours spent hot.
    Ages,
    /// Attacks metal.
    Corrosive,
    /// Needs room to grow on melting: a full vessel bursts.
    ExpandsOnMelting,
    /// Must be closed, or it loses its water.
    LosesWater,
    /// Cracks when heated or cooled in one place.
    ThermalShock,
    /// Liquid when hot: a spill burns.
    HotLiquid,
}

/// Specific heat of the solid (of the liquid, for an oil) as a line, cp = a + b T with T in degC.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct HeatCapacityLine {
    /// Specific heat at 0 degC, J/kgK.
    pub cp_a_j_kgk: f64,
    /// Rise of the specific heat, J/kgK2.
    pub cp_b_j_kgk2: f64,
    /// One standard deviation of the whole line, J/kgK.
    pub spread_j_kgk: f64,
    /// Greatest distance of the line from the values of the source, 20 to 350 degC or as far as
    /// they go, J/kgK.
    pub fit_error_j_kgk: f64,
    /// Where the values come from.
    pub source: Source,
}

impl HeatCapacityLine {
    /// Specific heat at a temperature in degC, J/kgK.
    #[must_use]
    pub fn at(self, temperature_c: f64) -> f64 {
        self.cp_a_j_kgk + self.cp_b_j_kgk2 * temperature_c
    }
}

/// What melting adds.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeltProps {
    /// Where melting begins, degC.
    pub solidus_c: Datum,
    /// Where melting ends, degC; the solidus itself for a single melting point.
    pub liquidus_c: Datum,
    /// Latent heat, J/kg.
    pub latent_j_kg: Datum,
    /// Specific heat of the liquid, J/kgK.
    pub cp_liquid_j_kgk: Datum,
    /// Conductivity of the liquid, W/mK.
    pub conductivity_liquid_w_mk: Datum,
    /// Density of the liquid just above melting, kg/m3: what the vessel must have room for.
    pub density_liquid_kg_m3: Datum,
}

/// One row of the table of media.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MediumProps {
    /// Density of the solid at 20 degC (bulk density of sand; of the liquid for an oil), kg/m3.
    pub density_kg_m3: Datum,
    /// Specific heat below the melting range.
    pub cp: HeatCapacityLine,
    /// Conductivity of the solid between 100 and 250 degC, W/mK.
    pub conductivity_w_mk: Datum,
    /// Melting, where it melts in use.
    pub melt: Option<MeltProps>,
    /// Highest temperature for use in a home, degC, at the hottest place: the heater's face. The
    /// spread is how far sources and practice differ, not a margin to use up.
    pub limit_c: Datum,
    /// What it is made of.
    pub chemistry: Chemistry,
    /// What can go wrong.
    pub hazards: &'static [Hazard],
}

impl Medium {
    /// Every medium, in the order of the table.
    pub const ALL: [Self; 20] = [
        Self::Aluminium,
        Self::CastIron,
        Self::MildSteel,
        Self::Copper,
        Self::Soapstone,
        Self::Granite,
        Self::Basalt,
        Self::DrySand,
        Self::Concrete,
        Self::Firebrick,
        Self::Erythritol,
        Self::Mannitol,
        Self::AdipicAcid,
        Self::MagnesiumChlorideHexahydrate,
        Self::Hdpe,
        Self::SodiumNitrate,
        Self::PotassiumNitrate,
        Self::SodiumPotassiumNitrate,
        Self::TernaryNitrateNitrite,
        Self::VegetableOil,
    ];

    /// The row of the table.
    #[must_use]
    pub const fn props(self) -> &'static MediumProps {
        match self {
            Self::Aluminium => &metals::ALUMINIUM,
            Self::CastIron => &metals::CAST_IRON,
            Self::MildSteel => &metals::MILD_STEEL,
            Self::Copper => &metals::COPPER,
            Self::Soapstone => &stones::SOAPSTONE,
            Self::Granite => &stones::GRANITE,
            Self::Basalt => &stones::BASALT,
            Self::DrySand => &stones::DRY_SAND,
            Self::Concrete => &stones::CONCRETE,
            Self::Firebrick => &stones::FIREBRICK,
            Self::Erythritol => &melts::ERYTHRITOL,
            Self::Mannitol => &melts::MANNITOL,
            Self::AdipicAcid => &melts::ADIPIC_ACID,
            Self::MagnesiumChlorideHexahydrate => &melts::MAGNESIUM_CHLORIDE_HEXAHYDRATE,
            Self::Hdpe => &melts::HDPE,
            Self::SodiumNitrate => &melts::SODIUM_NITRATE,
            Self::PotassiumNitrate => &melts::POTASSIUM_NITRATE,
            Self::SodiumPotassiumNitrate => &melts::SODIUM_POTASSIUM_NITRATE,
            Self::TernaryNitrateNitrite => &melts::TERNARY_NITRATE_NITRITE,
            Self::VegetableOil => &melts::VEGETABLE_OIL,
        }
    }

    /// Whether one temperature can stand for the whole store: metals conduct well enough; stone,
    /// sand and salt do not without metal in them.
    #[must_use]
    pub const fn is_nearly_isothermal(self) -> bool {
        matches!(self.props().chemistry, Chemistry::Metal)
    }
}

/// The row of the table as a curve.
impl From<Medium> for MediumCurve {
    fn from(medium: Medium) -> Self {
        let props = medium.props();
        Self {
            cp_a_j_kgk: props.cp.cp_a_j_kgk,
            cp_b_j_kgk2: props.cp.cp_b_j_kgk2,
            melt: props.melt.map(Melt::from),
        }
    }
}

impl From<MeltProps> for Melt {
    fn from(melt: MeltProps) -> Self {
        Self {
            t_solidus_c: melt.solidus_c.value,
            t_liquidus_c: melt.liquidus_c.value,
            latent_j_kg: melt.latent_j_kg.value,
            cp_liquid_j_kgk: melt.cp_liquid_j_kgk.value,
        }
    }
}

#[cfg(test)]
mod tests;
