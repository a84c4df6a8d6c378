//! How a run ends, now or at a time that is told, and what comes after.

use crate::reactive::*;

use super::Scene;
use crate::components::{
    ActionDock, Button, Fold, Icon, LinkButton, StatusLine, StatusTone, TimeField, Tone,
};
use crate::i18n::format::Sure;
use crate::present::bench::live as present;
use crate::present::bench::when::end_typed;
use crate::screens::bench::frame::{say, wrong_with};
use crate::shell::focus_error;
use crate::state::action::BenchAction;
use crate::state::refused::Field;
use crate::state::route::{BenchPage, Route};

/// Finishing it, going on with it, and what comes after.
#[component]
pub(super) fn Ends(scene: Scene, goes_on: Memo<bool>) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let id = scene.id;
    let erase = move |()| {
        if scene.act(BenchAction::Erase(id)) {
            shell.router.go(Route::Bench(BenchPage::List));
        }
    };
    let ended = RwSignal::new(String::new());
    let end = move || {
        let now = shell.clock.now_untracked();
        ended.with(|ended| scene.with(|run| end_typed(ended, run, now)))
    };
    let label = Signal::derive(move || {
        let is_now = ended.with(|ended| ended.trim().is_empty());
        let at = if is_now { None } else { end() };
        say(shell, |voice| {
            let live = &voice.strings.runs.live;
            match at {
                Some(Ok(at)) => (live.finish_at)(&voice.time(at, Sure::Known)),
                _ => live.finish.to_owned(),
            }
        })
    });
    let earlier = move || {
        goes_on.get().then(|| {
            view! {
                <Fold
                    summary=words.text(|strings| strings.runs.live.finish_earlier)
                    test="run-finish-fold"
                >
                    <TimeField
                        label=words.text(|strings| strings.runs.live.finished)
                        value=ended
                        on_input=Callback::new(move |typed| {
                            ended.set(typed);
                            scene.wrong.set(None);
                        })
                        hint=words.text(|strings| strings.runs.live.at_hint)
                        error=wrong_with(shell, scene.wrong, Field::OutAt)
                        test="run-finish-at"
                    />
                </Fold>
            }
        })
    };
    let ends = move || {
        if goes_on.get() {
            let finish = move |()| match end() {
                Some(Ok(at)) => {
                    scene.act(BenchAction::Finish { run: id, at });
                }
                Some(Err(mistake)) => {
                    scene.wrong.set(Some(mistake));
                    focus_error();
                }
                None => {}
            };
            view! {
                <Button
                    label=label
                    on_press=Callback::new(finish)
                    icon=Icon::Tick
                    test="run-finish"
                />
            }
        } else {
            view! {
                <Button
                    label=words.text(|strings| strings.runs.live.go_on)
                    on_press=Callback::new(move |()| {
                        scene.act(BenchAction::GoOn(id));
                    })
                    icon=Icon::Undo
                    test="run-go-on"
                />
            }
        }
    };
    let dock = move || {
        (!goes_on.get()).then(|| {
            view! {
                <ActionDock>
                    <LinkButton
                        href=Route::Bench(BenchPage::Fit(id)).hash()
                        label=words.text(|strings| strings.runs.live.to_fit)
                        tone=Tone::Primary
                        icon=Icon::Look
                        test="run-to-fit"
                    />
                </ActionDock>
            }
        })
    };
    let few = Memo::new(move |_| {
        let few = scene.with(|run| say(shell, |voice| present::too_few(voice, run)));
        few.flatten()
    });
    view! {
        {move || {
            few.get()
                .map(|text| view! { <StatusLine tone=StatusTone::Notice text test="run-few" /> })
        }}
        {earlier}
        <div class="row">
            {ends}
            <Button
                label=words.text(|strings| strings.runs.live.erase)
                on_press=Callback::new(erase)
                tone=Tone::Danger
                icon=Icon::Bin
                test="run-erase"
            />
        </div>
        {dock}
    }
}
