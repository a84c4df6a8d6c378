//! How the pot meets the store.
//!
//! A pot stands on air: its weight presses with about 1 kPa, at which solid spots carry a few per
//! cent of the heat. So a dry seat is told by its mean gap, across which air conducts and the faces
//! radiate. The presets are inferred and wide; one boil that the household reports narrows them.

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use crate::air;
use crate::conduction::{in_series, wall_w_k};
use crate::media::Medium;
use crate::provenance::{Datum, Source};

mod gap;

pub use gap::{Gap, Through};

/// Temperature jump at the two faces of a gap, told as a length of air, m; negligible above 0.02 mm.
///
/// 0.4 to 0.6 um, from memory; the gap model: Song et al., J. Heat Transfer 115 (1993) 533, and
/// Bahrami et al., AIAA 2004.
const JUMP_M: f64 = 0.5e-6;

/// From the wall of the pot into water that is not yet boiling, W/m2K: free convection over the
/// hot bottom gives 580 at 25 degC to 1160 at 95 degC for 10 K (Nu = 0.15 Ra^(1/3)).
pub const INNER_FILM_W_M2K: Datum = Datum::new(900.0, 300.0, Source::Inferred);
/// The same at the boil, W/m2K: Rohsenow's correlation gives 1260, 3490 and 6850 for a wall 3, 5 and
/// 7 K above boiling.
pub const BOILING_FILM_W_M2K: Datum = Datum::new(3500.0, 1500.0, Source::Inferred);
/// The same into porridge or rice that has thickened, W/m2K, not stirred.
pub const THICK_FILM_W_M2K: Datum = Datum::new(100.0, 50.0, Source::Memory);

/// Least film that is reckoned with, over water near freezing, W/m2K.
const LEAST_FILM_W_M2K: f64 = 360.0;
/// Porridge is thin until its meal swells, and is stirred now and then: less than half-way from thin to
/// thick, on a scale of ratios. Inferred.
const THICKENED: f64 = 0.4;

/// Film in a pot of water that warms, W/m2K, and its slope, W/m2K2: free convection over the hot bottom
/// (Nu = 0.15 Ra^(1/3)), 580 at 25 degC and 1160 at 95 for 10 K, and straight between; 900 in the mean.
#[inline]
pub(crate) fn warming_film_w_m2k(water_c: f64) -> (f64, f64) {
    let slope = (1160.0 - 580.0) / (95.0 - 25.0);
    let film = 580.0 + slope * (water_c - 25.0);
    if film < LEAST_FILM_W_M2K {
        (LEAST_FILM_W_M2K, 0.0)
    } else {
        (film, slope)
    }
}

/// How much less the film in porridge lets through than that of water.
pub(crate) fn thickness_of_porridge() -> f64 {
    libm::pow(INNER_FILM_W_M2K.value / THICK_FILM_W_M2K.value, THICKENED)
}

/// How the pot meets the store. The serialised names are kept in saved data.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Seat {
    /// Machined flat and pulled together by a screw.
    MachinedClamped,
    /// A flat thick base on a flat plate, no light seen between.
    DryFlat,
    /// A usual pot on a usual plate.
    DryOrdinary,
    /// A base a little warped: it rocks.
    DryWarped,
    /// A thin or dented base: a coin goes under it.
    BadlyWarped,
    /// A film of cooking oil or grease between flat faces.
    OilFilm,
    /// The pot in a well of the store: heat through the side as well, across 1 mm.
    Sleeve,
    /// The pot's wall in the molten medium, or in a film of water below 100 degC.
    SunkInMelt,
    /// Over a gap of about 8 mm that the heat crosses as radiation and by the air: both faces dark.
    RadiantGap,
}

/// What fills the seat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Joint {
    /// Air, of a mean width; the faces radiate.
    Gap {
        /// Mean width, m.
        mean_gap_m: Datum,
    },
    /// A film that conducts, W/m2K as a whole.
    Film {
        /// Conductance, W/m2K.
        conductance_w_m2k: Datum,
    },
    /// Air between dark faces, wide enough to see through: it moves, and they radiate.
    Open {
        /// Width, m.
        gap_m: Datum,
    },
}

/// Mean gap under a pot in a well, which it stands on, m.
pub const SLEEVE_BASE_GAP_M: Datum = Datum::relative(0.18e-3, 0.5, Source::Inferred);
/// Gap round a pot in a well, which it must slide past, m.
pub const SLEEVE_SIDE_GAP_M: Datum = Datum::relative(1.0e-3, 0.4, Source::Inferred);
/// Emissivity of a pot's sooty base, and of mortar or oxidised plate under it, 0.85 to 0.95.
pub const DARK_EMISSIVITY: Datum = Datum::new(0.9, 0.05, Source::Memory);

/// Emissivity of the store's face, oxidised metal (from memory).
const STORE_EMISSIVITY: f64 = 0.3;
/// Emissivity of the pot's base, worn aluminium or steel (from memory).
const BASE_EMISSIVITY: f64 = 0.2;

impl Seat {
    /// Every seat, best first among the dry ones.
    pub const ALL: [Self; 9] = [
        Self::MachinedClamped,
        Self::DryFlat,
        Self::DryOrdinary,
        Self::DryWarped,
        Self::BadlyWarped,
        Self::OilFilm,
        Self::Sleeve,
        Self::SunkInMelt,
        Self::RadiantGap,
    ];

    /// What fills it. The gaps give about 1500, 500, 200, 80 and 40 W/m2K between 200 and 100 degC.
    #[must_use]
    pub const fn joint(self) -> Joint {
        const fn gap(millimetres: f64, share: f64) -> Joint {
            Joint::Gap {
                mean_gap_m: Datum::relative(millimetres * 1e-3, share, Source::Inferred),
            }
        }
        match self {
            Self::MachinedClamped => gap(0.023, 0.4),
            Self::DryFlat => gap(0.07, 0.4),
            Self::DryOrdinary => gap(0.18, 0.5),
            Self::DryWarped => gap(0.46, 0.5),
            Self::BadlyWarped => gap(0.95, 0.5),
            Self::Sleeve => Joint::Gap {
                mean_gap_m: SLEEVE_SIDE_GAP_M,
            },
            Self::RadiantGap => Joint::Open {
                gap_m: Datum::relative(8e-3, 0.3, Source::CommonPractice),
            },
            Self::OilFilm => Joint::Film {
                conductance_w_m2k: Datum::relative(800.0, 0.4, Source::Inferred),
            },
            Self::SunkInMelt => Joint::Film {
                conductance_w_m2k: Datum::relative(1000.0, 0.4, Source::Inferred),
            },
        }
    }

    /// Contact conductance between store and pot, W/m2K, without the film inside the pot.
    #[must_use]
    pub fn contact_w_m2k(self, store_c: f64, pot_c: f64) -> f64 {
        match self.joint() {
            Joint::Gap { mean_gap_m } => gap_w_m2k(
                mean_gap_m.value,
                store_c,
                pot_c,
                STORE_EMISSIVITY,
                BASE_EMISSIVITY,
            ),
            Joint::Film { conductance_w_m2k } => conductance_w_m2k.value,
            Joint::Open { gap_m } => air::layer_from_below_w_m2k(
                gap_m.value,
                store_c,
                pot_c,
                DARK_EMISSIVITY.value,
                DARK_EMISSIVITY.value,
            ),
        }
    }

    /// One standard deviation of the contact conductance as a share of it.
    #[must_use]
    pub fn spread_share(self) -> f64 {
        match self.joint() {
            Joint::Gap { mean_gap_m } => mean_gap_m.spread_share(),
            Joint::Film { conductance_w_m2k } => conductance_w_m2k.spread_share(),
            Joint::Open { gap_m } => gap_m.spread_share(),
        }
    }

    /// Area through which the pot takes heat, m2: the base, and for a sleeve or a melt the side as
    /// deep as it goes in.
    #[must_use]
    pub fn area_m2(self, base_diameter_m: f64, depth_m: f64) -> f64 {
        let base_m2 = 0.25 * PI * base_diameter_m * base_diameter_m;
        match self {
            Self::Sleeve | Self::SunkInMelt => base_m2 + PI * base_diameter_m * depth_m,
            _ => base_m2,
        }
    }

    /// Whether oil or grease is in it, which smokes above 200 degC and must not meet a nitrate.
    #[must_use]
    pub const fn holds_oil(self) -> bool {
        matches!(self, Self::OilFilm)
    }
}

/// An air gap between store and pot, W/m2K: conduction and radiation. Gaps are m, temperatures
/// degC.
#[must_use]
pub fn gap_w_m2k(
    mean_gap_m: f64,
    hot_c: f64,
    cold_c: f64,
    hot_emissivity: f64,
    cold_emissivity: f64,
) -> f64 {
    air::conductivity_w_mk(0.5 * (hot_c + cold_c)) / (mean_gap_m + JUMP_M)
        + air::radiation_w_m2k(hot_c, cold_c, hot_emissivity, cold_emissivity)
}

/// A pot in a well of the store, W/K: through its base and its side at once, each across its own
/// gap of air. Measures are m, temperatures degC.
#[must_use]
pub fn well_w_k(
    (diameter_m, depth_m): (f64, f64),
    (base_gap_m, side_gap_m): (f64, f64),
    (hot_c, cold_c): (f64, f64),
) -> f64 {
    let across = |gap_m| gap_w_m2k(gap_m, hot_c, cold_c, STORE_EMISSIVITY, BASE_EMISSIVITY);
    0.25 * PI * diameter_m * diameter_m * across(base_gap_m)
        + PI * diameter_m * depth_m * across(side_gap_m)
}

/// A film of oil, grease or water, W/m2K.
#[must_use]
pub fn film_w_m2k(conductivity_w_mk: f64, thickness_m: f64) -> f64 {
    wall_w_k(conductivity_w_mk, 1.0, thickness_m)
}

/// From the store to the food, W/m2K: the contact and the film inside the pot, one behind the
/// other. The metal of a pot adds less than one per cent; clay is not a pot for a seat.
#[must_use]
pub fn store_to_food_w_m2k(contact_w_m2k: f64, inner_film_w_m2k: f64) -> f64 {
    in_series(&[contact_w_m2k, inner_film_w_m2k])
}

/// A melting medium without metal in it, freezing on the seat.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FrozenLayer {
    /// Depth of the medium under the seat, m.
    pub depth_m: f64,
    /// Conductivity of the solid, W/mK.
    pub conductivity_w_mk: f64,
}

impl FrozenLayer {
    /// The layer of a medium of that depth; `None` for one that does not melt.
    #[must_use]
    pub fn of(medium: Medium, depth_m: f64) -> Option<Self> {
        let props = medium.props();
        props.melt.map(|_| Self {
            depth_m,
            conductivity_w_mk: props.conductivity_w_mk.value,
        })
    }

    /// Resistance of what has frozen, K/W, for a solid share of the medium from 0 to 1.
    #[must_use]
    pub fn resistance_k_w(self, solid_share: f64, area_m2: f64) -> f64 {
        solid_share.clamp(0.0, 1.0) * self.depth_m / (self.conductivity_w_mk * area_m2)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    /// Conductivity of air by CoolProp 8.0.0 over the gap, pot at 100 degC, and the published
    /// black-body exchange: rows of a computed table, gaps in mm.
    #[test]
    fn gaps_against_the_table() {
        let cases = [
            (0.05, 150.0, 667.0),
            (0.1, 200.0, 350.0),
            (0.2, 250.0, 183.0),
            (0.5, 300.0, 77.0),
            (1.0, 150.0, 33.0),
            (5.0, 200.0, 7.0),
        ];
        for (gap_mm, store_c, expect) in cases {
            let radiation = air::radiation_w_m2k(store_c, 100.0, 0.2, 0.3);
            let conducted = gap_w_m2k(gap_mm * 1e-3, store_c, 100.0, 0.2, 0.3) - radiation;
            assert!(
                (conducted / expect - 1.0).abs() < 0.025,
                "{gap_mm} mm: {conducted}"
            );
            assert!((1.9..3.5).contains(&radiation), "{radiation}");
        }
    }

    /// Black faces nearly double a gap of 2 mm and hardly help one of 0.1 mm (computed).
    #[test]
    fn black_faces_help_wide_gaps() {
        let gain = |gap_m: f64| {
            gap_w_m2k(gap_m, 250.0, 100.0, 0.9, 0.9) / gap_w_m2k(gap_m, 250.0, 100.0, 0.1, 0.1)
        };
        assert!((1.7..2.0).contains(&gain(2e-3)), "{}", gain(2e-3));
        assert!((1.02..1.08).contains(&gain(1e-4)), "{}", gain(1e-4));
    }

    /// Films: 0.1 mm of water 6700, of vegetable oil 1480, of grease 8000 W/m2K (k of 0.67, 0.148,
    /// 0.8 W/mK).
    #[test]
    fn films_against_the_table() {
        for (k, expect) in [(0.67, 6700.0), (0.148, 1480.0), (0.8, 8000.0)] {
            assert!((film_w_m2k(k, 1e-4) / expect - 1.0).abs() < 1e-3);
        }
    }

    #[test]
    fn presets_are_where_their_words_say() {
        let cases = [
            (Seat::MachinedClamped, 1500.0),
            (Seat::DryFlat, 500.0),
            (Seat::DryOrdinary, 200.0),
            (Seat::DryWarped, 80.0),
            (Seat::BadlyWarped, 40.0),
            (Seat::OilFilm, 800.0),
            (Seat::SunkInMelt, 1000.0),
        ];
        for (seat, expect) in cases {
            let actual = seat.contact_w_m2k(200.0, 100.0);
            assert!((actual / expect - 1.0).abs() < 0.03, "{seat:?}: {actual}");
        }
    }

    /// A 1 mm gap all round a pot of 20 cm, 10 cm deep, gives 2.2 W/K through the side; the base
    /// with 0.2 mm 5.5 W/K (computed with air between 150 and 200 degC).
    #[test]
    fn a_well_and_a_base() {
        let side_m2 = Seat::Sleeve.area_m2(0.2, 0.1) - Seat::DryFlat.area_m2(0.2, 0.1);
        assert!((side_m2 - 0.0628).abs() < 1e-3);
        let side_w_k = side_m2 * gap_w_m2k(1e-3, 200.0, 100.0, 1e-6, 1e-6);
        assert!((side_w_k - 2.2).abs() < 0.1, "{side_w_k}");
        let base_w_k =
            Seat::DryOrdinary.area_m2(0.2, 0.1) * gap_w_m2k(2e-4, 200.0, 100.0, 1e-6, 1e-6);
        assert!((base_w_k - 5.5).abs() < 0.1, "{base_w_k}");
    }

    /// The same well as a whole: 7.7 W/K by air, and 0.2 to 0.3 by radiation.
    #[test]
    fn a_well_adds_its_side_to_its_base() {
        let well = well_w_k((0.2, 0.1), (2e-4, 1e-3), (200.0, 100.0));
        assert!((7.8..8.2).contains(&well), "{well}");
        let shallow = well_w_k((0.2, 0.0), (2e-4, 1e-3), (200.0, 100.0));
        assert!((5.4..5.8).contains(&shallow), "{shallow}");
    }

    /// 10 mm of frozen erythritol on a disc of 20 cm lets 41 W through 18 K (computed, wall at
    /// 100 degC).
    #[test]
    fn frozen_layer_against_the_table() {
        let layer = FrozenLayer::of(Medium::Erythritol, 0.04).expect("it melts");
        let disc_m2 = Seat::DryFlat.area_m2(0.2, 0.0);
        let power_w = 18.0 / layer.resistance_k_w(0.25, disc_m2);
        assert!((power_w - 41.0).abs() < 1.0, "{power_w}");
        assert_eq!(FrozenLayer::of(Medium::Aluminium, 0.04), None);
    }

    proptest! {
        #[test]
        fn contact_falls_with_the_gap(
            gap_m in 5e-6..5e-3_f64,
            store_c in 101.0..350.0_f64,
            more in 1.01..3.0_f64,
        ) {
            let near = gap_w_m2k(gap_m, store_c, 100.0, 0.3, 0.2);
            let far = gap_w_m2k(gap_m * more, store_c, 100.0, 0.3, 0.2);
            prop_assert!(0.0 < far && far < near);
        }

        #[test]
        fn every_seat_conducts(seat_idx in 0..Seat::ALL.len(), store_c in 20.0..400.0_f64) {
            let seat = Seat::ALL[seat_idx];
            let contact = seat.contact_w_m2k(store_c, 60.0);
            prop_assert!(5.0 < contact && contact < 3000.0);
            let whole = store_to_food_w_m2k(contact, INNER_FILM_W_M2K.value);
            prop_assert!(whole < contact && whole < INNER_FILM_W_M2K.value);
            prop_assert!(0.3 <= seat.spread_share());
        }
    }
}
