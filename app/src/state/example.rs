//! The example household: five people and two cookers in a hill town that is on no map.
//!
//! Its story is told as the actions that such a household would have sent, each at its own time,
//! so that it can hold nothing that a person could not have entered. It is the same for everyone
//! on the same day, however late it is; what has not happened yet by `now` is left out.

mod days;
#[cfg(test)]
mod tests;
pub mod today;

use model::dish::Dish;
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::pot::Lid;
use model::presets::Preset;
use model::sun::{DayLog, Sky, SolarDay};

use crate::order::in_order;
use crate::state::action::{Action, apply};
use crate::state::document::{Document, Household, Whose};
use crate::state::ids::CookerId;
use crate::state::plan::{Amount, Plan, TimeOfDay};

/// Where the town would be: on the sea, so that it is nobody's.
const PLACE: Place = Place {
    latitude_deg: 14.0,
    longitude_deg: -30.0,
    altitude_m: 1600.0,
    utc_offset_min: -120,
};

/// Its air: cool nights, a warm spring. [°C]
const AIR: AirYear = AirYear {
    day_c: [
        23.0, 24.5, 26.0, 27.0, 26.5, 25.0, 23.5, 23.5, 24.0, 24.0, 23.5, 23.0,
    ],
    night_c: [
        10.0, 11.0, 12.5, 14.0, 14.5, 14.5, 14.0, 14.0, 13.5, 12.5, 11.5, 10.0,
    ],
};

/// The cooker in use, as the children call it: a block of aluminium. The first thing that is made
/// gets the first number.
const RUFO: CookerId = CookerId(0);
/// The older one, of soapstone.
const BRINA: CookerId = CookerId(1);

/// When the pot of the example's plan goes in.
const PLAN_PUT_IN: TimeOfDay = TimeOfDay::at(17, 45);
/// When it is to be eaten.
const PLAN_EAT: TimeOfDay = TimeOfDay::at(19, 30);

/// Days before today that the diary goes back.
const DAYS_BACK: i32 = 13;

/// The first hour of the day that has a sky in the example. [h]
pub const FIRST_HOUR: usize = 6;

/// Something done, and when.
type Step = (LocalTime, Action);

/// The example household as it stands at `now`, ready to be looked at.
pub fn example_document(now: LocalTime) -> Document {
    let mut document = Document::new(Whose::Example);
    for (at, action) in story(now.day()) {
        if at <= now {
            // Only a clock that is wrong by decades has anything refused. The household and its
            // cookers are there even then.
            let _ = apply(&mut document, action, at);
        }
    }
    document
}

/// Whether an example that was left at some time is of no use at `now`: it stopped on another day,
/// or it knows of what has not happened yet.
pub fn is_stale(document: &Document, now: LocalTime) -> bool {
    let last_day = |document: &Document| document.days().map(|(_, last)| last);
    let knows_later = |at: LocalTime| now < at;
    let today = match document.skies.get(&now.day()) {
        Some(DayLog::Hourly(skies)) => skies.iter().rposition(Option::is_some),
        Some(DayLog::SunHours(_)) | None => None,
    };
    last_day(document) != last_day(&example_document(now))
        || document.entries.iter().any(|entry| knows_later(entry.at))
        || today.is_some_and(|hour| knows_later(hour_of(now.day(), hour)))
}

/// The sky that the example's today has in an hour; none at night.
pub fn sky_of_today(hour: usize) -> Option<Sky> {
    let idx = hour.checked_sub(FIRST_HOUR)?;
    days::TODAY.get(idx).copied()
}

/// Logs today's skies up to an hour, that one too.
pub fn log_today(today: Day, last_hour: usize) -> Action {
    let mut skies = [None; 24];
    for (hour, sky) in skies.iter_mut().enumerate().take(last_hour + 1) {
        *sky = sky_of_today(hour);
    }
    set_sky(today, DayLog::Hourly(skies))
}

/// The example's plan for tonight.
pub fn plan() -> Plan {
    Plan {
        dish: Dish::WhiteRice,
        amount: Amount::People(5),
        pot: None,
        lid: Lid::On,
        put_in: Some(PLAN_PUT_IN),
        eat: PLAN_EAT,
        start_c: None,
    }
}

/// Everything that was done until the end of `today`, by time.
fn story(today: Day) -> Vec<Step> {
    let start = today.plus(-DAYS_BACK).start();
    let mut steps = set_up(start);
    for (n_back, told) in (0..=DAYS_BACK).rev().zip(days::BEFORE_TODAY) {
        let day = today.plus(-n_back);
        steps.extend(days::steps_of(day, told));
    }
    for hour in (FIRST_HOUR..24).take(days::TODAY.len()) {
        steps.push((hour_of(today, hour), log_today(today, hour)));
    }
    in_order(steps, |a, b| a.0.cmp(&b.0))
}

fn set_up(at: LocalTime) -> Vec<Step> {
    let household = Household {
        place: PLACE,
        air: AIR,
        people: 5,
    };
    let build = |preset: Preset, panels_w| Box::new(preset.cooker(panels_w, PLACE.latitude_deg));
    [
        Action::SetUp {
            household,
            name: "Rufo".into(),
            cooker: build(Preset::AluminiumInPerlite, 200.0),
        },
        Action::AddCooker {
            name: "Brina".into(),
            cooker: build(Preset::SoapstoneInVermiculite, 250.0),
        },
        Action::UseCooker(RUFO),
        Action::ChangePlan(plan()),
    ]
    .into_iter()
    .map(|action| (at, action))
    .collect()
}

fn set_sky(day: Day, log: DayLog) -> Action {
    // The latitude is on earth and every day of the calendar has its number in the year.
    let possible_h =
        SolarDay::new(PLACE.latitude_deg, day.of_year()).map_or(12.0, |solar| solar.daylight_h);
    Action::SetSky {
        day,
        log,
        possible_h,
    }
}

fn hour_of(day: Day, hour: usize) -> LocalTime {
    day.at_s(i64::try_from(hour).unwrap_or(0) * 3600)
}
