//! From the first line of a request to the bytes that answer it.

use crate::Site;
use std::hash::{DefaultHasher, Hash as _, Hasher as _};
use std::io::{self, Write};
use std::path::{Component, Path, PathBuf};

/// What a path of the site leads to.
enum Found {
    File(PathBuf),
    /// A folder asked for without the slash at its end.
    Folder,
    Nothing,
}

/// Answers `request`, such as `GET / HTTP/1.1`, of a browser that holds the version `known_tag`.
pub(crate) fn write(
    mut to: impl Write,
    site: &Site,
    request: &str,
    known_tag: Option<&str>,
) -> io::Result<()> {
    let mut words = request.split(' ');
    let (method, target) = (
        words.next().unwrap_or_default(),
        words.next().unwrap_or_default(),
    );
    if method != "GET" && method != "HEAD" {
        return plain(to, "405 Method Not Allowed", "Allow: GET, HEAD\r\n");
    }
    let path = target.split(['?', '#']).next().unwrap_or_default();
    match find(site, path) {
        Found::Nothing => plain(to, "404 Not Found", ""),
        Found::Folder => plain(
            to,
            "301 Moved Permanently",
            &format!("Location: {path}/\r\n"),
        ),
        Found::File(file) => {
            let body = std::fs::read(&file)?;
            let tag = tag_of(&body);
            let is_known = known_tag == Some(tag.as_str());
            let status = if is_known {
                "304 Not Modified"
            } else {
                "200 OK"
            };
            write!(
                to,
                "HTTP/1.1 {status}\r\nContent-Type: {}\r\nContent-Length: {}\r\nETag: {tag}\r\n\
                 Cache-Control: {}\r\nX-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n",
                media_type(&file),
                body.len(),
                site.cache_control,
            )?;
            if method == "GET" && !is_known {
                to.write_all(&body)?;
            }
            to.flush()
        }
    }
}

/// An answer that is only a status, with more `headers`, each ended by a line break.
fn plain(mut to: impl Write, status: &str, headers: &str) -> io::Result<()> {
    write!(
        to,
        "HTTP/1.1 {status}\r\nContent-Type: text/plain; charset=utf-8\r\nContent-Length: {}\r\n\
         Cache-Control: no-cache\r\nConnection: close\r\n{headers}\r\n{status}",
        status.len()
    )?;
    to.flush()
}

fn find(site: &Site, path: &str) -> Found {
    if format!("{path}/") == site.base {
        return Found::Folder;
    }
    let Some(name) = path.strip_prefix(&site.base).and_then(decoded) else {
        return Found::Nothing;
    };
    // Nothing outside the folder is served, whatever the path says.
    if !Path::new(&name)
        .components()
        .all(|part| matches!(part, Component::Normal(_)))
    {
        return Found::Nothing;
    }
    let file = site.folder.join(&name);
    if file.is_file() && !name.ends_with('/') {
        return Found::File(file);
    }
    let index = file.join("index.html");
    match index.is_file() {
        true if name.is_empty() || name.ends_with('/') => Found::File(index),
        true => Found::Folder,
        false => Found::Nothing,
    }
}

/// Undoes the percent encoding of a path (RFC 3986, 2.1); `None` when that gives no text.
fn decoded(path: &str) -> Option<String> {
    let mut parts = path.split('%');
    let mut bytes = parts.next().unwrap_or_default().as_bytes().to_vec();
    for part in parts {
        let (digits, rest) = part.split_at_checked(2)?;
        bytes.push(u8::from_str_radix(digits, 16).ok()?);
        bytes.extend_from_slice(rest.as_bytes());
    }
    String::from_utf8(bytes).ok()
}

/// The same for the same content, in every run.
fn tag_of(body: &[u8]) -> String {
    let mut hasher = DefaultHasher::new();
    body.hash(&mut hasher);
    format!("\"{:016x}\"", hasher.finish())
}

/// Media types as registered with IANA; a browser refuses to stream WebAssembly under another one.
fn media_type(file: &Path) -> &'static str {
    match file.extension().and_then(|extension| extension.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::write;
    use crate::Site;
    use std::fs;
    use std::path::PathBuf;

    /// A small site in a folder of its own, taken away again at the end of the test.
    struct Folder(PathBuf);

    impl Folder {
        fn new(name: &str) -> Self {
            let folder = std::env::temp_dir().join(format!("host-{}-{name}", std::process::id()));
            fs::create_dir_all(folder.join("icons")).unwrap();
            fs::write(folder.join("index.html"), "<p>page").unwrap();
            fs::write(folder.join("app.wasm"), "\0asm").unwrap();
            fs::write(folder.join("icons/index.html"), "<p>icons").unwrap();
            Self(folder)
        }
    }

    impl Drop for Folder {
        fn drop(&mut self) {
            fs::remove_dir_all(&self.0).unwrap();
        }
    }

    fn ask(site: &Site, request: &str, known_tag: Option<&str>) -> String {
        let mut answer = Vec::new();
        write(&mut answer, site, request, known_tag).unwrap();
        String::from_utf8(answer).unwrap()
    }

    #[test]
    fn answers_with_the_file_and_its_media_type() {
        let folder = Folder::new("file");
        let site = Site::new(&folder.0);
        let page = ask(&site, "GET / HTTP/1.1", None);
        assert!(
            page.starts_with("HTTP/1.1 200 OK\r\nContent-Type: text/html"),
            "{page}"
        );
        assert!(page.ends_with("\r\n\r\n<p>page"), "{page}");
        assert!(
            ask(&site, "GET /app.wasm?v=1 HTTP/1.1", None)
                .contains("Content-Type: application/wasm\r\n")
        );
        assert!(ask(&site, "HEAD /app.wasm HTTP/1.1", None).ends_with("\r\n\r\n"));
    }

    #[test]
    fn says_when_a_browser_has_the_file_already() {
        let folder = Folder::new("tag");
        let site = Site::new(&folder.0);
        let first = ask(&site, "GET / HTTP/1.1", None);
        let tag = first
            .lines()
            .find_map(|line| line.strip_prefix("ETag: "))
            .unwrap();
        let second = ask(&site, "GET / HTTP/1.1", Some(tag));
        assert!(second.starts_with("HTTP/1.1 304"), "{second}");
        assert!(second.ends_with("\r\n\r\n"), "{second}");
    }

    #[test]
    fn serves_nothing_but_the_folder_under_its_path() {
        let folder = Folder::new("base");
        let site = Site {
            base: "/pots/".to_owned(),
            ..Site::new(&folder.0)
        };
        for (request, status) in [
            ("GET /pots/ HTTP/1.1", "200"),
            ("GET /pots/%69ndex.html HTTP/1.1", "200"),
            ("GET /pots/icons/ HTTP/1.1", "200"),
            ("GET /pots/icons HTTP/1.1", "301"),
            ("GET /pots HTTP/1.1", "301"),
            ("GET / HTTP/1.1", "404"),
            ("GET /index.html HTTP/1.1", "404"),
            ("GET /pots/diary HTTP/1.1", "404"),
            ("GET /pots/app.wasm/ HTTP/1.1", "404"),
            ("GET /pots/../Cargo.toml HTTP/1.1", "404"),
            ("GET /pots/%2e%2e/Cargo.toml HTTP/1.1", "404"),
            ("GET /pots//etc/passwd HTTP/1.1", "404"),
            ("GET /pots/%zz HTTP/1.1", "404"),
            ("POST /pots/ HTTP/1.1", "405"),
            ("", "405"),
        ] {
            let answer = ask(&site, request, None);
            assert!(
                answer.starts_with(&format!("HTTP/1.1 {status}")),
                "{request}: {answer}"
            );
        }
    }
}
