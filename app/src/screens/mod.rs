//! One screen a room. A screen asks the shell for what it needs and sends actions.

mod more;

use leptos::prelude::*;

use crate::components::RoomHeader;
use crate::i18n::strings::Strings;
use crate::shell::use_shell;
use crate::state::route::Route;

/// The screen of a place.
#[component]
pub fn Screen(
    /// The place.
    #[prop(into)]
    route: Signal<Route>,
) -> impl IntoView {
    move || {
        let title: fn(&Strings) -> &'static str = match route.get() {
            Route::Tonight => |strings| strings.tonight.title,
            Route::Diary(_) => |strings| strings.diary.title,
            Route::Cooker(_) => |strings| strings.cooker.title,
            Route::Start => |strings| strings.first_start.title,
            Route::More(page) => return view! { <more::MoreScreen page /> }.into_any(),
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
