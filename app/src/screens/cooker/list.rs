//! The household's cookers, the one in use marked, and the way to another.

use crate::reactive::*;

use super::add::AddCooker;
use crate::components::{EntryRow, EntryView, EntryWords, Icon, Panel};
use crate::present::cooker::list::line;
use crate::shell::{Shell, use_shell};
use crate::state::ids::CookerId;
use crate::state::route::Route;

/// The list.
#[component]
pub(super) fn Cookers() -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let ids = store.read(|document| {
        let ids = document.cookers.iter().map(|owned| owned.id);
        ids.collect::<Vec<_>>()
    });
    let line = |id: CookerId| {
        view! {
            <li>
                <Line id />
            </li>
        }
    };
    view! {
        <Panel heading=words.text(|strings| strings.cooker.list.heading) test="cookers">
            <ul class="cooker-list">
                {move || ids.get().into_iter().map(line).collect_view()}
            </ul>
            <AddCooker />
        </Panel>
    }
}

#[component]
fn Line(id: CookerId) -> impl IntoView {
    let Shell {
        words,
        store,
        router,
        ..
    } = use_shell();
    let language = words.language();
    let formats = words.formats();
    // Read again whenever something of the document changes that the line shows.
    let owned = store.read(move |document| {
        let in_use = document.in_use == Some(id);
        document.cooker(id).map(|owned| (owned.clone(), in_use))
    });
    let entry = Signal::derive(move || {
        owned.track();
        let strings = language.get().strings();
        let view =
            formats.with(|formats| store.now_is(|document| line(strings, formats, document, id)));
        view.unwrap_or(EntryView {
            when: String::new(),
            title: String::new(),
            detail: String::new(),
            icon: Icon::Cooker,
        })
    });
    let in_use = store.in_use();
    move || {
        // The page of the one in use is the rest of this screen.
        if in_use.get() == Some(id) {
            view! {
                <div class="entry-row" aria-current="true" data-test="cooker-in-use">
                    <EntryWords entry />
                </div>
            }
        } else {
            view! {
                <EntryRow
                    entry
                    on_press=move |()| router.go(Route::Cooker(Some(id)))
                    test="cooker-line"
                />
            }
        }
    }
}
