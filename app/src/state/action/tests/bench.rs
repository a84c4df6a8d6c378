//! What is done at the bench.

use model::bench::readings::{Column, Correction};
use model::bench::{PotIn, RunKind};
use model::cooker::Cooker;
use model::journal::What;

use super::check_refused;
use crate::state::action::{Action, BenchAction, Done, apply};
use crate::state::bench::{KeptFit, Reading, RunAbout, RunReadings, TestRun};
use crate::state::document::Document;
use crate::state::ids::RunId;
use crate::state::refused::{Field, Wrong};
use crate::state::sample::{add_run, at, done, full_bench, kept_fit, kept_text, set_up, test_run};

fn act(document: Document, action: BenchAction) -> Document {
    done(document, [Action::Bench(action)])
}

/// A boil that has begun, nothing read yet.
fn begun() -> (Document, RunId) {
    let document = set_up();
    let cooker = document.cookers[0].id;
    let mut about = test_run().about;
    about.kind = RunKind::Boil;
    let document = act(
        document,
        BenchAction::Add {
            cooker,
            started: at(16, 0),
            ended: None,
            about: Box::new(about),
            pots: Vec::new(),
            readings: RunReadings::Typed(Vec::new()),
        },
    );
    let run = document.bench.runs[0].id;
    (document, run)
}

fn read(minute: i64, store_c: f64) -> Reading {
    Reading {
        store_c: Some(store_c),
        ..Reading::none(at(16, minute))
    }
}

fn the_run(document: &Document) -> &TestRun {
    &document.bench.runs[0]
}

#[test]
fn a_run_is_begun_read_and_finished() {
    let (mut document, run) = begun();
    assert_eq!(document.bench.going().map(|run| run.id), Some(run));
    let pot = PotIn {
        in_s: 300.0,
        out_s: None,
        left_kg: None,
        ..test_run().pots[0]
    };
    document = act(document, BenchAction::PutPotIn { run, pot });
    let second = Action::Bench(BenchAction::PutPotIn { run, pot });
    check_refused(&document, second, Field::PutIn, Wrong::MealRunning);
    for (minute, store_c) in [(9, 210.0), (4, 250.0), (12, 190.0)] {
        let reading = read(minute, store_c);
        document = act(document, BenchAction::AddReading { run, reading });
    }
    let late = at(16, 12);
    let pot_only = Reading {
        pot_c: Some(95.0),
        ..Reading::none(late)
    };
    document = act(
        document,
        BenchAction::AddReading {
            run,
            reading: pot_only,
        },
    );
    let typed = the_run(&document).typed();
    assert!(typed.is_sorted_by(|a, b| a.at < b.at));
    assert_eq!((typed.len(), typed[2].store_c), (3, Some(190.0)));
    assert_eq!(typed[2].pot_c, Some(95.0));
    assert!((the_run(&document).rows()[2].time_s - 720.0).abs() < 1e-9);
    let early = Action::Bench(BenchAction::Finish {
        run,
        at: at(16, 10),
    });
    check_refused(
        &document,
        early,
        Field::OutAt,
        Wrong::Before { earliest: late },
    );
    document = act(
        document,
        BenchAction::TakePotOut {
            run,
            at: at(16, 25),
            left_kg: Some(0.9),
        },
    );
    assert_eq!(the_run(&document).pots[0].out_s, Some(1500.0));
    document = act(
        document,
        BenchAction::Finish {
            run,
            at: at(16, 30),
        },
    );
    assert!(document.bench.going().is_none());
    let after = Action::Bench(BenchAction::AddReading {
        run,
        reading: read(40, 100.0),
    });
    let latest = at(16, 30);
    check_refused(&document, after, Field::At, Wrong::After { latest });
    document = act(document, BenchAction::GoOn(run));
    assert!(document.bench.going().is_some());
}

#[test]
fn what_cannot_be_read_is_refused() {
    let (document, run) = begun();
    let add = |reading| Action::Bench(BenchAction::AddReading { run, reading });
    for (reading, field, wrong) in [
        (Reading::none(at(16, 5)), Field::ReadingC, Wrong::Empty),
        (
            read(5, 900.0),
            Field::ReadingC,
            Wrong::TooHigh { most: 650.0 },
        ),
        (
            Reading {
                at: at(21, 0),
                ..read(0, 200.0)
            },
            Field::At,
            Wrong::InFuture,
        ),
        (
            read(-5, 200.0),
            Field::At,
            Wrong::Before {
                earliest: at(16, 0),
            },
        ),
    ] {
        check_refused(&document, add(reading), field, wrong);
    }
    let more = PotIn {
        water_kg: 5.0,
        ..test_run().pots[0]
    };
    let too_full = Action::Bench(BenchAction::PutPotIn { run, pot: more });
    let holds_l = 4.0;
    check_refused(
        &document,
        too_full,
        Field::WaterKg,
        Wrong::PotTooSmall { holds_l },
    );
    let gone = Action::Bench(BenchAction::Erase(RunId(99)));
    check_refused(&document, gone, Field::Run, Wrong::Gone);
}

#[test]
fn what_was_erased_comes_back() {
    let before = full_bench();
    let run = before.bench.runs[0].id;
    let mut document = before.clone();
    for erase in [
        Action::Bench(BenchAction::Erase(run)),
        Action::EraseCooker(before.bench.runs[0].cooker),
    ] {
        let Ok(Done::Erased(id)) = apply(&mut document, erase, at(20, 0)) else {
            panic!("not erased")
        };
        assert!(document.bench.run(run).is_none());
        apply(&mut document, Action::BringBack(id), at(20, 0)).unwrap();
        assert_eq!(document.bench, before.bench);
    }
    let first = the_run(&before).typed()[0];
    let erase = Action::Bench(BenchAction::EraseReading { run, at: first.at });
    let Ok(Done::Erased(id)) = apply(&mut document, erase, at(20, 0)) else {
        panic!("not erased")
    };
    // What was found stood on all readings.
    assert_eq!(the_run(&document).fit, None);
    apply(&mut document, Action::BringBack(id), at(20, 0)).unwrap();
    assert_eq!(the_run(&document).typed(), the_run(&before).typed());
}

#[test]
fn a_fit_is_kept_with_all_its_runs_until_one_changes() {
    let mut document = set_up();
    let cooker = document.cookers[0].id;
    document = done(
        document,
        [
            add_run(cooker, test_run().readings),
            add_run(cooker, RunReadings::File(kept_text())),
        ],
    );
    let ids: Vec<RunId> = document.bench.runs.iter().map(|run| run.id).collect();
    let mut fit = kept_fit(ids[0]);
    fit.runs.clone_from(&ids);
    let keep = BenchAction::KeepFit {
        of: ids[0],
        fit: Box::new(fit.clone()),
    };
    document = act(document, keep);
    assert_eq!(document.bench.runs[0].fit.as_ref(), Some(&fit));
    // The other is found from the same, and its pot told nothing.
    let other = KeptFit {
        boiling: None,
        standard_w: None,
        ..fit.clone()
    };
    assert_eq!(document.bench.runs[1].fit.as_ref(), Some(&other));
    let plane = document.bench.runs[1].about.plane;
    let about = Box::new(RunAbout {
        air_c: Some(12.0),
        plane,
        ..test_run().about
    });
    document = act(document, BenchAction::ChangeAbout { run: ids[1], about });
    assert!(document.bench.runs[1].fit.is_none());
    assert!(document.bench.runs[0].fit.is_some());
}

#[test]
fn a_spread_stays_with_the_figure_that_was_measured() {
    let document = set_up();
    let id = document.cookers[0].id;
    let mut cooker = document.cookers[0].cooker.clone();
    cooker.contact.measured_w_m2k = Some(420.0);
    cooker.spreads.contact = Some(0.05);
    cooker.spreads.capacity = Some(0.03);
    let change = |cooker: &Cooker| Action::ChangeCooker {
        id,
        cooker: Box::new(cooker.clone()),
    };
    let document = done(document, [change(&cooker)]);
    assert_eq!(document.cookers[0].cooker, cooker);
    // The form knows nothing of spreads; a figure that is typed is another one.
    cooker.contact.measured_w_m2k = Some(500.0);
    let document = done(document, [change(&cooker)]);
    let spreads = document.cookers[0].cooker.spreads;
    assert_eq!((spreads.contact, spreads.capacity), (None, Some(0.03)));
}

#[test]
fn what_was_found_is_used_once_and_taken_back() {
    let document = set_up();
    let cooker = document.cookers[0].id;
    let document = done(document, [add_run(cooker, test_run().readings)]);
    let run = document.bench.runs[0].id;
    let keep = || BenchAction::KeepFit {
        of: run,
        fit: Box::new(kept_fit(run)),
    };
    let document = act(document, keep());
    let described = document.cookers[0].cooker.clone();
    let mut measured = described.clone();
    measured.store.capacity_share = 0.8;
    let take_over = |cooker: &Cooker, described: Option<&Cooker>| BenchAction::UseFit {
        run,
        cooker: Box::new(cooker.clone()),
        described: described.map(|described| Box::new(described.clone())),
    };
    let used = act(document.clone(), take_over(&measured, Some(&described)));
    assert_eq!(used.cookers[0].cooker, measured);
    assert!(!used.cookers[0].is_asked);
    // Found again, it is still known what it was found from.
    let again = act(used.clone(), keep());
    let from = |document: &Document| {
        let cooker = &document.cookers[0].cooker;
        document
            .bench
            .described(&document.bench.runs[0], cooker)
            .clone()
    };
    assert_eq!(from(&again), described);
    // And so it is when a fact of the run is put right and its figures are gone.
    let about = Box::new(test_run().about);
    let mended = act(again, BenchAction::ChangeAbout { run, about });
    assert_eq!(mended.bench.runs[0].fit, None);
    assert_eq!(from(&mended), described);
    // What is described anew by hand is what counts.
    let mut by_hand = measured.clone();
    by_hand.store.cutout_c -= 10.0;
    let change = Action::ChangeCooker {
        id: cooker,
        cooker: Box::new(by_hand.clone()),
    };
    assert_eq!(from(&done(mended, [change])), by_hand);
    let back = act(used, take_over(&described, None));
    assert_eq!(back, document);
}

#[test]
fn no_readings_count_twice_however_often_something_was_taken_over() {
    let document = set_up();
    let cooker = document.cookers[0].id;
    let runs = [(); 2].map(|()| add_run(cooker, test_run().readings));
    let mut document = done(document, runs);
    let ids = [document.bench.runs[0].id, document.bench.runs[1].id];
    let mut states = vec![document.cookers[0].cooker.clone()];
    for (run, share) in ids.into_iter().zip([0.8, 0.9]) {
        let now = document.cookers[0].cooker.clone();
        let mut measured = now.clone();
        measured.store.capacity_share = share;
        states.push(measured.clone());
        let fit = Box::new(kept_fit(run));
        document = act(document, BenchAction::KeepFit { of: run, fit });
        document = act(
            document,
            BenchAction::UseFit {
                run,
                cooker: Box::new(measured),
                described: Some(Box::new(now)),
            },
        );
    }
    let described = |run: usize| {
        let bench = &document.bench;
        bench.described(&bench.runs[run], &document.cookers[0].cooker)
    };
    assert_eq!(*described(0), states[0]);
    assert_eq!(*described(1), states[1]);
}

#[test]
fn what_was_measured_leaves_an_open_question_open() {
    let document = set_up();
    let id = document.cookers[0].id;
    let mut rebuilt = document.cookers[0].cooker.clone();
    rebuilt.store.cutout_c -= 20.0;
    let change = Action::ChangeCooker {
        id,
        cooker: Box::new(rebuilt),
    };
    let read = Action::AddEntry {
        at: at(7, 0),
        what: What::Reading { store_c: 84.5 },
    };
    let document = done(document, [read, change]);
    assert!(document.cookers[0].is_asked);
    let document = done(document, [add_run(id, test_run().readings)]);
    let run = document.bench.runs[0].id;
    let fit = Box::new(kept_fit(run));
    let document = act(document, BenchAction::KeepFit { of: run, fit });
    let described = document.cookers[0].cooker.clone();
    let mut measured = described.clone();
    measured.store.capacity_share = 0.8;
    let used = act(
        document.clone(),
        BenchAction::UseFit {
            run,
            cooker: Box::new(measured),
            described: Some(Box::new(described)),
        },
    );
    assert!(used.cookers[0].is_asked);
    assert_eq!(used.cookers[0].formerly, document.cookers[0].formerly);
}

#[test]
fn what_is_written_over_is_known_and_can_be_brought_back() {
    let (document, run) = begun();
    let first = read(10, 250.0);
    let document = act(
        document,
        BenchAction::AddReading {
            run,
            reading: first,
        },
    );
    let air = Reading {
        air_c: Some(21.0),
        ..Reading::none(at(16, 10))
    };
    assert_eq!(the_run(&document).overwritten(&air), None);
    assert_eq!(the_run(&document).overwritten(&first), None);
    let other = read(10, 205.0);
    assert_eq!(the_run(&document).overwritten(&other), Some(first));
    let over = act(
        document.clone(),
        BenchAction::AddReading {
            run,
            reading: other,
        },
    );
    let readings = the_run(&document).typed().to_vec();
    let back = BenchAction::ChangeReadings { run, readings };
    assert_eq!(act(over, back).bench, document.bench);
    let unordered = vec![read(12, 1.0), read(10, 1.0)];
    let unordered = Action::Bench(BenchAction::ChangeReadings {
        run,
        readings: unordered,
    });
    check_refused(&document, unordered, Field::At, Wrong::Gone);
}

#[test]
fn rows_of_a_text_are_put_right_and_what_was_found_from_it_goes() {
    let mut document = set_up();
    let cooker = document.cookers[0].id;
    document = done(document, [add_run(cooker, RunReadings::File(kept_text()))]);
    let run = document.bench.runs[0].id;
    let fit = Box::new(kept_fit(run));
    document = act(document, BenchAction::KeepFit { of: run, fit });
    let cell = |column, value| Correction {
        line: 12,
        column,
        value,
    };
    let corrections = vec![cell(Column::Store, Some(199.5)), cell(Column::Pot, None)];
    let correct = |corrections| BenchAction::CorrectRows { run, corrections };
    document = act(document, correct(corrections.clone()));
    let RunReadings::File(text) = &the_run(&document).readings else {
        panic!("typed")
    };
    assert_eq!(text.hints.corrections, corrections);
    assert_eq!((&text.key, text.rows), (&kept_text().key, 1440));
    assert!(the_run(&document).fit.is_none());
    // No thermometer of a pot shows it, and a time is no reading.
    for wrong in [cell(Column::Pot, Some(900.0)), cell(Column::Time, None)] {
        let action = Action::Bench(correct(vec![wrong]));
        assert!(apply(&mut document.clone(), action, at(20, 0)).is_err());
    }
}
