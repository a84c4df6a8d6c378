//! What changes in a cooker.

use super::parts::{JacketPair, MAX_NODES, Network};
use super::pot::{Pot, PotState};
use crate::error::{ModelError, finite};

/// Step first tried on a fresh state, s.
const FIRST_STEP_S: f64 = 600.0;

/// The state of a cooker at one time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct State {
    pub(crate) time_s: f64,
    pub(crate) node_j: [f64; MAX_NODES],
    pub(crate) segment: [usize; MAX_NODES],
    /// The jacket's only node, or its outer one, degC.
    pub(crate) jacket_c: f64,
    /// Its inner node, degC; unused where there is none.
    pub(crate) inner_c: f64,
    pub(crate) heater_on: bool,
    pub(crate) pot: Option<PotState>,
    /// Whether crystals are there for a melt to freeze on.
    pub(crate) seeded: bool,
    /// Whether a store that is charged elsewhere has come to the kitchen since: the caller's mark.
    pub(crate) indoors: bool,
    /// Share of the layer's medium that froze before the store was turned over.
    pub(crate) elsewhere: f64,
    /// Step length to try next, s.
    pub(crate) step_s: f64,
}

impl State {
    /// A cooker without a pot, its store at one temperature (at a melting point: all solid).
    ///
    /// # Errors
    /// A value that is not finite.
    pub fn new(
        net: &Network<'_>,
        time_s: f64,
        t_store_c: f64,
        t_jacket_c: f64,
    ) -> Result<Self, ModelError> {
        finite("t_store_c", t_store_c)?;
        Self::with_heat(net, time_s, net.curve.enthalpy_j(t_store_c), t_jacket_c)
    }

    /// A cooker without a pot, its store evenly filled with heat above 0 degC, J.
    ///
    /// # Errors
    /// A value that is not finite.
    pub fn with_heat(
        net: &Network<'_>,
        time_s: f64,
        store_j: f64,
        t_jacket_c: f64,
    ) -> Result<Self, ModelError> {
        finite("time_s", time_s)?;
        finite("store_j", store_j)?;
        finite("t_jacket_c", t_jacket_c)?;
        let row = &net.parts.row;
        let mut node_j = [0.0; MAX_NODES];
        let place = net.curve.segment_of(store_j);
        let store_c = net.curve.segment(place).temperature(store_j).0;
        // The jacket's temperatures in the steady state that has this half-way.
        let steady_c = |warmth: f64| t_jacket_c + 2.0 * (warmth - 0.5) * (store_c - t_jacket_c);
        let (outer_c, inner_c) = net.pair.map_or((t_jacket_c, t_jacket_c), |pair| {
            (steady_c(pair.outer.warmth), steady_c(pair.inner.warmth))
        });
        for (heat_j, share) in node_j.iter_mut().zip(row.mass_share).take(row.count) {
            *heat_j = store_j * share;
        }
        Ok(Self {
            time_s,
            node_j,
            segment: [place; MAX_NODES],
            jacket_c: outer_c,
            inner_c,
            heater_on: true,
            pot: None,
            seeded: false,
            indoors: false,
            elsewhere: 0.0,
            step_s: FIRST_STEP_S,
        })
    }

    /// A cooker without a pot whose melt is still liquid below its melting point.
    ///
    /// # Errors
    /// A value that is not finite; a temperature at which the melt of this store does not stay liquid.
    pub fn supercooled(
        net: &Network<'_>,
        time_s: f64,
        t_store_c: f64,
        t_jacket_c: f64,
    ) -> Result<Self, ModelError> {
        let store_j = net.curve.supercooled_enthalpy_j(t_store_c);
        let (Some(store_j), Some(place)) = (store_j, net.curve.supercooled_segment()) else {
            return Err(ModelError::Inconsistent {
                quantity: "t_store_c",
                why: "the melt of this store does not stay liquid at this temperature",
            });
        };
        let mut state = Self::with_heat(net, time_s, store_j, t_jacket_c)?;
        state.segment = [place; MAX_NODES];
        Ok(state)
    }

    /// Whether any of the melt is liquid below its melting point.
    pub fn is_supercooled(&self, net: &Network<'_>) -> bool {
        net.curve
            .supercooled_segment()
            .is_some_and(|place| self.segment[..net.parts.row.count].contains(&place))
    }

    /// A seed crystal, a scratch, a knock or a wall that is cold enough: what is supercooled freezes
    /// now, and warms up; what is still hot freezes at its melting point, while the pot is in.
    pub fn seed_crystal(&mut self, net: &Network<'_>) {
        self.seeded = true;
        self.freeze(net);
        self.step_s = FIRST_STEP_S;
    }

    /// What is supercooled freezes.
    pub(crate) fn freeze(&mut self, net: &Network<'_>) {
        let row = &net.parts.row;
        for node in 0..row.count {
            let heat_j = self.node_j[node] / row.mass_share[node];
            if net.curve.supercooled_segment() == Some(self.segment[node]) {
                self.segment[node] = net.curve.segment_of(heat_j);
            }
        }
    }

    /// Whether a melt that cools has crystals to freeze on, in any of its nodes.
    pub(crate) fn has_crystals(&self, net: &Network<'_>) -> bool {
        let mut nodes = self.segment.iter().take(net.parts.row.count);
        self.seeded || nodes.any(|place| net.curve.has_crystals(*place))
    }

    /// The pot goes in; one that is already in is taken out and returned.
    ///
    /// # Errors
    /// A pot with a value that is negative or not finite, or without any heat capacity.
    pub fn put_pot_in(&mut self, pot: Pot) -> Result<Option<PotState>, ModelError> {
        let state = PotState::new(pot)?;
        Ok(self.pot.replace(state))
    }

    /// The pot comes out with its heat.
    pub fn take_pot_out(&mut self) -> Option<PotState> {
        self.seeded = false;
        self.pot.take()
    }

    /// The store is turned over: what is solid now lies away from the seat, until it melts.
    ///
    /// A can is charged from the top, since salt that melts at the bottom first has nowhere to grow;
    /// so what did not melt lies where the pot would be.
    /// Where the store is several nodes, the far end comes to the seat as it is.
    pub fn turn_over(&mut self, net: &Network<'_>) {
        if let Some(layer) = net.parts.seat.layer {
            self.elsewhere = self.solid_fraction(net, layer.medium);
        }
        let row = &net.parts.row;
        let ends = {
            let mut ends = [0.0; MAX_NODES + 1];
            for node in 0..row.count {
                ends[node + 1] = ends[node] + row.mass_share[node];
            }
            ends
        };
        let (was_j, was_on) = (self.node_j, self.segment);
        for node in 0..row.count {
            // What lay there, counted from the far end.
            let (from, to) = (1.0 - ends[node + 1], 1.0 - ends[node]);
            let (mut heat_j, mut most) = (0.0, 0.0);
            for other in 0..row.count {
                let common = to.min(ends[other + 1]) - from.max(ends[other]);
                if common <= 0.0 {
                    continue;
                }
                heat_j += was_j[other] * common / row.mass_share[other];
                if most < common {
                    most = common;
                    self.segment[node] = was_on[other];
                }
            }
            self.node_j[node] = heat_j;
            let place = self.segment[node];
            self.segment[node] = net.curve.segment_from(place, heat_j / row.mass_share[node]);
        }
        if 1 < row.count {
            self.step_s = FIRST_STEP_S;
        }
    }

    /// The caller's clock is put to another time; nothing else changes.
    pub(crate) fn set_time_s(&mut self, time_s: f64) {
        self.time_s = time_s;
    }

    /// The store is found to hold this much heat above 0 degC, J, and the jacket to be at this
    /// temperature half-way, degC: every node is moved by its share. Pot and thermostat stay as they
    /// are.
    pub fn set_store(&mut self, net: &Network<'_>, store_j: f64, jacket_c: f64) {
        let row = &net.parts.row;
        let missing_j = store_j - self.store_j();
        for node in 0..row.count {
            let share = row.mass_share[node];
            self.node_j[node] += share * missing_j;
            let heat_j = self.node_j[node] / share;
            self.segment[node] = net.curve.segment_from(self.segment[node], heat_j);
        }
        let moved_k = jacket_c - self.half_way_c(net);
        if let Some(pair) = net.pair {
            self.jacket_c += 2.0 * pair.outer.warmth * moved_k;
            self.inner_c += 2.0 * pair.inner.warmth * moved_k;
        } else {
            self.jacket_c = jacket_c;
        }
        self.step_s = FIRST_STEP_S;
    }

    /// Time, s.
    pub fn time_s(&self) -> f64 {
        self.time_s
    }

    /// Temperature of one node of the store, degC; node 0 is under the seat. Not a number past the last node.
    pub fn node_c(&self, net: &Network<'_>, node: usize) -> f64 {
        let row = &net.parts.row;
        if node >= row.count {
            return f64::NAN;
        }
        net.curve
            .segment(self.segment[node])
            .temperature(self.node_j[node] / row.mass_share[node])
            .0
    }

    /// Temperature at so much of the mass from the seat on, straight between the middles of the nodes,
    /// degC; of a store of one node, its own.
    pub fn at_share_c(&self, net: &Network<'_>, share: f64) -> f64 {
        let row = &net.parts.row;
        let middles = row.middles();
        let last = row.count - 1;
        if share <= middles[0] || last == 0 {
            return self.node_c(net, 0);
        }
        let after = (1..last)
            .find(|&node| share <= middles[node])
            .unwrap_or(last);
        let (from, to) = (middles[after - 1], middles[after]);
        let along = ((share - from) / (to - from)).min(1.0);
        let before_c = self.node_c(net, after - 1);
        before_c + along * (self.node_c(net, after) - before_c)
    }

    /// Makes the store hotter towards its far end and colder towards the seat: by so much at the ends,
    /// by nothing in the middle of its mass. K.
    pub fn tilt(&mut self, net: &Network<'_>, by_k: f64) {
        let row = &net.parts.row;
        for (node, middle) in row.middles().into_iter().enumerate().take(row.count) {
            let node_c = self.node_c(net, node) + by_k * (2.0 * middle - 1.0);
            let heat_j = net.curve.enthalpy_j(node_c);
            self.node_j[node] = row.mass_share[node] * heat_j;
            self.segment[node] = net.curve.segment_from(self.segment[node], heat_j);
        }
    }

    /// Temperature of the store under the seat, degC.
    pub fn store_c(&self, net: &Network<'_>) -> f64 {
        self.node_c(net, 0)
    }

    /// Temperature the store would have if it were mixed, degC.
    ///
    /// Of a store that is supercooled in part: the mean over its nodes.
    pub fn mixed_store_c(&self, net: &Network<'_>) -> f64 {
        if self.is_supercooled(net) {
            let row = &net.parts.row;
            return (0..row.count)
                .map(|node| row.mass_share[node] * self.node_c(net, node))
                .sum();
        }
        net.curve.temperature_c(self.store_j())
    }

    /// Share of a medium that is solid, over the whole store.
    pub fn solid_fraction(&self, net: &Network<'_>, medium: usize) -> f64 {
        let row = &net.parts.row;
        (0..row.count)
            .map(|node| {
                let share = row.mass_share[node];
                let heat_j = self.node_j[node] / share;
                let place = self.segment[node];
                if net.curve.supercooled_segment() == Some(place) {
                    share * net.curve.solid_fraction_on(medium, place, heat_j)
                } else {
                    share * net.curve.solid_fraction(medium, heat_j)
                }
            })
            .sum()
    }

    /// Heat in the store above 0 degC, J.
    pub fn store_j(&self) -> f64 {
        self.node_j.iter().sum()
    }

    /// Temperature of the jacket's node, degC; of its outer one where it has two.
    pub fn jacket_c(&self) -> f64 {
        self.jacket_c
    }

    /// Temperature of the jacket half-way between store and air, degC.
    pub fn half_way_c(&self, net: &Network<'_>) -> f64 {
        net.pair.map_or(self.jacket_c, |pair| {
            let slope_k = (self.inner_c - self.jacket_c) / (pair.inner.warmth - pair.outer.warmth);
            self.jacket_c + (0.5 - pair.outer.warmth) * slope_k
        })
    }

    /// Heat in the jacket above a temperature, J.
    pub fn jacket_j(&self, net: &Network<'_>, above_c: f64) -> f64 {
        match net.pair {
            Some(JacketPair { inner, outer }) => {
                inner.capacity_j_k * (self.inner_c - above_c)
                    + outer.capacity_j_k * (self.jacket_c - above_c)
            }
            None => net.parts.c_jacket_j_k * (self.jacket_c - above_c),
        }
    }

    /// Whether the thermostat lets the heater on.
    pub fn heater_on(&self) -> bool {
        self.heater_on
    }

    /// The pot, if one is in.
    pub fn pot(&self) -> Option<&PotState> {
        self.pot.as_ref()
    }

    /// The pot, if one is in, to change its lid.
    pub fn pot_mut(&mut self) -> Option<&mut PotState> {
        self.pot.as_mut()
    }

    /// Heat above 0 degC in store, jacket and pot, J.
    pub fn stored_j(&self, net: &Network<'_>) -> f64 {
        self.store_j() + self.jacket_j(net, 0.0) + self.pot.map_or(0.0, |pot| pot.heat_j)
    }
}
