//! A reading, written down with one thumb.

use crate::reactive::*;

use super::Scene;
use crate::components::{
    ActionDock, Button, Choice, ChoiceOption, Fold, Icon, NumberField, NumberFieldText, Panel,
    TimeField, Tone,
};
use crate::i18n::format::Sure;
use crate::i18n::strings::runs::live::Live;
use crate::present::bench::live::{read, too_few};
use crate::present::bench::typing::{Channel, ReadingDraft};
use crate::present::typed::{Mistake, stepped};
use crate::screens::bench::frame::{say, wrong_with};
use crate::shell::focus_error;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, BenchAction};
use crate::state::bench::{Reading, TestRun};
use crate::state::refused::Field;
use model::local_time::LocalTime;

/// What is read, the number, and the button that keeps it.
#[component]
pub(super) fn Entry(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let hint = at_hint(scene, |live| live.at_hint);
    propose(scene);
    view! {
        <Panel heading=words.text(|strings| strings.runs.live.entry) test="run-entry">
            {what(scene, None)}
            <Fold summary=words.text(|strings| strings.runs.live.at) test="run-at-fold">
                <At scene draft=scene.draft hint test="run-at" />
            </Fold>
        </Panel>
        <ActionDock>
            <Button
                label=label(scene)
                on_press=Callback::new(move |()| note(scene))
                tone=Tone::Primary
                icon=Icon::Pencil
                test="run-note"
            />
        </ActionDock>
    }
}

/// The same in a run that is over, for what is written on paper: each reading with its time.
#[component]
pub(super) fn EntryLater(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let hint = at_hint(scene, |live| live.at_within);
    propose(scene);
    // At the number, so that the thumb stays where it is from one line of the paper to the next.
    let button = view! {
        <Button
            label=label(scene)
            on_press=Callback::new(move |()| note(scene))
            icon=Icon::Pencil
            test="run-note"
        />
    };
    let few = untrack(|| scene.with(|run| say(scene.shell, |voice| too_few(voice, run))));
    view! {
        <Panel heading=words.text(|strings| strings.runs.live.entry) test="run-entry">
            <Fold
                summary=words.text(|strings| strings.runs.live.from_paper)
                open=few.flatten().is_some()
                test="run-paper"
            >
                <At scene draft=scene.draft hint test="run-at" />
                {what(scene, Some(button))}
            </Fold>
        </Panel>
    }
}

/// The time in the field follows what was written down before.
fn propose(scene: Scene) {
    let proposed = scene.proposed();
    effect(move || {
        let next = proposed.get();
        // Noted, the field is empty again.
        let is_proposed = scene.draft.with(|draft| draft.proposed == next);
        let is_empty = scene.draft.with(|draft| draft.at.is_empty());
        if !is_proposed || is_empty && next.is_some() {
            scene.draft.update(|draft| draft.propose(next));
        }
    });
}

fn at_hint(scene: Scene, without: fn(&Live) -> &'static str) -> Signal<String> {
    let words = scene.shell.words;
    Signal::derive(move || {
        let live = &words.strings().runs.live;
        let is_proposed = scene.draft.with(|draft| draft.proposed.is_some());
        if is_proposed {
            live.at_proposed
        } else {
            without(live)
        }
        .to_owned()
    })
}

/// What the button does: writes down now, or for the time in the field.
fn label(scene: Scene) -> Signal<String> {
    Signal::derive(move || {
        let at = told_at(scene);
        say(scene.shell, |voice| {
            let live = &voice.strings.runs.live;
            let at = at.map(|at| voice.time(at, Sure::Known));
            at.map_or_else(|| live.note.to_owned(), |at| (live.note_at)(&at))
        })
    })
}

/// The time in the field, followed; none where it is empty or no time.
pub(super) fn told_at(scene: Scene) -> Option<LocalTime> {
    let now = scene.shell.clock.now_untracked();
    scene.draft.with(|draft| {
        let is_told = !draft.at.trim().is_empty();
        let at = scene.with(|run| draft.when(run, now).ok()).flatten();
        at.filter(|_| is_told)
    })
}

/// The number, what is under it, and what is read.
fn what(scene: Scene, under: Option<View>) -> View {
    let words = scene.shell.words;
    let channel = RwSignal::new(Channel::Store);
    // While a pot is in, it is what is read most.
    let pot_is_in = Memo::new(move |_| scene.with(|run| run.pot_open().is_some()) == Some(true));
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
    effect(move || {
        let shown = shown.get();
        scene.draft.update(|draft| draft.keep_only(shown));
    });
    view! {
        <div class="bench-number">
            {move || number(scene, scene.draft, shown.get(), "run-number")}
        </div>
        {under}
        <div class="bench-channels">
            <Choice
                label=words.text(|strings| strings.runs.live.channel)
                options
                picked=Signal::derive(move || channel.get().place().to_string())
                on_pick=Callback::new(on_pick)
                test="run-channel"
            />
        </div>
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

/// Keeps what was typed, with its time or the one that it is now, or says what is wrong.
fn note(scene: Scene) {
    let shell = scene.shell;
    let now = shell.clock.now_untracked();
    let formats = shell.words.formats().get_untracked();
    let Some(run) = scene.run.get_untracked() else {
        return;
    };
    let (reading, is_told) = scene.draft.with_untracked(|draft| {
        let is_told = !draft.at.trim().is_empty();
        (draft.read(&formats, &run, now), is_told)
    });
    if keep(scene, reading) {
        scene
            .reminder
            .told_later()
            .set(is_told && run.ended.is_none());
        scene.draft.set(ReadingDraft::default());
    }
}

/// Keeps a reading, or says what is wrong; whether it is kept.
pub(super) fn keep(scene: Scene, reading: Result<Reading, Mistake>) -> bool {
    let shell = scene.shell;
    let before = scene.run.get_untracked();
    let noted = reading.and_then(|reading| {
        let action = Action::Bench(BenchAction::AddReading {
            run: scene.id,
            reading,
        });
        let done = shell.dispatch.run(action).map_err(Mistake::from);
        done.map(|_| reading)
    });
    match noted {
        Ok(reading) => {
            told_kept(scene, before.as_ref(), &reading, None);
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

/// Says that a reading is kept, and in place of what, where it took the place of another than the
/// one of the time `changed`; with the way back to how the readings were before.
pub(super) fn told_kept(
    scene: Scene,
    before: Option<&TestRun>,
    reading: &Reading,
    changed: Option<LocalTime>,
) {
    let shell = scene.shell;
    let Some(before) = before else { return };
    let lost = before
        .overwritten(reading)
        .filter(|lost| changed != Some(lost.at));
    let about = lost.map(|lost| {
        say(shell, |voice| ToastAbout::Overwritten {
            was: read(voice, &lost),
            time: voice.time(lost.at, Sure::Known),
        })
    });
    let undo = Action::Bench(BenchAction::ChangeReadings {
        run: scene.id,
        readings: before.typed().to_vec(),
    });
    let about = about.unwrap_or(ToastAbout::WrittenDown);
    shell.toasts.show(about, Some(undo));
}
