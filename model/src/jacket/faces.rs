//! Temperatures through the layers of a jacket, with conductivities that depend on them.

use std::f64::consts::PI;

use super::{JacketLayer, JacketShape, LayerKind, LayeredJacket, OUTER_FILM_W_M2K};
use crate::air;

/// Rounds of the iteration; each one brings the temperatures some ten times nearer.
const MOST_ROUNDS: usize = 60;
/// Where the iteration stops, K.
const CLOSE_ENOUGH_K: f64 = 1e-7;

/// The steady jacket.
#[derive(Debug, Clone)]
pub(super) struct Solved {
    /// Conductivity of each layer at its mean temperature, W/mK.
    pub(super) conductivities_w_mk: Vec<f64>,
    /// Faces of the side of a cylinder, or of the walls of a box, from the store outwards, degC.
    pub(super) wall_faces_c: Vec<f64>,
    /// Faces of the flat ends, or again of the walls of a box, degC.
    pub(super) flat_faces_c: Vec<f64>,
}

impl JacketLayer {
    /// Conductivity between two faces, W/mK; of an air layer that with which a solid would let as
    /// much through.
    fn conductivity_w_mk(&self, hot_c: f64, cold_c: f64) -> f64 {
        match self.kind {
            LayerKind::Insulation { material } => {
                material.props().conductivity_w_mk(0.5 * (hot_c + cold_c))
            }
            LayerKind::StillAir {
                hot_emissivity,
                cold_emissivity,
            } => {
                let gap_m = self.thickness_m;
                gap_m * air::layer_w_m2k(gap_m, hot_c, cold_c, hot_emissivity, cold_emissivity)
            }
        }
    }
}

impl LayeredJacket {
    /// Resistance of each layer as a flat wall, m2K/W.
    pub(super) fn flat_resistances(
        &self,
        conductivities_w_mk: &[f64],
    ) -> impl Iterator<Item = f64> {
        self.layers
            .iter()
            .zip(conductivities_w_mk)
            .map(|(layer, k)| layer.thickness_m / k)
    }

    /// Resistance of each layer as the side of a cylinder a metre long, mK/W; as a flat wall for a
    /// box.
    pub(super) fn side_resistances(
        &self,
        conductivities_w_mk: &[f64],
    ) -> impl Iterator<Item = f64> {
        let JacketShape::Cylinder { inner_radius_m, .. } = self.shape else {
            return self
                .flat_resistances(conductivities_w_mk)
                .collect::<Vec<_>>()
                .into_iter();
        };
        let mut radius_m = inner_radius_m;
        self.layers
            .iter()
            .zip(conductivities_w_mk)
            .map(|(layer, k)| {
                let inside_m = radius_m;
                radius_m += layer.thickness_m;
                libm::log(radius_m / inside_m) / (2.0 * PI * k)
            })
            .collect::<Vec<_>>()
            .into_iter()
    }

    /// Solves for the faces by turns: conductivities from faces, faces from conductivities.
    pub(super) fn solve(&self, hot_c: f64, air_c: f64) -> Solved {
        let cold_share = vec![1.0; self.layers.len()];
        let mut faces_c = spread(hot_c, air_c, cold_share.into_iter());
        for _ in 0..MOST_ROUNDS {
            let next_c = self.faces_for(&self.conductivities(&faces_c), hot_c, air_c);
            let moved_k = faces_c
                .iter()
                .zip(&next_c)
                .map(|(a, b)| (a - b).abs())
                .fold(0.0, f64::max);
            faces_c = next_c;
            if moved_k < CLOSE_ENOUGH_K {
                break;
            }
        }
        let conductivities_w_mk = self.conductivities(&faces_c);
        let outer_c = faces_c.last().copied().unwrap_or(air_c);
        let flat_faces_c = spread(hot_c, outer_c, self.flat_resistances(&conductivities_w_mk));
        Solved {
            conductivities_w_mk,
            wall_faces_c: faces_c,
            flat_faces_c,
        }
    }

    fn conductivities(&self, faces_c: &[f64]) -> Vec<f64> {
        self.layers
            .iter()
            .zip(faces_c.windows(2))
            .map(|(layer, faces)| match faces {
                [hot, cold] => layer.conductivity_w_mk(*hot, *cold),
                _ => f64::NAN,
            })
            .collect()
    }

    fn faces_for(&self, conductivities_w_mk: &[f64], hot_c: f64, air_c: f64) -> Vec<f64> {
        let heat_w = self.conduction_w_k(conductivities_w_mk) * (hot_c - air_c);
        let outer_c = air_c + heat_w / (OUTER_FILM_W_M2K.value * self.outer_area_m2());
        spread(hot_c, outer_c, self.side_resistances(conductivities_w_mk))
    }
}

/// Shares the fall from `hot_c` to `cold_c` among resistances; gives the faces between them.
fn spread(hot_c: f64, cold_c: f64, resistances: impl Iterator<Item = f64>) -> Vec<f64> {
    let resistances: Vec<f64> = resistances.collect();
    let whole: f64 = resistances.iter().sum();
    let mut passed = 0.0;
    let mut faces_c = vec![hot_c];
    for resistance in resistances {
        passed += resistance;
        faces_c.push(hot_c + (cold_c - hot_c) * passed / whole);
    }
    faces_c
}
