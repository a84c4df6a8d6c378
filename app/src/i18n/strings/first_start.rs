//! Texts of the first start.

/// Texts of the first start.
#[derive(Debug)]
pub struct FirstStart {
    /// Head of the screen.
    pub title: &'static str,
    /// What the app is for, in a sentence or two.
    pub what_it_does: &'static str,
    /// Button: answer the questions.
    pub set_up: &'static str,
    /// Button: look at the example household.
    pub show_example: &'static str,
    /// Name given to the first cooker.
    pub cooker_name: &'static str,
}
