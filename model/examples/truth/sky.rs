//! Clouds by the minute, and what they leave of the heater's power.
//!
//! Days come in kinds that persist, hours in skies that persist, and within an hour clouds cross the
//! sun as a two-state process or thicken and thin as a slow wander. The share of light that each sky
//! lets through, and how far one such hour is from another, follow what the tables say of the sky's
//! word; so a word is as good a witness here as the tables claim, and no better.

use model::panel::HeatTable;
use model::place::{AirYear, Place};
use model::sun::{
    Plane, Sky, day_of_year, erbs_split, extraterrestrial_normal_w_m2, faiman_cell_c,
    haurwitz_ghi_w_m2, sun_position,
};

use super::kitchen::Outdoors;
use super::random::Random;

/// Beam that casts the shadow which counts as sunshine. WMO Guide, chapter 8. \[W/m2\]
const SUNSHINE_W_M2: f64 = 120.0;
/// Time in which a panel follows its light. From memory. \[min\]
const PANEL_MIN: f64 = 7.0;
/// Mean time for which a cloud hides the sun of a patchy sky. From memory. \[min\]
const CLOUD_MIN: f64 = 6.0;

/// What kind of day it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Fair,
    Mixed,
    Overcast,
    Rainy,
}

impl Kind {
    /// Skies of its hours, by weight.
    fn skies(self) -> [(Sky, f64); 5] {
        let weights = match self {
            Self::Fair => [0.72, 0.15, 0.13, 0.0, 0.0],
            Self::Mixed => [0.15, 0.12, 0.56, 0.15, 0.02],
            Self::Overcast => [0.02, 0.12, 0.16, 0.57, 0.13],
            Self::Rainy => [0.0, 0.02, 0.13, 0.4, 0.45],
        };
        let mut skies = [(Sky::Clear, 0.0); 5];
        for ((slot, sky), weight) in skies.iter_mut().zip(Sky::ALL).zip(weights) {
            *slot = (sky, weight);
        }
        skies
    }
}

/// The true sun over a cooker.
#[derive(Debug, Clone)]
pub(crate) struct Outside {
    pub(crate) place: Place,
    /// Air of a typical year where the cooker stands, and its daily wander. \[K\]
    pub(crate) air: AirYear,
    pub(crate) air_sd_k: f64,
    /// The panel as it truly hangs.
    pub(crate) plane: Plane,
    pub(crate) wind_m_s: f64,
    pub(crate) heat: HeatTable,
    /// On all light: altitude, haze of the place, dust and the panel's rating.
    pub(crate) clearness: f64,
    /// On the light through clouds: what this household's words stand for.
    pub(crate) cloudiness: f64,
    /// Likelihood of the four kinds of day.
    pub(crate) climate: [f64; 4],
    pub(crate) random: Random,
    kind: Option<Kind>,
    air_k: f64,
}

/// One true day.
#[derive(Debug, Clone)]
pub(crate) struct Day {
    pub(crate) local_day: i32,
    /// The sky of each hour, as a keen eye would call it.
    pub(crate) skies: [Sky; 24],
    /// Time with sharp shadows. \[h\]
    pub(crate) sun_hours: f64,
    /// Heater's power in each minute. \[W\]
    heater_w: Vec<f64>,
    /// Air in each hour. \[°C\]
    air_c: Vec<f64>,
}

impl Outside {
    #[expect(clippy::too_many_arguments, reason = "each is a figure of its own")]
    pub(crate) fn new(
        place: Place,
        (air, air_sd_k): (AirYear, f64),
        plane: Plane,
        wind_m_s: f64,
        heat: HeatTable,
        (clearness, cloudiness): (f64, f64),
        climate: [f64; 4],
        random: Random,
    ) -> Self {
        Self {
            place,
            air,
            air_sd_k,
            plane,
            wind_m_s,
            heat,
            clearness,
            cloudiness,
            climate,
            random,
            kind: None,
            air_k: 0.0,
        }
    }

    /// The next day; days come in order.
    pub(crate) fn day(&mut self, local_day: i32) -> Day {
        let kinds = [Kind::Fair, Kind::Mixed, Kind::Overcast, Kind::Rainy];
        let kind = match self.kind {
            Some(kind) if self.random.chance(0.45) => kind,
            _ => {
                let weights = self.climate;
                let drawn: [_; 4] = std::array::from_fn(|idx| (kinds[idx], weights[idx]));
                self.random.pick(&drawn).unwrap_or(Kind::Mixed)
            }
        };
        self.kind = Some(kind);
        self.air_k = 0.6 * self.air_k + 0.8 * self.air_sd_k * self.random.normal();
        let mut sky = Sky::Patchy;
        let skies: [Sky; 24] = std::array::from_fn(|hour| {
            if hour == 0 || !self.random.chance(0.6) {
                sky = self.random.pick(&kind.skies()).unwrap_or(sky);
            }
            sky
        });
        let (index, cast) = self.indices(&skies);
        self.light(local_day, skies, &index, &cast)
    }

    /// Clear-sky index of each minute, and whether the sun casts shadows through what is before it.
    fn indices(&mut self, skies: &[Sky; 24]) -> (Vec<f64>, Vec<bool>) {
        let random = &mut self.random;
        let haze = 1.0 + 0.03 * random.normal();
        let (mut index, mut cast) = (Vec::new(), Vec::new());
        let (mut sunny, mut left_min) = (true, 0.0);
        let mut wander = 0.0;
        for sky in skies {
            // One hour from another of the same word.
            let (mean, hour_share, sunny_share) = match sky {
                Sky::Clear => (1.0 + 0.05 * random.normal(), 0.01, 1.0),
                Sky::Thin => (0.75 * random.factor(0.14), 0.08, 0.5),
                Sky::Patchy => {
                    let share: f64 = 0.55 + 0.16 * random.normal();
                    (0.35 * random.factor(0.25), 0.15, share.clamp(0.15, 0.95))
                }
                Sky::Grey => (0.30 * random.factor(0.33), 0.2, 0.0),
                Sky::Dark => (0.15 * random.factor(0.42), 0.25, 0.0),
            };
            for _ in 0..60 {
                wander = 0.9 * wander + 0.436 * random.normal();
                left_min -= 1.0;
                if left_min <= 0.0 {
                    // Mean times that make up the hour's share of sun.
                    sunny = random.chance(sunny_share);
                    left_min = random.wait(CLOUD_MIN).max(1.0);
                }
                let is_sunny = match sky {
                    Sky::Clear => true,
                    Sky::Patchy => sunny,
                    _ => false,
                };
                let cloud = (mean * self.cloudiness * (1.0 + hour_share * wander)).clamp(0.03, 1.0);
                index.push(match sky {
                    Sky::Clear => haze * mean,
                    // Bright edges.
                    Sky::Patchy if is_sunny => haze * (1.05 + 0.03 * wander),
                    _ => cloud,
                });
                cast.push(is_sunny || (*sky == Sky::Thin && 0.72 < cloud));
            }
        }
        (index, cast)
    }

    fn light(&self, local_day: i32, skies: [Sky; 24], index: &[f64], cast: &[bool]) -> Day {
        let outside = day_of_year(local_day).map_or(0.0, extraterrestrial_normal_w_m2);
        let midnight_s =
            f64::from(local_day) * 86_400.0 - 60.0 * f64::from(self.place.utc_offset_min);
        let mut sun_min = 0;
        let mut heater_w = Vec::with_capacity(1440);
        let mut warmer_k = 0.0;
        let mut air_by_hour_c = Vec::with_capacity(24);
        for (minute, (index, cast)) in index.iter().zip(cast).enumerate() {
            let second = 60.0 * minute as f64;
            if minute % 60 == 0 {
                let middle_c = self.air.air_c(&self.place, local_day, second + 1800.0);
                air_by_hour_c.push(middle_c + self.air_k);
            }
            let air_c = air_by_hour_c[minute / 60];
            let sun = sun_position(
                midnight_s + second + 30.0,
                self.place.latitude_deg,
                self.place.longitude_deg,
            );
            let clear = haurwitz_ghi_w_m2(sun.zenith_deg);
            if clear <= 0.0 {
                heater_w.push(0.0);
                continue;
            }
            let ghi = index * clear;
            let split = erbs_split(ghi, sun.zenith_deg, outside);
            if *cast && SUNSHINE_W_M2 <= erbs_split(clear, sun.zenith_deg, outside).dni_w_m2 {
                sun_min += 1;
            }
            let light = self.clearness * self.plane.irradiance_w_m2(sun, ghi, split);
            let steady_k = faiman_cell_c(light, air_c, self.wind_m_s) - air_c;
            warmer_k += (steady_k - warmer_k) / PANEL_MIN;
            heater_w.push(self.heat.heat_w(light, air_c + warmer_k));
        }
        Day {
            local_day,
            skies,
            sun_hours: f64::from(sun_min) / 60.0,
            heater_w,
            air_c: air_by_hour_c,
        }
    }
}

impl Outdoors for Day {
    fn at(&self, minute: i64) -> (f64, f64) {
        let of_day = (minute - i64::from(self.local_day) * 1440).clamp(0, 1439) as usize;
        (self.heater_w[of_day], self.air_c[of_day / 60])
    }
}
