//! Laws of the network that hold whatever the numbers.

#![allow(
    clippy::unwrap_used,
    reason = "a test stops at what it does not expect"
)]

use model::enthalpy::{EnthalpyCurve, MediumCurve, Melt};
use model::network::{
    CookRate, Event, Layer, Ledger, Network, NetworkParts, NodeRow, OpenSurface, Pot, Seat,
    SeatJoint, SeatPath, Span, State, Watch, run,
};
use model::seat::{self, Gap};
use proptest::prelude::*;

/// A cooker with what is in it, and one evening's course.
#[derive(Clone, Debug)]
struct Household {
    media: Vec<(f64, MediumCurve)>,
    parts: NetworkParts,
    /// In place of the one conductance of the seat.
    path: Option<SeatPath>,
    store_c: f64,
    jacket_c: f64,
    pot: Pot,
    span: Span,
}

/// Notes when it first boils, and whether anything was not a number.
#[derive(Default)]
struct Notes {
    boils_s: Option<f64>,
    next_s: f64,
    broken: bool,
}

impl Watch for Notes {
    fn next_sample_s(&self) -> Option<f64> {
        Some(self.next_s)
    }

    fn sample(&mut self, net: &Network<'_>, state: &State) {
        self.next_s = state.time_s().max(self.next_s) + 300.0;
        let pot = state.pot().unwrap();
        let store_c = state.mixed_store_c(net);
        let solid = state.solid_fraction(net, 0);
        let fine = [
            store_c,
            state.store_c(net),
            state.jacket_c(),
            pot.t_c(),
            pot.doneness(),
        ]
        .iter()
        .all(|value| value.is_finite());
        self.broken |= !fine || !(-1e-9..=1.0 + 1e-9).contains(&solid) || pot.water_kg() < -1e-9;
    }

    fn event(&mut self, event: Event, _: &Network<'_>, state: &State) {
        if event == Event::Boils {
            self.boils_s.get_or_insert(state.time_s());
        }
    }
}

struct Evening {
    start_j: f64,
    end: State,
    end_j: f64,
    ledger: Ledger,
    notes: Notes,
}

impl Household {
    /// The evening run in spans that are these shares of the whole.
    fn evening(&self, shares: &[f64]) -> Evening {
        let curve = EnthalpyCurve::new(&self.media).unwrap();
        let plain = Network::new(&curve, self.parts).unwrap();
        let net = self
            .path
            .map_or(plain, |path| plain.with_seat_path(path).unwrap());
        let mut state = State::new(&net, 0.0, self.store_c, self.jacket_c).unwrap();
        state.put_pot_in(self.pot).unwrap();
        let start_j = state.stored_j(&net);
        let mut ledger = Ledger::default();
        let mut notes = Notes::default();
        for share in shares {
            let span = Span {
                duration_s: self.span.duration_s * share,
                ..self.span
            };
            run(&net, &mut state, &span, &mut ledger, &mut notes).unwrap();
        }
        Evening {
            start_j,
            end_j: state.stored_j(&net),
            end: state,
            ledger,
            notes,
        }
    }
}

fn medium() -> impl Strategy<Value = MediumCurve> {
    let solid = (400.0..2000.0f64, 0.0..2.5f64);
    let melt = (
        90.0..320.0f64,
        0.0..20.0f64,
        5e4..3.5e5f64,
        1200.0..2800.0f64,
    );
    (solid, melt, 0..3u8).prop_map(
        |((a, b), (solidus, range, latent, liquid), kind)| MediumCurve {
            cp_a_j_kgk: a,
            cp_b_j_kgk2: b,
            melt: (kind > 0).then_some(Melt {
                t_solidus_c: solidus,
                t_liquidus_c: if kind == 1 { solidus } else { solidus + range },
                latent_j_kg: latent,
                cp_liquid_j_kgk: liquid,
            }),
        },
    )
}

fn row() -> impl Strategy<Value = NodeRow> {
    (1..=6usize, 2.0..60.0f64, 0..6usize).prop_map(|(count, link, heated)| {
        let even = std::array::from_fn(|node| {
            if node < count {
                1.0 / count as f64
            } else {
                0.0
            }
        });
        let heated = heated.min(count - 1);
        NodeRow {
            count,
            mass_share: even,
            link_w_k: [link; 6],
            heater_share: std::array::from_fn(|node| if node == heated { 1.0 } else { 0.0 }),
            jacket_share: even,
            thermostat_node: heated,
        }
    })
}

fn parts() -> impl Strategy<Value = NetworkParts> {
    let layer = (0.0..0.05f64, 0.2..1.0f64, 0.02..0.08f64, any::<bool>());
    let conductances = (0.0..3.0f64, 0.0..60.0f64, 0.0..2.0f64);
    (
        row(),
        conductances,
        20.0..2e4f64,
        layer,
        120.0..350.0f64,
        0.0..5000.0f64,
    )
        .prop_map(
            |(row, (loss, contact, lid), jacket, (depth, k, area, frozen), cutout, altitude)| {
                NetworkParts {
                    row,
                    g_loss_w_k: loss,
                    c_jacket_j_k: jacket,
                    seat: Seat {
                        g_contact_w_k: contact,
                        layer: frozen.then_some(Layer {
                            medium: 0,
                            depth_m: depth,
                            k_solid_w_mk: k,
                            area_m2: area,
                            elsewhere: 0.0,
                        }),
                    },
                    g_lid_w_k: lid,
                    cutout_c: Some(cutout),
                    altitude_m: altitude,
                }
            },
        )
}

fn pot() -> impl Strategy<Value = Pot> {
    let surface = (0.0..0.08f64, 0.0..1.0f64, any::<bool>());
    (
        (0.0..4000.0f64, 1.0..4.0f64),
        0.05..8.0f64,
        0.0..80.0f64,
        0.0..3.0f64,
        surface,
    )
        .prop_map(
            |((dry, thickness), water, t_c, g_air, (area, share, open))| Pot {
                c_dry_j_k: dry,
                water_kg: water,
                t_c,
                g_air_w_k: g_air,
                thickness,
                surface: open.then_some(OpenSurface {
                    area_m2: area,
                    open_share: share,
                    air_vapour_pa: 1500.0,
                }),
                cook: Some(CookRate::ZValue {
                    t_ref_s: 2400.0,
                    z_k: 18.0,
                    t_min_c: 70.0,
                }),
            },
        )
}

/// A seat by its parts, its air following the temperatures; half of the time none.
fn path() -> impl Strategy<Value = Option<SeatPath>> {
    let seat = (0..seat::Seat::ALL.len()).prop_map(|idx| seat::Seat::ALL[idx]);
    (seat, 0.0..0.3f64, 0.01..0.1f64, any::<bool>()).prop_map(|(seat, face, film, told)| {
        let joint = Gap::of(seat, 0.2, 0.08).map_or(SeatJoint::Even(12.0), SeatJoint::Gap);
        let joint_k_w = match joint {
            SeatJoint::Even(w_k) => 1.0 / w_k,
            SeatJoint::Gap(gap) => 1.0 / gap.through(200.0, 80.0).w_k,
        };
        told.then_some(SeatPath {
            face_k_w: face,
            joint,
            joint_k_w,
            film_k_w: film,
            melt: None,
        })
    })
}

fn household() -> impl Strategy<Value = Household> {
    let store = proptest::collection::vec((0.2..30.0f64, medium()), 1..4);
    let temperatures = (10.0..380.0f64, 0.0..1.0f64, -10.0..40.0f64);
    (
        store,
        (parts(), path()),
        pot(),
        temperatures,
        60.0..90_000.0f64,
        0.0..1500.0f64,
    )
        .prop_map(
            |(media, (parts, path), pot, (store_c, nearness, air_c), duration_s, heater_w)| {
                Household {
                    media,
                    parts,
                    path,
                    store_c,
                    jacket_c: air_c + nearness * (store_c - air_c),
                    pot,
                    span: Span {
                        duration_s,
                        heater_w,
                        air_c,
                    },
                }
            },
        )
}

/// The boil of the second evening does not come before that of the first.
fn not_earlier(first: &Evening, second: &Evening) -> Result<(), TestCaseError> {
    if let Some(late_s) = second.notes.boils_s {
        let Some(early_s) = first.notes.boils_s else {
            return Err(TestCaseError::fail(format!(
                "only the second boils, at {late_s} s"
            )));
        };
        prop_assert!(
            early_s <= late_s * (1.0 + 1e-4) + 0.1,
            "{early_s} s, {late_s} s"
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn heat_is_neither_made_nor_lost(home in household()) {
        let evening = home.evening(&[1.0]);
        prop_assert!(!evening.notes.broken);
        let ledger = evening.ledger;
        let gap_j = evening.end_j - evening.start_j - ledger.heater_j + ledger.lost_j();
        let moved_j = evening.start_j.abs().max(ledger.heater_j).max(1e4);
        // Asked: 0.1 %. The solver keeps the sum; what is left is rounding and the snap to the boil.
        prop_assert!(gap_j.abs() < 1e-8 * moved_j, "{gap_j} J of {moved_j} J");
    }

    #[test]
    fn a_span_may_be_cut_anywhere(home in household(), cut in 0.01..0.99f64) {
        let whole = home.evening(&[1.0]);
        let parts = home.evening(&[cut, 1.0 - cut]);
        let (a, b) = (whole.end.pot().unwrap(), parts.end.pot().unwrap());
        let scale_j = 1e-4 * whole.start_j.abs().max(whole.ledger.heater_j) + 500.0;
        prop_assert!((whole.end_j - parts.end_j).abs() < scale_j, "{} {}", whole.end_j, parts.end_j);
        prop_assert!((a.water_kg() - b.water_kg()).abs() < 1e-3);
    }

    #[test]
    fn a_hotter_store_never_boils_later(home in household(), more_k in 1.0..40.0f64) {
        // With the heater on, the thermostat would cut the hotter store out sooner.
        let mut home = home;
        home.span.heater_w = 0.0;
        home.parts.seat.layer = None;
        let hotter = Household { store_c: home.store_c + more_k, ..home.clone() };
        not_earlier(&hotter.evening(&[1.0]), &home.evening(&[1.0]))?;
    }

    #[test]
    fn more_loss_never_boils_earlier(home in household(), factor in 1.05..3.0f64) {
        // A jacket colder than the air would feed the store through a larger loss; so would one kept hot by it.
        let mut home = home;
        home.span.heater_w = 0.0;
        home.parts.seat.layer = None;
        home.jacket_c = home.span.air_c;
        home.store_c = home.store_c.max(home.span.air_c + 1.0);
        home.pot.t_c = home.pot.t_c.max(home.span.air_c);
        let mut leaky = home.clone();
        leaky.parts.g_lid_w_k = home.parts.g_lid_w_k * factor + 0.05;
        leaky.pot.g_air_w_k *= factor;
        not_earlier(&home.evening(&[1.0]), &leaky.evening(&[1.0]))?;
    }
}
