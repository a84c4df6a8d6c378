//! A day's light as members see it: what was logged, and how far it may be from what was.

use super::build::{rounded, small};
use super::stretches::looked_at;
use super::unseen::{Unseen, Usual, unseen_hours};
use crate::journal::Journal;
use crate::local_time::Day;
use crate::sun::{
    ANGSTROM_RELATIVE_SD, DayLog, IrradianceSeries, PlaneState, SeriesStep, SolarDay, SunError,
    Unlogged,
};
use crate::tonight::{ORDINARY_SKY, Rig};

/// Step of light and air. \[min\]
const STEP_MIN: u32 = 30;
/// The same. \[s\]
pub(super) const STEP_S: i64 = 60 * STEP_MIN as i64;
/// Heat in a step is tabled at so many brightnesses, from -3 to 3 standard deviations.
const FAN: usize = 13;
/// No sky is reckoned darker than this beside a clear one.
const LEAST_INDEX: f64 = 1e-3;
/// How far the table reaches, and how many of its steps make one standard deviation.
const FAN_SD: f64 = 3.0;
const FAN_PER_SD: f64 = 2.0;
/// No light is brighter than this beside a clear sky's: the edges of clouds add some per cent over
/// an hour. From memory.
const BRIGHTEST: f64 = 1.06;
/// What a word is off by beside what the sky itself may do, as a share of a clear sky's light: a
/// neighbour's word, an hour's slip. Inferred.
const WORD_SD: f64 = 0.10;
/// The same of a day's count of sun hours: half an hour and some per cent of it. Inferred.
const COUNT_SD: f64 = 0.03;
/// A day without any sun has thicker cloud than the shade of a day with some: the clouds of
/// [`Sky::hour`](crate::sun::Sky::hour) let a sixth to a quarter of a clear sky's light through, the
/// FAO's relation a third. Between the two, beside the FAO's, and how far it is off for one day.
const SUNLESS: f64 = 0.8;
const SUNLESS_SD: f64 = 0.2;
/// From this share of the possible sunshine on the relation stands as it is. Inferred.
const SOME_SUN: f64 = 0.3;
/// Greatest relative deviation of an hour that was looked at: beyond it a lognormal is all tail.
const MOST_SD: f64 = 0.9;
/// Share of the variance of an hour that was looked at which the whole day has in common. Less than of
/// hours that nobody saw, since a word tells most of what they share; and what a household means by a
/// word is every day's, so that it counts with its panel. Inferred.
const COMMON_SEEN: f64 = 0.08;

/// Light and air of half an hour.
#[derive(Debug, Clone)]
pub(super) struct SkyStep {
    /// Heat in the element by brightness; nothing by night. \[W\]
    fan_w: Option<[f64; FAN]>,
    /// How much of an hour's deviation is the day's and the hour's own.
    day_weight: f64,
    hour_weight: f64,
    pub(super) air_c: f64,
}

impl SkyStep {
    /// Whether the heater gets anything.
    pub(super) fn is_lit(&self) -> bool {
        self.fan_w.is_some()
    }

    /// Heat in the element, by the day's deviation and the hour's. \[W\]
    #[inline]
    pub(super) fn heater_w(&self, day_sd: f64, hour_sd: f64) -> f64 {
        let Some(fan_w) = &self.fan_w else {
            return 0.0;
        };
        let sd = self.day_weight * day_sd + self.hour_weight * hour_sd;
        let place = ((sd + FAN_SD) * FAN_PER_SD).clamp(0.0, small(FAN - 1));
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "0 to 12"
        )]
        let cell = (place as usize).min(FAN - 2);
        fan_w[cell] + (place - small(cell)) * (fan_w[cell + 1] - fan_w[cell])
    }
}

/// The 48 half hours of a day.
pub(super) type SkyDay = Vec<SkyStep>;

/// A day as it was logged; what is usual at the place by days from `first` on.
///
/// # Errors
///
/// [`SunError`] for a place, a plane or a log that makes no sense.
pub(super) fn sky_day(
    rig: &Rig,
    journal: &Journal,
    (first, day): (Day, Day),
) -> Result<SkyDay, SunError> {
    // Hours that nobody saw stand by their own light, not by a mixture of the others.
    let log = journal.skies.get(&day).copied();
    let log = log.unwrap_or(DayLog::Hourly([None; 24]));
    let hourly = match &log {
        DayLog::SunHours(_) => None,
        DayLog::Hourly(skies) => {
            let latitude_deg = rig.setting.place.latitude_deg;
            let usual = Usual::before(&journal.skies, (first, day), latitude_deg);
            let (seen, by_stretch) = looked_at(&journal.skies, skies, (first, day));
            // One word for a morning tells no hour of it by itself.
            let told = skies.map(|sky| sky.filter(|_| !by_stretch));
            Some((told, unseen_hours(&seen, usual)))
        }
    };
    let told = hourly.as_ref().map_or(log, |hours| DayLog::Hourly(hours.0));
    let sunny = sunny_share(rig, &log, day)?;
    let unlogged = Unlogged::As(ORDINARY_SKY);
    let series = IrradianceSeries::new(&rig.setting, day.0, &told, unlogged, STEP_MIN)?;
    Ok(series
        .steps
        .iter()
        .map(|step| {
            let hour = day.at_s(i64::from(step.start_s)).hour();
            let index = (step.ghi_w_m2 / step.clear_ghi_w_m2).max(LEAST_INDEX);
            let (light, common) = match (&hourly, sunny) {
                (None, sunny) => of_count(step.relative_sd, index, sunny.unwrap_or(1.0)),
                (Some((told, unseen)), _) => match (told.get(hour), unseen.get(hour)) {
                    (Some(None), Some(unseen)) => {
                        let common = unseen.day_sd / unseen.sd();
                        (Light::Unseen(*unseen), common * common)
                    }
                    _ => {
                        let sd = libm::hypot(step.relative_sd, WORD_SD / index);
                        (Light::Told { mean: 1.0, sd }, COMMON_SEEN)
                    }
                },
            };
            SkyStep {
                fan_w: fan_w(rig, step, light),
                day_weight: common.sqrt(),
                hour_weight: (1.0 - common).sqrt(),
                air_c: rounded(step.air_c),
            }
        })
        .collect())
}

/// Share of the possible sunshine of a day that was told by its sun hours.
fn sunny_share(rig: &Rig, log: &DayLog, day: Day) -> Result<Option<f64>, SunError> {
    let DayLog::SunHours(hours) = log else {
        return Ok(None);
    };
    let solar = SolarDay::new(rig.setting.place.latitude_deg, day.of_year())?;
    solar.sunshine_share(*hours).map(Some)
}

/// An hour of a day that was told by its sun hours, and the share of its variance that is the day's:
/// how far relation and count are off, while which hours were sunny is each hour's.
fn of_count(relative_sd: f64, index: f64, sunny: f64) -> (Light, f64) {
    let sunless = (1.0 - sunny / SOME_SUN).max(0.0);
    // Of a day without cloud there is little to be off by.
    let clouded = (2.0 * (1.0 - sunny)).min(1.0);
    let relation = libm::hypot(ANGSTROM_RELATIVE_SD * clouded, SUNLESS_SD * sunless);
    let of_day = libm::hypot(relation, COUNT_SD / index);
    let of_hour =
        (relative_sd * relative_sd - ANGSTROM_RELATIVE_SD * ANGSTROM_RELATIVE_SD).max(0.0);
    let variance = of_day * of_day + of_hour;
    let mean = 1.0 - (1.0 - SUNLESS) * sunless;
    let sd = variance.sqrt();
    (Light::Told { mean, sd }, of_day * of_day / variance)
}

/// What is known of a step's light.
#[derive(Debug, Clone, Copy)]
enum Light {
    /// By somebody's word or count: its mean beside the series', and a relative standard deviation.
    Told { mean: f64, sd: f64 },
    /// What others of the day say of it.
    Unseen(Unseen),
}

/// Heat by brightness, from the darkest to the brightest.
fn fan_w(rig: &Rig, step: &SeriesStep, light: Light) -> Option<[f64; FAN]> {
    if step.states.is_empty() {
        return None;
    }
    let index = (step.ghi_w_m2 / step.clear_ghi_w_m2).max(LEAST_INDEX);
    let brightest = (BRIGHTEST / index).max(1.0);
    let at_sd = |place: usize| small(place) / FAN_PER_SD - FAN_SD;
    let mut factors = [0.0; FAN];
    match light {
        Light::Unseen(unseen) => {
            for (place, factor) in factors.iter_mut().enumerate() {
                *factor = unseen.index(at_sd(place)) / index;
            }
        }
        Light::Told { mean, sd } => {
            let sd = sd.min(MOST_SD);
            let log_sd = libm::log(1.0 + sd * sd).sqrt();
            // No hour is brighter than the brightest, and the mean stays what was told all the same.
            let mut middle = mean;
            for _ in 0..4 {
                for (place, factor) in factors.iter_mut().enumerate() {
                    *factor = (middle * libm::exp(log_sd * at_sd(place))).min(brightest);
                }
                middle *= mean.min(brightest) / mean_of_fan(&factors);
            }
        }
    }
    let fan = factors.map(|factor| rounded(mean_heat_w(rig, step, factor)));
    let most = fan.iter().fold(0.0_f64, |most, heat_w| most.max(*heat_w));
    (0.0 < most).then_some(fan)
}

/// Mean over a standard normal of values that stand at the places of the fan.
fn mean_of_fan(values: &[f64; FAN]) -> f64 {
    let (mut sum, mut whole) = (0.0, 0.0);
    for (place, value) in values.iter().enumerate() {
        let sd = small(place) / FAN_PER_SD - FAN_SD;
        let weight = libm::exp(-0.5 * sd * sd);
        sum += weight * value;
        whole += weight;
    }
    sum / whole
}

/// Heat in the element when the hour's light is multiplied.
///
/// A brighter hour of sun and clouds has more sun in it, not a sun that is brighter: the states are
/// mixed anew as far as that goes, and only then scaled.
fn mean_heat_w(rig: &Rig, step: &SeriesStep, factor: f64) -> f64 {
    if let Some(heat_w) = rig.beam_w(step, factor) {
        return heat_w;
    }
    let mean = step.plane_w_m2();
    let by_light =
        |a: &&PlaneState, b: &&PlaneState| a.irradiance_w_m2.total_cmp(&b.irradiance_w_m2);
    let end = if 1.0 < factor {
        step.states.iter().max_by(by_light)
    } else {
        step.states.iter().min_by(by_light)
    };
    let Some(end) = end.filter(|_| 0.0 < mean) else {
        return 0.0;
    };
    let scaled = |state: &PlaneState, by: f64| {
        let cell_c = step.air_c + by * (state.cell_c - step.air_c);
        rig.heat.heat_w(by * state.irradiance_w_m2, cell_c)
    };
    let wanted = factor * mean;
    let span = end.irradiance_w_m2 - mean;
    // Not far enough apart to mix.
    if span.abs() < 1e-6 * mean {
        return scaled(end, factor);
    }
    let share = (wanted - mean) / span;
    if share <= 1.0 {
        let mixed = rig.heat.mean_heat_w(&step.states);
        mixed + share * (scaled(end, 1.0) - mixed)
    } else {
        scaled(end, wanted / end.irradiance_w_m2)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sun::SHADOWLESS_INDEX;

    /// What a day's count says of an hour: mean beside the relation's, deviation, share of the day.
    fn count(sunny: f64) -> (f64, f64, f64) {
        // As in `sun::log`: the relation's light, and quarters of an hour that are sunny or not.
        let index = (0.25 + 0.5 * sunny) / 0.75;
        let between = 0.5 * (sunny * (1.0 - sunny)).sqrt() * (1.0 - SHADOWLESS_INDEX) / index;
        match of_count(libm::hypot(ANGSTROM_RELATIVE_SD, between), index, sunny) {
            (Light::Told { mean, sd }, common) => (mean * index, sd, common),
            (Light::Unseen(_), _) => panic!("a count is told"),
        }
    }

    /// Overcast skies by their clouds: nimbostratus 0.16 of a clear sky, altostratus 0.27 (Kasten and
    /// Czeplak, Solar Energy 24 (1980) 177, from memory). FAO-56's relation: 0.25 over 0.75.
    #[test]
    fn a_day_without_sun_is_between_its_clouds_and_the_relation() {
        let (index, sd, common) = count(0.0);
        assert!((0.16..SHADOWLESS_INDEX).contains(&index), "{index}");
        // Both ends are within twice its deviation, and one hour is as all are.
        assert!(index - 2.0 * sd * index < 0.16 && SHADOWLESS_INDEX < index + 2.0 * sd * index);
        assert!((common - 1.0).abs() < 1e-9, "{common}");
        // With some sun the relation stands.
        let (some, ..) = count(SOME_SUN);
        assert!((some - (0.25 + 0.5 * SOME_SUN) / 0.75).abs() < 1e-12);
    }

    #[test]
    fn a_cloudless_day_leaves_little_to_doubt() {
        let (index, sd, _) = count(1.0);
        assert!((index - 1.0).abs() < 1e-12);
        let (_, half_sd, half_common) = count(0.5);
        assert!(sd < 0.05 && 3.0 * sd < half_sd, "{sd} {half_sd}");
        // Which hours were sunny is each hour's.
        assert!((0.1..0.5).contains(&half_common), "{half_common}");
    }
}
