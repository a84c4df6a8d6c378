//! The network and its inside against solved textbook problems.

use std::f64::consts::PI;

use model::conduction::in_series;
use model::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use model::inside::{Inside, Way};
use model::network::{Layer, Ledger, Network, NetworkParts, NodeRow, Pot, Seat, Span, State, run};
use model::stefan;

use super::{Check, relative, temperature};

const CENGEL: &str = "Cengel, Heat and Mass Transfer";
const INCROPERA: &str = "Incropera et al., Fundamentals of Heat and Mass Transfer";
const STEFAN: &str = "Carslaw and Jaeger, Conduction of Heat in Solids, 11.2 (Neumann, one phase)";

const BARE: NetworkParts = NetworkParts {
    row: NodeRow::SINGLE,
    g_loss_w_k: 0.0,
    c_jacket_j_k: 1.0,
    seat: Seat {
        g_contact_w_k: 0.0,
        layer: None,
    },
    g_lid_w_k: 0.0,
    cutout_c: None,
    altitude_m: 0.0,
};

pub(super) fn checks() -> Vec<Check> {
    let mut checks = Vec::new();
    // A thermocouple's bead: 1 mm, rho 8500, cp 320, h 210; 99 % after 10 s.
    let radius_m = 0.5e-3_f64;
    let bead = lumped(
        8500.0 * 4.0 / 3.0 * PI * radius_m.powi(3),
        320.0,
        210.0 * 4.0 * PI * radius_m * radius_m,
        (100.0, 0.0),
        9.94,
    );
    checks.push(temperature(
        "bead of a thermocouple after 9.94 s, 100 K step",
        CENGEL,
        (1.0, bead),
        0.01,
    ));
    // A body of 0.3 m by 1.7 m in air of 20 degC.
    let body = lumped(
        996.0 * PI * 0.15 * 0.15 * 1.7,
        4178.0,
        8.0 * (PI * 0.3 * 1.7 + 0.5 * PI * 0.3 * 0.3),
        (37.0, 20.0),
        43_871.0,
    );
    checks.push(temperature(
        "a body cools from 37 degC in 12.2 h",
        CENGEL,
        (25.0, body),
        0.03,
    ));

    for (biot, fourier, expect) in [(1.0, 1.0, 0.5296), (10.0, 0.3, 0.5261), (10.0, 1.0, 0.8865)] {
        checks.push(relative(
            format!("heat out of a plane wall, Bi {biot}, Fo {fourier}, share"),
            INCROPERA,
            "",
            (expect, wall_share(biot, fourier)),
            0.02,
        ));
    }
    // k 1.4, alpha 0.62e-6, h 200, 200 K, 30 min: eq. 5.63 integrated, exp(b2) erfc(b) = 0.115788.
    let b = 200.0 * (0.62e-6_f64 * 1800.0).sqrt() / 1.4;
    let exact = 1.4 * 1.4 / 0.62e-6 * (0.115_788 - 1.0 + 2.0 * b / PI.sqrt());
    checks.push(relative(
        "heat out of a half space through a film in 30 min",
        INCROPERA,
        "J/m2",
        (exact, row_heat_j(0.2, 1.4, 0.62e-6, 200.0, 1800.0)),
        0.02,
    ));

    for (number, root) in [(0.05, 0.156_821), (0.1, 0.220_016), (0.2, 0.306_424)] {
        checks.push(relative(
            format!("front of a freezing melt after an hour in the network, St {number}"),
            STEFAN,
            "m",
            (
                2.0 * root * (ALPHA_M2_S * 3600.0).sqrt(),
                network_front_m(number),
            ),
            0.02,
        ));
    }
    checks.push(relative(
        "10 mm of erythritol frozen at 100 degC in 1952 s",
        STEFAN,
        "m",
        (
            0.010,
            stefan::exact_front_m(0.0731, 0.733 / (1480.0 * 1380.0), 1952.0),
        ),
        5e-3,
    ));
    checks
}

/// Temperature of a body at one temperature that loses heat through its face.
fn lumped(mass_kg: f64, cp: f64, g_w_k: f64, (start_c, air_c): (f64, f64), time_s: f64) -> f64 {
    let curve = EnthalpyCurve::new(&[(mass_kg, MediumCurve::solid(cp, 0.0))]).unwrap();
    let parts = NetworkParts {
        g_lid_w_k: g_w_k,
        ..BARE
    };
    let net = Network::new(&curve, parts).unwrap();
    let mut state = State::new(&net, 0.0, start_c, air_c).unwrap();
    step(&net, &mut state, time_s, air_c);
    state.store_c(&net)
}

fn step(net: &Network<'_>, state: &mut State, duration_s: f64, air_c: f64) -> f64 {
    let span = Span {
        duration_s,
        heater_w: 0.0,
        air_c,
    };
    let mut ledger = Ledger::default();
    run(net, state, &span, &mut ledger, &mut ()).unwrap();
    ledger.pot_j
}

/// A pot that boils and stays at 99.974 degC.
fn boiling() -> Pot {
    Pot {
        c_dry_j_k: 10.0,
        water_kg: 2000.0,
        t_c: 99.974,
        g_air_w_k: 0.0,
        thickness: 1.0,
        surface: None,
        cook: None,
    }
}

/// Heat out of a square metre of a store in a row of nodes, 200 K above a pot that boils, J/m2.
fn row_heat_j(depth_m: f64, k: f64, alpha: f64, contact: f64, time_s: f64) -> f64 {
    let way = Way::Slab {
        depth_m,
        face_m2: 1.0,
        seat_m2: 1.0,
    };
    let inside = Inside::new(way, k, contact);
    let curve = EnthalpyCurve::new(&[(depth_m, MediumCurve::solid(k / alpha, 0.0))]).unwrap();
    let parts = NetworkParts {
        row: inside.row,
        seat: Seat {
            g_contact_w_k: in_series(&[contact, inside.face_w_k]),
            layer: None,
        },
        ..BARE
    };
    let net = Network::new(&curve, parts).unwrap();
    let mut state = State::new(&net, 0.0, 299.974, 20.0).unwrap();
    state.put_pot_in(boiling()).unwrap();
    step(&net, &mut state, time_s, 20.0)
}

/// Share of its heat that a wall of 0.1 m, insulated at the back, has given off.
fn wall_share(biot: f64, fourier: f64) -> f64 {
    let (depth_m, k, alpha) = (0.1, 1.4, 0.62e-6);
    let contact = biot * k / depth_m;
    let time_s = fourier * depth_m * depth_m / alpha;
    row_heat_j(depth_m, k, alpha, contact, time_s) / (depth_m * k / alpha * 200.0)
}

/// Diffusivity of the melt's solid: 0.7 W/mK, 1500 kg/m3, 1400 J/kgK.
const ALPHA_M2_S: f64 = 0.7 / (1500.0 * 1400.0);

/// The front after an hour on a wall 20 K below the melting point.
fn network_front_m(number: f64) -> f64 {
    let (depth_m, area_m2, melting_c) = (0.08, 0.03, 119.974);
    let latent_j_kg = 1400.0 * 20.0 / number;
    let medium = MediumCurve {
        cp_a_j_kgk: 1400.0,
        cp_b_j_kgk2: 0.0,
        melt: Some(Melt {
            t_solidus_c: melting_c,
            t_liquidus_c: melting_c,
            latent_j_kg,
            cp_liquid_j_kgk: 2000.0,
        }),
    };
    let mass_kg = 1500.0 * depth_m * area_m2;
    let curve = EnthalpyCurve::new(&[(mass_kg, medium)]).unwrap();
    let parts = NetworkParts {
        seat: Seat {
            g_contact_w_k: 3000.0,
            layer: Some(Layer {
                medium: 0,
                depth_m,
                k_solid_w_mk: stefan::layer_conductivity_w_mk(0.7, number),
                area_m2,
                elsewhere: 0.0,
            }),
        },
        ..BARE
    };
    let net = Network::new(&curve, parts).unwrap();
    let molten_j = curve.enthalpy_j(melting_c) + mass_kg * latent_j_kg;
    let mut state = State::with_heat(&net, 0.0, molten_j, 20.0).unwrap();
    state.put_pot_in(boiling()).unwrap();
    // The wall is cold at once, which no contact is: the spans grow from a millisecond.
    let mut reached_s = 0.0;
    while reached_s < 3600.0 {
        let next_s = (0.5_f64 * reached_s).max(1e-3).min(3600.0 - reached_s);
        step(&net, &mut state, next_s, 20.0);
        reached_s += next_s;
    }
    stefan::front_m(state.solid_fraction(&net, 0), depth_m, number)
}
