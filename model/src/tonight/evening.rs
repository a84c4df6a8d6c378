//! The store from the first logged day to now.

use crate::cooker::Cooker;
use crate::journal::Meal;
use crate::journal::{Journal, What};
use crate::local_time::{Day, LocalTime};
use crate::network::{Ledger, State};
use crate::tonight::answer::{Answer, Forecast, LatestPutIn, answer, latest};
use crate::tonight::course::{Act, Course, acts, seconds};
use crate::tonight::help::{Offers, help};
use crate::tonight::track::Track;
use crate::tonight::weather::Guess;
use crate::tonight::{LastBoil, Leaning, Point, Rig, Site, TonightError, Wear, Weather};

/// Days carried through before now: a store forgets what it held within two or three.
const DAYS_BACK: i32 = 14;
/// Days carried through before now for the leanings, which are not plotted.
const DAYS_BACK_LEANING: i32 = 5;
/// Days worked out after today.
const DAYS_AHEAD: i32 = 2;
/// Less wear than this is not worth a second look.
const WORN_SHARE: f64 = 0.005;
/// Step of the points kept of the past. \[s\]
const POINT_STEP_S: f64 = 1800.0;

/// The store as it is thought to be now.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StoreNow {
    /// Temperature of the store, mixed. [°C]
    pub store_c: f64,
    /// The same, leaning against and in favour of the cook. [°C]
    pub band_c: (f64, f64),
    /// Litres of water of 20 °C that the heat above the boil would bring to the boil. \[L\]
    pub litres: f64,
    /// Share of the useful span, boil to cut-out, that is full: 0 to 1.
    pub full_share: f64,
    /// Share of the melting medium that is still molten; `None` where nothing melts.
    pub molten_share: Option<f64>,
    /// Whether a pot is in.
    pub pot_is_in: bool,
}

/// What makes an answer less sure than it looks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Doubt {
    /// Nothing at all was logged: the store is taken to be cold.
    NothingLogged,
    /// The sky of a day was not logged: sun and clouds by turns are assumed.
    SkyNotLogged(Day),
    /// A pot was put in while another was in: the other is taken to have come out.
    PotsOverlap(LocalTime),
}

/// One of the three ways an evening may go: figures, weather, and the store at its start.
#[derive(Debug, Clone, Copy)]
pub(super) struct Side<'a> {
    leaning: Leaning,
    weather: &'a Weather,
    state: &'a State,
}

/// A household's cooker carried to the present, three times over.
#[derive(Debug, Clone)]
pub struct Evening {
    cooker: Cooker,
    rig: Rig,
    /// As told, against, in favour; so for the stores.
    weathers: [Weather; 3],
    journal: Journal,
    from: LocalTime,
    /// Stores at `from`.
    states: [State; 3],
    points: Vec<Point>,
    taken: Vec<(Day, f64)>,
    doubts: Vec<Doubt>,
    site: Site,
    wear: Option<Wear>,
}

impl Evening {
    /// Carries the cooker through its journal up to `from`, which is now or, for a pot that is in
    /// already, when it went in.
    ///
    /// A sky that nobody wrote down is taken as [`ORDINARY_SKY`](crate::tonight::ORDINARY_SKY),
    /// as grey leaning against the cook, and as clear leaning in favour; the hours of today that
    /// are to come follow the last sky that was logged, a step darker or brighter.
    ///
    /// # Arguments
    ///
    /// * `journal`: events up to `from`, and at it, are carried through; those after it are left
    ///   for [`Evening::ask`], which minds readings and pots that come out.
    /// * `now`: on the kitchen clock; the hours after it are a guess.
    ///
    /// # Errors
    ///
    /// [`TonightError`] for a place, a cooker or a log that makes no sense.
    pub fn new(
        site: &Site,
        cooker: &Cooker,
        journal: &Journal,
        now: LocalTime,
        from: LocalTime,
    ) -> Result<Self, TonightError> {
        let fresh = Self::worn(site, cooker, journal, now, from)?;
        let Some(wear) = fresh.wear else {
            return Ok(fresh);
        };
        if wear.converted - cooker.store.converted < WORN_SHARE {
            return Ok(fresh);
        }
        let mut worn = cooker.clone();
        worn.store.converted = wear.converted;
        let mut evening = Self::worn(site, &worn, journal, now, from)?;
        evening.wear = Some(wear);
        Ok(evening)
    }

    /// The same with the melt as worn as the description says.
    fn worn(
        site: &Site,
        cooker: &Cooker,
        journal: &Journal,
        now: LocalTime,
        from: LocalTime,
    ) -> Result<Self, TonightError> {
        let rig = Rig::new(site, cooker)?;
        let today = now.day();
        let earliest = today.plus(-DAYS_BACK);
        let first = journal
            .first_day()
            .map_or(today, |day| day.clamp(earliest, today));
        let weather = Weather::new(&rig, &journal.skies, first, today.plus(DAYS_AHEAD), now)?;
        let mut points = Track::every(POINT_STEP_S, first.start());
        let (as_told, taken) = carried(
            &rig,
            &weather,
            journal,
            Leaning::AS_TOLD,
            (first, from),
            &mut points,
        )?;
        let lately = first.max(today.plus(-DAYS_BACK_LEANING));
        let guessed = |guess| weather.guessed(&rig, &journal.skies, lately, now, guess);
        let (dim, bright) = (guessed(Guess::Dim)?, guessed(Guess::Bright)?);
        let leaning = |leaning, weather| {
            let unwatched = &mut Track::default();
            let span = (lately, from);
            carried(&rig, weather, journal, leaning, span, unwatched).map(|(state, _)| state)
        };
        let states = [
            as_told,
            leaning(Leaning::against(cooker, None), &dim)?,
            leaning(Leaning::in_favour(cooker, None), &bright)?,
        ];
        Ok(Self {
            cooker: cooker.clone(),
            weathers: [weather, dim, bright],
            journal: journal.clone(),
            from,
            states,
            wear: Wear::of(&cooker.store, journal, &points.points, today)?,
            site: *site,
            points: points.points,
            taken,
            doubts: doubts(journal, first, today),
            rig,
        })
    }

    /// The store at `from`.
    ///
    /// # Errors
    ///
    /// As [`Evening::new`].
    pub fn store(&self) -> Result<StoreNow, TonightError> {
        let net = self.rig.network(&Leaning::AS_TOLD, false)?;
        let [as_told, against, in_favour] = &self.states;
        let melting = self.rig.melting_medium();
        Ok(StoreNow {
            store_c: as_told.mixed_store_c(&net),
            band_c: (against.mixed_store_c(&net), in_favour.mixed_store_c(&net)),
            litres: self.rig.litres(as_told.store_j(), self.cooker.pot)?,
            full_share: self.rig.full_share(as_told.store_j())?,
            molten_share: melting.map(|medium| 1.0 - as_told.solid_fraction(&net, medium)),
            pot_is_in: as_told.pot().is_some(),
        })
    }

    /// The cooker put together.
    pub fn rig(&self) -> &Rig {
        &self.rig
    }

    /// The sun's heat, day by day.
    pub fn weather(&self) -> &Weather {
        let [as_told, ..] = &self.weathers;
        as_told
    }

    /// Store and pots of the past, each half hour.
    pub fn points(&self) -> &[Point] {
        &self.points
    }

    /// What the store took of the sun's heat on a day, by the figures as they stand: not what came
    /// while it was cut out, or the heater off. A day that is not over is carried on to its end with
    /// the sky that is expected. None for a day that was not carried through. \[J\]
    ///
    /// # Errors
    ///
    /// As [`Evening::new`].
    pub fn sun_taken_j(&self, day: Day) -> Result<Option<f64>, TonightError> {
        let Some((_, taken_j)) = self.taken.iter().find(|(of, _)| *of == day) else {
            return Ok(None);
        };
        let [as_told, ..] = &self.states;
        let mut state = *as_told;
        let course = Course::new(&self.rig, self.weather(), &self.journal, Leaning::AS_TOLD)?;
        let end = day.plus(1).start();
        let to_come = acts(&self.journal);
        let to_come = (to_come.iter()).filter(|(at, _)| self.from < *at && *at < end);
        let mut sum_j = *taken_j;
        let (ledger, watch) = (&mut Ledger::default(), &mut Track::default());
        for (at, act) in to_come {
            sum_j += course.advance(&mut state, *at, ledger, watch)?;
            course.act(&mut state, *act)?;
        }
        Ok(Some(
            sum_j + course.advance(&mut state, end, ledger, watch)?,
        ))
    }

    /// The wear of a sugar alcohol; `None` where nothing wears. The store is carried as worn as that.
    pub fn wear(&self) -> Option<&Wear> {
        self.wear.as_ref()
    }

    /// The date from which a pot like this no longer boils on the wearing store, if it goes on as it
    /// does; `None` where it always will or nothing wears.
    ///
    /// # Errors
    ///
    /// As [`Evening::ask`].
    pub fn last_boil(
        &self,
        meal: &Meal,
        put_in: LocalTime,
    ) -> Result<Option<LastBoil>, TonightError> {
        let Some(wear) = &self.wear else {
            return Ok(None);
        };
        let (_, air_c) = self.weather().at(put_in);
        wear.last_boil((&self.site, &self.cooker), meal, put_in, air_c)
    }

    /// What makes the answer less sure.
    pub fn doubts(&self) -> &[Doubt] {
        &self.doubts
    }

    /// What becomes of a pot that goes in at `put_in`, no earlier than `from`.
    ///
    /// # Errors
    ///
    /// As [`Evening::new`], and for a pot that makes no sense.
    pub fn ask(&self, meal: &Meal, put_in: LocalTime) -> Result<Answer, TonightError> {
        answer(self, meal, put_in)
    }

    /// The latest that a pot can go in. Each time that is tried is worked out to its end, so this
    /// takes many times as long as an answer.
    ///
    /// # Errors
    ///
    /// As [`Evening::ask`].
    pub fn latest_put_in(&self, meal: &Meal) -> Result<LatestPutIn, TonightError> {
        latest(self, meal)
    }

    /// At most three changes that would have the meal ready in time, even leaning against the
    /// cook; where none does, some that make it likelier. Each is worked out. None where it is
    /// ready anyway.
    ///
    /// # Errors
    ///
    /// As [`Evening::ask`].
    pub fn help(&self, meal: &Meal, put_in: LocalTime) -> Result<Offers, TonightError> {
        help(self, meal, put_in)
    }

    /// Whether a meal would stand too long between cold and hot before it is eaten, as things stand:
    /// what nobody may be advised to do.
    ///
    /// # Errors
    ///
    /// As [`Evening::ask`].
    pub fn spoils(&self, meal: &Meal, put_in: LocalTime) -> Result<bool, TonightError> {
        let [as_told, ..] = self.sides(meal);
        let forecast = self.forecast(as_told, meal, put_in, false)?;
        Ok(forecast.is_spoilt_by(meal.eat_at))
    }

    /// The three ways an evening with a dish may go: as told, against, in favour.
    pub(super) fn sides(&self, meal: &Meal) -> [Side<'_>; 3] {
        let [as_told, against, in_favour] = &self.states;
        let [ordinary, dim, bright] = &self.weathers;
        let side = |leaning, weather, state| Side {
            leaning,
            weather,
            state,
        };
        let dish = Some(meal.dish);
        [
            side(Leaning::AS_TOLD, ordinary, as_told),
            side(Leaning::against(&self.cooker, dish), dim, against),
            side(Leaning::in_favour(&self.cooker, dish), bright, in_favour),
        ]
    }

    /// One forecast.
    pub(super) fn forecast(
        &self,
        side: Side<'_>,
        meal: &Meal,
        put_in: LocalTime,
        keep_points: bool,
    ) -> Result<Forecast, TonightError> {
        let course = Course::new(&self.rig, side.weather, &self.journal, side.leaning)?;
        let later: Vec<(LocalTime, Act<'_>)> = acts(&self.journal)
            .into_iter()
            .filter(|(at, act)| self.from < *at && matches!(act, Act::Reading(_) | Act::PotOut))
            .collect();
        Forecast::run(&course, *side.state, meal, put_in, &later, keep_points)
    }

    pub(super) fn from(&self) -> LocalTime {
        self.from
    }
}

/// Carries a cold store from the start of a day through the journal. Tells of each day what it took
/// of the sun's heat. \[J\]
fn carried(
    rig: &Rig,
    weather: &Weather,
    journal: &Journal,
    leaning: Leaning,
    (first, until): (Day, LocalTime),
    track: &mut Track,
) -> Result<(State, Vec<(Day, f64)>), TonightError> {
    let course = Course::new(rig, weather, journal, leaning)?;
    let mut state = course.cold(first.start())?;
    let mut ledger = Ledger::default();
    let mut taken = vec![(first, 0.0)];
    let mut advance = |state: &mut State, to: LocalTime| {
        while let Some((day, taken_j)) = taken.last_mut() {
            let midnight = day.plus(1).start();
            *taken_j += course.advance(state, to.min(midnight), &mut ledger, track)?;
            if to < midnight {
                break;
            }
            let next = day.plus(1);
            taken.push((next, 0.0));
        }
        Ok::<(), TonightError>(())
    };
    for (at, act) in acts(journal) {
        if until < at {
            break;
        }
        if seconds(at) < state.time_s() {
            continue;
        }
        advance(&mut state, at)?;
        course.act(&mut state, act)?;
    }
    advance(&mut state, until)?;
    Ok((state, taken))
}

fn doubts(journal: &Journal, first: Day, today: Day) -> Vec<Doubt> {
    if journal.first_day().is_none() {
        return vec![Doubt::NothingLogged];
    }
    let mut doubts = Vec::new();
    let mut day = first;
    while day <= today {
        if !journal.skies.contains_key(&day) {
            doubts.push(Doubt::SkyNotLogged(day));
        }
        day = day.plus(1);
    }
    let mut busy_until: Option<LocalTime> = None;
    for event in &journal.events {
        if let What::Meal(meal) = &event.what {
            if busy_until.is_some_and(|until| event.at < until) {
                doubts.push(Doubt::PotsOverlap(event.at));
            }
            busy_until = Some(meal.leaves_at());
        }
    }
    doubts
}
