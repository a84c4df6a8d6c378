//! One step of the solver.
//!
//! ROS2 (Verwer, Spee, Blom and Hundsdorfer, SIAM J. Sci. Comput. 20 (1999) 1456): linearly
//! implicit, L-stable and of second order whatever the Jacobian, so that an idle half hour is one step
//! and a plateau of melting needs no special case: heat is the state, and what leaves one part enters
//! another.

#![allow(
    clippy::needless_range_loop,
    reason = "several short arrays are walked side by side, and their first few places only"
)]

use super::build::{Build, OnSeat};
use super::lean::greater;
use super::member::{Course, Phase};
use super::solve::{Factors, Rates, Stiffness};

/// `1 - 1/sqrt(2)`, which makes ROS2 L-stable.
const GAMMA: f64 = 0.292_893_218_813_452_4;

/// What one step of the solver makes of a member.
#[derive(Debug, Clone, Copy)]
pub(super) struct Step<const N: usize> {
    pub(super) heat_j: [f64; N],
    pub(super) jacket_c: f64,
    pub(super) outer_c: f64,
    pub(super) pot_c: f64,
    /// Rise of the pot at the step's start. \[K/s\]
    pub(super) pot_k_s: f64,
    pub(super) steamed_kg: f64,
    /// Steam at the step's start. \[kg/s\]
    pub(super) steam_kg_s: f64,
    pub(super) heater_j: f64,
    /// By how much the slopes foretold the temperatures wrongly, at most. \[K\]
    pub(super) kink_k: f64,
    /// Out of the pot as steam and, from seat, jacket, open face and pot, to the air. \[J\]
    pub(super) jacket_air_j: f64,
    pub(super) open_j: f64,
    pub(super) pot_air_j: f64,
}

/// Temperatures, slopes and flows of one stage.
pub(super) struct Stage<const N: usize> {
    pub(super) rates: Rates<N>,
    pub(super) seat_w: f64,
    pub(super) steam_w: f64,
    pub(super) steam_w_k: f64,
    pub(super) jacket_air_w: f64,
    pub(super) open_w: f64,
    pub(super) pot_air_w: f64,
    pub(super) node_k_j: [f64; N],
    pub(super) g_seat_w_k: f64,
    /// The nodes. \[°C\]
    pub(super) node_c: [f64; N],
}

/// The state that a stage is worked out at.
#[derive(Clone, Copy)]
pub(super) struct At<const N: usize> {
    pub(super) heat_j: [f64; N],
    pub(super) jacket_c: f64,
    pub(super) outer_c: f64,
    pub(super) pot_c: f64,
}

/// What is fixed for a member within a stretch.
pub(super) struct Fixed<'a, const N: usize> {
    pub(super) course: &'a Course<'a>,
    pub(super) phase: Phase,
    /// The melt is liquid, above its melting point or below.
    pub(super) is_liquid: bool,
    /// Whole store's heat per heat of each node.
    pub(super) whole: [f64; N],
    pub(super) g_half_w_k: f64,
    pub(super) g_open_w_k: f64,
    pub(super) contact: f64,
    pub(super) thickness: f64,
    /// Multiplies what lies between the store's nodes.
    pub(super) inside: f64,
    /// How far the melting point is off. \[K\]
    pub(super) melt_k: f64,
    /// How much more of the heat the far side gets.
    pub(super) tilt: f64,
    pub(super) g_pot_air_w_k: f64,
    pub(super) surface_w_pa: f64,
    pub(super) air_c: f64,
    pub(super) heater_w: f64,
    /// Heat of the whole store about which this member's thermostat works. \[J\]
    pub(super) hold_j: f64,
}

impl<const N: usize> Fixed<'_, N> {
    #[inline]
    pub(super) fn stage(&self, at: &At<N>) -> Stage<N> {
        let build = self.course.build;
        let row = &build.row;
        let n = nodes::<N>(build);
        let mut out = Stage {
            rates: Rates::NONE,
            seat_w: 0.0,
            steam_w: 0.0,
            steam_w_k: 0.0,
            jacket_air_w: 0.0,
            open_w: 0.0,
            pot_air_w: 0.0,
            node_k_j: [0.0; N],
            g_seat_w_k: 0.0,
            node_c: [0.0; N],
        };
        let [to_jacket, across, to_air] = build.jacket_way;
        let mut into_jacket = 0.0;
        for node in 0..n {
            let (t_c, slope) = self.node_c(at.heat_j[node] * self.whole[node]);
            out.node_c[node] = t_c;
            out.node_k_j[node] = slope * self.whole[node];
            let lost_w = self.g_half_w_k * to_jacket * row.jacket_share[node] * (t_c - at.jacket_c);
            into_jacket += lost_w;
            let tilted = 1.0 + self.tilt * build.lever[node];
            out.rates.node[node] = self.heater_w * tilted * row.heater_share[node] - lost_w;
        }
        let node_c = out.node_c;
        for node in 1..n {
            let outward = self.inside * row.link_w_k[node - 1] * (node_c[node - 1] - node_c[node]);
            out.rates.node[node - 1] -= outward;
            out.rates.node[node] += outward;
        }
        if 0.0 < across {
            let across_w = self.g_half_w_k * across * (at.jacket_c - at.outer_c);
            out.jacket_air_w = self.g_half_w_k * to_air * (at.outer_c - self.air_c);
            out.rates.jacket = into_jacket - across_w;
            out.rates.outer = across_w - out.jacket_air_w;
        } else {
            out.jacket_air_w = self.g_half_w_k * to_air * (at.jacket_c - self.air_c);
            out.rates.jacket = into_jacket - out.jacket_air_w;
        }
        if 0.0 < self.g_open_w_k {
            out.open_w = self.g_open_w_k * (node_c[0] - self.air_c);
            out.rates.node[0] -= out.open_w;
        }
        if self.phase == Phase::NoPot {
            return out;
        }
        let whole_j = at.heat_j[0] * self.whole[0];
        let g_seat = self.seat_w_k(whole_j, node_c[0], at.pot_c, self.phase == Phase::Boiling);
        out.g_seat_w_k = g_seat;
        out.seat_w = g_seat * (node_c[0] - at.pot_c);
        out.pot_air_w = self.g_pot_air_w_k * (at.pot_c - self.air_c);
        out.rates.node[0] -= out.seat_w;
        match self.phase {
            Phase::Simple => {
                let (steam_w, slope) = self.evaporation(at.pot_c);
                out.steam_w = steam_w;
                out.steam_w_k = slope;
                out.rates.pot = out.seat_w - out.pot_air_w - steam_w;
            }
            Phase::Boiling => out.steam_w = out.seat_w - out.pot_air_w,
            Phase::Dry | Phase::NoPot => out.rates.pot = out.seat_w - out.pot_air_w,
        }
        out
    }

    /// Temperature of a node with this heat per whole store, and its slope. [°C, K/J]
    #[inline]
    fn node_c(&self, whole_j: f64) -> (f64, f64) {
        let (told_c, slope) = if self.is_liquid {
            self.course.build.liquid_c(whole_j)
        } else {
            self.course.build.store_c(whole_j)
        };
        (told_c + self.melt_k, slope)
    }

    /// Conductance of the seat; nothing is frozen on it in a melt that is liquid. \[W/K\]
    #[inline]
    pub(super) fn seat_w_k(&self, whole_j: f64, store_c: f64, pot_c: f64, boils: bool) -> f64 {
        let build = self.course.build;
        let on = OnSeat {
            contact: self.contact,
            inside: self.inside,
            thickness: self.thickness,
            store_c,
            pot_c,
            boils,
            melt_k: self.melt_k,
        };
        if self.is_liquid {
            build.clear_seat_w_k(on)
        } else {
            build.seat_w_k(on, whole_j)
        }
    }

    /// Evaporation off the boil and its slope. \[W, W/K\]
    #[inline]
    fn evaporation(&self, pot_c: f64) -> (f64, f64) {
        if self.surface_w_pa <= 0.0 {
            return (0.0, 0.0);
        }
        let (vapour_pa, slope) = self.course.build.vapour_pa(pot_c);
        let air_pa = self.course.load.map_or(0.0, |load| load.air_vapour_pa);
        if air_pa < vapour_pa {
            (
                self.surface_w_pa * (vapour_pa - air_pa),
                self.surface_w_pa * slope,
            )
        } else {
            (0.0, 0.0)
        }
    }

    /// What is left of the heat into a boiling pot: it boils on while this is positive. \[W\]
    pub(super) fn surplus_w(&self, heat_j: &[f64; N]) -> f64 {
        let build = self.course.build;
        let whole_j = heat_j[0] * self.whole[0];
        let (store_c, boiling_c) = (self.node_c(whole_j).0, build.boiling_c);
        let seat_w = self.seat_w_k(whole_j, store_c, boiling_c, true) * (store_c - boiling_c);
        seat_w
            - self.g_pot_air_w_k * (build.boiling_c - self.air_c)
            - self.evaporation(build.boiling_c).0
    }

    /// One step of ROS2 with the stage at its start.
    #[inline]
    fn step(&self, from: &At<N>, first: &Stage<N>, pot_k_j: f64, h_s: f64) -> Step<N> {
        let build = self.course.build;
        let row = &build.row;
        let n = nodes::<N>(build);
        let c = GAMMA * h_s;
        let (jacket_k_j, outer_k_j) = (1.0 / build.c_jacket_j_k, 1.0 / build.c_outer_j_k);
        let [to_jacket, across, to_air] = build.jacket_way.map(|way| c * self.g_half_w_k * way);
        let mut stiffness = Stiffness {
            count: row.count,
            link: [0.0; N],
            to_jacket: [0.0; N],
            jacket_outward: if 0.0 < across { across } else { to_air },
            outer_to_air: to_air,
            open: c * self.g_open_w_k,
            seat: c * first.g_seat_w_k,
            pot_to_air: c * (self.g_pot_air_w_k + first.steam_w_k),
            pot_is_free: matches!(self.phase, Phase::Simple | Phase::Dry),
            node_k_j: first.node_k_j,
            jacket_k_j,
            outer_k_j,
            pot_k_j,
        };
        for node in 0..n {
            stiffness.link[node] = c * self.inside * row.link_w_k[node];
            stiffness.to_jacket[node] = to_jacket * row.jacket_share[node];
        }
        let factors = Factors::new(&stiffness);
        let k1 = factors.solve(&first.rates);

        let mut middle = *from;
        for node in 0..n {
            middle.heat_j[node] += h_s * k1.node[node];
        }
        middle.jacket_c += h_s * jacket_k_j * k1.jacket;
        middle.outer_c += h_s * outer_k_j * k1.outer;
        middle.pot_c += h_s * pot_k_j * k1.pot;
        let second = self.stage(&middle);
        let mut rhs = second.rates;
        for node in 0..n {
            rhs.node[node] -= 2.0 * k1.node[node];
        }
        rhs.jacket -= 2.0 * k1.jacket;
        rhs.outer -= 2.0 * k1.outer;
        rhs.pot -= 2.0 * k1.pot;
        let k2 = factors.solve(&rhs);

        let sum = |one: f64, two: f64| h_s * (1.5 * one + 0.5 * two);
        let mut heat_j = from.heat_j;
        for node in 0..n {
            heat_j[node] += sum(k1.node[node], k2.node[node]);
        }
        // The same formula for an integral beside the state, so that the accounts balance.
        let integral = |g1: f64, g2: f64, slope1: f64, slope2: f64| {
            let one = g1 + slope1;
            sum(one, g2 - 2.0 * one + slope2)
        };
        let node_k = |k: &Rates<N>| first.node_k_j[0] * k.node[0];
        let pot_k = |k: &Rates<N>| pot_k_j * k.pot;
        let jacket_k = |k: &Rates<N>| {
            let last_k = if 0.0 < across {
                outer_k_j * k.outer
            } else {
                jacket_k_j * k.jacket
            };
            to_air * last_k
        };
        let walls = |k: &Rates<N>| c * self.g_pot_air_w_k * pot_k(k);
        let steam = |k: &Rates<N>| {
            if self.phase == Phase::Boiling {
                stiffness.seat * node_k(k)
            } else {
                c * first.steam_w_k * pot_k(k)
            }
        };
        let kink_k = (0..if build.melts_in_nodes() { n } else { 1 })
            .map(|node| {
                let foretold_k = h_s * first.node_k_j[node] * k1.node[node];
                (second.node_c[node] - first.node_c[node] - foretold_k).abs()
            })
            .fold(0.0, f64::max);
        let steam_j = integral(first.steam_w, second.steam_w, steam(&k1), steam(&k2));
        Step {
            heat_j,
            jacket_c: from.jacket_c + jacket_k_j * sum(k1.jacket, k2.jacket),
            outer_c: from.outer_c + outer_k_j * sum(k1.outer, k2.outer),
            pot_c: from.pot_c + pot_k_j * sum(k1.pot, k2.pot),
            pot_k_s: first.rates.pot * pot_k_j,
            steamed_kg: steam_j / build.h_fg_j_kg,
            steam_kg_s: first.steam_w / build.h_fg_j_kg,
            heater_j: h_s * self.heater_w,
            kink_k,
            jacket_air_j: integral(
                first.jacket_air_w,
                second.jacket_air_w,
                jacket_k(&k1),
                jacket_k(&k2),
            ),
            open_j: integral(
                first.open_w,
                second.open_w,
                stiffness.open * node_k(&k1),
                stiffness.open * node_k(&k2),
            ),
            pot_air_j: integral(first.pot_air_w, second.pot_air_w, walls(&k1), walls(&k2)),
        }
    }
}

impl<const N: usize> Step<N> {
    /// A step with the heater on for a share of it.
    fn blended(&self, on: &Self, share: f64) -> Self {
        let mix = |off: f64, on: f64| off + share * (on - off);
        let mut heat_j = self.heat_j;
        for (off, on) in heat_j.iter_mut().zip(on.heat_j) {
            *off = mix(*off, on);
        }
        Self {
            heat_j,
            jacket_c: mix(self.jacket_c, on.jacket_c),
            outer_c: mix(self.outer_c, on.outer_c),
            pot_c: mix(self.pot_c, on.pot_c),
            pot_k_s: on.pot_k_s,
            steamed_kg: mix(self.steamed_kg, on.steamed_kg),
            steam_kg_s: on.steam_kg_s,
            heater_j: mix(self.heater_j, on.heater_j),
            kink_k: greater(self.kink_k, on.kink_k),
            jacket_air_j: mix(self.jacket_air_j, on.jacket_air_j),
            open_j: mix(self.open_j, on.open_j),
            pot_air_j: mix(self.pot_air_j, on.pot_air_j),
        }
    }
}

impl<const N: usize> Fixed<'_, N> {
    /// A step in which the thermostat holds the store: the heater is on for the share of it that
    /// ends in the middle of the hysteresis.
    pub(super) fn held(&self, from: &At<N>, first: &Stage<N>, pot_k_j: f64, h_s: f64) -> Step<N> {
        let on = self.step(from, first, pot_k_j, h_s);
        let build = self.course.build;
        let place = build.row.thermostat_node.min(N - 1);
        let felt_j = |step: &Step<N>| step.heat_j[place] * self.whole[place];
        if self.heater_w <= 0.0 || felt_j(&on) <= self.hold_j {
            return on;
        }
        let without = Fixed {
            heater_w: 0.0,
            course: self.course,
            ..*self
        };
        let off = without.step(from, &without.stage(from), pot_k_j, h_s);
        let share = (self.hold_j - felt_j(&off)) / (felt_j(&on) - felt_j(&off));
        off.blended(&on, share.clamp(0.0, 1.0))
    }
}

/// Nodes in use.
#[inline]
pub(super) fn nodes<const N: usize>(build: &Build) -> usize {
    if N == 1 { 1 } else { build.row.count.min(N) }
}
