//! `split <glue.js> <room>...`: cuts the program beside its glue in two.
//!
//! `app.js` stands beside `app_bg.wasm`, which becomes the first part, and `app_rest.wasm` is made.

use std::error::Error;
use std::fs;
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use split::{Rooms, cut, with_rest};

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let glue = arguments.next().map(PathBuf::from);
    let rooms: Vec<String> = arguments.collect();
    let outcome = match glue {
        Some(glue) if !rooms.is_empty() => run(&glue, &rooms),
        _ => Err("usage: split <glue.js> <room>...".into()),
    };
    match outcome {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => {
            // Without a place for messages the exit code must do.
            let _ = writeln!(io::stderr(), "{why}");
            ExitCode::FAILURE
        }
    }
}

fn run(glue: &Path, rooms: &[String]) -> Result<(), Box<dyn Error>> {
    let stem = (glue.file_stem().and_then(|stem| stem.to_str())).ok_or("the glue has no name")?;
    let program = glue.with_file_name(format!("{stem}_bg.wasm"));
    let file = format!("{stem}_rest.wasm");
    let parts = cut(&fs::read(&program)?, &Rooms(rooms))?;
    let text = with_rest(&fs::read_to_string(glue)?, &file)
        .ok_or("this is not the glue that wasm-bindgen writes")?;
    fs::write(glue.with_file_name(file), parts.rest)?;
    fs::write(program, parts.first)?;
    fs::write(glue, text)?;
    writeln!(io::stderr(), "== {} functions can come later", parts.moved)?;
    Ok(())
}
