//! Time to boil and efficiency as the Water Boiling Test defines them (version 4.2.3, 2014).
//!
//! That the version exists and is of 19 March 2014 was read; no text of its formulas could be. They are
//! from memory: the time is multiplied by 75 K over the water's own rise, so that
//! it stands for water from 25 °C to 100 °C; the efficiency is the heat in the water and in what
//! boiled away over the heat that was put in. The end is the local boiling point.

use crate::bench::run::{PotIn, Run};

/// The rise for which times are told, from 25 °C to 100 °C. From memory. \[K\]
const STANDARD_RISE_K: f64 = 75.0;
/// Specific heat and heat of vaporisation as the test has them. From memory. \[J/(kg K), J/kg\]
const WATER_J_KGK: f64 = 4186.0;
const VAPOUR_J_KG: f64 = 2.26e6;
/// A reading this near the local boiling point boils: thermometers and weather are as far off. \[K\]
const NEAR_K: f64 = 1.0;
/// So many readings in a row must say so, or as many as there are before the pot comes out.
const IN_A_ROW: usize = 3;

/// The result of one pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BoilingTest {
    /// Water as it went in. [°C]
    pub start_c: f64,
    /// From its going in to the local boil; `None` where it did not boil. \[s\]
    pub boil_s: Option<f64>,
    /// The same for water from 25 °C to 100 °C. \[s\]
    pub corrected_s: Option<f64>,
    /// Hottest reading. [°C]
    pub hottest_c: f64,
    /// Water that boiled away, by weighing. \[kg\]
    pub evaporated_kg: Option<f64>,
    /// Heat in the water and in what boiled away, over what store and heater gave meanwhile; what
    /// boiled away counts only where it was weighed.
    pub efficiency: Option<f64>,
}

/// Works out the test of one pot; `None` without readings of it.
///
/// `given_j` is the heat that left the store and its jacket while the pot was in, with what the
/// heater gave, as the fitted cooker tells it.
pub fn boiling_test(
    run: &Run,
    pot: &PotIn,
    boiling_c: f64,
    given_j: Option<f64>,
) -> Option<BoilingTest> {
    let out_s = pot.out_s.unwrap_or(f64::INFINITY);
    let read: Vec<(f64, f64)> = run
        .rows
        .iter()
        .filter(|row| (pot.in_s..=out_s).contains(&row.time_s))
        .filter_map(|row| Some((row.time_s, row.pot_c?)))
        .collect();
    let start_c = pot.start_c.or(read.first().map(|(_, pot_c)| *pot_c))?;
    let boils = |from: usize| {
        let mut row = read.iter().skip(from).take(IN_A_ROW);
        row.all(|(_, c)| *c >= boiling_c - NEAR_K)
    };
    let boil_s = (0..read.len())
        .find(|from| boils(*from))
        .and_then(|from| Some(read.get(from)?.0 - pot.in_s));
    let hottest_c = read.iter().map(|(_, pot_c)| *pot_c).fold(start_c, f64::max);
    let end_c = hottest_c.min(boiling_c);
    let rise_k = end_c - start_c;
    let evaporated_kg = pot.left_kg.map(|left_kg| (pot.water_kg - left_kg).max(0.0));
    let useful_j =
        WATER_J_KGK * pot.water_kg * rise_k + VAPOUR_J_KG * evaporated_kg.unwrap_or_default();
    Some(BoilingTest {
        start_c,
        boil_s,
        corrected_s: boil_s
            .filter(|_| boiling_c > start_c)
            .map(|boil_s| corrected_s(boil_s, (start_c, boiling_c))),
        hottest_c,
        evaporated_kg,
        efficiency: given_j
            .filter(|given_j| *given_j > 0.0)
            .map(|given_j| useful_j / given_j),
    })
}

/// The time that water from 25 °C to 100 °C would take.
fn corrected_s(boil_s: f64, (start_c, boiling_c): (f64, f64)) -> f64 {
    boil_s * STANDARD_RISE_K / (boiling_c - start_c)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::bench::readings::Row;
    use crate::bench::run::RunKind;
    use crate::pot::{Lid, Pot, PotKind, PotSize, Wrap};

    fn tested(left_kg: Option<f64>) -> BoilingTest {
        // 2 K a minute from 15 °C, and five minutes of the boil.
        of_minutes(left_kg, 50, |minute| 15.0 + 2.0 * (minute - 5.0))
    }

    /// A boil at 95 °C, read each minute up to the last.
    fn of_minutes(left_kg: Option<f64>, last: usize, pot_c: impl Fn(f64) -> f64) -> BoilingTest {
        let pot = PotIn {
            in_s: 300.0,
            out_s: None,
            pot: Pot {
                kind: PotKind::ThinAluminium,
                size: PotSize::Litres2_5,
                wrap: Wrap::Bare,
            },
            lid: Lid::On,
            water_kg: 1.0,
            start_c: None,
            left_kg,
        };
        let rows = (0..=last)
            .map(|minute| Row {
                line: minute + 1,
                time_s: 60.0 * minute as f64,
                pot_c: (minute >= 5).then(|| pot_c(minute as f64).min(95.0)),
                ..Row::default()
            })
            .collect();
        let run = Run {
            name: "water".into(),
            kind: RunKind::Boil,
            rows,
            air_c: Some(20.0),
            heater_w: None,
            pots: vec![pot],
        };
        boiling_test(&run, &pot, 95.0, Some(500_000.0)).unwrap()
    }

    /// Worked by hand: 40 minutes for 80 K are 37.5 for 75 K.
    #[test]
    fn time_to_boil() {
        let test = tested(None);
        assert!((test.boil_s.unwrap() - 2400.0).abs() < 1e-9);
        assert!((test.corrected_s.unwrap() - 2250.0).abs() < 1e-9);
        assert!((test.start_c - 15.0).abs() < 1e-9);
    }

    /// Worked by hand: 2 K a minute from 15 °C, so at 95 °C after 40 minutes, and at 93 °C the minute before.
    #[test]
    fn a_run_that_ends_as_it_boils_has_boiled() {
        let boil_s = |last, spike: Option<f64>| {
            let pot_c = |minute: f64| {
                let is_spike = spike.is_some_and(|at| (at - minute).abs() < 0.5);
                let rises_c = 15.0 + 2.0 * (minute - 5.0);
                if is_spike { 95.0 } else { rises_c }
            };
            of_minutes(None, last, pot_c).boil_s
        };
        assert_eq!(boil_s(45, None), Some(2400.0));
        assert_eq!(boil_s(46, None), Some(2400.0));
        assert_eq!(boil_s(44, None), None);
        // One wild reading among colder ones is no boil.
        assert_eq!(boil_s(44, Some(20.0)), None);
        assert_eq!(boil_s(50, Some(20.0)), Some(2400.0));
    }

    /// Worked by hand: 4.186 kJ/kgK times 80 K, and 0.05 kg of steam at 2260 kJ/kg, over 500 kJ.
    #[test]
    fn efficiency() {
        let share = tested(Some(0.95)).efficiency.unwrap();
        assert!((share - (334.88 + 113.0) / 500.0).abs() < 1e-9, "{share}");
        let share = tested(None).efficiency.unwrap();
        assert!((share - 334.88 / 500.0).abs() < 1e-9);
    }
}
