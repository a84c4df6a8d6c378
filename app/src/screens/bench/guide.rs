//! A new test run: what it tells, how it is done, and the way into it.

use std::sync::Arc;

use crate::reactive::*;
use model::bench::RunKind;
use model::tonight::Rig;

use super::frame::{Frame, cautions, say, say_now, wrong_with};
use crate::components::{
    ActionDock, Button, Choice, ChoiceOption, DateField, Fact, FactList, Icon, LinkButton,
    NumberField, NumberFieldText, Panel, Select, SelectOption, TextArea, TextField, TimeField,
    Tone,
};
use crate::present::bench::guide::{self as present, Draft, KINDS};
use crate::present::bench::list::icon;
use crate::present::cooker::fault::build_of;
use crate::present::typed::{Mistake, stepped};
use crate::shell::reminder::site;
use crate::shell::{Shell, focus_error, use_shell};
use crate::state::action::{Action, Done};
use crate::state::ids::CookerId;
use crate::state::limits;
use crate::state::refused::Field;
use crate::state::route::{BenchPage, Route};

/// What is typed and what is known of the cooker. Copies stand for the same one.
#[derive(Clone, Copy)]
struct Scene {
    shell: Shell,
    draft: RwSignal<Draft>,
    wrong: RwSignal<Option<Mistake>>,
    kind: Memo<RunKind>,
    rig: Memo<Option<Arc<Rig>>>,
}

impl Scene {
    fn new(shell: Shell, cooker: CookerId) -> Self {
        let draft = RwSignal::new(Draft::new(cooker));
        let kind = Memo::new(move |_| draft.with(|draft| draft.kind));
        let id = Memo::new(move |_| draft.with(|draft| draft.cooker));
        let site = shell.store.read(site);
        let rig = Memo::new_each_time(move || {
            let id = id.get();
            let site = site.get()?;
            shell.store.now_is(|document| {
                let owned = document.cooker(id)?;
                Rig::new(&site, &owned.cooker).ok().map(Arc::new)
            })
        });
        Self {
            shell,
            draft,
            wrong: RwSignal::new(None),
            kind,
            rig,
        }
    }

    fn edit(&self, edit: impl FnOnce(&mut Draft)) {
        self.draft.update(edit);
        self.wrong.set(None);
    }

    fn start(&self) {
        let now = self.shell.clock.now_untracked();
        let begun = say_now(self.shell, |voice| {
            self.draft.with_untracked(|draft| draft.begin(voice, now))
        });
        let done = begun.and_then(|action| {
            let done = self.shell.dispatch.run(Action::Bench(action));
            done.map_err(Mistake::from)
        });
        match done {
            Ok(Done::AddedRun(id)) => self.shell.router.go(Route::Bench(BenchPage::Run(id))),
            Ok(_) => {}
            Err(mistake) => {
                self.wrong.set(Some(mistake));
                focus_error();
            }
        }
    }
}

/// The page.
#[component]
pub(super) fn Guide() -> impl IntoView {
    let shell = use_shell();
    let title = shell.words.text(|strings| strings.runs.guide.title);
    let in_use = shell.store.now_is(|document| document.in_use);
    let body = in_use.map(|cooker| {
        let scene = Scene::new(shell, cooker);
        view! {
            <GoesOn />
            <Kind scene />
            <How scene />
            <Before scene />
            <ActionDock>
                <Button
                    label=Signal::derive(move || {
                        let guide = &shell.words.strings().runs.guide;
                        let label = scene.draft.with(|draft| match (draft.is_earlier(), draft.is_over()) {
                            (_, true) => guide.write_over,
                            (true, false) => guide.start_earlier,
                            (false, false) => guide.start,
                        });
                        label.to_owned()
                    })
                    on_press=Callback::new(move |()| scene.start())
                    tone=Tone::Primary
                    icon=Icon::Clock
                    test="run-start"
                />
            </ActionDock>
        }
    });
    view! { <Frame title>{body}</Frame> }
}

/// The way to a run that goes on already.
#[component]
fn GoesOn() -> impl IntoView {
    let shell = use_shell();
    let going = shell.store.read(|document| {
        let run = document.bench.going()?;
        Some((run.id, run.about.name.clone()))
    });
    move || {
        going.get().map(|(id, name)| {
            let text = say(shell, |voice| (voice.strings.runs.guide.goes_on)(&name));
            view! {
                <div class="panel stack" data-test="goes-on">
                    <p>{text}</p>
                    <LinkButton
                        href=Route::Bench(BenchPage::Run(id)).hash()
                        label=shell.words.text(|strings| strings.runs.guide.to_it)
                        icon=Icon::Onward
                    />
                </div>
            }
        })
    }
}

#[component]
fn Kind(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let options = Memo::new(move |_| {
        let strings = words.strings();
        let option = |(place, kind): (usize, &RunKind)| ChoiceOption {
            key: place.to_string(),
            label: (strings.bench.kind)(*kind).to_owned(),
            detail: (strings.runs.guide.of)(*kind).tells.to_owned(),
            icon: Some(icon(*kind)),
        };
        KINDS.iter().enumerate().map(option).collect::<Vec<_>>()
    });
    let picked = Signal::derive(move || {
        let place = KINDS.iter().position(|kind| *kind == scene.kind.get());
        place.map(|place| place.to_string()).unwrap_or_default()
    });
    let on_pick = move |key: String| {
        let place = key.parse::<usize>().ok();
        if let Some(kind) = place.and_then(|place| KINDS.get(place)) {
            scene.edit(|draft| draft.kind = *kind);
        }
    };
    view! {
        <div class="bench-kinds">
            <Choice
                label=words.text(|strings| strings.runs.guide.choose)
                options
                picked
                on_pick=Callback::new(on_pick)
                test="run-kind"
            />
        </div>
    }
}

/// How long it takes, what to mind, and the steps.
#[component]
fn How(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let takes = Memo::new(move |_| {
        let foreseen = scene.rig.with(|rig| {
            let rig = rig.as_ref()?;
            let (id, draft) = scene.draft.with(|draft| (draft.cooker, draft.clone()));
            let formats = words.formats().get();
            shell
                .store
                .now_is(|document| draft.foreseen(&formats, rig, &document.cooker(id)?.cooker))
        });
        say(shell, |voice| {
            present::takes(voice, scene.kind.get(), foreseen.as_ref())
        })
    });
    let minded = move || {
        let id = scene.draft.with(|draft| draft.cooker);
        let build = shell
            .store
            .now_is(|document| build_of(&site(document)?, &document.cooker(id)?.cooker).ok());
        cautions(say(shell, |voice| {
            present::cautions(
                voice.strings,
                voice.formats,
                scene.kind.get(),
                build.as_ref(),
            )
        }))
    };
    let steps = move || {
        let steps = (words.strings().runs.guide.of)(scene.kind.get()).steps;
        steps
            .iter()
            .map(|step| view! { <li>{*step}</li> })
            .collect_view()
    };
    let write = Signal::derive(move || {
        (words.strings().runs.guide.of)(scene.kind.get())
            .write
            .to_owned()
    });
    view! {
        <Panel heading=words.text(|strings| strings.runs.guide.cautions) test="run-cautions">
            {minded}
        </Panel>
        <Panel heading=words.text(|strings| strings.runs.guide.steps) test="run-steps">
            <p class="bench-takes" data-test="run-takes">{takes}</p>
            <ol class="bench-steps">{steps}</ol>
            <p class="bench-write">
                <strong>{words.text(|strings| strings.runs.guide.write)}</strong>
                " "
                {write}
            </p>
        </Panel>
    }
}

type Text = fn(&mut Draft) -> &mut String;

/// What is typed before it begins.
#[component]
fn Before(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let strings = untrack(|| words.strings());
    let guide = &strings.runs.guide;
    let live = &strings.runs.live;
    let (degrees, watts) = words.formats().with_untracked(|formats| {
        let degrees = (formats.units.degrees)("", formats.degrees);
        (
            degrees.trim().to_owned(),
            (formats.units.watts)("").trim().to_owned(),
        )
    });
    let full_sun = scene.rig.with_untracked(|rig| {
        let watts = rig.as_ref().map(|rig| rig.full_sun_w());
        watts.map(|watts| say_now(shell, |voice| voice.formats.watts(watts)))
    });
    let heater_hint = full_sun
        .map(|watts| (guide.heater_hint)(&watts))
        .unwrap_or_default();
    let number = move |label: &str, hint: String, unit: &str, text: Text, field: Field, test| {
        let on_step = move |n_steps: i32| {
            let formats = words.formats().get_untracked();
            let start_c = if field == Field::AirC { 20.0 } else { 200.0 };
            let steps = match field {
                Field::HeaterW => crate::present::typed::Steps {
                    by: 5.0,
                    range: limits::HEATER_W,
                    start: 100.0,
                },
                Field::AirC => present::degree_steps(&formats, start_c, limits::AIR_C),
                _ => present::degree_steps(&formats, start_c, limits::READING_C),
            };
            scene.edit(|draft| {
                let typed = text(draft);
                *typed = stepped(&formats, typed, n_steps, steps);
            });
        };
        view! {
            <NumberField
                text=NumberFieldText {
                    label: label.to_owned(),
                    unit: unit.to_owned(),
                    less: format!("{label}: {}", live.lower),
                    more: format!("{label}: {}", live.higher),
                    hint,
                }
                value=value_of(scene, text)
                on_input=Callback::new(move |typed| scene.edit(|draft| *text(draft) = typed))
                on_step=Callback::new(on_step)
                error=wrong_with(shell, scene.wrong, field)
                test
            />
        }
    };
    let heater = {
        let watts = watts.clone();
        move || {
            scene.kind.get();
            let is_heated = scene.draft.with_untracked(Draft::is_heated);
            is_heated.then(|| {
                number(
                    guide.heater,
                    heater_hint.clone(),
                    &watts,
                    |draft| &mut draft.heater,
                    Field::HeaterW,
                    "run-heater",
                )
            })
        }
    };
    let line = move |label, text: Text, field, test| {
        view! {
            <TextField
                label=words.text(label)
                value=value_of(scene, text)
                on_input=Callback::new(move |typed| scene.edit(|draft| *text(draft) = typed))
                error=wrong_with(shell, scene.wrong, field)
                test
            />
        }
    };
    let is_earlier = Memo::new(move |_| scene.draft.with(Draft::is_earlier));
    let earlier = move || {
        is_earlier.get().then(|| {
            view! {
                <DateField
                    label=words.text(|strings| strings.runs.guide.day)
                    value=value_of(scene, |draft| &mut draft.day)
                    on_input=Callback::new(move |typed| scene.edit(|draft| draft.day = typed))
                    hint=words.text(|strings| strings.runs.guide.day_hint)
                    error=wrong_with(shell, scene.wrong, Field::Day)
                    test="run-day"
                />
                <TimeField
                    label=words.text(|strings| strings.runs.guide.ended)
                    value=value_of(scene, |draft| &mut draft.ended)
                    on_input=Callback::new(move |typed| scene.edit(|draft| draft.ended = typed))
                    hint=words.text(|strings| strings.runs.guide.ended_hint)
                    error=wrong_with(shell, scene.wrong, Field::OutAt)
                    test="run-ended"
                />
            }
        })
    };
    view! {
        <Panel heading=words.text(|strings| strings.runs.guide.before) test="run-before">
            <Cooker scene />
            {number(guide.store, guide.store_hint.to_owned(), &degrees, |draft| &mut draft.store, Field::ReadingC, "run-store")}
            {number(guide.air, guide.air_hint.to_owned(), &degrees, |draft| &mut draft.air, Field::AirC, "run-air")}
            {heater}
            <TimeField
                label=words.text(|strings| strings.runs.guide.began)
                value=value_of(scene, |draft| &mut draft.at)
                on_input=Callback::new(move |typed| scene.edit(|draft| draft.at = typed))
                hint=words.text(|strings| strings.runs.guide.began_hint)
                error=wrong_with(shell, scene.wrong, Field::At)
                test="run-began"
            />
            {earlier}
            {line(|strings| strings.runs.guide.name, |draft| &mut draft.name, Field::Name, "run-name")}
            <TextArea
                label=words.text(|strings| strings.runs.guide.notes)
                value=value_of(scene, |draft| &mut draft.notes)
                on_input=Callback::new(move |typed| scene.edit(|draft| draft.notes = typed))
                error=wrong_with(shell, scene.wrong, Field::Notes)
                test="run-notes"
            />
        </Panel>
    }
}

fn value_of(scene: Scene, text: Text) -> Signal<String> {
    Signal::derive(move || scene.draft.with(|draft| text(&mut draft.clone()).clone()))
}

/// Which cooker is tested: asked where there are several, named where there is one.
#[component]
fn Cooker(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let options = shell.store.read(|document| {
        let cookers = document.cookers.iter();
        cookers
            .map(|owned| SelectOption {
                key: owned.id.0.to_string(),
                label: owned.name.clone(),
            })
            .collect::<Vec<_>>()
    });
    let several = options.with_untracked(|options| 1 < options.len());
    if !several {
        let name = options.with_untracked(|options| options.first().map(|of| of.label.clone()));
        let fact = Fact {
            label: untrack(|| shell.words.strings())
                .runs
                .guide
                .cooker
                .to_owned(),
            value: name.unwrap_or_default(),
            detail: String::new(),
            icon: None,
        };
        return view! { <FactList facts=Signal::from(vec![fact]) /> };
    }
    view! {
        <Select
            label=shell.words.text(|strings| strings.runs.guide.cooker)
            options
            picked=Signal::derive(move || scene.draft.with(|draft| draft.cooker.0.to_string()))
            on_pick=Callback::new(move |key: String| {
                if let Ok(id) = key.parse() {
                    scene.edit(|draft| draft.cooker = CookerId(id));
                }
            })
            test="run-cooker"
        />
    }
}
