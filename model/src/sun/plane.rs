//! Light on the tilted panel, and the temperature its cells take.

use crate::sun::error::within;
use crate::sun::{Split, SunError, SunPosition};

/// How the panel is mounted.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plane {
    /// 0 lying flat, 90 upright. \[deg\]
    pub tilt_deg: f64,
    /// Where its face looks, from north clockwise: 180 is south. \[deg\]
    pub azimuth_deg: f64,
    /// Share of the light that the ground in front reflects: grass and soil about 0.2.
    pub albedo: f64,
}

impl Plane {
    /// The plane itself, if its angles and albedo make sense.
    ///
    /// # Errors
    ///
    /// [`SunError::Tilt`], [`SunError::Azimuth`] or [`SunError::Albedo`] with the value.
    pub fn checked(self) -> Result<Self, SunError> {
        within(self.tilt_deg, 0.0, 90.0, SunError::Tilt)?;
        within(self.azimuth_deg, -360.0, 360.0, SunError::Azimuth)?;
        within(self.albedo, 0.0, 1.0, SunError::Albedo)?;
        Ok(self)
    }

    /// Irradiance on the plane, with a sky and a ground that are equally bright all over.
    ///
    /// The isotropic sky is some percent low on a clear day, where the sky is brighter about
    /// the sun; it needs nothing a household does not know.
    ///
    /// # Arguments
    ///
    /// * `sun`: where it stands.
    /// * `ghi_w_m2`: global horizontal irradiance. \[W/m2\]
    /// * `split`: the same light, divided.
    ///
    /// # Returns
    ///
    /// 0 or more. \[W/m2\]
    ///
    /// # Sources
    ///
    /// B. Y. H. Liu and R. C. Jordan, Solar Energy 7 (1963) 53.
    pub fn irradiance_w_m2(&self, sun: SunPosition, ghi_w_m2: f64, split: Split) -> f64 {
        let (sin_tilt, cos_tilt) = libm::sincos(self.tilt_deg.to_radians());
        let (sin_zenith, cos_zenith) = libm::sincos(sun.zenith_deg.to_radians());
        let turn = (sun.azimuth_deg - self.azimuth_deg).to_radians();
        let cos_incidence = cos_zenith * cos_tilt + sin_zenith * sin_tilt * libm::cos(turn);
        split.dni_w_m2 * cos_incidence.max(0.0)
            + split.dhi_w_m2 * 0.5 * (1.0 + cos_tilt)
            + ghi_w_m2 * self.albedo * 0.5 * (1.0 - cos_tilt)
    }
}

/// Temperature of the cells in a steady wind.
///
/// For an open rack; on a roof with little air behind it the cells are 5 to 10 K warmer at full
/// sun (from memory). The panel takes some minutes to get there.
///
/// # Arguments
///
/// * `irradiance_w_m2`: on the panel. \[W/m2\]
/// * `air_c`: air temperature. \[degC\]
/// * `wind_m_s`: at the panel. \[m/s\]
///
/// # Returns
///
/// Cell temperature. \[degC\]
///
/// # Sources
///
/// D. Faiman, Progress in Photovoltaics 16 (2008) 307, mean of seven module types:
/// 25.0 W/m2K and 6.84 W/m2K per m/s.
pub fn faiman_cell_c(irradiance_w_m2: f64, air_c: f64, wind_m_s: f64) -> f64 {
    air_c + irradiance_w_m2 / (25.0 + 6.84 * wind_m_s)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sun::{erbs_split, haurwitz_ghi_w_m2};
    use proptest::prelude::*;

    #[test]
    fn tilted_plane_by_hand() {
        // Worked by hand: zenith 40, incidence 20 (tilt 20 towards the sun), DNI 800, DHI 100.
        let sun = SunPosition {
            zenith_deg: 40.0,
            azimuth_deg: 150.0,
        };
        let split = Split {
            dhi_w_m2: 100.0,
            dni_w_m2: 800.0,
        };
        let ghi = 100.0 + 800.0 * 40_f64.to_radians().cos();
        let plane = Plane {
            tilt_deg: 20.0,
            azimuth_deg: 150.0,
            albedo: 0.2,
        };
        assert!((ghi - 712.8).abs() < 0.05, "{ghi}");
        let poa = plane.irradiance_w_m2(sun, ghi, split);
        assert!((poa - 853.04).abs() < 0.05, "{poa}");
    }

    #[test]
    fn incidence_on_a_tilted_plane() {
        // Duffie and Beckman, Solar Engineering of Thermal Processes, example 1.6.1: latitude 43,
        // tilt 45, facing 15 deg west of south, declination -14, hour angle -22.5: 35 deg.
        let (lat, decl, hour) = (
            43_f64.to_radians(),
            (-14_f64).to_radians(),
            -22.5_f64.to_radians(),
        );
        let up = lat.sin() * decl.sin() + lat.cos() * decl.cos() * hour.cos();
        let north = decl.sin() * lat.cos() - decl.cos() * hour.cos() * lat.sin();
        let east = -decl.cos() * hour.sin();
        let sun = SunPosition {
            zenith_deg: up.acos().to_degrees(),
            azimuth_deg: east.atan2(north).to_degrees(),
        };
        let plane = Plane {
            tilt_deg: 45.0,
            azimuth_deg: 195.0,
            albedo: 0.0,
        };
        let beam = plane.irradiance_w_m2(
            sun,
            0.0,
            Split {
                dhi_w_m2: 0.0,
                dni_w_m2: 1.0,
            },
        );
        assert!((beam.acos().to_degrees() - 35.18).abs() < 0.02);
    }

    #[test]
    fn senseless_planes_are_refused() {
        let plane = Plane {
            tilt_deg: 15.0,
            azimuth_deg: 0.0,
            albedo: 0.2,
        };
        assert_eq!(
            Plane {
                tilt_deg: 91.0,
                ..plane
            }
            .checked(),
            Err(SunError::Tilt(91.0))
        );
        assert_eq!(
            Plane {
                albedo: -0.1,
                ..plane
            }
            .checked(),
            Err(SunError::Albedo(-0.1))
        );
        assert!(
            Plane {
                azimuth_deg: f64::NAN,
                ..plane
            }
            .checked()
            .is_err()
        );
    }

    proptest! {
        #[test]
        fn a_flat_plane_sees_the_global_irradiance(
            zenith in 0.0..110.0_f64, azimuth in 0.0..360.0_f64, index in 0.0..1.1_f64,
            facing in 0.0..360.0_f64,
        ) {
            let ghi = index * haurwitz_ghi_w_m2(zenith);
            let split = erbs_split(ghi, zenith, 1366.1);
            let flat = Plane { tilt_deg: 0.0, azimuth_deg: facing, albedo: 0.5 };
            let sun = SunPosition { zenith_deg: zenith, azimuth_deg: azimuth };
            prop_assert!((flat.irradiance_w_m2(sun, ghi, split) - ghi).abs() < 1e-9 * (1.0 + ghi));
        }
    }
}
