//! Files that a person gives the app, or takes from it.

use js_sys::Array;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, Event, File, HtmlAnchorElement, HtmlInputElement, Url};

/// A file larger than this is none of ours: years of a busy diary take a few hundred kilobytes, and
/// a logger's long file some megabytes.
pub const LARGEST_FILE_BYTES: f64 = 200e6;

/// Why a file could not be written or read.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum FileError {
    /// No file was picked.
    #[error("no file was picked")]
    NonePicked,
    /// It is far larger than anything the app writes.
    #[error("the file is too large")]
    TooLarge,
    /// The browser could not do it; in its words.
    #[error("the browser says: {0}")]
    Browser(String),
}

/// Hands a text to the person as a file of this name and kind, such as `application/json`.
///
/// # Errors
///
/// [`FileError::Browser`] when the browser can't.
pub fn download(name: &str, kind: &str, text: &str) -> Result<(), FileError> {
    let options = BlobPropertyBag::new();
    options.set_type(kind);
    let parts = Array::of1(&JsValue::from_str(text));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).map_err(browser)?;
    let url = Url::create_object_url_with_blob(&blob).map_err(browser)?;
    let clicked = click_link(name, &url);
    // The click has taken its own hold of the text; failing to let go of ours loses nothing.
    let _ = Url::revoke_object_url(&url);
    clicked
}

/// The text of the file picked in a file field, from that field's change event.
///
/// The field is emptied, so that picking the same file again is a change again.
///
/// # Errors
///
/// [`FileError`] when there is none, it is too large, or it can't be read.
pub async fn read_picked(event: &Event) -> Result<String, FileError> {
    let field = event
        .target()
        .and_then(|target| target.dyn_into::<HtmlInputElement>().ok());
    let field = field.ok_or(FileError::NonePicked)?;
    let file: Option<File> = field.files().and_then(|files| files.get(0));
    let file = file.ok_or(FileError::NonePicked)?;
    if LARGEST_FILE_BYTES < file.size() {
        return Err(FileError::TooLarge);
    }
    let text = JsFuture::from(file.text()).await.map_err(browser)?;
    field.set_value("");
    text.as_string()
        .ok_or_else(|| FileError::Browser("no text".to_owned()))
}

fn click_link(name: &str, url: &str) -> Result<(), FileError> {
    let document = web_sys::window()
        .and_then(|window| window.document())
        .ok_or_else(|| FileError::Browser("no page".to_owned()))?;
    let link: HtmlAnchorElement = document
        .create_element("a")
        .map_err(browser)?
        .unchecked_into();
    link.set_href(url);
    link.set_download(name);
    link.click();
    Ok(())
}

fn browser(error: JsValue) -> FileError {
    FileError::Browser(super::words_of(&error))
}
