//! A household's cooker put together for the network.

use crate::air;
use crate::concentrator::Concentrator;
use crate::conduction::in_series;
use crate::cooker::{Carried, Cooker};
use crate::dish::{Basis, Dish, DoneWhen};
use crate::enthalpy::EnthalpyCurve;
use crate::journal::Meal;
use crate::network::{
    self, JacketPair, LossRise, Network, NetworkParts, OpenSurface, SeatAt, SeatPath, State,
};
use crate::panel::HeatTable;
use crate::place::{AirYear, Place};
use crate::pot::Pot;
use crate::seat::thickness_of_porridge;
use crate::sun::{IrradianceSeries, Plane, SeriesStep, Setting};
use crate::tonight::build::{self, Melting, SeatOf};
use crate::tonight::{Leaning, TonightError};
use crate::water::{CP_J_KGK, vapour_pressure_pa};

/// Share of light that level ground throws back. Common practice, no source.
const ALBEDO: f64 = 0.2;
/// Wind at the panel when nobody knows. Common practice, no source. [m/s]
pub(crate) const WIND_M_S: f64 = 1.0;
/// Relative humidity of a kitchen. From memory.
const KITCHEN_HUMIDITY: f64 = 0.5;
/// Free convection off the face of a store that stands open. Common practice, no source.
/// \[W/(m² K)\]
const OPEN_FACE_W_M2K: f64 = 9.0;
/// Emissivity of that face: oxidised steel, stone or soot. From memory.
const OPEN_FACE_EMISSIVITY: f64 = 0.8;
/// Temperature of the pot for which the seat's conductance is taken. [°C]
pub(crate) const POT_IN_SEAT_C: f64 = 80.0;
/// Water's rise to the boil is told for water of this temperature. [°C]
pub(super) const FRESH_WATER_C: f64 = 20.0;

/// From a melt to a cold wall in it: free convection, W/m2K, from memory; 100 to 250.
pub(super) const MELT_FILM_W_M2K: f64 = 150.0;
/// Standard deviations between the curves for a melt that freezes sooner, in the mean and later.
const SUPERCOOLING_SD: f64 = 0.64;
/// The longest way a can is carried, s.
const LONGEST_WAY_S: f64 = 6.0 * 3600.0;
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
    pub(crate) setting: Setting,
    pub(crate) heat: HeatTable,
    /// In place of the panels, with the temperature of its receiver. [°C]
    concentrator: Option<(Concentrator, f64)>,
    pub(crate) carried: Option<Carried>,
    /// As in the mean, freezing later, and freezing sooner.
    curves: [EnthalpyCurve; 3],
    seat: SeatOf,
    parts: NetworkParts,
    seat_path: SeatPath,
    loss_rise: LossRise,
    jacket_pair: Option<JacketPair>,
    /// Within the store, from its mean to the seat in steady cooling. \[K/W\]
    body_k_w: f64,
    open_face_w_k: f64,
    cutout_c: f64,
    melting: Option<Melting>,
    working_c: f64,
    /// Over what a pot's kind says.
    pot_loss_share: f64,
}

impl Rig {
    /// Puts a cooker together.
    ///
    /// The jacket's loss is told for a store half-way between the boil and the cut-out, the seat's
    /// conductance for the same store under a warming pot; a run lets both follow the temperatures.
    ///
    /// # Errors
    ///
    /// [`TonightError`] from the part that makes no sense.
    pub fn new(site: &Site, cooker: &Cooker) -> Result<Self, TonightError> {
        let boiling_c = crate::water::boiling_point_c(site.place.altitude_m)?;
        let working_c = 0.5 * (boiling_c + cooker.store.cutout_c.max(boiling_c));
        build::check(&cooker.store)?;
        let curve = |deeper_by_sd: f64| build::curve(&cooker.store, deeper_by_sd);
        let curves = [
            curve(0.0)?,
            curve(SUPERCOOLING_SD)?,
            curve(-SUPERCOOLING_SD)?,
        ];
        let jacket = build::jacket(cooker, working_c)?;
        let seat = build::seat(cooker, working_c);
        let inside = build::inside(&cooker.store, &seat)?;
        let layer = build::frozen_layer(&cooker.store, &seat, &inside, boiling_c)?;
        let melting = build::melting(&cooker.store);
        let body_k_w = build::body_k_w(&cooker.store, &seat)?;
        let seat_path = build::seat_path(cooker, &seat, (&inside, body_k_w), melting);
        let parts = NetworkParts {
            row: inside.row,
            g_loss_w_k: jacket.loss_w_k,
            c_jacket_j_k: jacket.capacity_j_k.max(1.0),
            seat: network::Seat {
                g_contact_w_k: in_series(&[seat.to_food_w_k, inside.face_w_k]),
                layer,
            },
            g_lid_w_k: 0.0,
            cutout_c: Some(cooker.store.cutout_c),
            altitude_m: site.place.altitude_m,
        };
        let [as_told, ..] = &curves;
        Network::new(as_told, parts)?.with_seat_path(seat_path)?;
        if let Some(carried) = &cooker.carried {
            carried.can.checked()?;
            crate::error::within("way_s", carried.way_s, 0.0, LONGEST_WAY_S)?;
        }
        let concentrator = match cooker.charging.concentrator {
            Some(concentrator) => Some((concentrator.checked()?, working_c)),
            None => None,
        };
        let array = cooker.panels.array()?;
        let element = cooker.element()?.at_element_c(working_c)?;
        crate::error::within("pot_loss_share", cooker.pot_loss_share, 0.0, f64::MAX)?;
        Ok(Self {
            setting: site.setting(cooker),
            heat: HeatTable::of(&array, element),
            concentrator,
            carried: cooker.carried,
            curves,
            seat,
            parts,
            seat_path,
            loss_rise: build::loss_rise(cooker, working_c)?,
            jacket_pair: jacket.pair,
            body_k_w,
            open_face_w_k: open_face_w_k(cooker, working_c),
            cutout_c: cooker.store.cutout_c,
            melting,
            working_c,
            pot_loss_share: cooker.pot_loss_share,
        })
    }

    /// The network of this cooker, leaning; `open` while the cooker stands open.
    pub(crate) fn network(
        &self,
        leaning: &Leaning,
        open: bool,
    ) -> Result<Network<'_>, TonightError> {
        let mut net = Network::new(self.curve_of(leaning), self.parts)?
            .with_seat_path(self.seat_path)?
            .with_loss_rise(self.loss_rise)
            .scaled(leaning.loss, leaning.contact)?;
        if let Some(pair) = self.jacket_pair {
            net = net.with_jacket_pair(pair)?;
        }
        Ok(if open {
            net.with_lid_w_k(self.open_face_w_k)?
        } else {
            net
        })
    }

    /// The store's curve, its melt as long liquid as the leaning says.
    fn curve_of(&self, leaning: &Leaning) -> &EnthalpyCurve {
        let [as_told, deeper, shallower] = &self.curves;
        if leaning.supercooling_sd > 0.5 * SUPERCOOLING_SD {
            deeper
        } else if leaning.supercooling_sd < -0.5 * SUPERCOOLING_SD {
            shallower
        } else {
            as_told
        }
    }

    fn curve(&self) -> &EnthalpyCurve {
        let [as_told, ..] = &self.curves;
        as_told
    }

    /// Mean heat from the sun in each step of a day. \[W\]
    pub(super) fn sun_w(&self, day: &IrradianceSeries) -> Vec<f64> {
        match &self.concentrator {
            Some((concentrator, receiver_c)) => concentrator.day_w(day, *receiver_c),
            None => day
                .steps
                .iter()
                .map(|step| self.heat.mean_heat_w(&step.states))
                .collect(),
        }
    }

    /// Heat of a concentrator in a step whose light is multiplied; `None` for panels. A brighter hour
    /// has more sun in it, and only then a stronger one. \[W\]
    pub(crate) fn beam_w(&self, step: &SeriesStep, factor: f64) -> Option<f64> {
        let (concentrator, receiver_c) = self.concentrator.as_ref()?;
        let on = if 0.0 < step.sunny_share {
            step.sunny_share
        } else {
            1.0
        };
        let longer = (on * factor).min(1.0);
        let beam_w_m2 = step.dni_w_m2 / on * (on * factor / longer.max(f64::MIN_POSITIVE));
        Some(longer * concentrator.heat_w(beam_w_m2, *receiver_c, step.air_c))
    }

    /// How far below its melting point the melt stays liquid; 0 without one. \[K\]
    pub(crate) fn supercooling_k(&self) -> f64 {
        self.melting
            .and_then(|melting| melting.medium.supercooling_k())
            .map_or(0.0, |datum| datum.value)
    }

    /// One standard deviation of where a supercooled melt freezes. \[K\]
    pub(crate) fn supercooling_sd_k(&self) -> f64 {
        self.melting
            .and_then(|melting| melting.medium.supercooling_k())
            .map_or(0.0, |datum| datum.spread)
    }

    /// From a melt to a cold pot's wall in it. \[W/K\]
    pub(crate) fn melt_film_w_k(&self) -> f64 {
        MELT_FILM_W_M2K * self.seat.area_m2
    }

    /// Whether the pot stands in the melt itself, and chills what touches it to its own temperature.
    pub(crate) fn is_pot_in_melt(&self) -> bool {
        self.seat.is_in_melt
    }

    /// A pot goes in. Where it chills the melt on its wall below the point where that freezes, it is
    /// the seed that a supercooled melt waits for.
    pub(super) fn put_in(
        &self,
        net: &Network<'_>,
        state: &mut State,
        pot: network::Pot,
    ) -> Result<(), TonightError> {
        let store_c = state.store_c(net);
        let film_w_k = self.melt_film_w_k();
        let seat_w_k = net
            .clear_seat(SeatAt {
                store_c,
                pot_c: pot.t_c,
                boils: false,
                thickness: pot.thickness,
                is_hot_melt: self.is_above_melting(store_c),
            })
            .w_k;
        let wall_c = if self.is_pot_in_melt() {
            pot.t_c
        } else {
            store_c - (store_c - pot.t_c) * seat_w_k / (seat_w_k + film_w_k)
        };
        state.put_pot_in(pot)?;
        if let Some((nucleation_c, _)) = net.curve().supercooled_range_c()
            && wall_c < nucleation_c
        {
            state.seed_crystal(net);
        }
        Ok(())
    }

    /// Whether a melt in it is liquid and above its melting point.
    fn is_above_melting(&self, store_c: f64) -> bool {
        self.melting
            .is_some_and(|melting| melting.melt.t_liquidus_c < store_c)
    }

    /// From a store of this temperature to a pot that is about to boil, nothing frozen on the seat.
    /// \[W/K\]
    pub(super) fn warming_seat_w_k(&self, net: &Network<'_>, store_c: f64) -> f64 {
        self.seat_at_boil_w_k(net, store_c, false)
    }

    /// The same to a pot that boils. \[W/K\]
    pub(super) fn boiling_seat_w_k(&self, net: &Network<'_>, store_c: f64) -> f64 {
        self.seat_at_boil_w_k(net, store_c, true)
    }

    fn seat_at_boil_w_k(&self, net: &Network<'_>, store_c: f64, boils: bool) -> f64 {
        net.clear_seat(SeatAt {
            store_c,
            pot_c: net.boiling_point_c(),
            boils,
            thickness: 1.0,
            is_hot_melt: self.is_above_melting(store_c),
        })
        .w_k
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

    /// The loss of a store at this temperature over the one that is told.
    pub(super) fn loss_share(&self, store_c: f64) -> f64 {
        self.loss_rise.share(store_c)
    }

    /// From the store to the food through the seat, nothing frozen on it. \[W/K\]
    pub fn seat_w_k(&self) -> f64 {
        self.parts.seat.g_contact_w_k
    }

    /// From a store's face to the food through the seat alone. \[W/K\]
    pub fn face_w_k(&self) -> f64 {
        self.seat.to_food_w_k
    }

    /// From the middle of the store to the food in steady drawing: what lies within the store, half of
    /// a melt frozen on the seat, and the seat. \[W/K\]
    pub fn way_w_k(&self) -> f64 {
        let frozen_k_w = self.parts.seat.layer.map_or(0.0, |layer| {
            0.5 * layer.depth_m / (layer.k_solid_w_mk * layer.area_m2)
        });
        in_series(&[self.seat.to_food_w_k, 1.0 / (self.body_k_w + frozen_k_w)])
    }

    /// Store for which loss and contact are taken: half-way between the boil and the cut-out. [°C]
    pub fn working_c(&self) -> f64 {
        self.working_c
    }

    /// The way from the store to the food by its parts.
    pub(crate) fn seat_path(&self) -> SeatPath {
        self.seat_path
    }

    /// Between store and pot, without the film inside the pot. \[W/(m² K)\]
    pub(crate) fn contact_w_m2k(&self) -> f64 {
        self.seat.contact_w_m2k
    }

    /// The way within the store from its mean to its seat, which one temperature for all of it
    /// leaves out. \[K/W\]
    pub(crate) fn body_k_w(&self) -> f64 {
        self.body_k_w
    }

    /// Through which the pot takes heat. \[m²\]
    pub(crate) fn seat_m2(&self) -> f64 {
        self.seat.area_m2
    }

    /// The medium that melts, if one does: the heaviest.
    pub(crate) fn melting_medium(&self) -> Option<usize> {
        self.melting.map(|melting| melting.idx)
    }

    /// Whether the melting medium is partly molten at this temperature. [°C]
    pub(super) fn is_melting(&self, store_c: f64) -> bool {
        self.melting_c().is_some_and(|(solidus_c, liquidus_c)| {
            (solidus_c - MELTING_MARGIN_K..=liquidus_c + MELTING_MARGIN_K).contains(&store_c)
        })
    }

    /// Melting range of the heaviest medium that melts. [°C]
    pub fn melting_c(&self) -> Option<(f64, f64)> {
        self.melting
            .map(|melting| (melting.melt.t_solidus_c, melting.melt.t_liquidus_c))
    }

    /// Heat in the store between two temperatures. \[J\]
    pub fn heat_between_j(&self, from_c: f64, to_c: f64) -> f64 {
        self.curve().enthalpy_j(to_c) - self.curve().enthalpy_j(from_c)
    }

    /// Heat in the store at this temperature, above 0 °C. \[J\]
    pub(super) fn heat_at_j(&self, store_c: f64) -> f64 {
        self.curve().enthalpy_j(store_c)
    }

    /// What the heat above the local boil would bring to the boil: litres of water of 20 °C in
    /// pots like this one, filled to four fifths, nothing lost. \[L\]
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn litres(&self, store_j: f64, pot: Pot) -> Result<f64, TonightError> {
        let boiling_c = self.boiling_c()?;
        let spare_j = (store_j - self.curve().enthalpy_j(boiling_c)).max(0.0);
        let pot_share_j_k = pot.capacity_j_k() / (0.8 * pot.size.props().volume_l);
        Ok(spare_j / ((CP_J_KGK + pot_share_j_k) * (boiling_c - FRESH_WATER_C)))
    }

    /// Share of the useful span, from the local boil to the cut-out, that is full: 0 to 1.
    ///
    /// # Errors
    ///
    /// As [`Rig::new`].
    pub fn full_share(&self, store_j: f64) -> Result<f64, TonightError> {
        let empty_j = self.curve().enthalpy_j(self.boiling_c()?);
        let span_j = self.curve().enthalpy_j(self.cutout_c) - empty_j;
        Ok(if 0.0 < span_j {
            ((store_j - empty_j) / span_j).clamp(0.0, 1.0)
        } else {
            0.0
        })
    }

    /// A pot with its load, for the network.
    pub(crate) fn load(&self, meal: &Meal, leaning: &Leaning, air_c: f64) -> network::Pot {
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
            g_air_w_k: self.pot_loss_share * meal.pot.loss_w_k(meal.lid),
            thickness: if meal.dish == Dish::MaizePorridge {
                thickness_of_porridge()
            } else {
                1.0
            },
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

/// What a store loses from its upper face while the cooker stands open. \[W/K\]
fn open_face_w_k(cooker: &Cooker, working_c: f64) -> f64 {
    let pot_m2 = cooker.pot.size.base_m2();
    let face_m2 = cooker.jacket.opening_m2().unwrap_or(pot_m2);
    let film_w_m2k =
        OPEN_FACE_W_M2K + air::radiation_w_m2k(working_c, FRESH_WATER_C, OPEN_FACE_EMISSIVITY, 1.0);
    face_m2.max(pot_m2) * film_w_m2k
}
