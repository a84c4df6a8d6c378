//! What takes longer than the answer: the latest time, how much, what would help, and the like.

use crate::reactive::*;
use model::dish::Dish;
use model::journal::{Meal, Outcome};
use model::local_time::LocalTime;
use model::odds::{Belief, Improvement, KINDS_OF_HELP, Trials};
use model::pot::{Lid, Pot};

use super::scene::{Asked, Scene, air_at, say};
use crate::components::{FactList, Panel};
use crate::platform::clock;
use crate::present::tonight::chances::{Breakfast, Further, chances};
use crate::present::tonight::help::latest_beside;
use crate::present::tonight::verdict::is_good_enough;
use crate::screens::later::bit_by_bit;

/// Everything is worked out anew after so long, since the evening goes on. \[s\]
const ANEW_S: i64 = 600;
/// Water for breakfast. \[L\]
const BREAKFAST_L: f64 = 1.0;
/// When it goes in, and by when it must boil. \[s\] of the day.
const BREAKFAST_S: (i64, i64) = (6 * 3600, 7 * 3600);

/// The figures before the changes that would help.
const FIGURES: usize = 4;
/// A bit takes about so long at most, lest a tap has to wait. \[ms\]
const BIT_MS: f64 = 12.0;

/// How far it is worked out.
#[derive(Debug, Default)]
struct Reached {
    /// The figure that is next.
    figure: usize,
    /// What was tried for it so far.
    trials: Trials,
    /// The changes that were found.
    found: Vec<Improvement>,
    /// The latest time for nine chances in ten, found over a part of what may be.
    latest: Option<LocalTime>,
}

impl Reached {
    fn next(&mut self) {
        self.figure += 1;
        self.trials = Trials::default();
    }
}

impl Scene {
    /// Works out, bit by bit, what takes longer than the answer.
    pub(super) fn work_further(self) {
        let shell = self.shell;
        let now = shell.clock.now();
        let turn = Memo::new(move |_| now.get().0.div_euclid(ANEW_S));
        let by_odds = Memo::new(move |_| {
            let is_answered = (self.asked).with(|asked| matches!(asked, Asked::Answered(..)));
            is_answered.then(|| self.odds.with(Option::is_some))
        });
        let reached = StoredValue::new(Reached::default());
        bit_by_bit(
            move || {
                turn.track();
                self.plan.track();
                shell.estimates.beliefs().follow_diary();
                self.outdated.set_value(true);
                self.draw_soon();
                reached.set_value(Reached::default());
                by_odds.get().is_some()
            },
            move |_| {
                let begun_ms = clock::ms();
                self.forget_outdated();
                let Some((meal, put_in)) = self.meal_asked() else {
                    return false;
                };
                if by_odds.get_untracked() != Some(true) {
                    self.latest_as_told(&meal);
                    return false;
                }
                let Some(belief) = shell.estimates.belief().get_untracked() else {
                    return false;
                };
                let bit = |reached: &mut Reached| self.bit(reached, &belief, &meal, put_in);
                let mut goes_on = true;
                while goes_on && clock::ms() - begun_ms < BIT_MS {
                    // The person may have left the page meanwhile.
                    goes_on = reached.try_update_value(bit) == Some(true);
                }
                goes_on
            },
        );
    }

    /// One bit more; whether there is another.
    fn bit(&self, reached: &mut Reached, belief: &Belief, meal: &Meal, put_in: LocalTime) -> bool {
        let further = self.further;
        let trials = &reached.trials;
        let told = match reached.figure {
            0 => {
                let latest = trials.bit(|trials| belief.latest_put_in_by(meal, trials));
                if let Some(latest) = latest {
                    reached.latest = latest;
                }
                let is_told = !self.is_help_needed();
                latest.map(|latest| {
                    further.try_update(|further| further.latest = is_told.then_some(latest))
                })
            }
            1 => {
                let most = trials.bit(|trials| belief.most_by(meal, put_in, trials));
                most.map(|most| further.try_update(|further| further.most = Some(most)))
            }
            2 => {
                let worth = belief.reading_worth(meal, put_in);
                Some(further.try_update(|further| further.reading = Some(worth)))
            }
            3 => {
                let breakfast = self.breakfast(belief, meal, put_in);
                Some(further.try_update(|further| further.breakfast = breakfast))
            }
            figure => {
                let kind = figure - FIGURES;
                let help = trials.bit(|trials| belief.improvement_by(meal, put_in, kind, trials));
                help.map(|help| {
                    reached.found.extend(help);
                    Some(())
                })
            }
        };
        let Some(told) = told else { return true };
        reached.next();
        let is_needed = self.is_help_needed();
        if told.is_some() && reached.figure < FIGURES + if is_needed { KINDS_OF_HELP } else { 0 } {
            return true;
        }
        let tried = std::mem::take(&mut reached.found);
        if is_needed {
            let latest = latest_beside(reached.latest, put_in, &tried);
            (self.further).try_update(|further| further.latest = latest);
        }
        self.found.try_set(Some(belief.best(meal, put_in, tried)));
        false
    }

    fn is_help_needed(&self) -> bool {
        self.odds
            .with_untracked(|odds| odds.as_ref().is_some_and(|odds| !is_good_enough(odds)))
    }

    /// Lets go what was worked out for something else.
    pub(super) fn forget_outdated(&self) {
        if self.outdated.try_update_value(std::mem::take) == Some(true) {
            let plan = self.plan.get_untracked();
            self.worked_for.set_value(Some(plan));
            self.further.set(Further::default());
            self.found.set(None);
        }
    }

    /// The latest time, where it was worked out for the plan that stands.
    pub(super) fn latest(&self) -> Option<Option<LocalTime>> {
        let plan = self.plan.get();
        let is_for_it = self.worked_for.with_value(|it| it.as_ref() == Some(&plan));
        self.further.get().latest.filter(|_| is_for_it)
    }

    /// The latest time where nothing is told by odds, as while a long diary is walked.
    fn latest_as_told(&self, meal: &Meal) {
        let evening = self.shell.estimates.evening().get_untracked();
        let evening = evening.and_then(Result::ok);
        let latest = evening.and_then(|evening| evening.latest_put_in(meal).ok());
        let latest = latest.and_then(|latest| latest.against.or(latest.as_told));
        (self.further).try_update(|further| further.latest = Some(latest));
    }

    /// What is asked about, not followed.
    fn meal_asked(&self) -> Option<(Meal, LocalTime)> {
        self.asked.with_untracked(|asked| match asked {
            Asked::Answered(question, _) => Some((question.meal.clone(), question.put_in)),
            Asked::Refused(..) | Asked::Nothing | Asked::NoEstimate => None,
        })
    }

    fn breakfast(&self, belief: &Belief, meal: &Meal, put_in: LocalTime) -> Option<Breakfast> {
        let household = self
            .shell
            .store
            .now_is(|document| document.household.clone())?;
        let out_at = meal.leaves_at();
        let morning = out_at.day().at_s(BREAKFAST_S.0);
        let day = if out_at < morning {
            out_at.day()
        } else {
            out_at.day().plus(1)
        };
        let (from, by) = (day.at_s(BREAKFAST_S.0), day.at_s(BREAKFAST_S.1));
        let water = water(meal.pot, air_at(&household, from).max(0.0), by);
        let odds = belief.after(meal, put_in).ask(&water, from);
        Some(Breakfast {
            litres: BREAKFAST_L,
            put_in: from,
            by,
            chance: odds.ready(),
        })
    }
}

fn water(pot: Pot, start_c: f64, by: LocalTime) -> Meal {
    Meal {
        dish: Dish::TeaWater,
        food_kg: 0.0,
        water_kg: BREAKFAST_L,
        start_c,
        pot,
        lid: Lid::On,
        out: None,
        eat_at: by,
        outcome: Outcome::default(),
    }
}

/// How sure it is, in figures.
#[component]
pub(super) fn HowSure(scene: Scene) -> impl IntoView {
    let shell = scene.shell;
    let facts = Memo::new(move |_| {
        let further = scene.further.get();
        scene.drawn.with(|(asked, odds)| match asked {
            Asked::Answered(question, _) => {
                let odds = odds.as_ref()?;
                Some(say(shell, |voice| chances(voice, question, odds, &further)))
            }
            Asked::Refused(..) | Asked::Nothing | Asked::NoEstimate => None,
        })
    });
    let is_shown = Memo::new(move |_| facts.with(Option::is_some));
    let listed = Signal::derive(move || facts.get().unwrap_or_default());
    view! {
        <Show when=move || is_shown.get()>
            <Panel
                heading=shell.words.text(|strings| strings.tonight.chances.heading)
                test="chances"
            >
                <FactList facts=listed test="chances-facts" />
            </Panel>
        </Show>
    }
}
