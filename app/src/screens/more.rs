//! The room More: everything that is not for every evening.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each page in a function that is not exported"
)]

mod about;
mod copies;
mod example;
mod menu;
mod safety;
mod settings;

use crate::reactive::*;

use crate::components::{Glyph, Icon, RoomHeader};
use crate::i18n::strings::Strings;
use crate::shell::{Shell, use_shell};
use crate::state::route::{MorePage, Route};

/// The page of the room.
#[component]
pub fn MoreScreen(
    /// Which.
    page: MorePage,
) -> impl IntoView {
    match page {
        MorePage::Menu => view! { <menu::Menu /> },
        MorePage::Settings => view! { <settings::SettingsPage /> },
        MorePage::Copies => view! { <copies::CopiesPage /> },
        MorePage::Example => view! { <example::ExamplePage /> },
        MorePage::Safety => view! { <safety::SafetyPage /> },
        MorePage::About => view! { <about::AboutPage /> },
    }
}

/// A page with its name and the way back to the list of pages.
#[component]
fn Page(
    /// Its name.
    title: fn(&Strings) -> &'static str,
    /// What it holds.
    children: View,
) -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let has_household = store.has_household();
    // Before the first start is done there are no rooms to go back to.
    let way = Signal::derive(move || {
        if has_household.get() {
            Route::More(MorePage::Menu).hash()
        } else {
            Route::Start(0).hash()
        }
    });
    let back = words.text(|strings| strings.common.buttons.back);
    view! {
        <div class="screen">
            <RoomHeader title=words.text(title)>
                <a
                    class="room-header__way"
                    href=way
                    aria-label=back
                    data-test="back"
                >
                    <Glyph icon=Icon::Back />
                </a>
            </RoomHeader>
            <div class="screen__body">{children}</div>
        </div>
    }
}
