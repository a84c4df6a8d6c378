//! A meal that is in the cooker, and the questions about it.

use crate::reactive::*;
use model::cooker::Cooker;
use model::journal::{Meal, What};
use model::local_time::LocalTime;
use model::odds::Odds;
use model::tonight::Answer;

use super::after::After;
use super::answers::Care;
use super::scene::say;
use super::store::StoreNow;
use crate::chart::{HeatBar, LineChart};
use crate::components::{ActionDock, Button, Caution, ClockLine, Icon, Panel, Tone};
use crate::i18n::format::Sure;
use crate::i18n::refusal::refusal;
use crate::i18n::strings::Strings;
use crate::present::tonight::care::CareView;
use crate::present::tonight::course::{banded, course, times};
use crate::present::tonight::heat::heat;
use crate::present::tonight::running::{self as present, RunningView};
use crate::present::tonight::store::store_sure;
use crate::present::tonight::verdict::Question;
use crate::shell::toasts::ToastAbout;
use crate::shell::{Shell, begin_screen, use_shell};
use crate::state::action::{Action, Seen};
use crate::state::document::Entry;
use crate::state::ids::EntryId;
use crate::state::refused::Refused;

/// The meal and what is known of it. Copies stand for the same one.
#[derive(Clone, Copy)]
pub(super) struct Scene {
    pub(super) shell: Shell,
    id: EntryId,
    pub(super) meal: Memo<Option<(LocalTime, Meal)>>,
    /// The cooker it is in.
    cooker: Memo<Option<Cooker>>,
    asked: Memo<Option<(Question, Option<Answer>)>>,
    odds: Memo<Option<Odds>>,
    wrong: RwSignal<Option<Refused>>,
}

impl Scene {
    fn new(shell: Shell, id: EntryId) -> Self {
        let meal = shell.store.read(move |document| {
            document.entry(id).and_then(|entry| match &entry.what {
                What::Meal(meal) => Some((entry.at, meal.clone())),
                What::Reading { .. }
                | What::Felt(_)
                | What::LidOpen { .. }
                | What::HeaterOff { .. }
                | What::TopUp { .. } => None,
            })
        });
        let asked = Memo::new(move |_| {
            let (put_in, meal) = meal.get()?;
            let evening = shell.estimates.running().get()?.ok();
            let boiling_c = evening
                .as_ref()
                .and_then(|evening| evening.rig().boiling_c().ok())
                .unwrap_or(100.0);
            let answer = evening
                .as_ref()
                .and_then(|evening| evening.ask(&meal, put_in).ok());
            let store = evening.as_ref().and_then(|evening| evening.store().ok());
            let question = Question {
                store_sure: store.as_ref().map_or(Sure::Rough, store_sure),
                meal,
                put_in,
                is_in: true,
                boiling_c,
                sky_is_logged: true,
                lacks_sun: false,
            };
            Some((question, answer))
        });
        let is_of_cooker_in_use = shell.store.read(move |document| {
            let cooker = document.entry(id).map(|entry| entry.cooker);
            cooker.is_some() && cooker == document.in_use
        });
        let odds = Memo::new(move |_| {
            let belief = shell.estimates.belief().get()?;
            belief.running().filter(|_| is_of_cooker_in_use.get())
        });
        let cooker = shell.store.read(move |document| {
            let owned = document.cooker(document.entry(id)?.cooker)?;
            Some(owned.cooker.clone())
        });
        Self {
            shell,
            id,
            meal,
            cooker,
            asked,
            odds,
            wrong: RwSignal::new(None),
        }
    }

    /// Tells what was seen, with the way to take it back.
    pub(super) fn see(&self, seen: Seen) {
        let before = self
            .shell
            .store
            .now_is(|document| document.entry(self.id).cloned());
        let id = self.id;
        match self.shell.dispatch.run(Action::SeeMeal { id, seen }) {
            Ok(_) => {
                self.wrong.set(None);
                if matches!(seen, Seen::TakenOutAt(_)) {
                    begin_screen();
                }
                let undo =
                    before.map(|Entry { id, at, what, .. }| Action::ChangeEntry { id, at, what });
                self.shell.toasts.show(ToastAbout::Noted, undo);
            }
            Err(refused) => self.wrong.set(Some(refused)),
        }
    }

    fn see_now(&self, seen: fn(LocalTime) -> Seen) {
        self.see(seen(self.shell.clock.now_untracked()));
    }

    pub(super) fn text(&self, pick: fn(&Strings) -> &'static str) -> Signal<String> {
        self.shell.words.text(pick)
    }
}

/// The running meal; once it is over, the questions about it.
#[component]
pub(super) fn Running(id: EntryId) -> impl IntoView {
    let shell = use_shell();
    let scene = Scene::new(shell, id);
    let now = shell.clock.now();
    let is_over = Memo::new(move |_| {
        scene.meal.with(|meal| {
            meal.as_ref()
                .is_some_and(|(_, meal)| present::is_over(meal, now.get()))
        })
    });
    view! {
        <div class="screen__body">
            {move || {
                if is_over.get() {
                    view! { <After scene /> }
                } else {
                    view! { <InTheCooker scene /> }
                }
            }}
        </div>
    }
}

/// What can make ill, told at once.
#[component]
pub(super) fn Danger(danger: Signal<Option<CareView>>) -> impl IntoView {
    view! {
        <div role="alert">
            {move || {
                danger
                    .get()
                    .map(|CareView { level, icon, word, text }| {
                        view! { <Caution level icon word text test="meal-danger" /> }
                    })
            }}
        </div>
    }
}

/// What was refused, said once.
#[component]
pub(super) fn Wrong(scene: Scene) -> impl IntoView {
    move || {
        scene.wrong.get().map(|wrong| {
            let said = say(scene.shell, |voice| {
                refusal(voice.strings, voice.formats, wrong, voice.now.day())
            });
            view! { <p class="field__error" role="alert">{said}</p> }
        })
    }
}

#[component]
fn InTheCooker(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let view = Memo::new(move |_| {
        scene.asked.with(|asked| {
            let (question, answer) = asked.as_ref()?;
            Some(say(shell, |voice| {
                let odds = scene.odds.get();
                present::running(voice, question, answer.as_ref(), odds.as_ref())
            }))
        })
    });
    let part = move |part: fn(&RunningView) -> String| {
        Signal::derive(move || view.with(|view| view.as_ref().map(part).unwrap_or_default()))
    };
    let danger = Memo::new(move |_| view.with(|view| view.as_ref()?.danger.clone()));
    let dish = Memo::new(move |_| {
        scene
            .meal
            .with(|meal| meal.as_ref().map(|(_, meal)| meal.dish))
    });
    let lines = move |part: fn(&RunningView) -> &Vec<String>| {
        let lines = Memo::new(move |_| {
            view.with(|view| view.as_ref().map(|view| part(view).clone()))
                .unwrap_or_default()
        });
        view! {
            <div aria-live="polite" class="tonight-told">
                {move || lines.get().into_iter().map(|line| view! { <p>{line}</p> }).collect_view()}
            </div>
        }
    };
    let is_sure_told = Memo::new(move |_| {
        view.with(|view| view.as_ref().is_some_and(|view| !view.sure.is_empty()))
    });
    let clock = Memo::new(move |_| view.with(|view| view.as_ref()?.clock.clone()));
    let has_clock = Memo::new(move |_| clock.with(Option::is_some));
    let clock_line = move || {
        let first = has_clock.get().then(|| clock.get_untracked())??;
        let view = Signal::derive(move || clock.get().unwrap_or_else(|| first.clone()));
        Some(view! { <ClockLine view test="meal-clock" /> })
    };
    view! {
        <Panel heading=part(|view| view.heading.clone()) test="running">
            {clock_line}
            <Danger danger=Signal::derive(move || danger.get()) />
            <p>{part(|view| view.since.clone())}</p>
            {lines(|view| &view.lines)}
        </Panel>
        <Questions scene />
        <Show when=move || is_sure_told.get()>
            <Panel heading=scene.text(|strings| strings.tonight.chances.heading) test="running-sure">
                {lines(|view| &view.sure)}
            </Panel>
        </Show>
        <StoreNow />
        <Care dish cooker=scene.cooker />
        <Plots scene />
        <Wrong scene />
        <NextDock scene />
    }
}

/// What comes next, and is asked by the main button.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Next {
    Boils,
    Done,
    Out,
}

impl Next {
    fn of(meal: &Meal) -> Self {
        let open = present::open(meal);
        if open.boiled && open.done {
            Self::Boils
        } else if open.done {
            Self::Done
        } else if open.boiled && meal.outcome.done_at.is_none() {
            Self::Boils
        } else {
            Self::Out
        }
    }

    fn label(self) -> fn(&Strings) -> &'static str {
        match self {
            Self::Boils => |strings| strings.tonight.running.boils_now,
            Self::Done => |strings| strings.tonight.running.done_now,
            Self::Out => |strings| strings.tonight.running.out_now,
        }
    }

    fn seen(self) -> fn(LocalTime) -> Seen {
        match self {
            Self::Boils => Seen::BoiledAt,
            Self::Done => Seen::DoneAt,
            Self::Out => Seen::TakenOutAt,
        }
    }

    fn icon(self) -> Icon {
        match self {
            Self::Boils => Icon::PotBoils,
            Self::Done => Icon::Bowl,
            Self::Out => Icon::Tick,
        }
    }

    fn test(self) -> &'static str {
        match self {
            Self::Boils => "boils-now",
            Self::Done => "done-now",
            Self::Out => "out-now",
        }
    }
}

/// The questions that the main button does not ask.
#[component]
fn Questions(scene: Scene) -> impl IntoView {
    let next = Memo::new(move |_| {
        scene.meal.with(|meal| {
            meal.as_ref()
                .map(|(_, meal)| (Next::of(meal), present::open(meal)))
        })
    });
    let button = move |which: Next| {
        view! {
            <Button
                label=scene.text(which.label())
                on_press=Callback::new(move |()| scene.see_now(which.seen()))
                icon=which.icon()
                test=which.test()
            />
        }
    };
    move || {
        let asks = next.get().filter(|(_, open)| open.has_more());
        asks.map(|(next, open)| {
            let not_yet = open.boiled.then(|| {
                view! {
                    <Button
                        label=scene.text(|strings| strings.tonight.running.not_yet)
                        on_press=Callback::new(move |()| scene.see_now(Seen::NotBoiledBy))
                        icon=Icon::PotSimmers
                        test="not-yet"
                    />
                }
            });
            let not_done = (open.done && !open.boiled).then(|| {
                view! {
                    <Button
                        label=scene.text(|strings| strings.tonight.running.not_done_yet)
                        on_press=Callback::new(move |()| scene.see_now(Seen::NotDoneBy))
                        icon=Icon::PotSimmers
                        test="not-done-yet"
                    />
                }
            });
            let others = [
                (open.boiled, Next::Boils),
                (open.done, Next::Done),
                (open.out, Next::Out),
            ]
            .into_iter()
            .filter(|(is_open, which)| *is_open && *which != next)
            .map(|(_, which)| button(which))
            .collect_view();
            view! {
                <Panel heading=scene.text(|strings| strings.tonight.running.ask) test="questions">
                    <div class="row tonight-questions">{not_yet} {not_done} {others}</div>
                </Panel>
            }
        })
    }
}

/// The main button: what is seen next.
#[component]
fn NextDock(scene: Scene) -> impl IntoView {
    let next = Memo::new(move |_| {
        scene
            .meal
            .with(|meal| meal.as_ref().map(|(_, meal)| Next::of(meal)))
    });
    view! {
        <ActionDock>
            {move || {
                next.get()
                    .map(|next| {
                        view! {
                            <Button
                                label=scene.text(next.label())
                                on_press=Callback::new(move |()| scene.see_now(next.seen()))
                                tone=Tone::Primary
                                icon=next.icon()
                                test=next.test()
                            />
                        }
                    })
            }}
        </ActionDock>
    }
}

/// The plot and the heat of the running meal.
#[component]
fn Plots(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let plots = Memo::new(move |_| {
        scene.asked.with(|asked| {
            let (question, answer) = asked.as_ref()?;
            let answer = answer.as_ref()?;
            say(shell, |voice| {
                let by_odds = scene.odds.get().and_then(|odds| {
                    let belief = shell.estimates.belief().get()?;
                    let times = times(question, answer, voice.now)?;
                    let bands = belief.running_course(times.into_iter());
                    banded(voice, question, &odds, &bands)
                });
                let plot = by_odds.or_else(|| course(voice, question, answer))?;
                Some((plot, heat(voice, &answer.as_told.account)))
            })
        })
    });
    let is_shown = Memo::new(move |_| plots.with(Option::is_some));
    let y_text = move |tick: f64| {
        shell
            .words
            .formats()
            .with(|formats| formats.number(tick, 0))
    };
    move || {
        let (plot, bar) = is_shown.get().then(|| plots.get_untracked())??;
        let plot = Signal::derive(move || plots.get().map_or_else(|| plot.clone(), |both| both.0));
        let bar = Signal::derive(move || plots.get().map_or_else(|| bar.clone(), |both| both.1));
        Some(view! {
            <Panel heading=scene.text(|strings| strings.tonight.course.heading) test="course">
                <LineChart view=plot y_text=Callback::new(y_text) test="course-chart" />
            </Panel>
            <Panel heading=scene.text(|strings| strings.tonight.heat.heading) test="heat">
                <HeatBar view=bar test="heat-bar" />
            </Panel>
        })
    }
}
