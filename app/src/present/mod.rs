//! What the screens show, worked out from the household and the model: numbers rounded, words
//! chosen. Pure functions; no signals, no browser.

pub mod copies;
