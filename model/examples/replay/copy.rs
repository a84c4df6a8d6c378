//! The copy that the app writes: JSON in an envelope that names form and version.

use std::collections::BTreeMap;

use model::cooker::{Charge, Contact, Cooker, Panels, Store};
use model::dish::Dish;
use model::insulation::Insulation;
use model::jacket::{Jacket, JacketLayer, JacketShape, LayerKind, LayeredJacket, LidFit};
use model::journal::{Event, Felt, Journal, Meal, Outcome, What};
use model::local_time::{Day, LocalTime};
use model::media::Medium;
use model::panel::{Datasheet, Drive, Heater};
use model::place::{AirYear, Place};
use model::pot::{Lid, Pot};
use model::seat::Seat;
use model::sun::{DayLog, Sky};
use model::tonight::Site;
use serde::de::Error;
use serde::{Deserialize, Deserializer};

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
        cookers.push(Owned {
            name: owned.name,
            cooker: owned.cooker.cooker(),
            journal: Journal {
                skies: skies.clone(),
                events,
                formerly: Vec::new(),
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
    serde_path_to_error::deserialize(&mut json)
        .map_err(|error| format!("{}: {}", error.path(), error.inner()))
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
}

#[derive(Deserialize)]
struct SavedCooker {
    panels: SavedPanels,
    heater: SavedHeater,
    store: SavedStore,
    jacket: SavedJacket,
    contact: SavedContact,
    pot: Pot,
}

#[derive(Deserialize)]
struct SavedPanels {
    module_w: f64,
    sheet: Option<SavedSheet>,
    in_series: u32,
    in_parallel: u32,
    tilt_deg: f64,
    azimuth_deg: f64,
}

#[derive(Deserialize)]
struct SavedSheet {
    v_mp_v: f64,
    i_mp_a: f64,
    v_oc_v: f64,
    i_sc_a: f64,
    alpha_sc_a_k: f64,
    beta_voc_v_k: f64,
    cells: u32,
}

#[derive(Deserialize)]
struct SavedHeater {
    tracker_efficiency: Option<f64>,
    resistance_ohm: f64,
    wire_ohm: f64,
    alpha_per_k: f64,
}

#[derive(Deserialize)]
struct SavedStore {
    charges: Vec<SavedCharge>,
    finned: bool,
    depth_m: f64,
    cutout_c: f64,
}

#[derive(Deserialize)]
struct SavedCharge {
    medium: Medium,
    mass_kg: f64,
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case", tag = "known_by")]
enum SavedJacket {
    Layers {
        shape: SavedShape,
        layers: Vec<SavedLayer>,
        lid: LidFit,
        through_rods: u32,
    },
    Measured {
        loss_w_k: f64,
        capacity_j_k: f64,
    },
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
enum SavedShape {
    Cylinder {
        inner_radius_m: f64,
        inner_height_m: f64,
    },
    Box {
        inner_length_m: f64,
        inner_width_m: f64,
        inner_height_m: f64,
    },
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case", tag = "kind")]
enum SavedLayer {
    Insulation {
        material: Insulation,
        thickness_m: f64,
    },
    StillAir {
        hot_emissivity: f64,
        cold_emissivity: f64,
        thickness_m: f64,
    },
}

#[derive(Deserialize)]
struct SavedContact {
    seat: Seat,
    measured_w_m2k: Option<f64>,
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

impl SavedCooker {
    fn cooker(self) -> Cooker {
        let (panels, heater, store) = (self.panels, self.heater, self.store);
        Cooker {
            panels: Panels {
                module_w: panels.module_w,
                sheet: panels.sheet.map(|sheet| Datasheet {
                    v_mp_v: sheet.v_mp_v,
                    i_mp_a: sheet.i_mp_a,
                    v_oc_v: sheet.v_oc_v,
                    i_sc_a: sheet.i_sc_a,
                    alpha_sc_a_k: sheet.alpha_sc_a_k,
                    beta_voc_v_k: sheet.beta_voc_v_k,
                    cells: sheet.cells,
                }),
                in_series: panels.in_series,
                in_parallel: panels.in_parallel,
                tilt_deg: panels.tilt_deg,
                azimuth_deg: panels.azimuth_deg,
            },
            heater: Heater {
                drive: heater
                    .tracker_efficiency
                    .map_or(Drive::Direct, |efficiency| Drive::Tracker { efficiency }),
                resistance_ohm: heater.resistance_ohm,
                wire_ohm: heater.wire_ohm,
                alpha_per_k: heater.alpha_per_k,
            },
            store: Store {
                charges: store
                    .charges
                    .into_iter()
                    .map(|charge| Charge {
                        medium: charge.medium,
                        mass_kg: charge.mass_kg,
                    })
                    .collect(),
                finned: store.finned,
                depth_m: store.depth_m,
                cutout_c: store.cutout_c,
            },
            jacket: self.jacket.jacket(),
            contact: Contact {
                seat: self.contact.seat,
                measured_w_m2k: self.contact.measured_w_m2k,
            },
            pot: self.pot,
        }
    }
}

impl SavedJacket {
    fn jacket(self) -> Jacket {
        match self {
            Self::Measured {
                loss_w_k,
                capacity_j_k,
            } => Jacket::Measured {
                loss_w_k,
                capacity_j_k,
            },
            Self::Layers {
                shape,
                layers,
                lid,
                through_rods,
            } => Jacket::Layers(LayeredJacket {
                shape: match shape {
                    SavedShape::Cylinder {
                        inner_radius_m,
                        inner_height_m,
                    } => JacketShape::Cylinder {
                        inner_radius_m,
                        inner_height_m,
                    },
                    SavedShape::Box {
                        inner_length_m,
                        inner_width_m,
                        inner_height_m,
                    } => JacketShape::Box {
                        inner_length_m,
                        inner_width_m,
                        inner_height_m,
                    },
                },
                layers: layers.into_iter().map(SavedLayer::layer).collect(),
                lid,
                through_rods,
            }),
        }
    }
}

impl SavedLayer {
    fn layer(self) -> JacketLayer {
        match self {
            Self::Insulation {
                material,
                thickness_m,
            } => JacketLayer {
                kind: LayerKind::Insulation { material },
                thickness_m,
            },
            Self::StillAir {
                hot_emissivity,
                cold_emissivity,
                thickness_m,
            } => JacketLayer {
                kind: LayerKind::StillAir {
                    hot_emissivity,
                    cold_emissivity,
                },
                thickness_m,
            },
        }
    }
}

impl SavedWhat {
    fn what(&self) -> What {
        match self {
            Self::Reading { store_c } => What::Reading { store_c: *store_c },
            Self::Felt(SavedFelt::Cold) => What::Felt(Felt::Cold),
            Self::Felt(SavedFelt::Hot) => What::Felt(Felt::Hot),
            Self::LidOpen { for_s } => What::LidOpen { for_s: *for_s },
            Self::HeaterOff { for_s } => What::HeaterOff { for_s: *for_s },
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

fn instant<'d, D: Deserializer<'d>>(from: D) -> Result<LocalTime, D::Error> {
    let text = String::deserialize(from)?;
    time(&text)
        .ok_or_else(|| D::Error::custom(format!("{text:?} is no time like 2026-11-25T18:40:00")))
}

fn maybe_instant<'d, D: Deserializer<'d>>(from: D) -> Result<Option<LocalTime>, D::Error> {
    match Option::<String>::deserialize(from)? {
        None => Ok(None),
        Some(text) => time(&text)
            .map(Some)
            .ok_or_else(|| D::Error::custom(format!("{text:?} is no time"))),
    }
}

/// ISO 8601-1:2019, extended, without an offset.
fn time(text: &str) -> Option<LocalTime> {
    let (date, clock) = text.split_once('T')?;
    let mut parts = clock.splitn(3, ':').map(str::parse::<i64>);
    let (hour, minute, second) = (
        parts.next()?.ok()?,
        parts.next()?.ok()?,
        parts.next()?.ok()?,
    );
    let is_clock =
        (0..24).contains(&hour) && (0..60).contains(&minute) && (0..60).contains(&second);
    let seconds = 3600 * hour + 60 * minute + second;
    day(date).filter(|_| is_clock).map(|day| day.at_s(seconds))
}

fn day(text: &str) -> Option<Day> {
    let mut parts = text.splitn(3, '-');
    let year = parts.next()?.parse().ok()?;
    let month = parts.next()?.parse().ok()?;
    let day = parts.next()?.parse().ok()?;
    Day::from_ymd(year, month, day)
}
