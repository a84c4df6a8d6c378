//! Runs one story: sets up, looks for trouble at the end, and cleans up.

use std::error::Error;
use std::fs;
use std::panic::{AssertUnwindSafe, Location, catch_unwind, resume_unwind};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{Mutex, PoisonError};

use crate::browser::{Browser, Phone};
use crate::page::Page;
use crate::site::{Site, root};

/// What a story ends with.
pub(crate) type Outcome = Result<(), Box<dyn Error>>;

/// One browser at a time.
static TURN: Mutex<()> = Mutex::new(());

/// Plays `tell` on the usual phone.
#[track_caller]
pub(crate) fn story(tell: impl AsyncFnOnce(&mut Page) -> Outcome) {
    story_on(Phone::default(), "/", tell);
}

/// Plays `tell` on `phone`, with the site under the path `base` of its host.
///
/// # Panics
///
/// When the story fails, when the page logged an error that the story did not take off the log, or
/// when it asked for anything outside its own origin.
#[track_caller]
pub(crate) fn story_on(phone: Phone, base: &str, tell: impl AsyncFnOnce(&mut Page) -> Outcome) {
    let place = Location::caller();
    let _turn = TURN.lock().unwrap_or_else(PoisonError::into_inner);
    let folder = Folder::new();
    let runtime = tokio::runtime::Builder::new_current_thread()
        .enable_all()
        .build();
    let outcome = runtime.map_err(Into::into).and_then(|runtime| {
        runtime
            .block_on(async {
                let site = Site::start(folder.0.join("site"), base)?;
                let browser = Browser::start(&folder.0, phone).await?;
                Ok::<_, Box<dyn Error>>(Page::new(browser, site))
            })
            .and_then(|mut page| {
                let told = catch_unwind(AssertUnwindSafe(|| {
                    runtime.block_on(async {
                        tell(&mut page).await?;
                        page.is_without_trouble().await
                    })
                }));
                if !matches!(told, Ok(Ok(()))) {
                    // The story has failed already; a picture that can't be taken changes nothing.
                    let name = format!("failed-{}-{}", stem(place.file()), place.line());
                    let _ = runtime.block_on(page.describe(&name));
                }
                let end = runtime.block_on(page.close());
                match told {
                    Ok(told) => told.and(end),
                    Err(panic) => resume_unwind(panic),
                }
            })
    });
    let trouble = outcome
        .err()
        .map_or_else(String::new, |error| error.to_string());
    assert!(trouble.is_empty(), "the story at {place} failed: {trouble}");
}

fn stem(file: &str) -> String {
    Path::new(file)
        .file_stem()
        .unwrap_or_default()
        .to_string_lossy()
        .into_owned()
}

/// A folder of one story: its site, the profile of its browser, its downloads.
struct Folder(PathBuf);

impl Folder {
    fn new() -> Self {
        static STORIES: AtomicU32 = AtomicU32::new(0);
        let story = STORIES.fetch_add(1, Ordering::Relaxed);
        Self(root().join(format!("target/e2e/{}-{story}", std::process::id())))
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // A browser that is just ending may still hold a file; `cargo clean` takes the rest.
        let _ = fs::remove_dir_all(&self.0);
    }
}
