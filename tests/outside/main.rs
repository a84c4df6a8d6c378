//! Every check against an outside source holds, and the page of who disagrees says so.

use std::collections::BTreeSet;

use checks::outside::{all, disagreements};

const PAGE: &str = include_str!("../../model/ACCURACY.md");

#[test]
fn every_check_holds() {
    let off: Vec<String> = all()
        .iter()
        .filter(|check| !check.holds())
        .map(|check| format!("{check:?}"))
        .collect();
    assert!(off.is_empty(), "{}", off.join("\n"));
}

/// Asked: sixty at least, and not all of one kind.
#[test]
fn there_are_enough_of_many_kinds() {
    let checks = all();
    assert!(60 <= checks.len(), "{}", checks.len());
    let sources: BTreeSet<_> = checks.iter().map(|check| check.source).collect();
    assert!(20 <= sources.len(), "{}", sources.len());
    let subjects: BTreeSet<_> = checks.iter().map(|check| check.what.as_str()).collect();
    assert_eq!(subjects.len(), checks.len());
    for check in &checks {
        assert!(
            check.expected.is_finite() && 0.0 < check.tolerance,
            "{check:?}"
        );
    }
}

#[test]
fn the_page_says_who_disagrees() {
    assert!(
        PAGE.contains(&disagreements(&all())),
        "model/ACCURACY.md is behind: replace its table by what \
         `cargo run --release -p checks --example outside -- --disagreements` prints"
    );
}
