//! What is there for those who ask.

use leptos::prelude::*;

use super::icon::{Glyph, Icon};

/// A heading that opens what lies under it.
#[component]
pub fn Fold(
    /// What lies under it.
    #[prop(into)]
    summary: Signal<String>,
    /// True where it starts open.
    #[prop(optional)]
    open: bool,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
    /// What it shows when open.
    children: Children,
) -> impl IntoView {
    view! {
        <details class="fold" open=open data-test=test>
            <summary class="fold__summary">
                <span>{move || summary.get()}</span>
                <Glyph icon=Icon::Unfold />
            </summary>
            <div class="fold__body">{children()}</div>
        </details>
    }
}
