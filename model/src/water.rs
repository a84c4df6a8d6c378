//! Properties of water, and of the air it boils in.

use crate::error::{ModelError, within};

/// Specific heat capacity of liquid water, J/(kg K).
///
/// One value for all temperatures: 4186 J/(kg K) is the old 15 degC calorie, and lies within 0.1 % of
/// the mean from 25 degC to the boil (4190 J/(kg K), from 314.1 kJ/kg by IAPWS-IF97); the true value
/// runs from 4179 at 40 degC to 4217 at 100 degC. The amount of water in a pot is known far less well.
pub const CP_J_KGK: f64 = 4186.0;

/// Highest altitude for which the boiling point is given, m: the highest summit.
pub const ALTITUDE_MAX_M: f64 = 9000.0;

/// Lowest altitude for which the boiling point is given, m: the shore of the Dead Sea.
pub const ALTITUDE_MIN_M: f64 = -450.0;

/// Air pressure at an altitude in metres, Pa.
///
/// International Standard Atmosphere 1976 (ISO 2533:1975), troposphere. Weather moves the true
/// pressure by about 2 kPa, the boiling point by about 0.5 K.
///
/// # Errors
/// The altitude is not finite or lies outside [`ALTITUDE_MIN_M`] to [`ALTITUDE_MAX_M`].
pub fn air_pressure_pa(altitude_m: f64) -> Result<f64, ModelError> {
    let h = within("altitude_m", altitude_m, ALTITUDE_MIN_M, ALTITUDE_MAX_M)?;
    Ok(101_325.0 * libm::pow(1.0 - 2.255_77e-5 * h, 5.255_88))
}

/// Temperature at which water boils at a pressure, degC.
///
/// IAPWS-IF97 (R7-97(2012)), region 4, backward equation 31: exact inverse of the release's saturation
/// line, valid from 611.213 Pa to 22.064 MPa; a pressure outside is taken as the nearer end.
pub fn saturation_temperature_c(pressure_pa: f64) -> f64 {
    const N: [f64; 10] = [
        0.116_705_214_527_67e4,
        -0.724_213_167_032_06e6,
        -0.170_738_469_400_92e2,
        0.120_208_247_024_70e5,
        -0.323_255_503_223_33e7,
        0.149_151_086_135_30e2,
        -0.482_326_573_615_91e4,
        0.405_113_405_420_57e6,
        -0.238_555_575_678_49,
        0.650_175_348_447_98e3,
    ];
    let [n1, n2, n3, n4, n5, n6, n7, n8, n9, n10] = N;
    let beta = libm::pow(pressure_pa.clamp(611.213, 22.064e6) / 1.0e6, 0.25);
    let e = (beta + n3) * beta + n6;
    let f = (n1 * beta + n4) * beta + n7;
    let g = (n2 * beta + n5) * beta + n8;
    let d = 2.0 * g / (-f - (f * f - 4.0 * e * g).sqrt());
    let sum = n10 + d;
    (sum - (sum * sum - 4.0 * (n9 + n10 * d)).sqrt()) / 2.0 - 273.15
}

/// Temperature at which water boils at an altitude in metres, degC.
///
/// # Errors
/// As [`air_pressure_pa`].
pub fn boiling_point_c(altitude_m: f64) -> Result<f64, ModelError> {
    air_pressure_pa(altitude_m).map(saturation_temperature_c)
}

/// Heat of vaporisation at a temperature, J/kg.
///
/// Cubic through h'' - h' of IAPWS-IF97 (regions 1 and 2 on the saturation line) at 0.5 K steps from 0
/// to 125 degC, least squares, largest error 0.004 %. A temperature outside is taken as the nearer end.
pub fn heat_of_vaporisation_j_kg(t_c: f64) -> f64 {
    let t = t_c.clamp(0.0, 125.0);
    2.500_959_19e6 + t * (-2.379_544_63e3 + t * (0.659_250_962 + t * -1.315_616_00e-2))
}

/// Vapour pressure of water at a temperature, Pa.
///
/// Tetens' equation as in FAO Irrigation and Drainage Paper 56, equation 11; within 1 % up to 100 degC.
pub fn vapour_pressure_pa(t_c: f64) -> f64 {
    610.8 * libm::exp(17.27 * t_c / (t_c + 237.3))
}

/// Slope of [`vapour_pressure_pa`], Pa/K.
///
/// FAO Irrigation and Drainage Paper 56, equation 13.
pub fn vapour_pressure_slope_pa_k(t_c: f64) -> f64 {
    vapour_pressure_pa(t_c) * 17.27 * 237.3 / (t_c + 237.3).powi(2)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(actual: f64, expected: f64, tolerance: f64) {
        assert!(
            (actual - expected).abs() <= tolerance,
            "{actual} is not {expected} within {tolerance:e}"
        );
    }

    #[test]
    fn boils_at_the_published_temperatures() {
        // IAPWS R7-97(2012), table 36.
        near(saturation_temperature_c(0.1e6), 372.755_919 - 273.15, 1e-6);
        near(saturation_temperature_c(1.0e6), 453.035_632 - 273.15, 1e-6);
        near(saturation_temperature_c(10.0e6), 584.149_488 - 273.15, 1e-6);
    }

    #[test]
    fn vaporises_as_the_steam_tables_say() {
        // Saturated steam tables (Wagner and Pruss, IAPWS-95), from memory.
        near(heat_of_vaporisation_j_kg(25.0), 2_441.7e3, 300.0);
        near(heat_of_vaporisation_j_kg(50.0), 2_382.0e3, 300.0);
        near(heat_of_vaporisation_j_kg(100.0), 2_256.4e3, 300.0);
    }

    #[test]
    fn vapour_pressure_follows_the_printed_table() {
        // FAO-56, annex 2, table 2.3: 15 and 24.5 degC.
        near(vapour_pressure_pa(15.0), 1705.0, 1.0);
        near(vapour_pressure_pa(24.5), 3075.0, 1.0);
        let slope = (vapour_pressure_pa(60.01) - vapour_pressure_pa(59.99)) / 0.02;
        near(vapour_pressure_slope_pa_k(60.0), slope, 1e-3);
    }

    #[test]
    fn altitude_outside_the_range_is_refused() {
        assert!(boiling_point_c(9000.1).is_err());
        assert!(boiling_point_c(f64::NAN).is_err());
        assert!(boiling_point_c(-451.0).is_err());
    }
}
