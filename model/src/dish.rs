//! What is cooked: how much water and heat it takes, how fast it cooks at which temperature, and
//! what must hold before anybody eats it.
//!
//! Cooking times are those of the unhurried simmer at 100 degC. Safety rules are conditions beside
//! the cooking time, never part of it: a dish can be soft and not safe.

pub mod heat_capacity;
pub mod lethality;
mod table;

use serde::{Deserialize, Serialize};

use crate::network::CookRate;
use crate::provenance::{Datum, Source};

/// A dish. The serialised names are kept in saved data: never rename one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Dish {
    /// Milled rice.
    WhiteRice,
    /// Brown rice.
    BrownRice,
    /// Common beans (Phaseolus), soaked overnight.
    CommonBeansSoaked,
    /// Common beans, not soaked.
    CommonBeansUnsoaked,
    /// Red kidney beans, soaked.
    RedKidneyBeansSoaked,
    /// Black beans, soaked.
    BlackBeansSoaked,
    /// Chickpeas, soaked.
    ChickpeasSoaked,
    /// Lentils, whole.
    Lentils,
    /// Split peas.
    SplitPeas,
    /// Porridge of maize meal.
    MaizePorridge,
    /// Potatoes in pieces.
    Potatoes,
    /// Cassava, peeled, in pieces.
    Cassava,
    /// Pasta.
    Pasta,
    /// Stew with meat or poultry.
    MeatStew,
    /// Stew of vegetables.
    VegetableStew,
    /// Eggs in their shells.
    Eggs,
    /// Milk, brought to the boil.
    Milk,
    /// Water for tea, brought to the boil.
    TeaWater,
}

/// What the portion and the water ratio are counted in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Basis {
    /// Dry food.
    Dry,
    /// Fresh food with its own water.
    Fresh,
    /// The liquid itself.
    Liquid,
}

/// When the dish is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum DoneWhen {
    /// Once the cooking time has been given, at its rate.
    Cooked,
    /// Once it boils.
    Boils,
}

/// Time at a full boil without which the dish is poisonous, counted from when the middle of the pot
/// boils; time below the boil never counts.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FullBoil {
    /// The least that an authority has published, min.
    pub least_min: Datum,
    /// What is advised, min.
    pub advised_min: Datum,
}

/// Whether to soak.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Soak {
    /// No soaking.
    None,
    /// Soak for these hours at least, and throw the water away.
    Hours(u8),
    /// Bitter kinds: peel, grate or soak for days, boil without a lid and throw the water away.
    Detoxify,
}

/// What becomes of it if it stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Hold {
    /// At 60 degC or above; between 60 and 5 degC for four hours at most, then thrown away.
    Hot,
    /// As [`Hold::Hot`], and never left in a cooling cooker overnight: spores outlive the boil and
    /// their poison outlives the next one.
    HotNeverOvernight,
    /// Water: no rule.
    Free,
}

/// One row of the table of dishes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DishProps {
    /// What portion and ratio are counted in.
    pub basis: Basis,
    /// Food for one person, kg, in the unit of the basis.
    pub portion_kg: Datum,
    /// Water poured on, as mass per mass of food.
    pub water_per_food: Datum,
    /// Specific heat of the food alone at 60 degC, J/kgK.
    pub cp_j_kgk: Datum,
    /// Time at 100 degC, min; for what is done once it boils, a token stay there.
    pub minutes_at_100_c: Datum,
    /// How the time grows in a colder pot.
    pub slowing: Slowing,
    /// Temperature below which time does not count as cooking, degC.
    pub least_c: Datum,
    /// Full boil that the dish must have had.
    pub full_boil: Option<FullBoil>,
    /// Temperature that the middle must have reached, degC.
    pub core_c: Option<Datum>,
    /// Whether to soak.
    pub soak: Soak,
    /// What becomes of it if it stands.
    pub hold: Hold,
    /// When it is done.
    pub done_when: DoneWhen,
}

/// How the cooking time depends on the temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Slowing {
    /// Ten times as long per z kelvin below 100 degC.
    Z(Datum),
    /// Arrhenius, with the activation energy in J/mol.
    Arrhenius(Datum),
}

/// Hot holding: act at this temperature, degC.
pub const HOLD_HOT_C: Datum = Datum::new(60.0, 0.0, Source::WhoKeys);
/// Hot holding: warn at this temperature, degC; the rule of the United Kingdom.
pub const HOLD_WARN_C: Datum = Datum::new(63.0, 0.0, Source::UkFood);
/// Cold holding: safe at or below this temperature, degC.
pub const HOLD_COLD_C: Datum = Datum::new(5.0, 0.0, Source::WhoKeys);
/// Hours between hot and cold after which food is thrown away.
pub const DISCARD_AFTER_H: Datum = Datum::new(4.0, 0.0, Source::FoodCode);

impl Dish {
    /// Every dish, in the order of the table.
    pub const ALL: [Self; 18] = [
        Self::WhiteRice,
        Self::BrownRice,
        Self::CommonBeansSoaked,
        Self::CommonBeansUnsoaked,
        Self::RedKidneyBeansSoaked,
        Self::BlackBeansSoaked,
        Self::ChickpeasSoaked,
        Self::Lentils,
        Self::SplitPeas,
        Self::MaizePorridge,
        Self::Potatoes,
        Self::Cassava,
        Self::Pasta,
        Self::MeatStew,
        Self::VegetableStew,
        Self::Eggs,
        Self::Milk,
        Self::TeaWater,
    ];

    /// The row of the table.
    #[must_use]
    pub const fn props(self) -> &'static DishProps {
        match self {
            Self::WhiteRice => &table::WHITE_RICE,
            Self::BrownRice => &table::BROWN_RICE,
            Self::CommonBeansSoaked => &table::COMMON_BEANS_SOAKED,
            Self::CommonBeansUnsoaked => &table::COMMON_BEANS_UNSOAKED,
            Self::RedKidneyBeansSoaked => &table::RED_KIDNEY_BEANS_SOAKED,
            Self::BlackBeansSoaked => &table::BLACK_BEANS_SOAKED,
            Self::ChickpeasSoaked => &table::CHICKPEAS_SOAKED,
            Self::Lentils => &table::LENTILS,
            Self::SplitPeas => &table::SPLIT_PEAS,
            Self::MaizePorridge => &table::MAIZE_PORRIDGE,
            Self::Potatoes => &table::POTATOES,
            Self::Cassava => &table::CASSAVA,
            Self::Pasta => &table::PASTA,
            Self::MeatStew => &table::MEAT_STEW,
            Self::VegetableStew => &table::VEGETABLE_STEW,
            Self::Eggs => &table::EGGS,
            Self::Milk => &table::MILK,
            Self::TeaWater => &table::TEA_WATER,
        }
    }

    /// The rate at which it cooks.
    #[must_use]
    pub const fn cook_rate(self) -> CookRate {
        let props = self.props();
        let t_ref_s = props.minutes_at_100_c.value * 60.0;
        let t_min_c = props.least_c.value;
        match props.slowing {
            Slowing::Z(z) => CookRate::ZValue {
                t_ref_s,
                z_k: z.value,
                t_min_c,
            },
            Slowing::Arrhenius(energy) => CookRate::Arrhenius {
                t_ref_s,
                activation_j_mol: energy.value,
                t_min_c,
            },
        }
    }

    /// The same dish after soaking, where soaking shortens it.
    #[must_use]
    pub const fn soaked(self) -> Option<Self> {
        match self {
            Self::CommonBeansUnsoaked => Some(Self::CommonBeansSoaked),
            _ => None,
        }
    }

    /// Whether it is a bean of the genus Phaseolus, poisonous until it has boiled.
    #[must_use]
    pub const fn needs_full_boil(self) -> bool {
        self.props().full_boil.is_some()
    }
}

#[cfg(test)]
mod tests;
