//! From what the household logged to the sky of each hour.

use crate::sun::error::within;
use crate::sun::{HourSky, Sky, SkyState, SolarDay, SunError};

/// What was logged about the sun of one day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum DayLog {
    /// Hours with sharp shadows in the whole day. \[h\]
    SunHours(f64),
    /// One sky for each hour of the household's clock, 0 to 23; `None` where none was logged.
    Hourly([Option<Sky>; 24]),
}

/// What to take for the hours of daylight that nobody logged.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Unlogged {
    /// This sky.
    As(Sky),
    /// A mixture of the hours of daylight that were logged that day and of an ordinary sky, the less
    /// of this the more hours were logged.
    MeanOfLogged,
}

/// Share of the variance of an hour's light that the whole day has in common: two hours of one day
/// are correlated by it. Inferred.
pub(crate) const HOURS_IN_COMMON: f64 = 0.6;

/// Least relative deviation of an hour that nobody looked at. From memory.
const UNSEEN_RELATIVE_SD: f64 = 0.50;
/// How far the FAO's relation is off for one day. From memory.
pub(crate) const ANGSTROM_RELATIVE_SD: f64 = 0.12;
/// How far brighter and darker cloud are from the mean of the hours without sun, as a share of
/// it: overcast skies range from about 0.15 to 0.6 of a clear one. From memory.
const DULL_SPREAD: f64 = 0.4;
/// Share of the clear-sky light that is left while the sun does not cast shadows: the FAO's
/// overcast day over its clear day, 0.25 / 0.75. Only the spread between hours rests on it.
pub(crate) const SHADOWLESS_INDEX: f64 = 1.0 / 3.0;

/// The skies of the 24 hours of a day, from hourly words.
///
/// `clear_j_m2` holds what a clear sky gives in each hour: hours without light do not count for
/// the mean of the logged ones.
pub(super) fn hourly_skies(
    logged: &[Option<Sky>; 24],
    unlogged: Unlogged,
    clear_j_m2: &[f64; 24],
) -> Result<Vec<HourSky>, SunError> {
    let seen: Vec<HourSky> = logged
        .iter()
        .zip(clear_j_m2)
        .filter(|&(_, &clear)| 0.0 < clear)
        .filter_map(|(sky, _)| sky.map(Sky::hour))
        .collect();
    let unseen = match unlogged {
        Unlogged::As(sky) => {
            let hour = sky.hour();
            HourSky {
                relative_sd: hour.relative_sd.max(UNSEEN_RELATIVE_SD),
                ..hour
            }
        }
        Unlogged::MeanOfLogged => {
            let dark = clear_j_m2.iter().all(|&clear| clear <= 0.0);
            if seen.is_empty() && !dark {
                return Err(SunError::NothingLogged);
            }
            unseen_beside(&seen)
        }
    };
    Ok(logged
        .iter()
        .map(|sky| sky.map_or_else(|| unseen.clone(), Sky::hour))
        .collect())
}

/// An hour that nobody saw beside some that were seen: their mixture as far as hours of one day go
/// together, an ordinary sky for the rest, with the deviation that is both within and between all
/// these.
///
/// Of hours that are correlated by r, the best guess at one more from n of them is their mean by the
/// share n r / (1 + (n - 1) r), the usual one for the rest: the shrunken mean of any text on random
/// effects.
fn unseen_beside(seen: &[HourSky]) -> HourSky {
    #[expect(clippy::cast_precision_loss, reason = "at most 24 hours")]
    let count = seen.len() as f64;
    let seen_share = count * HOURS_IN_COMMON / (1.0 + (count - 1.0) * HOURS_IN_COMMON);
    let ordinary = Sky::ORDINARY.hour();
    let ordinary = HourSky {
        relative_sd: ordinary.relative_sd.max(UNSEEN_RELATIVE_SD),
        ..ordinary
    };
    let mut hours: Vec<(f64, &HourSky)> = Vec::with_capacity(seen.len() + 1);
    hours.extend(seen.iter().map(|hour| (seen_share / count, hour)));
    hours.push((1.0 - seen_share, &ordinary));
    mixture_of(&hours)
}

/// The mixture of some hours by their shares, which add up to 1.
fn mixture_of(hours: &[(f64, &HourSky)]) -> HourSky {
    let mut states: Vec<SkyState> = Vec::new();
    for (share, hour) in hours {
        for state in &hour.states {
            let weight = state.weight * share;
            let same = states
                .iter_mut()
                .find(|held| (held.clear_sky_index - state.clear_sky_index).abs() < 1e-12);
            match same {
                Some(held) => held.weight += weight,
                None => states.push(SkyState { weight, ..*state }),
            }
        }
    }
    let mean: f64 = hours
        .iter()
        .map(|(share, hour)| share * hour.mean_index())
        .sum();
    let variance: f64 = hours
        .iter()
        .map(|(share, hour)| {
            let index = hour.mean_index();
            let (within, between) = (hour.relative_sd * index, index - mean);
            share * (within * within + between * between)
        })
        .sum();
    let relative_sd = if 0.0 < mean {
        variance.sqrt() / mean
    } else {
        0.0
    };
    HourSky {
        states,
        relative_sd: relative_sd.max(UNSEEN_RELATIVE_SD),
    }
}

/// The one sky that stands for every hour of a day with so many hours of sunshine.
///
/// The day's radiation is the FAO's Rs, but never more than a clear sky gives. The two meet
/// below n = N: in the first and last part of a clear day the beam is too weak to cast the
/// shadow that counts as sunshine (120 W/m2 by the WMO), so that a whole clear day is logged as
/// n of about 0.9 N, and less in a low winter sun.
///
/// Since nobody knows which hours were sunny, each is sunny with the weight n/N, and what is
/// left of Rs comes while it is not, half of that time under brighter cloud than the other half.
pub(super) fn sky_of_sun_hours(
    sun_hours: f64,
    day: SolarDay,
    clear_j_m2: f64,
) -> Result<HourSky, SunError> {
    let sunny = day.sunshine_share(sun_hours)?;
    let radiation_j_m2 = day.radiation_mj_m2(sun_hours)? * 1e6;
    let mean = if 0.0 < clear_j_m2 {
        (radiation_j_m2 / clear_j_m2).min(1.0)
    } else {
        0.0
    };
    let dull = 1.0 - sunny;
    // Sunshine at the clear-sky index 1, unless that alone were more than the day's mean.
    let sunny_index = if 0.0 < sunny {
        (mean / sunny).min(1.0)
    } else {
        1.0
    };
    let dull_index = if 1e-9 < dull {
        (mean - sunny * sunny_index).max(0.0) / dull
    } else {
        mean
    };
    // One of four independent quarters of an hour is sunny or not: half the deviation of one.
    let between = if 0.0 < mean {
        0.5 * (sunny * dull).sqrt() * (1.0 - SHADOWLESS_INDEX) / mean
    } else {
        0.0
    };
    let spread = (DULL_SPREAD * dull_index).min((1.0 - dull_index).max(0.0));
    let half = 0.5 * dull;
    let states = [
        (sunny, sunny_index),
        (half, dull_index + spread),
        (half, dull_index - spread),
    ]
    .into_iter()
    .filter(|&(weight, _)| 0.0 < weight)
    .map(|(weight, clear_sky_index)| SkyState {
        weight,
        clear_sky_index,
    })
    .collect();
    Ok(HourSky {
        states,
        relative_sd: libm::hypot(ANGSTROM_RELATIVE_SD, between),
    })
}

/// Checks a share of the possible sunshine, as a typical day is described by.
pub(super) fn checked_share(share: f64) -> Result<f64, SunError> {
    within(share, 0.0, 1.0, SunError::SunshineShare)
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn unlogged_hours_lie_between_the_logged_and_the_usual() {
        let mut clear = [0.0; 24];
        clear[6..18].fill(1.0);
        let usual = Sky::ORDINARY.hour().mean_index();
        for (told, seen_share) in [(1, 0.6), (2, 1.2 / 1.6), (9, 5.4 / 5.8)] {
            let mut logged = [None; 24];
            logged[3] = Some(Sky::Dark);
            logged[6..6 + told].fill(Some(Sky::Clear));
            let skies = hourly_skies(&logged, Unlogged::MeanOfLogged, &clear).unwrap();
            let expected = seen_share + (1.0 - seen_share) * usual;
            assert!((skies[17].mean_index() - expected).abs() < 1e-12, "{told}");
            assert!(Sky::Clear.hour().relative_sd < skies[17].relative_sd);
            assert_eq!(skies[6], Sky::Clear.hour());
        }
    }

    #[test]
    fn a_mean_of_nothing_is_refused() {
        let mut clear = [0.0; 24];
        clear[12] = 1.0;
        let none = hourly_skies(&[None; 24], Unlogged::MeanOfLogged, &clear);
        assert_eq!(none, Err(SunError::NothingLogged));
        assert!(hourly_skies(&[None; 24], Unlogged::MeanOfLogged, &[0.0; 24]).is_ok());
        let given = hourly_skies(&[None; 24], Unlogged::As(Sky::Grey), &clear).unwrap();
        assert_eq!(given[12].states, Sky::Grey.hour().states);
    }

    proptest! {
        #[test]
        fn sun_hours_keep_the_mean_and_never_exceed_a_clear_sky(
            share in 0.0..=1.0_f64, latitude in -66.0..66.0_f64, day in 1..=366_u32,
            clear_of_ra in 0.2..0.8_f64,
        ) {
            let solar = SolarDay::new(latitude, day).unwrap();
            let clear = clear_of_ra * solar.extraterrestrial_mj_m2 * 1e6;
            let hours = share * solar.daylight_h;
            let sky = sky_of_sun_hours(hours, solar, clear).unwrap();
            let wanted = (solar.radiation_mj_m2(hours).unwrap() * 1e6 / clear).min(1.0);
            prop_assert!((sky.mean_index() - wanted).abs() < 1e-6);
            let weights: f64 = sky.states.iter().map(|state| state.weight).sum();
            prop_assert!((weights - 1.0).abs() < 1e-12);
            for state in &sky.states {
                prop_assert!((0.0..=1.0 + 1e-9).contains(&state.clear_sky_index));
            }
        }
    }
}
