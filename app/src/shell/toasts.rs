//! What was just done, with the way to take it back.

use crate::reactive::*;

use crate::state::action::Action;
use crate::state::document::Document;
use crate::state::erased::ErasedWhat;
use crate::state::ids::ErasedId;

/// A note that comes and goes.
#[derive(Debug, Clone, PartialEq)]
pub struct ToastNote {
    /// Tells one from the next, even when they say the same.
    pub number: u32,
    /// What it says.
    pub about: ToastAbout,
    /// What takes it back.
    pub undo: Option<Action>,
}

/// What a note says.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ToastAbout {
    /// An entry was erased.
    EntryErased,
    /// A cooker was erased, with its entries.
    CookerErased {
        /// Its name.
        name: String,
    },
    /// The sky of a day was erased.
    SkyErased,
    /// A test run was erased.
    RunErased {
        /// Its name.
        name: String,
    },
    /// A reading of a test run was erased.
    ReadingErased,
    /// It is back.
    BroughtBack,
    /// A pot went in.
    PotIn,
    /// What was added is gone again.
    TakenBack,
    /// Something that was seen is in the diary.
    Noted,
    /// It stands in place of the hours of the day that were told before.
    HoursReplaced,
    /// It stands in place of the day's number of hours.
    NumberReplaced,
    /// A reading of a test run is kept.
    WrittenDown,
    /// It stands in place of what was written down for that time before.
    Overwritten {
        /// What was, in words.
        was: String,
        /// When that was read, in words.
        time: String,
    },
    /// What the bench's worker says.
    Said(String),
    /// What was found is in the description of a cooker.
    FitUsed {
        /// Its name.
        cooker: String,
    },
}

/// How long a note stays. Long enough to read it slowly and reach for the button. \[ms\]
pub const TOAST_MS: u32 = 10_000;

/// The notes, one at a time. Copies stand for the same ones.
#[derive(Clone, Copy)]
pub struct Toasts {
    note: RwSignal<Option<ToastNote>>,
    next: StoredValue<u32>,
}

impl Default for Toasts {
    fn default() -> Self {
        Self {
            note: RwSignal::new(None),
            next: StoredValue::new(0),
        }
    }
}

impl Toasts {
    /// The note that is shown.
    pub fn shown(&self) -> Signal<Option<ToastNote>> {
        self.note.into()
    }

    /// Shows a note at once, in place of the one that is shown: the way back that is offered is
    /// always that of what was done last.
    pub fn show(&self, about: ToastAbout, undo: Option<Action>) {
        let number = self.next.get_value();
        self.next.set_value(number.wrapping_add(1));
        self.note.set(Some(ToastNote {
            number,
            about,
            undo,
        }));
    }

    /// Puts the note with this number away, if it is still there.
    pub fn put_away(&self, number: u32) {
        let is_there = self
            .note
            .with_untracked(|note| note.as_ref().is_some_and(|note| note.number == number));
        if is_there {
            self.note.set(None);
        }
    }

    /// Puts away whatever is shown: what was done since is another matter.
    pub fn clear(&self) {
        self.note.set(None);
    }

    pub(super) fn show_erased(&self, id: ErasedId, document: &Document) {
        let erased = document.erased.iter().find(|erased| erased.id == id);
        let about = match erased.map(|erased| &erased.what) {
            Some(ErasedWhat::Entry { .. }) => ToastAbout::EntryErased,
            Some(ErasedWhat::Cooker { cooker, .. }) => ToastAbout::CookerErased {
                name: cooker.name.clone(),
            },
            Some(ErasedWhat::Sky { .. }) => ToastAbout::SkyErased,
            Some(ErasedWhat::Run { run, .. }) => ToastAbout::RunErased {
                name: run.about.name.clone(),
            },
            Some(ErasedWhat::Reading { .. }) => ToastAbout::ReadingErased,
            None => return,
        };
        self.show(about, Some(Action::BringBack(id)));
    }
}
