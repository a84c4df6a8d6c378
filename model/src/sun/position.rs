//! Where the sun stands in the sky.

/// Seconds from 1970-01-01 00:00 UTC in Julian days: the epoch's own Julian date.
const UNIX_EPOCH_JD: f64 = 2_440_587.5;
/// Julian date of the epoch J2000.0, from which the series below count.
const J2000_JD: f64 = 2_451_545.0;
/// Terrestrial time less universal time, in the decades about 2020. A minute of error here
/// moves the sun by 0.0007 deg. Value from memory.
const TERRESTRIAL_LESS_UNIVERSAL_S: f64 = 69.0;
/// The sun's mean horizontal parallax, 8.794 arc seconds. \[deg\]
const PARALLAX_DEG: f64 = 8.794 / 3600.0;

/// What moon and planets add to the earth's longitude about the sun: amplitude \[1e-8 rad\],
/// phase \[rad\] and frequency \[rad per thousand Julian years\]. The largest terms of VSOP87 that
/// are not of the ellipse itself, Reda and Andreas (2004), table A4.2, row L0.
const PERTURBATIONS: [(f64, f64, f64); 15] = [
    (3497.0, 2.7441, 5753.3849),
    (3418.0, 2.8289, 3.5231),
    (3136.0, 3.6277, 77_713.771_5),
    (2676.0, 4.4181, 7860.4194),
    (2343.0, 6.1352, 3930.2097),
    (1324.0, 0.7425, 11_506.769_8),
    (1273.0, 2.0371, 529.691),
    (1199.0, 1.1096, 1577.3435),
    (990.0, 5.233, 5884.927),
    (902.0, 2.045, 26.298),
    (857.0, 3.508, 398.149),
    (780.0, 1.179, 5223.694),
    (753.0, 2.533, 5507.553),
    (492.0, 4.205, 775.523),
    (357.0, 2.92, 0.067),
];

/// Direction of the sun's centre, without refraction by the air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SunPosition {
    /// Angle from straight up: 90 on the horizon, above 90 by night. \[deg\]
    pub zenith_deg: f64,
    /// Angle from north, clockwise: 90 is east. 0 up to 360. \[deg\]
    pub azimuth_deg: f64,
}

impl SunPosition {
    /// Cosine of the zenith angle: the share of a sunbeam that falls on level ground. Negative
    /// by night.
    pub fn cos_zenith(&self) -> f64 {
        libm::cos(self.zenith_deg.to_radians())
    }
}

/// Position of the sun seen from a place at an instant.
///
/// The ellipse of Meeus \[1\] with the largest pulls of moon and planets, nutation, aberration and
/// parallax: within 0.002 deg of the full theory \[2\] from 1950 to 2100. The azimuth of a sun
/// straight overhead or underfoot is arbitrary.
///
/// # Arguments
///
/// * `utc_s`: the instant. \[s since 1970-01-01 00:00 UTC\]
/// * `latitude_deg`: north positive, -90 to 90. \[deg\]
/// * `longitude_deg`: east positive, -180 to 180. \[deg\]
///
/// # Example
///
/// The worked example of Reda and Andreas \[2\]: 17 October 2003, 19:30:30 UTC, Golden.
///
/// ```
/// use model::sun::sun_position;
///
/// let sun = sun_position(1_066_419_030.0, 39.742_476, -105.178_6);
/// assert!((sun.azimuth_deg - 194.340_24).abs() < 0.002);
/// // Their elevation before refraction is 39.872046 deg.
/// assert!((90.0 - sun.zenith_deg - 39.872_046).abs() < 0.002);
/// ```
///
/// # Sources
///
/// 1. J. Meeus, *Astronomical Algorithms*, 2nd ed., chapters 12, 22, 25 and 40.
/// 2. I. Reda and A. Andreas, Solar Energy 76 (2004) 577; the example is its table A5.1.
pub fn sun_position(utc_s: f64, latitude_deg: f64, longitude_deg: f64) -> SunPosition {
    let days_ut = utc_s / 86_400.0 + UNIX_EPOCH_JD - J2000_JD;
    let t = (days_ut + TERRESTRIAL_LESS_UNIVERSAL_S / 86_400.0) / 36_525.0;

    let mean_longitude = 280.466_46 + t * (36_000.769_83 + t * 0.000_303_2);
    let anomaly = (357.529_11 + t * (35_999.050_29 - t * 0.000_153_7)).to_radians();
    let centre = (1.914_602 - t * (0.004_817 + t * 0.000_014)) * libm::sin(anomaly)
        + (0.019_993 - t * 0.000_101) * libm::sin(2.0 * anomaly)
        + 0.000_289 * libm::sin(3.0 * anomaly);
    let node = (125.04 - 1_934.136 * t).to_radians();
    let nutation_deg = -0.004_78 * libm::sin(node);
    let pull: f64 = PERTURBATIONS
        .iter()
        .map(|(amplitude, phase, frequency)| amplitude * libm::cos(phase + frequency * 0.1 * t))
        .sum();
    // 0.00569 deg is the aberration.
    let longitude = (mean_longitude + centre - 0.005_69 + nutation_deg).to_radians() + 1e-8 * pull;
    let obliquity = (23.439_291_1 - t * (0.013_004_17 + t * (1.64e-7 - t * 5.04e-7))
        + 0.002_56 * libm::cos(node))
    .to_radians();

    let right_ascension = libm::atan2(
        libm::cos(obliquity) * libm::sin(longitude),
        libm::cos(longitude),
    );
    let (sin_decl, cos_decl) = {
        let declination = libm::asin(libm::sin(obliquity) * libm::sin(longitude));
        libm::sincos(declination)
    };

    let sidereal_deg = 280.460_618_37
        + 360.985_647_366_29 * days_ut
        + 0.000_387_933 * t * t
        + nutation_deg * libm::cos(obliquity);
    let hour_angle = (sidereal_deg + longitude_deg)
        .rem_euclid(360.0)
        .to_radians()
        - right_ascension;
    let (sin_hour, cos_hour) = libm::sincos(hour_angle);
    let (sin_lat, cos_lat) = libm::sincos(latitude_deg.to_radians());

    // The sun's direction in the frame of the place: towards north, east and up.
    let north = sin_decl * cos_lat - cos_decl * cos_hour * sin_lat;
    let east = -cos_decl * sin_hour;
    let up = sin_lat * sin_decl + cos_lat * cos_decl * cos_hour;
    let level = libm::hypot(north, east);
    // The arc tangent keeps its digits near the zenith, where an arc cosine loses half of them.
    let zenith_deg = libm::atan2(level, up).to_degrees() + PARALLAX_DEG * level;
    SunPosition {
        zenith_deg,
        azimuth_deg: libm::atan2(east, north).to_degrees().rem_euclid(360.0),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// 20 March 2026, 14:46 UTC: the March equinox, to the minute (from memory).
    const EQUINOX_S: f64 = 1_774_017_960.0;

    #[test]
    fn sun_stands_overhead_at_the_equator_at_equinox_noon() {
        let highest = (0..1440)
            .map(|min| sun_position(EQUINOX_S - 43_200.0 + 60.0 * f64::from(min), 0.0, 0.0))
            .map(|sun| sun.zenith_deg)
            .fold(f64::INFINITY, f64::min);
        // Between two minutes the sun moves a quarter of a degree, and half a day from the
        // equinox its declination is 0.2 deg.
        assert!(highest < 0.3, "{highest}");
    }

    #[test]
    fn declination_at_the_solstices_is_the_obliquity() {
        // At the pole the zenith angle is 90 less the declination. 21 June 2026 08:24 UTC and
        // 21 December 2026 20:50 UTC, from memory; there the declination stands still.
        let june = sun_position(1_782_030_240.0, 90.0, 0.0);
        let december = sun_position(1_797_886_200.0, 90.0, 0.0);
        assert!((june.zenith_deg - (90.0 - 23.437)).abs() < 0.01, "{june:?}");
        assert!(
            (december.zenith_deg - (90.0 + 23.437)).abs() < 0.01,
            "{december:?}"
        );
    }

    proptest! {
        #[test]
        fn both_sides_of_the_date_line_see_one_sun(
            utc_s in -6.3e8..4.1e9_f64, latitude in -66.0..66.0_f64
        ) {
            let west = sun_position(utc_s, latitude, -180.0);
            let east = sun_position(utc_s, latitude, 180.0);
            prop_assert!((west.zenith_deg - east.zenith_deg).abs() < 1e-7);
            let turn = (west.azimuth_deg - east.azimuth_deg).to_radians();
            prop_assert!((turn.cos() - 1.0).abs() < 1e-9);
        }

        /// An hour either side of its highest point the sun is equally high and equally far from
        /// the meridian, but for the declination's drift of at most 0.034 deg in two hours.
        #[test]
        fn the_sun_is_symmetric_about_solar_noon(
            day in -7_000..47_000_i32, latitude in -66.0..66.0_f64, longitude in -180.0..180.0_f64,
            before_s in 600.0..21_600.0_f64,
        ) {
            let guess = f64::from(day) * 86_400.0 - longitude * 240.0 + 43_200.0;
            // The sun crosses the meridian where its east component changes sign.
            let east = |s: f64| {
                let sun = sun_position(s, latitude, longitude);
                sun.zenith_deg.to_radians().sin() * sun.azimuth_deg.to_radians().sin()
            };
            let (mut low, mut high) = (guess - 1_800.0, guess + 1_800.0);
            for _ in 0..60 {
                let middle = 0.5 * (low + high);
                if east(middle) > 0.0 { low = middle } else { high = middle }
            }
            let morning = sun_position(low - before_s, latitude, longitude);
            let evening = sun_position(low + before_s, latitude, longitude);
            let drift = 0.034 * before_s / 3_600.0 + 1e-3;
            prop_assert!((morning.zenith_deg - evening.zenith_deg).abs() < drift);
            let sum = east(low - before_s) + east(low + before_s);
            prop_assert!(sum.abs() < (2.0 * drift).to_radians());
        }

        #[test]
        fn angles_stay_in_their_ranges(
            utc_s in -6.3e8..4.1e9_f64, latitude in -90.0..=90.0_f64, longitude in -180.0..=180.0_f64
        ) {
            let sun = sun_position(utc_s, latitude, longitude);
            prop_assert!((0.0..=180.1).contains(&sun.zenith_deg));
            prop_assert!((0.0..=360.0).contains(&sun.azimuth_deg));
        }
    }
}
