//! Which cooker a room answers for.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

use crate::reactive::*;

use crate::components::{Glyph, Icon};
use crate::shell::{Shell, use_shell};
use crate::state::route::Route;

/// Under the head of a room: the cooker in use by its name, where there are others, and the way to
/// all of them.
#[component]
pub(super) fn OnWhich() -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let name = store.read(|document| {
        let used = document.cooker_in_use()?;
        (1 < document.cookers.len()).then(|| used.name.clone())
    });
    move || {
        name.get().map(|name| {
            let said = (words.strings().cooker.list.on_which)(&name);
            view! {
                <a
                    class="room-header__cooker"
                    href=Route::Cooker(None).hash()
                    data-test="on-which"
                >
                    <Glyph icon=Icon::Cooker />
                    <span>{said}</span>
                </a>
            }
        })
    }
}
