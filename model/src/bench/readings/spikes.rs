//! Single readings far off those beside them.

use super::Row;
use super::form::Column;
use super::remark::{Remark, What};
use crate::numerics::median::median;

/// A spike is farther off its neighbours than this \[K\]...
const LEAST_SPIKE_K: f64 = 6.0;
/// ...and than this many robust standard deviations.
const SPIKE_SDS: f64 = 8.0;
/// Rows on each side that a reading is compared with.
pub(super) const REACH: usize = 3;
/// The same of one that has too few neighbours for a median: farther than this off all of them. \[K\]
const LEAST_END_K: f64 = 30.0;
/// And than so many times the way that the pace of the others takes it.
const END_PACES: f64 = 3.0;
/// Of so few readings a spike is a large part, and no scatter is known: all are looked at so.
const FEW: usize = 20;
/// With fewer readings than this there is no pace.
const LEAST_READINGS: usize = 4;

#[derive(Debug, Clone, Copy)]
struct Reading {
    line: usize,
    time_s: f64,
    value: f64,
}

pub(super) fn spikes(rows: &[Row], column: Column, remarks: &mut Vec<Remark>) {
    let reading = |row: &Row| {
        row.value(column).map(|value| Reading {
            line: row.line,
            time_s: row.time_s,
            value,
        })
    };
    let readings: Vec<Reading> = rows.iter().filter_map(reading).collect();
    if readings.len() > 2 * REACH {
        within(&readings, column, remarks);
    }
    ends(&readings, column, remarks);
}

/// The first and the last few, which have no neighbours on one side, and all where there are few.
fn ends(readings: &[Reading], column: Column, remarks: &mut Vec<Remark>) {
    let count = readings.len();
    let edge = REACH.min(count / 2);
    let is_edge = |idx: usize| idx < edge || count - edge <= idx || count <= FEW;
    let points: Vec<(f64, f64)> = readings.iter().map(|of| (of.time_s, of.value)).collect();
    for (idx, neighbours) in wild(&points) {
        let Reading { line, value, .. } = readings[idx];
        let is_told = |remark: &Remark| {
            let is_same = matches!(remark.what, What::Spike { column: of, .. } if of == column);
            is_same && remark.line == line
        };
        // A pot that went in cold is no mistake, however far below the boil it began.
        let is_cold_pot = column == Column::Pot && idx < edge;
        if is_edge(idx) && !is_cold_pot && !remarks.iter().any(is_told) {
            remarks.push(Remark::at(
                line,
                What::Spike {
                    column,
                    value,
                    neighbours,
                },
            ));
        }
    }
}

/// Places of single readings, each a time \[s\] and a temperature, that are off by far more than the pace
/// of all others takes them, and off each one that is near, with what those say in the middle. A step that
/// stays agrees with one of these.
pub(in crate::bench) fn wild(points: &[(f64, f64)]) -> Vec<(usize, f64)> {
    let count = points.len();
    if count < LEAST_READINGS {
        return Vec::new();
    }
    let pace = |pair: &[(f64, f64)]| (pair[1].1 - pair[0].1) / (pair[1].0 - pair[0].0).max(1.0);
    let mut paces: Vec<f64> = points.windows(2).map(pace).collect();
    let mut sizes: Vec<f64> = paces.iter().map(|pace| pace.abs()).collect();
    let usual_k_s = median(&mut paces);
    sizes.sort_by(f64::total_cmp);
    // The lower of two middles: one spike among five readings makes two of four paces.
    let brisk_k_s = sizes
        .get((sizes.len() - 1) / 2)
        .copied()
        .unwrap_or_default();
    let look = |idx: usize| {
        let (time_s, value) = points[idx];
        let near = (idx.saturating_sub(2)..count.min(idx + 3)).filter(|other| *other != idx);
        let near: Vec<(f64, f64)> = near.map(|other| points[other]).collect();
        let gaps = near.iter().map(|(other_s, _)| (time_s - other_s).abs());
        let least_k = LEAST_END_K.max(END_PACES * brisk_k_s * gaps.fold(f64::INFINITY, f64::min));
        let is_off = |(other_s, other): &(f64, f64)| {
            (value - other - usual_k_s * (time_s - other_s)).abs() > least_k
        };
        // On the way from one neighbour to the other it lies between them.
        let is_between = 0 < idx && idx + 1 < count && {
            let (before, after) = (points[idx - 1].1, points[idx + 1].1);
            (before.min(after)..=before.max(after)).contains(&value)
        };
        (!is_between && near.iter().all(is_off)).then(|| {
            let mut values: Vec<f64> = near.iter().map(|other| other.1).collect();
            (idx, median(&mut values))
        })
    };
    (0..count).filter_map(look).collect()
}

/// Hampel's test: the median of a row and its neighbours, and how far off the row is; a step that
/// stays, as when a pot goes in, is none.
fn within(readings: &[Reading], column: Column, remarks: &mut Vec<Remark>) {
    let middles: Vec<f64> = readings
        .windows(2 * REACH + 1)
        .map(|window| {
            let mut values = [0.0; 2 * REACH + 1];
            for (place, reading) in values.iter_mut().zip(window) {
                *place = reading.value;
            }
            median(&mut values)
        })
        .collect();
    let off_by: Vec<f64> = readings[REACH..]
        .iter()
        .zip(&middles)
        .map(|(reading, middle)| (reading.value - middle).abs())
        .collect();
    // 1.4826 times the median of the absolute deviations is the standard deviation of normal noise.
    let sd_k = 1.4826 * median(&mut off_by.clone());
    let least_k = LEAST_SPIKE_K.max(SPIKE_SDS * sd_k);
    for (idx, off_k) in off_by.iter().enumerate() {
        let before = middles[idx.saturating_sub(REACH)];
        let after = middles[(idx + REACH).min(middles.len() - 1)];
        if *off_k > least_k && (before - after).abs() < 0.5 * off_k {
            let Reading { line, value, .. } = readings[idx + REACH];
            let neighbours = middles[idx];
            remarks.push(Remark::at(
                line,
                What::Spike {
                    column,
                    value,
                    neighbours,
                },
            ));
        }
    }
}
