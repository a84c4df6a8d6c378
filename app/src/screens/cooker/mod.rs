//! The room Cooker: what is cooked on, what follows from how it is built, and its parts.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod add;
mod facts;
mod field;
mod form;
mod jacket;
mod later;
mod learned;
mod limits;
mod list;
mod manage;
mod page;
mod parts;
mod place;
mod plots;
mod rebuilt;
mod ways;

use crate::reactive::*;

use crate::components::{EmptyNote, Glyph, Icon, LinkButton, RoomHeader};
use crate::shell::{Shell, use_shell};
use crate::state::ids::CookerId;
use crate::state::route::Route;

use list::Cookers;
use page::CookerPage;
use place::WhereWeCook;

/// The screen: all cookers and the one in use, or the one that is named.
#[component]
pub(super) fn CookerRoom(id: Option<CookerId>) -> impl IntoView {
    match id {
        None => view! { <All /> },
        Some(id) => view! { <One id /> },
    }
}

/// The list of cookers, and under it the page of the one in use.
#[component]
fn All() -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let n_cookers = store.read(|document| document.cookers.len());
    let in_use = store.in_use();
    let line = Signal::derive(move || (words.strings().cooker.list.count)(n_cookers.get()));
    view! {
        <div class="screen">
            <RoomHeader title=words.text(|strings| strings.cooker.title) line />
            <div class="screen__body">
                <Cookers />
                {move || {
                    in_use
                        .get()
                        .map(|id| {
                            view! {
                                <CookerPage id>
                                    <WhereWeCook />
                                </CookerPage>
                            }
                        })
                }}
            </div>
        </div>
    }
}

/// The page of one cooker.
#[component]
fn One(id: CookerId) -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let name = store.read(move |document| document.cooker(id).map(|owned| owned.name.clone()));
    let is_there = Memo::new(move |_| name.with(Option::is_some));
    let title = Signal::derive(move || {
        name.get()
            .unwrap_or_else(|| words.strings().cooker.title.to_owned())
    });
    let in_use = store.in_use();
    let line = Signal::derive(move || {
        let list = &words.strings().cooker.list;
        match in_use.get() {
            _ if !is_there.get() => "",
            Some(used) if used == id => list.in_use,
            _ => list.not_in_use,
        }
        .to_owned()
    });
    let all = words.text(|strings| strings.cooker.list.all);
    view! {
        <div class="screen">
            <RoomHeader title line>
                <a
                    class="room-header__way"
                    href=Route::Cooker(None).hash()
                    aria-label=all
                    data-test="back"
                >
                    <Glyph icon=Icon::Back />
                </a>
            </RoomHeader>
            <div class="screen__body">
                <Show
                    when=move || is_there.get()
                    fallback=move || {
                        view! {
                            <EmptyNote
                                icon=Icon::Cooker
                                text=words.text(|strings| strings.cooker.list.gone)
                            >
                                <LinkButton
                                    href=Route::Cooker(None).hash()
                                    label=words.text(|strings| strings.cooker.list.all)
                                    icon=Icon::Back
                                    test="all-cookers"
                                />
                            </EmptyNote>
                        }
                    }
                >
                    <CookerPage id />
                </Show>
            </div>
        </div>
    }
}
