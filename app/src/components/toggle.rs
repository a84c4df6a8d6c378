//! Yes or no.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// A switch: a knob that slides, and a tick that shows when it is on.
#[component]
pub fn Toggle(
    /// What is on or off.
    #[prop(into)]
    label: Signal<String>,
    /// What it means, or nothing.
    #[prop(optional, into)]
    detail: Signal<String>,
    /// True while it is on.
    #[prop(into)]
    on: Signal<bool>,
    /// Called with what it is switched to.
    #[prop(into)]
    on_change: Callback<bool>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <label class="toggle">
            <input
                class="toggle__input"
                type="checkbox"
                role="switch"
                data-test=test
                prop:checked=on
                on:change=move |event| on_change.run(event_target_checked(&event))
            />
            <span class="toggle__words">
                <span class="toggle__label">{label}</span>
                <span class="toggle__detail">{detail}</span>
            </span>
            <span class="toggle__track" aria-hidden="true">
                <span class="toggle__knob">
                    <Glyph icon=Icon::Tick />
                </span>
            </span>
        </label>
    }
}
