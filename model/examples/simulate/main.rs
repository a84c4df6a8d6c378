//! Runs cases of store, jacket and pot through time and prints what happens as JSON.
//!
//! `simulate CASES.json`: the file holds a list of cases in SI units and degC. Bad input gives one line
//! on stderr that names the case and the field, exit code 2, and nothing on stdout.

mod case;
mod fields;
mod outcome;
mod syntax;

use std::io::Write;
use std::process::ExitCode;

fn main() -> ExitCode {
    match answer() {
        Ok(text) => match std::io::stdout().write_all(text.as_bytes()) {
            Ok(()) => ExitCode::SUCCESS,
            Err(_) => ExitCode::FAILURE,
        },
        Err(line) => {
            let line = line.replace(['\n', '\r'], " ");
            // A closed stderr leaves the exit code to tell.
            let _ = writeln!(std::io::stderr(), "simulate: {line}");
            ExitCode::from(2)
        }
    }
}

fn answer() -> Result<String, String> {
    let mut arguments = std::env::args_os().skip(1);
    let (Some(path), None) = (arguments.next(), arguments.next()) else {
        return Err("give the name of one file of cases".into());
    };
    let shown = path.to_string_lossy().into_owned();
    let text = std::fs::read_to_string(&path).map_err(|error| format!("{shown}: {error}"))?;
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
