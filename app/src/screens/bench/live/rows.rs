//! Single rows of an imported run: those there is a doubt about, any other, and one that is put right.

use crate::reactive::*;
use leptos::task::spawn_local;
use model::bench::readings::Correction;

use super::Scene;
use super::entry::number;
use crate::bench::answer::{Answer, TextRow, TextRows};
use crate::bench::ask::{Near, What};
use crate::components::{
    Button, EntryRow, Fold, Icon, Panel, Sheet, StatusLine, StatusTone, TextField, Tone,
};
use crate::platform::bench::Luggage;
use crate::present::bench::live::read;
use crate::present::bench::rows as present;
use crate::present::bench::typing::{Channel, ReadingDraft};
use crate::screens::bench::frame::{say, wrong_with};
use crate::shell::bench::ask;
use crate::shell::focus_error;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, BenchAction};
use crate::state::bench::{KeptText, RunReadings, TestRun};
use crate::state::refused::Field;

/// Rows on one page of those that are looked through.
const PAGE: u32 = 7;

/// What is shown of the rows.
#[derive(Clone, Copy)]
struct Rows {
    scene: Scene,
    found: RwSignal<TextRows>,
    refused: RwSignal<Option<String>>,
    near: RwSignal<Option<Near>>,
    /// The row that is opened.
    opened: RwSignal<Option<TextRow>>,
}

/// The panel; nothing where readings are typed.
#[component]
pub(super) fn FileRows(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let rows = Rows {
        scene,
        found: RwSignal::new(TextRows::default()),
        refused: RwSignal::new(None),
        near: RwSignal::new(None),
        opened: RwSignal::new(None),
    };
    follow(rows);
    let trouble = move || {
        let text = Signal::from(rows.refused.get()?);
        Some(view! { <StatusLine tone=StatusTone::Trouble text test="rows-trouble" /> })
    };
    let counted = move || {
        let (n_changed, n_left_out) = scene.with(|run| present::counts(corrections(run)))?;
        let count = words.strings().runs.rows.count;
        (0 < n_changed + n_left_out).then(|| {
            let text = count(&n_changed.to_string(), &n_left_out.to_string());
            view! { <p data-test="rows-count">{text}</p> }
        })
    };
    let named = move || {
        let found = rows.found.get();
        let row_words = &words.strings().runs.rows;
        if found.named.is_empty() {
            return view! { <p>{row_words.none}</p> };
        }
        let lines = found
            .named
            .into_iter()
            .map(|named| line(rows, named.row, named.why));
        let more = (0 < found.n_more).then(|| {
            let text = (row_words.more)(&found.n_more.to_string());
            view! { <p>{text}</p> }
        });
        view! {
            <ul class="cooker-list" data-test="rows-named">{lines.collect_view()}</ul>
            {more}
        }
    };
    view! {
        <Panel heading=words.text(|strings| strings.runs.rows.heading) test="run-rows">
            <p>{move || words.strings().runs.rows.lead}</p>
            {trouble}
            {counted}
            {named}
            <Fold summary=words.text(|strings| strings.runs.rows.other) test="rows-other">
                <GoTo rows />
            </Fold>
        </Panel>
        <Change rows />
    }
}

fn corrections(run: &TestRun) -> &[Correction] {
    match &run.readings {
        RunReadings::File(text) => &text.hints.corrections,
        RunReadings::Typed(_) => &[],
    }
}

/// Has the worker look the rows up whenever the text's corrections change, or others are asked for.
fn follow(rows: Rows) {
    let text = Memo::new(move |_| {
        rows.scene.run.with(|run| match &run.as_ref()?.readings {
            RunReadings::File(text) => Some(text.clone()),
            RunReadings::Typed(_) => None,
        })
    });
    let latest = StoredValue::new(0_u32);
    effect(move || {
        let (text, near): (Option<KeptText>, Option<Near>) = (text.get(), rows.near.get());
        let Some(text) = text else { return };
        let number = latest.get_value().wrapping_add(1);
        latest.set_value(number);
        spawn_local(async move {
            let what = What::Rows { text, near };
            let answer = ask(rows.scene.shell, what, Luggage::None).await;
            if latest.try_get_value() != Some(number) {
                return;
            }
            rows.refused.try_set(answer.as_ref().err().cloned());
            if let Ok(Answer::Rows(found)) = answer {
                rows.found.try_set(found);
            }
        });
    });
}

fn line(rows: Rows, row: TextRow, why: String) -> View {
    let scene = rows.scene;
    let entry = untrack(|| {
        let entry =
            scene.with(|run| say(scene.shell, |voice| present::entry(voice, run, &row, &why)));
        entry.unwrap_or_default()
    });
    let open = move |()| {
        scene.wrong.set(None);
        rows.opened.set(Some(row.clone()));
    };
    view! {
        <li>
            <EntryRow entry=Signal::from(entry) on_press=Callback::new(open) test="text-row" />
        </li>
    }
}

/// The way to any row, and those round it.
#[component]
fn GoTo(rows: Rows) -> impl IntoView {
    let scene = rows.scene;
    let words = scene.shell.words;
    let typed = RwSignal::new(String::new());
    let show = move |()| {
        let now = scene.shell.clock.now_untracked();
        let near = untrack(|| typed.with(|typed| scene.with(|run| present::near(typed, run, now))));
        match near {
            Some(Ok(near)) => rows.near.set(Some(near)),
            Some(Err(mistake)) => {
                scene.wrong.set(Some(mistake));
                focus_error();
            }
            None => {}
        }
    };
    let page = move |is_later: bool| {
        let ends = rows.found.with_untracked(|found| {
            let (first, last) = (found.near.first()?, found.near.last()?);
            Some((first.line, last.line))
        });
        let Some((first, last)) = ends else { return };
        let line = if is_later {
            last.saturating_add(PAGE / 2 + 1)
        } else {
            first.saturating_sub(PAGE / 2 + 1).max(1)
        };
        rows.near.set(Some(Near::Line(line)));
    };
    let near = move || {
        let found = rows.found.with(|found| found.near.clone());
        (!found.is_empty()).then(|| {
            let lines = found.into_iter().map(|row| line(rows, row, String::new()));
            view! {
                <ul class="cooker-list" data-test="rows-near">{lines.collect_view()}</ul>
                <div class="row">
                    <Button
                        label=words.text(|strings| strings.runs.rows.earlier)
                        on_press=Callback::new(move |()| page(false))
                        icon=Icon::Back
                        test="rows-earlier"
                    />
                    <Button
                        label=words.text(|strings| strings.runs.rows.later)
                        on_press=Callback::new(move |()| page(true))
                        icon=Icon::Onward
                        test="rows-later"
                    />
                </div>
            }
        })
    };
    view! {
        <TextField
            label=words.text(|strings| strings.runs.rows.go_to)
            value=typed
            on_input=Callback::new(move |text| {
                typed.set(text);
                scene.wrong.set(None);
            })
            hint=words.text(|strings| strings.runs.rows.go_to_hint)
            error=wrong_with(scene.shell, scene.wrong, Field::Readings)
            test="rows-go-to"
        />
        <Button
            label=words.text(|strings| strings.runs.rows.show)
            on_press=Callback::new(show)
            icon=Icon::Look
            test="rows-show"
        />
        {near}
    }
}

/// The sheet of the row that was opened.
#[component]
fn Change(rows: Rows) -> impl IntoView {
    let words = rows.scene.shell.words;
    let close = move |()| {
        rows.opened.set(None);
        rows.scene.wrong.set(None);
    };
    let title = move || {
        let line = rows.opened.with(|row| row.as_ref().map(|row| row.line));
        let line = line.map(|line| line.to_string()).unwrap_or_default();
        (words.strings().runs.rows.change)(&line)
    };
    view! {
        <Sheet
            title=Signal::derive(title)
            close=words.text(|strings| strings.common.buttons.close)
            open=Signal::derive(move || rows.opened.with(Option::is_some))
            on_close=Callback::new(close)
            test="row-change"
        >
            {move || rows.opened.get().map(|row| view! { <Form rows row /> })}
        </Sheet>
    }
}

/// What is done with a row.
#[derive(Clone, Copy)]
enum Deed {
    Keep,
    LeaveOut,
    BringBack,
}

#[component]
fn Form(rows: Rows, row: TextRow) -> impl IntoView {
    let scene = rows.scene;
    let words = scene.shell.words;
    let run = scene.run.get_untracked()?;
    let formats = words.formats().get_untracked();
    let before = ReadingDraft::of(&present::reading(&run, &row, &row.now), &formats);
    let draft = RwSignal::new(before.clone());
    let is_changed = corrections(&run).iter().any(|of| of.line == row.line);
    let text = untrack(|| {
        say(scene.shell, |voice| {
            let raw = read(voice, &present::reading(&run, &row, &row.text));
            (voice.strings.runs.rows.text)(&raw)
        })
    });
    let has = rows.found.with_untracked(|found| {
        Channel::ALL.map(|channel| {
            let columns = found.columns.iter();
            columns
                .into_iter()
                .any(|column| Channel::of_column(*column) == Some(channel))
        })
    });
    let tests = ["row-store", "row-pot", "row-air", "row-power"];
    let numbers = Channel::ALL.into_iter().zip(tests).zip(has);
    let numbers = numbers
        .filter(|(_, has)| *has)
        .map(|((channel, test), _)| number(scene, draft, channel, test))
        .collect_view();
    let kept = StoredValue::new((row, before));
    let act = move |deed: Deed| {
        let Some(run) = scene.run.get_untracked() else {
            return;
        };
        let now = corrections(&run).to_vec();
        let (row, before) = kept.get_value();
        let new = match deed {
            Deed::Keep => untrack(|| {
                say(scene.shell, |voice| {
                    draft
                        .with(|draft| present::changed(voice, &now, (&run, &row), (&before, draft)))
                })
            }),
            Deed::LeaveOut => Ok(present::left_out(&now, &row)),
            Deed::BringBack => Ok(present::brought_back(&now, &row)),
        };
        let corrections = match new {
            Ok(corrections) => corrections,
            Err(mistake) => {
                scene.wrong.set(Some(mistake));
                focus_error();
                return;
            }
        };
        rows.opened.set(None);
        if corrections == now {
            return;
        }
        let run = scene.id;
        if scene.act(BenchAction::CorrectRows { run, corrections }) {
            let undo = Action::Bench(BenchAction::CorrectRows {
                run,
                corrections: now,
            });
            let said = untrack(|| words.strings());
            let rows = &said.runs.rows;
            let said = match deed {
                Deed::Keep => rows.was_changed,
                Deed::LeaveOut => rows.was_left_out,
                Deed::BringBack => rows.was_brought_back,
            };
            let about = ToastAbout::Said(said(&row.line.to_string()));
            scene.shell.toasts.show(about, Some(undo));
        }
    };
    let back = is_changed.then(|| {
        view! {
            <Button
                label=words.text(|strings| strings.runs.rows.bring_back)
                on_press=Callback::new(move |()| act(Deed::BringBack))
                icon=Icon::Undo
                test="row-bring-back"
            />
        }
    });
    Some(view! {
        <div class="stack">
            <p data-test="row-text">{text}</p>
            {numbers}
            <p class="field__hint">{words.text(|strings| strings.runs.rows.empty)}</p>
            <div class="row">
                <Button
                    label=words.text(|strings| strings.common.buttons.save)
                    on_press=Callback::new(move |()| act(Deed::Keep))
                    tone=Tone::Primary
                    icon=Icon::Tick
                    test="row-save"
                />
                <Button
                    label=words.text(|strings| strings.runs.rows.leave_out)
                    on_press=Callback::new(move |()| act(Deed::LeaveOut))
                    tone=Tone::Danger
                    icon=Icon::Bin
                    test="row-leave-out"
                />
                {back}
            </div>
        </div>
    })
}
