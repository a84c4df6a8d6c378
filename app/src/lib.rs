//! The screens of Duskpot and what stands behind them.

pub mod platform;
