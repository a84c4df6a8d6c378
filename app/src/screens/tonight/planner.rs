//! The plan and its answer.

use crate::reactive::*;

use super::answers::{Care, Course, Helps, WhereHeatGoes, Worn};
use super::scene::{Asked, Scene, say};
use super::store::StoreNow;
use super::what::What;
use crate::components::{ActionDock, Button, EmptyNote, Icon, LinkButton, Tone, Verdict};
use crate::i18n::refusal::refusal;
use crate::present::tonight::verdict::{refused, verdict};
use crate::shell::use_shell;
use crate::state::action::Action;
use crate::state::plan::TimeOfDay;
use crate::state::refused::Refused;
use crate::state::route::Route;

/// Everything of an evening that has not begun.
#[component]
pub(super) fn Planner() -> impl IntoView {
    let scene = Scene::new(use_shell());
    let can_answer = Memo::new(move |_| {
        scene
            .asked
            .with(|asked| matches!(asked, Asked::Answered(..) | Asked::Refused(..)))
    });
    view! {
        <div class="screen__body">
            {move || {
                if can_answer.get() {
                    view! { <TheAnswer scene /> }
                } else {
                    view! { <NoAnswer scene /> }
                }
            }}
            <What scene />
            <Helps scene />
            <StoreNow />
            <Care scene />
            <Worn scene />
            <Course scene />
            <WhereHeatGoes scene />
            <StartDock scene />
        </div>
    }
}

/// The verdict. While there is none, the part is not shown at all.
#[component]
fn TheAnswer(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let shown = Memo::new(move |_| {
        scene.asked.with(|asked| match asked {
            Asked::Answered(question, answer) => {
                Some(say(shell, |voice| verdict(voice, question, answer)))
            }
            Asked::Refused(_, why) => Some(say(shell, |voice| refused(voice, *why))),
            Asked::Nothing | Asked::NoEstimate => None,
        })
    });
    let first = shown.get_untracked()?;
    let view = Signal::derive(move || shown.get().unwrap_or_else(|| first.clone()));
    Some(view! { <Verdict view test="verdict" /> })
}

/// What stands where the verdict would, when nothing can be worked out.
#[component]
fn NoAnswer(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let cooker = Route::Cooker(None).hash();
    view! {
        <EmptyNote icon=Icon::PotCold text=words.text(|strings| strings.tonight.no_estimate)>
            <LinkButton
                href=cooker
                label=words.text(|strings| strings.tonight.to_cooker)
                icon=Icon::Cooker
                test="to-cooker"
            />
        </EmptyNote>
    }
}

/// The main button: the pot goes in.
#[component]
fn StartDock(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let wrong = RwSignal::new(None::<Refused>);
    let on_press = move |()| wrong.set(start(scene).err());
    let error = move || {
        let refused = wrong.get()?;
        let said = say(shell, |voice| {
            refusal(voice.strings, voice.formats, refused, voice.now.day())
        });
        Some(view! { <p class="field__error" role="alert">{said}</p> })
    };
    view! {
        {error}
        <ActionDock>
            <Button
                label=shell.words.text(|strings| strings.tonight.plan.start_meal)
                on_press=Callback::new(on_press)
                tone=Tone::Primary
                icon=Icon::Tonight
                test="start-meal"
            />
        </ActionDock>
    }
}

/// Starts the meal that is planned.
fn start(scene: Scene) -> Result<(), Refused> {
    let shell = scene.shell;
    let now = shell.clock.now_untracked();
    let Some(usual) = scene
        .cooker
        .with_untracked(|cooker| cooker.as_ref().map(|cooker| cooker.pot))
    else {
        return Ok(());
    };
    let plan = scene.plan.get_untracked();
    let at = plan.started_at(now);
    let mut meal = plan.meal(usual, scene.air_c.get_untracked(), at);
    meal.eat_at = plan.eat.after(at);
    shell.dispatch.run(Action::StartMeal { at, meal })?;
    // The next plan begins with the hour at which this one was carried out.
    scene.change(|plan| plan.put_in = Some(TimeOfDay::of(at)));
    Ok(())
}
