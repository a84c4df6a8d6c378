//! The questions once a meal is over.

use crate::reactive::*;
use model::local_time::LocalTime;

use super::fields::TimeOfDayField;
use super::running::{Scene, Wrong};
use super::scene::say;
use crate::components::{ActionDock, Button, Icon, Panel, Tone};
use crate::present::tonight::running as present;
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
    let open =
        Memo::new(move |_| meal.with(|meal| meal.as_ref().map(|(_, meal)| present::open(meal))));
    let close = move |()| {
        // To put a meal away is never refused.
        let _ = shell.dispatch.run(Action::CloseMeal);
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
                    <DidNotBoil scene />
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
            let is_any = boiled.is_some() || done.is_some() || out.is_some();
            let why = is_any.then(|| {
                let why = scene.text(|strings| strings.tonight.running.after_why);
                view! { <p class="aside">{why}</p> }
            });
            view! { <div class="stack">{why} {boiled} {done} {out}</div> }
        })
    };
    view! {
        <Panel heading test="after-meal">
            {move || answered.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
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

/// It did not boil, by the time it came out.
#[component]
fn DidNotBoil(scene: Scene) -> impl IntoView {
    let is_open = Memo::new(move |_| {
        scene.meal.with(|meal| {
            meal.as_ref()
                .is_some_and(|(_, meal)| meal.outcome.not_boiled_by.is_none())
        })
    });
    let press = move |()| {
        let now = scene.shell.clock.now_untracked();
        let by = scene
            .meal
            .with_untracked(|meal| meal.as_ref().map(|(_, meal)| meal.leaves_at()));
        scene.see(Seen::NotBoiledBy(by.unwrap_or(now).min(now)));
    };
    move || {
        is_open.get().then(|| {
            view! {
                <Button
                    label=scene.text(|strings| strings.tonight.running.did_not_boil)
                    on_press=Callback::new(press)
                    icon=Icon::PotCold
                    test="did-not-boil"
                />
            }
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
            scene.see(seen(time.after(put_in.plus_s(-60))));
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
