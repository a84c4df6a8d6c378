//! Prints every check against an outside source, and who disagrees with us by how much.
//!
//!     cargo run --release -p checks --example outside
//!     cargo run --release -p checks --example outside -- --disagreements

use std::io::Write;

use checks::outside::{all, disagreements, list};

fn main() -> std::io::Result<()> {
    let checks = all();
    let mut out = std::io::stdout().lock();
    if std::env::args().nth(1).as_deref() != Some("--disagreements") {
        writeln!(out, "{}", list(&checks))?;
    }
    out.write_all(disagreements(&checks).as_bytes())
}
