//! A vacuum flask as jacket: two walls of glass or steel with nothing between, or with what has
//! come out of the walls since.
//!
//! Heat leaves by radiation between the silvered walls, by the gas that is left, and along the
//! neck. A flask that was heated too often gives off gas from its walls; above some pascals the gas
//! carries more than the rest together.

use std::f64::consts::PI;

use serde::{Deserialize, Serialize};

use crate::air;
use crate::conduction::{in_series, wall_w_k};
use crate::jacket::{JacketThermal, OUTER_FILM_W_M2K};
use crate::out_of_range::{OutOfRange, Quantity, in_range};
use crate::provenance::{Datum, Source};

/// Gas left in a sound flask. \[Pa\]
pub const SOUND_PA: Datum = Datum::relative(0.01, 0.9, Source::Memory);
/// Gas in one whose vacuum is lost. \[Pa\]
pub const LOST_PA: f64 = 101_325.0;
/// Emissivity of a silvered wall, 0.02 to 0.05.
pub const SILVERED_EMISSIVITY: Datum = Datum::new(0.03, 0.01, Source::Memory);
/// Emissivity of clean bright steel, 0.08 to 0.15.
pub const BRIGHT_STEEL_EMISSIVITY: Datum = Datum::new(0.1, 0.03, Source::Memory);
/// Share of its energy that a molecule of air takes on at an engineering surface, 0.8 to 0.95.
pub const ACCOMMODATION: Datum = Datum::new(0.87, 0.05, Source::Memory);
/// Ratio of the heat capacities of air.
const HEAT_RATIO: f64 = 1.4;
/// Specific gas constant of air, J/kgK.
const GAS_J_KGK: f64 = 287.053;
/// 0 degC in kelvin.
const ZERO_C_K: f64 = 273.15;

/// A flask with a neck.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Flask {
    /// Radius of the inner wall, m.
    pub inner_radius_m: f64,
    /// Height of the room inside, m.
    pub inner_height_m: f64,
    /// Between the walls, m; up to 10 mm, where air stands still.
    pub gap_m: f64,
    /// Emissivity of the walls' faces towards the gap.
    pub emissivity: f64,
    /// Pressure of what is left between them, Pa.
    pub pressure_pa: f64,
    /// The wall where it is drawn together at the neck.
    pub neck: Neck,
}

/// The way for heat along the neck, and through the stopper.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Neck {
    /// Conductivity of the wall, W/mK: glass 1.1, stainless steel 16.
    pub wall_w_mk: f64,
    /// Thickness of one wall, m.
    pub wall_m: f64,
    /// Inner radius, m.
    pub radius_m: f64,
    /// Length from the hot to the cold end, m.
    pub length_m: f64,
    /// Conductivity of the stopper, W/mK, as long as the neck.
    pub stopper_w_mk: f64,
}

/// What leaves a flask by each way, W/K, for the whole difference from inside to the air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FlaskLoss {
    /// Radiation between the walls.
    pub radiation_w_k: f64,
    /// The gas that is left.
    pub gas_w_k: f64,
    /// The neck's wall and the stopper.
    pub neck_w_k: f64,
    /// All together, with the film of air outside.
    pub whole_w_k: f64,
}

/// Conductance of a thin gas between two walls, W/m2K, when its molecules meet nothing but the
/// walls.
///
/// Kennard, Kinetic Theory of Gases (1938), sections 174 to 177:
/// `(g + 1)/(g - 1) sqrt(R/(8 pi T)) p` times the accommodation of the two walls.
#[must_use]
pub fn free_molecular_w_m2k(pressure_pa: f64, mean_c: f64, accommodation: f64) -> f64 {
    let both = accommodation / (2.0 - accommodation);
    let speed = (GAS_J_KGK / (8.0 * PI * (mean_c + ZERO_C_K))).sqrt();
    both * (HEAT_RATIO + 1.0) / (HEAT_RATIO - 1.0) * speed * pressure_pa
}

/// Conductance of a gas of any pressure between two walls, W/m2K: the thin and the dense gas one
/// behind the other, Sherman's interpolation (in: Rarefied Gas Dynamics, 1963).
#[must_use]
pub fn residual_gas_w_m2k(pressure_pa: f64, gap_m: f64, mean_c: f64, accommodation: f64) -> f64 {
    let dense = air::conductivity_w_mk(mean_c) / gap_m;
    in_series(&[
        dense,
        free_molecular_w_m2k(pressure_pa, mean_c, accommodation).max(f64::MIN_POSITIVE),
    ])
}

impl Flask {
    /// What leaves, for an inside at `hot_c` in air at `air_c`, by way.
    ///
    /// # Errors
    ///
    /// [`OutOfRange`] when a measure, an emissivity or a temperature makes no sense.
    pub fn loss(&self, hot_c: f64, air_c: f64) -> Result<FlaskLoss, OutOfRange> {
        self.check(hot_c, air_c)?;
        let outer_m = self.inner_radius_m + self.gap_m;
        let area_m2 = |radius_m: f64| 2.0 * PI * radius_m * (self.inner_height_m + radius_m);
        let (inner_m2, outer_m2) = (area_m2(self.inner_radius_m), area_m2(outer_m));
        let film_w_k = OUTER_FILM_W_M2K.value * outer_m2;
        // The outer wall is close to the air's temperature in a sound flask and some way up in one
        // that lost its vacuum: a few rounds settle it.
        let mut cold_c = air_c;
        let (mut radiation_w_k, mut gas_w_k) = (0.0, 0.0);
        for _ in 0..30 {
            radiation_w_k = inner_m2 * self.radiation_w_m2k(hot_c, cold_c, inner_m2 / outer_m2);
            let mean_c = 0.5 * (hot_c + cold_c);
            gas_w_k = (inner_m2 * outer_m2).sqrt()
                * residual_gas_w_m2k(self.pressure_pa, self.gap_m, mean_c, ACCOMMODATION.value);
            let across = radiation_w_k + gas_w_k;
            cold_c = air_c + (hot_c - air_c) * across / (across + film_w_k);
        }
        let across = radiation_w_k + gas_w_k;
        let through_film = film_w_k / (across + film_w_k);
        let neck = self.neck;
        let neck_w_k = wall_w_k(
            neck.wall_w_mk,
            2.0 * PI * neck.radius_m * neck.wall_m,
            neck.length_m,
        ) + wall_w_k(neck.stopper_w_mk, PI * neck.radius_m.powi(2), neck.length_m);
        Ok(FlaskLoss {
            radiation_w_k: radiation_w_k * through_film,
            gas_w_k: gas_w_k * through_film,
            neck_w_k,
            whole_w_k: across * through_film + neck_w_k,
        })
    }

    /// What the network needs of it. The walls hold next to nothing: the inner one belongs to the
    /// store.
    ///
    /// # Arguments
    ///
    /// * `hot_c`, `air_c`: inside and outside. \[degC\]
    /// * `wall_j_k`: heat capacity of the outer wall. \[J/K\]
    ///
    /// # Errors
    ///
    /// As [`Flask::loss`].
    pub fn thermal(
        &self,
        hot_c: f64,
        air_c: f64,
        wall_j_k: f64,
    ) -> Result<JacketThermal, OutOfRange> {
        Ok(JacketThermal {
            loss_w_k: self.loss(hot_c, air_c)?.whole_w_k,
            capacity_j_k: in_range(Quantity::MeasuredCapacity, wall_j_k, 1.0, 1e6)?,
            pair: None,
            outer_face_c: None,
        })
    }

    /// Radiation between two long cylinders or spheres one in the other, per area of the inner: the
    /// share of the areas weakens the outer's resistance.
    fn radiation_w_m2k(&self, hot_c: f64, cold_c: f64, area_ratio: f64) -> f64 {
        let parallel = 2.0 / self.emissivity - 1.0;
        let nested = 1.0 / self.emissivity + area_ratio * (1.0 / self.emissivity - 1.0);
        air::radiation_w_m2k(hot_c, cold_c, self.emissivity, self.emissivity) * parallel / nested
    }

    fn check(&self, hot_c: f64, air_c: f64) -> Result<(), OutOfRange> {
        in_range(Quantity::InnerRadius, self.inner_radius_m, 0.01, 2.0)?;
        in_range(Quantity::InnerHeight, self.inner_height_m, 0.01, 100.0)?;
        in_range(Quantity::LayerThickness, self.gap_m, 0.001, 0.010)?;
        in_range(Quantity::Emissivity, self.emissivity, 0.01, 1.0)?;
        in_range(Quantity::Pressure, self.pressure_pa, 0.0, 2e5)?;
        in_range(Quantity::InnerRadius, self.neck.radius_m, 0.005, 2.0)?;
        in_range(Quantity::LayerThickness, self.neck.wall_m, 1e-5, 0.05)?;
        in_range(Quantity::LayerThickness, self.neck.length_m, 0.005, 2.0)?;
        in_range(Quantity::Conductivity, self.neck.wall_w_mk, 0.01, 500.0)?;
        in_range(Quantity::Conductivity, self.neck.stopper_w_mk, 0.01, 500.0)?;
        in_range(Quantity::StoreTemperature, hot_c, -40.0, 700.0)?;
        in_range(Quantity::AirTemperature, air_c, -40.0, 60.0)?;
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// A litre flask of glass, silvered.
    fn flask(pressure_pa: f64) -> Flask {
        Flask {
            inner_radius_m: 0.045,
            inner_height_m: 0.2,
            gap_m: 0.006,
            emissivity: SILVERED_EMISSIVITY.value,
            pressure_pa,
            neck: Neck {
                wall_w_mk: 1.1,
                wall_m: 1.5e-3,
                radius_m: 0.02,
                length_m: 0.04,
                stopper_w_mk: 0.05,
            },
        }
    }

    /// Air at 300 K and full accommodation carries 1.17 W/m2K per pascal: Kennard's formula with the
    /// kinetic constants, as in textbooks of vacuum technique (Barron, Cryogenic Systems: 1.1666).
    #[test]
    fn thin_air() {
        let per_pa = free_molecular_w_m2k(1.0, 26.85, 1.0);
        assert!((per_pa / 1.1666 - 1.0).abs() < 0.005, "{per_pa}");
    }

    #[test]
    fn thin_and_dense_meet() {
        let gas = |pressure| residual_gas_w_m2k(pressure, 0.006, 60.0, 0.87);
        let thin = free_molecular_w_m2k(0.001, 60.0, 0.87);
        assert!((gas(0.001) / thin - 1.0).abs() < 1e-3);
        let dense = air::conductivity_w_mk(60.0) / 0.006;
        assert!((gas(101_325.0) / dense - 1.0).abs() < 1e-3);
    }

    /// Common practice, no source: a good litre flask of boiling water is still at 70 degC or more
    /// after 12 hours (makers name 6 and 24 hours); one without its vacuum is lukewarm.
    #[test]
    fn a_litre_of_tea() {
        let after_12_h_c = |pressure| {
            let loss_w_k = flask(pressure).loss(80.0, 20.0).unwrap().whole_w_k;
            20.0 + 75.0 * (-loss_w_k * 43_200.0 / (4186.0 * 1.0 + 300.0)).exp()
        };
        let sound = after_12_h_c(SOUND_PA.value);
        let lost = after_12_h_c(LOST_PA);
        assert!((68.0..88.0).contains(&sound), "{sound}");
        assert!((20.0..45.0).contains(&lost), "{lost}");
    }

    /// Some pascals are enough to spoil it.
    #[test]
    fn a_little_gas_carries_more_than_all_the_rest() {
        let loss = flask(5.0).loss(150.0, 20.0).unwrap();
        assert!(
            loss.radiation_w_k + loss.neck_w_k < loss.gas_w_k,
            "{loss:?}"
        );
        let sound = flask(0.01).loss(150.0, 20.0).unwrap();
        assert!(sound.gas_w_k < 0.2 * sound.whole_w_k, "{sound:?}");
    }

    /// Cengel, Heat and Mass Transfer, radiation between long concentric cylinders:
    /// q = sigma A1 (T1^4 - T2^4)/(1/e1 + (1 - e2)/e2 (r1/r2)); worked by hand for 100 and 20 degC,
    /// e = 0.03, r 0.045 and 0.051 m.
    #[test]
    fn nested_walls() {
        let flask = flask(0.0);
        let ratio = 0.045 / 0.051;
        let expect = 5.670_374e-8 * (373.15_f64.powi(4) - 293.15_f64.powi(4))
            / (1.0 / 0.03 + 0.97 / 0.03 * ratio);
        let got = 80.0 * flask.radiation_w_m2k(100.0, 20.0, ratio);
        assert!((got / expect - 1.0).abs() < 1e-6, "{got} {expect}");
    }

    #[test]
    fn senseless_flasks_are_refused() {
        let wide = Flask {
            gap_m: 0.05,
            ..flask(1.0)
        };
        assert!(wide.loss(100.0, 20.0).is_err());
        assert!(flask(-1.0).loss(100.0, 20.0).is_err());
        assert!(flask(1.0).thermal(100.0, 20.0, 0.0).is_err());
        assert!(flask(1.0).thermal(100.0, 20.0, 200.0).is_ok());
    }

    proptest! {
        #[test]
        fn more_gas_and_more_heat_lose_more(
            exponent in -4.0..4.5_f64, hot_c in 40.0..300.0_f64,
        ) {
            let pressure = 10.0_f64.powf(exponent);
            let loss = flask(pressure).loss(hot_c, 20.0).unwrap();
            prop_assert!(loss.whole_w_k < flask(2.0 * pressure).loss(hot_c, 20.0).unwrap().whole_w_k);
            prop_assert!(loss.radiation_w_k < flask(pressure).loss(hot_c + 20.0, 20.0).unwrap().radiation_w_k * 1.001);
        }
    }
}
