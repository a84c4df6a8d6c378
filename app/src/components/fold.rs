//! What is there for those who ask.

use crate::reactive::*;

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
    /// Called with true when it is opened, with false when it is closed.
    #[prop(optional, into)]
    on_toggle: Option<Callback<bool>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
    /// What it shows when open.
    children: View,
) -> impl IntoView {
    let on_toggle = move |event: web_sys::Event| {
        if let Some(on_toggle) = on_toggle {
            let details = event_target::<web_sys::Element>(&event);
            on_toggle.run(details.has_attribute("open"));
        }
    };
    view! {
        <details class="fold" open=open data-test=test on:toggle=on_toggle>
            <summary class="fold__summary">
                <span>{summary}</span>
                <Glyph icon=Icon::Unfold />
            </summary>
            <div class="fold__body">{children}</div>
        </details>
    }
}
