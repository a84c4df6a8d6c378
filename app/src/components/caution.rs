//! The line that keeps a person from harm.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// How badly it can go.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CautionLevel {
    /// Good to know before acting; a plain edge.
    Note,
    /// Can hurt; a double edge.
    Warning,
    /// Can maim or kill, or set the house alight; a striped edge and a frame.
    Danger,
}

impl CautionLevel {
    fn name(self) -> &'static str {
        match self {
            Self::Note => "note",
            Self::Warning => "warning",
            Self::Danger => "danger",
        }
    }
}

/// A safety line with its own drawing: what is dangerous, and what to do.
#[component]
pub fn Caution(
    /// How badly it can go.
    level: CautionLevel,
    /// The kind of harm, drawn.
    icon: Icon,
    /// The level in a word ('Danger'), read before the text.
    #[prop(into)]
    word: Signal<String>,
    /// What is dangerous and what to do, one or two sentences.
    #[prop(into)]
    text: Signal<String>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    view! {
        <p class="caution" role="note" data-level=level.name() data-test=test>
            <Glyph icon />
            <span class="caution__text">
                <strong class="caution__word">{word}</strong>
                " "
                {text}
            </span>
        </p>
    }
}
