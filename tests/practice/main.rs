//! What makers of such cookers say, as checks on the model.
//!
//! Each is a fact of the trade: common practice, no source. The width of each answer is the width
//! of what the saying leaves open.

#![allow(
    clippy::unwrap_used,
    reason = "a check that cannot be set up has failed"
)]

use model::enthalpy::{EnthalpyCurve, MediumCurve};
use model::media::Medium;
use model::network::{
    Event, Ledger, Network, NetworkParts, NodeRow, OpenSurface, Pot, Seat, Span, State, Watch, run,
};
use model::seat::gap_w_m2k;
use model::water::vapour_pressure_pa;

const AIR_C: f64 = 22.0;
/// Base of a pot of 18 cm. [m²]
const BASE_M2: f64 = 0.0254;

/// Aluminium as the table has it.
fn aluminium(mass_kg: f64) -> EnthalpyCurve {
    let cp = Medium::Aluminium.props().cp;
    EnthalpyCurve::new(&[(mass_kg, MediumCurve::solid(cp.cp_a_j_kgk, cp.cp_b_j_kgk2))]).unwrap()
}

fn parts(g_loss_w_k: f64, g_contact_w_k: f64) -> NetworkParts {
    NetworkParts {
        row: NodeRow::SINGLE,
        g_loss_w_k,
        c_jacket_j_k: 2000.0,
        seat: Seat {
            g_contact_w_k,
            layer: None,
        },
        g_lid_w_k: 0.0,
        cutout_c: None,
        altitude_m: 0.0,
    }
}

/// One litre in an aluminium pot of half a kilogram.
fn a_litre(g_air_w_k: f64, surface: Option<OpenSurface>) -> Pot {
    Pot {
        c_dry_j_k: 450.0,
        water_kg: 1.0,
        t_c: AIR_C,
        g_air_w_k,
        thickness: 1.0,
        surface,
        cook: None,
    }
}

/// Remembers when the pot boils, and how hot it gets.
struct Hottest {
    next_s: f64,
    pot_c: f64,
    boils_s: Option<f64>,
}

impl Watch for Hottest {
    fn next_sample_s(&self) -> Option<f64> {
        Some(self.next_s)
    }

    fn sample(&mut self, _net: &Network<'_>, state: &State) {
        self.pot_c = state
            .pot()
            .map_or(self.pot_c, |pot| self.pot_c.max(pot.t_c()));
        self.next_s += 30.0;
    }

    fn event(&mut self, event: Event, _net: &Network<'_>, state: &State) {
        if event == Event::Boils {
            self.boils_s.get_or_insert(state.time_s());
        }
    }
}

fn watched(net: &Network<'_>, store_c: f64, pot: Pot, heater_w: f64) -> Hottest {
    let mut state = State::new(net, 0.0, store_c, 0.5 * (store_c + AIR_C)).unwrap();
    state.put_pot_in(pot).unwrap();
    let mut watch = Hottest {
        next_s: 0.0,
        pot_c: AIR_C,
        boils_s: None,
    };
    let span = Span {
        duration_s: 6.0 * 3600.0,
        heater_w,
        air_c: AIR_C,
    };
    run(net, &mut state, &span, &mut Ledger::default(), &mut watch).unwrap();
    watch
}

/// Common practice, no source: 100 W boil a litre in about an hour in an insulated pot.
#[test]
fn a_hundred_watts_boil_a_litre_in_about_an_hour() {
    let plate = aluminium(0.3);
    let net = Network::new(&plate, parts(0.05, 12.0)).unwrap();
    let boils_s = watched(&net, AIR_C, a_litre(0.15, None), 100.0)
        .boils_s
        .unwrap();
    assert!(
        (52.0..75.0).contains(&(boils_s / 60.0)),
        "{} min",
        boils_s / 60.0
    );
}

/// Common practice, no source: without its lid the same pot never boils on 100 W; it stands near
/// 60 °C.
#[test]
fn a_hundred_watts_never_boil_an_open_pot() {
    let plate = aluminium(0.3);
    let net = Network::new(&plate, parts(0.05, 12.0)).unwrap();
    let open = OpenSurface {
        area_m2: 0.0314,
        open_share: 1.0,
        air_vapour_pa: 0.5 * vapour_pressure_pa(AIR_C),
    };
    let hottest = watched(&net, AIR_C, a_litre(1.0, Some(open)), 100.0);
    assert_eq!(hottest.boils_s, None);
    assert!(
        (55.0..75.0).contains(&hottest.pot_c),
        "{} degC",
        hottest.pot_c
    );
}

/// Common practice, no source: 2.6 kg of aluminium at 250 °C bring a litre near the boil and not
/// to it when the pot stands dry on the block, a quarter of a millimetre of air between.
#[test]
fn a_small_block_with_a_dry_seat_falls_just_short() {
    let block = aluminium(2.6);
    let contact_w_k = BASE_M2 * gap_w_m2k(0.25e-3, 180.0, 70.0, 0.3, 0.2);
    let net = Network::new(&block, parts(0.3, contact_w_k)).unwrap();
    let hottest = watched(&net, 250.0, a_litre(0.4, None), 0.0);
    assert_eq!(hottest.boils_s, None, "{} degC", hottest.pot_c);
    assert!(
        (88.0..99.9).contains(&hottest.pot_c),
        "{} degC",
        hottest.pot_c
    );
}

/// The same block, with the pot pressed on by a film that conducts: contact was what lacked.
#[test]
fn the_same_block_boils_the_litre_through_a_good_seat_and_jacket() {
    let block = aluminium(2.6);
    let net = Network::new(&block, parts(0.2, BASE_M2 * 1500.0)).unwrap();
    assert!(
        watched(&net, 250.0, a_litre(0.12, None), 0.0)
            .boils_s
            .is_some()
    );
}

/// Common practice, no source: 7 kg of aluminium hold about half a kilowatt hour between 20 and
/// 300 °C.
#[test]
fn seven_kilograms_of_aluminium_hold_half_a_kilowatt_hour() {
    let block = aluminium(7.0);
    let kwh = (block.enthalpy_j(300.0) - block.enthalpy_j(20.0)) / 3.6e6;
    assert!((kwh - 0.5).abs() < 0.05, "{kwh} kWh");
}
