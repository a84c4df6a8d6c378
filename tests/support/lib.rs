//! What the suites share: the list of checks against outside sources.

pub mod outside;
