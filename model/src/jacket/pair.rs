//! The steady jacket as two nodes.
//!
//! What a jacket takes from the store and gives to the air, beyond the steady flow, goes by how its
//! heat capacity is spread over its warmth: 1 at the store, 0 at the air. Two nodes can have that
//! spread's first four moments, which places them as Gauss's quadrature does (Abramowitz and
//! Stegun, 25.4): the capacity, the heat held and the lag behind store and air come out right for all
//! that is slow. One node half-way has the first two only.
//!
//! A thick jacket is not fast enough for that: over an evening its warm inside takes and gives by itself. So
//! the inner node is moved towards the store until it takes as much from a store that changes within
//! eight hours as all the jacket does, the heat held and the lag behind the store kept. For that the
//! jacket is a row of thin shells from warm to cold, all of the steady heat passing through each:
//! conduction in one dimension, with the warmth for the length.

use std::f64::consts::PI;

use super::capacity::{CORNER_WARMTH, ring_warmth};
use super::faces::Solved;
use super::{JacketShape, LayeredJacket};
use crate::jacket::capacity::EDGE_WARMTH;
use crate::network::{JacketNode, JacketPair};

/// Slices of each layer over which the moments are summed.
const SLICES: u32 = 48;

/// Thin shells from the store to the air.
const SHELLS: usize = 64;
/// The pace of a store by which the inner node is placed: between the hour of a meal and the day. The
/// answer changes little from four hours to sixteen. [s]
const PACE_S: f64 = 8.0 * 3600.0;
/// The inner node is sought in such steps of warmth up to this one, and then halved down to it.
const WARMTH_STEP: f64 = 0.01;
const WARMEST: f64 = 0.97;
const HALVINGS: u32 = 30;

/// Heat capacity by powers of the warmth, J/K.
type Moments = [f64; 4];

/// Heat capacity and heat above the air per kelvin of the store in each thin shell, J/K.
type Shells = [(f64, f64); SHELLS];

impl LayeredJacket {
    /// The jacket as two nodes; `None` where its moments leave no room for two.
    ///
    /// `loss_w_k` is what the nodes will lie in: conduction, and what passes it by.
    pub(super) fn pair(&self, solved: &Solved, air_c: f64, loss_w_k: f64) -> Option<JacketPair> {
        let hot_c = solved.wall_faces_c.first().copied()?;
        if (hot_c - air_c).abs() < 0.5 {
            return self.pair(&self.solve(air_c + 1.0, air_c), air_c, loss_w_k);
        }
        let mut moments = Moments::default();
        let mut shells: Shells = [(0.0, 0.0); SHELLS];
        let mut inner_m = 0.0;
        let faces = solved
            .wall_faces_c
            .windows(2)
            .zip(solved.flat_faces_c.windows(2));
        let outer_face_c = solved.wall_faces_c.last().copied()?;
        for (layer, (wall, flat)) in self.layers.iter().zip(faces) {
            let (&[wall_hot, wall_cold], &[flat_hot, flat_cold]) = (wall, flat) else {
                return None;
            };
            let outer_m = inner_m + layer.thickness_m;
            let slice_m = layer.thickness_m / f64::from(SLICES);
            for idx in 0..SLICES {
                let share = (f64::from(idx) + 0.5) / f64::from(SLICES);
                let depth_m = inner_m + share * layer.thickness_m;
                let flat_c = flat_hot + share * (flat_cold - flat_hot);
                let side_share = self.side_share(inner_m, depth_m, outer_m).unwrap_or(share);
                let side_c = wall_hot + side_share * (wall_cold - wall_hot);
                let beyond_c = |warmth: f64| outer_face_c + warmth * (flat_c - outer_face_c);
                for (area_m2, at_c) in self.areas(depth_m, side_c, flat_c, beyond_c) {
                    let capacity_j_k = layer.kind.capacity_j_m3k() * area_m2 * slice_m;
                    let warmth = (at_c - air_c) / (hot_c - air_c);
                    if let Some(shell) = shells.get_mut(shell_of(warmth)) {
                        shell.0 += capacity_j_k;
                        shell.1 += capacity_j_k * warmth;
                    }
                    let mut weight_j_k = capacity_j_k;
                    for moment in &mut moments {
                        *moment += weight_j_k;
                        weight_j_k *= warmth;
                    }
                }
            }
            inner_m = outer_m;
        }
        let conduction_w_k = self.conduction_w_k(&solved.conductivities_w_mk);
        let taken_w_k = taken_by_shells_w_k(&shells, conduction_w_k);
        quadrature(moments).map(|pair| placed(pair, moments, (taken_w_k, loss_w_k)))
    }

    /// How far the temperature of a cylinder's side has fallen within a layer, at a depth in it.
    fn side_share(&self, inner_m: f64, depth_m: f64, outer_m: f64) -> Option<f64> {
        match self.shape {
            JacketShape::Cylinder { inner_radius_m, .. } => {
                let fall =
                    |to_m: f64| libm::log((inner_radius_m + to_m) / (inner_radius_m + inner_m));
                Some(fall(depth_m) / fall(outer_m))
            }
            JacketShape::Box { .. } => None,
        }
    }

    /// Areas of the surface at a distance from the store, with their temperatures: walls, then
    /// edges, then corners.
    fn areas(
        &self,
        depth_m: f64,
        side_c: f64,
        flat_c: f64,
        beyond_c: impl Fn(f64) -> f64,
    ) -> [(f64, f64); 3] {
        match self.shape {
            JacketShape::Cylinder {
                inner_radius_m: r,
                inner_height_m: h,
            } => [
                (2.0 * PI * (r + depth_m) * h, side_c),
                (2.0 * PI * r * r, flat_c),
                (
                    PI * depth_m * (8.0 * r + 6.0 * depth_m),
                    beyond_c(ring_warmth(self.thickness_m() / r)),
                ),
            ],
            JacketShape::Box {
                inner_length_m: l,
                inner_width_m: w,
                inner_height_m: h,
            } => [
                (2.0 * (l * w + w * h + h * l), flat_c),
                (8.0 * (l + w + h) * depth_m, beyond_c(EDGE_WARMTH)),
                (24.0 * depth_m * depth_m, beyond_c(CORNER_WARMTH)),
            ],
        }
    }
}

/// The two nodes with these moments.
fn quadrature([m0, m1, m2, m3]: Moments) -> Option<JacketPair> {
    // The nodes are the zeros of the polynomial of second degree that is orthogonal to 1 and x.
    let spread = m0 * m2 - m1 * m1;
    let (b, c) = ((m1 * m2 - m0 * m3) / spread, (m1 * m3 - m2 * m2) / spread);
    let half = (0.25 * b * b - c).sqrt();
    let (inner, outer) = (-0.5 * b + half, -0.5 * b - half);
    let inner_j_k = (m1 - outer * m0) / (inner - outer);
    let outer_j_k = m0 - inner_j_k;
    let apart = 0.0 < outer && outer < inner && inner < 1.0;
    (apart && 0.0 < inner_j_k && 0.0 < outer_j_k).then_some(JacketPair {
        inner: JacketNode {
            warmth: inner,
            capacity_j_k: inner_j_k,
        },
        outer: JacketNode {
            warmth: outer,
            capacity_j_k: outer_j_k,
        },
    })
}

/// The shell of a warmth.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    clippy::cast_precision_loss,
    reason = "held to the shells"
)]
fn shell_of(warmth: f64) -> usize {
    ((warmth * SHELLS as f64) as usize).min(SHELLS - 1)
}

/// What nodes from the air to the store let out of a store whose temperature grows by a factor of e in
/// each [`PACE_S`], beyond the steady loss: capacity and warmth of each. \[W/K\]
fn taken_w_k(nodes: impl Iterator<Item = (f64, f64)>, loss_w_k: f64) -> f64 {
    let (mut let_out_w_k, mut from) = (f64::INFINITY, 0.0);
    for (capacity_j_k, warmth) in nodes {
        let span_k_w = (warmth - from) / loss_w_k;
        let_out_w_k = 1.0 / (span_k_w + 1.0 / let_out_w_k) + capacity_j_k / PACE_S;
        from = warmth;
    }
    1.0 / ((1.0 - from) / loss_w_k + 1.0 / let_out_w_k) - loss_w_k
}

fn taken_by_shells_w_k(shells: &Shells, conduction_w_k: f64) -> f64 {
    let nodes = shells
        .iter()
        .filter(|(capacity_j_k, _)| 0.0 < *capacity_j_k)
        .map(|(capacity_j_k, heat_j_k)| (*capacity_j_k, heat_j_k / capacity_j_k));
    taken_w_k(nodes, conduction_w_k)
}

/// The pair with its inner node where it takes as much as the jacket does, nearest to where it was; as
/// it was where there is no such place.
fn placed(
    pair: JacketPair,
    [_, m1, m2, _]: Moments,
    (wanted_w_k, loss_w_k): (f64, f64),
) -> JacketPair {
    let outer = pair.outer.warmth;
    // Heat held and lag behind the store are those of the moments.
    let with = |inner: f64| JacketPair {
        inner: JacketNode {
            warmth: inner,
            capacity_j_k: (m2 - outer * m1) / (inner * (inner - outer)),
        },
        outer: JacketNode {
            warmth: outer,
            capacity_j_k: (inner * m1 - m2) / (outer * (inner - outer)),
        },
    };
    let takes_more = |inner: f64| {
        let JacketPair { inner, outer } = with(inner);
        let nodes = [outer, inner].map(|node| (node.capacity_j_k, node.warmth));
        wanted_w_k < taken_w_k(nodes.into_iter(), loss_w_k)
    };
    let (mut from, too_much) = (pair.inner.warmth, takes_more(pair.inner.warmth));
    while from + WARMTH_STEP < WARMEST {
        let mut to = from + WARMTH_STEP;
        if takes_more(to) == too_much {
            from = to;
            continue;
        }
        for _ in 0..HALVINGS {
            let middle = 0.5 * (from + to);
            if takes_more(middle) == too_much {
                from = middle;
            } else {
                to = middle;
            }
        }
        return with(from);
    }
    pair
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A flat wall without films has its capacity spread evenly over its warmth: Gauss's two points
    /// on an interval are 1/2 -+ 1/sqrt(12), of equal weight (Abramowitz and Stegun, table 25.4).
    #[test]
    fn a_flat_wall_has_the_points_of_the_textbook() {
        let pair = quadrature([12.0, 6.0, 4.0, 3.0]).unwrap();
        let off = 1.0 / 12.0_f64.sqrt();
        assert!((pair.inner.warmth - 0.5 - off).abs() < 1e-12);
        assert!((pair.outer.warmth - 0.5 + off).abs() < 1e-12);
        assert!((pair.inner.capacity_j_k - 6.0).abs() < 1e-9);
        assert!((pair.outer.capacity_j_k - 6.0).abs() < 1e-9);
    }

    #[test]
    fn all_at_one_warmth_is_no_pair() {
        assert_eq!(quadrature([2.0, 1.0, 0.5, 0.25]), None);
        assert_eq!(quadrature([0.0; 4]), None);
    }
}
