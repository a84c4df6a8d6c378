//! A charged can that is carried from where it was charged to the kitchen, and set down or turned
//! over there.

use serde::{Deserialize, Serialize};

use crate::air;
use crate::conduction::in_series;
use crate::error::{ModelError, positive, within};
use crate::network::Layer;

/// Free convection off a hot can that is carried through still air, W/m2K (common practice, no
/// source; Churchill and Chu give 7 to 9 for 15 cm at 200 to 330 degC).
const CONVECTION_W_M2K: f64 = 9.0;

/// A can as it is carried.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
pub struct CarriedCan {
    /// Its whole surface. \[m2\]
    pub area_m2: f64,
    /// Emissivity of its outside: oxidised steel 0.8, bright 0.2.
    pub emissivity: f64,
    /// Thickness of what it is wrapped in, 0 for bare. \[m\]
    pub wrap_m: f64,
    /// Conductivity of the wrap at its working temperature. \[W/mK\]
    pub wrap_w_mk: f64,
}

impl CarriedCan {
    /// The can itself, if it makes sense.
    ///
    /// # Errors
    ///
    /// [`ModelError`] with the first value that is out of range.
    pub fn checked(self) -> Result<Self, ModelError> {
        within("area_m2", self.area_m2, 0.001, 10.0)?;
        within("emissivity", self.emissivity, 0.01, 1.0)?;
        within("wrap_m", self.wrap_m, 0.0, 0.5)?;
        positive("wrap_w_mk", self.wrap_w_mk)?;
        Ok(self)
    }

    /// What it loses on the way, W/K: for [`crate::network::Network::with_lid_w_k`] while it is
    /// carried.
    #[must_use]
    pub fn loss_w_k(&self, store_c: f64, air_c: f64) -> f64 {
        let film_w_m2k = |face_c: f64, emissivity: f64| {
            CONVECTION_W_M2K + air::radiation_w_m2k(face_c, air_c, emissivity, 1.0)
        };
        if self.wrap_m <= 0.0 {
            return self.area_m2 * film_w_m2k(store_c, self.emissivity);
        }
        let wrap_w_m2k = self.wrap_w_mk / self.wrap_m;
        let mut face_c = air_c;
        let mut across_w_m2k = wrap_w_m2k;
        // Cloth and fibre are nearly black; the face settles within a few rounds.
        for _ in 0..20 {
            across_w_m2k = in_series(&[wrap_w_m2k, film_w_m2k(face_c, 0.9)]);
            face_c = store_c - across_w_m2k / wrap_w_m2k * (store_c - air_c);
        }
        self.area_m2 * across_w_m2k
    }
}

/// The layer under the seat once the can is turned over: what is solid now stays on the far side, and
/// the pot meets the melt. A new layer grows on the seat from nothing.
///
/// A can is charged from the top, since salt that melts at the bottom first has nowhere to grow; so
/// what did not melt lies where the pot would be.
#[must_use]
pub fn turned_over(layer: Layer, solid_share: f64) -> Layer {
    Layer {
        elsewhere: solid_share.clamp(0.0, 1.0),
        ..layer
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const CAN: CarriedCan = CarriedCan {
        area_m2: 0.16,
        emissivity: 0.8,
        wrap_m: 0.0,
        wrap_w_mk: 0.07,
    };

    /// A black face at 300 degC in air at 25 degC radiates 0.8 sigma (573.15^4 - 298.15^4)/275 =
    /// 16.5 W/m2K; by hand, with 9 by convection, 25.5 W/m2K.
    #[test]
    fn bare_and_wrapped() {
        let bare = CAN.loss_w_k(300.0, 25.0) / CAN.area_m2;
        assert!((bare - 25.5).abs() < 0.1, "{bare}");
        let wrapped = CarriedCan {
            wrap_m: 0.03,
            ..CAN
        }
        .loss_w_k(300.0, 25.0)
            / CAN.area_m2;
        assert!((1.9..2.33).contains(&wrapped), "{wrapped}");
    }

    #[test]
    fn senseless_cans_are_refused() {
        assert!(CAN.checked().is_ok());
        assert!(
            CarriedCan {
                wrap_m: -0.1,
                ..CAN
            }
            .checked()
            .is_err()
        );
        assert!(
            CarriedCan {
                emissivity: f64::NAN,
                ..CAN
            }
            .checked()
            .is_err()
        );
    }
}
