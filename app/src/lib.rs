//! The screens of Duskpot and what stands behind them.

pub mod chart;
pub mod components;
pub mod i18n;
pub mod platform;
pub mod shell;
pub mod state;
