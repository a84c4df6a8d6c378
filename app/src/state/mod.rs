//! What there is to know, apart from any screen: plain Rust, no signals, no browser.

pub mod ids;
pub mod parse;
pub mod route;
pub mod settings;
