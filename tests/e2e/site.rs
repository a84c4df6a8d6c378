//! A copy of the built site for one story, with a server that can be stopped.

use std::error::Error;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::process::Command;

use host::{Server, Site as Served};

/// The root of the repository.
pub(crate) fn root() -> &'static Path {
    let tests = Path::new(env!("CARGO_MANIFEST_DIR"));
    // Chromium takes no path with `..` in it.
    tests.parent().unwrap_or(tests)
}

/// What is added to the name of a file that the page is not to have.
const HELD: &str = ".held";

/// The site of one story.
pub(crate) struct Site {
    folder: PathBuf,
    base: String,
    server: Option<Server>,
    url: String,
    port: u16,
}

impl Site {
    /// Serves a copy of `dist/` in `folder` on a free port, under the path `base`.
    pub(crate) fn start(folder: PathBuf, base: &str) -> Result<Self, Box<dyn Error>> {
        let built = root().join("dist");
        if !built.join("index.html").is_file() {
            return Err("there is no built site; run: sh app/build.sh".into());
        }
        copy(&built, &folder)?;
        let mut site = Self {
            folder,
            base: base.to_owned(),
            server: None,
            url: String::new(),
            port: 0,
        };
        site.serve()?;
        Ok(site)
    }

    /// The address of the site, with a slash at its end; the same for the whole story.
    pub(crate) fn url(&self) -> &str {
        &self.url
    }

    /// Takes the server away: from now on nothing listens at the address.
    pub(crate) fn stop_server(&mut self) {
        self.server = None;
    }

    /// Starts the server again at the same address.
    pub(crate) fn serve(&mut self) -> io::Result<()> {
        let served = Served {
            base: self.base.clone(),
            // Many hosts tell the browser to keep files for some minutes.
            cache_control: "max-age=600".to_owned(),
            ..Served::new(&self.folder)
        };
        let server = Server::start(served, self.port)?;
        self.url = server.url();
        self.port = server.port();
        self.server = Some(server);
        Ok(())
    }

    /// Makes the site another version of itself, which says so in a `meta` element.
    pub(crate) fn release(&self, name: &str) -> Result<(), Box<dyn Error>> {
        let page = self.folder.join("index.html");
        let text = fs::read_to_string(&page)?;
        let (head, tail) = text.split_once("<title>").ok_or("the page has no title")?;
        let mark = format!("<meta name=\"release\" content=\"{name}\">");
        fs::write(&page, format!("{head}{mark}<title>{tail}"))?;
        let status = Command::new("sh")
            .arg(root().join("app/precache.sh"))
            .arg(&self.folder)
            .status()?;
        if status.success() {
            Ok(())
        } else {
            Err("app/precache.sh failed".into())
        }
    }

    /// Puts one more file on the site, which its list of files does not hold.
    pub(crate) fn add(&self, file: &str, text: &str) -> io::Result<()> {
        fs::write(self.folder.join(file), text)
    }

    /// Keeps the files whose names end so from the page.
    pub(crate) fn hold_back(&self, ending: &str) -> io::Result<()> {
        self.rename(ending, |name| format!("{name}{HELD}"))
    }

    /// Lets the page have those files again.
    pub(crate) fn give_back(&self, ending: &str) -> io::Result<()> {
        self.rename(&format!("{ending}{HELD}"), |name| {
            name.trim_end_matches(HELD).to_owned()
        })
    }

    fn rename(&self, ending: &str, other: impl Fn(&str) -> String) -> io::Result<()> {
        for entry in fs::read_dir(&self.folder)? {
            let name = entry?.file_name();
            if let Some(name) = name.to_str().filter(|name| name.ends_with(ending)) {
                fs::rename(self.folder.join(name), self.folder.join(other(name)))?;
            }
        }
        Ok(())
    }

    /// Damages `file` of the site without telling its list of files.
    pub(crate) fn damage(&self, file: &str) -> io::Result<()> {
        self.add(file, "not what was built")
    }
}

fn copy(from: &Path, to: &Path) -> io::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let target = to.join(entry.file_name());
        if entry.file_type()?.is_dir() {
            copy(&entry.path(), &target)?;
        } else {
            fs::copy(entry.path(), target)?;
        }
    }
    Ok(())
}
