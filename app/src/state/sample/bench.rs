//! Test runs, whole and random.

use model::bench::readings::{Column, Correction, ElapsedUnit, Hints};
use model::bench::{
    BoilingTest, ChargeFigures, ChargeSpread, Measured, Parameter, Plane, PotIn, RunKind, Worth,
};
use model::pot::Lid;
use proptest::prelude::*;

use crate::state::action::{Action, BenchAction};
use crate::state::bench::{
    Described, Found, KeptFit, KeptText, Reading, RunAbout, RunReadings, TestRun,
};
use crate::state::ids::{CookerId, RunId};
use crate::state::sample::{TODAY, at, pot};

/// A boil with three readings, and what was found from it.
pub(crate) fn test_run() -> TestRun {
    let id = RunId(0);
    let reading = |minute, store_c, pot_c| Reading {
        store_c: Some(store_c),
        pot_c,
        ..Reading::none(at(16, minute))
    };
    TestRun {
        id,
        cooker: CookerId(0),
        started: at(16, 0),
        ended: Some(at(16, 30)),
        about: RunAbout {
            name: "Evening boil".into(),
            kind: RunKind::Boil,
            air_c: Some(18.5),
            heater_w: None,
            plane: Plane {
                intercept_m2: Some(0.6),
                wind_m_s: None,
            },
            notes: "A lid of clay.".into(),
        },
        pots: vec![PotIn {
            in_s: 300.0,
            out_s: Some(1500.0),
            pot: pot(),
            lid: Lid::On,
            water_kg: 1.0,
            start_c: Some(17.0),
            left_kg: Some(0.95),
        }],
        readings: RunReadings::Typed(vec![
            reading(0, 251.0, None),
            reading(5, 249.5, Some(17.0)),
            reading(20, 160.0, Some(96.0)),
        ]),
        fit: Some(kept_fit(id)),
        used: None,
    }
}

/// What a fit found.
pub(crate) fn kept_fit(run: RunId) -> KeptFit {
    KeptFit {
        at: at(17, 0),
        runs: vec![run],
        worth: Worth::Rough,
        scatter_k: 0.8,
        found: vec![Found {
            parameter: Parameter::Contact,
            measured: Measured {
                value: 412.5,
                sd: 31.0,
            },
            told: true,
        }],
        figures: Some(ChargeFigures {
            litres_per_charge: 3,
            first_litre_s: Some(900.0),
            power_50_k_w: Some(640.0),
            hold_s: None,
            overnight_loss: 0.35,
            sun_to_food: 0.2,
        }),
        spread: Some(ChargeSpread {
            litres_per_charge: Some(0.5),
            first_litre_s: Some(45.0),
            power_50_k_w: Some(30.0),
            hold_s: None,
            overnight_loss: Some(0.02),
            sun_to_food: Some(0.01),
        }),
        boiling: Some(BoilingTest {
            start_c: 17.0,
            boil_s: Some(900.0),
            corrected_s: Some(870.5),
            hottest_c: 96.0,
            evaporated_kg: Some(0.05),
            efficiency: Some(0.61),
        }),
        standard_w: None,
        described: None,
        described_boil_s: None,
    }
}

/// The same with what the description foresaw: the seat twice as good, the litre in half the time.
pub(crate) fn kept_beside_description(run: RunId) -> KeptFit {
    let fit = kept_fit(run);
    let mut found = fit.found.clone();
    for found in &mut found {
        found.measured = Measured {
            value: 825.0,
            sd: 412.5,
        };
    }
    let figures = fit.figures.map(|figures| ChargeFigures {
        first_litre_s: Some(450.0),
        ..figures
    });
    KeptFit {
        described: Some(Described {
            working_c: 188.0,
            found,
            figures,
            spread: fit.spread,
        }),
        described_boil_s: Some(480.0),
        ..fit
    }
}

/// Readings that are kept beside the document.
pub(crate) fn kept_text() -> KeptText {
    KeptText {
        key: "9f0c2a".into(),
        name: "logger.csv".into(),
        rows: 1440,
        span_s: 86_340.0,
        hints: Hints {
            columns: Some(vec![Column::Time, Column::Store, Column::Unused]),
            elapsed: Some(ElapsedUnit::Minutes),
            degrees: None,
            corrections: vec![
                Correction {
                    line: 7,
                    column: Column::Store,
                    value: Some(249.5),
                },
                Correction {
                    line: 9,
                    column: Column::Store,
                    value: None,
                },
            ],
        },
    }
}

/// As an action, about the cooker with this number.
pub(crate) fn add_run(cooker: CookerId, readings: RunReadings) -> Action {
    let run = test_run();
    Action::Bench(BenchAction::Add {
        cooker,
        started: run.started,
        ended: run.ended,
        about: Box::new(run.about),
        pots: run.pots,
        readings,
    })
}

/// Any action at the bench, sensible or not.
pub(super) fn any_bench_action() -> impl Strategy<Value = BenchAction> {
    let id = || (0..14_u32).prop_map(RunId);
    let time = || (-1..2_i32, 0..86_400_i64).prop_map(|(day, s)| TODAY.plus(day).at_s(s));
    let reading = (
        time(),
        -50.0..900.0_f64,
        proptest::option::of(-30.0..150.0_f64),
    );
    let reading = reading.prop_map(|(at, store_c, pot_c)| Reading {
        store_c: Some(store_c),
        pot_c,
        ..Reading::none(at)
    });
    let pot_in = (-100.0..20_000.0_f64, -1.0..5.0_f64).prop_map(|(in_s, water_kg)| PotIn {
        in_s,
        out_s: None,
        water_kg,
        ..test_run().pots[0]
    });
    let add = (0..14_u32, proptest::option::of(time()), any::<bool>()).prop_map(
        |(cooker, ended, is_file)| BenchAction::Add {
            cooker: CookerId(cooker),
            started: at(15, 0),
            ended,
            about: Box::new(test_run().about),
            pots: Vec::new(),
            readings: if is_file {
                RunReadings::File(kept_text())
            } else {
                RunReadings::Typed(Vec::new())
            },
        },
    );
    prop_oneof![
        add,
        (id(), reading.clone()).prop_map(|(run, reading)| BenchAction::AddReading { run, reading }),
        (id(), time(), reading).prop_map(|(run, at, reading)| BenchAction::ChangeReading {
            run,
            at,
            reading
        }),
        (id(), time()).prop_map(|(run, at)| BenchAction::EraseReading { run, at }),
        (id(), pot_in).prop_map(|(run, pot)| BenchAction::PutPotIn { run, pot }),
        (id(), time()).prop_map(|(run, at)| BenchAction::TakePotOut {
            run,
            at,
            left_kg: None
        }),
        (id(), time()).prop_map(|(run, at)| BenchAction::Finish { run, at }),
        id().prop_map(BenchAction::GoOn),
        id().prop_map(BenchAction::Erase),
        id().prop_map(|run| BenchAction::KeepFit {
            of: run,
            fit: Box::new(kept_fit(run)),
        }),
    ]
}
