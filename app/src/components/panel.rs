//! A block of a screen.

use crate::reactive::*;

use super::unique::unique;

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
    let name = unique("panel");
    view! {
        <section class="panel" aria-labelledby=name data-test=test>
            <h2 class="panel__heading" id=name.clone()>
                {heading}
            </h2>
            {children}
        </section>
    }
}
