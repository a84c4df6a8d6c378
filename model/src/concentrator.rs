//! A tracked mirror or lens in place of a panel: the beam alone, gathered on a receiver.

use serde::{Deserialize, Serialize};

use crate::sun::IrradianceSeries;

/// 0 degC in kelvin.
const ZERO_C_K: f64 = 273.15;
/// Stefan-Boltzmann constant, W/m2K4 (CODATA 2018).
const STEFAN_BOLTZMANN_W_M2K4: f64 = 5.670_374_419e-8;

/// A concentrator that follows the sun.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Concentrator {
    /// Area that the beam falls on, square to the sun. \[m2\]
    pub aperture_m2: f64,
    /// Share of that beam which the receiver takes in: mirror, window, misses, absorber; 0 to 1.
    pub optical_efficiency: f64,
    /// The hot face that takes it in.
    pub receiver: Receiver,
}

/// The face on which the beam is gathered, open to the air while it is.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct Receiver {
    /// Area. \[m2\]
    pub area_m2: f64,
    /// Emissivity for its own heat: black 0.9, selective 0.1.
    pub emissivity: f64,
    /// Film of air on it, 10 in still air, 0 behind a vacuum. \[W/m2K\]
    pub convection_w_m2k: f64,
}

/// A part of a concentrator that makes no sense.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ConcentratorError {
    /// The aperture is not 0.01 to 100 m2.
    #[error("aperture {0} m2 is not 0.01 to 100 m2")]
    Aperture(f64),
    /// The efficiency is not 0 to 1.
    #[error("optical efficiency {0} is not between 0 and 1")]
    Efficiency(f64),
    /// The receiver is not smaller than the aperture, or has no area.
    #[error("receiver of {0} m2 is not smaller than the aperture")]
    Receiver(f64),
    /// The emissivity is not 0 to 1.
    #[error("emissivity {0} is not between 0 and 1")]
    Emissivity(f64),
    /// The film is not 0 to 1000 W/m2K.
    #[error("film {0} W/m2K is not between 0 and 1000")]
    Film(f64),
}

impl Concentrator {
    /// The concentrator itself, if it makes sense.
    ///
    /// # Errors
    ///
    /// [`ConcentratorError`] with the first value that does not.
    pub fn checked(self) -> Result<Self, ConcentratorError> {
        let Receiver {
            area_m2,
            emissivity,
            convection_w_m2k,
        } = self.receiver;
        if !(0.01..=100.0).contains(&self.aperture_m2) {
            return Err(ConcentratorError::Aperture(self.aperture_m2));
        }
        if !(0.0..=1.0).contains(&self.optical_efficiency) {
            return Err(ConcentratorError::Efficiency(self.optical_efficiency));
        }
        if !(f64::MIN_POSITIVE..=self.aperture_m2).contains(&area_m2) {
            return Err(ConcentratorError::Receiver(area_m2));
        }
        if !(0.0..=1.0).contains(&emissivity) {
            return Err(ConcentratorError::Emissivity(emissivity));
        }
        if !(0.0..=1_000.0).contains(&convection_w_m2k) {
            return Err(ConcentratorError::Film(convection_w_m2k));
        }
        Ok(self)
    }

    /// Heat taken in and kept, in a steady beam, with the receiver at a temperature.
    ///
    /// Never below 0: a receiver that loses more than it gets is turned away or covered. Duffie and
    /// Beckman, Solar Engineering of Thermal Processes, eq. 7.2.1.
    ///
    /// # Arguments
    ///
    /// * `dni_w_m2`: direct normal irradiance. \[W/m2\]
    /// * `receiver_c`, `air_c`: \[degC\]
    ///
    /// # Returns
    ///
    /// \[W\]
    #[must_use]
    pub fn heat_w(&self, dni_w_m2: f64, receiver_c: f64, air_c: f64) -> f64 {
        let taken_w = self.aperture_m2 * self.optical_efficiency * dni_w_m2.max(0.0);
        (taken_w - self.loss_w(receiver_c, air_c)).max(0.0)
    }

    /// What the receiver loses to the air and the sky, W; the sky is taken as warm as the air.
    #[must_use]
    pub fn loss_w(&self, receiver_c: f64, air_c: f64) -> f64 {
        let fourth = |t_c: f64| (t_c + ZERO_C_K).powi(4);
        let radiation_w_m2 = self.receiver.emissivity
            * STEFAN_BOLTZMANN_W_M2K4
            * (fourth(receiver_c) - fourth(air_c));
        let convection_w_m2 = self.receiver.convection_w_m2k * (receiver_c - air_c);
        self.receiver.area_m2 * (radiation_w_m2 + convection_w_m2)
    }

    /// Temperature at which the receiver loses all it takes in, degC: as hot as it can get.
    #[must_use]
    pub fn stagnation_c(&self, dni_w_m2: f64, air_c: f64) -> f64 {
        let taken_w = self.aperture_m2 * self.optical_efficiency * dni_w_m2.max(0.0);
        let (mut low_c, mut high_c) = (air_c, 5_500.0);
        for _ in 0..60 {
            let middle_c = 0.5 * (low_c + high_c);
            if self.loss_w(middle_c, air_c) < taken_w {
                low_c = middle_c;
            } else {
                high_c = middle_c;
            }
        }
        0.5 * (low_c + high_c)
    }

    /// Mean heat in each step of a day, in the order of its steps, with the receiver at one
    /// temperature all day. \[W\]
    #[must_use]
    pub fn day_w(&self, day: &IrradianceSeries, receiver_c: f64) -> Vec<f64> {
        day.steps
            .iter()
            .map(|step| {
                // The beam comes and goes with the clouds; it is off, not weak, behind one.
                let on = if 0.0 < step.sunny_share {
                    step.sunny_share
                } else {
                    1.0
                };
                on * self.heat_w(step.dni_w_m2 / on, receiver_c, step.air_c)
            })
            .collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::{AirYear, Place};
    use crate::sun::{DayLog, Plane, Setting, Sky, Unlogged};

    const DISH: Concentrator = Concentrator {
        aperture_m2: 1.5,
        optical_efficiency: 0.6,
        receiver: Receiver {
            area_m2: 0.03,
            emissivity: 0.9,
            convection_w_m2k: 15.0,
        },
    };

    fn day(sky: Sky) -> IrradianceSeries {
        let setting = Setting {
            place: Place {
                latitude_deg: 15.0,
                longitude_deg: 30.0,
                altitude_m: 800.0,
                utc_offset_min: 120,
            },
            air: AirYear {
                day_c: [25.0; 12],
                night_c: [15.0; 12],
            },
            plane: Plane {
                tilt_deg: 15.0,
                azimuth_deg: 180.0,
                albedo: 0.2,
            },
            wind_m_s: 1.0,
        };
        let log = DayLog::Hourly([Some(sky); 24]);
        IrradianceSeries::new(&setting, 20_533, &log, Unlogged::MeanOfLogged, 30).unwrap()
    }

    /// Worked by hand: 1.5 m2 x 0.6 x 800 W/m2 = 720 W; at 200 degC in 25 degC the black face of
    /// 300 cm2 radiates 0.9 sigma (473.15^4 - 298.15^4) x 0.03 = 64.6 W and gives the air 78.8 W.
    #[test]
    fn gains_and_losses_by_hand() {
        assert!((DISH.loss_w(200.0, 25.0) - 143.4).abs() < 0.3);
        assert!((DISH.heat_w(800.0, 200.0, 25.0) - 576.6).abs() < 0.3);
        assert!(DISH.heat_w(0.0, 200.0, 25.0) < f64::MIN_POSITIVE);
        let hottest = DISH.stagnation_c(800.0, 25.0);
        assert!((DISH.loss_w(hottest, 25.0) - 720.0).abs() < 1e-3);
        assert!(400.0 < hottest);
    }

    /// A clear day heats, an overcast one does not: there is no beam to gather.
    #[test]
    fn the_beam_alone_counts() {
        let kwh = |sky| DISH.day_w(&day(sky), 200.0).iter().sum::<f64>() * 0.5e-3;
        let (clear, grey) = (kwh(Sky::Clear), kwh(Sky::Grey));
        assert!((3.0..6.5).contains(&clear), "{clear}");
        assert!(grey < 0.05 * clear, "{grey}");
        let patchy = kwh(Sky::Patchy);
        assert!(grey < patchy && patchy < clear, "{patchy}");
    }

    #[test]
    fn senseless_ones_are_refused() {
        assert!(DISH.checked().is_ok());
        let wide = Concentrator {
            optical_efficiency: 1.2,
            ..DISH
        };
        assert_eq!(wide.checked(), Err(ConcentratorError::Efficiency(1.2)));
        let none = Concentrator {
            aperture_m2: f64::NAN,
            ..DISH
        };
        assert!(none.checked().is_err());
        let receiver = Receiver {
            area_m2: 2.0,
            ..DISH.receiver
        };
        let large = Concentrator { receiver, ..DISH };
        assert_eq!(large.checked(), Err(ConcentratorError::Receiver(2.0)));
    }
}
