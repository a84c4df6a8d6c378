//! What the pages of the room share: their head with the way back, and how things are said.

use crate::reactive::*;

use crate::components::{Caution, Glyph, Icon, RoomHeader};
use crate::present::cooker::cautions::CautionView;
use crate::present::tonight::Voice;
use crate::present::typed::Mistake;
use crate::shell::{Shell, use_shell};
use crate::state::refused::Field;
use crate::state::route::{BenchPage, Route};

/// Says something in the language that is spoken, followed.
pub(super) fn say<T>(shell: Shell, what: impl FnOnce(&Voice<'_>) -> T) -> T {
    let strings = shell.words.strings();
    let now = shell.clock.now().get();
    shell.words.formats().with(|formats| {
        what(&Voice {
            strings,
            formats,
            now,
        })
    })
}

/// The same, not followed.
pub(super) fn say_now<T>(shell: Shell, what: impl FnOnce(&Voice<'_>) -> T) -> T {
    untrack(|| say(shell, what))
}

/// What is wrong with one field of a form, in words, followed.
pub(super) fn wrong_with(
    shell: Shell,
    wrong: RwSignal<Option<Mistake>>,
    field: Field,
) -> Signal<Option<String>> {
    Signal::derive(move || {
        let mistake = wrong.get().filter(|mistake| mistake.field() == field)?;
        Some(say(shell, |voice| {
            mistake.words(voice.strings, voice.formats, voice.now.day())
        }))
    })
}

/// A page of the room, with the way back to its list.
#[component]
pub(super) fn Frame(
    /// Its name.
    #[prop(into)]
    title: Signal<String>,
    /// What is true now, in one line.
    #[prop(optional, into)]
    line: Signal<String>,
    /// What it holds.
    children: View,
) -> impl IntoView {
    let words = use_shell().words;
    view! {
        <div class="screen bench">
            <RoomHeader title line>
                <a
                    class="room-header__way"
                    href=Route::Bench(BenchPage::List).hash()
                    aria-label=words.text(|strings| strings.bench.list.all)
                    data-test="back"
                >
                    <Glyph icon=Icon::Back />
                </a>
            </RoomHeader>
            <div class="screen__body">{children}</div>
        </div>
    }
}

/// Cautions, one under the other.
pub(super) fn cautions(views: Vec<CautionView>) -> View {
    views
        .into_iter()
        .map(
            |CautionView {
                 level,
                 icon,
                 word,
                 text,
             }| view! { <Caution level icon word text /> },
        )
        .collect_view()
}
