//! A clock that runs faster than the kitchen's, and what stops it.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// What the bar shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct RunView {
    /// The time that is told.
    pub clock: String,
    /// What goes on then, in one sentence.
    pub text: String,
    /// The same drawn.
    pub icon: Option<Icon>,
    /// The share that is over, 0 to 1.
    pub share: f64,
    /// True while it can be taken forward step by step.
    pub has_step: bool,
    /// Word on the button that holds it or lets it run.
    pub hold_or_run: String,
    /// Word on the button that takes it one step forward.
    pub step: String,
    /// Word on the button that ends it.
    pub stop: String,
}

/// Something a person can do with a running clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RunStep {
    /// Hold it where it runs, let it run where it is held.
    HoldOrRun,
    /// Take it one step forward.
    Step,
    /// End it.
    Stop,
}

/// Stays at the top of the screen while the clock is told. The buttons come first, so that words
/// that change do not move them under the thumb. A screen reader is told of the buttons
/// only, not of every tick.
#[component]
pub fn RunBar(
    /// What is told, for a screen reader.
    #[prop(into)]
    label: Signal<String>,
    /// What it shows.
    #[prop(into)]
    view: Signal<RunView>,
    /// Called with what the person wants.
    #[prop(into)]
    on_step: Callback<RunStep>,
) -> impl IntoView {
    let button = move |step: RunStep, test: &'static str, word: fn(RunView) -> String| {
        let is_hidden = move || step == RunStep::Step && !view.with(|view| view.has_step);
        view! {
            <button
                type="button"
                class="run-bar__step"
                data-test=test
                hidden=is_hidden
                on:click=move |_| on_step.run(step)
            >
                {move || word(view.get())}
            </button>
        }
    };
    view! {
        <section class="run-bar" aria-label=label data-test="day">
            <div class="run-bar__steps">
                {button(RunStep::HoldOrRun, "day-hold-or-run", |view| view.hold_or_run)}
                {button(RunStep::Stop, "day-stop", |view| view.stop)}
                {button(RunStep::Step, "day-step", |view| view.step)}
            </div>
            <p class="run-bar__words">
                {move || view.get().icon.map(|icon| view! { <Glyph icon /> })}
                " "
                <strong class="run-bar__clock">{move || view.get().clock}</strong>
                " "
                <span>{move || view.get().text}</span>
            </p>
            <div
                class="run-bar__share"
                aria-hidden="true"
                style=move || format!("inline-size: {:.1}%", 100.0 * view.get().share)
            ></div>
        </section>
    }
}
