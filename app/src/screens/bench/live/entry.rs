//! A reading, written down with one thumb.

use crate::reactive::*;

use super::Scene;
use crate::components::{
    ActionDock, Button, Choice, ChoiceOption, Fold, Icon, NumberField, NumberFieldText, Panel,
    TimeField, Tone,
};
use crate::present::bench::typing::{Channel, ReadingDraft};
use crate::present::typed::{Mistake, stepped};
use crate::screens::bench::frame::wrong_with;
use crate::shell::focus_error;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, BenchAction};
use crate::state::bench::Reading;
use crate::state::refused::Field;

/// What is read, the number, and the button that keeps it.
#[component]
pub(super) fn Entry(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let channel = RwSignal::new(Channel::Store);
    // While a pot is in, it is what is read most.
    let pot_is_in = Memo::new(move |_| scene.with(|run| run.pot_in().is_some()) == Some(true));
    effect(move || {
        let usual = if pot_is_in.get() {
            Channel::Pot
        } else {
            Channel::Store
        };
        channel.set(usual);
    });
    let options = Memo::new(move |_| {
        let strings = words.strings();
        Channel::ALL
            .map(|channel| ChoiceOption {
                key: channel.place().to_string(),
                label: channel.name(strings).to_owned(),
                detail: String::new(),
                icon: None,
            })
            .to_vec()
    });
    let on_pick = move |key: String| {
        let place = key.parse::<usize>().ok();
        if let Some(picked) = place.and_then(|place| Channel::ALL.get(place)) {
            channel.set(*picked);
        }
    };
    let shown = Memo::new(move |_| channel.get());
    view! {
        <Panel heading=words.text(|strings| strings.runs.live.entry) test="run-entry">
            <div class="bench-number">
                {move || number(scene, scene.draft, shown.get(), "run-number")}
            </div>
            <div class="bench-channels">
                <Choice
                    label=words.text(|strings| strings.runs.live.channel)
                    options
                    picked=Signal::derive(move || channel.get().place().to_string())
                    on_pick=Callback::new(on_pick)
                    test="run-channel"
                />
            </div>
            <Fold summary=words.text(|strings| strings.runs.live.at) test="run-at-fold">
                <At
                    scene
                    draft=scene.draft
                    hint=words.text(|strings| strings.runs.live.at_hint)
                    test="run-at"
                />
            </Fold>
        </Panel>
        <ActionDock>
            <Button
                label=words.text(|strings| strings.runs.live.note)
                on_press=Callback::new(move |()| note(scene))
                tone=Tone::Primary
                icon=Icon::Pencil
                test="run-note"
            />
        </ActionDock>
    }
}

/// When it was read.
#[component]
pub(super) fn At(
    scene: Scene,
    draft: RwSignal<ReadingDraft>,
    /// What an empty field means.
    #[prop(optional, into)]
    hint: Signal<String>,
    test: &'static str,
) -> impl IntoView {
    let words = scene.shell.words;
    view! {
        <TimeField
            label=words.text(|strings| strings.runs.live.at)
            value=Signal::derive(move || draft.with(|draft| draft.at.clone()))
            on_input=Callback::new(move |typed| {
                draft.update(|draft| draft.at = typed);
                scene.wrong.set(None);
            })
            hint
            error=wrong_with(scene.shell, scene.wrong, Field::At)
            test
        />
    }
}

/// The number of one channel.
pub(super) fn number(
    scene: Scene,
    draft: RwSignal<ReadingDraft>,
    channel: Channel,
    test: &'static str,
) -> View {
    let shell = scene.shell;
    let words = shell.words;
    let strings = untrack(|| words.strings());
    let live = &strings.runs.live;
    let place = channel.place();
    let value = Signal::derive(move || {
        draft.with(|draft| draft.shows.get(place).cloned().unwrap_or_default())
    });
    let edit = move |typed: String| {
        draft.update(|draft| {
            if let Some(shows) = draft.shows.get_mut(place) {
                *shows = typed;
            }
        });
        scene.wrong.set(None);
    };
    let on_step = move |n_steps: i32| {
        let formats = words.formats().get_untracked();
        let steps = scene
            .run
            .with_untracked(|run| run.as_ref().map(|run| channel.steps(&formats, run)));
        if let Some(steps) = steps {
            edit(stepped(&formats, &value.get_untracked(), n_steps, steps));
        }
    };
    let unit = words
        .formats()
        .with_untracked(|formats| channel.unit(formats));
    view! {
        <NumberField
            text=NumberFieldText {
                label: format!("{}: {}", channel.name(strings), live.shows.to_lowercase()),
                unit,
                less: format!("{}: {}", channel.name(strings), live.lower),
                more: format!("{}: {}", channel.name(strings), live.higher),
                hint: String::new(),
            }
            value
            on_input=Callback::new(edit)
            on_step=Callback::new(on_step)
            error=wrong_with(shell, scene.wrong, channel.field())
            test
        />
    }
}

/// Keeps what was typed, with the time that it is now, or says what is wrong.
fn note(scene: Scene) {
    let shell = scene.shell;
    let now = shell.clock.now_untracked();
    let formats = shell.words.formats().get_untracked();
    let Some(started) = scene
        .run
        .with_untracked(|run| run.as_ref().map(|run| run.started))
    else {
        return;
    };
    let read = scene
        .draft
        .with_untracked(|draft| draft.read(&formats, now, started));
    if keep(scene, read) {
        scene.draft.set(ReadingDraft::default());
    }
}

/// Keeps a reading, or says what is wrong; whether it is kept.
pub(super) fn keep(scene: Scene, read: Result<Reading, Mistake>) -> bool {
    let shell = scene.shell;
    let noted = read.and_then(|reading| {
        let action = Action::Bench(BenchAction::AddReading {
            run: scene.id,
            reading,
        });
        let done = shell.dispatch.run(action).map_err(Mistake::from);
        done.map(|_| reading.at)
    });
    match noted {
        Ok(at) => {
            let undo = Action::Bench(BenchAction::EraseReading { run: scene.id, at });
            shell.toasts.show(ToastAbout::WrittenDown, Some(undo));
            true
        }
        Err(mistake) => {
            // The note of the reading before would look like one of this.
            shell.toasts.clear();
            scene.wrong.set(Some(mistake));
            focus_error();
            false
        }
    }
}
