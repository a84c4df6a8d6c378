//! What a place says while it holds nothing.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// A drawing and a sentence, with a way on where there is one.
#[component]
pub fn EmptyNote(
    /// What will be here, drawn.
    icon: Icon,
    /// What will be here and how it comes about.
    #[prop(into)]
    text: Signal<String>,
    /// A button, where the way on is one.
    #[prop(optional)]
    children: Option<View>,
) -> impl IntoView {
    view! {
        <div class="empty-note">
            <Glyph icon />
            <p>{text}</p>
            {children}
        </div>
    }
}
