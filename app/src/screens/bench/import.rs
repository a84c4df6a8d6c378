//! Readings from a paste or a logger's file: what was understood, what to correct, and the run they
//! become.

use crate::reactive::*;
use leptos::task::spawn_local;
use model::bench::readings::{Column, Degrees, ElapsedUnit, Hints};

use super::frame::Frame;
use super::import_about::About;
use super::sheet::Sheet;
use crate::bench::answer::{Answer, Opened};
use crate::bench::ask::What;
use crate::components::{
    Button, FileButton, Icon, Panel, Select, SelectOption, StatusLine, StatusTone, TextArea, Tone,
};
use crate::platform::bench::{Luggage, picked};
use crate::shell::bench::ask;
use crate::shell::{Shell, use_shell};

/// What a column can hold, in the order of the list.
const HOLDS: [Column; 8] = [
    Column::Time,
    Column::Date,
    Column::Store,
    Column::Pot,
    Column::Air,
    Column::Power,
    Column::Irradiance,
    Column::Unused,
];
const DEGREES: [Degrees; 2] = [Degrees::Celsius, Degrees::Fahrenheit];
const ELAPSED: [Option<ElapsedUnit>; 4] = [
    None,
    Some(ElapsedUnit::Seconds),
    Some(ElapsedUnit::Minutes),
    Some(ElapsedUnit::Hours),
];

/// What stands on the page.
#[derive(Clone, Copy)]
pub(super) struct Scene {
    pub(super) shell: Shell,
    /// The text that the worker holds, as it was understood.
    pub(super) opened: RwSignal<Option<Opened>>,
    /// Why there is none.
    pub(super) refused: RwSignal<Option<String>>,
    is_working: RwSignal<bool>,
    hints: RwSignal<Hints>,
}

impl Scene {
    /// Has a text understood, or the one that is held once more.
    fn read(self, what: What, luggage: Luggage) {
        self.is_working.set(true);
        self.refused.set(None);
        spawn_local(async move {
            let answer = ask(self.shell, what, luggage).await;
            // The person may have left the page meanwhile.
            self.is_working.try_set(false);
            match answer {
                Ok(Answer::Opened(opened)) => self.opened.try_set(Some(*opened)),
                Ok(_) => {}
                Err(why) => self.refused.try_set(Some(why)),
            }
        });
    }

    fn open(self, luggage: Luggage) {
        self.hints.set(Hints::default());
        self.opened.set(None);
        let hints = Hints::default();
        self.read(What::Open { hints }, luggage);
    }

    fn correct(self, change: impl FnOnce(&mut Hints)) {
        self.hints.update(change);
        let hints = self.hints.get_untracked();
        let what = What::Again { hints };
        self.read(what, Luggage::None);
    }
}

/// The page.
#[component]
pub(super) fn Import() -> impl IntoView {
    let shell = use_shell();
    let words = shell.words;
    let scene = Scene {
        shell,
        opened: RwSignal::new(None),
        refused: RwSignal::new(None),
        is_working: RwSignal::new(false),
        hints: RwSignal::new(Hints::default()),
    };
    let pasted = RwSignal::new(String::new());
    let on_pick = Callback::new(move |event| {
        if let Some(file) = picked(&event) {
            scene.open(Luggage::File(file));
        }
    });
    let trouble = move || {
        let text = Signal::from(scene.refused.get()?);
        Some(view! { <StatusLine tone=StatusTone::Trouble text test="import-trouble" /> })
    };
    view! {
        <Frame title=words.text(|strings| strings.bench.import.title)>
            <Panel heading=words.text(|strings| strings.bench.import.title)>
                <p>{move || words.strings().bench.import.lead}</p>
                <TextArea
                    label=words.text(|strings| strings.bench.import.paste)
                    value=pasted
                    on_input=Callback::new(move |text| pasted.set(text))
                    hint=words.text(|strings| strings.bench.import.paste_hint)
                    test="import-paste"
                />
                <div class="row">
                    <Button
                        label=words.text(|strings| strings.bench.import.read_paste)
                        on_press=Callback::new(move |()| {
                            scene.open(Luggage::Text(pasted.get_untracked()));
                        })
                        icon=Icon::Look
                        tone=Tone::Primary
                        disabled=Signal::derive(move || pasted.with(String::is_empty))
                        test="import-read"
                    />
                    <FileButton
                        label=words.text(|strings| strings.bench.import.open_file)
                        icon=Icon::Fetch
                        accept=".csv,.txt,.tsv,.log,text/*"
                        on_pick
                        test="import-file"
                    />
                </div>
                <p class="aside" role="status" data-test="import-working">
                    {move || scene.is_working.get().then(|| words.strings().bench.import.reading)}
                </p>
                {trouble}
            </Panel>
            {move || {
                scene
                    .opened
                    .get()
                    .map(|opened| {
                        view! {
                            <Understood scene opened=opened.clone() />
                            <About scene opened />
                        }
                    })
            }}
        </Frame>
    }
}

/// What was understood, with what corrects it.
#[component]
fn Understood(scene: Scene, opened: Opened) -> impl IntoView {
    let words = scene.shell.words;
    let columns = opened.columns.clone();
    let swapped = opened.swapped.clone();
    let swap = swapped.map(|columns| {
        let on_press = Callback::new(move |()| {
            let columns = columns.clone();
            scene.correct(|hints| hints.columns = Some(columns));
        });
        view! {
            <StatusLine
                tone=StatusTone::Notice
                text=words.text(|strings| strings.bench.import.swapped)
                action=words.text(|strings| strings.bench.import.swap)
                on_action=on_press
                test="import-swap"
            />
        }
    });
    let column = |(place, sample): (usize, &String)| {
        let now = opened.columns.get(place).copied();
        let label = untrack(|| (words.strings().bench.import.column)(place + 1, sample));
        let columns = columns.clone();
        let pick = move |row: usize| {
            let mut columns = columns.clone();
            if let (Some(column), Some(holds)) = (columns.get_mut(place), HOLDS.get(row)) {
                *column = *holds;
            }
            scene.correct(|hints| hints.columns = Some(columns));
        };
        let names = untrack(|| HOLDS.map(words.strings().bench.import.holds));
        let picked = HOLDS.iter().position(|holds| Some(*holds) == now);
        view! { <Pick label names=names.to_vec() picked=picked.unwrap_or(7) on_pick=Callback::new(pick) test="import-column" /> }
    };
    let columns_view = opened.samples.iter().enumerate().map(column).collect_view();
    let strings = untrack(|| words.strings());
    let import = &strings.bench.import;
    let degrees = DEGREES.iter().position(|of| *of == opened.degrees);
    let elapsed = ELAPSED.iter().position(|of| *of == opened.elapsed);
    let on_degrees = move |row: usize| {
        scene.correct(|hints| hints.degrees = DEGREES.get(row).copied());
    };
    let on_elapsed = move |row: usize| {
        scene.correct(|hints| hints.elapsed = ELAPSED.get(row).copied().flatten());
    };
    view! {
        {swap}
        <Sheet blocks=opened.sheet.clone() />
        <Panel heading=words.text(|strings| strings.bench.import.columns) test="import-columns">
            {columns_view}
            <Pick
                label=import.degrees.to_owned()
                names=DEGREES.map(import.degrees_of).to_vec()
                picked=degrees.unwrap_or_default()
                on_pick=Callback::new(on_degrees)
                test="import-degrees"
            />
            <Pick
                label=import.elapsed.to_owned()
                names=ELAPSED.map(import.elapsed_of).to_vec()
                picked=elapsed.unwrap_or_default()
                on_pick=Callback::new(on_elapsed)
                test="import-elapsed"
            />
        </Panel>
    }
}

/// One of a few, by its place in the list.
#[component]
pub(super) fn Pick(
    /// The question.
    label: String,
    /// The answers.
    names: Vec<&'static str>,
    /// Place of the one that holds.
    picked: usize,
    /// Called with the place of the one picked.
    on_pick: Callback<usize>,
    /// The hook for tests.
    test: &'static str,
) -> impl IntoView {
    let option = |(place, name): (usize, &&str)| SelectOption {
        key: place.to_string(),
        label: (*name).to_owned(),
    };
    let options: Vec<SelectOption> = names.iter().enumerate().map(option).collect();
    view! {
        <Select
            label=Signal::from(label)
            options=Signal::from(options)
            picked=Signal::from(picked.to_string())
            on_pick=Callback::new(move |key: String| {
                if let Ok(place) = key.parse() {
                    on_pick.run(place);
                }
            })
            test
        />
    }
}
