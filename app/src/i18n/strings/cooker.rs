//! Texts of the cooker.

/// Texts of the cooker.
#[derive(Debug)]
pub struct Cooker {
    /// Head of the screen.
    pub title: &'static str,
    /// Name of the copy of a cooker.
    pub copy_name: fn(name: &str) -> String,
}
