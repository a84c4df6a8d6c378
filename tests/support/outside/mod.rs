//! Checks of the model against values that others published: one list, for a test that holds each to
//! its tolerance, for a program that prints it, and for the table of who disagrees with us.
//!
//! What makers say (common practice, no source) is not in it, nor is anything worked out by us.

#![allow(
    clippy::unwrap_used,
    reason = "a check that cannot be worked out has failed"
)]

mod food;
mod heat;
mod media;
mod panel;
mod steam;
mod store;
mod sun;

use std::fmt::Write;

/// One value of ours beside that of a source.
#[derive(Debug, Clone, PartialEq)]
pub struct Check {
    /// What is compared, with its inputs.
    pub what: String,
    /// Who says so.
    pub source: &'static str,
    /// Unit of both values.
    pub unit: &'static str,
    /// What the source says.
    pub expected: f64,
    /// What the model says.
    pub got: f64,
    /// How far apart they may be, in the unit.
    pub tolerance: f64,
    /// What a difference is measured by: the expected value, or for a temperature, an angle or a share
    /// a span of such values.
    pub scale: f64,
}

/// A check whose tolerance is a share of the expected value.
fn relative(
    what: impl Into<String>,
    source: &'static str,
    unit: &'static str,
    (expected, got): (f64, f64),
    share: f64,
) -> Check {
    Check {
        what: what.into(),
        source,
        unit,
        expected,
        got,
        tolerance: share * expected.abs(),
        scale: expected.abs(),
    }
}

/// A check of a temperature, measured by 100 K.
fn temperature(
    what: impl Into<String>,
    source: &'static str,
    (expected, got): (f64, f64),
    tolerance_k: f64,
) -> Check {
    Check {
        what: what.into(),
        source,
        unit: "degC",
        expected,
        got,
        tolerance: tolerance_k,
        scale: 100.0,
    }
}

/// A check of an angle, measured by a right angle.
fn angle(
    what: impl Into<String>,
    source: &'static str,
    (expected, got): (f64, f64),
    tolerance_deg: f64,
) -> Check {
    Check {
        what: what.into(),
        source,
        unit: "deg",
        expected,
        got,
        tolerance: tolerance_deg,
        scale: 90.0,
    }
}

impl Check {
    /// Difference as a share of the scale.
    #[must_use]
    pub fn off_share(&self) -> f64 {
        (self.got - self.expected).abs() / self.scale
    }

    /// A value with the check's unit.
    fn told(&self, value: f64) -> String {
        format!("{} {}", number(value), self.unit)
            .trim_end()
            .to_owned()
    }

    /// Whether the two agree.
    #[must_use]
    pub fn holds(&self) -> bool {
        (self.got - self.expected).abs() <= self.tolerance
    }
}

/// Every check, by subject.
#[must_use]
pub fn all() -> Vec<Check> {
    [
        sun::checks(),
        panel::checks(),
        steam::checks(),
        heat::checks(),
        store::checks(),
        media::checks(),
        food::checks(),
    ]
    .concat()
}

/// The list: source, what, expected, got, tolerance.
#[must_use]
pub fn list(checks: &[Check]) -> String {
    let mut text = String::new();
    for check in checks {
        let verdict = if check.holds() { "ok" } else { "OFF" };
        let _ = writeln!(
            text,
            "{verdict:3} | {} | {} | expected {} | got {} | tolerance {}",
            check.source,
            check.what,
            check.told(check.expected),
            check.told(check.got),
            check.told(check.tolerance),
        );
    }
    text
}

/// Differences below this share are agreement, and not told: rounding of the source, mostly.
const TOLD_SHARE: f64 = 0.002;

/// Who disagrees with us and by how much, the weakest first, as Markdown.
#[must_use]
pub fn disagreements(checks: &[Check]) -> String {
    let mut told: Vec<&Check> = checks
        .iter()
        .filter(|check| TOLD_SHARE <= check.off_share())
        .collect();
    told.sort_by(|a, b| b.off_share().total_cmp(&a.off_share()));
    let mut text = String::from(
        "| off by | what | source | it says | we say | allowed |\n| --- | --- | --- | --- | --- | --- |\n",
    );
    for check in told {
        let _ = writeln!(
            text,
            "| {:.1} % | {} | {} | {} | {} | {} |",
            100.0 * check.off_share(),
            check.what,
            check.source,
            check.told(check.expected),
            check.told(check.got),
            check.told(check.tolerance),
        );
    }
    let _ = writeln!(
        text,
        "\n{} checks in all; the others agree within {} %.",
        checks.len(),
        100.0 * TOLD_SHARE
    );
    text
}

/// Four digits of a number, without trailing zeros.
fn number(value: f64) -> String {
    let size = value.abs().max(1e-12).log10().floor();
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "clamped to a few digits"
    )]
    let places = (3.0 - size).clamp(0.0, 9.0) as usize;
    let text = format!("{value:.places$}");
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}
