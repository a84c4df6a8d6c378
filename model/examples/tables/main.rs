//! Prints the tables of `model/DATA.md` from the code.

mod render;

use std::io::Write;

fn main() -> std::io::Result<()> {
    std::io::stdout().write_all(render::tables().as_bytes())
}
