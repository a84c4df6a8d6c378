//! A melt that freezes on the seat of a boiling pot, against its closed solution.

use super::{Layer, Ledger, Network, NetworkParts, NodeRow, Pot, Seat, Span, State, run};
use crate::enthalpy::{EnthalpyCurve, MediumCurve, Melt};

const MASS_KG: f64 = 5.0;
const LATENT_J_KG: f64 = 340e3;
const AREA_M2: f64 = 0.03;
const DEPTH_M: f64 = 0.05;
const K_SOLID_W_MK: f64 = 0.7;
const MELTING_C: f64 = 118.0;

/// Share of the melt that is solid after a time on a boiling pot, and the pot's distance from the
/// melting point, K.
fn solid_after(contact_w_k: f64, time_s: f64) -> (f64, f64) {
    let medium = MediumCurve {
        cp_a_j_kgk: 1400.0,
        cp_b_j_kgk2: 0.0,
        melt: Some(Melt {
            t_solidus_c: MELTING_C,
            t_liquidus_c: MELTING_C,
            latent_j_kg: LATENT_J_KG,
            cp_liquid_j_kgk: 2760.0,
        }),
    };
    let curve = EnthalpyCurve::new(&[(MASS_KG, medium)]).unwrap();
    let parts = NetworkParts {
        row: NodeRow::SINGLE,
        g_loss_w_k: 0.0,
        c_jacket_j_k: 1.0,
        seat: Seat {
            g_contact_w_k: contact_w_k,
            layer: Some(Layer {
                medium: 0,
                depth_m: DEPTH_M,
                k_solid_w_mk: K_SOLID_W_MK,
                area_m2: AREA_M2,
                elsewhere: 0.0,
            }),
        },
        g_lid_w_k: 0.0,
        cutout_c: None,
        altitude_m: 0.0,
    };
    let net = Network::new(&curve, parts).unwrap();
    let liquid_j = curve.highest_enthalpy_j(MELTING_C);
    let mut state = State::with_heat(&net, 0.0, liquid_j, MELTING_C).unwrap();
    state
        .put_pot_in(Pot {
            c_dry_j_k: 100.0,
            water_kg: 200.0,
            t_c: net.boiling_point_c(),
            g_air_w_k: 0.0,
            thickness: 1.0,
            surface: None,
            cook: None,
        })
        .unwrap();
    let span = Span {
        duration_s: time_s,
        heater_w: 0.0,
        air_c: 20.0,
    };
    run(&net, &mut state, &span, &mut Ledger::default(), &mut ()).unwrap();
    (
        state.solid_fraction(&net, 0),
        MELTING_C - net.boiling_point_c(),
    )
}

/// A layer that grows in series with a contact: `p/G + R p^2/2 = dT t/(m L)`, by separation of
/// variables. From a poor seat to one so good that the layer chokes it within microseconds.
#[test]
fn a_layer_grows_as_its_closed_solution() {
    let layer_k_w = DEPTH_M / (K_SOLID_W_MK * AREA_M2);
    for contact_w_k in [1.0, 10.0, 100.0, 1e3, 1e4, 1e5] {
        for time_s in [1.0, 10.0, 100.0, 600.0, 3600.0] {
            let (solid, apart_k) = solid_after(contact_w_k, time_s);
            let drawn_k2_w = apart_k * time_s / (MASS_KG * LATENT_J_KG);
            let contact_k_w = 1.0 / contact_w_k;
            let exact = ((contact_k_w * contact_k_w + 2.0 * layer_k_w * drawn_k2_w).sqrt()
                - contact_k_w)
                / layer_k_w;
            assert!(
                (solid / exact - 1.0).abs() < 5e-4,
                "{contact_w_k} W/K, {time_s} s: {solid} {exact}"
            );
        }
    }
}
