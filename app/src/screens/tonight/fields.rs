//! Times of day of the plan.

use crate::reactive::*;

use crate::components::TimeField;
use crate::shell::use_shell;
use crate::state::plan::TimeOfDay;

/// A time of day, applied as soon as it is whole.
#[component]
pub(super) fn TimeOfDayField(
    #[prop(into)] label: Signal<String>,
    /// The time that stands.
    #[prop(into)]
    current: Signal<Option<TimeOfDay>>,
    /// Takes another.
    #[prop(into)]
    apply: Callback<TimeOfDay>,
    #[prop(optional, into)] hint: Signal<String>,
    test: &'static str,
) -> impl IntoView {
    let words = use_shell().words;
    let is_empty = RwSignal::new(false);
    let value = Signal::derive(move || current.get().map(TimeOfDay::field).unwrap_or_default());
    let error = Signal::derive(move || {
        is_empty
            .get()
            .then(|| words.strings().refusals.empty.to_owned())
    });
    let on_input = move |text: String| {
        let time = TimeOfDay::from_field(&text);
        is_empty.set(time.is_none());
        if let Some(time) = time {
            apply.run(time);
        }
    };
    view! {
        <TimeField
            label
            value
            on_input=Callback::new(on_input)
            hint
            error
            test
        />
    }
}
