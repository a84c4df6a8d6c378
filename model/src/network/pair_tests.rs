//! A jacket of two nodes.

use super::{
    JacketNode, JacketPair, Ledger, Network, NetworkParts, NodeRow, Seat, Span, State, run,
};
use crate::enthalpy::{EnthalpyCurve, MediumCurve};

const AIR_C: f64 = 20.0;
const PARTS: NetworkParts = NetworkParts {
    row: NodeRow::SINGLE,
    g_loss_w_k: 0.4,
    c_jacket_j_k: 1.0,
    seat: Seat {
        g_contact_w_k: 5.0,
        layer: None,
    },
    g_lid_w_k: 0.0,
    cutout_c: None,
    altitude_m: 0.0,
};
const PAIR: JacketPair = JacketPair {
    inner: JacketNode {
        warmth: 0.7,
        capacity_j_k: 3000.0,
    },
    outer: JacketNode {
        warmth: 0.2,
        capacity_j_k: 5000.0,
    },
};

fn block() -> EnthalpyCurve {
    EnthalpyCurve::new(&[(8.0, MediumCurve::solid(900.0, 0.0))]).unwrap()
}

/// Two nodes in a row by the explicit rule of Euler in steps of a fifth of a second.
#[test]
fn the_row_follows_its_equations() {
    let curve = block();
    let net = Network::new(&curve, PARTS)
        .unwrap()
        .with_jacket_pair(PAIR)
        .unwrap();
    let mut state = State::new(&net, 0.0, AIR_C, AIR_C).unwrap();
    let (mut store_c, mut inner_c, mut outer_c) = (AIR_C, AIR_C, AIR_C);
    let mut ledger = Ledger::default();
    let before_j = state.stored_j(&net);
    for heater_w in [300.0, 0.0] {
        let span = Span {
            duration_s: 14_400.0,
            heater_w,
            air_c: AIR_C,
        };
        run(&net, &mut state, &span, &mut ledger, &mut ()).unwrap();
        let dt_s = 0.2;
        for _ in 0..72_000 {
            let into_w = 0.4 / 0.3 * (store_c - inner_c);
            let across_w = 0.4 / 0.5 * (inner_c - outer_c);
            let out_w = 0.4 / 0.2 * (outer_c - AIR_C);
            store_c += (heater_w - into_w) * dt_s / 7200.0;
            inner_c += (into_w - across_w) * dt_s / 3000.0;
            outer_c += (across_w - out_w) * dt_s / 5000.0;
        }
        assert!((state.store_c(&net) - store_c).abs() < 0.02, "{store_c}");
        assert!((state.jacket_c() - outer_c).abs() < 0.02, "{outer_c}");
        let half_c = outer_c + 0.6 * (inner_c - outer_c);
        assert!((state.half_way_c(&net) - half_c).abs() < 0.02, "{half_c}");
    }
    let held_j = state.stored_j(&net) - before_j + ledger.lost_j();
    assert!((held_j / ledger.heater_j - 1.0).abs() < 1e-9);
}

/// In the steady state each node is as warm as it says, and a reading moves all by their share.
#[test]
fn a_state_begins_steady_and_moves_as_a_whole() {
    let curve = block();
    let net = Network::new(&curve, PARTS)
        .unwrap()
        .with_jacket_pair(PAIR)
        .unwrap();
    let mut state = State::new(&net, 0.0, 220.0, 120.0).unwrap();
    assert!((state.jacket_c() - 60.0).abs() < 1e-9);
    assert!((state.jacket_j(&net, AIR_C) - (3000.0 * 140.0 + 5000.0 * 40.0)).abs() < 1e-6);
    state.set_store(&net, curve.enthalpy_j(320.0), 170.0);
    assert!((state.jacket_c() - 80.0).abs() < 1e-9);
    assert!((state.half_way_c(&net) - 170.0).abs() < 1e-9);
}

#[test]
fn nodes_out_of_order_are_refused() {
    let curve = block();
    let net = Network::new(&curve, PARTS).unwrap();
    let refused = |edit: fn(&mut JacketPair)| {
        let mut pair = PAIR;
        edit(&mut pair);
        net.with_jacket_pair(pair).is_err()
    };
    assert!(refused(|pair| pair.inner.warmth = 0.1));
    assert!(refused(|pair| pair.inner.warmth = 1.0));
    assert!(refused(|pair| pair.outer.warmth = 0.0));
    assert!(refused(|pair| pair.outer.capacity_j_k = f64::NAN));
}
