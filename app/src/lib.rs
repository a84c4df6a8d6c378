//! The screens of Duskpot and what stands behind them.
//!
//! Where to start:
//!
//! - [`state`] is the household and everything a person can do with it; plain Rust.
//! - [`present`] says what a screen shows of it, in numbers rounded and words chosen.
//! - [`i18n`] is every word and the way numbers are written.
//! - [`present`] is what a screen shows of them and of the model.
//! - [`shell`] wires them to signals and to the browser, which only [`platform`] touches.
//! - [`screens`] are built from [`components`] and [`chart`], which know nothing of the rest.

pub mod bench;
pub mod chart;
pub mod components;
pub mod i18n;
pub mod order;
pub mod platform;
pub mod present;
pub mod reactive;
pub mod screens;
pub mod shell;
pub mod state;
