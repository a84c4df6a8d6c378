//! Texts of the screen Tonight.

/// Texts of the screen Tonight.
#[derive(Debug)]
pub struct Tonight {
    /// Head of the screen.
    pub title: &'static str,
}
