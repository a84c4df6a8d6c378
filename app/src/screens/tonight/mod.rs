//! Will it boil tonight, when, and how long to leave it in.

#![expect(
    unreachable_pub,
    reason = "the component macro wraps each part in a function that is not exported"
)]

mod after;
mod amounts;
mod answers;
mod details;
mod fields;
mod further;
mod planner;
mod quantity;
mod reading;
mod running;
mod scene;
mod store;
mod what;

use crate::reactive::*;
use model::sun::Daylight;

use crate::components::RoomHeader;
use crate::present::tonight::now::now_line;
use crate::screens::on_which::OnWhich;
use crate::shell::use_shell;

use planner::Planner;
use running::Running;
use scene::say;

/// The screen: a plan, or the meal that is in the cooker.
#[component]
pub(super) fn Tonight() -> impl IntoView {
    let shell = use_shell();
    let now = shell.clock.now();
    let place = shell
        .store
        .read(|document| document.household.as_ref().map(|household| household.place));
    let today = Memo::new(move |_| now.get().day());
    let daylight = Memo::new(move |_| {
        let today = today.get();
        let place = place.get().map(|place| shell.clock.place_on(place, today));
        let daylight = place.map(|place| Daylight::of(&place, today));
        daylight.and_then(Result::ok)
    });
    let line = Memo::new(move |_| {
        daylight
            .get()
            .map(|daylight| say(shell, |voice| now_line(voice, daylight)))
            .unwrap_or_default()
    });
    let running = shell
        .store
        .read(|document| document.running_meal().map(|meal| meal.id));
    view! {
        <div class="screen tonight">
            <RoomHeader title=shell.words.text(|strings| strings.tonight.title) line>
                <OnWhich />
            </RoomHeader>
            {move || match running.get() {
                Some(id) => view! { <Running id /> },
                None => view! { <Planner /> },
            }}
        </div>
    }
}
