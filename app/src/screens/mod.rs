//! One screen a room. A screen asks the shell for what it needs and sends actions.

mod cooker;
mod first_start;
mod more;
mod tonight;

use leptos::prelude::*;

use crate::components::RoomHeader;
use crate::i18n::format::Sure;
use crate::i18n::strings::Strings;
use crate::shell::{Shell, use_shell};
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
            Route::Tonight => return view! { <tonight::Tonight /> }.into_any(),
            Route::Diary(_) => |strings| strings.diary.title,
            Route::Cooker(id) => return view! { <cooker::CookerRoom id /> }.into_any(),
            Route::More(page) => return view! { <more::MoreScreen page /> }.into_any(),
            Route::Start => return view! { <first_start::FirstStart /> }.into_any(),
        };
        view! { <Titled title /> }.into_any()
    }
}

/// A screen that has its name and the time only.
#[component]
fn Titled(title: fn(&Strings) -> &'static str) -> impl IntoView {
    let Shell { words, clock, .. } = use_shell();
    let line = Signal::derive(move || {
        let now = clock.now().get();
        let formats = words.formats().get();
        format!(
            "{} · {}",
            formats.day(now.day()),
            formats.clock(now, Sure::Known)
        )
    });
    view! {
        <div class="screen">
            <RoomHeader title=words.text(title) line />
        </div>
    }
}
