//! The true jacket of a round cooker.

use std::error::Error;
use std::f64::consts::PI;

use model::jacket::{JacketShape, LayerKind, LayeredJacket, OUTER_FILM_W_M2K};

use super::build::drawn;
use super::random::Random;
use super::shell::{Jacket, cut, edges_m};

/// Shells, and by how much each is thicker than the one before.
const JACKET_SHELLS: usize = 16;
const JACKET_GROWTH: f64 = 1.06;
/// Rise of the heat capacity of insulation, as that of glass and stone. From memory. \[1/K\]
const JACKET_RISE_K: f64 = 6e-4;

/// The jacket's shells and its shape factor. \[m\]
pub(crate) fn jacket(
    layered: &LayeredJacket,
    width: f64,
    random: &mut Random,
) -> Result<(Jacket, f64), Box<dyn Error>> {
    let JacketShape::Cylinder {
        inner_radius_m,
        inner_height_m,
    } = layered.shape
    else {
        return Err("a truth is drawn from a round jacket".into());
    };
    let Some(LayerKind::Insulation { material }) = layered.layers.first().map(|layer| layer.kind)
    else {
        return Err("a truth is drawn from a jacket of one insulation".into());
    };
    let props = material.props();
    let thickness_m = layered
        .layers
        .iter()
        .map(|layer| layer.thickness_m)
        .sum::<f64>()
        * random.factor(0.05 * width);
    let spread = props
        .conductivity
        .last()
        .map_or(0.15, |point| point.conductivity_w_mk.spread_share());
    let factor = random.factor(width * spread);
    let capacity_j_m3k = props.density_kg_m3.value
        * random.factor(width * props.density_kg_m3.spread_share())
        * props.cp_j_kgk.value
        * random.factor(width * props.cp_j_kgk.spread_share());
    let (area_m2, factor_m) = round_jacket(inner_radius_m, inner_height_m, thickness_m);
    let edges = edges_m(thickness_m, JACKET_SHELLS, JACKET_GROWTH);
    let film = drawn(random, OUTER_FILM_W_M2K, width);
    let jacket = Jacket {
        shells: cut(&area_m2, &edges),
        // The tables give it for use at some 100 °C.
        capacity_j_m3k: capacity_j_m3k / (1.0 + 100.0 * JACKET_RISE_K),
        capacity_rise_k: JACKET_RISE_K,
        conductivity: props
            .conductivity
            .iter()
            .map(|point| (point.mean_c, point.conductivity_w_mk.value * factor))
            .collect(),
        film_w_k: film * area_m2(thickness_m),
    };
    Ok((jacket, factor_m))
}

/// Area of a round jacket at each distance from the store, and its shape factor.
///
/// Side, two ends and edges. The edges widen evenly from the store, as much as gives the shape factor
/// of the whole: Incropera et al., table 4.1, case 8, with the edge of a ring a fifth of the
/// thickness outside the inner radius.
pub(crate) fn round_jacket(
    radius_m: f64,
    height_m: f64,
    thickness_m: f64,
) -> (impl Fn(f64) -> f64, f64) {
    let ring_m = 2.0 * PI * (radius_m + 0.2 * thickness_m.min(2.0 * radius_m));
    let factor_m = 2.0 * PI * height_m / (1.0 + thickness_m / radius_m).ln()
        + 2.0 * PI * radius_m * radius_m / thickness_m
        + 0.54 * 2.0 * ring_m;
    let area = move |widening: f64, at_m: f64| {
        2.0 * PI * (radius_m + at_m) * height_m + 2.0 * PI * radius_m * radius_m + widening * at_m
    };
    let resistance = |widening: f64| {
        let parts = 400;
        let step_m = thickness_m / f64::from(parts);
        (0..parts)
            .map(|part| step_m / area(widening, (f64::from(part) + 0.5) * step_m))
            .sum::<f64>()
    };
    let mut bounds = (0.0, 100.0);
    for _ in 0..50 {
        let middle = 0.5 * (bounds.0 + bounds.1);
        if resistance(middle) < 1.0 / factor_m {
            bounds.1 = middle;
        } else {
            bounds.0 = middle;
        }
    }
    let widening = bounds.0;
    (move |at_m: f64| area(widening, at_m), factor_m)
}
