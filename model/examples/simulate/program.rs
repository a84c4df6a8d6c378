//! What the programs of this folder have in common as programs: one file in, text out.

use std::io::Write;
use std::process::ExitCode;

/// Prints the answer on stdout, or one line on stderr that begins with the program's name, with exit
/// code 2 and nothing on stdout.
pub(crate) fn print(name: &str, answer: Result<String, String>) -> ExitCode {
    match answer {
        Ok(text) => match std::io::stdout().write_all(text.as_bytes()) {
            Ok(()) => ExitCode::SUCCESS,
            Err(_) => ExitCode::FAILURE,
        },
        Err(line) => {
            let line = line.replace(['\n', '\r'], " ");
            // A closed stderr leaves the exit code to tell.
            let _ = writeln!(std::io::stderr(), "{name}: {line}");
            ExitCode::from(2)
        }
    }
}

/// Name and text of the one file that the command line gives.
///
/// # Errors
/// A line that asks for `wanted` where not exactly one name is given; the name of a file that cannot be
/// read, and why.
pub(crate) fn only_file(wanted: &str) -> Result<(String, String), String> {
    let mut arguments = std::env::args_os().skip(1);
    let (Some(path), None) = (arguments.next(), arguments.next()) else {
        return Err(format!("give the name of {wanted}"));
    };
    let name = path.to_string_lossy().into_owned();
    match std::fs::read_to_string(&path) {
        Ok(text) => Ok((name, text)),
        Err(error) => Err(format!("{name}: {error}")),
    }
}
