//! The cooker under test: its description, and the network for any values of what is measured.

use crate::bench::fit::Values;
use crate::cooker::Cooker;
use crate::enthalpy::{EnthalpyCurve, MediumCurve};
use crate::error::ModelError;
use crate::jacket::Jacket;
use crate::media::Chemistry;
use crate::network::{Network, NetworkParts, NodeRow};
use crate::seat::{BOILING_FILM_W_M2K, INNER_FILM_W_M2K, Joint, Seat, warming_film_w_m2k};
use crate::tonight::{Leaning, POT_IN_SEAT_C, Rig, Site, TonightError};

/// Melting cannot be told narrower than this by a thermometer. \[K\]
const LEAST_MELTING_K: f64 = 1.0;
/// A melt that stays liquid at all does so at least this far. \[K\]
const LEAST_SUPERCOOLING_K: f64 = 0.5;
/// Share of the jacket's capacity that gets hot with the store; as much stays cold with the air, and
/// the rest is half-way, so that the steady state holds what one node half-way holds. The lumped
/// masses of two linear elements would be a quarter for a flat wall and less for a thick ring; with
/// this, the capacity found from readings of a jacket cut into 24 shells is right within a per cent.
const JACKET_IN_STORE: f64 = 0.13;
/// Doubt of what built fins, foam or wire carry: lengths, gaps, welds; and of any inside at least.
/// Inferred.
const BUILT_METAL: f64 = 0.25;
const LEAST_INSIDE: f64 = 0.05;
/// Any specific heat does, since only its product with the mass counts. \[J/(kg K)\]
const JACKET_CP_J_KGK: f64 = 1000.0;
/// Air for which the described loss is taken, as for the household's own figures. [°C]
const AIR_C: f64 = 20.0;
/// Store temperatures between which the described loss is known. [°C]
const LOSS_FROM_C: f64 = 30.0;
/// And their step. \[K\]
const LOSS_STEP_K: f64 = 30.0;
/// Steps of it.
const LOSS_STEPS: usize = 16;

/// A described cooker, ready to be measured.
#[derive(Debug, Clone)]
pub struct Body {
    rig: Rig,
    media: Vec<(f64, MediumCurve)>,
    parts: NetworkParts,
    described: Values,
    /// Described loss at each step of the store's temperature over that at the working one.
    loss_shape: [f64; LOSS_STEPS],
    /// Share of the loss that passes by the jacket, through the gap of the lid.
    leak_share: f64,
    seat: Seat,
    /// Doubt of the conductance within a store that is not at one temperature, as a logarithm.
    inside_sd: Option<f64>,
}

impl Body {
    /// Puts the described cooker together.
    ///
    /// # Errors
    ///
    /// [`TonightError`] from the part that makes no sense.
    pub fn new(site: &Site, cooker: &Cooker) -> Result<Self, TonightError> {
        let rig = Rig::new(site, cooker)?;
        let parts = *rig.network(&Leaning::AS_TOLD, false)?.parts();
        let mut loss_shape = [1.0; LOSS_STEPS];
        let mut store_c = LOSS_FROM_C;
        for shape in &mut loss_shape {
            let loss_w_k = cooker.jacket.thermal(store_c, AIR_C)?.loss_w_k;
            *shape = loss_w_k / parts.g_loss_w_k;
            store_c += LOSS_STEP_K;
        }
        Ok(Self {
            media: cooker
                .store
                .charges
                .iter()
                .map(|charge| {
                    let mass_kg = cooker.store.capacity_share * charge.mass_kg;
                    (mass_kg, charge.medium.into())
                })
                .collect(),
            described: Values {
                loss_w_k: parts.g_loss_w_k,
                jacket_j_k: parts.c_jacket_j_k,
                capacity: 1.0,
                melting_c: rig
                    .melting_c()
                    .map_or(0.0, |(low, high)| 0.5 * (low + high)),
                melting_k: rig
                    .melting_c()
                    .map_or(0.0, |(low, high)| (high - low).max(LEAST_MELTING_K)),
                heater: 1.0,
                contact_w_m2k: rig.contact_w_m2k(),
                pot_loss: 1.0,
                within: 1.0,
                heater_tilt: 0.0,
            },
            inside_sd: (1 < parts.row.count).then(|| inside_sd(cooker)),
            parts,
            loss_shape,
            leak_share: match &cooker.jacket {
                // Where the store has several temperatures, its upper faces leak, not the seat alone.
                _ if 1 < parts.row.count => 0.0,
                Jacket::Layers(layered) => 1.0 - 1.0 / layered.lid.loss_factor().value,
                Jacket::Flask { .. } | Jacket::Measured { .. } => 0.0,
            },
            seat: cooker.contact.seat,
            rig,
        })
    }

    /// What the description says of what is measured.
    pub fn described(&self) -> &Values {
        &self.described
    }

    /// The described cooker.
    pub fn rig(&self) -> &Rig {
        &self.rig
    }

    /// The store's curve, its melt liquid down to a temperature below its melting point if one is given.
    ///
    /// # Errors
    ///
    /// [`ModelError`] for values that give no rising curve.
    pub(crate) fn curve(
        &self,
        values: &Values,
        liquid_to_c: Option<f64>,
    ) -> Result<EnthalpyCurve, ModelError> {
        let melting = self.rig.melting_medium();
        let mut media: Vec<(f64, MediumCurve)> = self
            .media
            .iter()
            .enumerate()
            .map(|(idx, (mass_kg, curve))| {
                let mut curve = *curve;
                if let (true, Some(melt)) = (melting == Some(idx), &mut curve.melt) {
                    let half_k = 0.5 * values.melting_k.max(LEAST_MELTING_K);
                    melt.t_solidus_c = values.melting_c - half_k;
                    melt.t_liquidus_c = values.melting_c + half_k;
                }
                (mass_kg * values.capacity, curve)
            })
            .collect();
        media.push((
            JACKET_IN_STORE * values.jacket_j_k / JACKET_CP_J_KGK,
            MediumCurve::solid(JACKET_CP_J_KGK, 0.0),
        ));
        let curve = EnthalpyCurve::new(&media)?;
        let Some((medium, liquid_to_c)) = melting.zip(liquid_to_c) else {
            return Ok(curve);
        };
        let solidus_c = values.melting_c - 0.5 * values.melting_k.max(LEAST_MELTING_K);
        curve.with_supercooling(medium, liquid_to_c.min(solidus_c - LEAST_SUPERCOOLING_K))
    }

    /// The network, without a thermostat: the heater's power is measured.
    ///
    /// # Errors
    ///
    /// [`ModelError`] for a value out of range.
    pub(crate) fn network<'a>(
        &self,
        curve: &'a EnthalpyCurve,
        values: &Values,
    ) -> Result<Network<'a>, ModelError> {
        let mut parts = self.parts;
        parts.cutout_c = None;
        parts.g_loss_w_k = (1.0 - self.leak_share) * values.loss_w_k;
        parts.g_lid_w_k = self.leak_share * values.loss_w_k;
        parts.c_jacket_j_k = (1.0 - 2.0 * JACKET_IN_STORE) * values.jacket_j_k;
        parts.seat.g_contact_w_k = self.way_w_k(values);
        if 1 < parts.row.count {
            let lever = parts.row.lever();
            for (node, place) in lever.into_iter().enumerate().take(parts.row.count) {
                parts.row.link_w_k[node] *= values.within;
                parts.row.heater_share[node] *= 1.0 + values.heater_tilt * place;
            }
        }
        Network::new(curve, parts)
    }

    /// Whether a melt freezes in the way of its own heat: on the seat, or among metal that carries less
    /// than the pot could take.
    pub(crate) fn freezes(&self) -> bool {
        let is_cut = 1 < self.parts.row.count && self.rig.melting_medium().is_some();
        is_cut || self.parts.seat.layer.is_some()
    }

    /// The same network with nothing frozen in the way.
    ///
    /// # Errors
    ///
    /// As [`Body::network`].
    pub(crate) fn unfrozen<'a>(
        &self,
        net: &Network<'a>,
        values: &Values,
    ) -> Result<Network<'a>, ModelError> {
        let mut parts = *net.parts();
        parts.seat.layer = None;
        if 1 < parts.row.count {
            parts.row = NodeRow::SINGLE;
            let face_k_w = self.face_k_w(values.within);
            parts.seat.g_contact_w_k = 1.0 / (1.0 / parts.seat.g_contact_w_k - face_k_w);
        }
        Network::new(net.curve(), parts)
    }

    /// Doubt of the conductance within a store that is not at one temperature, as a logarithm; `None` of
    /// one that is.
    pub(crate) fn inside_sd(&self) -> Option<f64> {
        self.inside_sd
    }

    /// Behind the contact, as in a forecast: the way to the store's face, from the middle of a metal store,
    /// which conducts so many times better than described. \[K/W\]
    fn face_k_w(&self, within: f64) -> f64 {
        let face_k_w = self.rig.seat_path().face_k_w;
        if self.inside_sd.is_some() {
            face_k_w / within
        } else {
            face_k_w
        }
    }

    /// From the store to the food, the store's inside as described. \[W/K\]
    pub fn seat_w_k(&self, contact_w_m2k: f64) -> f64 {
        self.way_w_k(&Values {
            contact_w_m2k,
            ..self.described
        })
    }

    /// From the store to the food: the contact, the way to the face and the film in a pot of 80 °C.
    /// \[W/K\]
    fn way_w_k(&self, values: &Values) -> f64 {
        let contact_k_w = 1.0 / (values.contact_w_m2k * self.rig.seat_m2());
        let film_k_w = self.rig.seat_path().film_k_w;
        1.0 / (contact_k_w + self.face_k_w(values.within) + film_k_w)
    }

    /// What the loss is multiplied by with the store at this temperature: insulation conducts
    /// better hot. 1 for a jacket that was described by its loss.
    pub(crate) fn loss_shape(&self, store_c: f64) -> f64 {
        let place = ((store_c - LOSS_FROM_C) / LOSS_STEP_K).max(0.0);
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "not negative, and held to the table"
        )]
        let idx = (place as usize).min(LOSS_STEPS - 2);
        #[expect(clippy::cast_precision_loss, reason = "below 16")]
        let part = (place - idx as f64).min(1.0);
        self.loss_shape[idx] + part * (self.loss_shape[idx + 1] - self.loss_shape[idx])
    }

    /// What the way from store to food is multiplied by at these temperatures: air in a gap conducts
    /// and radiates better hot, and hot water carries more from the pot's base.
    pub(crate) fn seat_shape(
        &self,
        values: &Values,
        store_c: f64,
        (pot_c, boils): (f64, bool),
    ) -> f64 {
        let film = if boils {
            BOILING_FILM_W_M2K.value / INNER_FILM_W_M2K.value
        } else {
            warming_film_w_m2k(pot_c).0 / warming_film_w_m2k(POT_IN_SEAT_C).0
        };
        let mean_film_k_w = 1.0 / (INNER_FILM_W_M2K.value * self.rig.seat_m2());
        let Values {
            contact_w_m2k,
            within,
            ..
        } = *values;
        let film_left_k_w = self.rig.seat_path().film_k_w - mean_film_k_w;
        let face_k_w = (self.face_k_w(within) + film_left_k_w).max(0.0);
        let film_k_w = mean_film_k_w / film;
        let contact_k_w = 1.0 / (contact_w_m2k * self.rig.seat_m2());
        let contact = match self.seat.joint() {
            Joint::Film { .. } => 1.0,
            Joint::Gap { .. } | Joint::Open { .. } => {
                // The faces lie between store and water as the fall is shared out.
                let per_k_w = (store_c - pot_c) / (face_k_w + contact_k_w + film_k_w);
                let (hot_c, cold_c) = (store_c - face_k_w * per_k_w, pot_c + film_k_w * per_k_w);
                let working = self.seat.contact_w_m2k(self.rig.working_c(), POT_IN_SEAT_C);
                self.seat.contact_w_m2k(hot_c, cold_c) / working
            }
        };
        let here_k_w = contact_k_w / contact + face_k_w + film_k_w;
        1.0 / (here_k_w * self.way_w_k(values))
    }
}

/// Doubt of the conductance within a store, as a logarithm: that of the heaviest medium's own, and of metal
/// built into it.
fn inside_sd(cooker: &Cooker) -> f64 {
    let heaviest = cooker
        .store
        .charges
        .iter()
        .filter(|charge| charge.medium.props().chemistry != Chemistry::Metal)
        .max_by(|a, b| a.mass_kg.total_cmp(&b.mass_kg));
    let own = heaviest.map_or(0.0, |charge| {
        charge.medium.props().conductivity_w_mk.spread_share()
    });
    let built = cooker.store.metal.map_or(0.0, |_| BUILT_METAL);
    libm::hypot(own, built).max(LEAST_INSIDE)
}
