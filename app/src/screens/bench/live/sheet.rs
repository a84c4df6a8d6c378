//! A reading that is changed or erased.

use crate::reactive::*;

use super::Scene;
use super::entry::{At, number, told_kept};
use crate::components::{Button, Icon, Sheet, Tone};
use crate::present::bench::typing::{Channel, ReadingDraft};
use crate::present::typed::Mistake;
use crate::shell::focus_error;
use crate::state::action::{Action, BenchAction};
use crate::state::bench::Reading;
use model::local_time::LocalTime;

/// The sheet of the reading that was tapped.
#[component]
pub(super) fn ChangeSheet(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let close = move || {
        scene.changed.set(None);
        scene.wrong.set(None);
    };
    view! {
        <Sheet
            title=words.text(|strings| strings.runs.live.change)
            close=words.text(|strings| strings.common.buttons.close)
            open=Signal::derive(move || scene.changed.get().is_some())
            on_close=Callback::new(move |()| close())
            test="run-change"
        >
            {move || scene.changed.get().and_then(|at| former(scene, at)).map(|reading| {
                view! { <Form scene reading /> }
            })}
        </Sheet>
    }
}

fn former(scene: Scene, at: LocalTime) -> Option<Reading> {
    scene.run.with_untracked(|run| {
        let typed = run.as_ref()?.typed();
        typed.iter().find(|reading| reading.at == at).copied()
    })
}

#[component]
fn Form(scene: Scene, reading: Reading) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let draft = words
        .formats()
        .with_untracked(|formats| ReadingDraft::of(&reading, formats));
    let draft = RwSignal::new(draft);
    let keep = move |()| {
        let now = shell.clock.now_untracked();
        let formats = words.formats().get_untracked();
        let before = scene.run.get_untracked();
        let started = before.as_ref().map_or(now, |run| run.started);
        let read = draft.with_untracked(|draft| draft.changed(&formats, now, (started, &reading)));
        let kept = read.and_then(|new| {
            let done = shell
                .dispatch
                .run(Action::Bench(BenchAction::ChangeReading {
                    run: scene.id,
                    at: reading.at,
                    reading: new,
                }));
            done.map_err(Mistake::from).map(|_| new)
        });
        match kept {
            Ok(new) => {
                scene.changed.set(None);
                told_kept(scene, before.as_ref(), &new, Some(reading.at));
            }
            Err(mistake) => {
                scene.wrong.set(Some(mistake));
                focus_error();
            }
        }
    };
    let erase = move |()| {
        scene.changed.set(None);
        let (run, at) = (scene.id, reading.at);
        scene.act(BenchAction::EraseReading { run, at });
    };
    let tests = ["change-store", "change-pot", "change-air", "change-power"];
    let numbers = Channel::ALL
        .into_iter()
        .zip(tests)
        .map(|(channel, test)| number(scene, draft, channel, test))
        .collect_view();
    view! {
        <div class="stack">
            {numbers}
            <At scene draft test="change-at" />
            <div class="row">
                <Button
                    label=words.text(|strings| strings.common.buttons.save)
                    on_press=Callback::new(keep)
                    tone=Tone::Primary
                    icon=Icon::Tick
                    test="change-save"
                />
                <Button
                    label=words.text(|strings| strings.common.buttons.erase)
                    on_press=Callback::new(erase)
                    tone=Tone::Danger
                    icon=Icon::Bin
                    test="change-erase"
                />
            </div>
        </div>
    }
}
