//! A button that asks for a file.

use crate::reactive::*;
use leptos::ev;

use super::icon::{Glyph, Icon};

/// The browser's own file field in the shape of a button.
#[component]
pub fn FileButton(
    /// What picking a file does.
    #[prop(into)]
    label: Signal<String>,
    /// The kinds of files that are offered first, such as `application/json`.
    accept: &'static str,
    /// Called with the field's change event once a file is picked.
    #[prop(into)]
    on_pick: Callback<ev::Event>,
    /// Drawn before the label.
    #[prop(optional, into)]
    icon: Option<Icon>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <label class="button file-button">
            <input
                class="file-button__input"
                type="file"
                accept=accept
                data-test=test
                on:change=move |event| on_pick.run(event)
            />
            {icon.map(|icon| view! { <Glyph icon /> })}
            <span class="button__label">{label}</span>
        </label>
    }
}
