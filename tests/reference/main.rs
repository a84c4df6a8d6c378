//! The model against values from outside the project.
//!
//! Each data file names its source; `make` holds the recipes of those that we had solved ourselves.

#![allow(
    clippy::unwrap_used,
    reason = "a test stops at what it does not expect"
)]

#[path = "../../model/examples/simulate/case.rs"]
mod case;
#[path = "../../model/examples/simulate/fields.rs"]
mod fields;
#[path = "../../model/examples/simulate/outcome.rs"]
mod outcome;
#[path = "../../model/examples/simulate/syntax.rs"]
mod syntax;

mod boiling;
mod fit;
mod network;
mod refusals;
mod seat;

use serde_json::Value;

/// A data file, which must be JSON.
fn data(text: &str) -> Value {
    serde_json::from_str(text).unwrap()
}
