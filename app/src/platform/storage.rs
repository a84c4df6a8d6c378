//! The small store of texts that a browser keeps for an app.
//!
//! The browser may keep nothing (a private window, cookies refused) or be full; both are values
//! here. The accessors of gloo-storage panic where the browser refuses the store itself, so they
//! are reached only after it was asked for.

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, PoisonError};

use gloo_storage::{LocalStorage, SessionStorage, Storage as _};
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{DomException, Storage, StorageEvent};

use crate::order::in_order;

/// Why the store of texts did not do what was asked.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum StorageError {
    /// The browser keeps nothing for this page.
    #[error("the browser keeps nothing for this page")]
    NotAllowed,
    /// There is no room left.
    #[error("no room left")]
    Full,
    /// Anything else, in the browser's words.
    #[error("the browser says: {0}")]
    Other(String),
}

/// A place where texts are kept under keys.
pub trait Shelf {
    /// The text kept under `key`.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    fn get(&self, key: &str) -> Result<Option<String>, StorageError>;

    /// Keeps `text` under `key`, in place of what is there.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses or has no room; what was there stays.
    fn set(&self, key: &str, text: &str) -> Result<(), StorageError>;

    /// Forgets what is kept under `key`.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    fn remove(&self, key: &str) -> Result<(), StorageError>;

    /// All keys, in order.
    ///
    /// # Errors
    ///
    /// [`StorageError`] when the browser refuses.
    fn keys(&self) -> Result<Vec<String>, StorageError>;
}

/// The browser's store that outlives the window.
#[derive(Debug, Clone, Copy)]
pub struct DeviceShelf;

/// The browser's store that lives as long as the window.
#[derive(Debug, Clone, Copy)]
pub struct WindowShelf;

/// A store in memory, for tests and for what need not last. Clones share what they keep.
#[derive(Debug, Clone, Default)]
pub struct MemoryShelf(Arc<Mutex<Kept>>);

#[derive(Debug, Default)]
struct Kept {
    texts: BTreeMap<String, String>,
    room: Option<usize>,
}

impl Shelf for DeviceShelf {
    fn get(&self, key: &str) -> Result<Option<String>, StorageError> {
        device()?.get_item(key).map_err(refused)
    }

    fn set(&self, key: &str, text: &str) -> Result<(), StorageError> {
        device()?.set_item(key, text).map_err(refused)
    }

    fn remove(&self, key: &str) -> Result<(), StorageError> {
        device()?.remove_item(key).map_err(refused)
    }

    fn keys(&self) -> Result<Vec<String>, StorageError> {
        keys(&device()?)
    }
}

impl Shelf for WindowShelf {
    fn get(&self, key: &str) -> Result<Option<String>, StorageError> {
        own_window()?.get_item(key).map_err(refused)
    }

    fn set(&self, key: &str, text: &str) -> Result<(), StorageError> {
        own_window()?.set_item(key, text).map_err(refused)
    }

    fn remove(&self, key: &str) -> Result<(), StorageError> {
        own_window()?.remove_item(key).map_err(refused)
    }

    fn keys(&self) -> Result<Vec<String>, StorageError> {
        keys(&own_window()?)
    }
}

impl MemoryShelf {
    /// Lets the store hold this many bytes in all, keys and texts together.
    pub fn set_room(&self, bytes: usize) {
        self.lock().room = Some(bytes);
    }

    /// Bytes it holds now, keys and texts together.
    pub fn n_bytes(&self) -> usize {
        let kept = self.lock();
        kept.texts
            .iter()
            .map(|(key, text)| key.len() + text.len())
            .sum()
    }

    fn lock(&self) -> std::sync::MutexGuard<'_, Kept> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner)
    }
}

impl Shelf for MemoryShelf {
    fn get(&self, key: &str) -> Result<Option<String>, StorageError> {
        Ok(self.lock().texts.get(key).cloned())
    }

    fn set(&self, key: &str, text: &str) -> Result<(), StorageError> {
        let mut kept = self.lock();
        let others = kept.texts.iter().filter(|(other, _)| *other != key);
        let used: usize = others.map(|(key, text)| key.len() + text.len()).sum();
        if kept
            .room
            .is_some_and(|room| room < used + key.len() + text.len())
        {
            return Err(StorageError::Full);
        }
        kept.texts.insert(key.to_owned(), text.to_owned());
        Ok(())
    }

    fn remove(&self, key: &str) -> Result<(), StorageError> {
        self.lock().texts.remove(key);
        Ok(())
    }

    fn keys(&self) -> Result<Vec<String>, StorageError> {
        Ok(self.lock().texts.keys().cloned().collect())
    }
}

/// Calls `on_change` with the key when another window of the app changed the device's store; with
/// nothing when it was emptied.
pub fn watch_other_windows(on_change: impl Fn(Option<String>) + 'static) {
    super::page::listen("storage", move |event| {
        if let Some(event) = event.dyn_ref::<StorageEvent>() {
            on_change(event.key());
        }
    });
}

/// Asks the browser to keep what is stored even when the device runs short of room.
///
/// It may say no or not know the question; everything works all the same, so nothing is told.
pub fn ask_to_persist() {
    if let Some(window) = web_sys::window() {
        let storage = window.navigator().storage();
        if storage.is_undefined() {
            return;
        }
        if let Ok(answer) = storage.persist() {
            wasm_bindgen_futures::spawn_local(async move {
                // A no changes nothing that we do.
                let _ = wasm_bindgen_futures::JsFuture::from(answer).await;
            });
        }
    }
}

/// Whether the browser has promised to keep what is stored; no where it does not know the question.
pub async fn is_persisted() -> bool {
    let Some(window) = web_sys::window() else {
        return false;
    };
    let storage = window.navigator().storage();
    if storage.is_undefined() {
        return false;
    }
    let Ok(answer) = storage.persisted() else {
        return false;
    };
    wasm_bindgen_futures::JsFuture::from(answer)
        .await
        .is_ok_and(|answer| answer.is_truthy())
}

fn device() -> Result<Storage, StorageError> {
    let window = web_sys::window().ok_or(StorageError::NotAllowed)?;
    match window.local_storage() {
        Ok(Some(_)) => Ok(LocalStorage::raw()),
        Ok(None) | Err(_) => Err(StorageError::NotAllowed),
    }
}

fn own_window() -> Result<Storage, StorageError> {
    let window = web_sys::window().ok_or(StorageError::NotAllowed)?;
    match window.session_storage() {
        Ok(Some(_)) => Ok(SessionStorage::raw()),
        Ok(None) | Err(_) => Err(StorageError::NotAllowed),
    }
}

fn keys(storage: &Storage) -> Result<Vec<String>, StorageError> {
    let n_keys = storage.length().map_err(refused)?;
    let mut keys = Vec::new();
    for at in 0..n_keys {
        keys.extend(storage.key(at).map_err(refused)?);
    }
    Ok(in_order(keys, Ord::cmp))
}

fn refused(error: JsValue) -> StorageError {
    let Some(exception) = error.dyn_ref::<DomException>() else {
        return StorageError::Other(super::words_of(&error));
    };
    match exception.name().as_str() {
        "QuotaExceededError" | "NS_ERROR_DOM_QUOTA_REACHED" => StorageError::Full,
        "SecurityError" | "InvalidStateError" => StorageError::NotAllowed,
        name => StorageError::Other(format!("{name}: {}", exception.message())),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_full_shelf_keeps_what_it_had() {
        let shelf = MemoryShelf::default();
        shelf.set("a", "first").unwrap();
        shelf.set_room(10);
        assert_eq!(shelf.set("a", "much too long"), Err(StorageError::Full));
        assert_eq!(shelf.get("a"), Ok(Some("first".to_owned())));
        assert_eq!(shelf.set("a", "short"), Ok(()));
    }
}
