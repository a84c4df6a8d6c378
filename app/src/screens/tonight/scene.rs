//! What the parts of the screen share: the plan, its question and its answer.

use crate::reactive::*;
use model::cooker::Cooker;
use model::local_time::LocalTime;
use model::odds::{Improvement, Odds};
use model::sun::Daylight;
use model::tonight::{Answer, Evening, Offers, Verdict};

use crate::platform::clock;
use crate::present::tonight::Voice;
use crate::present::tonight::chances::Further;
use crate::present::tonight::help::{HelpView, help, that_fits, that_help, with_odds};
use crate::present::tonight::now::lacks_sun;
use crate::present::tonight::store::store_sure;
use crate::present::tonight::verdict::{Question, is_good_enough, is_told_by_odds};
use crate::screens::later::{after_paint, bit_by_bit};
use crate::shell::Shell;
use crate::shell::beliefs::SharedBelief;
use crate::shell::estimates::SharedEvening;
use crate::state::action::{Action, check_meal};
use crate::state::document::{Document, Household};
use crate::state::plan::Plan;
use crate::state::refused::Refused;

/// Says something in the language that is spoken, followed.
pub(super) fn say<T>(shell: Shell, what: impl FnOnce(&Voice<'_>) -> T) -> T {
    let strings = shell.words.strings();
    let now = shell.clock.now().get();
    shell.words.formats().with(|formats| {
        what(&Voice {
            strings,
            formats,
            now,
        })
    })
}

/// What became of the question.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Asked {
    /// There is no household or no cooker to ask about.
    Nothing,
    /// The model can't work anything out from this cooker, place or diary.
    NoEstimate,
    /// The meal can't be put into the pot.
    Refused(Question, Refused),
    /// The model's answer.
    Answered(Question, Box<Answer>),
}

/// What would help.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Helps {
    /// How sure the meal would be with any of them.
    pub(super) reach: Verdict,
    /// Each in words.
    pub(super) views: Vec<HelpView>,
}

/// The plan and what is known of it. Copies stand for the same one.
#[derive(Clone, Copy)]
pub(super) struct Scene {
    pub(super) shell: Shell,
    /// The plan that stands, touched or not.
    pub(super) plan: Memo<Plan>,
    /// The cooker in use.
    pub(super) cooker: Memo<Option<Cooker>>,
    /// Temperature of what goes in, where the plan gives none. [°C]
    pub(super) air_c: Memo<f64>,
    pub(super) asked: Memo<Asked>,
    /// The odds of what is asked; none where the answer is told without.
    pub(super) odds: Memo<Option<Odds>>,
    /// Whether they are by some of what may be, until all of it is asked.
    pub(super) is_first: Memo<bool>,
    /// Both as they are listed, drawn and accounted for below, which follows once the answer is painted.
    pub(super) drawn: RwSignal<(Asked, Option<Odds>)>,
    pub(super) helps: Memo<Helps>,
    /// What takes longer than the answer.
    pub(super) further: RwSignal<Further>,
    /// The changes that help by the odds; none while they are looked for.
    pub(super) found: RwSignal<Option<Vec<Improvement>>>,
    /// The plan that both are worked out for.
    pub(super) worked_for: StoredValue<Option<Plan>>,
    /// Whether both are of something that is past, and go once the answer is painted.
    pub(super) outdated: StoredValue<bool>,
    /// Whether what follows is drawn soon.
    draws_soon: StoredValue<bool>,
}

impl Scene {
    pub(super) fn new(shell: Shell) -> Self {
        let store = shell.store;
        let now = shell.clock.now();
        let cooker =
            store.read(|document| document.cooker_in_use().map(|owned| owned.cooker.clone()));
        let household = store.read(|document| document.household.clone());
        let planned = store.read(|document| document.plan.clone());
        let plan = Memo::new(move |_| {
            let people = household.with(|household| household.as_ref().map_or(1, |it| it.people));
            planned
                .get()
                .unwrap_or_else(|| Plan::start(people, now.get()))
        });
        let air_c = Memo::new(move |_| {
            let at = plan.with(|plan| plan.put_in_at(now.get()));
            household.with(|household| household.as_ref().map_or(20.0, |it| air_at(it, at)))
        });
        let today = Memo::new(move |_| now.get().day());
        let daylight = Memo::new(move |_| {
            let place = household.with(|household| household.as_ref().map(|it| it.place));
            Daylight::of(&place?, today.get()).ok()
        });
        let scenery = Scenery {
            shell,
            plan,
            cooker,
            air_c,
            daylight,
        };
        let asked = Memo::new(move |_| scenery.ask());
        let answered = in_two_steps(asked, scenery);
        let odds = Memo::new(move |_| answered.with(|(odds, _)| *odds));
        let found = RwSignal::new(None);
        let drawn = RwSignal::new((Asked::Nothing, None::<Odds>));
        let scene = Self {
            shell,
            plan,
            cooker,
            air_c,
            asked,
            odds,
            is_first: Memo::new(move |_| answered.with(|(_, is_first)| *is_first)),
            helps: Memo::new(move |_| {
                drawn.with(|(asked, odds)| match odds {
                    Some(odds) => scenery.helps_by_odds(asked, odds, found.get()),
                    None => scenery.helps(asked),
                })
            }),
            drawn,
            further: RwSignal::new(Further::default()),
            found,
            worked_for: StoredValue::new(None),
            outdated: StoredValue::new(false),
            draws_soon: StoredValue::new(false),
        };
        scene.draw_later();
        scene.work_further();
        scene
    }

    fn draw_later(self) {
        effect(move || {
            self.asked.track();
            self.odds.track();
            self.draw_soon();
        });
    }

    /// Draws what follows from the answer once that is painted.
    pub(super) fn draw_soon(self) {
        if self.draws_soon.get_value() {
            return;
        }
        self.draws_soon.set_value(true);
        after_paint(move || {
            // The person may have left the page meanwhile.
            if self.draws_soon.try_update_value(std::mem::take).is_some() {
                self.forget_outdated();
                let now = (self.asked.get_untracked(), self.odds.get_untracked());
                if self.drawn.with_untracked(|drawn| *drawn != now) {
                    self.drawn.set(now);
                }
            }
        });
    }

    /// Changes the plan.
    pub(super) fn change(&self, edit: impl FnOnce(&mut Plan)) {
        let mut plan = self.plan.get_untracked();
        edit(&mut plan);
        self.replace(plan);
    }

    /// Puts another plan in its place.
    pub(super) fn replace(&self, plan: Plan) {
        // A plan is never refused: what can't be cooked is told by the answer.
        let _ = self.shell.dispatch.run(Action::ChangePlan(plan));
    }
}

/// The odds, and whether they are by some of what may be. Where they take long, as of a store that is cut into several, a change of the plan is
/// answered by some of what may be; all of it is asked once nothing has changed for a while.
fn in_two_steps(asked: Memo<Asked>, scenery: Scenery) -> Memo<(Option<Odds>, bool)> {
    let rounds = RwSignal::new(0_u32);
    // What was answered last, and whether all of it ever took too long: what is quick for one dish is
    // not for the next.
    let last = StoredValue::new((0, None));
    let is_slow = StoredValue::new(false);
    let answered = Memo::new(move |_| {
        let (round, plan) = (rounds.get(), Some(scenery.plan.get()));
        let (last_round, last_plan) = last.get_value();
        let is_tap = last_round == round && last_plan != plan;
        let by_all = !(is_tap && is_slow.get_value());
        last.set_value((round, plan));
        let begun_ms = clock::ms();
        let odds = asked.with(|asked| scenery.odds(asked, by_all));
        if by_all && odds.is_some() && SLOW_MS < clock::ms() - begun_ms {
            is_slow.set_value(true);
        }
        (odds, !by_all)
    });
    let is_first = move || answered.with_untracked(|(_, is_first)| *is_first);
    // The first answer by some of a belief has to find them first: not while somebody waits.
    let readied = StoredValue::new(None::<SharedBelief>);
    let belief = scenery.shell.estimates.belief();
    bit_by_bit(
        move || {
            asked.track();
            answered.track();
            let is_new = is_slow.get_value() && readied.with_value(|it| *it != belief.get());
            is_first() || is_new
        },
        move |_| {
            // The person may have left the page meanwhile.
            let Some((_, is_first)) = answered.try_get_untracked() else {
                return false;
            };
            if is_first {
                rounds.try_update(|rounds| *rounds = rounds.wrapping_add(1));
            } else if let Some(belief) = belief.try_get_untracked() {
                readied.try_update_value(|it| *it = belief);
                let _ = asked
                    .try_get_untracked()
                    .map(|asked| scenery.odds(&asked, false));
            }
            false
        },
    );
    answered
}

/// Odds that take longer are answered in two steps. \[ms\]
const SLOW_MS: f64 = 20.0;

/// Temperature of the air at the household at a time. [°C]
pub(super) fn air_at(household: &Household, at: LocalTime) -> f64 {
    let second = i32::try_from(at.second_of_day()).map_or(0.0, f64::from);
    household.air.air_c(&household.place, at.day().0, second)
}

/// Whether the sky of the day that a pot goes in is logged.
fn sky_is_logged(document: &Document, at: LocalTime) -> bool {
    document.skies.contains_key(&at.day())
}

/// What the question hangs on.
#[derive(Clone, Copy)]
struct Scenery {
    shell: Shell,
    plan: Memo<Plan>,
    cooker: Memo<Option<Cooker>>,
    air_c: Memo<f64>,
    /// Of today.
    daylight: Memo<Option<Daylight>>,
}

impl Scenery {
    fn evening(&self) -> Option<SharedEvening> {
        self.shell.estimates.evening().get()?.ok()
    }

    fn lacks_sun(&self, evening: &Evening, now: LocalTime) -> bool {
        self.daylight
            .get()
            .is_some_and(|daylight| lacks_sun(evening.doubts(), daylight, now).is_some())
    }

    fn ask(&self) -> Asked {
        let now = self.shell.clock.now().get();
        let Some(usual) = self
            .cooker
            .with(|cooker| cooker.as_ref().map(|cooker| cooker.pot))
        else {
            return Asked::Nothing;
        };
        let Some(evening) = self.evening() else {
            return Asked::NoEstimate;
        };
        let Ok(boiling_c) = evening.rig().boiling_c() else {
            return Asked::NoEstimate;
        };
        let (meal, put_in) = self.plan.with(|plan| {
            let meal = plan.meal(usual, self.air_c.get(), now);
            (meal, plan.put_in_at(now))
        });
        let Ok(store) = evening.store() else {
            return Asked::NoEstimate;
        };
        let question = Question {
            store_sure: store_sure(&store),
            // The evening hangs on the skies too, so this is looked up anew when they change.
            sky_is_logged: self
                .shell
                .store
                .now_is(|document| sky_is_logged(document, put_in)),
            lacks_sun: self.lacks_sun(&evening, now),
            meal,
            put_in,
            is_in: false,
            boiling_c,
        };
        if let Err(refused) = check_meal(put_in, &question.meal, now) {
            return Asked::Refused(question, refused);
        }
        match evening.ask(&question.meal, put_in) {
            Ok(answer) => Asked::Answered(question, Box::new(answer)),
            Err(_) => Asked::NoEstimate,
        }
    }

    /// The odds, by some of what may be or by all of it.
    fn odds(&self, asked: &Asked, by_all: bool) -> Option<Odds> {
        let Asked::Answered(question, answer) = asked else {
            return None;
        };
        let belief = self.shell.estimates.belief().get()?;
        is_told_by_odds(question, answer).then(|| {
            if by_all {
                belief.ask(&question.meal, question.put_in)
            } else {
                belief.ask_few(&question.meal, question.put_in)
            }
        })
    }

    fn helps_by_odds(&self, asked: &Asked, odds: &Odds, found: Option<Vec<Improvement>>) -> Helps {
        let (views, may_do) = match asked {
            Asked::Answered(question, _) if !is_good_enough(odds) => {
                self.plan.with_untracked(|plan| {
                    say(self.shell, |voice| {
                        let found = found.unwrap_or_default();
                        let (found, may_do) = that_help(voice, odds.ready(), found);
                        let views = found
                            .into_iter()
                            .map(|found| {
                                let view = with_odds(voice, plan, &question.meal, &found);
                                (found.help.is_earlier(), view)
                            })
                            .filter(|(is_earlier, view)| !is_earlier || !self.spoils(&view.plan))
                            .map(|(_, view)| view)
                            .collect();
                        (views, may_do)
                    })
                })
            }
            _ => (Vec::new(), true),
        };
        let reach = if may_do {
            Verdict::Yes
        } else {
            Verdict::Likely
        };
        Helps { reach, views }
    }

    /// Whether a plan leaves food standing for too long; what can't be told is not advised.
    fn spoils(&self, plan: &Plan) -> bool {
        let now = self.shell.clock.now().get_untracked();
        let usual = self.cooker.with(|cooker| cooker.as_ref().map(|it| it.pot));
        let evening = self.evening();
        evening.zip(usual).is_none_or(|(evening, usual)| {
            let meal = plan.meal(usual, self.air_c.get_untracked(), now);
            evening.spoils(&meal, plan.put_in_at(now)).unwrap_or(true)
        })
    }

    fn helps(&self, asked: &Asked) -> Helps {
        let all = |views| Helps {
            reach: Verdict::Yes,
            views,
        };
        match asked {
            Asked::Nothing | Asked::NoEstimate => all(Vec::new()),
            Asked::Refused(question, _) => all(self.plan.with_untracked(|plan| {
                say(self.shell, |voice| that_fits(voice, plan, &question.meal))
            })),
            Asked::Answered(_, answer) if answer.verdict == Verdict::Yes => all(Vec::new()),
            Asked::Answered(question, _) => {
                let Some(Offers { reach, helps }) = self
                    .evening()
                    .and_then(|evening| evening.help(&question.meal, question.put_in).ok())
                else {
                    return all(Vec::new());
                };
                let views = self.plan.with_untracked(|plan| {
                    say(self.shell, |voice| {
                        helps
                            .into_iter()
                            .map(|found| help(voice, plan, &question.meal, found))
                            .collect()
                    })
                });
                Helps { reach, views }
            }
        }
    }
}
