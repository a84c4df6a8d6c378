//! Texts of the diary.

/// Texts of the diary.
#[derive(Debug)]
pub struct Diary {
    /// Head of the screen.
    pub title: &'static str,
}
