//! The steady jacket as two nodes.
//!
//! What a jacket takes from the store and gives to the air, beyond the steady flow, goes by how its
//! heat capacity is spread over its warmth: 1 at the store, 0 at the air. Two nodes can have that
//! spread's first four moments, which places them as Gauss's quadrature does (Abramowitz and
//! Stegun, 25.4): the capacity, the heat held and the lag behind store and air come out right. One
//! node half-way has the first two only.

use std::f64::consts::PI;

use super::capacity::{CORNER_WARMTH, ring_warmth};
use super::faces::Solved;
use super::{JacketShape, LayeredJacket};
use crate::jacket::capacity::EDGE_WARMTH;
use crate::network::{JacketNode, JacketPair};

/// Slices of each layer over which the moments are summed.
const SLICES: u32 = 48;

/// Heat capacity by powers of the warmth, J/K.
type Moments = [f64; 4];

impl LayeredJacket {
    /// The jacket as two nodes; `None` where its moments leave no room for two.
    pub(super) fn pair(&self, solved: &Solved, air_c: f64) -> Option<JacketPair> {
        let hot_c = solved.wall_faces_c.first().copied()?;
        if (hot_c - air_c).abs() < 0.5 {
            return self.pair(&self.solve(air_c + 1.0, air_c), air_c);
        }
        let mut moments = Moments::default();
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
                    let mut weight_j_k = capacity_j_k;
                    for moment in &mut moments {
                        *moment += weight_j_k;
                        weight_j_k *= warmth;
                    }
                }
            }
            inner_m = outer_m;
        }
        quadrature(moments)
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
