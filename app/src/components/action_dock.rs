//! Where the main action sits: low, within reach of the thumb.

use crate::reactive::*;

/// Keeps its buttons in sight, just above the room bar, while the screen scrolls behind.
#[component]
pub fn ActionDock(
    /// One main button, and at most one quiet one.
    children: View,
) -> impl IntoView {
    view! { <div class="action-dock">{children}</div> }
}
