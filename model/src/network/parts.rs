//! The parameters of a cooker.

use super::seat_path::{Clear, OnPath, SeatJoint, SeatPath};
use crate::enthalpy::EnthalpyCurve;
use crate::error::{ModelError, finite, not_negative, positive, within};
use crate::water;

/// Most nodes a store can have.
pub const MAX_NODES: usize = 6;

/// The thermostat lets the heater on again this far below the cut-out temperature, K.
pub const THERMOSTAT_HYSTERESIS_K: f64 = 5.0;

/// How the store is cut into nodes, in a row from the seat outwards.
///
/// One node serves a store that is nearly isothermal. Unused places are ignored.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NodeRow {
    /// Nodes in use, 1 to [`MAX_NODES`].
    pub count: usize,
    /// Share of the store's mass in each node; the shares in use sum to 1.
    pub mass_share: [f64; MAX_NODES],
    /// Conductance from each node to the next, W/K.
    pub link_w_k: [f64; MAX_NODES],
    /// Share of the heater's power into each node; the shares in use sum to 1.
    pub heater_share: [f64; MAX_NODES],
    /// Share of the conductance to the jacket at each node; the shares in use sum to 1.
    pub jacket_share: [f64; MAX_NODES],
    /// Node whose temperature the thermostat feels.
    pub thermostat_node: usize,
}

impl NodeRow {
    /// A store at one temperature.
    pub const SINGLE: Self = {
        let mut first = [0.0; MAX_NODES];
        first[0] = 1.0;
        Self {
            count: 1,
            mass_share: first,
            link_w_k: [0.0; MAX_NODES],
            heater_share: first,
            jacket_share: first,
            thermostat_node: 0,
        }
    };

    /// Middles of the nodes as shares of the mass, from the seat on; 0 past the last.
    pub fn middles(&self) -> [f64; MAX_NODES] {
        let mut middles = [0.0; MAX_NODES];
        let mut before = 0.0;
        for (middle, mass) in middles.iter_mut().zip(self.mass_share).take(self.count) {
            *middle = before + 0.5 * mass;
            before += mass;
        }
        middles
    }

    /// Places of nodes from seat to far end, -1 to 1, their mean by the heater's shares moved to 0: more
    /// heat at one end is less at the other.
    pub fn lever(&self) -> [f64; MAX_NODES] {
        let mut lever = self.middles().map(|middle| 2.0 * middle - 1.0);
        lever[self.count..].fill(0.0);
        let places = lever.iter().zip(&self.heater_share).take(self.count);
        let mean: f64 = places.map(|(place, heat)| place * heat).sum();
        for place in lever.iter_mut().take(self.count) {
            *place -= mean;
        }
        lever
    }

    fn check(&self) -> Result<(), ModelError> {
        let refuse = |quantity, why| Err(ModelError::Inconsistent { quantity, why });
        if self.count == 0 || self.count > MAX_NODES {
            return refuse("count", "a store has 1 to 6 nodes");
        }
        if self.thermostat_node >= self.count {
            return refuse("thermostat_node", "there is no such node");
        }
        for node in 0..self.count {
            positive("mass_share", self.mass_share[node])?;
            not_negative("heater_share", self.heater_share[node])?;
            not_negative("jacket_share", self.jacket_share[node])?;
            if node + 1 < self.count {
                not_negative("link_w_k", self.link_w_k[node])?;
            }
        }
        for (quantity, shares) in [
            ("mass_share", &self.mass_share),
            ("heater_share", &self.heater_share),
            ("jacket_share", &self.jacket_share),
        ] {
            let sum: f64 = shares[..self.count].iter().sum();
            if (sum - 1.0).abs() > 1e-9 {
                return refuse(quantity, "the shares must sum to 1");
            }
        }
        Ok(())
    }
}

/// The layer of a melting medium that freezes onto the seat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// Index of the medium in the store.
    pub medium: usize,
    /// Depth of the medium under the seat, m: the layer's thickness when all is solid.
    pub depth_m: f64,
    /// Thermal conductivity of the solid, W/(m K).
    pub k_solid_w_mk: f64,
    /// Area of the seat, m2.
    pub area_m2: f64,
    /// Share of the medium that froze elsewhere than on the seat, and is not in the way: what a can
    /// that was turned over has on its far side. 0 for a can that stands as it was charged.
    pub elsewhere: f64,
}

/// How the pot meets the store.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Seat {
    /// Contact conductance times contact area, W/K.
    pub g_contact_w_k: f64,
    /// The frozen layer; `None` for a metal store, or a melt between metal fins.
    pub layer: Option<Layer>,
}

/// One of two nodes of a jacket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JacketNode {
    /// How warm it is in the steady state: 0 at the air's temperature, 1 at the store's.
    pub warmth: f64,
    /// Heat capacity, J/K.
    pub capacity_j_k: f64,
}

/// A jacket as two nodes, for one so thick that its inside follows the store by the hour and its
/// outside by the day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct JacketPair {
    /// Nearer to the store.
    pub inner: JacketNode,
    /// Nearer to the air.
    pub outer: JacketNode,
}

/// How the loss grows with the store: insulation conducts better hot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LossRise {
    /// By this share of it per kelvin, 1/K.
    pub per_k: f64,
    /// Store at which it is as told, degC.
    pub told_c: f64,
}

/// The loss is never less or more than these shares of the told one.
const LOSS_SHARES: (f64, f64) = (0.4, 1.6);

impl LossRise {
    /// The same loss at any temperature.
    pub const NONE: Self = Self {
        per_k: 0.0,
        told_c: 0.0,
    };

    /// The loss of a store at this temperature beside the one that is told.
    #[inline]
    #[must_use]
    pub fn share(self, store_c: f64) -> f64 {
        (1.0 + self.per_k * (store_c - self.told_c)).clamp(LOSS_SHARES.0, LOSS_SHARES.1)
    }
}

/// Faces of a gap in its mean state; what a cooker is told by may be another, not a far one. [°C]
const MEAN_FACES_C: (f64, f64) = (200.0, 80.0);

/// Where a seat's conductance is asked for.
#[derive(Clone, Copy, Debug)]
pub(crate) struct SeatAt {
    /// The node at the seat, degC.
    pub(crate) store_c: f64,
    pub(crate) pot_c: f64,
    pub(crate) boils: bool,
    /// Of the pot's load.
    pub(crate) thickness: f64,
    pub(crate) is_hot_melt: bool,
}

/// What describes a cooker, beside the media of its store.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NetworkParts {
    /// Nodes of the store.
    pub row: NodeRow,
    /// Steady loss from store to air, W/K.
    pub g_loss_w_k: f64,
    /// Heat capacity of the jacket, J/K.
    pub c_jacket_j_k: f64,
    /// The seat.
    pub seat: Seat,
    /// From the seat's node straight to the air, W/K: 0 with the cooker shut.
    pub g_lid_w_k: f64,
    /// Cut-out temperature of the thermostat, degC; `None` without one.
    pub cutout_c: Option<f64>,
    /// Altitude, m.
    pub altitude_m: f64,
}

/// A cooker ready to run.
#[derive(Clone, Copy, Debug)]
pub struct Network<'a> {
    pub(crate) curve: &'a EnthalpyCurve,
    pub(crate) parts: NetworkParts,
    /// In place of the one node of `parts`.
    pub(crate) pair: Option<JacketPair>,
    /// In place of the one conductance of the seat, with what multiplies it.
    pub(crate) path: Option<SeatPath>,
    pub(crate) contact: f64,
    pub(crate) loss_rise: LossRise,
    pub(crate) boiling_c: f64,
    pub(crate) h_fg_j_kg: f64,
    /// Enthalpy per whole store at which the thermostat cuts out and lets in, J.
    pub(crate) thermostat_j: Option<(f64, f64)>,
}

impl<'a> Network<'a> {
    /// A cooker whose store has this enthalpy curve.
    ///
    /// # Errors
    /// A conductance that is negative, a heat capacity that is not positive, shares that do not sum to
    /// 1, a layer of a medium that is not in the store, an altitude without a boiling point.
    pub fn new(curve: &'a EnthalpyCurve, parts: NetworkParts) -> Result<Self, ModelError> {
        parts.row.check()?;
        not_negative("g_loss_w_k", parts.g_loss_w_k)?;
        positive("c_jacket_j_k", parts.c_jacket_j_k)?;
        not_negative("g_contact_w_k", parts.seat.g_contact_w_k)?;
        not_negative("g_lid_w_k", parts.g_lid_w_k)?;
        if let Some(layer) = parts.seat.layer {
            not_negative("depth_m", layer.depth_m)?;
            positive("k_solid_w_mk", layer.k_solid_w_mk)?;
            positive("area_m2", layer.area_m2)?;
            within("elsewhere", layer.elsewhere, 0.0, 1.0)?;
            if layer.medium >= curve.media() {
                return Err(ModelError::Inconsistent {
                    quantity: "medium",
                    why: "there is no such medium in the store",
                });
            }
        }
        let mut thermostat_j = None;
        if let Some(cutout_c) = parts.cutout_c {
            finite("cutout_c", cutout_c)?;
            thermostat_j = Some((
                curve.enthalpy_j(cutout_c),
                curve.highest_enthalpy_j(cutout_c - THERMOSTAT_HYSTERESIS_K),
            ));
        }
        let boiling_c = water::boiling_point_c(parts.altitude_m)?;
        Ok(Self {
            curve,
            parts,
            pair: None,
            path: None,
            contact: 1.0,
            loss_rise: LossRise::NONE,
            boiling_c,
            h_fg_j_kg: water::heat_of_vaporisation_j_kg(boiling_c),
            thermostat_j,
        })
    }

    /// The same cooker with its loss and its contact conductance multiplied.
    ///
    /// # Errors
    /// A factor that is negative or not finite.
    pub fn scaled(&self, loss: f64, contact: f64) -> Result<Self, ModelError> {
        let mut scaled = *self;
        scaled.parts.g_loss_w_k *= within("loss", loss, 0.0, f64::MAX)?;
        scaled.parts.seat.g_contact_w_k *= within("contact", contact, 0.0, f64::MAX)?;
        scaled.contact *= contact;
        Ok(scaled)
    }

    /// The same cooker, its seat told by its parts; the conductance in its own parts is then used
    /// no longer.
    ///
    /// # Errors
    /// Resistances that are negative, a joint that lets nothing through.
    pub fn with_seat_path(&self, path: SeatPath) -> Result<Self, ModelError> {
        not_negative("face_k_w", path.face_k_w)?;
        positive("joint_k_w", path.joint_k_w)?;
        not_negative("film_k_w", path.film_k_w)?;
        match path.joint {
            SeatJoint::Even(w_k) => positive("joint", w_k)?,
            SeatJoint::Gap(gap) => {
                // Told by another state, less film could seem to let less through, and a pot would go on
                // and off the boil without end.
                let mean_k_w = 1.0 / gap.through(MEAN_FACES_C.0, MEAN_FACES_C.1).w_k;
                within("joint_k_w", path.joint_k_w / mean_k_w, 0.5, 2.0)?
            }
        };
        if let Some(melt) = path.melt {
            not_negative("k_w", melt.k_w)?;
            finite("liquidus_c", melt.liquidus_c)?;
        }
        let mut told = *self;
        told.path = Some(path);
        Ok(told)
    }

    /// The same cooker, its loss growing with the store.
    #[must_use]
    pub fn with_loss_rise(&self, loss_rise: LossRise) -> Self {
        Self { loss_rise, ..*self }
    }

    /// Conductance of the seat between a store and a pot of these temperatures, nothing frozen on it,
    /// and how it grows with either. `is_hot_melt` where the store's melt is liquid and above its melting
    /// point.
    pub(crate) fn clear_seat(&self, on: SeatAt) -> Clear {
        match &self.path {
            None => Clear {
                w_k: self.parts.seat.g_contact_w_k,
                by_store: 0.0,
                by_pot: 0.0,
            },
            Some(path) => path.clear(&OnPath {
                contact: self.contact,
                inside: 1.0,
                thickness: on.thickness,
                store_c: on.store_c,
                pot_c: on.pot_c,
                boils: on.boils,
                melt: path.melt.filter(|_| on.is_hot_melt),
            }),
        }
    }

    /// The same cooker with its jacket as two nodes; the capacity of the one in its parts is no
    /// longer used.
    ///
    /// # Errors
    /// Nodes that are not between air and store, the inner one the warmer; a capacity that is not
    /// positive.
    pub fn with_jacket_pair(&self, pair: JacketPair) -> Result<Self, ModelError> {
        for node in [pair.inner, pair.outer] {
            positive("capacity_j_k", node.capacity_j_k)?;
        }
        positive("warmth", pair.outer.warmth)?;
        positive("warmth", pair.inner.warmth - pair.outer.warmth)?;
        positive("warmth", 1.0 - pair.inner.warmth)?;
        let mut paired = *self;
        paired.pair = Some(pair);
        Ok(paired)
    }

    /// The same cooker with this much conductance from the seat's node to the air, W/K.
    ///
    /// # Errors
    /// A conductance that is negative or not finite.
    pub fn with_lid_w_k(&self, g_lid_w_k: f64) -> Result<Self, ModelError> {
        let mut open = *self;
        open.parts.g_lid_w_k = not_negative("g_lid_w_k", g_lid_w_k)?;
        Ok(open)
    }

    /// What describes the cooker.
    pub fn parts(&self) -> &NetworkParts {
        &self.parts
    }

    /// The enthalpy curve of the store.
    pub fn curve(&self) -> &'a EnthalpyCurve {
        self.curve
    }

    /// Temperature at which water boils here, degC.
    pub fn boiling_point_c(&self) -> f64 {
        self.boiling_c
    }

    /// Heat of vaporisation at the local boiling point, J/kg.
    pub fn heat_of_vaporisation_j_kg(&self) -> f64 {
        self.h_fg_j_kg
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_one_end_gets_more_the_other_gets_less() {
        let mut row = NodeRow {
            count: 3,
            ..NodeRow::SINGLE
        };
        for (node, share) in [0.2, 0.3, 0.5].into_iter().enumerate() {
            row.mass_share[node] = share;
            row.heater_share[node] = share;
        }
        // Middles at 0.1, 0.35 and 0.75 of the way: -0.8, -0.3 and 0.5, whose mean is 0.
        for (lever, expected) in row.lever().into_iter().zip([-0.8, -0.3, 0.5]) {
            assert!((lever - expected).abs() < 1e-6, "{lever}");
        }
        assert!(NodeRow::SINGLE.lever()[0].abs() < 1e-12);
    }
}
