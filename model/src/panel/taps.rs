//! Two or three elements that are switched: another resistance for another light.
//!
//! A fixed resistor suits one irradiance. With the elements joined in other ways, each suits its
//! own: the stronger light takes the smaller resistance. Straight on the panel; a tracker needs no
//! taps.

use crate::panel::{Array, Drive, Heater, PanelError};
use crate::sun::{IrradianceSeries, PlaneState, faiman_cell_c};

/// Most elements a switch is made for.
pub const MAX_ELEMENTS: usize = 3;

/// How the elements of a tap are joined.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Joined {
    /// One alone.
    Alone,
    /// One behind the other.
    Series,
    /// Side by side.
    Parallel,
}

/// One position of the switch.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tap {
    /// Which elements are in, in the order they were given.
    pub elements: [bool; MAX_ELEMENTS],
    /// How they are joined.
    pub joined: Joined,
    /// Their resistance together at 20 degC. \[ohm\]
    pub resistance_ohm: f64,
}

/// A tap and the least light at which it takes more than every other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Threshold {
    /// From this irradiance on. \[W/m2\]
    pub from_w_m2: f64,
    /// The position of the switch.
    pub tap: Tap,
}

/// Heating elements on one switch and one pair of wires.
#[derive(Debug, Clone, PartialEq)]
pub struct Taps {
    taps: Vec<Tap>,
    wire_ohm: f64,
    alpha_per_k: f64,
}

/// Step of the light in which the positions are compared. \[W/m2\]
const LIGHT_STEP_W_M2: f64 = 5.0;
/// Brightest light for which they are. \[W/m2\]
const BRIGHTEST_W_M2: f64 = 1200.0;

impl Taps {
    /// The positions that a switch can give these elements: each alone, and any of them together
    /// in series or in parallel.
    ///
    /// # Arguments
    ///
    /// * `elements_ohm`: two or three, of the elements at 20 degC, 0.001 to 100000. \[ohm\]
    /// * `wire_ohm`: of the wires from the panel and back, 0 to 1000. \[ohm\]
    /// * `alpha_per_k`: as [`Heater::alpha_per_k`]. \[1/K\]
    ///
    /// # Errors
    ///
    /// [`PanelError::Count`] for another number of elements; as [`Heater::checked`].
    pub fn new(elements_ohm: &[f64], wire_ohm: f64, alpha_per_k: f64) -> Result<Self, PanelError> {
        if !(2..=MAX_ELEMENTS).contains(&elements_ohm.len()) {
            let count = u32::try_from(elements_ohm.len()).unwrap_or(u32::MAX);
            return Err(PanelError::Count(count));
        }
        let mut taps = Vec::new();
        for chosen in 1..1_u32 << elements_ohm.len() {
            let is_in = |idx: usize| chosen & (1 << idx) != 0;
            let inside = || {
                elements_ohm
                    .iter()
                    .enumerate()
                    .filter(|(idx, _)| is_in(*idx))
                    .map(|(_, ohm)| *ohm)
            };
            let elements = std::array::from_fn(is_in);
            let series = Tap {
                elements,
                joined: Joined::Series,
                resistance_ohm: inside().sum(),
            };
            if inside().count() == 1 {
                taps.push(Tap {
                    joined: Joined::Alone,
                    ..series
                });
            } else {
                taps.push(series);
                taps.push(Tap {
                    joined: Joined::Parallel,
                    resistance_ohm: 1.0 / inside().map(|ohm| 1.0 / ohm).sum::<f64>(),
                    ..series
                });
            }
        }
        taps.sort_by(|a, b| b.resistance_ohm.total_cmp(&a.resistance_ohm));
        let taps = Self {
            taps,
            wire_ohm,
            alpha_per_k,
        };
        for ohm in elements_ohm {
            taps.heater(*ohm).checked()?;
        }
        for tap in &taps.taps {
            taps.heater(tap.resistance_ohm).checked()?;
        }
        Ok(taps)
    }

    /// The positions, from the greatest resistance to the smallest.
    pub fn taps(&self) -> &[Tap] {
        &self.taps
    }

    /// Resistance of the wires from the panel and back. \[ohm\]
    pub fn wire_ohm(&self) -> f64 {
        self.wire_ohm
    }

    /// The same elements at a working temperature, as [`Heater::at_element_c`].
    ///
    /// # Errors
    ///
    /// As there.
    pub fn at_element_c(&self, element_c: f64) -> Result<Self, PanelError> {
        let hot = |ohm: f64| self.heater(ohm).at_element_c(element_c);
        let taps = self
            .taps
            .iter()
            .map(|tap| {
                Ok(Tap {
                    resistance_ohm: hot(tap.resistance_ohm)?.resistance_ohm,
                    ..*tap
                })
            })
            .collect::<Result<_, PanelError>>()?;
        Ok(Self {
            taps,
            wire_ohm: self.wire_ohm,
            alpha_per_k: 0.0,
        })
    }

    /// The element that a position of the switch makes.
    pub fn heater_of(&self, tap: &Tap) -> Heater {
        self.heater(tap.resistance_ohm)
    }

    /// Heat at the best position in steady light, and that position.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels.
    /// * `irradiance_w_m2`: on the panels. \[W/m2\]
    /// * `cell_c`: of their cells. \[degC\]
    ///
    /// # Returns
    ///
    /// The position and \[W\]; in the dark the greatest resistance and 0.
    pub fn best(&self, array: &Array, irradiance_w_m2: f64, cell_c: f64) -> Option<(Tap, f64)> {
        let mut best: Option<(Tap, f64)> = None;
        for tap in &self.taps {
            let heat_w = self.heater_of(tap).heat_w(array, irradiance_w_m2, cell_c);
            if best.is_none_or(|(_, most_w)| most_w < heat_w) {
                best = Some((*tap, heat_w));
            }
        }
        best
    }

    /// Heat at the best position for each state of the light, mean over a step. \[W\]
    ///
    /// The most that switching can take: a hand that follows every cloud.
    pub fn mean_heat_w(&self, array: &Array, states: &[PlaneState]) -> f64 {
        states
            .iter()
            .map(|s| {
                let best = self.best(array, s.irradiance_w_m2, s.cell_c);
                s.weight * best.map_or(0.0, |(_, heat_w)| heat_w)
            })
            .sum()
    }

    /// Where to switch as the light grows, from the dark upwards, with the cells as warm as they
    /// become in a light wind.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels.
    /// * `air_c`: of the air. \[degC\]
    pub fn thresholds(&self, array: &Array, air_c: f64) -> Vec<Threshold> {
        let mut found: Vec<Threshold> = Vec::new();
        let mut light_w_m2 = LIGHT_STEP_W_M2;
        while light_w_m2 <= BRIGHTEST_W_M2 {
            let cell_c = faiman_cell_c(light_w_m2, air_c, 1.0);
            if let Some((tap, _)) = self.best(array, light_w_m2, cell_c)
                && found.last().is_none_or(|last| last.tap != tap)
            {
                let from_w_m2 = if found.is_empty() { 0.0 } else { light_w_m2 };
                found.push(Threshold { from_w_m2, tap });
            }
            light_w_m2 += LIGHT_STEP_W_M2;
        }
        found
    }

    /// Share of the energy at maximum power over some days that becomes heat, always at the best
    /// position; `None` if there is no light in the days.
    ///
    /// # Arguments
    ///
    /// * `array`: the panels.
    /// * `days`: one day, or the typical days of a year.
    pub fn match_share(&self, array: &Array, days: &[IrradianceSeries]) -> Option<f64> {
        let (mut taken_j, mut most_j) = (0.0, 0.0);
        for day in days {
            for step in &day.steps {
                let step_s = f64::from(day.step_s);
                taken_j += step_s * self.mean_heat_w(array, &step.states);
                for s in &step.states {
                    let most = array.max_power(s.irradiance_w_m2, s.cell_c);
                    most_j += step_s * s.weight * most.power_w();
                }
            }
        }
        (0.0 < most_j).then(|| taken_j / most_j)
    }

    const fn heater(&self, resistance_ohm: f64) -> Heater {
        Heater {
            drive: Drive::Direct,
            resistance_ohm,
            wire_ohm: self.wire_ohm,
            alpha_per_k: self.alpha_per_k,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::panel::{Datasheet, best_resistance, match_share};
    use crate::place::{AirYear, Place};
    use crate::sun::{DayLog, Plane, Setting, Sky, Unlogged};
    use proptest::prelude::*;

    fn array() -> Array {
        Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap()
    }

    fn day(sky: Sky) -> IrradianceSeries {
        let setting = Setting {
            place: Place {
                latitude_deg: 5.0,
                longitude_deg: 0.0,
                altitude_m: 0.0,
                utc_offset_min: 0,
            },
            air: AirYear {
                day_c: [25.0; 12],
                night_c: [25.0; 12],
            },
            plane: Plane {
                tilt_deg: 5.0,
                azimuth_deg: 180.0,
                albedo: 0.2,
            },
            wind_m_s: 1.0,
        };
        let log = DayLog::Hourly([Some(sky); 24]);
        IrradianceSeries::new(&setting, 20_533, &log, Unlogged::MeanOfLogged, 30).unwrap()
    }

    #[test]
    fn two_elements_have_four_positions_and_three_have_eleven() {
        let ohms = |taps: &Taps| -> Vec<f64> {
            taps.taps().iter().map(|tap| tap.resistance_ohm).collect()
        };
        let two = ohms(&Taps::new(&[4.0, 12.0], 0.0, 0.0).unwrap());
        assert_eq!(two, [16.0, 12.0, 4.0, 3.0]);
        let three = ohms(&Taps::new(&[4.0, 6.0, 12.0], 0.0, 0.0).unwrap());
        assert_eq!(three.len(), 11);
        assert!((three[0] - 22.0).abs() < 1e-12 && (three[10] - 2.0).abs() < 1e-12);
    }

    /// Fanney and Dougherty, J. Sol. Energy Eng. 119 (1997) 126, switched resistors of a water
    /// heater to follow the maximum power; two switched resistors recover most of what one loses
    /// (computed: a clear day 0.85 with one, a grey one below 0.4).
    #[test]
    fn two_switched_elements_recover_most_of_what_one_loses() {
        let array = array();
        let days = [day(Sky::Clear), day(Sky::Grey)];
        let one = best_resistance(&array, 0.0, &days).unwrap();
        let mut best = (0.0, one.share);
        for small in [3.0, 3.5, 4.0, 5.0] {
            for large in [7.0, 10.0, 14.0, 20.0] {
                let taps = Taps::new(&[small, large], 0.0, 0.0).unwrap();
                let share = taps.match_share(&array, &days).unwrap();
                if best.1 < share {
                    best = (small, share);
                }
            }
        }
        let recovered = (best.1 - one.share) / (1.0 - one.share);
        assert!(0.5 < recovered && best.1 <= 1.0, "{one:?}, {best:?}");
    }

    #[test]
    fn more_light_takes_less_resistance() {
        let taps = Taps::new(&[4.0, 9.0], 0.1, 0.0).unwrap();
        let thresholds = taps.thresholds(&array(), 25.0);
        assert!(thresholds.len() == 4, "{thresholds:?}");
        for pair in thresholds.windows(2) {
            assert!(pair[0].from_w_m2 < pair[1].from_w_m2);
            assert!(pair[1].tap.resistance_ohm < pair[0].tap.resistance_ohm);
        }
        // The last is the two side by side, 2.8 ohm: the panel's own 18 V over 5.6 A is 3.2 ohm.
        assert_eq!(thresholds[3].tap.joined, Joined::Parallel);
        assert!((700.0..1200.0).contains(&thresholds[3].from_w_m2));
    }

    #[test]
    fn hot_elements_and_senseless_ones() {
        let taps = Taps::new(&[4.0, 8.0], 0.0, 1e-4).unwrap();
        let hot = taps.at_element_c(320.0).unwrap();
        for (cold, hot) in taps.taps().iter().zip(hot.taps()) {
            assert!((hot.resistance_ohm / cold.resistance_ohm - 1.03).abs() < 1e-9);
        }
        assert_eq!(Taps::new(&[4.0], 0.0, 0.0), Err(PanelError::Count(1)));
        assert_eq!(
            Taps::new(&[4.0, 0.0], 0.0, 0.0),
            Err(PanelError::Resistance(0.0))
        );
        assert_eq!(
            Taps::new(&[4.0, 5.0], -1.0, 0.0),
            Err(PanelError::WireResistance(-1.0))
        );
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(60))]
        #[test]
        fn switching_never_takes_less_than_one_element_nor_more_than_the_maximum(
            a in 1.0..40.0_f64, b in 1.0..40.0_f64, light in 1.0..1200.0_f64, cell in 0.0..70.0_f64,
        ) {
            let array = array();
            let taps = Taps::new(&[a, b], 0.05, 0.0).unwrap();
            let (_, heat_w) = taps.best(&array, light, cell).unwrap();
            for tap in taps.taps() {
                prop_assert!(taps.heater_of(tap).heat_w(&array, light, cell) <= heat_w);
            }
            prop_assert!(heat_w <= array.max_power(light, cell).power_w() * (1.0 + 1e-9));
        }
    }

    #[test]
    fn switching_is_worth_more_than_any_of_its_positions_over_a_day() {
        let array = array();
        let days = [day(Sky::Patchy)];
        let taps = Taps::new(&[3.5, 10.0], 0.0, 0.0).unwrap();
        let switched = taps.match_share(&array, &days).unwrap();
        for tap in taps.taps() {
            assert!(match_share(&array, &taps.heater_of(tap), &days).unwrap() < switched);
        }
        assert_eq!(taps.match_share(&array, &[]), None);
    }
}
