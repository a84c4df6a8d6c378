//! The one household that the screens see, and the one way to change it.

use crate::reactive::*;
use model::local_time::LocalTime;

use crate::platform::storage::StorageError;
use crate::shell::clock::Clock;
use crate::shell::keeper::{Aside, Keeper, Notice, SaveStatus};
use crate::shell::toasts::Toasts;
use crate::state::action::{Action, Done, apply};
use crate::state::bench::Text;
use crate::state::document::{Document, Whose};
use crate::state::ids::CookerId;
use crate::state::refused::Refused;
use crate::state::saved::{DecodeError, Layout, encode_with};
use crate::state::settings::Settings;

/// What a person does, on its way to the document.
pub type Dispatch = Callback<Action, Result<Done, Refused>>;

/// The household and what keeps it. Copies stand for the same one.
#[derive(Clone, Copy)]
pub struct Store {
    document: RwSignal<Document>,
    keeper: StoredValue<Keeper>,
    status: RwSignal<SaveStatus>,
    notice: RwSignal<Option<Notice>>,
    changes: RwSignal<u32>,
    deeds: RwSignal<u32>,
    clock: Clock,
    toasts: Toasts,
}

impl Store {
    /// Opens a household.
    pub fn open(mut keeper: Keeper, whose: Whose, clock: Clock, toasts: Toasts) -> Self {
        let (document, notice) = keeper.open(whose, clock.device_now());
        Self {
            document: RwSignal::new(document),
            status: RwSignal::new(keeper.status()),
            notice: RwSignal::new(notice),
            changes: RwSignal::new(0),
            deeds: RwSignal::new(0),
            keeper: StoredValue::new(keeper),
            clock,
            toasts,
        }
    }

    /// What a part of the document is, told only when that part changes.
    pub fn read<T>(&self, part: impl Fn(&Document) -> T + Send + Sync + 'static) -> Memo<T>
    where
        T: PartialEq + Send + Sync + 'static,
    {
        let document = self.document;
        Memo::new(move |_| document.with(&part))
    }

    /// The document as it is now, without following it.
    pub fn now_is<T>(&self, part: impl FnOnce(&Document) -> T) -> T {
        self.document.with_untracked(part)
    }

    /// The language, looks and units.
    pub fn settings(&self) -> Memo<Settings> {
        self.read(|document| document.settings)
    }

    /// Whether the first start is done.
    pub fn has_household(&self) -> Memo<bool> {
        self.read(|document| document.household.is_some())
    }

    /// Whose household is shown.
    pub fn whose(&self) -> Memo<Whose> {
        self.read(|document| document.whose)
    }

    /// The cooker in use.
    pub fn in_use(&self) -> Memo<Option<CookerId>> {
        self.read(|document| document.in_use)
    }

    /// How things stand with saving.
    pub fn status(&self) -> Signal<SaveStatus> {
        self.status.into()
    }

    /// Counts the actions carried out: each is a reason to save.
    pub(super) fn changes(&self) -> Signal<u32> {
        self.changes.into()
    }

    /// Counts those of them that more hangs on than the plan of the next meal.
    pub(super) fn deeds(&self) -> Signal<u32> {
        self.deeds.into()
    }

    /// Whether the household shown is kept under this key.
    pub(super) fn is_kept_under(&self, key: &str) -> bool {
        self.keeper.with_value(|keeper| keeper.key() == key)
    }

    /// What a person has to be told once, until it is put away.
    pub fn notice(&self) -> Signal<Option<Notice>> {
        self.notice.into()
    }

    /// Puts the notice away.
    pub fn dismiss_notice(&self) {
        self.notice.set(None);
    }

    /// The way for screens to change the document.
    pub fn dispatch(&self) -> Dispatch {
        let store = *self;
        Callback::new(move |action| store.act(action))
    }

    /// Carries an action out; the save follows by itself.
    ///
    /// # Errors
    ///
    /// [`Refused`] when the action can't be; nothing has changed then.
    pub fn act(&self, action: Action) -> Result<Done, Refused> {
        let now = self.clock.now_untracked();
        let kept = action.clone();
        let is_plan = matches!(action, Action::ChangePlan(_));
        // The document is touched only by an action that is not refused, so that nothing that
        // hangs on it is worked out for nothing.
        let mut document = self.document.get_untracked();
        let done = apply(&mut document, action, now)?;
        self.document.set(document);
        self.keeper.update_value(|keeper| keeper.note(kept, now));
        if !is_plan {
            self.deeds.update(|deeds| *deeds = deeds.wrapping_add(1));
        }
        self.changes
            .update(|changes| *changes = changes.wrapping_add(1));
        self.refresh_status();
        if let Done::Erased(id) = done {
            self.toasts.show_erased(id, &self.document.get_untracked());
        }
        Ok(done)
    }

    /// Writes what has changed since the last time.
    pub fn save_now(&self) {
        self.with_keeper(Keeper::save);
    }

    /// As [`save_now`](Self::save_now), when the page may be about to go.
    pub fn save_on_leaving(&self) {
        self.with_keeper(Keeper::save_on_leaving);
    }

    /// Looks whether another window of the app has written.
    pub fn look_again(&self) {
        self.with_keeper(Keeper::look_again);
        // What was not kept here, or was lost there, is kept now.
        self.save_now();
    }

    /// Shows the other household: the example or the person's own. The settings go along, since
    /// they are the person's. `fresh` is shown where there is none yet.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the person's own could not be saved: it goes on being shown. The
    /// example is of no worth and can always be left.
    pub fn show(&self, whose: Whose, fresh: Option<Document>) -> Result<(), StorageError> {
        self.save_now();
        let is_worth_keeping =
            self.now_is(|document| document.whose == Whose::Own && document.household.is_some());
        if let SaveStatus::Failed(error) = self.status.get_untracked()
            && is_worth_keeping
        {
            return Err(error);
        }
        let settings = self.now_is(|document| document.settings);
        let now = self.clock.device_now();
        let opened = self.keeper.try_update_value(|keeper| {
            let (document, notice) = keeper.open(whose, now);
            let is_open = !matches!(keeper.status(), SaveStatus::Locked(_));
            let fresh = fresh.filter(|_| is_open && document.household.is_none());
            let document = Document {
                whose,
                settings,
                ..fresh.unwrap_or(document)
            };
            keeper.note_replaced(&document);
            (document, notice)
        });
        if let Some((document, notice)) = opened {
            self.document.set(document);
            self.notice.set(notice);
            self.save_now();
        }
        Ok(())
    }

    /// Brings back a household that was put aside under `key`; what is shown now is put aside in
    /// its stead.
    ///
    /// # Errors
    ///
    /// As [`Store::replace`]; what was put aside stays there then.
    pub fn bring_back_aside(&self, key: &str, document: Document) -> Result<(), StorageError> {
        self.replace(document)?;
        if self.status.get_untracked() == SaveStatus::Saved {
            self.forget_aside(key)?;
        }
        Ok(())
    }

    /// Puts the example back to how it begins; nothing where the person's own household is shown.
    pub fn start_example_over(&self, fresh: Document) {
        let (whose, settings) = self.now_is(|document| (document.whose, document.settings));
        if whose != Whose::Example {
            return;
        }
        let document = Document {
            whose,
            settings,
            ..fresh
        };
        self.keeper
            .update_value(|keeper| keeper.note_replaced(&document));
        self.document.set(document);
        self.changes
            .update(|changes| *changes = changes.wrapping_add(1));
        self.refresh_status();
    }

    /// Puts a copy, or something that was put aside, in the place of the present household.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when there is no room to put the present one aside: nothing has changed.
    pub fn replace(&self, new: Document) -> Result<(), StorageError> {
        let now = self.clock.device_now();
        let mut document = self.document.get_untracked();
        let replaced = self
            .keeper
            .try_update_value(|keeper| keeper.replace(&mut document, new, now));
        if let Some(replaced) = replaced {
            self.notice.set(replaced?);
            self.document.set(document);
            self.refresh_status();
        }
        Ok(())
    }

    /// What was put aside, the latest first.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    pub fn asides(&self) -> Result<Vec<Aside>, StorageError> {
        self.keeper.with_value(Keeper::asides)
    }

    /// The text of something put aside.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    pub fn aside_text(&self, key: &str) -> Result<Option<String>, StorageError> {
        self.keeper.with_value(|keeper| keeper.aside_text(key))
    }

    /// Forgets something that was put aside, for good.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    pub fn forget_aside(&self, key: &str) -> Result<(), StorageError> {
        self.keeper.with_value(|keeper| keeper.forget_aside(key))?;
        // There may be room now for what could not be kept.
        self.save_now();
        Ok(())
    }

    /// A copy for a file, with the readings of files that lie beside the household. Where nothing may be written over, it is the text that is kept.
    ///
    /// # Errors
    ///
    /// [`DecodeError`] when it can't be written.
    pub fn copy_text(&self, texts: &Vec<Text>) -> Result<String, DecodeError> {
        let raw = match self.status.get_untracked() {
            SaveStatus::Locked(_) => self.keeper.with_value(Keeper::raw),
            SaveStatus::Saved
            | SaveStatus::Pending
            | SaveStatus::Cleared
            | SaveStatus::Failed(_) => None,
        };
        match raw {
            Some(text) => Ok(text),
            None => {
                let now = self.clock.device_now();
                self.now_is(|document| encode_with(document, now, Layout::Readable, texts))
            }
        }
    }

    fn with_keeper(
        &self,
        work: impl FnOnce(&mut Keeper, &mut Document, LocalTime) -> Option<Notice>,
    ) {
        let now = self.clock.device_now();
        let mut document = self.document.get_untracked();
        let notice = self
            .keeper
            .try_update_value(|keeper| work(keeper, &mut document, now));
        if document != self.document.get_untracked() {
            self.document.set(document);
        }
        if let Some(notice) = notice.flatten() {
            self.notice.set(Some(notice));
        }
        self.refresh_status();
    }

    fn refresh_status(&self) {
        let status = self.keeper.with_value(Keeper::status);
        if self.status.get_untracked() != status {
            self.status.set(status);
        }
    }
}
