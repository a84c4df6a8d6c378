//! The test runs, the latest first.

use crate::reactive::*;

use crate::components::{
    ActionDock, EmptyNote, EntryRow, EntryView, Icon, LinkButton, Panel, RoomHeader, Tone,
};
use crate::present::bench::list::line;
use crate::shell::{Shell, use_shell};
use crate::state::ids::RunId;
use crate::state::route::{BenchPage, Route};

/// The screen.
#[component]
pub(super) fn Runs() -> impl IntoView {
    let Shell { words, store, .. } = use_shell();
    let ids = store.read(|document| {
        let ids = document.bench.runs.iter().rev().map(|run| run.id);
        ids.collect::<Vec<_>>()
    });
    let count = Signal::derive(move || (words.strings().bench.list.count)(ids.get().len()));
    let one = |id: RunId| {
        view! {
            <li>
                <Line id />
            </li>
        }
    };
    view! {
        <div class="screen">
            <RoomHeader title=words.text(|strings| strings.bench.title) line=count />
            <div class="screen__body">
                <Show
                    when=move || !ids.get().is_empty()
                    fallback=move || {
                        let text = words.text(|strings| strings.bench.list.none);
                        view! { <EmptyNote icon=Icon::Bench text /> }
                    }
                >
                    <Panel
                        heading=words.text(|strings| strings.bench.list.heading)
                        test="runs"
                    >
                        <ul class="cooker-list">
                            {move || ids.get().into_iter().map(one).collect_view()}
                        </ul>
                    </Panel>
                    <LinkButton
                        href=Route::Bench(BenchPage::Compare).hash()
                        label=words.text(|strings| strings.runs.report.title)
                        icon=Icon::Compare
                        test="to-compare"
                    />
                </Show>
                <LinkButton
                    href=Route::Bench(BenchPage::Import).hash()
                    label=words.text(|strings| strings.bench.import.title)
                    icon=Icon::Fetch
                    test="to-import"
                />
                <ActionDock>
                    <LinkButton
                        href=Route::Bench(BenchPage::New).hash()
                        label=words.text(|strings| strings.runs.guide.title)
                        tone=Tone::Primary
                        icon=Icon::Plus
                        test="to-new"
                    />
                </ActionDock>
            </div>
        </div>
    }
}

#[component]
fn Line(id: RunId) -> impl IntoView {
    let Shell {
        words,
        store,
        router,
        clock,
        ..
    } = use_shell();
    let language = words.language();
    let formats = words.formats();
    let now = clock.now();
    let run = store.read(move |document| {
        let run = document.bench.run(id)?;
        let cooker = document.cooker(run.cooker)?;
        Some((run.clone(), cooker.name.clone()))
    });
    let entry = Signal::derive(move || {
        let strings = language.get().strings();
        let today = now.get().day();
        run.get().map_or_else(EntryView::default, |(run, cooker)| {
            formats.with(|formats| line(strings, formats, &run, (&cooker, today)))
        })
    });
    view! {
        <EntryRow
            entry
            on_press=move |()| router.go(Route::Bench(BenchPage::Run(id)))
            test="run-line"
        />
    }
}
