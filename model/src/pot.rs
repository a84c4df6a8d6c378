//! The vessel.

use serde::{Deserialize, Serialize};

/// What a pot is made of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "to be replaced by the table")]
pub enum PotMetal {
    ThinAluminium,
    ThickAluminium,
    Stainless,
    EnamelledSteel,
    CastIron,
    Clay,
}

/// What stands round the pot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "to be replaced by the table")]
pub enum Wrap {
    Bare,
    Wrapped,
    Sunk,
}

/// What is on the pot.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[expect(missing_docs, reason = "to be replaced by the table")]
pub enum Lid {
    On,
    Ajar,
    Off,
}

/// A pot.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[expect(missing_docs, reason = "to be replaced by the table")]
pub struct Pot {
    pub metal: PotMetal,
    pub capacity_l: f64,
    pub mass_kg: f64,
    pub base_diameter_m: f64,
    pub height_m: f64,
    pub wrap: Wrap,
    pub lid: Lid,
}
