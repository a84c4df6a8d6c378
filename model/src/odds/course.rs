//! The way of store and pot through the evening, as it may be.

use super::build::Build;
use super::ensemble::{Ensemble, column};
use super::load::Load;
use super::{Band, Belief, band_of};
use crate::journal::Meal;
use crate::local_time::LocalTime;

/// Store and pot at an instant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CourseBand {
    /// When.
    pub at: LocalTime,
    /// The store, mixed. [°C]
    pub store_c: Band<f64>,
    /// What is in the pot, while the one that is asked about is in. [°C]
    pub pot_c: Option<Band<f64>>,
}

impl Belief {
    /// Store and pot of a meal at some instants, the earliest first; none of them before
    /// [`Belief::at`]. The pot stays in until the meal is eaten, or until it came out.
    pub fn course(
        &self,
        meal: &Meal,
        put_in: LocalTime,
        times: impl Iterator<Item = LocalTime>,
    ) -> Vec<CourseBand> {
        let few = self.few();
        let build = &few.epoch.build;
        let put_in = put_in.max(few.at());
        let load = few.epoch.load(meal, put_in, few.air_c(put_in));
        let mut times = times.peekable();
        let running = few.pot.as_ref().map(|pot| &*pot.load);
        let first = times.peek().map_or(put_in, |at| put_in.min(*at));
        let mut ensemble = few.at_later(first);
        let mut course = Vec::new();
        while let Some(at) = times.next_if(|at| *at < put_in) {
            few.carry(&mut ensemble, running, false, at);
            course.push(place(build, &ensemble, at, false));
        }
        few.carry(&mut ensemble, running, false, put_in);
        ensemble.take_out();
        ensemble.bring_in(build, few.air_c(put_in));
        ensemble.put_in(build, &load, meal, few.settings.seed);
        let leaves_at = meal.leaves_at().max(put_in);
        course.extend(few.course_in(ensemble, &load, leaves_at, times));
        course
    }

    /// The same of the pot that is in; nothing where there is none.
    pub fn running_course(&self, times: impl Iterator<Item = LocalTime>) -> Vec<CourseBand> {
        let few = self.few();
        let Some(pot) = &few.pot else {
            return Vec::new();
        };
        let leaves_at = pot.meal.leaves_at().max(few.at());
        few.course_in(few.ensemble.clone(), &pot.load, leaves_at, times)
    }

    /// From when a pot is in.
    fn course_in(
        &self,
        mut ensemble: Ensemble,
        load: &Load,
        leaves_at: LocalTime,
        times: impl Iterator<Item = LocalTime>,
    ) -> Vec<CourseBand> {
        let build = &self.epoch.build;
        let mut is_in = true;
        let mut course = Vec::new();
        for at in times {
            let at = at.max(ensemble.at);
            if is_in && leaves_at < at {
                self.carry(&mut ensemble, Some(load), false, leaves_at);
                ensemble.take_out();
                is_in = false;
            }
            self.carry(&mut ensemble, is_in.then_some(load), false, at);
            course.push(place(build, &ensemble, at, is_in));
        }
        course
    }
}

fn place(build: &Build, ensemble: &Ensemble, at: LocalTime, is_in: bool) -> CourseBand {
    CourseBand {
        at: at.max(ensemble.at),
        store_c: band_of(ensemble, |all, one| all.store_c(build, one)),
        pot_c: is_in.then(|| band_of(ensemble, |all, one| all.get(column::POT_C, one))),
    }
}
