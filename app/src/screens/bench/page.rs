//! A page of the room Bench, with the way back to its list.

use crate::reactive::*;

use crate::components::{Glyph, Icon, RoomHeader};
use crate::i18n::strings::Strings;
use crate::shell::{Shell, use_shell};
use crate::state::route::{BenchPage, Route};

/// A page with its name.
#[component]
pub(super) fn Page(
    /// Its name.
    title: fn(&Strings) -> &'static str,
    /// What is true now, in one line.
    #[prop(optional, into)]
    line: Signal<String>,
    /// What it holds.
    children: View,
) -> impl IntoView {
    let Shell { words, .. } = use_shell();
    let all = words.text(|strings| strings.bench.list.all);
    view! {
        <div class="screen">
            <RoomHeader title=words.text(title) line>
                <a
                    class="room-header__way"
                    href=Route::Bench(BenchPage::List).hash()
                    aria-label=all
                    data-test="back"
                >
                    <Glyph icon=Icon::Back />
                </a>
            </RoomHeader>
            <div class="screen__body">{children}</div>
        </div>
    }
}
