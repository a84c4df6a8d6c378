//! What the heater takes of what the panels could give.

use crate::cooker::Cooker;
use crate::local_time::Day;
use crate::panel::{BestResistance, Element, OperatingPoint, best_resistance};
use crate::sun::{DayLog, IrradianceSeries, Sky, Unlogged, faiman_cell_c, typical_year};
use crate::tonight::rig::WIND_M_S;
use crate::tonight::{Site, TonightError};

/// Steps in which a day's light is followed. \[min\]
const DAY_STEP_MIN: u32 = 30;
/// The same for the days of a year. \[min\]
const YEAR_STEP_MIN: u32 = 60;
/// Sharp shadows over daylight, in the mean of a year, where such cookers are built. Common
/// practice, no source.
const YEAR_SUNSHINE_SHARE: f64 = 0.6;
/// Full sun and half of it. \[W/m²\]
const LIGHTS_W_M2: [f64; 2] = [1000.0, 500.0];
/// Steps of a drawn curve.
const CURVE_STEPS: u32 = 60;

/// What the heater takes on one day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DayTake {
    /// Heat in the element over the energy at the panels' maximum power: 0 to 1.
    pub share: f64,
    /// Heat in the element, the thermostat left out. \[J\]
    pub heat_j: f64,
}

/// What the heater takes over a year, and what a resistor could.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct YearTake {
    /// Of this heater.
    pub share: f64,
    /// The resistor straight on the panels that takes most, behind the same wires.
    pub best: BestResistance,
}

/// The panels and the heater in one light.
#[derive(Debug, Clone, PartialEq)]
pub struct LightLine {
    /// On the panels. \[W/m²\]
    pub irradiance_w_m2: f64,
    /// Current against voltage of all panels together.
    pub curve: Vec<OperatingPoint>,
    /// Where they work.
    pub works_at: OperatingPoint,
    /// Where they would give most.
    pub best_at: OperatingPoint,
    /// Heat in the element. \[W\]
    pub heat_w: f64,
}

/// What the heater takes on a day under one sky; `None` where the day has no light.
///
/// # Errors
///
/// [`TonightError`] for a place, a panel or a heater that makes no sense.
pub fn day_take(
    site: &Site,
    cooker: &Cooker,
    day: Day,
    sky: Sky,
) -> Result<Option<DayTake>, TonightError> {
    let (array, element) = (cooker.panels.array()?, working(cooker)?);
    let log = DayLog::Hourly([None; 24]);
    let setting = site.setting(cooker);
    let series = IrradianceSeries::new(&setting, day.0, &log, Unlogged::As(sky), DAY_STEP_MIN)?;
    let heat_j = series
        .steps
        .iter()
        .map(|step| f64::from(series.step_s) * element.mean_heat_w(&array, &step.states))
        .sum();
    let share = element.match_share(&array, std::slice::from_ref(&series));
    Ok(share.map(|share| DayTake { share, heat_j }))
}

/// What the heater takes over a year; `None` where the year has no light.
///
/// # Errors
///
/// As [`day_take`].
pub fn year_take(site: &Site, cooker: &Cooker) -> Result<Option<YearTake>, TonightError> {
    let (array, element) = (cooker.panels.array()?, working(cooker)?);
    let year = typical_year(&site.setting(cooker), YEAR_SUNSHINE_SHARE, YEAR_STEP_MIN)?;
    let Some(share) = element.match_share(&array, &year) else {
        return Ok(None);
    };
    let best = best_resistance(&array, element.wire_ohm(), &year)?;
    Ok(Some(YearTake { share, best }))
}

/// The panels and the heater at full and at half sun, in air of this temperature.
///
/// # Errors
///
/// As [`day_take`].
pub fn light_lines(cooker: &Cooker, air_c: f64) -> Result<[LightLine; 2], TonightError> {
    let (array, element) = (cooker.panels.array()?, working(cooker)?);
    Ok(LIGHTS_W_M2.map(|irradiance_w_m2| {
        let cell_c = faiman_cell_c(irradiance_w_m2, air_c, WIND_M_S);
        let best_at = array.max_power(irradiance_w_m2, cell_c);
        let works_at = element.works_at(&array, irradiance_w_m2, cell_c);
        LightLine {
            irradiance_w_m2,
            curve: array.curve(irradiance_w_m2, cell_c, CURVE_STEPS),
            works_at,
            best_at,
            heat_w: element.heat_w(&array, irradiance_w_m2, cell_c),
        }
    }))
}

/// The element, or those on the switch, as hot as a store half-way to the cut-out.
fn working(cooker: &Cooker) -> Result<Element, TonightError> {
    Ok(cooker
        .element()?
        .at_element_c(0.5 * (100.0 + cooker.store.cutout_c))?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::panel::Drive;
    use crate::place::{AirYear, Place};
    use crate::presets::Preset;

    fn site() -> Site {
        let place = Place {
            latitude_deg: 11.0,
            longitude_deg: 38.0,
            altitude_m: 1500.0,
            utc_offset_min: 180,
        };
        Site {
            place,
            air: AirYear::guess(11.0, 1500.0).unwrap(),
        }
    }

    fn cooker() -> Cooker {
        Preset::AluminiumInPerlite.cooker(100.0, 11.0)
    }

    #[test]
    fn a_matched_resistor_takes_most_of_a_clear_day_and_less_of_a_broken_one() {
        let day = Day::from_ymd(2026, 3, 20).unwrap();
        let clear = day_take(&site(), &cooker(), day, Sky::Clear)
            .unwrap()
            .unwrap();
        let patchy = day_take(&site(), &cooker(), day, Sky::Patchy)
            .unwrap()
            .unwrap();
        assert!((0.75..0.95).contains(&clear.share), "{clear:?}");
        assert!(
            patchy.share < clear.share && patchy.heat_j < clear.heat_j,
            "{patchy:?}"
        );
        // A clear day gives a 100 W panel some 0.4 to 0.6 kWh (common practice, no source).
        assert!((0.35..0.65).contains(&(clear.heat_j / 3.6e6)), "{clear:?}");
    }

    #[test]
    fn no_resistor_takes_more_than_the_best() {
        let year = year_take(&site(), &cooker()).unwrap().unwrap();
        assert!(year.share <= year.best.share + 1e-9, "{year:?}");
        let mut matched = cooker();
        matched.heater.resistance_ohm = year.best.resistance_ohm;
        let again = year_take(&site(), &matched).unwrap().unwrap();
        assert!((again.share - year.best.share).abs() < 1e-3, "{again:?}");
    }

    #[test]
    fn half_the_light_is_a_quarter_of_the_heat_far_below_the_knee() {
        let mut cooker = cooker();
        cooker.heater.resistance_ohm = 1.0;
        let [full, half] = light_lines(&cooker, 20.0).unwrap();
        assert!(
            (full.heat_w / half.heat_w - 4.0).abs() < 0.2,
            "{} {}",
            full.heat_w,
            half.heat_w
        );
        // Ohm's law on the load line, wires included.
        assert!((full.works_at.voltage_v / full.works_at.current_a - 1.1).abs() < 1e-6);
    }

    #[test]
    fn a_tracker_works_at_the_maximum() {
        let mut cooker = cooker();
        cooker.heater.drive = Drive::Tracker { efficiency: 0.9 };
        for line in light_lines(&cooker, 20.0).unwrap() {
            assert!((line.heat_w - 0.9 * line.best_at.power_w()).abs() < 1e-9);
            assert_eq!(line.works_at, line.best_at);
        }
    }
}
