//! The pot that goes in, its lid, and what is left of it as it comes out.

use crate::reactive::*;
use model::bench::PotIn;
use model::pot::{Lid, PotSize};

use super::Scene;
use super::entry::{keep, told_at};
use super::pot_change::PotList;
use crate::components::{
    Button, Fold, Icon, NumberField, NumberFieldText, Panel, Select, TimeField,
};
use crate::i18n::format::Sure;
use crate::i18n::strings::Strings;
use crate::present::bench::live as present;
use crate::present::bench::typing::{PotDraft, left, moved_at, out_at};
use crate::present::tonight::plan::{key_of, lids, pot_sizes, row_of};
use crate::present::typed::{Mistake, Steps, stepped};
use crate::screens::bench::frame::{say, wrong_with};
use crate::shell::focus_error;
use crate::shell::toasts::ToastAbout;
use crate::state::action::{Action, BenchAction};
use crate::state::limits;
use crate::state::refused::Field;

/// Weights are stepped by the glass. \[kg\]
const STEP_KG: f64 = 0.1;

/// A pot to put in, or the one that is in; only in runs that have pots.
#[component]
pub(super) fn Pots(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let has_pots = scene.run.with_untracked(|run| {
        use model::bench::RunKind;
        run.as_ref().is_some_and(|run| {
            matches!(run.about.kind, RunKind::Boil | RunKind::Free) || !run.pots.is_empty()
        })
    });
    let is_in = Memo::new(move |_| scene.with(|run| run.pot_open().is_some()) == Some(true));
    let form = move || {
        if is_in.get() {
            view! { <Out scene /> }
        } else {
            view! { <In scene /> }
        }
    };
    let is_over = is_over(scene);
    let has_none = scene
        .run
        .with_untracked(|run| run.as_ref().is_some_and(|run| run.pots.is_empty()));
    let forms = if is_over {
        view! {
            <Fold
                summary=words.text(|strings| strings.runs.live.from_paper)
                open=has_none
                test="pots-paper"
            >
                {form}
            </Fold>
        }
    } else {
        form.into_view()
    };
    has_pots.then(|| {
        view! {
            <Panel heading=words.text(|strings| strings.runs.live.pots) test="run-pots">
                <PotList scene />
                {forms}
            </Panel>
        }
    })
}

/// Whether what is told lies in the past; the page is drawn anew when it is not any more.
fn is_over(scene: Scene) -> bool {
    scene
        .run
        .with_untracked(|run| run.as_ref().is_some_and(|run| run.ended.is_some()))
}

/// The time of a pot in a run that is over follows what was read last, until a person writes another.
fn follow(scene: Scene, time: impl Fn() -> String + 'static, set: impl Fn(String) + 'static) {
    let mut before = untrack(&time);
    effect(move || {
        let next = scene.with(moved_at).unwrap_or_default();
        if untrack(&time) == before && next != before {
            set(next.clone());
        }
        before = next;
    });
}

/// When a pot went in or came out, for those who tell it later.
fn time(
    scene: Scene,
    label: fn(&Strings) -> &'static str,
    (value, on_input): (Signal<String>, Callback<String>),
    field: Field,
    test: &'static str,
) -> View {
    let words = scene.shell.words;
    let is_over = is_over(scene);
    let hint = if is_over {
        words.text(|strings| strings.runs.live.at_proposed)
    } else {
        words.text(|strings| strings.runs.live.at_hint)
    };
    let field = view! {
        <TimeField
            label=words.text(label)
            value
            on_input
            hint
            error=wrong_with(scene.shell, scene.wrong, field)
            test
        />
    };
    if is_over {
        return field;
    }
    view! { <Fold summary=words.text(|strings| strings.runs.live.earlier)>{field}</Fold> }
}

/// A number of a pot in litres or degrees.
pub(super) fn number(
    scene: Scene,
    (label, unit): (&str, String),
    hint: &str,
    (value, on_input): (Signal<String>, Callback<String>),
    steps: Steps,
    field: Field,
    test: &'static str,
) -> View {
    let strings = untrack(|| scene.shell.words.strings());
    let live = &strings.runs.live;
    let on_step = move |n_steps: i32| {
        let formats = scene.shell.words.formats().get_untracked();
        on_input.run(stepped(&formats, &value.get_untracked(), n_steps, steps));
    };
    view! {
        <NumberField
            text=NumberFieldText {
                label: label.to_owned(),
                unit: unit.trim().to_owned(),
                less: format!("{label}: {}", live.lower),
                more: format!("{label}: {}", live.higher),
                hint: hint.to_owned(),
            }
            value
            on_input
            on_step=Callback::new(on_step)
            error=wrong_with(scene.shell, scene.wrong, field)
            test
        />
    }
}

#[component]
fn In(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let strings = untrack(|| words.strings());
    let (live, units) = (&strings.runs.live, &strings.common.units);
    let formats = words.formats().get_untracked();
    let usual = shell.store.now_is(|document| {
        let run = document.bench.run(scene.id)?;
        let usual = document.cooker(run.cooker)?.cooker.pot;
        Some((usual, PotDraft::new(usual, run, &formats)))
    })?;
    let (usual, draft) = (usual.0, RwSignal::new(usual.1));
    follow(
        scene,
        move || draft.with(|draft| draft.at.clone()),
        move |at| draft.update(|draft| draft.at = at),
    );
    let put_in = move |()| {
        let now = shell.clock.now_untracked();
        let formats = words.formats().get_untracked();
        let before = scene.run.get_untracked().map(|run| run.pots);
        let before = before.unwrap_or_default();
        let read = scene.run.with_untracked(|run| {
            let run = run.as_ref()?;
            Some(draft.with_untracked(|draft| draft.read(&formats, run, now)))
        });
        let done = read.map(|pot| {
            pot.and_then(|pot| {
                let action = BenchAction::PutPotIn { run: scene.id, pot };
                let done = shell.dispatch.run(Action::Bench(action));
                done.map_err(Mistake::from)
            })
        });
        match done {
            Some(Ok(_)) => {
                let (run, pots) = (scene.id, before);
                let undo = Action::Bench(BenchAction::ChangePots { run, pots });
                shell.toasts.show(ToastAbout::PotIn, Some(undo));
            }
            Some(Err(mistake)) => {
                scene.wrong.set(Some(mistake));
                focus_error();
            }
            None => {}
        }
    };
    let (least_c, most_c) = limits::START_C;
    let degrees = formats.degrees;
    let warmth = Steps {
        by: 1.0,
        range: (degrees.from_c(least_c), degrees.from_c(most_c)),
        start: degrees.from_c(20.0),
    };
    let litres = Steps {
        by: STEP_KG,
        range: (limits::LEAST_WET_KG, limits::WATER_KG.1),
        start: 1.0,
    };
    let edit = move |text: fn(&mut PotDraft) -> &mut String| {
        Callback::new(move |typed| {
            draft.update(|draft| *text(draft) = typed);
            scene.wrong.set(None);
        })
    };
    Some(view! {
        <div class="fields">
            {number(
                scene,
                (live.water, (units.litres)("")),
                "",
                (
                    Signal::derive(move || draft.with(|draft| draft.water.clone())),
                    edit(|draft| &mut draft.water),
                ),
                litres,
                Field::WaterKg,
                "pot-water",
            )}
            {number(
                scene,
                (live.start, (units.degrees)("", degrees)),
                "",
                (
                    Signal::derive(move || draft.with(|draft| draft.start.clone())),
                    edit(|draft| &mut draft.start),
                ),
                warmth,
                Field::StartC,
                "pot-start",
            )}
            <Select
                label=words.text(|strings| strings.tonight.plan.pot)
                options=Memo::new(move |_| say(shell, |voice| pot_sizes(voice, usual)))
                picked=Signal::derive(move || draft.with(|draft| key_of(&PotSize::ALL, &draft.pot.size)))
                on_pick=Callback::new(move |key: String| {
                    if let Some(size) = row_of(&PotSize::ALL, &key) {
                        draft.update(|draft| draft.resize(size));
                    }
                })
                test="pot-size"
            />
            <Select
                label=words.text(|strings| strings.tonight.plan.lid)
                options=Memo::new(move |_| say(shell, lids))
                picked=Signal::derive(move || draft.with(|draft| key_of(&Lid::ALL, &draft.lid)))
                on_pick=Callback::new(move |key: String| {
                    if let Some(lid) = row_of(&Lid::ALL, &key) {
                        draft.update(|draft| draft.lid = lid);
                    }
                })
                test="pot-lid"
            />
        </div>
        {time(
            scene,
            |strings| strings.runs.live.went_in,
            (
                Signal::derive(move || draft.with(|draft| draft.at.clone())),
                edit(|draft| &mut draft.at),
            ),
            Field::PutIn,
            "pot-in-at",
        )}
        <Button
            label=Signal::derive(move || {
                let live = &words.strings().runs.live;
                let is_now = draft.with(|draft| draft.at.trim().is_empty());
                if is_now { live.put_in } else { live.was_put_in }.to_owned()
            })
            on_press=Callback::new(put_in)
            icon=Icon::PotSteams
            test="pot-put-in"
        />
    })
}

#[component]
fn Out(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let words = shell.words;
    let strings = untrack(|| words.strings());
    let (live, units) = (&strings.runs.live, &strings.common.units);
    let weighed = RwSignal::new(String::new());
    let out = scene
        .run
        .with_untracked(|run| run.as_ref().map(moved_at).unwrap_or_default());
    let out = RwSignal::new(out);
    follow(scene, move || out.get(), move |at| out.set(at));
    let pot = move || scene.run.with(|run| run.as_ref()?.pot_open().copied());
    let take_out = move |()| {
        let Some(pot) = untrack(pot) else { return };
        let now = shell.clock.now_untracked();
        let at = scene.run.with_untracked(|run| {
            let run = run.as_ref()?;
            Some(out_at(&out.get_untracked(), run, now))
        });
        let Some(at) = at else { return };
        let left_kg = left(&weighed.get_untracked(), &pot);
        let done = at
            .and_then(|at| Ok((at, left_kg?)))
            .and_then(|(at, left_kg)| {
                let action = BenchAction::TakePotOut {
                    run: scene.id,
                    at,
                    left_kg,
                };
                let done = shell.dispatch.run(Action::Bench(action));
                done.map_err(Mistake::from)
            });
        if let Err(mistake) = done {
            scene.wrong.set(Some(mistake));
            focus_error();
        }
    };
    let relid = move |lid: Lid| {
        let pots = scene.run.with_untracked(|run| {
            let mut pots = run.as_ref()?.pots.clone();
            pots.last_mut()?.lid = lid;
            Some(pots)
        });
        if let Some(pots) = pots {
            let run = scene.id;
            scene.act(BenchAction::ChangePots { run, pots });
        }
    };
    let most_kg = untrack(pot).map_or(limits::WATER_KG.1, |pot: PotIn| pot.water_kg);
    let litres = Steps {
        by: STEP_KG,
        range: (0.0, most_kg),
        start: most_kg,
    };
    let boiling_c = scene.boiling_c();
    let is_over = is_over(scene);
    let boils = move |()| {
        let Some(boiling_c) = boiling_c.get_untracked() else {
            return;
        };
        let now = shell.clock.now_untracked();
        // In a run that is over it boiled when the reading says that is about to be written down.
        let at = if is_over {
            untrack(|| told_at(scene))
        } else {
            Some(now)
        };
        if let Some(at) = at {
            keep(scene, Ok(present::boils(boiling_c, at)));
        }
    };
    let boils_label = Signal::derive(move || {
        let at = if is_over { told_at(scene) } else { None };
        say(shell, |voice| {
            let live = &voice.strings.runs.live;
            let at = at.map(|at| voice.time(at, Sure::Known));
            at.map_or_else(|| live.boils.to_owned(), |at| (live.boiled_at)(&at))
        })
    });
    let can_boil = Memo::new(move |_| !is_over || told_at(scene).is_some());
    let boils_button = move || {
        boiling_c.get().filter(|_| can_boil.get()).map(|boiling_c| {
            let at = say(shell, |voice| {
                let degrees = voice.formats.temperature(boiling_c, Sure::Known);
                (voice.strings.runs.live.boils_hint)(&degrees)
            });
            view! {
                <Button
                    label=boils_label
                    on_press=Callback::new(boils)
                    icon=Icon::PotBoils
                    test="pot-boils"
                />
                <p class="field__hint">{at}</p>
            }
        })
    };
    view! {
        {boils_button}
        <Select
            label=words.text(|strings| strings.tonight.plan.lid)
            options=Memo::new(move |_| say(shell, lids))
            picked=Signal::derive(move || {
                pot().map(|pot| key_of(&Lid::ALL, &pot.lid)).unwrap_or_default()
            })
            on_pick=Callback::new(move |key: String| {
                if let Some(lid) = row_of(&Lid::ALL, &key) {
                    relid(lid);
                }
            })
            test="pot-lid-now"
        />
        {number(
            scene,
            (live.left_label, (units.litres)("")),
            live.left_hint,
            (
                weighed.into(),
                Callback::new(move |typed| {
                    weighed.set(typed);
                    scene.wrong.set(None);
                }),
            ),
            litres,
            Field::LeftKg,
            "pot-left",
        )}
        {time(
            scene,
            |strings| strings.runs.live.came_out,
            (
                out.into(),
                Callback::new(move |typed| {
                    out.set(typed);
                    scene.wrong.set(None);
                }),
            ),
            Field::OutAt,
            "pot-out-at",
        )}
        <Button
            label=Signal::derive(move || {
                let live = &words.strings().runs.live;
                let is_now = out.with(|out| out.trim().is_empty());
                if is_now { live.take_out } else { live.was_taken_out }.to_owned()
            })
            on_press=Callback::new(take_out)
            icon=Icon::Tick
            test="pot-take-out"
        />
    }
}

/// The pots of a run whose readings came as a text: they were told as it was read in, and can be
/// changed.
#[component]
pub(super) fn PotsOfText(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let has_any = scene
        .run
        .with_untracked(|run| run.as_ref().is_some_and(|run| !run.pots.is_empty()));
    has_any.then(|| {
        view! {
            <Panel heading=words.text(|strings| strings.runs.live.pots) test="run-pots">
                <PotList scene />
            </Panel>
        }
    })
}
