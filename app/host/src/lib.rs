//! Serves the files of one folder over HTTP on loopback, as a plain web host does: right media
//! types, an `ETag`, `404` for what is not there, and no page in place of a missing file.
//!
//! It knows nothing of the app. `app/serve.sh` runs it for a person; the browser tests start and
//! stop it to see what the app does without a server.

mod reply;

use std::io::{self, BufRead as _, BufReader, Read as _};
use std::net::{Ipv4Addr, SocketAddr, TcpListener, TcpStream};
use std::path::PathBuf;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::JoinHandle;
use std::time::Duration;

/// The longest head of a request that is read; a browser sends well below a tenth of it. In bytes.
const REQUEST_LIMIT: u64 = 64 * 1024;

/// How long a connection may say nothing. Browsers open some in advance and never use them.
const SILENCE: Duration = Duration::from_secs(20);

/// What is served, and how.
#[derive(Clone, Debug)]
pub struct Site {
    /// The folder that holds the files.
    pub folder: PathBuf,
    /// The path of the site on its host, starting and ending with a slash.
    pub base: String,
    /// The value of `Cache-Control` in every answer.
    pub cache_control: String,
}

impl Site {
    /// The site in `folder` at the root of its host, with files that a browser asks for anew.
    pub fn new(folder: impl Into<PathBuf>) -> Self {
        Self {
            folder: folder.into(),
            base: "/".to_owned(),
            cache_control: "no-cache".to_owned(),
        }
    }
}

/// A running server. It stops when it is dropped.
#[derive(Debug)]
pub struct Server {
    address: SocketAddr,
    base: String,
    stopped: Arc<AtomicBool>,
    accepting: Option<JoinHandle<()>>,
}

impl Server {
    /// Serves `site` on `port` of 127.0.0.1, or on a free port when `port` is 0.
    ///
    /// # Errors
    ///
    /// When the port is taken or not allowed.
    pub fn start(site: Site, port: u16) -> io::Result<Self> {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port))?;
        let address = listener.local_addr()?;
        let base = site.base.clone();
        let stopped = Arc::new(AtomicBool::new(false));
        let accepting = std::thread::spawn({
            let stopped = Arc::clone(&stopped);
            move || accept(&listener, &Arc::new(site), &stopped)
        });
        Ok(Self {
            address,
            base,
            stopped,
            accepting: Some(accepting),
        })
    }

    /// The address of the site, with a slash at its end.
    #[must_use]
    pub fn url(&self) -> String {
        format!("http://{}{}", self.address, self.base)
    }

    /// The port it listens on.
    #[must_use]
    pub fn port(&self) -> u16 {
        self.address.port()
    }

    /// Waits until the server ends, which it does only by an error.
    pub fn wait(mut self) {
        self.join();
    }

    fn join(&mut self) {
        if let Some(accepting) = self.accepting.take() {
            // A panic of the thread has already been printed; there is nothing to add to it.
            let _ = accepting.join();
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        if self.accepting.is_some() {
            self.stopped.store(true, Ordering::SeqCst);
            // One more connection wakes the thread that waits for one. When it can't be made, the
            // listener is gone already.
            let _ = TcpStream::connect(self.address);
            self.join();
        }
    }
}

/// Gives each connection a thread of its own until the server is stopped.
fn accept(listener: &TcpListener, site: &Arc<Site>, stopped: &Arc<AtomicBool>) {
    for connection in listener.incoming() {
        if stopped.load(Ordering::SeqCst) {
            return;
        }
        if let Ok(connection) = connection {
            let site = Arc::clone(site);
            let stopped = Arc::clone(stopped);
            std::thread::spawn(move || {
                // The browser closed the connection: it will ask again if it still wants the file.
                let _ = answer(&connection, &site, &stopped);
            });
        }
    }
}

/// Reads one request and answers it, unless the server was stopped meanwhile.
fn answer(connection: &TcpStream, site: &Site, stopped: &AtomicBool) -> io::Result<()> {
    connection.set_read_timeout(Some(SILENCE))?;
    let mut lines = BufReader::new(connection.take(REQUEST_LIMIT)).lines();
    let Some(request) = lines.next().transpose()? else {
        return Ok(());
    };
    let mut known_tag = None;
    for line in lines {
        let line = line?;
        match line.split_once(':') {
            _ if line.is_empty() => break,
            Some((name, value)) if name.eq_ignore_ascii_case("if-none-match") => {
                known_tag = Some(value.trim().to_owned());
            }
            _ => {}
        }
    }
    if stopped.load(Ordering::SeqCst) {
        return Ok(());
    }
    reply::write(connection, site, &request, known_tag.as_deref())
}
