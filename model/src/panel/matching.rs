//! Which resistance suits the panel under the sky it has.

use crate::panel::{Array, Drive, Heater, PanelError};
use crate::sun::{IrradianceSeries, PlaneState};

/// Factors of Vmp/Imp between which the best resistance is sought. At 1000 W/m2 it is 1; a sky
/// that is never brighter than 100 W/m2 wants 10.
const SEARCHED: (f64, f64) = (0.3, 60.0);
/// Points of the coarse search: sun and cloud may each have a best resistance of their own.
const SCAN: u32 = 28;
/// Width at which the fine search ends, as a share of the resistance.
const FINE: f64 = 1e-4;

/// A resistance and what it takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BestResistance {
    /// Of the element, hot, without the wire. \[ohm\]
    pub resistance_ohm: f64,
    /// Its heat over the days as a share of the energy at the panels' maximum power.
    pub share: f64,
}

/// Share of the energy at maximum power over some days that becomes heat in the element.
///
/// A resistor wired straight to a panel takes 0.7 to 0.9 of it on a clear day and 0.2 to 0.4
/// under an overcast sky.
///
/// # Arguments
///
/// * `array`: the panels.
/// * `heater`: the element at its working temperature.
/// * `days`: one day, or the typical days of a year.
///
/// # Returns
///
/// 0 to 1; `None` if there is no light in the days.
pub fn match_share(array: &Array, heater: &Heater, days: &[IrradianceSeries]) -> Option<f64> {
    let light = light_of(days);
    share(array, heater, &light, energy_at_maximum(array, &light))
}

/// The resistance that takes most over some days.
///
/// # Arguments
///
/// * `array`: the panels.
/// * `wire_ohm`: of the wires to the element and back, 0 to 1000. \[ohm\]
/// * `days`: the typical days of a year, as [`crate::sun::typical_year`] makes them.
///
/// # Errors
///
/// [`PanelError::WireResistance`] with the value; [`PanelError::NoLight`] if the days are dark.
pub fn best_resistance(
    array: &Array,
    wire_ohm: f64,
    days: &[IrradianceSeries],
) -> Result<BestResistance, PanelError> {
    let light = light_of(days);
    let most = energy_at_maximum(array, &light);
    let rated = array.max_power(1000.0, 25.0);
    let scale_ohm = rated.voltage_v / rated.current_a;
    let heater = |resistance_ohm: f64| Heater {
        drive: Drive::Direct,
        resistance_ohm,
        wire_ohm,
        alpha_per_k: 0.0,
    };
    heater(scale_ohm).checked()?;
    let no_light = PanelError::NoLight(days.len());
    let taken = |log_ohm: f64| share(array, &heater(libm::exp(log_ohm)), &light, most);

    let (low, high) = (
        libm::log(SEARCHED.0 * scale_ohm),
        libm::log(SEARCHED.1 * scale_ohm),
    );
    let width = (high - low) / f64::from(SCAN);
    let mut best = (low, taken(low).ok_or(no_light)?);
    for idx in 1..=SCAN {
        let log_ohm = low + width * f64::from(idx);
        if let Some(share) = taken(log_ohm)
            && best.1 < share
        {
            best = (log_ohm, share);
        }
    }
    // Golden section between the neighbours of the best point.
    let golden = 0.5 * (5_f64.sqrt() - 1.0);
    let (mut from, mut to) = (best.0 - width, best.0 + width);
    let value = |log_ohm: f64| taken(log_ohm).unwrap_or(0.0);
    let mut inner = (to - golden * (to - from), from + golden * (to - from));
    let mut values = (value(inner.0), value(inner.1));
    while FINE < to - from {
        if values.0 < values.1 {
            from = inner.0;
            inner = (inner.1, from + golden * (to - from));
            values = (values.1, value(inner.1));
        } else {
            to = inner.1;
            inner = (to - golden * (to - from), inner.0);
            values = (value(inner.0), values.0);
        }
    }
    let log_ohm = 0.5 * (from + to);
    Ok(BestResistance {
        resistance_ohm: libm::exp(log_ohm),
        share: value(log_ohm),
    })
}

/// All states of light of the days, each weighted by the seconds it lasts.
fn light_of(days: &[IrradianceSeries]) -> Vec<PlaneState> {
    days.iter()
        .flat_map(|day| {
            day.steps
                .iter()
                .map(move |step| (f64::from(day.step_s), step))
        })
        .flat_map(|(step_s, step)| {
            step.states.iter().map(move |s| PlaneState {
                weight: s.weight * step_s,
                ..*s
            })
        })
        .collect()
}

/// Energy of the panels at their maximum power. \[J\]
fn energy_at_maximum(array: &Array, light: &[PlaneState]) -> f64 {
    light
        .iter()
        .map(|s| s.weight * array.max_power(s.irradiance_w_m2, s.cell_c).power_w())
        .sum()
}

fn share(array: &Array, heater: &Heater, light: &[PlaneState], most_j: f64) -> Option<f64> {
    (0.0 < most_j).then(|| heater.mean_heat_w(array, light) / most_j)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::panel::Datasheet;
    use crate::place::{AirYear, Place};
    use crate::sun::{DayLog, Plane, Setting, Sky, Unlogged, typical_year};

    fn setting(latitude_deg: f64) -> Setting {
        Setting {
            place: Place {
                latitude_deg,
                longitude_deg: 0.0,
                altitude_m: 0.0,
                utc_offset_min: 0,
            },
            air: AirYear {
                day_c: [25.0; 12],
                night_c: [25.0; 12],
            },
            plane: Plane {
                tilt_deg: latitude_deg.abs(),
                azimuth_deg: 180.0,
                albedo: 0.2,
            },
            wind_m_s: 1.0,
        }
    }

    fn day(sky: Sky) -> IrradianceSeries {
        let log = DayLog::Hourly([Some(sky); 24]);
        IrradianceSeries::new(&setting(0.0), 20_533, &log, Unlogged::MeanOfLogged, 15).unwrap()
    }

    fn direct(resistance_ohm: f64) -> Heater {
        Heater {
            drive: Drive::Direct,
            resistance_ohm,
            wire_ohm: 0.0,
            alpha_per_k: 0.0,
        }
    }

    #[test]
    fn a_fixed_resistor_takes_most_of_a_clear_day_and_little_of_a_grey_one() {
        let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
        // Matched at 750 W/m2, as is common practice for sunny places (no source).
        let heater = direct(3.9);
        let clear = match_share(&array, &heater, &[day(Sky::Clear)]).unwrap();
        let grey = match_share(&array, &heater, &[day(Sky::Grey)]).unwrap();
        assert!((0.78..0.92).contains(&clear), "{clear}");
        assert!((0.15..0.45).contains(&grey), "{grey}");
    }

    #[test]
    fn the_best_resistance_of_a_sunny_year_is_within_what_was_published() {
        // An optimised fixed resistance takes 0.74 to 0.83 of what a tracker takes over a year:
        // Matuska and Sourek, International Journal of Photoenergy (2017) 7540250.
        let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
        let year = typical_year(&setting(35.0), 0.6, 60).unwrap();
        let best = best_resistance(&array, 0.0, &year).unwrap();
        assert!((0.70..0.87).contains(&best.share), "{best:?}");
        for factor in [0.7, 0.9, 1.1, 1.4] {
            let other = match_share(&array, &direct(factor * best.resistance_ohm), &year).unwrap();
            assert!(other < best.share, "{factor}: {other} for {best:?}");
        }
    }

    #[test]
    fn cloud_wants_more_ohms_and_panels_in_parallel_fewer() {
        let one = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
        let pair = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 2).unwrap();
        let sunny = best_resistance(&one, 0.0, &[day(Sky::Clear)]).unwrap();
        let grey = best_resistance(&one, 0.0, &[day(Sky::Grey)]).unwrap();
        let double = best_resistance(&pair, 0.0, &[day(Sky::Clear)]).unwrap();
        assert!(1.5 * sunny.resistance_ohm < grey.resistance_ohm);
        assert!((sunny.resistance_ohm / double.resistance_ohm - 2.0).abs() < 0.01);
    }

    #[test]
    fn dark_days_have_no_best_resistance() {
        let array = Array::new(&Datasheet::typical(100.0).unwrap(), 1, 1).unwrap();
        assert_eq!(
            best_resistance(&array, 0.0, &[]),
            Err(PanelError::NoLight(0))
        );
        assert_eq!(match_share(&array, &direct(3.0), &[]), None);
        let wire = best_resistance(&array, -1.0, &[day(Sky::Clear)]);
        assert_eq!(wire, Err(PanelError::WireResistance(-1.0)));
    }
}
