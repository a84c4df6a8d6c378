//! The answers of the first start, kept for as long as the window is open.

use crate::platform::storage::{Shelf, WindowShelf};

/// Where they are kept.
const KEY: &str = "duskpot.answers";

/// What was kept.
pub fn kept_answers() -> Option<String> {
    WindowShelf.get(KEY).ok().flatten()
}

/// Keeps the answers. A window that keeps nothing loses them with a reload, as it would without.
pub fn keep_answers(text: &str) {
    let _ = WindowShelf.set(KEY, text);
}

/// Forgets them, once there is a household.
pub fn forget_answers() {
    let _ = WindowShelf.remove(KEY);
}
