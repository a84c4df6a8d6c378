//! What a screen shows, from the household and the model: pure functions, no signals.

pub mod cooker;
