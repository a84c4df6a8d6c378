//! The line that tells how long to wait.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// What a clock line says.
#[derive(Clone, Debug, PartialEq)]
pub struct ClockView {
    /// What happens, and at what time: 'boils about 18:40'.
    pub headline: String,
    /// How long until then: 'in 25 min'.
    pub left: String,
    /// Part of the wait that is over, 0 to 1.
    pub done: f64,
    /// What is waited for, drawn.
    pub icon: Icon,
}

/// A wait with its ember line burning down.
#[component]
pub fn ClockLine(
    /// What it says now.
    #[prop(into)]
    view: Signal<ClockView>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let burnt = move || format!("--done: {:.3}", view.get().done.clamp(0.0, 1.0));
    view! {
        <div class="clock-line" role="timer" data-test=test>
            {move || view! { <Glyph icon=view.get().icon /> }}
            <p class="clock-line__headline" aria-live="polite">{move || view.get().headline}</p>
            <p class="clock-line__left">{move || view.get().left}</p>
            <span class="clock-line__ember" style=burnt aria-hidden="true"></span>
        </div>
    }
}
