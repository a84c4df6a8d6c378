//! Fits of runs whose answer is known.

use super::*;
use crate::bench::plan::Trace;
use crate::bench::readings::Row;
use crate::bench::run::{PotIn, RunKind};
use crate::cooker::Cooker;
use crate::jacket::Jacket;
use crate::place::{AirYear, Place};
use crate::pot::{Lid, PotKind, PotSize, Wrap};
use crate::presets::Preset;
use crate::tonight::Site;

pub(in crate::bench) fn site() -> Site {
    let place = Place {
        latitude_deg: 11.0,
        longitude_deg: 38.0,
        altitude_m: 1500.0,
        utc_offset_min: 180,
    };
    Site {
        place,
        air: AirYear::guess(11.0, 1500.0).unwrap(),
    }
}

fn cooker() -> Cooker {
    let mut cooker = Preset::AluminiumInPerlite.cooker(200.0, 11.0);
    cooker.jacket = Jacket::Measured {
        loss_w_k: 0.3,
        capacity_j_k: 2000.0,
    };
    cooker
}

fn pot_in(in_s: f64) -> PotIn {
    PotIn {
        in_s,
        out_s: None,
        pot: crate::pot::Pot {
            kind: PotKind::ThinAluminium,
            size: PotSize::Litres2_5,
            wrap: Wrap::SunkInCooker,
        },
        lid: Lid::On,
        water_kg: 1.5,
        start_c: None,
        left_kg: None,
    }
}

/// Noise of one standard deviation, the same at each call.
pub(in crate::bench) struct Noise(pub(in crate::bench) u64);

impl Noise {
    fn unit(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 11) as f64) / (1_u64 << 53) as f64
    }

    fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.unit()).sum::<f64>() - 6.0
    }
}

/// Rows a minute, empty but for the power, over so many hours.
pub(in crate::bench) fn rows(hours: f64, heater_w: impl Fn(f64) -> f64) -> Vec<Row> {
    let count = (60.0 * hours) as usize;
    (0..=count)
        .map(|idx| Row {
            line: idx + 1,
            time_s: 60.0 * idx as f64,
            heater_w: Some(heater_w(idx as f64 / 60.0)),
            store_c: Some(0.0),
            pot_c: Some(0.0),
            ..Row::default()
        })
        .collect()
}

/// Fills a run with what a cooker of these values would show.
pub(in crate::bench) fn shown(
    body: &Body,
    run: Run,
    values: &Values,
    start: (f64, f64),
    noise: &mut Noise,
) -> Run {
    shown_liquid(body, run, values, (start, None), noise)
}

/// The same of a melt that stays liquid down to a temperature.
fn shown_liquid(
    body: &Body,
    mut run: Run,
    values: &Values,
    (start, liquid_to_c): ((f64, f64), Option<f64>),
    noise: &mut Noise,
) -> Run {
    let mut plan = Plan::new(body, &run);
    plan.start.store_c = start.0;
    plan.start.jacket_c = start.1;
    plan.start.pots_c = run.pots.iter().map(|_| 20.0).collect();
    let curve = body.curve(values, liquid_to_c).unwrap();
    let net = body.network(&curve, values).unwrap();
    let mut trace = Trace::new(&plan.samples);
    plan.follow(body, &net, values, &plan.start, &mut trace)
        .unwrap();
    for (row, (store_c, pot_c)) in run.rows.iter_mut().zip(trace.seen) {
        row.store_c = Some(store_c + noise.normal());
        row.pot_c = if pot_c.is_finite() {
            Some(pot_c + noise.normal())
        } else if run
            .pots
            .iter()
            .any(|pot| (pot.in_s - row.time_s).abs() < 1e-6)
        {
            Some(20.0 + noise.normal())
        } else {
            None
        };
    }
    run
}

fn run(kind: RunKind, rows: Vec<Row>, pots: Vec<PotIn>) -> Run {
    Run {
        name: format!("{kind:?}"),
        kind,
        rows,
        air_c: Some(18.0),
        heater_w: None,
        pots,
    }
}

fn heat_cool_boil(body: &Body, values: &Values, noise: &mut Noise) -> Vec<Run> {
    let heat = run(RunKind::HeatUp, rows(5.0, |_| 150.0), vec![]);
    let cool = run(RunKind::CoolDown, rows(10.0, |_| 0.0), vec![]);
    let boil = run(RunKind::Boil, rows(1.5, |_| 0.0), vec![pot_in(300.0)]);
    vec![
        shown(body, heat, values, (20.0, 19.0), noise),
        shown(body, cool, values, (270.0, 140.0), noise),
        shown(body, boil, values, (260.0, 120.0), noise),
    ]
}

fn truth(body: &Body) -> Values {
    Values {
        loss_w_k: 0.42,
        jacket_j_k: 2600.0,
        capacity: 0.93,
        contact_w_m2k: 260.0,
        pot_loss: 1.2,
        ..*body.described()
    }
}

#[test]
fn three_runs_tell_the_cooker() {
    let body = Body::new(&site(), &cooker()).unwrap();
    let truth = truth(&body);
    let runs = heat_cool_boil(&body, &truth, &mut Noise(1));
    let fit = fit(&body, &runs, &Settings::default()).unwrap();
    for (parameter, share) in [
        (Parameter::Loss, 0.03),
        (Parameter::StoreCapacity, 0.03),
        (Parameter::Contact, 0.05),
    ] {
        let found = fit.estimate(parameter).unwrap();
        let off = found.value / truth.get(parameter) - 1.0;
        assert!(off.abs() < share, "{parameter:?}: {off}");
        assert!((found.value - truth.get(parameter)).abs() < 3.0 * found.sd);
    }
    assert_eq!(fit.worth, Worth::Good, "{:?}", fit.doubts);
    assert!((fit.noise_k - 1.0).abs() < 0.15 && (fit.scatter_k - 1.0).abs() < 0.15);
}

/// Of ninety-per-cent intervals, nine in ten hold the truth, over parameters and evenings.
#[test]
fn intervals_hold_what_they_say() {
    let body = Body::new(&site(), &cooker()).unwrap();
    let truth = truth(&body);
    let (mut inside, mut all) = (0, 0);
    for seed in 0..16 {
        let runs = heat_cool_boil(&body, &truth, &mut Noise(1000 + seed));
        let fit = fit(&body, &runs, &Settings::default()).unwrap();
        for parameter in [
            Parameter::Loss,
            Parameter::StoreCapacity,
            Parameter::Contact,
        ] {
            let found = fit.estimate(parameter).unwrap();
            all += 1;
            if (found.value - truth.get(parameter)).abs() < 1.645 * found.sd {
                inside += 1;
            }
        }
    }
    // 43 of 48 asked; by chance alone 39 or fewer come one time in twenty.
    assert!(inside >= 39, "{inside} of {all}");
}

/// A night of cooling alone is a ratio: it tells how fast, not how much heat that was.
#[test]
fn a_cool_down_cannot_tell_loss_from_capacity() {
    let body = Body::new(&site(), &cooker()).unwrap();
    let truth = truth(&body);
    let cool = run(RunKind::CoolDown, rows(10.0, |_| 0.0), vec![]);
    let runs = [shown(&body, cool, &truth, (270.0, 140.0), &mut Noise(5))];
    let fit = fit(&body, &runs, &Settings::default()).unwrap();
    let pair = (Parameter::Loss, Parameter::StoreCapacity);
    assert!(
        fit.untold.contains(&pair),
        "{:?} {:?}",
        fit.untold,
        fit.estimates
    );
    assert!(fit.doubts.contains(&Doubt::NotApart(pair.0, pair.1)));
    let ratio = fit.values.loss_w_k / fit.values.capacity;
    assert!(
        (ratio / (truth.loss_w_k / truth.capacity) - 1.0).abs() < 0.03,
        "{ratio}"
    );
    assert!(fit.estimate(Parameter::Contact).unwrap().held);
}

/// A tenth of the readings far off, as when the probe slips out and in.
#[test]
fn readings_far_off_do_not_move_the_answer() {
    let body = Body::new(&site(), &cooker()).unwrap();
    let truth = truth(&body);
    let clean = heat_cool_boil(&body, &truth, &mut Noise(9));
    let mut dirty = clean.clone();
    for run in &mut dirty {
        for row in run.rows.iter_mut().skip(7).step_by(12) {
            row.store_c = row.store_c.map(|store_c| store_c - 60.0);
        }
    }
    let settings = Settings::default();
    let (clean, dirty) = (
        fit(&body, &clean, &settings).unwrap(),
        fit(&body, &dirty, &settings).unwrap(),
    );
    for parameter in [
        Parameter::Loss,
        Parameter::StoreCapacity,
        Parameter::Contact,
    ] {
        let (a, b) = (clean.values.get(parameter), dirty.values.get(parameter));
        assert!((a / b - 1.0).abs() < 0.04, "{parameter:?}: {a} {b}");
    }
}

/// One digit mistyped in an evening written down by hand.
#[test]
fn a_mistyped_reading_is_named_and_makes_nothing_better() {
    let body = Body::new(&site(), &cooker()).unwrap();
    let truth = truth(&body);
    let mut clean = heat_cool_boil(&body, &truth, &mut Noise(9));
    for run in clean.iter_mut().take(2) {
        let mut idx = 0;
        run.rows.retain(|_| {
            idx += 1;
            idx % 10 == 1
        });
    }
    let mut dirty = clean.clone();
    let row = &mut dirty[1].rows[5];
    row.store_c = row.store_c.map(|store_c| store_c - 138.0);
    let (time_s, read) = (row.time_s, row.store_c.unwrap());
    let fit = |runs: &[Run]| fit(&body, runs, &Settings::default()).unwrap();
    let (clean, dirty) = (fit(&clean), fit(&dirty));
    let named = |fit: &Fit| -> Vec<Doubt> {
        let is_far = |doubt: &&Doubt| matches!(doubt, Doubt::FarOff { .. });
        fit.doubts.iter().filter(is_far).copied().collect()
    };
    assert_eq!(named(&clean), []);
    let [
        Doubt::FarOff {
            run: 1,
            time_s: at_s,
            is_pot: false,
            read_c,
            off_k,
        },
    ] = named(&dirty)[..]
    else {
        panic!("{:?}", dirty.doubts)
    };
    assert!((at_s - time_s).abs() < 1.0 && (read_c - read).abs() < 1e-9);
    assert!((off_k + 138.0).abs() < 8.0, "{off_k}");
    assert!(dirty.worth <= clean.worth);
    // Noise that is not the thermometer's.
    assert!(
        (dirty.noise_k / clean.noise_k - 1.0).abs() < 0.2,
        "{dirty:?}"
    );
}

#[test]
fn what_was_measured_goes_into_the_cooker() {
    let cooker = cooker();
    let body = Body::new(&site(), &cooker).unwrap();
    let truth = truth(&body);
    let runs = heat_cool_boil(&body, &truth, &mut Noise(3));
    let fit = fit(&body, &runs, &Settings::default()).unwrap();
    let measured = fit.for_cooker();
    let fitted = measured.apply(&body, &cooker);
    let again = Body::new(&site(), &fitted).unwrap();
    let described = again.described();
    assert!((described.loss_w_k - fit.values.loss_w_k).abs() < 1e-9);
    assert!((described.contact_w_m2k - fit.values.contact_w_m2k).abs() < 1e-6);
    // What was weighed stays, and the store holds what was measured all the same.
    assert_eq!(fitted.store.charges, cooker.store.charges);
    assert!((fitted.store.capacity_share - fit.values.capacity).abs() < 1e-9);
    // Without the share of the jacket that gets hot with it.
    let capacity_j = |body: &Body| {
        let bare = Values {
            jacket_j_k: 1e-6,
            ..*body.described()
        };
        body.curve(&bare, None).unwrap().enthalpy_j(300.0)
    };
    let share = capacity_j(&again) / capacity_j(&body);
    assert!((share - fit.values.capacity).abs() < 1e-6, "{share}");
    let loss = measured.loss_w_k.unwrap();
    assert!(fit.estimate(Parameter::Loss).unwrap().sd < loss.sd);
}

/// Sugar alcohol that is hot, cools as a liquid and freezes late, or never, or at once under a cold pot.
#[test]
fn a_melt_that_freezes_when_it_will_is_told_all_the_same() {
    let cooker = Preset::ErythritolInGlassWool.cooker(200.0, 11.0);
    let body = Body::new(&site(), &cooker).unwrap();
    let described = *body.described();
    let truth = Values {
        loss_w_k: 1.2 * described.loss_w_k,
        capacity: 0.93,
        contact_w_m2k: 0.7 * described.contact_w_m2k,
        ..described
    };
    for (seed, liquid_to_c) in [(1, Some(103.0)), (2, Some(30.0)), (3, None)] {
        let mut noise = Noise(seed);
        let heat = run(RunKind::HeatUp, rows(7.0, |_| 180.0), vec![]);
        let cool = run(RunKind::CoolDown, rows(14.0, |_| 0.0), vec![]);
        let boil = run(RunKind::Boil, rows(1.5, |_| 0.0), vec![pot_in(300.0)]);
        let cools = ((138.0, 80.0), liquid_to_c);
        let runs = [
            shown(&body, heat, &truth, (20.0, 19.0), &mut noise),
            shown_liquid(&body, cool, &truth, cools, &mut noise),
            shown(&body, boil, &truth, (138.0, 80.0), &mut noise),
        ];
        let fit = fit(&body, &runs, &Settings::default()).unwrap();
        for (parameter, share) in [
            (Parameter::Loss, 0.03),
            (Parameter::StoreCapacity, 0.03),
            // The fins between melt and seat are found with it.
            (Parameter::Contact, 0.15),
        ] {
            let off = fit.values.get(parameter) / truth.get(parameter) - 1.0;
            assert!(off.abs() < share, "{liquid_to_c:?} {parameter:?}: {off}");
        }
        assert_eq!(fit.store, StoreKind::Supercools);
    }
}

#[test]
fn runs_that_cannot_be_used_are_named() {
    let body = Body::new(&site(), &cooker()).unwrap();
    assert_eq!(fit(&body, &[], &Settings::default()), Err(FitError::NoRuns));
    let short = run(RunKind::CoolDown, rows(0.02, |_| 0.0), vec![]);
    let refused = fit(&body, &[short], &Settings::default()).unwrap_err();
    let too_few = FitError::Run {
        name: "CoolDown".into(),
        fault: RunFault::TooFewReadings,
    };
    assert_eq!(refused, too_few);
}

/// Sand that conducts worse than the tables say, its heater nearer to the far end: taken for a store of one
/// temperature, loss and capacity came out wrong by a tenth and more.
#[test]
fn the_inside_of_a_poor_conductor_is_found_with_the_rest() {
    let mut cooker = Preset::SandInPerlite.cooker(200.0, 11.0);
    cooker.jacket = Jacket::Measured {
        loss_w_k: 0.5,
        capacity_j_k: 2000.0,
    };
    let body = Body::new(&site(), &cooker).unwrap();
    let truth = Values {
        loss_w_k: 0.6,
        capacity: 0.92,
        within: 0.75,
        heater_tilt: 0.4,
        ..*body.described()
    };
    let runs = heat_cool_boil(&body, &truth, &mut Noise(5));
    let fit = fit(&body, &runs, &Settings::default()).unwrap();
    assert_eq!(fit.store, StoreKind::Uneven);
    for (parameter, share) in [(Parameter::Loss, 0.05), (Parameter::StoreCapacity, 0.05)] {
        let found = fit.estimate(parameter).unwrap();
        let off = found.value / truth.get(parameter) - 1.0;
        assert!(off.abs() < share, "{parameter:?}: {off}");
    }
    assert!(
        (fit.values.within - truth.within).abs() < 0.1,
        "{:?}",
        fit.values
    );
}
