//! What waits until all of the program is there.
//!
//! On a first visit the first start is shown before the rooms of a household are downloaded. What
//! needs them goes through here.

use std::time::Duration;

use crate::reactive::*;
use leptos::task::spawn_local;

use crate::platform::rest;
use crate::shell::begin_screen;

type Job = Box<dyn FnOnce() + Send + Sync>;

/// How far the rest of the program is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Progress {
    /// All is there.
    There,
    /// It is on its way.
    Coming,
    /// It could not be downloaded.
    Failed,
}

/// The rest of the program. Copies stand for the same one.
#[derive(Clone, Copy)]
pub struct Rest {
    progress: RwSignal<Progress>,
    is_awaited: RwSignal<bool>,
    jobs: StoredValue<Vec<Job>>,
    asked: StoredValue<Option<Job>>,
}

impl Rest {
    /// Fetches it, once the first screen stands.
    pub fn fetch() -> Self {
        let progress = if rest::is_there() {
            Progress::There
        } else {
            Progress::Coming
        };
        let rest = Self {
            progress: RwSignal::new(progress),
            is_awaited: RwSignal::new(false),
            jobs: StoredValue::new(Vec::new()),
            asked: StoredValue::new(None),
        };
        if progress == Progress::Coming {
            // Twice: the first frame is drawn in between.
            request_animation_frame(move || {
                set_timeout(move || rest.try_again(), Duration::ZERO);
            });
        }
        rest
    }

    /// How far it is.
    pub fn progress(&self) -> Signal<Progress> {
        self.progress.into()
    }

    /// Whether the person waits for it.
    pub fn is_awaited(&self) -> Signal<bool> {
        self.is_awaited.into()
    }

    /// Fetches it, or fetches it once more.
    pub fn try_again(self) {
        self.progress.set(Progress::Coming);
        spawn_local(async move {
            let fetched = rest::fetch().await;
            self.progress.set(if fetched.is_ok() {
                Progress::There
            } else {
                Progress::Failed
            });
            if fetched.is_ok() {
                let asked = self.asked.try_update_value(Option::take).flatten();
                self.is_awaited.set(false);
                let jobs = self.jobs.try_update_value(std::mem::take);
                for job in jobs.into_iter().flatten().chain(asked) {
                    job();
                }
            }
        });
    }

    /// Does something as soon as it is there: at once, most of the time.
    pub fn then(self, job: impl FnOnce() + Send + Sync + 'static) {
        if self.progress.get_untracked() == Progress::There {
            job();
        } else {
            self.jobs.update_value(|jobs| jobs.push(Box::new(job)));
        }
    }

    /// As [`Rest::then`], for what a person asked for on a screen: it is said meanwhile what is
    /// waited for. It is given up when the screen is left.
    pub fn then_as_asked(self, job: impl FnOnce() + Send + Sync + 'static) {
        if self.progress.get_untracked() == Progress::There {
            job();
        } else {
            self.asked.set_value(Some(Box::new(job)));
            self.is_awaited.set(true);
            // What is said stands above the screen.
            begin_screen();
        }
    }

    /// Gives up what was asked for, when the screen that it is part of is left.
    pub fn give_up_when_left(self) {
        on_cleanup(move || {
            self.asked.set_value(None);
            self.is_awaited.set(false);
        });
    }
}
