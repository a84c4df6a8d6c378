//! Adding, changing and erasing cookers.

mod check;

use model::cooker::{Cooker, Spreads};
use model::journal::Formerly;
use model::local_time::LocalTime;

use crate::state::action::{Done, entries, next_id};
use crate::state::document::{Document, OwnedCooker};
use crate::state::erased::ErasedWhat;
use crate::state::ids::CookerId;
use crate::state::limits;
use crate::state::refused::{Field, Refused, Wrong};

pub(super) fn add(document: &mut Document, name: &str, cooker: Cooker) -> Result<Done, Refused> {
    let name = checked_name(name)?;
    check::check(&cooker)?;
    let id = push(document, name, cooker)?;
    document.in_use = Some(id);
    Ok(Done::AddedCooker(id))
}

pub(super) fn copy(document: &mut Document, id: CookerId, name: &str) -> Result<Done, Refused> {
    let name = checked_name(name)?;
    let cooker = document.cooker(id).ok_or(gone())?.cooker.clone();
    push(document, name, cooker).map(Done::AddedCooker)
}

pub(super) fn rename(document: &mut Document, id: CookerId, name: &str) -> Result<Done, Refused> {
    let name = checked_name(name)?;
    find(document, id)?.name = name;
    Ok(Done::Changed)
}

pub(super) fn change(
    document: &mut Document,
    id: CookerId,
    cooker: Cooker,
    now: LocalTime,
) -> Result<Done, Refused> {
    check::check(&cooker)?;
    // Without a diary there is nothing that was cooked on what it was before.
    let has_diary = document.entries.iter().any(|entry| entry.cooker == id);
    let owned = find(document, id)?;
    let former = std::mem::replace(&mut owned.cooker, cooker);
    if owned.cooker.spreads == former.spreads {
        owned.cooker.spreads = former.spreads.of_what_stays(&former, &owned.cooker);
        // What a store was measured to hold says nothing of one that is filled anew.
        if owned.cooker.store.charges != former.store.charges {
            owned.cooker.store.capacity_share = 1.0;
        }
        // Nor what a pot was measured to lose of another.
        if owned.cooker.pot != former.pot
            && owned.cooker.pot_loss_share.to_bits() == former.pot_loss_share.to_bits()
        {
            owned.cooker.pot_loss_share = 1.0;
        }
    }
    let last = owned.formerly.last();
    let is_going_on = owned.is_asked && last.is_some_and(|last| now.day() <= last.until.day());
    if is_going_on {
        if last.is_some_and(|last| is_same_build(&last.cooker, &owned.cooker)) {
            owned.formerly.pop();
            owned.is_asked = false;
        }
    } else if has_diary && !is_same_build(&former, &owned.cooker) {
        let until = last.map_or(now, |last| last.until.max(now));
        owned.formerly.push(Formerly {
            until,
            cooker: former,
        });
        let n_over = owned.formerly.len().saturating_sub(limits::FORMERLY);
        owned.formerly.drain(..n_over);
        owned.is_asked = true;
    }
    Ok(Done::Changed)
}

/// Changes a cooker to what it always was: nothing is asked, and an answer that was owed is still owed.
pub(super) fn correct(
    document: &mut Document,
    id: CookerId,
    cooker: Cooker,
    now: LocalTime,
) -> Result<Done, Refused> {
    let owned = find(document, id)?;
    let (formerly, is_asked) = (owned.formerly.clone(), owned.is_asked);
    let done = change(document, id, cooker, now)?;
    let owned = find(document, id)?;
    (owned.formerly, owned.is_asked) = (formerly, is_asked);
    Ok(done)
}

/// Whether two are built alike; which pot is the usual one is no part of that.
fn is_same_build(one: &Cooker, other: &Cooker) -> bool {
    let (pot, pot_loss_share) = (other.pot, other.pot_loss_share);
    let spreads = Spreads {
        pot_loss: other.spreads.pot_loss,
        ..one.spreads
    };
    Cooker {
        pot,
        pot_loss_share,
        spreads,
        ..one.clone()
    } == *other
}

pub(super) fn say_rebuilt(
    document: &mut Document,
    id: CookerId,
    is_rebuilt: bool,
) -> Result<Done, Refused> {
    let owned = find(document, id)?;
    if std::mem::take(&mut owned.is_asked) && !is_rebuilt {
        owned.formerly.pop();
    }
    Ok(Done::Changed)
}

pub(super) fn take_into_use(document: &mut Document, id: CookerId) -> Result<Done, Refused> {
    find(document, id)?;
    document.in_use = Some(id);
    Ok(Done::Changed)
}

pub(super) fn erase(
    document: &mut Document,
    id: CookerId,
    now: LocalTime,
) -> Result<Done, Refused> {
    let place = document
        .cookers
        .iter()
        .position(|cooker| cooker.id == id)
        .ok_or(gone())?;
    if document.cookers.len() < 2 {
        return Err(Field::Cooker.refuse(Wrong::LastCooker));
    }
    let cooker = Box::new(document.cookers.remove(place));
    let entries = document
        .entries
        .extract_if(.., |entry| entry.cooker == id)
        .collect::<Vec<_>>();
    let runs = document
        .bench
        .runs
        .extract_if(.., |run| run.cooker == id)
        .collect();
    if entries
        .iter()
        .any(|entry| Some(entry.id) == document.running)
    {
        document.running = None;
    }
    let was_in_use = document.in_use == Some(id);
    if was_in_use {
        document.in_use = document.cookers.first().map(|cooker| cooker.id);
    }
    let what = ErasedWhat::Cooker {
        cooker,
        place,
        was_in_use,
        entries,
        runs,
    };
    Ok(Done::Erased(entries::keep_erased(document, what, now)))
}

fn push(document: &mut Document, name: String, cooker: Cooker) -> Result<CookerId, Refused> {
    if limits::COOKERS <= document.cookers.len() {
        return Err(Field::Cooker.refuse(Wrong::TooMany {
            n_most: limits::COOKERS,
        }));
    }
    let id = CookerId(next_id(document));
    document.cookers.push(OwnedCooker {
        id,
        name,
        cooker,
        formerly: Vec::new(),
        is_asked: false,
    });
    Ok(id)
}

fn find(document: &mut Document, id: CookerId) -> Result<&mut OwnedCooker, Refused> {
    document
        .cookers
        .iter_mut()
        .find(|cooker| cooker.id == id)
        .ok_or(gone())
}

fn gone() -> Refused {
    Field::Cooker.refuse(Wrong::Gone)
}

pub(super) fn checked_name(name: &str) -> Result<String, Refused> {
    let name = name.trim();
    if name.is_empty() {
        return Err(Field::Name.refuse(Wrong::Empty));
    }
    if limits::NAME_LETTERS < name.chars().count() {
        return Err(Field::Name.refuse(Wrong::TooLong {
            n_most: limits::NAME_LETTERS,
        }));
    }
    Ok(name.to_owned())
}
