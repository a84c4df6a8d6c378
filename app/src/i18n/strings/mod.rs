//! Which texts there are: one struct a screen, and those that several screens share.
//!
//! The comment on each text is for whoever translates it.

pub mod bench;
pub mod build_safety;
pub mod common;
pub mod cooker;
pub mod diary;
pub mod first_start;
pub mod more;
pub mod odds;
pub mod refusals;
pub mod report;
pub mod runs;
pub mod safety;
pub mod tables;
pub mod tonight;

/// Every text of a language.
#[derive(Debug)]
pub struct Strings {
    /// Shared by all screens.
    pub common: common::Common,
    /// The screen Tonight.
    pub tonight: tonight::Tonight,
    /// The diary.
    pub diary: diary::Diary,
    /// The cooker.
    pub cooker: cooker::Cooker,
    /// The bench.
    pub bench: bench::Bench,
    /// The room More and its pages.
    pub more: more::More,
    /// The first start.
    pub first_start: first_start::FirstStart,
    /// Test runs as they are made, compared and printed.
    pub runs: runs::Runs,
    /// Cautions.
    pub safety: safety::Safety,
    /// What must not be built, and what must be told of a build.
    pub build_safety: build_safety::BuildSafety,
    /// Odds in words and figures.
    pub odds: odds::Odds,
    /// Why something that was typed can't be.
    pub refusals: refusals::Refusals,
    /// Names of media, pots, dishes and the like.
    pub tables: tables::Tables,
}

// Languages are told apart by their place in memory: there is one table of each.
impl PartialEq for Strings {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other)
    }
}
