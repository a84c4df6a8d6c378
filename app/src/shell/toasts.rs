//! What was just done, with the way to take it back.

use std::collections::VecDeque;

use leptos::prelude::*;

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
    /// It is back.
    BroughtBack,
    /// Something that was seen is in the diary.
    Noted,
}

/// How long a note stays. Long enough to read it slowly and reach for the button. \[ms\]
pub const TOAST_MS: u32 = 10_000;

/// Notes that wait at most: those further back are stale by the time they would be seen.
const MOST_WAITING: usize = 4;

/// The notes, one shown at a time. Copies stand for the same ones.
#[derive(Clone, Copy)]
pub struct Toasts {
    queue: RwSignal<VecDeque<ToastNote>>,
    next: StoredValue<u32>,
}

impl Default for Toasts {
    fn default() -> Self {
        Self {
            queue: RwSignal::new(VecDeque::new()),
            next: StoredValue::new(0),
        }
    }
}

impl Toasts {
    /// The note that is shown.
    pub fn shown(&self) -> Memo<Option<ToastNote>> {
        let queue = self.queue;
        Memo::new(move |_| queue.with(|queue| queue.front().cloned()))
    }

    /// Shows a note after those that wait.
    pub fn show(&self, about: ToastAbout, undo: Option<Action>) {
        let number = self.next.get_value();
        self.next.set_value(number.wrapping_add(1));
        self.queue.update(|queue| {
            queue.push_back(ToastNote {
                number,
                about,
                undo,
            });
            while MOST_WAITING < queue.len() {
                queue.pop_front();
            }
        });
    }

    /// Puts the note with this number away, if it is still there.
    pub fn put_away(&self, number: u32) {
        self.queue
            .update(|queue| queue.retain(|toast| toast.number != number));
    }

    pub(super) fn show_erased(&self, id: ErasedId, document: &Document) {
        let erased = document.erased.iter().find(|erased| erased.id == id);
        let about = match erased.map(|erased| &erased.what) {
            Some(ErasedWhat::Entry { .. }) => ToastAbout::EntryErased,
            Some(ErasedWhat::Cooker { cooker, .. }) => ToastAbout::CookerErased {
                name: cooker.name.clone(),
            },
            Some(ErasedWhat::Sky { .. }) => ToastAbout::SkyErased,
            None => return,
        };
        self.show(about, Some(Action::BringBack(id)));
    }
}
