//! What a person sees and does on the page.
//!
//! Whatever looks for something waits for it, for some seconds. Things are found by what they are
//! to a person, a role and a name, or by their `data-test`; never by a CSS class or by HTML.

use std::error::Error;
use std::fs;
use std::time::Instant;

use serde_json::Value;
use thirtyfour::{By, WebElement};

use crate::browser::{Browser, INTERVAL, PATIENCE};
use crate::found::{FIELDS, by_role};
use crate::site::{Site, root};

type Result<T> = std::result::Result<T, Box<dyn Error>>;

/// The page of the app in its browser, and the site it comes from.
pub(crate) struct Page {
    browser: Browser,
    pub(crate) site: Site,
    /// Addresses asked for that were read off the browser's log so far.
    requests: Vec<String>,
}

impl Page {
    pub(crate) fn new(browser: Browser, site: Site) -> Self {
        Self {
            browser,
            site,
            requests: Vec::new(),
        }
    }

    /// Opens the app at a screen, `"#/diary"` or `""`, as from a link: the page is loaded anew.
    pub(crate) async fn open(&self, hash: &str) -> Result<()> {
        // From a page of the same address the browser would only move, and load nothing.
        self.browser.web.goto("about:blank").await?;
        self.browser
            .web
            .goto(format!("{}{hash}", self.site.url()))
            .await?;
        self.is_drawn().await
    }

    /// Reloads the page.
    pub(crate) async fn reload(&self) -> Result<()> {
        self.browser.web.refresh().await?;
        self.is_drawn().await
    }

    /// The app has put its first heading on the page.
    async fn is_drawn(&self) -> Result<()> {
        self.until(
            "a heading on the page",
            "return document.querySelector('h1') !== null",
        )
        .await
    }

    /// Waits until all of the app is on the device.
    pub(crate) async fn is_kept(&self) -> Result<()> {
        self.until(
            "the service worker in charge of the page",
            "return navigator.serviceWorker.controller?.state === 'activated'",
        )
        .await
    }

    /// The one element whose `data-test` is `name`.
    pub(crate) async fn test(&self, name: &str) -> Result<WebElement> {
        let selector = format!("[data-test='{name}']");
        self.one(&format!("data-test={name}"), async || {
            Ok(self.browser.web.find_all(By::Css(selector.clone())).await?)
        })
        .await
    }

    /// Whether anything on the page has `name` as its `data-test` just now.
    pub(crate) async fn has_test(&self, name: &str) -> Result<bool> {
        let selector = format!("[data-test='{name}']");
        Ok(!self
            .browser
            .web
            .find_all(By::Css(selector))
            .await?
            .is_empty())
    }

    /// The one element with this role (of WAI-ARIA) and this accessible name.
    pub(crate) async fn role(&self, role: &str, name: &str) -> Result<WebElement> {
        self.one(&format!("{role} '{name}'"), async || {
            by_role(&self.browser.web, &[role], name).await
        })
        .await
    }

    /// The one field with this label.
    pub(crate) async fn field(&self, label: &str) -> Result<WebElement> {
        self.one(&format!("field '{label}'"), async || {
            by_role(&self.browser.web, FIELDS, label).await
        })
        .await
    }

    /// Presses the button, link or tab called `name`.
    pub(crate) async fn press(&self, name: &str) -> Result<()> {
        let pressable = &[
            "button", "link", "tab", "menuitem", "radio", "checkbox", "switch",
        ];
        let found = self
            .one(&format!("button or link '{name}'"), async || {
                by_role(&self.browser.web, pressable, name).await
            })
            .await?;
        found.scroll_into_view().await?;
        Ok(found.click().await?)
    }

    /// Writes `text` into the field with this label, in place of what is there.
    pub(crate) async fn fill(&self, label: &str, text: &str) -> Result<()> {
        let field = self.field(label).await?;
        field.clear().await?;
        Ok(field.send_keys(text).await?)
    }

    /// Waits until `text` can be read on the page.
    pub(crate) async fn see(&self, text: &str) -> Result<()> {
        let quoted = Value::from(text).to_string();
        self.until(
            &format!("the words '{text}'"),
            &format!("return document.body.innerText.includes({quoted})"),
        )
        .await
    }

    /// All that can be read on the page.
    pub(crate) async fn text(&self) -> Result<String> {
        let text = self.evaluate("return document.body.innerText").await?;
        Ok(text.as_str().unwrap_or_default().to_owned())
    }

    /// Which version of the site the page is of: the name given to [`Site::release`], or none.
    pub(crate) async fn release(&self) -> Result<Option<String>> {
        let script = "return document.querySelector('meta[name=release]')?.content ?? null";
        Ok(self.evaluate(script).await?.as_str().map(str::to_owned))
    }

    /// What is behind the address of the site: `#/diary`.
    pub(crate) async fn hash(&self) -> Result<String> {
        let hash = self.evaluate("return location.hash").await?;
        Ok(hash.as_str().unwrap_or_default().to_owned())
    }

    /// What a function body in JavaScript returns.
    pub(crate) async fn evaluate(&self, script: &str) -> Result<Value> {
        Ok(self
            .browser
            .web
            .execute(script, Vec::new())
            .await?
            .json()
            .clone())
    }

    /// Waits until `script` returns true; `what` says what is waited for.
    pub(crate) async fn until(&self, what: &str, script: &str) -> Result<()> {
        self.patiently(what, async || {
            Ok(self
                .evaluate(script)
                .await?
                .as_bool()
                .unwrap_or_default()
                .then_some(()))
        })
        .await
    }

    /// Errors on the console since the last time it was asked.
    pub(crate) async fn console_errors(&self) -> Result<Vec<String>> {
        let entries = self.browser.web.get_log("browser").await?;
        Ok(entries
            .into_iter()
            .filter(|entry| entry.level == "SEVERE")
            .map(|entry| entry.message)
            .collect())
    }

    /// Every address that the page has asked for since the story began.
    pub(crate) async fn requests(&mut self) -> Result<&[String]> {
        for entry in self.browser.web.get_log("performance").await? {
            let entry: Value = serde_json::from_str(&entry.message)?;
            let message = &entry["message"];
            // The browser starts with a page of its own, which asks for what it likes.
            let by = message["params"]["documentURL"].as_str();
            let is_browsers = by.is_some_and(|page| page.starts_with("chrome"));
            if message["method"] == "Network.requestWillBeSent"
                && !is_browsers
                && let Some(url) = message["params"]["request"]["url"].as_str()
            {
                self.requests.push(url.to_owned());
            }
        }
        Ok(&self.requests)
    }

    /// Nothing was logged as an error, and no request went to another origin.
    pub(crate) async fn is_without_trouble(&mut self) -> Result<()> {
        let errors = self.console_errors().await?;
        if !errors.is_empty() {
            return Err(format!("the console shows errors:\n{}", errors.join("\n")).into());
        }
        let own = self.site.url().to_owned();
        let inside = [own.as_str(), "data:", "blob:", "about:"];
        let requests = self.requests().await?;
        let foreign = requests
            .iter()
            .find(|url| !inside.iter().any(|start| url.starts_with(start)));
        match foreign {
            Some(url) => Err(format!("the page asked for {url}").into()),
            None => Ok(()),
        }
    }

    /// The text of the file that was handed out under a name that begins so.
    pub(crate) async fn downloaded(&self, begins: &str) -> Result<String> {
        let folder = self.browser.downloads();
        self.patiently(&format!("a file {begins}…"), async || {
            let mut files = fs::read_dir(&folder)?.filter_map(std::result::Result::ok);
            let found = files.find(|file| {
                let name = file.file_name();
                let name = name.to_string_lossy();
                name.starts_with(begins) && !name.ends_with("crdownload")
            });
            Ok(found
                .map(|file| fs::read_to_string(file.path()))
                .transpose()?)
        })
        .await
    }

    /// Saves a picture of the screen as `target/screenshots/<name>.png`.
    pub(crate) async fn screenshot(&self, name: &str) -> Result<()> {
        let folder = root().join("target/screenshots");
        fs::create_dir_all(&folder)?;
        Ok(self
            .browser
            .web
            .screenshot(&folder.join(format!("{name}.png")))
            .await?)
    }

    /// Shows what is on the page when a story has failed.
    pub(crate) async fn describe(&self, name: &str) -> Result<()> {
        eprintln!("on the page: {:?}", self.text().await?);
        eprintln!("console errors: {:?}", self.console_errors().await?);
        self.screenshot(name).await?;
        eprintln!("picture: target/screenshots/{name}.png");
        Ok(())
    }

    /// Closes the browser.
    pub(crate) async fn close(self) -> Result<()> {
        self.browser.quit().await
    }

    /// Waits for exactly one element.
    async fn one(
        &self,
        what: &str,
        find: impl AsyncFn() -> Result<Vec<WebElement>>,
    ) -> Result<WebElement> {
        let found = self
            .patiently(what, async || {
                let found = find().await?;
                Ok((!found.is_empty()).then_some(found))
            })
            .await?;
        match <[WebElement; 1]>::try_from(found) {
            Ok([only]) => Ok(only),
            Err(several) => Err(format!("{} elements are {what}", several.len()).into()),
        }
    }

    /// Asks `look` again and again until it gives something. An error may come of a page that is
    /// just being replaced, so it counts only when the time is over.
    async fn patiently<T>(
        &self,
        what: &str,
        look: impl AsyncFn() -> Result<Option<T>>,
    ) -> Result<T> {
        let start = Instant::now();
        loop {
            let seen = look().await;
            if let Ok(Some(found)) = seen {
                return Ok(found);
            }
            if PATIENCE < start.elapsed() {
                let why = seen
                    .err()
                    .map_or_else(String::new, |error| format!(": {error}"));
                return Err(format!("no sign of {what} after {PATIENCE:?}{why}").into());
            }
            tokio::time::sleep(INTERVAL).await;
        }
    }
}
