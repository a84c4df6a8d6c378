//! What was learned about the cooker in use.

use crate::reactive::*;

use crate::components::{Fact, FactList, Fold, Panel};
use crate::present::cooker::learned::{LearnedView, Reports, learned};
use crate::screens::later::settled;
use crate::shell::{Shell, use_shell};
use crate::state::ids::CookerId;

/// What was learned against what the tables say; of the cooker in use only.
#[component]
pub(super) fn Learned(id: CookerId) -> impl IntoView {
    let Shell {
        words,
        store,
        estimates,
        ..
    } = use_shell();
    let in_use = store.in_use();
    let reports = store.read(move |document| Reports::of(&document.journal(id)));
    let belief = settled(
        move || estimates.beliefs().follow_diary(),
        estimates.belief(),
    );
    let view = Memo::new(move |_| {
        let (strings, formats) = (words.strings(), words.formats().get());
        let all = belief.with(|belief| belief.as_ref().map(|belief| belief.learned()))?;
        Some(learned(strings, &formats, &all, &reports.get()))
    });
    let from = Signal::derive(move || {
        view.with(|view| match view {
            Some(view) => view.from.clone(),
            None => words.strings().cooker.learned.working.to_owned(),
        })
    });
    let facts = move |part: fn(&LearnedView) -> &Vec<Fact>| {
        Signal::derive(move || {
            view.with(|view| {
                view.as_ref()
                    .map(|view| part(view).clone())
                    .unwrap_or_default()
            })
        })
    };
    let has_open = Memo::new(move |_| {
        view.with(|view| view.as_ref().is_some_and(|view| !view.open.is_empty()))
    });
    view! {
        <Show when=move || in_use.get() == Some(id)>
            <Panel heading=words.text(|strings| strings.cooker.learned.heading) test="cooker-learned">
                <p class="aside">{move || from.get()}</p>
                <FactList facts=facts(|view| &view.known) test="cooker-learned-known" />
                <Show when=move || has_open.get()>
                    <Fold
                        summary=words.text(|strings| strings.cooker.learned.open)
                        test="cooker-learned-open"
                    >
                        <FactList facts=facts(|view| &view.open) />
                    </Fold>
                </Show>
            </Panel>
        </Show>
    }
}
