//! What follows from a build, at once.

use crate::reactive::*;

use super::page::Outcome;
use crate::components::{Caution, CautionLevel, FactList, Icon, Panel, StatusLine, StatusTone};
use crate::present::cooker::facts::{facts, warning};
use crate::present::cooker::fault::unworkable;
use crate::shell::use_shell;

/// The figures, and under them what takes longer to work out.
#[component]
pub(super) fn Follows(outcome: Memo<Outcome>, children: View) -> impl IntoView {
    let words = use_shell().words;
    let facts = Signal::derive(move || {
        let (strings, formats) = (words.strings(), words.formats().get());
        outcome.with(|outcome| match outcome {
            Some(Ok(figures)) => facts(strings, &formats, figures),
            _ => Vec::new(),
        })
    });
    let below = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        outcome.with(|outcome| match outcome {
            Some(Ok(figures)) => warning(strings, &formats, figures),
            _ => None,
        })
    });
    let trouble = Memo::new(move |_| {
        outcome.with(|outcome| match outcome {
            Some(Err(error)) => Some(unworkable(words.strings(), *error).to_owned()),
            _ => None,
        })
    });
    view! {
        <Panel heading=words.text(|strings| strings.cooker.follows.heading) test="cooker-follows">
            {move || {
                trouble
                    .get()
                    .map(|text| {
                        view! { <StatusLine tone=StatusTone::Trouble text test="cooker-trouble" /> }
                    })
            }}
            {move || {
                below
                    .get()
                    .map(|text| {
                        view! {
                            <Caution
                                level=CautionLevel::Note
                                icon=Icon::PotCold
                                word=words.text(|strings| strings.safety.note)
                                text
                                test="cooker-below-boil"
                            />
                        }
                    })
            }}
            <FactList facts test="cooker-facts" />
            {children}
        </Panel>
    }
}
