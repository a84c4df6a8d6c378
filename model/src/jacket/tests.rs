use proptest::prelude::*;

use super::*;
use crate::conduction::cylinder_side_w_k;

pub(super) fn cylinder(
    material: Insulation,
    inner_radius_m: f64,
    inner_height_m: f64,
    thickness_m: f64,
) -> LayeredJacket {
    LayeredJacket {
        shape: JacketShape::Cylinder {
            inner_radius_m,
            inner_height_m,
        },
        layers: vec![JacketLayer {
            kind: LayerKind::Insulation { material },
            thickness_m,
        }],
        lid: LidFit::Plug,
        through_rods: 0,
    }
}

fn thermal(jacket: &LayeredJacket, hot_c: f64, air_c: f64) -> JacketThermal {
    Jacket::Layers(jacket.clone())
        .thermal(hot_c, air_c)
        .expect("it is in range")
}

/// A tall cylinder is the textbook's pipe: the side and the film alone, with the conductivity at
/// the mean of hot and outer face.
#[test]
fn tall_cylinder_is_a_pipe() {
    let jacket = cylinder(Insulation::Perlite, 0.1, 100.0, 0.1);
    let faces_c = jacket.faces_c(250.0, 20.0).expect("it is in range");
    let mean_c = 0.5 * (faces_c[0] + faces_c[1]);
    let conductivity = Insulation::Perlite.props().conductivity_w_mk(mean_c);
    let side = cylinder_side_w_k(conductivity, 100.0, 0.1, 0.2);
    let film = 10.0 * 2.0 * PI * 0.2 * 100.0;
    let expect = in_series(&[side, film]) * LidFit::Plug.loss_factor().value;
    let actual = thermal(&jacket, 250.0, 20.0).loss_w_k;
    assert!((actual / expect - 1.0).abs() < 0.01, "{actual} {expect}");
    let outer_c = 20.0 + 230.0 * in_series(&[side, film]) / film;
    assert!((faces_c[1] - outer_c).abs() < 0.5);
}

/// Incropera, table 4.1: walls, edges and corners of a cubical oven of inner side D and thickness L
/// let S = 6 D2/L + 12 x 0.54 D + 8 x 0.15 L through.
#[test]
fn cube_has_the_shape_factor_of_the_textbook() {
    let jacket = LayeredJacket {
        shape: JacketShape::Box {
            inner_length_m: 0.3,
            inner_width_m: 0.3,
            inner_height_m: 0.3,
        },
        layers: vec![JacketLayer {
            kind: LayerKind::Insulation {
                material: Insulation::RockWool,
            },
            thickness_m: 0.1,
        }],
        lid: LidFit::Plug,
        through_rods: 0,
    };
    let ways = jacket.ways(&[1.0]);
    let expect = 6.0 * 0.09 / 0.1 + 12.0 * 0.54 * 0.3 + 8.0 * 0.15 * 0.1;
    assert!((ways.walls_w_k + ways.edges_w_k - expect).abs() < 1e-9);
}

/// Steady heat through a cylindrical jacket with cold outside, and the heat held in it, by finite
/// differences on a fine grid in radius and height: an independent solution of the same plate.
fn axisymmetric(radius_cells: usize, half_height_cells: usize, wall_cells: usize) -> (f64, f64) {
    let (n_r, n_z) = (radius_cells + wall_cells, half_height_cells + wall_cells);
    let is_store = |i: usize, j: usize| i < radius_cells && j < half_height_cells;
    let mut t = vec![vec![0.0_f64; n_z]; n_r];
    for (i, column) in t.iter_mut().enumerate() {
        for (j, cell) in column.iter_mut().enumerate() {
            *cell = if is_store(i, j) { 1.0 } else { 0.0 };
        }
    }
    // Conductance from a cell to its four sides, in units of conductivity times cell size over
    // 2 pi; a fixed face is half a cell away.
    let sides = |i: usize, j: usize, t: &[Vec<f64>]| -> [(f64, f64); 4] {
        let at = |area: f64, to: Option<(usize, usize)>| match to {
            None => (0.0, 0.0),
            Some((a, b)) if a == n_r || b == n_z => (2.0 * area, 0.0),
            Some((a, b)) if is_store(a, b) => (2.0 * area, 1.0),
            Some((a, b)) => (area, t[a][b]),
        };
        let ring = i as f64 + 0.5;
        [
            at(i as f64 + 1.0, Some((i + 1, j))),
            at(i as f64, i.checked_sub(1).map(|inner| (inner, j))),
            at(ring, Some((i, j + 1))),
            at(ring, j.checked_sub(1).map(|lower| (i, lower))),
        ]
    };
    for _ in 0..6000 {
        for i in 0..n_r {
            for j in 0..n_z {
                if is_store(i, j) {
                    continue;
                }
                let around = sides(i, j, &t);
                let whole: f64 = around.iter().map(|(g, _)| g).sum();
                let pulled: f64 = around.iter().map(|(g, other)| g * other).sum();
                t[i][j] += 1.9 * (pulled / whole - t[i][j]);
            }
        }
    }
    let (mut out, mut held) = (0.0, 0.0);
    for i in 0..n_r {
        for j in 0..n_z {
            if is_store(i, j) {
                continue;
            }
            held += t[i][j] * (i as f64 + 0.5);
            for (idx, (g, _)) in sides(i, j, &t).iter().enumerate() {
                let outward = (idx == 0 && i + 1 == n_r) || (idx == 2 && j + 1 == n_z);
                out += if outward { g * t[i][j] } else { 0.0 };
            }
        }
    }
    // Two halves.
    (2.0 * 2.0 * PI * out, 2.0 * 2.0 * PI * held)
}

/// Edges of a cylinder: shape factor and heat held, against the finite differences.
#[test]
fn edges_of_a_cylinder_against_finite_differences() {
    // Last, the thinnest store in the thickest jacket that anybody builds, where the shape factors
    // are used beyond the range for which they were published.
    for (radius_cells, half_height_cells, wall_cells, tolerance) in [
        (20, 15, 20, 0.03),
        (20, 15, 10, 0.03),
        (20, 10, 30, 0.03),
        (30, 10, 20, 0.03),
        (10, 5, 40, 0.1),
    ] {
        let cell_m = 0.005;
        let (factor_cells, held_cells) = axisymmetric(radius_cells, half_height_cells, wall_cells);
        let jacket = cylinder(
            Insulation::Perlite,
            radius_cells as f64 * cell_m,
            2.0 * half_height_cells as f64 * cell_m,
            wall_cells as f64 * cell_m,
        );
        let ways = jacket.ways(&[1.0]);
        let ratio = (ways.walls_w_k + ways.edges_w_k) / (factor_cells * cell_m);
        assert!(
            (ratio - 1.0).abs() < tolerance,
            "{radius_cells} {wall_cells}: {ratio}"
        );

        let solved = faces::Solved {
            conductivities_w_mk: vec![1.0],
            wall_faces_c: vec![1.0, 0.0],
            flat_faces_c: vec![1.0, 0.0],
        };
        let perlite = Insulation::Perlite.props();
        let volumetric = perlite.density_kg_m3.value * perlite.cp_j_kgk.value;
        let held = jacket.capacity_j_k(&solved, 0.0) / (2.0 * volumetric);
        let ratio = held / (held_cells * cell_m.powi(3));
        assert!(
            (ratio - 1.0).abs() < 2.0 * tolerance,
            "{radius_cells} {wall_cells}: {ratio}"
        );
    }
}

/// Each 6 mm steel rod through 100 mm carries 0.013 to 0.015 W/K.
#[test]
fn rods_add_their_conductance() {
    let plain = cylinder(Insulation::Perlite, 0.1, 0.15, 0.1);
    let bolted = LayeredJacket {
        through_rods: 4,
        ..plain.clone()
    };
    let added = thermal(&bolted, 200.0, 20.0).loss_w_k - thermal(&plain, 200.0, 20.0).loss_w_k;
    assert!((added / 4.0 - 0.0144).abs() < 0.001, "{added}");
}

/// A 2 L pot wrapped all round in 50 mm of k 0.045 loses about 0.17 W/K (common practice, by the
/// same formulas with a film).
#[test]
fn a_known_box_is_met() {
    let jacket = cylinder(Insulation::RockWool, 0.1, 0.12, 0.05);
    let loss = thermal(&jacket, 90.0, 25.0).loss_w_k / LidFit::Plug.loss_factor().value;
    assert!((0.14..0.20).contains(&loss), "{loss}");
}

#[test]
fn wrong_sizes_are_named() {
    let mut jacket = cylinder(Insulation::Perlite, 0.1, 0.15, 0.1);
    jacket.layers[0].thickness_m = f64::NAN;
    let refused = jacket.faces_c(200.0, 20.0).expect_err("not a number");
    assert_eq!(refused.quantity, Quantity::LayerThickness);
    jacket.layers.clear();
    let refused = Jacket::Layers(jacket)
        .thermal(200.0, 20.0)
        .expect_err("no layer");
    assert_eq!(refused.quantity, Quantity::LayerCount);
    let measured = Jacket::Measured {
        loss_w_k: -1.0,
        capacity_j_k: 2000.0,
    };
    let refused = measured.thermal(200.0, 20.0).expect_err("negative");
    assert_eq!(refused.quantity, Quantity::MeasuredLoss);
}

#[test]
fn a_measured_jacket_is_taken_as_it_is() {
    let measured = Jacket::Measured {
        loss_w_k: 0.31,
        capacity_j_k: 2000.0,
    };
    let thermal = measured.thermal(200.0, 20.0).expect("it is in range");
    assert!((thermal.loss_w_k - 0.31).abs() < 1e-12);
    assert_eq!(thermal.outer_face_c, None);
}

#[test]
fn a_jacket_is_saved_and_read_back() {
    let layered = Jacket::Layers(LayeredJacket {
        layers: vec![
            JacketLayer {
                kind: LayerKind::StillAir {
                    hot_emissivity: 0.05,
                    cold_emissivity: 0.9,
                },
                thickness_m: 0.01,
            },
            JacketLayer {
                kind: LayerKind::Insulation {
                    material: Insulation::RockWool,
                },
                thickness_m: 0.08,
            },
        ],
        ..cylinder(Insulation::Perlite, 0.1, 0.15, 0.1)
    });
    let text = serde_json::to_string(&layered).expect("it is writable");
    assert!(text.contains(r#""known_by":"layers""#), "{text}");
    assert_eq!(
        serde_json::from_str::<Jacket>(&text).expect("it is readable"),
        layered
    );
}

proptest! {
    #[test]
    fn loss_falls_with_thickness(
        material_idx in 0..Insulation::ALL.len(),
        radius_m in 0.05..0.3_f64,
        height_m in 0.05..0.4_f64,
        thickness_m in 0.02..0.3_f64,
        hot_c in 60.0..350.0_f64,
    ) {
        let material = Insulation::ALL[material_idx];
        let thin = thermal(&cylinder(material, radius_m, height_m, thickness_m), hot_c, 20.0);
        let thick =
            thermal(&cylinder(material, radius_m, height_m, 1.2 * thickness_m), hot_c, 20.0);
        prop_assert!(thick.loss_w_k < thin.loss_w_k);
        prop_assert!(thick.outer_face_c < thin.outer_face_c);
        prop_assert!(thin.capacity_j_k < thick.capacity_j_k);
    }

    #[test]
    fn a_layer_split_in_two_is_the_same_layer(
        radius_m in 0.05..0.3_f64,
        thickness_m in 0.02..0.3_f64,
        share in 0.2..0.8_f64,
        is_box in any::<bool>(),
    ) {
        // The conductivity of a split layer follows its own temperatures; a store hardly warmer
        // than the air leaves only the shape.
        let mut whole = cylinder(Insulation::Perlite, radius_m, 0.2, thickness_m);
        if is_box {
            whole.shape = JacketShape::Box {
                inner_length_m: radius_m, inner_width_m: 0.2, inner_height_m: 0.15,
            };
        }
        let mut split = whole.clone();
        let layer = whole.layers[0];
        split.layers = [share, 1.0 - share]
            .map(|part| JacketLayer { thickness_m: part * thickness_m, ..layer })
            .to_vec();
        let (one, two) = (thermal(&whole, 21.0, 20.0), thermal(&split, 21.0, 20.0));
        prop_assert!((one.loss_w_k / two.loss_w_k - 1.0).abs() < 1e-3);
        prop_assert!((one.capacity_j_k / two.capacity_j_k - 1.0).abs() < 5e-3);
    }

    #[test]
    fn faces_fall_from_store_to_air(
        inner_idx in 0..Insulation::ALL.len(),
        outer_idx in 0..Insulation::ALL.len(),
        hot_c in 60.0..350.0_f64,
        gap_m in 0.004..0.03_f64,
    ) {
        let mut jacket = cylinder(Insulation::ALL[inner_idx], 0.12, 0.2, 0.05);
        jacket.layers.push(JacketLayer {
            kind: LayerKind::StillAir { hot_emissivity: 0.9, cold_emissivity: 0.1 },
            thickness_m: gap_m,
        });
        jacket.layers.push(JacketLayer {
            kind: LayerKind::Insulation { material: Insulation::ALL[outer_idx] },
            thickness_m: 0.05,
        });
        let faces_c = jacket.faces_c(hot_c, 20.0).expect("it is in range");
        prop_assert_eq!(faces_c.len(), 4);
        prop_assert!(faces_c.windows(2).all(|pair| pair[1] < pair[0]));
        prop_assert!(20.0 < faces_c[3]);
    }
}
