//! The JavaScript between the parts.

use crate::cut::{DOORS, TABLE};

/// The code that loads the rest, with the name of its file and of the table to be put in.
const LOADER: &str = include_str!("rest.js");

/// What wasm-bindgen writes where it is done with loading, and what is put before it.
const LOADED: &str = "return __wbg_finalize_init(instance, module);";

/// The glue of a program, with what loads the rest of it from `file`, which lies beside it; none
/// where it is no glue that wasm-bindgen writes.
#[must_use]
pub fn with_rest(glue: &str, file: &str) -> Option<String> {
    let at = glue.rfind("_bg.js\":")?;
    let at = glue[..at].rfind('"')?;
    let (before, after) = glue.split_at(at);
    // The first place is where the program is there already, which no page uses.
    let at = after.rfind(LOADED)?;
    let (between, end) = after.split_at(at);
    let loader = LOADER.replace("REST_FILE", file).replace("TABLE", TABLE);
    Some(format!(
        "{before}\"{DOORS}\": doors, {between}wasm = instance.exports; await withRest(); {end}{loader}"
    ))
}
