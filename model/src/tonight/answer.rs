//! What becomes of a pot, and how sure that is.

use crate::journal::Meal;
use crate::local_time::LocalTime;
use crate::network::{Ledger, State};
use crate::tonight::course::{Act, Course, local, seconds};
use crate::tonight::track::{PotWatch, Track};
use crate::tonight::{Evening, HeatAccount, Point, TonightError};

/// How long after the meal's hour the pot is still followed, to tell when it would have been
/// ready. [s]
const FOLLOW_S: i64 = 5 * 3600;
/// Step of the points for the plot. [s]
const POINT_STEP_S: f64 = 120.0;
/// Steps in which the latest time to put the pot in is first sought. [s]
const SEARCH_STEP_S: i64 = 900;
/// And how closely it is found. [s]
const SEARCH_END_S: i64 = 60;

/// Whether the meal is ready in time, by all three leanings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Not even leaning in favour of the cook.
    No,
    /// Only leaning in favour.
    Doubtful,
    /// With the figures as they stand, but not leaning against.
    Likely,
    /// Even leaning against the cook.
    Yes,
}

/// What becomes of one pot under one leaning.
#[derive(Debug, Clone, PartialEq)]
pub struct Forecast {
    /// When it first boils.
    pub boils_at: Option<LocalTime>,
    /// When the food is done and its safety rule is kept.
    pub ready_at: Option<LocalTime>,
    /// Hottest the pot gets before the meal. [°C]
    pub hottest_c: f64,
    /// Share of its cooking the food has had at the meal's hour; 1 is done.
    pub doneness: f64,
    /// Water gone as steam by the meal. [kg]
    pub boiled_away_kg: f64,
    /// The water is all gone before the meal: it burns.
    pub boils_dry: bool,
    /// Store at the meal. [°C]
    pub store_after_c: f64,
    /// Pot at the meal. [°C]
    pub pot_after_c: f64,
    /// Where the heat went, to the meal.
    pub account: HeatAccount,
    /// Store and pot for the plot, where asked for.
    pub points: Vec<Point>,
}

/// The three forecasts, and what follows from them.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// In a word.
    pub verdict: Verdict,
    /// With the figures as they stand.
    pub as_told: Forecast,
    /// Leaning against the cook.
    pub against: Forecast,
    /// Leaning in favour.
    pub in_favour: Forecast,
    /// The latest the pot can go in and be ready in time, leaning against the cook; `None` where
    /// it can't.
    pub latest_put_in: Option<LocalTime>,
    /// The same with the figures as they stand.
    pub latest_put_in_as_told: Option<LocalTime>,
}

impl Forecast {
    /// Whether the meal is ready at its hour, and not burnt.
    pub fn is_ready_by(&self, eat_at: LocalTime) -> bool {
        !self.boils_dry && self.ready_at.is_some_and(|ready_at| ready_at <= eat_at)
    }

    pub(super) fn run(
        course: &Course<'_>,
        mut state: State,
        meal: &Meal,
        put_in: LocalTime,
        readings: &[(LocalTime, Act<'_>)],
        keep_points: bool,
    ) -> Result<Self, TonightError> {
        let leaves_at = meal.leaves_at().max(put_in);
        let start = local(state.time_s());
        let mut watch = PotWatch {
            track: if keep_points { Track::every(POINT_STEP_S, start) } else { Track::default() },
            full_boil_s: 60.0 * meal.dish.full_boil_min(),
            ..PotWatch::default()
        };
        let mut readings = readings.iter().peekable();
        let mut advance = |state: &mut State, to, ledger: &mut Ledger, watch: &mut PotWatch| {
            while let Some((at, act)) = readings.next_if(|(at, _)| *at < to) {
                course.advance(state, *at, ledger, watch)?;
                course.act(state, *act)?;
            }
            course.advance(state, to, ledger, watch)
        };

        advance(&mut state, put_in, &mut Ledger::default(), &mut watch)?;
        state.take_pot_out();
        course.act(&mut state, Act::PotIn(meal))?;
        let before = state;
        let mut ledger = Ledger::default();
        let mut hottest = Hottest::default();
        let mut at = put_in;
        while at < leaves_at {
            let next = at.plus_s(60).min(leaves_at);
            advance(&mut state, next, &mut ledger, &mut watch)?;
            hottest.see(&state);
            at = next;
        }
        let net = course.network();
        let after = state;
        let pot = after.pot();
        let air_c = course.air_c(put_in);
        let account = HeatAccount::between(net, &before, &after, &ledger, air_c);
        let boils_dry = watch.boils_dry;
        if meal.out.is_none() {
            let follow = leaves_at.plus_s(FOLLOW_S);
            watch.track = Track { points: std::mem::take(&mut watch.track.points), ..Track::default() };
            advance(&mut state, follow, &mut Ledger::default(), &mut watch)?;
        }
        watch.close(&state);
        Ok(Self {
            boils_at: watch.boils_s.map(local),
            ready_at: ready_s(meal, &watch).map(local),
            hottest_c: hottest.0,
            doneness: pot.map_or(0.0, crate::network::PotState::doneness),
            boiled_away_kg: meal.water_kg - pot.map_or(meal.water_kg, crate::network::PotState::water_kg),
            boils_dry,
            store_after_c: after.store_c(net),
            pot_after_c: pot.map_or(f64::NAN, crate::network::PotState::t_c),
            account,
            points: watch.track.points,
        })
    }
}

/// When the food is done, and has boiled as long as its safety asks.
fn ready_s(meal: &Meal, watch: &PotWatch) -> Option<f64> {
    let done_s = if meal.dish.cook_rate().is_some() { watch.done_s? } else { watch.boils_s? };
    if 0.0 < watch.full_boil_s { Some(done_s.max(watch.safe_s?)) } else { Some(done_s) }
}

/// The hottest a pot has been seen. [°C]
#[derive(Debug, Clone, Copy)]
struct Hottest(f64);

impl Default for Hottest {
    fn default() -> Self {
        Self(f64::NEG_INFINITY)
    }
}

impl Hottest {
    fn see(&mut self, state: &State) {
        if let Some(pot) = state.pot() {
            self.0 = self.0.max(pot.t_c());
        }
    }
}

pub(super) fn answer(
    evening: &Evening,
    meal: &Meal,
    put_in: LocalTime,
) -> Result<Answer, TonightError> {
    let [as_told, against, in_favour] = evening.leanings(meal);
    let told = evening.forecast(as_told, meal, put_in, true)?;
    let least = evening.forecast(against, meal, put_in, false)?;
    let most = evening.forecast(in_favour, meal, put_in, false)?;
    let ready = |forecast: &Forecast| forecast.is_ready_by(meal.eat_at);
    let verdict = match (ready(&least), ready(&told), ready(&most)) {
        (true, true, _) => Verdict::Yes,
        (_, true, _) => Verdict::Likely,
        (_, false, true) | (true, false, _) => Verdict::Doubtful,
        (false, false, false) => Verdict::No,
    };
    Ok(Answer {
        verdict,
        latest_put_in: latest_put_in(evening, against, meal)?,
        latest_put_in_as_told: latest_put_in(evening, as_told, meal)?,
        as_told: told,
        against: least,
        in_favour: most,
    })
}

/// The last minute at which the pot may go in, sought backwards from the meal.
fn latest_put_in(
    evening: &Evening,
    from: (crate::tonight::Leaning, &State),
    meal: &Meal,
) -> Result<Option<LocalTime>, TonightError> {
    let earliest = evening.from();
    let meal = &Meal { out: None, ..meal.clone() };
    let works = |put_in: LocalTime| -> Result<bool, TonightError> {
        Ok(evening.forecast(from, meal, put_in, false)?.is_ready_by(meal.eat_at))
    };
    let mut late = meal.eat_at;
    let mut early = late;
    loop {
        if early <= earliest {
            return Ok(None);
        }
        early = early.plus_s(-SEARCH_STEP_S).max(earliest);
        if works(early)? {
            break;
        }
        late = early;
    }
    while SEARCH_END_S < late.since_s(early) {
        let middle = early.plus_s(late.since_s(early) / 2);
        if works(middle)? { early = middle } else { late = middle }
    }
    debug_assert!(seconds(early) <= seconds(late));
    Ok(Some(early))
}
