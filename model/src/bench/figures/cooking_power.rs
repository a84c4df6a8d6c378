//! Standardised cooking power: ASAE S580.1, Testing and Reporting Solar Cooker Performance (2013).
//!
//! The equations are as printed in the draft of 31 July 2001 (ASAE X580, 7.2 to 7.7), which was read.
//! No text of the conditions could be read: they are from memory, as the draft and its reprint in
//! Funk, Solar Energy 68 (2000) 1-7, have them. Where the conditions do not hold no figure is given,
//! so that a limit that is off withholds a figure, and never makes one.

use super::mean;
use crate::bench::run::{PotIn, Run};
use crate::water::CP_J_KGK;

/// Length of an interval: X580, 7.2. \[s\]
const INTERVAL_S: f64 = 600.0;
/// Irradiance to which the power is brought: X580, 7.4. \[W/m²\]
const STANDARD_W_M2: f64 = 700.0;
/// Water above air at which the one figure is told: abstract of Funk, International Standards for
/// Testing Solar Cookers (1999). \[K\]
const STANDARD_K: f64 = 50.0;
/// Irradiance asked for, and how much it may change in an interval. From memory. \[W/m²\]
const IRRADIANCE_W_M2: (f64, f64) = (450.0, 1100.0);
const STEADY_W_M2: f64 = 100.0;
/// Air asked for. From memory. [°C]
const AIR_C: (f64, f64) = (20.0, 35.0);
/// Most wind. From memory. \[m/s\]
const WIND_M_S: f64 = 1.0;
/// Water asked for by intercept area, from memory, and how far it may be off, common practice, no
/// source. \[kg/m²\]
const LOAD_KG_M2: f64 = 7.0;
const LOAD_SHARE: f64 = 0.1;
/// Water that counts: this far above the air and below the boil. From memory. \[K\]
const MARGIN_K: f64 = 5.0;
/// Intervals asked for. From memory.
const INTERVALS: usize = 30;
/// Least share of the scatter that the line must explain. From memory.
const LEAST_R2: f64 = 0.75;

/// What was noted beside the readings.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Plane {
    /// Area on which the cooker takes the sun, square to it. \[m²\]
    pub intercept_m2: Option<f64>,
    /// Mean wind. \[m/s\]
    pub wind_m_s: Option<f64>,
}

/// One interval of ten minutes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// Its start. \[s\]
    pub from_s: f64,
    /// Mean water above mean air. \[K\]
    pub above_air_k: f64,
    /// `(T2 - T1) M c / 600 s`. \[W\]
    pub power_w: f64,
    /// The same times 700 W/m² over the mean irradiance. \[W\]
    pub standard_w: f64,
}

/// The least squares line of standardised power over water above air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// At no difference. \[W\]
    pub at_zero_w: f64,
    /// By kelvin. \[W/K\]
    pub slope_w_k: f64,
    /// Share of the scatter that it explains.
    pub r2: f64,
}

/// A condition of the standard that does not hold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Condition {
    /// No irradiance was read: in the evening there is none, and the standard says nothing of a
    /// store that empties.
    NoIrradiance,
    /// Irradiance outside 450 to 1100 W/m² or changing by more than 100 W/m², in so many intervals.
    Irradiance {
        /// Intervals.
        intervals: usize,
    },
    /// Air outside 20 to 35 °C.
    Air {
        /// Its mean. [°C]
        mean_c: f64,
    },
    /// Wind not noted.
    WindUnknown,
    /// Wind above 1 m/s.
    Wind {
        /// Noted. \[m/s\]
        wind_m_s: f64,
    },
    /// Intercept area not noted.
    AreaUnknown,
    /// Not 7 kg of water by square metre.
    Load {
        /// What it was. \[kg/m²\]
        load_kg_m2: f64,
    },
    /// Fewer than 30 intervals with the water between 5 K above the air and 5 K below the boil.
    TooFewIntervals {
        /// There were.
        intervals: usize,
    },
    /// The line explains less than 0.75 of the scatter.
    Scatter {
        /// It explains.
        r2: f64,
    },
}

/// The test's result, and which of its conditions do not hold.
#[derive(Debug, Clone, PartialEq)]
pub struct CookingPower {
    /// Every interval with water in range and irradiance.
    pub intervals: Vec<Interval>,
    /// Through them, where there are three or more.
    pub line: Option<Line>,
    /// The line at 50 K: the one figure of the standard. `None` where a condition does not hold.
    pub at_50_k_w: Option<f64>,
    /// What does not hold.
    pub unmet: Vec<Condition>,
}

/// Works out the standardised cooking power of one pot.
pub fn cooking_power(run: &Run, pot: &PotIn, plane: &Plane, boiling_c: f64) -> CookingPower {
    let mut unmet = Vec::new();
    let sunny = run.rows.iter().any(|row| row.irradiance_w_m2.is_some());
    let mut intervals = Vec::new();
    let mut unsteady = 0;
    let end_s = pot.out_s.unwrap_or_else(|| run.length_s());
    let mut from_s = pot.in_s;
    while sunny && from_s + INTERVAL_S <= end_s + 1.0 {
        if let Some((interval, steady)) = interval(run, pot, from_s, boiling_c) {
            unsteady += usize::from(!steady);
            intervals.push(interval);
        }
        from_s += INTERVAL_S;
    }
    if !sunny {
        unmet.push(Condition::NoIrradiance);
    }
    if unsteady > 0 {
        unmet.push(Condition::Irradiance {
            intervals: unsteady,
        });
    }
    let air_c = mean(&run.rows, (pot.in_s, end_s), |row| row.air_c).or(run.air_c);
    if let Some(mean_c) = air_c.filter(|air_c| !(AIR_C.0..=AIR_C.1).contains(air_c)) {
        unmet.push(Condition::Air { mean_c });
    }
    match plane.wind_m_s {
        None => unmet.push(Condition::WindUnknown),
        Some(wind_m_s) if wind_m_s > WIND_M_S => unmet.push(Condition::Wind { wind_m_s }),
        Some(_) => {}
    }
    match plane.intercept_m2 {
        None => unmet.push(Condition::AreaUnknown),
        Some(area_m2) => {
            let load_kg_m2 = pot.water_kg / area_m2;
            if (load_kg_m2 / LOAD_KG_M2 - 1.0).abs() > LOAD_SHARE {
                unmet.push(Condition::Load { load_kg_m2 });
            }
        }
    }
    if intervals.len() < INTERVALS {
        unmet.push(Condition::TooFewIntervals {
            intervals: intervals.len(),
        });
    }
    let points: Vec<(f64, f64)> = intervals
        .iter()
        .map(|interval| (interval.above_air_k, interval.standard_w))
        .collect();
    let line = line(&points);
    if let Some(r2) = line.map(|line| line.r2).filter(|r2| *r2 < LEAST_R2) {
        unmet.push(Condition::Scatter { r2 });
    }
    let figure = line.map(|line| line.at_zero_w + STANDARD_K * line.slope_w_k);
    CookingPower {
        at_50_k_w: figure.filter(|_| unmet.is_empty()),
        intervals,
        line,
        unmet,
    }
}

/// One interval, and whether its irradiance was in range and steady; `None` where the water was out
/// of range or something was not read.
fn interval(run: &Run, pot: &PotIn, from_s: f64, boiling_c: f64) -> Option<(Interval, bool)> {
    let to_s = from_s + INTERVAL_S;
    let whole = (from_s, to_s);
    // Two minutes round each end, so that one reading's noise is not the interval's power.
    let at = |at_s: f64| {
        let near = (at_s.max(pot.in_s) - 60.0, at_s + 60.0);
        mean(&run.rows, near, |row| row.pot_c)
    };
    let (first_c, last_c) = (at(from_s)?, at(to_s)?);
    let water_c = mean(&run.rows, whole, |row| row.pot_c)?;
    let air_c = mean(&run.rows, whole, |row| row.air_c).or(run.air_c)?;
    let light_w_m2 = mean(&run.rows, whole, |row| row.irradiance_w_m2)?;
    if first_c < air_c + MARGIN_K || last_c > boiling_c - MARGIN_K || light_w_m2 <= 0.0 {
        return None;
    }
    let light = run
        .rows
        .iter()
        .filter(|row| (from_s..to_s).contains(&row.time_s))
        .filter_map(|row| row.irradiance_w_m2);
    let (least, most) = light.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), each| {
        (low.min(each), high.max(each))
    });
    let in_range = (IRRADIANCE_W_M2.0..=IRRADIANCE_W_M2.1).contains(&light_w_m2);
    let (power_w, standard_w) = powers_w(pot.water_kg, (first_c, last_c), light_w_m2);
    let interval = Interval {
        from_s,
        above_air_k: water_c - air_c,
        power_w,
        standard_w,
    };
    Some((interval, in_range && most - least <= STEADY_W_M2))
}

/// Power of an interval and the same at 700 W/m².
fn powers_w(water_kg: f64, (first_c, last_c): (f64, f64), light_w_m2: f64) -> (f64, f64) {
    let power_w = (last_c - first_c) * water_kg * CP_J_KGK / INTERVAL_S;
    (power_w, power_w * STANDARD_W_M2 / light_w_m2)
}

/// Linear regression.
fn line(points: &[(f64, f64)]) -> Option<Line> {
    if points.len() < 3 {
        return None;
    }
    #[expect(clippy::cast_precision_loss, reason = "some dozens")]
    let count = points.len() as f64;
    let mean_x = points.iter().map(|point| point.0).sum::<f64>() / count;
    let mean_y = points.iter().map(|point| point.1).sum::<f64>() / count;
    let (mut xx, mut xy, mut yy) = (0.0, 0.0, 0.0);
    for (x, y) in points {
        xx += (x - mean_x).powi(2);
        xy += (x - mean_x) * (y - mean_y);
        yy += (y - mean_y).powi(2);
    }
    let slope_w_k = xy / xx;
    (xx > 0.0 && yy > 0.0).then(|| Line {
        at_zero_w: mean_y - slope_w_k * mean_x,
        slope_w_k,
        r2: xy * xy / (xx * yy),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::readings::Row;
    use crate::bench::run::RunKind;
    use crate::pot::{Lid, Pot, PotKind, PotSize, Wrap};

    /// The equations of the draft of ASAE S580: 2 kg from 50 to 56 °C in ten minutes at 800 W/m².
    #[test]
    fn power_of_one_interval() {
        let (power_w, standard_w) = powers_w(2.0, (50.0, 56.0), 800.0);
        assert!((power_w - 83.72).abs() < 0.01 && (standard_w - 73.26).abs() < 0.01);
    }

    /// Worked by hand: 95, 84, 77, 66, 54, 47 W at 10 to 60 K.
    #[test]
    fn the_line_of_six_points() {
        let powers = [95.0, 84.0, 77.0, 66.0, 54.0, 47.0];
        let points: Vec<(f64, f64)> = (1..).map(|n| 10.0 * f64::from(n)).zip(powers).collect();
        let line = line(&points).unwrap();
        assert!((line.at_zero_w - 104.60).abs() < 1e-3);
        assert!((line.slope_w_k + 0.974_29).abs() < 1e-4);
        assert!((line.at_zero_w + 50.0 * line.slope_w_k - 55.89).abs() < 0.01);
        assert!((line.r2 - 0.9950).abs() < 1e-3);
    }

    /// A cooker that takes 60 W less 0.6 W/K in 800 W/m², read every two minutes.
    fn sunny(minutes: usize, light_w_m2: Option<f64>) -> (Run, PotIn) {
        let pot = PotIn {
            in_s: 0.0,
            out_s: None,
            pot: Pot {
                kind: PotKind::ThinAluminium,
                size: PotSize::Litres2_5,
                wrap: Wrap::Bare,
            },
            lid: Lid::On,
            water_kg: 2.5,
            start_c: None,
            left_kg: None,
        };
        let mut water_c = 32.0;
        let rows = (0..=minutes / 2)
            .map(|idx| {
                let row = Row {
                    line: idx + 1,
                    time_s: 120.0 * idx as f64,
                    pot_c: Some(water_c),
                    store_c: Some(100.0),
                    air_c: Some(25.0),
                    irradiance_w_m2: light_w_m2,
                    ..Row::default()
                };
                water_c += 120.0 * (60.0 - 0.6 * (water_c - 25.0)) / (2.5 * CP_J_KGK);
                row
            })
            .collect();
        let run = Run {
            name: "sun".into(),
            kind: RunKind::Boil,
            rows,
            air_c: None,
            heater_w: None,
            pots: vec![pot],
        };
        (run, pot)
    }

    #[test]
    fn a_long_sunny_run_gives_the_figure() {
        let (run, pot) = sunny(400, Some(800.0));
        let plane = Plane {
            intercept_m2: Some(0.36),
            wind_m_s: Some(0.5),
        };
        let found = cooking_power(&run, &pot, &plane, 100.0);
        assert_eq!(found.unmet, []);
        let expected_w = (60.0 - 0.6 * 50.0) * 700.0 / 800.0;
        assert!(
            (found.at_50_k_w.unwrap() - expected_w).abs() < 0.3,
            "{:?}",
            found.line
        );
    }

    #[test]
    fn each_condition_that_fails_is_named() {
        let (run, pot) = sunny(120, None);
        let found = cooking_power(&run, &pot, &Plane::default(), 100.0);
        assert_eq!(found.at_50_k_w, None);
        assert_eq!(
            found.unmet,
            [
                Condition::NoIrradiance,
                Condition::WindUnknown,
                Condition::AreaUnknown,
                Condition::TooFewIntervals { intervals: 0 },
            ]
        );
        let (run, pot) = sunny(400, Some(300.0));
        let plane = Plane {
            intercept_m2: Some(1.0),
            wind_m_s: Some(3.0),
        };
        let found = cooking_power(&run, &pot, &plane, 100.0);
        assert!(matches!(found.unmet[0], Condition::Irradiance { .. }));
        assert!(found.unmet.contains(&Condition::Wind { wind_m_s: 3.0 }));
        assert!(found.unmet.contains(&Condition::Load { load_kg_m2: 2.5 }));
    }
}
