//! The bar at the foot of the screen that leads from room to room.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// A way into a room.
#[derive(Clone, Debug, PartialEq)]
pub struct RoomLink {
    /// Where it leads: '#/diary'.
    pub href: String,
    /// Name of the room, one short word.
    pub label: String,
    /// The room, drawn.
    pub icon: Icon,
    /// True for the room one is in.
    pub current: bool,
}

/// At most five rooms; the one we are in stands on an ember line.
#[component]
pub fn RoomBar(
    /// What a screen reader calls the bar.
    #[prop(into)]
    label: Signal<String>,
    /// The rooms, always the same ones in the same order.
    #[prop(into)]
    rooms: Signal<Vec<RoomLink>>,
) -> impl IntoView {
    let way = |room: RoomLink| {
        let RoomLink {
            href,
            label,
            icon,
            current,
        } = room;
        view! {
            <a class="room-bar__way" href=href aria-current=current.then_some("page")>
                <Glyph icon />
                <span class="room-bar__label">{label}</span>
            </a>
        }
    };
    view! {
        <nav class="room-bar" aria-label=label>
            {move || rooms.get().into_iter().map(way).collect_view()}
        </nav>
    }
}
