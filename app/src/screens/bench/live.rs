//! A test run that goes on, made for one thumb: its clock, the reading, the pot, and what was read.

mod ends;
mod entry;
mod pot_change;
mod pots;
mod rows;
mod sheet;

use crate::reactive::*;
use model::bench::Foreseen;

use super::frame::{Frame, say};
use crate::chart::LineChart;
use crate::components::{Button, EmptyNote, EntryRow, EntryView, Icon, Panel, Toggle};
use crate::i18n::refusal::refusal;
use crate::platform::call::Notices;
use crate::present::bench::live as present;
use crate::present::bench::typing::ReadingDraft;
use crate::present::bench::when::proposed;
use crate::present::typed::Mistake;
use crate::shell::reminder::{Reminder, rig_of};
use crate::shell::{Shell, use_shell};
use crate::state::action::{Action, BenchAction};
use crate::state::bench::{RunReadings, TestRun};
use crate::state::ids::RunId;
use crate::state::refused::Refused;
use model::local_time::LocalTime;

/// The run and what is typed. Copies stand for the same one.
#[derive(Clone, Copy)]
pub(super) struct Scene {
    pub(super) shell: Shell,
    pub(super) reminder: Reminder,
    pub(super) id: RunId,
    pub(super) run: Memo<Option<TestRun>>,
    /// The reading that is about to be noted.
    pub(super) draft: RwSignal<ReadingDraft>,
    pub(super) wrong: RwSignal<Option<Mistake>>,
    /// The reading that is changed, by its time.
    pub(super) changed: RwSignal<Option<LocalTime>>,
    /// What was refused of the run as a whole.
    refused: RwSignal<Option<Refused>>,
}

impl Scene {
    fn new(shell: Shell, id: RunId) -> Self {
        let reminder: Reminder = expect_context();
        reminder.told_later().set(false);
        Self {
            shell,
            reminder,
            id,
            run: shell
                .store
                .read(move |document| document.bench.run(id).cloned()),
            draft: RwSignal::new(ReadingDraft::default()),
            wrong: RwSignal::new(None),
            changed: RwSignal::new(None),
            refused: RwSignal::new(None),
        }
    }

    /// Does something at the bench; what is refused is said.
    pub(super) fn act(&self, action: BenchAction) -> bool {
        let done = self.shell.dispatch.run(Action::Bench(action));
        self.refused.set(done.as_ref().err().copied());
        done.is_ok()
    }

    /// What is known of the run, followed.
    pub(super) fn with<T>(&self, of: impl FnOnce(&TestRun) -> T) -> Option<T> {
        self.run.with(|run| run.as_ref().map(of))
    }

    /// Where water boils here, once it is known where that is. \[°C\]
    pub(super) fn boiling_c(&self) -> Memo<Option<f64>> {
        self.shell.store.read(|document| {
            let household = document.household.as_ref()?;
            model::water::boiling_point_c(household.place.altitude_m).ok()
        })
    }

    /// When the next reading was taken, of a run that is written down from paper, followed.
    fn proposed(&self) -> Memo<Option<LocalTime>> {
        let scene = *self;
        let rig = rig_of(self.shell, self.run);
        Memo::new(move |_| {
            let told_later = scene.reminder.told_later().get();
            let now = scene.shell.clock.now_untracked();
            let run = scene.run.get()?;
            let foreseen = rig.with(|rig| present::foreseen(rig.as_ref()?, &run));
            proposed(&run, foreseen.as_ref(), told_later, now)
        })
    }

    /// What this run should be like; only of the one that goes on.
    fn foreseen(&self) -> Option<Foreseen> {
        self.reminder.going().with(|going| {
            let going = going.as_ref().filter(|going| going.run.id == self.id)?;
            going.foreseen.clone()
        })
    }
}

/// The page of a run.
#[component]
pub(super) fn Live(
    /// Which.
    id: RunId,
) -> impl IntoView {
    let shell = use_shell();
    let scene = Scene::new(shell, id);
    let title =
        Signal::derive(move || scene.with(|run| run.about.name.clone()).unwrap_or_default());
    let line = Signal::derive(move || {
        scene
            .with(|run| say(shell, |voice| present::line(voice, run)))
            .unwrap_or_default()
    });
    let is_there = Memo::new(move |_| scene.run.with(Option::is_some));
    let goes_on = Memo::new(move |_| {
        scene
            .run
            .with(|run| run.as_ref().is_some_and(|run| run.ended.is_none()))
    });
    let is_file = is_file(scene);
    let refused = move || {
        scene.refused.get().map(|refused| {
            let said = say(shell, |voice| {
                refusal(voice.strings, voice.formats, refused, voice.now.day())
            });
            view! { <p class="field__error" role="alert">{said}</p> }
        })
    };
    let body = move || {
        if !is_there.get() {
            let text = shell.words.text(|strings| strings.runs.live.gone);
            return view! { <EmptyNote icon=Icon::Bench text /> };
        }
        let now = if goes_on.get() {
            Some(view! {
                <ClockPanel scene />
                <entry::Entry scene />
                <pots::Pots scene />
                <Remind scene />
            })
        } else if is_file.get_untracked() {
            Some(view! { <pots::PotsOfText scene /> })
        } else {
            Some(view! {
                <entry::EntryLater scene />
                <pots::Pots scene />
            })
        };
        view! {
            {now}
            {refused}
            <Readings scene />
            {is_file.get_untracked().then(|| view! { <rows::FileRows scene /> })}
            <Plot scene />
            <ends::Ends scene goes_on />
            <sheet::ChangeSheet scene />
        }
    };
    view! { <Frame title line>{body}</Frame> }
}

/// Whether its readings come from a text.
fn is_file(scene: Scene) -> Memo<bool> {
    Memo::new(move |_| scene.with(|run| matches!(run.readings, RunReadings::File(_))) == Some(true))
}

/// The clock of the run, in words, followed to the second.
fn clock(scene: Scene) -> Memo<Option<present::ClockText>> {
    let reminder = scene.reminder;
    Memo::new(move |_| {
        let timer = reminder.timer().get()?;
        reminder.going().with(|going| {
            let going = going.as_ref().filter(|going| going.run.id == scene.id)?;
            let told = (reminder.away().get(), reminder.told_later().get());
            Some(say(scene.shell, |voice| {
                present::clock(voice, &going.run, going.foreseen.as_ref(), &timer, told)
            }))
        })
    })
}

/// The clock to the next reading.
#[component]
fn ClockPanel(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let clock = clock(scene);
    let part = move |part: fn(&present::ClockText) -> String| {
        Signal::derive(move || clock.with(|clock| clock.as_ref().map(part).unwrap_or_default()))
    };
    let is_due =
        Memo::new(move |_| clock.with(|clock| clock.as_ref().is_some_and(|clock| clock.is_due)));
    let lines = Memo::new(move |_| {
        let lines = clock.with(|clock| clock.as_ref().map(|clock| clock.lines.clone()));
        lines.unwrap_or_default()
    });
    // What changes each second is not read out; that it is time is.
    let spoken = Signal::derive(move || {
        if is_due.get() {
            words.strings().runs.live.now.to_owned()
        } else {
            String::new()
        }
    });
    view! {
        <Panel heading=words.text(|strings| strings.runs.live.clock) test="run-clock">
            <p class="bench-clock" data-due=move || is_due.get().then_some("true") aria-hidden="true">
                <span class="bench-clock__before">{part(|clock| clock.before.clone())}</span>
                " "
                <span class="bench-clock__large" data-test="run-countdown">
                    {part(|clock| clock.large.clone())}
                </span>
            </p>
            <p class="unseen" aria-live="assertive">{spoken}</p>
            <div class="stack" data-test="run-clock-lines">
                {move || lines.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            </div>
        </Panel>
    }
}

/// How long it goes on, and how one is called meanwhile.
#[component]
fn Remind(scene: Scene) -> impl IntoView {
    let reminder = scene.reminder;
    let words = scene.shell.words;
    let clock = clock(scene);
    let ends = Memo::new(move |_| {
        let ends = clock.with(|clock| clock.as_ref().map(|clock| clock.ends.clone()));
        ends.unwrap_or_default()
    });
    let cannot = move || {
        let cannot = reminder.cannot().get();
        let live = &words.strings().runs.live;
        let said = [
            (cannot.stay_on, live.no_wake),
            (cannot.buzz, live.no_buzz),
            (cannot.notice == Some(Notices::Unsupported), live.no_notices),
            (cannot.notice == Some(Notices::Denied), live.denied),
        ];
        said.into_iter()
            .filter(|(is_so, _)| *is_so)
            .map(|(_, text)| view! { <p class="field__hint">{text}</p> })
            .collect_view()
    };
    view! {
        <Panel heading=words.text(|strings| strings.runs.live.remind) test="run-remind">
            <p>{ends}</p>
            <Toggle
                label=words.text(|strings| strings.runs.live.call)
                detail=words.text(|strings| strings.runs.live.call_detail)
                on=reminder.calls()
                on_change=Callback::new(move |on| reminder.set_calls(on))
                test="run-calls"
            />
            <Toggle
                label=words.text(|strings| strings.runs.live.keep_on)
                detail=words.text(|strings| strings.runs.live.keep_on_detail)
                on=reminder.stays_on()
                on_change=Callback::new(move |on| reminder.set_stays_on(on))
                test="run-stays-on"
            />
            <div role="status" data-test="run-cannot">{cannot}</div>
        </Panel>
    }
}

/// The readings, the latest first.
#[component]
fn Readings(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let all = RwSignal::new(false);
    let rows = Memo::new(move |_| {
        scene
            .with(|run| say(shell, |voice| present::rows(voice, run)))
            .unwrap_or_default()
    });
    let row = move |(at, entry): (LocalTime, EntryView)| {
        view! {
            <li>
                <EntryRow entry on_press=Callback::new(move |()| {
                    scene.wrong.set(None);
                    scene.changed.set(Some(at));
                }) test="run-reading" />
            </li>
        }
    };
    let shown = move || {
        let rows = rows.get();
        let most = if all.get() {
            rows.len()
        } else {
            present::LISTED
        };
        rows.into_iter().take(most).map(row).collect_view()
    };
    let more = move || {
        let count = rows.with(Vec::len);
        (!all.get() && present::LISTED < count).then(|| {
            let label = (words.strings().runs.live.show_all)(&count.to_string());
            view! { <Button label on_press=Callback::new(move |()| all.set(true)) icon=Icon::Unfold /> }
        })
    };
    let is_file = is_file(scene);
    let none = move || {
        if is_file.get() {
            let text = scene.with(|run| say(shell, |voice| present::of_text(voice, run)))??;
            return Some(view! { <p data-test="run-of-text">{text}</p> });
        }
        rows.with(Vec::is_empty).then(|| {
            let text = words.strings().runs.live.none_yet;
            view! { <p>{text}</p> }
        })
    };
    view! {
        <Panel heading=words.text(|strings| strings.runs.live.readings) test="run-readings">
            {none}
            <ul class="cooker-list">{shown}</ul>
            {more}
        </Panel>
    }
}

/// What was read beside what was foreseen.
#[component]
fn Plot(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let boiling_c = scene.boiling_c();
    let plot = Memo::new(move |_| {
        let foreseen = scene.foreseen();
        let drawn = scene.with(|run| {
            say(shell, |voice| {
                present::plot(voice, run, foreseen.as_ref(), boiling_c.get())
            })
        });
        drawn.flatten()
    });
    let is_there = Memo::new(move |_| plot.with(Option::is_some));
    let y_text = move |tick: f64| {
        let formats = shell.words.formats();
        formats.with(|formats| formats.number(tick, 0))
    };
    move || {
        let first = is_there.get().then(|| plot.get_untracked())??;
        let view = Signal::derive(move || plot.get().unwrap_or_else(|| first.clone()));
        Some(view! {
            <Panel heading=shell.words.text(|strings| strings.runs.live.plot) test="run-plot">
                <LineChart view y_text=Callback::new(y_text) test="run-chart" />
            </Panel>
        })
    }
}
