//! What the browser gives us. Nothing outside this room touches the browser.
//!
//! Each file wraps one thing that a browser may refuse, and says so in its result. It knows
//! plain types only: texts, numbers, times.

pub mod bench;
pub mod beside;
pub mod call;
pub mod clock;
pub mod files;
pub mod locale;
pub mod page;
pub mod rest;
pub mod storage;
pub mod texts;
pub mod worker;

use wasm_bindgen::{JsCast, JsValue};

/// The browser's own words for what it refused.
fn words_of(error: &JsValue) -> String {
    match error.dyn_ref::<js_sys::Error>() {
        Some(error) => error.to_string().into(),
        None => error.as_string().unwrap_or_default(),
    }
}
