//! The sun of a day, one tap an hour.

use crate::reactive::*;

use super::icon::{Glyph, Icon};

/// What the sky was in an hour; each has its own drawing and its own weave of lines.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sky {
    /// Nobody has told yet.
    Unset,
    /// No cloud before the sun.
    Clear,
    /// Thin cloud or dust: shadows are soft.
    Haze,
    /// Sun and cloud by turns.
    Broken,
    /// No shadow at all.
    Overcast,
    /// Rain or a storm.
    Rain,
    /// The sun is down; can't be told.
    Night,
}

impl Sky {
    pub(super) fn name(self) -> &'static str {
        match self {
            Self::Unset => "unset",
            Self::Clear => "clear",
            Self::Haze => "haze",
            Self::Broken => "broken",
            Self::Overcast => "overcast",
            Self::Rain => "rain",
            Self::Night => "night",
        }
    }

    pub(super) fn icon(self) -> Icon {
        match self {
            Self::Unset => Icon::Unset,
            Self::Clear => Icon::SunClear,
            Self::Haze => Icon::SunHaze,
            Self::Broken => Icon::SunBroken,
            Self::Overcast => Icon::Overcast,
            Self::Rain => Icon::Rain,
            Self::Night => Icon::Moon,
        }
    }
}

/// An hour of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct SunHour {
    /// Its short name: '7'.
    pub label: String,
    /// Which half of the day it is in, where the clock has halves.
    pub half: String,
    /// What a screen reader says: '7 to 8: clear sky'.
    pub spoken: String,
    /// What the sky was.
    pub sky: Sky,
    /// True for the hour it is now.
    pub now: bool,
}

/// The hours from midnight to midnight, six a row; an hour of night can't be tapped.
#[component]
pub fn SunHours(
    /// What a screen reader calls the grid.
    #[prop(into)]
    label: Signal<String>,
    /// The hours in order.
    #[prop(into)]
    hours: Signal<Vec<SunHour>>,
    /// The skies with their names, in the order that tapping goes through; none where something
    /// beside the grid tells them.
    #[prop(into)]
    skies: Signal<Vec<(Sky, String)>>,
    /// Called with the place of the tapped hour in `hours`.
    #[prop(into)]
    on_tap: Callback<usize>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
) -> impl IntoView {
    let cell = move |(idx, hour): (usize, SunHour)| {
        let SunHour {
            label,
            half,
            spoken,
            sky,
            now,
        } = hour;
        view! {
            <li class="sun-hours__hour">
                <button
                    type="button"
                    class="sun-hours__cell"
                    data-sky=sky.name()
                    aria-label=spoken
                    aria-current=now.then_some("time")
                    disabled=sky == Sky::Night
                    on:click=move |_| on_tap.run(idx)
                >
                    <Glyph icon=sky.icon() />
                    <span class="sun-hours__label">{label}</span>
                    {(!half.is_empty()).then(|| view! { <span class="sun-hours__half">{half}</span> })}
                </button>
            </li>
        }
    };
    let key = |(sky, word): (Sky, String)| {
        view! {
            <li class="sun-hours__sky">
                <span class="sun-hours__swatch" data-sky=sky.name()>
                    <Glyph icon=sky.icon() />
                </span>
                <span>{word}</span>
            </li>
        }
    };
    view! {
        <div class="sun-hours" data-test=test>
            <ol class="sun-hours__grid" aria-label=label>
                {move || hours.get().into_iter().enumerate().map(cell).collect_view()}
            </ol>
            {move || {
                let skies = skies.get();
                (!skies.is_empty())
                    .then(|| {
                        let lines = skies.into_iter().map(key).collect_view();
                        view! { <ul class="sun-hours__key">{lines}</ul> }
                    })
            }}
        </div>
    }
}
