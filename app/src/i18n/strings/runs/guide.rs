//! Texts of the guide to a new test run.

use model::bench::RunKind;

use crate::i18n::strings::diary::{Say, SayTwo};

/// Texts of the guide.
#[derive(Debug)]
pub struct Guide {
    /// Head of the screen.
    pub title: &'static str,
    /// The question which kind it is to be.
    pub choose: &'static str,
    /// What each kind is and how it is done.
    pub of: fn(RunKind) -> &'static KindWords,
    /// How long it takes from its start, and how often to read.
    pub takes: SayTwo,
    /// How long it takes from when its pot goes in, and how often to read.
    pub takes_pot: SayTwo,
    /// How long and how often can't be worked out for this cooker.
    pub cannot_foresee: &'static str,
    /// Head of the steps.
    pub steps: &'static str,
    /// Head of what is written down.
    pub write: &'static str,
    /// Head of the cautions.
    pub cautions: &'static str,
    /// Head of what is told before it begins.
    pub before: &'static str,
    /// Label: name of the run.
    pub name: &'static str,
    /// A name as it is proposed: the kind, and the day.
    pub named: SayTwo,
    /// Label: which cooker.
    pub cooker: &'static str,
    /// Label: the store as it begins.
    pub store: &'static str,
    /// Under it: what it is for.
    pub store_hint: &'static str,
    /// Label: the air.
    pub air: &'static str,
    /// Under it: where to read it.
    pub air_hint: &'static str,
    /// Label: power of the heater.
    pub heater: &'static str,
    /// Under it: how to measure it; the power in full sun.
    pub heater_hint: Say,
    /// Label: anything else.
    pub notes: &'static str,
    /// Label: when it began.
    pub began: &'static str,
    /// Under it: what an empty field means, and a time to come.
    pub began_hint: &'static str,
    /// Label: on which day it began.
    pub day: &'static str,
    /// Under it: what an empty field means.
    pub day_hint: &'static str,
    /// Label: when it was over.
    pub ended: &'static str,
    /// Under it: what an empty field means.
    pub ended_hint: &'static str,
    /// Adds a run that is over.
    pub write_over: &'static str,
    /// Begins the run.
    pub start: &'static str,
    /// Begins one that began a while ago.
    pub start_earlier: &'static str,
    /// A run goes on already; its name.
    pub goes_on: Say,
    /// Leads to it.
    pub to_it: &'static str,
}

/// One kind of run.
#[derive(Debug)]
pub struct KindWords {
    /// What it tells, in a sentence.
    pub tells: &'static str,
    /// Step by step, whole sentences.
    pub steps: &'static [&'static str],
    /// What is written down.
    pub write: &'static str,
}
