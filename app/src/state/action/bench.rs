//! What a person does at the bench.

mod check;

use model::bench::readings::Correction;
use model::bench::{PotIn, Prices};
use model::cooker::Cooker;
use model::local_time::LocalTime;

use crate::state::action::entries::keep_erased;
use crate::state::action::{Done, cookers, next_id};
use crate::state::bench::{KeptFit, Reading, RunAbout, RunReadings, TestRun, Used};
use crate::state::document::Document;
use crate::state::erased::ErasedWhat;
use crate::state::ids::{CookerId, RunId};
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};

/// Something a person does at the bench.
#[derive(Debug, Clone, PartialEq)]
pub enum BenchAction {
    /// Starts a run, or adds one that is over.
    Add {
        /// The cooker that is tested.
        cooker: CookerId,
        /// When it began.
        started: LocalTime,
        /// When it was over; none for one that begins.
        ended: Option<LocalTime>,
        /// What it is.
        about: Box<RunAbout>,
        /// Pots that were in.
        pots: Vec<PotIn>,
        /// Its readings.
        readings: RunReadings,
    },
    /// Changes what is said of a run.
    ChangeAbout {
        /// Which.
        run: RunId,
        /// What is said now.
        about: Box<RunAbout>,
    },
    /// Adds a reading; to one of the same time, what that one has not.
    AddReading {
        /// The run.
        run: RunId,
        /// What was read.
        reading: Reading,
    },
    /// Puts a reading in the place of another.
    ChangeReading {
        /// The run.
        run: RunId,
        /// When the other was taken.
        at: LocalTime,
        /// What was read.
        reading: Reading,
    },
    /// Puts others in place of the readings, as they were before something was written over.
    ChangeReadings {
        /// The run.
        run: RunId,
        /// The readings, by time.
        readings: Vec<Reading>,
    },
    /// Says which cells of a run's text are put right or left out, all of them.
    CorrectRows {
        /// The run.
        run: RunId,
        /// What is put right.
        corrections: Vec<Correction>,
    },
    /// Erases a reading.
    EraseReading {
        /// The run.
        run: RunId,
        /// When it was taken.
        at: LocalTime,
    },
    /// Puts a pot in.
    PutPotIn {
        /// The run.
        run: RunId,
        /// The pot.
        pot: PotIn,
    },
    /// Takes the pot out that is in.
    TakePotOut {
        /// The run.
        run: RunId,
        /// When.
        at: LocalTime,
        /// Water that is left, where it was weighed. \[kg\]
        left_kg: Option<f64>,
    },
    /// Puts others in place of the pots.
    ChangePots {
        /// The run.
        run: RunId,
        /// The pots.
        pots: Vec<PotIn>,
    },
    /// Finishes a run.
    Finish {
        /// Which.
        run: RunId,
        /// When.
        at: LocalTime,
    },
    /// Lets a finished run go on.
    GoOn(RunId),
    /// Erases a run with its readings.
    Erase(RunId),
    /// Keeps what was found with each run that it was found from.
    KeepFit {
        /// The run whose pot it tells of.
        of: RunId,
        /// What was found.
        fit: Box<KeptFit>,
    },
    /// Takes what was found over into the cooker, or takes that back. Measured is not rebuilt: it was
    /// like this all along.
    UseFit {
        /// A run that it was found from.
        run: RunId,
        /// The cooker from now on.
        cooker: Box<Cooker>,
        /// The description that it was found from; none where nothing found is in it.
        described: Option<Box<Cooker>>,
    },
    /// Says what changes cost.
    SetPrices(Prices),
}

pub(super) fn apply(
    document: &mut Document,
    action: BenchAction,
    now: LocalTime,
) -> Result<Done, Refused> {
    match action {
        BenchAction::Add {
            cooker,
            started,
            ended,
            about,
            pots,
            readings,
        } => {
            let run = TestRun {
                id: RunId(0),
                cooker,
                started,
                ended,
                about: *about,
                pots,
                readings,
                fit: None,
                used: None,
            };
            return add(document, run, now);
        }
        BenchAction::ChangeAbout { run, about } => {
            let about = check::about(*about)?;
            let run = find(document, run)?;
            run.about = about;
            run.fit = None;
        }
        BenchAction::AddReading { run, reading } => add_reading(document, run, reading, now)?,
        BenchAction::ChangeReading { run, at, reading } => {
            let run = find(document, run)?;
            check::reading(run, &reading, now)?;
            let typed = typed(run)?;
            let place = place_of(typed, at)?;
            typed.remove(place);
            put(typed, reading);
            run.fit = None;
        }
        BenchAction::ChangeReadings { run, readings } => {
            let run = find(document, run)?;
            typed(run)?;
            let changed = TestRun {
                readings: RunReadings::Typed(readings),
                ..run.clone()
            };
            check::readings(&changed, now)?;
            *run = TestRun {
                fit: None,
                ..changed
            };
        }
        BenchAction::CorrectRows { run, corrections } => {
            check::corrections(&corrections)?;
            let run = find(document, run)?;
            let RunReadings::File(text) = &mut run.readings else {
                return Err(Field::Readings.refuse(Wrong::Gone));
            };
            text.hints.corrections = corrections;
            run.fit = None;
        }
        BenchAction::EraseReading { run, at } => return erase_reading(document, run, at, now),
        BenchAction::PutPotIn { run, pot } => {
            let run = find(document, run)?;
            if run.pot_in().is_some() {
                return Err(Field::PutIn.refuse(Wrong::MealRunning));
            }
            let mut pots = run.pots.clone();
            pots.push(pot);
            change_pots(run, pots, now)?;
        }
        BenchAction::TakePotOut { run, at, left_kg } => {
            let run = find(document, run)?;
            let out_s = run.since_start_s(at);
            let mut pots = run.pots.clone();
            let pot = pots.last_mut().filter(|pot| pot.out_s.is_none());
            let pot = pot.ok_or(Field::PutIn.refuse(Wrong::Gone))?;
            pot.out_s = Some(out_s);
            pot.left_kg = left_kg;
            change_pots(run, pots, now)?;
        }
        BenchAction::ChangePots { run, pots } => change_pots(find(document, run)?, pots, now)?,
        BenchAction::Finish { run, at } => {
            let run = find(document, run)?;
            check::end(run, at, now)?;
            run.ended = Some(at);
        }
        BenchAction::GoOn(run) => find(document, run)?.ended = None,
        BenchAction::Erase(run) => return erase(document, run, now),
        BenchAction::KeepFit { of, fit } => keep_fit(document, of, *fit)?,
        BenchAction::UseFit {
            run,
            cooker,
            described,
        } => use_fit(document, run, (*cooker, described), now)?,
        BenchAction::SetPrices(prices) => {
            check::prices(&prices)?;
            document.bench.prices = prices;
        }
    }
    Ok(Done::Changed)
}

fn keep_fit(document: &mut Document, of: RunId, fit: KeptFit) -> Result<(), Refused> {
    for id in &fit.runs {
        find(document, *id)?;
    }
    let runs = &mut document.bench.runs;
    for run in runs.iter_mut().filter(|run| fit.runs.contains(&run.id)) {
        let before = run.fit.take();
        // What was found of another run's pot says nothing of this one's.
        let own = if run.id == of {
            Some(&fit)
        } else {
            before.as_ref()
        };
        run.fit = Some(KeptFit {
            boiling: own.and_then(|own| own.boiling),
            standard_w: own.and_then(|own| own.standard_w),
            described_boil_s: own.and_then(|own| own.described_boil_s),
            ..fit.clone()
        });
    }
    Ok(())
}

fn use_fit(
    document: &mut Document,
    id: RunId,
    (cooker, described): (Cooker, Option<Box<Cooker>>),
    now: LocalTime,
) -> Result<(), Refused> {
    let run = find(document, id)?;
    let of = run.cooker;
    let together = run.fit.as_ref().map(|fit| fit.runs.clone());
    let together = together.unwrap_or_default();
    let used = described.map(|described| {
        Box::new(Used {
            described: *described,
            measured: cooker.clone(),
        })
    });
    cookers::correct(document, of, cooker, now)?;
    let runs = document.bench.runs.iter_mut();
    for run in runs.filter(|run| together.contains(&run.id)) {
        run.used.clone_from(&used);
    }
    Ok(())
}

fn add(document: &mut Document, mut run: TestRun, now: LocalTime) -> Result<Done, Refused> {
    document
        .cooker(run.cooker)
        .ok_or(Field::Cooker.refuse(Wrong::Gone))?;
    check_room(document, 1)?;
    run.about = check::about(run.about)?;
    check::run(&run, now)?;
    run.id = RunId(next_id(document));
    let id = run.id;
    document.bench.runs.push(run);
    Ok(Done::AddedRun(id))
}

fn add_reading(
    document: &mut Document,
    run: RunId,
    reading: Reading,
    now: LocalTime,
) -> Result<(), Refused> {
    let run = find(document, run)?;
    check::reading(run, &reading, now)?;
    let typed = typed(run)?;
    if limits::READINGS <= typed.len() {
        return Err(Field::Readings.refuse(Wrong::TooMany {
            n_most: limits::READINGS,
        }));
    }
    put(typed, reading);
    run.fit = None;
    Ok(())
}

fn erase_reading(
    document: &mut Document,
    id: RunId,
    at: LocalTime,
    now: LocalTime,
) -> Result<Done, Refused> {
    let run = find(document, id)?;
    let typed = typed(run)?;
    let place = place_of(typed, at)?;
    let reading = typed.remove(place);
    run.fit = None;
    let what = ErasedWhat::Reading { run: id, reading };
    Ok(Done::Erased(keep_erased(document, what, now)))
}

fn change_pots(run: &mut TestRun, pots: Vec<PotIn>, now: LocalTime) -> Result<(), Refused> {
    let changed = TestRun {
        pots,
        ..run.clone()
    };
    check::pots(&changed, now)?;
    *run = TestRun {
        fit: None,
        ..changed
    };
    Ok(())
}

fn erase(document: &mut Document, id: RunId, now: LocalTime) -> Result<Done, Refused> {
    let mut runs = document.bench.runs.iter();
    let place = runs.position(|run| run.id == id).ok_or(gone())?;
    let run = Box::new(document.bench.runs.remove(place));
    let what = ErasedWhat::Run { run, place };
    Ok(Done::Erased(keep_erased(document, what, now)))
}

/// Refuses more runs than are kept.
pub(super) fn check_room(document: &Document, n_more: usize) -> Result<(), Refused> {
    if limits::RUNS < document.bench.runs.len() + n_more {
        return Err(Field::Run.refuse(Wrong::TooMany {
            n_most: limits::RUNS,
        }));
    }
    Ok(())
}

/// Brings a reading back; what was read at the same time since then stays.
pub(super) fn bring_reading_back(document: &mut Document, id: RunId, reading: Reading) {
    if let Ok(run) = find(document, id)
        && let Ok(typed) = typed(run)
    {
        put_under(typed, reading);
        run.fit = None;
    }
}

/// Whether an erased reading has a run to go back to.
pub(super) fn check_reading_back(document: &Document, id: RunId) -> Result<(), Refused> {
    document.bench.run(id).map(|_| ()).ok_or(gone())
}

fn put(typed: &mut Vec<Reading>, reading: Reading) {
    match typed.binary_search_by_key(&reading.at, |other| other.at) {
        Ok(place) => {
            if let Some(other) = typed.get_mut(place) {
                *other = reading.or(other);
            }
        }
        Err(place) => typed.insert(place, reading),
    }
}

fn put_under(typed: &mut Vec<Reading>, reading: Reading) {
    match typed.binary_search_by_key(&reading.at, |other| other.at) {
        Ok(place) => {
            if let Some(other) = typed.get_mut(place) {
                *other = other.or(&reading);
            }
        }
        Err(place) => typed.insert(place, reading),
    }
}

fn typed(run: &mut TestRun) -> Result<&mut Vec<Reading>, Refused> {
    match &mut run.readings {
        RunReadings::Typed(typed) => Ok(typed),
        RunReadings::File(_) => Err(Field::Readings.refuse(Wrong::Gone)),
    }
}

fn place_of(typed: &[Reading], at: LocalTime) -> Result<usize, Refused> {
    let place = typed.binary_search_by_key(&at, |reading| reading.at);
    place.map_err(|_| Field::Readings.refuse(Wrong::Gone))
}

fn find(document: &mut Document, id: RunId) -> Result<&mut TestRun, Refused> {
    let mut runs = document.bench.runs.iter_mut();
    runs.find(|run| run.id == id).ok_or(gone())
}

fn gone() -> Refused {
    Field::Run.refuse(Wrong::Gone)
}
