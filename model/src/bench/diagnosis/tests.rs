//! Pots whose limit is known, found out from their readings.

use super::*;
use crate::bench::fit::tests::{Noise, rows, shown, site};
use crate::bench::{Parameter, PotIn, RunKind, Settings, fit};
use crate::cooker::Cooker;
use crate::jacket::Jacket;
use crate::pot::{Lid, Pot, PotKind, PotSize, Wrap};
use crate::presets::Preset;
use crate::seat::Seat;

/// A block of 2.6 kg under a dry seat, and a litre.
fn cooker() -> Cooker {
    let mut cooker = Preset::AluminiumInPerlite.cooker(100.0, 11.0);
    cooker.store.charges[0].mass_kg = 2.6;
    cooker.store.depth_m = 0.05;
    cooker.store.cutout_c = 250.0;
    cooker.contact.seat = Seat::DryOrdinary;
    cooker.jacket = Jacket::Measured {
        loss_w_k: 0.2,
        capacity_j_k: 900.0,
    };
    cooker
}

const LITRE: PotIn = PotIn {
    in_s: 120.0,
    out_s: None,
    pot: Pot {
        kind: PotKind::ThinAluminium,
        size: PotSize::Litres1_5,
        wrap: Wrap::SunkInCooker,
    },
    lid: Lid::On,
    water_kg: 1.0,
    start_c: None,
    left_kg: None,
};

fn evening(contact_w_m2k: f64, capacity: f64) -> (Body, Run, Fit) {
    let body = Body::new(&site(), &cooker()).unwrap();
    let truth = Values {
        contact_w_m2k,
        capacity,
        ..*body.described()
    };
    let run = Run {
        name: "litre".into(),
        kind: RunKind::Boil,
        rows: rows(2.0, |_| 0.0),
        air_c: Some(18.0),
        heater_w: None,
        pots: vec![LITRE],
    };
    let run = shown(&body, run, &truth, (250.0, 130.0), &mut Noise(4));
    let fit = fit(&body, std::slice::from_ref(&run), &Settings::default()).unwrap();
    (body, run, fit)
}

/// 2.6 kg of aluminium at 250 °C holds just enough for a litre: two bodies come to about 106 °C
/// together. With a dry seat the pot stops short of the boil, and the contact is why.
#[test]
fn the_litre_that_nearly_boiled() {
    let (body, run, fit) = evening(95.0, 1.0);
    let told = Circumstances {
        prices: Prices {
            store_kg: Some(4.0),
            seat: Some(2.0),
            wrap: Some(3.0),
            ..Prices::default()
        },
        match_gain: None,
        cutout_c: None,
    };
    let found = diagnose(&body, &run, &fit, &told).unwrap().unwrap();
    assert_eq!(found.as_it_was.boils_s, None);
    assert!(
        (85.0..95.0).contains(&found.as_it_was.hottest_c),
        "{found:?}"
    );
    assert_eq!(found.limits[0].limit, Limit::Contact, "{:?}", found.limits);
    assert!(found.heat_suffices && found.limits[0].without.boils_s.is_some());
    // The same heat in more metal is less hot: no help.
    let mass = found
        .advice
        .iter()
        .any(|advice| matches!(advice.change, Change::Mass(_)));
    assert!(!mass, "{:?}", found.advice);
    let seat = found
        .advice
        .iter()
        .find(|advice| matches!(advice.change, Change::Contact(_)))
        .unwrap();
    assert_eq!(seat.cost, Some(2.0));
    let boils_min = seat.fate.boils_s.unwrap() / 60.0;
    assert!((10.0..60.0).contains(&boils_min), "{boils_min}");
    let account = found.account;
    assert!((account.came_j() - account.went_j()).abs() < 1e-3 * account.came_j());
}

/// A block of half the heat boils no litre through any seat.
#[test]
fn a_block_that_is_too_small_lacks_heat() {
    let (body, run, fit) = evening(800.0, 0.75);
    let found = diagnose(&body, &run, &fit, &Circumstances::default())
        .unwrap()
        .unwrap();
    assert_eq!(found.limits[0].limit, Limit::Heat, "{:?}", found.limits);
    assert!(!found.heat_suffices);
    let contact = found
        .limits
        .iter()
        .find(|ranked| ranked.limit == Limit::Contact)
        .unwrap();
    assert_eq!(contact.fate.boils_s, None);
    assert!(fit.estimate(Parameter::Contact).unwrap().value > 300.0);
}

#[test]
fn a_run_without_a_pot_has_nothing_to_diagnose() {
    let (body, mut run, fit) = evening(200.0, 1.0);
    run.pots.clear();
    assert_eq!(
        diagnose(&body, &run, &fit, &Circumstances::default()).unwrap(),
        None
    );
}
