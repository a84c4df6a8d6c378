//! Runs cases of store, jacket and pot through time and prints what happens as JSON.
//!
//! `simulate CASES.json`: the file holds a list of cases in SI units and degC. Bad input gives one line
//! on stderr that names the case and the field, exit code 2, and nothing on stdout.

mod case;
mod fields;
mod outcome;
mod program;
mod syntax;

use std::process::ExitCode;

fn main() -> ExitCode {
    program::print("simulate", answer())
}

fn answer() -> Result<String, String> {
    let (shown, text) = program::only_file("one file of cases")?;
    let cases = case::read(&text).map_err(|error| format!("{shown}: {error}"))?;
    let outcomes = cases
        .iter()
        .map(|case| {
            outcome::of(case).map_err(|error| format!("{shown}: case \"{}\": {error}", case.name))
        })
        .collect::<Result<Vec<_>, String>>()?;
    let mut out = serde_json::to_string_pretty(&outcomes).map_err(|error| error.to_string())?;
    out.push('\n');
    Ok(out)
}
