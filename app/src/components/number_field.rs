//! A number with its unit and two large step buttons.

use crate::reactive::*;
use wasm_bindgen::JsCast;

use super::icon::{Glyph, Icon};
use super::line_field::FieldNotes;
use super::unique::unique;

/// The words of a number field, which do not change while it is shown.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct NumberFieldText {
    /// What the number is of.
    pub label: String,
    /// Its unit, shown after it; or nothing.
    pub unit: String,
    /// What the lower step button does: 'less water'.
    pub less: String,
    /// What the upper step button does: 'more water'.
    pub more: String,
    /// What helps to fill it in, or nothing.
    pub hint: String,
}

/// A number to type, or to step with the thumb.
///
/// The text stays as it was typed: the caller reads it, and says in `error` what it can't take.
#[component]
pub fn NumberField(
    /// Its words.
    text: NumberFieldText,
    /// The number as it was typed or stepped to.
    #[prop(into)]
    value: Signal<String>,
    /// Called with the text at each change.
    #[prop(into)]
    on_input: Callback<String>,
    /// Called with -1 or 1 at each step.
    #[prop(into)]
    on_step: Callback<i32>,
    /// What is wrong with it.
    #[prop(optional, into)]
    error: Signal<Option<String>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let NumberFieldText {
        label,
        unit,
        less,
        more,
        hint,
    } = text;
    let name = unique("number");
    let notes = format!("{name}-notes");
    let unit_name = format!("{name}-unit");
    let described = format!("{unit_name} {notes}");
    let on_key = move |event: web_sys::Event| {
        let Some(key) = event.dyn_ref::<web_sys::KeyboardEvent>() else {
            return;
        };
        let step = match key.key().as_str() {
            "ArrowUp" => 1,
            "ArrowDown" => -1,
            _ => return,
        };
        event.prevent_default();
        on_step.run(step);
    };
    view! {
        <div class="field">
            <label class="field__label" for=name.clone()>
                {label}
            </label>
            <div class="number-field">
                <button
                    type="button"
                    class="number-field__step"
                    aria-label=less
                    on:click=move |_| on_step.run(-1)
                >
                    <Glyph icon=Icon::Minus />
                </button>
                <span class="number-field__middle">
                    <input
                        class="number-field__input"
                        id=name
                        type="text"
                        inputmode="decimal"
                        autocomplete="off"
                        data-test=test
                        aria-describedby=described
                        aria-invalid=move || error.get().map(|_| "true")
                        prop:value=value
                        on:input=move |event| on_input.run(event_target_value(&event))
                        on:keydown=on_key
                    />
                    <span class="number-field__unit" id=unit_name>
                        {unit}
                    </span>
                </span>
                <button
                    type="button"
                    class="number-field__step"
                    aria-label=more
                    on:click=move |_| on_step.run(1)
                >
                    <Glyph icon=Icon::Plus />
                </button>
            </div>
            <FieldNotes name=notes hint=Signal::from(hint) error />
        </div>
    }
}
