//! A way to another page, as a line of a list.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// A line that leads to a page: its drawing, its name, and what is found there.
#[component]
pub fn PageLink(
    /// Where it leads.
    #[prop(into)]
    href: String,
    /// The page's name.
    #[prop(into)]
    title: Signal<String>,
    /// What is found there, in one line.
    #[prop(into)]
    detail: Signal<String>,
    /// What it is about, drawn.
    icon: Icon,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <a class="page-link" href=href data-test=test>
            <Glyph icon />
            <span class="page-link__words">
                <span class="page-link__title">{title}</span>
                <span class="page-link__detail">{detail}</span>
            </span>
            <Glyph icon=Icon::Onward />
        </a>
    }
}
