//! The pot: what it weighs, what heat it takes, and what it loses to the air.

pub mod loss;

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use crate::provenance::{Datum, Source};

/// What the pot is made of. The serialised names are kept in saved data.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum PotKind {
    /// Spun or pressed aluminium, about 1.2 mm.
    ThinAluminium,
    /// Cast or forged aluminium, about 3 mm.
    ThickAluminium,
    /// Stainless steel with a sandwich base.
    StainlessSteel,
    /// Enamelled steel.
    EnamelledSteel,
    /// Cast iron.
    CastIron,
    /// Fired clay.
    Clay,
}

/// How big it is, by what it holds to the brim. The serialised names are kept in saved data.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub enum PotSize {
    /// 1.5 L.
    #[serde(rename = "1.5_l")]
    Litres1_5,
    /// 2.5 L.
    #[serde(rename = "2.5_l")]
    Litres2_5,
    /// 4 L.
    #[serde(rename = "4_l")]
    Litres4,
    /// 6 L.
    #[serde(rename = "6_l")]
    Litres6,
    /// 10 L.
    #[serde(rename = "10_l")]
    Litres10,
}

/// What is round it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Wrap {
    /// Bare in still air.
    Bare,
    /// In a cloth, quilt or basket of about 30 mm.
    Wrapped,
    /// Inside the cooker's own jacket.
    SunkInCooker,
}

/// The pot's own lid.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Lid {
    /// On, and it fits.
    On,
    /// Loose or ajar.
    Ajar,
    /// Off.
    Off,
}

/// A pot as the household has it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub struct Pot {
    /// What it is made of.
    pub kind: PotKind,
    /// What it holds.
    pub size: PotSize,
    /// What is round it.
    pub wrap: Wrap,
}

/// What a kind of pot is made of.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PotKindProps {
    /// Mean thickness of wall, base and lid, m.
    pub wall_m: Datum,
    /// Density, kg/m3.
    pub density_kg_m3: Datum,
    /// Specific heat between 20 and 100 degC, J/kgK.
    pub cp_j_kgk: Datum,
    /// Emissivity of the outside in use.
    pub emissivity: Datum,
}

/// Outer measures of a size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PotSizeProps {
    /// Volume to the brim, L.
    pub volume_l: f64,
    /// Diameter of the base and the lid, m.
    pub diameter_m: Datum,
    /// Height of the side, m.
    pub height_m: Datum,
}

impl PotKind {
    /// Every kind.
    pub const ALL: [Self; 6] = [
        Self::ThinAluminium,
        Self::ThickAluminium,
        Self::StainlessSteel,
        Self::EnamelledSteel,
        Self::CastIron,
        Self::Clay,
    ];

    /// The row of the table.
    #[must_use]
    pub const fn props(self) -> PotKindProps {
        const fn row(wall_mm: f64, density: f64, cp: f64, emissivity: f64) -> PotKindProps {
            PotKindProps {
                wall_m: Datum::relative(wall_mm * 1e-3, 0.25, Source::CommonPractice),
                density_kg_m3: Datum::relative(density, 0.03, Source::Memory),
                cp_j_kgk: Datum::relative(cp, 0.03, Source::Memory),
                emissivity: Datum::relative(emissivity, 0.3, Source::Memory),
            }
        }
        match self {
            Self::ThinAluminium => row(1.2, 2700.0, 925.0, 0.15),
            Self::ThickAluminium => row(3.0, 2700.0, 925.0, 0.15),
            // The sandwich base counts in the mean thickness.
            Self::StainlessSteel => row(1.1, 7900.0, 510.0, 0.2),
            Self::EnamelledSteel => row(1.2, 7700.0, 480.0, 0.9),
            Self::CastIron => row(4.5, 7300.0, 500.0, 0.85),
            Self::Clay => row(8.0, 1900.0, 880.0, 0.9),
        }
    }
}

impl PotSize {
    /// Every size, smallest first.
    pub const ALL: [Self; 5] = [
        Self::Litres1_5,
        Self::Litres2_5,
        Self::Litres4,
        Self::Litres6,
        Self::Litres10,
    ];

    /// The row of the table.
    #[must_use]
    pub const fn props(self) -> PotSizeProps {
        const fn row(volume_l: f64, diameter_m: f64, height_m: f64) -> PotSizeProps {
            PotSizeProps {
                volume_l,
                diameter_m: Datum::relative(diameter_m, 0.08, Source::CommonPractice),
                height_m: Datum::relative(height_m, 0.15, Source::CommonPractice),
            }
        }
        match self {
            Self::Litres1_5 => row(1.5, 0.15, 0.085),
            Self::Litres2_5 => row(2.5, 0.18, 0.098),
            Self::Litres4 => row(4.0, 0.20, 0.127),
            Self::Litres6 => row(6.0, 0.24, 0.133),
            Self::Litres10 => row(10.0, 0.28, 0.162),
        }
    }

    /// Area of the base, m2.
    #[must_use]
    pub fn base_m2(self) -> f64 {
        0.25 * PI * self.props().diameter_m.value * self.props().diameter_m.value
    }

    /// Area of the side, m2.
    #[must_use]
    pub fn side_m2(self) -> f64 {
        PI * self.props().diameter_m.value * self.props().height_m.value
    }
}

impl Wrap {
    /// Every wrap.
    pub const ALL: [Self; 3] = [Self::Bare, Self::Wrapped, Self::SunkInCooker];
}

impl Lid {
    /// Every position.
    pub const ALL: [Self; 3] = [Self::On, Self::Ajar, Self::Off];

    /// What evaporates below the boil, as a share of what an open pot would.
    #[must_use]
    pub const fn evaporation_share(self) -> Datum {
        match self {
            Self::On => Datum::new(0.10, 0.05, Source::Inferred),
            Self::Ajar => Datum::new(0.30, 0.10, Source::Inferred),
            Self::Off => Datum::new(1.0, 0.25, Source::Inferred),
        }
    }
}

impl Pot {
    /// Mass of pot and lid, kg, from wall thickness and size: good to a quarter. A balance is
    /// better.
    #[must_use]
    pub fn mass_kg(self) -> f64 {
        let kind = self.kind.props();
        let area_m2 = 2.0 * self.size.base_m2() + self.size.side_m2();
        area_m2 * kind.wall_m.value * kind.density_kg_m3.value
    }

    /// Heat capacity of pot and lid, J/K.
    #[must_use]
    pub fn capacity_j_k(self) -> f64 {
        self.mass_kg() * self.kind.props().cp_j_kgk.value
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn measures_hold_the_volume() {
        for size in PotSize::ALL {
            let litres = 1e3 * size.base_m2() * size.props().height_m.value;
            assert!(
                (litres / size.props().volume_l - 1.0).abs() < 0.03,
                "{size:?}: {litres}"
            );
        }
    }

    /// Common practice, no source: what such pots weigh with their lids.
    #[test]
    fn masses_are_those_of_a_kitchen() {
        let cases = [
            (PotKind::ThinAluminium, PotSize::Litres4, 0.3, 0.6),
            (PotKind::ThickAluminium, PotSize::Litres4, 0.9, 1.4),
            (PotKind::StainlessSteel, PotSize::Litres4, 1.0, 1.6),
            (PotKind::EnamelledSteel, PotSize::Litres2_5, 0.7, 1.2),
            (PotKind::CastIron, PotSize::Litres4, 3.8, 5.5),
            (PotKind::Clay, PotSize::Litres4, 1.6, 3.0),
            (PotKind::ThinAluminium, PotSize::Litres10, 0.7, 1.3),
        ];
        for (kind, size, least, most) in cases {
            let mass = Pot {
                kind,
                size,
                wrap: Wrap::Bare,
            }
            .mass_kg();
            assert!((least..most).contains(&mass), "{kind:?} {size:?}: {mass}");
        }
    }

    #[test]
    fn a_pot_is_saved_under_stable_names() {
        let pot = Pot {
            kind: PotKind::CastIron,
            size: PotSize::Litres2_5,
            wrap: Wrap::SunkInCooker,
        };
        let text = serde_json::to_string(&pot).expect("it is writable");
        assert_eq!(
            text,
            r#"{"kind":"cast_iron","size":"2.5_l","wrap":"sunk_in_cooker"}"#
        );
        assert_eq!(
            serde_json::from_str::<Pot>(&text).expect("it is readable"),
            pot
        );
    }
}
