//! Dry seats whose air follows the temperatures of its faces.

use model::enthalpy::{EnthalpyCurve, MediumCurve};
use model::network::{
    Event, Ledger, Network, NetworkParts, NodeRow, Pot, Seat, SeatJoint, SeatPath, Span, State,
    Watch, run,
};
use model::seat::{self, Gap, INNER_FILM_W_M2K};
use serde::Deserialize;

use crate::data;

/// Time to boil, relative. The model tells the faces' temperatures from a mean state of the gap, where
/// the reference finds them anew at every instant.
const BOIL: f64 = 0.01;
/// Store as the pot boils, K.
const STORE_K: f64 = 0.3;
const AIR_C: f64 = 22.0;
const DIAMETER_M: f64 = 0.2;

#[derive(Debug, Deserialize)]
struct Case {
    seat: seat::Seat,
    aluminium_kg: f64,
    t_store_c: f64,
    face_k_w: f64,
    water_kg: f64,
    c_dry_j_k: f64,
    t_pot_c: f64,
    g_pot_w_k: f64,
    g_loss_w_k: f64,
    c_jacket_j_k: f64,
    expected: Expected,
}

#[derive(Debug, Deserialize)]
struct Expected {
    t_boil_s: f64,
    t_store_c: f64,
}

#[derive(Default)]
struct FirstBoil(Option<(f64, f64)>);

impl Watch for FirstBoil {
    fn event(&mut self, event: Event, net: &Network<'_>, state: &State) {
        if event == Event::Boils {
            self.0.get_or_insert((state.time_s(), state.store_c(net)));
        }
    }
}

fn boils(case: &Case) -> (f64, f64) {
    let curve =
        EnthalpyCurve::new(&[(case.aluminium_kg, MediumCurve::solid(903.0, 0.41))]).unwrap();
    let gap = Gap::of(case.seat, DIAMETER_M, 0.0).unwrap();
    let area_m2 = case.seat.area_m2(DIAMETER_M, 0.0);
    let parts = NetworkParts {
        row: NodeRow::SINGLE,
        g_loss_w_k: case.g_loss_w_k,
        c_jacket_j_k: case.c_jacket_j_k,
        seat: Seat {
            g_contact_w_k: 1.0,
            layer: None,
        },
        g_lid_w_k: 0.0,
        cutout_c: None,
        altitude_m: 0.0,
    };
    let path = SeatPath {
        face_k_w: case.face_k_w,
        joint: SeatJoint::Gap(gap),
        joint_k_w: 1.0 / gap.through(200.0, 80.0).w_k,
        film_k_w: 1.0 / (INNER_FILM_W_M2K.value * area_m2),
        melt: None,
    };
    let net = Network::new(&curve, parts)
        .unwrap()
        .with_seat_path(path)
        .unwrap();
    let jacket_c = 0.5 * (case.t_store_c + AIR_C);
    let mut state = State::new(&net, 0.0, case.t_store_c, jacket_c).unwrap();
    let pot = Pot {
        c_dry_j_k: case.c_dry_j_k,
        water_kg: case.water_kg,
        t_c: case.t_pot_c,
        g_air_w_k: case.g_pot_w_k,
        thickness: 1.0,
        surface: None,
        cook: None,
    };
    state.put_pot_in(pot).unwrap();
    let span = Span {
        duration_s: 6.0 * 3600.0,
        heater_w: 0.0,
        air_c: AIR_C,
    };
    let mut boil = FirstBoil::default();
    run(&net, &mut state, &span, &mut Ledger::default(), &mut boil).unwrap();
    boil.0.unwrap()
}

/// Source: scipy 1.17.1 solve_ivp, LSODA, with air by CoolProp 8.0.0, by `make/seat_cases.py`.
#[test]
fn pots_on_air_that_follows_its_temperature() {
    let cases: Vec<Case> = serde_json::from_value(data(include_str!("data/seat.json"))).unwrap();
    assert_eq!(cases.len(), 18);
    let mut worst = 0.0_f64;
    for case in &cases {
        let (boils_s, store_c) = boils(case);
        let off = boils_s / case.expected.t_boil_s - 1.0;
        worst = worst.max(off.abs());
        assert!(off.abs() < BOIL, "{off:+.4} in {case:?}");
        let off_k = store_c - case.expected.t_store_c;
        assert!(off_k.abs() < STORE_K, "{off_k:+.3} K in {case:?}");
    }
    println!("worst {worst:.4}");
}
