//! What the sheet of an entry does with its draft.

use super::scene::{Form, Scene, say};
use crate::present::diary::draft::Draft;
use crate::present::typed::Mistake;
use crate::shell::focus_error;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, Done, check_entry};
use crate::state::ids::EntryId;
use crate::state::refused::Field;

/// A text of the draft.
pub(super) type Text = fn(&mut Draft) -> &mut String;

impl Scene {
    /// A part of the draft, followed.
    pub(super) fn part<T: Default>(&self, part: impl FnOnce(&Draft) -> T) -> T {
        self.form
            .with(|form| form.as_ref().map(|form| part(&form.draft)))
            .unwrap_or_default()
    }

    pub(super) fn edit(&self, edit: impl FnOnce(&mut Draft)) {
        self.form.update(|form| {
            if let Some(form) = form {
                edit(&mut form.draft);
                form.refused = None;
            }
        });
    }

    pub(super) fn text(&self, text: Text) -> String {
        self.part(|draft| text(&mut draft.clone()).clone())
    }

    /// What is wrong with a field now.
    pub(super) fn wrong(&self, field: Field) -> Option<String> {
        let formats = self.shell.words.formats().get();
        let now = self.shell.clock.now().get();
        let mistake = self.form.with(|form| {
            let form = form.as_ref()?;
            let mistake = match (form.refused, form.draft.read(&formats)) {
                (Some(refused), _) => Mistake::from(refused),
                (None, Err(mistake)) => mistake,
                (None, Ok((at, what))) => check_entry(at, &what, now).err()?.into(),
            };
            let is_silent = mistake.is_empty_field() && !form.is_tried;
            (!is_silent && form.draft.place_of(&mistake) == field).then_some(mistake)
        })?;
        Some(say(self.shell, |voice| {
            mistake.words(voice.strings, voice.formats, voice.now.day())
        }))
    }

    /// Keeps what was typed, or says what is wrong.
    pub(super) fn keep(&self) {
        let Some(Form { id, draft, .. }) = self.form.get_untracked() else {
            return;
        };
        let formats = self.shell.words.formats().get_untracked();
        self.form.update(|form| {
            if let Some(form) = form {
                form.is_tried = true;
            }
        });
        let Ok((at, what)) = draft.read(&formats) else {
            focus_error();
            return;
        };
        let before = id.and_then(|id| {
            self.shell
                .store
                .now_is(|document| document.entry(id).cloned())
        });
        let action = match id {
            Some(id) => Action::ChangeEntry { id, at, what },
            None => Action::AddEntry { at, what },
        };
        match self.shell.dispatch.run(action) {
            Ok(done) => {
                self.form.set(None);
                let undo = match (done, before) {
                    (Done::AddedEntry(id), _) => Some(Action::EraseEntry(id)),
                    (_, Some(entry)) => Some(Action::ChangeEntry {
                        id: entry.id,
                        at: entry.at,
                        what: entry.what,
                    }),
                    (_, None) => None,
                };
                self.shell.toasts.show(ToastAbout::Noted, undo);
            }
            Err(refused) => {
                self.form.update(|form| {
                    if let Some(form) = form {
                        form.refused = Some(refused);
                    }
                });
                focus_error();
            }
        }
    }

    pub(super) fn erase(&self, id: EntryId) {
        // An entry that is gone already needs no erasing.
        let _ = self.shell.dispatch.run(Action::EraseEntry(id));
        self.form.set(None);
    }
}
