//! The questions once a meal is over.

use crate::reactive::*;
use model::journal::Outcome;
use model::local_time::LocalTime;

use super::fields::TimeOfDayField;
use super::running::{Danger, Scene, Wrong};
use super::scene::say;
use crate::components::{ActionDock, Button, Icon, Panel, Tone};
use crate::i18n::strings::Strings;
use crate::present::tonight::running as present;
use crate::shell::begin_screen;
use crate::state::action::{Action, Seen};
use crate::state::plan::TimeOfDay;

/// The questions once the meal is over.
#[component]
pub(super) fn After(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let meal = scene.meal;
    let heading = Signal::derive(move || {
        meal.with(|meal| {
            meal.as_ref()
                .map(|(_, meal)| say(shell, |voice| present::after_heading(voice, meal)))
        })
        .unwrap_or_default()
    });
    let answered = Memo::new(move |_| {
        meal.with(|meal| {
            meal.as_ref()
                .map(|(_, meal)| say(shell, |voice| present::answered(voice, meal)))
        })
        .unwrap_or_default()
    });
    let danger = Memo::new(move |_| {
        meal.with(|meal| {
            let (_, meal) = meal.as_ref()?;
            say(shell, |voice| present::after_danger(voice, meal))
        })
    });
    let open =
        Memo::new(move |_| meal.with(|meal| meal.as_ref().map(|(_, meal)| present::open(meal))));
    let close = move |()| {
        // The next plan begins with the hour at which this one was carried out.
        let put_in = meal.with_untracked(|meal| meal.as_ref().map(|(at, _)| TimeOfDay::of(*at)));
        let plan = shell.store.now_is(|document| document.plan.clone());
        if let (Some(mut plan), Some(put_in)) = (plan, put_in) {
            plan.put_in = Some(put_in);
            // A plan is never refused, nor is to put a meal away.
            let _ = shell.dispatch.run(Action::ChangePlan(plan));
        }
        let _ = shell.dispatch.run(Action::CloseMeal);
        begin_screen();
    };
    let questions = move || {
        open.get().map(|open| {
            let boiled = open.boiled.then(|| {
                view! {
                    <TimeQuestion
                        scene
                        label=scene.text(|strings| strings.tonight.running.when_boiled)
                        seen=Seen::BoiledAt
                        test="boiled-at"
                    />
                    <Not
                        scene
                        label=|strings| strings.tonight.running.did_not_boil
                        seen=Seen::NotBoiledBy
                        is_told=|outcome| outcome.not_boiled_by.is_some()
                        icon=Icon::PotCold
                        test="did-not-boil"
                    />
                }
            });
            let done = open.done.then(|| {
                view! {
                    <TimeQuestion
                        scene
                        label=scene.text(|strings| strings.tonight.running.when_done)
                        seen=Seen::DoneAt
                        test="done-at"
                    />
                    <Not
                        scene
                        label=|strings| strings.tonight.running.was_not_done
                        seen=Seen::NotDoneBy
                        is_told=|outcome| outcome.not_done_by.is_some()
                        icon=Icon::Bowl
                        test="was-not-done"
                    />
                }
            });
            let out = open.out.then(|| {
                view! {
                    <TimeQuestion
                        scene
                        label=scene.text(|strings| strings.tonight.running.when_out)
                        seen=Seen::TakenOutAt
                        test="out-at"
                    />
                }
            });
            let why = open.is_any().then(|| {
                let why = scene.text(|strings| strings.tonight.running.after_why);
                view! { <p class="aside">{why}</p> }
            });
            view! { <div class="stack">{why} {boiled} {done} {out}</div> }
        })
    };
    view! {
        <Panel heading test="after-meal">
            {move || answered.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            <Danger danger=Signal::derive(move || danger.get()) />
            {questions}
            <Wrong scene />
        </Panel>
        <ActionDock>
            <Button
                label=scene.text(|strings| strings.tonight.running.plan_next)
                on_press=Callback::new(close)
                tone=Tone::Primary
                icon=Icon::Tonight
                test="plan-next"
            />
        </ActionDock>
    }
}

/// It did not come to it, by the time the pot came out.
#[component]
fn Not(
    scene: Scene,
    label: fn(&Strings) -> &'static str,
    seen: fn(LocalTime) -> Seen,
    /// Whether it was told already.
    is_told: fn(&Outcome) -> bool,
    icon: Icon,
    test: &'static str,
) -> impl IntoView {
    let is_open = Memo::new(move |_| {
        scene.meal.with(|meal| {
            meal.as_ref()
                .is_some_and(|(_, meal)| !is_told(&meal.outcome))
        })
    });
    let press = Callback::new(move |()| {
        let now = scene.shell.clock.now_untracked();
        let by = scene
            .meal
            .with_untracked(|meal| meal.as_ref().map(|(_, meal)| meal.leaves_at()));
        scene.see(seen(by.unwrap_or(now).min(now)));
    });
    move || {
        is_open.get().then(|| {
            view! { <Button label=scene.text(label) on_press=press icon test /> }
        })
    }
}

/// A time that can be told afterwards, kept by its button.
#[component]
fn TimeQuestion(
    scene: Scene,
    #[prop(into)] label: Signal<String>,
    seen: fn(LocalTime) -> Seen,
    test: &'static str,
) -> impl IntoView {
    let time = RwSignal::new(None::<TimeOfDay>);
    let keep = move |()| {
        let put_in = scene
            .meal
            .with_untracked(|meal| meal.as_ref().map(|(at, _)| *at));
        if let (Some(time), Some(put_in)) = (time.get_untracked(), put_in) {
            scene.see(seen(time.since(put_in)));
        }
    };
    view! {
        <div class="tonight-time">
            <TimeOfDayField
                label
                current=time
                apply=Callback::new(move |told| time.set(Some(told)))
                test
            />
            <Button
                label=scene.text(|strings| strings.tonight.running.keep)
                on_press=Callback::new(keep)
                disabled=Signal::derive(move || time.get().is_none())
                icon=Icon::Keep
            />
        </div>
    }
}
