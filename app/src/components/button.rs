//! Buttons, and links that look like them.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// How much a button asks for attention.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Tone {
    /// The one main action of a screen: a glowing ember slab.
    Primary,
    /// Any other action: an outlined clay slab.
    #[default]
    Quiet,
    /// Takes something away; red clay with a cut edge, always with a word.
    Danger,
}

impl Tone {
    fn name(self) -> &'static str {
        match self {
            Self::Primary => "primary",
            Self::Quiet => "quiet",
            Self::Danger => "danger",
        }
    }
}

/// A button of at least thumb size.
#[component]
pub fn Button(
    /// What pressing it does.
    #[prop(into)]
    label: Signal<String>,
    /// Called at each press.
    #[prop(into)]
    on_press: Callback<()>,
    /// How much attention it asks for.
    #[prop(optional)]
    tone: Tone,
    /// Drawn before the label.
    #[prop(optional, into)]
    icon: Option<Icon>,
    /// True while pressing it can do nothing.
    #[prop(optional, into)]
    disabled: Signal<bool>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <button
            type="button"
            class="button"
            data-tone=tone.name()
            data-test=test
            disabled=disabled
            on:click=move |_| on_press.run(())
        >
            {icon.map(|icon| view! { <Glyph icon /> })}
            <span class="button__label">{label}</span>
        </button>
    }
}

/// A link to another room or page, in the shape of a button.
#[component]
pub fn LinkButton(
    /// Where it leads.
    #[prop(into)]
    href: String,
    /// Where it leads, in words.
    #[prop(into)]
    label: Signal<String>,
    /// How much attention it asks for.
    #[prop(optional)]
    tone: Tone,
    /// Drawn before the label.
    #[prop(optional, into)]
    icon: Option<Icon>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <a class="button" href=href data-tone=tone.name() data-test=test>
            {icon.map(|icon| view! { <Glyph icon /> })}
            <span class="button__label">{label}</span>
        </a>
    }
}
