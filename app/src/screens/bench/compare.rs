//! Runs and builds beside each other, on the screen and on paper.

use crate::reactive::*;

use super::frame::{Frame, say, say_now};
use crate::chart::{LineChart, LineChartView};
use crate::components::{
    ActionDock, Button, Choice, ChoiceOption, DataTable, EmptyNote, Icon, LinkButton, Panel,
    TableView, Toggle, Tone,
};
use crate::i18n::format::Sure;
use crate::i18n::strings::Strings;
use crate::platform::{files, page};
use crate::present::bench::compare::{self as present, Aligned, Chosen, MOST};
use crate::present::bench::figure::Figure;
use crate::present::bench::results::csv;
use crate::present::bench::typing::Channel;
use crate::present::diary::day_field;
use crate::present::tonight::Voice;
use crate::shell::comparing::Comparing;
use crate::shell::toasts::ToastAbout;
use crate::shell::{Shell, use_shell};
use crate::state::ids::RunId;
use crate::state::route::{BenchPage, Route};

/// What is compared. Copies stand for the same.
#[derive(Clone, Copy)]
struct Scene {
    shell: Shell,
    comparing: Comparing,
    runs: Memo<Vec<Chosen>>,
}

impl Scene {
    fn new(shell: Shell) -> Self {
        let comparing: Comparing = expect_context();
        let runs = comparing.runs();
        comparing.look_again();
        effect(move || runs.with(|runs| comparing.look_up(runs)));
        Self {
            shell,
            comparing,
            runs,
        }
    }

    /// Something said of the runs, followed.
    fn say<T: PartialEq + Send + Sync + 'static>(
        &self,
        what: fn(&Voice<'_>, &[Chosen]) -> T,
    ) -> Memo<T> {
        let scene = *self;
        Memo::new(move |_| {
            scene
                .runs
                .with(|runs| say(scene.shell, |voice| what(voice, runs)))
        })
    }

    fn heading(&self, pick: fn(&Strings) -> &'static str) -> Signal<String> {
        self.shell.words.text(pick)
    }
}

/// The page where runs are chosen and looked at.
#[component]
pub(super) fn Compare() -> impl IntoView {
    let shell = use_shell();
    let scene = Scene::new(shell);
    let title = scene.heading(|strings| strings.runs.report.title);
    view! {
        <Frame title>
            <Chooser scene />
            <Curves scene />
            <Tables scene />
            <Save scene />
            <ActionDock>
                <LinkButton
                    href=Route::Bench(BenchPage::Print).hash()
                    label=scene.heading(|strings| strings.runs.report.to_print)
                    tone=Tone::Primary
                    icon=Icon::Print
                    test="to-print"
                />
            </ActionDock>
        </Frame>
    }
}

/// The page that is printed.
#[component]
pub(super) fn PrintPage() -> impl IntoView {
    let shell = use_shell();
    let scene = Scene::new(shell);
    let title = scene.heading(|strings| strings.runs.report.printed_title);
    let line = scene.say(|voice, _| {
        let day = day_field(voice.now.day());
        (voice.strings.runs.report.dated)(&day)
    });
    let failed = RwSignal::new(false);
    let print = move |()| failed.set(page::print().is_err());
    let trouble = move || {
        failed.get().then(|| {
            let text = scene.heading(|strings| strings.runs.report.print_failed);
            view! { <p class="field__error" role="alert">{text}</p> }
        })
    };
    view! {
        <Frame title line>
            <Builds scene />
            <Curves scene />
            <Tables scene />
            <Conditions scene />
            <Methods scene />
            {trouble}
            <p class="field__hint bench-no-paper">
                {scene.heading(|strings| strings.runs.report.print_hint)}
            </p>
            <ActionDock>
                <Button
                    label=scene.heading(|strings| strings.runs.report.print)
                    on_press=Callback::new(print)
                    tone=Tone::Primary
                    icon=Icon::Print
                    test="print"
                />
            </ActionDock>
        </Frame>
    }
}

/// The runs to choose from, the latest first.
#[component]
fn Chooser(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let ids = scene.comparing.ids();
    let all = shell.store.read(|document| {
        let runs = document.bench.runs.iter().rev();
        let known = runs.filter_map(|run| {
            let cooker = document.cooker(run.cooker)?;
            Some((run.id, cooker.name.clone()))
        });
        known.collect::<Vec<_>>()
    });
    let row = move |(id, cooker): (RunId, String)| {
        let words = say_now(shell, |voice| {
            shell.store.now_is(|document| {
                let run = document.bench.run(id)?;
                Some(present::line(voice, run, &cooker))
            })
        });
        words.map(|(name, detail)| {
            view! {
                <Toggle
                    label=name
                    detail
                    on=Signal::derive(move || ids.with(|ids| ids.contains(&id)))
                    on_change=Callback::new(move |is_in| scene.comparing.choose(id, is_in))
                    test="compare-run"
                />
            }
        })
    };
    let list = move || {
        if all.with(Vec::is_empty) {
            let text = scene.heading(|strings| strings.runs.report.no_runs);
            view! { <EmptyNote icon=Icon::Compare text /> }
        } else {
            all.get().into_iter().map(row).collect_view()
        }
    };
    let most =
        Signal::derive(move || (shell.words.strings().runs.report.at_most)(&MOST.to_string()));
    view! {
        <Panel heading=scene.heading(|strings| strings.runs.report.choose) test="compare-runs">
            {list}
            <p class="field__hint">{most}</p>
        </Panel>
        <Align scene />
    }
}

/// Where the curves are laid over each other; only where a pot went in.
#[component]
fn Align(scene: Scene) -> impl IntoView {
    const START: &str = "start";
    const POT: &str = "pot";
    let words = scene.shell.words;
    let has_pots = Memo::new(move |_| {
        scene
            .runs
            .with(|runs| runs.iter().any(|chosen| !chosen.run.pots.is_empty()))
    });
    let options = Memo::new(move |_| {
        let report = &words.strings().runs.report;
        [(START, report.at_start), (POT, report.at_pot)]
            .map(|(key, label)| ChoiceOption {
                key: key.to_owned(),
                label: label.to_owned(),
                detail: String::new(),
                icon: None,
            })
            .to_vec()
    });
    let picked = Signal::derive(move || {
        let key = match scene.comparing.aligned().get() {
            Aligned::Start => START,
            Aligned::Pot => POT,
        };
        key.to_owned()
    });
    let on_pick = move |key: String| {
        let aligned = if key == POT {
            Aligned::Pot
        } else {
            Aligned::Start
        };
        scene.comparing.align(aligned);
    };
    view! {
        <Show when=move || has_pots.get()>
            <Choice
                label=words.text(|strings| strings.runs.report.aligned)
                options
                picked
                on_pick=Callback::new(on_pick)
                test="compare-align"
            />
        </Show>
    }
}

/// The plots of the store and of the pot.
#[component]
fn Curves(scene: Scene) -> impl IntoView {
    let not_drawn = scene.say(present::not_drawn);
    view! {
        <p class="field__hint" role="status" data-test="compare-not-drawn">{move || not_drawn.get()}</p>
        {curves(scene, Channel::Store, |strings| strings.runs.report.plot_store, "compare-store")}
        {curves(scene, Channel::Pot, |strings| strings.runs.report.plot_pot, "compare-pot")}
    }
}

fn curves(
    scene: Scene,
    channel: Channel,
    heading: fn(&Strings) -> &'static str,
    test: &'static str,
) -> View {
    let shell = scene.shell;
    let plot: Memo<Option<LineChartView>> = Memo::new(move |_| {
        let aligned = scene.comparing.aligned().get();
        scene
            .runs
            .with(|runs| say(shell, |voice| present::plot(voice, runs, channel, aligned)))
    });
    let is_there = Memo::new(move |_| plot.with(Option::is_some));
    let y_text = move |tick: f64| {
        let formats = shell.words.formats();
        formats.with(|formats| formats.number(tick, 0))
    };
    let drawn = move || {
        let first = is_there.get().then(|| plot.get_untracked())??;
        let view = Signal::derive(move || plot.get().unwrap_or_else(|| first.clone()));
        Some(view! {
            <Panel heading=scene.heading(heading) test>
                <LineChart view y_text=Callback::new(y_text) />
            </Panel>
        })
    };
    view! { {drawn} }
}

/// What was measured, and the figures.
#[component]
fn Tables(scene: Scene) -> impl IntoView {
    let beside = scene.comparing.beside();
    let measured = table_of(scene, present::measured);
    let figures = table_of(scene, |voice, runs, beside| {
        let caption = voice.strings.runs.report.figures;
        present::figures(voice, (runs, beside), &Figure::STANDARD, caption)
    });
    let has_description = scene.say(|_, runs| present::has_description(runs));
    let detail = Signal::derive(move || {
        let report = &scene.shell.words.strings().runs.report;
        if has_description.get() {
            report.beside_detail
        } else {
            report.beside_none
        }
        .to_owned()
    });
    let none = Memo::new(move |_| {
        measured.with(|table| table.rows.is_empty()) && figures.with(|table| table.rows.is_empty())
    });
    let together = scene.say(present::together);
    let table = move |table: Memo<TableView>, test| {
        move || {
            let is_there = table.with(|table| !table.rows.is_empty());
            is_there.then(|| view! { <div class="panel" data-test=test><DataTable table /></div> })
        }
    };
    view! {
        <Show when=move || !none.get()>
            <div class="panel bench-no-paper">
                <Toggle
                    label=scene.heading(|strings| strings.runs.report.beside)
                    detail
                    on=beside
                    on_change=Callback::new(move |on| beside.set(on))
                    test="compare-beside"
                />
            </div>
        </Show>
        {table(measured, "compare-measured")}
        {table(figures, "compare-figures")}
        <p class="field__hint">{move || together.get()}</p>
        <Show when=move || none.get()>
            <p class="field__hint">{scene.heading(|strings| strings.runs.report.fit_first)}</p>
        </Show>
    }
}

/// A table of the runs, with what their descriptions foresee where that is wanted, followed.
fn table_of(scene: Scene, what: fn(&Voice<'_>, &[Chosen], bool) -> TableView) -> Memo<TableView> {
    let beside = scene.comparing.beside();
    Memo::new(move |_| {
        let beside = beside.get();
        scene
            .runs
            .with(|runs| say(scene.shell, |voice| what(voice, runs, beside)))
    })
}

/// The results as a file.
#[component]
fn Save(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let save = move |()| {
        let name = present::file_name(shell.clock.device_now());
        let text = scene
            .runs
            .with_untracked(|runs| csv(&present::results(runs)));
        let done = files::download(&name, "text/csv", &text);
        let report = &untrack(|| shell.words.strings()).runs.report;
        let said = match done {
            Ok(()) => (report.csv_saved)(&name),
            Err(error) => (report.csv_failed)(&error.to_string()),
        };
        shell.toasts.show(ToastAbout::Said(said), None);
    };
    let nothing = Signal::derive(move || {
        scene
            .runs
            .with(|runs| runs.iter().all(|chosen| chosen.run.fit.is_none()))
    });
    view! {
        <Button
            label=scene.heading(|strings| strings.runs.report.csv)
            on_press=Callback::new(save)
            icon=Icon::Keep
            disabled=nothing
            test="compare-csv"
        />
    }
}

/// The builds, and where they stand.
#[component]
fn Builds(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let builds = scene.say(present::builds);
    let altitude_m = shell.store.read(|document| {
        let household = document.household.as_ref()?;
        Some(household.place.altitude_m)
    });
    let place = move || {
        let altitude_m = altitude_m.get()?;
        let boiling_c = model::water::boiling_point_c(altitude_m).ok()?;
        Some(say(shell, |voice| {
            (voice.strings.runs.report.place)(
                &voice.formats.metres(altitude_m),
                &voice.formats.temperature(boiling_c, Sure::Known),
            )
        }))
    };
    view! {
        <Panel heading=scene.heading(|strings| strings.runs.report.builds) test="report-builds">
            {move || builds.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            <p>{place}</p>
        </Panel>
    }
}

#[component]
fn Conditions(scene: Scene) -> impl IntoView {
    let table = scene.say(present::conditions);
    let notes = scene.say(|voice, runs| {
        runs.iter()
            .filter(|chosen| !chosen.run.about.notes.is_empty())
            .map(|chosen| format!("{}: {}", chosen.name(voice), chosen.run.about.notes))
            .collect::<Vec<_>>()
    });
    view! {
        <div class="panel stack" data-test="report-conditions">
            <DataTable table />
            {move || notes.get().into_iter().map(|note| view! { <p>{note}</p> }).collect_view()}
        </div>
    }
}

/// How it was measured, how sure it is, and what each figure is.
#[component]
fn Methods(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let paragraphs = move || {
        let method = words.strings().runs.report.method;
        method
            .iter()
            .map(|text| view! { <p>{*text}</p> })
            .collect_view()
    };
    let definitions = move || {
        let strings = words.strings();
        Figure::STANDARD
            .into_iter()
            .filter_map(|figure| figure.named(strings))
            .map(|named| {
                view! {
                    <p>
                        <strong>{named.name}</strong>
                        ". "
                        {named.means}
                    </p>
                }
            })
            .collect_view()
    };
    view! {
        <Panel heading=scene.heading(|strings| strings.runs.report.methods) test="report-methods">
            {paragraphs}
        </Panel>
        <Panel heading=scene.heading(|strings| strings.runs.report.definitions) test="report-definitions">
            {definitions}
        </Panel>
    }
}
