//! Texts that are too long for the household's own store: they lie in the browser's database, each
//! under its key, with when it was put there.

use js_sys::{Array, Date, Promise};
use wasm_bindgen::prelude::*;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    DomException, IdbDatabase, IdbFactory, IdbOpenDbRequest, IdbRequest, IdbTransaction,
    IdbTransactionMode,
};

const DATABASE: &str = "duskpot.readings";
const VERSION: u32 = 1;
/// The texts.
const TEXTS: &str = "texts";
/// When each was put there, in milliseconds since 1970.
const PUT_AT: &str = "put_at";

/// Why a text can't be kept or read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum TextsError {
    /// There is no room left.
    #[error("no room is left")]
    Full,
    /// The browser keeps nothing here, or broke off; in its words.
    #[error("the browser says: {0}")]
    Browser(String),
}

/// The database, opened.
#[derive(Debug, Clone)]
pub struct Texts(IdbDatabase);

impl Texts {
    /// Opens it, or makes it where there is none.
    ///
    /// # Errors
    ///
    /// [`TextsError::Browser`] where the browser keeps nothing.
    pub async fn open() -> Result<Self, TextsError> {
        // Its place in the global scope is the same in a page and in a worker.
        let factory = js_sys::Reflect::get(&js_sys::global(), &"indexedDB".into());
        let factory = factory.ok().and_then(|it| it.dyn_into::<IdbFactory>().ok());
        let factory = factory.ok_or_else(|| TextsError::Browser("no database".to_owned()))?;
        let request = factory.open_with_u32(DATABASE, VERSION).map_err(browser)?;
        let opening = request.clone();
        let on_new = Closure::once_into_js(move || make(&opening));
        request.set_onupgradeneeded(Some(on_new.unchecked_ref()));
        let database = result(&request).await?;
        Ok(Self(database.unchecked_into()))
    }

    /// Keeps a text; one that is there already counts as put there now.
    ///
    /// # Errors
    ///
    /// [`TextsError`]; nothing has changed then.
    pub async fn put(&self, key: &str, text: &str) -> Result<(), TextsError> {
        let change = self.begin(IdbTransactionMode::Readwrite)?;
        for (store, value) in [(TEXTS, text.into()), (PUT_AT, Date::now().into())] {
            let store = change.object_store(store).map_err(browser)?;
            store.put_with_key(&value, &key.into()).map_err(browser)?;
        }
        committed(&change).await
    }

    /// A text that is kept.
    ///
    /// # Errors
    ///
    /// [`TextsError::Browser`].
    pub async fn get(&self, key: &str) -> Result<Option<String>, TextsError> {
        let look = self.begin(IdbTransactionMode::Readonly)?;
        let store = look.object_store(TEXTS).map_err(browser)?;
        let request = store.get(&key.into()).map_err(browser)?;
        Ok(result(&request).await?.as_string())
    }

    /// Forgets texts.
    ///
    /// # Errors
    ///
    /// [`TextsError::Browser`]; all are there then.
    pub async fn remove(&self, keys: &[String]) -> Result<(), TextsError> {
        let change = self.begin(IdbTransactionMode::Readwrite)?;
        for store in [TEXTS, PUT_AT] {
            let store = change.object_store(store).map_err(browser)?;
            for key in keys {
                store.delete(&key.into()).map_err(browser)?;
            }
        }
        committed(&change).await
    }

    /// Keys of the texts that were put there so long ago or longer. \[ms\]
    ///
    /// # Errors
    ///
    /// [`TextsError::Browser`].
    pub async fn keys_older_than(&self, age_ms: f64) -> Result<Vec<String>, TextsError> {
        let look = self.begin(IdbTransactionMode::Readonly)?;
        let store = look.object_store(PUT_AT).map_err(browser)?;
        let keys = store.get_all_keys().map_err(browser)?;
        let times = store.get_all().map_err(browser)?;
        let (keys, times) = (result(&keys).await?, result(&times).await?);
        let now_ms = Date::now();
        let (keys, times) = (Array::from(&keys), Array::from(&times));
        let pairs = keys.iter().zip(times.iter());
        let is_old = |time: &JsValue| time.as_f64().is_none_or(|at_ms| age_ms <= now_ms - at_ms);
        let old = pairs.filter(|(_, time)| is_old(time));
        Ok(old.filter_map(|(key, _)| key.as_string()).collect())
    }

    fn begin(&self, mode: IdbTransactionMode) -> Result<IdbTransaction, TextsError> {
        let stores = Array::of2(&TEXTS.into(), &PUT_AT.into());
        self.0
            .transaction_with_str_sequence_and_mode(&stores, mode)
            .map_err(browser)
    }
}

/// A new database gets its stores. What fails here fails the opening, too.
fn make(opening: &IdbOpenDbRequest) {
    if let Ok(database) = opening.result() {
        let database: IdbDatabase = database.unchecked_into();
        for store in [TEXTS, PUT_AT] {
            let _ = database.create_object_store(store);
        }
    }
}

/// What a request comes to.
async fn result(request: &IdbRequest) -> Result<JsValue, TextsError> {
    let settled = Promise::new(&mut |resolve, reject| {
        request.set_onsuccess(Some(&resolve));
        request.set_onerror(Some(&reject));
    });
    match JsFuture::from(settled).await {
        Ok(_) => request.result().map_err(browser),
        Err(_) => Err(trouble(request.error().ok().flatten())),
    }
}

/// Waits until all of a change is on the device.
async fn committed(change: &IdbTransaction) -> Result<(), TextsError> {
    let settled = Promise::new(&mut |resolve, reject| {
        change.set_oncomplete(Some(&resolve));
        change.set_onabort(Some(&reject));
    });
    let outcome = JsFuture::from(settled).await;
    outcome.map_err(|_| trouble(change.error())).map(|_| ())
}

fn trouble(error: Option<DomException>) -> TextsError {
    match error {
        Some(error) if error.name() == "QuotaExceededError" => TextsError::Full,
        Some(error) => TextsError::Browser(error.message()),
        None => TextsError::Browser(String::new()),
    }
}

fn browser(error: JsValue) -> TextsError {
    match error.dyn_ref::<DomException>() {
        Some(error) => trouble(Some(error.clone())),
        None => TextsError::Browser(super::words_of(&error)),
    }
}
