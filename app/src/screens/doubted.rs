//! The question beside an entry that does not fit the rest.

#![expect(
    unreachable_pub,
    reason = "the component macro writes a public properties struct"
)]

use crate::reactive::*;

use crate::components::{Button, Icon};
use crate::present::diary::doubts::asked;
use crate::present::tonight::Voice;
use crate::shell::Shell;
use crate::state::action::Action;
use crate::state::document::Entry;

/// What is asked beside an entry; none where it fits, or was said to be right.
pub(super) fn question(shell: Shell, entry: &Entry) -> Option<String> {
    let strings = shell.words.strings();
    let now = shell.clock.now().get();
    shell.estimates.belief().with(|belief| {
        let doubts = belief.as_ref()?.doubts();
        shell.words.formats().with(|formats| {
            let voice = Voice {
                strings,
                formats,
                now,
            };
            asked(&voice, entry, doubts)
        })
    })
}

/// The question, with the way to keep the entry as it is and another to change it.
#[component]
pub(super) fn Doubted(
    shell: Shell,
    entry: Entry,
    /// What the entry says, where the question stands away from it.
    #[prop(optional, into)]
    about: Option<Signal<String>>,
    /// The way to change it.
    children: ChildrenFn,
) -> impl IntoView {
    let words = shell.words;
    let id = entry.id;
    let asked = Memo::new(move |_| question(shell, &entry));
    move || {
        asked.get().map(|asked| {
            // There is nothing to refuse: the entry is there as long as its question is.
            let keep = move |()| {
                let _ = shell.dispatch.run(Action::KeepEntry(id));
            };
            view! {
                <div class="diary-doubt" data-test="doubt">
                    {about.map(|about| view! { <p><strong>{about}</strong></p> })}
                    <p>{asked}</p>
                    <div class="row">
                        <Button
                            label=words.text(|strings| strings.diary.keep_it)
                            on_press=Callback::new(keep)
                            icon=Icon::Tick
                            test="doubt-keep"
                        />
                        {children()}
                    </div>
                </div>
            }
        })
    }
}
