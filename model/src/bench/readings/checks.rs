//! What a person should look at in the rows: gaps, spikes, columns that have changed places.

use super::form::{Column, Degrees, Layout};
use super::remark::{Remark, What};
use super::spikes::{REACH, spikes};
use super::{Row, SENSIBLE_C};
use crate::numerics::median::median;

/// A gap is longer than this many usual steps...
const GAP_STEPS: f64 = 5.0;
/// ...and than this. \[s\]
const LEAST_GAP_S: f64 = 120.0;
/// Store and pot are told apart by as much. \[K\]
const APART_K: f64 = 8.0;
/// No water is hotter, anywhere; with an honest thermometer's error on top. [°C]
const HOTTEST_WATER_C: f64 = 106.0;
/// No kitchen's air is hotter. [°C]
const HOTTEST_AIR_C: f64 = 55.0;
/// Rows that all belong to less than this were timed in another unit. \[s\]
const SHORT_RUN_S: f64 = 60.0;
/// With fewer rows than this nothing is said of their length.
const SHORT_RUN_ROWS: usize = 10;

pub(super) fn look(rows: &[Row], layout: &Layout, unit_guessed: bool, remarks: &mut Vec<Remark>) {
    if unit_guessed {
        remarks.push(Remark::whole(What::SecondsGuessed));
    }
    if let Some(last) = rows.last()
        && rows.len() >= SHORT_RUN_ROWS
        && last.time_s < SHORT_RUN_S
    {
        let length_s = last.time_s;
        remarks.push(Remark::whole(What::ShortRun { length_s }));
    }
    gaps(rows, remarks);
    for column in [Column::Store, Column::Pot, Column::Air] {
        spikes(rows, column, remarks);
    }
    swapped(rows, remarks);
    fahrenheit(rows, layout, remarks);
}

fn gaps(rows: &[Row], remarks: &mut Vec<Remark>) {
    let steps = |pair: &[Row]| pair[1].time_s - pair[0].time_s;
    let mut all: Vec<f64> = rows.windows(2).map(steps).collect();
    let usual_s = median(&mut all);
    for pair in rows.windows(2) {
        let gap_s = steps(pair);
        if gap_s > LEAST_GAP_S && gap_s > GAP_STEPS * usual_s {
            remarks.push(Remark::at(pair[1].line, What::Gap { gap_s }));
        }
    }
}

/// Store and pot that have changed places: from a row on, or from the first.
fn swapped(rows: &[Row], remarks: &mut Vec<Remark>) {
    let (first, second) = (Column::Store, Column::Pot);
    let both: Vec<(usize, f64, f64)> = rows
        .iter()
        .filter_map(|row| Some((row.line, row.store_c?, row.pot_c?)))
        .collect();
    let mut since: Option<usize> = None;
    let mut last_line = 0;
    for pair in both.windows(2) {
        let [(before_line, store, pot), (line, next_store, next_pot)] = [pair[0], pair[1]];
        let as_written = (next_store - store).abs() + (next_pot - pot).abs();
        let exchanged = (next_store - pot).abs() + (next_pot - store).abs();
        last_line = line;
        if as_written > 2.0 * APART_K && exchanged < 0.25 * as_written {
            match since.take() {
                None => since = Some(line),
                Some(from) => remarks.push(Remark {
                    line: from,
                    through: before_line,
                    what: What::Swapped { first, second },
                }),
            }
        }
    }
    if let Some(from) = since {
        remarks.push(Remark {
            line: from,
            through: last_line,
            what: What::Swapped { first, second },
        });
        return;
    }
    let hotter = both.iter().filter(|(_, store, pot)| pot - store > APART_K);
    // A pot from another fire may be hotter than the store, but then it is no hotter than a boil.
    let boiling_over = |(_, store, pot): &&(usize, f64, f64)| *pot > HOTTEST_WATER_C && store < pot;
    let impossible = both.iter().filter(boiling_over).count();
    if 2 * hotter.count() > both.len() && 20 * impossible > both.len() {
        remarks.push(Remark::whole(What::Swapped { first, second }));
    }
    let air_over: Vec<&Row> = rows
        .iter()
        .filter(|row| row.air_c.is_some_and(|air_c| air_c > HOTTEST_AIR_C))
        .collect();
    if let (Some(from), Some(to)) = (air_over.first(), air_over.last())
        && air_over.len() > REACH
    {
        let other = if from.pot_c.is_some() {
            Column::Pot
        } else {
            Column::Store
        };
        remarks.push(Remark {
            line: from.line,
            through: to.line,
            what: What::Swapped {
                first: Column::Air,
                second: other,
            },
        });
    }
}

/// Water well above any boil, or air that no kitchen has, and no unit named.
fn fahrenheit(rows: &[Row], layout: &Layout, remarks: &mut Vec<Remark>) {
    if layout.degrees == Degrees::Fahrenheit {
        return;
    }
    for (column, highest_c) in [
        (Column::Pot, HOTTEST_WATER_C),
        (Column::Air, HOTTEST_AIR_C),
        (Column::Store, 0.6 * SENSIBLE_C.1),
    ] {
        let place = layout.columns.iter().position(|each| *each == column);
        let unit = place.and_then(|place| layout.degrees_by_column.get(place).copied().flatten());
        let mut all: Vec<f64> = rows.iter().filter_map(|row| row.value(column)).collect();
        let highest = all.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        // Half the readings are above what water or air can have, none above it in °F.
        let middle = median(&mut all);
        let water_f = column == Column::Pot && highest > 150.0 && highest < 230.0;
        if unit.is_none() && (middle > highest_c || water_f) {
            remarks.push(Remark::whole(What::LooksFahrenheit { column }));
        }
    }
}
