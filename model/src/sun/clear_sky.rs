//! What reaches the ground under a clear sky, and how light divides into beam and diffuse.

use std::f64::consts::TAU;

/// Radiation on a surface facing the sun outside the air, at the mean distance. \[W/m2\]
///
/// The value that goes with the Fourier series of Spencer as pvlib 0.16.1 uses it.
pub const SOLAR_CONSTANT_W_M2: f64 = 1366.1;

/// Beyond this zenith angle the Erbs split calls all light diffuse: the division by a small
/// cosine would make beams of hundreds of W/m2 out of nothing. pvlib 0.16.1's limit. \[deg\]
const NO_BEAM_BEYOND_ZENITH_DEG: f64 = 87.0;
/// Least cosine of the zenith angle in the clearness index. pvlib 0.16.1's limit.
const LEAST_COS_ZENITH: f64 = 0.065;

/// Radiation on a surface facing the sun outside the air, on a day of the year.
///
/// Good to 0.01 % of the inverse square of the distance to the sun (as printed by the author).
///
/// # Arguments
///
/// * `day_of_year`: 1 to 366.
///
/// # Returns
///
/// 1320 to 1415. \[W/m2\]
///
/// # Sources
///
/// J. W. Spencer, *Fourier series representation of the position of the sun*, Search 2 (1971)
/// 172.
pub fn extraterrestrial_normal_w_m2(day_of_year: u32) -> f64 {
    let angle = TAU / 365.0 * (f64::from(day_of_year) - 1.0);
    SOLAR_CONSTANT_W_M2
        * (1.000_110
            + 0.034_221 * libm::cos(angle)
            + 0.001_280 * libm::sin(angle)
            + 0.000_719 * libm::cos(2.0 * angle)
            + 0.000_077 * libm::sin(2.0 * angle))
}

/// What a clear sky lets through at sea level of a day's light outside the air, and how much more of
/// it with each metre of altitude: FAO-56, eq. 37. \[1, 1/m\]
const CLEAR_SHARE: f64 = 0.75;
const CLEAR_SHARE_PER_M: f64 = 2e-5;

/// Light under a clear sky beside what the same sky lets through at sea level.
///
/// # Arguments
///
/// * `altitude_m`: above the sea. \[m\]
///
/// # Sources
///
/// R. G. Allen, L. S. Pereira, D. Raes and M. Smith, *Crop evapotranspiration*, FAO Irrigation
/// and Drainage Paper 56 (1998), eq. 37: Rso = (0.75 + 2e-5 z) Ra, over its own value at z = 0.
pub fn altitude_gain(altitude_m: f64) -> f64 {
    1.0 + CLEAR_SHARE_PER_M / CLEAR_SHARE * altitude_m
}

/// Global horizontal irradiance under a clear sky near sea level, from the sun's height alone.
///
/// Fitted in a temperate climate: in haze or smoke it is 5 to 10 % too high (from memory). What
/// altitude adds is [`altitude_gain`].
///
/// # Arguments
///
/// * `zenith_deg`: without refraction. \[deg\]
///
/// # Returns
///
/// 0 with the sun at or below the horizon, up to 1035. \[W/m2\]
///
/// # Sources
///
/// B. Haurwitz, Journal of Meteorology 2 (1945) 154 and 3 (1946) 123, with the coefficients of
/// Reno, Hansen and Stein, SAND2012-2389 (2012).
pub fn haurwitz_ghi_w_m2(zenith_deg: f64) -> f64 {
    let cos_zenith = libm::cos(zenith_deg.to_radians());
    if cos_zenith <= 0.0 {
        return 0.0;
    }
    1098.0 * cos_zenith * libm::exp(-0.059 / cos_zenith)
}

/// Light divided into what comes straight from the sun and what comes from the whole sky.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Split {
    /// Diffuse light on level ground. \[W/m2\]
    pub dhi_w_m2: f64,
    /// Beam on a surface facing the sun. \[W/m2\]
    pub dni_w_m2: f64,
}

/// Divides global horizontal irradiance into beam and diffuse by its clearness.
///
/// An hourly mean relation: a single minute may differ by tens of percent of the diffuse part.
/// With the sun lower than 3 deg all light counts as diffuse.
///
/// # Arguments
///
/// * `ghi_w_m2`: global horizontal irradiance, 0 or more. \[W/m2\]
/// * `zenith_deg`: without refraction. \[deg\]
/// * `extraterrestrial_w_m2`: on a surface facing the sun. \[W/m2\]
///
/// # Sources
///
/// D. G. Erbs, S. A. Klein and J. A. Duffie, Solar Energy 28 (1982) 293, eq. 1, with the limits
/// at low sun of pvlib 0.16.1.
pub fn erbs_split(ghi_w_m2: f64, zenith_deg: f64, extraterrestrial_w_m2: f64) -> Split {
    let cos_zenith = libm::cos(zenith_deg.to_radians());
    let outside = extraterrestrial_w_m2 * cos_zenith.max(LEAST_COS_ZENITH);
    let kt = (ghi_w_m2 / outside).clamp(0.0, 1.0);
    let diffuse_share = if kt <= 0.22 {
        1.0 - 0.09 * kt
    } else if kt <= 0.8 {
        0.9511 + kt * (-0.1604 + kt * (4.388 + kt * (-16.638 + kt * 12.336)))
    } else {
        0.165
    };
    let dhi_w_m2 = diffuse_share * ghi_w_m2;
    let dni_w_m2 = (ghi_w_m2 - dhi_w_m2) / cos_zenith;
    if NO_BEAM_BEYOND_ZENITH_DEG < zenith_deg || ghi_w_m2 < 0.0 || dni_w_m2 < 0.0 {
        return Split {
            dhi_w_m2: ghi_w_m2,
            dni_w_m2: 0.0,
        };
    }
    Split { dhi_w_m2, dni_w_m2 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn haurwitz_at_four_heights() {
        // pvlib 0.16.1, clearsky.haurwitz, to its last printed digit.
        for (zenith_deg, expected) in [(0.0, 1035.1), (30.0, 888.3), (60.0, 487.9), (75.0, 226.3)] {
            assert!(
                (haurwitz_ghi_w_m2(zenith_deg) - expected).abs() < 0.06,
                "{zenith_deg}"
            );
        }
        assert!(haurwitz_ghi_w_m2(90.1).abs() < f64::MIN_POSITIVE);
    }

    #[test]
    fn a_clear_sky_is_brighter_up_a_mountain() {
        // FAO-56, eq. 37, by hand: 0.75 of Ra at the sea, 0.77 at 1000 m, 0.81 at 3000 m.
        for (altitude_m, share) in [(0.0, 0.75), (1000.0, 0.77), (3000.0, 0.81)] {
            assert!((0.75 * altitude_gain(altitude_m) - share).abs() < 1e-12);
        }
    }

    proptest! {
        #[test]
        fn beam_and_diffuse_make_up_the_whole(
            zenith in 0.0..120.0_f64, index in 0.0..1.3_f64, day in 1..=366_u32
        ) {
            let ghi = index * haurwitz_ghi_w_m2(zenith);
            let split = erbs_split(ghi, zenith, extraterrestrial_normal_w_m2(day));
            let back = split.dhi_w_m2 + split.dni_w_m2 * zenith.to_radians().cos();
            prop_assert!((back - ghi).abs() < 1e-9 * (1.0 + ghi));
            prop_assert!(0.0 <= split.dni_w_m2 && split.dni_w_m2 < 1500.0);
        }
    }
}
