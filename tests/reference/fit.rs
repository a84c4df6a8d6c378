//! Cookers found from their runs, against a general-purpose least squares on the same readings.
//!
//! Asked: parameters within 1 %.

use model::bench::readings::Row;
use model::bench::{Body, Parameter, PotIn, Run, RunKind, Settings, fit};
use model::cooker::{Charge, Charging, Contact, Cooker, Metal, Panels, Store};
use model::jacket::Jacket;
use model::media::Medium;
use model::panel::{Drive, Heater};
use model::place::{AirYear, Place};
use model::pot::{Lid, Pot, PotKind, PotSize, Wrap};
use model::seat::{INNER_FILM_W_M2K, Seat};
use model::tonight::Site;
use serde_json::Value;

use crate::data;

const SHARE: f64 = 0.01;
/// Of a melting point, in kelvin; its own standard error is some tenths.
const MELTING_K: f64 = 0.1;

const POT: Pot = Pot {
    kind: PotKind::ThinAluminium,
    size: PotSize::Litres2_5,
    wrap: Wrap::SunkInCooker,
};

fn numbers(value: &Value) -> Vec<f64> {
    let list = value.as_array().unwrap();
    list.iter().map(|number| number.as_f64().unwrap()).collect()
}

fn cooker(case: &Value) -> Cooker {
    let charge = |charge: &Value| Charge {
        medium: serde_json::from_value::<Medium>(charge["medium"].clone()).unwrap(),
        mass_kg: charge["mass_kg"].as_f64().unwrap(),
    };
    Cooker {
        panels: Panels {
            module_w: 200.0,
            sheet: None,
            in_series: 1,
            in_parallel: 1,
            tilt_deg: 10.0,
            azimuth_deg: 180.0,
        },
        heater: Heater {
            drive: Drive::Direct,
            resistance_ohm: 3.0,
            wire_ohm: 0.1,
            alpha_per_k: 0.0,
        },
        store: Store {
            charges: case["media"]
                .as_array()
                .unwrap()
                .iter()
                .map(charge)
                .collect(),
            // So much metal that nothing chokes the seat: the reference has no frozen layer.
            metal: Some(Metal::Fins {
                of: Medium::Copper,
                thickness_m: 0.004,
                pitch_m: 0.005,
            }),
            depth_m: 0.04,
            cutout_c: 300.0,
            filled_on: None,
            converted: 0.0,
            capacity_share: 1.0,
        },
        jacket: Jacket::Measured {
            loss_w_k: case["described"]["loss_w_k"].as_f64().unwrap(),
            capacity_j_k: case["described"]["jacket_j_k"].as_f64().unwrap(),
        },
        contact: Contact {
            seat: Seat::OilFilm,
            measured_w_m2k: None,
        },
        pot: POT,
        charging: Charging::default(),
        carried: None,
        pot_loss_share: 1.0,
        spreads: Default::default(),
    }
}

fn run(case: &Value) -> Run {
    let times_s = numbers(&case["times_s"]);
    let store_c = numbers(&case["store_c"]);
    let pot_c = case["pot_c"].as_array().map(|_| numbers(&case["pot_c"]));
    let heater_w = case["heater_w"].as_f64().unwrap();
    let rows = times_s
        .iter()
        .enumerate()
        .map(|(idx, time_s)| Row {
            line: idx + 1,
            time_s: *time_s,
            store_c: Some(store_c[idx]),
            pot_c: pot_c.as_ref().map(|pot_c| pot_c[idx]),
            ..Row::default()
        })
        .collect();
    let mut run = Run {
        name: case["name"].as_str().unwrap().into(),
        kind: if heater_w > 0.0 {
            RunKind::HeatUp
        } else {
            RunKind::CoolDown
        },
        rows,
        air_c: Some(18.0),
        heater_w: Some(heater_w),
        pots: Vec::new(),
    };
    if let Some(water_kg) = case["water_kg"].as_f64() {
        let pot: PotIn = run.pot_while_read(POT, Lid::On, water_kg).unwrap();
        run.pots.push(pot);
        run.kind = RunKind::Boil;
    }
    run
}

/// Source: scipy 1.17.1 optimize.least_squares, loss soft_l1, by `make/fit_cases.py`.
#[test]
fn the_same_parameters_from_the_same_readings() {
    let table = data(include_str!("data/fit.json"));
    let place = Place {
        latitude_deg: 11.0,
        longitude_deg: 38.0,
        altitude_m: 0.0,
        utc_offset_min: 180,
    };
    let air = AirYear::guess(11.0, 0.0).unwrap();
    let settings = Settings {
        held: vec![Parameter::Heater],
        priors: false,
        robust_k: Some(2.0),
    };
    let cases = table["cookers"].as_array().unwrap();
    assert_eq!(cases.len(), 2);
    for case in cases {
        let body = Body::new(&Site { place, air }, &cooker(case)).unwrap();
        let runs: Vec<Run> = case["runs"].as_array().unwrap().iter().map(run).collect();
        let found = fit(&body, &runs, &settings).unwrap();
        let expected = case["expected"].as_object().unwrap();
        assert!(expected.len() >= 5);
        for (key, expected) in expected {
            let expected = expected.as_f64().unwrap();
            let parameter = Parameter::ALL
                .into_iter()
                .find(|each| each.key() == key)
                .unwrap();
            let mut value = found.estimate(parameter).unwrap().value;
            if parameter == Parameter::Contact {
                // The whole way: the reference counts the way within the store to the contact.
                let whole_w_k = body.seat_w_k(value);
                let base_m2 = Seat::OilFilm.area_m2(POT.size.props().diameter_m.value, 0.0);
                value = 1.0 / (base_m2 / whole_w_k - 1.0 / INNER_FILM_W_M2K.value);
            }
            let allowed = match parameter {
                Parameter::MeltingPoint => MELTING_K,
                _ => SHARE * expected,
            };
            assert!(
                (value - expected).abs() <= allowed,
                "{}: {key}: {value} is not {expected}",
                case["name"]
            );
        }
    }
}
