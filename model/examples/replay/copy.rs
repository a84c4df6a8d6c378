//! The copy that the app writes: JSON in an envelope that names form and version.

use std::collections::BTreeMap;

use model::cooker::Cooker;
use model::dish::Dish;
use model::journal::{Event, Felt, Formerly, Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::place::{AirYear, Place};
use model::pot::{Lid, Pot};
use model::sun::{DayLog, Sky};
use model::tonight::Site;
use serde::de::Error;
use serde::{Deserialize, Deserializer};

use super::cooker::SavedCooker;
use super::when::{day, instant, maybe_instant};

/// A household as far as its cookers are concerned.
pub(crate) struct Household {
    pub(crate) site: Site,
    pub(crate) cookers: Vec<Owned>,
    pub(crate) saved_at: LocalTime,
}

/// A cooker with its diary.
pub(crate) struct Owned {
    pub(crate) name: String,
    pub(crate) cooker: Cooker,
    pub(crate) journal: Journal,
}

/// Reads a copy; an error names the field.
pub(crate) fn read(text: &str) -> Result<Household, String> {
    let head: Head = parsed(text)?;
    if head.format != "duskpot" {
        return Err(format!("format: \"{}\" is not duskpot", head.format));
    }
    if head.version != 1 {
        return Err(format!("version: {} is not 1", head.version));
    }
    let copy: Copy = parsed(text)?;
    let Some(household) = copy.body.household else {
        return Err("body.household: there is none yet".into());
    };
    let air = AirYear {
        day_c: household.air_day_c,
        night_c: household.air_night_c,
    };
    let place = Place {
        latitude_deg: household.latitude_deg,
        longitude_deg: household.longitude_deg,
        altitude_m: household.altitude_m,
        utc_offset_min: household.utc_offset_min,
    };
    place
        .checked()
        .and(air.checked())
        .map_err(|error| format!("body.household: {error}"))?;
    let skies: BTreeMap<Day, DayLog> = copy.body.skies;
    let mut cookers = Vec::new();
    for owned in copy.body.cookers {
        let entries = copy.body.entries.iter().enumerate();
        let mut events = Vec::new();
        for (idx, entry) in entries.filter(|(_, entry)| entry.cooker == owned.id) {
            let what = entry.what.what();
            checked(&what).map_err(|error| format!("body.entries[{idx}].what.{error}"))?;
            events.push(Event { at: entry.at, what });
        }
        events.sort_by_key(|event| event.at);
        let formerly = owned.formerly.into_iter().map(|former| Formerly {
            until: former.until,
            cooker: former.cooker.cooker(),
        });
        cookers.push(Owned {
            name: owned.name,
            cooker: owned.cooker.cooker(),
            journal: Journal {
                skies: skies.clone(),
                events,
                formerly: formerly.collect(),
            },
        });
    }
    Ok(Household {
        site: Site { place, air },
        cookers,
        saved_at: copy.saved_at,
    })
}

fn parsed<'t, T: Deserialize<'t>>(text: &'t str) -> Result<T, String> {
    let mut json = serde_json::Deserializer::from_str(text);
    serde_path_to_error::deserialize(&mut json).map_err(|error| {
        // What is missing at the top has no path; its own words name it.
        match error.path().iter().next() {
            Some(_) => format!("{}: {}", error.path(), error.inner()),
            None => format!("the copy itself: {}", error.inner()),
        }
    })
}

/// Refuses amounts that no pot and no thermometer has.
fn checked(what: &What) -> Result<(), String> {
    let within = |name: &str, value: f64, least: f64, most: f64| {
        if (least..=most).contains(&value) {
            Ok(())
        } else {
            Err(format!("{name}: {value} is not from {least} to {most}"))
        }
    };
    match what {
        What::Reading { store_c } => within("reading.store_c", *store_c, -60.0, 1200.0),
        What::Meal(meal) => {
            within("meal.food_kg", meal.food_kg, 0.0, 100.0)?;
            within("meal.water_kg", meal.water_kg, 0.0, 100.0)?;
            within("meal.start_c", meal.start_c, -20.0, 110.0)
        }
        What::LidOpen { for_s } if *for_s < 0 => Err(format!("lid_open.for_s: {for_s} is below 0")),
        What::TopUp { heat_w, for_s } => {
            if *for_s < 0 {
                return Err(format!("top_up.for_s: {for_s} is below 0"));
            }
            within("top_up.heat_w", *heat_w, 0.0, 20_000.0)
        }
        What::HeaterOff { for_s } if *for_s < 0 => {
            Err(format!("heater_off.for_s: {for_s} is below 0"))
        }
        _ => Ok(()),
    }
}

#[derive(Deserialize)]
struct Head {
    format: String,
    version: u32,
}

#[derive(Deserialize)]
struct Copy {
    #[serde(deserialize_with = "instant")]
    saved_at: LocalTime,
    body: Body,
}

#[derive(Deserialize)]
struct Body {
    household: Option<Home>,
    cookers: Vec<SavedOwned>,
    #[serde(deserialize_with = "skies")]
    skies: BTreeMap<Day, DayLog>,
    entries: Vec<Entry>,
}

#[derive(Deserialize)]
struct Home {
    latitude_deg: f64,
    longitude_deg: f64,
    altitude_m: f64,
    utc_offset_min: i32,
    air_day_c: [f64; 12],
    air_night_c: [f64; 12],
}

#[derive(Deserialize)]
struct SavedOwned {
    id: u32,
    name: String,
    cooker: SavedCooker,
    #[serde(default)]
    formerly: Vec<SavedFormerly>,
}

/// What it was before it was rebuilt.
#[derive(Deserialize)]
struct SavedFormerly {
    #[serde(deserialize_with = "instant")]
    until: LocalTime,
    cooker: SavedCooker,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedSky {
    SunHours(f64),
    Hourly(String),
}

#[derive(Deserialize)]
struct Entry {
    cooker: u32,
    #[serde(deserialize_with = "instant")]
    at: LocalTime,
    what: SavedWhat,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedWhat {
    Reading { store_c: f64 },
    Felt(SavedFelt),
    Meal(Box<SavedMeal>),
    LidOpen { for_s: i64 },
    HeaterOff { for_s: i64 },
    TopUp { heat_w: f64, for_s: i64 },
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum SavedFelt {
    Cold,
    Hot,
}

#[derive(Deserialize)]
struct SavedMeal {
    dish: Dish,
    food_kg: f64,
    water_kg: f64,
    start_c: f64,
    pot: Pot,
    lid: Lid,
    #[serde(default, deserialize_with = "maybe_instant")]
    out: Option<LocalTime>,
    #[serde(deserialize_with = "instant")]
    eat_at: LocalTime,
    #[serde(default, deserialize_with = "maybe_instant")]
    boiled_at: Option<LocalTime>,
    #[serde(default, deserialize_with = "maybe_instant")]
    not_boiled_by: Option<LocalTime>,
    #[serde(default, deserialize_with = "maybe_instant")]
    done_at: Option<LocalTime>,
    #[serde(default, deserialize_with = "maybe_instant")]
    not_done_by: Option<LocalTime>,
}

impl SavedWhat {
    fn what(&self) -> What {
        match self {
            Self::Reading { store_c } => What::Reading { store_c: *store_c },
            Self::Felt(SavedFelt::Cold) => What::Felt(Felt::Cold),
            Self::Felt(SavedFelt::Hot) => What::Felt(Felt::Hot),
            Self::LidOpen { for_s } => What::LidOpen { for_s: *for_s },
            Self::HeaterOff { for_s } => What::HeaterOff { for_s: *for_s },
            Self::TopUp { heat_w, for_s } => What::TopUp {
                heat_w: *heat_w,
                for_s: *for_s,
            },
            Self::Meal(meal) => What::Meal(Meal {
                dish: meal.dish,
                food_kg: meal.food_kg,
                water_kg: meal.water_kg,
                start_c: meal.start_c,
                pot: meal.pot,
                lid: meal.lid,
                out: meal.out,
                eat_at: meal.eat_at,
                outcome: Outcome {
                    boiled_at: meal.boiled_at,
                    not_boiled_by: meal.not_boiled_by,
                    done_at: meal.done_at,
                    not_done_by: meal.not_done_by,
                },
            }),
        }
    }
}

impl SavedSky {
    fn log(self) -> Option<DayLog> {
        let letters = match self {
            Self::SunHours(hours) => return Some(DayLog::SunHours(hours)),
            Self::Hourly(letters) => letters,
        };
        let mut skies = [None; 24];
        let mut chars = letters.chars();
        for hour in &mut skies {
            *hour = match chars.next()? {
                'c' => Some(Sky::Clear),
                't' => Some(Sky::Thin),
                'p' => Some(Sky::Patchy),
                'g' => Some(Sky::Grey),
                'd' => Some(Sky::Dark),
                '.' => None,
                _ => return None,
            };
        }
        chars.next().is_none().then_some(DayLog::Hourly(skies))
    }
}

fn skies<'d, D: Deserializer<'d>>(from: D) -> Result<BTreeMap<Day, DayLog>, D::Error> {
    let saved: BTreeMap<String, SavedSky> = BTreeMap::deserialize(from)?;
    let mut skies = BTreeMap::new();
    for (text, sky) in saved {
        let day = day(&text).ok_or_else(|| D::Error::custom(format!("{text:?} is no day")))?;
        let log = sky
            .log()
            .ok_or_else(|| D::Error::custom(format!("{text}: 24 letters of ctpgd. wanted")))?;
        skies.insert(day, log);
    }
    Ok(skies)
}
