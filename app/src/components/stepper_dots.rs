//! How far along a few questions one is.

use crate::reactive::*;

/// A row of coals, lit up to the step one is at.
#[component]
pub fn StepperDots(
    /// How many steps there are.
    steps: usize,
    /// The step one is at, from 0.
    #[prop(into)]
    at: Signal<usize>,
    /// The same in words: 'Question 2 of 5'.
    #[prop(into)]
    label: Signal<String>,
) -> impl IntoView {
    let state = move |step: usize| match step.cmp(&at.get()) {
        std::cmp::Ordering::Less => "past",
        std::cmp::Ordering::Equal => "here",
        std::cmp::Ordering::Greater => "ahead",
    };
    view! {
        <div class="stepper-dots">
            <p class="stepper-dots__label">{label}</p>
            <div class="stepper-dots__row" aria-hidden="true">
                {(0..steps)
                    .map(|step| {
                        view! { <span class="stepper-dots__dot" data-step=move || state(step)></span> }
                    })
                    .collect_view()}
            </div>
        </div>
    }
}
