//! Where signals, the saved household and the browser meet.
//!
//! [`App`] builds one store, one clock, one router and one set of words, and hands them to the
//! screens through the context. A screen asks for them with [`use_shell`].

pub mod answers;
pub mod beliefs;
pub mod bench;

pub mod chrome;
pub mod clock;
pub mod comparing;
pub mod copies;
pub mod device;
pub mod estimates;
pub mod example;
pub mod keeper;
pub mod locale;
mod names;
pub mod reminder;
pub mod rest;
pub mod router;
pub mod store;
pub mod toasts;
mod walked;
pub mod whereabouts;
mod wiring;
pub mod words;

#[cfg(test)]
mod tests;

use std::time::Duration;

use crate::reactive::*;

use crate::platform::storage::DeviceShelf;
use crate::platform::{clock as device_clock, locale as device_locale, page};
use crate::screens::Screen;
use crate::shell::chrome::{Announcements, DayBar, Rooms, UndoToast};
use crate::shell::clock::Clock;
use crate::shell::comparing::Comparing;
use crate::shell::estimates::Estimates;
use crate::shell::example::Example;
use crate::shell::keeper::Keeper;
use crate::shell::reminder::Reminder;
use crate::shell::rest::Rest;
use crate::shell::router::Router;
use crate::shell::store::{Dispatch, Store};
use crate::shell::toasts::Toasts;
use crate::shell::wiring::Updates;
use crate::shell::words::Words;
use crate::state::route::Route;

/// Everything a screen works with. Copies stand for the same things.
#[derive(Clone, Copy)]
pub struct Shell {
    /// The household.
    pub store: Store,
    /// The way to change it.
    pub dispatch: Dispatch,
    /// Now.
    pub clock: Clock,
    /// What the model makes of it all.
    pub estimates: Estimates,
    /// Where we are.
    pub router: Router,
    /// Language and formats.
    pub words: Words,
    /// Notes that come and go.
    pub toasts: Toasts,
    /// The example household.
    pub example: Example,
    /// What of the program is on its way yet.
    pub rest: Rest,
}

/// What a screen works with. Call it in the body of a screen, not in a closure.
///
/// # Panics
///
/// When called outside [`App`].
pub fn use_shell() -> Shell {
    expect_context()
}

/// Goes to the top of a screen that shows something new, and has a screen reader begin there.
pub fn begin_screen() {
    page::focus_on(CONTENT_ID);
}

/// Has the focus go to the first field in error, once it is shown to be one.
pub fn focus_error() {
    set_timeout(
        || {
            page::focus_first("[aria-invalid=true]");
        },
        Duration::ZERO,
    );
}

/// Id of the element that holds the screen, for the focus and the skip link.
pub(crate) const CONTENT_ID: &str = "content";

/// The whole app.
#[component]
pub fn App() -> impl IntoView {
    let shell = build();
    provide_context(shell);
    let updates = Updates::watch(shell.rest);
    wiring::wire(shell);
    provide_context(Reminder::wire(shell));
    provide_context(Comparing::new(shell));
    let skip = shell.words.text(|strings| strings.common.skip_to_content);
    // The skip link is a button, since its address would be taken for a place in the app.
    view! {
        <button type="button" class="unseen skip-link" on:click=move |_| page::focus_on(CONTENT_ID)>
            {skip}
        </button>
        <Announcements shell updates />
        <DayBar shell />
        <main id=CONTENT_ID tabindex="-1">
            <UndoToast shell />
            <Screen shell />
        </main>
        <Rooms shell />
    }
}

fn build() -> Shell {
    let clock = Clock::new(device_clock::now).in_zone(device_clock::utc_offset_on_min);
    let toasts = Toasts::default();
    let keeper = Keeper::new(Box::new(DeviceShelf));
    let store = Store::open(keeper, wiring::last_shown(), clock, toasts);
    let router = Router::new(store, Route::from_hash(&page::hash()));
    Shell {
        store,
        dispatch: store.dispatch(),
        clock,
        estimates: Estimates::new(store, clock),
        router,
        words: Words::new(store, device_locale::languages(), locale::locale_format),
        toasts,
        example: Example::new(store, clock, router),
        rest: Rest::fetch(),
    }
}
