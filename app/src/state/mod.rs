//! What there is to know, apart from any screen: plain Rust, no signals, no browser.
//!
//! Three kinds of state are kept apart. The document ([`document::Document`]) is what is worth
//! keeping; only an action ([`action::apply`]) changes it. Drafts, such as the text in a field,
//! belong to their screen and are read with [`parse`]. Everything else is derived and never kept.

pub mod action;
pub mod bench;
pub mod document;
pub mod erased;
pub mod example;
pub mod ids;
pub mod limits;
pub mod parse;
pub mod plan;
pub mod refused;
pub mod route;
#[cfg(test)]
pub(crate) mod sample;
pub mod saved;
pub mod settings;
pub mod zones;
