//! What may become of a pot.

use std::ops::Range;

use super::belief::Belief;
use super::ensemble::{Ensemble, column};
use super::load::Load;
use super::member::Course;
use super::{Band, Chance, band_of, local, seconds};
use crate::journal::Meal;
use crate::local_time::LocalTime;

/// How long after the meal's hour a pot that is not ready is still followed. \[s\]
const FOLLOW_S: i64 = 3 * 3600;

/// The odds of one pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Odds {
    /// Share of what may be in which it boils while it is in. Show it as [`Odds::boils`].
    pub p_boil: f64,
    /// Share in which the food is done, safe and not burnt at the meal's hour. Show it as
    /// [`Odds::ready`].
    pub p_done: f64,
    /// When it boils; `None` where it does not within three hours of the meal.
    pub boils_at: Band<Option<LocalTime>>,
    /// When the food is done and safe; `None` likewise.
    pub ready_at: Band<Option<LocalTime>>,
    /// Water gone as steam when it comes out. \[kg\]
    pub boiled_away_kg: Band<f64>,
    /// Share in which all the water is gone before it comes out.
    pub p_dry: f64,
    /// The store when the pot goes in. [°C]
    pub store_before_c: Band<f64>,
    /// The store when the pot has come out. [°C]
    pub store_after_c: Band<f64>,
}

impl Odds {
    /// The chance that it boils, as it is told.
    pub fn boils(&self) -> Chance {
        Chance::new(self.p_boil)
    }

    /// The chance that the meal is ready at its hour, as it is told.
    pub fn ready(&self) -> Chance {
        Chance::new(self.p_done)
    }
}

/// How far pots are followed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Until {
    /// Until they come out, and the members without one as long.
    Out,
    /// The pots alone.
    PotsOut,
    /// As [`Until::Out`], and the pots that are not ready for some hours more.
    Ready,
}

/// What became of each member's pot.
pub(super) struct Fates {
    /// Members after the pot came out as planned, or once it was ready; where only the pots were
    /// followed, each as its pot left it.
    pub(super) after: Ensemble,
    store_before_c: Band<f64>,
    water_before_kg: Vec<f64>,
    /// Members followed on, the pot left in where it was not ready.
    pub(super) followed: Ensemble,
    leaves_at: LocalTime,
    eat_at: LocalTime,
}

impl Fates {
    /// When a member's pot is ready, unless it burnt before; infinite where it never is. \[s\]
    pub(super) fn ready_at_s(&self, member: usize) -> f64 {
        ready_at_s(&self.followed, member)
    }

    /// Whether a member's meal is ready in time.
    pub(super) fn is_ready(&self, member: usize) -> bool {
        self.ready_at_s(member) <= seconds(self.eat_at)
    }

    /// Share of the members whose meal is ready in time.
    pub(super) fn p_done(&self) -> f64 {
        self.share(|fates, member| fates.is_ready(member))
    }

    fn share(&self, holds: impl Fn(&Self, usize) -> bool) -> f64 {
        self.followed
            .weight
            .iter()
            .enumerate()
            .filter(|(member, _)| holds(self, *member))
            .map(|(_, weight)| weight)
            .sum()
    }
}

fn ready_at_s(ensemble: &Ensemble, member: usize) -> f64 {
    let get = |column| ensemble.get(column, member);
    let ready_s = get(column::DONE_AT).max(get(column::SAFE_AT));
    if ready_s <= get(column::DRY_AT) {
        ready_s
    } else {
        f64::INFINITY
    }
}

impl Belief {
    /// What may become of a pot that goes in at `put_in`, no earlier than [`Belief::at`]. A pot that
    /// is in comes out then.
    pub fn ask(&self, meal: &Meal, put_in: LocalTime) -> Odds {
        self.odds(&self.fates(meal, put_in, Until::Ready))
    }

    /// The same of an eighth of the members, for a first answer where all of them take long.
    pub fn ask_few(&self, meal: &Meal, put_in: LocalTime) -> Odds {
        self.fewest().ask(meal, put_in)
    }

    /// What may become of the pot that is in, by all that was seen of it; `None` where there is
    /// none.
    pub fn running(&self) -> Option<Odds> {
        let pot = self.pot.as_ref()?;
        let before = self.ensemble.clone();
        let fates = self.follow(before, &pot.load, &pot.meal, pot.put_in, Until::Ready);
        Some(self.odds(&fates))
    }

    /// What will be believed once this pot has come out: for the next one, or tomorrow's breakfast.
    pub fn after(&self, meal: &Meal, put_in: LocalTime) -> Self {
        let mut after = self.fates(meal, put_in, Until::Out).after;
        after.take_out();
        self.of(after)
    }

    fn odds(&self, fates: &Fates) -> Odds {
        let build = &self.epoch.build;
        let leaves_s = seconds(fates.leaves_at);
        let (after, followed) = (&fates.after, &fates.followed);
        Odds {
            p_boil: fates.share(|fates, one| fates.followed.get(column::BOILS_AT, one) <= leaves_s),
            p_done: fates.p_done(),
            boils_at: band_of(followed, |all, one| all.get(column::BOILS_AT, one)).map(local),
            ready_at: band_of(followed, ready_at_s).map(local),
            boiled_away_kg: band_of(after, |all, one| {
                let before_kg = fates.water_before_kg.get(one).copied().unwrap_or(0.0);
                (before_kg - all.get(column::WATER, one)).max(0.0)
            }),
            p_dry: fates.share(|fates, one| fates.after.get(column::DRY_AT, one) <= leaves_s),
            store_before_c: fates.store_before_c,
            store_after_c: band_of(after, |all, one| all.store_c(build, one)),
        }
    }

    /// Follows every member's pot.
    pub(super) fn fates(&self, meal: &Meal, put_in: LocalTime, until: Until) -> Fates {
        let put_in = put_in.max(self.at());
        let (before, load) = self.pots_in(meal, put_in);
        self.follow(before, &load, meal, put_in, until)
    }

    /// Every member with its pot just put in.
    fn pots_in(&self, meal: &Meal, put_in: LocalTime) -> (Ensemble, Load) {
        let mut before = self.at_later(put_in);
        before.take_out();
        let air_c = self.air_c(put_in);
        before.bring_in(&self.epoch.build, air_c);
        let load = self.epoch.load(meal, put_in, air_c);
        before.put_in(&self.epoch.build, &load, meal, self.settings.seed);
        (before, load)
    }

    /// Follows pots that are in.
    fn follow(
        &self,
        mut before: Ensemble,
        load: &Load,
        meal: &Meal,
        put_in: LocalTime,
        until: Until,
    ) -> Fates {
        let build = &self.epoch.build;
        let store_before_c = band_of(&before, |all, one| all.store_c(build, one));
        let water_before_kg = before.column(column::WATER).to_vec();
        let leaves_at = meal.leaves_at().max(put_in);
        let out_when_ready = meal.out.is_none();
        let course = Course {
            build,
            load: Some(load),
            out_when_ready,
            pots_only: until == Until::PotsOut,
        };
        self.carry_on(&course, &mut before, leaves_at);
        let after = before.clone();
        let mut followed = before;
        if out_when_ready && until == Until::Ready {
            let course = Course {
                pots_only: true,
                ..course
            };
            self.carry_on(&course, &mut followed, leaves_at.plus_s(FOLLOW_S));
        } else {
            followed.take_out();
        }
        Fates {
            after,
            store_before_c,
            water_before_kg,
            followed,
            leaves_at,
            eat_at: meal.eat_at,
        }
    }

    /// Weight of the members among some whose meal is ready in time, each added in turn to `before`:
    /// pot by pot, so that all of them may be asked part by part.
    pub(super) fn add_done(
        &self,
        before: f64,
        (meal, put_in): (&Meal, LocalTime),
        members: &Range<usize>,
    ) -> f64 {
        let put_in = put_in.max(self.at());
        let (mut pots, load) = self.pots_in(meal, put_in);
        pots.keep_pots(members);
        let fates = self.follow(pots, &load, meal, put_in, Until::PotsOut);
        members
            .clone()
            .filter(|member| fates.is_ready(*member))
            .fold(before, |sum, member| sum + fates.followed.weight[member])
    }

    /// Carries members through coming time.
    pub(super) fn carry(
        &self,
        ensemble: &mut Ensemble,
        load: Option<&Load>,
        out_when_ready: bool,
        to: LocalTime,
    ) {
        let course = Course {
            build: &self.epoch.build,
            load,
            out_when_ready,
            pots_only: false,
        };
        self.carry_on(&course, ensemble, to);
    }

    fn carry_on(&self, course: &Course<'_>, ensemble: &mut Ensemble, to: LocalTime) {
        while ensemble.at < to {
            let day = ensemble.at.day();
            let midnight = day.plus(1).start();
            let Some(sky) = self.sky(day) else { return };
            ensemble.carry(
                course,
                sky,
                &self.edges,
                self.settings.seed,
                to.min(midnight),
            );
            if ensemble.at == midnight {
                ensemble.begin_day(midnight.day(), self.settings.seed);
            }
        }
    }

    pub(super) fn air_c(&self, at: LocalTime) -> f64 {
        let place = usize::try_from(at.second_of_day() / super::sky::STEP_S).unwrap_or(0);
        self.sky(at.day())
            .and_then(|sky| sky.get(place))
            .map_or(20.0, |step| step.air_c)
    }
}
