//! One screen a room. A screen asks the shell for what it needs and sends actions.

mod bench;
mod cooker;
mod diary;
mod doubted;
mod first_start;
mod later;
mod more;
mod on_which;
mod tonight;

use crate::reactive::*;

use crate::components::{StatusLine, StatusTone};
use crate::shell::Shell;
use crate::shell::rest::Progress;
use crate::state::ids::CookerId;
use crate::state::route::{BenchPage, MorePage, Route};

/// The screen of the place where we are, or that it is on its way yet.
#[component]
pub fn Screen(
    /// What the app works with.
    shell: Shell,
) -> impl IntoView {
    let Shell { router, rest, .. } = shell;
    let route = router.route();
    // The diary goes from day to day by itself.
    let room = Memo::new(move |_| match route.get() {
        Route::Diary(_) => Route::Diary(None),
        // So do the questions of the first start.
        Route::Start(_) => Route::Start(0),
        other => other,
    });
    let is_there = Memo::new(move |_| rest.progress().get() == Progress::There);
    let shown = Memo::new(move |_| {
        let is_here = is_there.get() || matches!(room.get(), Route::Start(_));
        is_here.then(|| room.get())
    });
    // What was asked for may have to wait while the first start is still to be seen.
    let is_waiting = move || shown.get().is_none() || rest.is_awaited().get();
    view! {
        <Show when=move || !is_there.get() && is_waiting()>
            <OnTheWay shell />
        </Show>
        {move || match shown.get() {
            None => View::nothing(),
            Some(Route::Tonight) => tonight(),
            Some(Route::Diary(_)) => diary(),
            Some(Route::Cooker(id)) => cooker(id),
            Some(Route::Bench(page)) => bench(page),
            Some(Route::More(page)) => more(page),
            Some(Route::Start(_)) => view! { <first_start::FirstStart /> },
        }}
    }
}

/// That the rooms are on their way, once, on a first visit.
#[component]
fn OnTheWay(shell: Shell) -> impl IntoView {
    let Shell { words, rest, .. } = shell;
    let has_failed = Memo::new(move |_| rest.progress().get() == Progress::Failed);
    let coming = move || {
        view! {
            <StatusLine
                tone=StatusTone::Notice
                text=words.text(|strings| strings.common.rooms_coming)
                test="rooms-coming"
            />
        }
    };
    view! {
        <Show when=move || has_failed.get() fallback=coming>
            <StatusLine
                tone=StatusTone::Trouble
                text=words.text(|strings| strings.common.rooms_not_here)
                action=words.text(|strings| strings.common.buttons.try_again)
                on_action=Callback::new(move |()| rest.try_again())
                test="rooms-not-here"
            />
        </Show>
    }
}

// Each room is a piece of code of its own, so that the program can be cut between them.

#[inline(never)]
fn tonight() -> View {
    view! { <tonight::Tonight /> }
}

#[inline(never)]
fn diary() -> View {
    view! { <diary::Diary /> }
}

#[inline(never)]
fn cooker(id: Option<CookerId>) -> View {
    view! { <cooker::CookerRoom id /> }
}

#[inline(never)]
fn bench(page: BenchPage) -> View {
    view! { <bench::BenchRoom page /> }
}

#[inline(never)]
fn more(page: MorePage) -> View {
    view! { <more::MoreScreen page /> }
}
