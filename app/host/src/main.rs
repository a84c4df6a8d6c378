//! `host <folder> <port>`: serves a built site until it is stopped.

use host::{Server, Site};
use std::io::{self, Write as _};
use std::process::ExitCode;

fn main() -> ExitCode {
    let mut arguments = std::env::args().skip(1);
    let (Some(folder), Some(Ok(port))) = (arguments.next(), arguments.next().map(|p| p.parse()))
    else {
        return refuse("usage: host <folder> <port>");
    };
    match Server::start(Site::new(folder), port) {
        Ok(server) => {
            // Where nobody reads the output, the site is served all the same.
            let _ = writeln!(
                io::stdout(),
                "Duskpot is at {}  (Ctrl-C stops it)",
                server.url()
            );
            server.wait();
            ExitCode::SUCCESS
        }
        Err(error) => refuse(&format!(
            "port {port} of this machine can't be used: {error}\nTry another: sh app/serve.sh 8081"
        )),
    }
}

fn refuse(why: &str) -> ExitCode {
    // Without a place for messages the exit code must do.
    let _ = writeln!(io::stderr(), "{why}");
    ExitCode::FAILURE
}
