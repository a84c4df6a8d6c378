//! A household's cooker put together for the network.

use crate::conduction::in_series;
use crate::cooker::Cooker;
use crate::dish::{Basis, Dish, DoneWhen};
use crate::enthalpy::{EnthalpyCurve, MediumCurve};
use crate::inside::{Inside, Way};
use crate::journal::Meal;
use crate::network::{self, JacketPair, Layer, Network, NetworkParts, OpenSurface};
use crate::panel::HeatTable;
use crate::place::{AirYear, Place};
use crate::pot::Pot;
use crate::seat::{INNER_FILM_W_M2K, store_to_food_w_m2k};
use crate::sun::{Plane, Setting};
use crate::tonight::{Leaning, TonightError};
use crate::water::{CP_J_KGK, vapour_pressure_pa};

/// Share of light that level ground throws back. Common practice, no source.
const ALBEDO: f64 = 0.2;
/// Wind at the panel when nobody knows. Common practice, no source. [m/s]
pub(super) const WIND_M_S: f64 = 1.0;
/// Relative humidity of a kitchen. From memory.
const KITCHEN_HUMIDITY: f64 = 0.5;
/// Temperature of the pot for which the seat's conductance is taken. [°C]
const POT_IN_SEAT_C: f64 = 80.0;
/// What an open cooker loses from the store's face: convection and radiation of a dull hot face.
/// Common practice, no source. \[W/(m² K)\]
const OPEN_FACE_W_M2K: f64 = 15.0;
/// Water's rise to the boil is told for water of this temperature. [°C]
pub(super) const FRESH_WATER_C: f64 = 20.0;

/// A thermometer this near the melting range says nothing of how much has melted. \[K\]
const MELTING_MARGIN_K: f64 = 2.0;

/// Where the household lives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    /// On earth, with the household's clock.
    pub place: Place,
    /// The air through the year.
    pub air: AirYear,
}

impl Site {
    /// The panel's surroundings for the sun's part of the model.
    pub(super) fn setting(&self, cooker: &Cooker) -> Setting {
        Setting {
            place: self.place,
            air: self.air,
            plane: Plane {
                tilt_deg: cooker.panels.tilt_deg,
                azimuth_deg: cooker.panels.azimuth_deg,
                albedo: ALBEDO,
            },
            wind_m_s: WIND_M_S,
        }
    }
}

/// A cooker put together: everything of it that does not change from day to day.
#[derive(Debug, Clone)]
pub struct Rig {
    pub(super) setting: Setting,
    pub(super) heat: HeatTable,
    curve: EnthalpyCurve,
    parts: NetworkParts,
    jacket_pair: Option<JacketPair>,
    open_face_w_k: f64,
    cutout_c: f64,
    melting: Option<(usize, (f64, f64))>,
}

impl Rig {
    /// Puts a cooker together.
    ///
    /// The jacket's loss is taken for a store half-way between the boil and the cut-out, the
    /// seat's conductance for the same store under a warming pot.
    ///
    /// # Errors
    ///
    /// [`TonightError`] from the part that makes no sense.
    pub fn new(site: &Site, cooker: &Cooker) -> Result<Self, TonightError> {
        let boiling_c = crate::water::boiling_point_c(site.place.altitude_m)?;
        let working_c = 0.5 * (boiling_c + cooker.store.cutout_c.max(boiling_c));
        let media: Vec<(f64, MediumCurve)> = cooker
            .store
            .charges
            .iter()
            .map(|charge| (charge.mass_kg, charge.medium.into()))
            .collect();
        let curve = EnthalpyCurve::new(&media)?;
        let jacket = cooker.jacket.thermal(working_c, FRESH_WATER_C)?;

        let diameter_m = cooker.pot.size.props().diameter_m.value;
        let area_m2 = cooker
            .contact
            .seat
            .area_m2(diameter_m, cooker.store.depth_m);
        let contact_w_m2k = cooker
            .contact
            .measured_w_m2k
            .unwrap_or_else(|| cooker.contact.seat.contact_w_m2k(working_c, POT_IN_SEAT_C));
        let to_food_w_k = area_m2 * store_to_food_w_m2k(contact_w_m2k, INNER_FILM_W_M2K.value);
        let inside = inside(cooker, contact_w_m2k, area_m2);
        let layer = frozen_layer(cooker, area_m2);
        let parts = NetworkParts {
            row: inside.row,
            g_loss_w_k: jacket.loss_w_k,
            c_jacket_j_k: jacket.capacity_j_k.max(1.0),
            seat: network::Seat {
                g_contact_w_k: in_series(&[to_food_w_k, inside.face_w_k]),
                layer,
            },
            g_lid_w_k: 0.0,
            cutout_c: Some(cooker.store.cutout_c),
            altitude_m: site.place.altitude_m,
        };
        Network::new(&curve, parts)?;

        let array = cooker.panels.array()?;
        Ok(Self {
            setting: site.setting(cooker),
            heat: HeatTable::new(&array, &cooker.heater)?,
            curve,
            parts,
            jacket_pair: jacket.pair,
            open_face_w_k: OPEN_FACE_W_M2K * area_m2,
            cutout_c: cooker.store.cutout_c,
            melting: melting(cooker),
        })
    }

    /// The network of this cooker, leaning; `open` while the cooker stands open.
    pub(super) fn network(
        &self,
        leaning: &Leaning,
        open: bool,
    ) -> Result<Network<'_>, TonightError> {
        let mut net =
            Network::new(&self.curve, self.parts)?.scaled(leaning.loss, leaning.contact)?;
        if let Some(pair) = self.jacket_pair {
            net = net.with_jacket_pair(pair)?;
        }
        Ok(if open {
            net.with_lid_w_k(self.open_face_w_k)?
        } else {
            net
        })
    }

    /// Temperature at which water boils here. [°C]
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn boiling_c(&self) -> Result<f64, TonightError> {
        Ok(crate::water::boiling_point_c(self.parts.altitude_m)?)
    }

    /// Temperature at which the thermostat cuts out. [°C]
    pub fn cutout_c(&self) -> f64 {
        self.cutout_c
    }

    /// Steady loss through the jacket. \[W/K\]
    pub fn loss_w_k(&self) -> f64 {
        self.parts.g_loss_w_k
    }

    /// From the store to the food through the seat, nothing frozen on it. \[W/K\]
    pub fn seat_w_k(&self) -> f64 {
        self.parts.seat.g_contact_w_k
    }

    /// The medium that melts, if one does: the heaviest.
    pub(super) fn melting_medium(&self) -> Option<usize> {
        self.melting.map(|(medium, _)| medium)
    }

    /// Whether the melting medium is partly molten at this temperature. [°C]
    pub(super) fn is_melting(&self, store_c: f64) -> bool {
        self.melting.is_some_and(|(_, (solidus_c, liquidus_c))| {
            (solidus_c - MELTING_MARGIN_K..=liquidus_c + MELTING_MARGIN_K).contains(&store_c)
        })
    }

    /// Melting range of the heaviest medium that melts. [°C]
    pub fn melting_c(&self) -> Option<(f64, f64)> {
        self.melting.map(|(_, range_c)| range_c)
    }

    /// Heat in the store between two temperatures. \[J\]
    pub fn heat_between_j(&self, from_c: f64, to_c: f64) -> f64 {
        self.curve.enthalpy_j(to_c) - self.curve.enthalpy_j(from_c)
    }

    /// Heat in the store at this temperature, above 0 °C. \[J\]
    pub(super) fn heat_at_j(&self, store_c: f64) -> f64 {
        self.curve.enthalpy_j(store_c)
    }

    /// What the heat above the local boil would bring to the boil: litres of water of 20 °C in
    /// pots like this one, filled to four fifths, nothing lost. \[L\]
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn litres(&self, store_j: f64, pot: Pot) -> Result<f64, TonightError> {
        let boiling_c = self.boiling_c()?;
        let spare_j = (store_j - self.curve.enthalpy_j(boiling_c)).max(0.0);
        let pot_share_j_k = pot.capacity_j_k() / (0.8 * pot.size.props().volume_l);
        Ok(spare_j / ((CP_J_KGK + pot_share_j_k) * (boiling_c - FRESH_WATER_C)))
    }

    /// Share of the useful span, from the local boil to the cut-out, that is full: 0 to 1.
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn full_share(&self, store_j: f64) -> Result<f64, TonightError> {
        let empty_j = self.curve.enthalpy_j(self.boiling_c()?);
        let span_j = self.curve.enthalpy_j(self.cutout_c) - empty_j;
        Ok(if 0.0 < span_j {
            ((store_j - empty_j) / span_j).clamp(0.0, 1.0)
        } else {
            0.0
        })
    }

    /// A pot with its load, for the network.
    pub(super) fn load(&self, meal: &Meal, leaning: &Leaning, air_c: f64) -> network::Pot {
        let dish = meal.dish.props();
        let food_j_k = meal.food_kg * dish.cp_j_kgk.value;
        // A liquid boils and steams off by itself: it counts as water of the same heat capacity.
        let (solid_j_k, liquid_kg) = match dish.basis {
            Basis::Dry | Basis::Fresh => (food_j_k, 0.0),
            Basis::Liquid => (0.0, food_j_k / CP_J_KGK),
        };
        network::Pot {
            c_dry_j_k: meal.pot.capacity_j_k() + solid_j_k,
            water_kg: meal.water_kg + liquid_kg,
            t_c: meal.start_c,
            g_air_w_k: meal.pot.loss_w_k(meal.lid),
            surface: Some(OpenSurface {
                area_m2: meal.pot.size.water_surface_m2(),
                open_share: meal.lid.evaporation_share().value,
                air_vapour_pa: KITCHEN_HUMIDITY * vapour_pressure_pa(air_c),
            }),
            cook: cooking(meal.dish, leaning.cooking_time),
        }
    }
}

/// How fast the dish cooks, its time multiplied; `None` for what is done once it boils.
fn cooking(dish: Dish, time_factor: f64) -> Option<network::CookRate> {
    if dish.props().done_when == DoneWhen::Boils {
        return None;
    }
    Some(dish.cook_rate().slower(time_factor))
}

/// The heaviest of the media that melt: its place in the store and its melting range. [°C]
fn melting(cooker: &Cooker) -> Option<(usize, (f64, f64))> {
    cooker
        .store
        .charges
        .iter()
        .enumerate()
        .filter_map(|(idx, charge)| charge.medium.props().melt.map(|melt| (idx, charge, melt)))
        .max_by(|(_, a, _), (_, b, _)| a.mass_kg.total_cmp(&b.mass_kg))
        .map(|(idx, _, melt)| (idx, (melt.solidus_c.value, melt.liquidus_c.value)))
}

/// What freezes on the seat: the melting medium, unless metal carries the heat past it.
fn frozen_layer(cooker: &Cooker, area_m2: f64) -> Option<Layer> {
    let (medium, _) = melting(cooker).filter(|_| !cooker.store.finned)?;
    let charge = cooker.store.charges.get(medium)?;
    Some(Layer {
        medium,
        depth_m: cooker.store.depth_m,
        k_solid_w_mk: charge.medium.props().conductivity_w_mk.value,
        area_m2,
        elsewhere: 0.0,
    })
}

/// One node for metal and for melts, several where a stone or sand keeps its heat to itself.
fn inside(cooker: &Cooker, contact_w_m2k: f64, seat_m2: f64) -> Inside {
    let store = &cooker.store;
    let Some(main) = store
        .charges
        .iter()
        .max_by(|a, b| a.mass_kg.total_cmp(&b.mass_kg))
    else {
        return Inside::LUMPED;
    };
    let props = main.medium.props();
    if store.finned || props.melt.is_some() {
        return Inside::LUMPED;
    }
    let volume_m3: f64 = store
        .charges
        .iter()
        .map(|charge| charge.mass_kg / charge.medium.props().density_kg_m3.value)
        .sum();
    let way = Way::Slab {
        depth_m: store.depth_m,
        face_m2: volume_m3 / store.depth_m,
        seat_m2,
    };
    Inside::new(way, props.conductivity_w_mk.value, contact_w_m2k)
}
