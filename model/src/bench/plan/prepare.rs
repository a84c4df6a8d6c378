//! From the rows of a run to stretches of constant power and air, and to the readings to be met.

use super::{POT_STRETCH_S, SAME_TIME_S, STRETCH_S, Sample, Stretch};
use crate::bench::run::{PotIn, Run};

/// Ends of the first stretches after a pot goes in. \[s\]
const POT_FIRST_S: [f64; 3] = [5.0, 15.0, 30.0];
/// Power that changes by more than this between two rows cuts a stretch there. \[W\]
const JUMP_W: f64 = 15.0;
/// A fit reads no more times than this of one run; more are brought together.
const MOST_SAMPLES: usize = 900;
/// The pot's first reading is its start, not something to be met. \[s\]
const POT_SETTLES_S: f64 = 1.0;

/// Values at times, straight between them, and the same at the ends.
pub(super) struct Series {
    times_s: Vec<f64>,
    values: Vec<f64>,
    /// Integral from the first time to each.
    sums: Vec<f64>,
}

impl Series {
    pub(super) fn new(points: impl Iterator<Item = (f64, f64)>) -> Option<Self> {
        let (times_s, values): (Vec<f64>, Vec<f64>) = points.unzip();
        let mut sums = vec![0.0];
        for idx in 1..times_s.len() {
            let step_s = times_s[idx] - times_s[idx - 1];
            sums.push(sums[idx - 1] + 0.5 * step_s * (values[idx] + values[idx - 1]));
        }
        (!times_s.is_empty()).then_some(Self {
            times_s,
            values,
            sums,
        })
    }

    pub(super) fn constant(value: f64) -> Self {
        Self {
            times_s: vec![0.0],
            values: vec![value],
            sums: vec![0.0],
        }
    }

    fn integral_to(&self, at_s: f64) -> f64 {
        let next = self.times_s.partition_point(|time_s| *time_s <= at_s);
        let last = self.times_s.len() - 1;
        if next == 0 {
            return (at_s - self.times_s[0]) * self.values[0];
        }
        let idx = next - 1;
        let past_s = at_s - self.times_s[idx];
        if idx == last {
            return self.sums[last] + past_s * self.values[last];
        }
        let slope =
            (self.values[next] - self.values[idx]) / (self.times_s[next] - self.times_s[idx]);
        self.sums[idx] + past_s * (self.values[idx] + 0.5 * slope * past_s)
    }

    pub(super) fn mean(&self, from_s: f64, to_s: f64) -> f64 {
        (self.integral_to(to_s) - self.integral_to(from_s)) / (to_s - from_s)
    }
}

pub(super) fn first_store_c(samples: &[Sample]) -> Option<f64> {
    let mut first: Vec<f64> = samples
        .iter()
        .filter_map(|sample| sample.store_c)
        .take(5)
        .collect();
    first.sort_by(f64::total_cmp);
    first.get(first.len() / 2).copied()
}

pub(super) fn start_of(pot: &PotIn, of: &Run, air_c: f64) -> f64 {
    let read = || {
        of.rows
            .iter()
            .find(|row| pot.in_s <= row.time_s)
            .and_then(|row| row.pot_c)
    };
    pot.start_c.or_else(read).unwrap_or(air_c)
}

pub(super) fn stretches(of: &Run, end_s: f64, power: &Series, air: &Series) -> Vec<Stretch> {
    let mut cuts: Vec<f64> = vec![0.0, end_s];
    let mut at_s = STRETCH_S;
    while at_s < end_s {
        cuts.push(at_s);
        at_s += STRETCH_S;
    }
    for pot in &of.pots {
        let out_s = pot.out_s.unwrap_or(end_s);
        let mut at_s = pot.in_s;
        while at_s < out_s {
            cuts.push(at_s);
            at_s += POT_STRETCH_S;
        }
        // A cold pot warms fastest at first.
        cuts.extend(POT_FIRST_S.map(|first_s| pot.in_s + first_s));
    }
    cuts.extend(of.pots.iter().filter_map(|pot| pot.out_s));
    for idx in 1..power.times_s.len() {
        if (power.values[idx] - power.values[idx - 1]).abs() > JUMP_W {
            cuts.extend([power.times_s[idx - 1], power.times_s[idx]]);
        }
    }
    cuts.retain(|cut_s| (0.0..=end_s).contains(cut_s));
    cuts.sort_by(f64::total_cmp);
    cuts.dedup_by(|next, before| *next - *before < SAME_TIME_S);
    cuts.windows(2)
        .map(|cut| Stretch {
            from_s: cut[0],
            to_s: cut[1],
            heater_w: power.mean(cut[0], cut[1]).max(0.0),
            air_c: air.mean(cut[0], cut[1]),
        })
        .collect()
}

/// The readings to be met, brought together where there are very many.
pub(super) fn thinned(of: &Run) -> Vec<Sample> {
    let pot_in = |time_s: f64| {
        of.pots.iter().position(|pot| {
            pot.in_s + POT_SETTLES_S < time_s && pot.out_s.is_none_or(|out_s| time_s <= out_s)
        })
    };
    let read: Vec<Sample> = of
        .rows
        .iter()
        .map(|row| Sample {
            time_s: row.time_s,
            store_c: row.store_c,
            pot_c: row.pot_c.filter(|_| pot_in(row.time_s).is_some()),
        })
        .filter(|sample| sample.store_c.is_some() || sample.pot_c.is_some())
        .collect();
    let together = read.len().div_ceil(MOST_SAMPLES);
    if together <= 1 {
        return read;
    }
    let mut thin = Vec::with_capacity(MOST_SAMPLES);
    let by_pot = read.chunk_by(|a, b| pot_in(a.time_s) == pot_in(b.time_s));
    for alike in by_pot {
        for chunk in alike.chunks(together) {
            let middle = |read: fn(&Sample) -> Option<f64>| {
                let mut values: Vec<f64> = chunk.iter().filter_map(read).collect();
                values.sort_by(f64::total_cmp);
                values.get(values.len() / 2).copied()
            };
            let time = |sample: &Sample| Some(sample.time_s);
            if let Some(time_s) = middle(time) {
                thin.push(Sample {
                    time_s,
                    store_c: middle(|sample| sample.store_c),
                    pot_c: middle(|sample| sample.pot_c),
                });
            }
        }
    }
    thin
}
