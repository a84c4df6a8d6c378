//! What reaches out to the browser by itself: saving, the address, the language, the looks, the
//! clock, the worker.

use std::time::Duration;

use crate::reactive::*;
use leptos::task::spawn_local;

use crate::i18n::strings::Strings;
use crate::platform::page::{self, PageTheme};
use crate::platform::storage::{Shelf, WindowShelf, ask_to_persist, watch_other_windows};
use crate::platform::worker;
use crate::present::first_start::Question;
use crate::shell::keeper::SaveStatus;
use crate::shell::rest::Rest;
use crate::shell::{CONTENT_ID, Shell, names};
use crate::state::document::Whose;
use crate::state::route::{BenchPage, MorePage, Route};
use crate::state::settings::Theme;

/// A change is written so long after it was made, and those that follow meanwhile with it.
const SAVE_AFTER: Duration = Duration::from_millis(250);

/// How often the device's clock is looked at. The shown minute is late by this at most.
const TICK: Duration = Duration::from_secs(20);

/// Where the window remembers whose household it shows, so that a reload shows it again.
const SHOWN_KEY: &str = "duskpot.shown";

/// The mark of the example.
const EXAMPLE: &str = "example";

/// Whether a new version of the app waits.
#[derive(Clone, Copy)]
pub struct Updates {
    waits: RwSignal<bool>,
}

impl Updates {
    /// Starts the worker that keeps the app on the device, and watches for new versions.
    pub fn watch(rest: Rest) -> Self {
        let waits = RwSignal::new(false);
        worker::watch_updates(move || waits.set(true));
        // What the person waits for goes first.
        rest.then(|| {
            spawn_local(async {
                // Without a worker the app works all the same for as long as there is a connection;
                // the page about the app says whether it is kept.
                let _ = worker::start().await;
            });
        });
        Self { waits }
    }

    /// Whether a new version waits.
    pub fn waits(&self) -> Signal<bool> {
        self.waits.into()
    }

    /// Takes the new version, once everything is saved.
    pub fn apply(&self, shell: Shell) {
        shell.store.save_now();
        let waits = self.waits;
        spawn_local(async move {
            // A version that can't be reached goes on waiting; there is nothing to update to now.
            if worker::apply_update().await.is_err() {
                waits.set(false);
            }
        });
    }
}

/// Whose household this window showed last.
pub(super) fn last_shown() -> Whose {
    match WindowShelf.get(SHOWN_KEY) {
        Ok(Some(mark)) if mark == EXAMPLE => Whose::Example,
        _ => Whose::Own,
    }
}

/// Sets everything up; for as long as the page lives.
pub(super) fn wire(shell: Shell) {
    wire_saving(shell);
    wire_address(shell);
    wire_looks(shell);
    wire_clock(shell);
    wire_example(shell);
    let (beliefs, whose) = (shell.estimates.beliefs(), shell.store.whose());
    shell.rest.then(move || beliefs.wire(whose));
    shell.rest.then(move || names::wire(shell));
}

fn wire_saving(shell: Shell) {
    let store = shell.store;
    let changes = store.changes();
    let is_planned = StoredValue::new(false);
    effect(move || {
        if changes.get() == 0 || is_planned.get_value() {
            return;
        }
        is_planned.set_value(true);
        set_timeout(
            move || {
                is_planned.set_value(false);
                store.save_now();
            },
            SAVE_AFTER,
        );
    });
    page::watch_leaving(move || store.save_on_leaving());
    page::watch_return(move || store.look_again());
    watch_other_windows(move |key| {
        if key.is_none_or(|key| store.is_kept_under(&key)) {
            store.look_again();
        }
    });
    let status = store.status();
    let has_household = store.has_household();
    let is_asked = StoredValue::new(false);
    effect(move || {
        let is_kept = status.get() == SaveStatus::Saved && has_household.get();
        if is_kept && !is_asked.get_value() {
            is_asked.set_value(true);
            ask_to_persist();
        }
    });
}

fn wire_address(shell: Shell) {
    let router = shell.router;
    let route = router.route();
    page::watch_hash(move |hash| router.follow(Route::from_hash(&hash)));
    let mut before: Option<Route> = None;
    effect(move || {
        let route = route.get();
        if page::hash() != route.hash() {
            page::replace_hash(&route.hash());
        }
        if let Some(before) = before.replace(route).filter(|before| *before != route) {
            begin(before, route);
        }
    });
    let words = shell.words;
    effect(move || {
        page::set_title(&title(route.get(), words.strings()));
    });
}

/// Begins a screen at its top; one that was come back to, at the way to where one was.
fn begin(before: Route, route: Route) {
    page::focus_on(CONTENT_ID);
    if matches!(
        (before, route),
        (Route::More(_), Route::More(MorePage::Menu))
            | (Route::Cooker(Some(_)), Route::Cooker(None))
            | (Route::Bench(_), Route::Bench(BenchPage::List))
    ) {
        let way = format!("main [href=\"{}\"]", before.hash());
        set_timeout(
            move || {
                page::focus_first(&way);
            },
            Duration::ZERO,
        );
    }
}

/// Puts the focus back into the page when what had it is gone.
pub(super) fn keep_focus() {
    set_timeout(
        || {
            if page::focus_is_lost() {
                page::focus_quietly(&format!("#{CONTENT_ID}"));
            }
        },
        Duration::ZERO,
    );
}

/// What the browser's bar says of a place.
pub(super) fn title(route: Route, strings: &Strings) -> String {
    let more = &strings.more;
    let place = match route {
        Route::Tonight => strings.tonight.title,
        Route::Diary(_) => strings.diary.title,
        Route::Cooker(_) => strings.cooker.title,
        Route::Bench(_) => strings.bench.title,
        Route::More(MorePage::Menu) => more.title,
        Route::More(MorePage::Settings) => more.settings,
        Route::More(MorePage::Copies) => more.copies,
        Route::More(MorePage::Example) => more.example,
        Route::More(MorePage::Safety) => more.safety,
        Route::More(MorePage::About) => more.about,
        Route::Start(number) => Question::numbered(number)
            .map_or(strings.first_start.title, |question| {
                question.words(strings)
            }),
    };
    format!("{place} · {}", strings.common.app_name)
}

fn wire_looks(shell: Shell) {
    let language = shell.words.language();
    effect(move || {
        let language = language.get();
        page::set_language(language.tag(), language.direction().attribute());
    });
    let settings = shell.store.settings();
    let theme = Memo::new(move |_| settings.get().theme);
    effect(move || {
        page::set_theme(match theme.get() {
            Theme::Automatic => PageTheme::Automatic,
            Theme::Light => PageTheme::Light,
            Theme::Dark => PageTheme::Dark,
        });
    });
}

fn wire_clock(shell: Shell) {
    let clock = shell.clock;
    set_interval(move || clock.tick(), TICK);
    // What is done is done at a minute that is shown.
    let changes = shell.store.changes();
    effect(move || {
        if changes.get() != 0 {
            clock.tick();
            keep_focus();
        }
    });
    page::watch_return(move || clock.tick());
}

fn wire_example(shell: Shell) {
    let whose = shell.store.whose();
    effect(move || {
        // A window that can't remember shows the person's own household after a reload, which is
        // the right one of the two.
        let _ = match whose.get() {
            Whose::Own => WindowShelf.remove(SHOWN_KEY),
            Whose::Example => WindowShelf.set(SHOWN_KEY, EXAMPLE),
        };
    });
}
