//! Fields for a time, a date and text, all built alike.

use crate::reactive::*;

use super::unique::unique;

/// What all fields of this file have in common.
struct LineField {
    kind: Kind,
    label: Signal<String>,
    value: Signal<String>,
    on_input: Callback<String>,
    hint: Signal<String>,
    error: Signal<Option<String>>,
    test: Option<&'static str>,
}

enum Kind {
    /// A native input of this type.
    Line(&'static str),
    /// Several lines of text.
    Area,
}

impl LineField {
    fn draw(self) -> View {
        let Self {
            kind,
            label,
            value,
            on_input,
            hint,
            error,
            test,
        } = self;
        let name = unique("field");
        let notes = format!("{name}-notes");
        let invalid = move || error.get().map(|_| "true");
        let field = match kind {
            Kind::Line(kind) => view! {
                <input
                    class="field__input"
                    id=name.clone()
                    type=kind
                    data-test=test
                    aria-describedby=notes.clone()
                    aria-invalid=invalid
                    prop:value=value
                    on:input=move |event| on_input.run(event_target_value(&event))
                />
            },
            Kind::Area => view! {
                <textarea
                    class="field__input"
                    id=name.clone()
                    rows="6"
                    spellcheck="false"
                    data-test=test
                    aria-describedby=notes.clone()
                    aria-invalid=invalid
                    prop:value=value
                    on:input=move |event| on_input.run(event_target_value(&event))
                ></textarea>
            },
        };
        view! {
            <div class="field">
                <label class="field__label" for=name>
                    {label}
                </label>
                {field}
                <FieldNotes name=notes hint error />
            </div>
        }
    }
}

/// The hint and the error under a field; the field names them as its description.
#[component]
pub(crate) fn FieldNotes(
    /// Name that the field points to.
    name: String,
    /// What helps to fill it in, or nothing.
    hint: Signal<String>,
    /// What is wrong with it now.
    error: Signal<Option<String>>,
) -> impl IntoView {
    view! {
        <div class="field__notes" id=name>
            {move || {
                let hint = hint.get();
                (!hint.is_empty()).then(|| view! { <p class="field__hint">{hint}</p> })
            }}
            {move || error.get().map(|error| view! { <p class="field__error">{error}</p> })}
        </div>
    }
}

/// A time of day, by the phone's own clock dial.
#[component]
pub fn TimeField(
    /// What the time is of.
    #[prop(into)]
    label: Signal<String>,
    /// 'HH:MM', or nothing.
    #[prop(into)]
    value: Signal<String>,
    /// Called with 'HH:MM', or with nothing when it was cleared.
    #[prop(into)]
    on_input: Callback<String>,
    /// What helps to fill it in.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What is wrong with it.
    #[prop(optional, into)]
    error: Signal<Option<String>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let kind = Kind::Line("time");
    LineField {
        kind,
        label,
        value,
        on_input,
        hint,
        error,
        test,
    }
    .draw()
}

/// A day, by the phone's own calendar.
#[component]
pub fn DateField(
    /// What the day is of.
    #[prop(into)]
    label: Signal<String>,
    /// 'YYYY-MM-DD', or nothing.
    #[prop(into)]
    value: Signal<String>,
    /// Called with 'YYYY-MM-DD', or with nothing when it was cleared.
    #[prop(into)]
    on_input: Callback<String>,
    /// What helps to fill it in.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What is wrong with it.
    #[prop(optional, into)]
    error: Signal<Option<String>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let kind = Kind::Line("date");
    LineField {
        kind,
        label,
        value,
        on_input,
        hint,
        error,
        test,
    }
    .draw()
}

/// A line of text.
#[component]
pub fn TextField(
    /// What the text is.
    #[prop(into)]
    label: Signal<String>,
    /// The text.
    #[prop(into)]
    value: Signal<String>,
    /// Called with the text at each change.
    #[prop(into)]
    on_input: Callback<String>,
    /// What helps to fill it in.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What is wrong with it.
    #[prop(optional, into)]
    error: Signal<Option<String>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let kind = Kind::Line("text");
    LineField {
        kind,
        label,
        value,
        on_input,
        hint,
        error,
        test,
    }
    .draw()
}

/// Several lines of text, such as pasted readings.
#[component]
pub fn TextArea(
    /// What the text is.
    #[prop(into)]
    label: Signal<String>,
    /// The text.
    #[prop(into)]
    value: Signal<String>,
    /// Called with the text at each change.
    #[prop(into)]
    on_input: Callback<String>,
    /// What helps to fill it in.
    #[prop(optional, into)]
    hint: Signal<String>,
    /// What is wrong with it.
    #[prop(optional, into)]
    error: Signal<Option<String>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let kind = Kind::Area;
    LineField {
        kind,
        label,
        value,
        on_input,
        hint,
        error,
        test,
    }
    .draw()
}
