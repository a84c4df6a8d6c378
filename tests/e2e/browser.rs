//! Chromium with an empty profile and the screen of a phone, and its driver.

use std::env;
use std::error::Error;
use std::fs;
use std::io::{BufRead as _, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::Arc;
use std::time::Duration;

use serde_json::json;
use thirtyfour::extensions::query::ElementPollerWithTimeout;
use thirtyfour::{
    ChromeCapabilities, ChromiumLikeCapabilities as _, DesiredCapabilities, LoggingPrefsLogLevel,
    WebDriver,
};

/// Whether the phone is set to light or dark.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Theme {
    Light,
    Dark,
}

/// The phone a story is played on.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Phone {
    /// Width of the page, in CSS pixels.
    pub(crate) width: u32,
    /// Height of the page, in CSS pixels.
    pub(crate) height: u32,
    pub(crate) theme: Theme,
    /// How many times slower than this machine it computes; 6 stands for a low-cost phone.
    pub(crate) slowdown: u32,
    /// The language that it is set to, as a BCP 47 tag.
    pub(crate) language: &'static str,
    /// The name of its time zone in the tz database.
    pub(crate) time_zone: &'static str,
}

impl Default for Phone {
    fn default() -> Self {
        Self {
            width: 360,
            height: 740,
            theme: Theme::Light,
            slowdown: 1,
            language: "en-GB",
            time_zone: "Asia/Kathmandu",
        }
    }
}

/// A running browser. Nothing of it is left when it is dropped.
pub(crate) struct Browser {
    driver: Child,
    profile: PathBuf,
    pub(crate) web: WebDriver,
}

impl Browser {
    /// Starts a browser whose profile is in `folder`.
    pub(crate) async fn start(folder: &Path, phone: Phone) -> Result<Self, Box<dyn Error>> {
        let profile = folder.join("profile");
        fs::create_dir_all(&profile)?;
        let (mut driver, port) = start_driver()?;
        let capabilities = capabilities(&profile, phone)?;
        let web = match WebDriver::new(format!("http://127.0.0.1:{port}"), capabilities).await {
            Ok(web) => web,
            Err(error) => {
                stop(&mut driver, &profile);
                return Err(error.into());
            }
        };
        let browser = Self {
            driver,
            profile,
            web,
        };
        browser.become_phone(phone).await?;
        Ok(browser)
    }

    /// Sets what no option at the start can set.
    async fn become_phone(&self, phone: Phone) -> Result<(), Box<dyn Error>> {
        let poller = ElementPollerWithTimeout::new(PATIENCE, INTERVAL);
        self.web.set_poller(Arc::new(poller));
        self.web.set_script_timeout(PATIENCE).await?;
        let theme = match phone.theme {
            Theme::Light => "light",
            Theme::Dark => "dark",
        };
        let cdp = self.web.cdp();
        cdp.send_raw(
            "Emulation.setEmulatedMedia",
            json!({ "features": [{ "name": "prefers-color-scheme", "value": theme }] }),
        )
        .await?;
        cdp.send_raw(
            "Emulation.setCPUThrottlingRate",
            json!({ "rate": phone.slowdown }),
        )
        .await?;
        cdp.send_raw(
            "Emulation.setTimezoneOverride",
            json!({ "timezoneId": phone.time_zone }),
        )
        .await?;
        Ok(())
    }

    /// Where files go that the page hands out.
    pub(crate) fn downloads(&self) -> PathBuf {
        self.profile.with_file_name("downloads")
    }

    /// Ends the browser in good order.
    pub(crate) async fn quit(self) -> Result<(), Box<dyn Error>> {
        self.web.clone().quit().await?;
        Ok(())
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        stop(&mut self.driver, &self.profile);
    }
}

/// How long a story waits for something to appear.
pub(crate) const PATIENCE: Duration = Duration::from_secs(15);

/// How long it waits between two looks.
pub(crate) const INTERVAL: Duration = Duration::from_millis(50);

fn capabilities(profile: &Path, phone: Phone) -> Result<ChromeCapabilities, Box<dyn Error>> {
    let mut capabilities = DesiredCapabilities::chrome();
    for argument in [
        "--headless",
        // The sandbox refuses to run as root, as tests do in a container.
        "--no-sandbox",
        "--disable-dev-shm-usage",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
    ] {
        capabilities.add_arg(argument)?;
    }
    capabilities.add_arg(&format!("--user-data-dir={}", profile.display()))?;
    capabilities.add_arg(&format!("--lang={}", phone.language))?;
    capabilities.add_experimental_option(
        "prefs",
        json!({
            "intl.accept_languages": phone.language,
            "download.default_directory": profile.with_file_name("downloads"),
        }),
    )?;
    capabilities.add_experimental_option(
        "mobileEmulation",
        json!({ "deviceMetrics": {
            "width": phone.width, "height": phone.height, "pixelRatio": 2.0, "touch": true, "mobile": true,
        } }),
    )?;
    capabilities.set_browser_log_level(LoggingPrefsLogLevel::All)?;
    capabilities.set_logging_prefs("performance", LoggingPrefsLogLevel::All)?;
    if let Some(program) = program(
        "CHROMIUM",
        &["chromium", "google-chrome", "chromium-browser"],
    ) {
        capabilities.set_binary(&program.to_string_lossy())?;
    }
    Ok(capabilities)
}

/// Starts the driver on a free port, which it tells in its output.
fn start_driver() -> Result<(Child, u16), Box<dyn Error>> {
    let program = program("CHROMEDRIVER", &["chromedriver"])
        .ok_or("chromedriver is not installed; tests/run.sh says how to get it")?;
    let mut driver = Command::new(program)
        .arg("--port=0")
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()?;
    let output = driver.stdout.take().ok_or("chromedriver has no output")?;
    let mut lines = BufReader::new(output).lines();
    let port = lines.by_ref().map_while(Result::ok).find_map(|line| {
        let (_, port) = line.split_once("started successfully on port ")?;
        port.trim_end_matches('.').parse().ok()
    });
    // What it says later is of no interest, but it must be able to say it.
    std::thread::spawn(move || lines.map_while(Result::ok).for_each(drop));
    match port {
        Some(port) => Ok((driver, port)),
        None => {
            stop(&mut driver, Path::new(NO_PROFILE));
            Err("chromedriver did not start".into())
        }
    }
}

/// Stands for a profile that no browser has.
const NO_PROFILE: &str = "no profile";

/// Ends the driver and every process of the browser, which are known by their profile.
fn stop(driver: &mut Child, profile: &Path) {
    // Each of these fails where the process has ended already, which is what is wanted.
    let _ = driver.kill();
    let _ = driver.wait();
    for process in fs::read_dir("/proc").into_iter().flatten().flatten() {
        let Ok(command) = fs::read(process.path().join("cmdline")) else {
            continue;
        };
        if String::from_utf8_lossy(&command)
            .contains(&format!("--user-data-dir={}", profile.display()))
        {
            let _ = Command::new("kill")
                .arg("-KILL")
                .arg(process.file_name())
                .status();
        }
    }
}

/// The program that the environment names, or the first of `names` on the path.
fn program(variable: &str, names: &[&str]) -> Option<PathBuf> {
    if let Some(named) = env::var_os(variable) {
        return Some(named.into());
    }
    let path = env::var_os("PATH")?;
    let folders: Vec<PathBuf> = env::split_paths(&path).collect();
    names.iter().find_map(|name| {
        folders
            .iter()
            .map(|folder| folder.join(name))
            .find(|program| program.is_file())
    })
}
