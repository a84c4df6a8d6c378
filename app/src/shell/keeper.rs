//! Keeps a household on the device, and loses nothing while doing so.
//!
//! Before every write the keeper looks whether another window has written since; if so, what was
//! done here is done again on top of that. What can't be read is put aside, never written over.
//! No signals here: the keeper works on any [`Shelf`].

mod asides;
#[cfg(test)]
mod tests;

use model::local_time::LocalTime;

use crate::platform::storage::{Shelf, StorageError};
use crate::shell::walked::let_go;
use crate::state::action::{Action, apply};
use crate::state::document::{Document, Whose};
use crate::state::saved::{DecodeError, Layout, decode, encode};

pub use asides::{Aside, AsideWhy};

/// What is done with a document between two saves.
#[derive(Debug, Clone)]
enum Change {
    /// An action, with when.
    Act(Box<Action>, LocalTime),
    /// Another document took its place.
    Replace(Box<Document>),
}

/// Why nothing is written at all.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lock {
    /// A newer version of the app wrote what is there.
    Newer,
    /// What is there can't be read and could not be put aside.
    DamagedInPlace,
}

/// How things stand with saving.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SaveStatus {
    /// All is kept.
    Saved,
    /// A change is about to be kept.
    Pending,
    /// What was kept was cleared while it was shown, and nothing has changed since.
    Cleared,
    /// The last attempt failed; the next one may not.
    Failed(StorageError),
    /// Nothing is written, so that what is there stays.
    Locked(Lock),
}

/// What a person has to be told once.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Notice {
    /// What was kept could not be read; it is under this key now.
    PutAside {
        /// The key.
        key: String,
    },
    /// Another window changed the household; it is shown as it is now.
    ChangedElsewhere,
    /// As above, and something done here no longer made sense and was left out.
    ChangeLost,
    /// A copy took the household's place; what was there before is put aside.
    CopyBroughtIn,
}

/// Keeps one household on a shelf.
pub struct Keeper {
    shelf: Box<dyn Shelf + Send + Sync>,
    whose: Whose,
    /// The text on the shelf as last read or written here.
    known: Option<String>,
    changes: Vec<Change>,
    /// Whether somebody cleared the shelf of what is shown.
    is_cleared: bool,
    lock: Option<Lock>,
    failure: Option<StorageError>,
}

impl Keeper {
    /// A keeper that has read nothing yet.
    pub fn new(shelf: Box<dyn Shelf + Send + Sync>) -> Self {
        Self {
            shelf,
            whose: Whose::Own,
            known: None,
            changes: Vec::new(),
            is_cleared: false,
            lock: None,
            failure: None,
        }
    }

    /// Opens a household: reads it, or starts a new one where there is none.
    pub fn open(&mut self, whose: Whose, now: LocalTime) -> (Document, Option<Notice>) {
        self.whose = whose;
        self.changes.clear();
        self.is_cleared = false;
        self.lock = None;
        self.failure = None;
        self.known = match self.shelf.get(key(whose)) {
            Ok(text) => text,
            Err(error) => {
                self.failure = Some(error);
                None
            }
        };
        let Some(text) = self.known.clone() else {
            return (Document::new(whose), None);
        };
        match self.read(&text) {
            Ok(document) => (document, None),
            Err(DecodeError::Newer { .. }) => {
                self.lock = Some(Lock::Newer);
                (Document::new(whose), None)
            }
            Err(_) => {
                let notice = self.put_damaged_aside(&text, now);
                (Document::new(whose), notice)
            }
        }
    }

    /// Notes an action that was carried out, to be kept with the next save.
    pub fn note(&mut self, action: Action, now: LocalTime) {
        self.changes.push(Change::Act(Box::new(action), now));
    }

    /// Notes that another document took the place of the one that was opened.
    pub(super) fn note_replaced(&mut self, document: &Document) {
        self.changes
            .push(Change::Replace(Box::new(document.clone())));
    }

    /// The key the household is kept under.
    pub(super) fn key(&self) -> &'static str {
        key(self.whose)
    }

    /// How things stand.
    pub fn status(&self) -> SaveStatus {
        match (&self.lock, &self.failure) {
            (Some(lock), _) => SaveStatus::Locked(*lock),
            (None, Some(error)) => SaveStatus::Failed(error.clone()),
            (None, None) if !self.changes.is_empty() => SaveStatus::Pending,
            (None, None) if self.is_cleared => SaveStatus::Cleared,
            (None, None) => SaveStatus::Saved,
        }
    }

    /// Writes what has changed. When another window wrote meanwhile, `document` becomes what it
    /// wrote with our changes on top.
    pub fn save(&mut self, document: &mut Document, now: LocalTime) -> Option<Notice> {
        if self.changes.is_empty() || self.lock.is_some() {
            return None;
        }
        let notice = self.catch_up(document, now);
        if self.lock.is_none() {
            self.failure = self.write(document, now).err();
        }
        notice
    }

    /// As [`save`](Self::save), when the page may be about to go: a shelf that was cleared stays so,
    /// since nobody is there any more to see that it fills again.
    pub fn save_on_leaving(&mut self, document: &mut Document, now: LocalTime) -> Option<Notice> {
        if self.known.is_some() && matches!(self.shelf.get(key(self.whose)), Ok(None)) {
            return None;
        }
        self.save(document, now)
    }

    /// Looks whether another window wrote; then `document` becomes what it wrote, with the
    /// changes that are not kept yet on top.
    pub fn look_again(&mut self, document: &mut Document, now: LocalTime) -> Option<Notice> {
        if self.lock.is_some() {
            return None;
        }
        self.catch_up(document, now)
    }

    /// Puts another document in the place of the present one, which is put aside first.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when there is no room to put it aside: then nothing has changed.
    pub fn replace(
        &mut self,
        document: &mut Document,
        new: Document,
        now: LocalTime,
    ) -> Result<Option<Notice>, StorageError> {
        if document.household.is_some() {
            let text = encode(document, now, Layout::Compact)
                .map_err(|error| StorageError::Other(error.to_string()))?;
            self.put_aside(&text, AsideWhy::Replaced, now)?;
        }
        let new = Document {
            whose: self.whose,
            ..new
        };
        self.changes = vec![Change::Replace(Box::new(new.clone()))];
        *document = new;
        let notice = self.save(document, now);
        Ok(notice.or(Some(Notice::CopyBroughtIn)))
    }

    /// The text on the shelf, whatever it is: the way out when it can't be read or written over.
    pub fn raw(&self) -> Option<String> {
        self.shelf.get(key(self.whose)).ok().flatten()
    }

    fn catch_up(&mut self, document: &mut Document, now: LocalTime) -> Option<Notice> {
        let text = match self.shelf.get(key(self.whose)) {
            Ok(text) => text,
            Err(error) => {
                self.failure = Some(error);
                return None;
            }
        };
        if text == self.known {
            return None;
        }
        self.known.clone_from(&text);
        let Some(text) = text else {
            // Somebody cleared it under us, and may have meant to: what is shown is kept again with
            // the next change, all of it, and not before.
            self.is_cleared = true;
            return None;
        };
        match self.read(&text) {
            Ok(theirs) => {
                self.is_cleared = false;
                *document = theirs;
                Some(self.redo(document))
            }
            Err(DecodeError::Newer { .. }) => {
                self.lock = Some(Lock::Newer);
                None
            }
            Err(_) => {
                let notice = self.put_damaged_aside(&text, now);
                self.changes = vec![Change::Replace(Box::new(document.clone()))];
                notice
            }
        }
    }

    /// Carries the changes out again on what another window wrote.
    fn redo(&mut self, document: &mut Document) -> Notice {
        let mut notice = Notice::ChangedElsewhere;
        self.changes.retain(|change| match change {
            Change::Act(action, at) => {
                let fits = apply(document, (**action).clone(), *at).is_ok();
                if !fits {
                    notice = Notice::ChangeLost;
                }
                fits
            }
            Change::Replace(new) => {
                *document = (**new).clone();
                true
            }
        });
        notice
    }

    fn write(&mut self, document: &Document, now: LocalTime) -> Result<(), StorageError> {
        let text = encode(document, now, Layout::Compact)
            .map_err(|error| StorageError::Other(error.to_string()))?;
        let mut kept = self.shelf.set(key(self.whose), &text);
        if kept == Err(StorageError::Full) {
            // What can be worked out again must not be in the way of what can't.
            let_go(&*self.shelf);
            kept = self.shelf.set(key(self.whose), &text);
        }
        kept?;
        self.known = Some(text);
        self.changes.clear();
        self.is_cleared = false;
        Ok(())
    }

    /// A household from its text, with the mark of whose it is as the shelf has it.
    fn read(&self, text: &str) -> Result<Document, DecodeError> {
        decode(text).map(|decoded| Document {
            whose: self.whose,
            ..decoded.document
        })
    }

    fn put_damaged_aside(&mut self, text: &str, now: LocalTime) -> Option<Notice> {
        match self.put_aside(text, AsideWhy::Damaged, now) {
            Ok(aside) => {
                // It is safe where it is now. Left here too, it would be put aside on every start;
                // a browser that won't let go of it only makes that happen.
                if self.shelf.remove(key(self.whose)).is_ok() {
                    self.known = None;
                }
                Some(Notice::PutAside { key: aside })
            }
            Err(_) => {
                self.lock = Some(Lock::DamagedInPlace);
                None
            }
        }
    }
}

/// Where a household is kept.
fn key(whose: Whose) -> &'static str {
    match whose {
        Whose::Own => "duskpot.household",
        Whose::Example => "duskpot.example",
    }
}
