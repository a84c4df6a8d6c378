//! The example's today as it happens: what the household does, and how far the evening has come.

use model::cooker::Cooker;
use model::journal::{Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::sun::Sky;
use model::tonight::{Evening, Forecast, Site};

use crate::state::action::{Action, Seen};
use crate::state::document::{Document, Entry};
use crate::state::example::{PLAN_PUT_IN, hour_of, log_today, plan, sky_of_today};

/// When the told day begins: first light. [h]
const FROM_H: i64 = 6;
/// When it ends: the pot is eaten and washed. [h]
const UNTIL_H: i64 = 22;

/// Temperature of the household's water. Common practice, no source. [°C]
const WATER_C: f64 = 20.0;

/// How far the told day has come.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Phase {
    /// The sky is so; the store fills.
    Sun(Sky),
    /// The sun is down, the pot not in yet, or nothing is cooked.
    Evening,
    /// The pot is in and warms.
    PotIn,
    /// It boils.
    Boils,
    /// The food is done and out.
    Done,
}

/// First and last moment of the told day.
pub fn span_of(today: Day) -> (LocalTime, LocalTime) {
    (today.at_s(FROM_H * 3600), today.at_s(UNTIL_H * 3600))
}

/// Time that goes by at once where the day is told in half a minute, from a moment on. Most of what
/// there is to see is seen of the pot. [s]
pub fn pace_s(phase: Phase, at: LocalTime) -> i64 {
    let to_pot_s = PLAN_PUT_IN.on(at.day()).since_s(at);
    match phase {
        Phase::PotIn | Phase::Boils => 120,
        Phase::Sun(_) | Phase::Evening if 0 < to_pot_s => to_pot_s.min(1200),
        Phase::Sun(_) | Phase::Evening | Phase::Done => 1800,
    }
}

/// What the household does after one moment, up to and with another of the same day.
///
/// What it sees of its pot is what the model forecasts for it, as the figures stand.
pub fn due(document: &Document, after: LocalTime, until: LocalTime) -> Vec<Action> {
    let today = until.day();
    let is_due = |at: LocalTime| after < at && at <= until;
    let mut actions = Vec::new();
    for hour in 0..24 {
        if sky_of_today(hour).is_some() && is_due(hour_of(today, hour)) {
            actions.push(log_today(today, hour));
        }
    }
    let put_in = PLAN_PUT_IN.on(today);
    if is_due(put_in) && document.running.is_none() {
        actions
            .extend(meal_of(document, put_in).map(|meal| Action::StartMeal { at: put_in, meal }));
    }
    if let Some(running) = document.running_meal() {
        actions.extend(seen_of(document, running, until));
    }
    actions
}

/// How far the day has come at a moment of it.
pub fn phase(document: &Document, at: LocalTime) -> Phase {
    let last_meal = document
        .entries_of(at.day())
        .rev()
        .find_map(|entry| match &entry.what {
            What::Meal(meal) if entry.at <= at => Some(meal),
            _ => None,
        });
    match (last_meal, sky_of_today(at.hour())) {
        (Some(meal), _) if meal.out.is_some() => Phase::Done,
        (Some(meal), _) if meal.outcome.boiled_at.is_some() => Phase::Boils,
        (Some(_), _) => Phase::PotIn,
        (None, Some(sky)) => Phase::Sun(sky),
        (None, None) => Phase::Evening,
    }
}

/// The meal that the example's plan stands for, whatever a person planned meanwhile.
fn meal_of(document: &Document, put_in: LocalTime) -> Option<Meal> {
    let usual = document.cooker_in_use()?.cooker.pot;
    Some(plan().meal(usual, WATER_C, put_in))
}

/// What is seen of a running pot by `until` and was not noted yet.
fn seen_of(document: &Document, running: &Entry, until: LocalTime) -> Vec<Action> {
    let What::Meal(meal) = &running.what else {
        return Vec::new();
    };
    let Some(forecast) = forecast(document, running, meal) else {
        return Vec::new();
    };
    let minute = |at: LocalTime| at.ceil_to_s(60);
    let boils_at = forecast.boils_at.map(minute);
    // The household takes it out once it is ready.
    let ready_at = forecast.ready_at.unwrap_or(forecast.out_at);
    let out_at = minute(ready_at.min(forecast.out_at).max(running.at));
    let seen = |at: Option<LocalTime>, noted: Option<LocalTime>, what: fn(LocalTime) -> Seen| {
        at.filter(|at| noted.is_none() && *at <= until).map(what)
    };
    let is_over = meal.out.is_some() || out_at <= until;
    [
        seen(boils_at, meal.outcome.boiled_at, Seen::BoiledAt),
        seen(
            forecast.ready_at.map(minute),
            meal.outcome.done_at,
            Seen::DoneAt,
        ),
        seen(Some(out_at), meal.out, Seen::TakenOutAt),
    ]
    .into_iter()
    .flatten()
    .map(|seen| Action::SeeMeal {
        id: running.id,
        seen,
    })
    .chain(is_over.then_some(Action::CloseMeal))
    .collect()
}

/// What becomes of a pot that goes in when the entry says, as far as was known then.
fn forecast(document: &Document, entry: &Entry, meal: &Meal) -> Option<Forecast> {
    let household = document.household.as_ref()?;
    let cooker: &Cooker = &document.cooker(entry.cooker)?.cooker;
    let site = Site {
        place: household.place,
        air: household.air,
    };
    let mut journal: Journal = document.journal(entry.cooker);
    journal.events.retain(|event| event.at < entry.at);
    let asked = Meal {
        out: None,
        outcome: Outcome::default(),
        ..meal.clone()
    };
    // The example's own cookers can be worked out. One that was changed so that it can't be has
    // its pot left in, as nothing is known of it.
    let evening = Evening::new(&site, cooker, &journal, entry.at, entry.at).ok()?;
    Some(evening.ask(&asked, entry.at).ok()?.as_told)
}
