//! What the answer rests on: what would help, the cautions, the plot, where the heat goes.

use crate::reactive::*;

use super::scene::{Asked, Scene, say};
use crate::chart::{HeatBar, LineChart};
use crate::components::{Button, Caution, CautionLevel, Fold, Icon, Panel};
use crate::present::tonight::care::{CareView, care};
use crate::present::tonight::course::{banded, course, times};
use crate::present::tonight::heat::heat;
use crate::present::tonight::help::HelpView;
use crate::present::tonight::verdict::is_good_enough;
use crate::present::wear;
use crate::shell::toasts::ToastAbout;
use crate::shell::{Shell, use_shell};
use crate::state::action::{Action, Done};
use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::What;
use model::tonight::Verdict;

/// Below these odds, and with nothing that helps, there is no hope.
const HOPELESS: f64 = 0.4;

/// Notes what was done just now, with the way to take it back.
fn note(shell: Shell, what: What) {
    let at = shell.clock.now_untracked();
    // What is offered is within what may be noted; only a full diary refuses it.
    if let Ok(Done::AddedEntry(id)) = shell.dispatch.run(Action::AddEntry { at, what }) {
        let undo = Some(Action::EraseEntry(id));
        shell.toasts.show(ToastAbout::Noted, undo);
    }
}

/// What would help, each with a button that does it to the plan.
#[component]
pub(super) fn Helps(scene: Scene) -> impl IntoView {
    let words = scene.shell.words;
    let drawn = scene.drawn;
    let is_needed = Memo::new(move |_| {
        drawn.with(|drawn| match drawn {
            (Asked::Answered(..), Some(odds)) => !is_good_enough(odds),
            (Asked::Answered(_, answer), None) => answer.verdict != Verdict::Yes,
            (Asked::Refused(..), _) => true,
            (Asked::Nothing | Asked::NoEstimate, _) => false,
        })
    });
    let is_hopeless = Memo::new(move |_| {
        scene.helps.with(|helps| helps.views.is_empty())
            && drawn.with(|drawn| match drawn {
                (Asked::Answered(..), Some(odds)) => {
                    odds.p_done < HOPELESS && scene.found.with(Option::is_some)
                }
                (Asked::Answered(_, answer), None) => answer.verdict <= Verdict::Doubtful,
                _ => false,
            })
    });
    let is_looked_for = Memo::new(move |_| {
        drawn.with(|(_, odds)| odds.is_some()) && scene.found.with(Option::is_none)
    });
    let line = move |help: HelpView| {
        let HelpView {
            sentence,
            button,
            plan,
            noted,
        } = help;
        let press = move |()| match noted.clone() {
            Some(what) => note(scene.shell, what),
            None => scene.replace(plan.clone()),
        };
        view! {
            <li class="tonight-help__line">
                <p>{sentence}</p>
                <Button
                    label=button
                    on_press=Callback::new(press)
                    test="help-apply"
                />
            </li>
        }
    };
    let is_shown = move || {
        let is_any = is_looked_for.get() || is_hopeless.get();
        is_needed.get() && (is_any || scene.helps.with(|helps| !helps.views.is_empty()))
    };
    let is_only_likelier = Memo::new(move |_| {
        scene
            .helps
            .with(|helps| helps.reach != Verdict::Yes && !helps.views.is_empty())
    });
    move || {
        is_shown().then(|| {
            view! {
                <Panel heading=words.text(|strings| strings.tonight.help.heading) test="help">
                    {move || {
                        is_looked_for
                            .get()
                            .then(|| view! { <p class="aside">{words.text(|strings| strings.tonight.help.looking)}</p> })
                    }}
                    {move || {
                        is_hopeless
                            .get()
                            .then(|| view! { <p>{words.text(|strings| strings.tonight.help.nothing)}</p> })
                    }}
                    {move || {
                        is_only_likelier
                            .get()
                            .then(|| view! { <p>{words.text(|strings| strings.tonight.help.likelier)}</p> })
                    }}
                    <ul class="tonight-help">
                        {move || scene.helps.get().views.into_iter().map(line).collect_view()}
                    </ul>
                </Panel>
            }
        })
    }
}

/// The cautions: the worst in sight, the rest in a fold.
#[component]
pub(super) fn Care(
    /// What is cooked.
    dish: Memo<Option<Dish>>,
    /// On what.
    cooker: Memo<Option<Cooker>>,
) -> impl IntoView {
    let shell = use_shell();
    let views = Memo::new(move |_| {
        let store = shell.estimates.store_now().get()?.ok()?;
        let dish = dish.get()?;
        cooker.with(|cooker| {
            let cooker = cooker.as_ref()?;
            Some(say(shell, |voice| care(voice, dish, cooker, &store)))
        })
    });
    let line = |view: CareView| {
        let CareView {
            level,
            icon,
            word,
            text,
        } = view;
        view! { <Caution level icon word text test="caution" /> }
    };
    let words = shell.words;
    move || {
        let mut first = views.get().unwrap_or_default();
        if first.is_empty() {
            return None;
        }
        let rest = first.split_off(first.len().min(IN_SIGHT));
        let rest = (!rest.is_empty()).then(|| {
            view! {
                <Fold summary=words.text(|strings| strings.tonight.care.more) test="more-cautions">
                    {rest.into_iter().map(line).collect_view()}
                </Fold>
            }
        });
        Some(view! {
            <Panel heading=words.text(|strings| strings.tonight.care.heading) test="care">
                {first.into_iter().map(line).collect_view()}
                {rest}
            </Panel>
        })
    }
}

/// The wear of the store, where a pot like this will soon no longer boil on it.
#[component]
pub(super) fn Worn(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let line = Memo::new(move |_| {
        let evening = shell.estimates.evening().get()?.ok()?;
        scene.drawn.with(|(asked, _)| match asked {
            Asked::Answered(question, _) => {
                let last = evening.last_boil(&question.meal, question.put_in).ok()?;
                say(shell, |voice| {
                    wear::in_time(voice.strings, voice.formats, last, voice.now.day())
                })
            }
            Asked::Refused(..) | Asked::Nothing | Asked::NoEstimate => None,
        })
    });
    let words = shell.words;
    move || {
        line.get().map(|text| {
            view! {
                <Panel heading=words.text(|strings| strings.cooker.ways.wear_heading) test="wear">
                    <Caution
                        level=CautionLevel::Warning
                        icon=Icon::Thermometer
                        word=words.text(|strings| strings.safety.warning)
                        text
                        test="wear-line"
                    />
                </Panel>
            }
        })
    }
}

/// Cautions that are seen without opening anything.
const IN_SIGHT: usize = 2;

/// The plot of the evening.
#[component]
pub(super) fn Course(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let view = Memo::new(move |_| {
        scene.drawn.with(|(asked, odds)| match asked {
            Asked::Answered(question, answer) => say(shell, |voice| {
                let by_odds = odds.as_ref().and_then(|odds| {
                    let belief = shell.estimates.belief().get_untracked()?;
                    let times = times(question, answer, voice.now)?;
                    let bands = belief.course(&question.meal, question.put_in, times.into_iter());
                    banded(voice, question, odds, &bands)
                });
                by_odds.or_else(|| course(voice, question, answer))
            }),
            Asked::Refused(..) | Asked::Nothing | Asked::NoEstimate => None,
        })
    });
    let is_shown = Memo::new(move |_| view.with(Option::is_some));
    let y_text = move |tick: f64| {
        shell
            .words
            .formats()
            .with(|formats| formats.number(tick, 0))
    };
    move || {
        let first = is_shown.get().then(|| view.get_untracked())??;
        let view = Signal::derive(move || view.get().unwrap_or_else(|| first.clone()));
        Some(view! {
            <Panel heading=shell.words.text(|strings| strings.tonight.course.heading) test="course">
                <LineChart view y_text=Callback::new(y_text) test="course-chart" />
            </Panel>
        })
    }
}

/// Where the heat goes while the pot is in.
#[component]
pub(super) fn WhereHeatGoes(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let view = Memo::new(move |_| {
        scene.drawn.with(|(asked, _)| match asked {
            Asked::Answered(_, answer) => {
                Some(say(shell, |voice| heat(voice, &answer.as_told.account)))
            }
            Asked::Refused(..) | Asked::Nothing | Asked::NoEstimate => None,
        })
    });
    let is_shown = Memo::new(move |_| view.with(Option::is_some));
    move || {
        let first = is_shown.get().then(|| view.get_untracked())??;
        let view = Signal::derive(move || view.get().unwrap_or_else(|| first.clone()));
        Some(view! {
            <Panel heading=shell.words.text(|strings| strings.tonight.heat.heading) test="heat">
                <HeatBar view test="heat-bar" />
            </Panel>
        })
    }
}
