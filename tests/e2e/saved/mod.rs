//! The reader of copies that the headless program has, by its own parts.

#[path = "../../../model/examples/replay/cooker.rs"]
mod cooker;
#[allow(dead_code, reason = "names are for people")]
#[path = "../../../model/examples/replay/copy.rs"]
pub(crate) mod copy;
#[path = "../../../model/examples/replay/when.rs"]
mod when;
