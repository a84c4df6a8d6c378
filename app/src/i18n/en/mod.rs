//! English.

mod bench;
mod build_safety;
mod common;
mod cooker;
mod diary;
mod first_start;
mod more;
mod odds;
mod refusals;
mod report;
mod runs;
mod safety;
mod tables;
mod tonight;

pub use report::REPORT;

use crate::i18n::strings::Strings;

/// The English texts.
pub static STRINGS: Strings = Strings {
    common: common::COMMON,
    tonight: tonight::TONIGHT,
    diary: diary::DIARY,
    cooker: cooker::COOKER,
    bench: bench::BENCH,
    more: more::MORE,
    first_start: first_start::FIRST_START,
    runs: runs::RUNS,
    safety: safety::SAFETY,
    build_safety: build_safety::BUILD_SAFETY,
    odds: odds::ODDS,
    refusals: refusals::REFUSALS,
    tables: tables::TABLES,
};
