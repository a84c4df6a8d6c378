//! One screen a room. A screen asks the shell for what it needs and sends actions.

mod tonight;

use leptos::prelude::*;

use crate::components::RoomHeader;
use crate::i18n::strings::Strings;
use crate::shell::use_shell;
use crate::state::route::{MorePage, Route};

/// The screen of a place.
#[component]
pub fn Screen(
    /// The place.
    #[prop(into)]
    route: Signal<Route>,
) -> impl IntoView {
    move || {
        let title: fn(&Strings) -> &'static str = match route.get() {
            Route::Tonight => return view! { <tonight::Tonight /> }.into_any(),
            Route::Diary(_) => |strings| strings.diary.title,
            Route::Cooker(_) => |strings| strings.cooker.title,
            Route::Start => |strings| strings.first_start.title,
            Route::More(MorePage::Menu) => |strings| strings.more.title,
            Route::More(MorePage::Settings) => |strings| strings.more.settings,
            Route::More(MorePage::Copies) => |strings| strings.more.copies,
            Route::More(MorePage::Example) => |strings| strings.more.example,
            Route::More(MorePage::Safety) => |strings| strings.safety.title,
            Route::More(MorePage::About) => |strings| strings.more.about,
        };
        view! { <Titled title /> }.into_any()
    }
}

/// A screen that has its name only.
#[component]
fn Titled(title: fn(&Strings) -> &'static str) -> impl IntoView {
    view! {
        <div class="screen">
            <RoomHeader title=use_shell().words.text(title) />
        </div>
    }
}
