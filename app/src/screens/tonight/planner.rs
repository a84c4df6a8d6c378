//! The plan and its answer.

use crate::reactive::*;
use model::tonight::Verdict as Found;

use super::answers::{Care, Course, Helps, WhereHeatGoes, Worn};
use super::further::HowSure;
use super::running::Danger;
use super::scene::{Asked, Scene, say};
use super::store::StoreNow;
use super::what::What;
use crate::components::{ActionDock, Button, EmptyNote, Icon, LinkButton, Tone, Verdict};
use crate::i18n::refusal::refusal;
use crate::present::tonight::care::{CareView, unsafe_beans};
use crate::present::tonight::verdict::{
    is_good_enough, is_worth_starting, refused, verdict, verdict_by_odds,
};
use crate::shell::toasts::ToastAbout;
use crate::shell::{begin_screen, use_shell};
use crate::state::action::{Action, Done};
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
    let dish = Memo::new(move |_| Some(scene.plan.with(|plan| plan.dish)));
    let danger = Memo::new(move |_| danger(scene));
    view! {
        <div class="screen__body">
            {move || {
                if can_answer.get() {
                    view! { <TheAnswer scene danger /> }
                } else {
                    view! { <NoAnswer scene /> }
                }
            }}
            <What scene />
            <Helps scene />
            <HowSure scene />
            <StoreNow />
            <Care dish cooker=scene.cooker />
            <Worn scene />
            <Course scene />
            <WhereHeatGoes scene />
            <StartDock scene danger />
        </div>
    }
}

/// What can make ill of a pot that is not good enough to plan on.
fn danger(scene: Scene) -> Option<CareView> {
    scene.asked.with(|asked| {
        let Asked::Answered(question, answer) = asked else {
            return None;
        };
        let is_sure = match scene.odds.get() {
            Some(odds) => is_good_enough(&odds),
            None => answer.verdict == Found::Yes,
        };
        let meal = &question.meal;
        (!is_sure)
            .then(|| say(scene.shell, |voice| unsafe_beans(voice, meal)))
            .flatten()
    })
}

/// The verdict. While there is none, the part is not shown at all.
#[component]
fn TheAnswer(scene: Scene, danger: Memo<Option<CareView>>) -> impl IntoView {
    let shell = scene.shell;
    let shown = Memo::new(move |_| {
        scene.asked.with(|asked| match asked {
            Asked::Answered(question, answer) => {
                let (odds, latest) = (scene.odds.get(), scene.latest());
                Some(say(shell, |voice| match odds {
                    Some(odds) => verdict_by_odds(voice, question, answer, &odds, latest),
                    None => verdict(voice, question, answer, latest.flatten()),
                }))
            }
            Asked::Refused(_, why) => Some(say(shell, |voice| refused(voice, *why))),
            Asked::Nothing | Asked::NoEstimate => None,
        })
    });
    let first = shown.get_untracked()?;
    let view = Signal::derive(move || shown.get().unwrap_or_else(|| first.clone()));
    Some(view! {
        <Verdict view is_first=scene.is_first test="verdict">
            <Danger danger=Signal::derive(move || danger.get()) />
            <SunWanted scene />
        </Verdict>
    })
}

/// Leads to the diary where today's sun is not logged, which the answer hangs on most.
#[component]
fn SunWanted(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let is_wanted = Memo::new(move |_| {
        scene
            .asked
            .with(|asked| matches!(asked, Asked::Answered(question, _) if question.lacks_sun))
    });
    move || {
        is_wanted.get().then(|| {
            view! {
                <LinkButton
                    href=Route::Diary(None).hash()
                    label=words.text(|strings| strings.tonight.store.log_sky)
                    icon=Icon::SunBroken
                    test="verdict-log-sky"
                />
            }
        })
    }
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

/// A pot that goes in later than this is not for now. \[s\]
const SOON_S: i64 = 45 * 60;

/// The main button: the pot goes in.
#[component]
fn StartDock(scene: Scene, danger: Memo<Option<CareView>>) -> impl IntoView {
    let shell = scene.shell;
    let wrong = RwSignal::new(None::<Refused>);
    let on_press = Callback::new(move |()| wrong.set(start(scene).err()));
    // What is not for now, will not do, or may make ill is no main thing to do.
    let is_main = Memo::new(move |_| {
        let now = shell.clock.now().get();
        scene.asked.with(|asked| match asked {
            Asked::Answered(question, answer) => {
                let will_do = match scene.odds.get() {
                    Some(odds) => is_worth_starting(&odds),
                    None => {
                        let eat_at = question.meal.eat_at;
                        answer.verdict != Found::No && !answer.as_told.is_spoilt_by(eat_at)
                    }
                };
                let is_safe = danger.with(Option::is_none);
                will_do && is_safe && question.put_in.since_s(now) <= SOON_S
            }
            Asked::Nothing | Asked::NoEstimate | Asked::Refused(..) => false,
        })
    });
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
            {move || {
                let tone = if is_main.get() { Tone::Primary } else { Tone::Quiet };
                view! {
                    <Button
                        label=shell.words.text(|strings| strings.tonight.plan.start_meal)
                        on_press
                        tone
                        icon=Icon::Tonight
                        test="start-meal"
                    />
                }
            }}
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
    // It goes in as the button is pressed, whenever it was to.
    let mut meal = plan.meal(usual, scene.air_c.get_untracked(), now);
    meal.eat_at = plan.eat.after(now);
    let done = shell.dispatch.run(Action::StartMeal { at: now, meal })?;
    if let Done::AddedEntry(id) = done {
        let undo = Some(Action::EraseEntry(id));
        shell.toasts.show(ToastAbout::PotIn, undo);
    }
    begin_screen();
    Ok(())
}
