//! From what is known to what a screen shows: numbers rounded, words chosen.
//!
//! Pure functions over the document, the model's results and the words of a language. Nothing
//! here knows a signal or the page.

pub mod bench;
pub mod cooker;
pub mod copies;
pub mod diary;
pub mod first_start;
pub mod level;
pub mod names;
pub mod odds;
pub mod tonight;
pub mod typed;
pub mod wear;

#[cfg(test)]
mod tests;
