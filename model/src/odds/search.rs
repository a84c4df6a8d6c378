//! What would make the odds good: when to put the pot in, how much it may hold, what else helps.
//!
//! The changes are those of [`Help`]. Each is solved for with common chance: the same skies, the
//! same slips of the hand, so that two plans differ by what was changed and nothing else. Searches go
//! over a part of the members; what is told of a plan that was found, over all.

use super::ask::Until;
use super::trials::Trials;
use super::{Belief, Chance};
use crate::journal::Meal;
use crate::local_time::LocalTime;
use crate::pot::{Lid, PotSize, Wrap};
use crate::tonight::{FIRE_W, Help, LEAST_SHARE, MOST_OFFERED, PUT_OFF_S, SUN_WARM_C, WATER_STEPS};
use crate::water::CP_J_KGK;

/// How many kinds of changes there are.
pub const KINDS_OF_HELP: usize = 12;

/// Members that are asked at once, of all.
const PART: usize = 128;
/// Steps in which a time is sought, and how closely it is found. \[s\]
const COARSE_S: i64 = 1800;
const FINE_S: i64 = 300;
/// A pot goes in so much earlier at least, or it is no change. \[s\]
const LEAST_EARLIER_S: i64 = 600;
/// The longest that a second charge is left on. \[s\]
const TOP_UP_S: i64 = 6 * 3600;
/// Halvings of an amount.
const HALVINGS: u32 = 6;
/// A change that adds less than this is no help.
const LEAST_GAIN: f64 = 0.05;
/// A pot is filled to here at most, as a share of its brim.
const FULLEST: f64 = 0.9;
/// More than this many times the plan is not looked for.
const MOST_TIMES: f64 = 4.0;

/// A change of the plan and what the odds are with it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Improvement {
    /// The change.
    pub help: Help,
    /// Share of what may be in which the meal is then ready. Show it as [`Improvement::ready`].
    pub p_done: f64,
}

impl Improvement {
    /// The new chance that the meal is ready, as it is told.
    pub fn ready(&self) -> Chance {
        Chance::new(self.p_done)
    }
}

/// A meal and when it goes in.
type Plan = (Meal, LocalTime);

impl Belief {
    /// The latest the pot may go in for nine chances in ten that the meal is ready; `None` where it
    /// may not even now.
    pub fn latest_put_in(&self, meal: &Meal) -> Option<LocalTime> {
        self.latest_put_in_by(meal, &Trials::at_once())
    }

    /// The same as one of the bits of a search.
    pub fn latest_put_in_by(&self, meal: &Meal, trials: &Trials) -> Option<LocalTime> {
        self.few().latest_of(meal, trials)
    }

    fn latest_of(&self, meal: &Meal, trials: &Trials) -> Option<LocalTime> {
        let meal = Meal {
            out: None,
            ..meal.clone()
        };
        let works = |put_in| {
            let plan = (meal.clone(), put_in);
            Chance::NINE_IN_TEN <= trials.next(|| self.p_done(&plan))
        };
        let earliest = self.at();
        let mut late = meal.eat_at;
        let mut early = late;
        loop {
            if early <= earliest {
                return None;
            }
            early = early.plus_s(-COARSE_S).max(earliest);
            if works(early) {
                break;
            }
            late = early;
        }
        while FINE_S < late.since_s(early) {
            let middle = early.plus_s(late.since_s(early) / 2);
            if works(middle) {
                early = middle;
            } else {
                late = middle;
            }
        }
        Some(early)
    }

    /// How much the pot may hold for nine chances in ten, as a multiple of food and water planned:
    /// at most what it holds, and four times the plan; `None` where not even a tenth of it.
    pub fn most(&self, meal: &Meal, put_in: LocalTime) -> Option<f64> {
        self.most_by(meal, put_in, &Trials::at_once())
    }

    /// The same as one of the bits of a search.
    pub fn most_by(&self, meal: &Meal, put_in: LocalTime, trials: &Trials) -> Option<f64> {
        let solver = Solver {
            belief: self.few(),
            meal,
            put_in,
            trials,
        };
        let litres = meal.food_kg + meal.water_kg;
        let room = FULLEST * meal.pot.size.props().volume_l / litres.max(1e-6);
        let most = room.clamp(0.1, MOST_TIMES);
        let scaled = |times: f64| solver.scaled(times);
        // From the most downwards: a large store boils a little of it dry, so less is not always
        // better.
        let mut fails = None;
        for times in [most, 1.0, 0.5, 0.25, 0.1] {
            if most < times {
                continue;
            }
            if solver.works(&scaled(times)) {
                let halved = |fails| solver.halved(fails, times, scaled);
                return Some(fails.map_or(times, halved));
            }
            fails = Some(times);
        }
        None
    }

    /// At most three changes that help most, those first that make nine chances in ten; none where
    /// the chance is as good anyway.
    pub fn help(&self, meal: &Meal, put_in: LocalTime) -> Vec<Improvement> {
        if Chance::NINE_IN_TEN <= self.p_done(&(meal.clone(), put_in)) {
            return Vec::new();
        }
        let kinds = 0..KINDS_OF_HELP;
        let found = kinds.filter_map(|kind| self.improvement(meal, put_in, kind));
        self.best(meal, put_in, found.collect())
    }

    /// The change of one kind, in the order of what it costs, from 0 to [`KINDS_OF_HELP`]; what
    /// takes long can be found one by one. None where it is not to be had.
    pub fn improvement(&self, meal: &Meal, put_in: LocalTime, kind: usize) -> Option<Improvement> {
        self.improvement_by(meal, put_in, kind, &Trials::at_once())
    }

    /// The same as one of the bits of a search.
    pub fn improvement_by(
        &self,
        meal: &Meal,
        put_in: LocalTime,
        kind: usize,
        trials: &Trials,
    ) -> Option<Improvement> {
        let attempt = ATTEMPTS.get(kind)?;
        let (help, plan) = attempt(&Solver {
            belief: self.few(),
            meal,
            put_in,
            trials,
        })?;
        let p_done = match help {
            Help::TopUp { heat_w, for_s } => {
                trials.next(|| self.topped_up(heat_w, for_s).p_done(&plan))
            }
            _ => self.p_done_by(&plan, trials),
        };
        Some(Improvement { help, p_done })
    }

    /// At most three of the changes that were found, as [`Belief::help`] tells them.
    pub fn best(
        &self,
        meal: &Meal,
        put_in: LocalTime,
        mut found: Vec<Improvement>,
    ) -> Vec<Improvement> {
        let before = self.p_done(&(meal.clone(), put_in));
        if Chance::NINE_IN_TEN <= before {
            return Vec::new();
        }
        // What is told with the same figure as before is no help to who reads it.
        let told_before = Chance::new(before).n_in_m();
        found.retain(|found| {
            before + LEAST_GAIN <= found.p_done && found.ready().n_in_m() != told_before
        });
        // Of those that are good enough the cheapest come first, of the others the best.
        let rank = |found: &Improvement| -> f64 { found.p_done.min(Chance::NINE_IN_TEN - 0.02) };
        found.sort_by(|a, b| rank(b).total_cmp(&rank(a)));
        found.truncate(MOST_OFFERED);
        found
    }

    /// The same with the second charge on from now.
    fn topped_up(&self, heat_w: f64, for_s: i64) -> Self {
        let mut topped_up = self.clone();
        let from = self.at();
        topped_up.edges.top_up(from, from.plus_s(for_s), heat_w);
        topped_up
    }

    /// The same as [`Belief::p_done`], part by part.
    fn p_done_by(&self, (meal, put_in): &Plan, trials: &Trials) -> f64 {
        let members = self.ensemble.members();
        let parts = (0..members).step_by(PART);
        parts.fold(0.0, |sum, from| {
            let part = from..members.min(from + PART);
            trials.next(|| self.add_done(sum, (meal, *put_in), &part))
        })
    }

    fn p_done(&self, (meal, put_in): &Plan) -> f64 {
        self.fates(meal, *put_in, Until::PotsOut).p_done()
    }
}

/// A change that is tried.
type Attempt = fn(&Solver<'_>) -> Option<(Help, Plan)>;

/// From what costs nothing to what costs most.
const ATTEMPTS: [Attempt; KINDS_OF_HELP] = [
    |solver| solver.lid_on(),
    |solver| solver.more_water(),
    |solver| solver.earlier_in(),
    |solver| solver.soak(),
    |solver| solver.wait_for_sun(),
    |solver| solver.warm_water(),
    |solver| solver.wrap_pot(),
    |solver| solver.smaller_pot(),
    |solver| solver.less(),
    |solver| solver.eat_later(),
    |solver| solver.top_up(),
    |solver| solver.other_fire(),
];

struct Solver<'a> {
    belief: &'a Belief,
    meal: &'a Meal,
    put_in: LocalTime,
    trials: &'a Trials,
}

impl Solver<'_> {
    fn p_done(&self, plan: &Plan) -> f64 {
        self.trials.next(|| self.belief.p_done(plan))
    }

    fn works(&self, plan: &Plan) -> bool {
        Chance::NINE_IN_TEN <= self.p_done(plan)
    }

    fn with(&self, change: impl FnOnce(&mut Meal)) -> Plan {
        let mut meal = self.meal.clone();
        change(&mut meal);
        (meal, self.put_in)
    }

    fn scaled(&self, times: f64) -> Plan {
        self.with(|meal| {
            meal.food_kg *= times;
            meal.water_kg *= times;
        })
    }

    /// The amount nearest to `fails` that works, `works` being one that does.
    fn halved(&self, fails: f64, works: f64, plan: impl Fn(f64) -> Plan) -> f64 {
        let (mut fails, mut enough) = (fails, works);
        for _ in 0..HALVINGS {
            let middle = 0.5 * (fails + enough);
            if self.works(&plan(middle)) {
                enough = middle;
            } else {
                fails = middle;
            }
        }
        enough
    }

    /// The least change of an amount that is good enough, or the whole of it where nothing is.
    fn least(&self, idle: f64, most: f64, plan: impl Fn(f64) -> Plan) -> f64 {
        if self.works(&plan(most)) {
            self.halved(idle, most, plan)
        } else {
            most
        }
    }

    /// The first of some times that is good enough, or the best of them.
    fn best_time(&self, times: impl Iterator<Item = LocalTime>) -> Option<LocalTime> {
        let mut best: Option<(f64, LocalTime)> = None;
        for put_in in times {
            let p_done = self.p_done(&(self.meal.clone(), put_in));
            if Chance::NINE_IN_TEN <= p_done {
                return Some(put_in);
            }
            if best.is_none_or(|(most, _)| most < p_done) {
                best = Some((p_done, put_in));
            }
        }
        best.map(|(_, put_in)| put_in)
    }

    fn lid_on(&self) -> Option<(Help, Plan)> {
        (self.meal.lid != Lid::On).then(|| (Help::LidOn, self.with(|meal| meal.lid = Lid::On)))
    }

    fn more_water(&self) -> Option<(Help, Plan)> {
        let p_dry = (self.trials).next(|| self.belief.ask(self.meal, self.put_in).p_dry);
        let room_kg = self.meal.pot.size.props().volume_l - self.meal.food_kg;
        if p_dry < LEAST_GAIN || room_kg <= self.meal.water_kg {
            return None;
        }
        let poured = |water_kg| self.with(|meal| meal.water_kg = water_kg);
        // Upwards in steps: a full pot may boil too late, so more is not always better.
        let mut best: Option<(f64, f64)> = None;
        for step in 1..=WATER_STEPS {
            let share = f64::from(step) / f64::from(WATER_STEPS);
            let water_kg = self.meal.water_kg + share * (room_kg - self.meal.water_kg);
            let p_done = self.p_done(&poured(water_kg));
            if best.is_none_or(|(most, _)| most < p_done) {
                best = Some((p_done, water_kg));
            }
        }
        best.map(|(_, water_kg)| (Help::MoreWater { water_kg }, poured(water_kg)))
    }

    /// The latest that gives nine chances in ten, or the best there is: in round steps, so that it stays
    /// what it is from minute to minute.
    fn earlier_in(&self) -> Option<(Help, Plan)> {
        let from = self.belief.at();
        let room_s = self.put_in.since_s(from);
        if room_s < LEAST_EARLIER_S {
            return None;
        }
        let put_in = match self.belief.latest_of(self.meal, self.trials) {
            Some(latest) => {
                let round = latest.plus_s(-latest.0.rem_euclid(FINE_S)).max(from);
                (round < self.put_in).then_some(round)?
            }
            None => {
                let step_s = LEAST_EARLIER_S * (1 + room_s / (8 * LEAST_EARLIER_S));
                let times = (1..=room_s / step_s).map(|n| self.put_in.plus_s(-n * step_s));
                self.best_time(times)?
            }
        };
        Some((Help::EarlierIn { put_in }, (self.meal.clone(), put_in)))
    }

    fn soak(&self) -> Option<(Help, Plan)> {
        let dish = self.meal.dish.soaked()?;
        Some((Help::Soak { dish }, self.with(|meal| meal.dish = dish)))
    }

    fn wait_for_sun(&self) -> Option<(Help, Plan)> {
        let sunset = self.belief.sunset(self.put_in).min(self.meal.eat_at);
        let room_s = sunset.since_s(self.put_in);
        if room_s < 900 {
            return None;
        }
        let step_s = (room_s / 6).max(900);
        let times = (1..=room_s / step_s).map(|n| self.put_in.plus_s(n * step_s));
        let put_in = self.best_time(times)?;
        Some((Help::WaitForSun { put_in }, (self.meal.clone(), put_in)))
    }

    fn warm_water(&self) -> Option<(Help, Plan)> {
        if SUN_WARM_C <= self.meal.start_c {
            return None;
        }
        let warmed = |start_c| self.with(|meal| meal.start_c = start_c);
        let start_c = self.least(self.meal.start_c, SUN_WARM_C, warmed);
        Some((Help::WarmWater { start_c }, warmed(start_c)))
    }

    fn wrap_pot(&self) -> Option<(Help, Plan)> {
        (self.meal.pot.wrap == Wrap::Bare).then(|| {
            let plan = self.with(|meal| meal.pot.wrap = Wrap::Wrapped);
            (Help::WrapPot, plan)
        })
    }

    fn smaller_pot(&self) -> Option<(Help, Plan)> {
        let litres = self.meal.food_kg + self.meal.water_kg;
        let size = PotSize::ALL
            .into_iter()
            .filter(|size| size.props().volume_l < self.meal.pot.size.props().volume_l)
            .rfind(|size| litres <= FULLEST * size.props().volume_l)?;
        let plan = self.with(|meal| meal.pot.size = size);
        Some((Help::SmallerPot { size }, plan))
    }

    fn less(&self) -> Option<(Help, Plan)> {
        let share = self.least(1.0, LEAST_SHARE, |share| self.scaled(share));
        Some((Help::Less { share }, self.scaled(share)))
    }

    fn eat_later(&self) -> Option<(Help, Plan)> {
        let put_off = |by_s: i64| self.with(|meal| meal.eat_at = meal.eat_at.plus_s(by_s));
        let whole = self.p_done(&put_off(PUT_OFF_S));
        let mut by_s = PUT_OFF_S;
        if Chance::NINE_IN_TEN <= whole {
            let mut short_s = 0;
            while FINE_S < by_s - short_s {
                let middle_s = i64::midpoint(short_s, by_s);
                if self.works(&put_off(middle_s)) {
                    by_s = middle_s;
                } else {
                    short_s = middle_s;
                }
            }
        }
        let eat_at = self.meal.eat_at.plus_s(by_s).ceil_to_s(FINE_S);
        let plan = self.with(|meal| meal.eat_at = eat_at);
        Some((Help::EatLater { eat_at }, plan))
    }

    fn top_up(&self) -> Option<(Help, Plan)> {
        let heat_w = self.belief.epoch.cooker.charging.second?.heat_w();
        let plan = (self.meal.clone(), self.put_in);
        let is_on = 0.0 < self.belief.edges.top_up_w(self.belief.at());
        let whole_s = self.meal.eat_at.since_s(self.belief.at()).min(TOP_UP_S);
        if is_on || whole_s < FINE_S {
            return None;
        }
        let works = |for_s| {
            let topped_up = || self.belief.topped_up(heat_w, for_s);
            Chance::NINE_IN_TEN <= self.trials.next(|| topped_up().p_done(&plan))
        };
        let (mut short_s, mut for_s) = (0, whole_s);
        if works(whole_s) {
            while FINE_S < for_s - short_s {
                let middle_s = i64::midpoint(short_s, for_s);
                if works(middle_s) {
                    for_s = middle_s;
                } else {
                    short_s = middle_s;
                }
            }
        }
        let for_s = for_s.div_euclid(60) * 60 + 60 * i64::from(for_s % 60 != 0);
        Some((Help::TopUp { heat_w, for_s }, plan))
    }

    fn other_fire(&self) -> Option<(Help, Plan)> {
        let boiling_c = self.belief.boiling_c();
        let warmed = |start_c| self.with(|meal| meal.start_c = start_c);
        let start_c = self.least(self.meal.start_c, boiling_c, warmed);
        let capacity_j_k = self.meal.pot.capacity_j_k()
            + self.meal.food_kg * self.meal.dish.props().cp_j_kgk.value
            + self.meal.water_kg * CP_J_KGK;
        let minutes = capacity_j_k * (start_c - self.meal.start_c) / FIRE_W / 60.0;
        Some((Help::OtherFire { minutes, start_c }, warmed(start_c)))
    }
}
