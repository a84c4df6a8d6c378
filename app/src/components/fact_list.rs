//! Figures with their names.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// A figure with its name.
#[derive(Clone, Debug, PartialEq)]
pub struct Fact {
    /// What it is a figure of.
    pub label: String,
    /// The figure with its unit.
    pub value: String,
    /// How sure it is, or where it is from; or nothing.
    pub detail: String,
    /// A drawing, where one helps.
    pub icon: Option<Icon>,
}

/// Names at the start, figures at the end of each line.
#[component]
pub fn FactList(
    /// What is listed.
    #[prop(into)]
    facts: Signal<Vec<Fact>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let line = |fact: Fact| {
        let Fact {
            label,
            value,
            detail,
            icon,
        } = fact;
        let detail =
            (!detail.is_empty()).then(|| view! { <dd class="fact-list__detail">{detail}</dd> });
        view! {
            <div class="fact-list__line">
                <dt>{icon.map(|icon| view! { <Glyph icon /> })} <span>{label}</span></dt>
                <dd class="fact-list__value">{value}</dd>
                {detail}
            </div>
        }
    };
    view! {
        <dl class="fact-list" data-test=test>
            {move || facts.get().into_iter().map(line).collect_view()}
        </dl>
    }
}
