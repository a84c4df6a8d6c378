//! The big answer.

use crate::reactive::*;

use super::fact_list::{Fact, FactList};
use super::icon::{Glyph, Icon};

/// How likely it is, from the best to the worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum VerdictTone {
    /// It will: a pot boiling over, on a slab that glows at its foot.
    Sure,
    /// It should: a pot in steam, on a whole slab.
    Likely,
    /// It may not: a pot under a question, on a slab that is cracked.
    Doubtful,
    /// It will not: a pot under its lid, on a cold slab that is chipped.
    No,
}

impl VerdictTone {
    fn name(self) -> &'static str {
        match self {
            Self::Sure => "sure",
            Self::Likely => "likely",
            Self::Doubtful => "doubtful",
            Self::No => "no",
        }
    }

    fn icon(self) -> Icon {
        match self {
            Self::Sure => Icon::PotBoils,
            Self::Likely => Icon::PotSteams,
            Self::Doubtful => Icon::PotSimmers,
            Self::No => Icon::PotCold,
        }
    }
}

/// What the verdict says.
#[derive(Clone, Debug, PartialEq)]
pub struct VerdictView {
    /// Picks slab and drawing.
    pub tone: VerdictTone,
    /// The answer in a word or three.
    pub headline: String,
    /// How sure: '9 in 10'; or nothing.
    pub figure: String,
    /// What it rests on, one sentence.
    pub sentence: String,
    /// When it boils, when it is done, with what is not known.
    pub facts: Vec<Fact>,
}

/// The answer in words, a figure and a drawing.
#[component]
pub fn Verdict(
    /// What it says now.
    #[prop(into)]
    view: Signal<VerdictView>,
    /// Whether it is a first answer: a screen reader waits for the whole one, and says it once.
    #[prop(into)]
    is_first: Signal<bool>,
    /// The hook for tests.
    #[prop(optional)]
    test: Option<&'static str>,
    /// What there is to do about it, under the answer.
    #[prop(optional)]
    children: Option<View>,
) -> impl IntoView {
    let facts = Signal::derive(move || view.get().facts);
    view! {
        <div class="verdict" data-tone=move || view.get().tone.name() data-test=test>
            <div class="verdict__answer" role="status" aria-live="polite" aria-atomic="true" aria-busy=move || is_first.get().then_some("true")>
                {move || view! { <Glyph icon=view.get().tone.icon() /> }}
                <p class="verdict__headline">{move || view.get().headline}</p>
                <p class="verdict__figure">{move || view.get().figure}</p>
                <p class="verdict__sentence">{move || view.get().sentence}</p>
            </div>
            {children}
            <FactList facts />
        </div>
    }
}
