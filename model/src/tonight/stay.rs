//! A pot from its going in on.

use crate::dish::{Basis, DISCARD_AFTER_H, Dish, DoneWhen, HOLD_HOT_C, Hold};
use crate::journal::Meal;
use crate::local_time::LocalTime;
use crate::network::{Ledger, State};
use crate::tonight::course::{Act, Course, seen};
use crate::tonight::track::{PotWatch, Track};
use crate::tonight::{HeatAccount, TonightError};

/// A pot in the cooker, followed.
pub(super) struct Stay<'a> {
    course: &'a Course<'a>,
    meal: &'a Meal,
    /// What happens while it is in.
    acts: Vec<(LocalTime, Act<'a>)>,
    /// The cooker with the pot just put in.
    pub(super) before: State,
    /// The cooker now.
    pub(super) state: State,
    ledger: Ledger,
    pub(super) watch: PotWatch,
    /// Heat that a reading or a boil showed to be there and that was not reckoned with. \[J\]
    found_j: f64,
    /// Hottest the pot was. [°C]
    pub(super) hottest_c: f64,
    /// Time the food stood between cold and hot. \[s\]
    stood_s: i64,
    /// Whether that time counts yet.
    can_spoil: bool,
    pub(super) spoils_at: Option<LocalTime>,
}

impl<'a> Stay<'a> {
    /// A pot that was just put in; of the later acts only readings count.
    pub(super) fn begin(
        course: &'a Course<'a>,
        state: State,
        meal: &'a Meal,
        put_in: LocalTime,
        later: &[(LocalTime, Act<'a>)],
    ) -> Self {
        let leaves_at = meal.leaves_at().max(put_in);
        let mut acts: Vec<(LocalTime, Act<'_>)> = later
            .iter()
            .filter(|(at, act)| put_in < *at && matches!(act, Act::Reading(_)))
            .copied()
            .collect();
        if let Some(seen) = seen(meal, put_in, leaves_at) {
            let place = acts.partition_point(|(at, _)| *at <= seen.0);
            acts.insert(place, seen);
        }
        // The next act is the last.
        acts.reverse();
        Self {
            course,
            meal,
            acts,
            before: state,
            state,
            ledger: Ledger::default(),
            watch: PotWatch::new(Track::default(), full_boil_s(meal.dish)),
            found_j: 0.0,
            hottest_c: f64::NEG_INFINITY,
            stood_s: 0,
            // Dry food does not spoil in cold water, nor within the hours for which it is soaked.
            can_spoil: meal.dish.props().basis != Basis::Dry,
            spoils_at: None,
        }
    }

    /// Carries the cooker on, and does what happens meanwhile.
    pub(super) fn advance(&mut self, to: LocalTime) -> Result<(), TonightError> {
        while let Some((at, act)) = self.acts.pop_if(|(at, _)| *at < to) {
            self.run(at)?;
            let net = self.course.network();
            let before_j = self.state.stored_j(net);
            self.course.act(&mut self.state, act)?;
            self.found_j += self.state.stored_j(net) - before_j;
            if act == Act::Boils {
                self.watch.see_boiling(&self.state);
            }
        }
        self.run(to)?;
        self.watch.settle(&self.state);
        Ok(())
    }

    fn run(&mut self, to: LocalTime) -> Result<(), TonightError> {
        self.course
            .advance(&mut self.state, to, &mut self.ledger, &mut self.watch)?;
        Ok(())
    }

    /// Looks at the pot, for the first time since `since_s`.
    pub(super) fn look(&mut self, now: LocalTime, since_s: i64) {
        let Some(pot) = self.state.pot() else { return };
        let pot_c = pot.t_c();
        self.hottest_c = self.hottest_c.max(pot_c);
        // What was warm once stands from then on, however cold it gets again.
        self.can_spoil |= LUKEWARM_C <= pot_c;
        let is_hot = HOLD_HOT_C.value <= pot_c;
        if !is_hot && self.can_spoil && self.meal.dish.props().hold != Hold::Free {
            self.stood_s += since_s;
            if MOST_STOOD_S <= self.stood_s {
                self.spoils_at.get_or_insert(now);
            }
        }
    }

    /// When the food is done, and has boiled as long as its safety asks.
    pub(super) fn ready_s(&self) -> Option<f64> {
        let watch = &self.watch;
        let done_s = match self.meal.dish.props().done_when {
            DoneWhen::Cooked => watch.done_s?,
            DoneWhen::Boils => watch.boils_s?,
        };
        if 0.0 < watch.full_boil_s {
            Some(done_s.max(watch.safe_s?))
        } else {
            Some(done_s)
        }
    }

    /// Where the heat went so far; what was found to be there was there from the start.
    pub(super) fn account(&self, air_c: f64) -> HeatAccount {
        let net = self.course.network();
        let mut account = HeatAccount::between(net, &self.before, &self.state, &self.ledger, air_c);
        account.store_before_j += self.found_j;
        account
    }
}

/// Dry food in water this warm is food that stands. Common practice, no source. [°C]
const LUKEWARM_C: f64 = 35.0;

/// Food may stand between cold and hot for so long. \[s\]
#[expect(clippy::cast_possible_truncation, reason = "four hours")]
const MOST_STOOD_S: i64 = (DISCARD_AFTER_H.value * 3600.0) as i64;

/// Full boil the dish must have had: the longer of the published times. \[s\]
fn full_boil_s(dish: Dish) -> f64 {
    dish.props()
        .full_boil
        .map_or(0.0, |boil| 60.0 * boil.advised_min.value)
}
