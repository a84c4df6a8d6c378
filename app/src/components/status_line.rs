//! What the app has to say about itself, with a way out.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// How things stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StatusTone {
    /// All is well; said once, softly.
    Fine,
    /// Something is new or waits.
    Notice,
    /// Something went wrong, such as a save that failed; read out at once.
    Trouble,
}

impl StatusTone {
    fn name(self) -> &'static str {
        match self {
            Self::Fine => "fine",
            Self::Notice => "notice",
            Self::Trouble => "trouble",
        }
    }

    fn icon(self) -> Icon {
        match self {
            Self::Fine => Icon::Tick,
            Self::Notice => Icon::Note,
            Self::Trouble => Icon::Alarm,
        }
    }

    fn role(self) -> &'static str {
        match self {
            Self::Fine | Self::Notice => "status",
            Self::Trouble => "alert",
        }
    }
}

/// A line across the screen that stays until its cause is gone.
#[component]
pub fn StatusLine(
    /// How things stand.
    tone: StatusTone,
    /// What is the matter.
    #[prop(into)]
    text: Signal<String>,
    /// The way out, in a word or two; or nothing where there is none.
    #[prop(optional, into)]
    action: Signal<String>,
    /// Called when the way out is taken.
    #[prop(optional, into)]
    on_action: Option<Callback<()>>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let way_out = on_action.map(|on_action| {
        view! {
            <button type="button" class="status-line__action" on:click=move |_| on_action.run(())>
                {action}
            </button>
        }
    });
    view! {
        <div class="status-line" role=tone.role() data-tone=tone.name() data-test=test>
            <Glyph icon=tone.icon() />
            <p class="status-line__text">{text}</p>
            {way_out}
        </div>
    }
}
