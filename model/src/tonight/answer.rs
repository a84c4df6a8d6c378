//! What becomes of a pot, and how sure that is.

use crate::journal::{Meal, Outcome};
use crate::local_time::LocalTime;
use crate::network::{Ledger, PotState, State};
use crate::tonight::course::{Act, Course, local};
use crate::tonight::evening::Side;
use crate::tonight::stay::Stay;
use crate::tonight::track::Track;
use crate::tonight::{Evening, HeatAccount, Point, TonightError};

/// How long after the meal's hour the pot is still followed, to tell when it would have been
/// ready. \[s\]
const FOLLOW_S: i64 = 5 * 3600;
/// How long after the meal's hour the plot goes on. \[s\]
const PLOT_S: i64 = 1800;
/// A pot is looked at this often to see whether it can come out. \[s\]
const LOOK_S: i64 = 300;
/// And this often where only the instants count, which are found exactly either way. \[s\]
const GLANCE_S: i64 = 600;
/// Step of the points for the plot. \[s\]
const POINT_STEP_S: f64 = 120.0;
/// Steps in which the latest time to put the pot in is first sought. \[s\]
const SEARCH_STEP_S: i64 = 900;
/// And how closely it is found. \[s\]
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
    /// Hottest the pot gets while it is in. [°C]
    pub hottest_c: f64,
    /// Share of its cooking the food has had when it comes out; 1 is done.
    pub doneness: f64,
    /// Water gone as steam by then. \[kg\]
    pub boiled_away_kg: f64,
    /// When the pot comes out: as planned, or at the meal's hour, or before the food burns; once it
    /// is ready where no points are kept.
    pub out_at: LocalTime,
    /// When the water would all be gone if the pot stayed in, and the food burn. Followed for some
    /// hours past the meal where points are kept, to its coming out otherwise.
    pub dry_at: Option<LocalTime>,
    /// When the food has stood in the cooker below [`HOLD_HOT_C`](crate::dish::HOLD_HOT_C) for
    /// [`DISCARD_AFTER_H`](crate::dish::DISCARD_AFTER_H) and must be thrown away; counted from
    /// when dry food was hot, from the start for fresh food, to its coming out. None for water.
    pub spoils_at: Option<LocalTime>,
    /// Store when the pot comes out. [°C]
    pub store_after_c: f64,
    /// Pot when it comes out. [°C]
    pub pot_after_c: f64,
    /// Where the heat went while the pot was in.
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
}

/// The latest that a pot can go in and be ready in time; `None` where it can't.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LatestPutIn {
    /// Leaning against the cook.
    pub against: Option<LocalTime>,
    /// With the figures as they stand.
    pub as_told: Option<LocalTime>,
}

impl Forecast {
    /// Whether the meal is ready at its hour, and not burnt.
    pub fn is_ready_by(&self, eat_at: LocalTime) -> bool {
        let moist = |ready_at| self.dry_at.is_none_or(|dry_at| ready_at <= dry_at);
        self.ready_at
            .is_some_and(|ready_at| ready_at <= eat_at && moist(ready_at))
    }

    /// Whether the food has stood too long between cold and hot before its hour, be it ready or not.
    pub fn is_spoilt_by(&self, eat_at: LocalTime) -> bool {
        self.spoils_at.is_some_and(|spoils_at| spoils_at <= eat_at)
    }

    /// `later` are the acts after the state's time; of those after the pot went in, only readings
    /// count.
    pub(super) fn run(
        course: &Course<'_>,
        mut state: State,
        meal: &Meal,
        put_in: LocalTime,
        later: &[(LocalTime, Act<'_>)],
        keep_points: bool,
    ) -> Result<Self, TonightError> {
        let leaves_at = meal.leaves_at().max(put_in);
        let start = local(state.time_s());
        let mut track = if keep_points {
            Track::every(POINT_STEP_S, start)
        } else {
            Track::default()
        };
        for (at, act) in later.iter().take_while(|(at, _)| *at <= put_in) {
            course.advance(&mut state, *at, &mut Ledger::default(), &mut track)?;
            course.act(&mut state, *act)?;
        }
        course.advance(&mut state, put_in, &mut Ledger::default(), &mut track)?;
        state.take_pot_out();
        course.act(&mut state, Act::PotIn(meal))?;

        let mut stay = Stay::begin(course, state, meal, put_in, later);
        stay.watch.track = track;
        let look_s = if keep_points { LOOK_S } else { GLANCE_S };
        let mut out_at = put_in;
        while out_at < leaves_at {
            out_at = out_at.plus_s(look_s).min(leaves_at);
            stay.advance(out_at)?;
            stay.look(out_at, look_s);
            let is_ready = meal.out.is_none() && stay.ready_s().is_some();
            // What is ready may stay in until the meal, unless it would burn. Where nobody looks
            // at the points, what becomes of it then is not asked.
            if is_ready && (!keep_points || stay.watch.dry_s.is_some()) {
                break;
            }
        }
        let after = stay.state;
        let account = stay.account(course.air_c(put_in));
        if keep_points {
            // The plot goes on with the store alone, the question of burning with the pot left in.
            let mut alone = after;
            alone.take_pot_out();
            let plot_end = leaves_at.plus_s(PLOT_S);
            let track = &mut stay.watch.track;
            course.advance(&mut alone, plot_end, &mut Ledger::default(), track)?;
            track.stop();
            stay.advance(leaves_at.plus_s(FOLLOW_S))?;
        }
        let ready_at = stay.ready_s().map(local);
        let pot = after.pot();
        Ok(Self {
            boils_at: stay.watch.boils_s.map(local),
            ready_at,
            hottest_c: stay.hottest_c,
            doneness: pot.map_or(0.0, PotState::doneness),
            boiled_away_kg: water_kg(&stay.before) - water_kg(&after),
            out_at,
            dry_at: stay.watch.dry_s.map(local),
            spoils_at: stay.spoils_at,
            store_after_c: after.store_c(course.network()),
            pot_after_c: pot.map_or(meal.start_c, PotState::t_c),
            account,
            points: stay.watch.track.points,
        })
    }
}

/// Water in the pot. \[kg\]
fn water_kg(state: &State) -> f64 {
    state.pot().map_or(0.0, PotState::water_kg)
}

pub(super) fn answer(
    evening: &Evening,
    meal: &Meal,
    put_in: LocalTime,
) -> Result<Answer, TonightError> {
    let [as_told, against, in_favour] = evening.sides(meal);
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
        as_told: told,
        against: least,
        in_favour: most,
    })
}

pub(super) fn latest(evening: &Evening, meal: &Meal) -> Result<LatestPutIn, TonightError> {
    let [as_told, against, _] = evening.sides(meal);
    Ok(LatestPutIn {
        against: latest_put_in(evening, against, meal)?,
        as_told: latest_put_in(evening, as_told, meal)?,
    })
}

/// The last minute at which the pot may go in, sought backwards from the meal.
fn latest_put_in(
    evening: &Evening,
    side: Side<'_>,
    meal: &Meal,
) -> Result<Option<LocalTime>, TonightError> {
    let earliest = evening.from();
    let meal = &Meal {
        out: None,
        outcome: Outcome::default(),
        ..meal.clone()
    };
    let works = |put_in: LocalTime| -> Result<bool, TonightError> {
        Ok(evening
            .forecast(side, meal, put_in, false)?
            .is_ready_by(meal.eat_at))
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
        if works(middle)? {
            early = middle;
        } else {
            late = middle;
        }
    }
    Ok(Some(early))
}
