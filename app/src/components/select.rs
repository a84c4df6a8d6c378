//! One of many, by the phone's own list.

use crate::reactive::*;

use super::icon::{Glyph, Icon};
use super::unique::unique;
use wasm_bindgen::JsValue;

/// One line of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct SelectOption {
    /// What `on_pick` is called with.
    pub key: String,
    /// Its name.
    pub label: String,
}

/// A native list to pick from.
#[component]
pub fn Select(
    /// The question.
    #[prop(into)]
    label: Signal<String>,
    /// The answers.
    #[prop(into)]
    options: Signal<Vec<SelectOption>>,
    /// Key of the picked one.
    #[prop(into)]
    picked: Signal<String>,
    /// Called with the key of the one picked.
    #[prop(into)]
    on_pick: Callback<String>,
    /// What helps to decide.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let name = unique("select");
    let notes = format!("{name}-notes");
    let line = |option: SelectOption| {
        let SelectOption { key, label } = option;
        view! { <option value=key>{label}</option> }
    };
    // The list alone follows what is picked: as many options as there are would have to be looked
    // through at each tap. Where the options are others, it is put there anew.
    let held = move || {
        options.with(|_| ());
        picked.get()
    };
    let on_change = move |event: web_sys::Event| {
        on_pick.run(event_target_value(&event));
        // What was not taken does not stay picked: nothing else has changed that would show it.
        if let Some(list) = event.target() {
            let stands = JsValue::from_str(&picked.get_untracked());
            let _ = js_sys::Reflect::set(&list, &JsValue::from_str("value"), &stands);
        }
    };
    view! {
        <div class="field">
            <label class="field__label" for=name.clone()>
                {label}
            </label>
            <div class="select">
                <select
                    class="field__input select__list"
                    id=name
                    data-test=test
                    aria-describedby=notes.clone()
                    prop:value=held
                    on:change=on_change
                >
                    {move || options.get().into_iter().map(line).collect_view()}
                </select>
                <Glyph icon=Icon::Unfold />
            </div>
            <p class="field__hint" id=notes>
                {hint}
            </p>
        </div>
    }
}
