//! The diary: its entries, the sky, the running meal, what was erased.

mod check;

pub(super) use check::{check as check_entry, check_meal, check_past};

use model::journal::{Meal, What};
use model::local_time::{Day, LocalTime};
use model::sun::DayLog;

use crate::state::action::{Done, Seen, bench, next_id};
use crate::state::document::{Document, Entry};
use crate::state::erased::{Erased, ErasedWhat};
use crate::state::ids::{EntryId, ErasedId};
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};

pub(super) fn add(
    document: &mut Document,
    at: LocalTime,
    what: What,
    now: LocalTime,
) -> Result<Done, Refused> {
    check_entry(at, &what, now)?;
    push(document, at, what).map(Done::AddedEntry)
}

pub(super) fn change(
    document: &mut Document,
    id: EntryId,
    at: LocalTime,
    what: What,
    now: LocalTime,
) -> Result<Done, Refused> {
    check_entry(at, &what, now)?;
    let place = place_of(document, id)?;
    if !matches!(what, What::Meal(_)) && document.running == Some(id) {
        document.running = None;
    }
    let cooker = document.entries.remove(place).cooker;
    insert(
        document,
        Entry {
            id,
            cooker,
            at,
            what,
            is_right: false,
        },
    );
    Ok(Done::Changed)
}

pub(super) fn keep(document: &mut Document, id: EntryId) -> Result<Done, Refused> {
    let place = place_of(document, id)?;
    if let Some(entry) = document.entries.get_mut(place) {
        entry.is_right = true;
    }
    Ok(Done::Changed)
}

pub(super) fn erase(document: &mut Document, id: EntryId, now: LocalTime) -> Result<Done, Refused> {
    let place = place_of(document, id)?;
    let entry = document.entries.remove(place);
    let was_running = document.running == Some(id);
    if was_running {
        document.running = None;
    }
    let what = ErasedWhat::Entry { entry, was_running };
    Ok(Done::Erased(keep_erased(document, what, now)))
}

pub(super) fn start_meal(
    document: &mut Document,
    at: LocalTime,
    meal: Meal,
    now: LocalTime,
) -> Result<Done, Refused> {
    let what = What::Meal(meal);
    check_entry(at, &what, now)?;
    if let Some(running) = document.running_meal()
        && let What::Meal(meal) = &running.what
        && at < meal.leaves_at()
    {
        return Err(Field::PutIn.refuse(Wrong::MealRunning));
    }
    let id = push(document, at, what)?;
    document.running = Some(id);
    // What was warmed for this pot was warmed for no other: the next is safe to be taken as cold.
    if let Some(plan) = &mut document.plan {
        plan.start_c = None;
    }
    Ok(Done::AddedEntry(id))
}

pub(super) fn see_meal(
    document: &mut Document,
    id: EntryId,
    seen: Seen,
    now: LocalTime,
) -> Result<Done, Refused> {
    let entry = document.entry(id).ok_or(gone())?;
    let What::Meal(mut meal) = entry.what.clone() else {
        return Err(Field::Entry.refuse(Wrong::NotAMeal));
    };
    let at = entry.at;
    match seen {
        Seen::BoiledAt(seen_at) => meal.outcome.boiled_at = Some(seen_at),
        Seen::NotBoiledBy(seen_at) => meal.outcome.not_boiled_by = Some(seen_at),
        Seen::DoneAt(seen_at) => meal.outcome.done_at = Some(seen_at),
        Seen::NotDoneBy(seen_at) => meal.outcome.not_done_by = Some(seen_at),
        Seen::TakenOutAt(seen_at) => meal.out = Some(seen_at),
    }
    change(document, id, at, What::Meal(meal), now)
}

pub(super) fn set_sky(
    document: &mut Document,
    day: Day,
    log: DayLog,
    possible_h: f64,
    now: LocalTime,
) -> Result<Done, Refused> {
    check::check_sky(day, &log, possible_h, now)?;
    // Hours that were tapped one by one are not tapped again for one wrong number.
    let is_told_alike = |former: &DayLog| {
        let is_by_hour = |log: &DayLog| matches!(log, DayLog::Hourly(_));
        is_by_hour(former) == is_by_hour(&log)
    };
    match document.skies.insert(day, log) {
        Some(former) if !is_told_alike(&former) => {
            let what = ErasedWhat::Sky { day, log: former };
            Ok(Done::Replaced(keep_erased(document, what, now)))
        }
        _ => Ok(Done::Changed),
    }
}

pub(super) fn erase_sky(
    document: &mut Document,
    day: Day,
    now: LocalTime,
) -> Result<Done, Refused> {
    let log = document
        .skies
        .remove(&day)
        .ok_or(Field::Day.refuse(Wrong::Gone))?;
    Ok(Done::Erased(keep_erased(
        document,
        ErasedWhat::Sky { day, log },
        now,
    )))
}

pub(super) fn keep_erased(document: &mut Document, what: ErasedWhat, now: LocalTime) -> ErasedId {
    let id = ErasedId(next_id(document));
    document.erased.push(Erased { id, at: now, what });
    let n_over = document.erased.len().saturating_sub(limits::ERASED);
    document.erased.drain(..n_over);
    id
}

pub(super) fn bring_back(
    document: &mut Document,
    id: ErasedId,
    now: LocalTime,
) -> Result<Done, Refused> {
    let place = document
        .erased
        .iter()
        .position(|erased| erased.id == id)
        .ok_or(gone())?;
    check_way_back(document, place)?;
    match document.erased.remove(place).what {
        ErasedWhat::Entry { entry, was_running } => {
            if was_running && document.running.is_none() {
                document.running = Some(entry.id);
            }
            insert(document, entry);
        }
        ErasedWhat::Cooker {
            cooker,
            place,
            was_in_use,
            entries,
            runs,
        } => {
            document.bench.runs.extend(runs);
            if was_in_use {
                document.in_use = Some(cooker.id);
            }
            document
                .cookers
                .insert(place.min(document.cookers.len()), *cooker);
            for entry in entries {
                insert(document, entry);
            }
        }
        // What was logged for the day since then goes where this one came from.
        ErasedWhat::Sky { day, log } => {
            if let Some(log) = document.skies.insert(day, log) {
                keep_erased(document, ErasedWhat::Sky { day, log }, now);
            }
        }
        ErasedWhat::Run { run, place } => {
            let runs = &mut document.bench.runs;
            runs.insert(place.min(runs.len()), *run);
        }
        ErasedWhat::Reading { run, reading } => bench::bring_reading_back(document, run, reading),
    }
    Ok(Done::BroughtBack)
}

/// Refuses to bring back what there is no place for.
fn check_way_back(document: &Document, place: usize) -> Result<(), Refused> {
    let n_entries = match document.erased.get(place).map(|erased| &erased.what) {
        Some(ErasedWhat::Entry { entry, .. }) => {
            document
                .cooker(entry.cooker)
                .ok_or(Field::Cooker.refuse(Wrong::Gone))?;
            1
        }
        Some(ErasedWhat::Cooker { entries, runs, .. }) => {
            bench::check_room(document, runs.len())?;
            if limits::COOKERS <= document.cookers.len() {
                return Err(Field::Cooker.refuse(Wrong::TooMany {
                    n_most: limits::COOKERS,
                }));
            }
            entries.len()
        }
        Some(ErasedWhat::Run { run, .. }) => {
            document
                .cooker(run.cooker)
                .ok_or(Field::Cooker.refuse(Wrong::Gone))?;
            bench::check_room(document, 1)?;
            0
        }
        Some(ErasedWhat::Reading { run, .. }) => {
            bench::check_reading_back(document, *run)?;
            0
        }
        Some(ErasedWhat::Sky { .. }) | None => 0,
    };
    room_for(document, n_entries)
}

fn push(document: &mut Document, at: LocalTime, what: What) -> Result<EntryId, Refused> {
    let cooker = document.in_use.ok_or(Field::Cooker.refuse(Wrong::Gone))?;
    room_for(document, 1)?;
    let id = EntryId(next_id(document));
    insert(
        document,
        Entry {
            id,
            cooker,
            at,
            what,
            is_right: false,
        },
    );
    Ok(id)
}

fn room_for(document: &Document, n_entries: usize) -> Result<(), Refused> {
    if limits::ENTRIES < document.entries.len() + n_entries {
        return Err(Field::Entry.refuse(Wrong::TooMany {
            n_most: limits::ENTRIES,
        }));
    }
    Ok(())
}

/// Puts an entry where its time belongs; of two at the same time the older one comes first.
fn insert(document: &mut Document, entry: Entry) {
    let place = document
        .entries
        .partition_point(|other| (other.at, other.id) < (entry.at, entry.id));
    document.entries.insert(place, entry);
}

fn place_of(document: &Document, id: EntryId) -> Result<usize, Refused> {
    document
        .entries
        .iter()
        .position(|entry| entry.id == id)
        .ok_or(gone())
}

fn gone() -> Refused {
    Field::Entry.refuse(Wrong::Gone)
}
