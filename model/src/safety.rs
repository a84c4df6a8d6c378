//! What must not be built, and what a person must be told.
//!
//! Refusals are combinations that can burn, explode or poison: a form does not accept them.
//! Cautions go with a build that is accepted. Neither takes the place of local rules: fuses, wire
//! and earthing follow the local code, and a licensed person connects what is beyond extra-low
//! voltage. Only enums leave this module, with the values that matter in them; the words are the
//! screen's.

use serde::{Deserialize, Serialize};

use crate::cooker::Cooker;
use crate::dish::Dish;
use crate::insulation::{Insulation, InsulationHazard};
use crate::jacket::{Jacket, LayerKind, LayeredJacket};
use crate::media::{Chemistry, Hazard, Medium};
use crate::out_of_range::OutOfRange;
use crate::provenance::{Datum, Source};
use crate::seat::Seat;

/// Metal hotter than this burns the skin within seconds, degC.
pub const TOUCH_LIMIT_C: Datum = Datum::new(60.0, 5.0, Source::HotSurface);
/// From this temperature on the store is taken to set oil, straw and cloth alight when it is left
/// on them, degC. Thin straw takes fire on a plate at 380 degC, husk char in a heap heats itself
/// from 173 degC.
pub const IGNITION_CAUTION_C: Datum = Datum::new(200.0, 25.0, Source::Inferred);
/// Cooking oil smokes from this temperature on, degC: the limit of a seat with an oil film.
pub const OIL_FILM_LIMIT_C: Datum = Datum::new(200.0, 15.0, Source::Memory);
/// Safe to touch in dry places as a direct voltage, V.
pub const TOUCH_SAFE_V: Datum = Datum::new(60.0, 0.0, Source::IecSelv);
/// Highest direct voltage that counts as extra-low, V.
pub const EXTRA_LOW_V: Datum = Datum::new(120.0, 0.0, Source::IecSelv);
/// Nitrate within this face temperature of the insulation counts as within its reach even where
/// the insulation is of mineral fibre with a resin binder, degC: from here the resin smokes.
const BINDER_SMOKES_C: f64 = 200.0;

/// A layer of the jacket as it stands in the cooker.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct LayerInPlace {
    /// What it is made of.
    pub material: Insulation,
    /// Temperature of its inner face with the store at the cut-out, degC.
    pub hot_face_c: f64,
}

/// The layers of a jacket with the temperatures that they come to, for a store held at the cut-out
/// in air at `air_c`; layers of air stand everything and are left out.
///
/// # Errors
///
/// [`OutOfRange`] when the jacket or a temperature is outside its range.
pub fn layers_in_place(
    jacket: &LayeredJacket,
    cut_out_c: f64,
    air_c: f64,
) -> Result<Vec<LayerInPlace>, OutOfRange> {
    let faces_c = jacket.faces_c(cut_out_c, air_c)?;
    let in_place = |(kind, hot_face_c)| match kind {
        LayerKind::Insulation { material } => Some(LayerInPlace {
            material,
            hot_face_c,
        }),
        LayerKind::StillAir { .. } => None,
    };
    let kinds = jacket.layers.iter().map(|layer| layer.kind);
    Ok(kinds.zip(faces_c).filter_map(in_place).collect())
}

/// What the checks need to know of a cooker.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Build {
    /// Media of the store.
    pub media: Vec<Medium>,
    /// Temperature at which the thermostat cuts out, degC.
    pub cut_out_c: f64,
    /// How the pot meets the store.
    pub seat: Seat,
    /// Layers of the jacket from the store outwards; empty where it is not known.
    pub layers: Vec<LayerInPlace>,
    /// Open-circuit voltage of the panels together on a cold morning, V.
    pub open_circuit_v: f64,
    /// Whether a vessel of the cooker is closed so that pressure can build up.
    pub sealed_vessel: bool,
}

/// A combination that is not accepted.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "refused")]
pub enum Refusal {
    /// A nitrate and an organic medium in one store: an explosive when mixed hot.
    NitrateWithOrganicMedium {
        /// The nitrate.
        nitrate: Medium,
        /// What burns.
        organic: Medium,
    },
    /// A nitrate under a seat with oil or grease.
    NitrateWithOilFilm {
        /// The nitrate.
        nitrate: Medium,
    },
    /// A nitrate in a jacket that burns.
    NitrateWithCombustibleJacket {
        /// The nitrate.
        nitrate: Medium,
        /// What burns.
        insulation: Insulation,
    },
    /// A nitrate in which the pot stands: it would touch food and whatever boils over.
    NitrateTouchesPot {
        /// The nitrate.
        nitrate: Medium,
    },
    /// A nitrate with a salt that holds water: steam throws the melt about.
    NitrateWithWaterOfCrystallisation {
        /// The nitrate.
        nitrate: Medium,
        /// The salt that holds water.
        hydrate: Medium,
    },
    /// The thermostat cuts out above what a medium stands.
    AboveMediumLimit {
        /// The medium.
        medium: Medium,
        /// What it stands, degC.
        limit_c: f64,
        /// The cut-out, degC.
        cut_out_c: f64,
    },
    /// A layer of the jacket would be hotter than it stands.
    AboveInsulationLimit {
        /// The insulation.
        insulation: Insulation,
        /// What it stands, degC.
        limit_c: f64,
        /// What its inner face would come to, degC.
        hot_face_c: f64,
    },
    /// Oil in the seat of a store that is hotter than the oil stands.
    OilFilmTooHot {
        /// What the oil stands, degC.
        limit_c: f64,
        /// The cut-out, degC.
        cut_out_c: f64,
    },
    /// The cut-out is not a number.
    CutOutUnknown,
}

/// What a person must be told of a build that is accepted.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case", tag = "caution")]
pub enum Caution {
    /// The store is too hot to touch.
    HotMetal {
        /// The store now, degC.
        store_c: f64,
    },
    /// The store sets oil, straw, cloth and paper alight.
    Ignites {
        /// The store now, degC.
        store_c: f64,
    },
    /// Molten nitrate burns through the skin; keep fuel, sugar, oil, charcoal and water from it.
    MoltenNitrate {
        /// The nitrate.
        nitrate: Medium,
    },
    /// Nitrate against aluminium: never let it overheat; the melt attacks the metal, and burning
    /// aluminium in nitrate cannot be put out.
    NitrateOnAluminium {
        /// The nitrate.
        nitrate: Medium,
    },
    /// Nitrate in a jacket that was measured, not described: nothing that burns may be in it.
    NitrateJacketUnknown {
        /// The nitrate.
        nitrate: Medium,
    },
    /// Nitrate against fibre whose resin smokes away: fire the fibre out, outdoors, first.
    NitrateNearBinder {
        /// The nitrate.
        nitrate: Medium,
        /// The fibre.
        insulation: Insulation,
    },
    /// A property of a medium that the maker must know.
    OfMedium {
        /// The medium.
        medium: Medium,
        /// The property.
        hazard: Hazard,
    },
    /// A property of an insulation that the maker must know.
    OfInsulation {
        /// The insulation.
        insulation: Insulation,
        /// The property.
        hazard: InsulationHazard,
    },
    /// A medium that attacks a metal of the same store.
    Corrodes {
        /// What attacks.
        medium: Medium,
        /// What is attacked.
        metal: Medium,
    },
    /// A closed vessel bursts without a relief valve.
    SealedVessel,
    /// Panels give voltage whenever there is light, whatever is switched off.
    PanelsLive,
    /// A thermostat made for alternating current does not break this circuit: it draws an arc.
    SwitchRatedForDirectCurrent,
    /// Fuse and wire by the local code.
    FuseAndWireByLocalCode,
    /// The voltage is no longer safe to touch.
    AboveTouchSafe {
        /// Open-circuit voltage, V.
        open_circuit_v: f64,
        /// The limit, V.
        limit_v: f64,
    },
    /// Beyond extra-low voltage: a licensed person connects it.
    BeyondExtraLow {
        /// Open-circuit voltage, V.
        open_circuit_v: f64,
        /// The limit, V.
        limit_v: f64,
    },
    /// Poisonous until it has boiled: soak, throw the water away, boil it hard.
    MustBoil {
        /// The dish.
        dish: Dish,
    },
    /// Bitter cassava holds cyanide.
    Detoxify {
        /// The dish.
        dish: Dish,
    },
    /// The middle must have been this hot.
    CoreTemperature {
        /// The dish.
        dish: Dish,
        /// How hot, degC.
        core_c: f64,
    },
    /// Keep it at this temperature or above, or cool it fast.
    HoldHot {
        /// The dish.
        dish: Dish,
        /// How hot, degC.
        least_c: f64,
    },
    /// Never leave it in a cooling cooker overnight: boiling it again does not make it safe.
    NeverOvernight {
        /// The dish.
        dish: Dish,
    },
}

mod cautions;
mod refusals;

/// The light of full sun, for the highest voltage of a cold morning. \[W/m2\]
const FULL_SUN_W_M2: f64 = 1000.0;

impl Build {
    /// What the checks need to know of a household's cooker.
    ///
    /// A medium that must be kept closed makes its vessel a sealed one. Where no curve can be
    /// worked out for the panels, their voltage is not a number, which the checks take for the worst.
    ///
    /// # Arguments
    ///
    /// * `air_c`: round the jacket. \[degC\]
    /// * `coldest_c`: of the panels' cells on a cold bright morning. \[degC\]
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when the jacket or a temperature is outside its range.
    pub fn of(cooker: &Cooker, air_c: f64, coldest_c: f64) -> Result<Self, OutOfRange> {
        let store = &cooker.store;
        let layers = match &cooker.jacket {
            Jacket::Layers(jacket) => layers_in_place(jacket, store.cutout_c, air_c)?,
            Jacket::Measured { .. } | Jacket::Flask { .. } => Vec::new(),
        };
        let open_circuit_v = cooker.panels.array().map_or(f64::NAN, |array| {
            array.open_circuit_v(FULL_SUN_W_M2, coldest_c)
        });
        let media: Vec<Medium> = store.charges.iter().map(|charge| charge.medium).collect();
        let is_closed = |medium: &Medium| medium.props().hazards.contains(&Hazard::LosesWater);
        Ok(Self {
            sealed_vessel: media.iter().any(is_closed),
            media,
            cut_out_c: store.cutout_c,
            seat: cooker.contact.seat,
            layers,
            open_circuit_v,
        })
    }

    /// Every combination that is not accepted; empty for a build that is.
    #[must_use]
    pub fn refusals(&self) -> Vec<Refusal> {
        refusals::of(self)
    }

    /// What a person must be told, the worst first, with the store at `store_c`.
    #[must_use]
    pub fn cautions(&self, store_c: f64) -> Vec<Caution> {
        cautions::of(self, store_c)
    }

    fn nitrates(&self) -> impl Iterator<Item = Medium> + '_ {
        self.media
            .iter()
            .copied()
            .filter(|medium| medium.props().chemistry.is_oxidiser())
    }

    fn of_chemistry(&self, chemistry: Chemistry) -> impl Iterator<Item = Medium> + '_ {
        self.media
            .iter()
            .copied()
            .filter(move |medium| medium.props().chemistry == chemistry)
    }
}

/// What a person must be told of a dish.
#[must_use]
pub fn dish_cautions(dish: Dish) -> Vec<Caution> {
    cautions::of_dish(dish)
}

#[cfg(test)]
mod tests;
