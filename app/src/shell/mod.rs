//! Where signals, the saved household and the browser meet.

pub mod locale;
