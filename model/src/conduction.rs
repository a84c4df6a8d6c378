//! Steady conduction through simple bodies, as conductances in W/K.
//!
//! Shape factors: Incropera et al., Fundamentals of Heat and Mass Transfer, 3.3 to 3.4 and table 4.1.

use std::f64::consts::PI;

/// Flat wall: conductivity in W/mK, area in m2, thickness in m.
#[must_use]
pub fn wall_w_k(conductivity_w_mk: f64, area_m2: f64, thickness_m: f64) -> f64 {
    conductivity_w_mk * area_m2 / thickness_m
}

/// Side of a hollow cylinder, from the inner to the outer radius.
#[must_use]
pub fn cylinder_side_w_k(
    conductivity_w_mk: f64,
    length_m: f64,
    inner_radius_m: f64,
    outer_radius_m: f64,
) -> f64 {
    2.0 * PI * conductivity_w_mk * length_m / libm::log(outer_radius_m / inner_radius_m)
}

/// Hollow sphere, from the inner to the outer radius.
#[must_use]
pub fn sphere_w_k(conductivity_w_mk: f64, inner_radius_m: f64, outer_radius_m: f64) -> f64 {
    4.0 * PI * conductivity_w_mk / (1.0 / inner_radius_m - 1.0 / outer_radius_m)
}

/// Edge where two walls of one thickness meet, beside the walls themselves: 0.54 k L, for an edge
/// longer than a fifth of the thickness (Incropera, table 4.1, case 8).
#[must_use]
pub fn edge_w_k(conductivity_w_mk: f64, inner_edge_length_m: f64) -> f64 {
    0.54 * conductivity_w_mk * inner_edge_length_m
}

/// Corner where three walls of one thickness meet: 0.15 k t (Incropera, table 4.1, case 9).
#[must_use]
pub fn corner_w_k(conductivity_w_mk: f64, thickness_m: f64) -> f64 {
    0.15 * conductivity_w_mk * thickness_m
}

/// Conductances one behind the other; infinite for none.
#[must_use]
pub fn in_series(conductances: &[f64]) -> f64 {
    1.0 / conductances
        .iter()
        .map(|conductance| 1.0 / conductance)
        .sum::<f64>()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Cengel, Heat and Mass Transfer, critical radius of insulation (example of a wire with a
    /// plastic cover): 3 mm wire, 2 mm cover of 0.15 W/mK, 5 m, 12 W/m2K, 80 W, air 30 degC.
    #[test]
    fn covered_wire() {
        let interface_c = |outer_m: f64| {
            let film = 12.0 * 2.0 * PI * outer_m * 5.0;
            30.0 + 80.0 / in_series(&[cylinder_side_w_k(0.15, 5.0, 0.0015, outer_m), film])
        };
        assert!(
            (interface_c(0.0035) - 105.0).abs() < 0.2,
            "{}",
            interface_c(0.0035)
        );
        assert!(
            (interface_c(0.0055) - 90.6).abs() < 0.2,
            "{}",
            interface_c(0.0055)
        );
        // The critical radius k/h = 12.5 mm gives the coolest wire.
        assert!(interface_c(0.0125) < interface_c(0.0120));
        assert!(interface_c(0.0125) < interface_c(0.0130));
    }

    /// Cengel, Heat and Mass Transfer, insulated steam pipe: 5/5.5 cm, k 80; 3 cm of k 0.05;
    /// steam 320 degC with 60 W/m2K, air 5 degC with 18 W/m2K; per metre.
    #[test]
    fn insulated_steam_pipe() {
        let pipe = cylinder_side_w_k(80.0, 1.0, 0.025, 0.0275);
        let cover = cylinder_side_w_k(0.05, 1.0, 0.0275, 0.0575);
        let inside = 60.0 * 2.0 * PI * 0.025;
        let outside = 18.0 * 2.0 * PI * 0.0575;
        let loss_w = 315.0 * in_series(&[inside, pipe, cover, outside]);
        assert!((loss_w / 120.8 - 1.0).abs() < 0.003, "{loss_w}");
        assert!((loss_w / pipe - 0.023).abs() < 0.002);
        assert!((loss_w / cover - 283.6).abs() < 0.8);
    }

    /// Incropera, spherical vessel for liquid nitrogen: 0.5 m, 25 mm of k 0.0017 W/mK, 20 W/m2K
    /// outside, 77 K in 300 K.
    #[test]
    fn cold_sphere() {
        let shell = sphere_w_k(0.0017, 0.25, 0.275);
        let film = 20.0 * 4.0 * PI * 0.275 * 0.275;
        let gain_w = 223.0 * in_series(&[shell, film]);
        assert!((gain_w / 13.06 - 1.0).abs() < 0.003, "{gain_w}");
    }

    /// A hot plate under a pan (textbook problem on enamelled cast iron, probably Eastop and
    /// McConkey): 25 mm of k 50, 0.8 mm of k 1.05, boiling with 5500 W/m2K, 350 to 95 degC; and
    /// with an air film of 35 m2K/kW more.
    #[test]
    fn hot_plate_with_and_without_air() {
        let plate = wall_w_k(50.0, 1.0, 0.025);
        let enamel = wall_w_k(1.05, 1.0, 0.0008);
        let tight = 255.0 * in_series(&[plate, enamel, 5500.0]);
        let lifted = 255.0 * in_series(&[plate, enamel, 5500.0, 1.0 / 0.035]);
        assert!((tight / 176_600.0 - 1.0).abs() < 0.001, "{tight}");
        assert!((lifted / 7_000.0 - 1.0).abs() < 0.001, "{lifted}");
    }

    proptest! {
        #[test]
        fn a_thin_cylinder_is_a_wall(radius_m in 0.05..1.0_f64, conductivity in 0.02..5.0_f64) {
            let thickness_m = radius_m * 1e-4;
            let curved = cylinder_side_w_k(conductivity, 1.0, radius_m, radius_m + thickness_m);
            let flat = wall_w_k(conductivity, 2.0 * PI * radius_m, thickness_m);
            prop_assert!((curved / flat - 1.0).abs() < 1e-3);
        }

        #[test]
        fn a_series_is_worse_than_its_worst(a in 0.01..1e4_f64, b in 0.01..1e4_f64) {
            prop_assert!(in_series(&[a, b]) < a.min(b));
        }
    }
}
