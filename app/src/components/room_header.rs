//! The evening sky over a screen.

use crate::reactive::*;

/// Title of a screen under a banded dusk, over a ridge of hills.
#[component]
pub fn RoomHeader(
    /// What the screen is.
    #[prop(into)]
    title: Signal<String>,
    /// What is true now, in one line; or nothing.
    #[prop(optional, into)]
    line: Signal<String>,
    /// A small button or link at the end, where the screen has one.
    #[prop(optional)]
    children: Option<View>,
) -> impl IntoView {
    view! {
        <header class="room-header">
            <div class="room-header__words">
                <h1 class="room-header__title">{title}</h1>
                <p class="room-header__line">{line}</p>
            </div>
            {children}
            <svg
                class="room-header__ridge"
                viewBox="0 0 360 28"
                preserveAspectRatio="none"
                aria-hidden="true"
            >
                <path
                    class="room-header__far"
                    d="M0 17 24 11 52 15 88 5 121 12 150 8 187 16 224 7 262 13 299 4 331 11 360 8V28H0Z"
                />
                <path
                    class="room-header__near"
                    d="M0 23 33 19 71 24 109 17 138 20 196 23 238 18 281 24 322 19 360 22V28H0Z"
                />
            </svg>
            <svg class="room-header__house" viewBox="0 0 28 18" aria-hidden="true">
                <path class="room-header__near" d="M5 18V9L2 9.5 14 1 26 9.5 23 9V18Z" />
                <path class="room-header__window" d="M12 8.5H16.2V13.5H12Z" />
            </svg>
        </header>
    }
}
