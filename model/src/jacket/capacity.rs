//! The heat that a steady jacket holds, told as the capacity of one node.

use std::f64::consts::PI;

use super::faces::Solved;
use super::{JacketShape, LayerKind, LayeredJacket};

/// Density times specific heat of air, J/m3K: a layer of air holds next to nothing.
const AIR_J_M3K: f64 = 1.0e3;
/// How warm a straight edge is, as a share of what the flat profile would give at the same
/// distance from the store: the limit of the ring below for thin walls.
pub(super) const EDGE_WARMTH: f64 = 0.42;
/// By how much the ring of a cylinder is colder than a straight edge, per radius of thickness:
/// warmth 0.42 / (1 + 0.3 t/r) follows an axisymmetric solution from 0.5 to 4 radii.
const RING_COOLING: f64 = 0.3;
/// How warm a corner of a box is, likewise: a mean of about 0.04 against 1/4 (an estimate; corners
/// hold little).
pub(super) const CORNER_WARMTH: f64 = 0.16;

/// How warm the ring of a cylinder is, by the thickness in radii.
pub(super) fn ring_warmth(radii: f64) -> f64 {
    EDGE_WARMTH / (1.0 + RING_COOLING * radii)
}

/// One layer with its faces; `inner_m` and `outer_m` are distances from the store.
struct Shell {
    inner_m: f64,
    outer_m: f64,
    wall_c: [f64; 2],
    flat_c: [f64; 2],
}

impl Shell {
    /// Mean temperature of the layer on the flat profile in a region whose volume grows with the
    /// distance s from the store as `linear` s + `square` s2.
    fn widening_mean_c(&self, linear: f64, square: f64) -> f64 {
        let [hot_c, cold_c] = self.flat_c;
        let moment = |exponent: i32| {
            (self.outer_m.powi(exponent) - self.inner_m.powi(exponent)) / f64::from(exponent)
        };
        let centre_m =
            (linear * moment(3) + square * moment(4)) / (linear * moment(2) + square * moment(3));
        hot_c + (cold_c - hot_c) * (centre_m - self.inner_m) / (self.outer_m - self.inner_m)
    }

    /// Mean temperature of a ring of the side, on the logarithmic profile.
    fn ring_mean_c(&self, radius_m: f64) -> f64 {
        let [hot_c, cold_c] = self.wall_c;
        let ratio = (radius_m + self.outer_m) / (radius_m + self.inner_m);
        let hot_share = 1.0 / (2.0 * libm::log(ratio)) - 1.0 / (ratio * ratio - 1.0);
        cold_c + (hot_c - cold_c) * hot_share
    }

    /// Heat of the layer above the air, as volume times excess temperature, m3K.
    fn excess_m3k(&self, jacket: &LayeredJacket, outer_face_c: f64, air_c: f64) -> f64 {
        let thickness_m = self.outer_m - self.inner_m;
        let flat_mean_c = 0.5 * (self.flat_c[0] + self.flat_c[1]);
        let edge_c = |warmth: f64, linear: f64, square: f64| {
            outer_face_c + warmth * (self.widening_mean_c(linear, square) - outer_face_c)
        };
        let grown = |power: i32| self.outer_m.powi(power) - self.inner_m.powi(power);
        let regions = match jacket.shape {
            JacketShape::Cylinder {
                inner_radius_m: r,
                inner_height_m: h,
            } => {
                let ring_m2 = PI * ((r + self.outer_m).powi(2) - (r + self.inner_m).powi(2));
                let warmth = ring_warmth(jacket.thickness_m() / r);
                let ends_m3 = 2.0 * PI * r * r * thickness_m;
                let whole_m3 = PI
                    * ((r + self.outer_m).powi(2) * (h + 2.0 * self.outer_m)
                        - (r + self.inner_m).powi(2) * (h + 2.0 * self.inner_m));
                [
                    (ring_m2 * h, self.ring_mean_c(r)),
                    (ends_m3, flat_mean_c),
                    (
                        whole_m3 - ring_m2 * h - ends_m3,
                        edge_c(warmth, 8.0 * r, 6.0),
                    ),
                ]
            }
            JacketShape::Box {
                inner_length_m: l,
                inner_width_m: w,
                inner_height_m: h,
            } => [
                (2.0 * (l * w + w * h + h * l) * thickness_m, flat_mean_c),
                (4.0 * (l + w + h) * grown(2), edge_c(EDGE_WARMTH, 1.0, 0.0)),
                (8.0 * grown(3), edge_c(CORNER_WARMTH, 0.0, 1.0)),
            ],
        };
        regions
            .iter()
            .map(|(volume_m3, mean_c)| volume_m3 * (mean_c - air_c))
            .sum()
    }
}

impl LayeredJacket {
    /// Twice the heat held above the air's temperature, per kelvin between store and air, J/K.
    ///
    /// Store and air at one temperature hold no heat to weigh by; the same formulas with a store a
    /// kelvin warmer give the limit.
    pub(super) fn capacity_j_k(&self, solved: &Solved, air_c: f64) -> f64 {
        let hot_c = solved.wall_faces_c.first().copied().unwrap_or(air_c);
        if (hot_c - air_c).abs() < 0.5 {
            return self.capacity_j_k(&self.solve(air_c + 1.0, air_c), air_c);
        }
        let outer_face_c = solved.wall_faces_c.last().copied().unwrap_or(air_c);
        let mut inner_m = 0.0;
        let mut heat_j = 0.0;
        let faces = solved
            .wall_faces_c
            .windows(2)
            .zip(solved.flat_faces_c.windows(2));
        for (layer, (wall, flat)) in self.layers.iter().zip(faces) {
            let outer_m = inner_m + layer.thickness_m;
            if let ([wall_hot, wall_cold], [flat_hot, flat_cold]) = (wall, flat) {
                let shell = Shell {
                    inner_m,
                    outer_m,
                    wall_c: [*wall_hot, *wall_cold],
                    flat_c: [*flat_hot, *flat_cold],
                };
                heat_j += layer.kind.capacity_j_m3k() * shell.excess_m3k(self, outer_face_c, air_c);
            }
            inner_m = outer_m;
        }
        2.0 * heat_j / (hot_c - air_c)
    }
}

impl LayerKind {
    /// Density times specific heat, J/m3K.
    pub(super) fn capacity_j_m3k(self) -> f64 {
        match self {
            Self::Insulation { material } => {
                material.props().density_kg_m3.value * material.props().cp_j_kgk.value
            }
            Self::StillAir { .. } => AIR_J_M3K,
        }
    }
}
