//! One screen a room. A screen asks the shell for what it needs and sends actions.

mod bench;
mod cooker;
mod diary;
mod first_start;
mod later;
mod more;
mod tonight;

use crate::reactive::*;

use crate::state::route::Route;

/// The screen of a place.
#[component]
pub fn Screen(
    /// The place.
    #[prop(into)]
    route: Signal<Route>,
) -> impl IntoView {
    // The diary goes from day to day by itself.
    let room = Memo::new(move |_| match route.get() {
        Route::Diary(_) => Route::Diary(None),
        // So do the questions of the first start.
        Route::Start(_) => Route::Start(0),
        other => other,
    });
    move || match room.get() {
        Route::Tonight => view! { <tonight::Tonight /> },
        Route::Diary(_) => view! { <diary::Diary /> },
        Route::Cooker(id) => view! { <cooker::CookerRoom id /> },
        Route::Bench(page) => view! { <bench::BenchRoom page /> },
        Route::More(page) => view! { <more::MoreScreen page /> },
        Route::Start(_) => view! { <first_start::FirstStart /> },
    }
}
