//! The rest of the program, which a first visit downloads while the first screen is looked at.
//!
//! The build cuts the program in two, and leaves in the page a function that fetches the rest, for
//! as long as the rest is not there. Where the program is whole, there is no such function.

use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

/// Why the rest is not there.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("the rest of the program could not be fetched: {reason}")]
pub struct RestError {
    /// What the browser says, in its own words.
    pub reason: String,
}

/// Whether all of the program is there.
pub fn is_there() -> bool {
    fetcher().is_none()
}

/// Waits for the rest of the program.
///
/// # Errors
///
/// [`RestError`] when it could not be downloaded; the next call tries again.
pub async fn fetch() -> Result<(), RestError> {
    let Some(fetcher) = fetcher() else {
        return Ok(());
    };
    let promise = fetcher.call0(&JsValue::UNDEFINED).map_err(refused)?;
    JsFuture::from(js_sys::Promise::resolve(&promise))
        .await
        .map_err(refused)?;
    Ok(())
}

fn fetcher() -> Option<js_sys::Function> {
    let found = js_sys::Reflect::get(&js_sys::global(), &"fetchRest".into());
    found.ok()?.dyn_into().ok()
}

fn refused(error: JsValue) -> RestError {
    RestError {
        reason: super::words_of(&error),
    }
}
