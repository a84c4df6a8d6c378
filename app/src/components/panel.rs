//! A block of a screen.

use crate::reactive::*;

/// A slab of clay with a heading.
#[component]
pub fn Panel(
    /// What it is about.
    #[prop(into)]
    heading: Signal<String>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
    /// What it holds.
    children: View,
) -> impl IntoView {
    // A browser that leaves out what is off the screen does not look for its name there.
    view! {
        <section class="panel" aria-label=heading data-test=test>
            <h2 class="panel__heading">{heading}</h2>
            {children}
        </section>
    }
}
