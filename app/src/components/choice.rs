//! One of a few, as slabs to tap.

use crate::reactive::*;

use super::icon::{Glyph, Icon};
use super::unique::unique;

/// One thing that can be picked.
#[derive(Clone, Debug, PartialEq)]
pub struct ChoiceOption {
    /// What `on_pick` is called with.
    pub key: String,
    /// Its name.
    pub label: String,
    /// A line that helps to decide, or nothing.
    pub detail: String,
    /// A drawing, where one helps.
    pub icon: Option<Icon>,
}

/// A radio group drawn as large slabs; the picked one has a tick and an ember edge.
#[component]
pub fn Choice(
    /// The question.
    #[prop(into)]
    label: Signal<String>,
    /// The answers, best known first.
    #[prop(into)]
    options: Signal<Vec<ChoiceOption>>,
    /// Key of the picked one; another text means that none is.
    #[prop(into)]
    picked: Signal<String>,
    /// Called with the key of the one tapped.
    #[prop(into)]
    on_pick: Callback<String>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let name = unique("choice");
    let slab = move |option: ChoiceOption| {
        let ChoiceOption {
            key,
            label,
            detail,
            icon,
        } = option;
        let own = key.clone();
        let value = key.clone();
        let detail =
            (!detail.is_empty()).then(|| view! { <span class="choice__detail">{detail}</span> });
        view! {
            <label class="choice__slab">
                <input
                    type="radio"
                    class="choice__input"
                    name=name.clone()
                    value=value
                    prop:checked=move || picked.get() == own
                    on:change=move |_| on_pick.run(key.clone())
                />
                {icon.map(|icon| view! { <Glyph icon /> })}
                <span class="choice__words">
                    <span class="choice__label">{label}</span>
                    {detail}
                </span>
                <span class="choice__tick"><Glyph icon=Icon::Tick /></span>
            </label>
        }
    };
    view! {
        <fieldset class="choice" data-test=test>
            <legend class="field__label">{label}</legend>
            <div class="choice__slabs">
                {move || options.get().into_iter().map(&slab).collect_view()}
            </div>
        </fieldset>
    }
}
