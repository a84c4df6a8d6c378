//! The rates of change while nothing switches.

use super::parts::{JacketPair, LossRise, MAX_NODES, Network, SeatAt};
use super::pot::{PotPhase, PotState};
use super::state::State;
use crate::enthalpy::{Segment, SolidPart};
use crate::numerics::rosenbrock::System;
use crate::water::CP_J_KGK;

/// Places of the solver's vector: jacket temperature, heat of each node, temperature of the jacket's
/// inner node, heat and water of the pot.
pub(crate) const X: usize = MAX_NODES + 4;
/// Integrals beside it.
pub(crate) const Q: usize = 7;

/// Place of the temperature of the jacket's only node, or its outer one.
pub(crate) const JACKET: usize = 0;
/// Place of node 0's heat.
pub(crate) const NODES: usize = 1;

pub(crate) const POT: usize = 0;
pub(crate) const JACKET_AIR: usize = 1;
pub(crate) const LID_AIR: usize = 2;
pub(crate) const POT_AIR: usize = 3;
pub(crate) const STEAM: usize = 4;
pub(crate) const CARRIED: usize = 5;
pub(crate) const DONENESS: usize = 6;

/// How many times itself a seat's conductance may change within a step, at the rate of its start.
const LAYER_FOLDS: f64 = 2.0;

/// The network with every switch, stretch of the curve and phase held.
pub(crate) struct Flows<'n> {
    net: &'n Network<'n>,
    pot: Option<PotState>,
    segment: [&'n Segment; MAX_NODES],
    solid: Option<SolidPart>,
    heater_w: f64,
    air_c: f64,
    jacket: Jacket,
    layer_k_w: f64,
    elsewhere: f64,
    /// The melt is liquid and above its melting point.
    is_hot_melt: bool,
    dim: usize,
}

/// The way from the store to the air.
struct Jacket {
    /// From the store to the first node, W/K.
    g_in_w_k: f64,
    /// From the last node to the air, W/K.
    g_out_w_k: f64,
    /// Heat capacity of the last node, J/K.
    outer_j_k: f64,
    /// From the inner node to the outer, W/K, and the heat capacity of the inner, J/K.
    inner: Option<(f64, f64)>,
}

impl Jacket {
    fn of(net: &Network<'_>, state: &State) -> Self {
        let mut g_loss_w_k = net.parts.g_loss_w_k;
        if net.loss_rise != LossRise::NONE {
            g_loss_w_k *= net.loss_rise.share(state.mixed_store_c(net));
        }
        match net.pair {
            None => Self {
                g_in_w_k: 2.0 * g_loss_w_k,
                g_out_w_k: 2.0 * g_loss_w_k,
                outer_j_k: net.parts.c_jacket_j_k,
                inner: None,
            },
            Some(JacketPair { inner, outer }) => Self {
                g_in_w_k: g_loss_w_k / (1.0 - inner.warmth),
                g_out_w_k: g_loss_w_k / outer.warmth,
                outer_j_k: outer.capacity_j_k,
                inner: Some((
                    g_loss_w_k / (inner.warmth - outer.warmth),
                    inner.capacity_j_k,
                )),
            },
        }
    }
}

/// Conductance of the seat, W/K, and how it grows with the heat of node 0, W/(K J), and with the
/// temperature of the pot, W/K2.
struct SeatFlow {
    w_k: f64,
    by_node: f64,
    by_pot: f64,
}

/// Temperatures, and their derivatives by what the solver carries.
struct Temperatures {
    node_c: [f64; MAX_NODES],
    node_k_j: [f64; MAX_NODES],
    pot_c: f64,
    /// By the pot's heat, K/J, and by its water, K/kg.
    pot_slope: (f64, f64),
}

impl<'n> Flows<'n> {
    pub(crate) fn new(net: &'n Network<'n>, state: &State, heater_w: f64, air_c: f64) -> Self {
        let nodes = net.parts.row.count;
        let layer = net.parts.seat.layer;
        let extra = match state.pot {
            Some(pot) if pot.phase == PotPhase::Boiling => 0,
            Some(pot) if pot.phase == PotPhase::Simple && pot.pot.surface.is_some() => 2,
            Some(_) => 1,
            None => 0,
        };
        let solid = layer.map(|layer| net.curve.solid_part(layer.medium, state.segment[0]));
        let is_supercooled = net.curve.supercooled_segment() == Some(state.segment[0]);
        Self {
            net,
            pot: state.pot,
            segment: state.segment.map(|index| net.curve.segment(index)),
            solid,
            is_hot_melt: !is_supercooled && solid.is_some_and(SolidPart::is_molten),
            heater_w: if state.heater_on { heater_w } else { 0.0 },
            air_c,
            jacket: Jacket::of(net, state),
            layer_k_w: layer.map_or(0.0, |layer| {
                layer.depth_m / (layer.k_solid_w_mk * layer.area_m2)
            }),
            elsewhere: layer.map_or(0.0, |layer| layer.elsewhere.max(state.elsewhere)),
            dim: NODES + nodes + usize::from(net.pair.is_some()) + extra,
        }
    }

    pub(crate) fn heater_w(&self) -> f64 {
        self.heater_w
    }

    /// For each node, the heat that warms it by about one kelvin, J/K, finite on a plateau too.
    pub(crate) fn node_measures_j_k(&self) -> impl Iterator<Item = f64> {
        let row = &self.net.parts.row;
        let whole_j_k = self.net.curve.sensible_j_k();
        row.mass_share
            .iter()
            .take(row.count)
            .map(move |share| share * whole_j_k)
    }

    /// Place of the temperature of the jacket's inner node, if it has one.
    pub(crate) fn inner_place(&self) -> Option<usize> {
        let place = NODES + self.net.parts.row.count;
        self.net.pair.is_some().then_some(place)
    }

    /// The first place after the store and its jacket.
    fn after_jacket(&self) -> usize {
        NODES + self.net.parts.row.count + usize::from(self.net.pair.is_some())
    }

    /// Place of the pot's heat, if the solver carries it.
    pub(crate) fn pot_place(&self) -> Option<usize> {
        let place = self.after_jacket();
        (self.dim > place).then_some(place)
    }

    /// Place of the pot's water, if the solver carries it.
    pub(crate) fn water_place(&self) -> Option<usize> {
        let place = self.after_jacket() + 1;
        (self.dim > place).then_some(place)
    }

    pub(crate) fn pack(&self, state: &State) -> [f64; X] {
        let mut x = [0.0; X];
        x[JACKET] = state.jacket_c;
        if let Some(place) = self.inner_place() {
            x[place] = state.inner_c;
        }
        let nodes = self.net.parts.row.count;
        x[NODES..NODES + nodes].copy_from_slice(&state.node_j[..nodes]);
        if let (Some(place), Some(pot)) = (self.pot_place(), &state.pot) {
            x[place] = pot.heat_j;
        }
        if let (Some(place), Some(pot)) = (self.water_place(), &state.pot) {
            x[place] = pot.water_kg;
        }
        x
    }

    fn temperatures(&self, x: &[f64; X]) -> Temperatures {
        let row = &self.net.parts.row;
        let mut t = Temperatures {
            node_c: [0.0; MAX_NODES],
            node_k_j: [0.0; MAX_NODES],
            pot_c: 0.0,
            pot_slope: (0.0, 0.0),
        };
        for node in 0..row.count {
            let share = row.mass_share[node];
            let (t_c, k_j) = self.segment[node].temperature(x[NODES + node] / share);
            t.node_c[node] = t_c;
            t.node_k_j[node] = k_j / share;
        }
        if let Some(pot) = &self.pot {
            if let Some(place) = self.pot_place() {
                let water_kg = self.water_place().map_or(pot.water_kg, |water| x[water]);
                let capacity = pot.pot.c_dry_j_k + CP_J_KGK * water_kg;
                t.pot_c = x[place] / capacity;
                t.pot_slope = (1.0 / capacity, -CP_J_KGK * t.pot_c / capacity);
            } else {
                t.pot_c = self.net.boiling_c;
            }
        }
        t
    }

    /// Conductance of the seat.
    fn seat(&self, x: &[f64; X], t: &Temperatures) -> SeatFlow {
        let (boils, thickness) = self.pot.as_ref().map_or((false, 1.0), |pot| {
            (pot.phase == PotPhase::Boiling, pot.pot.thickness)
        });
        let clear = self.net.clear_seat(SeatAt {
            store_c: t.node_c[0],
            pot_c: t.pot_c,
            boils,
            thickness,
            is_hot_melt: self.is_hot_melt,
        });
        let g = clear.w_k;
        let bare = SeatFlow {
            w_k: g,
            by_node: clear.by_store * t.node_k_j[0],
            by_pot: clear.by_pot,
        };
        let Some(solid) = self.solid else {
            return bare;
        };
        let share = self.net.parts.row.mass_share[0];
        let (part, slope) = match solid {
            SolidPart::Constant(part) => (part, 0.0),
            SolidPart::WithTemperature {
                liquidus_c,
                range_k,
            } => (
                (liquidus_c - t.node_c[0]) / range_k,
                -t.node_k_j[0] / range_k,
            ),
            SolidPart::WithEnthalpy { end_j, latent_j } => (
                (end_j - x[NODES] / share) / latent_j,
                -1.0 / (latent_j * share),
            ),
        };
        let part = part - self.elsewhere;
        if self.elsewhere > 0.0 && part < 0.0 {
            // What froze elsewhere melts again; nothing is left on the seat.
            return bare;
        }
        let ratio = g * self.layer_k_w;
        // Beyond the end of melting the tangent goes on: smooth, and never without a value.
        let (series, by_clear, steepest) = if part >= 0.0 {
            let left = 1.0 / (1.0 + part * ratio);
            (g * left, left * left, g * left)
        } else {
            (g * (1.0 - part * ratio), 1.0 - 2.0 * part * ratio, g)
        };
        SeatFlow {
            w_k: series,
            by_node: by_clear * bare.by_node - self.layer_k_w * steepest * steepest * slope,
            by_pot: by_clear * bare.by_pot,
        }
    }

    /// The longest step in which the frozen layer still shows itself, s.
    ///
    /// A layer that begins to freeze chokes a good seat within a fraction of a second. A step much
    /// longer than that sees the choked flow only, and its error estimate with it. So a step may
    /// change the seat's conductance by [`LAYER_FOLDS`] of itself, at the present rate.
    pub(crate) fn longest_step_s(&self, x: &[f64; X]) -> f64 {
        if self.pot.is_none() || self.solid.is_none() {
            return f64::INFINITY;
        }
        let SeatFlow { w_k, by_node, .. } = self.seat(x, &self.temperatures(x));
        let mut f = [0.0; X];
        self.rates(x, &mut f, &mut [0.0; Q]);
        let per_s = (by_node * f[NODES] / w_k).abs();
        if per_s > 0.0 {
            LAYER_FOLDS / per_s
        } else {
            f64::INFINITY
        }
    }

    /// What is left of the heat into a boiling pot once its walls and its open surface have theirs, W.
    ///
    /// The pot boils on while this is positive.
    pub(crate) fn surplus_w(&self, x: &[f64; X]) -> f64 {
        let Some(pot) = &self.pot else {
            return 0.0;
        };
        let t = self.temperatures(x);
        let g_seat = self.seat(x, &t).w_k;
        let evaporation_w = pot
            .pot
            .surface
            .map_or(0.0, |surface| surface.heat_and_slope(t.pot_c).0);
        g_seat * (t.node_c[0] - t.pot_c)
            - pot.pot.g_air_w_k * (t.pot_c - self.air_c)
            - evaporation_w
    }

    /// Evaporation off the boil, W, and its slope, W/K.
    fn evaporation(&self, pot: &PotState, pot_c: f64) -> (f64, f64) {
        match pot.pot.surface {
            Some(surface) if pot.phase == PotPhase::Simple => surface.heat_and_slope(pot_c),
            _ => (0.0, 0.0),
        }
    }
}

impl System<X, Q> for Flows<'_> {
    fn dim(&self) -> usize {
        self.dim
    }

    fn rates(&self, x: &[f64; X], f: &mut [f64; X], g: &mut [f64; Q]) {
        let parts = &self.net.parts;
        let row = &parts.row;
        let t = self.temperatures(x);
        let jacket_c = x[JACKET];
        let first_c = x[self.inner_place().unwrap_or(JACKET)];
        let mut into_jacket_w = 0.0;
        for node in 0..row.count {
            let t_c = t.node_c[node];
            let lost_w = self.jacket.g_in_w_k * row.jacket_share[node] * (t_c - first_c);
            into_jacket_w += lost_w;
            f[NODES + node] += self.heater_w * row.heater_share[node] - lost_w;
            if node + 1 < row.count {
                let outward_w = row.link_w_k[node] * (t_c - t.node_c[node + 1]);
                f[NODES + node] -= outward_w;
                f[NODES + node + 1] += outward_w;
            }
        }
        if let (Some(place), Some((g_w_k, inner_j_k))) = (self.inner_place(), self.jacket.inner) {
            let outward_w = g_w_k * (first_c - jacket_c);
            f[place] = (into_jacket_w - outward_w) / inner_j_k;
            into_jacket_w = outward_w;
        }
        let jacket_air_w = self.jacket.g_out_w_k * (jacket_c - self.air_c);
        f[JACKET] = (into_jacket_w - jacket_air_w) / self.jacket.outer_j_k;
        g[JACKET_AIR] = jacket_air_w;
        let lid_w = parts.g_lid_w_k * (t.node_c[0] - self.air_c);
        f[NODES] -= lid_w;
        g[LID_AIR] = lid_w;

        let Some(pot) = &self.pot else {
            return;
        };
        let seat_w = self.seat(x, &t).w_k * (t.node_c[0] - t.pot_c);
        let walls_w = pot.pot.g_air_w_k * (t.pot_c - self.air_c);
        f[NODES] -= seat_w;
        g[POT] = seat_w;
        g[POT_AIR] = walls_w;
        let steam_w = if pot.phase == PotPhase::Boiling {
            seat_w - walls_w
        } else {
            self.evaporation(pot, t.pot_c).0
        };
        let steam_kg_s = steam_w / self.net.h_fg_j_kg;
        g[STEAM] = steam_w;
        g[CARRIED] = CP_J_KGK * t.pot_c * steam_kg_s;
        if let Some(place) = self.pot_place() {
            f[place] = seat_w - walls_w - steam_w - g[CARRIED];
        }
        if let Some(place) = self.water_place() {
            f[place] = -steam_kg_s;
        }
        if let (Some(cook), true) = (pot.pot.cook, pot.cooking) {
            g[DONENESS] = cook.rate_and_slope(t.pot_c).0;
        }
    }

    fn jacobian(&self, x: &[f64; X], df: &mut [[f64; X]; X], dg: &mut [[f64; X]; Q]) {
        let parts = &self.net.parts;
        let row = &parts.row;
        let t = self.temperatures(x);

        let Jacket {
            g_in_w_k,
            g_out_w_k,
            outer_j_k,
            inner,
        } = self.jacket;
        dg[JACKET_AIR][JACKET] = g_out_w_k;
        let (first, first_j_k) = match (self.inner_place(), inner) {
            (Some(place), Some((g_w_k, inner_j_k))) => {
                df[JACKET][JACKET] = -(g_w_k + g_out_w_k) / outer_j_k;
                df[JACKET][place] = g_w_k / outer_j_k;
                df[place][place] = -(g_in_w_k + g_w_k) / inner_j_k;
                df[place][JACKET] = g_w_k / inner_j_k;
                (place, inner_j_k)
            }
            _ => {
                df[JACKET][JACKET] = -(g_in_w_k + g_out_w_k) / outer_j_k;
                (JACKET, outer_j_k)
            }
        };
        for node in 0..row.count {
            let at = NODES + node;
            let k_j = t.node_k_j[node];
            let g_jacket = g_in_w_k * row.jacket_share[node];
            df[at][at] -= g_jacket * k_j;
            df[at][first] = g_jacket;
            df[first][at] = g_jacket * k_j / first_j_k;
            if node + 1 < row.count {
                let link = row.link_w_k[node];
                let next_k_j = t.node_k_j[node + 1];
                df[at][at] -= link * k_j;
                df[at][at + 1] += link * next_k_j;
                df[at + 1][at] += link * k_j;
                df[at + 1][at + 1] -= link * next_k_j;
            }
        }
        df[NODES][NODES] -= parts.g_lid_w_k * t.node_k_j[0];
        dg[LID_AIR][NODES] = parts.g_lid_w_k * t.node_k_j[0];

        let Some(pot) = &self.pot else {
            return;
        };
        let seat = self.seat(x, &t);
        let fall_k = t.node_c[0] - t.pot_c;
        let seat_by_node = seat.w_k * t.node_k_j[0] + seat.by_node * fall_k;
        let seat_by_pot = seat.by_pot * fall_k - seat.w_k;
        df[NODES][NODES] -= seat_by_node;
        dg[POT][NODES] = seat_by_node;
        if pot.phase == PotPhase::Boiling {
            dg[STEAM][NODES] = seat_by_node;
            dg[CARRIED][NODES] = CP_J_KGK * t.pot_c / self.net.h_fg_j_kg * seat_by_node;
            return;
        }
        let (evaporation_w, evaporation_w_k) = self.evaporation(pot, t.pot_c);
        let carried_w_k =
            CP_J_KGK * (evaporation_w_k * t.pot_c + evaporation_w) / self.net.h_fg_j_kg;
        let doneness_k = match pot.pot.cook {
            Some(cook) if pot.cooking => cook.rate_and_slope(t.pot_c).1,
            _ => 0.0,
        };
        let places = [
            (self.pot_place(), t.pot_slope.0),
            (self.water_place(), t.pot_slope.1),
        ];
        for (place, slope) in places {
            let Some(column) = place else { continue };
            dg[POT][column] = seat_by_pot * slope;
            dg[POT_AIR][column] = pot.pot.g_air_w_k * slope;
            dg[STEAM][column] = evaporation_w_k * slope;
            dg[CARRIED][column] = carried_w_k * slope;
            dg[DONENESS][column] = doneness_k * slope;
            df[NODES][column] = -seat_by_pot * slope;
        }
        if let Some(place) = self.pot_place() {
            for column in 0..self.dim {
                df[place][column] =
                    dg[POT][column] - dg[POT_AIR][column] - dg[STEAM][column] - dg[CARRIED][column];
            }
        }
        if let Some(place) = self.water_place() {
            for column in 0..self.dim {
                df[place][column] = -dg[STEAM][column] / self.net.h_fg_j_kg;
            }
        }
    }
}
