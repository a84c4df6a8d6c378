//! Fits a cooker to its test runs and prints what they say as JSON.
//!
//! `fit COOKER.json RUN.csv...`: the first file holds one cooker as the app saves it, each other file
//! one run: columns of readings with a header, and before them lines `# key: value` for what no
//! column tells. The keys: `kind` (heat_up, cool_down, boil, free), `air_c`, `heater_w`, `water_kg`,
//! `start_c` and `left_kg` of the pot, `lid` (on, ajar, off), `altitude_m`, `latitude_deg`, `wind_m_s`,
//! `intercept_m2`, `elapsed` (s, min, h), `degrees` (c, f), and the prices `price_store_kg`,
//! `price_seat`, `price_fins`, `price_jacket`, `price_wrap`, `price_heater`, `price_panels`.
//!
//! Bad input gives one line on stderr that names the file and the field or the line, exit code 2, and
//! nothing on stdout.

mod cooker;
#[allow(dead_code, reason = "shared with the other programs")]
#[path = "../simulate/fields.rs"]
mod fields;
#[allow(dead_code, reason = "it is given several files")]
#[path = "../simulate/program.rs"]
mod program;
mod report;
mod runs;
mod words;

use std::process::ExitCode;

use model::bench::{Body, Settings, fit};

fn main() -> ExitCode {
    program::print("fit", answer())
}

fn answer() -> Result<String, String> {
    let mut names = std::env::args_os()
        .skip(1)
        .map(|name| name.to_string_lossy().into_owned());
    let Some(cooker_name) = names.next() else {
        return Err("give the name of a file with a cooker, and of files with runs".into());
    };
    let run_names: Vec<String> = names.collect();
    if run_names.is_empty() {
        return Err("give the names of files with runs".into());
    }
    let read = |name: &String| {
        std::fs::read(name)
            .map_err(|error| format!("{name}: {error}"))
            .and_then(|bytes| {
                String::from_utf8(bytes).map_err(|_| format!("{name}: is not UTF-8 text"))
            })
    };
    let cooker =
        cooker::read(&read(&cooker_name)?).map_err(|error| format!("{cooker_name}: {error}"))?;
    let mut files = Vec::new();
    for name in &run_names {
        let file =
            runs::read(name, &read(name)?, &cooker).map_err(|error| format!("{name}: {error}"))?;
        files.push(file);
    }
    let site = runs::site(&files)?;
    let body = Body::new(&site, &cooker).map_err(|error| format!("{cooker_name}: {error}"))?;
    let runs: Vec<_> = files.iter().map(|file| file.run.clone()).collect();
    let found = fit(&body, &runs, &Settings::default()).map_err(|error| error.to_string())?;
    let report = report::report(&site, &cooker, &body, &files, &found)
        .map_err(|error| format!("{cooker_name}: {error}"))?;
    let mut out = serde_json::to_string_pretty(&report).map_err(|error| error.to_string())?;
    out.push('\n');
    Ok(out)
}

#[cfg(test)]
mod tests;
