//! Ways to call a person who looks elsewhere: the phone's buzz, a notice, a screen that stays on.
//!
//! No browser has all of them, so each is looked for by name before it is used.

use std::cell::RefCell;

use js_sys::{Array, Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use super::words_of;

/// Why a person could not be called this way.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum CallError {
    /// The browser has no such thing, or not on a page that came this way.
    #[error("this browser cannot do it")]
    Unsupported,
    /// It has, and did not; in its words.
    #[error("the browser refused: {0}")]
    Refused(String),
}

/// Whether the browser shows notices of ours.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Notices {
    /// It has none.
    Unsupported,
    /// The person was not asked yet.
    NotAsked,
    /// Allowed.
    Allowed,
    /// Not allowed; only the browser's own settings change that.
    Denied,
}

/// Buzzes and rests by turns, each for so many milliseconds.
///
/// # Errors
///
/// [`CallError`] where there is nothing to buzz with, or before the page was first touched.
pub fn buzz(pattern_ms: &[u32]) -> Result<(), CallError> {
    let navigator = navigator()?;
    let vibrate = method(&navigator, "vibrate")?;
    let pattern: Array = pattern_ms.iter().map(|ms| JsValue::from(*ms)).collect();
    match vibrate.call1(&navigator, &pattern) {
        Ok(done) if done.is_truthy() => Ok(()),
        Ok(_) => Err(CallError::Refused(String::new())),
        Err(error) => Err(refused(&error)),
    }
}

/// How things stand with notices.
pub fn notices() -> Notices {
    let permission = notification().and_then(|class| get(&class, "permission"));
    match permission
        .ok()
        .and_then(|permission| permission.as_string())
    {
        Some(word) if word == "granted" => Notices::Allowed,
        Some(word) if word == "denied" => Notices::Denied,
        Some(_) => Notices::NotAsked,
        None => Notices::Unsupported,
    }
}

/// Asks the person for notices; to be called from a tap only.
pub async fn ask_for_notices() -> Notices {
    let asked = notification().and_then(|class| {
        let ask = method(&class, "requestPermission")?;
        ask.call0(&class).map_err(|error| refused(&error))
    });
    if let Ok(promise) = asked.and_then(|promise| {
        promise
            .dyn_into::<Promise>()
            .map_err(|_| CallError::Unsupported)
    }) {
        // What was answered is read off the permission itself.
        let _ = JsFuture::from(promise).await;
    }
    notices()
}

/// Shows a notice; a later one of the same name takes its place.
///
/// # Errors
///
/// [`CallError`] where notices are not allowed or the browser does not show it.
pub async fn notice(name: &str, title: &str, body: &str) -> Result<(), CallError> {
    if notices() != Notices::Allowed {
        return Err(CallError::Unsupported);
    }
    let options = Object::new();
    for (key, value) in [
        ("tag", name),
        ("body", body),
        ("icon", "./icons/icon-192.png"),
    ] {
        set(&options, key, &value.into())?;
    }
    set(&options, "renotify", &JsValue::TRUE)?;
    // Phones show them through the offline worker only; without one the page shows them itself.
    match through_worker(title, &options).await {
        Ok(()) => Ok(()),
        Err(_) => {
            let class: Function = notification()?.unchecked_into();
            Reflect::construct(&class, &Array::of2(&title.into(), &options))
                .map(|_| ())
                .map_err(|error| refused(&error))
        }
    }
}

async fn through_worker(title: &str, options: &Object) -> Result<(), CallError> {
    let workers = get(&navigator()?, "serviceWorker")?;
    let registration = settled(&workers, "getRegistration", &Array::new()).await?;
    let arguments = Array::of2(&title.into(), options);
    settled(&registration, "showNotification", &arguments)
        .await
        .map(|_| ())
}

thread_local! {
    /// What keeps the screen on.
    static AWAKE: RefCell<Option<JsValue>> = const { RefCell::new(None) };
}

/// Keeps the screen on until [`let_screen_off`], or until the page is hidden.
///
/// # Errors
///
/// [`CallError`] where the browser can't, or saves its battery.
pub async fn keep_screen_on() -> Result<(), CallError> {
    let held = AWAKE.with_borrow(Clone::clone);
    if held.is_some_and(|lock| get(&lock, "released").is_ok_and(|released| released.is_falsy())) {
        return Ok(());
    }
    let locks = get(&navigator()?, "wakeLock")?;
    let lock = settled(&locks, "request", &Array::of1(&"screen".into())).await?;
    AWAKE.set(Some(lock));
    Ok(())
}

/// Lets the screen go off again.
pub fn let_screen_off() {
    if let Some(lock) = AWAKE.take()
        && let Ok(release) = method(&lock, "release")
    {
        // One that was let go already needs nothing.
        let _ = release.call0(&lock);
    }
}

fn navigator() -> Result<JsValue, CallError> {
    let window = web_sys::window().ok_or(CallError::Unsupported)?;
    Ok(window.navigator().into())
}

fn notification() -> Result<JsValue, CallError> {
    get(&js_sys::global(), "Notification")
}

/// What an object has under a name.
fn get(object: &JsValue, name: &str) -> Result<JsValue, CallError> {
    let value = Reflect::get(object, &name.into()).map_err(|_| CallError::Unsupported)?;
    if value.is_undefined() || value.is_null() {
        return Err(CallError::Unsupported);
    }
    Ok(value)
}

fn set(object: &Object, name: &str, value: &JsValue) -> Result<(), CallError> {
    match Reflect::set(object, &name.into(), value) {
        Ok(_) => Ok(()),
        Err(error) => Err(refused(&error)),
    }
}

fn method(object: &JsValue, name: &str) -> Result<Function, CallError> {
    get(object, name)?
        .dyn_into()
        .map_err(|_| CallError::Unsupported)
}

/// Calls a method that promises something, and waits for it.
async fn settled(object: &JsValue, name: &str, arguments: &Array) -> Result<JsValue, CallError> {
    let promise = method(object, name)?
        .apply(object, arguments)
        .and_then(JsCast::dyn_into::<Promise>)
        .map_err(|error| refused(&error))?;
    JsFuture::from(promise)
        .await
        .map_err(|error| refused(&error))
}

fn refused(error: &JsValue) -> CallError {
    CallError::Refused(words_of(error))
}
