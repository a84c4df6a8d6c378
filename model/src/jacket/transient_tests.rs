//! One node and two against the same jacket cut into eighty, through a day of charging and a night.

use super::tests::cylinder;
use super::*;

/// What a night of fourteen hours comes to.
#[derive(Debug)]
struct Night {
    /// Heat that left the store.
    from_store_j: f64,
    /// Heat that reached the air.
    to_air_j: f64,
    /// The store in the morning.
    store_c: f64,
}

const CHARGE_S: f64 = 6.0 * 3600.0;
const NIGHT_S: f64 = 14.0 * 3600.0;
const AIR_C: f64 = 20.0;

/// Explicit finite volumes on one metre of a cylinder.
fn fine(jacket: &LayeredJacket, store_j_k: f64, power_w: f64, conductivity_w_mk: f64) -> Night {
    const CELLS: usize = 80;
    let JacketShape::Cylinder { inner_radius_m, .. } = jacket.shape else {
        panic!("the test is made for a cylinder")
    };
    let thickness_m = jacket.thickness_m();
    let LayerKind::Insulation { material } = jacket.layers[0].kind else {
        panic!("the test is made for an insulation")
    };
    let volumetric = material.props().density_kg_m3.value * material.props().cp_j_kgk.value;
    let step_m = thickness_m / CELLS as f64;
    let edge = |idx: usize| inner_radius_m + idx as f64 * step_m;
    let middle = |idx: usize| edge(idx) + 0.5 * step_m;
    let capacity: Vec<f64> = (0..CELLS)
        .map(|idx| volumetric * PI * (edge(idx + 1).powi(2) - edge(idx).powi(2)))
        .collect();
    let between =
        |inside: f64, outside: f64| 2.0 * PI * conductivity_w_mk / (outside / inside).ln();
    let film = 10.0 * 2.0 * PI * edge(CELLS);
    let mut conductance = vec![between(edge(0), middle(0))];
    conductance.extend((1..CELLS).map(|idx| between(middle(idx - 1), middle(idx))));
    conductance.push(in_series(&[between(middle(CELLS - 1), edge(CELLS)), film]));

    let dt_s = 0.3 * step_m * step_m * volumetric / conductivity_w_mk;
    let mut store_c = AIR_C;
    let mut layer_c = vec![AIR_C; CELLS];
    let mut night = Night {
        from_store_j: 0.0,
        to_air_j: 0.0,
        store_c: AIR_C,
    };
    let mut time_s = 0.0;
    while time_s < CHARGE_S + NIGHT_S {
        let mut flow = Vec::with_capacity(CELLS + 1);
        flow.push(conductance[0] * (store_c - layer_c[0]));
        flow.extend((1..CELLS).map(|idx| conductance[idx] * (layer_c[idx - 1] - layer_c[idx])));
        flow.push(conductance[CELLS] * (layer_c[CELLS - 1] - AIR_C));
        let heater_w = if time_s < CHARGE_S { power_w } else { 0.0 };
        if CHARGE_S <= time_s {
            night.from_store_j += flow[0] * dt_s;
            night.to_air_j += flow[CELLS] * dt_s;
        }
        store_c += (heater_w - flow[0]) * dt_s / store_j_k;
        for idx in 0..CELLS {
            layer_c[idx] += (flow[idx] - flow[idx + 1]) * dt_s / capacity[idx];
        }
        time_s += dt_s;
    }
    Night { store_c, ..night }
}

/// The same through nodes of a jacket, from the store outwards: warmth and J/K.
fn coarse(loss_w_k: f64, nodes: &[(f64, f64)], store_j_k: f64, power_w: f64) -> Night {
    let mut warmth = vec![1.0];
    warmth.extend(nodes.iter().map(|node| node.0));
    warmth.push(0.0);
    let conductance: Vec<f64> = warmth
        .windows(2)
        .map(|pair| loss_w_k / (pair[0] - pair[1]))
        .collect();
    let mut night = Night {
        from_store_j: 0.0,
        to_air_j: 0.0,
        store_c: AIR_C,
    };
    // Store, nodes, air.
    let mut at_c = vec![AIR_C; nodes.len() + 2];
    let dt_s = 1.0;
    let mut time_s = 0.0;
    while time_s < CHARGE_S + NIGHT_S {
        let flow: Vec<f64> = conductance
            .iter()
            .zip(at_c.windows(2))
            .map(|(g_w_k, pair)| g_w_k * (pair[0] - pair[1]))
            .collect();
        let heater_w = if time_s < CHARGE_S { power_w } else { 0.0 };
        if CHARGE_S <= time_s {
            night.from_store_j += flow[0] * dt_s;
            night.to_air_j += flow[nodes.len()] * dt_s;
        }
        at_c[0] += (heater_w - flow[0]) * dt_s / store_j_k;
        for (idx, node) in nodes.iter().enumerate() {
            at_c[idx + 1] += (flow[idx] - flow[idx + 1]) * dt_s / node.1;
        }
        time_s += dt_s;
    }
    night.store_c = at_c[0];
    night
}

/// Heat out of the store and into the air over a night within 3 % and the store in the morning
/// within 0.5 K, from a thin jacket to one of three radii. One node half-way keeps that only for heat
/// that reaches the air, and up to one radius.
#[test]
fn one_node_and_two_against_eighty() {
    let cases = [
        (Insulation::Perlite, 0.1, 0.1, 30e3),
        (Insulation::Perlite, 0.1, 0.05, 12e3),
        (Insulation::RockWool, 0.08, 0.12, 20e3),
        (Insulation::Perlite, 0.1, 0.15, 30e3),
        (Insulation::Perlite, 0.1, 0.2, 15e3),
        (Insulation::Perlite, 0.1, 0.2, 60e3),
        (Insulation::RockWool, 0.1, 0.2, 30e3),
        (Insulation::Perlite, 0.1, 0.3, 30e3),
        (Insulation::Perlite, 0.1, 0.3, 60e3),
        (Insulation::RockWool, 0.1, 0.3, 30e3),
        (Insulation::RockWool, 0.05, 0.2, 10e3),
        (Insulation::CalciumSilicate, 0.1, 0.2, 30e3),
        (Insulation::AerogelBlanket, 0.1, 0.12, 30e3),
        (Insulation::AerogelBlanket, 0.12, 0.03, 20e3),
    ];
    for (material, radius_m, thickness_m, store_j_k) in cases {
        // So tall that the ends do not count; per metre.
        let height_m = 100.0;
        let jacket = cylinder(material, radius_m, height_m, thickness_m);
        let solved = jacket.solve(200.0, AIR_C);
        let conductivity_w_mk = solved.conductivities_w_mk[0];
        let side = crate::conduction::cylinder_side_w_k(
            conductivity_w_mk,
            1.0,
            radius_m,
            radius_m + thickness_m,
        );
        let film = 10.0 * 2.0 * PI * (radius_m + thickness_m);
        let loss_w_k = in_series(&[side, film]);
        let capacity_j_k = jacket.capacity_j_k(&solved, AIR_C) / height_m;
        let whole_w_k = jacket.conduction_w_k(&solved.conductivities_w_mk);
        let pair = jacket.pair(&solved, AIR_C, whole_w_k).unwrap();
        let two = [pair.inner, pair.outer].map(|node| (node.warmth, node.capacity_j_k / height_m));
        // Both hold the same heat in the steady state.
        let held = two.iter().map(|node| node.0 * node.1).sum::<f64>();
        assert!((2.0 * held / capacity_j_k - 1.0).abs() < 2e-3);
        let power_w = 200.0 * store_j_k / CHARGE_S;
        let expect = fine(&jacket, store_j_k, power_w, conductivity_w_mk);
        let radii = thickness_m / radius_m;
        let case = format!("{material:?} {radii:.2} radii");
        let off = |nodes: &[(f64, f64)]| {
            let actual = coarse(loss_w_k, nodes, store_j_k, power_w);
            let [store, air] = [
                actual.from_store_j / expect.from_store_j - 1.0,
                actual.to_air_j / expect.to_air_j - 1.0,
            ];
            let off_k = actual.store_c - expect.store_c;
            let count = nodes.len();
            println!("{case}, {count}: store {store:+.4}, air {air:+.4}, {off_k:+.2} K");
            (store.abs(), air.abs(), off_k.abs())
        };
        let (_, air, _) = off(&[(0.5, capacity_j_k)]);
        assert!(1.01 < radii || air < 0.03, "{case}: {air}");
        let (store, air, off_k) = off(&two);
        assert!(store < 0.03 && air < 0.03, "{case}: {store} {air}");
        assert!(off_k < 0.5, "{case}: {off_k} K");
    }
}
