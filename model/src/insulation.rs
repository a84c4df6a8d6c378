//! What keeps the heat in: conductivity against temperature, density, heat capacity, and what it
//! stands.

mod table;

use serde::{Deserialize, Serialize};

use crate::provenance::{Datum, Source};

/// Thin samples of straw take fire on a hot plate from this temperature on, degC; hay from 406. A
/// thick layer smoulders much sooner, so this is no limit for a jacket.
pub const STRAW_IGNITION_C: Datum = Datum::new(380.0, 10.0, Source::StrawFire);
/// The char of rice husk heats itself until it burns from this temperature on, degC, in a heap of
/// 0.8 L; in a thicker layer sooner.
pub const HUSK_CHAR_IGNITION_C: Datum = Datum::new(173.0, 5.0, Source::HuskFire);

/// An insulation. The serialised names are kept in saved data: never rename one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Insulation {
    /// Glass wool with little binder.
    GlassWool,
    /// Rock wool.
    RockWool,
    /// Loose expanded perlite.
    Perlite,
    /// Exfoliated vermiculite.
    Vermiculite,
    /// Calcium silicate board.
    CalciumSilicate,
    /// Ceramic fibre blanket.
    CeramicFibre,
    /// Rice husk.
    RiceHusk,
    /// Dry straw or hay, packed.
    Straw,
    /// Sheep's wool.
    Wool,
    /// Aerogel blanket.
    AerogelBlanket,
}

/// What can go wrong with an insulation.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum InsulationHazard {
    /// Burns or smoulders, in thick layers well below the ignition point of a pinch of it.
    Combustible,
    /// Dust or fibre that harms the lungs or the skin.
    Dust,
    /// Insulates badly once damp, and takes water up.
    Damp,
    /// Holds a resin that smokes away on the first firing: fire it outdoors.
    BinderFumes,
    /// Old stock may hold asbestos.
    AsbestosInOldStock,
    /// Has been seen to heat itself on the first firing.
    SelfHeats,
    /// Settles and leaves a gap at the top.
    Settles,
    /// Insects and mice.
    Pests,
}

/// Conductivity at a temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ConductivityPoint {
    /// Mean temperature of the layer, degC.
    pub mean_c: f64,
    /// Conductivity there, W/mK.
    pub conductivity_w_mk: Datum,
}

/// One row of the table of insulations.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InsulationProps {
    /// Density as packed, kg/m3.
    pub density_kg_m3: Datum,
    /// Specific heat, J/kgK.
    pub cp_j_kgk: Datum,
    /// Conductivity at rising temperatures: two points at least.
    pub conductivity: &'static [ConductivityPoint],
    /// Highest temperature of the hot face, degC.
    pub limit_c: Datum,
    /// What can go wrong.
    pub hazards: &'static [InsulationHazard],
}

impl InsulationProps {
    /// Conductivity at the mean temperature of a layer, W/mK: straight lines between the points,
    /// the last line carried on beyond them, and never less than half the first figure.
    #[must_use]
    pub fn conductivity_w_mk(&self, mean_c: f64) -> f64 {
        let upper = self
            .conductivity
            .windows(2)
            .find(|pair| matches!(pair, [_, right] if mean_c <= right.mean_c))
            .or_else(|| self.conductivity.windows(2).next_back());
        let (Some([left, right]), Some(first)) = (upper, self.conductivity.first()) else {
            return f64::NAN;
        };
        let (low, high) = (left.conductivity_w_mk.value, right.conductivity_w_mk.value);
        let slope = (high - low) / (right.mean_c - left.mean_c);
        (low + slope * (mean_c - left.mean_c)).max(0.5 * first.conductivity_w_mk.value)
    }

    /// Whether fire can live in it.
    #[must_use]
    pub fn is_combustible(&self) -> bool {
        self.hazards.contains(&InsulationHazard::Combustible)
    }
}

impl Insulation {
    /// Every insulation, in the order of the table.
    pub const ALL: [Self; 10] = [
        Self::GlassWool,
        Self::RockWool,
        Self::Perlite,
        Self::Vermiculite,
        Self::CalciumSilicate,
        Self::CeramicFibre,
        Self::RiceHusk,
        Self::Straw,
        Self::Wool,
        Self::AerogelBlanket,
    ];

    /// The row of the table.
    #[must_use]
    pub const fn props(self) -> &'static InsulationProps {
        match self {
            Self::GlassWool => &table::GLASS_WOOL,
            Self::RockWool => &table::ROCK_WOOL,
            Self::Perlite => &table::PERLITE,
            Self::Vermiculite => &table::VERMICULITE,
            Self::CalciumSilicate => &table::CALCIUM_SILICATE,
            Self::CeramicFibre => &table::CERAMIC_FIBRE,
            Self::RiceHusk => &table::RICE_HUSK,
            Self::Straw => &table::STRAW,
            Self::Wool => &table::WOOL,
            Self::AerogelBlanket => &table::AEROGEL_BLANKET,
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;
    use crate::air;

    #[test]
    fn tables_rise_with_temperature() {
        for insulation in Insulation::ALL {
            let points = insulation.props().conductivity;
            assert!(2 <= points.len(), "{insulation:?}");
            for pair in points.windows(2) {
                assert!(pair[0].mean_c < pair[1].mean_c, "{insulation:?}");
                assert!(
                    pair[0].conductivity_w_mk.value < pair[1].conductivity_w_mk.value,
                    "{insulation:?}"
                );
            }
        }
    }

    #[test]
    fn points_are_met_and_joined() {
        let perlite = Insulation::Perlite.props();
        assert!((perlite.conductivity_w_mk(25.0) - 0.0485).abs() < 1e-12);
        assert!((perlite.conductivity_w_mk(150.0) - 0.0725).abs() < 1e-12);
        assert!((perlite.conductivity_w_mk(300.0) - 0.110).abs() < 1e-12);
        assert!((perlite.conductivity_w_mk(340.0) - 0.120).abs() < 1e-12);
    }

    /// A model of fibrous insulation, 0.92 of still air and radiation through it (from memory),
    /// stands within a quarter of the figures of the wools, which are from memory too.
    #[test]
    fn wools_follow_air_and_radiation() {
        for insulation in [
            Insulation::GlassWool,
            Insulation::RockWool,
            Insulation::CeramicFibre,
        ] {
            for mean_c in [25.0, 100.0, 200.0, 300.0_f64] {
                let model = 0.92 * air::conductivity_w_mk(mean_c)
                    + 0.003
                    + 3e-10 * (mean_c + 273.15).powi(3);
                let ratio = insulation.props().conductivity_w_mk(mean_c) / model;
                assert!(
                    (0.75..1.25).contains(&ratio),
                    "{insulation:?} {mean_c}: {ratio}"
                );
            }
        }
    }

    /// Plant and animal matter is kept from the hot store: the limits stay far below where a litre
    /// of char heats itself.
    #[test]
    fn what_burns_has_a_low_limit() {
        for insulation in Insulation::ALL {
            let props = insulation.props();
            let most_c = HUSK_CHAR_IGNITION_C.value - 60.0;
            assert!(
                !props.is_combustible() || props.limit_c.value <= most_c,
                "{insulation:?}"
            );
        }
    }

    proptest! {
        #[test]
        fn conductivity_is_positive(
            insulation_idx in 0..Insulation::ALL.len(),
            mean_c in -60.0..700.0_f64,
        ) {
            let conductivity =
                Insulation::ALL[insulation_idx].props().conductivity_w_mk(mean_c);
            prop_assert!(0.005 < conductivity && conductivity < 0.5);
        }
    }
}
